//! Regulation 517/2014 as retained in Great Britain, with the Regulations of 2015.
//!
//! Read on 2026-11-25: Article 5 in a stored German text, the intervals and the records second-hand;
//! what is from memory (hermetic below 10 t, no kg test) makes all of it "verify".

use crate::refrigerant::GwpSet;
use crate::ruleset::field::{Field, Subject};
use crate::ruleset::rule_set::{
    Checks, Cited, Detection, Interval, Measure, Recheck, Repair, RuleSet,
};
use crate::vocabulary::site_file::RuleSetWord;

const fn tonnes(at_least: f64, months: i32) -> Interval {
    Interval {
        measure: Measure::Tonnes,
        at_least,
        months,
    }
}

pub(in crate::ruleset) static RULES: RuleSet = RuleSet {
    word: RuleSetWord::Gb,
    title: "Regulation 517/2014 as retained in Great Britain",
    gwp: GwpSet::Eu2014,
    asks_leak_rate: false,
    first_calculation: None,
    in_force_from: None,
    read: "seen second-hand, stored copies read 2026-11-25; from memory in part",
    verify: true,
    checks: Some(Checks {
        intervals: &[tonnes(5.0, 12), tonnes(50.0, 6), tonnes(500.0, 3)],
        times_with_detection: 2,
        source: "Article 4",
    }),
    repair: Some(Repair {
        days: 0,
        source: "Article 3: without undue delay (from memory)",
    }),
    recheck: Some(Recheck {
        not_before_hours: None,
        months: 1,
        source: "Article 3",
    }),
    detection: Some(Detection {
        from: &[(Measure::Tonnes, 500.0)],
        months: 12,
        source: "Article 5",
    }),
    automatic_detection: None,
    exceedance: None,
    records: Cited {
        value: 5,
        source: "Article 6",
    },
    fields: &[
        Field(Subject::Operator, "Article 6"),
        Field(Subject::Refrigerant, "Article 6(1)(a)"),
        Field(Subject::FullCharge, "Article 6(1)(a)"),
        Field(Subject::Company, "Article 6(1)(e)"),
        Field(Subject::CompanyCertificate, "Article 6(1)(e)"),
        Field(Subject::Added, "Article 6(1)(b)"),
        Field(Subject::AddedOrigin, "Article 6(1)(c)"),
        Field(Subject::Recovered, "Article 6(1)(d)"),
        Field(Subject::CheckResult, "Article 6(1)(f)"),
    ],
};
