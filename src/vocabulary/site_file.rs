//! Keys of `site.toml`: the operator, the place, its rules, its rooms.

use crate::quantity::{Area, Length, Measured, Volume};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::key::{Entry, Form, Identifier, Key, Table};
use crate::vocabulary::value::{Noted, TableMark};
use crate::vocabulary::word::Word;

/// Language of the reports.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Language {
    /// English.
    English,
    /// German.
    German,
    /// French.
    French,
    /// Spanish.
    Spanish,
    /// English with American dates.
    AmericanEnglish,
}

impl Word for Language {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("en", Language::English, "English"),
        ("de", Language::German, "German"),
        ("fr", Language::French, "French"),
        ("es", Language::Spanish, "Spanish"),
        (
            "en-us",
            Language::AmericanEnglish,
            "English, with dates as Americans write them",
        ),
    ];
}

/// Units that a report prints.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UnitsWord {
    /// Bar, °C, kg, g/yr.
    Metric,
    /// Psi, °F, lb, oz/yr.
    Us,
}

impl Word for UnitsWord {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("metric", UnitsWord::Metric, "bar, °C, kg, g/yr"),
        ("us", UnitsWord::Us, "psi, °F, lb, oz/yr"),
    ];
}

/// Rules that may be in force at a site.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RuleSetWord {
    /// Regulation (EU) 2024/573 with Regulation (EC) 1516/2007.
    Eu2024,
    /// 40 CFR part 82 subpart F, ozone-depleting refrigerants.
    Us82,
    /// 40 CFR part 84 subpart C, hydrofluorocarbons and substitutes.
    Us84,
    /// Retained Regulation 517/2014 as it applies in Great Britain.
    Gb,
    /// Retained Regulation 1005/2009 as it applies in Great Britain: ozone-depleting refrigerants.
    GbOzone,
}

impl Word for RuleSetWord {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "eu-2024-573",
            RuleSetWord::Eu2024,
            "Regulation (EU) 2024/573 with Regulation (EC) 1516/2007",
        ),
        (
            "us-40-cfr-82-f",
            RuleSetWord::Us82,
            "40 CFR part 82 subpart F, ozone-depleting refrigerants",
        ),
        (
            "us-40-cfr-84-c",
            RuleSetWord::Us84,
            "40 CFR part 84 subpart C, hydrofluorocarbons and substitutes",
        ),
        (
            "gb-f-gas",
            RuleSetWord::Gb,
            "retained Regulation 517/2014 as it applies in Great Britain",
        ),
        (
            "gb-ozone",
            RuleSetWord::GbOzone,
            "retained Regulation 1005/2009 as it applies in Great Britain, ozone-depleting refrigerants",
        ),
    ];
}

/// Statutory way to work out a leak rate, where the law gives a choice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeakRateMethodWord {
    /// Each addition scaled up to a year.
    Annualizing,
    /// Additions of the last 365 days over the full charge.
    RollingAverage,
}

impl Word for LeakRateMethodWord {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "annualizing",
            LeakRateMethodWord::Annualizing,
            "each addition scaled up to a year",
        ),
        (
            "rolling average",
            LeakRateMethodWord::RollingAverage,
            "additions of the last 365 days over the full charge",
        ),
    ];
}

/// Kind of room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoomKind {
    /// People are in it.
    Occupied,
    /// Only plant, access for competent people.
    MachineryRoom,
    /// Outdoors.
    OpenAir,
}

impl Word for RoomKind {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("occupied", RoomKind::Occupied, "people are in it"),
        (
            "machinery room",
            RoomKind::MachineryRoom,
            "only plant, access for competent people",
        ),
        ("open air", RoomKind::OpenAir, "outdoors"),
    ];
}

