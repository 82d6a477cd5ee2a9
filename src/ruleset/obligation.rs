//! Something a rule asks for: what, counted from what, by when, and whether it was done.

use crate::job::Moment;
use crate::ruleset::RuleSet;
use crate::text::Span;
use crate::vocabulary::Identifier;
use jiff::civil::Date;

/// What kind of thing a rule asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Duty {
    /// Repair of a leak.
    Repair,
    /// Test of a repair before refrigerant goes back.
    InitialTest,
    /// Test of a repair after normal operation.
    FollowUp,
    /// Check of a repair.
    Recheck,
    /// Leak check or leak inspection.
    LeakCheck,
    /// Leakage detection system to be fitted.
    DetectionSystem,
    /// Check of the leakage detection system.
    DetectionCheck,
    /// Plan to retrofit or retire.
    Plan,
    /// Report of chronic loss.
    Report,
}

/// A dated thing in the notes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Event {
    /// Its day.
    pub day: Date,
    /// What it was.
    pub what: String,
    /// Where it stands.
    pub span: Span,
}

/// Something a rule asks for.
#[derive(Clone, Debug)]
pub struct Obligation {
    /// The rule.
    pub rules: &'static RuleSet,
    /// The citation.
    pub source: String,
    /// What kind.
    pub duty: Duty,
    /// What has to be done, in plain words.
    pub what: String,
    /// Number of the circuit.
    pub circuit: usize,
    /// The point it is about.
    pub point: Option<Identifier>,
    /// What it counts from.
    pub from: Event,
    /// Not before this moment.
    pub not_before: Option<Moment>,
    /// What has to have passed before, in words.
    pub not_before_words: Option<String>,
    /// The last day.
    pub by: Date,
    /// More about it: extensions, exceptions.
    pub note: Option<String>,
    /// What did it; none while it is open.
    pub done: Option<Event>,
}

impl Obligation {
    /// Whether it is from memory in part.
    pub fn verify(&self) -> bool {
        self.rules.verify
    }
}
