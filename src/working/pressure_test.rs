//! Pressure test by two readings: real-gas nitrogen, uncertainty by the GUM, and what it can and cannot show.

use crate::job::{Atmosphere, Circuit, PressureReading, PressureTest, Visit};
use crate::quantity::{AbsolutePressure, Flavour, Measured, Pressure};
use crate::refrigerant::nitrogen_z;
use crate::text::Noted;
use crate::vocabulary::readings_file::{PressureTestPurpose, TestGas};
use crate::working::leak_size;
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
    formula: "Δ = p₂' − p₂;  u²(Δ) = u²(p₁) + u²(p₂) + (p ÷ T)² × (2u²(T) + 2u²(lag) + (f ΔT)²) + u²(air);  U = 2u",
    mathematics: "Delta = p'_2 - p_2, \\ u^2(Delta) = u^2(p_1) + u^2(p_2) + u^2(\"air\") \\ quad + (p/T)^2 (2 u^2(T) + 2 u^2(\"lag\") + (f Delta T)^2)",
    source: "uncorrelated inputs, JCGM 100:2008 5.1; a reading's step as step/√12, F.2.2.1; coverage factor 2",
};

/// Mean leak over the test.
pub static LEAK: Method = Method {
    id: "hold-leak",
    name: "Mean leak over the test",
    formula: "Q = Δ × V ÷ t",
    mathematics: "Q = (Delta dot V) / t",
    source: "constant volume; gas at the temperature of the test (pressure change method of EN 13184 in scope)",
};

/// What a test shows at most.
pub static LIMIT: Method = Method {
    id: "hold-limit",
    name: "Largest leak that this test leaves possible",
    formula: "Q_up = max(Q, 0) + U(Q)",
    mathematics: "Q_\"up\" = max(Q, 0) + U(Q)",
    source: "upper end of the interval of the leak, coverage factor 2",
};

/// Standard uncertainty of a pipe temperature, K.
const TEMPERATURE_K: f64 = 0.3;
/// Standard uncertainty of the gas lagging behind the pipe, K.
const LAG_K: f64 = 0.7;
/// Share of a temperature change that the gas may not have followed.
const FOLLOWED: f64 = 0.10;
/// Half width of the change of the air pressure between two gauge readings, Pa.
const AIR_PA: f64 = 500.0;
/// Where those come from.
const STUDY: &str = "simulated holds with these values were covered in 90 to 100 % of runs; not measured on this plant";

/// Molar mass of nitrogen, kg/kmol, and its source.
pub const NITROGEN: (&str, f64, &str) = (
    "nitrogen",
    28.0134,
    "molar mass of N₂, 28.0134 g/mol (from memory, as CoolProp 8.0.0 uses it)",
);

/// What a pressure test shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HoldVerdict {
    /// Nothing larger than the limit.
    NothingLarger,
    /// More was lost than temperature and readings explain.
    Leak,
    /// It does not decide.
    Inconclusive,
    /// The pressure held within its uncertainty; without a volume no size can be given.
    HeldNoSize,
    /// A strength test: it held the pressure.
    Strength,
}

/// The result of a pressure test.
#[derive(Clone, Debug)]
pub struct Hold {
    /// What it shows.
    pub verdict: HoldVerdict,
    /// Why it does not decide, or what limits it.
    pub reasons: Vec<String>,
    /// Pressure expected at the end.
    pub expected: Option<Figure>,
    /// Pressure lost beyond what temperature explains.
    pub change: Option<Figure>,
    /// Mean leak.
    pub leak: Option<Figure>,
    /// Largest leak that it leaves possible.
    pub limit: Option<Figure>,
    /// That leak as mass of the test gas.
    pub limit_mass: Option<Figure>,
}

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

