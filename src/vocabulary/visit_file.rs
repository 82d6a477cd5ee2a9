//! Keys of `visit.toml`: who, when, why, safety, work, advice, how it was left.

use crate::quantity::{AbsolutePressure, Concentration, Fraction, Measured, Temperature};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::key::{Entry, Form, Identifier, Key, Table};
use crate::vocabulary::value::{LocalTime, TableMark};
use crate::vocabulary::word::Word;
use jiff::civil::Date;

/// Why the visit was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Purpose {
    /// To find leaks and repair them.
    SearchAndRepair,
    /// To find leaks.
    Search,
    /// To repair a leak found before.
    Repair,
    /// The leak check that a rule or a plan asks for.
    PeriodicCheck,
    /// To verify an earlier repair.
    Verification,
    /// Called because the plant had stopped or was about to.
    Emergency,
    /// First start, or start after a change.
    Commissioning,
    /// Change to another refrigerant.
    Retrofit,
    /// Other service work.
    Service,
    /// Taking out of use.
    Decommissioning,
}

impl Word for Purpose {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "leak search and repair",
            Purpose::SearchAndRepair,
            "to find leaks and repair them",
        ),
        ("leak search", Purpose::Search, "to find leaks"),
        ("repair", Purpose::Repair, "to repair a leak found before"),
        (
            "periodic leak check",
            Purpose::PeriodicCheck,
            "the leak check that a rule or a plan asks for",
        ),
        (
            "verification",
            Purpose::Verification,
            "to verify an earlier repair",
        ),
        (
            "emergency call",
            Purpose::Emergency,
            "called because the plant had stopped or was about to",
        ),
        (
            "commissioning",
            Purpose::Commissioning,
            "first start, or start after a change",
        ),
        (
            "retrofit",
            Purpose::Retrofit,
            "change to another refrigerant",
        ),
        ("service", Purpose::Service, "other service work"),
        (
            "decommissioning",
            Purpose::Decommissioning,
            "taking out of use",
        ),
    ];
}

/// How the system was left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeftAs {
    /// Running.
    Running,
    /// Switched off, charged.
    Off,
    /// Switched off, a part shut off.
    Isolated,
    /// Switched off, refrigerant taken out.
    Empty,
}

impl Word for LeftAs {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("running", LeftAs::Running, "running"),
        ("off", LeftAs::Off, "switched off, charged"),
        (
            "isolated",
            LeftAs::Isolated,
            "switched off, a part shut off",
        ),
        (
            "empty",
            LeftAs::Empty,
            "switched off, refrigerant taken out",
        ),
    ];
}

/// The technician's own claim of how the visit ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OutcomeWord {
    /// Leak found, repaired and proved.
    FoundAndRepaired,
    /// Leak found and left open.
    FoundLeftOpen,
    /// Refrigerant was lost and no leak was found.
    NotFound,
    /// Searched, nothing found.
    NothingFound,
    /// An earlier repair was verified.
    RepairVerified,
    /// Refrigerant was added without a repair.
    GasAdded,
    /// Changed to another refrigerant.
    Retrofitted,
}

impl Word for OutcomeWord {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "found and repaired",
            OutcomeWord::FoundAndRepaired,
            "leak found, repaired and proved",
        ),
        (
            "found, left open",
            OutcomeWord::FoundLeftOpen,
            "leak found and left open",
        ),
        (
            "not found, loss stands",
            OutcomeWord::NotFound,
            "refrigerant was lost and no leak was found",
        ),
        (
            "nothing found",
            OutcomeWord::NothingFound,
            "searched, nothing found",
        ),
        (
            "repair verified",
            OutcomeWord::RepairVerified,
            "an earlier repair was verified",
        ),
        (
            "gas added, not repaired",
            OutcomeWord::GasAdded,
            "refrigerant was added without a repair",
        ),
        (
            "retrofitted",
            OutcomeWord::Retrofitted,
            "changed to another refrigerant",
        ),
    ];
}

/// What a date noted by hand is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DueWord {
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
    /// What that plan says.
    PlanCompletion,
    /// Report of a chronic loss.
    Report,
    /// Anything else.
    ReturnVisit,
}

