//! All notes of a book: its folders as sites, systems and visits, each file read by itself.

use crate::notes::folder::{Folder, Node, VISIT_FILES, VisitName, missing, strangers};
use crate::notes::table_reader::{FileReader, TableReader};
use crate::notes::{
    BookNote, FindingsNote, ReadingsNote, RefrigerantNote, SiteNote, SystemNote, VisitNote,
    findings_note, toml_text,
};
use crate::text::{Diagnostic, Diagnostics, FileId, Sources, Span};
use crate::vocabulary::{
    FileKind, Table, book_file, readings_file, refrigerant_file, site_file, system_file, visit_file,
};
use rayon::prelude::*;
use std::collections::BTreeMap;

/// A file's note, if it could be read at all.
#[derive(Clone, Debug)]
pub struct FileNote<T> {
    /// The file; where it is missing, a mark in its place.
    pub file: FileId,
    /// What it says.
    pub note: Option<T>,
}

/// All notes of a book.
#[derive(Debug)]
pub struct Notes {
    /// `rimebook.toml`.
    pub book: FileNote<BookNote>,
    /// The sites, by folder name.
    pub sites: Vec<SiteNotes>,
    /// The files on disk.
    pub folder: Folder,
    /// Text of the notes that may reach an output and holds more than plain ASCII.
    pub printable: Vec<Span>,
}

/// The notes of a site.
#[derive(Debug)]
pub struct SiteNotes {
    /// Folder name.
    pub name: String,
    /// `site.toml`.
    pub site: FileNote<SiteNote>,
    /// Its systems, by folder name.
    pub systems: Vec<SystemNotes>,
}

/// The notes of a system.
#[derive(Debug)]
pub struct SystemNotes {
    /// Folder name.
    pub name: String,
    /// `system.toml`.
    pub system: FileNote<SystemNote>,
    /// Its visits, by day and number.
    pub visits: Vec<VisitNotes>,
}

/// The notes of a visit.
#[derive(Debug)]
pub struct VisitNotes {
    /// Day and number.
    pub name: VisitName,
    /// Path of the folder from the root.
    pub path: String,
    /// `visit.toml`.
    pub visit: FileNote<VisitNote>,
    /// `refrigerant.toml`, if it is there.
    pub refrigerant: Option<FileNote<RefrigerantNote>>,
    /// `readings.toml`, if it is there.
    pub readings: Option<FileNote<ReadingsNote>>,
    /// `findings.md`, if it is there.
    pub findings: Option<FileNote<FindingsNote>>,
}

impl VisitNotes {
    /// Files of the visit that the report reads.
    pub fn files(&self) -> Vec<FileId> {
        std::iter::once(self.visit.file)
            .chain(self.refrigerant.iter().map(|f| f.file))
            .chain(self.readings.iter().map(|f| f.file))
            .chain(self.findings.iter().map(|f| f.file))
            .collect()
    }
}

struct BookReader<'r> {
    folder: &'r Folder,
    sources: &'r Sources,
    /// Marks in the place of mandatory files that are missing, by path.
    absent: &'r BTreeMap<String, FileId>,
    diagnostics: Diagnostics,
    printable: Vec<Span>,
}

/// Reads all files of a folder to notes.
pub fn read_notes(folder: Folder, sources: &mut Sources, diagnostics: &mut Diagnostics) -> Notes {
    let tree = Node::tree(&folder);
    let mut absent = BTreeMap::new();
    mark_absent(&tree, &folder, sources, diagnostics, &mut absent);
    let sources = &*sources;
    let mut reader = BookReader {
        folder: &folder,
        sources,
        absent: &absent,
        diagnostics: Diagnostics::default(),
        printable: Vec::new(),
    };
    let book = reader.toml("", FileKind::Book, &book_file::top::TABLE, BookNote::read);
    let book = reader.mandatory(book, "", FileKind::Book);
    strangers(
        "",
        &tree,
        &[FileKind::Book],
        reader.folder,
        &mut reader.diagnostics,
    );
    let sites = tree.folders.iter().filter(|(_, node)| node.is_site());
    let sites = reader.on_all_cores(sites.collect(), |reader, (name, node)| {
        reader.site(name, node)
    });
    let systems = sites.iter().map(|site| site.systems.len()).sum::<usize>();
    if systems == 0 {
        reader.diagnostics.push(
            Diagnostic::error(
                "book-empty",
                Span::file_start(book.file),
                "this book holds no system",
            )
            .here("the root of the book")
            .why("there is nothing to check or to report")
            .cure("make a folder for the site with site.toml, in it one for the system with system.toml, in that one for the visit, named by its day"),
        );
    }
    let BookReader {
        diagnostics: told,
        printable,
        ..
    } = reader;
    diagnostics.append(told);
    Notes {
        book,
        sites,
        folder,
        printable,
    }
}

