//! A figure's working as text, with the figures that it rests on and those it goes into.

use crate::quantity::UnitSystem;
use crate::report::visit_figures::VisitFigures;
use crate::text::Sources;
use crate::working::{Figure, Origin};

/// The working of every figure of a name, or below it; empty where there is none.
///
/// Each is followed by those that it rests on, down to the notes, and by the names of those it goes
/// into. `charge` stands for `charge/net-addition` and all else that begins so.
pub fn explanations(
    figures: &VisitFigures,
    name: &str,
    sources: &Sources,
    units: UnitSystem,
) -> Vec<String> {
    let all = figures.all();
    let below = format!("{name}/");
    let asked: Vec<&Figure> = all
        .iter()
        .copied()
        .filter(|figure| figure.id == name || figure.id.starts_with(&below))
        .collect();
    let mut told: Vec<&str> = asked.iter().map(|figure| figure.id.as_str()).collect();
    asked
        .iter()
        .map(|figure| {
            let mut text = figure.print(sources, units);
            let goes_into: Vec<&str> = all
                .iter()
                .filter(|other| rests_on(other).any(|id| id == figure.id))
                .map(|other| other.id.as_str())
                .collect();
            if !goes_into.is_empty() {
                text += &format!("  goes into {}\n", goes_into.join(", "));
            }
            for below in chain(&all, figure) {
                if !told.contains(&below.id.as_str()) {
                    told.push(&below.id);
                    text += &format!("\nrests on {}", below.print(sources, units));
                }
            }
            text
        })
        .collect()
}

/// The ids of the figures that a figure was worked out from.
fn rests_on(figure: &Figure) -> impl Iterator<Item = &str> {
    figure
        .inputs
        .iter()
        .filter_map(|input| match &input.origin {
            Origin::Figure(id) => Some(id.as_str()),
            _ => None,
        })
}

/// All figures that a figure rests on, the nearest first, each once.
fn chain<'f>(all: &[&'f Figure], figure: &'f Figure) -> Vec<&'f Figure> {
    let mut chain: Vec<&Figure> = vec![figure];
    let mut next = 0;
    while let Some(current) = chain.get(next).copied() {
        next += 1;
        for id in rests_on(current) {
            let known = chain.iter().any(|figure| figure.id == id);
            let found = all.iter().copied().find(|figure| figure.id == id);
            chain.extend(found.filter(|_| !known));
        }
    }
    chain.split_off(1)
}
