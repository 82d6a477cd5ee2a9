//! Keys of `rimebook.toml`: the contractor, people, instruments, cylinders.

use crate::quantity::{Kind, LeakRate, Mass, Measured};
use crate::vocabulary::key::{Entry, Form, Identifier, Key, Table};
use crate::vocabulary::safety_class::SafetyClass;
use crate::vocabulary::site_file::{Language, UnitsWord};
use crate::vocabulary::value::{Amount, DateOrMonth, DateOrTime, Designation, Noted, TableMark};
use crate::vocabulary::word::Word;
use jiff::civil::Date;

/// Paper of the report.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 mm × 297 mm (ISO 216).
    A4,
    /// 8.5 in × 11 in.
    Letter,
}

impl Word for Paper {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("a4", Paper::A4, "210 mm × 297 mm (ISO 216)"),
        ("letter", Paper::Letter, "8.5 in × 11 in"),
    ];
}

/// Where the gas in a cylinder comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GasOrigin {
    /// Never used.
    Virgin,
    /// Cleaned, not analysed as new.
    Recycled,
    /// Reprocessed to the standard of new gas; name the facility.
    Reclaimed,
    /// Taken out of a system, not treated.
    Recovered,
    /// An empty cylinder, for recovery.
    Empty,
}

impl Word for GasOrigin {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("virgin", GasOrigin::Virgin, "never used"),
        (
            "recycled",
            GasOrigin::Recycled,
            "cleaned, not analysed as new",
        ),
        (
            "reclaimed",
            GasOrigin::Reclaimed,
            "reprocessed to the standard of new gas; name the facility",
        ),
        (
            "recovered",
            GasOrigin::Recovered,
            "taken out of a system, not treated",
        ),
        ("empty", GasOrigin::Empty, "an empty cylinder, for recovery"),
    ];
}

/// What happened to a cylinder outside a visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CylinderHappening {
    /// Filled, or bought full; the gross weight starts its count anew.
    Filled,
    /// Given back to the supplier.
    Returned,
    /// Emptied at a depot or by a reclaimer.
    Emptied,
    /// Proof-tested.
    Retested,
    /// Put on a scale between jobs.
    Weighed,
}

impl Word for CylinderHappening {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "filled at depot",
            CylinderHappening::Filled,
            "filled, or bought full; the gross weight starts its count anew",
        ),
        (
            "filled",
            CylinderHappening::Filled,
            "filled; the gross weight starts its count anew",
        ),
        (
            "bought",
            CylinderHappening::Filled,
            "bought full; the gross weight starts its count",
        ),
        (
            "returned",
            CylinderHappening::Returned,
            "given back to the supplier",
        ),
        (
            "emptied",
            CylinderHappening::Emptied,
            "emptied at a depot or by a reclaimer",
        ),
        ("retested", CylinderHappening::Retested, "proof-tested"),
        (
            "weighed",
            CylinderHappening::Weighed,
            "put on a scale between jobs",
        ),
    ];
}

/// Kinds in which an instrument's range and resolution may be given.
pub const INSTRUMENT_KINDS: &[Kind] = &[
    Kind::PressureDifference,
    Kind::Pressure,
    Kind::VacuumPressure,
    Kind::Mass,
    Kind::TemperatureDifference,
    Kind::Temperature,
    Kind::Concentration,
    Kind::LeakRate,
];

/// Text that reaches no output.
pub const PRIVATE: Key<String> = Key::text(
    "private",
    "A remark for yourself: it reaches no PDF, JSON or mail.",
    "\"Ladder on the north side is loose.\"",
);

/// Keys of `[contractor]`.
pub mod contractor {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const NAME: Key<String> = Key::text(
        "name",
        "The contractor's name, as the head of the report prints it.",
        "\"Brackwater Cooling\"",
    )
    .required();
    pub const ADDRESS: Key<String> = Key::text(
        "address",
        "Postal address.",
        "\"4 Cooper's Yard, Brackwater\"",
    );
    pub const TELEPHONE: Key<String> =
        Key::text("telephone", "Telephone, as printed.", "\"+44 1632 960018\"");
    pub const EMAIL: Key<String> = Key::text(
        "email",
        "Mail address, as printed.",
        "\"service@contractor.example\"",
    );
    pub const CERTIFICATE: Key<String> = Key::text(
        "certificate",
        "The company's certificate number.",
        "\"CC-0000-118\"",
    );
    pub const LOGO: Key<String> = Key::text(
        "logo",
        "SVG or PNG file, from the root of the book.",
        "\"branding/logo.svg\"",
    );
    pub const ACCENT: Key<String> = Key::text(
        "accent",
        "The one accent colour of the report, as #rrggbb.",
        "\"#2f5d62\"",
    );
    pub const PAPER: Key<Paper> = Key::word("paper", "Paper of the report.", "\"a4\"");
    pub const TEMPLATES: Key<String> = Key::text(
        "templates",
        "Folder of own parts of the report's template, from the root of the book.",
        "\"branding/templates\"",
    );
    const KEYS: &[Entry] = &[
        NAME.entry(),
        ADDRESS.entry(),
        TELEPHONE.entry(),
        EMAIL.entry(),
        CERTIFICATE.entry(),
        LOGO.entry(),
        ACCENT.entry(),
        PAPER.entry(),
        TEMPLATES.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "contractor",
        about: "Who did the work.",
        keys: KEYS,
    };
}

