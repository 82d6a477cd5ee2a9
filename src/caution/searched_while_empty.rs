//! A search of a plant that had nothing in it.

use crate::caution::detector_use::{DetectorUse, sole_of};
use crate::caution::example::CHECK_READINGS;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::method_word::MethodWord;
use crate::vocabulary::readings_file::Plant;

const RUNNING: &str = "plant = \"running\"\npressure = \"2.6 bar g\"";

pub(super) static CAUTION: Caution = Caution {
    name: "searched-while-empty",
    summary: "a circuit was searched with nothing inside to come out",
    finds: "A search with the plant emptied and no pressure noted, by a method that needs gas to come out (detector, tracer, bubble solution, ultrasound, litmus, torch or ear), of places that no other search went over.",
    matters: "Without pressure inside nothing comes out of a leak, and silence shows nothing.",
    put_right: "Search again with the plant charged, or under nitrogen by bubble solution, ultrasound or a tracer. If there was gas inside, write how the plant stood and the pressure.",
    source: "common practice",
    example: &[Edit {
        file: CHECK_READINGS,
        from: RUNNING,
        to: "plant = \"emptied\"",
    }],
    near_miss: &[Edit {
        file: CHECK_READINGS,
        from: RUNNING,
        to: "plant = \"standing\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for one in sole_of(scene, needs_gas, |one| emptied(one).is_some(), |_, _| false) {
        let Some(plant) = emptied(&one) else { continue };
        found.push(
            CAUTION
                .says(plant.span, Message::of("caution-searched-while-empty"))
                .here("nothing inside to come out")
                .cure("search again with the plant charged or under nitrogen")
                .cure("if there was gas inside, write how the plant stood and `pressure`"),
        );
    }
}

/// Whether a method shows nothing unless gas comes out.
fn needs_gas(method: MethodWord) -> bool {
    matches!(
        method,
        MethodWord::Sound
            | MethodWord::Electronic
            | MethodWord::Bubbles
            | MethodWord::Tracer
            | MethodWord::Ultrasonic
            | MethodWord::Litmus
            | MethodWord::Halide
    )
}

fn emptied(one: &DetectorUse<'_>) -> Option<Noted<Plant>> {
    let note = &one.search?.note;
    let plant = note.plant.filter(|plant| plant.value == Plant::Emptied)?;
    note.pressure.is_none().then_some(plant)
}
