//! Values of the notes that are not quantities, and the marks of tables within tables.

pub use crate::quantity::Reading as Amount;
pub use crate::text::Noted;
use jiff::civil::{Date, DateTime};
use jiff::tz::Offset;

/// A date and time as the writer's watch showed it, with an offset only where one was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LocalTime {
    /// Date and time on the watch.
    pub civil: DateTime,
    /// Offset from UTC, written to tell a doubled hour's two instants apart.
    pub offset: Option<Offset>,
}

/// A day, with a time of day if one was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DateOrTime {
    /// The day.
    pub date: Date,
    /// The time, where one was written.
    pub time: Option<LocalTime>,
}

/// A month or a day on which something ends: the last day of the month, or the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct DateOrMonth {
    /// The last day meant.
    pub last: Date,
    /// Whether only the month was written.
    pub month_only: bool,
}

/// A refrigerant as the writer named it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Designation(pub String);

/// Stands in a key's type for a table that is read with its own keys.
#[derive(Clone, Copy, Debug)]
pub struct TableMark;
