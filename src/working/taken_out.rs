//! What a change of refrigerant took out of a circuit, and how much less that was than its full charge.

use crate::quantity::{Mass, Measured};
use crate::text::{Message, Noted};
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::working::account::{Account, Entry};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// What was recovered.
pub static RECOVERED: Method = Method {
    id: "recovered-at-change",
    name: "Refrigerant recovered for a change of refrigerant",
    formula: "recovered = sum of what went into cylinders",
    mathematics: "m_\"out\" = sum m_\"recovered\"",
    source: "sum of weighings; their uncertainties taken as uncorrelated, JCGM 100:2008 5.1",
};

/// How much less than the full charge came out.
pub static SHORT: Method = Method {
    id: "less-than-full-charge",
    name: "Missing when a circuit was emptied",
    formula: "missing = full charge − recovered − lost while working",
    mathematics: "m_\"missing\" = m_\"full\" - m_\"recovered\" - m_\"other\"",
    source: "common practice; what stays in oil and hoses is in it",
};

/// Both, of one circuit.
#[derive(Clone, Debug)]
pub struct TakenOut {
    /// What was recovered.
    pub recovered: Figure,
    /// How much less than the full charge that was; none where it was no less.
    pub short: Option<Figure>,
}

/// What a visit took out of a circuit to change its refrigerant, beside the full charge that was in
/// force before; none where it changed none.
pub fn taken_out(
    account: &Account,
    visit: usize,
    full: &Noted<Measured<Mass>>,
    id: impl Fn(&str) -> String,
    titled: impl Fn(&'static str) -> Message,
) -> Option<TakenOut> {
    let for_change = |entry: &&Entry| {
        entry.why == Some(MovementWhy::Retrofit) && entry.kind != MovementKind::Charged
    };
    let lines: Vec<&Entry> = account.entries_of(visit).filter(for_change).collect();
    let recovered = |entry: &&&Entry| entry.kind == MovementKind::Recovered;
    lines.iter().find(recovered)?;
    let mut working = Working::of(&RECOVERED, id("recovered"), titled("title-recovered"));
    let of_it = lines.iter().copied().filter(|entry| recovered(&entry));
    let (kg, half) = sum(of_it, &mut working);
    let recovered = working.finish(Value::mass(kg, half));
    let mut working = Working::of(&SHORT, id("less-than-full"), titled("title-less-than-full"));
    let full = working.take("m_full", full);
    let (kg, half) = sum(lines.iter().copied(), &mut working);
    let missing = full - kg;
    working.note(Message::of("note-full-charge-as-noted"));
    Some(TakenOut {
        recovered,
        short: (missing > 1e-9).then(|| working.finish(Value::mass(missing, half))),
    })
}

/// Takes lines into a working: their sum, kg, and its uncertainty where that of each is known.
fn sum<'a>(lines: impl Iterator<Item = &'a Entry>, working: &mut Working) -> (f64, Option<f64>) {
    let (mut kg, mut variance) = (0.0, Some(0.0));
    for line in lines {
        let symbol = if line.kind == MovementKind::Recovered {
            "m_recovered"
        } else {
            "m_other"
        };
        let value = Value::mass(line.kg, line.uncertainty_kg);
        kg += working.input(symbol, value, Origin::Notes(line.spans.clone()));
        variance = variance
            .zip(line.uncertainty_kg)
            .map(|(sum, half)| sum + half * half);
    }
    (kg, variance.map(f64::sqrt))
}
