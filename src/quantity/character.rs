//! Characters that look like nothing, or like something else, inside a quantity.

use super::refusal::Refusal;

/// What a character is called, and what is most likely meant by it.
fn odd(character: char, after_digit: bool) -> Option<(&'static str, &'static str)> {
    Some(match character {
        '“' | '”' | '„' | '‟' if after_digit => ("a curly quotation mark", " in"),
        '“' | '”' | '„' | '‟' => ("a curly quotation mark", ""),
        '‘' | '’' | '‚' | '‛' => ("a curly apostrophe", ""),
        '–' => ("an en dash", "-"),
        '—' | '―' => ("an em dash", "-"),
        '‐' | '‑' => ("a typographic hyphen", "-"),
        '\u{ad}' => ("an invisible soft hyphen", ""),
        '\u{200b}' | '\u{2060}' | '\u{feff}' => ("an invisible zero-width space", ""),
        '\u{200c}' | '\u{200d}' => ("an invisible joiner", ""),
        '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => {
            ("an invisible mark of writing direction", "")
        }
        '\n' | '\r' => ("a line break", " "),
        control if control.is_control() && control != '\t' => {
            ("an invisible control character", "")
        }
        _ => return None,
    })
}

/// Refuses a text with a character that nobody can see or that stands for another.
pub(super) fn check(text: &str) -> Result<(), Refusal> {
    if text.bytes().all(|byte| (b' '..=b'~').contains(&byte)) {
        return Ok(());
    }
    let mut first = None;
    let mut cured = String::with_capacity(text.len());
    for (at, character) in text.char_indices() {
        let after_digit = cured.ends_with(|last: char| last.is_numeric());
        match odd(character, after_digit) {
            None => cured.push(character),
            Some((name, meant)) => {
                cured.push_str(meant);
                first.get_or_insert((at..at + character.len_utf8(), name));
            }
        }
    }
    match first {
        None => Ok(()),
        Some((range, name)) => Err(Refusal::new(
            range,
            format!("there is {name} in this quantity"),
        )
        .because("it looks harmless but is not the character the reading needs")
        .cured([cured.trim().to_owned()])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn odd_characters_are_named_and_taken_out() {
        let refusal = check("24.8\u{200b} bar g").unwrap_err();
        assert_eq!(refusal.range, 4..7);
        assert!(refusal.what.contains("zero-width"));
        assert_eq!(refusal.cures, ["24.8 bar g"]);
        assert_eq!(check("–12.5 °C").unwrap_err().cures, ["-12.5 °C"]);
        assert_eq!(check("3/8”").unwrap_err().cures, ["3/8 in"]);
        assert_eq!(check("“60 %”").unwrap_err().cures, ["60 %"]);
        assert!(check("−12.5\u{a0}°C ± 0.1").is_ok());
    }
}
