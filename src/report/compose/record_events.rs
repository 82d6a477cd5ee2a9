//! Everything that happened to a system, in order of time: visits, movements of refrigerant, searches,
//! tests, leaks, repairs and their checks, and records from before this book or of others.

use crate::history::by_whom;
use crate::job::{Finding, Movement, Search, Visit};
use crate::language::clock;
use crate::notes::{Look, Proof};
use crate::quantity::print_mass;
use crate::report::compose::account::columns;
use crate::report::compose::history_charts::row;
use crate::report::compose::points::place_name;
use crate::report::compose::pressure_tests::pressure_verdict;
use crate::report::compose::scene::Scene;
use crate::report::compose::vacuum_tests::vacuum_verdict;
use crate::report::data::{ColumnKind, Table};
use crate::ruleset::look_in_words;
use crate::text::{Message, Span, capital};
use crate::vocabulary::finding_field::FindingKind;
use crate::vocabulary::{Identifier, Word};
use crate::working::outcome::{OutcomeKind, is_leak, moment_of, outcome};
use crate::working::pressure_test::hold;
use crate::working::repair_proof::{Ground, written};
use crate::working::vacuum_test::rise;
use jiff::civil::{DateTime, Time};

/// Something that happened.
struct Event {
    /// Its place in time. One without a time begins its day, or follows what it belongs to.
    at: DateTime,
    /// The day, with the time where one is noted.
    when: String,
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
    all.sort_by_key(|event| event.at);
    let rows = all.into_iter().map(|event| {
        row(vec![
            event.when,
            capital(&event.what),
            capital(&event.place),
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

/// A day with its year, and a time.
fn timed(scene: &Scene<'_>, at: DateTime) -> String {
    scene.say(
        &Message::of("record-at")
            .with("day", at.date())
            .with("clock", clock(at)),
    )
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
            let civil = entry.at.value.civil;
            let has_time = note.at.as_ref().is_some_and(|at| at.value.time.is_some());
            let gas = scene.system.in_force(entry.circuit, civil.date());
            let gas = gas.and_then(|entry| entry.refrigerant);
            let mass = note.mass.as_ref().map(|mass| {
                let mass = scene.figure(print_mass(&mass.value, scene.site.units));
                of_gas(scene, mass, gas.map(|gas| gas.designation))
            });
            let by = note.by.as_ref().map(|by| {
                let message = Message::of("event-by").with("by", by_whom(&by.value));
                scene.say(&message)
            });
            let source = note.source.as_ref().map(|source| source.value.clone());
            let parts: Vec<String> = [mass, by, source].into_iter().flatten().collect();
            Some(Event {
                at: civil,
                when: if has_time {
                    timed(scene, civil)
                } else {
                    scene.words().day(civil.date())
                },
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

/// A mass with the refrigerant that it is of.
fn of_gas(scene: &Scene<'_>, mass: String, designation: Option<&str>) -> String {
    let message = Message::of("record-of-gas").with("mass", mass);
    scene.say(&message.with("refrigerant", designation.unwrap_or("none")))
}

fn circuit(scene: &Scene<'_>, number: usize) -> String {
    let choice = scene.system.circuit_choice(number);
    scene.say(&Message::of("circuit-named").with("circuit", choice))
}

/// What a test went over: a section, or all of a circuit.
fn part(scene: &Scene<'_>, number: usize, section: Option<&Identifier>) -> String {
    let Some(section) = section else {
        return circuit(scene, number);
    };
    let choice = scene.system.circuit_choice(number);
    let message = Message::of("event-tested").with("circuit", choice);
    scene.say(&message.with("section", section.to_string()))
}

fn of_visit(scene: &Scene<'_>, number: usize, visit: &Visit) -> Vec<Event> {
    let mut events = Vec::new();
    if let Some(purpose) = visit.note.as_ref().and_then(|note| note.purpose) {
        let first = visit.name.date;
        events.push(Event {
            at: first.to_datetime(Time::midnight()),
            when: scene.words().days(first, visit.last_day()),
            what: scene.say(&Message::of("event-visit").phrase("purpose", purpose.value.word())),
            place: scene.system.name().to_owned(),
            result: ended(scene, number, visit),
            span: purpose.span,
        });
    }
    events.extend(visit.searches.iter().map(|search| searched(scene, search)));
    events.extend(tests(scene, visit));
    let moved = visit.movements.iter();
    events.extend(moved.map(|movement| moved_mass(scene, movement)));
    for finding in &visit.findings {
        events.extend(found(scene, visit, finding));
    }
    events
}

/// How a visit ended; a change of refrigerant names both.
fn ended(scene: &Scene<'_>, number: usize, visit: &Visit) -> String {
    let Some(outcome) = outcome(scene.system, number) else {
        return String::new();
    };
    let before = visit.name.date.yesterday().unwrap_or(visit.name.date);
    let gas = |circuit, day| {
        let entry = scene.system.in_force(circuit, day)?;
        entry.refrigerant.map(|gas| gas.designation)
    };
    let mut changes: Vec<String> = Vec::new();
    for circuit in 0..scene.system.circuits.len() {
        let (from, to) = (gas(circuit, before), gas(circuit, visit.last_day()));
        if let Some((from, to)) = from.zip(to).filter(|(from, to)| from != to) {
            let message = Message::of("event-changed").with("from", from);
            let change = scene.say(&message.with("to", to));
            if !changes.contains(&change) {
                changes.push(change);
            }
        }
    }
    if outcome.kind == OutcomeKind::Retrofitted && !changes.is_empty() {
        return scene.words().series(&changes);
    }
    scene.words().phrase(outcome.shown())
}

fn moved_mass(scene: &Scene<'_>, movement: &Movement) -> Event {
    let cylinder = movement.note.cylinder.as_ref();
    let mass = scene.figure(print_mass(&movement.amount.measured(), scene.site.units));
    let gas = scene.book.refrigerant_moved(scene.system, movement);
    let mass = of_gas(scene, mass, gas.map(|gas| gas.designation));
    Event {
        at: movement.at.value.civil,
        when: timed(scene, movement.at.value.civil),
        what: match movement.why {
            Some(why) => scene.say(
                &Message::of("event-moved")
                    .phrase("kind", movement.kind.word())
                    .phrase("why", why.word()),
            ),
            None => scene.words().phrase(movement.kind.word()),
        },
        place: circuit(scene, movement.circuit),
        result: match cylinder {
            Some(cylinder) => scene.say(
                &Message::of("event-with-cylinder")
                    .with("mass", mass)
                    .with("cylinder", cylinder.value.0.clone()),
            ),
            None => mass,
        },
        span: movement.amount.span(),
    }
}

fn tests(scene: &Scene<'_>, visit: &Visit) -> Vec<Event> {
    let mut events = Vec::new();
    for test in &visit.pressure_tests {
        let Some(tested) = scene.system.circuits.get(test.circuit) else {
            continue;
        };
        let end = test.end.at;
        events.push(Event {
            at: end.value.civil,
            when: timed(scene, end.value.civil),
            what: scene.say(&Message::of("event-pressure-test").with("test", test.id.0.clone())),
            place: part(scene, test.circuit, test.section()),
            result: pressure_verdict(scene, &hold(test, tested, visit)),
            span: end.span,
        });
    }
    for test in &visit.vacuum_tests {
        let end = test.end.at;
        events.push(Event {
            at: end.value.civil,
            when: timed(scene, end.value.civil),
            what: scene.say(&Message::of("event-vacuum-test").with("test", test.id.0.clone())),
            place: part(scene, test.circuit, test.section()),
            result: vacuum_verdict(scene, test, &rise(test, scene.system, visit)),
            span: end.span,
        });
    }
    events
}

/// A search with the places it went over, and those it did not reach.
fn searched(scene: &Scene<'_>, search: &Search) -> Event {
    let all = search.note.all_visible.map(|all| all.value);
    let mut places: Vec<String> = Vec::new();
    for area in &search.note.areas {
        let place = place_name(scene, &area.value.0);
        if !places.contains(&place) {
            places.push(place);
        }
    }
    if places.is_empty() {
        places.push(search.circuit.map_or_else(
            || scene.system.name().to_owned(),
            |number| circuit(scene, number),
        ));
    }
    let method = search.note.method;
    let method = method.map(|method| scene.words().phrase(method.value.word()));
    let not_reached = search.note.not_reached.iter().filter_map(|place| {
        let (point, reason) = (place.point.as_ref()?, place.reason.as_ref()?);
        let message = Message::of("event-not-reached")
            .with("place", place_name(scene, &point.value.0))
            .with("reason", reason.value.as_str());
        Some(scene.say(&message))
    });
    let result: Vec<String> = method.into_iter().chain(not_reached).collect();
    Event {
        at: search.started.value.civil,
        when: timed(scene, search.started.value.civil),
        what: scene.word(match all {
            Some(true) => "event-inspection",
            Some(false) => "event-search-in-part",
            None => "event-search",
        }),
        place: scene.words().series(&places),
        result: scene.words().series(&result),
        span: search.started.span,
    }
}

/// What was found at a place, its repairs, and every look at it after them. A place that was repaired
/// at an earlier visit, and only looked at again, has its checks alone.
fn found(scene: &Scene<'_>, visit: &Visit, finding: &Finding) -> Vec<Event> {
    let note = &finding.note;
    let kind = note.kind.map(|kind| kind.value);
    let again = note.repairs.is_empty() && !is_leak(finding) && kind == Some(FindingKind::Leak);
    let mut events = Vec::new();
    let mut last = visit.name.date.to_datetime(Time::midnight());
    let mut event = |at: Option<DateTime>, what: &'static str, result: String, span: Span| {
        last = at.unwrap_or(last);
        events.push(Event {
            at: last,
            when: match at {
                Some(at) => timed(scene, at),
                None => scene.words().day(last.date()),
            },
            what: scene.word(what),
            place: scene.place(finding),
            result,
            span,
        });
    };
    let moment = |look: &Look| moment_of(visit, look.at.value);
    if again {
        for look in &note.evidence {
            let at = Some(moment(look));
            event(at, "event-check-again", looked(scene, look), look.span);
        }
    } else {
        let signs = || note.evidence.iter().filter(|look| look.positive());
        let first = signs().map(moment).min();
        let what = match kind {
            Some(FindingKind::Suspect) => "event-suspicion",
            Some(FindingKind::Defect) => "event-defect",
            _ => "event-leak-found",
        };
        let first = first.or_else(|| note.evidence.iter().map(moment).min());
        let state = note.state.map(|state| state.value.word());
        let state = state.map_or_else(String::new, |state| scene.words().phrase(state));
        event(first, what, state, note.span);
    }
    for repair in &note.repairs {
        let at = repair.at.map(|at| moment_of(visit, at.value));
        event(at, "event-repair", repair.what.clone(), repair.span);
    }
    let what = if note.repairs.is_empty() {
        "event-check-again"
    } else {
        "event-check"
    };
    for proof in &note.proofs {
        match proof {
            Proof::Look(look) => {
                event(Some(moment(look)), what, looked(scene, look), look.span);
            }
            Proof::Named(name) => {
                let (at, result) = named(scene, visit, proof, &name.value);
                event(at, what, result, name.span);
            }
        }
    }
    events
}

fn looked(scene: &Scene<'_>, look: &Look) -> String {
    scene.say(&look_in_words(look))
}

/// The end of the test or search that a proof names, and which kind it is.
fn named(
    scene: &Scene<'_>,
    visit: &Visit,
    proof: &Proof,
    name: &Identifier,
) -> (Option<DateTime>, String) {
    let of = |id: &'static str| scene.say(&Message::of(id).with("test", name.to_string()));
    match written(visit, proof).map(|clearance| clearance.ground) {
        Some(Ground::Pressure(test)) => (Some(test.end.at.value.civil), of("event-pressure-test")),
        Some(Ground::Vacuum(test)) => (Some(test.end.at.value.civil), of("event-vacuum-test")),
        Some(Ground::Search(search)) => (
            Some(search.ended.value.civil),
            scene.say(&Message::of("proof-search").with("name", name.to_string())),
        ),
        _ => (None, name.to_string()),
    }
}
