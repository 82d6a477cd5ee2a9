//! Safety classes of ASHRAE 34 and ISO 817: a letter for toxicity, a number for flammability.

use std::fmt;

/// A safety class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names are the classes")]
pub enum SafetyClass {
    A1,
    A2L,
    A2,
    A3,
    B1,
    B2L,
    B2,
    B3,
}

impl SafetyClass {
    /// Every class, in order.
    pub const ALL: [Self; 8] = [
        Self::A1,
        Self::A2L,
        Self::A2,
        Self::A3,
        Self::B1,
        Self::B2L,
        Self::B2,
        Self::B3,
    ];

    /// Gives the class as it is written: `A2L`.
    pub const fn name(self) -> &'static str {
        match self {
            Self::A1 => "A1",
            Self::A2L => "A2L",
            Self::A2 => "A2",
            Self::A3 => "A3",
            Self::B1 => "B1",
            Self::B2L => "B2L",
            Self::B2 => "B2",
            Self::B3 => "B3",
        }
    }

    /// Finds the class that is written so, in either case.
    pub fn find(text: &str) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|class| class.name().eq_ignore_ascii_case(text.trim()))
    }

    /// Tells whether a flame can spread: every class but A1 and B1.
    pub const fn is_flammable(self) -> bool {
        !matches!(self, Self::A1 | Self::B1)
    }

    /// Tells whether the toxicity is the higher one: the B classes.
    pub const fn is_more_toxic(self) -> bool {
        matches!(self, Self::B1 | Self::B2L | Self::B2 | Self::B3)
    }
}

impl fmt::Display for SafetyClass {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.pad(self.name())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ammonia_s_class_is_flammable_and_more_toxic() {
        let class = SafetyClass::find("b2l").unwrap();
        assert!(class.is_flammable() && class.is_more_toxic());
        assert_eq!(SafetyClass::find("A4"), None);
    }
}
