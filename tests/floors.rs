//! The floors of the house: a file imports from lower floors or from its own, packages stay in their
//! rooms, and nobody but the edges prints or touches the disk.

use std::fs;
use std::path::Path;

/// From the ground up.
const FLOORS: [&str; 13] = [
    "text",
    "quantity",
    "vocabulary",
    "language",
    "refrigerant",
    "notes",
    "job",
    "working",
    "history",
    "ruleset",
    "caution",
    "report",
    "command",
];

/// Beginnings of words that may stand only on some floors. Reading the disk is for `notes`, writing
/// for `command` and `report`.
const ROOMS: &[(&str, &[&str])] = &[
    ("toml::", &["notes"]),
    ("csv::", &["notes", "command"]),
    ("pulldown_cmark::", &["notes"]),
    ("walkdir::", &["notes", "command", "report"]),
    ("std::fs", &["notes", "command", "report"]),
    ("annotate_snippets::", &["text"]),
    ("fluent::", &["language"]),
    ("typst", &["report"]),
    ("lopdf::", &["report"]),
    ("image::", &["report"]),
    ("moxcms::", &["report"]),
    ("fast_image_resize::", &["report"]),
    ("rayon::", &["notes", "job", "report", "command"]),
    ("clap::", &["command"]),
    ("icalendar::", &["command"]),
    ("anstream::", &["command"]),
    ("indicatif::", &["command"]),
    ("println!", &["command"]),
    ("print!(", &["command"]),
    ("std::env", &["command"]),
    ("Timestamp::now", &["command"]),
    ("SystemTime", &["command"]),
    ("Zoned::now", &["command"]),
];

/// Every file of a folder below the root of the repository, with its path from that folder.
fn files(folder: &str) -> Vec<(String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let mut files: Vec<(String, String)> = walkdir::WalkDir::new(&root)
        .into_iter()
        .map(Result::unwrap)
        .filter(|entry| entry.file_type().is_file())
        .filter_map(|entry| {
            let path = entry.path().strip_prefix(&root).unwrap();
            let text = fs::read_to_string(entry.path()).ok()?;
            Some((path.to_string_lossy().replace('\\', "/"), text))
        })
        .collect();
    files.sort();
    assert!(!files.is_empty(), "{folder} is empty");
    files
}

/// The lines of a source file that are code, without its unit tests, with their numbers.
fn code(text: &str) -> impl Iterator<Item = (usize, &str)> {
    text.lines()
        .enumerate()
        .map(|(index, line)| (index + 1, line))
        .take_while(|(_, line)| *line != "#[cfg(test)]" && *line != "mod tests {")
        .filter(|(_, line)| !line.trim_start().starts_with("//"))
}

fn sources() -> Vec<(String, String)> {
    let mut sources = files("src");
    // Data for unit tests only.
    sources.retain(|(path, _)| path.ends_with(".rs") && path != "report/sample.rs");
    sources
}

fn floor(name: &str) -> Option<usize> {
    FLOORS.iter().position(|floor| *floor == name)
}

/// Whether a word begins at a place, not in the middle of a longer one.
fn words<'l>(line: &'l str, word: &'l str) -> impl Iterator<Item = &'l str> {
    line.match_indices(word).filter_map(move |(at, _)| {
        let before = line[..at].chars().next_back();
        let inside = before.is_some_and(|c| c.is_alphanumeric() || c == '_');
        (!inside).then(|| &line[at + word.len()..])
    })
}

#[test]
fn every_file_lies_on_a_floor() {
    for (path, _) in sources() {
        let on_floor = path
            .split_once('/')
            .is_none_or(|(name, _)| floor(name).is_some());
        assert!(on_floor, "{path} lies on no floor");
    }
}

#[test]
fn files_import_from_lower_floors_or_their_own() {
    let mut wrong = String::new();
    for (path, text) in sources() {
        let Some(own) = path.split_once('/').and_then(|(name, _)| floor(name)) else {
            continue;
        };
        for (number, line) in code(&text) {
            for rest in words(line, "crate::") {
                let name: String = rest
                    .chars()
                    .take_while(|c| c.is_alphanumeric() || *c == '_')
                    .collect();
                if floor(&name).is_none_or(|other| other > own) {
                    wrong += &format!("{path}:{number}: {}\n", line.trim());
                }
            }
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

#[test]
fn packages_and_the_world_outside_stay_in_their_rooms() {
    let mut wrong = String::new();
    for (path, text) in sources() {
        let own = path.split_once('/').map_or("", |(name, _)| name);
        for (number, line) in code(&text) {
            for (word, rooms) in ROOMS {
                if words(line, word).next().is_some() && !rooms.contains(&own) && path != "main.rs"
                {
                    wrong += &format!("{path}:{number}: {}\n", line.trim());
                }
            }
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

#[test]
fn the_templates_evaluate_nothing_and_fetch_nothing() {
    let mut wrong = String::new();
    for (path, text) in files("templates") {
        for word in [
            "eval(", "plugin(", "read(", "@preview", "http://", "https://",
        ] {
            if path.ends_with(".typ") && text.contains(word) {
                wrong += &format!("{path}: {word}\n");
            }
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}
