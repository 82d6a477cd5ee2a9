//! A quantity far outside what its kind can be in this trade.

use crate::caution::{Caution, Edit, Scene};
use crate::notes::IMPLAUSIBLE;
use crate::text::Diagnostic;

const VISIT: &str = "larchwick/cheese-store/2026-09-16/visit.toml";
const AMBIENT: &str = "ambient = \"17 °C\"";

pub(super) static CAUTION: Caution = Caution {
    name: IMPLAUSIBLE,
    summary: "a quantity is far outside what is expected",
    finds: "A pressure, temperature, mass, volume, time, leak rate, torque or power far outside what occurs in this trade. It is used as it is written.",
    matters: "A slipped decimal point or a wrong unit makes every figure that rests on it wrong.",
    put_right: "Look at the number and its unit again. If it is right, leave it.",
    source: "common practice: the ranges are wide and are a judgement",
    example: &[Edit {
        file: VISIT,
        from: AMBIENT,
        to: "ambient = \"1700 °C\"",
    }],
    near_miss: &[Edit {
        file: VISIT,
        from: AMBIENT,
        to: "ambient = \"41 °C\"",
    }],
    check,
    limits_claim: false,
    rests_on_absence: false,
};

/// Nothing to do here: the reader of the notes speaks of it where the quantity stands.
fn check(_: &Scene<'_>, _: &mut Vec<Diagnostic>) {}
