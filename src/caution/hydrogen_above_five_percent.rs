//! A tracer mixture with more hydrogen than five parts in a hundred.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::readings_file::TestGas;

const READINGS: &str = "larchwick/cheese-store/2026-03-04/readings.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "hydrogen-above-five-percent",
    summary: "a tracer mixture held more than 5 % hydrogen",
    finds: "A pressure test with a mixture of nitrogen and more than 5 % hydrogen.",
    matters: "Above about 5.5 % hydrogen in nitrogen the mixture can burn in air.",
    put_right: "Let it out to the open air away from flames, sweep with nitrogen, and use the ready-made mixture of 5 % hydrogen; never mix it on site.",
    source: "ISO 10156:2010, limit 5.5 % as quoted by a gas-safety specialist; ready-made 5 % mixture: common practice",
    example: &[Edit {
        file: READINGS,
        from: "gas = \"nitrogen\"",
        to: "gas = \"hydrogen in nitrogen over 5 %\"",
    }],
    near_miss: &[Edit {
        file: READINGS,
        from: "gas = \"nitrogen\"",
        to: "gas = \"5 % hydrogen in nitrogen\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let gas = test.note.gas;
        if let Some(gas) = gas.filter(|gas| gas.value == TestGas::HydrogenRich) {
            found.push(
                CAUTION.says(
                    gas.span,
                    Message::of("caution-hydrogen-above-five-percent")
                        .with("test", test.id.0.as_str()),
                )
                .here("can burn in air")
                .cure("let it out to the open air away from flames and use the ready-made 5 % mixture"),
            );
        }
    }
}
