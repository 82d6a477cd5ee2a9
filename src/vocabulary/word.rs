//! Closed lists of words.

/// A word of a closed list and what it means.
#[derive(Clone, Copy, Debug)]
pub struct WordEntry {
    /// As it stands in the notes.
    pub word: &'static str,
    /// One line about it.
    pub about: &'static str,
}

/// A value written as one word of a closed list.
pub trait Word: Copy + PartialEq + 'static {
    /// Every word, its value and what it means.
    const WORDS: &'static [(&'static str, Self, &'static str)];

    /// The value of a word, case put aside.
    fn of(word: &str) -> Option<Self> {
        Self::WORDS
            .iter()
            .find(|(known, _, _)| known.eq_ignore_ascii_case(word.trim()))
            .map(|(_, value, _)| *value)
    }

    /// The word of a value.
    fn word(self) -> &'static str {
        Self::WORDS
            .iter()
            .find(|(_, value, _)| *value == self)
            .map_or("", |(word, _, _)| word)
    }

    /// The list without the values.
    fn list() -> Vec<WordEntry> {
        Self::WORDS
            .iter()
            .map(|(word, _, about)| WordEntry { word, about })
            .collect()
    }
}
