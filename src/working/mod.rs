//! Figures and how they were worked out: one file per result, every input with its origin.

pub mod account;
pub mod balance;
pub mod bubbles;
pub mod co2_equivalent;
pub mod cylinder_balance;
pub mod evidence;
mod hold_air;
pub mod hold_budget;
pub mod hold_change;
pub mod hold_leak;
pub mod hold_log;
pub mod hold_verdict;
pub mod leak_rate;
pub mod leak_size;
pub mod leaks_explained;
mod least_squares;
pub mod outcome;
pub mod pressure_log;
pub mod pressure_test;
pub mod reach;
pub mod repair_proof;
pub mod room;
pub mod service_equivalent;
pub mod taken_out;
pub mod vacuum_rule;
pub mod vacuum_test;
pub mod vacuum_verdict;
pub mod vapour_state;
pub mod water_check;
#[expect(
    clippy::module_inception,
    reason = "the file holds the one type the floor is named after"
)]
mod working;

pub use working::{Figure, Input, Method, Origin, Value, Working, rounded};

/// Every method, for the formulas of the report.
pub static METHODS: &[&Method] = &[
    &account::NET,
    &co2_equivalent::CO2_EQUIVALENT,
    &leak_rate::ANNUALIZING,
    &leak_rate::LOST_IN_YEAR,
    &leak_rate::MISSING,
    &leak_rate::PLAIN,
    &leak_rate::ROLLING,
    &leak_size::MASS_OF_THROUGHPUT,
    &hold_change::CHANGE,
    &hold_change::EXPECTED,
    &hold_leak::LEAK,
    &hold_leak::LIMIT,
    &hold_leak::SMALLEST,
    &hold_log::LOG_CHANGE,
    &leaks_explained::EXPLAINED,
    &room::CONCENTRATION,
    &room::CONCENTRATION_BY_AREA,
    &room::QUARTER_LIMIT,
    &service_equivalent::MOLECULAR,
    &service_equivalent::PRESSURE,
    &service_equivalent::VISCOUS,
    &taken_out::RECOVERED,
    &taken_out::SHORT,
    &vacuum_test::LOWER,
    &vacuum_test::RISE,
    &vacuum_test::SLOPE,
    &vacuum_test::UPPER,
    &vapour_state::SUBCOOLING,
    &vapour_state::SUPERHEAT,
    &water_check::WATER,
];
