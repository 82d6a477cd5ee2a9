//! One visit's report in print: composed, its photographs prepared, typeset.

use crate::command::kept_photographs::KeptPhotographs;
use crate::command::loaded::Loaded;
use crate::job::{Site, System};
use crate::report::compose::{self, Composed, Scene, WantedPhotograph, compose};
use crate::report::data::ReportData;
use crate::report::issue::{ISSUED, Issues, State};
use crate::report::photograph::{ALONE, BESIDE};
use crate::report::typeset::{Manuscript, Pages, TypesetFailure, try_logo, typeset};
use crate::report::visit_figures::{VisitFigures, figures_json};
use crate::report::world::{Logo, OwnTemplates};
use crate::text::{Diagnostic, Diagnostics, FileId};
use jiff::civil::Date;
use rayon::prelude::*;
use serde_json::json;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// A report in print.
#[derive(Debug)]
pub struct PrintedReport {
    /// As plain data.
    pub data: ReportData,
    /// The PDF.
    pub pdf: Vec<u8>,
    /// The issues with the new one added, if one was made.
    pub issued: Option<Issues>,
}

/// How a report is printed.
#[derive(Clone, Debug, Default)]
pub struct Manner {
    /// In spite of errors, with a watermark.
    pub draft: bool,
    /// The day of an issue, if one is made.
    pub issuing: Option<Date>,
    /// Photographs of earlier runs.
    pub photographs: KeptPhotographs,
    /// How many later reports may reuse what the typesetter worked out.
    pub keep: usize,
}

/// Why there is none.
#[derive(Debug)]
pub enum NotPrinted {
    /// Errors in the notes that it reads.
    Errors(Diagnostics),
    /// A fault of this program.
    OurFault(String),
    /// The contractor's own logo or templates cannot be printed with.
    Branding(String),
    /// A file could not be read.
    Disk(String),
}

/// The contractor's own logo and parts of the template.
#[derive(Debug, Default)]
pub struct Branding {
    pub(super) logo: Option<Logo>,
    pub(super) templates: Option<Arc<OwnTemplates>>,
}

/// Reads the branding of a book. Errors: a message to be printed as it stands.
pub fn branding(loaded: &Loaded) -> Result<Branding, String> {
    Ok(Branding {
        logo: logo(loaded)?,
        templates: templates(loaded)?,
    })
}

/// Prints the report of a visit, by its number in its system.
pub fn print_report(
    loaded: &Loaded,
    (site, system, number): (&Site, &System, usize),
    branding: &Branding,
    manner: &Manner,
) -> Result<PrintedReport, NotPrinted> {
    let draft = manner.draft;
    let visit = &system.visits[number];
    let errors = loaded.errors_against(site, system, number);
    if errors.errors() > 0 && !draft {
        return Err(NotPrinted::Errors(errors));
    }
    let Some(figures) = VisitFigures::of(site, system, number) else {
        return Err(NotPrinted::OurFault("the visit has no figures".to_owned()));
    };
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit,
        figures,
        fingerprint: fingerprint(loaded, &[(site, system, number)]),
    };
    let leading: Vec<&Diagnostic> = loaded
        .diagnostics
        .iter()
        .filter(|diagnostic| leads(diagnostic, loaded, &visit.path))
        .collect();
    let mut composed = compose(&scene, &leading, draft);
    let photographs = photographs(loaded, &composed, &manner.photographs)?;
    let mut files = digests(loaded, &[(site, system, number)]);
    files.extend(
        photographs
            .iter()
            .map(|photograph| (photograph.path.clone(), photograph.digest.clone())),
    );
    let state = State::of(&scene, files);
    let mut issues = issues(loaded, &visit.path)?;
    let issuing = manner.issuing.filter(|_| !draft);
    let standing = issues.standing(&state, issuing, scene.words());
    composed.data.document.footer.issue = standing.foot;
    composed.data.revision = standing.revision;
    let new = standing.new.is_some();
    issues.issues.extend(standing.new);
    let attachment = attachment(&composed.data, &scene, &state, loaded);
    let photographs: Vec<Vec<u8>> = photographs
        .into_iter()
        .map(|photograph| photograph.jpeg)
        .collect();
    let ident = format!("rimebook {}", visit.path);
    let formulas = compose::formulas();
    let manuscript = Manuscript {
        data: Pages::Visit(&composed.data),
        photographs: &photographs,
        logo: branding.logo.as_ref(),
        own: branding.templates.as_ref(),
        formulas: &formulas,
        attachment: &attachment,
        ident: &ident,
        creator: CREATOR,
        keep: manner.keep,
    };
    let typeset = typeset(&manuscript).map_err(|failure| not_set(branding, &failure))?;
    Ok(PrintedReport {
        data: composed.data,
        pdf: typeset.pdf,
        issued: new.then_some(issues),
    })
}

