//! The typesetter's world: a fixed set of virtual files, and nothing else.
//!
//! The templates and fonts are part of the program; the report, its photographs and its logo are given
//! with each manuscript under fixed names. Whatever else a template might ask for does not exist: no
//! disk, no packages, no network, no clock. Names are fixed because the typesetter keeps each name
//! that it has ever seen for the life of the process.

use std::collections::BTreeMap;
use std::sync::{Arc, LazyLock};

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

/// Name of the report's data as the template reads it.
pub const REPORT: &str = "report.json";
/// Name of the data attached to the PDF.
pub const ATTACHMENT: &str = "rimebook.json";
/// Template of the report of a visit.
pub const MAIN: &str = "report.typ";
/// Template of the history of a system.
pub const HISTORY: &str = "history.typ";
/// Template of the records of a system.
pub const RECORDS: &str = "records.typ";
const FORMULAS: &str = "formulas.typ";
const GREEK: &str = include_str!("../../templates/greek.typ");

/// The templates, by name.
pub const TEMPLATES: &[(&str, &str)] = &[
    (MAIN, include_str!("../../templates/report.typ")),
    (HISTORY, include_str!("../../templates/history.typ")),
    (RECORDS, include_str!("../../templates/records.typ")),
    ("legal.typ", include_str!("../../templates/legal.typ")),
    ("sheet.typ", include_str!("../../templates/sheet.typ")),
    (
        "letterhead.typ",
        include_str!("../../templates/letterhead.typ"),
    ),
    ("look.typ", include_str!("../../templates/look.typ")),
    ("markdown.typ", include_str!("../../templates/markdown.typ")),
    ("table.typ", include_str!("../../templates/table.typ")),
    ("state.typ", include_str!("../../templates/state.typ")),
    ("chart.typ", include_str!("../../templates/chart.typ")),
    (
        "schematic.typ",
        include_str!("../../templates/schematic.typ"),
    ),
    (
        "first-page.typ",
        include_str!("../../templates/first-page.typ"),
    ),
    ("findings.typ", include_str!("../../templates/findings.typ")),
    ("tests.typ", include_str!("../../templates/tests.typ")),
    ("parts.typ", include_str!("../../templates/parts.typ")),
    ("appendix.typ", include_str!("../../templates/appendix.typ")),
];

const FONTS: [&[u8]; 3] = [
    include_bytes!("../../templates/fonts/SourceSans3.ttf"),
    include_bytes!("../../templates/fonts/SourceSans3-Italic.ttf"),
    include_bytes!("../../templates/fonts/NewCMMath-Book.otf"),
];

/// The shipped fonts, parsed once.
pub fn fonts() -> &'static [Font] {
    static PARSED: LazyLock<Vec<Font>> = LazyLock::new(|| {
        let parse = |data: &&'static [u8]| Font::new(Bytes::new(*data), 0);
        FONTS.iter().filter_map(parse).collect()
    });
    &PARSED
}

static LIBRARY: LazyLock<LazyHash<Library>> =
    LazyLock::new(|| LazyHash::new(<Library as LibraryExt>::default()));

static BOOK: LazyLock<LazyHash<FontBook>> =
    LazyLock::new(|| LazyHash::new(FontBook::from_fonts(fonts())));

static SOURCES: LazyLock<BTreeMap<&str, Source>> = LazyLock::new(|| {
    let source = |&(name, text): &(&'static str, &str)| (name, Source::new(id(name), text.into()));
    TEMPLATES.iter().map(source).collect()
});

/// The logo of the contractor.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Logo {
    /// An SVG file.
    Svg(Vec<u8>),
    /// A PNG file.
    Png(Vec<u8>),
}

impl Logo {
    /// Name of the virtual file.
    pub fn name(&self) -> &'static str {
        match self {
            Self::Svg(_) => "logo.svg",
            Self::Png(_) => "logo.png",
        }
    }

    fn bytes(&self) -> &[u8] {
        match self {
            Self::Svg(bytes) | Self::Png(bytes) => bytes,
        }
    }
}

/// Parts of the template that a contractor has made: they stand for ours of the same name, and may
/// load what else lies in their folder.
#[derive(Debug)]
pub struct OwnTemplates {
    sources: BTreeMap<String, Source>,
    files: BTreeMap<String, Bytes>,
    fonts: Vec<Font>,
    book: LazyHash<FontBook>,
}

