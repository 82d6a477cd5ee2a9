//! The nearest known name to one that is not known.

/// The known name most like `word`, if any is like enough to be a slip of the pen.
///
/// Case does not count. Ratio of matching characters at least 0.6, measured to accept slips and
/// foreign spellings and to leave other words alone.
pub fn nearest<'a>(word: &str, known: &[&'a str]) -> Option<&'a str> {
    let lower = word.to_lowercase();
    if let Some(exact) = known.iter().find(|name| name.to_lowercase() == lower) {
        return Some(exact);
    }
    let words = |text: &str| -> Vec<String> {
        let mut words: Vec<String> = text
            .split(|c: char| !c.is_alphanumeric())
            .filter(|word| !word.is_empty() && *word != "and")
            .map(str::to_owned)
            .collect();
        words.sort();
        words
    };
    if let Some(same) = known
        .iter()
        .find(|name| words(&name.to_lowercase()) == words(&lower))
    {
        return Some(same);
    }
    similar::get_close_matches(lower.as_str(), known, 1, 0.6)
        .into_iter()
        .next()
}

/// Joins names as `a, b or c`.
pub fn or_list<S: AsRef<str>>(names: &[S]) -> String {
    match names {
        [] => String::new(),
        [one] => one.as_ref().to_owned(),
        [head @ .., last] => {
            let head: Vec<&str> = head.iter().map(AsRef::as_ref).collect();
            format!("{} or {}", head.join(", "), last.as_ref())
        }
    }
}

/// Joins names as `a, b or c`, each in backticks: for names that may hold blanks or commas.
pub fn quoted_or(names: &[&str]) -> String {
    let quoted: Vec<String> = names.iter().map(|name| format!("`{name}`")).collect();
    or_list(&quoted)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slips_find_their_name_and_strangers_do_not() {
        let known = ["mass", "serial", "circuit"];
        assert_eq!(nearest("masse", &known), Some("mass"));
        assert_eq!(nearest("serail", &known), Some("serial"));
        assert_eq!(nearest("Circuit", &known), Some("circuit"));
        assert_eq!(nearest("xyz", &known), None);
        let states = ["repaired, proved", "repaired, not proved"];
        assert_eq!(
            nearest("repaired and proved", &states),
            Some("repaired, proved")
        );
    }

    #[test]
    fn lists_read_as_prose() {
        assert_eq!(or_list(&["a", "b", "c"]), "a, b or c");
        assert_eq!(or_list::<&str>(&[]), "");
    }
}
