//! The history of a system in print, up to and with a visit.

use crate::command::loaded::Loaded;
use crate::command::printed_report::{Branding, NotPrinted, digests, fingerprint};
use crate::job::{Site, System};
use crate::language::Words;
use crate::report::compose::{self, Scene, history, history_report};
use crate::report::typeset::{Manuscript, Pages, typeset};
use crate::report::visit_figures::VisitFigures;
use serde_json::json;

/// Prints the history of a system up to and with a visit, by its number, as a PDF.
pub fn print_history(
    loaded: &Loaded,
    (site, system, number): (&Site, &System, usize),
    branding: &Branding,
    draft: bool,
) -> Result<Vec<u8>, NotPrinted> {
    let visit = &system.visits[number];
    let errors = loaded.errors_against(site, system, number);
    if errors.errors() > 0 && !draft {
        return Err(NotPrinted::Errors(errors));
    }
    let fault = || NotPrinted::OurFault("the system has no history".to_owned());
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit,
        figures: VisitFigures::of(site, system, number).ok_or_else(fault)?,
        fingerprint: fingerprint(loaded, site, system, number),
    };
    let report = history_report(&scene, draft).ok_or_else(fault)?;
    let attachment = json!({
        "version": 1,
        "visit": visit.path,
        "site": site.name(),
        "system": system.name(),
        "fingerprint": scene.fingerprint,
        "files": digests(loaded, site, system, number),
        "history": history(site, system, number, Words::english()),
        "report": &report,
    });
    let manuscript = Manuscript {
        data: Pages::History(&report),
        photographs: &[],
        logo: branding.logo.as_ref(),
        own: branding.templates.as_ref(),
        formulas: &compose::formulas(),
        attachment: &format!("{attachment:#}\n"),
        ident: &format!("rimebook history {}", system.path),
        creator: concat!("Rimebook ", env!("CARGO_PKG_VERSION")),
        keep: 0,
    };
    let typeset = typeset(&manuscript).map_err(|failure| match branding.templates {
        Some(_) => NotPrinted::Branding(format!("with the book's own templates, {failure}")),
        None => NotPrinted::OurFault(failure.to_string()),
    })?;
    Ok(typeset.pdf)
}
