//! A tool used near a flammable refrigerant it is not made for.

use crate::caution::class_rating::falls_short;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Noted};
use crate::vocabulary::Identifier;
use jiff::civil::Date;

const SCALE: &str = "kind = \"refrigerant scale\"";

pub(super) static CAUTION: Caution = Caution {
    name: "tool-not-rated-for-class",
    summary: "a scale, gauge or thermometer was used near a refrigerant more flammable than it is rated for",
    finds: "A scale named for a movement, or a gauge or thermometer named for a test, on a circuit with a flammable refrigerant (a class other than A1 and B1), where none of the classes in its `rated-for` is at least as flammable. A tool without `rated-for` says nothing.",
    matters: "A tool that is not made for it can make the spark that sets fire to leaking gas.",
    put_right: "Use a tool rated for the class. If this one is, add the class to `rated-for`.",
    source: "common practice; classes: ISO 817, ASHRAE 34",
    example: &[Edit {
        file: "rimebook.toml",
        from: SCALE,
        to: "kind = \"refrigerant scale\"\nrated-for = [\"A1\"]",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: SCALE,
        to: "kind = \"refrigerant scale\"\nrated-for = [\"A1\", \"A2L\"]",
    }],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let visit = scene.visit;
    let mut told = Vec::new();
    let mut ask = |tool: &Option<Noted<Identifier>>, circuit: usize, day: Date| {
        let Some(id) = tool.as_ref().filter(|id| !told.contains(&id.value)) else {
            return;
        };
        if let Some(diagnostic) = unfit(scene, id, circuit, day) {
            told.push(id.value.clone());
            found.push(diagnostic);
        }
    };
    for movement in &visit.movements {
        ask(
            &movement.note.scale,
            movement.circuit,
            movement.at.value.date(),
        );
    }
    for test in &visit.pressure_tests {
        let day = test.start.at.value.date();
        ask(&test.note.gauge, test.circuit, day);
        ask(&test.note.thermometer, test.circuit, day);
    }
    for test in &visit.vacuum_tests {
        ask(&test.note.gauge, test.circuit, test.start.at.value.date());
    }
}

fn unfit(
    scene: &Scene<'_>,
    id: &Noted<Identifier>,
    circuit: usize,
    day: Date,
) -> Option<Diagnostic> {
    let refrigerant = scene.refrigerant(circuit, day)?;
    let class = refrigerant.safety_class?.value;
    let rated = falls_short(scene.book.instruments.get(&id.value)?, class)?;
    Some(
        Diagnostic::caution(
            CAUTION.name,
            id.span,
            format!(
                "`{}` is not rated for {}, class {class}",
                id.value, refrigerant.designation
            ),
        )
        .here("used here")
        .also(rated.span, "the most flammable class it is rated for")
        .why(CAUTION.matters)
        .cure("use a tool rated for the class; if this one is, add the class to `rated-for`"),
    )
}
