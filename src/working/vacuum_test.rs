//! Vacuum test: whether its limit was met, apart from what the rise shows about a leak.

use crate::job::{Circuit, VacuumTest};
use crate::quantity::{Flavour, Measured, Volume};
use crate::refrigerant::water_vapour_pressure_pa;
use crate::text::Noted;
use crate::working::leak_size;
use crate::working::vacuum_rule::{self, Judged, RiseVerdict, Series};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Mean rise as a throughput.
pub static RISE: Method = Method {
    id: "vacuum-rise",
    name: "Mean rise of the vacuum as a throughput",
    formula: "Q_rise = V × (p₂ − p₁) ÷ t",
    mathematics: "Q_\"rise\" = V dot (p_2 - p_1) / t",
    source: "rate of rise at constant volume, 40 CFR 1065.644 in form; moisture and outgassing are in it",
};

/// Largest leak that a rise leaves possible.
pub static UPPER: Method = Method {
    id: "vacuum-upper-bound",
    name: "Largest leak that the rise leaves possible",
    formula: "Q_up = (V + U(V)) × (max(b, 0) + U(b)), b the slope of the last third",
    mathematics: "Q_\"up\" = (V + U(V)) dot (max(b, 0) + U(b))",
    source: "gas from inside comes off ever more slowly at a steady temperature, so that the late slope bounds the leak; least squares, interval of 95 % widened for readings that hang together; the project’s own numerical study, see DEVELOPERS.md",
};

/// Pressure that water alone can reach.
pub static WATER: Method = Method {
    id: "water-saturation",
    name: "Highest pressure that water alone can reach",
    formula: "p_water = saturation pressure of water at the warmest pipe",
    mathematics: "p_\"water\" = p_\"sat\"(T)",
    source: "IAPWS SR1-86(1992) over liquid, IAPWS R14-08(2011) over ice",
};

/// Molar mass of air, kg/kmol, and its source.
const AIR: (&str, f64, &str) = (
    "air",
    28.966,
    "molar mass of dry air, 28.966 g/mol (from memory)",
);

/// Pressure that a rise is held against where no limit is noted, Pa: 500 micron.
const USUAL_HOLD_PA: f64 = 500.0 * 101_325.0 / 760_000.0;

/// Whether the limit of a vacuum test was met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Acceptance {
    /// Not above the limit over the time asked for.
    Met,
    /// Above the limit.
    NotMet,
    /// Not watched as long as was asked for.
    TooShort,
    /// No limit is noted.
    NoLimit,
}

/// The result of a vacuum test.
#[derive(Clone, Debug)]
pub struct Rise {
    /// Whether the limit was met.
    pub acceptance: Acceptance,
    /// What the rise shows; none where only the limit can be judged.
    pub verdict: Option<RiseVerdict>,
    /// Why the rise is not judged, or what its verdict rests on.
    pub reasons: Vec<String>,
    /// What would settle it.
    pub settles: Option<&'static str>,
    /// The rise as a throughput, leak, moisture and outgassing together; `None` without a volume.
    pub rise: Option<Figure>,
    /// Largest leak that it leaves possible.
    pub upper: Option<Figure>,
    /// The same as mass of air.
    pub upper_mass: Option<Figure>,
    /// Highest pressure that water alone can reach.
    pub water: Option<Figure>,
    /// The rise in figures, for its drawing.
    pub judged: Option<Judged>,
}

/// Works out a test of a circuit.
pub fn rise(test: &VacuumTest, circuit: &Circuit) -> Rise {
    let volumes = match &test.note.volume {
        Some(volume) => Some(vec![volume]),
        None => circuit.volumes(test.section()),
    };
    let mut reasons = Vec::new();
    let judged = volumes
        .as_ref()
        .and_then(|volumes| judge(test, volumes, &mut reasons));
    if volumes.is_none() {
        reasons.push("Without the volume of the part only the limit can be judged.".to_owned());
    }
    let water = water(test);
    let upper = judged
        .as_ref()
        .zip(volumes.as_ref())
        .map(|(judged, volumes)| upper(test, judged, volumes));
    let mut rise = Rise {
        acceptance: acceptance(test),
        verdict: judged.map(|judged| judged.verdict),
        settles: None,
        rise: volumes.as_ref().map(|volumes| throughput(test, volumes)),
        upper_mass: upper.as_ref().map(|upper| {
            leak_size::mass_of(
                upper,
                AIR,
                test.note
                    .warmest_pipe
                    .map_or(ASSUMED_K, |warmest| warmest.value.value.si()),
                &format!("vacuum-test/{}/upper-bound-mass", test.id),
                "The same leak as mass of air coming in",
            )
        }),
        upper,
        water,
        judged,
        reasons,
    };
    explain(test, &mut rise);
    rise
}

