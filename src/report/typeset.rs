//! From a report as plain data to the bytes of its PDF.
//!
//! The PDF keeps PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1) together, is tagged, and carries
//! the data of the notes as an attachment. The same manuscript gives the same bytes.

use std::fmt;
use std::sync::Arc;
use std::time::Duration;

use serde::Serialize;
use typst::diag::{SourceDiagnostic, SourceResult, Warned};
use typst::foundations::Smart;
use typst::{World, WorldExt};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::report::data::ReportData;
use crate::report::history_data::HistoryReport;
use crate::report::packed::packed;
use crate::report::records_data::RecordsPack;
use crate::report::world::{HISTORY, Logo, MAIN, OwnTemplates, RECORDS, ReportWorld};

/// The kinds of document.
#[derive(Debug, Clone, Copy, Serialize)]
#[serde(untagged)]
pub enum Pages<'a> {
    /// The report of a visit.
    Visit(&'a ReportData),
    /// The history of a system or a site.
    History(&'a HistoryReport),
    /// The records of a system.
    Records(&'a RecordsPack),
}

impl Pages<'_> {
    fn main(self) -> &'static str {
        match self {
            Self::Visit(_) => MAIN,
            Self::History(_) => HISTORY,
            Self::Records(_) => RECORDS,
        }
    }
}

/// All that one report is typeset from.
#[derive(Debug, Clone, Copy)]
pub struct Manuscript<'a> {
    /// The document as plain data.
    pub data: Pages<'a>,
    /// The photographs as JPEG, in the order of their numbers, see `photograph::prepare`.
    pub photographs: &'a [Vec<u8>],
    /// The contractor's logo.
    pub logo: Option<&'a Logo>,
    /// Parts of the template of the contractor's own.
    pub own: Option<&'a Arc<OwnTemplates>>,
    /// Typst source that defines `formulas`, a dictionary of equations by id, from static tables only.
    pub formulas: &'a str,
    /// The notes' data as JSON, private parts left out.
    pub attachment: &'a str,
    /// What names this report for good: site, system and visit.
    pub ident: &'a str,
    /// Name and version of this program.
    pub creator: &'a str,
    /// How many later runs may reuse what this one worked out: 0 in a batch, some while watching.
    pub keep: usize,
}

/// A report in print.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Typeset {
    /// The PDF.
    pub pdf: Vec<u8>,
    /// What the typesetter found odd; a test demands that there is nothing.
    pub warnings: Vec<Fault>,
}

/// A fault of the template, never of the notes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// File, line and column in the templates, "findings.typ:12:3"; empty where there is none.
    pub place: String,
    /// What the typesetter says.
    pub message: String,
}

/// Why no PDF was made; an internal fault (exit code 70), since all that the notes can get wrong is
/// found before.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TypesetFailure {
    /// The faults, at least one.
    pub faults: Vec<Fault>,
}

impl fmt::Display for Fault {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.place.is_empty() {
            out.write_str(&self.message)
        } else {
            write!(out, "{}: {}", self.place, self.message)
        }
    }
}

impl fmt::Display for TypesetFailure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("the report could not be typeset")?;
        self.faults
            .iter()
            .try_for_each(|fault| write!(out, "\n  {fault}"))
    }
}

impl std::error::Error for TypesetFailure {}

impl From<String> for TypesetFailure {
    fn from(message: String) -> Self {
        let place = String::new();
        Self {
            faults: vec![Fault { place, message }],
        }
    }
}

/// Sets the report and exports it.
pub fn typeset(manuscript: &Manuscript) -> Result<Typeset, TypesetFailure> {
    let _eviction = Eviction(manuscript.keep);
    let world = ReportWorld::new(
        manuscript.data.main(),
        served(manuscript)?,
        manuscript.attachment.to_owned(),
        manuscript.formulas,
        manuscript.photographs,
        manuscript.logo,
        manuscript.own.cloned(),
    );
    let (world, compiled) = compiled(world, manuscript.own.is_some())?;
    let failure = |faults: &[SourceDiagnostic]| TypesetFailure {
        faults: faults.iter().map(|fault| told(&world, fault)).collect(),
    };
    let document = compiled.output.map_err(|faults| failure(&faults))?;
    let pdf =
        typst_pdf::pdf(&document, &options(manuscript)?).map_err(|faults| failure(&faults))?;
    let warnings = compiled.warnings.iter();
    Ok(Typeset {
        pdf: packed(&pdf)?,
        warnings: warnings.map(|warning| told(&world, warning)).collect(),
    })
}

