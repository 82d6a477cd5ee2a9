//! An ultrasonic search in noise.

use crate::caution::detector_use::{DetectorUse, sole_of};
use crate::caution::example::{CHECK_READINGS, check_by};
use crate::caution::words::named;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::method_word::MethodWord;

/// The search of the periodic check made with ultrasound.
const ULTRASONIC: Edit = check_by("method = \"ultrasonic\"");

/// Words that tell of noise.
const WORDS: &[&str] = &["noise", "noisy", "loud"];

/// Words that say that it did not matter.
const UNLESS: &[&str] = &[
    "no", "little", "low", "quiet", "band", "filtered", "screened", "stopped", "off", "silenced",
];

pub(super) static CAUTION: Caution = Caution {
    name: "ultrasonic-in-noise",
    summary: "an ultrasonic detector was relied on where there was noise",
    finds: "An ultrasonic detector that alone stands for a search, for the evidence of a leak or for the proof of a repair, where the background or the line itself names noise and does not say that it was filtered, screened or stopped.",
    matters: "Compressors, fans and escaping steam or air make the same sound as a leak: they hide one, or pass for one.",
    put_right: "Search again with the noise stopped or the detector set to a band that leaves it out, or by another direct method.",
    source: "common practice",
    example: &[
        ULTRASONIC,
        Edit {
            file: CHECK_READINGS,
            from: "background = \"clean\"",
            to: "background = \"compressor noise\"",
        },
    ],
    near_miss: &[
        ULTRASONIC,
        Edit {
            file: CHECK_READINGS,
            from: "background = \"clean\"",
            to: "background = \"compressor noise, band-passed\"",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let methods = |method| method == MethodWord::Ultrasonic;
    let weak = |one: &DetectorUse<'_>| disturbed(one).is_some();
    for one in sole_of(scene, methods, weak, |_, _| false) {
        let Some(word) = disturbed(&one) else {
            continue;
        };
        found.push(
            CAUTION.says(
                one.words_span(),
                Message::of("caution-ultrasonic-in-noise")
                    .with("word", word),
            )
            .here("noise around it")
            .cure("search again with the noise stopped, or by another direct method")
            .cure("if the noise was filtered out or stopped, say so: `compressor noise, filtered`"),
        );
    }
}

/// The word that says so.
fn disturbed(one: &DetectorUse<'_>) -> Option<&'static str> {
    named(&one.words(), WORDS, UNLESS)
}
