//! Every point looked at or worked on, and the places that were not reached.

use crate::history::{PointHistory, State};
use crate::job::Finding;
use crate::quantity::{Flavour, LeakRate, Quantity};
use crate::report::compose::scene::Scene;
use crate::report::data::{Column, ColumnKind, PointRow, PointState, Points, Row, Table};
use crate::text::{Message, Text};
use crate::vocabulary::finding_field::FindingState;
use crate::working::evidence::grade;
use crate::working::outcome::{Standing, is_leak};

/// Every point looked at or worked on.
pub fn points(scene: &Scene<'_>) -> Points {
    let mut rows = Vec::new();
    let mut sized = false;
    let words = scene.words();
    let unit = size_unit(scene);
    for (number, finding, standing) in scene.findings() {
        let (state, state_words) = state_of(scene, finding, standing);
        let size = size_of(scene, finding, unit);
        sized |= finding.note.size.is_some();
        rows.push(PointRow {
            number: number.to_string(),
            place: scene.place(finding),
            state,
            state_words,
            evidence: grade(&finding.note)
                .map_or_else(String::new, |grade| words.phrase(grade.word())),
            size: size.unwrap_or_default(),
        });
    }
    let listed = |point: &crate::vocabulary::Identifier| {
        scene.visit.findings.iter().any(|finding| {
            finding
                .note
                .point
                .as_ref()
                .is_some_and(|id| id.value == *point)
        })
    };
    let mut number = rows.len();
    let mut add = |place: String, state: PointState, words: String| {
        number += 1;
        rows.push(PointRow {
            number: number.to_string(),
            place,
            state,
            state_words: words,
            evidence: String::new(),
            size: String::new(),
        });
    };
    for (point, days) in scene.holding() {
        if !listed(point) {
            let state = scene.life(point).state;
            let said = match state {
                State::RepairedHolding {
                    replaced: Some(_), ..
                } => words.text(&state.describe()),
                _ => scene.say(&Message::of("point-holds").with("days", days)),
            };
            add(scene.system.point_name(point), PointState::Holding, said);
        }
    }
    let named: Vec<String> = scene
        .findings()
        .map(|(_, finding, _)| scene.place(finding))
        .collect();
    for (place, _) in not_reached(scene) {
        if named.contains(&place) {
            continue;
        }
        add(
            place,
            PointState::NotReached,
            scene.word("point-not-reached"),
        );
    }
    Points {
        size_unit: sized.then(|| scene.figure(unit)),
        rows,
    }
}

/// How a finding stands, and of a suspect that was not reached this too.
pub fn state_of(scene: &Scene<'_>, finding: &Finding, standing: Standing) -> (PointState, String) {
    let (state, words) = scene.state(finding, standing);
    let suspect = matches!(standing, Standing::Noted(FindingState::Suspect));
    let place = scene.place(finding);
    if suspect
        && not_reached(scene)
            .iter()
            .any(|(missed, _)| *missed == place)
    {
        return (state, scene.word("point-suspect-not-reached"));
    }
    (state, words)
}

/// Points that have leaked, with their lives; none where no leak is known.
pub fn history(scene: &Scene<'_>) -> Option<Table> {
    let mut lives: Vec<PointHistory> = scene
        .system
        .points
        .iter()
        .map(|(id, _)| scene.life(id))
        .filter(|life| !life.spells.is_empty())
        .collect();
    lives.sort_by_key(|life| usize::MAX - life.of_this_part().count());
    let rows: Vec<Row> = lives.iter().map(|life| history_row(scene, life)).collect();
    let column = |head: &'static str| Column {
        head: scene.word(head),
        kind: ColumnKind::Text,
    };
    (!rows.is_empty()).then(|| Table {
        title: scene.word("leaked-points"),
        columns: [
            "leaked-point",
            "leaked-when",
            "leaked-repairs-held",
            "leaked-at-this-visit",
        ]
        .map(column)
        .to_vec(),
        rows,
        note: scene.word("leaked-note"),
    })
}

