//! `report`: the PDFs of the visits under a path.

use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::job::{Site, System};
use crate::report::compose::{self, Scene, compose};
use crate::report::data::ReportData;
use crate::report::photograph;
use crate::report::typeset::{Manuscript, try_logo, typeset};
use crate::report::visit_figures::{VisitFigures, figures_json};
use crate::report::world::Logo;
use crate::text::{Diagnostic, Diagnostics, render, summary};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use rayon::prelude::*;
use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::io::Write;
use std::path::{Path, PathBuf};

/// How reports are made.
#[derive(Clone, Copy, Debug)]
pub struct Options<'o> {
    /// In spite of errors, with a watermark.
    pub draft: bool,
    /// Folder to write to.
    pub into: Option<&'o Path>,
    /// JSON on standard output.
    pub json: bool,
}

/// What came of one visit.
enum Made {
    Written(String, usize),
    Refused(Diagnostics),
    OurFault(String),
    Disk(String),
}

/// Makes the reports of a part of the book.
pub fn report(loaded: &Loaded, target: &Target, options: &Options<'_>, console: &Console) -> Exit {
    let visits = loaded.visits_of(target);
    if visits.is_empty() {
        console.err(&render(
            &loaded.diagnostics_of(target),
            &loaded.sources,
            console.look,
        ));
        console.err("error: there is no visit under this path\n  = help: give a book, a site, a system or a visit\n");
        return if loaded.diagnostics.errors() > 0 {
            Exit::Errors
        } else {
            Exit::Usage
        };
    }
    let folder = options
        .into
        .map_or_else(|| loaded.root.join("reports"), Path::to_path_buf);
    let logo = match logo(loaded) {
        Ok(logo) => logo,
        Err(message) => {
            console.err(&message);
            return Exit::Errors;
        }
    };
    let bar = progress(console, visits.len() as u64);
    let mut exit = Exit::Fine;
    let mut results: Vec<Value> = Vec::new();
    let mut refused = Diagnostics::default();
    for (site, system, number) in visits {
        let path = system.visits[number].path.clone();
        bar.set_message(path.clone());
        match one(
            loaded,
            site,
            system,
            number,
            logo.as_ref(),
            &folder,
            options,
        ) {
            Made::Written(name, length) => {
                results.push(json!({ "visit": path, "pdf": name, "bytes": length }));
                if !options.json {
                    bar.suspend(|| console.out(&format!("{name}\n")));
                }
            }
            Made::Refused(diagnostics) => {
                results.push(json!({ "visit": path, "pdf": null, "errors": diagnostics.errors() }));
                refused.append(diagnostics);
                exit = Exit::Errors;
            }
            Made::OurFault(message) => {
                bar.suspend(|| console.err(&format!("fault in the program, {path}: {message}\n")));
                exit = Exit::OurFault;
            }
            Made::Disk(message) => {
                bar.suspend(|| console.err(&format!("error: {message}\n")));
                bar.finish_and_clear();
                return Exit::Disk;
            }
        }
        bar.inc(1);
    }
    bar.finish_and_clear();
    if refused.errors() > 0 {
        refused.sort(&loaded.sources);
        console.err(&render(&refused, &loaded.sources, console.look));
        console.err(&format!(
            "{}; no report was made of the visits that read these files\n  = help: put it right, or use --draft for a watermarked report\n",
            summary(&refused)
        ));
    }
    if options.json {
        let value = json!({ "version": 1, "command": "report", "reports": results });
        console.out(&format!("{value:#}\n"));
    }
    exit
}

fn progress(console: &Console, length: u64) -> ProgressBar {
    let target = if console.progress && length > 1 {
        ProgressDrawTarget::stderr()
    } else {
        ProgressDrawTarget::hidden()
    };
    let style = ProgressStyle::with_template("{pos}/{len} {wide_msg}")
        .unwrap_or_else(|_| ProgressStyle::default_bar());
    ProgressBar::with_draw_target(Some(length), target).with_style(style)
}

