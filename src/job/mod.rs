//! The validated model of a book: names resolved, times as instants, tests in one shape.

mod accuracy;
mod assemble;
mod assemble_finding;
mod assemble_movement;
mod assemble_test;
mod assemble_visit;
mod book;
mod moment;
mod registry;
mod test;
mod test_names;

pub use accuracy::Accuracy;
pub use assemble::assemble;
pub use assemble_visit::covers;
pub use book::{
    Atmosphere, Attendance, Book, Circuit, Earlier, Finding, InForce, MovedMass, Movement,
    OperatingReading, Plan, Search, Site, System, Timed, Visit, matches_pattern, refrigerant_of,
};
pub use moment::{Moment, day, minutes};
pub use registry::Registry;
pub use test::{PressureReading, PressureTest, VacuumReading, VacuumTest};
