//! `convert` of leak sizes: mass and throughput of a gas, bubbles, and what another gas would leak.
//!
//! Every answer says of which gas, at which temperature, and of what length a year is.

use crate::command::console::{Console, Exit};
use crate::quantity::{
    AbsolutePressure, Duration, Flavour, Kind, Length, Pressure, Reading, Temperature, convert,
    parse, read, reference_temperature,
};
use crate::refrigerant::{Gas, gas, nearest, test_gases};
use crate::text::or_list;
use crate::working::bubbles::throughput_of_bubbles;
use crate::working::leak_size::{mass_rate, throughput};
use crate::working::service_equivalent::{Bracket, Flow, in_service};
use serde_json::{Value, json};
use std::fmt::Write;

/// What was asked for.
pub struct Asked<'a> {
    /// The leak size or the bubbles, as written.
    pub quantity: &'a str,
    /// The unit wanted; all if none.
    pub to: Option<&'a str>,
    /// The gas that leaked.
    pub gas: Option<&'a str>,
    /// Its temperature; 20 °C if none.
    pub at: Option<&'a str>,
    /// The gas that would leak instead.
    pub other: Option<&'a str>,
    /// Pressures before and behind the opening.
    pub between: &'a [String],
    /// The same for the other gas.
    pub other_between: &'a [String],
}

/// Temperature of the gas where none is given, K.
const ROOM_K: f64 = 293.15;
/// Units of an answer that asks for none in particular.
const MASS: [&str; 4] = ["g/yr", "kg/yr", "oz/yr", "lb/yr"];
const THROUGHPUT: [&str; 6] = [
    "Pa m³/s", "mbar L/s", "Torr L/s", "atm cc/s", "std cc/s", "sccm",
];

/// Parts `5 g/yr R-134a` or `5 g/yr of R-134a` into the size and its gas.
pub fn size_and_gas(text: &str) -> Option<(&str, &str)> {
    let (size, name) = text.trim().rsplit_once(char::is_whitespace)?;
    let size = size.trim_end();
    let size = size.strip_suffix(" of").unwrap_or(size);
    let known = gas(name).is_some() && (counts_bubbles(size) || read(Kind::LeakRate, size).is_ok());
    known.then_some((size, name))
}

/// Tells whether a text counts bubbles.
pub fn counts_bubbles(quantity: &str) -> bool {
    quantity.contains("bubble")
}

/// Converts a leak size by its gas, or counted bubbles.
pub fn convert_leak(
    asked: &Asked<'_>,
    air: AbsolutePressure,
    as_json: bool,
    console: &Console,
) -> Exit {
    match answer(asked, air) {
        Ok(answer) if as_json => {
            console.out(&format!("{:#}\n", answer.to_json(asked)));
            Exit::Fine
        }
        Ok(answer) => {
            console.out(&answer.print());
            Exit::Fine
        }
        Err(message) => {
            console.err(&message);
            Exit::Usage
        }
    }
}

/// One leak of one gas, as a throughput at a temperature.
struct Leak {
    heading: String,
    throughput: f64,
    gas: Option<Gas>,
    values: Vec<String>,
}

struct Answer {
    leaks: Vec<Leak>,
    temperature_k: f64,
    notes: Vec<String>,
}

fn fault(what: &str, help: &str) -> String {
    format!("error: {what}\n  = help: {help}\n")
}

