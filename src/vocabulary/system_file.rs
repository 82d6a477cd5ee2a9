//! Keys of `system.toml`: nameplate, circuits, what was in force when, points, earlier history.

use crate::quantity::{Mass, Measured, Pressure, Volume};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::key::{Entry, Form, Identifier, Key, Table};
use crate::vocabulary::value::{DateOrTime, Designation, Noted, TableMark};
use crate::vocabulary::word::Word;
use jiff::civil::Date;

/// Category of a system, as the leak-rate triggers of the rules divide them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Category {
    /// Shops, cold storage.
    CommercialRefrigeration,
    /// Refrigeration tied to a process.
    IndustrialProcess,
    /// Cooling for people.
    ComfortCooling,
    /// Lorries, containers, wagons.
    RefrigeratedTransport,
    /// Heating by a heat pump.
    HeatPump,
    /// None of these.
    Other,
}

impl Word for Category {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "commercial refrigeration",
            Category::CommercialRefrigeration,
            "shops, cold storage",
        ),
        (
            "industrial process refrigeration",
            Category::IndustrialProcess,
            "refrigeration tied to a process",
        ),
        (
            "comfort cooling",
            Category::ComfortCooling,
            "cooling for people",
        ),
        (
            "refrigerated transport",
            Category::RefrigeratedTransport,
            "lorries, containers, wagons",
        ),
        ("heat pump", Category::HeatPump, "heating by a heat pump"),
        ("other", Category::Other, "none of these"),
    ];
}

/// Whether a system is in use.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Status {
    /// In use.
    InUse,
    /// Ready, not running.
    Standby,
    /// Taken out of use and emptied, may come back.
    Mothballed,
    /// Taken out of use for good.
    Decommissioned,
}

impl Word for Status {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("in use", Status::InUse, "in use"),
        ("standby", Status::Standby, "ready, not running"),
        (
            "mothballed",
            Status::Mothballed,
            "taken out of use and emptied, may come back",
        ),
        (
            "decommissioned",
            Status::Decommissioned,
            "taken out of use for good",
        ),
    ];
}

/// What happened before this book, or by others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EarlierHappening {
    /// Refrigerant was put in.
    Charged,
    /// Refrigerant was taken out.
    Recovered,
    /// A leak was found.
    LeakFound,
    /// A leak was repaired.
    Repaired,
    /// A leak check was made.
    Checked,
    /// A repair was verified.
    Verified,
}

impl Word for EarlierHappening {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "charged",
            EarlierHappening::Charged,
            "refrigerant was put in",
        ),
        (
            "recovered",
            EarlierHappening::Recovered,
            "refrigerant was taken out",
        ),
        (
            "leak found",
            EarlierHappening::LeakFound,
            "a leak was found",
        ),
        (
            "repaired",
            EarlierHappening::Repaired,
            "a leak was repaired",
        ),
        (
            "checked",
            EarlierHappening::Checked,
            "a leak check was made",
        ),
        (
            "verified",
            EarlierHappening::Verified,
            "a repair was verified",
        ),
    ];
}

/// Keys of `[[in-force]]`.
pub mod in_force {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const FROM: Key<DateOrTime> =
        Key::new("from", Form::DateOrTime, "From when.", "2019-05-02").required();
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const REFRIGERANT: Key<Designation> = Key::new(
        "refrigerant",
        Form::Refrigerant,
        "Refrigerant from then on.",
        "\"R-449A\"",
    )
    .required();
    pub const FULL_CHARGE: Key<Measured<Mass>> =
        Key::quantity("full-charge", "Full charge from then on.", "\"86 kg\"");
    pub const FULL_CHARGE_BY: Key<String> = Key::text(
        "full-charge-by",
        "How the full charge was determined.",
        "\"weighed at installation\"",
    );
    pub const STATUS: Key<Status> = Key::word("status", "Whether it is in use.", "\"in use\"");
    const KEYS: &[Entry] = &[
        FROM.entry(),
        CIRCUIT.entry(),
        REFRIGERANT.entry(),
        FULL_CHARGE.entry(),
        FULL_CHARGE_BY.entry(),
        STATUS.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "in-force",
        about: "What held from a moment on; a retrofit or a revised charge adds another.",
        keys: KEYS,
    };
}

/// Keys of `sections`.
pub mod section {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the notes.", "\"liquid-2\"").required();
    pub const MOST: Key<Measured<Pressure>> = Key::quantity(
        "most",
        "Highest allowable pressure, as the plate says (PS).",
        "\"28 bar g\"",
    );
    pub const VOLUME: Key<Measured<Volume>> = Key::quantity(
        "volume",
        "Inner volume, with its uncertainty.",
        "\"4.2 ± 0.4 L\"",
    );
    pub const ABOUT: Key<String> =
        Key::text("about", "What it is.", "\"liquid line to evaporator 2\"");
    const KEYS: &[Entry] = &[
        ID.entry(),
        MOST.entry(),
        VOLUME.entry(),
        ABOUT.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "section",
        about: "A part of a circuit that valves can shut off.",
        keys: KEYS,
    };
}

