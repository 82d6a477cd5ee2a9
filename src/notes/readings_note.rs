//! `readings.toml`: from the tree to typed notes.

use crate::notes::table_reader::{FileReader, TableReader, Whole};
use crate::quantity::{
    Current, Duration, Fraction, Measured, Pressure, Temperature, Throughput, VacuumPressure,
    Volume,
};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::method_word::MethodWord;
use crate::vocabulary::readings_file::{
    Plant, PressureTestPurpose, TestGas, detector_check, not_reached, operating, pressure_log,
    pressure_reading, pressure_test, search, vacuum_log, vacuum_reading, vacuum_test,
};
use crate::vocabulary::{Identifier, LocalTime, Noted, readings_file};

/// `readings.toml` as written.
#[derive(Clone, Debug)]
pub struct ReadingsNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Detectors tried on a reference leak.
    pub detector_check: Vec<DetectorCheckNote>,
    /// Searches.
    pub search: Vec<SearchNote>,
    /// Pressure tests.
    pub pressure_test: Vec<PressureTestNote>,
    /// Vacuum tests.
    pub vacuum_test: Vec<VacuumTestNote>,
    /// Operating readings.
    pub operating: Vec<OperatingNote>,
}

impl ReadingsNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::top as keys;
        let detector_check = reader
            .tables(input, &keys::DETECTOR_CHECK, &detector_check::TABLE)
            .into_iter()
            .map(|reader| DetectorCheckNote::read(reader, input))
            .collect();
        let search = reader
            .tables(input, &keys::SEARCH, &search::TABLE)
            .into_iter()
            .map(|reader| SearchNote::read(reader, input))
            .collect();
        let pressure_test = reader
            .tables(input, &keys::PRESSURE_TEST, &pressure_test::TABLE)
            .into_iter()
            .map(|reader| PressureTestNote::read(reader, input))
            .collect();
        let vacuum_test = reader
            .tables(input, &keys::VACUUM_TEST, &vacuum_test::TABLE)
            .into_iter()
            .map(|reader| VacuumTestNote::read(reader, input))
            .collect();
        let operating = reader
            .tables(input, &keys::OPERATING, &operating::TABLE)
            .into_iter()
            .map(|reader| OperatingNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            detector_check,
            search,
            pressure_test,
            vacuum_test,
            operating,
        }
    }
}

/// A detector tried on a reference leak.
#[derive(Clone, Debug)]
pub struct DetectorCheckNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Which instrument.
    pub instrument: Option<Noted<Identifier>>,
    /// When.
    pub at: Option<Noted<LocalTime>>,
    /// Reference leak: its rate and its gas.
    pub reference_leak: Option<Noted<String>>,
    /// The detector responded.
    pub responded: Option<Noted<bool>>,
}

impl DetectorCheckNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::detector_check as keys;
        let instrument = reader.get(input, &keys::INSTRUMENT);
        let at = reader.get(input, &keys::AT);
        let reference_leak = reader.get(input, &keys::REFERENCE_LEAK);
        let responded = reader.get(input, &keys::RESPONDED);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            instrument,
            at,
            reference_leak,
            responded,
        }
    }
}

/// A search.
#[derive(Clone, Debug)]
pub struct SearchNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the findings.
    pub id: Option<Noted<Identifier>>,
    /// Who searched.
    pub by: Option<Noted<Identifier>>,
    /// By which method.
    pub method: Option<Noted<MethodWord>>,
    /// With which instrument.
    pub instrument: Option<Noted<Identifier>>,
    /// Began.
    pub started: Option<Noted<LocalTime>>,
    /// Ended.
    pub ended: Option<Noted<LocalTime>>,
    /// Which circuit, if there are several and not all were searched.
    pub circuit: Option<Noted<Identifier>>,
    /// State of the plant.
    pub plant: Option<Noted<Plant>>,
    /// Lowest pressure inside at the places searched.
    pub pressure: Option<Noted<Measured<Pressure>>>,
    /// Refrigerant in the air around.
    pub background: Option<Noted<String>>,
    /// Points and areas searched; * stands for the rest of a name.
    pub areas: Vec<Noted<Identifier>>,
    /// Places not reached, each with the reason.
    pub not_reached: Vec<NotReachedNote>,
    /// Every visible and accessible part was inspected.
    pub all_visible: Option<Noted<bool>>,
}

