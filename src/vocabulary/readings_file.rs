//! Keys of `readings.toml`: detector checks, searches, tests, operating readings.

use crate::quantity::{
    Current, Duration, Fraction, Measured, Pressure, Temperature, Throughput, VacuumPressure,
    Volume,
};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::key::{Entry, Form, Identifier, Key, Table};
use crate::vocabulary::method_word::MethodWord;
use crate::vocabulary::value::{LocalTime, Noted, TableMark};
use crate::vocabulary::word::Word;

/// State of the plant during a search.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Plant {
    /// Running.
    Running,
    /// Switched off, charged.
    Standing,
    /// Without refrigerant.
    Emptied,
    /// Filled with nitrogen or a tracer mixture.
    UnderNitrogen,
}

impl Word for Plant {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("running", Plant::Running, "running"),
        ("standing", Plant::Standing, "switched off, charged"),
        ("off", Plant::Standing, "switched off, charged"),
        ("emptied", Plant::Emptied, "without refrigerant"),
        (
            "under nitrogen",
            Plant::UnderNitrogen,
            "filled with nitrogen or a tracer mixture",
        ),
    ];
}

/// What a pressure test is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PressureTestPurpose {
    /// To show that nothing larger than something leaks.
    Tightness,
    /// To show that it holds the pressure.
    Strength,
    /// To make a leak show itself.
    LeakSearch,
}

impl Word for PressureTestPurpose {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "tightness",
            PressureTestPurpose::Tightness,
            "to show that nothing larger than something leaks",
        ),
        (
            "strength",
            PressureTestPurpose::Strength,
            "to show that it holds the pressure",
        ),
        (
            "leak search",
            PressureTestPurpose::LeakSearch,
            "to make a leak show itself",
        ),
    ];
}

/// Gas of a pressure test.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TestGas {
    /// Dry, oxygen-free nitrogen.
    Nitrogen,
    /// Ready-made mixture of 5 % hydrogen in nitrogen.
    FormingGas,
    /// More hydrogen than 5 %.
    HydrogenRich,
    /// Helium.
    Helium,
    /// Carbon dioxide.
    CarbonDioxide,
    /// Compressed air.
    Air,
    /// Oxygen.
    Oxygen,
    /// Refrigerant vapour alone.
    Refrigerant,
    /// Nitrogen with a trace of refrigerant.
    NitrogenWithRefrigerant,
}

impl Word for TestGas {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("nitrogen", TestGas::Nitrogen, "dry, oxygen-free nitrogen"),
        (
            "5 % hydrogen in nitrogen",
            TestGas::FormingGas,
            "ready-made mixture of 5 % hydrogen in nitrogen",
        ),
        (
            "hydrogen in nitrogen over 5 %",
            TestGas::HydrogenRich,
            "more hydrogen than 5 %",
        ),
        ("helium", TestGas::Helium, "helium"),
        ("carbon dioxide", TestGas::CarbonDioxide, "carbon dioxide"),
        ("air", TestGas::Air, "compressed air"),
        ("oxygen", TestGas::Oxygen, "oxygen"),
        (
            "refrigerant",
            TestGas::Refrigerant,
            "refrigerant vapour alone",
        ),
        (
            "nitrogen with refrigerant",
            TestGas::NitrogenWithRefrigerant,
            "nitrogen with a trace of refrigerant",
        ),
    ];
}

/// Keys of `[[detector-check]]`.
pub mod detector_check {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const INSTRUMENT: Key<Identifier> =
        Key::id("instrument", "Which instrument.", "\"ld-2\"").required();
    pub const AT: Key<LocalTime> =
        Key::new("at", Form::Time, "When.", "2026-06-18T08:32").required();
    pub const REFERENCE_LEAK: Key<String> = Key::text(
        "reference-leak",
        "Reference leak: its rate and its gas.",
        "\"5 g/yr R-134a\"",
    );
    pub const RESPONDED: Key<bool> = Key::new(
        "responded",
        Form::Boolean,
        "The detector responded.",
        "true",
    )
    .required();
    const KEYS: &[Entry] = &[
        INSTRUMENT.entry(),
        AT.entry(),
        REFERENCE_LEAK.entry(),
        RESPONDED.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "detector-check",
        about: "A detector tried on a reference leak.",
        keys: KEYS,
    };
}

