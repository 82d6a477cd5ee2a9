//! Work by someone whose certificate does not cover it.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::Identifier;
use crate::vocabulary::site_file::RuleSetWord;
use jiff::civil::Date;

const CERTIFICATE: &str = "certificate = \"CASE-PC-0101\"\ncategory = \"I\"";

pub(super) static CAUTION: Caution = Caution {
    name: "certificate-category-wrong",
    summary: "someone worked on a circuit beyond the category of their certificate",
    finds: "Where the rules of the European Union or of Great Britain are in force: someone with a certificate of category IV who is named for a charge, a recovery or a test, of category III for a charge or a test, or of category II or III for any of them on a circuit that should hold 3 kg or more (labelled as hermetically sealed: 6 kg). Silent where someone was present that day whose category covers the work or is not noted, and for refrigerants that are not fluorinated.",
    matters: "The law asks for a certificate that covers the work: what was done without it may not count.",
    put_right: "Have the work done, or done again, by someone whose category covers it. If the category was written wrongly, correct it.",
    source: "Implementing Regulation (EU) 2015/2067 Article 3 (categories I to IV), from memory: verify; certificates by later rules use other letters and are passed over",
    example: &[Edit {
        file: "rimebook.toml",
        from: CERTIFICATE,
        to: "certificate = \"CASE-PC-0101\"\ncategory = \"II\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "certificate = \"CASE-PC-0102\"\ncategory = \"I\"",
        to: "certificate = \"CASE-PC-0102\"\ncategory = \"IV\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

/// One thing done by someone.
struct Deed<'a> {
    by: &'a Noted<Identifier>,
    circuit: usize,
    day: Date,
    recovery: bool,
}

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let Some(rule) = scene
        .rule(RuleSetWord::Eu2024)
        .or_else(|| scene.rule(RuleSetWord::Gb))
    else {
        return;
    };
    let mut told = Vec::new();
    for deed in deeds(scene) {
        let id = &deed.by.value;
        let Some(category) = category(scene, id) else {
            continue;
        };
        let kept = covers(scene, id, &deed) || supervised(scene, &deed);
        if kept || told.contains(&id) {
            continue;
        }
        told.push(id);
        found.push(
            CAUTION
                .says(
                    deed.by.span,
                    Message::of("caution-certificate-category-wrong")
                        .with("category", category.value.as_str())
                        .with("person", scene.book.person_name(id)),
                )
                .here(format!("done on {}", deed.day))
                .also(category.span, "the category of the certificate")
                .also(
                    rule,
                    "this rule asks for a certificate that covers the work",
                )
                .cure("have the work done again by someone whose category covers it")
                .cure("if the category was written wrongly, correct it"),
        );
    }
}

/// Charges, recoveries and tests that someone is named for.
fn deeds<'a>(scene: &Scene<'a>) -> impl Iterator<Item = Deed<'a>> + use<'a> {
    use crate::vocabulary::refrigerant_file::MovementKind;
    let visit = scene.visit;
    let movements = visit.movements.iter().filter_map(|movement| {
        let recovery = movement.kind == MovementKind::Recovered;
        let handled = recovery || movement.kind == MovementKind::Charged;
        Some(Deed {
            by: movement.note.by.as_ref().filter(|_| handled)?,
            circuit: movement.circuit,
            day: movement.at.value.date(),
            recovery,
        })
    });
    let pressure = visit
        .pressure_tests
        .iter()
        .map(|test| (&test.note.by, test.circuit, test.start.at.value.date()));
    let vacuum = visit
        .vacuum_tests
        .iter()
        .map(|test| (&test.note.by, test.circuit, test.start.at.value.date()));
    let tests = pressure.chain(vacuum).filter_map(|(by, circuit, day)| {
        Some(Deed {
            by: by.as_ref()?,
            circuit,
            day,
            recovery: false,
        })
    });
    movements.chain(tests)
}

fn category<'a>(scene: &Scene<'a>, id: &Identifier) -> Option<&'a Noted<String>> {
    scene.book.people.get(id)?.category.as_ref()
}

/// Whether someone's category covers a deed; one that is not known is taken to.
fn covers(scene: &Scene<'_>, id: &Identifier, deed: &Deed<'_>) -> bool {
    let category = category(scene, id).map(|noted| noted.value.trim());
    match category {
        Some("II") => is_small(scene, deed),
        Some("III") => deed.recovery && is_small(scene, deed),
        Some("IV") => !is_fluorinated(scene, deed),
        _ => true,
    }
}

/// Whether someone else was there that day whose category covers the deed.
fn supervised(scene: &Scene<'_>, deed: &Deed<'_>) -> bool {
    scene.visit.attendance.iter().any(|other| {
        let days = other.from.value.date()..=other.to.value.date();
        other.by.value != deed.by.value
            && days.contains(&deed.day)
            && covers(scene, &other.by.value, deed)
    })
}

fn is_fluorinated(scene: &Scene<'_>, deed: &Deed<'_>) -> bool {
    scene
        .refrigerant(deed.circuit, deed.day)
        .is_some_and(|refrigerant| {
            let mut parts = refrigerant.components.iter();
            parts.any(|part| part.substance.eu_annex.is_some())
        })
}

/// Whether the circuit is small enough for category II and III, not fluorinated, or of unknown charge.
fn is_small(scene: &Scene<'_>, deed: &Deed<'_>) -> bool {
    let hermetic = scene
        .system
        .note
        .as_ref()
        .and_then(|note| note.hermetic_label)
        .is_some_and(|label| label.value);
    let limit_kg = if hermetic { 6.0 } else { 3.0 };
    let charge = scene
        .system
        .in_force(deed.circuit, deed.day)
        .and_then(|entry| entry.note.full_charge);
    let small = charge.is_none_or(|charge| charge.value.value.si() < limit_kg);
    small || !is_fluorinated(scene, deed)
}