fn history_row(scene: &Scene<'_>, life: &PointHistory) -> Row {
    let leaked: Vec<String> = life
        .spells
        .iter()
        .map(|spell| {
            let repair = match &spell.repair {
                None => "none",
                Some(repair) if repair.by.is_some() => "others",
                Some(repair) if repair.span.is_none() => "replaced",
                Some(repair) if !repair.lasting => "temporary",
                Some(_) => "done",
            };
            let later = spell.repair.as_ref().map(|repair| repair.day);
            let later = later.filter(|day| *day != spell.found);
            let message = Message::of("leaked-on")
                .with("day", spell.found)
                .with(
                    "repaired",
                    later.map_or_else(|| Text::from("none"), Text::from),
                )
                .with("repair", repair)
                .with("old", if spell.old_part { "yes" } else { "no" });
            scene.say(&message)
        })
        .collect();
    let held: Vec<String> = life
        .spells
        .iter()
        .filter_map(|spell| spell.held)
        .map(|days| scene.say(&Message::of("days-held").with("days", days)))
        .collect();
    Row {
        cells: vec![
            scene.system.point_name(&life.point),
            leaked.join(", "),
            held.join(", "),
            scene.words().text(&life.state.describe()),
        ],
        total: false,
    }
}

/// The unit of all sizes of a table: the larger one where every size is at least one of it.
fn size_unit(scene: &Scene<'_>) -> &'static str {
    let (small, large, one_large) = match scene.site.units {
        crate::quantity::UnitSystem::Metric => ("g/yr", "kg/yr", 1000.0 * GRAM_A_YEAR),
        crate::quantity::UnitSystem::Us => ("oz/yr", "lb/yr", 453.592_37 * GRAM_A_YEAR),
    };
    let mut sizes = scene
        .findings()
        .filter_map(|(_, finding, _)| Some(finding.note.size.as_ref()?.rate.value.value.si()));
    if sizes.all(|si| si >= one_large) {
        large
    } else {
        small
    }
}

fn size_of(scene: &Scene<'_>, finding: &crate::job::Finding, unit: &str) -> Option<String> {
    let Some(size) = &finding.note.size else {
        return is_leak(finding).then(|| scene.word("size-none"));
    };
    let measured = size.rate.value;
    let estimated = |value: String| {
        if size.measured {
            value
        } else {
            scene.say(&Message::of("size-estimated").with("size", value))
        }
    };
    let LeakRate::Mass(_) = measured.value else {
        let printed = crate::quantity::print(&measured, scene.site.units);
        return Some(estimated(scene.figure(printed)));
    };
    let in_unit = |si: f64, decimals: u8| {
        crate::quantity::print_as(Flavour::MassRate, si, unit, decimals)
            .map(|printed| printed.number)
    };
    let whole = |si: f64| {
        in_unit(si, 3)
            .and_then(|number| number.parse::<f64>().ok())
            .is_some_and(|number| number >= 10.0)
    };
    let digits = u8::from(!whole(measured.value.si()));
    let number = in_unit(measured.value.si(), digits)?;
    let half = measured.uncertainty.and_then(|half| in_unit(half, digits));
    Some(estimated(scene.figure(match half {
        Some(half) => format!("{number} ± {half}"),
        None => number,
    })))
}

/// A gram a year, kg/s.
const GRAM_A_YEAR: f64 = 1e-3 / 31_536_000.0;

/// Places not reached, in words, with the reasons; those reached by another search left out.
pub fn not_reached(scene: &Scene<'_>) -> Vec<(String, String)> {
    let mut places: Vec<(String, String)> = Vec::new();
    for search in &scene.visit.searches {
        for place in &search.note.not_reached {
            let (Some(point), Some(reason)) = (&place.point, &place.reason) else {
                continue;
            };
            if scene.system.points.get(&point.value).is_some() && scene.searched(&point.value) {
                continue;
            }
            let name = place_name(scene, &point.value.0);
            if !places.iter().any(|(known, _)| *known == name) {
                places.push((name, reason.value.clone()));
            }
        }
    }
    places
}

/// A point, or the area that a pattern stands for, in words.
pub fn place_name(scene: &Scene<'_>, pattern: &str) -> String {
    let id = crate::vocabulary::Identifier(pattern.to_owned());
    if scene.system.points.get(&id).is_some() {
        return scene.system.point_name(&id);
    }
    let area = pattern.trim_end_matches('*').trim_end_matches('/');
    scene
        .system
        .note
        .iter()
        .flat_map(|note| &note.area)
        .find(|known| known.id.as_ref().is_some_and(|id| id.value.0 == area))
        .and_then(|known| known.about.as_ref())
        .map_or_else(
            || {
                if pattern == "*" {
                    scene.word("everything-registered")
                } else {
                    area.to_owned()
                }
            },
            |about| about.value.clone(),
        )
}
