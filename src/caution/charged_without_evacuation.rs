//! A circuit charged after a test with nitrogen, without evacuation between.

use crate::caution::example::{EMPTIED, RECHARGED, REPAIRED_LEAK, VISIT, findings, readings};
use crate::caution::{Caution, Edit, Scene};
use crate::job::{Movement, PressureTest};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::readings_file::TestGas;
use crate::vocabulary::refrigerant_file::MovementKind;

const HELD: Edit = readings(
    r#"[[pressure-test]]
id = "p1"
purpose = "tightness"
gas = "nitrogen"
gauge = "gauge-1"
start = { at = 2026-11-03T15:00, pressure = "19.50 bar g", temperature = "11.0 °C" }
end = { at = 2026-11-04T08:30, pressure = "19.39 bar g", temperature = "9.6 °C" }

"#,
);

const PROVED: Edit = findings("- proof: p1\n- state: repaired, proved\n");

pub(super) static CAUTION: Caution = Caution {
    name: "charged-without-evacuation",
    summary: "a circuit was charged after a pressure test with no evacuation between",
    finds: "A charge after a pressure test of the same circuit in the same visit, with no vacuum test between and no word of evacuation or vacuum in the work, the test or the movements.",
    matters: "Test gas and moisture left inside raise the pressures, spoil the oil and make the charge and every later pressure reading doubtful.",
    put_right: "Look at the pressures against the temperatures at standstill; if test gas is inside, recover, evacuate and charge again. If it was evacuated, write the vacuum test or the work.",
    source: "Regulation (EC) 1516/2007 Article 8 (leakage test, then evacuation, recharge and leakage test)",
    example: &[VISIT, EMPTIED, REPAIRED_LEAK, HELD, RECHARGED, PROVED],
    near_miss: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        HELD,
        readings(
            r#"[[vacuum-test]]
id = "v1"
gauge = "micron-1"
start = { at = 2026-11-04T10:05, pressure = "280 micron" }
end = { at = 2026-11-04T10:30, pressure = "330 micron" }
"#,
        ),
        RECHARGED,
        PROVED,
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for circuit in 0..scene.system.circuits.len() {
        let tests = scene.visit.pressure_tests.iter();
        let last = tests
            .filter(|test| test.circuit == circuit && is_foreign(test))
            .max_by_key(|test| test.end.at.value);
        let Some(test) = last else { continue };
        let Some(charge) = charge_after(scene, test) else {
            continue;
        };
        if evacuated(scene, test, charge) {
            continue;
        }
        found.push(
            CAUTION
                .says(
                    charge.at.span,
                    Message::of("caution-charged-without-evacuation")
                        .with("circuit", scene.system.circuit_choice(circuit))
                        .with("test", test.id.0.as_str()),
                )
                .here("charged")
                .also(test.end.at.span, "the test gas was still inside here")
                .cure("if test gas is inside, recover, evacuate and charge again")
                .cure("if it was evacuated, write the [[vacuum-test]], or the work"),
        );
    }
}

fn is_foreign(test: &PressureTest) -> bool {
    test.note
        .gas
        .is_some_and(|gas| gas.value != TestGas::Refrigerant)
}

fn charge_after<'a>(scene: &Scene<'a>, test: &PressureTest) -> Option<&'a Movement> {
    scene.visit.movements.iter().find(|movement| {
        movement.circuit == test.circuit
            && movement.kind == MovementKind::Charged
            && movement.at.value >= test.end.at.value
    })
}

fn evacuated(scene: &Scene<'_>, test: &PressureTest, charge: &Movement) -> bool {
    let between = test.end.at.value..=charge.at.value;
    let tested =
        scene.visit.vacuum_tests.iter().any(|vacuum| {
            vacuum.circuit == test.circuit && between.contains(&vacuum.start.at.value)
        });
    let work = scene.visit.note.iter().flat_map(|note| &note.work);
    let movements = scene
        .visit
        .movements
        .iter()
        .map(|movement| &movement.note.note);
    let words = work
        .flat_map(|work| [&work.part, &work.work])
        .chain([&test.note.note])
        .chain(movements)
        .flatten();
    let said = words
        .map(|text| text.value.to_lowercase())
        .any(|text| ["evacuat", "vacuum"].iter().any(|word| text.contains(word)));
    tested || said
}
