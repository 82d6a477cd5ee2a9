//! Refrigerant charged or recovered with a cylinder of another refrigerant.

use crate::caution::{Caution, Edit, Scene};
use crate::job::{Movement, refrigerant_of};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::refrigerant_file::MovementKind;
use jiff::ToSpan;

pub(super) static CAUTION: Caution = Caution {
    name: "wrong-cylinder",
    summary: "the cylinder holds another refrigerant than the circuit",
    finds: "A charge from a cylinder, or a recovery into one, whose refrigerant is not the one in force in the circuit. On the days of a change of refrigerant both the old and the new one count as in force for a recovery.",
    matters: "A mixture has unknown pressures and an unknown safety class, and spoils both gases; often it can only be destroyed.",
    put_right: "Find out which gas is in the circuit and in the cylinder. If they were mixed, label both, take the mixture out into a cylinder of its own and send it for destruction or reclaim. If only the note has the wrong cylinder, name the right one.",
    source: "common practice",
    example: &[Edit {
        file: "rimebook.toml",
        from: "id = \"rec-1\"\nrefrigerant = \"R-454C\"",
        to: "id = \"rec-1\"\nrefrigerant = \"R-448A\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "id = \"rec-1\"\nrefrigerant = \"R-454C\"",
        to: "id = \"rec-1\"\nrefrigerant = \"r454c\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let mut told = Vec::new();
    for movement in &scene.visit.movements {
        let Some(id) = movement
            .note
            .cylinder
            .as_ref()
            .filter(|id| !told.contains(&&id.value))
        else {
            continue;
        };
        if let Some(diagnostic) = mixed(scene, movement) {
            told.push(&id.value);
            found.push(diagnostic);
        }
    }
}

fn mixed(scene: &Scene<'_>, movement: &Movement) -> Option<Diagnostic> {
    let id = movement.note.cylinder.as_ref()?;
    let noted = scene.book.cylinders.get(&id.value)?.refrigerant.as_ref()?;
    let held = refrigerant_of(Some(noted))?.designation;
    let day = movement.at.value.date();
    let mut days = vec![day, scene.visit.last_day()];
    let into_circuit = match movement.kind {
        MovementKind::Charged => true,
        MovementKind::Recovered => {
            days.push(scene.visit.name.date.saturating_sub(1.day()));
            false
        }
        _ => return None,
    };
    let in_force = |day| scene.system.in_force(movement.circuit, day);
    let fits = days
        .iter()
        .filter_map(|day| in_force(*day)?.refrigerant)
        .any(|refrigerant| refrigerant.designation == held);
    let entry = in_force(day)?;
    let wanted = entry.refrigerant?.designation;
    if fits {
        return None;
    }
    let circuit = scene.system.circuit_name(movement.circuit);
    let message = Message::of("caution-wrong-cylinder")
        .with("kind", if into_circuit { "charged" } else { "recovered" })
        .with("held", held)
        .with("circuit", scene.system.circuit_choice(movement.circuit))
        .with("wanted", wanted);
    let span = entry
        .note
        .refrigerant
        .as_ref()
        .map_or(entry.from.span, |noted| noted.span);
    Some(
        CAUTION.says(id.span, message)
            .here(format!("cylinder `{}`", id.value))
            .also(noted.span, format!("the cylinder holds {held}"))
            .also(span, format!("{circuit} holds {wanted}"))
            .cure("if the note names the wrong cylinder, name the right one")
            .cure("if they were mixed, label both, take the mixture out and have it reclaimed or destroyed"),
    )
}