/// Keys of `not-reached`.
pub mod not_reached {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const POINT: Key<Identifier> =
        Key::id("point", "Point or area.", "\"evap-2/u-bends\"").required();
    pub const REASON: Key<String> = Key::text("reason", "Why.", "\"seized guard\"").required();
    const KEYS: &[Entry] = &[POINT.entry(), REASON.entry()];
    pub static TABLE: Table = Table {
        name: "not-reached",
        about: "A place that was not searched.",
        keys: KEYS,
    };
}

/// Keys of `[[search]]`.
pub mod search {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> = Key::id("id", "Short name used in the findings.", "\"s1\"");
    pub const BY: Key<Identifier> = Key::id("by", "Who searched.", "\"t2\"");
    pub const METHOD: Key<MethodWord> =
        Key::word("method", "By which method.", "\"electronic\"").required();
    pub const INSTRUMENT: Key<Identifier> =
        Key::id("instrument", "With which instrument.", "\"ld-2\"");
    pub const STARTED: Key<LocalTime> =
        Key::new("started", Form::Time, "Began.", "2026-06-18T08:40").required();
    pub const ENDED: Key<LocalTime> =
        Key::new("ended", Form::Time, "Ended.", "2026-06-18T10:05").required();
    pub const CIRCUIT: Key<Identifier> = Key::id(
        "circuit",
        "Which circuit, if there are several and not all were searched.",
        "\"a\"",
    );
    pub const PLANT: Key<Plant> = Key::word("plant", "State of the plant.", "\"running\"");
    pub const PRESSURE: Key<Measured<Pressure>> = Key::quantity(
        "pressure",
        "Lowest pressure inside at the places searched.",
        "\"1.2 bar g\"",
    );
    pub const BACKGROUND: Key<String> =
        Key::text("background", "Refrigerant in the air around.", "\"clean\"");
    pub const AREAS: Key<Vec<Noted<Identifier>>> = Key::new(
        "areas",
        Form::Identifiers,
        "Points and areas searched; * stands for the rest of a name.",
        "[\"evap-1/*\", \"rack/*\"]",
    )
    .required();
    pub const NOT_REACHED: Key<Vec<TableMark>> = Key::new(
        "not-reached",
        Form::Tables(&super::not_reached::TABLE),
        "Places not reached, each with the reason.",
        "[ { point = \"roof/*\", reason = \"above 2 m\" } ]",
    );
    pub const ALL_VISIBLE: Key<bool> = Key::new(
        "all-visible-and-accessible-inspected",
        Form::Boolean,
        "Every visible and accessible part was inspected.",
        "false",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        BY.entry(),
        METHOD.entry(),
        INSTRUMENT.entry(),
        STARTED.entry(),
        ENDED.entry(),
        CIRCUIT.entry(),
        PLANT.entry(),
        PRESSURE.entry(),
        BACKGROUND.entry(),
        AREAS.entry(),
        NOT_REACHED.entry(),
        ALL_VISIBLE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "search",
        about: "One search by one method.",
        keys: KEYS,
    };
}

/// Keys of `start` and `end`.
pub mod pressure_reading {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const AT: Key<LocalTime> =
        Key::new("at", Form::Time, "When.", "2026-06-18T11:50").required();
    pub const PRESSURE: Key<Measured<Pressure>> =
        Key::quantity("pressure", "Pressure.", "\"27.50 bar g\"").required();
    pub const TEMPERATURE: Key<Measured<Temperature>> =
        Key::quantity("temperature", "Temperature of the pipe.", "\"16.4 °C\"");
    const KEYS: &[Entry] = &[AT.entry(), PRESSURE.entry(), TEMPERATURE.entry()];
    pub static TABLE: Table = Table {
        name: "start",
        about: "A reading of a pressure test.",
        keys: KEYS,
    };
}

