//! Two readings of a pressure test: what the end should show, and what was lost beyond that.

use crate::job::{PressureTest, Visit};
use crate::quantity::{Flavour, Measured, Pressure};
use crate::refrigerant::nitrogen_z;
use crate::text::{Message, Text};
use crate::vocabulary::readings_file::TestGas;
use crate::working::hold_air::Air;
use crate::working::hold_budget::{Budget, Cause, Contribution};
use crate::working::hold_verdict::temperature_k;
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Pressure that the end should show if no gas left.
pub static EXPECTED: Method = Method {
    id: "expected-pressure",
    name: "Pressure expected at the end, corrected for temperature",
    formula: "p₂' = p₁ × (Z₂ × T₂) ÷ (Z₁ × T₁), absolute pressure and kelvin",
    mathematics: "p'_2 = p_1 dot (Z_2 T_2) / (Z_1 T_1)",
    source: "real gas at constant volume; Z of nitrogen from the table made with CoolProp 8.0.0",
};

/// Change that temperature does not explain.
pub static CHANGE: Method = Method {
    id: "corrected-pressure-change",
    name: "Pressure lost beyond what temperature explains",
    formula: "Δ = p₂' − p₂;  u²(Δ) = u²(p₁) + u²(p₂) + u_T² + u_lag² + u_f² + u²(air);  u_T = √2 u(T) p ÷ T, u_lag = √2 u(lag) p ÷ T, u_f = f ΔT p ÷ T;  U = 2u",
    mathematics: "Delta = p'_2 - p_2, \\ u^2(Delta) = u^2(p_1) + u^2(p_2) + u_T^2 + u_\"lag\"^2 + u_f^2 + u^2(\"air\"), \\ u_T = sqrt(2) u(T) p/T, quad u_\"lag\" = sqrt(2) u(\"lag\") p/T, quad u_f = f Delta T p/T",
    source: "uncorrelated inputs, JCGM 100:2008 5.1; a reading's step as step/√12, F.2.2.1; coverage factor 2",
};

/// Standard uncertainty of a pipe temperature, K.
const TEMPERATURE_K: f64 = 0.3;
/// Standard uncertainty of the gas lagging behind the pipe, K.
const LAG_K: f64 = 0.7;
/// Share of a temperature change that the gas may not have followed.
const FOLLOWED: f64 = 0.10;
/// Where those come from.
pub const STUDY: &str = "in simulated tests the interval built with it held the true leak in 85 to 100 % of runs; not measured on this plant";

/// End pressure of a constant amount of nitrogen, Pa, from `p₁`, `T₁`, `T₂` (Pa absolute, K).
///
/// Three fixed-point steps on `Z₂`; `None` outside the table of nitrogen.
pub fn expected_pressure_pa(p1_pa: f64, t1_k: f64, t2_k: f64) -> Option<f64> {
    let z1 = nitrogen_z(p1_pa, t1_k)?;
    let mut p2 = p1_pa * t2_k / t1_k;
    for _ in 0..3 {
        let z2 = nitrogen_z(p2, t2_k)?;
        p2 = p1_pa * z2 * t2_k / (z1 * t1_k);
    }
    Some(p2)
}

/// Whether a gas is nitrogen, or nitrogen with a little hydrogen.
pub fn nitrogenous(test: &PressureTest) -> bool {
    matches!(
        test.note.gas.map(|gas| gas.value),
        Some(TestGas::Nitrogen | TestGas::FormingGas)
    )
}

