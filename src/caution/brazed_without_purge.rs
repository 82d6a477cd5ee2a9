//! Brazing without nitrogen flowing through the pipe.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};

const VISIT: &str = "larchwick/cheese-store/2026-03-04/visit.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "brazed-without-purge",
    summary: "a joint was brazed without nitrogen flowing through the pipe",
    finds: "Work whose words tell of brazing, with `nitrogen-purge = false`. Where the key is not written nothing is said.",
    matters: "Scale forms inside the hot pipe, comes loose and blocks driers, strainers and valves.",
    put_right: "Renew the drier now and look at the strainers at the next visit.",
    source: "common practice",
    example: &[Edit {
        file: VISIT,
        from: "nitrogen-purge = true",
        to: "nitrogen-purge = false",
    }],
    near_miss: &[
        Edit {
            file: VISIT,
            from: "nitrogen-purge = true",
            to: "nitrogen-purge = false",
        },
        Edit {
            file: VISIT,
            from: "new end brazed in",
            to: "flare made on the straight end",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for work in scene.visit.note.iter().flat_map(|note| &note.work) {
        let Some(purge) = work.nitrogen_purge.filter(|purge| !purge.value) else {
            continue;
        };
        let Some(words) = &work.work else { continue };
        if !words.value.to_lowercase().contains("braz") {
            continue;
        }
        found.push(
            CAUTION
                .says(purge.span, Message::of("caution-brazed-without-purge"))
                .here("no nitrogen flowing")
                .also(words.span, "the brazing")
                .cure("renew the drier, and look at the strainers at the next visit"),
        );
    }
}
