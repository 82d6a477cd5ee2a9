//! `refrigerant`: class, limits, GWP by law and saturation of a refrigerant, without a network.

use crate::command::console::{Console, Exit};
use crate::command::refrigerant_sheet::{At, Sheet, absolute, celsius, sources_of};
use crate::quantity::{
    AbsolutePressure, Length, Pressure, Refusal, STANDARD_ATMOSPHERE, Temperature, atmosphere_at,
    parse,
};
use crate::refrigerant::{GwpSet, Mark, Refrigerant, Sourced, find, nearest};
use crate::text::or_list;
use crate::vocabulary::Word;
use serde_json::{Value, json};
use std::fmt::Write;

/// Shows a refrigerant, and its saturation at temperatures or pressures.
pub fn refrigerant(
    name: &str,
    at: &[String],
    altitude: Option<&str>,
    as_json: bool,
    console: &Console,
) -> Exit {
    let Some(refrigerant) = find(name) else {
        console.err(&unknown(name));
        return Exit::Usage;
    };
    let air = match altitude.map(parse::<Length>) {
        None => STANDARD_ATMOSPHERE,
        Some(Ok(altitude)) => atmosphere_at(altitude.value),
        Some(Err(refusal)) => {
            console.err(&format!("error: --altitude: {}\n", refusal.what));
            return Exit::Usage;
        }
    };
    let mut states = Vec::new();
    for text in at {
        match asked(refrigerant, text, air) {
            Ok(state) => states.push(state),
            Err(message) => {
                console.err(&message);
                return Exit::Usage;
            }
        }
    }
    if as_json {
        console.out(&format!("{:#}\n", to_json(refrigerant, &states)));
    } else {
        let place = if altitude.is_some() {
            "at that altitude"
        } else {
            "at sea level"
        };
        console.out(&Sheet::of(refrigerant, &states, air, place));
    }
    Exit::Fine
}

fn unknown(name: &str) -> String {
    let near = nearest(name);
    let mut text = format!("error: `{name}` is not a refrigerant in the tables\n");
    if !near.is_empty() {
        let _ = writeln!(text, "  = help: did you mean {}?", or_list(&near));
    }
    text
}

/// The state meant, if it lies in the table.
fn asked(refrigerant: &Refrigerant, text: &str, air: AbsolutePressure) -> Result<At, String> {
    let refusal: Refusal = match parse::<Temperature>(text) {
        Ok(measured) => {
            let kelvin = measured.value.si();
            return match refrigerant.bubble_pressure_pa(kelvin) {
                Some(_) => Ok(At::Temperature(kelvin)),
                None => Err(outside(refrigerant, text)),
            };
        }
        Err(refusal) => refusal,
    };
    match parse::<Pressure>(text) {
        Ok(measured) => {
            let pascal = measured.value.absolute(air).si();
            let found = (
                refrigerant.bubble_temperature_k(pascal),
                refrigerant.dew_temperature_k(pascal),
            );
            match found {
                (None, None) => Err(outside(refrigerant, text)),
                _ => Ok(At::Pressure(pascal)),
            }
        }
        // A text with a unit of pressure is answered as a pressure: `24 bar` needs gauge or absolute.
        Err(as_pressure) if !as_pressure.cures.is_empty() && as_pressure.what != refusal.what => {
            let cures: Vec<String> = as_pressure
                .cures
                .iter()
                .map(|cure| format!("`{cure}`"))
                .collect();
            let cures: Vec<&str> = cures.iter().map(String::as_str).collect();
            Err(format!(
                "error: --at: {}\n  = help: write {}\n",
                as_pressure.what,
                or_list(&cures)
            ))
        }
        Err(_) => Err(format!(
            "error: --at: {}\n  = help: write a temperature such as \"-10 °C\" or a pressure such as \"14.6 bar g\"\n",
            refusal.what
        )),
    }
}

