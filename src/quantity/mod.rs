//! Quantities as technicians write them: units, gauge, absolute and difference, reading and printing.
//!
//! Knows no trade beyond quantities. Text goes in through [`parse`], which either understands it
//! wholly or refuses it with a [`Refusal`]; values are held in SI; [`print`](fn@print) gives them back in the
//! site's units without adding or losing meaning.

mod atmosphere;
mod character;
mod compound;
mod convert;
mod find;
mod kind;
mod measured;
mod mistake;
mod number;
mod parse;
mod possible;
mod preferred;
mod pressure;
mod print;
mod refusal;
mod resolve;
mod rounding;
mod unit;
mod written;

pub use atmosphere::{STANDARD_ATMOSPHERE, atmosphere_at};
pub use convert::{Conversion, Unconvertible, convert};
pub use kind::{Flavour, Kind, plausible};
pub use measured::{
    Area, Concentration, Current, Duration, Fraction, LeakRate, Length, Mass, Measured, Power,
    Quantity, Reading, Temperature, TemperatureDifference, Throughput, Torque, Volume,
};
pub use parse::{parse, read};
pub use pressure::{AbsolutePressure, GaugePressure, Pressure, PressureDifference, VacuumPressure};
pub use print::{Printed, print, print_as, print_mass, print_reading, print_si};
pub use refusal::Refusal;
pub use rounding::rounded;
pub use unit::{UnitSystem, reference_temperature};
