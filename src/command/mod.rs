//! The commands: one file each, plain functions from a loaded book to what is printed and the exit code.

mod account;
mod arguments;
mod calendar;
mod check;
mod compare;
mod console;
mod convert;
mod convert_leak;
mod due;
mod explain;
mod fresh_visit;
#[cfg(feature = "pdf")]
mod kept_photographs;
mod loaded;
#[cfg(feature = "pdf")]
mod made_from;
#[cfg(feature = "pdf")]
mod mail;
mod plain_table;
mod points;
#[cfg(feature = "pdf")]
mod printed_history;
#[cfg(feature = "pdf")]
mod printed_records;
#[cfg(feature = "pdf")]
mod printed_report;
mod records;
mod refrigerant;
mod refrigerant_sheet;
#[cfg(feature = "pdf")]
mod report;
mod start;
mod watch;

pub use arguments::run;
pub use console::{Console, Exit};
pub use loaded::{Loaded, Target, load};
