//! `start`: the folder of a visit, made from the register and what stands open; nothing is written over.

use crate::command::console::{Console, Exit};
use crate::command::fresh_visit::{FreshVisit, files, purpose_by_what_is_open};
use crate::command::loaded::{Loaded, Target, systems};
use crate::job::{Site, System};
use crate::text::{nearest, or_list};
use crate::vocabulary::visit_file::Purpose;
use crate::vocabulary::{Identifier, Word};
use jiff::Timestamp;
use jiff::civil::Date;
use serde_json::json;
use std::fs;
use std::io;
use std::path::Path;

/// What was asked for on the command line.
pub struct Wanted<'a> {
    /// Day of the visit; today if left out.
    pub on: Option<Date>,
    /// Who goes.
    pub by: Option<&'a str>,
    /// What for.
    pub purpose: Option<&'a str>,
}

/// Most visits that a system can have on one day.
const MOST_A_DAY: u8 = 99;

/// Makes the folder of a visit to the system that a target names.
pub fn start(
    loaded: &Loaded,
    target: &Target,
    wanted: &Wanted<'_>,
    as_json: bool,
    console: &Console,
) -> Exit {
    let made = system_of(loaded, target).and_then(|(site, system)| {
        let purpose = purpose_of(wanted)?;
        let by = person_of(loaded, wanted)?;
        Ok((site, system, purpose, by))
    });
    let (site, system, purpose, by) = match made {
        Ok(made) => made,
        Err(message) => {
            console.err(&message);
            return Exit::Usage;
        }
    };
    let today = || site.zone.to_datetime(Timestamp::now()).date();
    let date = wanted.on.unwrap_or_else(today);
    let fresh = FreshVisit {
        loaded,
        site,
        system,
        date,
        purpose: purpose.unwrap_or_else(|| purpose_by_what_is_open(system, date)),
        by,
    };
    let files = files(&fresh);
    match write(&loaded.root.join(&system.path), fresh.date, &files) {
        Ok(name) => {
            let path = format!("{}/{name}", system.path);
            if as_json {
                let names: Vec<&str> = files.iter().map(|(name, _)| *name).collect();
                let told = json!({
                    "version": 1, "command": "start", "visit": path, "files": names,
                    "look-first": fresh.look_first(),
                });
                console.out(&format!("{told:#}\n"));
            } else {
                console.out(&format!("made {path}\n"));
                for point in fresh.look_first() {
                    console.out(&format!("  look first: {point}\n"));
                }
            }
            Exit::Fine
        }
        Err(error) => {
            console.err(&format!(
                "error: the folder of the visit could not be made in {}: {error}\n",
                system.path
            ));
            Exit::Disk
        }
    }
}

/// The system of a target: itself, that of a visit, or the only one below it.
fn system_of<'a>(loaded: &'a Loaded, target: &Target) -> Result<(&'a Site, &'a System), String> {
    let all: Vec<(&Site, &System)> = systems(&loaded.book).collect();
    let inside = |path: &str| target.holds(path) || target.path.starts_with(&format!("{path}/"));
    let under: Vec<_> = all
        .iter()
        .filter(|(_, system)| inside(&system.path))
        .collect();
    match under.as_slice() {
        [one] => Ok(**one),
        [] => Err(format!(
            "error: `{}` is no system of this book\n  = why: a visit is made in the folder of a system, one with system.toml\n",
            target.path
        )),
        several => {
            let paths: Vec<&str> = several.iter().map(|(_, s)| s.path.as_str()).collect();
            Err(format!(
                "error: which system?\n  = why: a visit is made in the folder of one system\n  = help: name {}\n",
                or_list(&paths)
            ))
        }
    }
}

fn purpose_of(wanted: &Wanted<'_>) -> Result<Option<Purpose>, String> {
    let Some(word) = wanted.purpose else {
        return Ok(None);
    };
    let words: Vec<&str> = Purpose::WORDS.iter().map(|(word, _, _)| *word).collect();
    Purpose::of(word).map(Some).ok_or_else(|| {
        format!(
            "error: `{word}` is not a purpose of a visit\n  = help: the words are {}\n",
            or_list(&words)
        )
    })
}

fn person_of(loaded: &Loaded, wanted: &Wanted<'_>) -> Result<Option<Identifier>, String> {
    let people: Vec<&Identifier> = loaded.book.people.iter().map(|(id, _)| id).collect();
    let Some(by) = wanted.by else {
        // Where there is only one, who else?
        return Ok((people.len() == 1).then(|| people[0].clone()));
    };
    let names: Vec<&str> = people.iter().map(|id| id.0.as_str()).collect();
    match people.iter().find(|id| id.0 == by) {
        Some(id) => Ok(Some((*id).clone())),
        None => Err(format!(
            "error: there is no person `{by}` in rimebook.toml\n{}",
            match nearest(by, &names) {
                Some(near) => format!("  = help: did you mean `{near}`?\n"),
                None => format!("  = help: known are {}\n", or_list(&names)),
            }
        )),
    }
}

/// Writes the files beside and moves them into the first free folder of the day; gives its name.
fn write(system: &Path, day: Date, files: &[(&'static str, String)]) -> io::Result<String> {
    let beside = tempfile::Builder::new()
        .prefix(".start-")
        .tempdir_in(system)?;
    for (name, text) in files {
        fs::write(beside.path().join(name), text)?;
    }
    for number in 1..=MOST_A_DAY {
        let name = match number {
            1 => day.to_string(),
            number => format!("{day}-{number}"),
        };
        let place = system.join(&name);
        // To make the folder is to take the name: of two at once only one can.
        match fs::create_dir(&place) {
            Ok(()) => {
                for (file, _) in files {
                    fs::rename(beside.path().join(file), place.join(file))?;
                }
                return Ok(name);
            }
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => {}
            Err(error) => return Err(error),
        }
    }
    Err(io::Error::other("the system has 99 visits on that day"))
}