/// Keys of `[[room]]`.
pub mod room {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the notes.", "\"ice-room\"").required();
    pub const KIND: Key<RoomKind> = Key::word("kind", "Kind of room.", "\"occupied\"").required();
    pub const AREA: Key<Measured<Area>> = Key::quantity("area", "Floor area.", "\"42 m2\"");
    pub const HEIGHT: Key<Measured<Length>> =
        Key::quantity("height", "Height of the ceiling.", "\"3.1 m\"");
    pub const VOLUME: Key<Measured<Volume>> = Key::quantity(
        "volume",
        "Volume, where area and height do not give it.",
        "\"130 m3\"",
    );
    pub const UNIT_HEIGHT: Key<Measured<Length>> = Key::quantity(
        "unit-height",
        "Height of the unit above the floor.",
        "\"1.8 m\"",
    );
    pub const VENTILATION: Key<String> =
        Key::text("ventilation", "How it is ventilated.", "\"natural\"");
    pub const DETECTOR: Key<String> = Key::text(
        "detector",
        "Fixed gas detector and its alarm.",
        "\"fixed, 500 ppm\"",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        KIND.entry(),
        AREA.entry(),
        HEIGHT.entry(),
        VOLUME.entry(),
        UNIT_HEIGHT.entry(),
        VENTILATION.entry(),
        DETECTOR.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "room",
        about: "A space that refrigerant could enter.",
        keys: KEYS,
    };
}

/// Keys of `[[contact]]`.
pub mod contact {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const NAME: Key<String> = Key::text("name", "Name.", "\"Shift engineer\"").required();
    pub const ROLE: Key<String> = Key::text("role", "What they do.", "\"site manager\"");
    pub const TELEPHONE: Key<String> = Key::text("telephone", "Telephone.", "\"+351 000 000 000\"");
    pub const EMAIL: Key<String> =
        Key::text("email", "Mail address.", "\"plant@operator.example\"");
    const KEYS: &[Entry] = &[
        NAME.entry(),
        ROLE.entry(),
        TELEPHONE.entry(),
        EMAIL.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "contact",
        about: "Someone at the site.",
        keys: KEYS,
    };
}

/// Keys of `the top of the file`.
pub mod top {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const NAME: Key<String> = Key::text(
        "name",
        "Name of the site, if not that of the operator.",
        "\"Brackwater harbour ice works\"",
    );
    pub const OPERATOR: Key<String> = Key::text(
        "operator",
        "Who operates the systems, as the law means it.",
        "\"Brackwater Harbour Ice\"",
    )
    .required();
    pub const ADDRESS: Key<String> = Key::text(
        "address",
        "Postal address of the site.",
        "\"North Quay, Brackwater\"",
    );
    pub const TELEPHONE: Key<String> = Key::text(
        "telephone",
        "Telephone of the operator.",
        "\"+351 000 000 000\"",
    );
    pub const REPORT_TO: Key<String> = Key::text(
        "report-to",
        "Mail address that reports go to.",
        "\"plant@operator.example\"",
    );
    pub const TIMEZONE: Key<String> = Key::text(
        "timezone",
        "Time zone of the site by its name in the IANA database; all times of its notes are in it.",
        "\"Europe/Lisbon\"",
    );
    pub const ALTITUDE: Key<Measured<Length>> = Key::quantity(
        "altitude",
        "Height above the sea, for the air pressure where no barometer was read.",
        "\"12 m\"",
    );
    pub const LANGUAGE: Key<Language> = Key::word("language", "Language of the reports.", "\"en\"");
    pub const UNITS: Key<UnitsWord> =
        Key::word("units", "Units that the reports print.", "\"metric\"");
    pub const RULES: Key<Vec<Noted<RuleSetWord>>> = Key::new(
        "rules",
        Form::Words(RuleSetWord::list),
        "Rule sets in force at the site.",
        "[\"eu-2024-573\"]",
    );
    pub const LEAK_RATE_METHOD: Key<LeakRateMethodWord> = Key::word(
        "leak-rate-method",
        "Statutory method, where the law gives a choice.",
        "\"annualizing\"",
    );
    pub const CONTACT: Key<Vec<TableMark>> = Key::new(
        "contact",
        Form::Tables(&super::contact::TABLE),
        "People at the site.",
        "",
    );
    pub const ROOM: Key<Vec<TableMark>> = Key::new(
        "room",
        Form::Tables(&super::room::TABLE),
        "Spaces that refrigerant could enter.",
        "",
    );
    const KEYS: &[Entry] = &[
        NAME.entry(),
        OPERATOR.entry(),
        ADDRESS.entry(),
        TELEPHONE.entry(),
        REPORT_TO.entry(),
        TIMEZONE.entry(),
        ALTITUDE.entry(),
        LANGUAGE.entry(),
        UNITS.entry(),
        RULES.entry(),
        LEAK_RATE_METHOD.entry(),
        CONTACT.entry(),
        ROOM.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "",
        about: "A site and its operator.",
        keys: KEYS,
    };
}
