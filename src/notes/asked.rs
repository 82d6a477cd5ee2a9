//! Every key that the readers ask for, kept while the unit tests run: all of the vocabulary, nothing else.

use crate::notes::folder::{FileFact, Folder};
use crate::notes::read_notes;
use crate::text::{Diagnostics, Source, Sources};
use crate::vocabulary::{FileKind, TOPS, Table};
use std::collections::BTreeSet;
use std::sync::Mutex;

type Names = BTreeSet<(&'static str, &'static str)>;

static ASKED: Mutex<Names> = Mutex::new(Names::new());

/// Keeps that a table was asked for a key.
pub(super) fn record(table: &Table, key: &'static str) {
    ASKED.lock().unwrap().insert((table.name, key));
}

/// A book in which every key of every table stands with its example.
fn whole_book(sources: &mut Sources) -> Folder {
    let mut folder = Folder::default();
    for (kind, table) in TOPS {
        let above = match kind {
            FileKind::Book => "",
            FileKind::Site => "site/",
            FileKind::System => "site/system/",
            _ => "site/system/2026-06-18/",
        };
        let path = format!("{above}{}", kind.file_name());
        let text = table.example_text();
        let fact = FileFact {
            length: text.len() as u64,
            link: false,
            head: Vec::new(),
        };
        let file = sources.add(Source::new(path.clone(), text));
        folder.texts.insert(path.clone(), file);
        folder.files.insert(path, fact);
    }
    folder
}

#[test]
fn the_readers_ask_for_every_key_and_no_other() {
    let mut sources = Sources::default();
    let folder = whole_book(&mut sources);
    read_notes(folder, &mut sources, &mut Diagnostics::default());
    let tables = TOPS.iter().flat_map(|(_, table)| table.with_inner());
    let listed: Names = tables
        .flat_map(|table| table.keys.iter().map(|entry| (table.name, entry.name)))
        .collect();
    let asked = ASKED.lock().unwrap();
    let unasked: Vec<_> = listed.difference(&asked).collect();
    let unlisted: Vec<_> = asked.difference(&listed).collect();
    assert!(
        unasked.is_empty() && unlisted.is_empty(),
        "{unasked:?} {unlisted:?}"
    );
}
