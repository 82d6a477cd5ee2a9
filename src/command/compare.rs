//! `compare`: a visit beside an earlier one, each point beside its own last look.

use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::command::points::life_json;
use crate::history::{
    Compared, FileDifference, PointHistory, Proposal, State, differences, notes_difference,
    proposals,
};
use crate::job::{Site, System};
use crate::language::Words;
use crate::report::visit_figures::VisitFigures;
use crate::text::{nearest, or_list};
use serde_json::{Value, json};
use std::fmt::Write;

/// What is asked of a comparison.
#[derive(Clone, Copy, Debug)]
pub struct Options<'o> {
    /// The visit to compare with, by its folder; the one before if left out.
    pub with: Option<&'o str>,
    /// Whether the notes themselves are compared.
    pub notes: bool,
    /// For machines.
    pub json: bool,
}

/// Two visits of a system, compared.
struct Comparison<'b> {
    system: &'b System,
    then: Option<usize>,
    now: usize,
    points: Vec<PointHistory>,
    proposals: Vec<Proposal>,
    differences: Vec<Compared>,
    notes: Vec<FileDifference>,
}

/// Compares the last visits of a part of the book, or the visit that is named.
pub fn compare(loaded: &Loaded, target: &Target, options: &Options<'_>, console: &Console) -> Exit {
    let systems = loaded.last_visits_of(target);
    if options.with.is_some() && systems.len() != 1 {
        console.err("error: --with names a visit of one system\n  = help: give the path of that system or of one of its visits\n");
        return Exit::Usage;
    }
    let mut compared = Vec::new();
    for (site, system, now) in systems {
        let then = match options.with {
            None => now.checked_sub(1),
            Some(name) => match named(system, name) {
                Ok(number) if number == now => {
                    console.err("error: --with names the visit itself\n  = help: give another visit of the system\n");
                    return Exit::Usage;
                }
                Ok(number) => Some(number),
                Err(message) => {
                    console.err(&message);
                    return Exit::Usage;
                }
            },
        };
        compared.push(comparison(loaded, site, system, then, now, options.notes));
    }
    let gaps = loaded.gaps(target);
    console.err(gaps.as_deref().unwrap_or_default());
    if options.json {
        let list: Vec<Value> = compared.iter().map(|c| c.json(loaded)).collect();
        let value = json!({ "version": 1, "command": "compare", "comparisons": list });
        console.out(&format!("{value:#}\n"));
    } else {
        for comparison in &compared {
            console.out(&comparison.page(loaded));
        }
        if compared.is_empty() {
            console.out("No visit here yet, so there is nothing to compare.\n");
        }
    }
    if gaps.is_some() {
        Exit::Errors
    } else {
        Exit::Fine
    }
}

/// The visit of a name or a path that ends with it.
fn named(system: &System, name: &str) -> Result<usize, String> {
    let folder = name.trim_end_matches('/').rsplit('/').next();
    let folder = folder.unwrap_or(name);
    let names: Vec<&str> = system
        .visits
        .iter()
        .map(|visit| visit.path.rsplit('/').next().unwrap_or(&visit.path))
        .collect();
    if let Some(number) = names.iter().position(|known| *known == folder) {
        return Ok(number);
    }
    let mut text = format!("error: `{folder}` is no visit of {}\n", system.path);
    if let Some(near) = nearest(folder, &names) {
        let _ = writeln!(text, "  = help: did you mean `{near}`?");
    }
    let _ = writeln!(text, "  = visits: {}", or_list(&names));
    Err(text)
}

fn comparison<'b>(
    loaded: &Loaded,
    site: &Site,
    system: &'b System,
    then: Option<usize>,
    now: usize,
    notes: bool,
) -> Comparison<'b> {
    let mut all = Vec::new();
    let mut words = Vec::new();
    if let Some(then) = then {
        all = differences(site, system, then, now);
        all.extend(rates(site, system, then, now));
        all.sort_by_key(|compared| order(compared.group));
        if notes {
            words = notes_difference(&loaded.sources, &system.visits[then], &system.visits[now]);
        }
    }
    Comparison {
        system,
        then,
        now,
        points: system
            .points
            .iter()
            .map(|(id, _)| PointHistory::of(system, id, now))
            .collect(),
        proposals: proposals(system, now),
        differences: all,
        notes: words,
    }
}

fn order(group: &str) -> usize {
    ["charge", "rate", "test", "operating"]
        .iter()
        .position(|known| *known == group)
        .unwrap_or(4)
}

/// Loss rates worked out at both visits.
fn rates(site: &Site, system: &System, then: usize, now: usize) -> Vec<Compared> {
    let (Some(before), Some(after)) = (
        VisitFigures::of(site, system, then),
        VisitFigures::of(site, system, now),
    ) else {
        return Vec::new();
    };
    let printed = |figures: &VisitFigures, id: &str| {
        let figure = figures.all().into_iter().find(|figure| figure.id == id)?;
        Some(figure.value.print(site.units))
    };
    let mut found: Vec<(String, String)> = Vec::new();
    for figures in [&after, &before] {
        for figure in figures.all() {
            let rate = figure.id.ends_with("loss-per-year") || figure.id.contains("leak-rate/");
            if rate && !found.iter().any(|(id, _)| *id == figure.id) {
                found.push((figure.id.clone(), Words::english().text(&figure.title)));
            }
        }
    }
    found
        .into_iter()
        .map(|(id, what)| Compared {
            group: "rate",
            what,
            then: printed(&before, &id),
            now: printed(&after, &id),
            note: None,
        })
        .collect()
}

