//! A quantity's text taken apart: number, uncertainty, unit.

use std::ops::Range;

use super::number::{Cursor, Number, scan};
use super::refusal::Refusal;
use super::rounding::{Decimal, shortest_exponent};

/// A text taken apart: number, perhaps its uncertainty, and where the unit stands.
pub(super) struct Written<'a> {
    pub text: &'a str,
    pub number: Number,
    pub uncertainty: Option<Number>,
    pub unit: Range<usize>,
}

impl Written<'_> {
    /// The unit as typed.
    pub fn typed(&self) -> &str {
        self.text.get(self.unit.clone()).unwrap_or_default()
    }

    /// The number and its uncertainty as typed.
    pub fn figures(&self) -> &str {
        let end = self
            .uncertainty
            .as_ref()
            .map_or(self.number.range.end, |half| half.range.end);
        self.text
            .get(self.number.range.start..end)
            .unwrap_or_default()
    }

    /// The same figures with each of these units.
    pub fn with_units(&self, units: &[&'static str]) -> Vec<String> {
        units
            .iter()
            .map(|unit| format!("{} {unit}", self.figures()))
            .collect()
    }

    /// A refusal of the unit.
    pub fn refuse(&self, what: impl Into<String>) -> Refusal {
        Refusal::new(self.unit.clone(), what)
    }
}

pub(super) const PLUS_MINUS: [&str; 3] = ["±", "+/-", "+-"];

/// Takes a text apart.
pub(super) fn split(text: &str) -> Result<Written<'_>, Refusal> {
    let mut cursor = Cursor { text, at: 0 };
    let number = scan(&mut cursor)?;
    let mut ahead = cursor.clone();
    ahead.spaces();
    let sign_at = ahead.at;
    let uncertainty = if ahead.eat(&PLUS_MINUS) {
        let half = scan(&mut ahead)?;
        cursor.at = ahead.at;
        if half.value <= 0.0 {
            let figures = text.get(number.range.clone()).unwrap_or_default();
            let rest = cursor.rest();
            return Err(Refusal::new(
                sign_at..half.range.end,
                "an uncertainty must be more than zero",
            )
            .because("no reading is exact; leave the uncertainty out if it is not known")
            .cured([format!("{figures}{rest}").trim().to_owned()]));
        }
        Some(half)
    } else {
        None
    };
    cursor.spaces();
    let unit = cursor.at..cursor.at + cursor.rest().trim_end().len();
    Ok(Written {
        text,
        number,
        uncertainty,
        unit,
    })
}

/// A number for a corrected text: plain digits, no more than it has.
pub(super) fn shortest(value: f64) -> String {
    Decimal::rounded(value, shortest_exponent(value).min(0))
        .plain()
        .replace('−', "-")
}