/// Marks every mandatory file that is missing, before the files are read on all cores.
fn mark_absent(
    tree: &Node,
    folder: &Folder,
    sources: &mut Sources,
    diagnostics: &mut Diagnostics,
    absent: &mut BTreeMap<String, FileId>,
) {
    let mut mark = |path: &str, kind: FileKind, why: &str| {
        let path = join(path, kind);
        if !folder.texts.contains_key(&path) {
            let file = missing(&path, why, sources, diagnostics);
            absent.insert(path, file);
        }
    };
    mark("", FileKind::Book, "it names the contractor and the people");
    for (site, node) in tree.folders.iter().filter(|(_, node)| node.is_site()) {
        mark(
            site,
            FileKind::Site,
            "it says who operates the systems, in which time zone and under which rules",
        );
        for (system, node) in node.folders.iter().filter(|(_, node)| node.is_system()) {
            let path = format!("{site}/{system}");
            mark(
                &path,
                FileKind::System,
                "it says which refrigerant the system holds and how much",
            );
            for (visit, _) in node
                .folders
                .iter()
                .filter(|(name, node)| node.is_visit(name))
            {
                mark(
                    &format!("{path}/{visit}"),
                    FileKind::Visit,
                    "it says who was there, when and why",
                );
            }
        }
    }
}