impl SearchNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::search as keys;
        let id = reader.get(input, &keys::ID);
        let by = reader.get(input, &keys::BY);
        let method = reader.get(input, &keys::METHOD);
        let instrument = reader.get(input, &keys::INSTRUMENT);
        let started = reader.get(input, &keys::STARTED);
        let ended = reader.get(input, &keys::ENDED);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let plant = reader.get(input, &keys::PLANT);
        let pressure = reader.get(input, &keys::PRESSURE);
        let background = reader.get(input, &keys::BACKGROUND);
        let areas = reader.list(input, &keys::AREAS);
        let not_reached = reader
            .tables(input, &keys::NOT_REACHED, &not_reached::TABLE)
            .into_iter()
            .map(|reader| NotReachedNote::read(reader, input))
            .collect();
        let all_visible = reader.get(input, &keys::ALL_VISIBLE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            by,
            method,
            instrument,
            started,
            ended,
            circuit,
            plant,
            pressure,
            background,
            areas,
            not_reached,
            all_visible,
        }
    }
}

/// A place not reached.
#[derive(Clone, Debug)]
pub struct NotReachedNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Point or area.
    pub point: Option<Noted<Identifier>>,
    /// Why.
    pub reason: Option<Noted<String>>,
}

impl NotReachedNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::not_reached as keys;
        let point = reader.get(input, &keys::POINT);
        let reason = reader.get(input, &keys::REASON);
        let whole = reader.finish(input);
        Self {
            whole,
            point,
            reason,
        }
    }
}

/// A pressure test.
#[derive(Clone, Debug)]
pub struct PressureTestNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the findings.
    pub id: Option<Noted<Identifier>>,
    /// What it is for.
    pub purpose: Option<Noted<PressureTestPurpose>>,
    /// Which gas.
    pub gas: Option<Noted<TestGas>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Which section; none: the whole circuit.
    pub section: Option<Noted<Identifier>>,
    /// Which gauge.
    pub gauge: Option<Noted<Identifier>>,
    /// Which thermometer.
    pub thermometer: Option<Noted<Identifier>>,
    /// Who made it.
    pub by: Option<Noted<Identifier>>,
    /// First reading.
    pub start: Option<PressureReadingNote>,
    /// Last reading.
    pub end: Option<PressureReadingNote>,
    /// Time of the first row of the log.
    pub started: Option<Noted<LocalTime>>,
    /// A log instead of two readings.
    pub log: Option<PressureLogNote>,
    /// Volume under test, where the register does not give it.
    pub volume: Option<Noted<Measured<Volume>>>,
    /// Largest leak that is acceptable.
    pub leak_limit: Option<Noted<Measured<Throughput>>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl PressureTestNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::pressure_test as keys;
        let id = reader.get(input, &keys::ID);
        let purpose = reader.get(input, &keys::PURPOSE);
        let gas = reader.get(input, &keys::GAS);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let section = reader.get(input, &keys::SECTION);
        let gauge = reader.get(input, &keys::GAUGE);
        let thermometer = reader.get(input, &keys::THERMOMETER);
        let by = reader.get(input, &keys::BY);
        let start = reader
            .table(input, &keys::START, &pressure_reading::TABLE)
            .map(|reader| PressureReadingNote::read(reader, input));
        let end = reader
            .table(input, &keys::END, &pressure_reading::TABLE)
            .map(|reader| PressureReadingNote::read(reader, input));
        let started = reader.get(input, &keys::STARTED);
        let log = reader
            .table(input, &keys::LOG, &pressure_log::TABLE)
            .map(|reader| PressureLogNote::read(reader, input));
        let volume = reader.get(input, &keys::VOLUME);
        let leak_limit = reader.get(input, &keys::LEAK_LIMIT);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            purpose,
            gas,
            circuit,
            section,
            gauge,
            thermometer,
            by,
            start,
            end,
            started,
            log,
            volume,
            leak_limit,
            note,
        }
    }
}

