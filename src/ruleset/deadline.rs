//! What the rules in force, and dates set by hand, ask of a system, from its past: repairs, checks of
//! repairs, leak checks, leakage detection.

use crate::job::{Site, System};
use crate::ruleset::automatic_detection::automatic_detection;
use crate::ruleset::in_force::{covered_on, in_use, rules_of};
use crate::ruleset::obligation::{Duty, Event, Obligation};
use crate::ruleset::past::{Past, repaired};
use crate::ruleset::rule_set::{Recheck, Repair, RuleSet};
use crate::ruleset::{exceedance, plan, typed};
use crate::text::{Message, Span, Text};
use crate::vocabulary::finding_field::FindingState;
use crate::working::outcome::is_leak;
use jiff::ToSpan;
use jiff::civil::Date;

/// How many visits of a system there were on a day.
pub fn stands_at(system: &System, on: Date) -> usize {
    system
        .visits
        .iter()
        .take_while(|visit| visit.name.date <= on)
        .count()
}

/// What the rules in force, the operator's plans and the dates set by hand ask of a system, by its
/// first visits and on a day: done or open, the earliest first.
pub fn obligations(site: &Site, system: &System, visits: usize, on: Date) -> Vec<Obligation> {
    let past = Past {
        site,
        system,
        count: visits,
        on,
    };
    let mut all = Vec::new();
    for rules in rules_of(site, on) {
        for circuit in 0..system.circuits.len() {
            if !in_use(system, circuit, on) {
                continue;
            }
            if let Some(repair) = rules.repair {
                repairs(&past, rules, circuit, repair, &mut all);
            }
            if let Some(recheck) = rules.recheck {
                rechecks(&past, rules, circuit, recheck, &mut all);
            }
            all.extend(leak_check(&past, rules, circuit));
            all.extend(detection(&past, rules, circuit));
            all.extend(automatic_detection(&past, rules, circuit));
            exceedance::duties(&past, rules, circuit, &mut all);
        }
    }
    plan::completions(&past, &mut all);
    typed::dates(&past, &mut all);
    all.sort_by_key(|duty: &Obligation| (duty.by, duty.duty, duty.circuit));
    all
}

/// Whether a rule held and covered a circuit on a day.
pub(super) fn covers(past: &Past<'_>, rules: &'static RuleSet, circuit: usize, day: Date) -> bool {
    rules.holds_on(day)
        && covered_on(rules, past.system, circuit, day)
            .is_some_and(|(coverage, _)| coverage.covered)
}

/// Leaks found and not repaired at that visit.
fn repairs(
    past: &Past<'_>,
    rules: &'static RuleSet,
    circuit: usize,
    repair: Repair,
    all: &mut Vec<Obligation>,
) {
    for (number, visit) in past.visits() {
        let day = visit.name.date;
        for finding in &visit.findings {
            let note = &finding.note;
            let open = note.repairs.is_empty()
                && note
                    .state
                    .is_none_or(|state| state.value != FindingState::Isolated);
            let here = past.circuit_of(finding) == Some(circuit);
            if !(is_leak(finding) && open && here && covers(past, rules, circuit, day)) {
                continue;
            }
            let Ok(by) = day.checked_add(repair.days.days()) else {
                continue;
            };
            let point = note.point.as_ref().map(|id| id.value.clone());
            let done = past.visits().skip(number + 1).find_map(|(_, later)| {
                later
                    .findings
                    .iter()
                    .filter(|f| match &point {
                        Some(id) => f.note.point.as_ref().is_some_and(|p| p.value == *id),
                        None => f.note.title == note.title,
                    })
                    .find_map(|f| repaired(later, f))
            });
            let what = if repair.days == 0 {
                Text::Phrase("Repair the leak without undue delay")
            } else {
                Text::Phrase("Repair the leak")
            };
            let from = Event {
                day,
                what: "leak found and left open".to_owned(),
                span: note.span,
            };
            let asked = (rules, Text::Phrase(repair.source));
            all.push(Obligation {
                point,
                done,
                ..Obligation::of(asked, Duty::Repair, what, circuit, from, by)
            });
        }
    }
}

