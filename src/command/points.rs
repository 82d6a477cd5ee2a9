//! `points`: the register of points with the life of each, and which kinds leak most.

use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::history::{KindRate, LEGEND, PointHistory, Seen, kinds, time_line};
use crate::job::{Site, System};
use crate::language::Words;
use crate::report::compose::history;
use crate::text::{Sources, Text};
use crate::vocabulary::Identifier;
use serde_json::{Value, json};
use std::fmt::Write;

/// Width of the page on screen, columns.
const WIDTH: usize = 96;

/// Prints the points of a part of the book.
pub fn points(loaded: &Loaded, target: &Target, as_json: bool, console: &Console) -> Exit {
    let exit = match loaded.gaps(target) {
        None => Exit::Fine,
        Some(message) => {
            console.err(&message);
            Exit::Errors
        }
    };
    let systems = loaded.last_visits_of(target);
    let lives: Vec<(&Site, &System, usize, Vec<PointHistory>)> = systems
        .iter()
        .map(|(site, system, last)| (*site, *system, *last, in_order(system, *last)))
        .collect();
    let among: Vec<&str> = lives
        .iter()
        .map(|(_, system, ..)| system.path.as_str())
        .collect();
    let rates = if lives.len() > 1 {
        kinds(&loaded.book, |system| among.contains(&system.path.as_str()))
    } else {
        Vec::new()
    };
    if as_json {
        let systems: Vec<Value> = lives
            .iter()
            .map(|(site, system, last, lives)| {
                json!({
                    "system": system.path,
                    "as-at": system.visits[*last].path,
                    "history": history(site, system, *last, Words::english()),
                    "points": lives.iter().map(|life| life_json(system, life, &loaded.sources)).collect::<Vec<_>>(),
                })
            })
            .collect();
        let kinds: Vec<Value> = rates.iter().map(kind_json).collect();
        let value = json!({
            "version": 1, "command": "points", "systems": systems, "kinds": kinds,
        });
        console.out(&format!("{value:#}\n"));
        return exit;
    }
    for (_, system, last, lives) in &lives {
        console.out(&page(system, *last, lives));
    }
    if lives.is_empty() {
        console.out("No visit here yet, so nothing is known of its points.\n");
        return exit;
    }
    if !rates.is_empty() {
        console.out(&kinds_table(&rates));
    }
    console.out(&legend());
    exit
}

/// The lives of a system's points, those that need a lasting cure first, then those that leaked.
fn in_order(system: &System, last: usize) -> Vec<PointHistory> {
    let mut lives: Vec<PointHistory> = system
        .points
        .iter()
        .map(|(id, _)| PointHistory::of(system, id, last))
        .collect();
    lives.sort_by_key(|life| {
        let times = life.of_this_part().count();
        let rank = match (life.needs_cure(), life.spells.is_empty()) {
            (true, _) => 0,
            (false, false) => 1,
            (false, true) => 2,
        };
        (rank, usize::MAX - times)
    });
    lives
}

fn page(system: &System, last: usize, lives: &[PointHistory]) -> String {
    let mut out = format!(
        "{}  {}  as at the end of {}\n",
        system.name(),
        system.path,
        system.visits[last].last_day()
    );
    let mut heading = "";
    for life in lives {
        let next = match (life.needs_cure(), life.spells.is_empty()) {
            (true, _) => "Need a lasting cure: leaked more than once, or not lastingly repaired",
            (false, false) => "Have leaked",
            (false, true) => "No leak known",
        };
        if next != heading {
            heading = next;
            let _ = write!(out, "\n{heading}\n");
        }
        out += &entry(system, life);
    }
    if lives.is_empty() {
        out += "\nNo point is registered in system.toml.\n";
    }
    out + "\n"
}

fn entry(system: &System, life: &PointHistory) -> String {
    let kind = system
        .points
        .get(&life.point)
        .and_then(|note| note.kind.as_ref());
    let mut head = format!("  {}  {}", life.point, system.point_name(&life.point));
    if let Some(kind) = kind {
        let _ = write!(head, " ({})", kind.value);
    }
    let line = time_line(life);
    let mut out = format!("{head}\n");
    if !line.is_empty() {
        out += &wrapped(&line, "    ");
    }
    let mut told = vec![Words::english().text(&life.state.describe())];
    if !life.spells.is_empty() {
        told.insert(0, times(life));
    }
    let held: Vec<String> = life.spells.iter().filter_map(held).collect();
    if !held.is_empty() {
        told.insert(1, format!("repairs held {} days", held.join(", ")));
    }
    let _ = writeln!(out, "    {}", told.join("; "));
    match last_look(life) {
        Some((day, with)) if with.is_empty() => {
            let _ = writeln!(out, "    last looked at {day}");
        }
        Some((day, with)) => {
            let _ = writeln!(out, "    last looked at {day}: {}", with.join(", "));
        }
        None => out += "    never looked at\n",
    }
    out
}

fn held(spell: &crate::history::Spell) -> Option<String> {
    Some(spell.held?.to_string())
}