/// Cautions that the report carries: of this visit, and limiting what it may claim.
fn leads(diagnostic: &Diagnostic, loaded: &Loaded, visit: &str) -> bool {
    let path = &loaded.sources.get(diagnostic.primary.span.file).path;
    let here = path.starts_with(&format!("{visit}/"));
    let limits = crate::caution::find(diagnostic.name).is_some_and(|caution| caution.limits_claim);
    here && limits && diagnostic.severity == crate::text::Severity::Caution
}

/// A photograph made ready for the page.
struct Ready {
    path: String,
    digest: String,
    jpeg: Vec<u8>,
}

/// Reads and prepares the photographs of a report, on all cores.
fn photographs(
    loaded: &Loaded,
    composed: &Composed,
    kept: &KeptPhotographs,
) -> Result<Vec<Ready>, NotPrinted> {
    let one = |room: &mut Vec<u8>, wanted: &WantedPhotograph| {
        let bytes = std::fs::read(loaded.root.join(&wanted.path))
            .map_err(|error| format!("{}: {error}", wanted.path))?;
        let frame = if wanted.half_width { BESIDE } else { ALONE };
        let digest = hexadecimal(&Sha256::digest(&bytes));
        let jpeg = kept
            .ready(&bytes, &digest, frame, room)
            .map_err(|fault| format!("{}: {fault}", wanted.path))?;
        Ok(Ready {
            path: wanted.path.clone(),
            digest,
            jpeg,
        })
    };
    let wanted = composed.photographs.par_iter();
    let ready: Result<Vec<Ready>, String> = wanted.map_init(Vec::new, one).collect();
    ready.map_err(NotPrinted::Disk)
}

/// The issues of a visit so far.
fn issues(loaded: &Loaded, visit: &str) -> Result<Issues, NotPrinted> {
    let place = format!("{visit}/{ISSUED}");
    match std::fs::read_to_string(loaded.root.join(&place)) {
        Ok(text) => Issues::read(&text).map_err(|error| {
            NotPrinted::Disk(format!(
                "{place} cannot be read: {error}; take it back from git, it is written by report --issue only"
            ))
        }),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(Issues {
            version: 1,
            ..Issues::default()
        }),
        Err(error) => Err(NotPrinted::Disk(format!("{place}: {error}"))),
    }
}

/// The files that a document about visits is made from: those of each and of the ones before it.
fn read_by(loaded: &Loaded, visits: &[(&Site, &System, usize)]) -> Vec<FileId> {
    let mut files = vec![loaded.book.file];
    for (site, system, number) in visits {
        let before = system.visits.iter().take(number + 1);
        files.extend([site.file, system.file]);
        files.extend(before.flat_map(|visit| visit.files.iter().copied()));
    }
    let mut known = BTreeSet::new();
    files.retain(|file| known.insert(*file));
    files
}

/// SHA-256 of each of them, by path.
pub(super) fn digests(
    loaded: &Loaded,
    visits: &[(&Site, &System, usize)],
) -> BTreeMap<String, String> {
    read_by(loaded, visits)
        .into_iter()
        .map(|file| {
            let source = loaded.sources.get(file);
            let digest = Sha256::digest(source.text.as_bytes());
            (source.path.clone(), hexadecimal(&digest))
        })
        .collect()
}

/// The first twelve hexadecimal digits of SHA-256 over the notes that a document is made from.
pub(super) fn fingerprint(loaded: &Loaded, visits: &[(&Site, &System, usize)]) -> String {
    let mut hash = Sha256::new();
    for file in read_by(loaded, visits) {
        let source = loaded.sources.get(file);
        hash.update(source.path.as_bytes());
        hash.update([0]);
        hash.update(source.text.as_bytes());
        hash.update([0]);
    }
    let digits = hexadecimal(&hash.finalize()[..6]);
    format!("{} {} {}", &digits[..4], &digits[4..8], &digits[8..])
}

/// Sets a document without photographs, with its data attached.
pub(super) fn set_in_type(
    data: Pages<'_>,
    branding: &Branding,
    attachment: &serde_json::Value,
    ident: &str,
) -> Result<Vec<u8>, NotPrinted> {
    let manuscript = Manuscript {
        data,
        photographs: &[],
        logo: branding.logo.as_ref(),
        own: branding.templates.as_ref(),
        formulas: &compose::formulas(),
        attachment: &format!("{attachment:#}\n"),
        ident,
        creator: CREATOR,
        keep: 0,
    };
    typeset(&manuscript)
        .map(|typeset| typeset.pdf)
        .map_err(|failure| not_set(branding, &failure))
}