/// A reading of a pressure test.
#[derive(Clone, Debug)]
pub struct PressureReadingNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// When.
    pub at: Option<Noted<LocalTime>>,
    /// Pressure.
    pub pressure: Option<Noted<Measured<Pressure>>>,
    /// Temperature of the pipe.
    pub temperature: Option<Noted<Measured<Temperature>>>,
}

impl PressureReadingNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::pressure_reading as keys;
        let at = reader.get(input, &keys::AT);
        let pressure = reader.get(input, &keys::PRESSURE);
        let temperature = reader.get(input, &keys::TEMPERATURE);
        let whole = reader.finish(input);
        Self {
            whole,
            at,
            pressure,
            temperature,
        }
    }
}

/// A log of a pressure test.
#[derive(Clone, Debug)]
pub struct PressureLogNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// File in the visit folder.
    pub file: Option<Noted<String>>,
    /// Column of the time.
    pub time: Option<Noted<String>>,
    /// Column of the pressure, with its unit.
    pub pressure: Option<Noted<String>>,
    /// Column of the temperature.
    pub temperature: Option<Noted<String>>,
}

impl PressureLogNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::pressure_log as keys;
        let file = reader.get(input, &keys::FILE);
        let time = reader.get(input, &keys::TIME);
        let pressure = reader.get(input, &keys::PRESSURE);
        let temperature = reader.get(input, &keys::TEMPERATURE);
        let whole = reader.finish(input);
        Self {
            whole,
            file,
            time,
            pressure,
            temperature,
        }
    }
}

/// A vacuum test.
#[derive(Clone, Debug)]
pub struct VacuumTestNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the findings.
    pub id: Option<Noted<Identifier>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Which section; none: the whole circuit.
    pub section: Option<Noted<Identifier>>,
    /// Which gauge.
    pub gauge: Option<Noted<Identifier>>,
    /// Who made it.
    pub by: Option<Noted<Identifier>>,
    /// When the pump was shut off; the time of the first row of a log.
    pub isolated: Option<Noted<LocalTime>>,
    /// Temperature of the warmest part.
    pub warmest_pipe: Option<Noted<Measured<Temperature>>>,
    /// First reading.
    pub start: Option<VacuumReadingNote>,
    /// Last reading.
    pub end: Option<VacuumReadingNote>,
    /// A log instead of two readings.
    pub log: Option<VacuumLogNote>,
    /// Volume under test, where the register does not give it.
    pub volume: Option<Noted<Measured<Volume>>>,
    /// Pressure that must not be passed.
    pub accept_below: Option<Noted<Measured<VacuumPressure>>>,
    /// Time over which it must not be passed.
    pub accept_within: Option<Noted<Measured<Duration>>>,
    /// Whose limit that is.
    pub accept_by: Option<Noted<String>>,
    /// Largest leak that is acceptable.
    pub leak_limit: Option<Noted<Measured<Throughput>>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl VacuumTestNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::vacuum_test as keys;
        let id = reader.get(input, &keys::ID);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let section = reader.get(input, &keys::SECTION);
        let gauge = reader.get(input, &keys::GAUGE);
        let by = reader.get(input, &keys::BY);
        let isolated = reader.get(input, &keys::ISOLATED);
        let warmest_pipe = reader.get(input, &keys::WARMEST_PIPE);
        let start = reader
            .table(input, &keys::START, &vacuum_reading::TABLE)
            .map(|reader| VacuumReadingNote::read(reader, input));
        let end = reader
            .table(input, &keys::END, &vacuum_reading::TABLE)
            .map(|reader| VacuumReadingNote::read(reader, input));
        let log = reader
            .table(input, &keys::LOG, &vacuum_log::TABLE)
            .map(|reader| VacuumLogNote::read(reader, input));
        let volume = reader.get(input, &keys::VOLUME);
        let accept_below = reader.get(input, &keys::ACCEPT_BELOW);
        let accept_within = reader.get(input, &keys::ACCEPT_WITHIN);
        let accept_by = reader.get(input, &keys::ACCEPT_BY);
        let leak_limit = reader.get(input, &keys::LEAK_LIMIT);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            circuit,
            section,
            gauge,
            by,
            isolated,
            warmest_pipe,
            start,
            end,
            log,
            volume,
            accept_below,
            accept_within,
            accept_by,
            leak_limit,
            note,
        }
    }
}

