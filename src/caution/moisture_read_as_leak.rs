//! A rise that levels off, taken for a leak.

use crate::caution::example::{EMPTIED, VISIT, findings, readings};
use crate::caution::scene::on_circuit;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::method_word::MethodWord;
use crate::working::vacuum_test::{Acceptance, rise};
use crate::working::vacuum_verdict::Shown;

const LOG: &str = "larchwick/cheese-store/2026-11-03/rise.csv";

const TEST: Edit = readings(
    r#"[[vacuum-test]]
id = "v1"
gauge = "micron-1"
accept-below = "500 micron"
isolated = 2026-11-04T09:30
warmest-pipe = "10 °C"
log = { file = "rise.csv", time = "t_min", pressure = "p_micron" }
"#,
);

const FINDING: Edit = findings(
    r"## Somewhere in the low side

- kind: leak
- evidence:
  - day 2 10:00 vacuum test micron-1, does not hold
- state: open
",
);

pub(super) static CAUTION: Caution = Caution {
    name: "moisture-read-as-leak",
    summary: "a vacuum that levels off was taken for a leak",
    finds: "A finding of kind `leak` whose only evidence is a vacuum test, where every vacuum test of the visit that did not keep its limit has a log that levels off.",
    matters: "A leak goes on rising to the pressure of the air. A rise that levels off is moisture, or gas out of the oil: the search for a leak that is not there costs a day, and the water stays in.",
    put_right: "Break the vacuum with dry nitrogen, change the drier, pump again and repeat the rise; look for the leak under pressure. If it was shown by another method too, note that.",
    source: "curve of a rise: straight for a leak, levelling for evaporation; Zapfe, Leak detection, CERN Accelerator School 2006",
    example: &[
        VISIT,
        EMPTIED,
        TEST,
        Edit {
            file: LOG,
            from: "",
            to: "t_min,p_micron\n0,240\n1,341\n2,423\n3,491\n4,547\n5,592\n6,629\n7,660\n8,685\n9,706\n10,723\n11,737\n12,748\n13,757\n14,765\n15,771\n16,776\n17,780\n18,784\n19,787\n20,789\n21,791\n22,793\n23,794\n24,795\n25,796\n26,797\n27,797\n28,798\n29,798\n30,799\n",
        },
        FINDING,
    ],
    near_miss: &[
        VISIT,
        EMPTIED,
        TEST,
        Edit {
            file: LOG,
            from: "",
            to: "t_min,p_micron\n0,240\n1,259\n2,277\n3,296\n4,315\n5,333\n6,352\n7,371\n8,389\n9,408\n10,427\n11,445\n12,464\n13,483\n14,501\n15,520\n16,539\n17,557\n18,576\n19,595\n20,613\n21,632\n22,651\n23,669\n24,688\n25,707\n26,725\n27,744\n28,763\n29,781\n30,800\n",
        },
        FINDING,
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let note = &finding.note;
        let leak = note
            .kind
            .is_some_and(|kind| kind.value == FindingKind::Leak)
            && note
                .state
                .is_none_or(|state| state.value != FindingState::SuspectCleared);
        let mut evidence = note.evidence.iter().filter(|look| look.positive());
        let only_rise = evidence.clone().count() > 0
            && evidence
                .clone()
                .all(|look| look.method.value == MethodWord::VacuumTest);
        let Some(look) = evidence.next().filter(|_| leak && only_rise) else {
            continue;
        };
        let not_kept: Vec<_> = scene
            .visit
            .vacuum_tests
            .iter()
            .filter(|test| on_circuit(finding, test.circuit))
            .map(|test| (test, rise(test, scene.system, scene.visit)))
            .filter(|(_, rise)| rise.acceptance != Acceptance::Met)
            .collect();
        let levels = |shown| matches!(shown, Shown::Moisture | Shown::LevelsAboveWater);
        let Some((test, _)) = not_kept
            .first()
            .filter(|_| not_kept.iter().all(|(_, rise)| levels(rise.shown)))
        else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    look.span,
                    Message::of("caution-moisture-read-as-leak")
                        .with("finding", note.title.as_str()),
                )
                .here("the only evidence of a leak")
                .also(test.note.whole.span, "its log levels off")
                .cure("dry the system, repeat the rise, and look for the leak under pressure")
                .cure("if another method showed the leak as well, note it as evidence"),
        );
    }
}
