//! `due`: what falls due across all sites, what is overdue first.

use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::job::{Site, System};
use crate::language::Words;
use crate::quantity::{Duration, parse};
use crate::ruleset::{Event, Obligation, equipment_dates, obligations, stands_at};
use crate::text::Sources;
use jiff::civil::Date;
use jiff::{Timestamp, ToSpan};
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;

/// Something due.
#[derive(Debug)]
pub struct Item {
    /// What has to be done.
    pub what: String,
    /// Where: system, circuit and point, or a thing of the contractor's.
    pub place: String,
    /// The last day.
    pub by: Date,
    /// Not before.
    pub not_before: Option<String>,
    /// Where it is asked for.
    pub because: String,
    /// What it counts from, with file and line.
    pub from: String,
    /// The day it counts from.
    pub from_day: Date,
    /// More about it.
    pub note: Option<String>,
    /// Whether the rule is from memory in part.
    pub verify: bool,
}

/// All that is due, as at a day.
#[derive(Debug)]
pub struct Due {
    /// The day.
    pub on: Date,
    /// How many days ahead.
    pub days: i64,
    /// The earliest first, so that what is overdue leads.
    pub items: Vec<Item>,
}

/// A way to print it.
pub type Print = fn(&Due) -> String;

/// Tells what is due.
pub fn due(
    loaded: &Loaded,
    target: &Target,
    (on, within): (Option<Date>, &str),
    print: Print,
    into: Option<&Path>,
    console: &Console,
) -> Exit {
    let days = match parse::<Duration>(within) {
        Ok(measured) => (measured.value.si() / 86_400.0).floor() as i64,
        Err(refusal) => {
            console.err(&format!(
                "error: --within: {}\n  = help: write it with its unit, such as \"90 days\"\n",
                refusal.what
            ));
            return Exit::Usage;
        }
    };
    let on = on.unwrap_or_else(|| today(loaded));
    let Ok(last) = on.checked_add(days.clamp(0, 36_525).days()) else {
        console.err("error: --within reaches beyond the calendar\n");
        return Exit::Usage;
    };
    let mut items = Vec::new();
    for (site, system) in systems_of(loaded, target) {
        for duty in obligations(site, system, stands_at(system, on), on) {
            if duty.done.is_none() && duty.by <= last {
                items.push(item(&duty, system, &loaded.sources));
            }
        }
    }
    if target.path.is_empty() {
        for date in equipment_dates(&loaded.book, on) {
            if date.by <= last {
                items.push(Item {
                    what: date.what,
                    place: date.about,
                    by: date.by,
                    not_before: None,
                    because: date.source.to_owned(),
                    from: counted(&date.from, &loaded.sources),
                    from_day: date.from.day,
                    note: None,
                    verify: false,
                });
            }
        }
    }
    items.sort_by(|a, b| (a.by, &a.place, &a.what).cmp(&(b.by, &b.place, &b.what)));
    let due = Due { on, days, items };
    let exit = finish(loaded, target, &print(&due), into, console);
    match exit {
        Exit::Fine if !due.items.is_empty() => Exit::Due,
        exit => exit,
    }
}

/// Writes what was printed, and tells that errors may hide something.
pub fn finish(
    loaded: &Loaded,
    target: &Target,
    text: &str,
    into: Option<&Path>,
    console: &Console,
) -> Exit {
    match into {
        None => console.out(text),
        Some(path) => {
            if let Err(error) = write(path, text) {
                console.err(&format!("error: {}: {error}\n", path.display()));
                return Exit::Disk;
            }
        }
    }
    let errors = loaded.diagnostics_of(target).errors();
    if errors == 0 {
        return Exit::Fine;
    }
    let count = if errors == 1 {
        "1 error stands".to_owned()
    } else {
        format!("{errors} errors stand")
    };
    console.err(&format!(
        "error: {count} in these notes, so that something may be missing here\n  = help: run `rimebook check` and put it right\n"
    ));
    Exit::Errors
}