/// Longest time that a contractor's own templates may take.
const OWN_LIMIT: Duration = Duration::from_mins(1);

type Compiled = Warned<SourceResult<PagedDocument>>;

/// Sets the pages; within a time limit where templates of others take part.
fn compiled(world: ReportWorld, limited: bool) -> Result<(ReportWorld, Compiled), TypesetFailure> {
    if !limited {
        let compiled = typst::compile(&world);
        return Ok((world, compiled));
    }
    let (done, waiting) = std::sync::mpsc::channel();
    std::thread::spawn(move || {
        let compiled = typst::compile(&world);
        // Nobody waits any more after the limit.
        let _ = done.send((world, compiled));
    });
    waiting.recv_timeout(OWN_LIMIT).map_err(|_| {
        TypesetFailure::from(format!(
            "the book's own templates took longer than {} s",
            OWN_LIMIT.as_secs()
        ))
    })
}

/// The data as the template reads it: the report, and what the manuscript says besides.
fn served(manuscript: &Manuscript) -> Result<String, TypesetFailure> {
    #[derive(Serialize)]
    struct Served<'a> {
        #[serde(flatten)]
        data: Pages<'a>,
        logo: Option<&'static str>,
    }
    let served = Served {
        data: manuscript.data,
        logo: manuscript.logo.map(Logo::name),
    };
    serde_json::to_string(&served).map_err(|error| error.to_string().into())
}

/// Both standards at once. `tagged` is never left to a caller: without tags the file would still
/// claim both.
fn options(manuscript: &Manuscript) -> Result<PdfOptions, TypesetFailure> {
    let standards = PdfStandards::new(&[PdfStandard::A_3a, PdfStandard::Ua_1])
        .map_err(|error| error.message().to_string())?;
    Ok(PdfOptions {
        ident: Smart::Custom(manuscript.ident.to_owned()),
        creator: Smart::Custom(Some(manuscript.creator.to_owned())),
        timestamp: None,
        page_ranges: None,
        standards,
        tagged: true,
        pretty: false,
    })
}

fn told(world: &ReportWorld, fault: &SourceDiagnostic) -> Fault {
    let place = || {
        let id = fault.span.id()?;
        let name = id.get().vpath().get_without_slash();
        let source = world.source(id).ok()?;
        let range = world.range(fault.span)?;
        let (line, column) = source.lines().byte_to_line_column(range.start)?;
        Some(format!("{name}:{}:{}", line + 1, column + 1))
    };
    let hints = fault.hints.iter().map(|hint| hint.v.as_str());
    let message = std::iter::once(fault.message.as_str()).chain(hints);
    Fault {
        place: place().unwrap_or_default(),
        message: message.collect::<Vec<_>>().join("; "),
    }
}

/// Frees the typesetter's caches, whichever way a run ends; they grow without bound otherwise.
struct Eviction(usize);

impl Drop for Eviction {
    fn drop(&mut self) {
        typst::comemo::evict(self.0);
    }
}