/// What a plan is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlanKind {
    /// Change to another refrigerant.
    Retrofit,
    /// Taking out of use.
    Retire,
}

impl Word for PlanKind {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "retrofit",
            PlanKind::Retrofit,
            "change to another refrigerant",
        ),
        ("retire", PlanKind::Retire, "taking out of use"),
    ];
}

/// Keys of `[[plan]]`.
pub mod plan {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const MADE: Key<Date> =
        Key::new("made", Form::Date, "Day it was made.", "2026-07-20").required();
    pub const KIND: Key<PlanKind> = Key::word("kind", "What it is for.", "\"retire\"").required();
    pub const COMPLETE_BY: Key<Date> = Key::new(
        "complete-by",
        Form::Date,
        "The last day for it, as the plan says.",
        "2027-07-01",
    )
    .required();
    pub const COMPLETED: Key<Date> =
        Key::new("completed", Form::Date, "Day it was done.", "2027-05-28");
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const NOTE: Key<String> =
        Key::text("note", "More about it.", "\"signed copy in the office\"");
    const KEYS: &[Entry] = &[
        MADE.entry(),
        KIND.entry(),
        COMPLETE_BY.entry(),
        COMPLETED.entry(),
        CIRCUIT.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "plan",
        about: "The operator's plan to retrofit or retire.",
        keys: KEYS,
    };
}

/// Keys of `[[circuit]]`.
pub mod circuit {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the notes.", "\"a\"").required();
    pub const ABOUT: Key<String> = Key::text("about", "What it is.", "\"high-temperature side\"");
    pub const ROOMS: Key<Vec<Noted<Identifier>>> = Key::new(
        "rooms",
        Form::Identifiers,
        "Rooms that its refrigerant could enter.",
        "[\"ice-room\"]",
    );
    pub const MOST: Key<Measured<Pressure>> = Key::quantity(
        "most",
        "Highest allowable pressure, where there are no sections.",
        "\"28 bar g\"",
    );
    pub const VOLUME: Key<Measured<Volume>> = Key::quantity(
        "volume",
        "Inner volume, where there are no sections.",
        "\"105 ± 10 L\"",
    );
    pub const SECTIONS: Key<Vec<TableMark>> = Key::new(
        "sections",
        Form::Tables(&super::section::TABLE),
        "Parts that valves can shut off.",
        "[ { id = \"high\", most = \"28 bar g\", volume = \"31 ± 3 L\" } ]",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        ABOUT.entry(),
        ROOMS.entry(),
        MOST.entry(),
        VOLUME.entry(),
        SECTIONS.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "circuit",
        about: "An independent circuit.",
        keys: KEYS,
    };
}

/// Keys of `[[area]]`.
pub mod area {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> = Key::id(
        "id",
        "First part of the point ids it stands for.",
        "\"roof\"",
    )
    .required();
    pub const ABOUT: Key<String> = Key::text("about", "What it is.", "\"roof pipework\"");
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    const KEYS: &[Entry] = &[ID.entry(), ABOUT.entry(), CIRCUIT.entry(), PRIVATE.entry()];
    pub static TABLE: Table = Table {
        name: "area",
        about: "A part of the plant that holds points which are not registered one by one.",
        keys: KEYS,
    };
}

/// Keys of `[[point]]`.
pub mod point {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> = Key::id(
        "id",
        "Short name used in the notes; a part before a slash is its area.",
        "\"evap-1/txv-inlet\"",
    )
    .required();
    pub const KIND: Key<String> = Key::text("kind", "Kind of joint or part.", "\"flare joint\"");
    pub const PART: Key<String> = Key::text(
        "part",
        "Part of the plant it belongs to.",
        "\"expansion valve\"",
    );
    pub const WHERE: Key<String> = Key::text(
        "where",
        "Where it is, in words a customer understands.",
        "\"Evaporator 1, expansion valve inlet\"",
    );
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const SECTION: Key<Identifier> = Key::id("section", "Which section.", "\"liquid-2\"");
    pub const REPLACED: Key<Vec<Noted<Date>>> = Key::new(
        "replaced",
        Form::Dates,
        "Days on which the part was replaced; each starts its count anew.",
        "[2024-09-11]",
    );
    pub const REMOVED: Key<Vec<Noted<Date>>> = Key::new(
        "removed",
        Form::Dates,
        "Days on which it was taken out.",
        "[2025-02-01]",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        KIND.entry(),
        PART.entry(),
        WHERE.entry(),
        CIRCUIT.entry(),
        SECTION.entry(),
        REPLACED.entry(),
        REMOVED.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "point",
        about: "A place that can leak.",
        keys: KEYS,
    };
}

