//! What a rule set is made of: coverage, intervals, deadlines, triggers and record fields, each with its citation.

use crate::refrigerant::GwpSet;
use crate::ruleset::automatic_detection::AutomaticDetection;
use crate::ruleset::data::{eu_2024, gb, gb_ozone, us_82, us_84};
use crate::ruleset::field::Field;
use crate::vocabulary::site_file::RuleSetWord;
use crate::vocabulary::system_file::Category;
use crate::working::leak_rate::FirstCalculation;
use jiff::civil::Date;

/// A rule set.
#[derive(Debug)]
pub struct RuleSet {
    /// Its word in the notes.
    pub word: RuleSetWord,
    /// Name in print.
    pub title: &'static str,
    /// The GWP set it names.
    pub gwp: GwpSet,
    /// Whether it asks for a leak rate at every addition.
    pub asks_leak_rate: bool,
    /// What it says about its first calculation.
    pub first_calculation: Option<FirstCalculation>,
    /// Day from which it holds; none where it held before any book.
    pub in_force_from: Option<Date>,
    /// Where it was read and when.
    pub read: &'static str,
    /// Whether what is printed of it was only remembered in part.
    pub verify: bool,
    /// Leak checks by size of the charge.
    pub checks: Option<Checks>,
    /// Repair of a leak that was found.
    pub repair: Option<Repair>,
    /// Check of a repair.
    pub recheck: Option<Recheck>,
    /// Leakage detection system.
    pub detection: Option<Detection>,
    /// Automatic leak detection by the mass of the charge.
    pub automatic_detection: Option<AutomaticDetection>,
    /// What follows a leak rate above the trigger.
    pub exceedance: Option<Exceedance>,
    /// How long records are kept, years, and where it says so.
    pub records: Cited<i32>,
    /// What has to be on record.
    pub fields: &'static [Field],
}

/// A value with its citation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cited<T> {
    /// The value.
    pub value: T,
    /// Where the rule says it.
    pub source: &'static str,
}

/// By what a charge is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// Tonnes of CO2 equivalent of Annex I gases.
    Tonnes,
    /// kg of gases of Annex II section 1.
    AnnexTwoKg,
    /// kg of refrigerant.
    ChargeKg,
}

/// A size from which leak checks are due at an interval.
#[derive(Clone, Copy, Debug)]
pub struct Interval {
    /// By what it is measured.
    pub measure: Measure,
    /// From this on, including it.
    pub at_least: f64,
    /// Months between two checks.
    pub months: i32,
}

/// Leak checks by size of the charge.
#[derive(Clone, Copy, Debug)]
pub struct Checks {
    /// The sizes.
    pub intervals: &'static [Interval],
    /// How often longer with a leakage detection system.
    pub times_with_detection: i32,
    /// The citation.
    pub source: &'static str,
}

/// Repair of a leak that was found.
#[derive(Clone, Copy, Debug)]
pub struct Repair {
    /// Days allowed; 0 where the rule says "without undue delay".
    pub days: i64,
    /// The citation.
    pub source: &'static str,
}

/// Check of a repair.
#[derive(Clone, Copy, Debug)]
pub struct Recheck {
    /// Hours of operation before it.
    pub not_before_hours: Option<i32>,
    /// Months within which it has to be made.
    pub months: i32,
    /// The citation.
    pub source: &'static str,
}

/// Leakage detection system.
#[derive(Clone, Copy, Debug)]
pub struct Detection {
    /// Sizes from which it must be there.
    pub from: &'static [(Measure, f64)],
    /// Months between two checks of it.
    pub months: i32,
    /// The citation.
    pub source: &'static str,
}

/// How the yearly inspections after an exceedance are counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Yearly {
    /// Once per calendar year.
    CalendarYear,
    /// Once per year after the successful follow-up test.
    AfterFollowUp,
}

