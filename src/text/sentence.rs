//! Capitals and full stops.

/// With a capital at the start.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// With a small letter at the start, unless what begins it is no plain word: `R-449A` stays.
pub fn small(text: &str) -> String {
    let mut letters = text.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => text.to_owned(),
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

    #[test]
    fn a_sentence_within_another_begins_small_but_for_a_name() {
        assert_eq!(small("Émettre R-449A"), "émettre R-449A");
        assert_eq!(small("R-449A"), "R-449A");
        assert_eq!(small(""), "");
    }
}