/// Name and version of this program.
const CREATOR: &str = concat!("Rimebook ", env!("CARGO_PKG_VERSION"));

/// A failure of the typesetter: the contractor's where own templates take part, else ours.
fn not_set(branding: &Branding, failure: &TypesetFailure) -> NotPrinted {
    match branding.templates {
        Some(_) => NotPrinted::Branding(format!("with the book's own templates, {failure}")),
        None => NotPrinted::OurFault(failure.to_string()),
    }
}

/// Bytes in hexadecimal digits.
pub fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        text += &format!("{byte:02x}");
        text
    })
}

/// What is attached to the PDF: the figures of the visit with their inputs, and the report as data.
/// Private parts never get here, since neither is made of them.
fn attachment(data: &ReportData, scene: &Scene<'_>, state: &State, loaded: &Loaded) -> String {
    let value = json!({
        "version": 1,
        "visit": scene.visit.path,
        "site": scene.site.name(),
        "system": scene.system.name(),
        "fingerprint": scene.fingerprint,
        "files": state.files,
        "outcome": scene.figures.outcome.shown(),
        "figures": figures_json(&scene.figures, scene.site, &loaded.sources),
        "report": data,
    });
    format!("{value:#}\n")
}

/// The contractor's logo, tried alone so that a bad file is told as the user's.
fn logo(loaded: &Loaded) -> Result<Option<Logo>, String> {
    let Some(path) = loaded
        .book
        .note
        .as_ref()
        .and_then(|note| note.contractor.as_ref())
        .and_then(|contractor| contractor.logo.as_ref())
    else {
        return Ok(None);
    };
    let place = loaded.sources.place(path.span);
    let inside = !path.value.starts_with('/') && !path.value.split('/').any(|part| part == "..");
    let file = loaded.root.join(&path.value);
    if !inside || file.is_symlink() || !file.is_file() {
        return Err(format!(
            "error: {place}: the logo `{}` is not a file of this book\n  = help: put an SVG or PNG file into the book and name it from its root\n",
            path.value
        ));
    }
    let bytes = std::fs::read(&file).map_err(|error| format!("error: {place}: {error}\n"))?;
    let logo = if path.value.to_lowercase().ends_with(".svg") {
        Logo::Svg(bytes)
    } else {
        Logo::Png(bytes)
    };
    match try_logo(&logo) {
        Ok(()) => Ok(Some(logo)),
        Err(failure) => Err(format!(
            "error: {place}: the logo `{}` cannot be printed: {failure}\n",
            path.value
        )),
    }
}

/// Own templates are at most this large together, bytes.
const MOST_TEMPLATES: u64 = 32 << 20;

/// The contractor's own parts of the template, if a folder of them is named.
fn templates(loaded: &Loaded) -> Result<Option<Arc<OwnTemplates>>, String> {
    let note = loaded.book.note.as_ref();
    let contractor = note.and_then(|note| note.contractor.as_ref());
    let Some(path) = contractor.and_then(|contractor| contractor.templates.as_ref()) else {
        return Ok(None);
    };
    let place = loaded.sources.place(path.span);
    let told = |what: String| format!("error: {place}: {what}\n");
    let inside = !path.value.starts_with('/') && !path.value.split('/').any(|part| part == "..");
    let folder = loaded.root.join(&path.value);
    if !inside || folder.is_symlink() || !folder.is_dir() {
        return Err(told(format!(
            "the templates `{}` are not a folder of this book\n  = help: name a folder in the book, from its root",
            path.value
        )));
    }
    let mut files = BTreeMap::new();
    let mut size = 0;
    for entry in walkdir::WalkDir::new(&folder).sort_by_file_name() {
        let entry = entry.map_err(|error| told(error.to_string()))?;
        if !entry.file_type().is_file() {
            continue;
        }
        size += entry.metadata().map_or(0, |metadata| metadata.len());
        if size > MOST_TEMPLATES {
            return Err(told(format!(
                "the templates `{}` are larger than 32 MB together",
                path.value
            )));
        }
        let name = entry
            .path()
            .strip_prefix(&folder)
            .map(|path| path.to_string_lossy().replace('\\', "/"))
            .unwrap_or_default();
        let bytes =
            std::fs::read(entry.path()).map_err(|error| told(format!("{name}: {error}")))?;
        files.insert(name, bytes);
    }
    OwnTemplates::of(files)
        .map(|own| Some(Arc::new(own)))
        .map_err(|error| told(format!("the templates `{}`: {error}", path.value)))
}
