//! Leak sizes between mass and pressure times volume per time, with gas, temperature and year stated.

use crate::quantity::Flavour;
use crate::text::{Message, Text};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Molar gas constant, J/(mol K): exact since the 2019 revision of the SI (CODATA 2018).
pub const GAS_CONSTANT: f64 = 8.314_462_618;

/// Seconds of a year of 365 days.
pub const YEAR_S: f64 = 31_536_000.0;

/// Mass rate of a throughput.
pub static MASS_OF_THROUGHPUT: Method = Method {
    id: "mass-of-throughput",
    name: "Leak size as mass",
    formula: "mass rate = Q × M ÷ (R × T)",
    mathematics: "dot(m) = (Q M) / (R T)",
    source: "ideal gas law; R = 8.314462618 J/(mol K), CODATA 2018",
};

/// Throughput of a mass rate, Pa m³/s at a temperature: `ṁ R T / M` (kg/s, K, kg/kmol).
pub fn throughput(mass_rate_kg_s: f64, molar_kg_per_kmol: f64, temperature_k: f64) -> f64 {
    mass_rate_kg_s * GAS_CONSTANT * temperature_k / (molar_kg_per_kmol * 1e-3)
}

/// Mass rate of a throughput, kg/s: `Q M / (R T)`.
pub fn mass_rate(throughput_pa_m3_s: f64, molar_kg_per_kmol: f64, temperature_k: f64) -> f64 {
    throughput_pa_m3_s * molar_kg_per_kmol * 1e-3 / (GAS_CONSTANT * temperature_k)
}

/// Takes the molar mass of a gas, kg/kmol, with its name and source.
pub(super) fn take_molar_mass(
    working: &mut Working,
    (name, molar, source): (&'static str, f64, &'static str),
) {
    let value = Message::of("molar-mass-of")
        .figure("mass", format!("{molar} g/mol"))
        .phrase("gas", name);
    let origin = Origin::Table(Text::Phrase(source));
    working.input("M", Value::Words(value.into()), origin);
}

/// The mass rate of a throughput figure, for a gas at a temperature, as a figure.
pub fn mass_of(
    throughput: &Figure,
    gas: (&'static str, f64, &'static str),
    temperature_k: f64,
    id: &str,
    title: Message,
) -> Figure {
    let (_, molar, _) = gas;
    let mut working = Working::of(&MASS_OF_THROUGHPUT, id, title);
    let q = working.take_figure("Q", throughput);
    take_molar_mass(&mut working, gas);
    working.input(
        "T",
        Value::Computed {
            flavour: Flavour::Temperature,
            si: temperature_k,
            uncertainty: None,
        },
        Origin::Constant("mean of the temperatures read"),
    );
    working.finish(Value::Computed {
        flavour: Flavour::MassRate,
        si: mass_rate(q, molar, temperature_k),
        uncertainty: None,
    })
}
