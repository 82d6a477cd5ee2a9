//! A flame used to search a circuit with a flammable refrigerant.

use crate::caution::example::check_also;
use crate::caution::{Caution, Scene};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::Word;
use crate::vocabulary::method_word::MethodWord;
use jiff::civil::Date;

pub(super) static CAUTION: Caution = Caution {
    name: "flame-near-flammable",
    summary: "a flame was used to search a circuit with a flammable refrigerant",
    finds: "A search or a look by a method with an open flame on a circuit whose refrigerant is of a class other than A1 and B1.",
    matters: "Leaking gas can catch fire or explode at the flame.",
    put_right: "Never search such a circuit with a flame: use a detector rated for the class, bubble solution or a tracer. If the method was written wrongly, correct it.",
    source: "common practice; classes: ISO 817, ASHRAE 34",
    example: &[check_also(
        r#"
[[search]]
method = "halide"
started = 2026-09-16T10:25
ended = 2026-09-16T10:40
areas = ["unit/*"]
"#,
    )],
    near_miss: &[check_also(
        r#"
[[search]]
method = "bubbles"
started = 2026-09-16T10:25
ended = 2026-09-16T10:55
areas = ["unit/*"]
"#,
    )],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for search in &scene.visit.searches {
        let day = search.started.value.date();
        if let Some(method) = search.note.method {
            found.extend(flame(scene, method, search.circuit, day));
        }
    }
    for finding in &scene.visit.findings {
        for look in &finding.note.evidence {
            if let Some(day) = scene.day(look.at.value) {
                found.extend(flame(scene, look.method, finding.circuit, day));
            }
        }
    }
}

fn flame(
    scene: &Scene<'_>,
    method: Noted<MethodWord>,
    circuit: Option<usize>,
    day: Date,
) -> Option<Diagnostic> {
    let circuit = circuit.filter(|_| method.value.can_ignite())?;
    let entry = scene.system.in_force(circuit, day)?;
    let refrigerant = entry.refrigerant?;
    let class = refrigerant
        .safety_class
        .filter(|class| class.value.is_flammable())?;
    let span = entry
        .note
        .refrigerant
        .as_ref()
        .map_or(entry.from.span, |noted| noted.span);
    Some(
        CAUTION
            .says(
                method.span,
                Message::of("caution-flame-near-flammable")
                    .with("method", method.value.word())
                    .with("refrigerant", refrigerant.designation),
            )
            .here("an open flame")
            .also(span, format!("class {}: it can burn", class.value))
            .cure("use a detector rated for the class, bubble solution or a tracer")
            .cure("if the method was written wrongly, correct it"),
    )
}