/// Works out a test of a circuit.
pub fn hold(test: &PressureTest, circuit: &Circuit, visit: &Visit) -> Hold {
    let id = |part: &str| format!("pressure-test/{}/{part}", test.id);
    let mut hold = Hold {
        verdict: HoldVerdict::Inconclusive,
        reasons: Vec::new(),
        expected: None,
        change: None,
        leak: None,
        limit: None,
        limit_mass: None,
    };
    let expected = expected(test, visit, &id("expected"), &mut hold.reasons);
    let change = expected
        .as_ref()
        .map(|expected| change(test, visit, expected, &id("change")));
    if let (Some(change), Some(volumes)) = (&change, circuit.volumes(test.section())) {
        let (leak, limit) = leak(test, change, &volumes, &id("leak"), &id("limit"));
        hold.limit_mass = nitrogenous(test).then(|| {
            leak_size::mass_of(
                &limit,
                NITROGEN,
                mean_temperature(test),
                &id("limit-mass"),
                "The same leak as mass of nitrogen at the pressure of the test",
            )
        });
        hold.leak = Some(leak);
        hold.limit = Some(limit);
    }
    if test.log.is_some() {
        hold.reasons.push(
            "Worked out from the first and the last row of the log; the rows between are only drawn."
                .to_owned(),
        );
    }
    hold.verdict = verdict(test, change.as_ref(), hold.leak.as_ref(), &mut hold.reasons);
    hold.expected = expected;
    hold.change = change;
    hold
}

fn nitrogenous(test: &PressureTest) -> bool {
    matches!(
        test.note.gas.map(|gas| gas.value),
        Some(TestGas::Nitrogen | TestGas::FormingGas)
    )
}

fn temperature(reading: &PressureReading) -> Option<f64> {
    reading.temperature.map(|noted| noted.value.value.si())
}

fn mean_temperature(test: &PressureTest) -> f64 {
    match (temperature(&test.start), temperature(&test.end)) {
        (Some(a), Some(b)) => f64::midpoint(a, b),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => 293.15,
    }
}

/// Absolute pressure of a reading, taken into a working with the air pressure it needs.
fn absolute(
    working: &mut Working,
    symbol: &'static str,
    noted: &Noted<Measured<Pressure>>,
    atmosphere: &Atmosphere,
    taken: &mut bool,
) -> f64 {
    working.take(symbol, noted);
    let air: AbsolutePressure = atmosphere.pressure();
    if matches!(noted.value.value, Pressure::Gauge(_)) && !*taken {
        *taken = true;
        let origin = match atmosphere {
            Atmosphere::Barometer(noted) => Origin::Note(noted.span),
            Atmosphere::Altitude(noted) => Origin::Note(noted.span),
            Atmosphere::Standard => {
                Origin::Assumed("standard atmosphere, for want of a barometer or an altitude")
            }
        };
        working.input(
            "p_air",
            Value::Computed {
                flavour: Flavour::AbsolutePressure,
                si: air.si(),
                uncertainty: None,
            },
            origin,
        );
    }
    noted.value.value.absolute(air).si()
}

fn expected(
    test: &PressureTest,
    visit: &Visit,
    id: &str,
    reasons: &mut Vec<String>,
) -> Option<Figure> {
    let mut working = Working::of(&EXPECTED, id, "Pressure expected at the end of the test");
    let mut taken = false;
    let p1 = absolute(
        &mut working,
        "p₁",
        &test.start.pressure,
        &visit.atmosphere,
        &mut taken,
    );
    let (Some(t1), Some(t2)) = (&test.start.temperature, &test.end.temperature) else {
        reasons.push("The temperature was not read at both ends, so that a change of pressure cannot be told from warming or cooling.".to_owned());
        return None;
    };
    let t1 = working.take("T₁", t1);
    let t2 = working.take("T₂", t2);
    if !nitrogenous(test) {
        reasons.push("The correction for temperature is made for nitrogen only.".to_owned());
        return None;
    }
    let Some(expected) = expected_pressure_pa(p1, t1, t2) else {
        reasons.push("The readings lie outside the table of nitrogen (0.5 to 60 bar absolute, −40 to 70 °C).".to_owned());
        return None;
    };
    for (symbol, pressure, temperature) in [("Z₁", p1, t1), ("Z₂", expected, t2)] {
        working.input(
            symbol,
            Value::Number(nitrogen_z(pressure, temperature)?, 5),
            Origin::Table("compressibility of nitrogen, CoolProp 8.0.0".to_owned()),
        );
    }
    if test
        .note
        .gas
        .is_some_and(|gas| gas.value == TestGas::FormingGas)
    {
        working.note("Five percent of hydrogen in the nitrogen is left out of Z.");
    }
    Some(working.finish(Value::Computed {
        flavour: Flavour::AbsolutePressure,
        si: expected,
        uncertainty: Some(2.0 * temperature_variance(expected / t2, t2 - t1).sqrt()),
    }))
}

