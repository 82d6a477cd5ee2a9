//! The folders and files of a book on disk: which are sites, systems and visits, and what lies in them.

use crate::text::{Diagnostic, Diagnostics, FileId, Source, Sources, Span, nearest, or_list};
use crate::vocabulary::FileKind;
use jiff::civil::Date;
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::io;
use std::path::{Path, PathBuf};
use std::string::FromUtf8Error;

/// Finds the root of the book that holds a path: the nearest folder upwards with a `rimebook.toml`.
pub fn find_root(path: &Path) -> io::Result<Option<PathBuf>> {
    let path = path.canonicalize()?;
    let start = if path.is_dir() {
        path.as_path()
    } else {
        path.parent().unwrap_or(&path)
    };
    Ok(start
        .ancestors()
        .find(|folder| folder.join(FileKind::Book.file_name()).is_file())
        .map(Path::to_path_buf))
}

/// What is known of a file that is not read as text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileFact {
    /// Length in bytes.
    pub length: u64,
    /// Whether it is a link, which may lead out of the book.
    pub link: bool,
    /// Its first bytes, up to 16.
    pub head: Vec<u8>,
}

/// The files of a book.
#[derive(Debug, Default)]
pub struct Folder {
    /// Text files, by path.
    pub texts: BTreeMap<String, FileId>,
    /// Every file, by path from the root.
    pub files: BTreeMap<String, FileFact>,
    /// Text files whose bytes are not text.
    pub unreadable: Vec<FileId>,
}

/// Name of a visit's folder: its day, and its number on that day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct VisitName {
    /// The day it began.
    pub date: Date,
    /// Number on that day, from 1.
    pub number: u8,
}

impl VisitName {
    /// Reads `2026-02-03` or `2026-02-03-2`.
    pub fn of(name: &str) -> Option<Self> {
        let (date, number) = match name.get(10..) {
            Some("") => (name, 1),
            Some(rest) => (name.get(..10)?, rest.strip_prefix('-')?.parse().ok()?),
            None => return None,
        };
        let date = date.parse().ok()?;
        (number >= 1).then_some(Self { date, number })
    }
}

const SKIPPED: [&str; 2] = ["reports", "target"];

/// Reads every file of a book.
pub fn read_folder(
    root: &Path,
    sources: &mut Sources,
    diagnostics: &mut Diagnostics,
) -> io::Result<Folder> {
    let mut folder = Folder::default();
    let walk = walkdir::WalkDir::new(root)
        .min_depth(1)
        .max_depth(6)
        .sort_by_file_name()
        .into_iter()
        .filter_entry(|entry| {
            let name = entry.file_name().to_string_lossy();
            let skipped = entry.depth() == 1 && SKIPPED.contains(&name.as_ref());
            !skipped && !name.starts_with('.')
        });
    let entries = walk
        .collect::<Result<Vec<_>, _>>()
        .map_err(io::Error::from)?;
    let read = entries.par_iter().map(|entry| read_file(root, entry));
    let read = read.collect::<io::Result<Vec<_>>>()?;
    // Maps are made of whole lists, which come nearly in their order, not name by name.
    let (mut files, mut texts) = (Vec::new(), Vec::new());
    for file in read.into_iter().flatten() {
        files.push((file.path.clone(), file.fact));
        let text = match file.text {
            None => continue,
            Some(Ok(source)) => sources.add(source),
            Some(Err(error)) => {
                let text = add_unreadable(&file.path, &error, sources, diagnostics);
                folder.unreadable.push(text);
                text
            }
        };
        texts.push((file.path, text));
    }
    folder.files = files.into_iter().collect();
    folder.texts = texts.into_iter().collect();
    Ok(folder)
}

/// A file of the walk.
struct FileRead {
    path: String,
    fact: FileFact,
    /// Its text, if it is meant to be one.
    text: Option<Result<Source, FromUtf8Error>>,
}

/// Reads a file; none for a folder, and for a pipe or a device, which would never end.
fn read_file(root: &Path, entry: &walkdir::DirEntry) -> io::Result<Option<FileRead>> {
    let link = entry.path_is_symlink();
    if entry.file_type().is_dir() || (!link && !entry.file_type().is_file()) {
        return Ok(None);
    }
    let relative = entry.path().strip_prefix(root).unwrap_or(entry.path());
    let path = relative
        .components()
        .map(|part| part.as_os_str().to_string_lossy())
        .collect::<Vec<_>>()
        .join("/");
    if link || !is_text(&path) {
        let fact = FileFact {
            length: entry.metadata().map_or(0, |metadata| metadata.len()),
            link,
            head: if link {
                Vec::new()
            } else {
                head(entry.path())?
            },
        };
        let text = None;
        return Ok(Some(FileRead { path, fact, text }));
    }
    let bytes = std::fs::read(entry.path())?;
    let fact = FileFact {
        length: bytes.len() as u64,
        link,
        head: bytes.iter().copied().take(16).collect(),
    };
    let text = Some(text_of(&path, bytes));
    Ok(Some(FileRead { path, fact, text }))
}

fn is_text(path: &str) -> bool {
    [".toml", ".md", ".csv"]
        .iter()
        .any(|ending| path.to_lowercase().ends_with(ending))
}

fn head(path: &Path) -> io::Result<Vec<u8>> {
    use std::io::Read;
    let mut bytes = Vec::with_capacity(16);
    std::fs::File::open(path)?
        .take(16)
        .read_to_end(&mut bytes)?;
    Ok(bytes)
}

fn text_of(path: &str, bytes: Vec<u8>) -> Result<Source, FromUtf8Error> {
    let text = String::from_utf8(bytes)?;
    let text = text
        .strip_prefix('\u{feff}')
        .map(str::to_owned)
        .unwrap_or(text);
    Ok(Source::new(path.to_owned(), text))
}

