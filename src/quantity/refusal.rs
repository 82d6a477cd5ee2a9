//! Why a text is not the quantity its place expects.

use std::ops::Range;

/// Why a text is not a quantity: where, what is wrong, why it matters, and corrected texts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// The bytes of the text that are at fault.
    pub range: Range<usize>,
    /// What is wrong, one sentence without its full stop.
    pub what: String,
    /// Why it matters, or what the place expects.
    pub why: Option<String>,
    /// Whole corrected texts, one for each thing that may have been meant; may be empty.
    pub cures: Vec<String>,
}

impl Refusal {
    /// A refusal without cures.
    pub(super) fn new(range: Range<usize>, what: impl Into<String>) -> Self {
        Self {
            range,
            what: what.into(),
            why: None,
            cures: Vec::new(),
        }
    }

    /// Adds the reason.
    pub(super) fn because(mut self, why: impl Into<String>) -> Self {
        self.why = Some(why.into());
        self
    }

    /// Adds corrected texts.
    pub(super) fn cured(mut self, cures: impl IntoIterator<Item = String>) -> Self {
        self.cures.extend(cures);
        self
    }

    /// Adds corrected texts that put `replacements` in place of the faulty bytes of `text`.
    pub(super) fn replacing(
        self,
        text: &str,
        replacements: impl IntoIterator<Item = String>,
    ) -> Self {
        let before = text.get(..self.range.start).unwrap_or_default();
        let after = text.get(self.range.end..).unwrap_or_default();
        let cures: Vec<String> = replacements
            .into_iter()
            .map(|replacement| format!("{before}{replacement}{after}").trim().to_owned())
            .collect();
        self.cured(cures)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_replacement_keeps_the_rest_of_the_text() {
        let refusal = Refusal::new(0..4, "comma").replacing("12,5 kg", ["12.5".to_owned()]);
        assert_eq!(refusal.cures, ["12.5 kg"]);
    }
}
