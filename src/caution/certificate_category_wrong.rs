//! Refrigerant moved by someone whose category of certificate does not cover it.

use crate::caution::{Caution, Edit, Scene};
use crate::job::Movement;
use crate::text::Diagnostic;
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::vocabulary::site_file::RuleSetWord;

/// Below this charge categories II and III may work on the circuit, kg; twice that where the plant is
/// labelled as hermetically sealed.
const SMALL_KG: f64 = 3.0;

pub(super) static CAUTION: Caution = Caution {
    name: "certificate-category-wrong",
    summary: "refrigerant was moved by someone whose category does not cover it",
    finds: "Under the rules of the European Union or Great Britain, a charge or a recovery by someone of category IV, a charge by category III, or either by category II or III on a circuit of 3 kg or more (6 kg where it is labelled as hermetically sealed). Another category, or none noted, says nothing.",
    matters: "Each category covers certain work only: work outside it counts as work by someone without a certificate.",
    put_right: "If the category in the register is not the one held that day, correct it. If it is, name who did the work, or have it done again by someone of the right category.",
    source: "Regulation (EU) 2015/2067 Article 3 (categories I to IV; from memory, verify)",
    example: &[Edit {
        file: "rimebook.toml",
        from: "certificate = \"CASE-PC-0101\"\ncategory = \"I\"",
        to: "certificate = \"CASE-PC-0101\"\ncategory = \"IV\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "certificate = \"CASE-PC-0101\"\ncategory = \"I\"",
        to: "certificate = \"CASE-PC-0101\"\ncategory = \"A1\"",
    }],
    check,
    limits_claim: false,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let european =
        scene.rule(RuleSetWord::Eu2024).is_some() || scene.rule(RuleSetWord::Gb).is_some();
    if !european {
        return;
    }
    let mut told = Vec::new();
    for movement in &scene.visit.movements {
        let Some(by) = &movement.note.by else {
            continue;
        };
        let Some(category) = scene
            .book
            .people
            .get(&by.value)
            .and_then(|person| person.category.as_ref())
        else {
            continue;
        };
        if told.contains(&&by.value) || covers(scene, movement, category.value.trim()) {
            continue;
        }
        told.push(&by.value);
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                by.span,
                format!(
                    "category {} of {} does not cover this work",
                    category.value,
                    scene.book.person_name(&by.value)
                ),
            )
            .here("moved refrigerant")
            .also(category.span, "the category")
            .why(CAUTION.matters)
            .cure("if the category held that day was another, correct the register")
            .cure("if not, name who did the work, or have it done again by someone whose category covers it"),
        );
    }
}

/// Whether a category covers a movement; an unknown one is not judged.
fn covers(scene: &Scene<'_>, movement: &Movement, category: &str) -> bool {
    let handled = matches!(
        movement.kind,
        MovementKind::Charged | MovementKind::Recovered
    );
    let charge = scene
        .system
        .in_force(movement.circuit, movement.at.value.date())
        .and_then(|entry| entry.note.full_charge)
        .map(|charge| charge.value.value.si());
    let hermetic = scene
        .system
        .note
        .as_ref()
        .and_then(|note| note.hermetic_label)
        .is_some_and(|label| label.value);
    let most = if hermetic { 2.0 * SMALL_KG } else { SMALL_KG };
    let small = charge.is_none_or(|charge| charge < most);
    match category {
        _ if !handled => true,
        "II" => small,
        "III" => small && movement.kind == MovementKind::Recovered,
        "IV" => false,
        _ => true,
    }
}
