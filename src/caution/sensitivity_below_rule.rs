//! A detector less sensitive than the rule in force asks.

use crate::caution::detector_rule::{ShortOfRule, short_of_rule};
use crate::caution::{Caution, Edit, Scene};
use crate::notes::InstrumentNote;
use crate::quantity::{LeakRate, Measured};
use crate::text::{Diagnostic, Message, Noted};

/// The largest leak that a portable device must find: 5 g/yr, in kg/s with a year of 365 days.
const MUST_FIND_KG_PER_S: f64 = 0.005 / (365.0 * 86_400.0);

pub(super) static CAUTION: Caution = Caution {
    name: "sensitivity-below-rule",
    summary: "a detector was relied on that is less sensitive than 5 g/yr",
    finds: "Where the rules of the European Union are in force: a gas detector whose noted sensitivity is a larger leak than 5 g/yr, where it alone stands for a search, for the evidence of a leak or for the proof of a repair. A sensitivity as a gas flow without its gas says nothing.",
    matters: "A search with it may not count as the leak check that the rule asks for: smaller leaks stay hidden.",
    put_right: "Repeat the search with a detector that finds 5 g/yr, or by bubble solution.",
    source: "Regulation (EC) 1516/2007 Article 6 (sensitivity of portable devices at least 5 g/yr)",
    example: &[Edit {
        file: "rimebook.toml",
        from: "sensitivity = \"3 g/yr\"",
        to: "sensitivity = \"8 g/yr\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: "sensitivity = \"3 g/yr\"",
        to: "sensitivity = \"5 g/yr\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for ShortOfRule {
        one,
        id,
        fault: rate,
        rule,
    } in short_of_rule(scene, |note, _| insensitive(note))
    {
        found.push(
            CAUTION
                .says(
                    one.span,
                    Message::of("caution-sensitivity-below-rule")
                        .with("detector", id)
                        .figure("leak", scene.print(&rate.value)),
                )
                .here("relied on here")
                .also(rate.span, "its sensitivity")
                .also(rule, "this rule asks for at least 5 g/yr")
                .cure("repeat the search with a more sensitive detector, or with bubble solution"),
        );
    }
}

fn insensitive(note: &InstrumentNote) -> Option<Noted<Measured<LeakRate>>> {
    let rate = note.sensitivity?;
    match rate.value.value {
        // The share of a millionth is for the rounding of arithmetic.
        LeakRate::Mass(kg_per_s) if kg_per_s > MUST_FIND_KG_PER_S * (1.0 + 1e-6) => Some(rate),
        _ => None,
    }
}
