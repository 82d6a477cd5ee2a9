//! The commands: one file each, plain functions from a loaded book to what is printed and the exit code.

mod account;
mod arguments;
mod check;
mod console;
mod convert;
mod convert_leak;
mod explain;
mod fresh_visit;
mod loaded;
mod plain_table;
mod refrigerant;
mod refrigerant_sheet;
#[cfg(feature = "pdf")]
mod report;
mod start;

pub use arguments::run;
pub use console::{Console, Exit};
pub use loaded::{Loaded, Target, load};