fn outside(refrigerant: &Refrigerant, text: &str) -> String {
    let name = refrigerant.designation;
    let Some((low, high)) = refrigerant.saturation_range_k() else {
        return format!(
            "error: no saturation table of {name} is held\n  = why: CoolProp 8.0.0 holds no model of it, or one that strays from print\n"
        );
    };
    let pressure = |kelvin| {
        refrigerant
            .bubble_pressure_pa(kelvin)
            .map_or_else(String::new, absolute)
    };
    let mut message = format!(
        "error: `{text}` is outside the saturation table of {name}, {} to {} ({} to {})\n",
        celsius(low),
        celsius(high),
        pressure(low),
        pressure(high)
    );
    let critical = refrigerant
        .critical_temperature_k
        .zip(refrigerant.critical_pressure_pa);
    let _ = match critical {
        Some((kelvin, pascal)) => writeln!(
            message,
            "  = why: values outside a table are never guessed; above the critical point, {} and {}, there is no saturation at all",
            celsius(kelvin.value),
            absolute(pascal.value)
        ),
        None => writeln!(message, "  = why: values outside a table are never guessed"),
    };
    message
}

fn sourced(value: Option<Sourced<f64>>) -> Value {
    value.map_or(Value::Null, |sourced| {
        json!({ "value": sourced.value, "source": sourced.source.citation,
                "from-memory": sourced.source.mark == Mark::Memory })
    })
}

fn to_json(refrigerant: &Refrigerant, states: &[At]) -> Value {
    let gwp: serde_json::Map<String, Value> = GwpSet::ALL
        .into_iter()
        .filter_map(|set| {
            let gwp = refrigerant.gwp(set)?;
            let citations: Vec<&str> = sources_of(&gwp).iter().map(|source| source.citation).collect();
            let value = json!({ "value": gwp.value, "from-memory": gwp.is_from_memory(), "sources": citations });
            Some((set.title().to_owned(), value))
        })
        .collect();
    json!({
        "version": 1,
        "command": "refrigerant",
        "designation": refrigerant.designation,
        "names": refrigerant.names,
        "safety-class": refrigerant.safety_class.map(|class| json!({
            "value": class.value.word(), "source": class.source.citation,
            "from-memory": class.source.mark == Mark::Memory,
        })),
        "composition": refrigerant.components.iter().map(|part| json!({
            "substance": part.substance.designation, "mass-percent": part.mass_percent,
        })).collect::<Vec<_>>(),
        "composition-source": refrigerant.composition_source.map(|source| source.citation),
        "molar-mass-g-mol": refrigerant.molar_mass_kg_per_kmol(),
        "molar-mass-source": refrigerant.molar_mass_source().map(|source| source.citation),
        "lower-flammability-limit-kg-m3": sourced(refrigerant.lower_flammability_limit_kg_m3),
        "practical-limit-kg-m3": sourced(refrigerant.practical_limit_kg_m3),
        "toxicity-limit-kg-m3": sourced(refrigerant.toxicity_limit_kg_m3),
        "concentration-limit-kg-m3": sourced(refrigerant.concentration_limit_kg_m3),
        "concentration-limit-ppm": sourced(refrigerant.concentration_limit_ppm),
        "normal-boiling-point-k": sourced(refrigerant.normal_boiling_point_k),
        "normal-dew-point-k": sourced(refrigerant.normal_dew_point_k),
        "critical-temperature-k": sourced(refrigerant.critical_temperature_k),
        "critical-pressure-pa": sourced(refrigerant.critical_pressure_pa),
        "viscosity-pa-s": sourced(refrigerant.gas().viscosity_pa_s),
        "gwp": gwp,
        "at": states.iter().map(|state| state_json(refrigerant, state)).collect::<Vec<_>>(),
    })
}

fn state_json(refrigerant: &Refrigerant, state: &At) -> Value {
    match *state {
        At::Temperature(kelvin) => json!({
            "temperature-k": kelvin,
            "bubble-pressure-pa": refrigerant.bubble_pressure_pa(kelvin),
            "dew-pressure-pa": refrigerant.dew_pressure_pa(kelvin),
            "liquid-density-kg-m3": refrigerant.liquid_density_kg_m3(kelvin),
            "vapour-density-kg-m3": refrigerant.vapour_density_kg_m3(kelvin),
            "vapour-viscosity-pa-s": refrigerant.vapour_viscosity_pa_s(kelvin),
        }),
        At::Pressure(pascal) => json!({
            "pressure-pa": pascal,
            "bubble-temperature-k": refrigerant.bubble_temperature_k(pascal),
            "dew-temperature-k": refrigerant.dew_temperature_k(pascal),
        }),
    }
}
