//! Where the system stands under the rules in force, and the next dates they ask for.

use crate::report::compose::scene::Scene;
use crate::report::data::{LegalRow, NextDate};
use crate::report::visit_figures::CircuitFigures;
use crate::ruleset::{
    Coverage, Duty, Obligation, RuleSet, covered_on, obligations, trigger_percent,
};
use crate::text::{Message, Text};
use crate::vocabulary::Word;
use crate::vocabulary::site_file::RuleSetWord;
use crate::working::Figure;
use crate::working::leak_rate::ANNUALIZING;
use jiff::civil::Date;

/// One row per rule, for the circuits of which it says the same; then the leak rates.
pub fn rows(scene: &Scene<'_>) -> Vec<LegalRow> {
    let words = scene.words();
    let mut positions: Vec<Position> = Vec::new();
    for circuit in &scene.figures.circuits {
        for (rules, coverage) in &circuit.coverage {
            let position = position(scene, rules, circuit.circuit, coverage);
            let same = |other: &&mut Position| {
                Position {
                    circuits: other.circuits.clone(),
                    ..position.clone()
                } == **other
            };
            match positions.iter_mut().find(same) {
                Some(other) => other.circuits.push(circuit.circuit),
                None => positions.push(position),
            }
        }
    }
    let covered = positions.iter().map(|position| LegalRow {
        rule: words.phrase(position.rule),
        statement: statement(scene, position),
        verify: position.verify,
    });
    let rates = scene.figures.circuits.iter().flat_map(|circuit| {
        circuit.statutory.iter().map(|(rules, rate)| LegalRow {
            rule: words.phrase(rules.title),
            statement: std::iter::once(leak_rate(scene, rules, circuit.circuit, rate))
                .chain(how_counted(circuit, rate))
                .map(|message| scene.say(&message))
                .collect::<Vec<_>>()
                .join(" "),
            verify: rules.verify,
        })
    });
    let done = duties_done(scene);
    covered.chain(rates).chain(done).collect()
}

/// A duty that this visit fulfilled, of circuits for which the same is to be said.
#[derive(PartialEq)]
struct Done {
    rule: String,
    what: Text,
    by: Date,
    since: Option<Date>,
    day: Date,
    late: bool,
    verify: bool,
    circuits: Vec<usize>,
}

/// What this visit did of what was asked for, in time or late.
fn duties_done(scene: &Scene<'_>) -> Vec<LegalRow> {
    let days = scene.visit.name.date..=scene.visit.last_day();
    let all = obligations(scene.site, scene.system, scene.number + 1, *days.end());
    let before = obligations(scene.site, scene.system, scene.number, *days.start());
    let mut done: Vec<Done> = Vec::new();
    for duty in &all {
        let checked = duty.duty == Duty::LeakCheck && duty.done.is_none();
        // A check that was made moves the next one on: what it fulfilled is what was due before it.
        let (asked, day) = if checked && days.contains(&duty.from.day) {
            let same = |other: &&Obligation| {
                (
                    other.duty,
                    other.circuit,
                    other.rules.map(|rules| rules.title),
                ) == (duty.duty, duty.circuit, duty.rules.map(|rules| rules.title))
            };
            let Some(asked) = before.iter().find(same) else {
                continue;
            };
            (asked, duty.from.day)
        } else {
            match duty.done.as_ref().filter(|done| days.contains(&done.day)) {
                Some(done) => (duty, done.day),
                None => continue,
            }
        };
        let at_once = asked.duty == Duty::Repair && asked.by == asked.from.day;
        let one = Done {
            rule: match asked.rules {
                Some(rules) => scene.words().phrase(rules.title),
                None => scene.words().text(&asked.source),
            },
            what: asked.what.clone(),
            by: asked.by,
            since: at_once.then_some(asked.from.day),
            day,
            late: day > asked.by && !at_once,
            verify: asked.verify(),
            circuits: Vec::new(),
        };
        let circuit = asked.circuit.filter(|_| scene.system.several_circuits());
        let same = |other: &&mut Done| {
            (&other.rule, &other.what, other.by) == (&one.rule, &one.what, one.by)
        };
        match done.iter_mut().find(same) {
            Some(other) => {
                let more = circuit.filter(|circuit| !other.circuits.contains(circuit));
                other.circuits.extend(more);
            }
            None => done.push(Done {
                circuits: circuit.into_iter().collect(),
                ..one
            }),
        }
    }
    done.into_iter().map(|done| done_row(scene, done)).collect()
}

