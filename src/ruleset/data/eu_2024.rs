//! Regulation (EU) 2024/573 with Regulation (EC) 1516/2007.
//!
//! Read on 2026-11-25 in stored copies: 2024/573 in the text of the Official Journal; 1516/2007
//! whole, its copy of 2026-04-15 saying that it is in force.

use crate::refrigerant::GwpSet;
use crate::ruleset::field::{Field, Subject};
use crate::ruleset::rule_set::{
    Checks, Cited, Detection, Interval, Measure, Recheck, Repair, RuleSet,
};
use crate::vocabulary::site_file::RuleSetWord;
use jiff::civil::date;

const fn tonnes(at_least: f64, months: i32) -> Interval {
    Interval {
        measure: Measure::Tonnes,
        at_least,
        months,
    }
}

const fn annex_two(at_least: f64, months: i32) -> Interval {
    Interval {
        measure: Measure::AnnexTwoKg,
        at_least,
        months,
    }
}

pub(in crate::ruleset) static RULES: RuleSet = RuleSet {
    word: RuleSetWord::Eu2024,
    title: "Regulation (EU) 2024/573",
    gwp: GwpSet::Eu2024,
    asks_leak_rate: false,
    first_calculation: None,
    in_force_from: Some(date(2024, 3, 11)),
    read: "Official Journal text, stored copy read 2026-11-25",
    verify: false,
    checks: Some(Checks {
        intervals: &[
            tonnes(5.0, 12),
            tonnes(50.0, 6),
            tonnes(500.0, 3),
            annex_two(1.0, 12),
            annex_two(10.0, 6),
            annex_two(100.0, 3),
        ],
        times_with_detection: 2,
        source: "Article 5(6)",
    }),
    repair: Some(Repair {
        days: 0,
        source: "Article 4(5): without undue delay",
    }),
    recheck: Some(Recheck {
        not_before_hours: Some(24),
        months: 1,
        source: "Article 4(5)",
    }),
    detection: Some(Detection {
        from: &[(Measure::Tonnes, 500.0), (Measure::AnnexTwoKg, 100.0)],
        months: 12,
        source: "Article 6",
    }),
    automatic_detection: None,
    exceedance: None,
    records: Cited {
        value: 5,
        source: "Article 7(2): the operator, and the contractor a copy",
    },
    fields: &[
        Field(Subject::Operator, "(EC) 1516/2007 Article 2"),
        Field(Subject::Address, "(EC) 1516/2007 Article 2"),
        Field(Subject::Telephone, "(EC) 1516/2007 Article 2"),
        Field(Subject::Refrigerant, "Article 7(1)(a)"),
        Field(Subject::FullCharge, "Article 7(1)(a)"),
        Field(Subject::Company, "Article 7(1)(e)"),
        Field(Subject::CompanyCertificate, "Article 7(1)(e)"),
        Field(Subject::Person, "Article 7(1)(e)"),
        Field(Subject::PersonCertificate, "Article 7(1)(e)"),
        Field(Subject::Added, "Article 7(1)(b)"),
        Field(Subject::AddedOrigin, "Article 7(1)(d)"),
        Field(Subject::Recovered, "Article 7(1)(c)"),
        Field(Subject::RecoveredWhereTo, "Article 7(1)(g)"),
        Field(Subject::CheckResult, "Article 7(1)(f)"),
        Field(Subject::RepairResult, "Article 7(1)(f)"),
        Field(Subject::Cause, "(EC) 1516/2007 Article 2"),
    ],
};
