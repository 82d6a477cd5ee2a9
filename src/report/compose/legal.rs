//! Where the system stands under the rules in force, and the next dates they ask for.

use crate::report::compose::scene::Scene;
use crate::report::data::{LegalRow, NextDate};
use crate::report::printed;
use crate::ruleset::{Duty, Obligation, RuleSet, covered_on, obligations, trigger_percent};
use crate::vocabulary::Word;
use crate::vocabulary::site_file::RuleSetWord;

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
            statement += &duties(scene, rules, circuit.circuit, coverage.covered);
            rows.push(LegalRow {
                rule: rules.title.to_owned(),
                statement,
                verify: rules.verify || coverage.undecided,
            });
        }
        for (rules, rate) in &circuit.statutory {
            let category = scene.system.note.as_ref().and_then(|note| note.category);
            let rate_text = scene.value(&rate.value);
            let statement = match category {
                Some(category) => {
                    let trigger = trigger_percent(category.value);
                    let over = rate.value.number() > trigger;
                    format!(
                        "{name}: leak rate {rate_text} ({}); trigger {trigger} % for {}: {}.",
                        rate.method.name.to_lowercase(),
                        category.value.word(),
                        match rules.exceedance.filter(|_| over) {
                            Some(law) => format!(
                                "over it, which asks for the repair within {} days of the addition, or {} with an industrial process shutdown ({}); {}",
                                law.repair.value,
                                law.shutdown_days,
                                law.repair.source,
                                law.extensions
                            ),
                            None => "not over it".to_owned(),
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

/// What a rule that covers a circuit asks for by its size: leak checks, detection system, records.
fn duties(scene: &Scene<'_>, rules: &'static RuleSet, circuit: usize, covered: bool) -> String {
    let day = scene.visit.last_day();
    let Some((_, size)) = covered_on(rules, scene.system, circuit, day).filter(|_| covered) else {
        return String::new();
    };
    let detection = scene
        .system
        .note
        .as_ref()
        .and_then(|note| note.leak_detection_system)
        .is_some_and(|yes| yes.value);
    let mut text = String::new();
    if let Some(months) = rules.check_months(size, detection) {
        text += &format!(" Leak check every {months} months.");
    }
    if rules.detection_mandatory(size) {
        text += if detection {
            " A leakage detection system is mandatory and is there; it is checked every 12 months."
        } else {
            " A leakage detection system is mandatory; none is noted."
        };
    }
    let category = scene.system.note.as_ref().and_then(|note| note.category);
    if let Some(law) = rules.automatic_detection
        && law.asks(category.map(|category| category.value), size)
    {
        text += &format!(
            " An automatic leak detection system is asked for if it was put into service in 2017 or later: {}, verify.",
            law.source
        );
    }
    text += &format!(
        " Records are kept {} years ({}).",
        rules.records.value, rules.records.source
    );
    text
}

/// What has to happen next, the earliest first.
pub fn next_dates(scene: &Scene<'_>) -> Vec<NextDate> {
    let day = scene.visit.last_day();
    let all = obligations(scene.site, scene.system, scene.number + 1, day);
    let mut next: Vec<NextDate> = Vec::new();
    for duty in all.iter().filter(|duty| duty.done.is_none()) {
        let date = next_date(scene, duty);
        if !next.contains(&date) {
            next.push(date);
        }
    }
    next
}

fn next_date(scene: &Scene<'_>, duty: &Obligation) -> NextDate {
    let overdue = duty.by < scene.visit.last_day();
    let by = printed::day(duty.by);
    let in_part = if overdue && duty.duty == Duty::LeakCheck && searched_in_part(scene, duty) {
        ". It was searched since, by its notes not over every visible and accessible part, which is what makes a leak check"
    } else {
        ""
    };
    let what = if scene.system.several_circuits() {
        format!(
            "{} ({})",
            duty.what,
            scene.system.circuit_name(duty.circuit)
        )
    } else {
        duty.what.clone()
    };
    NextDate {
        what,
        by: match (duty.duty, overdue) {
            (Duty::Repair, _) if duty.by == duty.from.day => format!("open since {by}"),
            (_, true) => format!("was due by {by}"),
            (_, false) => format!("by {by}"),
        },
        overdue,
        not_before: duty.not_before_words.clone(),
        because: Some(duty.because() + in_part),
    }
}

/// Whether a visit since what a duty counts from searched its circuit.
fn searched_in_part(scene: &Scene<'_>, duty: &Obligation) -> bool {
    scene.system.visits[..=scene.number]
        .iter()
        .filter(|visit| visit.last_day() > duty.from.day)
        .flat_map(|visit| &visit.searches)
        .any(|search| {
            search
                .circuit
                .is_none_or(|c| duty.circuit.is_none_or(|circuit| c == circuit))
        })
}
