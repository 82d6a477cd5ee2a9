//! Uncertainty budget of a pressure test: what each input adds to the change of pressure, and which
//! one it would help most to know better.

use crate::quantity::Flavour;
use crate::text::Message;
use crate::working::working::{Origin, Value, Working, rounded};

/// Which input a contribution belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// The thermometer, and the gas that lags behind it.
    Temperature,
    /// The pressure gauge.
    Gauge,
    /// The pressure of the air around a gauge.
    Air,
    /// What a fit of the log leaves over.
    Scatter,
}

/// What one input adds.
#[derive(Clone, Debug, PartialEq)]
pub struct Contribution {
    /// Which input.
    pub cause: Cause,
    /// What it is.
    pub what: Message,
    /// Standard uncertainty of the change of pressure from it, Pa.
    pub pascal: f64,
    /// Source or assumption.
    pub origin: Origin,
}

/// All contributions to the change of pressure of a test, uncorrelated.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Budget {
    /// In the order of the formula.
    pub contributions: Vec<Contribution>,
}

impl Budget {
    /// Adds a contribution and takes it into a working by its symbol.
    pub(super) fn add(
        &mut self,
        working: &mut Working,
        symbol: &'static str,
        contribution: Contribution,
    ) {
        working.input(
            symbol,
            Value::Computed {
                flavour: Flavour::PressureDifference,
                si: contribution.pascal,
                uncertainty: None,
            },
            contribution.origin.clone(),
        );
        self.contributions.push(contribution);
    }

    /// Combined variance, Pa².
    pub fn variance(&self) -> f64 {
        self.contributions
            .iter()
            .map(|part| part.pascal.powi(2))
            .sum()
    }

    /// Share of the variance of one contribution, 0 to 1.
    pub fn share(&self, contribution: &Contribution) -> f64 {
        let whole = self.variance();
        if whole > 0.0 {
            contribution.pascal.powi(2) / whole
        } else {
            0.0
        }
    }

    /// Which input it would help most to know better, as a sentence.
    pub fn most_help(&self) -> Option<Message> {
        let share = |cause| -> f64 {
            let of_it = self.contributions.iter().filter(|part| part.cause == cause);
            of_it.map(|part| self.share(part)).sum()
        };
        let (cause, most) = [Cause::Temperature, Cause::Scatter, Cause::Gauge, Cause::Air]
            .map(|cause| (cause, share(cause)))
            .into_iter()
            .reduce(|a, b| if b.1 > a.1 { b } else { a })?;
        let id = match cause {
            Cause::Temperature => "help-temperature",
            Cause::Scatter => "help-scatter",
            Cause::Gauge => "help-gauge",
            Cause::Air => "help-air",
        };
        let finer = if share(Cause::Gauge) < 0.1 {
            "little"
        } else {
            "some"
        };
        (most > 0.0).then(|| {
            Message::of(id)
                .figure("share", format!("{}\u{a0}%", rounded(100.0 * most, 0)))
                .with("finer", finer)
        })
    }
}
