//! A cylinder used after its proof test had run out.

use crate::caution::{Caution, Edit, Scene};
use crate::text::Diagnostic;
use crate::vocabulary::Identifier;
use crate::vocabulary::book_file::CylinderHappening;
use crate::vocabulary::refrigerant_file::MovementKind;
use jiff::civil::Date;

pub(super) static CAUTION: Caution = Caution {
    name: "cylinder-past-retest",
    summary: "a cylinder was used after its proof test had run out",
    finds: "A movement into or out of a cylinder after the last day of its `retest`, unless a cylinder event says that it was retested between.",
    matters: "Nobody has shown lately that the cylinder still holds its pressure; after that day it must not be filled.",
    put_right: "Empty the cylinder, take it out of use and send it to be retested. If it was retested, note that as a cylinder event.",
    source: "common practice",
    example: &[Edit {
        file: "rimebook.toml",
        from: "retest = \"2030-09\"",
        to: "retest = \"2026-02\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "retest = \"2030-09\"",
        to: "retest = \"2026-03\"",
    }],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let mut told = Vec::new();
    let mut movements: Vec<_> = scene.visit.movements.iter().collect();
    // Filling such a cylinder is the graver thing, so it is the one that is told.
    movements.sort_by_key(|movement| movement.kind != MovementKind::Recovered);
    for movement in movements {
        let Some(id) = &movement.note.cylinder else {
            continue;
        };
        let day = movement.at.value.date();
        let Some(retest) = scene
            .book
            .cylinders
            .get(&id.value)
            .and_then(|note| note.retest)
        else {
            continue;
        };
        let last = retest.value.last;
        if last >= day || told.contains(&&id.value) || retested(scene, &id.value, last, day) {
            continue;
        }
        told.push(&id.value);
        let (what, cure) = if movement.kind == MovementKind::Recovered {
            (
                "was filled",
                "empty it, take it out of use and have it retested",
            )
        } else {
            (
                "was used",
                "do not fill it again; return it or have it retested",
            )
        };
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                id.span,
                format!(
                    "cylinder `{}` {what} after its proof test had run out",
                    id.value
                ),
            )
            .here(format!("used on {day}"))
            .also(retest.span, format!("its proof test held until {last}"))
            .why(CAUTION.matters)
            .cure(cure),
        );
    }
}

fn retested(scene: &Scene<'_>, cylinder: &Identifier, last: Date, day: Date) -> bool {
    let mut events = scene.cylinders.events(cylinder).iter();
    events.any(|event| {
        let what = event
            .what
            .is_some_and(|what| what.value == CylinderHappening::Retested);
        // A retest may be made well before the old one runs out; a year is the room left for that.
        let from = last.saturating_sub(jiff::Span::new().years(1));
        let when = event
            .at
            .is_some_and(|at| from <= at.value.date && at.value.date <= day);
        what && when
    })
}
