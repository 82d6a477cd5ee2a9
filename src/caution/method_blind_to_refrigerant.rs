//! A method that cannot show the refrigerant in the circuit.

use crate::caution::detector_use::{DetectorUse, sole_of};
use crate::caution::example::{check_also, check_by};
use crate::caution::{Caution, Scene};
use crate::refrigerant::Refrigerant;
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Word;
use crate::vocabulary::method_word::MethodWord;

pub(super) static CAUTION: Caution = Caution {
    name: "method-blind-to-refrigerant",
    summary: "litmus or a halide torch was used on a refrigerant it cannot show",
    finds: "Litmus on a refrigerant other than ammonia, or a halide torch on one without chlorine, where it alone stands for a search, for the evidence of a leak or for the proof of a repair.",
    matters: "Litmus turns with ammonia only, and the flame of the torch colours with chlorine only: with other refrigerants both show nothing however large the leak is.",
    put_right: "Go over the places again with a detector made for this refrigerant, or with bubble solution.",
    source: "common practice",
    example: &[check_by("method = \"litmus\"")],
    near_miss: &[check_also(
        r#"
[[search]]
method = "litmus"
started = 2026-09-16T10:25
ended = 2026-09-16T10:40
areas = ["unit/*"]
"#,
    )],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let methods = |method| matches!(method, MethodWord::Litmus | MethodWord::Halide);
    for one in sole_of(
        scene,
        methods,
        |one| blind(scene, one).is_some(),
        |_, _| false,
    ) {
        let Some(refrigerant) = blind(scene, &one) else {
            continue;
        };
        let reacts = match one.method {
            MethodWord::Litmus => "it turns with ammonia only",
            _ => "it shows chlorine only",
        };
        found.push(
            CAUTION.says(
                one.span,
                Message::of("caution-method-blind-to-refrigerant")
                    .with("method", one.method.word())
                    .with("refrigerant", refrigerant.designation),
            )
            .here(reacts)
            .cure("go over these places again with a detector for this refrigerant, or with bubble solution"),
        );
    }
}

/// The refrigerant of the circuit, if the method cannot show it.
fn blind(scene: &Scene<'_>, one: &DetectorUse<'_>) -> Option<&'static Refrigerant> {
    let refrigerant = scene.refrigerant(one.circuit?, one.day)?;
    let shown = match one.method {
        MethodWord::Litmus => refrigerant.designation == "R-717",
        _ => refrigerant
            .components
            .iter()
            .any(|part| part.substance.formula.contains("Cl")),
    };
    (!shown).then_some(refrigerant)
}
