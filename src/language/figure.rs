//! Digits and units in a language's form.

/// A printed figure with the decimal sign and the unit words of a language.
///
/// `unit` gives the language's word for a unit, or none where it is the same everywhere.
pub(super) fn figure(
    printed: &str,
    decimal_comma: bool,
    unit: impl Fn(&str) -> Option<String>,
) -> String {
    let mut out = String::with_capacity(printed.len());
    let mut word = String::new();
    let mut before: Option<char> = None;
    let mut letters = printed.chars().peekable();
    while let Some(letter) = letters.next() {
        if letter.is_ascii_lowercase() {
            word.push(letter);
        } else {
            close(&mut word, &mut out, &unit);
            let digits = before.is_some_and(|c| c.is_ascii_digit())
                && letters.peek().is_some_and(char::is_ascii_digit);
            out.push(match letter {
                '.' if digits && decimal_comma => ',',
                letter => letter,
            });
        }
        before = Some(letter);
    }
    close(&mut word, &mut out, &unit);
    out
}

fn close(word: &mut String, out: &mut String, unit: &impl Fn(&str) -> Option<String>) {
    if word.is_empty() {
        return;
    }
    match unit(word) {
        Some(other) => out.push_str(&other),
        None => out.push_str(word),
    }
    word.clear();
}

#[cfg(test)]
mod tests {
    use super::*;

    fn german(word: &str) -> Option<String> {
        match word {
            "yr" => Some("a".to_owned()),
            "days" => Some("Tage".to_owned()),
            _ => None,
        }
    }

    #[test]
    fn a_comma_stands_only_between_digits() {
        let say = |text| figure(text, true, german);
        assert_eq!(
            say("24.81\u{a0}±\u{a0}0.1\u{a0}bar\u{a0}g"),
            "24,81\u{a0}±\u{a0}0,1\u{a0}bar\u{a0}g"
        );
        assert_eq!(say("30\u{a0}g/yr"), "30\u{a0}g/a");
        assert_eq!(say("3\u{a0}days."), "3\u{a0}Tage.");
        assert_eq!(figure("0.5", false, german), "0.5");
    }
}
