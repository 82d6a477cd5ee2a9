//! A pressure hold too short, or a gauge too coarse, to have shown the leak that it is to prove gone.

use crate::caution::example::{EMPTIED, REPAIRED_LEAK, VISIT, findings, readings};
use crate::caution::{Caution, Edit, Scene};
use crate::job::{Finding, PressureTest};
use crate::quantity::{Flavour, LeakRate};
use crate::text::{Diagnostic, Message, Span};
use crate::working::leak_size::throughput;
use crate::working::repair_proof::{Ground, only_weak};

/// Held at 19.5 bar g over a night.
const HELD: Edit = readings(
    r#"[[pressure-test]]
id = "p1"
purpose = "tightness"
gas = "nitrogen"
gauge = "gauge-1"
start = { at = 2026-11-03T15:00, pressure = "19.50 bar g", temperature = "11.0 °C" }
end = { at = 2026-11-04T08:30, pressure = "19.36 bar g", temperature = "9.1 °C" }
"#,
);

pub(super) static CAUTION: Caution = Caution {
    name: "hold-too-coarse-for-leak",
    summary: "the pressure hold could not have shown the leak that it is to prove gone",
    finds: "A leak with a size and the pressure it was sized at, called repaired and proved, that nothing cleared but pressure tests over which that leak would have lowered the pressure by less than one step of the gauge. The leak is taken to grow with the square of the absolute pressure, which is the most it can. Silent where volume, gauge or its resolution are not noted.",
    matters: "The gauge would have stood still with the leak as it was before the repair: the hold proves nothing about it.",
    put_right: "Hold longer, shut off a smaller section, or read a finer gauge; or prove the joint by a detector or bubble solution.",
    source: "derived: pressure drop of an ideal gas out of a fixed volume; viscous flow, square of the absolute pressures",
    example: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        HELD,
        findings(
            "- size: 20 g/yr, measured by electronic sniffer-1 at 7.1 bar g\n- proof: p1\n- state: repaired, proved\n",
        ),
    ],
    near_miss: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        HELD,
        findings(
            "- size: 600 g/yr, measured by electronic sniffer-1 at 7.1 bar g\n- proof: p1\n- state: repaired, proved\n",
        ),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let coarse = |ground: Ground<'_>| match ground {
            Ground::Pressure(test) => unseen(scene, finding, test).is_some(),
            _ => false,
        };
        let Some(clearance) = only_weak(scene.system, scene.visit, finding, coarse) else {
            continue;
        };
        let Ground::Pressure(test) = clearance.ground else {
            continue;
        };
        let Some((step, size)) = unseen(scene, finding, test).zip(finding.note.size.as_ref())
        else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    clearance.span,
                    Message::of("caution-hold-too-coarse-for-leak")
                        .with("test", test.id.0.as_str())
                        .with("finding", finding.note.title.as_str()),
                )
                .here("the only proof")
                .also(size.rate.span, "the size of the leak")
                .also(step, "the smallest step of the gauge")
                .cure("hold longer, shut off a smaller section or read a finer gauge")
                .cure("or prove the joint by a detector or bubble solution"),
        );
    }
}

/// Where the gauge's smallest step stands, if the leak would have moved it by less.
fn unseen(scene: &Scene<'_>, finding: &Finding, test: &PressureTest) -> Option<Span> {
    let gauge = &test.note.gauge.as_ref()?.value;
    let step = scene.book.instruments.get(gauge)?.resolution?;
    let size = finding.note.size.as_ref()?;
    let atmosphere = scene.visit.atmosphere.pressure();
    let excess = |pressure: crate::quantity::Pressure| {
        pressure.absolute(atmosphere).si().powi(2) - atmosphere.si().powi(2)
    };
    let growth = excess(test.start.pressure.value.value) / excess(size.pressure?.value.value);
    let drop = flow(scene, finding, test)? * growth * test.seconds() / volume(scene, test)?;
    let coarse = step.value.flavour == Flavour::PressureDifference && drop < step.value.si;
    (coarse && growth > 0.0).then_some(step.span)
}

/// The leak as noted, Pa m³/s at the temperature of the test, as an ideal gas.
fn flow(scene: &Scene<'_>, finding: &Finding, test: &PressureTest) -> Option<f64> {
    match finding.note.size.as_ref()?.rate.value.value {
        LeakRate::Throughput(flow) => Some(flow),
        LeakRate::Mass(kg_per_s) => {
            let day = test.start.at.value.date();
            let refrigerant = scene.refrigerant(test.circuit, day)?;
            let kelvin = test.start.temperature?.value.value.si();
            Some(throughput(
                kg_per_s,
                refrigerant.molar_mass_kg_per_kmol(),
                kelvin,
            ))
        }
    }
}

/// The volume under test, m³.
fn volume(scene: &Scene<'_>, test: &PressureTest) -> Option<f64> {
    if let Some(volume) = test.note.volume {
        return Some(volume.value.value.si());
    }
    let circuit = scene.system.circuits.get(test.circuit)?;
    let volumes = circuit.volumes(test.section())?;
    Some(volumes.iter().map(|volume| volume.value.value.si()).sum())
}
