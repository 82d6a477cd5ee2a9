//! Where the system stands under the rules in force, and the next dates they ask for.

use crate::report::compose::scene::Scene;
use crate::report::data::{LegalRow, NextDate};
use crate::report::printed;
use crate::report::visit_figures::rules_of;
use crate::ruleset::{interval_months, trigger_percent};
use crate::vocabulary::Word;
use crate::vocabulary::site_file::RuleSetWord;
use crate::working::outcome::{OutcomeKind, moment_of};
use jiff::Span;
use jiff::civil::Date;

/// One row per rule and circuit.
pub fn rows(scene: &Scene<'_>) -> Vec<LegalRow> {
    let mut rows = Vec::new();
    for circuit in &scene.figures.circuits {
        let name = printed::capital(&scene.system.circuit_name(circuit.circuit));
        for (rules, coverage) in &circuit.coverage {
            let mut statement = format!(
                "{name}: {}, {}.",
                match (coverage.covered, coverage.undecided) {
                    (true, _) => "covered",
                    (false, true) => "not decided",
                    (false, false) => "not covered",
                },
                coverage.why
            );
            if let Some(tonnes) = coverage.co2e_t.filter(|_| rules.word != RuleSetWord::Us82) {
                statement += &format!(" Charge {}.", scene.tonnes(tonnes * 1000.0));
            }
            if coverage.covered && !rules.asks_leak_rate {
                let months = months(scene);
                if let Some(months) = months {
                    statement += &format!(" Leak check every {months} months.");
                }
            }
            rows.push(LegalRow {
                rule: rules.title.to_owned(),
                statement,
                verify: rules.verify || coverage.undecided,
            });
        }
        for (rules, rate) in &circuit.statutory {
            let category = scene.system.note.as_ref().and_then(|note| note.category);
            let rate_text = rate.value.print(scene.site.units);
            let statement = match category {
                Some(category) => {
                    let trigger = trigger_percent(category.value);
                    let over = rate.value.number() > trigger;
                    format!(
                        "{name}: leak rate {rate_text} ({}); trigger {trigger} % for {}: {}.",
                        rate.method.name.to_lowercase(),
                        category.value.word(),
                        if over {
                            "over it, which asks for the repair within 30 days of the addition, or 120 with an industrial process shutdown"
                        } else {
                            "not over it"
                        }
                    )
                }
                None => format!(
                    "{name}: leak rate {rate_text}; no category is noted, so that no trigger can be named."
                ),
            };
            rows.push(LegalRow {
                rule: rules.title.to_owned(),
                statement,
                verify: rules.verify,
            });
        }
    }
    rows
}

/// Months between leak checks of the system under the European rule, the charge of all its circuits
/// counted together only where they are one piece of equipment: here each circuit by itself, the
/// shortest interval.
fn months(scene: &Scene<'_>) -> Option<i32> {
    let detection = scene
        .system
        .note
        .as_ref()
        .and_then(|note| note.leak_detection_system)
        .is_some_and(|yes| yes.value);
    scene
        .figures
        .circuits
        .iter()
        .flat_map(|circuit| &circuit.coverage)
        .filter(|(rules, coverage)| coverage.covered && !rules.asks_leak_rate)
        .map(|(_, coverage)| {
            interval_months(
                coverage.co2e_t.unwrap_or(0.0),
                coverage.annex_two_kg,
                detection,
            )
        })
        .min()
}

/// What has to happen next, the earliest first.
pub fn next_dates(scene: &Scene<'_>) -> Vec<NextDate> {
    let mut dates: Vec<(Date, NextDate)> = Vec::new();
    let last = scene.visit.last_day();
    let words: Vec<RuleSetWord> = rules_of(scene.site, last)
        .iter()
        .map(|rules| rules.word)
        .collect();
    let covered = |word: RuleSetWord| {
        scene
            .figures
            .circuits
            .iter()
            .flat_map(|circuit| &circuit.coverage)
            .any(|(rules, coverage)| rules.word == word && coverage.covered)
    };
    let europe = words.contains(&RuleSetWord::Eu2024) && covered(RuleSetWord::Eu2024);
    let repaired_on = scene
        .leaks()
        .filter_map(|(_, finding, _)| {
            let repair = finding.note.repairs.last()?;
            Some(repair.at.map_or(scene.visit.name.date, |at| {
                moment_of(scene.visit, at.value).date()
            }))
        })
        .min();
    if let Some(repaired_on) = repaired_on.filter(|_| europe)
        && let Ok(by) = repaired_on.checked_add(Span::new().months(1))
    {
        dates.push((
            by,
            NextDate {
                what: "Check the repair again".to_owned(),
                by: format!("by {}", printed::day(by)),
                not_before: Some("not before 24 h of operation".to_owned()),
                because: Some("Regulation (EU) 2024/573, Article 4(5)".to_owned()),
            },
        ));
    }
    let over = scene.figures.circuits.iter().any(|circuit| {
        let category = scene.system.note.as_ref().and_then(|note| note.category);
        circuit.statutory.iter().any(|(_, rate)| {
            category.is_some_and(|c| rate.value.number() > trigger_percent(c.value))
        })
    });
    let us = covered(RuleSetWord::Us82) || covered(RuleSetWord::Us84);
    if over && us {
        let proved = scene.figures.outcome.kind == OutcomeKind::RepairedProved;
        let (days, what, source) = if proved {
            (
                10,
                "Follow-up verification test",
                if covered(RuleSetWord::Us84) {
                    "40 CFR 84.106(e)"
                } else {
                    "40 CFR 82.157(e)(2)"
                },
            )
        } else {
            (
                30,
                "Repair the leaks",
                if covered(RuleSetWord::Us84) {
                    "40 CFR 84.106(d): 30 days, 120 with an industrial process shutdown"
                } else {
                    "40 CFR 82.157(d): 30 days, 120 with an industrial process shutdown"
                },
            )
        };
        let from = if proved {
            last
        } else {
            scene
                .figures
                .circuits
                .iter()
                .filter_map(|c| c.account.addition_of(scene.number))
                .map(|addition| addition.at.value.date())
                .min()
                .unwrap_or(last)
        };
        if let Ok(by) = from.checked_add(Span::new().days(days)) {
            dates.push((
                by,
                NextDate {
                    what: what.to_owned(),
                    by: format!("by {}", printed::day(by)),
                    not_before: None,
                    because: Some(source.to_owned()),
                },
            ));
        }
    }
    let searched_all = scene
        .visit
        .searches
        .iter()
        .any(|search| search.note.all_visible.is_some_and(|yes| yes.value));
    if let Some(months) = months(scene).filter(|_| europe && searched_all)
        && let Ok(by) = last.checked_add(Span::new().months(months))
    {
        dates.push((
            by,
            NextDate {
                what: "Leak check".to_owned(),
                by: format!("by {}", printed::day(by)),
                not_before: None,
                because: Some(format!(
                    "Regulation (EU) 2024/573, Article 5(6): every {months} months"
                )),
            },
        ));
    }
    dates.sort_by_key(|(by, _)| *by);
    dates.into_iter().map(|(_, next)| next).collect()
}
