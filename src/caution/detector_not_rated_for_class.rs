//! A detector used near a flammable refrigerant it is not made for.

use crate::caution::class_rating::falls_short;
use crate::caution::detector_use::uses;
use crate::caution::{Caution, Edit, Scene};
use crate::text::Diagnostic;
use crate::vocabulary::Identifier;

pub(super) static CAUTION: Caution = Caution {
    name: "detector-not-rated-for-class",
    summary: "a detector was used near a refrigerant more flammable than it is rated for",
    finds: "A gas detector used on a circuit with a flammable refrigerant (a class other than A1 and B1), where none of the classes in its `rated-for` is at least as flammable. A detector without `rated-for` says nothing.",
    matters: "A detector that is not made for it can itself set fire to leaking gas.",
    put_right: "Use a detector rated for the class. If this one is, add the class to `rated-for`.",
    source: "common practice; classes: ISO 817, ASHRAE 34",
    example: &[Edit {
        file: "rimebook.toml",
        from: "rated-for = [\"A1\", \"A2L\"]",
        to: "rated-for = [\"A1\"]",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "rated-for = [\"A1\", \"A2L\"]",
        to: "rated-for = [\"A3\"]",
    }],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let mut told = Vec::new();
    for one in uses(scene) {
        let Some(id) = one.instrument.map(|id| Identifier(id.to_owned())) else {
            continue;
        };
        let Some(note) = scene.book.instruments.get(&id) else {
            continue;
        };
        let Some(refrigerant) = one
            .circuit
            .and_then(|circuit| scene.refrigerant(circuit, one.day))
        else {
            continue;
        };
        let Some(class) = refrigerant.safety_class else {
            continue;
        };
        let Some(rated) = falls_short(note, class.value) else {
            continue;
        };
        if told.contains(&id) {
            continue;
        }
        told.push(id);
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                one.span,
                format!(
                    "this detector is not rated for {}, class {}",
                    refrigerant.designation, class.value
                ),
            )
            .here("used here")
            .also(rated.span, "the most flammable class it is rated for")
            .why(CAUTION.matters)
            .cure(
                "use a detector rated for the class; if this one is, add the class to `rated-for`",
            ),
        );
    }
}
