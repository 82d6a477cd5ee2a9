//! `refrigerant`: class, limits, GWP by law and saturation of a refrigerant, without a network.

use crate::command::console::{Console, Exit};
use crate::quantity::{
    AbsolutePressure, Flavour, Pressure, Refusal, STANDARD_ATMOSPHERE, Temperature, UnitSystem,
    parse, print_si,
};
use crate::refrigerant::{GwpSet, Mark, Refrigerant, Sourced, find, nearest};
use crate::vocabulary::Word;
use serde_json::{Value, json};

/// A state on the saturation line, at a temperature.
struct Saturation {
    temperature_k: f64,
    bubble_pa: Option<f64>,
    dew_pa: Option<f64>,
    liquid: Option<f64>,
    vapour: Option<f64>,
}

/// Shows a refrigerant, and its saturation at temperatures or pressures.
pub fn refrigerant(name: &str, at: &[String], as_json: bool, console: &Console) -> Exit {
    let Some(refrigerant) = find(name) else {
        let near = nearest(name);
        console.err(&format!(
            "error: `{name}` is not a refrigerant in the tables\n"
        ));
        if let Some(near) = near.first() {
            console.err(&format!("  = help: did you mean `{near}`?\n"));
        }
        return Exit::Usage;
    };
    let mut states = Vec::new();
    for text in at {
        match temperature_of(refrigerant, text) {
            Ok(temperature_k) => states.push(saturation(refrigerant, temperature_k)),
            Err(message) => {
                console.err(&message);
                return Exit::Usage;
            }
        }
    }
    if as_json {
        console.out(&format!("{:#}\n", to_json(refrigerant, &states)));
    } else {
        console.out(&to_text(refrigerant, &states));
    }
    Exit::Fine
}

/// The temperature meant: as written, or the bubble temperature at a pressure.
fn temperature_of(refrigerant: &Refrigerant, text: &str) -> Result<f64, String> {
    let outside = || {
        format!(
            "error: `{text}` is outside the saturation table of {}\n  = why: values outside a table are never guessed\n",
            refrigerant.designation
        )
    };
    let refusal: Refusal = match parse::<Temperature>(text) {
        Ok(measured) => {
            let kelvin = measured.value.si();
            return match refrigerant.bubble_pressure_pa(kelvin) {
                Some(_) => Ok(kelvin),
                None => Err(outside()),
            };
        }
        Err(refusal) => refusal,
    };
    match parse::<Pressure>(text) {
        Ok(measured) => {
            let pressure: AbsolutePressure = measured.value.absolute(STANDARD_ATMOSPHERE);
            refrigerant
                .bubble_temperature_k(pressure.si())
                .ok_or_else(outside)
        }
        Err(_) => Err(format!(
            "error: --at: {}\n  = help: write a temperature such as \"-10 °C\" or a pressure such as \"14.6 bar g\"\n",
            refusal.what
        )),
    }
}

fn saturation(refrigerant: &Refrigerant, temperature_k: f64) -> Saturation {
    Saturation {
        temperature_k,
        bubble_pa: refrigerant.bubble_pressure_pa(temperature_k),
        dew_pa: refrigerant.dew_pressure_pa(temperature_k),
        liquid: refrigerant.liquid_density_kg_m3(temperature_k),
        vapour: refrigerant.vapour_density_kg_m3(temperature_k),
    }
}

fn to_json(refrigerant: &Refrigerant, states: &[Saturation]) -> Value {
    let sourced = |value: &Option<Sourced<f64>>| {
        value.as_ref().map(|sourced| {
            json!({ "value": sourced.value, "source": sourced.source.citation,
                    "from-memory": sourced.source.mark == Mark::Memory })
        })
    };
    let gwp: serde_json::Map<String, Value> = GwpSet::ALL
        .into_iter()
        .filter_map(|set| {
            let gwp = refrigerant.gwp(set)?;
            let value = json!({ "value": gwp.value, "from-memory": gwp.is_from_memory() });
            Some((set.title().to_owned(), value))
        })
        .collect();
    json!({
        "version": 1,
        "command": "refrigerant",
        "designation": refrigerant.designation,
        "safety-class": refrigerant.safety_class.map(|class| class.value.word()),
        "composition": refrigerant.components.iter().map(|part| json!({
            "substance": part.substance.designation, "mass-percent": part.mass_percent,
        })).collect::<Vec<_>>(),
        "molar-mass-g-mol": refrigerant.molar_mass_kg_per_kmol(),
        "lower-flammability-limit-kg-m3": sourced(&refrigerant.lower_flammability_limit_kg_m3),
        "practical-limit-kg-m3": sourced(&refrigerant.practical_limit_kg_m3),
        "concentration-limit-kg-m3": sourced(&refrigerant.concentration_limit_kg_m3),
        "normal-boiling-point-k": sourced(&refrigerant.normal_boiling_point_k),
        "critical-temperature-k": sourced(&refrigerant.critical_temperature_k),
        "gwp": gwp,
        "at": states.iter().map(|state| json!({
            "temperature-k": state.temperature_k,
            "bubble-pressure-pa": state.bubble_pa,
            "dew-pressure-pa": state.dew_pa,
            "liquid-density-kg-m3": state.liquid,
            "vapour-density-kg-m3": state.vapour,
        })).collect::<Vec<_>>(),
    })
}

