//! The vocabulary is the one list of keys: every example reads, every table and key is documented.
//! That readers ask for all of it and for nothing else is tested in `src/notes/asked.rs`.

use rimebook::command::load;
use rimebook::vocabulary::{FileKind, Form, TOPS, Table};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

fn tables() -> Vec<&'static Table> {
    TOPS.iter()
        .flat_map(|(_, table)| table.with_inner())
        .collect()
}

/// A book in which every key of every table stands with its example.
fn whole_book() -> tempfile::TempDir {
    let book = tempfile::tempdir().unwrap();
    for (kind, table) in TOPS {
        let folder = match kind {
            FileKind::Book => "",
            FileKind::Site => "site",
            FileKind::System => "site/system",
            _ => "site/system/2026-06-18",
        };
        let folder = book.path().join(folder);
        fs::create_dir_all(&folder).unwrap();
        fs::write(folder.join(kind.file_name()), table.example_text()).unwrap();
    }
    book
}

/// Errors of names that the examples of one table take from another's, or that the files of the
/// examples are not there: what is left is an example that does not read.
const OF_OTHER_FILES: [&str; 12] = [
    "name-unknown",
    "name-taken",
    "area-unknown",
    "log-missing",
    "circuit-not-named",
    "in-force-twice",
    "scale-wrong-way",
    "below-tare",
    "mass-disagrees",
    "nothing-in-force",
    "key-missing",
    "day-not-of-the-visit",
];

#[test]
fn every_example_reads_under_its_own_form() {
    let book = whole_book();
    let (loaded, _) = load(book.path()).unwrap();
    let wrong: Vec<String> = loaded
        .diagnostics
        .iter()
        .filter(|d| d.severity.word() == "error" && !OF_OTHER_FILES.contains(&d.name))
        .map(|d| {
            let source = loaded.sources.get(d.primary.span.file);
            format!("{}: {}: {}", source.path, d.name, d.what)
        })
        .collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn names_are_lower_case_words_joined_by_hyphens_and_each_once_in_its_table() {
    for table in tables() {
        let mut names = table.names();
        for name in &names {
            let plain = name
                .split('-')
                .all(|word| !word.is_empty() && word.bytes().all(|b| b.is_ascii_lowercase()));
            assert!(plain, "{} in {}", name, table.name);
        }
        let all = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), all, "a name stands twice in {}", table.name);
    }
}

#[test]
fn every_table_key_and_word_is_documented() {
    for table in tables() {
        assert!(
            table.about.ends_with('.'),
            "{}: {}",
            table.name,
            table.about
        );
        for entry in table.keys {
            let place = format!("{} in [{}]", entry.name, table.name);
            assert!(entry.about.ends_with('.'), "{place}: {}", entry.about);
            let own = entry.inner().is_some();
            assert!(own || !entry.example.is_empty(), "{place} has no example");
            if let Form::Word(list) | Form::Words(list) = entry.form {
                for word in list() {
                    assert!(!word.about.is_empty(), "{place}: `{}`", word.word);
                }
            }
        }
    }
}

#[test]
fn the_files_of_the_tables_are_those_of_a_book() {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let names: BTreeSet<String> = walkdir::WalkDir::new(demo)
        .into_iter()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(".toml"))
        .collect();
    let known: BTreeSet<String> = TOPS
        .iter()
        .map(|(kind, _)| kind.file_name().to_owned())
        .collect();
    assert_eq!(names, known);
}
