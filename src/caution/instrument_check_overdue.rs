//! A detector relied upon more than twelve months after its last check.

use crate::caution::detector_rule::{ShortOfRule, short_of_rule};
use crate::caution::{Caution, Edit, Scene};
use crate::notes::InstrumentNote;
use crate::text::{Diagnostic, Message, Noted};
use jiff::ToSpan;
use jiff::civil::Date;

const CHECKED: &str = "checked = [2025-02-10, 2026-02-09]";

pub(super) static CAUTION: Caution = Caution {
    name: "instrument-check-overdue",
    summary: "a detector was relied on more than 12 months after its last check",
    finds: "Where the rules of the European Union are in force: a gas detector whose last `checked` or `calibrated` day before the visit lies more than 12 months back, where it alone stands for a search, for the evidence of a leak or for the proof of a repair. A detector without any such day before the visit says nothing.",
    matters: "A check with it may not count as the leak check that the rule asks for, and its sensitivity is not known.",
    put_right: "Have the detector checked, and repeat the search with it or by another direct method. If it was checked, add the day.",
    source: "Regulation (EC) 1516/2007 Article 6 (devices checked every 12 months)",
    example: &[Edit {
        file: "rimebook.toml",
        from: CHECKED,
        to: "checked = [2025-02-10]",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: CHECKED,
        to: "checked = [2025-02-10, 2025-09-16]",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for ShortOfRule {
        one,
        id,
        fault: last,
        rule,
    } in short_of_rule(scene, |note, one| overdue(note, one.day))
    {
        found.push(
            CAUTION
                .says(
                    one.span,
                    Message::of("caution-instrument-check-overdue")
                        .with("detector", id)
                        .with("day", last.value),
                )
                .here(format!("relied on here, on {}", one.day))
                .also(last.span, "its last check before that day")
                .also(rule, "this rule asks for a check every 12 months")
                .cure("have it checked and repeat the search, or search by another direct method")
                .cure("if it was checked, add the day to `checked`"),
        );
    }
}

/// The last check of a detector before a day, if that lies more than 12 months back.
fn overdue(note: &InstrumentNote, day: Date) -> Option<Noted<Date>> {
    let days = note.checked.iter().chain(&note.calibrated).copied();
    let last = days
        .filter(|noted| noted.value <= day)
        .max_by_key(|noted| noted.value)?;
    (last.value.saturating_add(12.months()) < day).then_some(last)
}
