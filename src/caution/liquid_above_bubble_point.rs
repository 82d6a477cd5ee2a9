//! Liquid noted warmer than its bubble point.

use crate::caution::example::{VISIT, readings};
use crate::caution::{Caution, Scene};
use crate::text::Diagnostic;
use crate::working::vapour_state::subcooling_k;

pub(super) static CAUTION: Caution = Caution {
    name: "liquid-above-bubble-point",
    summary: "the liquid is noted warmer than liquid can be",
    finds: "A reading of the running plant whose liquid temperature lies more than 1 K above the bubble point of its liquid pressure, below the critical point.",
    matters: "Above its bubble point it is no longer liquid: a subcooling worked out from it would mislead, and flash gas before the expansion valve looks like a lack of refrigerant.",
    put_right: "Check that both readings were taken at the same place of the liquid line, that the pressure is gauge as written, and that the bubble point of a blend was used and not its dew point. If there is flash gas, say so.",
    source: "common practice",
    example: &[
        VISIT,
        readings(
            r#"[[operating]]
at = 2026-11-03T16:00
liquid-pressure = "14.1 bar g"
liquid-temperature = "48.0 °C"
"#,
        ),
    ],
    near_miss: &[
        VISIT,
        readings(
            r#"[[operating]]
at = 2026-11-03T16:00
liquid-pressure = "14.1 bar g"
liquid-temperature = "31.0 °C"
"#,
        ),
    ],
    check,
    limits_claim: false,
    rests_on_absence: false,
};

/// Readings this far apart are no matter of accuracy, K (judgement).
const BEYOND_K: f64 = 1.0;

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for reading in &scene.visit.operating {
        let Some(subcooling) = subcooling_k(scene.system, scene.visit, reading)
            .filter(|subcooling| *subcooling < -BEYOND_K)
        else {
            continue;
        };
        let (Some(temperature), Some(pressure)) = (
            reading.note.liquid_temperature,
            reading.note.liquid_pressure,
        ) else {
            continue;
        };
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                temperature.span,
                format!(
                    "this liquid would be {} K above its bubble point",
                    crate::working::rounded(-subcooling, 1)
                ),
            )
            .here("warmer than liquid can be")
            .also(pressure.span, "at this pressure")
            .why(CAUTION.matters)
            .cure("most likely the readings are of two places, or there is flash gas: a sign of little refrigerant or of a restriction, not a proof of a leak"),
        );
    }
}
