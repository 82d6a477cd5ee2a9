//! What the leaks found explain of the loss, in words for the customer.

use crate::report::compose::scene::Scene;
use crate::report::visit_figures::CircuitFigures;
use crate::working::leaks_explained::{Explained, Share, Verdict};

/// One sentence for every circuit whose leaks were all measured.
pub fn sentences(scene: &Scene<'_>) -> Vec<String> {
    let circuits = scene.figures.circuits.iter();
    circuits
        .filter_map(|circuit| match &circuit.explained {
            Some(Explained::Sized(share)) => Some(sentence(scene, circuit, share)),
            _ => None,
        })
        .collect()
}

fn sentence(scene: &Scene<'_>, circuit: &CircuitFigures, share: &Share) -> String {
    let (least, most) = share.explained_kg;
    let lost = scene.mass(circuit.leaked_kg, None);
    let bounds = if least > 0.0 {
        format!("between {} and {}", scene.about(least), scene.about(most))
    } else {
        format!("at most {}", scene.about(most))
    };
    let found = match scene.system.circuits.get(circuit.circuit) {
        Some(_) if scene.system.several_circuits() => {
            format!("found in {}", scene.system.circuit_name(circuit.circuit))
        }
        _ => "found".to_owned(),
    };
    match share.verdict {
        Verdict::OthersRemain => format!(
            "The leaks {found} explain {bounds} of the {lost} lost: others remain, or one of them was larger before."
        ),
        Verdict::MoreThanLost => format!(
            "At the sizes measured, the leaks {found} would have let out {bounds}, more than the {lost} lost: they did not leak so much all the time."
        ),
        Verdict::Open => format!("The leaks {found} explain {bounds} of the {lost} lost."),
    }
}

/// What cannot be said where a leak was not measured.
pub fn not_sized(scene: &Scene<'_>) -> Option<String> {
    let any = scene
        .figures
        .circuits
        .iter()
        .any(|circuit| circuit.explained == Some(Explained::NotSized));
    any.then(|| {
        "Not every leak found was measured: how much of the loss they explain is not known."
            .to_owned()
    })
}