impl OwnTemplates {
    /// Takes files by their path in the folder. Errors: a part that is no text, or that names a plugin.
    pub fn of(files: BTreeMap<String, Vec<u8>>) -> Result<Self, String> {
        let mut own = (BTreeMap::new(), BTreeMap::new(), fonts().to_vec());
        for (path, bytes) in files {
            let ending = path.rsplit_once('.').map_or("", |(_, ending)| ending);
            match ending.to_lowercase().as_str() {
                "typ" => {
                    let text = String::from_utf8(bytes)
                        .map_err(|_| format!("{path} is not text in UTF-8"))?;
                    if text.contains("plugin") {
                        return Err(format!("{path} names a plugin; templates run no programs"));
                    }
                    let place = VirtualPath::new(&path)
                        .map_err(|_| format!("{path} is no path that a template can name"))?;
                    let id = RootedPath::new(VirtualRoot::Project, place).intern();
                    own.0.insert(path, Source::new(id, text));
                }
                "ttf" | "otf" => own.2.extend(Font::iter(Bytes::new(bytes))),
                "wasm" => return Err(format!("{path} is a plugin; templates run no programs")),
                _ => {
                    own.1.insert(path, Bytes::new(bytes));
                }
            }
        }
        let (sources, files, fonts) = own;
        Ok(Self {
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            sources,
            files,
            fonts,
        })
    }
}

/// The world of one report.
#[derive(Debug)]
pub struct ReportWorld {
    main: FileId,
    formulas: Source,
    files: BTreeMap<String, Bytes>,
    own: Option<Arc<OwnTemplates>>,
}

impl ReportWorld {
    /// Lays out the virtual files of one report.
    ///
    /// `main` is the template to begin with; `report` and `attachment` are JSON; `formulas` is Typst
    /// source from our own static tables and never holds a word of the notes.
    pub fn new(
        main: &'static str,
        report: String,
        attachment: String,
        formulas: &str,
        photographs: &[Vec<u8>],
        logo: Option<&Logo>,
        own: Option<Arc<OwnTemplates>>,
    ) -> Self {
        let mut files = BTreeMap::from([
            (REPORT.to_owned(), Bytes::from_string(report)),
            (ATTACHMENT.to_owned(), Bytes::from_string(attachment)),
        ]);
        if let Some(logo) = logo {
            files.insert(logo.name().to_owned(), Bytes::new(logo.bytes().to_vec()));
        }
        for (number, jpeg) in (1..).zip(photographs) {
            let name = format!("photo/{number}.jpg");
            files.insert(name, Bytes::new(jpeg.clone()));
        }
        Self {
            main: id(main),
            formulas: Source::new(id(FORMULAS), format!("{GREEK}\n{formulas}")),
            files,
            own,
        }
    }
}

/// The identity of a name of ours.
#[expect(clippy::expect_used, reason = "every name is a constant of ours")]
fn id(name: &str) -> FileId {
    let path = VirtualPath::new(name).expect("a constant name is a valid path");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

/// The name of a file of this project; a file of a package has none.
fn name(id: FileId) -> FileResult<&'static str> {
    let path = id.get();
    match path.root() {
        VirtualRoot::Project => Ok(path.vpath().get_without_slash()),
        VirtualRoot::Package(_) => Err(FileError::AccessDenied),
    }
}

impl World for ReportWorld {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        self.own.as_ref().map_or(&BOOK, |own| &own.book)
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let name = name(id)?;
        if name == FORMULAS {
            return Ok(self.formulas.clone());
        }
        let own = self.own.as_ref().and_then(|own| own.sources.get(name));
        let source = own.or_else(|| SOURCES.get(name)).cloned();
        source.ok_or_else(|| FileError::NotFound(name.into()))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let name = name(id)?;
        let own = || self.own.as_ref().and_then(|own| own.files.get(name));
        let file = self.files.get(name).or_else(own).cloned();
        file.ok_or_else(|| FileError::NotFound(name.into()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        match &self.own {
            Some(own) => own.fonts.get(index).cloned(),
            None => fonts().get(index).cloned(),
        }
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn world() -> ReportWorld {
        ReportWorld::new(MAIN, "{}".into(), "[]".into(), "", &[vec![1]], None, None)
    }

    #[test]
    fn all_shipped_fonts_can_be_parsed() {
        assert_eq!(fonts().len(), FONTS.len());
    }

    #[test]
    fn only_the_fixed_names_exist() {
        let world = world();
        for known in [REPORT, ATTACHMENT, "photo/1.jpg"] {
            assert!(world.file(id(known)).is_ok(), "{known}");
        }
        for unknown in ["photo/2.jpg", "logo.svg", "etc/passwd", "Cargo.toml", ""] {
            assert!(world.file(id(unknown)).is_err(), "{unknown}");
        }
        assert!(world.source(id("look.typ")).is_ok());
        assert!(world.source(id("other.typ")).is_err());
        assert!(world.today(None).is_none());
    }

    #[test]
    fn no_template_evaluates_text_or_reaches_outside() {
        for (name, text) in TEMPLATES.iter().chain(&[("greek.typ", GREEK)]) {
            for denied in ["eval(", "plugin(", "read(", "@", "sys.", "datetime.today"] {
                assert!(!text.contains(denied), "{name} holds `{denied}`");
            }
        }
    }
}