/// Writes beside the target and renames, so that no half file is ever seen.
fn write(path: &Path, text: &str) -> std::io::Result<()> {
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty())
        .unwrap_or(Path::new("."));
    let mut builder = tempfile::Builder::new();
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        builder.permissions(std::fs::Permissions::from_mode(0o644));
    }
    let mut file = builder.tempfile_in(folder)?;
    file.write_all(text.as_bytes())?;
    file.persist(path).map_err(|error| error.error)?;
    Ok(())
}

/// The systems of a part of the book; those that hold it, if it is a visit.
pub fn systems_of<'a>(loaded: &'a Loaded, target: &Target) -> Vec<(&'a Site, &'a System)> {
    loaded
        .book
        .sites
        .iter()
        .flat_map(|site| site.systems.iter().map(move |system| (site, system)))
        .filter(|(_, system)| {
            target.holds(&system.path) || target.path.starts_with(&format!("{}/", system.path))
        })
        .collect()
}

/// Today at the first site.
pub fn today(loaded: &Loaded) -> Date {
    let zone = loaded
        .book
        .sites
        .first()
        .map_or(jiff::tz::TimeZone::UTC, |site| site.zone.clone());
    zone.to_datetime(Timestamp::now()).date()
}

fn counted(event: &Event, sources: &Sources) -> String {
    format!(
        "{} on {} ({})",
        event.what,
        event.day,
        sources.place(event.span)
    )
}

fn item(duty: &Obligation, system: &System, sources: &Sources) -> Item {
    let english = Words::english();
    let mut place = system.path.clone();
    if let Some(circuit) = duty.circuit.filter(|_| system.several_circuits()) {
        place += &format!(", {}", system.circuit_name(circuit));
    }
    if let Some(point) = &duty.point {
        place += &format!(", {point}");
    }
    let not_before = duty.not_before_words.as_ref().map(|words| {
        let words = english.text(words);
        duty.not_before.map_or_else(
            || words.clone(),
            |at| {
                format!(
                    "{words}: {}",
                    crate::job::minutes(at.civil).replace('T', " ")
                )
            },
        )
    });
    Item {
        what: english.text(&duty.what),
        place,
        by: duty.by,
        not_before,
        because: english.text(&duty.because()),
        from: counted(&duty.from, sources),
        from_day: duty.from.day,
        note: duty.note.clone(),
        verify: duty.verify(),
    }
}

impl Due {
    /// Days from an item's last day to the day looked at: more than nothing if it is overdue.
    pub fn late(&self, item: &Item) -> i64 {
        i64::from((self.on - item.by).get_days())
    }
}

/// For people.
pub fn people(due: &Due) -> String {
    let overdue = due.items.iter().filter(|item| due.late(item) > 0).count();
    let mut text = format!(
        "On {}, and within {} days: {} due, {overdue} of them overdue\n",
        due.on,
        due.days,
        due.items.len()
    );
    for item in &due.items {
        let when = match due.late(item) {
            0 => "today".to_owned(),
            1 => "1 day overdue".to_owned(),
            late @ 2.. => format!("{late} days overdue"),
            -1 => "in 1 day".to_owned(),
            early => format!("in {} days", -early),
        };
        text += &format!("\n{}  {when}: {}\n", item.by, item.what);
        text += &format!("  {}\n  {}\n", item.place, item.because);
        if item.verify {
            text += "  from memory in part: verify\n";
        }
        if let Some(not_before) = &item.not_before {
            text += &format!("  {not_before}\n");
        }
        text += &format!("  counted from: {}\n", item.from);
        if let Some(note) = &item.note {
            text += &format!("  {note}\n");
        }
    }
    text
}

/// For machines.
pub fn json(due: &Due) -> String {
    let items: Vec<Value> = due
        .items
        .iter()
        .map(|item| {
            json!({
                "by": item.by.to_string(),
                "days-overdue": due.late(item).max(0),
                "what": item.what,
                "where": item.place,
                "because": item.because,
                "not-before": item.not_before,
                "counted-from": item.from,
                "note": item.note,
                "verify": item.verify,
            })
        })
        .collect();
    let value = json!({
        "version": 1,
        "command": "due",
        "on": due.on.to_string(),
        "within-days": due.days,
        "items": items,
    });
    format!("{value:#}\n")
}