fn done_row(scene: &Scene<'_>, done: Done) -> LegalRow {
    let what = what_of(scene, done.what, done.circuits);
    let when = match (done.since, done.late) {
        (Some(_), _) => "since",
        (None, true) => "late",
        (None, false) => "in-time",
    };
    let message = Message::of("legal-duty-done")
        .with("what", what)
        .with("by", done.since.unwrap_or(done.by))
        .with("day", done.day)
        .with("when", when);
    LegalRow {
        rule: done.rule,
        statement: scene.say(&message),
        verify: done.verify,
    }
}

/// What has to be done, with the circuits it is of.
fn what_of(scene: &Scene<'_>, what: Text, circuits: Vec<usize>) -> String {
    let count = circuits.len();
    let circuits = circuits
        .into_iter()
        .map(|circuit| scene.system.circuit_choice(circuit));
    let message = Message::of("next-what")
        .with("what", what)
        .with("count", count)
        .with("circuits", Text::List(circuits.collect()));
    scene.say(&message)
}

/// Where circuits stand under a rule.
#[derive(Clone, PartialEq)]
struct Position {
    rule: &'static str,
    circuits: Vec<usize>,
    standing: &'static str,
    why: Text,
    charge: Option<String>,
    duties: Vec<Message>,
    verify: bool,
}

fn position(
    scene: &Scene<'_>,
    rules: &'static RuleSet,
    circuit: usize,
    coverage: &Coverage,
) -> Position {
    Position {
        rule: rules.title,
        circuits: vec![circuit],
        standing: match (coverage.covered, coverage.undecided) {
            (true, _) => "covered",
            (false, true) => "undecided",
            (false, false) => "not-covered",
        },
        why: coverage.why.clone(),
        charge: coverage
            .co2e_t
            .filter(|_| rules.word != RuleSetWord::Us82)
            .map(|tonnes| scene.tonnes(tonnes * 1000.0)),
        duties: duties(scene, rules, circuit, coverage.covered),
        verify: rules.verify || coverage.undecided,
    }
}

fn statement(scene: &Scene<'_>, position: &Position) -> String {
    let several = scene.system.several_circuits();
    let count = if several { position.circuits.len() } else { 0 };
    let names = position.circuits.iter();
    let names = names.map(|&circuit| scene.system.circuit_choice(circuit));
    let coverage = Message::of("legal-coverage")
        .with("count", count)
        .with("circuits", Text::List(names.collect()))
        .with("standing", position.standing)
        .with("why", position.why.clone());
    let charge = position.charge.as_ref().map(|charge| {
        Message::of("legal-charge")
            .with("count", count)
            .with("charge", charge.as_str())
    });
    let said = std::iter::once(&coverage)
        .chain(&charge)
        .chain(&position.duties);
    said.map(|message| scene.say(message))
        .collect::<Vec<_>>()
        .join(" ")
}

/// What a statutory percentage says, and why it is not the loss per year of the account.
fn how_counted(circuit: &CircuitFigures, rate: &Figure) -> Vec<Message> {
    let explains = [
        "note-annualized",
        "note-annualized-at-most",
        "note-first-calculation",
        "note-window",
    ];
    let mut said: Vec<Message> = rate
        .notes
        .iter()
        .filter_map(|note| match note {
            Text::Said(message) if explains.contains(&message.id) => Some(message.clone()),
            _ => None,
        })
        .collect();
    if circuit.plain.is_some() {
        said.push(Message::of("legal-rate-own-way"));
    }
    said
}

/// The leak rate of a circuit beside the trigger of its category.
fn leak_rate(scene: &Scene<'_>, rules: &RuleSet, circuit: usize, rate: &Figure) -> Message {
    let category = scene.system.note.as_ref().and_then(|note| note.category);
    let trigger = category.map(|category| trigger_percent(category.value));
    let over = trigger.is_some_and(|trigger| rate.value.number() > trigger);
    let law = rules.exceedance.filter(|_| over);
    let id = match (trigger, law) {
        (None, _) => "legal-rate-without-category",
        (Some(_), None) => "legal-rate-not-over",
        (Some(_), Some(_)) => "legal-rate-over",
    };
    let mut message = Message::of(id)
        .with("circuit", scene.system.circuit_choice(circuit))
        .with("rate", scene.value(&rate.value))
        .with(
            "method",
            if *rate.method == ANNUALIZING {
                "annualizing"
            } else {
                "rolling"
            },
        );
    if let Some((category, trigger)) = category.zip(trigger) {
        message = message
            .phrase("category", category.value.word())
            .figure("trigger", trigger);
    }
    if let Some(law) = law {
        message = message
            .with("days", law.repair.value)
            .with("shutdown", law.shutdown_days)
            .phrase("source", law.repair.source)
            .phrase("extensions", law.extensions);
    }
    message
}

