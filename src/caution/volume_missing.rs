//! A test against a leak limit without the volume under test.

use crate::caution::{Caution, Edit, Scene};
use crate::quantity::{Measured, Throughput, Volume};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::Identifier;

const SYSTEM: &str = "larchwick/cheese-store/system.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "volume-missing",
    summary: "a test is held against a leak limit without the volume under test",
    finds: "A pressure or vacuum test with `leak-limit` where neither the test nor the register gives the volume of all the parts under test.",
    matters: "A change of pressure becomes a leak rate only with the volume; without it nothing can be said about the limit.",
    put_right: "Write the volume, with its uncertainty, in the register's sections or in the test.",
    source: "leak rate = change of pressure times volume over time (for a vacuum rise 40 CFR 1065.644); common practice",
    example: &[Edit {
        file: SYSTEM,
        from: "volume = \"19 ± 2 L\", ",
        to: "",
    }],
    near_miss: &[
        Edit {
            file: SYSTEM,
            from: "volume = \"19 ± 2 L\", ",
            to: "",
        },
        Edit {
            file: "larchwick/cheese-store/2026-03-04/readings.toml",
            from: "leak-limit = \"3e-2 Pa m3/s\"",
            to: "leak-limit = \"3e-2 Pa m3/s\"\nvolume = \"35 ± 3 L\"",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

/// What the caution reads of a test.
struct Test<'a> {
    id: &'a Identifier,
    circuit: usize,
    section: Option<&'a Identifier>,
    volume: Option<Noted<Measured<Volume>>>,
    limit: Option<Noted<Measured<Throughput>>>,
}

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let pressure = scene.visit.pressure_tests.iter().map(|test| Test {
        id: &test.id,
        circuit: test.circuit,
        section: test.section(),
        volume: test.note.volume,
        limit: test.note.leak_limit,
    });
    let vacuum = scene.visit.vacuum_tests.iter().map(|test| Test {
        id: &test.id,
        circuit: test.circuit,
        section: test.section(),
        volume: test.note.volume,
        limit: test.note.leak_limit,
    });
    for test in pressure.chain(vacuum) {
        let Some(limit) = test.limit.filter(|_| test.volume.is_none()) else {
            continue;
        };
        let Some(circuit) = scene.system.circuits.get(test.circuit) else {
            continue;
        };
        if circuit.volumes(test.section).is_some() {
            continue;
        }
        let section = test
            .section
            .and_then(|section| circuit.sections.span(section));
        found.push(
            CAUTION
                .says(
                    limit.span,
                    Message::of("caution-volume-missing").with("test", test.id.0.as_str()),
                )
                .here("needs the volume under test")
                .also(
                    section.unwrap_or(circuit.span),
                    "the volume is not given for all of this",
                )
                .cure("add `volume = \"4.2 ± 0.4 L\"` to the sections, or to the test"),
        );
    }
}