/// Standard uncertainty of a reading, Pa: as written over √3, else the step over √12.
fn reading_uncertainty(pressure: &Measured<Pressure>) -> f64 {
    match pressure.uncertainty {
        Some(half) => half / 3f64.sqrt(),
        None => pressure.step / 12f64.sqrt(),
    }
}

/// Part of the variance of the change that comes from the temperatures, Pa²: `(p/T)² (2u²(T) +
/// 2u²(lag) + (f ΔT)²)`, from Pa/K and K.
fn temperature_variance(pa_per_kelvin: f64, difference_k: f64) -> f64 {
    let kelvin =
        2.0 * TEMPERATURE_K.powi(2) + 2.0 * LAG_K.powi(2) + (FOLLOWED * difference_k).powi(2);
    pa_per_kelvin.powi(2) * kelvin
}

fn change(test: &PressureTest, visit: &Visit, expected: &Figure, id: &str) -> Figure {
    let mut working = Working::of(
        &CHANGE,
        id,
        "Pressure lost beyond what temperature explains",
    );
    let expected_pa = working.take_figure("p₂'", expected);
    let mut taken = false;
    let p2 = absolute(
        &mut working,
        "p₂",
        &test.end.pressure,
        &visit.atmosphere,
        &mut taken,
    );
    let t1 = temperature(&test.start).unwrap_or(293.15);
    let t2 = temperature(&test.end).unwrap_or(293.15);
    let per_kelvin = expected_pa / t2;
    let mut kelvin = |symbol, value, reason| {
        working.input(
            symbol,
            Value::Computed {
                flavour: Flavour::TemperatureDifference,
                si: value,
                uncertainty: None,
            },
            Origin::Assumed(reason),
        )
    };
    kelvin("u(T)", TEMPERATURE_K, STUDY);
    kelvin("u(lag)", LAG_K, STUDY);
    working.input("f", Value::Number(FOLLOWED, 2), Origin::Assumed(STUDY));
    let u_p1 = reading_uncertainty(&test.start.pressure.value);
    let u_p2 = reading_uncertainty(&test.end.pressure.value);
    for (symbol, value, noted) in [
        ("u(p₁)", u_p1, &test.start.pressure),
        ("u(p₂)", u_p2, &test.end.pressure),
    ] {
        working.input(
            symbol,
            Value::Computed {
                flavour: Flavour::PressureDifference,
                si: value,
                uncertainty: None,
            },
            Origin::Note(noted.span),
        );
    }
    let u_air = if taken { AIR_PA / 3f64.sqrt() } else { 0.0 };
    if taken {
        working.input(
            "u(air)",
            Value::Computed {
                flavour: Flavour::PressureDifference,
                si: u_air,
                uncertainty: None,
            },
            Origin::Assumed("the air pressure may have changed by 5 hPa between the readings"),
        );
    }
    let variance =
        u_p1.powi(2) + u_p2.powi(2) + temperature_variance(per_kelvin, t2 - t1) + u_air.powi(2);
    working
        .note("A constant error of the gauge cancels, since both readings are of the same gauge.");
    working.finish(Value::Computed {
        flavour: Flavour::PressureDifference,
        si: expected_pa - p2,
        uncertainty: Some(2.0 * variance.sqrt()),
    })
}

