//! More refrigerant moved at once than the circuit holds.

use crate::caution::{Caution, Edit, Scene};
use crate::job::Movement;
use crate::quantity::{Flavour, Mass, Measured, print_si};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::refrigerant_file::MovementKind;

/// How far a circuit may be overfilled before a movement is taken for a slip: judgement.
const OVERFILLED: f64 = 1.25;

const LOST: Edit = Edit {
    file: "larchwick/cheese-store/2026-03-04/refrigerant.toml",
    from: "mass = \"0.05 ± 0.03 kg\"",
    to: "mass = \"16 ± 1 kg\"",
};

pub(super) static CAUTION: Caution = Caution {
    name: "moved-more-than-charge",
    summary: "more refrigerant was moved at once than the circuit holds",
    finds: "A single movement of more than one and a quarter times the full charge in force that day, before or after a change of refrigerant.",
    matters: "It is most likely a slip: a decimal point lost, pounds read as kilograms, the gross reading of a cylinder taken for the net, or another circuit's movement. The account and the leak rate rest on it.",
    put_right: "Compare it with the scale readings and the full charge. If the circuit was overfilled so far, leave it as it is and say so in `note`.",
    source: "common practice; the factor is judgement",
    example: &[LOST],
    near_miss: &[Edit {
        to: "mass = \"14 ± 1 kg\"",
        ..LOST
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for movement in &scene.visit.movements {
        let Some(full) = full_charge(scene, movement) else {
            continue;
        };
        let kg = movement.amount.kg();
        if kg <= OVERFILLED * full.value.value.si() {
            continue;
        }
        let mass = print_si(Flavour::Mass, kg, None, scene.site.units);
        let kind = match movement.kind {
            MovementKind::Charged => "charged",
            MovementKind::Recovered => "recovered",
            _ => "let-out",
        };
        found.push(
            CAUTION.says(
                movement.amount.span(),
                Message::of("caution-moved-more-than-charge")
                    .figure("mass", mass)
                    .with("kind", kind)
                    .with("circuit", scene.system.circuit_choice(movement.circuit))
                    .figure("full", scene.print(&full.value)),
            )
            .here("more than it holds")
            .also(full.span, "the full charge in force")
            .cure("compare it with the scale readings: a decimal point lost, pounds for kilograms, gross for net?")
            .cure("if it was so, leave it and say so in `note`"),
        );
    }
}

/// The larger of the full charges in force on the day of a movement and on the day before.
fn full_charge(scene: &Scene<'_>, movement: &Movement) -> Option<Noted<Measured<Mass>>> {
    let day = movement.at.value.date();
    let days = day.yesterday().into_iter().chain([day]);
    days.filter_map(|day| {
        let in_force = scene.system.in_force(movement.circuit, day)?;
        in_force.note.full_charge
    })
    .max_by(|one, other| one.value.value.si().total_cmp(&other.value.value.si()))
}
