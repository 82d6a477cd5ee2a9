//! Capitals and full stops.

/// With a capital at the start.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// With a full stop at the end, unless it ends in one.
pub fn sentence(text: &str) -> String {
    let text = capital(text.trim());
    if text.ends_with(['.', '!', '?', '…']) {
        text
    } else {
        format!("{text}.")
    }
}

/// With a full stop at the end, unless it ends in one, and else as written.
pub fn ended(text: &str) -> String {
    let text = text.trim();
    if text.ends_with(['.', '!', '?', '…']) {
        text.to_owned()
    } else {
        format!("{text}.")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_note_becomes_a_sentence() {
        assert_eq!(sentence("nut backed off"), "Nut backed off.");
        assert_eq!(ended("nut backed off!"), "nut backed off!");
        assert_eq!(capital(""), "");
    }
}