fn leak(
    test: &PressureTest,
    change: &Figure,
    volumes: &[&Noted<Measured<crate::quantity::Volume>>],
    id: &str,
    limit_id: &str,
) -> (Figure, Figure) {
    let mut working = Working::of(&LEAK, id, "Mean leak over the test");
    let delta = working.take_figure("Δ", change);
    let mut volume = 0.0;
    let mut volume_variance = 0.0;
    for noted in volumes {
        volume += working.take("V", noted);
        volume_variance += noted.value.uncertainty.unwrap_or(0.0).powi(2);
    }
    let seconds = test.seconds();
    working.input(
        "t",
        Value::Computed {
            flavour: Flavour::Duration,
            si: seconds,
            uncertainty: None,
        },
        Origin::Notes(vec![test.start.at.span, test.end.at.span]),
    );
    let q = delta * volume / seconds;
    let u_delta = uncertainty(change);
    let u_volume = delta * volume_variance.sqrt() / seconds;
    let u = (u_delta * volume / seconds).hypot(u_volume);
    let leak = working.finish(Value::Computed {
        flavour: Flavour::Throughput,
        si: q,
        uncertainty: Some(u),
    });
    let mut working = Working::of(
        &LIMIT,
        limit_id,
        "Largest leak that this test leaves possible",
    );
    working.take_figure("Q", &leak);
    let limit = working.finish(Value::Computed {
        flavour: Flavour::Throughput,
        si: q.max(0.0) + u,
        uncertainty: None,
    });
    (leak, limit)
}

fn uncertainty(figure: &Figure) -> f64 {
    match figure.value {
        Value::Computed { uncertainty, .. } => uncertainty.unwrap_or(0.0),
        _ => 0.0,
    }
}

/// Hours from which a test decides whatever the temperatures did.
const LONG_HOURS: f64 = 23.0;
/// Difference of start and end temperature up to which a shorter test decides, K.
const SAME_K: f64 = 2.0;

fn verdict(
    test: &PressureTest,
    change: Option<&Figure>,
    leak: Option<&Figure>,
    reasons: &mut Vec<String>,
) -> HoldVerdict {
    if test
        .note
        .purpose
        .is_some_and(|purpose| purpose.value == PressureTestPurpose::Strength)
    {
        return HoldVerdict::Strength;
    }
    let Some(change) = change else {
        return HoldVerdict::Inconclusive;
    };
    let short = test.seconds() < LONG_HOURS * 3600.0;
    let warmed = temperature(&test.start)
        .zip(temperature(&test.end))
        .is_some_and(|(a, b)| (a - b).abs() > SAME_K + 1e-9);
    if short && warmed {
        reasons.push("The test was shorter than 23 hours and its start and end temperatures differ by more than 2 K.".to_owned());
        return HoldVerdict::Inconclusive;
    }
    let delta = change.value.number();
    let u = uncertainty(change);
    let Some(leak) = leak else {
        reasons.push(
            "The volume under test is not noted, so that no leak size can be stated.".to_owned(),
        );
        return if delta > u {
            HoldVerdict::Leak
        } else if delta < -u {
            reasons.push("The pressure rose by more than the readings explain.".to_owned());
            HoldVerdict::Inconclusive
        } else {
            HoldVerdict::HeldNoSize
        };
    };
    let (q, uq) = (leak.value.number(), uncertainty(leak));
    let limit = test.note.leak_limit.map(|limit| limit.value.value.si());
    if q < -uq {
        reasons.push("The pressure rose by more than the readings explain.".to_owned());
        return HoldVerdict::Inconclusive;
    }
    match limit {
        Some(limit) if q - uq > limit / 3.0 => HoldVerdict::Leak,
        Some(limit) if q + uq < limit => HoldVerdict::NothingLarger,
        Some(_) => {
            reasons
                .push("What it could have shown is coarser than the limit asked for.".to_owned());
            HoldVerdict::Inconclusive
        }
        None if q - uq > 0.0 => HoldVerdict::Leak,
        None => HoldVerdict::NothingLarger,
    }
}
