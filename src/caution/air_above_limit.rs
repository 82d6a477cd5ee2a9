//! Refrigerant in the air of a room above what people may stay in, and no better reading after it.

use crate::caution::{Caution, Edit, Scene};
use crate::notes::SafetyCheckNote;
use crate::quantity::Concentration;
use crate::refrigerant::Refrigerant;
use crate::text::Diagnostic;

const VISIT: &str = "larchwick/cheese-store/2026-09-16/visit.toml";

/// Work stops at this share of the lower flammable limit: common practice.
const SHARE_OF_FLAMMABLE_LIMIT: f64 = 0.25;

pub(super) static CAUTION: Caution = Caution {
    name: "air-above-limit",
    summary: "the air of the room held more refrigerant than people may stay in",
    finds: "A safety check whose reading of the air lies above the refrigerant concentration limit of ASHRAE 34, or at 25 % of the lower flammable limit or more, where no safety check after it in the same visit reads less. A refrigerant whose limit is not held says nothing.",
    matters: "People may be poisoned, faint for want of oxygen, or the gas may catch fire.",
    put_right: "Leave the room, keep others and flames out, ventilate it from outside, and measure again before anyone works there; write that as a further [[safety-check]]. The local code and the people in charge of the site decide.",
    source: "ASHRAE 34 (refrigerant concentration limit); 25 % of the lower flammable limit: common practice",
    example: &[Edit {
        file: VISIT,
        from: "air = \"0 ppm\"",
        to: "air = \"60000 ppm\"",
    }],
    near_miss: &[
        Edit {
            file: VISIT,
            from: "air = \"0 ppm\"",
            to: "air = \"60000 ppm\"",
        },
        Edit {
            file: VISIT,
            from: "",
            to: "\n[[safety-check]]\nat = 2026-09-16T08:55\nair = \"50 ppm\"\nventilated = true\n",
        },
    ],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let Some(note) = &scene.visit.note else {
        return;
    };
    // A check later in the file is later in the visit.
    let last = note.safety_check.iter().rfind(|check| check.air.is_some());
    let Some((air, check)) = last.and_then(|check| Some((check.air?, check))) else {
        return;
    };
    let day = scene.visit.last_day();
    let circuits = 0..scene.system.circuits.len();
    let mut held = circuits.filter_map(|circuit| scene.refrigerant(circuit, day));
    let Some(refrigerant) = held.find(|refrigerant| above(check, refrigerant)) else {
        return;
    };
    found.push(
        Diagnostic::caution(
            CAUTION.name,
            air.span,
            format!(
                "the air held {} of refrigerant, more than people may stay in with {}",
                scene.print(&air.value),
                refrigerant.designation
            ),
        )
        .here("the last reading of the air in this visit")
        .why(CAUTION.matters)
        .cure("leave the room, keep people and flames out, ventilate it from outside, and measure again")
        .cure("if it was measured again, add that as a [[safety-check]]"),
    );
}

/// Whether the air of a safety check is above the limit of a refrigerant.
fn above(check: &SafetyCheckNote, refrigerant: &Refrigerant) -> bool {
    let Some(air) = check.air else { return false };
    match air.value.value {
        Concentration::Parts(parts) => refrigerant
            .concentration_limit_ppm
            .is_some_and(|limit| parts > limit.value * 1e-6),
        Concentration::MassPerVolume(mass) => refrigerant
            .concentration_limit_kg_m3
            .is_some_and(|limit| mass > limit.value),
        Concentration::OfLowerFlammableLimit(share) => share >= SHARE_OF_FLAMMABLE_LIMIT,
    }
}