/// Temperature of a part whose warmest pipe is not noted, K.
const ASSUMED_K: f64 = 293.15;

/// The rule, where there is enough to judge by; else the reason why not.
fn judge(
    test: &VacuumTest,
    volumes: &[&Noted<Measured<Volume>>],
    reasons: &mut Vec<String>,
) -> Option<Judged> {
    let Some(log) = &test.log else {
        reasons.push(
            "Two readings show whether the limit was met; what raised the pressure only a log can show."
                .to_owned(),
        );
        return None;
    };
    let moved = spread(&log.temperature_k);
    if moved > vacuum_rule::STEADY_K {
        reasons.push(format!(
            "The temperature moved by {} K during the rise: warming drives gas out, cooling holds it back, so that only the limit can be judged.",
            crate::working::rounded(moved, 1)
        ));
        return None;
    }
    let last = log.pressure_pa.last().copied().unwrap_or(f64::NAN);
    if last > vacuum_rule::HIGHEST_PA {
        reasons.push(
            "The pressure rose above a tenth of the atmosphere, where a leak no longer flows at a constant rate."
                .to_owned(),
        );
        return None;
    }
    if log.time_s.len() < vacuum_rule::FEWEST_ROWS || test.seconds() < vacuum_rule::SHORTEST_S {
        reasons.push(
            "What raised the pressure is judged only from 20 minutes and 30 rows on.".to_owned(),
        );
        return None;
    }
    if spread(&log.pressure_pa) == 0.0 && log.pressure_step_pa > 0.0 {
        reasons.push(
            "The gauge showed one and the same value throughout; see that it moves.".to_owned(),
        );
    }
    vacuum_rule::judged(&Series {
        time_s: &log.time_s,
        pressure_pa: &log.pressure_pa,
        volume_m3: volumes.iter().map(|volume| volume.value.value.si()).sum(),
        volume_half_m3: half_width(volumes),
        step_pa: log.pressure_step_pa,
        hold_pa: test
            .note
            .accept_below
            .map_or(USUAL_HOLD_PA, |limit| limit.value.value.si()),
        leak_limit: test.note.leak_limit.map(|limit| limit.value.value.si()),
    })
}

fn half_width(volumes: &[&Noted<Measured<Volume>>]) -> f64 {
    volumes
        .iter()
        .map(|volume| volume.value.uncertainty.unwrap_or(0.0))
        .fold(0.0, f64::hypot)
}

/// From the lowest to the highest of some values; 0 for none.
fn spread(values: &[f64]) -> f64 {
    let lowest = values.iter().copied().fold(f64::INFINITY, f64::min);
    let highest = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    (highest - lowest).max(0.0)
}

/// Says what a verdict rests on, and what would settle it.
fn explain(test: &VacuumTest, rise: &mut Rise) {
    let Some(judged) = &rise.judged else {
        return;
    };
    if test
        .log
        .as_ref()
        .is_some_and(|log| log.temperature_k.is_empty())
    {
        rise.reasons.push(
            "No temperature is in the log: what is said of the rise holds if the part did not warm or cool by more than 2 K."
                .to_owned(),
        );
    }
    let end = test.end.pressure.value.value.si();
    let beyond_water = rise
        .water
        .as_ref()
        .is_some_and(|water| end > water.value.number());
    if beyond_water {
        rise.reasons.push(
            "The pressure passed what water at the warmest pipe can reach: it is not water alone."
                .to_owned(),
        );
    } else if rise.water.is_some() && judged.verdict == RiseVerdict::Moisture {
        rise.reasons.push(
            "The pressure stayed below what water at the warmest pipe can reach: water can explain it."
                .to_owned(),
        );
    }
    rise.settles = match judged.verdict {
        RiseVerdict::Leak => Some(
            "To settle it: pump on and repeat. The slope of a leak comes back, gas from inside rises less; or find it under pressure.",
        ),
        RiseVerdict::Moisture => Some(
            "A wet system hides a leak: dry it and repeat the test, or test it under pressure.",
        ),
        RiseVerdict::Inconclusive => Some(
            "To settle it: pump longer and repeat, and compare the late slopes; or test it under pressure.",
        ),
        RiseVerdict::NothingLarger => None,
    };
}