/// A reading of a vacuum test.
#[derive(Clone, Debug)]
pub struct VacuumReadingNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// When.
    pub at: Option<Noted<LocalTime>>,
    /// Pressure, absolute by nature.
    pub pressure: Option<Noted<Measured<VacuumPressure>>>,
}

impl VacuumReadingNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::vacuum_reading as keys;
        let at = reader.get(input, &keys::AT);
        let pressure = reader.get(input, &keys::PRESSURE);
        let whole = reader.finish(input);
        Self {
            whole,
            at,
            pressure,
        }
    }
}

/// A log of a vacuum test.
#[derive(Clone, Debug)]
pub struct VacuumLogNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// File in the visit folder.
    pub file: Option<Noted<String>>,
    /// Column of the time.
    pub time: Option<Noted<String>>,
    /// Column of the pressure, with its unit.
    pub pressure: Option<Noted<String>>,
    /// Column of the temperature.
    pub temperature: Option<Noted<String>>,
}

impl VacuumLogNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::vacuum_log as keys;
        let file = reader.get(input, &keys::FILE);
        let time = reader.get(input, &keys::TIME);
        let pressure = reader.get(input, &keys::PRESSURE);
        let temperature = reader.get(input, &keys::TEMPERATURE);
        let whole = reader.finish(input);
        Self {
            whole,
            file,
            time,
            pressure,
            temperature,
        }
    }
}

/// Readings of the running plant.
#[derive(Clone, Debug)]
pub struct OperatingNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// When.
    pub at: Option<Noted<LocalTime>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Suction pressure.
    pub suction_pressure: Option<Noted<Measured<Pressure>>>,
    /// Temperature of the suction line.
    pub suction_temperature: Option<Noted<Measured<Temperature>>>,
    /// Where that was measured.
    pub suction_at: Option<Noted<String>>,
    /// Discharge pressure.
    pub discharge_pressure: Option<Noted<Measured<Pressure>>>,
    /// Temperature of the discharge line.
    pub discharge_temperature: Option<Noted<Measured<Temperature>>>,
    /// Liquid pressure.
    pub liquid_pressure: Option<Noted<Measured<Pressure>>>,
    /// Temperature of the liquid line.
    pub liquid_temperature: Option<Noted<Measured<Temperature>>>,
    /// Temperature of the air on the condenser.
    pub ambient: Option<Noted<Measured<Temperature>>>,
    /// What the sight glass shows.
    pub sight_glass: Option<Noted<String>>,
    /// Level in the receiver.
    pub receiver_level: Option<Noted<Measured<Fraction>>>,
    /// Current of the compressor.
    pub compressor_current: Option<Noted<Measured<Current>>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl OperatingNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use readings_file::operating as keys;
        let at = reader.get(input, &keys::AT);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let suction_pressure = reader.get(input, &keys::SUCTION_PRESSURE);
        let suction_temperature = reader.get(input, &keys::SUCTION_TEMPERATURE);
        let suction_at = reader.get(input, &keys::SUCTION_AT);
        let discharge_pressure = reader.get(input, &keys::DISCHARGE_PRESSURE);
        let discharge_temperature = reader.get(input, &keys::DISCHARGE_TEMPERATURE);
        let liquid_pressure = reader.get(input, &keys::LIQUID_PRESSURE);
        let liquid_temperature = reader.get(input, &keys::LIQUID_TEMPERATURE);
        let ambient = reader.get(input, &keys::AMBIENT);
        let sight_glass = reader.get(input, &keys::SIGHT_GLASS);
        let receiver_level = reader.get(input, &keys::RECEIVER_LEVEL);
        let compressor_current = reader.get(input, &keys::COMPRESSOR_CURRENT);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            at,
            circuit,
            suction_pressure,
            suction_temperature,
            suction_at,
            discharge_pressure,
            discharge_temperature,
            liquid_pressure,
            liquid_temperature,
            ambient,
            sight_glass,
            receiver_level,
            compressor_current,
            note,
        }
    }
}
