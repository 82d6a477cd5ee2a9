//! `mail`: drafts of the mails that carry the reports.

use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::command::printed_report::{
    Branding, Manner, NotPrinted, branding, hexadecimal, print_report,
};
use crate::command::report::write_beside;
use crate::job::{Site, System};
use crate::language::Words;
use crate::report::mail::{Envelope, draft};
use crate::text::{Noted, render, summary};
use sha2::{Digest, Sha256};
use std::path::{Path, PathBuf};

/// Writes a draft for the visit named, or for the last visit of the system named.
pub fn mail(loaded: &Loaded, target: &Target, into: Option<&Path>, console: &Console) -> Exit {
    let visits = loaded.visits_of(target);
    let systems = visits
        .iter()
        .map(|(_, system, _)| system.path.as_str())
        .collect::<std::collections::BTreeSet<_>>();
    let Some(last) = visits.last().filter(|_| systems.len() == 1) else {
        console.err("error: a mail carries the report of one visit\n  = help: give a visit, or a system for its last one: rimebook mail harbour/ice-1/2026-06-18\n");
        return Exit::Usage;
    };
    let branding = match branding(loaded) {
        Ok(branding) => branding,
        Err(message) => {
            console.err(&message);
            return Exit::Errors;
        }
    };
    match written(loaded, *last, &branding, into) {
        Ok((place, addressed)) => {
            console.out(&format!("{place}\n"));
            if !addressed {
                console.err(
                    "note: the draft has no recipient; `report-to` in site.toml would name one\n",
                );
            }
            Exit::Fine
        }
        Err(NotPrinted::Errors(mut diagnostics)) => {
            diagnostics.sort(&loaded.sources);
            console.err(&render(&diagnostics, &loaded.sources, console.look));
            console.err(&format!("{}; no mail was made\n", summary(&diagnostics)));
            Exit::Errors
        }
        Err(NotPrinted::OurFault(message)) => {
            console.err(&format!("fault in the program: {message}\n"));
            Exit::OurFault
        }
        Err(NotPrinted::Branding(message)) => {
            console.err(&format!("error: {message}\n"));
            Exit::Errors
        }
        Err(NotPrinted::Disk(message)) => {
            console.err(&format!("error: {message}\n"));
            Exit::Disk
        }
    }
}

/// The place of the draft, and whether it has a recipient.
fn written(
    loaded: &Loaded,
    (site, system, number): (&Site, &System, usize),
    branding: &Branding,
    into: Option<&Path>,
) -> Result<(String, bool), NotPrinted> {
    let report = print_report(loaded, (site, system, number), branding, &Manner::default())?;
    let visit = &system.visits[number];
    let text = |value: Option<&Noted<String>>| value.map(|noted| noted.value.clone());
    let contractor = loaded
        .book
        .note
        .as_ref()
        .and_then(|note| note.contractor.as_ref());
    let name = visit.path.replace('/', "_");
    let envelope = Envelope {
        from: text(contractor.and_then(|contractor| contractor.email.as_ref())),
        to: text(site.note.as_ref().and_then(|note| note.report_to.as_ref())),
        date: visit.end().map_or(0, |end| end.instant.as_second()),
        ident: visit.path.clone(),
        digest: hexadecimal(&Sha256::digest(&report.pdf)),
        file: format!("{name}.pdf"),
        telephone: text(contractor.and_then(|contractor| contractor.telephone.as_ref())),
        words: Words::of(site.language),
    };
    let mail = draft(&report.data, &report.pdf, &envelope)
        .map_err(|error| NotPrinted::Disk(error.to_string()))?;
    let folder = into.map_or_else(|| loaded.root.join("reports"), PathBuf::from);
    let place =
        write_beside(loaded, &folder, &format!("{name}.eml"), &mail).map_err(NotPrinted::Disk)?;
    Ok((place, envelope.to.is_some()))
}
