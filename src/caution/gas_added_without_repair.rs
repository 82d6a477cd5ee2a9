//! Refrigerant added to a circuit with a known leak that was not repaired.

use crate::caution::example::{REPAIRED_LEAK, TOP_UP, VISIT, findings};
use crate::caution::gas_added::open_leak;
use crate::caution::{Caution, Scene};
use crate::text::{Diagnostic, Message};

pub(super) static CAUTION: Caution = Caution {
    name: "gas-added-without-repair",
    summary: "refrigerant was added and a known leak was left open",
    finds: "Refrigerant that made up for a loss, in a circuit where a leak found in this visit or an earlier one stands open at the end of the visit. A leak that was shut off or repaired for the time being is not open.",
    matters: "What was added leaks out again. Whether a rule sets a time for the repair stands in the legal part of the report.",
    put_right: "Agree on the day of the repair now and write the customer's decision as advice; work out the loss rate from this addition.",
    source: "Regulation (EU) 2024/573 Article 4(5) (repair without undue delay); 40 CFR 82.157(b) and (d); 40 CFR 84.106(b) and (d)",
    example: &[
        VISIT,
        TOP_UP,
        findings(
            r"## Stem of the receiver outlet valve {#unit/receiver-outlet-valve}

- kind: leak
- evidence:
  - 09:10 oil under the cap, wiped; back after an hour
  - 10:20 bubbles, foam after 3 min
- state: open
",
        ),
    ],
    near_miss: &[
        VISIT,
        TOP_UP,
        REPAIRED_LEAK,
        findings("- proof: 12:10 bubbles, none in 25 min\n- state: repaired, proved\n"),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for circuit in 0..scene.system.circuits.len() {
        let Some((_, movement)) = scene.made_up_loss(circuit) else {
            continue;
        };
        let Some((title, span)) = open_leak(scene, circuit) else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    movement.amount.span(),
                    Message::of("caution-gas-added-without-repair")
                        .with("circuit", scene.system.circuit_choice(circuit)),
                )
                .here("added here")
                .also(span, format!("`{title}` is open"))
                .cure("agree on the day of the repair and write the decision as [[advice]]"),
        );
    }
}
