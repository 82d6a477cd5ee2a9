//! How it was searched and what that could not show; safety, work, advice, what was used.

use crate::quantity::print;
use crate::report::compose::points::{not_reached, place_name};
use crate::report::compose::scene::Scene;
use crate::report::data::{
    Advice, Block, Column, ColumnKind, Entry, Method, NotReached, Part, Row, Safety, Table,
};
use crate::report::printed::{self, sentence};
use crate::vocabulary::Word;
use crate::vocabulary::site_file::RoomKind;
use crate::working::room::{Room, may_be_stated};

/// What was checked for safety, and cautions of this refrigerant.
pub fn safety(scene: &Scene<'_>) -> Safety {
    let mut checked = Vec::new();
    for check in scene.visit.note.iter().flat_map(|note| &note.safety_check) {
        let mut parts = Vec::new();
        if let Some(air) = &check.air {
            parts.push(format!(
                "refrigerant in the air {}",
                print(&air.value, scene.site.units)
            ));
        }
        if let Some(oxygen) = &check.oxygen {
            parts.push(format!("oxygen {}", print(&oxygen.value, scene.site.units)));
        }
        for (flag, yes, no) in [
            (check.ventilated, "ventilated", "not ventilated"),
            (check.locked_off, "locked off", "not locked off"),
        ] {
            if let Some(flag) = flag {
                parts.push(if flag.value { yes } else { no }.to_owned());
            }
        }
        if let Some(sources) = &check.ignition_sources {
            parts.push(format!("sources of ignition: {}", sources.value));
        }
        if let Some(note) = &check.note {
            parts.push(note.value.clone());
        }
        checked.push(Entry {
            key: check
                .at
                .map_or_else(String::new, |at| printed::moment(at.value.civil)),
            value: parts.join("; "),
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
    let units = scene.site.units;
    let note = scene.site.rooms.get(&room.id)?;
    let name = room.refrigerant.designation;
    let ventilation = note
        .ventilation
        .as_ref()
        .map(|text| format!("ventilation: {}", text.value));
    let detector = note
        .detector
        .as_ref()
        .map(|text| format!("gas detector: {}", text.value));
    let equipped: Vec<String> = [ventilation, detector].into_iter().flatten().collect();
    let equipped = if equipped.is_empty() {
        String::new()
    } else {
        format!(" As noted, {}.", equipped.join("; "))
    };
    match room.kind {
        RoomKind::OpenAir => None,
        RoomKind::MachineryRoom => Some(format!(
            "{} (machinery room): the limits for occupied rooms do not apply; the local code asks for ventilation and a gas detector.{equipped}",
            printed::capital(&room.id.0)
        )),
        RoomKind::Occupied => {
            let Some(concentration) = &room.concentration else {
                return Some(if room.size_wanted() {
                    format!(
                        "{}: {name} is flammable or toxic and can reach this occupied room, whose size is not noted. Whether its limit would be passed is not known.{equipped}",
                        printed::capital(&room.id.0)
                    )
                } else {
                    format!(
                        "{} (occupied): its size is not noted, so that its limit is not checked.{equipped}",
                        printed::capital(&room.id.0)
                    )
                });
            };
            let mut text = format!(
                "{} (occupied): if all of {} came out and mixed evenly, the air would hold {} of {name}.",
                printed::capital(&room.id.0),
                scene.system.circuit_name(room.circuit),
                concentration.value.print(units)
            );
            text += &limit_words(scene, room);
            Some(text + &equipped)
        }
    }
}

/// How the concentration stands to the limits; one that was only remembered decides nothing.
fn limit_words(scene: &Scene<'_>, room: &Room) -> String {
    let mut text = String::new();
    match room.limit.filter(may_be_stated) {
        Some(limit) => {
            let printed = crate::quantity::print_si(
                crate::quantity::Flavour::MassPerVolume,
                limit.value,
                None,
                scene.site.units,
            );
            let above = room.above(limit.value).unwrap_or(false);
            text += &format!(
                " That is {} the limit of {printed} ({}).{}",
                if above { "above" } else { "not above" },
                limit.source.citation,
                if above {
                    " Leave at an alarm; detection, ventilation or a smaller charge are for the local code to decide."
                } else {
                    ""
                }
            );
        }
        None => {
            text += " No limit that was read in its source is held for it, so that none is compared: verify by the local code.";
        }
    }
    if let Some(quarter) = room.quarter.as_ref().filter(|_| !room.quarter_from_memory) {
        let above = room.above(quarter.value.number()).unwrap_or(false);
        text += &format!(
            " It is {} a quarter of the lower flammable limit, {}.",
            if above { "above" } else { "not above" },
            scene.value(&quarter.value)
        );
    }
    text
}

fn cautions(scene: &Scene<'_>) -> Vec<String> {
    let mut cautions = Vec::new();
    for circuit in 0..scene.system.circuits.len() {
        let Some(class) = scene.refrigerant(circuit).and_then(|r| r.safety_class) else {
            continue;
        };
        let name = scene
            .refrigerant(circuit)
            .map_or("", |refrigerant| refrigerant.designation);
        let mut text = format!("{name} is of safety class {}.", class.value);
        if class.value.is_flammable() {
            text += " It can burn: keep sources of ignition away, ventilate, and use tools and detectors rated for it.";
        }
        if class.value.is_more_toxic() {
            text += " It is toxic: leave the room at an alarm and enter only with breathing protection.";
        }
        if !cautions.contains(&text) {
            cautions.push(text);
        }
    }
    cautions
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
                .map_or_else(String::new, |m| m.value.word().to_owned());
            if let Some(instrument) = &note.instrument {
                how += &format!(", {}", instrument.value);
            }
            let mut conditions = Vec::new();
            if let Some(plant) = note.plant {
                conditions.push(format!("plant {}", plant.value.word()));
            }
            if let Some(pressure) = &note.pressure {
                conditions.push(print(&pressure.value, scene.site.units).to_string());
            }
            if let Some(background) = &note.background {
                conditions.push(format!("background {}", background.value));
            }
            let areas: Vec<String> = note
                .areas
                .iter()
                .map(|area| place_name(scene, &area.value.0))
                .collect();
            Row {
                cells: vec![
                    printed::moment(search.started.value.civil),
                    crate::report::compose::tests::duration(
                        search.ended.value.seconds_since(search.started.value),
                    ),
                    how,
                    areas.join("; "),
                    conditions.join(", "),
                ],
                total: false,
            }
        })
        .collect();
    let column = |head: &str, kind| Column {
        head: head.to_owned(),
        kind,
    };
    let searches = if rows.is_empty() {
        Vec::new()
    } else {
        vec![Table {
            title: "Searches".to_owned(),
            columns: vec![
                column("When", ColumnKind::Short),
                column("For", ColumnKind::Short),
                column("Method", ColumnKind::Short),
                column("Where", ColumnKind::Text),
                column("Conditions", ColumnKind::Text),
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
            limits.push("The search was not of every visible and accessible part.".to_owned());
        }
        limits.push("A search shows what its method could find at the places reached, at the pressure of that hour; a smaller leak, or one that comes and goes, may not have shown itself.".to_owned());
    }
    limits.extend(super::leaks_explained::not_sized(scene));
    if !scene.visit.pressure_tests.is_empty() || !scene.visit.vacuum_tests.is_empty() {
        limits.push("A pressure or vacuum test shows nothing larger than the size stated, for the part tested and the time it took; it does not show a place, and it does not replace a leak inspection.".to_owned());
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
                done += " (brazed with nitrogen flowing)";
            }
            Some(Row {
                cells: vec![
                    work.at
                        .map_or_else(String::new, |at| printed::moment(at.value.civil)),
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
    let column = |head: &str, kind| Column {
        head: head.to_owned(),
        kind,
    };
    Part {
        tables: vec![Table {
            title: "Part by part".to_owned(),
            columns: vec![
                column("When", ColumnKind::Short),
                column("Part", ColumnKind::Text),
                column("Work", ColumnKind::Text),
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
            let at = advice.at.map(|at| printed::moment(at.value.civil));
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
            value: format!(
                "{} to {}",
                printed::moment(attendance.from.value.civil),
                printed::clock(attendance.to.value.civil)
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
            parts.push(format!("last checked or calibrated {}", printed::day(last)));
        }
        let proved = visit.detector_checks.iter().rfind(|check| {
            check
                .note
                .instrument
                .as_ref()
                .is_some_and(|i| i.value == *id)
        });
        if let Some(check) = proved {
            let leak = check
                .note
                .reference_leak
                .as_ref()
                .map_or("a reference leak", |l| l.value.as_str());
            let responded = check.note.responded.is_some_and(|yes| yes.value);
            parts.push(format!(
                "{} {leak} at {}",
                if responded {
                    "responded to"
                } else {
                    "did not respond to"
                },
                printed::clock(check.at.value.civil)
            ));
        }
        facts.push(Entry {
            key: id.0.clone(),
            value: parts.join("; "),
            working: None,
        });
    }
    Part {
        facts,
        ..Part::default()
    }
}
