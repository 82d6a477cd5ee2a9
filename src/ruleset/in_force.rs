//! Which rules hold at a site on a day, what they cover there, and the leak rate they ask for.

use crate::job::{Moment, Site, System, Visit};
use crate::refrigerant::GwpSet;
use crate::ruleset::rule_set::Size;
use crate::ruleset::{Coverage, Plant, RULE_SETS, RuleSet, coverage};
use crate::text::Noted;
use crate::vocabulary::site_file::LeakRateMethodWord;
use crate::vocabulary::system_file::Status;
use crate::vocabulary::visit_file::Purpose;
use crate::working::Figure;
use crate::working::account::Account;
use crate::working::leak_rate::{LeakRateMethod, Window};
use crate::working::outcome::{OutcomeKind, outcome};
use jiff::civil::Date;

/// Rule sets in force at a site on a day.
pub fn rules_of(site: &Site, day: Date) -> Vec<&'static RuleSet> {
    site.note
        .iter()
        .flat_map(|note| &note.rules)
        .flat_map(|word| RULE_SETS.into_iter().filter(|r| r.word == word.value))
        .filter(|rules| rules.holds_on(day))
        .collect()
}

/// The GWP set that a site's reports use: that of its first rule set, else AR6.
pub fn gwp_set_of(site: &Site, day: Date) -> GwpSet {
    rules_of(site, day)
        .first()
        .map_or(GwpSet::Ar6, |rules| rules.gwp)
}

/// What of a system matters for coverage.
pub fn plant_of(system: &System) -> Plant {
    let flag = |value: Option<Noted<bool>>| value.is_some_and(|noted| noted.value);
    system
        .note
        .as_ref()
        .map_or_else(Plant::default, |note| Plant {
            hermetic: flag(note.hermetic_label),
            residential: flag(note.residential),
            light_commercial: note.light_commercial.map(|noted| noted.value),
            category: note.category.map(|category| category.value),
        })
}

/// The statutory method chosen at a site; annualizing where none is noted.
pub fn method_of(site: &Site) -> (LeakRateMethod, &'static str) {
    match site
        .note
        .as_ref()
        .and_then(|note| note.leak_rate_method)
        .map(|method| method.value)
    {
        Some(LeakRateMethodWord::RollingAverage) => {
            (LeakRateMethod::RollingAverage, "rolling-average")
        }
        _ => (LeakRateMethod::Annualizing, "annualizing"),
    }
}

/// The last follow-up verification before a visit that showed all identified leaks repaired.
pub fn last_verification(system: &System, number: usize) -> Option<Noted<Moment>> {
    (0..number).rev().find_map(|earlier| {
        let visit: &Visit = system.visits.get(earlier)?;
        let purpose = visit.note.as_ref()?.purpose?;
        let all = purpose.value == Purpose::Verification
            && outcome(system, earlier)?.kind == OutcomeKind::RepairVerified;
        all.then(|| visit.end().map(|end| Noted::new(end, purpose.span)))?
    })
}

/// Whether a rule covers a circuit on a day, and how large its charge is; none where refrigerant or
/// charge is not noted.
pub fn covered_on(
    rules: &'static RuleSet,
    system: &System,
    circuit: usize,
    day: Date,
) -> Option<(Coverage, Size)> {
    let entry = system.in_force(circuit, day)?;
    let full = entry.note.full_charge?.value.value.si();
    let coverage = coverage(rules, entry.refrigerant?, full, plant_of(system));
    let size = Size {
        tonnes: if coverage.annex_two_kg > 0.0 {
            0.0
        } else {
            coverage.co2e_t.unwrap_or(0.0)
        },
        annex_two_kg: coverage.annex_two_kg,
        kg: full,
    };
    Some((coverage, size))
}

/// Whether a circuit is in use on a day; clocks stand still while it is mothballed (40 CFR 82.157(d)(3)).
pub fn in_use(system: &System, circuit: usize, day: Date) -> bool {
    let status = system
        .in_force(circuit, day)
        .and_then(|entry| entry.note.status);
    !status
        .is_some_and(|status| matches!(status.value, Status::Mothballed | Status::Decommissioned))
}

/// The leak rate that a rule asks for at the addition of a visit; none where it asks for none.
pub fn statutory_rate(
    rules: &RuleSet,
    (site, system): (&Site, &System),
    account: &Account,
    (circuit, number): (usize, usize),
) -> Option<Figure> {
    let addition = account.addition_of(number)?;
    let day = system.visits.get(number)?.last_day();
    let full = system.in_force(circuit, day)?.note.full_charge?;
    let window = Window {
        account,
        full: &full,
        addition,
        verified: last_verification(system, number),
        first: rules.first_calculation,
    };
    let (method, slug) = method_of(site);
    window.rate(method, slug, "Leak rate")
}
