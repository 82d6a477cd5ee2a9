//! `records`: what has to be on record by the rules in force, each field with its place, or missing.

use crate::command::console::{Console, Exit};
use crate::command::due::{finish, systems_of, today};
use crate::command::loaded::{Loaded, Target};
use crate::command::plain_table::comma_table;
use crate::job::{Site, System};
use crate::language::Words;
use crate::ruleset::{Present, RecordRow, records as walk, stands_at};
use jiff::ToSpan;
use jiff::civil::Date;
use serde_json::{Value, json};
use std::path::Path;

/// Records of all systems asked for, as at a day.
#[derive(Debug)]
pub struct Records<'a> {
    on: Date,
    loaded: &'a Loaded,
    systems: Vec<(&'a Site, &'a System, Vec<RecordRow>)>,
}

/// A way to print them.
pub type Print = fn(&Records<'_>) -> String;

/// Tells what is on record and what is missing.
pub fn records(
    loaded: &Loaded,
    target: &Target,
    on: Option<Date>,
    print: Print,
    into: Option<&Path>,
    console: &Console,
) -> Exit {
    let on = on.unwrap_or_else(|| today(loaded));
    let systems = systems_of(loaded, target)
        .into_iter()
        .map(|(site, system)| {
            let rows = walk(&loaded.book, site, system, stands_at(system, on), on);
            (site, system, rows)
        })
        .collect();
    let records = Records {
        on,
        loaded,
        systems,
    };
    let missing = records
        .systems
        .iter()
        .flat_map(|(_, _, rows)| rows)
        .any(is_missing);
    match finish(loaded, target, &print(&records), into, console) {
        Exit::Fine if missing => Exit::Due,
        exit => exit,
    }
}

fn is_missing(row: &RecordRow) -> bool {
    matches!(row.present, Present::Missing { .. })
}

/// What a row says: its value, its place, and the line to write where it is missing.
fn said(row: &RecordRow, loaded: &Loaded) -> (String, String, String) {
    match &row.present {
        Present::Here { value, span } => (
            value.as_ref().map_or_else(
                || {
                    let text = loaded.sources.text(*span).trim_matches('"');
                    text.split_whitespace().collect::<Vec<_>>().join(" ")
                },
                |value| Words::english().text(value),
            ),
            loaded.sources.place(*span),
            String::new(),
        ),
        Present::Missing { file, write } => (String::new(), file.clone(), write.clone()),
    }
}

/// The day of a row's visit.
fn visit_of(row: &RecordRow, system: &System) -> String {
    row.visit
        .and_then(|number| system.visits.get(number))
        .map_or_else(String::new, |visit| {
            visit.path.rsplit('/').next().unwrap_or_default().to_owned()
        })
}

fn circuit_of(row: &RecordRow, system: &System) -> String {
    row.circuit
        .and_then(|number| system.circuits.get(number))
        .and_then(|circuit| circuit.id.as_ref())
        .map_or_else(String::new, ToString::to_string)
}

/// For people.
pub fn people(records: &Records<'_>) -> String {
    let mut text = String::new();
    for (_, system, rows) in &records.systems {
        if rows.is_empty() {
            text += &format!(
                "{}: no rule in force covers it on {}\n\n",
                system.path, records.on
            );
            continue;
        }
        let mut rule = "";
        for row in rows {
            if row.rules.title != rule {
                rule = row.rules.title;
                text += &heading(system, rows, row);
            }
            let (value, place, write) = said(row, records.loaded);
            let visit = visit_of(row, system);
            let mut about = [visit, Words::english().text(&row.about)]
                .into_iter()
                .filter(|part| !part.is_empty())
                .collect::<Vec<_>>()
                .join(", ");
            if !about.is_empty() {
                about = format!(" ({about})");
            }
            let head = format!("{}{about}, {}", row.subject.title(), row.source);
            text += &match &row.present {
                Present::Here { .. } => {
                    format!("  here     {head}\n           {value} · {place}\n")
                }
                Present::Missing { .. } => {
                    format!("  MISSING  {head}\n           write in {place}: {write}\n")
                }
            };
        }
        text.push('\n');
    }
    text.trim_end().to_owned() + "\n"
}

fn heading(system: &System, rows: &[RecordRow], first: &RecordRow) -> String {
    let of_rule = || {
        rows.iter()
            .filter(|row| row.rules.title == first.rules.title)
    };
    let missing = of_rule().filter(|row| is_missing(row)).count();
    let verify = if first.rules.verify {
        "; from memory in part: verify"
    } else {
        ""
    };
    format!(
        "{}: {}, {} fields, {missing} missing; kept {} years ({}){verify}\n",
        system.path,
        first.rules.title,
        of_rule().count(),
        first.rules.records.value,
        first.rules.records.source,
    )
}

/// For machines.
pub fn json(records: &Records<'_>) -> String {
    let systems: Vec<Value> = records
        .systems
        .iter()
        .map(|(_, system, rows)| {
            let fields: Vec<Value> = rows
                .iter()
                .map(|row| {
                    let (value, place, write) = said(row, records.loaded);
                    json!({
                        "rule": row.rules.title,
                        "source": row.source,
                        "verify": row.rules.verify,
                        "field": row.subject.title(),
                        "visit": visit_of(row, system),
                        "circuit": circuit_of(row, system),
                        "about": Words::english().text(&row.about),
                        "missing": is_missing(row),
                        "value": value,
                        "place": place,
                        "write": write,
                    })
                })
                .collect();
            json!({ "system": system.path, "fields": fields })
        })
        .collect();
    let value = json!({
        "version": 1,
        "command": "records",
        "on": records.on.to_string(),
        "systems": systems,
    });
    format!("{value:#}\n")
}

/// A table for an inspector: one row for each field, so that a filter on rule, field, day or status
/// answers a question; one row for each visit would put lists into its cells.
pub fn csv(records: &Records<'_>) -> String {
    let head = [
        "site",
        "system",
        "rule",
        "citation",
        "visit",
        "date",
        "kept until",
        "circuit",
        "field",
        "about",
        "status",
        "value",
        "place",
        "write",
    ]
    .map(str::to_owned);
    let mut table = Vec::new();
    for (site, system, rows) in &records.systems {
        for row in rows {
            let (value, place, write) = said(row, records.loaded);
            let status = if is_missing(row) { "missing" } else { "here" };
            let day = row
                .visit
                .and_then(|number| system.visits.get(number))
                .map(|visit| visit.name.date);
            let kept = day.and_then(|day| day.checked_add(row.rules.records.value.years()).ok());
            let dated = |day: Option<Date>| day.map_or_else(String::new, |day| day.to_string());
            table.push(vec![
                site.name().to_owned(),
                system.name().to_owned(),
                row.rules.title.to_owned(),
                row.source.to_owned(),
                visit_of(row, system),
                dated(day),
                dated(kept),
                circuit_of(row, system),
                row.subject.title().to_owned(),
                Words::english().text(&row.about),
                status.to_owned(),
                value,
                place,
                write,
            ]);
        }
    }
    comma_table(&head, &table).unwrap_or_default()
}