fn to_text(refrigerant: &Refrigerant, states: &[Saturation]) -> String {
    use std::fmt::Write;
    let mut out = String::new();
    let mut line = |key: &str, value: String| {
        let _ = writeln!(out, "{key:<28}{value}");
    };
    line("refrigerant", refrigerant.designation.to_owned());
    if let Some(class) = refrigerant.safety_class {
        line("safety class", format!("{}{}", class.value, source(&class)));
    }
    let parts: Vec<String> = refrigerant
        .components
        .iter()
        .map(|part| format!("{} {} %", part.substance.designation, part.mass_percent))
        .collect();
    line("composition, mass", parts.join(", "));
    line(
        "molar mass",
        format!("{:.2} g/mol", refrigerant.molar_mass_kg_per_kmol()),
    );
    for (key, value) in [
        (
            "lower flammability limit",
            &refrigerant.lower_flammability_limit_kg_m3,
        ),
        ("practical limit", &refrigerant.practical_limit_kg_m3),
        (
            "concentration limit (RCL)",
            &refrigerant.concentration_limit_kg_m3,
        ),
    ] {
        if let Some(value) = value {
            let grams = crate::working::rounded(value.value * 1000.0, 1);
            line(key, format!("{grams} g/m³{}", source(value)));
        }
    }
    for (key, value) in [
        ("normal boiling point", &refrigerant.normal_boiling_point_k),
        ("critical temperature", &refrigerant.critical_temperature_k),
    ] {
        if let Some(value) = value {
            line(key, format!("{}{}", celsius(value.value), source(value)));
        }
    }
    for set in GwpSet::ALL {
        if let Some(gwp) = refrigerant.gwp(set) {
            let mark = if gwp.is_from_memory() {
                " (from memory in part, verify)"
            } else {
                ""
            };
            line(
                "GWP",
                format!(
                    "{}  {}{mark}",
                    crate::working::rounded(gwp.value, 1),
                    set.title()
                ),
            );
        }
    }
    for state in states {
        let pressure = |pa: Option<f64>| {
            pa.map_or_else(
                || "outside the table".to_owned(),
                |pa| {
                    let gauge = pa - STANDARD_ATMOSPHERE.si();
                    let bar = print_si(
                        Flavour::AbsolutePressure,
                        pa,
                        Some(pa * 2e-4),
                        UnitSystem::Metric,
                    );
                    let psi = print_si(Flavour::GaugePressure, gauge, None, UnitSystem::Us);
                    format!("{} {} ({psi} at sea level)", bar.number, bar.unit)
                },
            )
        };
        line("at", celsius(state.temperature_k));
        line("  bubble pressure", pressure(state.bubble_pa));
        line("  dew pressure", pressure(state.dew_pa));
        for (key, value) in [
            ("  liquid density", state.liquid),
            ("  vapour density", state.vapour),
        ] {
            if let Some(value) = value {
                line(key, format!("{} kg/m³", crate::working::rounded(value, 2)));
            }
        }
    }
    if !states.is_empty() {
        line("saturation", "tables made with CoolProp 8.0.0".to_owned());
    }
    out
}

fn celsius(kelvin: f64) -> String {
    format!("{} °C", crate::working::rounded(kelvin - 273.15, 2))
}

fn source<T>(value: &Sourced<T>) -> String {
    match value.source.mark {
        Mark::Memory => "  [from memory, verify]".to_owned(),
        Mark::Seen | Mark::Computed => format!("  [{}]", value.source.citation),
    }
}
