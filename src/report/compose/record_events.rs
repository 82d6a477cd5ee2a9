//! Everything that happened to a system, in order of time: visits, movements of refrigerant, searches,
//! tests, leaks, repairs and their checks, and records from before this book or of others.

use crate::job::{Finding, Search, Visit};
use crate::notes::Proof;
use crate::quantity::print;
use crate::report::compose::account::columns;
use crate::report::compose::history_charts::row;
use crate::report::compose::pressure_tests::pressure_verdict;
use crate::report::compose::scene::Scene;
use crate::report::compose::vacuum_tests::vacuum_verdict;
use crate::report::data::{ColumnKind, Table};
use crate::text::{Message, Span, capital};
use crate::vocabulary::Word;
use crate::working::outcome::{is_leak, moment_of, outcome};
use crate::working::pressure_test::hold;
use crate::working::vacuum_test::rise;
use jiff::civil::Date;

/// Something that happened.
struct Event {
    day: Date,
    what: String,
    place: String,
    result: String,
    span: Span,
}

/// The events up to and with the visit of a scene.
pub(super) fn events(scene: &Scene<'_>) -> Table {
    let mut all = earlier(scene);
    for (number, visit) in scene
        .system
        .visits
        .iter()
        .enumerate()
        .take(scene.number + 1)
    {
        all.extend(of_visit(scene, number, visit));
    }
    all.sort_by_key(|event| event.day);
    let rows = all.into_iter().map(|event| {
        row(vec![
            event.day.to_string(),
            capital(&event.what),
            event.place,
            event.result,
            scene.sources.place(event.span),
        ])
    });
    Table {
        title: String::new(),
        columns: columns(
            scene,
            &[
                ("head-when", ColumnKind::Short),
                ("head-what", ColumnKind::Short),
                ("head-where", ColumnKind::Text),
                ("head-mass-or-result", ColumnKind::Text),
                ("head-noted-at", ColumnKind::Name),
            ],
        ),
        rows: rows.collect(),
        note: String::new(),
    }
}

fn earlier(scene: &Scene<'_>) -> Vec<Event> {
    let end = scene.visit.last_day();
    let known = scene
        .system
        .earlier
        .iter()
        .filter(|entry| entry.at.value.date() <= end);
    known
        .filter_map(|entry| {
            let note = &entry.note;
            let point = note.point.as_ref();
            let mass = note.mass.as_ref();
            let mass = mass.map(|mass| scene.figure(print(&mass.value, scene.site.units)));
            let by = note
                .by
                .as_ref()
                .map(|by| scene.say(&Message::of("event-by").with("by", by.value.as_str())));
            let source = note.source.as_ref().map(|source| source.value.clone());
            let parts: Vec<String> = [mass, by, source].into_iter().flatten().collect();
            Some(Event {
                day: entry.at.value.date(),
                what: scene
                    .say(&Message::of("event-earlier").phrase("what", note.what?.value.word())),
                place: point.map_or_else(
                    || circuit(scene, entry.circuit),
                    |point| scene.system.point_name(&point.value),
                ),
                result: parts.join(", "),
                span: entry.at.span,
            })
        })
        .collect()
}

fn circuit(scene: &Scene<'_>, number: usize) -> String {
    let choice = scene.system.circuit_choice(number);
    scene.say(&Message::of("circuit-named").with("circuit", choice))
}

