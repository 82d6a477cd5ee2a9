//! A pressure test with oxygen, or with air in a refrigerant that forbids it.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::readings_file::TestGas;

const READINGS: &str = "larchwick/cheese-store/2026-03-04/readings.toml";

/// Refrigerants whose systems may be tested with air: ASHRAE 15, section 10.1.2, as quoted in field texts.
const AIR_ALLOWED: &[&str] = &["R-717", "R-718", "R-744"];

pub(super) static CAUTION: Caution = Caution {
    name: "oxygen-or-air-used",
    summary: "a circuit was put under pressure with oxygen or air",
    finds: "A pressure test with oxygen; or with air, unless the refrigerant is R-717, R-718 or R-744.",
    matters: "Oxygen or compressed air and oil can explode; air also leaves moisture behind.",
    put_right: "Let it out, sweep with dry nitrogen, evacuate deeply, and test with dry oxygen-free nitrogen. Leave the note as it was.",
    source: "ASHRAE 15 (dry nitrogen or another inert gas; air only for R-717, R-718 and R-744); Regulation (EC) 1516/2007 Article 8 (oxygen-free nitrogen or other suitable gas)",
    example: &[Edit {
        file: READINGS,
        from: "gas = \"nitrogen\"",
        to: "gas = \"air\"",
    }],
    near_miss: &[Edit {
        file: READINGS,
        from: "gas = \"nitrogen\"",
        to: "gas = \"helium\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let Some(gas) = test.note.gas else { continue };
        let refrigerant = scene.refrigerant(test.circuit, test.start.at.value.date());
        let word = match gas.value {
            TestGas::Oxygen => "oxygen",
            TestGas::Air => {
                let Some(refrigerant) = refrigerant else {
                    continue;
                };
                if AIR_ALLOWED.contains(&refrigerant.designation) {
                    continue;
                }
                "air"
            }
            _ => continue,
        };
        found.push(
            CAUTION
                .says(
                    gas.span,
                    Message::of("caution-oxygen-or-air-used")
                        .with("test", test.id.0.as_str())
                        .with("gas", word),
                )
                .here("put into a circuit with oil in it")
                .cure("let it out, sweep with dry nitrogen, evacuate, and test with dry nitrogen"),
        );
    }
}
