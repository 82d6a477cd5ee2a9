//! Refrigerant let out on purpose.

use crate::caution::{Caution, Edit, Scene};
use crate::job::refrigerant_of;
use crate::refrigerant::{EuAnnex, Refrigerant};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::refrigerant_file::MovementKind;

const REFRIGERANT: &str = "larchwick/cheese-store/2026-09-16/refrigerant.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "vented",
    summary: "refrigerant was let out on purpose",
    finds: "A movement of the kind `vented` of a refrigerant that is, or contains, a fluorinated or ozone-depleting gas. Carbon dioxide, ammonia and hydrocarbons are passed over, as are `purged`, `relief lifted` and `lost in service`.",
    matters: "Letting such gas out on purpose is forbidden in most countries and counts as a release.",
    put_right: "Recover instead. If it was lost through a relief valve or in hoses, write that kind of movement. The amount belongs in the account either way.",
    source: "Regulation (EU) 2024/573 Article 4(1) and 40 CFR 82.154(a), both from memory, verify",
    example: &[Edit {
        file: REFRIGERANT,
        from: "",
        to: r#"[[movement]]
kind = "vented"
why = "service"
at = 2026-09-16T10:30
refrigerant = "R-454C"
mass = "0.3 ± 0.1 kg"
how = "estimated"
"#,
    }],
    near_miss: &[Edit {
        file: REFRIGERANT,
        from: "",
        to: r#"[[movement]]
kind = "lost in service"
why = "service"
at = 2026-09-16T10:30
refrigerant = "R-454C"
mass = "0.03 ± 0.01 kg"
how = "estimated"
"#,
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let vented = scene.visit.movements.iter();
    for movement in vented.filter(|movement| movement.kind == MovementKind::Vented) {
        let refrigerant = refrigerant_of(movement.note.refrigerant.as_ref())
            .or_else(|| scene.refrigerant(movement.circuit, movement.at.value.date()));
        let Some(refrigerant) = refrigerant.filter(|refrigerant| is_covered(refrigerant)) else {
            continue;
        };
        let span = movement
            .note
            .kind
            .map_or(movement.at.span, |kind| kind.span);
        found.push(
            CAUTION
                .says(
                    span,
                    Message::of("caution-vented").with("refrigerant", refrigerant.designation),
                )
                .here("vented")
                .also(movement.amount.span(), "this much")
                .cure("recover it the next time")
                .cure("if it went through a relief valve or was lost in hoses, write that kind"),
        );
    }
}

fn is_covered(refrigerant: &Refrigerant) -> bool {
    let in_annex = [
        EuAnnex::OneSectionOne,
        EuAnnex::OneSectionTwo,
        EuAnnex::TwoSectionOne,
    ]
    .into_iter()
    .any(|annex| refrigerant.is_in_eu_annex(annex));
    in_annex || refrigerant.contains_us_regulated() || refrigerant.ozone_class().is_some()
}
