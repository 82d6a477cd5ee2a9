//! The first page, for the customer: outcome, what leaks again, what is open, what waiting costs.

use crate::history::{Spell, State};
use crate::report::compose::points::not_reached;
use crate::report::compose::scene::Scene;
use crate::report::data::{Block, Caution, Inline, OpenItem, Outcome};
use crate::report::printed::{self, counted, sentence};
use crate::text::Diagnostic;
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::visit_file::LeftAs;
use crate::working::outcome::{OutcomeKind, Standing};

/// The outcome in one sentence, and why.
pub fn outcome(scene: &Scene<'_>) -> Outcome {
    let mut text = sentence_of(scene, scene.figures.outcome.kind);
    if let Some(leaks) = scene.figures.outcome.leaks {
        text = format!("{text} {}", sentence_of(scene, leaks));
    }
    let suspects = scene
        .findings()
        .filter(|(_, _, s)| matches!(s, Standing::Noted(FindingState::Suspect)))
        .count();
    if suspects > 0 && scene.figures.outcome.kind != OutcomeKind::SuspectsOnly {
        text.push_str(if suspects == 1 {
            " One suspect place remains."
        } else {
            " Some suspect places remain."
        });
    }
    Outcome {
        sentence: text,
        because: because(scene),
    }
}

/// One kind of outcome in a sentence.
fn sentence_of(scene: &Scene<'_>, kind: OutcomeKind) -> String {
    let leaks = scene.leaks().count();
    let found = printed::capital(&counted(leaks, "leak", "leaks"));
    let count = |wanted: fn(&Standing) -> bool| {
        scene
            .leaks()
            .filter(|(_, _, standing)| wanted(standing))
            .count()
    };
    let repaired = count(|s| matches!(s, Standing::Proved | Standing::NotProved));
    let proved = count(|s| matches!(s, Standing::Proved));
    match kind {
        OutcomeKind::RepairedProved => format!("{found} found, repaired and proved."),
        OutcomeKind::RepairedNotProved if repaired == 1 => {
            format!("{found} found and repaired; the repair has not been proved.")
        }
        OutcomeKind::RepairedNotProved => format!(
            "{found} found and repaired; {} of the repairs proved.",
            if proved == 0 {
                "none".to_owned()
            } else {
                printed::count(proved)
            }
        ),
        OutcomeKind::PartlyRepaired => {
            format!(
                "{found} found, {} repaired; the rest is open.",
                printed::count(repaired)
            )
        }
        OutcomeKind::LeftOpen => format!("{found} found and left open."),
        OutcomeKind::SuspectsOnly => "A leak is suspected; none was located.".to_owned(),
        OutcomeKind::NotFoundLossStands => {
            "Refrigerant had been lost, and its leak was not found.".to_owned()
        }
        OutcomeKind::NothingFound => {
            "Searched; nothing was found where the search reached.".to_owned()
        }
        OutcomeKind::RepairVerified => {
            let points = scene.figures.outcome.verified.len();
            if points == 1 {
                "The earlier repair was checked again; nothing was shown there.".to_owned()
            } else {
                format!(
                    "{} earlier repairs were checked again; nothing was shown there.",
                    printed::capital(&printed::count(points))
                )
            }
        }
        OutcomeKind::GasAdded => {
            "Refrigerant was added; the leak was neither searched for nor repaired.".to_owned()
        }
        OutcomeKind::Retrofitted => retrofit(scene),
        OutcomeKind::Other => format!("{} carried out.", scene.purpose()),
    }
}

/// Which refrigerant was changed for which.
fn retrofit(scene: &Scene<'_>) -> String {
    let day_before = scene.visit.name.date.yesterday().ok();
    let change = (0..scene.system.circuits.len()).find_map(|circuit| {
        let old = scene.system.in_force(circuit, day_before?)?.refrigerant?;
        let new = scene.refrigerant(circuit)?;
        (old != new).then_some((old.designation, new.designation))
    });
    match change {
        Some((old, new)) => format!("The system was changed from {old} to {new}."),
        None => "The system was changed to another refrigerant.".to_owned(),
    }
}