impl Word for DueWord {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("repair", DueWord::Repair, "repair of a leak"),
        (
            "initial verification test",
            DueWord::InitialTest,
            "test of a repair before refrigerant is added back",
        ),
        (
            "follow-up verification test",
            DueWord::FollowUp,
            "test of a repair after return to normal operation",
        ),
        (
            "check of the repair",
            DueWord::Recheck,
            "check of a repair after some running",
        ),
        (
            "leak check",
            DueWord::LeakCheck,
            "leak check or leak inspection",
        ),
        (
            "leakage detection system",
            DueWord::DetectionSystem,
            "fitting of a leakage detection system",
        ),
        (
            "check of the leakage detection system",
            DueWord::DetectionCheck,
            "its check, audit or calibration",
        ),
        (
            "plan to retrofit or retire",
            DueWord::Plan,
            "the plan, made and signed",
        ),
        (
            "retrofit or retire",
            DueWord::PlanCompletion,
            "what that plan says, done",
        ),
        (
            "report of chronic loss",
            DueWord::Report,
            "report to the authority",
        ),
        (
            "return visit",
            DueWord::ReturnVisit,
            "anything else, until the next visit; say what in `note`",
        ),
    ];
}

/// Why a repair may take longer than the rule says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Extension {
    /// An industrial process has to be shut down.
    Shutdown,
    /// Parts are not there.
    Parts,
    /// Another law stands in the way.
    OtherLaw,
    /// Radiological hazard.
    Radiological,
}

impl Word for Extension {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "industrial process shutdown",
            Extension::Shutdown,
            "an industrial process has to be shut down for the repair",
        ),
        (
            "parts not delivered",
            Extension::Parts,
            "parts cannot be had in time",
        ),
        (
            "another law",
            Extension::OtherLaw,
            "another law stands in the way",
        ),
        (
            "radiological hazard",
            Extension::Radiological,
            "radiological hazard at the place",
        ),
    ];
}

/// Keys of `attendance`.
pub mod attendance {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const BY: Key<Identifier> = Key::id("by", "Who.", "\"t2\"").required();
    pub const FROM: Key<LocalTime> =
        Key::new("from", Form::Time, "Arrived.", "2026-06-18T08:10").required();
    pub const TO: Key<LocalTime> =
        Key::new("to", Form::Time, "Left.", "2026-06-18T17:35").required();
    const KEYS: &[Entry] = &[BY.entry(), FROM.entry(), TO.entry()];
    pub static TABLE: Table = Table {
        name: "attendance",
        about: "Who was there, from when to when.",
        keys: KEYS,
    };
}

/// Keys of `[[safety-check]]`.
pub mod safety_check {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const AT: Key<LocalTime> =
        Key::new("at", Form::Time, "When.", "2026-06-18T08:20").required();
    pub const AIR: Key<Measured<Concentration>> =
        Key::quantity("air", "Refrigerant in the air of the room.", "\"0 ppm\"");
    pub const OXYGEN: Key<Measured<Fraction>> =
        Key::quantity("oxygen", "Oxygen in the air of the room.", "\"20.9 %\"");
    pub const VENTILATED: Key<bool> = Key::new(
        "ventilated",
        Form::Boolean,
        "The room was ventilated.",
        "true",
    );
    pub const LOCKED_OFF: Key<bool> = Key::new(
        "locked-off",
        Form::Boolean,
        "The plant was locked off.",
        "true",
    );
    pub const IGNITION_SOURCES: Key<String> = Key::text(
        "ignition-sources",
        "Sources of ignition found, and what was done.",
        "\"none found\"",
    );
    pub const NOTE: Key<String> = Key::text("note", "More about it.", "\"two people on the roof\"");
    const KEYS: &[Entry] = &[
        AT.entry(),
        AIR.entry(),
        OXYGEN.entry(),
        VENTILATED.entry(),
        LOCKED_OFF.entry(),
        IGNITION_SOURCES.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "safety-check",
        about: "What was checked before and during the work.",
        keys: KEYS,
    };
}

/// Keys of `[[work]]`.
pub mod work {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const PART: Key<String> = Key::text("part", "Which part.", "\"liquid drier\"").required();
    pub const WORK: Key<String> =
        Key::text("work", "What was done to it.", "\"replaced\"").required();
    pub const POINT: Key<Identifier> = Key::id(
        "point",
        "The registered point it concerns.",
        "\"rack/drier-out\"",
    );
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const AT: Key<LocalTime> = Key::new("at", Form::Time, "When.", "2026-06-18T12:30");
    pub const NITROGEN_PURGE: Key<bool> = Key::new(
        "nitrogen-purge",
        Form::Boolean,
        "Brazed with nitrogen flowing through the pipe.",
        "true",
    );
    const KEYS: &[Entry] = &[
        PART.entry(),
        WORK.entry(),
        POINT.entry(),
        CIRCUIT.entry(),
        AT.entry(),
        NITROGEN_PURGE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "work",
        about: "Work on one part.",
        keys: KEYS,
    };
}

