//! The typesetter's world: a fixed set of virtual files, and nothing else.
//!
//! The templates and fonts are part of the program; the report, its photographs and its logo are given
//! with each manuscript under fixed names. Whatever else a template might ask for does not exist: no
//! disk, no packages, no network, no clock. Names are fixed because the typesetter keeps each name
//! that it has ever seen for the life of the process.

use std::collections::BTreeMap;
use std::sync::LazyLock;

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
const MAIN: &str = "report.typ";
const FORMULAS: &str = "formulas.typ";
const GREEK: &str = include_str!("../../templates/greek.typ");

/// The templates, by name.
pub const TEMPLATES: &[(&str, &str)] = &[
    (MAIN, include_str!("../../templates/report.typ")),
    ("look.typ", include_str!("../../templates/look.typ")),
    ("words.typ", include_str!("../../templates/words.typ")),
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

/// The world of one report.
#[derive(Debug)]
pub struct ReportWorld {
    main: FileId,
    formulas: Source,
    files: BTreeMap<String, Bytes>,
}

impl ReportWorld {
    /// Lays out the virtual files of one report.
    ///
    /// `report` and `attachment` are JSON; `formulas` is Typst source from our own static tables and
    /// never holds a word of the notes.
    pub fn new(
        report: String,
        attachment: String,
        formulas: &str,
        photographs: &[Vec<u8>],
        logo: Option<&Logo>,
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
            main: id(MAIN),
            formulas: Source::new(id(FORMULAS), format!("{GREEK}\n{formulas}")),
            files,
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
        &BOOK
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let name = name(id)?;
        if name == FORMULAS {
            return Ok(self.formulas.clone());
        }
        let source = SOURCES.get(name).cloned();
        source.ok_or_else(|| FileError::NotFound(name.into()))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let name = name(id)?;
        let file = self.files.get(name).cloned();
        file.ok_or_else(|| FileError::NotFound(name.into()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        fonts().get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn world() -> ReportWorld {
        ReportWorld::new("{}".into(), "[]".into(), "", &[vec![1]], None)
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