/// What a rule that covers a circuit asks for by its size: leak checks, detection system, records.
fn duties(
    scene: &Scene<'_>,
    rules: &'static RuleSet,
    circuit: usize,
    covered: bool,
) -> Vec<Message> {
    let day = scene.visit.last_day();
    let Some((_, size)) = covered_on(rules, scene.system, circuit, day).filter(|_| covered) else {
        return Vec::new();
    };
    let detection = scene
        .system
        .note
        .as_ref()
        .and_then(|note| note.leak_detection_system)
        .is_some_and(|yes| yes.value);
    let mut duties = Vec::new();
    if let Some(months) = rules.check_months(size, detection) {
        duties.push(Message::of("legal-check-every").with("months", i64::from(months)));
    }
    if rules.detection_mandatory(size) {
        duties.push(Message::of(if detection {
            "legal-detection-there"
        } else {
            "legal-detection-missing"
        }));
    }
    let category = scene.system.note.as_ref().and_then(|note| note.category);
    if let Some(law) = rules.automatic_detection
        && law.asks(category.map(|category| category.value), size)
    {
        let message = Message::of("legal-automatic-detection");
        duties.push(message.phrase("source", law.source));
    }
    duties.push(
        Message::of("legal-records-kept")
            .with("years", i64::from(rules.records.value))
            .phrase("source", rules.records.source),
    );
    duties
}

/// What has to happen next, or that nothing is set.
pub fn next(scene: &Scene<'_>) -> Vec<NextDate> {
    let dates = next_dates(scene);
    if !dates.is_empty() {
        return dates;
    }
    vec![NextDate {
        what: scene.word("next-none"),
        ..NextDate::default()
    }]
}

/// What has to happen next, the earliest first; the same for several circuits is said once.
pub fn next_dates(scene: &Scene<'_>) -> Vec<NextDate> {
    merged(scene, |one, other| one == other)
}

/// The same, said once also where circuits differ in the reason.
pub fn next_in_short(scene: &Scene<'_>) -> Vec<NextDate> {
    merged(scene, |one, other| {
        (&one.by, one.overdue) == (&other.by, other.overdue)
    })
}

fn merged(scene: &Scene<'_>, same: fn(&NextDate, &NextDate) -> bool) -> Vec<NextDate> {
    let day = scene.visit.last_day();
    let all = obligations(scene.site, scene.system, scene.number + 1, day);
    let mut next: Vec<(NextDate, Text, Vec<usize>)> = Vec::new();
    for duty in all.iter().filter(|duty| duty.done.is_none()) {
        let date = next_date(scene, duty);
        let circuit = duty.circuit.filter(|_| scene.system.several_circuits());
        match next
            .iter_mut()
            .find(|(known, what, _)| same(known, &date) && *what == duty.what)
        {
            Some((_, _, circuits)) => {
                circuits.extend(circuit.filter(|circuit| !circuits.contains(circuit)));
            }
            None => next.push((date, duty.what.clone(), circuit.into_iter().collect())),
        }
    }
    next.into_iter()
        .map(|(date, what, circuits)| NextDate {
            what: what_of(scene, what, circuits),
            ..date
        })
        .collect()
}

/// When, not before when and why; what it is comes after, with its circuits.
fn next_date(scene: &Scene<'_>, duty: &Obligation) -> NextDate {
    let words = scene.words();
    let overdue = duty.by < scene.visit.last_day();
    let when = match (duty.duty, overdue) {
        (Duty::Repair, _) if duty.by == duty.from.day => "next-open-since",
        (_, true) => "next-was-due",
        (_, false) => "next-by",
    };
    let mut because = words.text(&duty.because());
    let in_part = if overdue {
        searched_in_part(scene, duty)
    } else {
        searches_in_part(scene, duty)
    };
    if duty.duty == Duty::LeakCheck && in_part {
        because = format!("{because}. {}", scene.word("next-searched-in-part"));
    }
    NextDate {
        what: String::new(),
        by: scene.say(&Message::of(when).with("day", duty.by)),
        overdue,
        not_before: duty.not_before_words.as_ref().map(|text| words.text(text)),
        because: Some(because),
    }
}

/// Whether this visit searched the circuit of a duty that is not due yet, by its notes in part.
fn searches_in_part(scene: &Scene<'_>, duty: &Obligation) -> bool {
    scene.visit.name.date > duty.from.day
        && scene.visit.searches.iter().any(|search| {
            let said = search.note.all_visible.is_some_and(|all| !all.value);
            let circuit = duty.circuit.zip(search.circuit);
            said && circuit.is_none_or(|(asked, searched)| asked == searched)
        })
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