impl<'r> BookReader<'r> {
    /// A reader of the same files for another core.
    fn beside(&self) -> BookReader<'r> {
        BookReader {
            folder: self.folder,
            sources: self.sources,
            absent: self.absent,
            diagnostics: Diagnostics::default(),
            printable: Vec::new(),
        }
    }

    /// Takes up what another reader found.
    fn take_up(&mut self, mut other: BookReader<'_>) {
        self.diagnostics.append(other.diagnostics);
        self.printable.append(&mut other.printable);
    }

    /// Reads parts on all cores, in their order.
    fn on_all_cores<P: Send, N: Send>(
        &mut self,
        parts: Vec<P>,
        read: impl Fn(&mut BookReader<'r>, P) -> N + Sync,
    ) -> Vec<N> {
        let this = &*self;
        let read: Vec<(N, BookReader)> = parts
            .into_par_iter()
            .map(|part| {
                let mut reader = this.beside();
                (read(&mut reader, part), reader)
            })
            .collect();
        let keep = |(notes, reader)| {
            self.take_up(reader);
            notes
        };
        read.into_iter().map(keep).collect()
    }

    fn site(&mut self, name: &str, node: &Node) -> SiteNotes {
        let site = self.toml(name, FileKind::Site, &site_file::top::TABLE, SiteNote::read);
        let site = self.mandatory(site, name, FileKind::Site);
        strangers(
            name,
            node,
            &[FileKind::Site],
            self.folder,
            &mut self.diagnostics,
        );
        let systems = node.folders.iter().filter(|(_, node)| node.is_system());
        let systems = self.on_all_cores(systems.collect(), |reader, (system, node)| {
            reader.system(&format!("{name}/{system}"), system, node)
        });
        SiteNotes {
            name: name.to_owned(),
            site,
            systems,
        }
    }

    fn system(&mut self, path: &str, name: &str, node: &Node) -> SystemNotes {
        let system = self.toml(
            path,
            FileKind::System,
            &system_file::top::TABLE,
            SystemNote::read,
        );
        let system = self.mandatory(system, path, FileKind::System);
        strangers(
            path,
            node,
            &[FileKind::System],
            self.folder,
            &mut self.diagnostics,
        );
        let mut visits = Vec::new();
        for (folder, node) in node
            .folders
            .iter()
            .filter(|(name, node)| node.is_visit(name))
        {
            visits.extend(self.visit(&format!("{path}/{folder}"), folder, node));
        }
        visits.sort_by_key(|visit| visit.name);
        SystemNotes {
            name: name.to_owned(),
            system,
            visits,
        }
    }

    fn visit(&mut self, path: &str, folder: &str, node: &Node) -> Option<VisitNotes> {
        let visit = self.toml(
            path,
            FileKind::Visit,
            &visit_file::top::TABLE,
            VisitNote::read,
        );
        let visit = self.mandatory(visit, path, FileKind::Visit);
        let refrigerant = self.toml(
            path,
            FileKind::Refrigerant,
            &refrigerant_file::top::TABLE,
            RefrigerantNote::read,
        );
        let readings = self.toml(
            path,
            FileKind::Readings,
            &readings_file::top::TABLE,
            ReadingsNote::read,
        );
        let findings = self.findings(path);
        strangers(path, node, &VISIT_FILES, self.folder, &mut self.diagnostics);
        let Some(name) = VisitName::of(folder) else {
            self.diagnostics.push(
                Diagnostic::error(
                    "visit-name-not-a-date",
                    Span::file_start(visit.file),
                    format!("the folder `{folder}` is not named after a day"),
                )
                .here("a visit's folder")
                .why("visits are put in order by their folders' names")
                .cure("name it year-month-day, such as 2026-02-03; a second visit that day 2026-02-03-2"),
            );
            return None;
        };
        Some(VisitNotes {
            name,
            path: path.to_owned(),
            visit,
            refrigerant,
            readings,
            findings,
        })
    }

    fn mandatory<T>(&self, found: Option<FileNote<T>>, path: &str, kind: FileKind) -> FileNote<T> {
        found.unwrap_or_else(|| FileNote {
            file: self
                .absent
                .get(&join(path, kind))
                .copied()
                .unwrap_or(FileId(0)),
            note: None,
        })
    }

    fn toml<T>(
        &mut self,
        path: &str,
        kind: FileKind,
        table: &'static Table,
        read: impl Fn(TableReader<'_>, &mut FileReader<'_, '_>) -> T,
    ) -> Option<FileNote<T>> {
        let file = *self.folder.texts.get(&join(path, kind))?;
        if self.folder.unreadable.contains(&file) {
            return Some(FileNote { file, note: None });
        }
        let source = self.sources.get(file);
        let mut diagnostics = Diagnostics::default();
        let mut room = String::new();
        let text = toml_text::parse(file, source, &mut room, &mut diagnostics);
        let mut reader = FileReader {
            file,
            source,
            text: &text,
            diagnostics,
            printable: std::mem::take(&mut self.printable),
        };
        let note = read(reader.top(table), &mut reader);
        self.printable = reader.printable;
        self.diagnostics.append(reader.diagnostics);
        Some(FileNote {
            file,
            note: Some(note),
        })
    }

    fn findings(&mut self, path: &str) -> Option<FileNote<FindingsNote>> {
        let file = *self.folder.texts.get(&join(path, FileKind::Findings))?;
        if self.folder.unreadable.contains(&file) {
            return Some(FileNote { file, note: None });
        }
        let source = self.sources.get(file);
        let note = findings_note::read(file, source, &mut self.diagnostics);
        let lines = public_lines(file, source).into_iter();
        self.printable
            .extend(lines.filter(|line| is_unusual(&source.text[line.range()])));
        Some(FileNote {
            file,
            note: Some(note),
        })
    }
}

/// Whether a text holds anything but plain letters, figures and signs, which every font can print.
pub(super) fn is_unusual(text: &str) -> bool {
    text.bytes()
        .any(|byte| !byte.is_ascii() || (byte < 0x20 && byte != b'\n' && byte != b'\r'))
}

/// Lines of the findings that are not marked private and are no comment.
fn public_lines(file: FileId, source: &crate::text::Source) -> Vec<Span> {
    let count = source.text.lines().count();
    let mut in_comment = false;
    (1..=count)
        .map(|line| source.line(line))
        .filter(|range| {
            let text = &source.text[range.clone()];
            let was_in_comment = in_comment;
            in_comment =
                (in_comment || text.trim_start().starts_with("<!--")) && !text.contains("-->");
            !was_in_comment
        })
        .filter(|range| {
            let text = source.text[range.clone()].trim_start();
            let field = text.trim_start_matches(['-', '*', '+']).trim_start();
            !field.starts_with("private:") && !text.starts_with("<!--")
        })
        .map(|range| Span::new(file, range))
        .collect()
}

fn join(path: &str, kind: FileKind) -> String {
    if path.is_empty() {
        kind.file_name().to_owned()
    } else {
        format!("{path}/{}", kind.file_name())
    }
}
