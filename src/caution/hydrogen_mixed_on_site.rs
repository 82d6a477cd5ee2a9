//! A tracer mixture of hydrogen and nitrogen that was mixed on site.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::readings_file::TestGas;

const READINGS: &str = "larchwick/cheese-store/2026-03-04/readings.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "hydrogen-mixed-on-site",
    summary: "hydrogen and nitrogen were mixed on site",
    finds: "A pressure test with hydrogen in nitrogen whose note says that it was mixed on site or by hand.",
    matters: "A mixture made on site is nowhere the same: part of it can hold more hydrogen than can be in air without burning, and a cylinder of pure hydrogen is a danger of its own.",
    put_right: "Let it out to the open air away from flames and use the ready-made mixture of 5 % hydrogen.",
    source: "common practice: the ready-made mixture of 5 % hydrogen in nitrogen, never mixed on site",
    example: &[Edit {
        file: READINGS,
        from: "gas = \"nitrogen\"",
        to: "gas = \"5 % hydrogen in nitrogen\"\nnote = \"Mixed on site from two cylinders.\"",
    }],
    near_miss: &[Edit {
        file: READINGS,
        from: "gas = \"nitrogen\"",
        to: "gas = \"5 % hydrogen in nitrogen\"\nnote = \"Ready-made, not mixed on site.\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let hydrogen = test
            .note
            .gas
            .is_some_and(|gas| matches!(gas.value, TestGas::FormingGas | TestGas::HydrogenRich));
        let Some(note) = test
            .note
            .note
            .as_ref()
            .filter(|note| hydrogen && mixed(&note.value))
        else {
            continue;
        };
        found.push(
            CAUTION.says(
                note.span,
                Message::of("caution-hydrogen-mixed-on-site")
                    .with("test", test.id.0.as_str()),
            )
            .here("says so")
            .cure("let it out to the open air away from flames and use the ready-made 5 % mixture"),
        );
    }
}

fn mixed(note: &str) -> bool {
    let note = note.to_lowercase();
    let said = [
        "mixed on site",
        "mixed by hand",
        "mixed here",
        "mixed ourselves",
    ]
    .iter()
    .any(|words| note.contains(words));
    said && !note.contains("not mixed")
}
