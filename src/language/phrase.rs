//! Fixed words of tables (vocabulary, methods, rule sets), found by their English.

/// Longest name of a phrase's message, so that the files stay readable.
const LONGEST: usize = 72;

/// The id of the message that translates a fixed English word or sentence of a table.
pub fn phrase_id(english: &str) -> String {
    let mut id = String::from("phrase");
    let mut gap = true;
    for letter in english.chars() {
        if letter.is_ascii_alphanumeric() {
            if gap {
                id.push('-');
            }
            id.push(letter.to_ascii_lowercase());
            gap = false;
        } else {
            gap = true;
        }
        if id.len() >= LONGEST {
            break;
        }
    }
    id
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_phrase_is_named_by_its_letters() {
        assert_eq!(
            phrase_id("Leak search, and repair (again)"),
            "phrase-leak-search-and-repair-again"
        );
    }
}
