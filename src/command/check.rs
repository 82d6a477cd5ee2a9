//! `check`: every problem of the notes, and as JSON every figure too.

use crate::command::console::{Console, Exit};
use crate::command::loaded::{Loaded, Target};
use crate::report::visit_figures::{VisitFigures, figures_json, pressure_tests_json};
use crate::report::visit_json::{explained_json, findings_json, outcome_json, reach_json};
use crate::text::{render, summary, to_json};
use serde_json::{Value, json};

/// Prints all problems for people.
pub fn people(loaded: &Loaded, target: &Target, console: &Console) -> Exit {
    let diagnostics = loaded.diagnostics_of(target);
    console.err(&render(&diagnostics, &loaded.sources, console.look));
    let visits = loaded.visits_of(target).len();
    let read = if visits == 1 {
        "1 visit read".to_owned()
    } else {
        format!("{visits} visits read")
    };
    console.out(&format!("{read}: {}\n", summary(&diagnostics)));
    exit(diagnostics.errors())
}

/// Prints all problems and figures as JSON.
pub fn json(loaded: &Loaded, target: &Target, console: &Console) -> Exit {
    let diagnostics = loaded.diagnostics_of(target);
    let visits: Vec<Value> = loaded
        .visits_of(target)
        .into_iter()
        .filter_map(|(site, system, number)| {
            let figures = VisitFigures::of(site, system, number)?;
            let visit = system.visits.get(number)?;
            let mut value = json!({
                "visit": visit.path,
                "outcome": outcome_json(&figures),
                "findings": findings_json(visit, &figures),
                "reach": reach_json(system, visit),
                "leaks-explained": explained_json(system, &figures),
                "figures": figures_json(&figures, site, &loaded.sources),
            });
            if !visit.pressure_tests.is_empty() {
                value["pressure-tests"] = pressure_tests_json(&figures, site, visit);
            }
            Some(value)
        })
        .collect();
    let value = json!({
        "version": 1,
        "command": "check",
        "errors": diagnostics.errors(),
        "cautions": diagnostics.cautions(),
        "diagnostics": to_json(&diagnostics, &loaded.sources),
        "visits": visits,
    });
    console.out(&format!("{value:#}\n"));
    exit(diagnostics.errors())
}

fn exit(errors: usize) -> Exit {
    if errors == 0 {
        Exit::Fine
    } else {
        Exit::Errors
    }
}