fn answer(asked: &Asked<'_>, air: AbsolutePressure) -> Result<Answer, String> {
    let temperature_k = match asked.at.map(parse::<Temperature>) {
        None => ROOM_K,
        Some(Ok(measured)) => measured.value.si(),
        Some(Err(refusal)) => {
            return Err(fault(
                &format!("--at: {}", refusal.what),
                "write a temperature such as --at \"20 °C\"",
            ));
        }
    };
    let gas = asked.gas.map(|name| known_gas("--gas", name)).transpose()?;
    let size = size(asked.quantity, gas.as_ref(), temperature_k, air)?;
    let mut notes = notes(asked, gas.as_ref(), temperature_k);
    let mut leaks = vec![Leak {
        heading: match gas {
            Some(gas) => format!("{} of {}", asked.quantity, gas.name),
            None => asked.quantity.to_owned(),
        },
        throughput: size,
        gas,
        values: Vec::new(),
    }];
    if let Some(other) = asked.other {
        let other = known_gas("--as", other)?;
        let gas = gas.ok_or_else(|| {
            fault(
                "--as needs the gas that leaked",
                "add it, such as --gas nitrogen",
            )
        })?;
        let (test, service) = flows(asked, gas, other, air)?;
        let bracket = in_service(size, &test, &service).ok_or_else(|| {
            fault(
                "no gas flows from the lower pressure to the higher",
                "write the pressure before the opening first: --between \"40 bar g\" \"0 bar g\"",
            )
        })?;
        // The size itself is not repeated: what was asked for is the other gas.
        leaks = others(asked.quantity, gas, &bracket, other);
        notes.push(change_note(asked, gas, other, air));
        notes.push("Larger leaks flow viscously, the finest molecularly; between some 1e-5 and 1e-8 Pa m³/s either may hold (common practice). As gas: liquid behind the opening lets out more.".to_owned());
    }
    for leak in &mut leaks {
        leak.values = values(leak, asked.to, temperature_k)?;
    }
    Ok(Answer {
        leaks,
        temperature_k,
        notes,
    })
}

fn others(quantity: &str, gas: Gas, bracket: &Bracket, other: Gas) -> Vec<Leak> {
    let leak = |manner, throughput| Leak {
        heading: format!(
            "{quantity} of {} as {}, {manner} flow",
            gas.name, other.name
        ),
        throughput,
        gas: Some(other),
        values: Vec::new(),
    };
    let viscous = bracket.viscous_pa_m3_s.map(|found| leak("viscous", found));
    viscous
        .into_iter()
        .chain([leak("molecular", bracket.molecular_pa_m3_s)])
        .collect()
}

fn known_gas(option: &str, name: &str) -> Result<Gas, String> {
    gas(name).ok_or_else(|| {
        let gases: Vec<&str> = test_gases().collect();
        let near = nearest(name);
        let help = if near.is_empty() {
            format!("write a refrigerant, or {}", or_list(&gases))
        } else {
            format!("did you mean {}?", or_list(&near))
        };
        fault(
            &format!("{option}: `{name}` is not a gas in the tables"),
            &help,
        )
    })
}

/// Throughput of what was written, Pa m³/s at the temperature of the gas.
fn size(
    text: &str,
    gas: Option<&Gas>,
    temperature_k: f64,
    air: AbsolutePressure,
) -> Result<f64, String> {
    if counts_bubbles(text) {
        return bubbles(text, air);
    }
    let reading: Reading = read(Kind::LeakRate, text).map_err(|refusal| {
        let cure = refusal.cures.first().map_or_else(
            || "write a leak size such as \"14 g/yr\" or \"1e-5 Pa m3/s\", or bubbles such as \"6 bubbles/min of 1 mm\"".to_owned(),
            |cure| format!("write `{cure}`"),
        );
        fault(&refusal.what, &cure)
    })?;
    match (reading.flavour, gas) {
        (Flavour::MassRate, Some(gas)) => Ok(throughput(
            reading.si,
            gas.molar_mass_kg_per_kmol,
            temperature_k,
        )),
        (Flavour::MassRate, None) => Err(fault(
            "a mass per time becomes a throughput only for a known gas",
            "name it, such as --gas R-134a",
        )),
        // A standard cubic centimetre counts gas at 0 °C: the same gas takes more room when warmer.
        _ => Ok(reading.si
            * reference_temperature(reading.unit).map_or(1.0, |of| temperature_k / of.si())),
    }
}

