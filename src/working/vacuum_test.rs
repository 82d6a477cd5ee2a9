//! Vacuum test: whether its limit was met, apart from what the rise shows about a leak.

use crate::job::{Circuit, VacuumTest};
use crate::quantity::Flavour;
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Mean rise as a throughput.
pub static RISE: Method = Method {
    id: "vacuum-rise",
    name: "Mean rise of the vacuum as a throughput",
    formula: "Q_rise = V × (p₂ − p₁) ÷ t",
    mathematics: "Q_\"rise\" = V dot (p_2 - p_1) / t",
    source: "rate of rise at constant volume, 40 CFR 1065.644 in form; moisture and outgassing are in it",
};

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
    /// The rise as a throughput, leak, moisture and outgassing together; `None` without a volume.
    pub rise: Option<Figure>,
}

/// Works out a test of a circuit.
pub fn rise(test: &VacuumTest, circuit: &Circuit) -> Rise {
    Rise {
        acceptance: acceptance(test),
        rise: circuit
            .volumes(test.section())
            .map(|volumes| throughput(test, &volumes)),
    }
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

fn throughput(
    test: &VacuumTest,
    volumes: &[&crate::text::Noted<crate::quantity::Measured<crate::quantity::Volume>>],
) -> Figure {
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
