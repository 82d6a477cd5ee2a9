//! A cylinder that weighs otherwise than when it was last weighed.

use crate::caution::cylinder_history::CylinderHistory;
use crate::caution::{Caution, Edit, Scene};
use crate::job::{MovedMass, Movement};
use crate::quantity::{Flavour, Mass, Measured, print_si};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::Identifier;
use crate::vocabulary::book_file::CylinderHappening;

/// Two scales and a hose more or less may differ by this much, kg (judgement).
const SCALES_DIFFER_KG: f64 = 0.1;

pub(super) static CAUTION: Caution = Caution {
    name: "cylinder-does-not-add-up",
    summary: "a cylinder weighed otherwise than when it was last weighed",
    finds: "The scale reading before a movement, against the last scale reading of that cylinder in any visit or cylinder event before it. More than 0.1 kg and the written uncertainties apart is told. A movement that was not weighed, or a filling without its weight, since then says nothing; an event of the same day may have come before or after.",
    matters: "Refrigerant went into or out of the cylinder that no note tells of, and the account of the gas is short by it.",
    put_right: "Add the missing movement or cylinder event, or correct the reading that was written wrongly.",
    source: "common practice; the allowance of 0.1 kg is a judgement",
    example: &[Edit {
        file: "rimebook.toml",
        from: "gross = \"18.60 kg\"",
        to: "gross = \"19.40 kg\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "gross = \"18.60 kg\"",
        to: "gross = \"18.68 kg\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for movement in &scene.visit.movements {
        let MovedMass::Weighed { before, .. } = movement.amount else {
            continue;
        };
        let Some(id) = &movement.note.cylinder else {
            continue;
        };
        let Some(earlier) = last_weighings(scene.cylinders, movement, &id.value) else {
            continue;
        };
        let apart = |earlier: &Noted<Measured<Mass>>| {
            (before.value.value.si() - earlier.value.value.si()).abs()
        };
        let written = |mass: &Noted<Measured<Mass>>| mass.value.uncertainty.unwrap_or(0.0);
        let agrees = |earlier: &Noted<Measured<Mass>>| {
            apart(earlier) <= SCALES_DIFFER_KG + written(earlier) + written(&before) + 1e-9
        };
        let Some(last) = earlier.last().filter(|_| !earlier.iter().any(agrees)) else {
            continue;
        };
        let more = before.value.value.si() > last.value.value.si();
        let printed = print_si(Flavour::Mass, apart(last), None, scene.site.units);
        found.push(
            CAUTION
                .says(
                    before.span,
                    Message::of("caution-cylinder-does-not-add-up")
                        .with("cylinder", id.value.0.as_str())
                        .figure("mass", printed)
                        .with("than", if more { "more" } else { "less" }),
                )
                .here(format!(
                    "{} before this movement",
                    scene.print(&before.value)
                ))
                .also(
                    last.span,
                    format!("{} when it was last weighed", scene.print(&last.value)),
                )
                .cure("add what happened between as a [[movement]] or a [[cylinder-event]]")
                .cure("if one of the readings was written wrongly, correct it"),
        );
    }
}

/// The weights that the cylinder may have had before a movement, by what was noted last; none if unknown.
fn last_weighings(
    history: &CylinderHistory<'_>,
    movement: &Movement,
    id: &Identifier,
) -> Option<Vec<Noted<Measured<Mass>>>> {
    let last = history.last_movement(id, movement.at.value);
    let day = movement.at.value.date();
    let since = last.map(|last| last.at.value.date());
    let events = history.events(id).iter().filter_map(|event| {
        let at = event.at?.value.date;
        let between = at <= day && since.is_none_or(|since| since <= at);
        (between && event.what?.value != CylinderHappening::Retested).then_some((at, event))
    });
    let mut weights = Vec::new();
    if let Some(last) = last {
        weights.push(match last.amount {
            MovedMass::Weighed { after, .. } => Some(after),
            MovedMass::Stated(_) => None,
        });
    }
    for (at, event) in events {
        // Only an event strictly between is known to come after what stood before it.
        if at < day && since.is_none_or(|since| since < at) {
            weights.clear();
        }
        weights.push(event.gross);
    }
    let known: Option<Vec<_>> = weights.into_iter().collect();
    known.filter(|known| !known.is_empty())
}
