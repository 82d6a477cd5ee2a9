//! Pressure and vacuum tests with their readings or logs, all in one shape.

use crate::job::moment::Moment;
use crate::notes::{Log, PressureTestNote, VacuumTestNote};
use crate::quantity::{Measured, Pressure, Temperature, VacuumPressure};
use crate::text::Noted;
use crate::vocabulary::Identifier;

/// A reading of a pressure test.
#[derive(Clone, Copy, Debug)]
pub struct PressureReading {
    /// When.
    pub at: Noted<Moment>,
    /// Pressure.
    pub pressure: Noted<Measured<Pressure>>,
    /// Temperature, if it was read.
    pub temperature: Option<Noted<Measured<Temperature>>>,
}

/// A pressure test.
#[derive(Debug)]
pub struct PressureTest {
    /// Its name.
    pub id: Identifier,
    /// Number of the circuit.
    pub circuit: usize,
    /// First reading.
    pub start: PressureReading,
    /// Last reading.
    pub end: PressureReading,
    /// The log, if there is one.
    pub log: Option<Log>,
    /// As written.
    pub note: PressureTestNote,
}

/// A reading of a vacuum test.
#[derive(Clone, Copy, Debug)]
pub struct VacuumReading {
    /// When.
    pub at: Noted<Moment>,
    /// Pressure.
    pub pressure: Noted<Measured<VacuumPressure>>,
}

/// A vacuum test.
#[derive(Debug)]
pub struct VacuumTest {
    /// Its name.
    pub id: Identifier,
    /// Number of the circuit.
    pub circuit: usize,
    /// First reading.
    pub start: VacuumReading,
    /// Last reading.
    pub end: VacuumReading,
    /// The log, if there is one.
    pub log: Option<Log>,
    /// As written.
    pub note: VacuumTestNote,
}

impl PressureTest {
    /// Its section, if it was not the whole circuit.
    pub fn section(&self) -> Option<&Identifier> {
        self.note.section.as_ref().map(|section| &section.value)
    }

    /// How long it was held, s.
    pub fn seconds(&self) -> f64 {
        self.end.at.value.seconds_since(self.start.at.value)
    }
}

impl VacuumTest {
    /// Its section, if it was not the whole circuit.
    pub fn section(&self) -> Option<&Identifier> {
        self.note.section.as_ref().map(|section| &section.value)
    }

    /// How long the rise was watched, s.
    pub fn seconds(&self) -> f64 {
        self.end.at.value.seconds_since(self.start.at.value)
    }
}