/// What came back first, what needs nothing last.
fn rank(state: &State) -> usize {
    match state {
        State::LeakingAgain { .. } => 0,
        State::StillLeaking { .. } => 1,
        State::New => 2,
        State::LeftOpen { .. } => 3,
        State::RepairedNotRetested { .. } => 4,
        State::RepairedHolding { .. } => 5,
        State::SuspectCleared => 6,
        State::NotLookedAt => 7,
        State::TakenOut => 8,
        State::NothingShown => 9,
    }
}

impl Comparison<'_> {
    fn page(&self, loaded: &Loaded) -> String {
        let visits = &self.system.visits;
        let mut out = match self.then {
            Some(then) => format!("{} beside {}\n", visits[self.now].path, visits[then].path),
            None => format!(
                "{}: the first visit of this system\n",
                visits[self.now].path
            ),
        };
        out += "\nPoints, each beside its own last look\n";
        let mut lives: Vec<&PointHistory> = self.points.iter().collect();
        lives.sort_by_key(|life| rank(&life.state));
        let quiet = |life: &&&PointHistory| rank(&life.state) >= 7;
        for life in lives.iter().filter(|life| !quiet(life)) {
            let _ = writeln!(
                out,
                "  {}\n    {}",
                self.system.point_name(&life.point),
                Words::english().text(&life.state.describe())
            );
        }
        for wanted in [State::NothingShown, State::NotLookedAt, State::TakenOut] {
            let ids: Vec<&str> = lives
                .iter()
                .filter(|life| life.state == wanted)
                .map(|life| life.point.0.as_str())
                .collect();
            if !ids.is_empty() {
                let _ = writeln!(out, "  {}: {}", wanted.word(), ids.join(", "));
            }
        }
        if self.points.is_empty() {
            out += "  no point is registered in system.toml\n";
        }
        out += &self.proposed(loaded);
        out += &self.compared();
        out += &self.words();
        out + "\n"
    }

    fn proposed(&self, loaded: &Loaded) -> String {
        let mut out = String::new();
        for proposal in &self.proposals {
            let _ = write!(
                out,
                "\nproposal: `{}` reads like `{}` ({})\n  --> {}\n  = why: a finding without an id is compared with no earlier visit, and not as this point in the report\n  = help: if it is the same place, write `{}`\n",
                proposal.title,
                proposal.like,
                proposal.point,
                loaded.sources.place(proposal.heading),
                proposal.line
            );
        }
        out
    }

    fn compared(&self) -> String {
        let mut out = String::new();
        let mut group = "";
        for line in &self.differences {
            if line.group != group {
                group = line.group;
                let _ = writeln!(
                    out,
                    "\n{}",
                    match group {
                        "charge" => "Charge",
                        "rate" => "Loss rates",
                        "test" => "Tests",
                        _ => "Operating readings, as the plant was left",
                    }
                );
            }
            let value = |value: &Option<String>| value.clone().unwrap_or_else(|| "-".to_owned());
            let values = if line.then.is_none() && line.now.is_none() {
                String::new()
            } else if line.then == line.now {
                format!(" {}, as before", value(&line.now))
            } else {
                format!(" {} → {}", value(&line.then), value(&line.now))
            };
            let note = line.note.as_ref().map(|note| format!(" ({note})"));
            let _ = writeln!(out, "  {}:{values}{}", line.what, note.unwrap_or_default());
        }
        out
    }

    fn words(&self) -> String {
        let mut out = String::new();
        for difference in &self.notes {
            let _ = write!(out, "\n{}\n", difference.file);
            for line in &difference.lines {
                let _ = writeln!(out, "  {line}");
            }
        }
        out
    }

    fn json(&self, loaded: &Loaded) -> Value {
        let path = |number: usize| self.system.visits[number].path.clone();
        json!({
            "system": self.system.path,
            "visit": path(self.now),
            "with": self.then.map(path),
            "points": self.points.iter().map(|life| life_json(self.system, life, &loaded.sources)).collect::<Vec<_>>(),
            "proposals": self.proposals.iter().map(|proposal| json!({
                "place": loaded.sources.place(proposal.heading),
                "title": proposal.title,
                "point": proposal.point.0,
                "like": proposal.like,
                "likeness": (proposal.likeness * 100.0).round() / 100.0,
                "line": proposal.line,
            })).collect::<Vec<_>>(),
            "differences": self.differences,
            "notes": self.notes.iter().map(|difference| json!({
                "file": difference.file, "lines": difference.lines,
            })).collect::<Vec<_>>(),
        })
    }
}
