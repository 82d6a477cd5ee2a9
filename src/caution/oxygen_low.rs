//! Air with too little oxygen to breathe.

use crate::caution::{Caution, Edit, Scene};
use crate::notes::SafetyCheckNote;
use crate::text::Diagnostic;

const VISIT: &str = "larchwick/cheese-store/2026-09-16/visit.toml";

/// Below this share of oxygen air is called deficient: 29 CFR 1910.146(b), from memory.
const LEAST: f64 = 0.195;

pub(super) static CAUTION: Caution = Caution {
    name: "oxygen-low",
    summary: "the air was short of oxygen, and no later check says that it was aired",
    finds: "A safety check with less than 19.5 % oxygen, with no later check in that visit at 19.5 % or more.",
    matters: "Refrigerant, nitrogen and carbon dioxide push the air out of a room; whoever breathes the rest can fall without warning.",
    put_right: "Go out, air the room, and go in again only when the air has been measured from outside. Write that check too.",
    source: "29 CFR 1910.146(b) (below 19.5 % oxygen: deficient), from memory: verify",
    example: &[Edit {
        file: VISIT,
        from: "air = \"0 ppm\"",
        to: "air = \"0 ppm\"\noxygen = \"18.4 %\"",
    }],
    near_miss: &[Edit {
        file: VISIT,
        from: "air = \"0 ppm\"\nventilated = true",
        to: "oxygen = \"18.4 %\"\nventilated = false\n\n[[safety-check]]\nat = 2026-09-16T08:48\noxygen = \"20.8 %\"\nventilated = true",
    }],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let checks = || scene.visit.note.iter().flat_map(|note| &note.safety_check);
    let last = checks()
        .filter(|check| check.oxygen.is_some())
        .max_by_key(|check| time(check));
    let Some(oxygen) = last.and_then(|check| check.oxygen) else {
        return;
    };
    // The share of a millionth is for the rounding of arithmetic.
    if oxygen.value.value.si() < LEAST * (1.0 - 1e-6) {
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                oxygen.span,
                format!("the air held only {} oxygen", scene.print(&oxygen.value)),
            )
            .here("below 19.5 %")
            .why(CAUTION.matters)
            .cure("go out, air the room, and measure from outside before going in again")
            .cure("if it was aired, write that check as another [[safety-check]]"),
        );
    }
}

fn time(check: &SafetyCheckNote) -> Option<jiff::civil::DateTime> {
    check.at.map(|at| at.value.civil)
}