fn because(scene: &Scene<'_>) -> Vec<String> {
    let mut because = past_of_holding(scene);
    for (_, finding, standing) in scene.leaks().take(3) {
        let place = scene.place(finding);
        let repairs: Vec<&str> = finding
            .note
            .repairs
            .iter()
            .map(|repair| repair.what.as_str())
            .collect();
        let repair = (!repairs.is_empty()).then(|| repairs.join("; "));
        because.push(match (standing, repair) {
            (Standing::Proved | Standing::NotProved, Some(repair)) => {
                format!("{place}: {}", printed::ended(&repair))
            }
            _ => match &finding.note.cause {
                Some(cause) => format!("{place}: {}", printed::ended(&cause.value)),
                None => format!("{place}: {}.", scene.state(finding, standing).1),
            },
        });
    }
    for circuit in &scene.figures.circuits {
        if circuit.account.addition_of(scene.number).is_none() {
            continue;
        }
        let name = scene.system.circuit_name(circuit.circuit);
        let mass = scene.mass(circuit.leaked_kg, None);
        because.push(match circuit.since {
            Some((since, true)) => format!(
                "{mass} of refrigerant had been lost from {name} since {}.",
                printed::day(since.value.date())
            ),
            Some((since, false)) => format!(
                "{mass} of refrigerant was missing from {name}; it was last charged on {}, whether to full is not known.",
                printed::day(since.value.date())
            ),
            None => format!("{mass} of refrigerant had been lost from {name}."),
        });
    }
    because.extend(super::leaks_explained::sentences(scene));
    let unreached = not_reached(scene).len();
    if unreached > 0 {
        because.push(format!(
            "{} could not be reached and still {} to be searched.",
            printed::capital(&counted(unreached, "place", "places")),
            if unreached == 1 { "has" } else { "have" }
        ));
    }
    because
}

/// Cautions that lead the page.
pub fn cautions(scene: &Scene<'_>, cautions: &[&Diagnostic]) -> Vec<Caution> {
    let because = |why: &String| sentence(&scene.words().phrase(why));
    cautions
        .iter()
        .map(|diagnostic| {
            let said = diagnostic.page.as_ref().map(|message| scene.say(message));
            let said = said.unwrap_or_else(|| diagnostic.what.clone());
            Caution {
                name: diagnostic.name.to_owned(),
                sentence: sentence(&said.replace('`', "")),
                because: diagnostic.why.as_ref().map(because),
            }
        })
        .collect()
}

/// Points that leak again at the same place, or were known and go on leaking.
pub fn leaking_again(scene: &Scene<'_>) -> Vec<Block> {
    let mut points: Vec<&Identifier> = Vec::new();
    for (_, finding, _) in scene.leaks() {
        let point = finding.note.point.as_ref().map(|point| &point.value);
        points.extend(point.filter(|point| !points.contains(point)));
    }
    points
        .into_iter()
        .filter_map(|point| came_back(scene, point))
        .collect()
}

fn came_back(scene: &Scene<'_>, point: &Identifier) -> Option<Block> {
    let life = scene.life(point);
    let spells: Vec<&Spell> = life.of_this_part().collect();
    let (strong, rest) = match &life.state {
        State::LeakingAgain { days, times, by } => {
            let found: Vec<String> = spells.iter().map(|s| printed::day(s.found)).collect();
            let last = spells.iter().rev().nth(1)?;
            let seen = last
                .last_held
                .map(|day| format!("; it was last seen to hold on {}", printed::day(day)));
            (
                format!("has leaked {} times", printed::count(*times)),
                format!(
                    ": {}. The last repair{} held {days} days at most{}.",
                    printed::and_list(&found),
                    by.as_ref()
                        .map(|by| format!(", by {by},"))
                        .unwrap_or_default(),
                    seen.unwrap_or_default()
                ),
            )
        }
        State::StillLeaking { days } => {
            let found = spells.last()?.found;
            (
                "was found still leaking".to_owned(),
                format!(
                    ", {days} days after it was first found on {}; it had not been repaired.",
                    printed::day(found)
                ),
            )
        }
        _ => return None,
    };
    Some(Block::Paragraph {
        c: vec![
            Inline::plain(format!("{} ", scene.system.point_name(point))),
            Inline::strong(strong),
            Inline::plain(rest),
        ],
    })
}

