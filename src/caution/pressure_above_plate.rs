//! A pressure test above the highest pressure that the plate allows.

use crate::caution::{Caution, Edit, Scene};
use crate::job::{Circuit, PressureTest};
use crate::quantity::{Flavour, Measured, Pressure, print_si};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::readings_file::PressureTestPurpose;

const READINGS: &str = "larchwick/cheese-store/2026-03-04/readings.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "pressure-above-plate",
    summary: "a tightness test or leak search above the plate's highest pressure",
    finds: "A pressure test for tightness or leak search whose first, last or highest logged reading, as gauge pressure under the air pressure of the day, is above the lowest `most` of the parts under test. A strength test is made above it on purpose and is passed over.",
    matters: "A part held above the pressure it was made for can burst, at once or later.",
    put_right: "Let the pressure down to the plate. Have whoever is competent for the pressure equipment look at the parts that were held above it. Leave the reading as it was.",
    source: "Highest allowable pressure on the plate: common practice; that tightness is tested at no more than it: EN 378-2, from memory",
    example: &[
        Edit {
            file: READINGS,
            from: "pressure = \"19.50 bar g\", temperature",
            to: "pressure = \"21.50 bar g\", temperature",
        },
        Edit {
            file: READINGS,
            from: "pressure = \"19.42 bar g\", temperature",
            to: "pressure = \"21.41 bar g\", temperature",
        },
    ],
    near_miss: &[
        Edit {
            file: READINGS,
            from: "pressure = \"19.50 bar g\", temperature",
            to: "pressure = \"20.00 bar g\", temperature",
        },
        Edit {
            file: READINGS,
            from: "pressure = \"19.42 bar g\", temperature",
            to: "pressure = \"19.92 bar g\", temperature",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let strength = test
            .note
            .purpose
            .is_none_or(|purpose| purpose.value == PressureTestPurpose::Strength);
        let circuit = scene.system.circuits.get(test.circuit);
        if let Some(plate) = circuit
            .filter(|_| !strength)
            .and_then(|circuit: &Circuit| circuit.most(test.section()))
        {
            found.extend(above(scene, test, plate));
        }
    }
}

fn above(
    scene: &Scene<'_>,
    test: &PressureTest,
    plate: &Noted<Measured<Pressure>>,
) -> Option<Diagnostic> {
    let atmosphere = scene.visit.atmosphere.pressure();
    let gauge = |pressure: &Noted<Measured<Pressure>>| pressure.value.value.gauge(atmosphere).si();
    let (start, end) = (&test.start.pressure, &test.end.pressure);
    let higher = if gauge(end) > gauge(start) {
        end
    } else {
        start
    };
    let offset = test
        .log
        .as_ref()
        .filter(|log| !log.gauge)
        .map_or(0.0, |_| atmosphere.si());
    let highest = test
        .log
        .iter()
        .flat_map(|log| &log.pressure_pa)
        .map(|pressure| pressure - offset)
        .fold(gauge(higher), f64::max);
    let most = gauge(plate);
    // The share of a millionth is for the rounding of arithmetic, not for the gauge.
    if highest <= most * (1.0 + 1e-6) {
        return None;
    }
    let printed = print_si(Flavour::GaugePressure, highest, None, scene.site.units);
    Some(
        CAUTION
            .says(
                higher.span,
                Message::of("caution-pressure-above-plate")
                    .with("test", test.id.0.as_str())
                    .figure("pressure", printed)
                    .figure("plate", scene.print(&plate.value)),
            )
            .here("held at this pressure")
            .also(plate.span, "the most the plate allows here")
            .cure(
                "test at no more than the plate; have the parts looked at that were held above it",
            ),
    )
}