/// Keys of `log`.
pub mod pressure_log {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const FILE: Key<String> =
        Key::text("file", "File in the visit folder.", "\"hold.csv\"").required();
    pub const TIME: Key<String> = Key::text("time", "Column of the time.", "\"t_s\"").required();
    pub const PRESSURE: Key<String> = Key::text(
        "pressure",
        "Column of the pressure, with its unit.",
        "\"p_bar_g\"",
    )
    .required();
    pub const TEMPERATURE: Key<String> =
        Key::text("temperature", "Column of the temperature.", "\"T_C\"");
    const KEYS: &[Entry] = &[
        FILE.entry(),
        TIME.entry(),
        PRESSURE.entry(),
        TEMPERATURE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "log",
        about: "A log of a pressure test: file and columns.",
        keys: KEYS,
    };
}

/// Keys of `[[pressure-test]]`.
pub mod pressure_test {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the findings.", "\"p1\"").required();
    pub const PURPOSE: Key<PressureTestPurpose> =
        Key::word("purpose", "What it is for.", "\"tightness\"").required();
    pub const GAS: Key<TestGas> = Key::word("gas", "Which gas.", "\"nitrogen\"").required();
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const SECTION: Key<Identifier> = Key::id(
        "section",
        "Which section; none: the whole circuit.",
        "\"liquid-2\"",
    );
    pub const GAUGE: Key<Identifier> = Key::id("gauge", "Which gauge.", "\"g-7\"");
    pub const THERMOMETER: Key<Identifier> =
        Key::id("thermometer", "Which thermometer.", "\"th-1\"");
    pub const BY: Key<Identifier> = Key::id("by", "Who made it.", "\"t2\"");
    pub const START: Key<TableMark> = Key::new(
        "start",
        Form::Table(&super::pressure_reading::TABLE),
        "First reading.",
        "{ at = 2026-06-18T11:50, pressure = \"27.50 bar g\", temperature = \"16.4 °C\" }",
    );
    pub const END: Key<TableMark> = Key::new(
        "end",
        Form::Table(&super::pressure_reading::TABLE),
        "Last reading.",
        "{ at = 2026-06-18T13:50, pressure = \"27.77 bar g\", temperature = \"18.9 °C\" }",
    );
    pub const STARTED: Key<LocalTime> = Key::new(
        "started",
        Form::Time,
        "Time of the first row of the log.",
        "2026-06-18T17:30",
    );
    pub const LOG: Key<TableMark> = Key::new(
        "log",
        Form::Table(&super::pressure_log::TABLE),
        "A log instead of two readings.",
        "{ file = \"hold.csv\", time = \"t_min\", pressure = \"p_bar_g\", temperature = \"T_C\" }",
    );
    pub const VOLUME: Key<Measured<Volume>> = Key::quantity(
        "volume",
        "Volume under test, where the register does not give it.",
        "\"4.2 ± 0.4 L\"",
    );
    pub const LEAK_LIMIT: Key<Measured<Throughput>> = Key::quantity(
        "leak-limit",
        "Largest leak that is acceptable.",
        "\"1e-4 Pa m3/s\"",
    );
    pub const NOTE: Key<String> = Key::text(
        "note",
        "More about it.",
        "\"soaped all joints at 10 bar g first\"",
    );
    const KEYS: &[Entry] = &[
        ID.entry(),
        PURPOSE.entry(),
        GAS.entry(),
        CIRCUIT.entry(),
        SECTION.entry(),
        GAUGE.entry(),
        THERMOMETER.entry(),
        BY.entry(),
        START.entry(),
        END.entry(),
        STARTED.entry(),
        LOG.entry(),
        VOLUME.entry(),
        LEAK_LIMIT.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "pressure-test",
        about: "A pressure test.",
        keys: KEYS,
    };
}

/// Keys of `start` and `end`.
pub mod vacuum_reading {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const AT: Key<LocalTime> =
        Key::new("at", Form::Time, "When.", "2026-06-18T14:55").required();
    pub const PRESSURE: Key<Measured<VacuumPressure>> = Key::quantity(
        "pressure",
        "Pressure, absolute by nature.",
        "\"310 micron\"",
    )
    .required();
    const KEYS: &[Entry] = &[AT.entry(), PRESSURE.entry()];
    pub static TABLE: Table = Table {
        name: "start",
        about: "A reading of a vacuum test.",
        keys: KEYS,
    };
}

