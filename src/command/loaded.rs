//! A book read from disk and checked, and the part of it that a command is about.

use crate::caution::{self, CylinderHistory, Scene};
use crate::job::{self, Book, Site, System};
use crate::notes::{find_root, read_folder, read_notes};
use crate::text::{Diagnostic, Diagnostics, FileId, Severity, Sources};
use crate::working::account::accounts;
use crate::working::outcome::outcome_by;
use rayon::prelude::*;
use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};

/// A book with its sources and everything told of it.
#[derive(Debug)]
pub struct Loaded {
    /// Where it lies.
    pub root: PathBuf,
    /// Its text files.
    pub sources: Sources,
    /// The validated book.
    pub book: Book,
    /// Errors and cautions of the whole book, in order.
    pub diagnostics: Diagnostics,
}

/// What a command is about: a path within the book, empty for all of it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Target {
    /// Path from the root, with `/`.
    pub path: String,
}

/// Why a book could not be loaded.
#[derive(Debug)]
pub enum LoadFault {
    /// The path is in no book.
    NoBook(PathBuf),
    /// The disk could not be read.
    Disk(PathBuf, io::Error),
}

impl LoadFault {
    /// For people.
    pub fn message(&self) -> String {
        match self {
            LoadFault::NoBook(path) => format!(
                "error: `{}` does not lie in a book\n  = why: a book is a folder with a file rimebook.toml; none was found there or in any folder above\n  = help: give the path of a book, or make rimebook.toml in its root folder\n",
                path.display()
            ),
            LoadFault::Disk(path, error) => format!("error: {}: {error}\n", path.display()),
        }
    }
}

/// Loads the book that holds a path.
pub fn load(path: &Path) -> Result<(Loaded, Target), LoadFault> {
    let disk = |error| LoadFault::Disk(path.to_path_buf(), error);
    let root = find_root(path)
        .map_err(disk)?
        .ok_or_else(|| LoadFault::NoBook(path.to_path_buf()))?;
    let target = target_of(path, &root).map_err(disk)?;
    let mut sources = Sources::default();
    let mut diagnostics = Diagnostics::default();
    let folder = read_folder(&root, &mut sources, &mut diagnostics).map_err(disk)?;
    let mut notes = read_notes(folder, &mut sources, &mut diagnostics);
    let printable = std::mem::take(&mut notes.printable);
    let book = job::assemble(notes, &sources, &mut diagnostics);
    tell_unprintable(&printable, &sources, &mut diagnostics);
    let wrong: BTreeSet<FileId> = diagnostics
        .iter()
        .filter(|diagnostic| diagnostic.severity == Severity::Error)
        .map(|diagnostic| diagnostic.primary.span.file)
        .collect();
    let cylinders = CylinderHistory::of(&book);
    let all: Vec<(&Site, &System)> = systems(&book).collect();
    let told: Vec<Vec<Diagnostic>> = all
        .par_iter()
        .map(|(site, system)| cautions(&book, site, system, &cylinders, &wrong))
        .collect();
    for diagnostic in told.into_iter().flatten() {
        diagnostics.push(diagnostic);
    }
    diagnostics.sort(&sources);
    Ok((
        Loaded {
            root,
            sources,
            book,
            diagnostics,
        },
        target,
    ))
}

/// What is to be looked at in every visit of a system.
fn cautions(
    book: &Book,
    site: &Site,
    system: &System,
    cylinders: &CylinderHistory<'_>,
    wrong: &BTreeSet<FileId>,
) -> Vec<Diagnostic> {
    let accounts = accounts(system);
    let mut sound = [book.file, site.file, system.file]
        .iter()
        .all(|file| !wrong.contains(file));
    let mut found = Vec::new();
    for (number, visit) in system.visits.iter().enumerate() {
        sound &= visit.files.iter().all(|file| !wrong.contains(file));
        let Some(outcome) = outcome_by(system, &accounts, number) else {
            continue;
        };
        let scene = Scene {
            book,
            site,
            system,
            number,
            visit,
            accounts: &accounts,
            outcome: &outcome,
            cylinders,
        };
        found.extend(caution::check(&scene, sound));
    }
    found
}

fn target_of(path: &Path, root: &Path) -> io::Result<Target> {
    let path = path.canonicalize()?;
    let path = if path.is_file() {
        path.parent().map(Path::to_path_buf).unwrap_or(path)
    } else {
        path
    };
    let relative = path.strip_prefix(root).unwrap_or(Path::new(""));
    let parts: Vec<String> = relative
        .components()
        .take(3)
        .map(|part| part.as_os_str().to_string_lossy().into_owned())
        .collect();
    Ok(Target {
        path: parts.join("/"),
    })
}

