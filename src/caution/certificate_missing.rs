//! Work by someone whose certificate is not in the book, with nobody certified beside.

use crate::caution::worked_by::named;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Identifier;
use jiff::civil::Date;

const CERTIFICATE: Edit = Edit {
    file: "rimebook.toml",
    from: "certificate = \"CASE-PC-0102\"\ncategory = \"I\"\ncertified-until = 2028-01-31\n",
    to: "",
};

pub(super) static CAUTION: Caution = Caution {
    name: "certificate-missing",
    summary: "someone without a certificate in the book worked on the circuit alone",
    finds: "Someone named for a movement, a search or a test who has neither `certificate` nor `certified-until`, in a book in which others have one, on a day on which nobody with one was present. In a book that notes no certificates nothing is said.",
    matters: "Work on refrigerant circuits is for certified people, and the record of it has to name their certificate; a leak check or repair by someone without may not count.",
    put_right: "Write the certificate of that person in the book. If there is none, have the work that needs it done again by someone certified.",
    source: "Regulation (EU) 2024/573 Article 4(5) (check by a certified person) and Article 7(1)(e) (certificate number in the record); 40 CFR 84.106(c)(1)",
    example: &[CERTIFICATE],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "certificate = \"CASE-PC-0102\"\n",
        to: "",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    if !scene
        .book
        .people
        .iter()
        .any(|(id, _)| is_certified(scene, id))
    {
        return;
    }
    let alone = named(scene).find(|(id, _, day)| {
        scene.book.people.get(id).is_some() && !is_certified(scene, id) && !accompanied(scene, *day)
    });
    let Some((id, span, day)) = alone else {
        return;
    };
    let mut diagnostic = CAUTION
        .says(
            span,
            Message::of("caution-certificate-missing").with("person", scene.book.person_name(id)),
        )
        .here(format!("on {day}, with nobody certified present"));
    if let Some(span) = scene.book.people.span(id) {
        diagnostic = diagnostic.also(span, "no `certificate` here");
    }
    found.push(
        diagnostic
            .cure("write `certificate`, `category` and `certified-until` of this person")
            .cure("if there is none, have the work done again that needs a certificate"),
    );
}

fn is_certified(scene: &Scene<'_>, id: &Identifier) -> bool {
    let note = scene.book.people.get(id);
    note.is_some_and(|note| note.certificate.is_some() || note.certified_until.is_some())
}

/// Whether someone certified was present on a day.
fn accompanied(scene: &Scene<'_>, day: Date) -> bool {
    scene.visit.attendance.iter().any(|there| {
        let present = (there.from.value.date()..=there.to.value.date()).contains(&day);
        present && is_certified(scene, &there.by.value)
    })
}