/// Keys of `[defaults]`.
pub mod defaults {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const TIMEZONE: Key<String> = Key::text(
        "timezone",
        "Time zone by its name in the IANA database.",
        "\"Europe/Lisbon\"",
    );
    pub const LANGUAGE: Key<Language> = Key::word("language", "Language of the reports.", "\"en\"");
    pub const UNITS: Key<UnitsWord> =
        Key::word("units", "Units that the reports print.", "\"metric\"");
    const KEYS: &[Entry] = &[
        TIMEZONE.entry(),
        LANGUAGE.entry(),
        UNITS.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "defaults",
        about: "What holds for every site that does not say otherwise.",
        keys: KEYS,
    };
}

/// Keys of `[[person]]`.
pub mod person {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the notes.", "\"t2\"").required();
    pub const NAME: Key<String> =
        Key::text("name", "Full name, as signed.", "\"Ines Example\"").required();
    pub const CERTIFICATE: Key<String> = Key::text(
        "certificate",
        "Number of the personal certificate.",
        "\"PC-0000-207\"",
    );
    pub const CATEGORY: Key<String> =
        Key::text("category", "Category or type of the certificate.", "\"I\"");
    pub const CERTIFIED_UNTIL: Key<Date> = Key::new(
        "certified-until",
        Form::Date,
        "Last day on which the certificate is valid.",
        "2027-05-31",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        NAME.entry(),
        CERTIFICATE.entry(),
        CATEGORY.entry(),
        CERTIFIED_UNTIL.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "person",
        about: "Someone who works for the contractor.",
        keys: KEYS,
    };
}

/// Keys of `[[instrument]]`.
pub mod instrument {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the notes.", "\"ld-2\"").required();
    pub const KIND: Key<String> = Key::text(
        "kind",
        "What it is, in the words of the trade.",
        "\"electronic leak detector\"",
    )
    .required();
    pub const SENSOR: Key<String> = Key::text("sensor", "Kind of sensor.", "\"infrared\"");
    pub const SENSITIVITY: Key<Measured<LeakRate>> = Key::quantity(
        "sensitivity",
        "Smallest leak it is made to find.",
        "\"3 g/yr\"",
    );
    pub const RATED_FOR: Key<Vec<Noted<SafetyClass>>> = Key::new(
        "rated-for",
        Form::Words(SafetyClass::list),
        "Safety classes of refrigerant it may be used with.",
        "[\"A1\", \"A2L\"]",
    );
    pub const CHECKED: Key<Vec<Noted<Date>>> = Key::new(
        "checked",
        Form::Dates,
        "Days of its yearly checks.",
        "[2025-01-20, 2026-01-12]",
    );
    pub const CALIBRATED: Key<Vec<Noted<Date>>> = Key::new(
        "calibrated",
        Form::Dates,
        "Days of its calibrations.",
        "[2025-11-04]",
    );
    pub const RANGE: Key<Amount> = Key::new(
        "range",
        Form::Amount(INSTRUMENT_KINDS),
        "Top of its range.",
        "\"60 bar g\"",
    );
    pub const ACCURACY: Key<String> = Key::text(
        "accuracy",
        "Accuracy: a share of the range or of the reading, or a quantity.",
        "\"0.25 % of range\"",
    );
    pub const RESOLUTION: Key<Amount> = Key::new(
        "resolution",
        Form::Amount(INSTRUMENT_KINDS),
        "Smallest step it shows.",
        "\"0.01 bar\"",
    );
    pub const SERIAL: Key<String> = Key::text("serial", "Serial number.", "\"0117\"");
    const KEYS: &[Entry] = &[
        ID.entry(),
        KIND.entry(),
        SENSOR.entry(),
        SENSITIVITY.entry(),
        RATED_FOR.entry(),
        CHECKED.entry(),
        CALIBRATED.entry(),
        RANGE.entry(),
        ACCURACY.entry(),
        RESOLUTION.entry(),
        SERIAL.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "instrument",
        about: "An instrument with its checks; every date is kept, so that an old report sees the check of its day.",
        keys: KEYS,
    };
}