/// The pressure expected at the end; says why there is none.
pub(super) fn expected(
    test: &PressureTest,
    visit: &Visit,
    id: &str,
    reasons: &mut Vec<Message>,
) -> Option<Figure> {
    let mut working = Working::of(&EXPECTED, id, Message::of("hold-expected-title"));
    let p1 = Air::of(visit).absolute(&mut working, "p₁", &test.start.pressure);
    let (Some(t1), Some(t2)) = (&test.start.temperature, &test.end.temperature) else {
        reasons.push(Message::of("hold-reason-no-temperature"));
        return None;
    };
    let t1 = working.take("T₁", t1);
    let t2 = working.take("T₂", t2);
    if !nitrogenous(test) {
        reasons.push(Message::of("hold-reason-nitrogen-only"));
        return None;
    }
    let Some(expected) = expected_pressure_pa(p1, t1, t2) else {
        reasons.push(Message::of("hold-reason-outside-table"));
        return None;
    };
    for (symbol, pressure, temperature) in [("Z₁", p1, t1), ("Z₂", expected, t2)] {
        working.input(
            symbol,
            Value::Number(nitrogen_z(pressure, temperature)?, 5),
            Origin::Table(Text::Phrase("compressibility of nitrogen, CoolProp 8.0.0")),
        );
    }
    if test
        .note
        .gas
        .is_some_and(|gas| gas.value == TestGas::FormingGas)
    {
        working.note(Message::of("hold-note-hydrogen"));
    }
    let [thermometer, lag, followed] = temperature_parts_pa(expected / t2, t2 - t1);
    Some(working.finish(Value::Computed {
        flavour: Flavour::AbsolutePressure,
        si: expected,
        uncertainty: Some(2.0 * thermometer.hypot(lag).hypot(followed)),
    }))
}

/// Standard uncertainty of a reading, Pa: as written over √3, else the step over √12.
fn reading_uncertainty(pressure: &Measured<Pressure>) -> f64 {
    match pressure.uncertainty {
        Some(half) => half / 3f64.sqrt(),
        None => pressure.step / 12f64.sqrt(),
    }
}

/// What thermometer, lag and share followed add to the change, Pa, from Pa/K and K.
fn temperature_parts_pa(pa_per_kelvin: f64, difference_k: f64) -> [f64; 3] {
    let twice = 2f64.sqrt() * pa_per_kelvin;
    [
        twice * TEMPERATURE_K,
        twice * LAG_K,
        pa_per_kelvin * FOLLOWED * difference_k.abs(),
    ]
}

/// The pressure lost beyond what temperature explains, and its uncertainty budget.
pub(super) fn change(
    test: &PressureTest,
    visit: &Visit,
    expected: &Figure,
    id: &str,
) -> (Figure, Budget) {
    let mut working = Working::of(&CHANGE, id, Message::of("hold-change-title"));
    let expected_pa = working.take_figure("p₂'", expected);
    let mut air = Air::of(visit);
    let p2 = air.absolute(&mut working, "p₂", &test.end.pressure);
    let t1 = temperature_k(&test.start).unwrap_or(293.15);
    let t2 = temperature_k(&test.end).unwrap_or(293.15);
    for (symbol, kelvin) in [("u(T)", TEMPERATURE_K), ("u(lag)", LAG_K)] {
        let value = Value::Computed {
            flavour: Flavour::TemperatureDifference,
            si: kelvin,
            uncertainty: None,
        };
        working.input(symbol, value, Origin::Assumed(STUDY));
    }
    working.input("f", Value::Number(FOLLOWED, 2), Origin::Assumed(STUDY));
    let mut budget = Budget::default();
    for (symbol, what, reading) in [
        ("u(p₁)", "budget-gauge-start", &test.start),
        ("u(p₂)", "budget-gauge-end", &test.end),
    ] {
        let part = Contribution {
            cause: Cause::Gauge,
            what: Message::of(what),
            pascal: reading_uncertainty(&reading.pressure.value),
            origin: Origin::Note(reading.pressure.span),
        };
        budget.add(&mut working, symbol, part);
    }
    let [thermometer, lag, followed] = temperature_parts_pa(expected_pa / t2, t2 - t1);
    for (symbol, what, pascal) in [
        ("u_T", "budget-thermometer", thermometer),
        ("u_lag", "budget-lag", lag),
        ("u_f", "budget-not-followed", followed),
    ] {
        let part = Contribution {
            cause: Cause::Temperature,
            what: Message::of(what),
            pascal,
            origin: Origin::Assumed(STUDY),
        };
        budget.add(&mut working, symbol, part);
    }
    air.contribute(&mut working, &mut budget);
    working.note(Message::of("hold-note-gauge-cancels"));
    let figure = working.finish(Value::Computed {
        flavour: Flavour::PressureDifference,
        si: expected_pa - p2,
        uncertainty: Some(2.0 * budget.variance().sqrt()),
    });
    (figure, budget)
}