/// Keys of `[[earlier]]`.
pub mod earlier {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const AT: Key<DateOrTime> =
        Key::new("at", Form::DateOrTime, "When.", "2025-04-20").required();
    pub const WHAT: Key<EarlierHappening> =
        Key::word("what", "What happened.", "\"charged\"").required();
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const POINT: Key<Identifier> = Key::id("point", "Which point.", "\"evap-1/txv-inlet\"");
    pub const MASS: Key<Measured<Mass>> =
        Key::quantity("mass", "How much refrigerant.", "\"9 kg\"");
    pub const BY: Key<String> = Key::text("by", "By whom.", "\"others\"");
    pub const SOURCE: Key<String> =
        Key::text("source", "Where it is written.", "\"site logbook p. 14\"");
    const KEYS: &[Entry] = &[
        AT.entry(),
        WHAT.entry(),
        CIRCUIT.entry(),
        POINT.entry(),
        MASS.entry(),
        BY.entry(),
        SOURCE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "earlier",
        about: "History before this book, or by others.",
        keys: KEYS,
    };
}

/// Keys of `the top of the file`.
pub mod top {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const NAME: Key<String> = Key::text(
        "name",
        "Name of the system, as the report prints it.",
        "\"Flake ice machine 1\"",
    )
    .required();
    pub const MADE: Key<i64> = Key::new("made", Form::Integer, "Year on the plate.", "2019");
    pub const INSTALLED: Key<Date> = Key::new(
        "installed",
        Form::Date,
        "Day it was put into service.",
        "2019-05-02",
    );
    pub const CATEGORY: Key<Category> = Key::word(
        "category",
        "Category, as the leak-rate triggers divide them.",
        "\"industrial process refrigeration\"",
    );
    pub const SERIAL: Key<String> =
        Key::text("serial", "Serial number on the plate.", "\"0019-2\"");
    pub const HERMETIC_LABEL: Key<bool> = Key::new(
        "hermetic-label",
        Form::Boolean,
        "Labelled as hermetically sealed.",
        "false",
    );
    pub const RESIDENTIAL: Key<bool> = Key::new(
        "residential",
        Form::Boolean,
        "In a residential building.",
        "false",
    );
    pub const LIGHT_COMMERCIAL: Key<bool> = Key::new(
        "light-commercial",
        Form::Boolean,
        "Air conditioner or heat pump of the light commercial kind, as 40 CFR part 84 divides them.",
        "false",
    );
    pub const LEAK_DETECTION_SYSTEM: Key<bool> = Key::new(
        "leak-detection-system",
        Form::Boolean,
        "Has a fixed leakage detection system that alerts the operator.",
        "false",
    );
    pub const LEAK_DETECTION_CHECKED: Key<Vec<Noted<Date>>> = Key::new(
        "leak-detection-checked",
        Form::Dates,
        "Days on which that system was checked.",
        "[2025-06-12, 2026-06-10]",
    );
    pub const CHRONIC_LOSS_REPORTED: Key<Vec<Noted<Date>>> = Key::new(
        "chronic-loss-reported",
        Form::Dates,
        "Days on which the operator reported a loss of 125 % or more in a calendar year.",
        "[2027-02-12]",
    );
    pub const PLAN: Key<Vec<TableMark>> = Key::new(
        "plan",
        Form::Tables(&super::plan::TABLE),
        "Plans to retrofit or retire.",
        "",
    );
    pub const IN_FORCE: Key<Vec<TableMark>> = Key::new(
        "in-force",
        Form::Tables(&super::in_force::TABLE),
        "Refrigerant and charge over time.",
        "",
    );
    pub const CIRCUIT: Key<Vec<TableMark>> = Key::new(
        "circuit",
        Form::Tables(&super::circuit::TABLE),
        "Circuits.",
        "",
    );
    pub const AREA: Key<Vec<TableMark>> =
        Key::new("area", Form::Tables(&super::area::TABLE), "Areas.", "");
    pub const POINT: Key<Vec<TableMark>> =
        Key::new("point", Form::Tables(&super::point::TABLE), "Points.", "");
    pub const EARLIER: Key<Vec<TableMark>> = Key::new(
        "earlier",
        Form::Tables(&super::earlier::TABLE),
        "Earlier history.",
        "",
    );
    const KEYS: &[Entry] = &[
        NAME.entry(),
        MADE.entry(),
        INSTALLED.entry(),
        CATEGORY.entry(),
        SERIAL.entry(),
        HERMETIC_LABEL.entry(),
        RESIDENTIAL.entry(),
        LIGHT_COMMERCIAL.entry(),
        LEAK_DETECTION_SYSTEM.entry(),
        LEAK_DETECTION_CHECKED.entry(),
        CHRONIC_LOSS_REPORTED.entry(),
        PLAN.entry(),
        IN_FORCE.entry(),
        CIRCUIT.entry(),
        AREA.entry(),
        POINT.entry(),
        EARLIER.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "",
        about: "The nameplate.",
        keys: KEYS,
    };
}
