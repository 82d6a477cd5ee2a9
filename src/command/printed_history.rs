//! The history of a system, or of a whole site, in print, up to and with a visit of each system.

use crate::command::loaded::Loaded;
use crate::command::printed_report::{Branding, NotPrinted, digests, fingerprint, set_in_type};
use crate::job::{Site, System};
use crate::language::Words;
use crate::report::compose::{Scene, history, history_report, site_history};
use crate::report::typeset::Pages;
use crate::report::visit_figures::VisitFigures;
use crate::text::Diagnostics;
use serde_json::json;

/// Prints the history of systems of one site, each up to and with a visit, by its number, as a PDF:
/// of one system, or with `whole_site` of all of them in chapters.
pub fn print_history(
    loaded: &Loaded,
    systems: &[(&Site, &System, usize)],
    whole_site: bool,
    branding: &Branding,
    draft: bool,
) -> Result<Vec<u8>, NotPrinted> {
    let mut errors = Diagnostics::default();
    for (site, system, number) in systems {
        errors.append(loaded.errors_against(site, system, *number));
    }
    if errors.errors() > 0 && !draft {
        return Err(NotPrinted::Errors(errors));
    }
    let fault = || NotPrinted::OurFault("the system has no history".to_owned());
    let mark = fingerprint(loaded, systems);
    let scenes: Vec<Scene<'_>> = systems
        .iter()
        .map(|visit| scene_of(loaded, *visit, &mark))
        .collect::<Option<_>>()
        .ok_or_else(fault)?;
    let first = scenes.first().ok_or_else(fault)?;
    let (report, name, path) = if whole_site {
        (
            site_history(&scenes, draft),
            first.site.name(),
            &first.site.folder,
        )
    } else {
        (
            history_report(first, draft),
            first.system.name(),
            &first.system.path,
        )
    };
    let report = report.ok_or_else(fault)?;
    let histories: Vec<_> = scenes
        .iter()
        .map(|scene| history(scene.site, scene.system, scene.number, Words::english()))
        .collect();
    let attachment = json!({
        "version": 2,
        "visit": first.visit.path,
        "site": first.site.name(),
        "system": name,
        "fingerprint": mark,
        "files": digests(loaded, systems),
        "histories": histories,
        "report": &report,
    });
    set_in_type(
        Pages::History(&report),
        branding,
        &attachment,
        &format!("rimebook history {path}"),
    )
}

/// A visit with its figures, as documents about a system are composed from.
pub(super) fn scene_of<'a>(
    loaded: &'a Loaded,
    (site, system, number): (&'a Site, &'a System, usize),
    fingerprint: &str,
) -> Option<Scene<'a>> {
    Some(Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit: system.visits.get(number)?,
        figures: VisitFigures::of(site, system, number)?,
        fingerprint: fingerprint.to_owned(),
    })
}
