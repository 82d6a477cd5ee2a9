//! A detector search in air that already held refrigerant.

use crate::caution::detector_use::{DetectorUse, sole};
use crate::caution::example::CHECK_READINGS;
use crate::caution::words::named;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};

/// A background above this may hide a small leak, ppm (judgement).
const MUCH_PPM: f64 = 10.0;

/// The same for carbon dioxide, of which fresh air holds some 400 ppm, ppm (judgement).
const MUCH_CARBON_DIOXIDE_PPM: f64 = 1000.0;

/// Words that tell of refrigerant in the air.
const WORDS: &[&str] = &["contaminated", "gas in the air", "refrigerant in the air"];

/// Words that say that it was gone.
const UNLESS: &[&str] = &["no", "not", "aired", "ventilated", "cleared"];

pub(super) static CAUTION: Caution = Caution {
    name: "background-hides-leak",
    summary: "a gas detector was relied on in air that already held refrigerant",
    finds: "A gas detector that alone stands for a search, where the background is noted as contaminated or above 10 ppm (carbon dioxide: above 1000 ppm, since fresh air holds some 400) and nothing says that the place was aired first.",
    matters: "The detector takes the gas in the air for its zero, or alarms everywhere: a small leak does not stand out.",
    put_right: "Air the place, wait until the reading falls, and search again; or use bubble solution.",
    source: "common practice; the limits are a judgement",
    example: &[Edit {
        file: CHECK_READINGS,
        from: "background = \"clean\"",
        to: "background = \"60 ppm\"",
    }],
    near_miss: &[Edit {
        file: CHECK_READINGS,
        from: "background = \"clean\"",
        to: "background = \"2 ppm, steady\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for one in sole(scene, |one| contaminated(scene, one), |_, _| false) {
        found.push(
            CAUTION
                .says(
                    one.words_span(),
                    Message::of("caution-background-hides-leak"),
                )
                .here("the air around")
                .cure("air the place and search again, or use bubble solution")
                .cure("if it was aired first, say so: `60 ppm, aired`"),
        );
    }
}

fn contaminated(scene: &Scene<'_>, one: &DetectorUse<'_>) -> bool {
    if one.search.is_none() {
        return false;
    }
    let words = one.words();
    let carbon_dioxide = one
        .circuit
        .and_then(|circuit| scene.refrigerant(circuit, one.day))
        .is_none_or(|refrigerant| refrigerant.designation == "R-744");
    let much = if carbon_dioxide {
        MUCH_CARBON_DIOXIDE_PPM
    } else {
        MUCH_PPM
    };
    let high = parts_per_million(&words).is_some_and(|ppm| ppm > much);
    let aired = named(&words, UNLESS, &[]).is_some();
    !aired && (high || named(&words, WORDS, &[]).is_some())
}

/// The number before `ppm`.
fn parts_per_million(words: &str) -> Option<f64> {
    let (before, _) = words.split_once("ppm")?;
    before.split_whitespace().next_back()?.parse().ok()
}