/// Keys of `[[cylinder]]`.
pub mod cylinder {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the notes.", "\"c-114\"").required();
    pub const REFRIGERANT: Key<Designation> = Key::new(
        "refrigerant",
        Form::Refrigerant,
        "What it holds.",
        "\"R-449A\"",
    )
    .required();
    pub const TARE: Key<Measured<Mass>> =
        Key::quantity("tare", "Weight of the empty cylinder.", "\"13.20 kg\"");
    pub const MOST: Key<Measured<Mass>> = Key::quantity(
        "most",
        "Most it may weigh on the scale, cylinder and gas together.",
        "\"47.00 kg\"",
    );
    pub const RETEST: Key<DateOrMonth> = Key::new(
        "retest",
        Form::DateOrMonth,
        "Month or day of the next proof test.",
        "\"2029-03\"",
    );
    pub const ORIGIN: Key<GasOrigin> =
        Key::word("origin", "Where its gas comes from.", "\"reclaimed\"");
    pub const FACILITY: Key<String> = Key::text(
        "facility",
        "Name and address of the reclaiming or recycling facility.",
        "\"Example Reclaim, Dockside 2\"",
    );
    pub const FACILITY_CERTIFICATE: Key<String> = Key::text(
        "facility-certificate",
        "Certificate number of that facility.",
        "\"RF-0000-31\"",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        REFRIGERANT.entry(),
        TARE.entry(),
        MOST.entry(),
        RETEST.entry(),
        ORIGIN.entry(),
        FACILITY.entry(),
        FACILITY_CERTIFICATE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "cylinder",
        about: "A refrigerant cylinder.",
        keys: KEYS,
    };
}

/// Keys of `[[cylinder-event]]`.
pub mod cylinder_event {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const CYLINDER: Key<Identifier> =
        Key::id("cylinder", "Which cylinder.", "\"c-114\"").required();
    pub const AT: Key<DateOrTime> =
        Key::new("at", Form::DateOrTime, "When.", "2026-06-17").required();
    pub const WHAT: Key<CylinderHappening> =
        Key::word("what", "What happened.", "\"filled at depot\"").required();
    pub const GROSS: Key<Measured<Mass>> = Key::quantity(
        "gross",
        "What it weighed on the scale afterwards, cylinder and gas together.",
        "\"26.30 kg\"",
    );
    const KEYS: &[Entry] = &[
        CYLINDER.entry(),
        AT.entry(),
        WHAT.entry(),
        GROSS.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "cylinder-event",
        about: "What happened to a cylinder between jobs.",
        keys: KEYS,
    };
}

/// Keys of `the top of the file`.
pub mod top {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const CONTRACTOR: Key<TableMark> = Key::new(
        "contractor",
        Form::Table(&super::contractor::TABLE),
        "Who did the work.",
        "",
    );
    pub const DEFAULTS: Key<TableMark> = Key::new(
        "defaults",
        Form::Table(&super::defaults::TABLE),
        "What holds for every site that does not say otherwise.",
        "",
    );
    pub const PERSON: Key<Vec<TableMark>> =
        Key::new("person", Form::Tables(&super::person::TABLE), "People.", "");
    pub const INSTRUMENT: Key<Vec<TableMark>> = Key::new(
        "instrument",
        Form::Tables(&super::instrument::TABLE),
        "Instruments.",
        "",
    );
    pub const CYLINDER: Key<Vec<TableMark>> = Key::new(
        "cylinder",
        Form::Tables(&super::cylinder::TABLE),
        "Cylinders.",
        "",
    );
    pub const CYLINDER_EVENT: Key<Vec<TableMark>> = Key::new(
        "cylinder-event",
        Form::Tables(&super::cylinder_event::TABLE),
        "What happened to cylinders between jobs.",
        "",
    );
    const KEYS: &[Entry] = &[
        CONTRACTOR.entry(),
        DEFAULTS.entry(),
        PERSON.entry(),
        INSTRUMENT.entry(),
        CYLINDER.entry(),
        CYLINDER_EVENT.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "",
        about: "The contractor's book.",
        keys: KEYS,
    };
}
