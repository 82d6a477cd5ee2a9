//! Suction vapour noted colder than its dew point.

use crate::caution::example::{VISIT, readings};
use crate::caution::{Caution, Scene};
use crate::text::Diagnostic;
use crate::working::vapour_state::superheat_k;

pub(super) static CAUTION: Caution = Caution {
    name: "suction-below-dew-point",
    summary: "the suction vapour is noted colder than vapour can be",
    finds: "A reading of the running plant whose suction temperature lies more than 1 K below the dew point of its suction pressure.",
    matters: "Vapour cannot be colder than its dew point: one of the two readings, or the refrigerant in the register, is not what it says, and a superheat worked out from it would mislead.",
    put_right: "Check that the pressure is gauge as written and not absolute, that the sensor lies on the pipe and under its insulation, that both were read at the same place, and that the refrigerant is the right one. If frost or liquid comes back, say so.",
    source: "common practice",
    example: &[
        VISIT,
        readings(
            r#"[[operating]]
at = 2026-11-03T16:00
suction-pressure = "2.5 bar g"
suction-temperature = "-14.0 °C"
"#,
        ),
    ],
    near_miss: &[
        VISIT,
        readings(
            r#"[[operating]]
at = 2026-11-03T16:00
suction-pressure = "2.5 bar g"
suction-temperature = "1.0 °C"
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
        let Some(superheat) = superheat_k(scene.system, scene.visit, reading)
            .filter(|superheat| *superheat < -BEYOND_K)
        else {
            continue;
        };
        let (Some(temperature), Some(pressure)) = (
            reading.note.suction_temperature,
            reading.note.suction_pressure,
        ) else {
            continue;
        };
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                temperature.span,
                format!(
                    "this suction vapour would be {} K below its dew point",
                    crate::working::rounded(-superheat, 1)
                ),
            )
            .here("colder than vapour can be")
            .also(pressure.span, "at this pressure")
            .why(CAUTION.matters)
            .cure("most likely the pressure is absolute and written as gauge, the sensor is not on the pipe, or another refrigerant is inside"),
        );
    }
}
