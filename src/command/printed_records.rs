//! `records --pdf`: the records of each system in print, for an inspector.

use crate::command::console::{Console, Exit};
use crate::command::due::systems_of;
use crate::command::loaded::{Loaded, Target};
use crate::command::printed_history::scene_of;
use crate::command::printed_report::{
    Branding, NotPrinted, branding, digests, fingerprint, set_in_type,
};
use crate::command::report::write_beside;
use crate::job::{Site, System};
use crate::report::compose::records_pack;
use crate::report::typeset::Pages;
use crate::ruleset::{Present, RecordRow, records, stands_at};
use crate::text::render;
use jiff::civil::Date;
use serde_json::json;
use std::path::Path;

/// Makes the PDFs: as at a day, or as at the last visit of each system.
pub fn print_records(
    loaded: &Loaded,
    target: &Target,
    on: Option<Date>,
    into: Option<&Path>,
    console: &Console,
) -> Exit {
    let branding = match branding(loaded) {
        Ok(branding) => branding,
        Err(message) => {
            console.err(&message);
            return Exit::Errors;
        }
    };
    let folder = into.map_or_else(|| loaded.root.join("reports"), Path::to_path_buf);
    let mut exit = Exit::Fine;
    for (site, system) in systems_of(loaded, target) {
        let count = on.map_or(system.visits.len(), |on| stands_at(system, on));
        let Some(number) = count.checked_sub(1) else {
            console.err(&format!(
                "error: {}: there is no visit up to this day\n  = help: records without --pdf tells what is missing all the same\n",
                system.path
            ));
            return Exit::Usage;
        };
        let on = on.unwrap_or_else(|| system.visits[number].last_day());
        let rows = records(&loaded.book, site, system, count, on);
        let missing = rows
            .iter()
            .any(|row| matches!(row.present, Present::Missing { .. }));
        let name = format!("{}_records.pdf", system.path.replace('/', "_"));
        let pdf = match print(loaded, (site, system, number), &rows, on, &branding) {
            Ok(pdf) => pdf,
            Err(why) => {
                exit = refused(loaded, &system.path, why, console);
                continue;
            }
        };
        match write_beside(loaded, &folder, &name, &pdf) {
            Ok(place) => console.out(&format!("{place}\n")),
            Err(message) => {
                console.err(&format!("error: {message}\n"));
                return Exit::Disk;
            }
        }
        if missing && exit == Exit::Fine {
            exit = Exit::Due;
        }
    }
    exit
}

fn print(
    loaded: &Loaded,
    visit: (&Site, &System, usize),
    rows: &[RecordRow],
    on: Date,
    branding: &Branding,
) -> Result<Vec<u8>, NotPrinted> {
    let (site, system, number) = visit;
    let errors = loaded.errors_against(site, system, number);
    if errors.errors() > 0 {
        return Err(NotPrinted::Errors(errors));
    }
    let mark = fingerprint(loaded, &[visit]);
    let scene = scene_of(loaded, visit, &mark)
        .ok_or_else(|| NotPrinted::OurFault("the visit has no figures".to_owned()))?;
    let pack = records_pack(&scene, rows, on);
    let attachment = json!({
        "version": 1,
        "visit": scene.visit.path,
        "site": site.name(),
        "system": system.name(),
        "fingerprint": mark,
        "files": digests(loaded, &[visit]),
        "records": &pack,
    });
    let ident = format!("rimebook records {}", system.path);
    set_in_type(Pages::Records(&pack), branding, &attachment, &ident)
}

fn refused(loaded: &Loaded, path: &str, why: NotPrinted, console: &Console) -> Exit {
    match why {
        NotPrinted::Errors(diagnostics) => {
            console.err(&render(&diagnostics, &loaded.sources, console.look));
            console.err(&format!(
                "error: {path}: no records are printed while an error stands in a file that they read\n"
            ));
            Exit::Errors
        }
        NotPrinted::Branding(message) | NotPrinted::Disk(message) => {
            console.err(&format!("error: {path}: {message}\n"));
            Exit::Errors
        }
        NotPrinted::OurFault(message) => {
            console.err(&format!("fault in the program, {path}: {message}\n"));
            Exit::OurFault
        }
    }
}
