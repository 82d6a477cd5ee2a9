//! The test house: every integration test of Rimebook in one binary.

#![expect(
    clippy::unwrap_used,
    clippy::expect_used,
    reason = "a test that cannot go on has failed"
)]

mod account;
mod cases;
mod caution;
mod coolprop_points;
mod copied;
mod deadlines;
mod decay_pressure;
mod decay_vacuum;
mod due_by_hand;
mod explain;
mod first_page;
mod floors;
mod help;
mod history_report;
mod ledger;
mod look_up;
mod losses;
mod mistakes;
#[cfg(feature = "pdf")]
mod photographs;
mod points_by_hand;
mod properties;
mod published_leak_sizes;
mod published_refrigerants;
mod published_saturation;
mod readme;
mod records_pack;
#[cfg(feature = "pdf")]
mod report;
mod robustness;
mod schema;
mod slips;
mod start;
#[cfg(feature = "pdf")]
mod stress;
mod units_round_trip;
mod vacuum_shapes;
mod vacuum_verdicts;
mod vectors;
mod vocabulary;
mod words;
