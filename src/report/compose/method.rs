//! How it was searched and what that could not show; safety, work, advice, what was used.

use crate::job::Timed;
use crate::language::clock;
use crate::notes::DetectorCheckNote;
use crate::quantity::print;
use crate::refrigerant::{Refrigerant, SafetyClass};
use crate::report::compose::points::{not_reached, place_name};
use crate::report::compose::scene::Scene;
use crate::report::data::{
    Advice, Block, Column, ColumnKind, Entry, Method, NotReached, Part, Row, Safety, Table,
};
use crate::text::{Message, sentence};
use crate::vocabulary::Word;
use crate::vocabulary::site_file::RoomKind;
use crate::working::room::{Room, may_be_stated};
use crate::working::vacuum_test::AIR;

/// What was checked for safety, and cautions of this refrigerant.
pub fn safety(scene: &Scene<'_>) -> Safety {
    let mut checked = Vec::new();
    for check in scene.visit.note.iter().flat_map(|note| &note.safety_check) {
        let mut parts = Vec::new();
        if let Some(air) = &check.air {
            let air = print(&air.value, scene.site.units);
            parts.push(scene.say(&Message::of("checked-air").figure("amount", air)));
        }
        if let Some(oxygen) = &check.oxygen {
            let oxygen = print(&oxygen.value, scene.site.units);
            parts.push(scene.say(&Message::of("checked-oxygen").figure("amount", oxygen)));
        }
        for (flag, yes, no) in [
            (
                check.ventilated,
                "checked-ventilated",
                "checked-not-ventilated",
            ),
            (
                check.locked_off,
                "checked-locked-off",
                "checked-not-locked-off",
            ),
        ] {
            if let Some(flag) = flag {
                parts.push(scene.word(if flag.value { yes } else { no }));
            }
        }
        if let Some(sources) = &check.ignition_sources {
            let message = Message::of("checked-ignition");
            parts.push(scene.say(&message.with("sources", sources.value.as_str())));
        }
        if let Some(note) = &check.note {
            parts.push(note.value.clone());
        }
        checked.push(Entry {
            key: check
                .at
                .map_or_else(String::new, |at| scene.words().moment(at.value.civil)),
            value: scene.words().series(&parts),
            working: None,
        });
    }
    Safety {
        checked,
        room: room(scene),
        cautions: cautions(scene),
    }
}

/// Each room that the system reaches, against its limits; nothing for open air.
fn room(scene: &Scene<'_>) -> Vec<Block> {
    scene
        .figures
        .rooms
        .iter()
        .filter_map(|room| room_words(scene, room))
        .map(Block::plain)
        .collect()
}

fn room_words(scene: &Scene<'_>, room: &Room) -> Option<String> {
    let note = scene.site.rooms.get(&room.id)?;
    let about = |id| {
        Message::of(id)
            .with("room", room.id.0.as_str())
            .with("refrigerant", room.refrigerant.designation)
    };
    let mut said = match (room.kind, &room.concentration) {
        (RoomKind::OpenAir, _) => return None,
        (RoomKind::MachineryRoom, _) => vec![about("room-machinery")],
        (RoomKind::Occupied, None) if room.size_wanted() => vec![about("room-size-wanted")],
        (RoomKind::Occupied, None) => vec![about("room-size-not-noted")],
        (RoomKind::Occupied, Some(concentration)) => {
            let concentration = about("room-concentration")
                .with("concentration", scene.value(&concentration.value))
                .with("circuit", scene.system.circuit_choice(room.circuit));
            let mut said = vec![concentration, limit_words(scene, room)];
            said.extend(quarter_words(scene, room));
            said
        }
    };
    let text =
        |noted: &Option<crate::text::Noted<String>>| noted.as_ref().map(|text| text.value.clone());
    let (ventilation, detector) = (text(&note.ventilation), text(&note.detector));
    let has = match (&ventilation, &detector) {
        (Some(_), Some(_)) => Some("both"),
        (Some(_), None) => Some("ventilation"),
        (None, Some(_)) => Some("detector"),
        (None, None) => None,
    };
    said.extend(has.map(|has| {
        Message::of("room-equipped")
            .with("has", has)
            .with("ventilation", ventilation.unwrap_or_default())
            .with("detector", detector.unwrap_or_default())
    }));
    let said: Vec<String> = said.iter().map(|message| scene.say(message)).collect();
    Some(said.join(" "))
}

/// How the concentration stands to the limit; one that was only remembered decides nothing.
fn limit_words(scene: &Scene<'_>, room: &Room) -> Message {
    let Some(limit) = room.limit.filter(may_be_stated) else {
        return Message::of("room-no-limit");
    };
    let flavour = crate::quantity::Flavour::MassPerVolume;
    let printed = crate::quantity::print_si(flavour, limit.value, None, scene.site.units);
    Message::of("room-limit")
        .with("above", yes_no(room.above(limit.value)))
        .figure("limit", printed)
        .phrase("source", limit.source.citation)
}

