//! The notes of one visit beside those of another, by words, without what is private.

use crate::job::Visit;
use crate::text::Sources;
use similar::{ChangeTag, TextDiff};
use std::collections::BTreeMap;

/// What changed in one file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileDifference {
    /// Name of the file.
    pub file: String,
    /// Lines with a change, what went as `[-…-]`, what came as `{+…+}`.
    pub lines: Vec<String>,
}

/// The differences of the notes of two visits, file by file.
pub fn notes_difference(sources: &Sources, then: &Visit, now: &Visit) -> Vec<FileDifference> {
    let texts = |visit: &Visit| -> BTreeMap<String, String> {
        visit
            .files
            .iter()
            .map(|file| sources.get(*file))
            .map(|source| {
                let name = source.path.rsplit('/').next().unwrap_or(&source.path);
                (name.to_owned(), without_private(name, &source.text))
            })
            .collect()
    };
    let (before, after) = (texts(then), texts(now));
    let mut names: Vec<&String> = before.keys().chain(after.keys()).collect();
    names.sort();
    names.dedup();
    let text = |texts: &BTreeMap<String, String>, name: &String| {
        texts.get(name).cloned().unwrap_or_default()
    };
    names
        .into_iter()
        .map(|name| FileDifference {
            file: name.clone(),
            lines: by_words(&text(&before, name), &text(&after, name)),
        })
        .filter(|difference| !difference.lines.is_empty())
        .collect()
}

/// Lines with a change, words that went and came marked.
fn by_words(before: &str, after: &str) -> Vec<String> {
    let diff = TextDiff::from_words(before, after);
    let mut lines = Vec::new();
    let mut line = String::new();
    let mut changed = false;
    let mut open: Option<ChangeTag> = None;
    let close = |line: &mut String, open: &mut Option<ChangeTag>| match open.take() {
        Some(ChangeTag::Delete) => line.push_str("-]"),
        Some(ChangeTag::Insert) => line.push_str("+}"),
        _ => {}
    };
    for change in diff.iter_all_changes() {
        let tag = change.tag();
        for piece in change.value().split_inclusive('\n') {
            let words = piece.trim_end_matches(['\n', '\r']);
            if !words.is_empty() {
                if open != Some(tag) {
                    close(&mut line, &mut open);
                    open = match tag {
                        ChangeTag::Equal => None,
                        _ => Some(tag),
                    };
                    line.push_str(match tag {
                        ChangeTag::Delete => "[-",
                        ChangeTag::Insert => "{+",
                        ChangeTag::Equal => "",
                    });
                }
                line.push_str(words);
                changed |= tag != ChangeTag::Equal && !words.trim().is_empty();
            }
            if piece.ends_with('\n') {
                close(&mut line, &mut open);
                if changed {
                    lines.push(line.trim_end().to_owned());
                }
                line.clear();
                changed = false;
            }
        }
    }
    close(&mut line, &mut open);
    if changed {
        lines.push(line.trim_end().to_owned());
    }
    lines
}

/// A file without its private parts; where in doubt, a line too much is left out.
pub fn without_private(name: &str, text: &str) -> String {
    let markdown = name.ends_with(".md");
    let mut kept = String::new();
    let mut until: Option<&str> = None;
    let mut item: Option<usize> = None;
    for line in text.split_inclusive('\n') {
        let trimmed = line.trim_start();
        let indent = line.len() - trimmed.len();
        if let Some(end) = until {
            until = (!line.contains(end)).then_some(end);
            continue;
        }
        if let Some(depth) = item {
            let ends = trimmed.trim_end().is_empty()
                || trimmed.starts_with('#')
                || (indent <= depth && trimmed.starts_with(['-', '*', '+']));
            if !ends {
                continue;
            }
            item = None;
        }
        if !line.to_lowercase().contains("private") {
            kept.push_str(line);
        } else if markdown {
            item = Some(indent);
        } else {
            until = ["\"\"\"", "'''"]
                .into_iter()
                .find(|mark| line.matches(mark).count() == 1);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_private_is_in_no_difference() {
        let toml = "a = 1\nprivate = \"gate 4711\"\nprivate = \"\"\"\ngate 4712\n\"\"\"\nb = 2\n";
        assert_eq!(without_private("visit.toml", toml), "a = 1\nb = 2\n");
        let findings = "- cause: slack\n- private: his\n  pliers\n  - more\n- state: open\n";
        assert_eq!(
            without_private("findings.md", findings),
            "- cause: slack\n- state: open\n"
        );
    }

    #[test]
    fn words_that_went_and_came_are_marked() {
        assert_eq!(
            by_words("a = 1\nnut tightened\n", "a = 1\nnut replaced\n"),
            ["nut [-tightened-]{+replaced+}"]
        );
    }
}
