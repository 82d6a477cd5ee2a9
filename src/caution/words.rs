//! Words of the technician that say what the surroundings of a search were like.

/// The first of the phrases that a text names, unless it names one of the others as well.
///
/// Whole words count, in lower case; what is neither letter nor digit parts them.
pub fn named<'a>(text: &str, phrases: &[&'a str], unless: &[&str]) -> Option<&'a str> {
    let words: Vec<&str> = text
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
    let begins = |words: &[&str], phrase: &str| {
        let mut words = words.iter();
        phrase.split(' ').all(|word| words.next() == Some(&word))
    };
    let names = |phrase: &&&str| (0..words.len()).any(|at| begins(&words[at..], phrase));
    if unless.iter().any(|phrase| names(&phrase)) {
        return None;
    }
    phrases.iter().find(names).copied()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whole_words_count_and_a_denial_silences() {
        assert_eq!(named("strong wind", &["wind"], &["no"]), Some("wind"));
        assert_eq!(named("by the window", &["wind"], &["no"]), None);
        assert_eq!(named("clean, no wind", &["wind"], &["no"]), None);
        assert_eq!(
            named("fans  running.", &["fans running"], &[]),
            Some("fans running")
        );
    }
}
