//! Safety classes of refrigerants: A or B by toxicity, 1, 2L, 2 or 3 by flammability.

use crate::vocabulary::word::Word;
use std::fmt;

/// Safety class of a refrigerant (ISO 817, ASHRAE 34).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum SafetyClass {
    /// Lower toxicity, no flame propagation.
    A1,
    /// Lower toxicity, lower flammability.
    A2L,
    /// Lower toxicity, flammable.
    A2,
    /// Lower toxicity, higher flammability.
    A3,
    /// Higher toxicity, no flame propagation.
    B1,
    /// Higher toxicity, lower flammability.
    B2L,
    /// Higher toxicity, flammable.
    B2,
    /// Higher toxicity, higher flammability.
    B3,
}

impl Word for SafetyClass {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "A1",
            SafetyClass::A1,
            "lower toxicity, no flame propagation",
        ),
        (
            "A2L",
            SafetyClass::A2L,
            "lower toxicity, lower flammability",
        ),
        ("A2", SafetyClass::A2, "lower toxicity, flammable"),
        ("A3", SafetyClass::A3, "lower toxicity, higher flammability"),
        (
            "B1",
            SafetyClass::B1,
            "higher toxicity, no flame propagation",
        ),
        (
            "B2L",
            SafetyClass::B2L,
            "higher toxicity, lower flammability",
        ),
        ("B2", SafetyClass::B2, "higher toxicity, flammable"),
        (
            "B3",
            SafetyClass::B3,
            "higher toxicity, higher flammability",
        ),
    ];
}

impl SafetyClass {
    /// Tells whether it can burn: every class but A1 and B1.
    pub const fn is_flammable(self) -> bool {
        !matches!(self, Self::A1 | Self::B1)
    }

    /// Tells whether it is of higher toxicity: the B classes.
    pub const fn is_more_toxic(self) -> bool {
        matches!(self, Self::B1 | Self::B2L | Self::B2 | Self::B3)
    }
}

impl fmt::Display for SafetyClass {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.pad(self.word())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ammonia_s_class_is_flammable_and_more_toxic() {
        let class = SafetyClass::of("b2l").unwrap();
        assert!(class.is_flammable() && class.is_more_toxic());
        assert_eq!(SafetyClass::of("A4"), None);
    }
}
