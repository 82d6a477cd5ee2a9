//! A date set by hand that is later than the rule in force allows.

use crate::caution::{Caution, Edit, Scene};
use crate::language::Words;
use crate::ruleset::{Duty, obligations};
use crate::text::Diagnostic;

const SITE: Edit = Edit {
    file: "brinewick/site.toml",
    from: "units = \"metric\"\n",
    to: "units = \"metric\"\nrules = [\"gb-ozone\"]\n",
};
const VISIT: &str = "brinewick/old-cold-room/2026-06-10/visit.toml";

pub(super) static CAUTION: Caution = Caution {
    name: "date-later-than-rule",
    summary: "a date set by hand is later than the rule in force allows",
    finds: "A [[due]] of this visit whose day comes after the last day that a rule in force allows for the same thing, worked out from the notes. An extension that the rule knows, noted with the day it was asked for, moves that day; an earlier date says nothing, nor does one that no rule asks for.",
    matters: "Whoever keeps to the date that was noted misses that of the rule.",
    put_right: "Agree on an earlier day. If more time was granted for the repair, note `extension` and `extension-asked-for`.",
    source: "common practice; the rule is named in the caution itself",
    example: &[
        SITE,
        Edit {
            file: VISIT,
            from: "",
            to: "\n[[due]]\nwhat = \"leak check\"\nby = 2027-09-30\n",
        },
    ],
    near_miss: &[
        SITE,
        Edit {
            file: VISIT,
            from: "",
            to: "\n[[due]]\nwhat = \"leak check\"\nby = 2027-06-10\n",
        },
    ],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let note = scene.visit.note.as_ref();
    if note.is_none_or(|note| note.due.is_empty()) {
        return;
    }
    let day = scene.visit.last_day();
    let mut told = Vec::new();
    for duty in obligations(scene.site, scene.system, scene.number + 1, day) {
        let (Some(typed), Some(rules)) = (duty.typed, duty.rules) else {
            continue;
        };
        let Some(allowed) = typed.allowed.filter(|allowed| *allowed < typed.by.value) else {
            continue;
        };
        if typed.visit != scene.number || told.contains(&typed.by.span) {
            continue;
        }
        told.push(typed.by.span);
        let mut diagnostic = Diagnostic::caution(
            CAUTION.name,
            typed.by.span,
            format!("{} is later than the rule allows", typed.by.value),
        )
        .here(format!(
            "{}: by {allowed}",
            Words::english().text(&duty.what)
        ))
        .also(
            duty.from.span,
            format!("counted from here: {}", duty.from.what),
        )
        .why(format!(
            "{}, {}",
            rules.title,
            Words::english().text(&duty.source)
        ))
        .cure(format!("agree on a day up to {allowed}"));
        if let Some(law) = rules.exceedance.filter(|_| duty.duty == Duty::Repair) {
            diagnostic = diagnostic
                .cure("if more time was asked for, write `extension` and `extension-asked-for`")
                .cure(law.extensions);
        }
        found.push(diagnostic);
    }
}
