//! A cylinder heavier on the scale than it may be.

use crate::caution::{Caution, Edit, Scene};
use crate::job::MovedMass;
use crate::text::Diagnostic;

pub(super) static CAUTION: Caution = Caution {
    name: "cylinder-above-its-most",
    summary: "a cylinder weighed more than it may",
    finds: "A movement with a scale reading, before or after, above the `most` of its cylinder.",
    matters: "A cylinder filled too far bursts when it warms, for its liquid has no room to grow.",
    put_right: "Keep the cylinder cool and upright, take gas out of it into another one until it is below its most, and change cylinders earlier. Leave the readings as they were.",
    source: "common practice",
    example: &[Edit {
        file: "rimebook.toml",
        from: "most = \"36.00 kg\"",
        to: "most = \"25.90 kg\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "most = \"36.00 kg\"",
        to: "most = \"26.20 kg\"",
    }],
    check,
    limits_claim: false,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let mut told = Vec::new();
    for movement in &scene.visit.movements {
        let Some(id) = &movement.note.cylinder else {
            continue;
        };
        let MovedMass::Weighed { before, after } = movement.amount else {
            continue;
        };
        let most = scene
            .book
            .cylinders
            .get(&id.value)
            .and_then(|note| note.most);
        let heavier = if after.value.value.si() > before.value.value.si() {
            after
        } else {
            before
        };
        let Some(most) =
            most.filter(|most| heavier.value.value.si() > most.value.value.si() + 1e-6)
        else {
            continue;
        };
        if told.contains(&&id.value) {
            continue;
        }
        told.push(&id.value);
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                heavier.span,
                format!(
                    "cylinder `{}` weighed {}, it may weigh {}",
                    id.value,
                    scene.print(&heavier.value),
                    scene.print(&most.value)
                ),
            )
            .here("on the scale")
            .also(most.span, "the most it may weigh")
            .why(CAUTION.matters)
            .cure("keep it cool and take gas out into another cylinder before it is moved"),
        );
    }
}
