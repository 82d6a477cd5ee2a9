//! What the leaks found explain of the loss, in words for the customer.

use crate::report::compose::scene::Scene;
use crate::report::visit_figures::CircuitFigures;
use crate::text::Message;
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
    let lost = circuit.missing.as_ref().map_or(0.0, |missing| missing.kg);
    let message = Message::of(match share.verdict {
        Verdict::OthersRemain => "leaks-explain-others-remain",
        Verdict::MoreThanLost => "leaks-explain-more-than-lost",
        Verdict::Open if most >= lost => "leaks-explain-all",
        Verdict::Open => "leaks-explain",
    });
    let least = if least > 0.0 {
        scene.about(least)
    } else {
        "none".to_owned()
    };
    scene.say(
        &message
            .with("circuit", scene.system.circuit_choice(circuit.circuit))
            .with("least", least)
            .with("most", scene.about(most))
            .with("lost", scene.mass(lost, None)),
    )
}

/// What cannot be said where a leak was not measured.
pub fn not_sized(scene: &Scene<'_>) -> Option<String> {
    let circuits = scene.figures.circuits.iter();
    let leaks: usize = circuits
        .filter_map(|circuit| match circuit.explained {
            Some(Explained::NotSized { leaks }) => Some(leaks),
            _ => None,
        })
        .sum();
    (leaks > 0).then(|| scene.say(&Message::of("leaks-not-sized").with("leaks", leaks)))
}
