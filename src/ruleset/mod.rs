//! Rules in force at a site: what they cover, which GWP set and leak-rate method they name, what they
//! ask for and by when, what has to be on record.

mod automatic_detection;
mod coverage;
mod data;
mod deadline;
mod equipment;
mod exceedance;
mod field;
mod in_force;
mod obligation;
mod past;
mod plan;
mod record;
mod rule_set;
mod typed;

pub use automatic_detection::AutomaticDetection;
pub use coverage::{Coverage, Plant, coverage};
pub use deadline::{obligations, stands_at};
pub use equipment::{EquipmentDate, equipment_dates};
pub use field::{Field, Subject};
pub use in_force::{
    covered_on, gwp_set_of, last_verification, method_of, plant_of, rules_of, statutory_rate,
};
pub use obligation::{Duty, Event, Obligation, Typed};
pub use record::{Present, RecordRow, look_in_words, records};
pub use rule_set::{
    Cited, Exceedance, Measure, RULE_SETS, RuleSet, Size, is_chronic, trigger_percent,
};