/// What follows a leak rate above the trigger.
#[derive(Clone, Copy, Debug)]
pub struct Exceedance {
    /// Days from the addition to the repair.
    pub repair: Cited<i64>,
    /// Days with an industrial process shutdown.
    pub shutdown_days: i64,
    /// The initial verification test.
    pub initial: &'static str,
    /// Days to the follow-up verification test.
    pub follow_up: Cited<i64>,
    /// Inspections: from this many pounds on quarterly where the category is refrigeration.
    pub quarterly_from_lb: f64,
    /// How smaller ones are counted.
    pub yearly: Yearly,
    /// The citation of the inspections.
    pub inspections: &'static str,
    /// Days to a plan to retrofit or retire.
    pub plan: Cited<i64>,
    /// Where the time to carry that plan out is said: a year from the day it was made.
    pub plan_done: &'static str,
    /// Months from the day the plan was due, at most, if the rule has such an end.
    pub plan_months_from_due: Option<i32>,
    /// The yearly audit of an automatic leak detection system that stands in place of inspections.
    pub audit: &'static str,
    /// Share of the full charge lost in a calendar year that is to be reported, %.
    pub chronic: Cited<f64>,
    /// Extensions that may be had.
    pub extensions: &'static str,
    /// Days from the addition to the repair, at most, where parts are not delivered.
    pub parts_days: i64,
    /// The same with an industrial process shutdown.
    pub parts_shutdown_days: i64,
}

/// Every rule set.
pub static RULE_SETS: [&RuleSet; 5] = [
    &eu_2024::RULES,
    &us_82::RULES,
    &us_84::RULES,
    &gb::RULES,
    &gb_ozone::RULES,
];

impl RuleSet {
    /// Whether it holds on a day.
    pub fn holds_on(&self, day: Date) -> bool {
        self.in_force_from.is_none_or(|from| from <= day)
    }

    /// The rule set of a word.
    pub fn of(word: RuleSetWord) -> Option<&'static RuleSet> {
        RULE_SETS.into_iter().find(|rules| rules.word == word)
    }

    /// Months between leak checks of a charge; none below every size.
    pub fn check_months(&self, size: Size, detection_system: bool) -> Option<i32> {
        let checks = self.checks?;
        let months = checks
            .intervals
            .iter()
            .filter(|interval| size.reaches(interval.measure, interval.at_least))
            .map(|interval| interval.months)
            .min()?;
        Some(if detection_system {
            months * checks.times_with_detection
        } else {
            months
        })
    }

    /// Whether a leakage detection system must be there.
    pub fn detection_mandatory(&self, size: Size) -> bool {
        self.detection
            .is_some_and(|d| d.from.iter().any(|(by, least)| size.reaches(*by, *least)))
    }
}

/// A charge as the rules measure it.
#[derive(Clone, Copy, Debug, Default)]
pub struct Size {
    /// t CO2e under the rule's own GWP set, of Annex I gases.
    pub tonnes: f64,
    /// kg of Annex II section 1 gases.
    pub annex_two_kg: f64,
    /// kg of refrigerant.
    pub kg: f64,
}

impl Size {
    /// Whether it is at least so much; what was written as exactly the threshold is at it.
    pub fn reaches(self, measure: Measure, least: f64) -> bool {
        let value = match measure {
            Measure::Tonnes => self.tonnes,
            Measure::AnnexTwoKg => self.annex_two_kg,
            Measure::ChargeKg => self.kg,
        };
        value >= least * (1.0 - 1e-9)
    }
}

/// Trigger of the leak rate, %; strictly more than it obliges.
///
/// 40 CFR 82.157(c)(2) and 84.106(c)(2): 20 % commercial refrigeration, 30 % industrial process
/// refrigeration, 10 % comfort cooling, refrigerated transport and other.
pub fn trigger_percent(category: Category) -> f64 {
    match category {
        Category::CommercialRefrigeration => 20.0,
        Category::IndustrialProcess => 30.0,
        Category::ComfortCooling
        | Category::RefrigeratedTransport
        | Category::HeatPump
        | Category::Other => 10.0,
    }
}

/// Whether what was lost in a calendar year has to be reported: 125 % or more of the full charge
/// (40 CFR 82.157(j), 84.106(j)).
pub fn is_chronic(lost: f64, full: f64) -> bool {
    full > 0.0 && 100.0 * lost / full >= 125.0 * (1.0 - 1e-9)
}
