//! The appendix: every figure's working.

use crate::report::compose::scene::Scene;
use crate::report::data::{WorkingEntry, WorkingInput};
use crate::working::{METHODS, Origin, Value};

/// All workings, numbered in the order of the figures.
pub fn workings(scene: &Scene<'_>) -> Vec<WorkingEntry> {
    let figures = scene.figures.all();
    let units = scene.site.units;
    let prefix = format!("{}/", scene.visit.path);
    figures
        .iter()
        .enumerate()
        .map(|(index, figure)| WorkingEntry {
            number: format!("W{}", index + 1),
            id: figure.id.clone(),
            title: figure.title.clone(),
            method: figure.method.name.to_owned(),
            formula: Some(figure.method.id.to_owned()),
            formula_text: figure.method.formula.to_owned(),
            inputs: figure
                .inputs
                .iter()
                .map(|input| WorkingInput {
                    symbol: input.symbol.to_owned(),
                    value: input.value.print(units),
                    origin: match &input.origin {
                        Origin::Figure(_) => "result of".to_owned(),
                        origin => origin
                            .print(scene.sources)
                            .replace(&prefix, "")
                            .replace(&format!("{}/", scene.system.path), ""),
                    },
                    working: match &input.origin {
                        Origin::Figure(id) => Some(id.clone()),
                        _ => None,
                    },
                })
                .collect(),
            result: figure.value.print(units),
            uncertainty: match figure.value {
                Value::Computed {
                    uncertainty: Some(_),
                    ..
                } => Some("half width of the interval".to_owned()),
                _ => None,
            },
            source: figure.method.source.to_owned(),
            notes: figure.notes.clone(),
        })
        .collect()
}

/// The formulas as a source file for the typesetter, from the static methods only.
pub fn formulas() -> String {
    let mut out = String::from("#let formulas = (\n");
    for method in METHODS {
        let alt = method.formula.replace('\\', "").replace('"', "'");
        out += &format!(
            "  \"{}\": math.equation(block: true, alt: \"{alt}\", $ {} $),\n",
            method.id, method.mathematics
        );
    }
    out.push_str(")\n");
    out
}
