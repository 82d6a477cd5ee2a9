//! Fields of a finding: the first list under its heading in `findings.md`.

use crate::vocabulary::word::Word;

/// What a finding is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FindingKind {
    /// A leak.
    Leak,
    /// Something that may be a leak.
    Suspect,
    /// A defect that is not a leak.
    Defect,
}

impl Word for FindingKind {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("leak", FindingKind::Leak, "a leak"),
        ("suspect", FindingKind::Suspect, "may be a leak"),
        ("defect", FindingKind::Defect, "a defect that is not a leak"),
    ];
}

/// How a finding was left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FindingState {
    /// Repaired, and the repair was shown to hold.
    RepairedProved,
    /// Repaired, without such a proof.
    RepairedNotProved,
    /// Repaired for the time being.
    Temporary,
    /// Shut off from the rest.
    Isolated,
    /// Left as it was.
    Open,
    /// Still a suspicion.
    Suspect,
    /// The suspicion was cleared.
    SuspectCleared,
}

impl Word for FindingState {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "repaired, proved",
            FindingState::RepairedProved,
            "repaired, and shown to hold",
        ),
        (
            "repaired, not proved",
            FindingState::RepairedNotProved,
            "repaired, not re-tested",
        ),
        (
            "temporary",
            FindingState::Temporary,
            "repaired for the time being",
        ),
        ("isolated", FindingState::Isolated, "shut off from the rest"),
        ("open", FindingState::Open, "left as it was"),
        ("suspect", FindingState::Suspect, "still a suspicion"),
        (
            "suspect cleared",
            FindingState::SuspectCleared,
            "the suspicion was cleared",
        ),
    ];
}

/// A field of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FindingField {
    /// What it is.
    Kind,
    /// What was seen, heard or measured, line by line.
    Evidence,
    /// How large the leak is and how that was found.
    Size,
    /// Why it leaks.
    Cause,
    /// A repair; may stand more than once.
    Repair,
    /// A proof of a repair: a test's id or a look; may stand more than once.
    Proof,
    /// How it was left.
    State,
    /// Which circuit, where the point does not say it.
    Circuit,
    /// A remark that reaches no output.
    Private,
}

impl Word for FindingField {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("kind", FindingField::Kind, "leak, suspect or defect"),
        (
            "evidence",
            FindingField::Evidence,
            "lines `[day 2] HH:MM method [instrument], result[; detail]`",
        ),
        (
            "size",
            FindingField::Size,
            "`30 g/yr, measured by electronic ld-2` or `…, estimated`",
        ),
        ("cause", FindingField::Cause, "why it leaks"),
        (
            "repair",
            FindingField::Repair,
            "`HH:MM what was done`; may stand more than once",
        ),
        (
            "proof",
            FindingField::Proof,
            "a test's id, or `HH:MM method [instrument], result`; may stand more than once",
        ),
        ("state", FindingField::State, "how it was left"),
        (
            "circuit",
            FindingField::Circuit,
            "which circuit, where the point does not say it",
        ),
        (
            "private",
            FindingField::Private,
            "a remark that reaches no output",
        ),
    ];
}

impl FindingField {
    /// Whether it may stand more than once.
    pub fn repeats(self) -> bool {
        matches!(
            self,
            FindingField::Repair | FindingField::Proof | FindingField::Private
        )
    }
}
