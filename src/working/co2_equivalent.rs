//! CO2 equivalent of a mass under the GWP set of a rule.

use crate::refrigerant::{GwpSet, Refrigerant, co2e_kg};
use crate::text::{Message, Text};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Mass times GWP.
pub static CO2_EQUIVALENT: Method = Method {
    id: "co2-equivalent",
    name: "CO₂ equivalent",
    formula: "CO₂e = mass × GWP",
    mathematics: "m_\"CO₂e\" = m dot \"GWP\"",
    source: "mass times GWP of the set named; mixtures by nominal mass fractions, Regulation (EU) 2024/573 Annex VI and 40 CFR 84.64(b)",
};

/// The CO2 equivalent in kg of a mass, as a figure; `None` where the set has no value.
pub fn co2_equivalent(
    (mass, origin): (Value, Origin),
    refrigerant: &'static Refrigerant,
    set: GwpSet,
    id: &str,
    title: impl Into<Text>,
) -> Option<Figure> {
    let gwp = refrigerant.gwp(set)?;
    let uncertainty = match &mass {
        Value::Written(reading) => reading.uncertainty,
        Value::Computed { uncertainty, .. } => *uncertainty,
        _ => None,
    };
    let mut working = Working::of(&CO2_EQUIVALENT, id, title);
    let kg = working.input("m", mass, origin);
    let shares: Vec<String> = gwp
        .terms
        .iter()
        .map(|term| {
            format!(
                "{} {} % × {}",
                term.substance.designation, term.mass_percent, term.gwp.value
            )
        })
        .collect();
    working.input(
        "GWP",
        Value::Number(gwp.value, 1),
        Origin::Table(
            Message::of("origin-gwp")
                .phrase("set", set.title())
                .figure("shares", shares.join(" + "))
                .into(),
        ),
    );
    if gwp.is_from_memory() {
        working.note(Message::of("note-gwp-from-memory"));
    }
    if !gwp.excluded.is_empty() {
        working.note(Message::of("note-gwp-left-out"));
    }
    Some(working.finish(Value::CarbonDioxide {
        kg: co2e_kg(kg, gwp.value),
        uncertainty: uncertainty.map(|half| co2e_kg(half, gwp.value)),
    }))
}