/// Keys of `log`.
pub mod vacuum_log {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const FILE: Key<String> =
        Key::text("file", "File in the visit folder.", "\"rise.csv\"").required();
    pub const TIME: Key<String> = Key::text("time", "Column of the time.", "\"t_s\"").required();
    pub const PRESSURE: Key<String> = Key::text(
        "pressure",
        "Column of the pressure, with its unit.",
        "\"p_micron\"",
    )
    .required();
    pub const TEMPERATURE: Key<String> =
        Key::text("temperature", "Column of the temperature.", "\"T_C\"");
    const KEYS: &[Entry] = &[
        FILE.entry(),
        TIME.entry(),
        PRESSURE.entry(),
        TEMPERATURE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "log",
        about: "A log of a vacuum test: file and columns.",
        keys: KEYS,
    };
}

/// Keys of `[[vacuum-test]]`.
pub mod vacuum_test {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const ID: Key<Identifier> =
        Key::id("id", "Short name used in the findings.", "\"v1\"").required();
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const SECTION: Key<Identifier> = Key::id(
        "section",
        "Which section; none: the whole circuit.",
        "\"liquid-2\"",
    );
    pub const GAUGE: Key<Identifier> = Key::id("gauge", "Which gauge.", "\"g-9\"");
    pub const BY: Key<Identifier> = Key::id("by", "Who made it.", "\"t2\"");
    pub const ISOLATED: Key<LocalTime> = Key::new(
        "isolated",
        Form::Time,
        "When the pump was shut off; the time of the first row of a log.",
        "2026-06-18T14:55",
    );
    pub const WARMEST_PIPE: Key<Measured<Temperature>> = Key::quantity(
        "warmest-pipe",
        "Temperature of the warmest part.",
        "\"19 °C\"",
    );
    pub const START: Key<TableMark> = Key::new(
        "start",
        Form::Table(&super::vacuum_reading::TABLE),
        "First reading.",
        "{ at = 2026-06-18T14:55, pressure = \"310 micron\" }",
    );
    pub const END: Key<TableMark> = Key::new(
        "end",
        Form::Table(&super::vacuum_reading::TABLE),
        "Last reading.",
        "{ at = 2026-06-18T15:25, pressure = \"420 micron\" }",
    );
    pub const LOG: Key<TableMark> = Key::new(
        "log",
        Form::Table(&super::vacuum_log::TABLE),
        "A log instead of two readings.",
        "{ file = \"rise.csv\", time = \"t_s\", pressure = \"p_micron\" }",
    );
    pub const VOLUME: Key<Measured<Volume>> = Key::quantity(
        "volume",
        "Volume under test, where the register does not give it.",
        "\"4.2 ± 0.4 L\"",
    );
    pub const ACCEPT_BELOW: Key<Measured<VacuumPressure>> = Key::quantity(
        "accept-below",
        "Pressure that must not be passed.",
        "\"500 micron\"",
    );
    pub const ACCEPT_WITHIN: Key<Measured<Duration>> = Key::quantity(
        "accept-within",
        "Time over which it must not be passed.",
        "\"15 min\"",
    );
    pub const ACCEPT_BY: Key<String> = Key::text("accept-by", "Whose limit that is.", "\"maker\"");
    pub const LEAK_LIMIT: Key<Measured<Throughput>> = Key::quantity(
        "leak-limit",
        "Largest leak that is acceptable.",
        "\"1e-4 Pa m3/s\"",
    );
    pub const NOTE: Key<String> =
        Key::text("note", "More about it.", "\"pumped again for an hour\"");
    const KEYS: &[Entry] = &[
        ID.entry(),
        CIRCUIT.entry(),
        SECTION.entry(),
        GAUGE.entry(),
        BY.entry(),
        ISOLATED.entry(),
        WARMEST_PIPE.entry(),
        START.entry(),
        END.entry(),
        LOG.entry(),
        VOLUME.entry(),
        ACCEPT_BELOW.entry(),
        ACCEPT_WITHIN.entry(),
        ACCEPT_BY.entry(),
        LEAK_LIMIT.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "vacuum-test",
        about: "A vacuum test: the rise after the pump was shut off.",
        keys: KEYS,
    };
}

