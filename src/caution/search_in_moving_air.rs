//! A detector search in wind or in the draught of fans.

use crate::caution::detector_use::{DetectorUse, sole_of};
use crate::caution::example::CHECK_READINGS;
use crate::caution::words::named;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::method_word::MethodWord;

/// Words that tell of moving air.
const WORDS: &[&str] = &[
    "wind",
    "windy",
    "breeze",
    "breezy",
    "draught",
    "draughty",
    "draft",
    "drafty",
    "fan running",
    "fans running",
    "fan on",
    "fans on",
];

/// Words that say that it did not matter.
const UNLESS: &[&str] = &[
    "no",
    "little",
    "light",
    "slight",
    "out of the wind",
    "sheltered",
    "shielded",
    "screened",
    "off",
    "stopped",
    "still",
    "dropped",
];

pub(super) static CAUTION: Caution = Caution {
    name: "search-in-moving-air",
    summary: "a gas detector was relied on in wind or with fans running",
    finds: "A gas detector that alone stands for a search, for the evidence of a leak or for the proof of a repair, where the background or the line itself tells of wind, a draught or running fans and does not say that it was light or that the place was sheltered.",
    matters: "Moving air carries leaking gas away before it reaches the sensor: silence then shows little.",
    put_right: "Stop the fans or screen the place and search again, or use bubble solution.",
    source: "common practice",
    example: &[Edit {
        file: CHECK_READINGS,
        from: "background = \"clean\"",
        to: "background = \"windy\"",
    }],
    near_miss: &[Edit {
        file: CHECK_READINGS,
        from: "background = \"clean\"",
        to: "background = \"clean, out of the wind\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let methods = |method| matches!(method, MethodWord::Electronic | MethodWord::Tracer);
    let weak = |one: &DetectorUse<'_>| disturbed(one).is_some();
    for one in sole_of(scene, methods, weak, |_, _| false) {
        let Some(word) = disturbed(&one) else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    one.words_span(),
                    Message::of("caution-search-in-moving-air").with("word", word),
                )
                .here("moving air")
                .cure("stop the fans or screen the place and search again, or use bubble solution")
                .cure("if the place was sheltered, say so: `windy, sheltered`"),
        );
    }
}

/// The word that says so.
fn disturbed(one: &DetectorUse<'_>) -> Option<&'static str> {
    named(&one.words(), WORDS, UNLESS)
}
