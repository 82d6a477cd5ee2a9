//! A detector tried on a reference leak of a gas of another kind than the refrigerant.

use crate::caution::detector_use::{DetectorUse, sole};
use crate::caution::example::CHECK_READINGS;
use crate::caution::{Caution, Edit, Scene};
use crate::refrigerant::{Family, Refrigerant, find};
use crate::text::{Diagnostic, Message, Span};
use crate::vocabulary::method_word::MethodWord;
use crate::vocabulary::readings_file::Plant;

const REFERENCE: &str = "reference-leak = \"5 g/yr R-134a\"";

pub(super) static CAUTION: Caution = Caution {
    name: "reference-leak-of-another-kind",
    summary: "a detector was tried on a gas of another kind than the refrigerant",
    finds: "An electronic detector that alone stands for a search, for the evidence of a leak or for a proof, and that on that day was tried only on reference leaks of another kind than the refrigerant of the circuit: a fluorocarbon, a hydrocarbon, ammonia or carbon dioxide. One fluorocarbon for another says nothing, nor does a reference leak without its gas.",
    matters: "A sensor for one kind of gas may not answer to the other at all: the trial shows that it works, not that it would have found this leak.",
    put_right: "Try the detector on a reference leak of the refrigerant, or of its kind, and go over the places again; or use bubble solution.",
    source: "common practice; Regulation (EC) 1516/2007 Article 6 (gas detection devices adapted to the refrigerant)",
    example: &[Edit {
        file: CHECK_READINGS,
        from: REFERENCE,
        to: "reference-leak = \"5 g/yr R-290\"",
    }],
    near_miss: &[Edit {
        file: CHECK_READINGS,
        from: REFERENCE,
        to: "reference-leak = \"4 g/yr R-1234yf\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let weak = |one: &DetectorUse<'_>| of_another_kind(scene, one).is_some();
    let same = |one: &DetectorUse<'_>, other: &DetectorUse<'_>| {
        one.instrument == other.instrument && one.day == other.day
    };
    for one in sole(scene, weak, same) {
        let Some((held, tried, span)) = of_another_kind(scene, &one) else {
            continue;
        };
        found.push(
            CAUTION.says(
                one.span,
                Message::of("caution-reference-leak-of-another-kind")
                    .with("tried", tried.designation)
                    .with("held", held.designation),
            )
            .here(format!("the circuit holds {}, {}", held.designation, kind(held)))
            .also(span, format!("tried on {}, {}", tried.designation, kind(tried)))
            .cure("try it on a reference leak of the refrigerant or its kind and go over these places again")
            .cure("if the gas of the reference leak was written wrongly, correct it"),
        );
    }
}

/// What the circuit holds and what the detector was tried on that day, if every trial was of another kind.
fn of_another_kind(
    scene: &Scene<'_>,
    one: &DetectorUse<'_>,
) -> Option<(&'static Refrigerant, &'static Refrigerant, Span)> {
    let plant = one.search.and_then(|search| search.note.plant);
    let charged = plant.is_none_or(|plant| plant.value != Plant::UnderNitrogen);
    let circuit = one
        .circuit
        .filter(|_| one.method == MethodWord::Electronic && charged)?;
    let held = scene.refrigerant(circuit, one.day)?;
    let checks = scene.visit.detector_checks.iter();
    let trials = checks.filter(|check| one.is_tried_by(check)).map(|check| {
        let reference = check.note.reference_leak.as_ref()?;
        // A bare number is the rate: R-22 is not meant by `22 g/yr`.
        let words = reference.value.split_whitespace();
        let mut names = words.filter(|word| word.contains(char::is_alphabetic));
        let tried = names.find_map(find)?;
        (kind(tried) != kind(held)).then_some((held, tried, reference.span))
    });
    let trials: Vec<_> = trials.collect::<Option<_>>()?;
    trials.into_iter().next()
}

/// What a sensor tells apart.
fn kind(refrigerant: &Refrigerant) -> &'static str {
    let of = |families: &[Family]| {
        let mut parts = refrigerant.components.iter();
        parts.all(|part| families.contains(&part.substance.family))
    };
    if of(&[Family::Hydrocarbon]) {
        "a hydrocarbon"
    } else if of(&[Family::Inorganic, Family::Ether]) {
        refrigerant.designation
    } else {
        "a fluorocarbon"
    }
}