/// Keeps what can be read of a file whose bytes are not text, and tells where it ends.
fn add_unreadable(
    path: &str,
    error: &FromUtf8Error,
    sources: &mut Sources,
    diagnostics: &mut Diagnostics,
) -> FileId {
    let valid = error.utf8_error().valid_up_to();
    let byte = error.as_bytes().get(valid).copied().unwrap_or(0);
    let wide =
        error.as_bytes().starts_with(&[0xff, 0xfe]) || error.as_bytes().starts_with(&[0xfe, 0xff]);
    let mut text = String::from_utf8_lossy(&error.as_bytes()[..valid]).into_owned();
    text.push('\u{fffd}');
    let file = sources.add(Source::new(path.to_owned(), text));
    let saved = if wide {
        "it is saved as UTF-16"
    } else {
        "it is saved in an older encoding"
    };
    diagnostics.push(
        Diagnostic::error(
            "not-utf-8",
            Span::new(file, valid..valid + '\u{fffd}'.len_utf8()),
            "this file is not saved as UTF-8",
        )
        .here(format!("byte {valid} is 0x{byte:02X}; {saved}"))
        .why("letters such as ° and ± would be read wrongly, so nothing of the file is used")
        .cure("save it again with the encoding UTF-8"),
    );
    file
}

/// A folder of the book with the names of what lies directly in it.
#[derive(Debug, Default)]
pub(super) struct Node {
    pub folders: BTreeMap<String, Node>,
    pub files: Vec<String>,
}

impl Node {
    /// The tree of the paths of a book.
    pub fn tree(folder: &Folder) -> Self {
        let mut root = Self::default();
        for path in folder.files.keys() {
            let mut node = &mut root;
            let mut parts = path.split('/').peekable();
            while let Some(part) = parts.next() {
                if parts.peek().is_none() {
                    node.files.push(part.to_owned());
                } else {
                    node = node.folders.entry(part.to_owned()).or_default();
                }
            }
        }
        root
    }

    /// Whether a file of a kind lies in it.
    pub fn has(&self, kind: FileKind) -> bool {
        self.files.iter().any(|name| name == kind.file_name())
    }

    fn has_visit_notes(&self) -> bool {
        VISIT_FILES.iter().any(|kind| self.has(*kind))
    }

    /// Whether it is meant as a visit: it has a visit's files, or a name that begins like a date.
    pub fn is_visit(&self, name: &str) -> bool {
        let like_date = name.len() >= 5
            && name.bytes().take(4).all(|byte| byte.is_ascii_digit())
            && !name.as_bytes()[4].is_ascii_alphanumeric();
        self.has_visit_notes() || like_date
    }

    /// Whether it is meant as a system.
    pub fn is_system(&self) -> bool {
        self.has(FileKind::System) || self.folders.iter().any(|(name, node)| node.is_visit(name))
    }

    /// Whether it is meant as a site.
    pub fn is_site(&self) -> bool {
        self.has(FileKind::Site) || self.folders.values().any(Node::is_system)
    }
}

/// Files of a visit.
pub(super) const VISIT_FILES: [FileKind; 4] = [
    FileKind::Visit,
    FileKind::Refrigerant,
    FileKind::Readings,
    FileKind::Findings,
];

/// Tells that a mandatory file is not there; the place is the file that should be.
pub(super) fn missing(
    path: &str,
    why: &str,
    sources: &mut Sources,
    diagnostics: &mut Diagnostics,
) -> FileId {
    let file = sources.add(Source::new(path.to_owned(), String::new()));
    let name = path.rsplit('/').next().unwrap_or(path);
    diagnostics.push(
        Diagnostic::error(
            "file-missing",
            Span::file_start(file),
            format!("`{name}` is missing"),
        )
        .here("should be here")
        .why(why)
        .cure(format!("make the file {path}")),
    );
    file
}

/// Tells of note files whose name is none of those that are read in their folder.
pub(super) fn strangers(
    path: &str,
    node: &Node,
    expected: &[FileKind],
    folder: &Folder,
    diagnostics: &mut Diagnostics,
) {
    let known: Vec<&'static str> = expected.iter().map(|kind| kind.file_name()).collect();
    for name in &node.files {
        let toml = name.to_lowercase().ends_with(".toml");
        let markdown = name.to_lowercase().ends_with(".md");
        if !(toml || markdown) || known.contains(&name.as_str()) {
            continue;
        }
        let near = nearest(name, &known);
        if markdown && near.is_none() {
            continue;
        }
        let full = if path.is_empty() {
            name.clone()
        } else {
            format!("{path}/{name}")
        };
        let Some(file) = folder.texts.get(&full) else {
            continue;
        };
        let diagnostic = Diagnostic::error(
            "file-unknown",
            Span::file_start(*file),
            format!("`{name}` is not a file that is read here"),
        )
        .here("nothing in it would reach the report");
        diagnostics.push(match near {
            Some(near) => diagnostic.cure(format!("did you mean `{near}`? Rename the file")),
            None => diagnostic.cure(format!("the files read here are {}", or_list(&known))),
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn visit_folders_are_days_with_a_number() {
        let name = VisitName::of("2026-02-03-2").unwrap();
        assert_eq!((name.date.day(), name.number), (3, 2));
        assert_eq!(VisitName::of("2026-02-03").unwrap().number, 1);
        for wrong in [
            "2026-02-30",
            "2026-2-3",
            "feb",
            "2026-02-03-",
            "2026-02-03-0",
        ] {
            assert_eq!(VisitName::of(wrong), None, "{wrong}");
        }
    }
}