fn one(
    loaded: &Loaded,
    site: &Site,
    system: &System,
    number: usize,
    logo: Option<&Logo>,
    folder: &Path,
    options: &Options<'_>,
) -> Made {
    let visit = &system.visits[number];
    let errors = loaded.errors_against(site, system, number);
    if errors.errors() > 0 && !options.draft {
        return Made::Refused(errors);
    }
    let Some(figures) = VisitFigures::of(site, system, number) else {
        return Made::OurFault("the visit has no figures".to_owned());
    };
    let photograph_bytes = |path: &str| std::fs::read(loaded.root.join(path));
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit,
        figures,
        fingerprint: fingerprint(loaded, site, system, number),
    };
    let leading: Vec<&Diagnostic> = loaded
        .diagnostics
        .iter()
        .filter(|diagnostic| leads(diagnostic, loaded, &visit.path))
        .collect();
    let draft = options.draft;
    let composed = compose(&scene, &leading, draft);
    let attachment = attachment(&composed.data, &scene.figures, site, system, number, loaded);
    let prepared: Result<Vec<Vec<u8>>, String> = composed
        .photographs
        .par_iter()
        .map(|wanted| {
            let bytes =
                photograph_bytes(&wanted.path).map_err(|e| format!("{}: {e}", wanted.path))?;
            let longest = if wanted.half_width {
                photograph::HALF_WIDTH
            } else {
                photograph::FULL_WIDTH
            };
            photograph::prepare(&bytes, longest)
                .map(|photograph| photograph.jpeg)
                .map_err(|fault| format!("{}: {fault}", wanted.path))
        })
        .collect();
    let photographs = match prepared {
        Ok(photographs) => photographs,
        Err(message) => return Made::Disk(message),
    };
    let ident = format!("rimebook {}", visit.path);
    let creator = concat!("Rimebook ", env!("CARGO_PKG_VERSION"));
    let formulas = compose::formulas();
    let manuscript = Manuscript {
        data: &composed.data,
        photographs: &photographs,
        logo,
        formulas: &formulas,
        attachment: &attachment,
        ident: &ident,
        creator,
        keep: 0,
    };
    match typeset(&manuscript) {
        Ok(done) => write(loaded, folder, &visit.path, &done.pdf, draft),
        Err(failure) => Made::OurFault(failure.to_string()),
    }
}

/// Cautions that the report carries: of this visit, and limiting what it may claim.
fn leads(diagnostic: &Diagnostic, loaded: &Loaded, visit: &str) -> bool {
    let path = &loaded.sources.get(diagnostic.primary.span.file).path;
    let here = path.starts_with(&format!("{visit}/"));
    let limits = crate::caution::find(diagnostic.name).is_some_and(|caution| caution.limits_claim);
    here && limits && diagnostic.severity == crate::text::Severity::Caution
}

fn write(loaded: &Loaded, folder: &Path, visit: &str, pdf: &[u8], draft: bool) -> Made {
    let suffix = if draft { "-draft" } else { "" };
    let name = format!("{}{suffix}.pdf", visit.replace('/', "_"));
    let target = folder.join(&name);
    let place = shown(loaded, &target);
    let done = std::fs::create_dir_all(folder).and_then(|()| {
        let mut file = new_file(folder)?;
        file.write_all(pdf)?;
        file.persist(&target).map_err(|error| error.error)?;
        Ok(())
    });
    match done {
        Ok(()) => Made::Written(place, pdf.len()),
        Err(error) => Made::Disk(format!("{place}: {error}")),
    }
}

/// A temporary file beside the target, readable by others as any document is.
fn new_file(folder: &Path) -> std::io::Result<tempfile::NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        builder.permissions(std::fs::Permissions::from_mode(0o644));
    }
    builder.tempfile_in(folder)
}

/// A path as shown: from the root of the book where it lies in it.
fn shown(loaded: &Loaded, path: &Path) -> String {
    let shown: PathBuf = path
        .strip_prefix(&loaded.root)
        .map_or_else(|_| path.to_path_buf(), Path::to_path_buf);
    shown.to_string_lossy().replace('\\', "/")
}

/// The first twelve hexadecimal digits of SHA-256 over the notes that the report is made from.
fn fingerprint(loaded: &Loaded, site: &Site, system: &System, number: usize) -> String {
    let mut hash = Sha256::new();
    let visits = &system.visits[..=number];
    let files = [loaded.book.file, site.file, system.file]
        .into_iter()
        .chain(visits.iter().flat_map(|visit| visit.files.iter().copied()));
    for file in files {
        let source = loaded.sources.get(file);
        hash.update(source.path.as_bytes());
        hash.update([0]);
        hash.update(source.text.as_bytes());
        hash.update([0]);
    }
    let digits = hexadecimal(&hash.finalize()[..6]);
    format!("{} {} {}", &digits[..4], &digits[4..8], &digits[8..])
}

fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        text += &format!("{byte:02x}");
        text
    })
}

/// What is attached to the PDF: the figures of the visit with their inputs, and the report as data.
/// Private parts never get here, since neither is made of them.
fn attachment(
    data: &ReportData,
    figures: &VisitFigures,
    site: &Site,
    system: &System,
    number: usize,
    loaded: &Loaded,
) -> String {
    let visit = &system.visits[number];
    let files: BTreeMap<&str, String> = visit
        .files
        .iter()
        .map(|file| {
            let source = loaded.sources.get(*file);
            let digest = Sha256::digest(source.text.as_bytes());
            (source.path.as_str(), hexadecimal(&digest))
        })
        .collect();
    let value = json!({
        "version": 1,
        "visit": visit.path,
        "site": site.name(),
        "system": system.name(),
        "files": files,
        "outcome": crate::working::outcome::shown(figures.outcome.kind),
        "figures": figures_json(figures, site, &loaded.sources),
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
