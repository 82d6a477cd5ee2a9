//! `explain`: what a caution means, or how a figure was worked out.

use crate::caution;
use crate::command::console::{Console, Exit};
use crate::command::loaded::{LoadFault, load};
use crate::report::visit_figures::VisitFigures;
use crate::text::{nearest, or_list};
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
        for figure in figures.all() {
            if figure.id == name || figure.id.starts_with(&format!("{name}/")) {
                let visit = &system.visits[number].path;
                if as_json {
                    found.push(json!({ "visit": visit, "working": figure.print(&loaded.sources, site.units) }));
                } else {
                    console.out(&format!(
                        "{visit}\n{}\n",
                        figure.print(&loaded.sources, site.units)
                    ));
                    found.push(json!(null));
                }
            }
            known.push(figure.id.clone());
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
    if let Some(near) = nearest(name, &all) {
        text += &format!("  = help: did you mean `{near}`?\n");
    }
    if !figures.is_empty() {
        text += &format!("  = figures here: {}\n", figures.join(", "));
    }
    text += &format!("  = cautions: {}\n", or_list(&cautions));
    text
}