fn of_visit(scene: &Scene<'_>, number: usize, visit: &Visit) -> Vec<Event> {
    let mut events = Vec::new();
    if let Some(purpose) = visit.note.as_ref().and_then(|note| note.purpose) {
        events.push(Event {
            day: visit.name.date,
            what: scene.say(&Message::of("event-visit").phrase("purpose", purpose.value.word())),
            place: scene.system.name().to_owned(),
            result: outcome(scene.system, number)
                .map_or_else(String::new, |outcome| scene.words().phrase(outcome.shown())),
            span: purpose.span,
        });
    }
    events.extend(visit.searches.iter().map(|search| searched(scene, search)));
    for finding in visit.findings.iter().filter(|finding| is_leak(finding)) {
        events.extend(leak(scene, visit, finding));
    }
    for movement in &visit.movements {
        let cylinder = movement.note.cylinder.as_ref();
        let mass = scene.mass(movement.amount.kg(), None);
        events.push(Event {
            day: movement.at.value.date(),
            what: match movement.why {
                Some(why) => scene.say(
                    &Message::of("event-moved")
                        .phrase("kind", movement.kind.word())
                        .phrase("why", why.word()),
                ),
                None => scene.words().phrase(movement.kind.word()),
            },
            place: circuit(scene, movement.circuit),
            result: cylinder.map_or_else(
                || mass.clone(),
                |cylinder| {
                    scene.say(
                        &Message::of("event-with-cylinder")
                            .with("mass", mass.clone())
                            .with("cylinder", cylinder.value.0.clone()),
                    )
                },
            ),
            span: movement.amount.span(),
        });
    }
    for test in &visit.pressure_tests {
        let Some(tested) = scene.system.circuits.get(test.circuit) else {
            continue;
        };
        let held = hold(test, tested, visit);
        let section = test.section().map(|section| {
            scene.say(
                &Message::of("event-tested")
                    .with("circuit", scene.system.circuit_choice(test.circuit))
                    .with("section", section.to_string()),
            )
        });
        events.push(Event {
            day: test.end.at.value.date(),
            what: scene.say(&Message::of("event-pressure-test").with("test", test.id.0.clone())),
            place: section.unwrap_or_else(|| circuit(scene, test.circuit)),
            result: pressure_verdict(scene, &held),
            span: test.end.at.span,
        });
    }
    for test in &visit.vacuum_tests {
        events.push(Event {
            day: test.end.at.value.date(),
            what: scene.say(&Message::of("event-vacuum-test").with("test", test.id.0.clone())),
            place: circuit(scene, test.circuit),
            result: vacuum_verdict(scene, test, &rise(test, scene.system, visit)),
            span: test.end.at.span,
        });
    }
    events
}

fn searched(scene: &Scene<'_>, search: &Search) -> Event {
    let all = search.note.all_visible.map(|all| all.value);
    Event {
        day: search.started.value.date(),
        what: scene.word(match all {
            Some(true) => "event-inspection",
            Some(false) => "event-search-in-part",
            None => "event-search",
        }),
        place: search.circuit.map_or_else(
            || scene.system.name().to_owned(),
            |number| circuit(scene, number),
        ),
        result: search.note.method.map_or_else(String::new, |method| {
            scene.words().phrase(method.value.word())
        }),
        span: search.started.span,
    }
}

/// A leak, its repairs and what was looked at after them.
fn leak(scene: &Scene<'_>, visit: &Visit, finding: &Finding) -> Vec<Event> {
    let note = &finding.note;
    let event = |day: Date, what: &'static str, result: String, span: Span| Event {
        day,
        what: scene.word(what),
        place: scene.place(finding),
        result,
        span,
    };
    let state = note
        .state
        .map(|state| scene.words().phrase(state.value.word()));
    let mut events = vec![event(
        visit.name.date,
        "event-leak-found",
        state.unwrap_or_default(),
        note.span,
    )];
    for repair in &note.repairs {
        let at = repair.at.map(|at| moment_of(visit, at.value).date());
        let day = at.unwrap_or(visit.name.date);
        events.push(event(day, "event-repair", repair.what.clone(), repair.span));
    }
    for proof in &note.proofs {
        let (day, result, span) = match proof {
            Proof::Look(look) => (
                moment_of(visit, look.at.value).date(),
                scene.say(
                    &Message::of("event-look")
                        .phrase("method", look.method.value.word())
                        .with("result", look.result.as_str()),
                ),
                look.span,
            ),
            Proof::Named(name) => (
                visit.last_day(),
                scene.say(&Message::of("event-named-proof").with("name", name.value.to_string())),
                name.span,
            ),
        };
        events.push(event(day, "event-check", result, span));
    }
    events
}
