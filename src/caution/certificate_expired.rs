//! Work by someone whose certificate had run out.

use crate::caution::worked_by::named;
use crate::caution::{Caution, Edit, Scene};
use crate::job::Attendance;
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Identifier;
use jiff::civil::Date;

pub(super) static CAUTION: Caution = Caution {
    name: "certificate-expired",
    summary: "someone worked whose certificate had run out",
    finds: "Someone present on a day after `certified-until` who is named for a movement, a search or a test, or beside whom nobody with a valid certificate was present that day. No date says nothing.",
    matters: "Work on refrigerant circuits is for certified people; a leak check or repair by someone who is not may not count.",
    put_right: "If the certificate was renewed, write the new date. If not, have the work that needs it done again by someone certified.",
    source: "Regulation (EU) 2024/573 Article 4(5) (check by a certified person) and Article 7(1)(e); Regulation (EC) 1516/2007 Article 8; 40 CFR 84.106(c)(1)",
    example: &[Edit {
        file: "rimebook.toml",
        from: "certified-until = 2028-01-31",
        to: "certified-until = 2026-09-15",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "certified-until = 2028-01-31",
        to: "certified-until = 2026-09-16",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let mut told = Vec::new();
    let worked = |id: &Identifier, day: Date| named(scene).any(|(by, _, at)| by == id && at == day);
    for attendance in &scene.visit.attendance {
        let id = &attendance.by.value;
        let day = attendance.from.value.date();
        let Some(until) = scene
            .book
            .people
            .get(id)
            .and_then(|note| note.certified_until)
        else {
            continue;
        };
        let alone = !scene
            .visit
            .attendance
            .iter()
            .any(|other| is_valid(scene, other, day));
        if until.value >= day || told.contains(&id) || !(alone || worked(id, day)) {
            continue;
        }
        told.push(id);
        found.push(
            CAUTION
                .says(
                    attendance.by.span,
                    Message::of("caution-certificate-expired")
                        .with("person", scene.book.person_name(id))
                        .with("day", day),
                )
                .here(format!("worked on {day}"))
                .also(until.span, "the last day of the certificate")
                .cure("if it was renewed, write the new `certified-until`")
                .cure("if not, have the work done again that needs a certificate"),
        );
    }
}

/// Whether someone else was there that day whose certificate is not known to have run out.
fn is_valid(scene: &Scene<'_>, other: &Attendance, day: Date) -> bool {
    let present = (other.from.value.date()..=other.to.value.date()).contains(&day);
    let until = scene
        .book
        .people
        .get(&other.by.value)
        .and_then(|note| note.certified_until);
    present && until.is_none_or(|until| until.value >= day)
}