/// Reads `6 bubbles/min of 1 mm` or `1 bubble in 10 s of 1 mm`, as Pa m³/s.
fn bubbles(text: &str, air: AbsolutePressure) -> Result<f64, String> {
    let example = "write how many, how often and how wide: \"6 bubbles/min of 1 mm\" or \"1 bubble in 10 s of 1 mm\"";
    let told = || {
        fault(
            &format!("`{text}` does not say how many bubbles, how often and how wide"),
            example,
        )
    };
    let (number, rest) = text.split_once("bubble").ok_or_else(told)?;
    let number: f64 = number.trim().parse().map_err(|_| told())?;
    let rest = rest.strip_prefix('s').unwrap_or(rest).trim();
    let (often, wide) = rest.split_once(" of ").ok_or_else(told)?;
    let often = often.trim();
    let time = match ["/", "per ", "a "]
        .iter()
        .find_map(|word| often.strip_prefix(word))
    {
        Some(unit) => format!("1 {}", unit.trim()),
        None => ["in ", "every "]
            .iter()
            .find_map(|word| often.strip_prefix(word))
            .ok_or_else(told)?
            .to_owned(),
    };
    let time = parse::<Duration>(&time).map_err(|refusal| fault(&refusal.what, example))?;
    let wide = parse::<Length>(wide.trim()).map_err(|refusal| fault(&refusal.what, example))?;
    let (seconds, metres) = (time.value.si(), wide.value.si());
    if !(number.is_finite() && number > 0.0 && seconds > 0.0 && metres > 0.0) {
        return Err(told());
    }
    Ok(throughput_of_bubbles(number / seconds, metres, air.si()))
}

/// The two flows: at the pressures written, at like pressures where none are.
fn flows(
    asked: &Asked<'_>,
    gas: Gas,
    other: Gas,
    air: AbsolutePressure,
) -> Result<(Flow, Flow), String> {
    let read = |texts: &[String]| -> Result<Option<(f64, f64)>, String> {
        let [from, to] = texts else { return Ok(None) };
        let pascal = |text: &str| {
            parse::<Pressure>(text)
                .map(|measured| measured.value.absolute(air).si())
                .map_err(|refusal| {
                    let cure = refusal.cures.first().map_or_else(
                        || "write a pressure such as \"40 bar g\"".to_owned(),
                        |cure| format!("write `{cure}`"),
                    );
                    fault(&refusal.what, &cure)
                })
        };
        Ok(Some((pascal(from)?, pascal(to)?)))
    };
    let first = read(asked.between)?;
    let second = read(asked.other_between)?.or(first);
    let first = first.or(second);
    let flow = |gas, pressures: Option<(f64, f64)>| {
        let (from_pa, to_pa) = pressures.unwrap_or((2.0 * air.si(), air.si()));
        Flow {
            gas,
            from_pa,
            to_pa,
        }
    };
    Ok((flow(gas, first), flow(other, second)))
}

/// The leak in one unit, or in all.
fn values(leak: &Leak, to: Option<&str>, temperature_k: f64) -> Result<Vec<String>, String> {
    let Leak {
        throughput, gas, ..
    } = leak;
    let rate = gas.map(|gas| mass_rate(*throughput, gas.molar_mass_kg_per_kmol, temperature_k));
    // Four digits, of the throughput at 0 °C where the unit counts gas there.
    let in_unit = |unit: &str| -> Option<String> {
        let one = read(Kind::LeakRate, &format!("1 {unit}")).ok()?;
        let si = match one.flavour {
            Flavour::MassRate => rate?,
            _ => throughput * reference_temperature(unit).map_or(1.0, |of| of.si() / temperature_k),
        };
        let found = convert(&format!("{:.3e} {unit}", si / one.si), Some(unit), None).ok()?;
        Some(found.first()?.to.first()?.to_string())
    };
    match to {
        None => {
            let units = MASS.iter().filter(|_| rate.is_some()).chain(&THROUGHPUT);
            Ok(units.filter_map(|unit| in_unit(unit)).collect())
        }
        Some(to) => {
            let standard = read(Kind::LeakRate, &format!("1 {to}"))
                .ok()
                .map_or(to, |reading| reading.unit);
            let help = if gas.is_none() {
                "a mass per time needs the gas, such as --gas R-134a; else write a unit such as \"Pa m3/s\""
            } else {
                "write a unit of leaks, such as g/yr, oz/yr, \"Pa m3/s\", \"mbar l/s\" or \"std cc/s\""
            };
            in_unit(standard)
                .map(|value| vec![value])
                .ok_or_else(|| fault(&format!("a leak size cannot be given in `{to}`"), help))
        }
    }
}

