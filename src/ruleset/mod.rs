//! Rules in force at a site: what they cover, which GWP set and leak-rate method they name, what they ask for.

mod coverage;
mod rule_set;

pub use coverage::{Coverage, Plant, coverage};
pub use rule_set::{RULE_SETS, RuleSet, interval_months, trigger_percent};
