//! From a change of pressure to the mean leak, the largest left possible, and the smallest that the test
//! could have resolved.

use crate::job::PressureTest;
use crate::quantity::{Flavour, Measured, Volume};
use crate::text::{Message, Noted};
use crate::working::hold_budget::Budget;
use crate::working::working::{Figure, Method, Origin, Value, Working};

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
    source: "upper end of the interval of the leak; coverage factor 2 for two readings, 3 for a fitted log",
};

/// What a test can tell from none.
pub static SMALLEST: Method = Method {
    id: "hold-smallest",
    name: "Smallest leak that this test could have shown",
    formula: "Q_min = 1.96 × u(Δ) × V ÷ t",
    mathematics: "Q_\"min\" = (1.96 dot u(Delta) dot V) / t",
    source: "a loss that differs from none at the 95 % level, normal distribution; u(Δ) from the test's own budget",
};

/// The leak of a test, and what follows from it.
pub(super) struct Leak {
    pub(super) mean: Figure,
    pub(super) limit: Figure,
    pub(super) smallest: Figure,
}

/// Half width of the uncertainty of a figure; 0 where it has none.
pub(super) fn half_width(figure: &Figure) -> f64 {
    match figure.value {
        Value::Computed { uncertainty, .. } => uncertainty.unwrap_or(0.0),
        _ => 0.0,
    }
}

fn throughput(si: f64, uncertainty: Option<f64>) -> Value {
    Value::Computed {
        flavour: Flavour::Throughput,
        si,
        uncertainty,
    }
}

/// Takes the volumes, m³, and the time, s.
fn take_volume_and_time(
    working: &mut Working,
    test: &PressureTest,
    volumes: &[&Noted<Measured<Volume>>],
) -> (f64, f64) {
    let volume = volumes.iter().map(|noted| working.take("V", noted)).sum();
    if volumes.len() > 1 {
        working.note(Message::of("note-volumes-summed"));
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
    (volume, seconds)
}

/// Works out the leak from the change of pressure over these volumes.
pub(super) fn leak(
    test: &PressureTest,
    (change, budget): (&Figure, &Budget),
    volumes: &[&Noted<Measured<Volume>>],
    id: impl Fn(&str) -> String,
) -> Leak {
    let mut working = Working::of(&LEAK, id("leak"), Message::of("hold-leak-title"));
    let delta = working.take_figure("Δ", change);
    let (volume, seconds) = take_volume_and_time(&mut working, test, volumes);
    let halves = volumes.iter().filter_map(|noted| noted.value.uncertainty);
    let u_volume = halves.map(|half| half.powi(2)).sum::<f64>().sqrt();
    let q = delta * volume / seconds;
    let u = (half_width(change) * volume / seconds).hypot(delta * u_volume / seconds);
    let leak = working.finish(throughput(q, Some(u)));

    let title = Message::of("hold-limit-title");
    let mut working = Working::of(&LIMIT, id("limit"), title);
    working.take_figure("Q", &leak);
    let limit = working.finish(throughput(q.max(0.0) + u, None));

    let title = Message::of("hold-smallest-title");
    let mut working = Working::of(&SMALLEST, id("smallest"), title);
    let u_delta = working.input(
        "u(Δ)",
        Value::Computed {
            flavour: Flavour::PressureDifference,
            si: budget.variance().sqrt(),
            uncertainty: None,
        },
        Origin::Figure(change.id.clone()),
    );
    let (volume, seconds) = take_volume_and_time(&mut working, test, volumes);
    working.note(Message::of("hold-note-smaller"));
    let smallest = working.finish(throughput(
        smallest_throughput(u_delta, volume, seconds),
        None,
    ));
    Leak {
        mean: leak,
        limit,
        smallest,
    }
}

/// Smallest resolvable leak, Pa m³/s: `1.96 u(Δ) V ÷ t`, from Pa, m³ and s.
pub fn smallest_throughput(u_delta_pa: f64, volume_m3: f64, seconds: f64) -> f64 {
    1.96 * u_delta_pa * volume_m3 / seconds
}