fn celsius(kelvin: f64) -> String {
    format!("{} °C", crate::working::rounded(kelvin - 273.15, 1))
}

fn notes(asked: &Asked<'_>, gas: Option<&Gas>, temperature_k: f64) -> Vec<String> {
    let taken = if asked.at.is_some() {
        ""
    } else {
        ", for want of --at"
    };
    let mut notes = vec![format!(
        "Gas at {}{taken}; std cc/s and sccm count it at 0 °C. A year has 365 days.",
        celsius(temperature_k)
    )];
    if let Some(gas) = gas {
        let molar = crate::working::rounded(gas.molar_mass_kg_per_kmol, 2);
        notes.push(format!(
            "Molar mass of {}: {molar} g/mol (CoolProp 8.0.0); ideal gas.",
            gas.name
        ));
    }
    if counts_bubbles(asked.quantity) {
        notes.push("Bubbles taken as spheres at the pressure of the air; what dissolves or is not seen is not counted.".to_owned());
    }
    notes
}

fn change_note(asked: &Asked<'_>, gas: Gas, other: Gas, air: AbsolutePressure) -> String {
    let viscosity = |gas: Gas| {
        gas.viscosity_pa_s.map_or_else(
            || {
                format!(
                    "no viscosity of {} is held, so that viscous flow is left out",
                    gas.name
                )
            },
            |held| {
                format!(
                    "{} {} µPa s [{}]",
                    gas.name,
                    crate::working::rounded(held.value * 1e6, 2),
                    held.source.citation
                )
            },
        )
    };
    let pressures = |texts: &[String]| texts.join(" against ");
    let under = match (asked.between, asked.other_between) {
        ([], []) => "at like pressures".to_owned(),
        ([], both) | (both, []) => format!("{} for both", pressures(both)),
        (one, two) => format!(
            "{} at {}, {} at {}",
            gas.name,
            pressures(one),
            other.name,
            pressures(two)
        ),
    };
    let air = crate::working::rounded(air.si() / 1e5, 3);
    format!(
        "{under}, gauge pressures with air at {air} bar a. Viscosity at 20 °C and 1 atm: {}; {}.",
        viscosity(gas),
        viscosity(other)
    )
}

impl Answer {
    fn print(&self) -> String {
        let mut text = String::new();
        for leak in &self.leaks {
            let _ = writeln!(text, "{}:", leak.heading);
            for value in &leak.values {
                let _ = writeln!(text, "  {value}");
            }
        }
        for note in &self.notes {
            let _ = writeln!(text, "  = {note}");
        }
        text
    }

    fn to_json(&self, asked: &Asked<'_>) -> Value {
        json!({
            "version": 1,
            "command": "convert",
            "quantity": asked.quantity,
            "temperature-k": self.temperature_k,
            "year-days": 365,
            "results": self.leaks.iter().map(|leak| json!({
                "of": leak.heading,
                "gas": leak.gas.map(|gas| gas.name),
                "molar-mass-g-mol": leak.gas.map(|gas| gas.molar_mass_kg_per_kmol),
                "throughput-pa-m3-s": leak.throughput,
                "mass-rate-kg-s": leak.gas.map(|gas| mass_rate(leak.throughput, gas.molar_mass_kg_per_kmol, self.temperature_k)),
                "printed": leak.values,
            })).collect::<Vec<_>>(),
            "notes": self.notes,
        })
    }
}
