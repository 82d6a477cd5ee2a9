//! The warm side of a running plant noted at a lower pressure than its suction.

use crate::caution::example::{VISIT, readings};
use crate::caution::{Caution, Scene};
use crate::text::Diagnostic;
use crate::working::vapour_state::absolute_pa;

pub(super) static CAUTION: Caution = Caution {
    name: "warm-side-below-suction",
    summary: "the liquid or discharge pressure is noted below the suction pressure",
    finds: "A reading of the running plant whose liquid or discharge pressure is below its suction pressure.",
    matters: "A running compressor presses from the suction to the warm side: the other way round the gauges were swapped, and every figure worked out from them is of the wrong side.",
    put_right: "Check which hose was on which valve, and write the two the right way round. If the compressor stood, this is no reading of the running plant.",
    source: "common practice",
    example: &[
        VISIT,
        readings(
            r#"[[operating]]
at = 2026-11-03T16:00
suction-pressure = "14.1 bar g"
liquid-pressure = "2.5 bar g"
"#,
        ),
    ],
    near_miss: &[
        VISIT,
        readings(
            r#"[[operating]]
at = 2026-11-03T16:00
suction-pressure = "2.5 bar g"
liquid-pressure = "2.6 bar g"
"#,
        ),
    ],
    check,
    limits_claim: false,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for reading in &scene.visit.operating {
        let Some(suction) = reading.note.suction_pressure else {
            continue;
        };
        let warm = [
            reading.note.liquid_pressure,
            reading.note.discharge_pressure,
        ];
        for pressure in warm.into_iter().flatten() {
            if absolute_pa(&pressure, scene.visit) >= absolute_pa(&suction, scene.visit) {
                continue;
            }
            found.push(
                Diagnostic::caution(
                    CAUTION.name,
                    pressure.span,
                    "the warm side is noted below the suction pressure",
                )
                .here("lower")
                .also(suction.span, "than this")
                .why(CAUTION.matters)
                .cure("most likely the gauges were swapped: write the two the other way round"),
            );
        }
    }
}
