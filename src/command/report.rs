//! `report`: the PDFs of the visits under a path.

use crate::command::console::{Console, Exit};
use crate::command::kept_photographs::KeptPhotographs;
use crate::command::loaded::{Loaded, Target};
use crate::command::printed_history::print_history;
use crate::command::printed_report::{Branding, Manner, NotPrinted, branding, print_report};
use crate::job::{Site, System};
use crate::report::issue::{ISSUED, Issues};
use crate::text::{Diagnostics, render, summary};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use jiff::Timestamp;
use jiff::civil::Date;
use serde_json::{Value, json};
use std::io::Write;
use std::path::{Path, PathBuf};

/// How reports are made.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a flag of the command line"
)]
#[derive(Clone, Copy, Debug, Default)]
pub struct Options<'o> {
    /// In spite of errors, with a watermark.
    pub draft: bool,
    /// The history of each system, or of the site asked for, instead of the reports of its visits.
    pub history: bool,
    /// Folder to write to.
    pub into: Option<&'o Path>,
    /// Whether an issue is frozen.
    pub issue: bool,
    /// Its day; today at the site if left out.
    pub on: Option<Date>,
    /// JSON on standard output.
    pub json: bool,
    /// Whether the same reports will be made again in a moment.
    pub watching: bool,
}

/// While a book is watched, what was worked out for so few reports is kept; of more it would fill the
/// memory.
const KEPT_REPORTS: usize = 4;

/// What came of one visit.
enum Made {
    Written(String, usize),
    Refused(Diagnostics),
    OurFault(String),
    Branding(String),
    Disk(String),
}

/// Makes the reports of a part of the book.
pub fn report(loaded: &Loaded, target: &Target, options: &Options<'_>, console: &Console) -> Exit {
    let visits = if options.history {
        loaded.last_visits_of(target)
    } else {
        loaded.visits_of(target)
    };
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
    if options.issue && visits.len() != 1 {
        console.err("error: an issue is of one visit\n  = help: give the visit: rimebook report --issue harbour/ice-1/2026-06-18\n");
        return Exit::Usage;
    }
    if options.issue && options.draft {
        console.err("error: a draft is never issued\n  = help: put the errors right, then use --issue without --draft\n");
        return Exit::Usage;
    }
    let folder = options
        .into
        .map_or_else(|| loaded.root.join("reports"), Path::to_path_buf);
    let branding = match branding(loaded) {
        Ok(branding) => branding,
        Err(message) => {
            console.err(&message);
            return Exit::Errors;
        }
    };
    // Kept over one round of the reports watched: each, and the logo, ages what the others left.
    let keep = if options.watching && visits.len() <= KEPT_REPORTS {
        2 * (visits.len() + 1)
    } else {
        0
    };
    let of_site = options.history && visits.iter().any(|(site, ..)| site.folder == target.path);
    let documents: Vec<&[(&Site, &System, usize)]> = if of_site {
        vec![&visits]
    } else {
        visits.chunks(1).collect()
    };
    let bar = progress(console, documents.len() as u64);
    let mut exit = Exit::Fine;
    let mut results: Vec<Value> = Vec::new();
    let mut refused = Diagnostics::default();
    for document in documents {
        let path = match document {
            [(_, system, number)] if !of_site => system.visits[*number].path.clone(),
            _ => target.path.clone(),
        };
        bar.set_message(path.clone());
        match one(
            loaded,
            (document, of_site),
            &branding,
            &folder,
            (options, keep),
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
            Made::Branding(message) => {
                bar.suspend(|| console.err(&format!("error: {path}: {message}\n")));
                exit = Exit::Errors;
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
    (document, of_site): (&[(&Site, &System, usize)], bool),
    branding: &Branding,
    folder: &Path,
    (options, kept): (&Options<'_>, usize),
) -> Made {
    let suffix = if options.draft { "-draft" } else { "" };
    let Some(&visit) = document.first() else {
        return Made::OurFault("a document of no visit".to_owned());
    };
    if options.history {
        let path = if of_site {
            &visit.0.folder
        } else {
            &visit.1.path
        };
        let name = format!("{}_history{suffix}.pdf", path.replace('/', "_"));
        let pdf = print_history(loaded, document, of_site, branding, options.draft);
        return pdf.map_or_else(not_made, |pdf| written(loaded, folder, &name, &pdf));
    }
    let path = &visit.1.visits[visit.2].path;
    let today = || visit.0.zone.to_datetime(Timestamp::now()).date();
    // A folder that was asked for gets what was asked for, and nothing besides.
    let photographs = if options.into.is_none() {
        KeptPhotographs::within(folder)
    } else {
        KeptPhotographs::default()
    };
    let manner = Manner {
        draft: options.draft,
        issuing: options.issue.then(|| options.on.unwrap_or_else(today)),
        photographs,
        keep: kept,
    };
    match print_report(loaded, visit, branding, &manner) {
        Ok(report) => {
            if let Some(issues) = &report.issued
                && let Err(message) = keep(loaded, path, issues)
            {
                return Made::Disk(message);
            }
            let name = format!("{}{suffix}.pdf", path.replace('/', "_"));
            written(loaded, folder, &name, &report.pdf)
        }
        Err(why) => not_made(why),
    }
}

fn written(loaded: &Loaded, folder: &Path, name: &str, pdf: &[u8]) -> Made {
    match write_beside(loaded, folder, name, pdf) {
        Ok(place) => Made::Written(place, pdf.len()),
        Err(message) => Made::Disk(message),
    }
}

fn not_made(why: NotPrinted) -> Made {
    match why {
        NotPrinted::Errors(diagnostics) => Made::Refused(diagnostics),
        NotPrinted::OurFault(message) => Made::OurFault(message),
        NotPrinted::Branding(message) => Made::Branding(message),
        NotPrinted::Disk(message) => Made::Disk(message),
    }
}

/// Keeps the issues in the folder of their visit.
fn keep(loaded: &Loaded, visit: &str, issues: &Issues) -> Result<String, String> {
    let text = serde_json::to_string_pretty(issues).map_err(|error| error.to_string())? + "\n";
    write_beside(loaded, &loaded.root.join(visit), ISSUED, text.as_bytes())
}

/// Writes a file of ours beside its place and renames it into it; gives the place as shown.
pub fn write_beside(
    loaded: &Loaded,
    folder: &Path,
    name: &str,
    bytes: &[u8],
) -> Result<String, String> {
    let target = folder.join(name);
    let place = shown(loaded, &target);
    let done = std::fs::create_dir_all(folder).and_then(|()| {
        let mut file = new_file(folder)?;
        file.write_all(bytes)?;
        file.persist(&target).map_err(|error| error.error)?;
        Ok(())
    });
    done.map(|()| place.clone())
        .map_err(|error| format!("{place}: {error}"))
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