fn quarter_words(scene: &Scene<'_>, room: &Room) -> Option<Message> {
    let quarter = room
        .quarter
        .as_ref()
        .filter(|_| !room.quarter_from_memory)?;
    Some(
        Message::of("room-quarter")
            .with("above", yes_no(room.above(quarter.value.number())))
            .with("limit", scene.value(&quarter.value)),
    )
}

fn yes_no(is: Option<bool>) -> &'static str {
    if is.unwrap_or(false) { "yes" } else { "no" }
}

fn cautions(scene: &Scene<'_>) -> Vec<String> {
    let mut cautions = Vec::new();
    for circuit in 0..scene.system.circuits.len() {
        let Some(refrigerant) = scene.refrigerant(circuit) else {
            continue;
        };
        let Some(class) = refrigerant.safety_class.map(|class| class.value) else {
            continue;
        };
        let mut said = vec![
            Message::of("safety-class")
                .with("refrigerant", refrigerant.designation)
                .with("class", class.to_string()),
        ];
        if may_suffocate_only(refrigerant, class) {
            said.push(Message::of("safety-can-suffocate"));
        }
        if class.is_flammable() {
            said.push(Message::of("safety-can-burn"));
        }
        if class.is_more_toxic() {
            said.push(Message::of("safety-is-toxic"));
        }
        let said: Vec<String> = said.iter().map(|message| scene.say(message)).collect();
        let text = said.join(" ");
        if !cautions.contains(&text) {
            cautions.push(text);
        }
    }
    cautions
}

/// Whether what is dangerous in it is that it displaces the air: neither flammable nor more toxic, and heavier than air, so that
/// it gathers in low places first (common practice).
fn may_suffocate_only(refrigerant: &Refrigerant, class: SafetyClass) -> bool {
    let harmless = !class.is_flammable() && !class.is_more_toxic();
    harmless && refrigerant.molar_mass_kg_per_kmol() > AIR.1
}

/// Searches, what was not reached, and what the methods could not show.
pub fn method(scene: &Scene<'_>) -> Method {
    let rows: Vec<Row> = scene
        .visit
        .searches
        .iter()
        .map(|search| {
            let note = &search.note;
            let mut how = note
                .method
                .map_or_else(String::new, |m| scene.words().phrase(m.value.word()));
            if let Some(instrument) = &note.instrument {
                how += &format!(", {}", instrument.value);
            }
            let mut conditions = Vec::new();
            if let Some(plant) = note.plant {
                let message = Message::of("search-plant").phrase("state", plant.value.word());
                conditions.push(scene.say(&message));
            }
            if let Some(pressure) = &note.pressure {
                conditions.push(scene.figure(print(&pressure.value, scene.site.units)));
            }
            if let Some(background) = &note.background {
                let message = Message::of("search-background");
                conditions.push(scene.say(&message.with("background", background.value.as_str())));
            }
            let areas: Vec<String> = note
                .areas
                .iter()
                .map(|area| place_name(scene, &area.value.0))
                .collect();
            Row {
                cells: vec![
                    scene.words().moment(search.started.value.civil),
                    crate::report::compose::tests::duration(
                        search.ended.value.seconds_since(search.started.value),
                    ),
                    how,
                    scene.words().series(&areas),
                    conditions.join(", "),
                ],
                total: false,
            }
        })
        .collect();
    let column = |head: &'static str, kind| Column {
        head: scene.word(head),
        kind,
    };
    let searches = if rows.is_empty() {
        Vec::new()
    } else {
        vec![Table {
            title: scene.word("search-title"),
            columns: vec![
                column("head-when", ColumnKind::Short),
                column("head-for", ColumnKind::Short),
                column("head-method", ColumnKind::Short),
                column("head-where", ColumnKind::Text),
                column("head-conditions", ColumnKind::Text),
            ],
            rows,
            note: String::new(),
        }]
    };
    Method {
        lead: scene.visit.introduction.clone(),
        searches,
        not_reached: not_reached(scene)
            .into_iter()
            .map(|(place, reason)| NotReached { place, reason })
            .collect(),
        limits: limits(scene),
        cautions: Vec::new(),
    }
}

fn limits(scene: &Scene<'_>) -> Vec<String> {
    let mut limits = Vec::new();
    if !scene.visit.searches.is_empty() {
        let all = scene
            .visit
            .searches
            .iter()
            .any(|search| search.note.all_visible.is_some_and(|all| all.value));
        if !all {
            limits.push(scene.word("limit-not-all-visible"));
        }
        limits.push(scene.word("limit-of-search"));
    }
    limits.extend(super::leaks_explained::not_sized(scene));
    if !scene.visit.pressure_tests.is_empty() || !scene.visit.vacuum_tests.is_empty() {
        limits.push(scene.word("limit-of-tests"));
    }
    limits
}

