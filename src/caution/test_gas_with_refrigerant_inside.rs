//! Test gas put into a circuit that still held refrigerant.

use crate::caution::{Caution, Edit, Scene};
use crate::job::PressureTest;
use crate::text::{Diagnostic, Message, Span};
use crate::vocabulary::readings_file::{Plant, TestGas};
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::vocabulary::system_file::Status;
use crate::vocabulary::visit_file::{LeftAs, Purpose};

const REFRIGERANT: &str = "larchwick/cheese-store/2026-03-04/refrigerant.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "test-gas-with-refrigerant-inside",
    summary: "test gas was put into a circuit that still held refrigerant",
    finds: "A pressure test of a whole circuit in use that nothing says was emptied: no recovery since its last charge, no pump-down in the words of the test, the movements or the work, no search with the plant emptied, no first charge in this visit. A test of a section, which may have been pumped down, is told only where the circuit was charged earlier in the visit.",
    matters: "The mixture cannot be recovered as refrigerant and goes to waste or into the air; the pressure of liquid adds itself, and the test shows nothing.",
    put_right: "Recover the mixture into a cylinder for waste, recover the rest, then test. If the circuit had been emptied, write that as a movement.",
    source: "Regulation (EC) 1516/2007 Article 6 (recover refrigerant from the whole system before testing with oxygen-free nitrogen)",
    example: &[Edit {
        file: REFRIGERANT,
        from: "at = 2026-03-04T12:40",
        to: "at = 2026-03-04T16:50",
    }],
    near_miss: &[Edit {
        file: REFRIGERANT,
        from: "at = 2026-03-04T12:40",
        to: "at = 2026-03-04T16:30",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let gas = test.note.gas;
        let Some(gas) = gas.filter(|gas| gas.value != TestGas::Refrigerant) else {
            continue;
        };
        let Some((span, text)) = filled(scene, test).filter(|_| !said_empty(scene, test)) else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    gas.span,
                    Message::of("caution-test-gas-with-refrigerant-inside")
                        .with("test", test.id.0.as_str())
                        .with("circuit", scene.system.circuit_choice(test.circuit)),
                )
                .here(format!(
                    "from {}",
                    test.start.at.value.civil.strftime("%Y-%m-%d %H:%M")
                ))
                .also(span, text)
                .cure("recover the mixture for waste, recover the rest, then test")
                .cure(
                    "if it had been emptied, write the recovery as a [[movement]] before the test",
                ),
        );
    }
}

/// Where the notes say that the circuit held refrigerant when the test began.
fn filled(scene: &Scene<'_>, test: &PressureTest) -> Option<(Span, &'static str)> {
    let start = test.start.at.value;
    if let Some(last) = scene.last_filling(test.circuit, start) {
        let charged = last.kind == MovementKind::Charged;
        let this_visit = last.at.value.date() >= scene.visit.name.date;
        return (charged && (this_visit || test.section().is_none()))
            .then_some((last.at.span, "charged, and not recovered before the test"));
    }
    if test.section().is_some() {
        return None;
    }
    let entry = scene.system.in_force(test.circuit, start.date())?;
    let first = scene.system.circuits.get(test.circuit)?.in_force.first()?;
    let in_use = entry
        .note
        .status
        .is_none_or(|status| matches!(status.value, Status::InUse | Status::Standby));
    let before = first.from.value.date() < scene.visit.name.date;
    (in_use && before).then_some((
        entry.from.span,
        "in use since then, and not recovered before the test",
    ))
}

/// Whether anything says that the circuit, or the part under test, held no refrigerant.
fn said_empty(scene: &Scene<'_>, test: &PressureTest) -> bool {
    let visit = scene.visit;
    let purpose = visit.note.as_ref().and_then(|note| note.purpose);
    let new = purpose.is_some_and(|purpose| purpose.value == Purpose::Commissioning)
        || visit.movements.iter().any(|movement| {
            movement.circuit == test.circuit && movement.why == Some(MovementWhy::Installation)
        });
    let emptied = visit.searches.iter().any(|search| {
        search
            .note
            .plant
            .is_some_and(|plant| plant.value == Plant::Emptied)
    });
    let left_empty = scene.earlier_visits().next_back().is_some_and(|earlier| {
        let left = earlier.note.as_ref().and_then(|note| note.left);
        left.is_some_and(|left| left.value == LeftAs::Empty)
    });
    let work = visit.note.iter().flat_map(|note| &note.work);
    let movements = visit.movements.iter().map(|movement| &movement.note.note);
    let words = work
        .flat_map(|work| [&work.part, &work.work])
        .chain([&test.note.note])
        .chain(movements)
        .flatten();
    let pumped = words.map(|text| text.value.to_lowercase()).any(|text| {
        ["pump", "empt", "evacuat"]
            .iter()
            .any(|word| text.contains(word))
    });
    new || emptied || left_empty || pumped
}