/// Every system of a book with its site.
pub fn systems(book: &Book) -> impl Iterator<Item = (&Site, &System)> {
    book.sites
        .iter()
        .flat_map(|site| site.systems.iter().map(move |system| (site, system)))
}

/// Every visit of a book, with its number in its system.
pub fn visits(book: &Book) -> Vec<(&Site, &System, usize)> {
    systems(book)
        .flat_map(|(site, system)| {
            (0..system.visits.len()).map(move |number| (site, system, number))
        })
        .collect()
}

/// Files that the report of a visit reads: book, site, system, its visits up to this one.
fn read_by(book: &Book, site: &Site, system: &System, number: usize) -> BTreeSet<FileId> {
    let visits = system.visits.iter().take(number + 1);
    [book.file, site.file, system.file]
        .into_iter()
        .chain(visits.flat_map(|visit| visit.files.iter().copied()))
        .collect()
}

/// Tells every character of the notes that the report could not print.
#[cfg(feature = "pdf")]
fn tell_unprintable(
    printable: &[crate::text::Span],
    sources: &Sources,
    diagnostics: &mut Diagnostics,
) {
    use crate::report::glyphs::unprintable;
    use crate::text::Diagnostic;
    for span in printable {
        let text = sources.text(*span);
        let found = unprintable(&text.replace('\r', "\n"));
        for (at, character) in found.into_iter().take(3) {
            diagnostics.push(
                Diagnostic::error(
                    "character-unprintable",
                    span.part(at..at + character.len_utf8()),
                    format!("no shipped font can print U+{:04X}", u32::from(character)),
                )
                .here("this character")
                .why("it would be missing in the report")
                .cure("write it in other letters"),
            );
        }
    }
}

#[cfg(not(feature = "pdf"))]
fn tell_unprintable(_: &[crate::text::Span], _: &Sources, _: &mut Diagnostics) {}

impl Target {
    /// Whether a path lies in it.
    pub fn holds(&self, path: &str) -> bool {
        self.path.is_empty()
            || path == self.path
            || path
                .strip_prefix(&self.path)
                .is_some_and(|rest| rest.starts_with('/'))
    }
}

impl Loaded {
    /// What is told of a part of the book: of its files, and of those above that it depends on.
    pub fn diagnostics_of(&self, target: &Target) -> Diagnostics {
        let mut list = self.diagnostics.clone();
        list.retain(|diagnostic| {
            let path = &self.sources.get(diagnostic.primary.span.file).path;
            let above = path.rsplit_once('/').map_or("", |(folder, _)| folder);
            target.holds(path) || above.is_empty() || target.path.starts_with(&format!("{above}/"))
        });
        list
    }

    /// The visits of a part of the book.
    pub fn visits_of(&self, target: &Target) -> Vec<(&Site, &System, usize)> {
        visits(&self.book)
            .into_iter()
            .filter(|(_, system, number)| {
                let path = &system.visits[*number].path;
                target.holds(path)
            })
            .collect()
    }

    /// What to say, and to return, where errors of the notes leave gaps in what a command shows.
    pub fn gaps(&self, target: &Target) -> Option<String> {
        let errors = self.diagnostics_of(target).errors();
        (errors > 0).then(|| {
            format!(
                "error: the notes have errors ({errors}); what could not be read is missing here\n  = help: `rimebook check` tells them all\n"
            )
        })
    }

    /// The systems of a part of the book, each with the number of its last visit there.
    pub fn last_visits_of(&self, target: &Target) -> Vec<(&Site, &System, usize)> {
        let mut last: Vec<(&Site, &System, usize)> = Vec::new();
        for visit in self.visits_of(target) {
            match last.last_mut() {
                Some(known) if known.1.path == visit.1.path => *known = visit,
                _ => last.push(visit),
            }
        }
        last
    }

    /// Errors in files that the report of a visit reads, and in logs of those visits.
    pub fn errors_against(&self, site: &Site, system: &System, number: usize) -> Diagnostics {
        let files = read_by(&self.book, site, system, number);
        let folders: Vec<String> = system
            .visits
            .iter()
            .take(number + 1)
            .map(|visit| format!("{}/", visit.path))
            .collect();
        let mut list = self.diagnostics.clone();
        list.retain(|diagnostic| {
            let file = diagnostic.primary.span.file;
            let path = &self.sources.get(file).path;
            diagnostic.severity == Severity::Error
                && (files.contains(&file) || folders.iter().any(|folder| path.starts_with(folder)))
        });
        list
    }
}