/// Keys of `[[advice]]`.
pub mod advice {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const WHAT: Key<String> = Key::text(
        "what",
        "The advice.",
        "\"Clip the liquid line; it shakes with the compressor.\"",
    )
    .required();
    pub const TO: Key<String> = Key::text("to", "To whom.", "\"site manager\"");
    pub const ANSWER: Key<String> =
        Key::text("answer", "What they decided.", "\"agreed, next shutdown\"");
    pub const AT: Key<LocalTime> = Key::new("at", Form::Time, "When.", "2026-06-18T17:10");
    const KEYS: &[Entry] = &[
        WHAT.entry(),
        TO.entry(),
        ANSWER.entry(),
        AT.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "advice",
        about: "Advice given and what was answered.",
        keys: KEYS,
    };
}

/// Keys of `[[due]]`.
pub mod due {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const WHAT: Key<DueWord> =
        Key::word("what", "What has to be done.", "\"leak check\"").required();
    pub const BY: Key<Date> = Key::new(
        "by",
        Form::Date,
        "The last day for it. The date of a rule in force stands where it is the earlier one.",
        "2026-09-15",
    )
    .required();
    pub const CIRCUIT: Key<Identifier> = Key::id(
        "circuit",
        "Which circuit, if it is for one of several.",
        "\"a\"",
    );
    pub const POINT: Key<Identifier> = Key::id(
        "point",
        "The registered point it concerns.",
        "\"rack/drier-out\"",
    );
    pub const EXTENSION: Key<Extension> = Key::word(
        "extension",
        "Why a repair may take longer than the rule says.",
        "\"parts not delivered\"",
    );
    pub const ASKED: Key<Date> = Key::new(
        "extension-asked-for",
        Form::Date,
        "Day on which the operator asked the authority for the longer time.",
        "2026-06-25",
    );
    pub const NOTE: Key<String> = Key::text("note", "More about it.", "\"valve comes by sea\"");
    const KEYS: &[Entry] = &[
        WHAT.entry(),
        BY.entry(),
        CIRCUIT.entry(),
        POINT.entry(),
        EXTENSION.entry(),
        ASKED.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "due",
        about: "A date set by hand: what has to be done, and by when.",
        keys: KEYS,
    };
}

/// Keys of `the top of the file`.
pub mod top {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const PURPOSE: Key<Purpose> = Key::word(
        "purpose",
        "Why the visit was made.",
        "\"leak search and repair\"",
    )
    .required();
    pub const ATTENDANCE: Key<Vec<TableMark>> = Key::new(
        "attendance",
        Form::Tables(&super::attendance::TABLE),
        "Who was there, from when to when.",
        "[ { by = \"t2\", from = 2026-06-18T08:10, to = 2026-06-18T17:35 } ]",
    )
    .required();
    pub const COMPLAINT: Key<String> = Key::text(
        "complaint",
        "What the customer said.",
        "\"Ice output down by a third.\"",
    );
    pub const AMBIENT: Key<Measured<Temperature>> =
        Key::quantity("ambient", "Temperature of the air outside.", "\"17 °C\"");
    pub const BAROMETER: Key<Measured<AbsolutePressure>> =
        Key::quantity("barometer", "Air pressure at the site.", "\"1009 mbar a\"");
    pub const LEFT: Key<LeftAs> = Key::word("left", "How the system was left.", "\"running\"");
    pub const BACK: Key<LocalTime> = Key::new(
        "back-in-normal-operation",
        Form::Time,
        "When it ran normally again.",
        "2026-06-18T16:10",
    );
    pub const OUTCOME: Key<OutcomeWord> = Key::word(
        "outcome",
        "Your own claim of how it ended; Rimebook works out its own beside it.",
        "\"found and repaired\"",
    );
    pub const SAFETY_CHECK: Key<Vec<TableMark>> = Key::new(
        "safety-check",
        Form::Tables(&super::safety_check::TABLE),
        "Safety checks.",
        "",
    );
    pub const WORK: Key<Vec<TableMark>> = Key::new(
        "work",
        Form::Tables(&super::work::TABLE),
        "Work, part by part.",
        "",
    );
    pub const ADVICE: Key<Vec<TableMark>> =
        Key::new("advice", Form::Tables(&super::advice::TABLE), "Advice.", "");
    pub const DUE: Key<Vec<TableMark>> = Key::new(
        "due",
        Form::Tables(&super::due::TABLE),
        "Dates set by hand.",
        "",
    );
    const KEYS: &[Entry] = &[
        PURPOSE.entry(),
        ATTENDANCE.entry(),
        COMPLAINT.entry(),
        AMBIENT.entry(),
        BAROMETER.entry(),
        LEFT.entry(),
        BACK.entry(),
        OUTCOME.entry(),
        SAFETY_CHECK.entry(),
        WORK.entry(),
        ADVICE.entry(),
        DUE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "",
        about: "One visit.",
        keys: KEYS,
    };
}