/// Checks of repairs: not before some hours of operation, and not later than some months.
fn rechecks(
    past: &Past<'_>,
    rules: &'static RuleSet,
    circuit: usize,
    recheck: Recheck,
    all: &mut Vec<Obligation>,
) {
    for (number, visit) in past.visits() {
        for finding in &visit.findings {
            let here = past.circuit_of(finding) == Some(circuit) && is_leak(finding);
            let Some(from) = here.then(|| repaired(visit, finding)).flatten() else {
                continue;
            };
            let Ok(by) = from.day.checked_add(recheck.months.months()) else {
                continue;
            };
            if !covers(past, rules, circuit, from.day) {
                continue;
            }
            let hours = recheck.not_before_hours;
            let not_before = hours
                .zip(visit.back)
                .map(|(hours, back)| back.value.after(f64::from(hours) * 3600.0, &past.site.zone));
            let point = finding.note.point.as_ref().map(|id| id.value.clone());
            let what = Text::Phrase("Check the repair again");
            let asked = (rules, Text::Phrase(recheck.source));
            all.push(Obligation {
                done: past.looked_again(number, point.as_ref(), circuit, not_before),
                point,
                not_before,
                not_before_words: hours.map(|hours| {
                    Message::of("not-before-hours")
                        .with("hours", i64::from(hours))
                        .into()
                }),
                ..Obligation::of(asked, Duty::Recheck, what, circuit, from, by)
            });
        }
    }
}

/// The next leak check by the size of the charge.
fn leak_check(past: &Past<'_>, rules: &'static RuleSet, circuit: usize) -> Option<Obligation> {
    let (coverage, size) = covered_on(rules, past.system, circuit, past.on)?;
    let note = past.system.note.as_ref()?;
    let detection = note.leak_detection_system.is_some_and(|yes| yes.value);
    let months = rules
        .check_months(size, detection)
        .filter(|_| coverage.covered)?;
    let from = past
        .checks(circuit)
        .pop()
        .or_else(|| start(past, rules, circuit, "no leak check is noted since"))?;
    let source = rules.checks.map_or("", |checks| checks.source);
    let source = Message::of("check-every")
        .phrase("source", source)
        .with("months", i64::from(months))
        .into();
    let by = from.day.checked_add(months.months()).ok()?;
    let duty = Duty::LeakCheck;
    Some(Obligation {
        note: detection
            .then(|| "twice the interval, because of the leakage detection system".to_owned()),
        ..Obligation::of(
            (rules, source),
            duty,
            Text::Phrase("Leak check"),
            circuit,
            from,
            by,
        )
    })
}

/// A leakage detection system where it must be there, and its yearly check.
fn detection(past: &Past<'_>, rules: &'static RuleSet, circuit: usize) -> Option<Obligation> {
    let detection = rules.detection?;
    let (coverage, size) = covered_on(rules, past.system, circuit, past.on)?;
    let note = past.system.note.as_ref()?;
    if !coverage.covered || !rules.detection_mandatory(size) {
        return None;
    }
    let fitted = note.leak_detection_system.is_some_and(|yes| yes.value);
    let put_in = start(past, rules, circuit, "charge of this size since")?;
    let checked = note
        .leak_detection_checked
        .iter()
        .filter(|noted| noted.value <= past.on)
        .max_by_key(|noted| noted.value);
    let (duty, what, from, by) = match (fitted, checked) {
        (false, _) => (
            Duty::DetectionSystem,
            "Fit a leakage detection system that alerts the operator",
            put_in.clone(),
            put_in.day,
        ),
        (true, checked) => {
            let from = checked.map_or_else(
                || start(past, rules, circuit, "no check of it is noted since"),
                |noted| {
                    Some(Event {
                        day: noted.value,
                        what: "leakage detection system checked".to_owned(),
                        span: noted.span,
                    })
                },
            )?;
            let by = from.day.checked_add(detection.months.months()).ok()?;
            (
                Duty::DetectionCheck,
                "Check the leakage detection system",
                from,
                by,
            )
        }
    };
    let asked = (rules, Text::Phrase(detection.source));
    Some(Obligation::of(
        asked,
        duty,
        Text::Phrase(what),
        circuit,
        from,
        by,
    ))
}

/// When a circuit was first charged as it is, or the rule began, whichever was later.
pub(super) fn start(past: &Past<'_>, rules: &RuleSet, circuit: usize, what: &str) -> Option<Event> {
    let first = past.system.circuits.get(circuit)?.in_force.first()?;
    let day = first.from.value.date();
    let day = rules.in_force_from.map_or(day, |from| day.max(from));
    let span: Span = first.from.span;
    Some(Event {
        day,
        what: format!("{what} {day}"),
        span,
    })
}