/// Tries a logo on a report that holds nothing else.
///
/// A logo comes from outside and can hold what the standards forbid; tried alone, its faults are the
/// logo's and not the template's.
pub fn try_logo(logo: &Logo) -> Result<(), TypesetFailure> {
    let manuscript = Manuscript {
        data: Pages::Visit(&ReportData::default()),
        photographs: &[],
        logo: Some(logo),
        own: None,
        formulas: "#let formulas = (:)",
        attachment: "{}",
        ident: "logo",
        creator: "",
        // The report that follows says what is kept.
        keep: usize::MAX,
    };
    typeset(&manuscript).map(|_| ())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::data::{Block, Paper};
    use crate::report::glyphs;
    use crate::report::photograph;
    use crate::report::sample;
    use std::io::Cursor;
    use std::sync::LazyLock;
    use typst::layout::{Frame, FrameItem};

    static FORMULAS: LazyLock<String> = LazyLock::new(crate::report::compose::formulas);

    /// Drawn fittings, some upright, some lying; the first carries a position as phones write it.
    fn photographs() -> Vec<Vec<u8>> {
        let draw = |number: u32| {
            let (width, height) = if number == 4 {
                (900, 1200)
            } else {
                (1600, 1200)
            };
            let picture = image::RgbImage::from_fn(width, height, |x, y| {
                let pipe = (height * 11 / 20..height * 13 / 20).contains(&y);
                let nut =
                    x.abs_diff(width / 2) < width / 12 && y.abs_diff(height * 3 / 5) < height / 9;
                image::Rgb(match (nut, pipe) {
                    (true, _) => [200, 170, 60],
                    (_, true) => [184, 115, 51],
                    _ => [
                        (90 + x * 60 / width) as u8,
                        (100 + y * 50 / height) as u8,
                        110 + number as u8,
                    ],
                })
            });
            let mut jpeg = Cursor::new(Vec::new());
            picture
                .write_to(&mut jpeg, image::ImageFormat::Jpeg)
                .unwrap();
            let mut bytes = jpeg.into_inner();
            let exif = b"\xFF\xE1\x00\x22Exif\0\0II*\0\x08\0\0\0GPS 41.1456 8.673 ";
            bytes.splice(2..2, exif[..36].iter().copied());
            bytes
        };
        let ready = |number| {
            photograph::prepare(&draw(number), photograph::ALONE, &mut Vec::new())
                .unwrap()
                .jpeg
        };
        (1..=6).map(ready).collect()
    }

    fn manuscript<'a>(data: &'a ReportData, photographs: &'a [Vec<u8>]) -> Manuscript<'a> {
        Manuscript {
            data: Pages::Visit(data),
            photographs,
            logo: None,
            own: None,
            formulas: &FORMULAS,
            attachment: r#"{"version": 1}"#,
            ident: "brackwater/flake-ice-1/2026-06-18",
            creator: "Rimebook 0.1.0",
            keep: 0,
        }
    }

    /// Typesets, demands that nothing was found odd, and leaves the file where a reader can look.
    fn printed(name: &str, data: &ReportData, photographs: &[Vec<u8>]) -> Vec<u8> {
        let typeset =
            typeset(&manuscript(data, photographs)).unwrap_or_else(|fault| panic!("{fault}"));
        assert_eq!(typeset.warnings, []);
        if let Some(folder) = std::env::var_os("RIMEBOOK_SAMPLES") {
            std::fs::write(
                std::path::Path::new(&folder).join(format!("{name}.pdf")),
                &typeset.pdf,
            )
            .unwrap();
        }
        typeset.pdf
    }

    fn words(data: &ReportData, photographs: &[Vec<u8>]) -> Vec<String> {
        fn walk(frame: &Frame, out: &mut String) {
            for (_, item) in frame.items() {
                match item {
                    FrameItem::Group(group) => walk(&group.frame, out),
                    FrameItem::Text(text) => {
                        out.push_str(&text.text);
                        out.push(' ');
                    }
                    _ => {}
                }
            }
        }
        let m = manuscript(data, photographs);
        let world = ReportWorld::new(
            m.data.main(),
            served(&m).unwrap(),
            "{}".into(),
            &FORMULAS,
            photographs,
            None,
            None,
        );
        let document = typst::compile::<PagedDocument>(&world).output.unwrap();
        let text = |page: &typst_layout::Page| {
            let mut out = String::new();
            walk(&page.frame, &mut out);
            out
        };
        document.pages().iter().map(text).collect()
    }

    fn holds(bytes: &[u8], mark: &[u8]) -> bool {
        bytes.windows(mark.len()).any(|window| window == mark)
    }

    #[test]
    fn a_rich_report_is_printed_without_a_warning_and_twice_alike() {
        let (data, photographs) = (sample::rich(), photographs());
        let first = printed("rich", &data, &photographs);
        assert_eq!(first, printed("rich", &data, &photographs));
        assert!(first.starts_with(b"%PDF-1.7"));
        assert!(!holds(&first, b"GPS") && !holds(&first, b"Exif"));
    }

    #[test]
    fn a_small_report_has_two_pages_and_an_empty_one_does_no_harm() {
        printed("small", &sample::small(), &[]);
        assert_eq!(words(&sample::small(), &[]).len(), 2);
        printed("empty", &ReportData::default(), &[]);
    }

    #[test]
    fn a_large_report_breaks_over_pages_in_both_sizes_of_sheet() {
        let photographs = photographs();
        let mut data = sample::large();
        printed("large", &data, &photographs);
        data.document.paper = Paper::Letter;
        printed("large-letter", &data, &photographs);
        let pages = words(&data, &photographs);
        let head = data.account.tables[0].columns[0].head.clone();
        let heads = pages.iter().filter(|page| page.contains(&head));
        assert!(
            heads.count() > 5,
            "the head of the account is repeated on its pages"
        );
        assert!(
            pages
                .iter()
                .all(|page| page.contains("DRAFT, not to be relied on"))
        );
    }

    #[test]
    fn text_is_printed_as_it_stands_and_never_evaluated() {
        let trap = "#panic(1) $x$ <a> @b *c* _d_ #eval(\"1\") \\u{41} ~ ``` // = -- ... 'q'";
        let mut data = sample::small();
        data.outcome.sentence = trap.to_owned();
        data.waiting = vec![Block::plain(trap)];
        let shown = words(&data, &[]).join("").replace(' ', "");
        assert_eq!(shown.matches(&trap.replace(' ', "")).count(), 2, "{shown}");
    }

    #[test]
    fn every_character_called_printable_can_be_printed() {
        let all: String = ('\0'..=char::MAX)
            .filter(|c| glyphs::unprintable(c.encode_utf8(&mut [0; 4])).is_empty())
            .collect();
        let mut data = sample::small();
        let lines = all.chars().collect::<Vec<_>>();
        data.waiting = lines
            .chunks(60)
            .map(|line| Block::plain(line.iter().collect::<String>()))
            .collect();
        assert!(all.chars().count() > 3000);
        printed("characters", &data, &[]);
    }

    #[test]
    fn a_draft_says_so_on_every_page_and_a_final_report_nowhere() {
        let mut data = sample::small();
        assert!(!words(&data, &[]).join("").contains("DRAFT"));
        data.document.draft = true;
        assert!(
            words(&data, &[])
                .iter()
                .all(|page| page.matches("DRAFT").count() >= 2)
        );
        printed("draft", &data, &[]);
    }

    #[test]
    fn standing_cautions_are_printed_even_if_nothing_was_checked() {
        let text = words(&ReportData::default(), &[]).join("");
        assert!(text.contains("never with oxygen") && text.contains("the code holds"));
    }

    #[test]
    fn a_part_of_ones_own_stands_for_ours_and_its_faults_name_their_place() {
        let own = |text: &str| {
            let files = std::collections::BTreeMap::from([
                (
                    "signatures-own.typ".to_owned(),
                    b"#let motto = [Kept cold.]".to_vec(),
                ),
                ("schematic.typ".to_owned(), text.as_bytes().to_vec()),
            ]);
            OwnTemplates::of(files).map(Arc::new)
        };
        let data = sample::small();
        let set = |own: &Arc<OwnTemplates>| {
            typeset(&Manuscript {
                own: Some(own),
                ..manuscript(&data, &[])
            })
        };
        let fine = own("#import \"signatures-own.typ\": motto\n#let schematics = motto").unwrap();
        assert_eq!(set(&fine).unwrap().warnings, []);
        let wrong = own("#let schematics = [\n#nonsense]").unwrap();
        let failure = set(&wrong).unwrap_err();
        assert_eq!(failure.faults[0].place, "schematic.typ:2:2", "{failure}");
        assert!(own("#let p = plugin(\"x.wasm\")").is_err());
    }

    #[test]
    fn a_fault_of_the_template_names_its_place() {
        let data = sample::rich();
        let failure = typeset(&manuscript(&data, &[])).unwrap_err();
        assert!(
            failure.faults[0].place.starts_with("findings.typ:"),
            "{failure}"
        );
        assert!(
            failure.faults[0].message.contains("photo/1.jpg"),
            "{failure}"
        );
    }

    #[test]
    fn a_logo_is_tried_before_it_is_used() {
        let svg = r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><rect width="40" height="20" fill="#2f5d62"/></svg>"##;
        let logo = Logo::Svg(svg.into());
        assert_eq!(try_logo(&logo), Ok(()));
        assert!(try_logo(&Logo::Svg(b"not a picture".to_vec())).is_err());
        assert!(try_logo(&Logo::Png(b"not a picture".to_vec())).is_err());
        let data = sample::small();
        let with_logo = Manuscript {
            logo: Some(&logo),
            ..manuscript(&data, &[])
        };
        assert_eq!(typeset(&with_logo).unwrap().warnings, []);
    }
}