/// Repairs that were checked again at places with a past of several leaks.
fn past_of_holding(scene: &Scene<'_>) -> Vec<String> {
    let points = scene.holding();
    points
        .into_iter()
        .filter_map(|(point, days)| {
            let times = scene.life(point).of_this_part().count();
            (times > 1).then(|| {
                format!(
                    "{} has leaked {} times; its last repair has held {days} days so far.",
                    scene.system.point_name(point),
                    printed::count(times)
                )
            })
        })
        .collect()
}

/// What is still open, and what the customer decided.
pub fn still_open(scene: &Scene<'_>) -> Vec<OpenItem> {
    let mut items = Vec::new();
    for (_, finding, standing) in scene.findings() {
        let open = matches!(
            standing,
            Standing::NotProved
                | Standing::Noted(
                    FindingState::Open
                        | FindingState::Temporary
                        | FindingState::Isolated
                        | FindingState::Suspect
                )
        );
        if open {
            let words = scene.state(finding, standing).1;
            items.push(OpenItem {
                what: format!("{}: {words}.", scene.place(finding)),
                decided: None,
            });
        }
    }
    for (place, reason) in not_reached(scene) {
        if items
            .iter()
            .any(|item: &OpenItem| item.what.starts_with(&format!("{place}: ")))
        {
            continue;
        }
        items.push(OpenItem {
            what: format!(
                "{} {} to be searched ({reason}).",
                printed::capital(&place),
                if place.ends_with('s') { "have" } else { "has" }
            ),
            decided: None,
        });
    }
    for advice in scene.visit.note.iter().flat_map(|note| &note.advice) {
        let (Some(what), Some(answer)) = (&advice.what, &advice.answer) else {
            continue;
        };
        let to = advice
            .to
            .as_ref()
            .map_or("customer", |to| to.value.as_str());
        items.push(OpenItem {
            what: sentence(&what.value),
            decided: Some(format!(
                "{}: {}",
                printed::capital(to),
                printed::ended(&answer.value)
            )),
        });
    }
    items
}

/// What waiting would cost: only where something is open and a loss is known.
pub fn waiting(scene: &Scene<'_>) -> Vec<Block> {
    let open = scene
        .leaks()
        .any(|(_, _, standing)| !matches!(standing, Standing::Proved))
        || matches!(
            scene.figures.outcome.kind,
            OutcomeKind::NotFoundLossStands | OutcomeKind::GasAdded | OutcomeKind::SuspectsOnly
        );
    if !open {
        return Vec::new();
    }
    let running = scene
        .visit
        .note
        .as_ref()
        .and_then(|note| note.left)
        .is_none_or(|left| left.value == LeftAs::Running);
    let mut blocks = Vec::new();
    for circuit in &scene.figures.circuits {
        let (Some(plain), Some(addition), Some(full)) = (
            &circuit.plain,
            circuit.account.addition_of(scene.number),
            scene
                .system
                .in_force(circuit.circuit, scene.visit.last_day())
                .and_then(|entry| entry.note.full_charge),
        ) else {
            continue;
        };
        let kg = plain.value.number() / 100.0 * full.value.value.si();
        let mut text = format!(
            "At the loss up to now, about {} a year would go on leaking from {}",
            scene.about(kg),
            scene.system.circuit_name(circuit.circuit)
        );
        if let Some(gwp) = circuit
            .lost_co2e
            .as_ref()
            .filter(|_| addition.leaked_kg > 0.0)
        {
            let per_kg = gwp.value.number() / addition.leaked_kg;
            text += &format!(" ({})", scene.tonnes(per_kg * kg));
        }
        text += if running {
            ", and the plant loses capacity as it goes."
        } else {
            " once it runs again."
        };
        blocks.push(Block::plain(text));
    }
    blocks
}