/// Work, part by part.
pub fn work(scene: &Scene<'_>) -> Part {
    let rows: Vec<Row> = scene
        .visit
        .note
        .iter()
        .flat_map(|note| &note.work)
        .filter_map(|work| {
            let mut done = work.work.as_ref()?.value.clone();
            if work.nitrogen_purge.is_some_and(|purge| purge.value) {
                done = scene.say(&Message::of("work-brazed").with("work", done));
            }
            Some(Row {
                cells: vec![
                    work.at
                        .map_or_else(String::new, |at| scene.words().moment(at.value.civil)),
                    work.part.as_ref()?.value.clone(),
                    done,
                ],
                total: false,
            })
        })
        .collect();
    if rows.is_empty() {
        return Part::default();
    }
    let column = |head: &'static str, kind| Column {
        head: scene.word(head),
        kind,
    };
    Part {
        tables: vec![Table {
            title: scene.word("work-title"),
            columns: vec![
                column("head-when", ColumnKind::Short),
                column("head-part", ColumnKind::Text),
                column("head-work", ColumnKind::Text),
            ],
            rows,
            note: String::new(),
        }],
        ..Part::default()
    }
}

/// Advice given, with the answers.
pub fn advice(scene: &Scene<'_>) -> Vec<Advice> {
    scene
        .visit
        .note
        .iter()
        .flat_map(|note| &note.advice)
        .filter_map(|advice| {
            let to = advice.to.as_ref().map(|to| to.value.clone());
            let at = advice.at.map(|at| scene.words().moment(at.value.civil));
            Some(Advice {
                what: sentence(&advice.what.as_ref()?.value),
                to: match (to, at) {
                    (Some(to), Some(at)) => Some(format!("{to}, {at}")),
                    (to, at) => to.or(at),
                },
                answer: advice.answer.as_ref().map(|a| sentence(&a.value)),
            })
        })
        .collect()
}

/// People and instruments used.
pub fn used(scene: &Scene<'_>) -> Part {
    let mut facts: Vec<Entry> = scene
        .visit
        .attendance
        .iter()
        .map(|attendance| Entry {
            key: scene.book.person_name(&attendance.by.value),
            value: scene.say(
                &Message::of("used-attendance")
                    .with("from", scene.words().moment(attendance.from.value.civil))
                    .with("to", clock(attendance.to.value.civil)),
            ),
            working: None,
        })
        .collect();
    let visit = scene.visit;
    let mut instruments: Vec<&crate::vocabulary::Identifier> = visit
        .searches
        .iter()
        .filter_map(|s| s.note.instrument.as_ref())
        .chain(
            visit
                .pressure_tests
                .iter()
                .flat_map(|t| [&t.note.gauge, &t.note.thermometer])
                .flatten(),
        )
        .chain(
            visit
                .vacuum_tests
                .iter()
                .filter_map(|t| t.note.gauge.as_ref()),
        )
        .chain(visit.movements.iter().filter_map(|m| m.note.scale.as_ref()))
        .chain(
            visit
                .detector_checks
                .iter()
                .filter_map(|c| c.note.instrument.as_ref()),
        )
        .map(|id| &id.value)
        .collect();
    instruments.sort();
    instruments.dedup();
    for id in instruments {
        let Some(note) = scene.book.instruments.get(id) else {
            continue;
        };
        let mut parts = vec![
            note.kind
                .as_ref()
                .map_or_else(String::new, |k| k.value.clone()),
        ];
        let last = note
            .checked
            .iter()
            .chain(&note.calibrated)
            .map(|day| day.value)
            .filter(|day| *day <= visit.last_day())
            .max();
        if let Some(last) = last {
            parts.push(scene.say(&Message::of("used-last-checked").with("day", last)));
        }
        let tried = visit.detector_checks.iter().filter(|check| {
            let instrument = check.note.instrument.as_ref();
            instrument.is_some_and(|instrument| instrument.value == *id)
        });
        parts.extend(tried.map(|check| tried_on_leak(scene, check)));
        facts.push(Entry {
            key: id.0.clone(),
            value: scene.words().series(&parts),
            working: None,
        });
    }
    Part {
        facts,
        ..Part::default()
    }
}

/// How a detector answered to a reference leak; with the day, where the job took several.
fn tried_on_leak(scene: &Scene<'_>, check: &Timed<DetectorCheckNote>) -> String {
    let leak = check.note.reference_leak.as_ref();
    let responded = check.note.responded.is_some_and(|yes| yes.value);
    let id = if responded {
        "used-detector-responded"
    } else {
        "used-detector-silent"
    };
    let civil = check.at.value.civil;
    let message = Message::of(id)
        .with("leak", leak.map_or("none", |leak| leak.value.as_str()))
        .with("clock", clock(civil));
    let said = scene.say(&message);
    if scene.visit.name.date == scene.visit.last_day() {
        return said;
    }
    let on_day = Message::of("used-on-day").with("day", scene.words().day_month(civil.date()));
    scene.say(&on_day.with("said", said))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_heavier_than_air_and_else_harmless_is_said_to_suffocate() {
        let said = |designation| {
            let refrigerant = crate::refrigerant::find(designation).unwrap();
            may_suffocate_only(refrigerant, refrigerant.safety_class.unwrap().value)
        };
        for heavy in ["R-449A", "R-134a", "R-744"] {
            assert!(said(heavy), "{heavy}");
        }
        // Water vapour is lighter, R-123 toxic, R-32 flammable, ammonia all three.
        for other in ["R-718", "R-123", "R-32", "R-717"] {
            assert!(!said(other), "{other}");
        }
    }
}
