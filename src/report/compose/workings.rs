//! The appendix: every figure's working.

use crate::report::compose::scene::Scene;
use crate::report::data::{WorkingEntry, WorkingInput};
use crate::text::{Message, Text};
use crate::working::{METHODS, Origin, Value};

/// All workings, numbered in the order of the figures.
pub fn workings(scene: &Scene<'_>) -> Vec<WorkingEntry> {
    let figures = scene.figures.all();
    let words = scene.words();
    let prefix = format!("{}/", scene.visit.path);
    figures
        .iter()
        .enumerate()
        .map(|(index, figure)| WorkingEntry {
            number: format!("W{}", index + 1),
            id: figure.id.clone(),
            group: group(scene, &figure.id),
            title: words.text(&figure.title),
            method: words.phrase(figure.method.name),
            formula: Some(figure.method.id.to_owned()),
            formula_text: words.phrase(figure.method.formula),
            inputs: figure
                .inputs
                .iter()
                .map(|input| WorkingInput {
                    symbol: words.phrase(input.symbol),
                    value: scene.value(&input.value),
                    origin: match &input.origin {
                        Origin::Figure(_) => words.word("result-of"),
                        origin => origin
                            .say(scene.sources, words)
                            .replace(&prefix, "")
                            .replace(&format!("{}/", scene.system.path), ""),
                    },
                    working: match &input.origin {
                        Origin::Figure(id) => Some(id.clone()),
                        _ => None,
                    },
                })
                .collect(),
            result: scene.value(&figure.value),
            uncertainty: match figure.value {
                Value::Computed {
                    uncertainty: Some(_),
                    ..
                } => Some(words.word("half-width")),
                _ => None,
            },
            source: words.phrase(figure.method.source),
            notes: figure.notes.iter().map(|note| words.text(note)).collect(),
        })
        .collect()
}

/// What a figure belongs to, by the first parts of its id.
fn group(scene: &Scene<'_>, id: &str) -> String {
    let mut parts = id.split('/');
    let (kind, name) = (parts.next().unwrap_or(""), parts.next().unwrap_or(""));
    let named = |id| scene.say(&Message::of(id).with("id", Text::Written(name.to_owned())));
    match kind {
        "circuit" if scene.system.several_circuits() => named("workings-of-circuit"),
        "pressure-test" => named("workings-of-pressure-test"),
        "vacuum-test" => named("workings-of-vacuum-test"),
        "operating" => scene.word("workings-of-readings"),
        "room" => scene.word("workings-of-room"),
        _ => scene.word("workings-of-account"),
    }
}

/// The formulas as a source file for the typesetter, from the static methods only: by id, a function
/// from the formula's text, which is read aloud in its place, to the equation.
pub fn formulas() -> String {
    let mut out = String::from("#let formulas = (\n");
    for method in METHODS {
        out += &format!(
            "  \"{}\": alt => math.equation(block: true, alt: alt, $ {} $),\n",
            method.id, method.mathematics
        );
    }
    out.push_str(")\n");
    out
}
