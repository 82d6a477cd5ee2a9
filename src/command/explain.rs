//! `explain`: what a caution means, or how a figure was worked out.

use crate::caution;
use crate::command::console::{Console, Exit};
use crate::command::loaded::{LoadFault, load};
use crate::report::explanation::explanations;
use crate::report::visit_figures::VisitFigures;
use crate::text::{nearest, or_list, quoted_or};
use serde_json::json;
use std::path::Path;

/// Explains a caution, or a figure of the visits under a path.
pub fn explain(name: &str, path: &Path, as_json: bool, console: &Console) -> Exit {
    if let Some(caution) = caution::find(name) {
        if as_json {
            let value = json!({
                "version": 1, "command": "explain", "caution": caution.name,
                "finds": caution.finds, "matters": caution.matters,
                "put-right": caution.put_right, "source": caution.source,
            });
            console.out(&format!("{value:#}\n"));
        } else {
            console.out(&caution.print());
        }
        return Exit::Fine;
    }
    let (loaded, target) = match load(path) {
        Ok(loaded) => loaded,
        Err(fault @ LoadFault::NoBook(_)) => {
            console.err(&unknown(name, &[]));
            console.err(&fault.message());
            return Exit::Usage;
        }
        Err(fault) => {
            console.err(&fault.message());
            return Exit::Disk;
        }
    };
    let mut known = Vec::new();
    let mut found = Vec::new();
    for (site, system, number) in loaded.visits_of(&target) {
        let Some(figures) = VisitFigures::of(site, system, number) else {
            continue;
        };
        known.extend(figures.all().iter().map(|figure| figure.id.clone()));
        let Some(visit) = system.visits.get(number).map(|visit| &visit.path) else {
            continue;
        };
        for working in explanations(&figures, name, &loaded.sources, site.units) {
            if !as_json {
                console.out(&format!("{visit}\n{working}\n"));
            }
            found.push(json!({ "visit": visit, "working": working }));
        }
    }
    if found.is_empty() {
        known.sort();
        known.dedup();
        let known: Vec<&str> = known.iter().map(String::as_str).collect();
        console.err(&unknown(name, &known));
        return Exit::Usage;
    }
    if as_json {
        let value = json!({ "version": 1, "command": "explain", "figures": found });
        console.out(&format!("{value:#}\n"));
    }
    Exit::Fine
}

fn unknown(name: &str, figures: &[&str]) -> String {
    let cautions: Vec<&str> = caution::ALL.iter().map(|caution| caution.name).collect();
    let all: Vec<&str> = figures.iter().chain(&cautions).copied().collect();
    let mut text = format!("error: `{name}` is neither a caution nor a figure here\n");
    let near = nearest_of(name, &all);
    if !near.is_empty() {
        text += &format!("  = help: did you mean {}?\n", quoted_or(&near));
    }
    if !figures.is_empty() {
        text += &format!("  = figures here: {}\n", figures.join(", "));
    }
    text += &format!("  = cautions: {}\n", or_list(&cautions));
    text
}

/// Up to three known names: the one spelled most like it, then those that share its last part.
fn nearest_of<'a>(name: &str, known: &[&'a str]) -> Vec<&'a str> {
    let last = |name: &str| name.rsplit('/').next().unwrap_or("").to_owned();
    let mut near: Vec<&str> = nearest(name, known).into_iter().collect();
    for id in known {
        if last(id) == last(name) && !near.contains(id) {
            near.push(id);
        }
    }
    near.truncate(3);
    near
}
