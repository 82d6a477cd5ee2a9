//! 40 CFR part 82 subpart F: refrigerants that deplete ozone.
//!
//! 82.152 and 82.157 (81 FR 82356, as amended by 85 FR 14171), stored copies read on 2026-11-25.

use crate::refrigerant::GwpSet;
use crate::ruleset::field::{Field, Subject};
use crate::ruleset::rule_set::{Cited, Exceedance, RuleSet, Yearly};
use crate::vocabulary::site_file::RuleSetWord;

pub(in crate::ruleset) static RULES: RuleSet = RuleSet {
    word: RuleSetWord::Us82,
    title: "40 CFR part 82 subpart F",
    gwp: GwpSet::Ar4,
    asks_leak_rate: true,
    first_calculation: None,
    in_force_from: None,
    read: "82.152 and 82.157, stored copy read 2026-11-25",
    verify: false,
    checks: None,
    repair: None,
    recheck: None,
    detection: None,
    automatic_detection: None,
    exceedance: Some(Exceedance {
        repair: Cited {
            value: 30,
            source: "82.157(d)",
        },
        shutdown_days: 120,
        initial: "82.157(e)(1)",
        follow_up: Cited {
            value: 10,
            source: "82.157(e)(2)",
        },
        quarterly_from_lb: 500.0,
        yearly: Yearly::CalendarYear,
        inspections: "82.157(g)(1)",
        plan: Cited {
            value: 30,
            source: "82.157(h)",
        },
        plan_done: "82.157(h), (i): 18 months if the replacement uses an exempt substitute",
        plan_months_from_due: Some(13),
        audit: "82.157(g)(4)",
        chronic: Cited {
            value: 125.0,
            source: "82.157(j)",
        },
        extensions: "82.157(f): more time for radiological hazards, another law, or parts (to 30 days after delivery, at most 180 days, 270 with a shutdown); asked for within the 30 (120) days",
        parts_days: 180,
        parts_shutdown_days: 270,
    }),
    records: Cited {
        value: 3,
        source: "82.157(l)",
    },
    fields: &[
        Field(Subject::Operator, "82.157(l)(1)"),
        Field(Subject::Address, "82.157(l)(1)"),
        Field(Subject::FullCharge, "82.157(l)(1)"),
        Field(Subject::FullChargeBy, "82.157(l)(1)"),
        Field(Subject::Category, "82.157(c)(2)"),
        Field(Subject::Parts, "82.157(l)(2)(iii), (iv)"),
        Field(Subject::Person, "82.157(l)(2)(v)"),
        Field(Subject::Added, "82.157(l)(2)(vi)"),
        Field(Subject::LeakRate, "82.157(l)(2)(viii)"),
        Field(Subject::InspectionCertified, "82.157(l)(3)"),
        Field(Subject::CheckResult, "82.157(l)(3)"),
        Field(Subject::RepairResult, "82.157(l)(5)"),
        Field(Subject::FollowUpResult, "82.157(l)(5)"),
        Field(Subject::DetectionCheck, "82.157(l)(4)"),
        Field(Subject::Plan, "82.157(l)(6)"),
        Field(Subject::Extension, "82.157(l)(7)"),
        Field(Subject::Mothballed, "82.157(l)(8)"),
        Field(Subject::Purged, "82.157(l)(9)"),
        Field(Subject::Seasonal, "82.157(l)(10)"),
        Field(Subject::ChronicReport, "82.157(l)(11)"),
    ],
};
