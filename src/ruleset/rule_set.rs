//! The rule sets as data, each with its citation.

use crate::refrigerant::GwpSet;
use crate::vocabulary::site_file::RuleSetWord;
use crate::vocabulary::system_file::Category;
use crate::working::leak_rate::FirstCalculation;
use jiff::civil::{Date, date};

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
}

/// Every rule set.
pub static RULE_SETS: [RuleSet; 4] = [
    RuleSet {
        word: RuleSetWord::Eu2024,
        title: "Regulation (EU) 2024/573",
        gwp: GwpSet::Eu2024,
        asks_leak_rate: false,
        first_calculation: None,
        in_force_from: Some(date(2024, 3, 11)),
        read: "Official Journal text, stored copy read 2026-11-25",
        verify: false,
    },
    RuleSet {
        word: RuleSetWord::Us82,
        title: "40 CFR part 82 subpart F",
        gwp: GwpSet::Ar4,
        asks_leak_rate: true,
        first_calculation: None,
        in_force_from: None,
        read: "82.152 and 82.157, stored copy read 2026-11-25",
        verify: false,
    },
    RuleSet {
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
    },
    RuleSet {
        word: RuleSetWord::Gb,
        title: "Regulation 517/2014 as retained in Great Britain",
        gwp: GwpSet::Eu2014,
        asks_leak_rate: false,
        first_calculation: None,
        in_force_from: None,
        read: "seen second-hand; from memory in part",
        verify: true,
    },
];

impl RuleSet {
    /// Whether it holds on a day.
    pub fn holds_on(&self, day: Date) -> bool {
        self.in_force_from.is_none_or(|from| from <= day)
    }

    /// The rule set of a word.
    pub fn of(word: RuleSetWord) -> Option<&'static RuleSet> {
        RULE_SETS.iter().find(|rules| rules.word == word)
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

/// Months between leak checks: Regulation (EU) 2024/573, Article 5(6), by t CO2e of Annex I gases or
/// kg of Annex II section 1 gases, doubled with a leakage detection system.
pub fn interval_months(co2e_t: f64, annex_two_kg: f64, detection_system: bool) -> i32 {
    let months = if co2e_t >= 500.0 || annex_two_kg >= 100.0 {
        3
    } else if co2e_t >= 50.0 || annex_two_kg >= 10.0 {
        6
    } else {
        12
    };
    if detection_system { 2 * months } else { months }
}