/// How often it leaked, old parts told apart.
fn times(life: &PointHistory) -> String {
    let counted = |number: usize| match number {
        1 => "once".to_owned(),
        2 => "twice".to_owned(),
        n => format!("{n} times"),
    };
    let now = life.of_this_part().count();
    let old = life.spells.len() - now;
    match (now, old) {
        (now, 0) => format!("leaked {}", counted(now)),
        (0, old) => format!("leaked {} before its part was replaced", counted(old)),
        (now, old) => format!(
            "leaked {}, and {} before its part was replaced",
            counted(now),
            counted(old)
        ),
    }
}

fn last_look(life: &PointHistory) -> Option<(jiff::civil::Date, Vec<&'static str>)> {
    let step = life.last_look()?;
    let with = step.with.iter().map(|looked| looked.word);
    Some((step.until, with.collect()))
}

/// A line of time broken between its steps.
fn wrapped(line: &str, indent: &str) -> String {
    let mut out = String::new();
    let mut row = String::new();
    for part in line.split(" · ") {
        let long = row.chars().count() + part.chars().count() + 3 + indent.len() > WIDTH;
        if !row.is_empty() && long {
            let _ = writeln!(out, "{indent}{row} ·");
            row.clear();
        }
        if !row.is_empty() {
            row += " · ";
        }
        row += part;
    }
    out + &format!("{indent}{row}\n")
}

fn legend() -> String {
    let mut out = "The line of time: year and month, then\n".to_owned();
    for (mark, meaning) in LEGEND {
        let _ = writeln!(out, "  {mark:<4} {meaning}");
    }
    out
}

fn kinds_table(rates: &[KindRate]) -> String {
    let mut out = "Leaks by kind of point, over these systems\n\n".to_owned();
    let wide = rates.iter().map(|r| r.kind.chars().count()).max();
    let wide = wide.unwrap_or(0).max(4);
    let _ = writeln!(
        out,
        "  {:<wide$}  points  leaks  point-years  per point-year  95 % interval",
        "kind"
    );
    for rate in rates {
        let number = |value: f64| format!("{value:.2}");
        let _ = writeln!(
            out,
            "  {:<wide$}  {:>6}  {:>5}  {:>11.1}  {:>14}  {}",
            rate.kind,
            rate.points,
            rate.leaks,
            rate.point_years,
            rate.rate.map_or_else(|| "-".to_owned(), number),
            rate.interval.map_or_else(
                || "-".to_owned(),
                |(low, high)| format!("{low:.2} to {high:.2}")
            ),
        );
    }
    out += "\nFew leaks give wide intervals: kinds whose intervals overlap are not shown to differ. The\ninterval is the exact one of a Poisson count. Point-years run from the first record of each\nsystem to its last visit, since leaks before that are not known.\n\n";
    out
}

fn kind_json(rate: &KindRate) -> Value {
    json!({
        "kind": rate.kind, "points": rate.points, "leaks": rate.leaks,
        "point-years": rate.point_years, "per-point-year": rate.rate,
        "interval-95": rate.interval.map(|(low, high)| [low, high]),
    })
}

/// A point's life for machines.
pub(super) fn life_json(system: &System, life: &PointHistory, sources: &Sources) -> Value {
    let text = |value: Option<&crate::text::Noted<String>>| value.map(|v| v.value.clone());
    let said = |by: Option<&Text>| by.map(|by| Words::english().text(by));
    let note = system.points.get(&life.point);
    let spells: Vec<Value> = life
        .spells
        .iter()
        .map(|spell| {
            json!({
                "found": spell.found.to_string(),
                "by": said(spell.by.as_ref()),
                "seen-again": spell.seen_again.iter().map(ToString::to_string).collect::<Vec<_>>(),
                "repaired": spell.repair.as_ref().map(|repair| json!({
                    "day": repair.day.to_string(), "what": repair.what, "by": said(repair.by.as_ref()),
                    "lasting": repair.lasting,
                    "place": repair.span.map(|span| sources.place(span)),
                })),
                "held-days": spell.held,
                "last-seen-holding": spell.last_held.map(|day| day.to_string()),
                "old-part": spell.old_part,
            })
        })
        .collect();
    let looks: Vec<Value> = life
        .steps
        .iter()
        .filter(|step| step.is_look() || step.seen == Seen::NotReached)
        .map(|step| {
            json!({
                "day": step.day.to_string(),
                "visit": step.visit.and_then(|number| system.visits.get(number)).map(|v| v.path.clone()),
                "by": said(step.by.as_ref()),
                "with": step.with.iter().map(|looked| looked.word).collect::<Vec<_>>(),
                "place": step.span.map(|span| sources.place(span)),
            })
        })
        .collect();
    json!({
        "point": id(&life.point),
        "name": system.point_name(&life.point),
        "kind": note.and_then(|note| text(note.kind.as_ref())),
        "state": life.state.word(),
        "describe": Words::english().text(&life.state.describe()),
        "needs-lasting-cure": life.needs_cure(),
        "times-leaked": life.of_this_part().count(),
        "line": time_line(life),
        "leaks": spells,
        "looks": looks,
    })
}

fn id(point: &Identifier) -> String {
    point.0.clone()
}