fn upper(test: &VacuumTest, judged: &Judged, volumes: &[&Noted<Measured<Volume>>]) -> Figure {
    let id = format!("vacuum-test/{}/upper-bound", test.id);
    let mut working = Working::of(&UPPER, id, "Largest leak that the rise leaves possible");
    for volume in volumes {
        working.take("V", volume);
    }
    let log = test.log.as_ref();
    let rows = log.map_or(0, |log| log.time_s.len());
    let origin = || match log.and_then(|log| log.span) {
        Some(span) => Origin::Note(span),
        None => Origin::Note(test.note.whole.span),
    };
    working.input(
        "b",
        Value::Words(format!(
            "{} ± {} Pa/min",
            significant(judged.late.pa_s * 60.0, judged.late.half_pa_s * 60.0),
            significant(judged.late.half_pa_s * 60.0, judged.late.half_pa_s * 60.0)
        )),
        origin(),
    );
    working.note(format!(
        "Fitted to the last third of {rows} rows; the first third rose {} times as fast.{}",
        crate::working::rounded(judged.early_pa_s / judged.late.pa_s.abs().max(1e-12), 1),
        if judged.curved {
            " The rise slows down beyond chance."
        } else {
            ""
        }
    ));
    working.finish(Value::Computed {
        flavour: Flavour::Throughput,
        si: judged.upper,
        uncertainty: None,
    })
}

/// A number to the second digit of its half width.
fn significant(number: f64, half: f64) -> String {
    let decimals = if half > 0.0 {
        (1.0 - half.log10().floor()).clamp(0.0, 6.0)
    } else {
        3.0
    };
    crate::working::rounded(number, decimals as usize)
}

fn water(test: &VacuumTest) -> Option<Figure> {
    let warmest = test.note.warmest_pipe?;
    let pressure = water_vapour_pressure_pa(warmest.value.value.si())?;
    let id = format!("vacuum-test/{}/water", test.id);
    let mut working = Working::of(&WATER, id, "Highest pressure that water alone can reach");
    working.take("T", &warmest);
    Some(working.finish(Value::Computed {
        flavour: Flavour::VacuumPressure,
        si: pressure,
        uncertainty: None,
    }))
}

fn acceptance(test: &VacuumTest) -> Acceptance {
    let Some(limit) = test.note.accept_below else {
        return Acceptance::NoLimit;
    };
    let limit = limit.value.value.si();
    let within = test
        .note
        .accept_within
        .map(|within| within.value.value.si());
    let window = within.unwrap_or(f64::INFINITY);
    let highest = match &test.log {
        Some(log) => log
            .time_s
            .iter()
            .zip(&log.pressure_pa)
            .filter(|(time, _)| **time <= window)
            .map(|(_, pressure)| *pressure)
            .fold(f64::NEG_INFINITY, f64::max),
        None => test.end.pressure.value.value.si(),
    };
    if highest > limit * (1.0 + 1e-9) {
        return Acceptance::NotMet;
    }
    match within {
        Some(within) if test.seconds() < within - 1.0 => Acceptance::TooShort,
        _ => Acceptance::Met,
    }
}

fn throughput(test: &VacuumTest, volumes: &[&Noted<Measured<Volume>>]) -> Figure {
    let id = format!("vacuum-test/{}/rise", test.id);
    let mut working = Working::of(&RISE, id, "Mean rise of the vacuum");
    let p1 = working.take("p₁", &test.start.pressure);
    let p2 = working.take("p₂", &test.end.pressure);
    let volume: f64 = volumes.iter().map(|noted| working.take("V", noted)).sum();
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
    working.note("Moisture and outgassing raise the pressure like a leak does: within the uncertainty of volume and gauge, which is not worked out here, a leak alone is not larger than this, unless the system cooled during the test.");
    working.finish(Value::Computed {
        flavour: Flavour::Throughput,
        si: volume * (p2 - p1) / seconds,
        uncertainty: None,
    })
}
