//! A detector search where hardly any pressure drove gas out.

use crate::caution::detector_use::{DetectorUse, sole};
use crate::caution::example::CHECK_READINGS;
use crate::caution::{Caution, Edit, Scene};
use crate::quantity::{GaugePressure, Measured, Pressure};
use crate::text::{Diagnostic, Message, Noted};

/// Below this gauge pressure a detector search clears little (judgement).
const LITTLE: GaugePressure = GaugePressure::new(0.5e5);

pub(super) static CAUTION: Caution = Caution {
    name: "low-pressure-search",
    summary: "places were cleared by a detector while the pressure inside was low",
    finds: "A search by gas detector at less than 0.5 bar above the air pressure of the day, as noted in the search, over places that no other direct method and no search at a higher pressure went over.",
    matters: "A leak lets out less the lower the pressure; at or below the pressure of the air nothing comes out at all.",
    put_right: "Search these places again with the plant standing until the pressures are even, or under nitrogen with a tracer.",
    source: "common practice; the limit of 0.5 bar is a judgement",
    example: &[Edit {
        file: CHECK_READINGS,
        from: "pressure = \"2.6 bar g\"",
        to: "pressure = \"0.2 bar g\"",
    }],
    near_miss: &[Edit {
        file: CHECK_READINGS,
        from: "pressure = \"2.6 bar g\"",
        to: "pressure = \"0.6 bar g\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for one in sole(scene, |one| low(scene, one).is_some(), |_, _| false) {
        let Some(pressure) = low(scene, &one) else {
            continue;
        };
        found.push(
            CAUTION.says(
                pressure.span,
                Message::of("caution-low-pressure-search")
                    .figure("pressure", scene.print(&pressure.value)),
            )
            .here("the lowest pressure at the places searched")
            .cure("search these places again at a higher pressure, plant standing or under nitrogen with a tracer"),
        );
    }
}

fn low(scene: &Scene<'_>, one: &DetectorUse<'_>) -> Option<Noted<Measured<Pressure>>> {
    let pressure = one.search?.note.pressure?;
    let gauge = pressure
        .value
        .value
        .gauge(scene.visit.atmosphere.pressure());
    (gauge < LITTLE).then_some(pressure)
}
