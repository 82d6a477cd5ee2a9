//! Rimebook compiles plain-text job notes about refrigerant leaks into checked figures and a report.

pub mod caution;
pub mod command;
pub mod history;
pub mod job;
pub mod language;
pub mod notes;
pub mod quantity;
pub mod refrigerant;
pub mod report;
pub mod ruleset;
pub mod text;
pub mod vocabulary;
pub mod working;
