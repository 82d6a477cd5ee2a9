//! 40 CFR part 84 subpart C: hydrofluorocarbons and their substitutes.
//!
//! 84.106 whole and 84.64, stored copies read on 2026-11-25; the leak rate of 84.102 from memory.
//! 84.108: its 1,500 lb in trade press on the final rule (hvacinsider.com), its dates from memory.

use crate::refrigerant::GwpSet;
use crate::ruleset::automatic_detection::AutomaticDetection;
use crate::ruleset::field::{Field, Subject};
use crate::ruleset::rule_set::{Cited, Exceedance, RuleSet, Yearly};
use crate::vocabulary::site_file::RuleSetWord;
use crate::working::leak_rate::FirstCalculation;
use jiff::civil::date;

pub(in crate::ruleset) static RULES: RuleSet = RuleSet {
    word: RuleSetWord::Us84,
    title: "40 CFR part 84 subpart C",
    gwp: GwpSet::Us84,
    asks_leak_rate: true,
    first_calculation: Some(FirstCalculation {
        from: date(2026, 1, 1),
        source: "40 CFR 84.106(b)",
    }),
    in_force_from: Some(date(2026, 1, 1)),
    read: "84.106 and 84.64, stored copy read 2026-11-25; 84.102 from memory",
    verify: false,
    checks: None,
    repair: None,
    recheck: None,
    detection: None,
    automatic_detection: Some(AutomaticDetection {
        from_lb: 1500.0,
        new: (date(2026, 1, 1), 30),
        old: (date(2017, 1, 1), date(2027, 1, 1)),
        source: "84.108 (1,500 lb seen second-hand, dates from memory)",
    }),
    exceedance: Some(Exceedance {
        repair: Cited {
            value: 30,
            source: "84.106(d)",
        },
        shutdown_days: 120,
        initial: "84.106(e)(1)",
        follow_up: Cited {
            value: 10,
            source: "84.106(e)(2)",
        },
        quarterly_from_lb: 500.0,
        yearly: Yearly::AfterFollowUp,
        inspections: "84.106(g)(1)",
        plan: Cited {
            value: 30,
            source: "84.106(h)",
        },
        plan_done: "84.106(h)",
        plan_months_from_due: None,
        audit: "84.106(g), 84.108",
        chronic: Cited {
            value: 125.0,
            source: "84.106(j)",
        },
        extensions: "84.106(f): more time may be asked for within the 30 (120) days",
        parts_days: 180,
        parts_shutdown_days: 270,
    }),
    records: Cited {
        value: 3,
        source: "84.106(l)",
    },
    fields: &[
        Field(Subject::Operator, "84.106(l)(1)"),
        Field(Subject::Address, "84.106(l)(1)"),
        Field(Subject::FullCharge, "84.106(l)(1)"),
        Field(Subject::FullChargeBy, "84.106(l)(1)"),
        Field(Subject::Installed, "84.106(l)(1)(vi)"),
        Field(Subject::Category, "84.106(c)(2)"),
        Field(Subject::Parts, "84.106(l)(2)(iii), (iv)"),
        Field(Subject::Person, "84.106(l)(2)(v)"),
        Field(Subject::Added, "84.106(l)(2)(vi)"),
        Field(Subject::LeakRate, "84.106(l)(2)"),
        Field(Subject::InspectionCertified, "84.106(l)(5)"),
        Field(Subject::CheckResult, "84.106(l)(5)"),
        Field(Subject::RepairResult, "84.106(l)(7)"),
        Field(Subject::FollowUpResult, "84.106(l)(7)"),
        Field(Subject::DetectionCheck, "84.106(l)(6)"),
        Field(Subject::Plan, "84.106(l)"),
        Field(Subject::Extension, "84.106(l)"),
        Field(Subject::Mothballed, "84.106(l)"),
        Field(Subject::Purged, "84.106(l)"),
        Field(Subject::Seasonal, "84.106(l)"),
        Field(Subject::ChronicReport, "84.106(l)"),
    ],
};
