//! Something that has to be done: what, counted from what, by when, and whether it was done.

use crate::job::Moment;
use crate::ruleset::RuleSet;
use crate::text::{Message, Noted, Span, Text};
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
    /// What the plan to retrofit or retire says.
    PlanCompletion,
    /// Report of chronic loss.
    Report,
    /// Anything else, by a date set by hand.
    ReturnVisit,
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

/// A date set by hand.
#[derive(Clone, Copy, Debug)]
pub struct Typed {
    /// The date.
    pub by: Noted<Date>,
    /// Number of the visit that set it.
    pub visit: usize,
    /// The last day that the rule allows, with the extension noted; none where no rule asks.
    pub allowed: Option<Date>,
}

/// Something that has to be done.
#[derive(Clone, Debug)]
pub struct Obligation {
    /// The rule that asks for it; none where only a date set by hand does.
    pub rules: Option<&'static RuleSet>,
    /// The citation.
    pub source: Text,
    /// What kind.
    pub duty: Duty,
    /// What has to be done, in plain words.
    pub what: Text,
    /// Number of the circuit; none: the whole system.
    pub circuit: Option<usize>,
    /// The point it is about.
    pub point: Option<Identifier>,
    /// What it counts from.
    pub from: Event,
    /// Not before this moment.
    pub not_before: Option<Moment>,
    /// What has to have passed before, in words.
    pub not_before_words: Option<Text>,
    /// The last day.
    pub by: Date,
    /// The date set by hand for it.
    pub typed: Option<Typed>,
    /// More about it: extensions, exceptions.
    pub note: Option<String>,
    /// What did it; none while it is open.
    pub done: Option<Event>,
    /// Whether what is said here was only remembered, whatever the rest of the rule is.
    pub from_memory: bool,
}

impl Obligation {
    /// What a rule asks for of a circuit, open, without more about it.
    pub(super) fn of(
        (rules, source): (&'static RuleSet, Text),
        duty: Duty,
        what: Text,
        circuit: usize,
        from: Event,
        by: Date,
    ) -> Self {
        Self {
            rules: Some(rules),
            source,
            duty,
            what,
            circuit: Some(circuit),
            point: None,
            from,
            not_before: None,
            not_before_words: None,
            by,
            typed: None,
            note: None,
            done: None,
            from_memory: false,
        }
    }

    /// Whether it is from memory in part.
    pub fn verify(&self) -> bool {
        self.from_memory || self.rules.is_some_and(|rules| rules.verify)
    }

    /// Whether a date set by hand leads, being earlier than what the rule allows.
    pub fn set_by_hand(&self) -> bool {
        self.typed
            .is_some_and(|typed| typed.by.value == self.by && typed.allowed != Some(self.by))
    }

    /// Where it is asked for, in words.
    pub fn because(&self) -> Text {
        let Some(rules) = self.rules else {
            return self.source.clone();
        };
        let id = if self.set_by_hand() {
            "because-own-date"
        } else {
            "because"
        };
        Message::of(id)
            .phrase("rule", rules.title)
            .with("source", self.source.clone())
            .into()
    }

    /// Adds a sentence to what is said more about it.
    pub(super) fn add_note(&mut self, more: &str) {
        self.note = Some(match self.note.take() {
            Some(note) => format!("{note}; {more}"),
            None => more.to_owned(),
        });
    }
}