/// Keys of `[[operating]]`.
pub mod operating {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const AT: Key<LocalTime> =
        Key::new("at", Form::Time, "When.", "2026-06-18T16:40").required();
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const SUCTION_PRESSURE: Key<Measured<Pressure>> =
        Key::quantity("suction-pressure", "Suction pressure.", "\"1.9 bar g\"");
    pub const SUCTION_TEMPERATURE: Key<Measured<Temperature>> = Key::quantity(
        "suction-temperature",
        "Temperature of the suction line.",
        "\"-14.0 °C\"",
    );
    pub const SUCTION_AT: Key<String> = Key::text(
        "suction-at",
        "Where that was measured.",
        "\"compressor inlet\"",
    );
    pub const DISCHARGE_PRESSURE: Key<Measured<Pressure>> = Key::quantity(
        "discharge-pressure",
        "Discharge pressure.",
        "\"15.1 bar g\"",
    );
    pub const DISCHARGE_TEMPERATURE: Key<Measured<Temperature>> = Key::quantity(
        "discharge-temperature",
        "Temperature of the discharge line.",
        "\"78 °C\"",
    );
    pub const LIQUID_PRESSURE: Key<Measured<Pressure>> =
        Key::quantity("liquid-pressure", "Liquid pressure.", "\"14.6 bar g\"");
    pub const LIQUID_TEMPERATURE: Key<Measured<Temperature>> = Key::quantity(
        "liquid-temperature",
        "Temperature of the liquid line.",
        "\"27.5 °C\"",
    );
    pub const AMBIENT: Key<Measured<Temperature>> = Key::quantity(
        "ambient",
        "Temperature of the air on the condenser.",
        "\"17 °C\"",
    );
    pub const SIGHT_GLASS: Key<String> =
        Key::text("sight-glass", "What the sight glass shows.", "\"clear\"");
    pub const RECEIVER_LEVEL: Key<Measured<Fraction>> =
        Key::quantity("receiver-level", "Level in the receiver.", "\"60 %\"");
    pub const COMPRESSOR_CURRENT: Key<Measured<Current>> = Key::quantity(
        "compressor-current",
        "Current of the compressor.",
        "\"31 A\"",
    );
    pub const NOTE: Key<String> = Key::text("note", "More about it.", "\"full load\"");
    const KEYS: &[Entry] = &[
        AT.entry(),
        CIRCUIT.entry(),
        SUCTION_PRESSURE.entry(),
        SUCTION_TEMPERATURE.entry(),
        SUCTION_AT.entry(),
        DISCHARGE_PRESSURE.entry(),
        DISCHARGE_TEMPERATURE.entry(),
        LIQUID_PRESSURE.entry(),
        LIQUID_TEMPERATURE.entry(),
        AMBIENT.entry(),
        SIGHT_GLASS.entry(),
        RECEIVER_LEVEL.entry(),
        COMPRESSOR_CURRENT.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "operating",
        about: "Readings of the running plant.",
        keys: KEYS,
    };
}

/// Keys of `the top of the file`.
pub mod top {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const DETECTOR_CHECK: Key<Vec<TableMark>> = Key::new(
        "detector-check",
        Form::Tables(&super::detector_check::TABLE),
        "Detectors tried on a reference leak.",
        "",
    );
    pub const SEARCH: Key<Vec<TableMark>> = Key::new(
        "search",
        Form::Tables(&super::search::TABLE),
        "Searches.",
        "",
    );
    pub const PRESSURE_TEST: Key<Vec<TableMark>> = Key::new(
        "pressure-test",
        Form::Tables(&super::pressure_test::TABLE),
        "Pressure tests.",
        "",
    );
    pub const VACUUM_TEST: Key<Vec<TableMark>> = Key::new(
        "vacuum-test",
        Form::Tables(&super::vacuum_test::TABLE),
        "Vacuum tests.",
        "",
    );
    pub const OPERATING: Key<Vec<TableMark>> = Key::new(
        "operating",
        Form::Tables(&super::operating::TABLE),
        "Operating readings.",
        "",
    );
    const KEYS: &[Entry] = &[
        DETECTOR_CHECK.entry(),
        SEARCH.entry(),
        PRESSURE_TEST.entry(),
        VACUUM_TEST.entry(),
        OPERATING.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "",
        about: "Readings and tests.",
        keys: KEYS,
    };
}
