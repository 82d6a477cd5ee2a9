//! Pressure test: real-gas nitrogen by two readings or by a log, with its uncertainty, and what it can
//! and cannot show.

use crate::job::{Circuit, PressureTest, Visit};
use crate::text::Message;
use crate::working::hold_budget::Budget;
use crate::working::hold_change::{change, expected, nitrogenous};
use crate::working::hold_leak::{Leak, half_width, leak};
use crate::working::hold_log::log_change;
use crate::working::hold_verdict::{judge, temperature_k};
use crate::working::leak_size;
use crate::working::working::Figure;

pub use crate::working::hold_change::expected_pressure_pa;
pub use crate::working::hold_verdict::{HoldVerdict, is_long, is_steady};

/// Molar mass of nitrogen, kg/kmol, and its source.
pub const NITROGEN: (&str, f64, &str) = (
    "nitrogen",
    28.0134,
    "molar mass of N₂, 28.0134 g/mol (from memory, as CoolProp 8.0.0 uses it)",
);

/// The result of a pressure test.
#[derive(Clone, Debug)]
pub struct Hold {
    /// What it shows.
    pub verdict: HoldVerdict,
    /// Why it does not decide and what would settle it, or what limits it.
    pub reasons: Vec<Message>,
    /// Pressure expected at the end, of two readings.
    pub expected: Option<Figure>,
    /// Pressure lost beyond what temperature explains.
    pub change: Option<Figure>,
    /// What each input adds to the uncertainty of that.
    pub budget: Budget,
    /// Mean leak.
    pub leak: Option<Figure>,
    /// Largest leak that it leaves possible.
    pub limit: Option<Figure>,
    /// Smallest leak that it could have shown.
    pub smallest: Option<Figure>,
    /// The largest left possible as mass of the test gas.
    pub limit_mass: Option<Figure>,
}

impl Hold {
    /// Its figures, in the order of the report.
    pub fn figures(&self) -> impl Iterator<Item = &Figure> {
        [
            &self.expected,
            &self.change,
            &self.leak,
            &self.limit,
            &self.limit_mass,
            &self.smallest,
        ]
        .into_iter()
        .flatten()
    }

    /// Which input it would help most to know better; nothing for a strength test.
    pub fn most_help(&self) -> Option<Message> {
        let tells = self.verdict != HoldVerdict::Strength;
        self.budget.most_help().filter(|_| tells)
    }

    /// Largest leak that it leaves possible, Pa m³/s of test gas at the pressure of the test.
    pub fn limit_pa_m3_s(&self) -> Option<f64> {
        self.limit.as_ref().map(|limit| limit.value.number())
    }
}

/// Works out a test of a circuit.
pub fn hold(test: &PressureTest, circuit: &Circuit, visit: &Visit) -> Hold {
    let id = |part: &str| format!("pressure-test/{}/{part}", test.id);
    let mut reasons = Vec::new();
    let mut first = None;
    let changed = log_change(test, visit, &id("change"), &mut reasons).or_else(|| {
        first = expected(test, visit, &id("expected"), &mut reasons);
        let expected = first.as_ref()?;
        Some(change(test, visit, expected, &id("change")))
    });
    let volumes = circuit
        .volumes(test.section())
        .or_else(|| test.note.volume.as_ref().map(|volume| vec![volume]));
    let leaked = changed
        .as_ref()
        .zip(volumes)
        .map(|((change, budget), volumes)| leak(test, (change, budget), &volumes, id));
    let interval = |figure: &Figure| (figure.value.number(), half_width(figure));
    let verdict = judge(
        test,
        changed.as_ref().map(|(change, _)| interval(change)),
        leaked.as_ref().map(|leaked| interval(&leaked.mean)),
        &mut reasons,
    );
    // What is not shown is not given as a size: a strength test shows none, and a test at moving
    // temperature, or one whose pressure rose, leaves no size as the largest.
    let rose = |leaked: &Leak| interval(&leaked.mean).0 < -half_width(&leaked.mean);
    let leaked = leaked.filter(|_| verdict != HoldVerdict::Strength);
    let bounds = leaked
        .as_ref()
        .is_some_and(|leaked| is_steady(test) && !rose(leaked));
    let (leak, limit, smallest) = match leaked {
        Some(leaked) => (
            Some(leaked.mean),
            Some(leaked.limit).filter(|_| bounds),
            Some(leaked.smallest),
        ),
        None => (None, None, None),
    };
    let limit_mass = limit.as_ref().filter(|_| nitrogenous(test)).map(|limit| {
        leak_size::mass_of(
            limit,
            NITROGEN,
            mean_temperature(test),
            &id("limit-mass"),
            Message::of("hold-limit-mass-title"),
        )
    });
    let (change, budget) = changed.unzip();
    Hold {
        verdict,
        reasons,
        expected: first,
        change,
        budget: budget.unwrap_or_default(),
        leak,
        limit,
        smallest,
        limit_mass,
    }
}

fn mean_temperature(test: &PressureTest) -> f64 {
    match (temperature_k(&test.start), temperature_k(&test.end)) {
        (Some(a), Some(b)) => f64::midpoint(a, b),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => 293.15,
    }
}
