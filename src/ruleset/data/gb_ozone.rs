//! Regulation (EC) 1005/2009, Article 23, as retained: refrigerants that deplete ozone, such as R-22.
//!
//! Read on 2026-11-25 in a stored Bulgarian text of Article 23; that it is retained, and the records,
//! from memory.

use crate::refrigerant::GwpSet;
use crate::ruleset::field::{Field, Subject};
use crate::ruleset::rule_set::{Checks, Cited, Interval, Measure, Recheck, Repair, RuleSet};
use crate::vocabulary::site_file::RuleSetWord;

const fn kg(at_least: f64, months: i32) -> Interval {
    Interval {
        measure: Measure::ChargeKg,
        at_least,
        months,
    }
}

pub(in crate::ruleset) static RULES: RuleSet = RuleSet {
    word: RuleSetWord::GbOzone,
    title: "Regulation (EC) 1005/2009 as retained in Great Britain",
    gwp: GwpSet::Ar4,
    asks_leak_rate: false,
    first_calculation: None,
    in_force_from: None,
    read: "Article 23, stored copy read 2026-11-25; the rest from memory",
    verify: true,
    checks: Some(Checks {
        intervals: &[kg(3.0, 12), kg(30.0, 6), kg(300.0, 3)],
        times_with_detection: 1,
        source: "Article 23(2)",
    }),
    repair: Some(Repair {
        days: 14,
        source: "Article 23: within 14 days",
    }),
    recheck: Some(Recheck {
        not_before_hours: None,
        months: 1,
        source: "Article 23",
    }),
    detection: None,
    automatic_detection: None,
    exceedance: None,
    records: Cited {
        value: 5,
        source: "Article 23 (years from memory)",
    },
    fields: &[
        Field(Subject::Refrigerant, "Article 23(3)"),
        Field(Subject::FullCharge, "Article 23(3)"),
        Field(Subject::Added, "Article 23(3)"),
        Field(Subject::Recovered, "Article 23(3)"),
        Field(Subject::Company, "Article 23(3)"),
        Field(Subject::CheckResult, "Article 23(3)"),
    ],
};
