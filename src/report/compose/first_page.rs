//! The first page, for the customer: outcome, what leaks again, what is open, what waiting costs.

use crate::history::{Spell, State};
use crate::notes::AdviceNote;
use crate::report::compose::points::{not_reached, state_of};
use crate::report::compose::scene::Scene;
use crate::report::data::{Block, Caution, Inline, OpenItem, Outcome};
use crate::ruleset::{Duty, obligations, trigger_percent};
use crate::text::{Diagnostic, Message, Text, ended, sentence};
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::visit_file::{LeftAs, Purpose};
use crate::working::leak_rate::{Missing, More};
use crate::working::outcome::{OutcomeKind, Standing};
use jiff::civil::Date;

/// The outcome in one sentence, and why.
pub fn outcome(scene: &Scene<'_>) -> Outcome {
    let outcome = &scene.figures.outcome;
    let mut said = vec![sentence_of(scene, outcome.kind)];
    said.extend(outcome.leaks.map(|leaks| sentence_of(scene, leaks)));
    let suspects = scene
        .findings()
        .filter(|(_, _, s)| matches!(s, Standing::Noted(FindingState::Suspect)))
        .count();
    if suspects > 0 && outcome.kind != OutcomeKind::SuspectsOnly {
        said.push(Message::of("outcome-suspects-remain").with("suspects", suspects));
    }
    let said: Vec<String> = said.iter().map(|message| scene.say(message)).collect();
    Outcome {
        sentence: said.join(" "),
        because: because(scene),
    }
}

/// One kind of outcome in a sentence.
fn sentence_of(scene: &Scene<'_>, kind: OutcomeKind) -> Message {
    let count = |wanted: fn(&Standing) -> bool| {
        scene
            .leaks()
            .filter(|(_, _, standing)| wanted(standing))
            .count()
    };
    let counted = |id: &'static str| {
        Message::of(id)
            .with("leaks", count(|_| true))
            .with(
                "repaired",
                count(|s| matches!(s, Standing::Proved | Standing::NotProved)),
            )
            .with("proved", count(|s| matches!(s, Standing::Proved)))
    };
    match kind {
        OutcomeKind::RepairedProved => counted("outcome-repaired-proved"),
        OutcomeKind::RepairedNotProved => counted("outcome-repaired-not-proved"),
        OutcomeKind::PartlyRepaired => counted("outcome-partly-repaired"),
        OutcomeKind::LeftOpen => counted("outcome-left-open"),
        OutcomeKind::SuspectsOnly => Message::of("outcome-suspects-only"),
        OutcomeKind::NotFoundLossStands => Message::of("outcome-not-found-loss-stands"),
        OutcomeKind::NothingFound => Message::of("outcome-nothing-found"),
        OutcomeKind::RepairVerified => Message::of("outcome-repair-verified")
            .with("repairs", scene.figures.outcome.verified.len()),
        OutcomeKind::GasAdded => Message::of("outcome-gas-added"),
        OutcomeKind::Retrofitted => retrofit(scene),
        OutcomeKind::Other => Message::of("outcome-other").with("purpose", scene.purpose()),
    }
}

/// Which refrigerant was changed for which.
fn retrofit(scene: &Scene<'_>) -> Message {
    let day_before = scene.visit.name.date.yesterday().ok();
    let change = (0..scene.system.circuits.len()).find_map(|circuit| {
        let old = scene.system.in_force(circuit, day_before?)?.refrigerant?;
        let new = scene.refrigerant(circuit)?;
        (old != new).then_some((old.designation, new.designation))
    });
    match change {
        Some((old, new)) => Message::of("outcome-changed-from-to")
            .with("old", old)
            .with("new", new),
        None => Message::of("outcome-changed"),
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
        let repair = (!repairs.is_empty()).then(|| scene.words().series(&repairs));
        let what = match (standing, repair) {
            (Standing::Proved | Standing::NotProved, Some(repair)) => repair,
            _ => match &finding.note.cause {
                Some(cause) => cause.value.clone(),
                None => scene.state(finding, standing).1,
            },
        };
        because.push(place_says(scene, &place, &what));
    }
    because.extend(put_off(scene));
    for circuit in &scene.figures.circuits {
        let missing = circuit.missing.iter();
        because.extend(missing.map(|missing| lost(scene, circuit.circuit, missing)));
    }
    because.extend(super::leaks_explained::sentences(scene));
    because.extend(over_trigger(scene));
    because.extend(no_leak_check(scene).then(|| scene.word("because-no-leak-check")));
    let unreached = not_reached(scene).len();
    if unreached > 0 {
        because.push(scene.say(&Message::of("because-not-reached").with("places", unreached)));
    }
    because
}

/// What was missing, since when, in which parts it was put back, and why it may have been more.
fn lost(scene: &Scene<'_>, circuit: usize, missing: &Missing) -> String {
    let message = match missing.since {
        Some((since, true)) => Message::of("because-lost-since").with("day", since.value.date()),
        Some((since, false)) => {
            Message::of("because-missing-since").with("day", since.value.date())
        }
        None => Message::of("because-lost"),
    };
    let parts = missing.parts.iter().map(|(at, kg)| {
        Message::of("put-back-on")
            .with("mass", scene.mass(*kg, None))
            .with("day", at.value.date())
    });
    let said = scene.say(
        &message
            .with("mass", scene.mass(missing.kg, None))
            .with("least", missing.least())
            .with("circuit", scene.system.circuit_choice(circuit)),
    );
    let parts = (missing.parts.len() > 1).then(|| {
        let parts: Vec<Message> = parts.collect();
        scene.say(&Message::of("because-put-back").with("parts", parts))
    });
    let more = missing.more.map(|more| {
        scene.word(match more {
            More::Partial => "because-more-partial",
            More::NotNoted => "because-more-not-noted",
            More::NotComplete => "because-more-not-complete",
        })
    });
    let said: Vec<String> = std::iter::once(said).chain(parts).chain(more).collect();
    said.join(" ")
}

/// Each circuit whose leak rate passed the trigger of a rule at this visit, and by when it is repaired.
fn over_trigger(scene: &Scene<'_>) -> Vec<String> {
    let days = scene.visit.name.date..=scene.visit.last_day();
    let category = scene.system.note.as_ref().and_then(|note| note.category);
    let Some(trigger) = category.map(|category| trigger_percent(category.value)) else {
        return Vec::new();
    };
    let mut told: Vec<Option<usize>> = Vec::new();
    let mut said = Vec::new();
    for duty in obligations(scene.site, scene.system, scene.number + 1, *days.end()) {
        let over = duty.rules.is_some_and(|rules| rules.exceedance.is_some());
        if !over
            || duty.duty != Duty::Repair
            || !days.contains(&duty.from.day)
            || told.contains(&duty.circuit)
        {
            continue;
        }
        told.push(duty.circuit);
        let circuit = duty.circuit.map_or_else(
            || Text::from("none"),
            |circuit| scene.system.circuit_choice(circuit),
        );
        let repaired = scene.figures.outcome.all_repaired();
        let message = Message::of("because-over-trigger")
            .with("circuit", circuit)
            .figure("trigger", trigger)
            .with(
                "repaired",
                if repaired && duty.done.is_some() {
                    "yes"
                } else {
                    "no"
                },
            )
            .with("by", duty.by);
        said.push(scene.say(&message));
    }
    said
}

/// Whether a periodic check is none in the eyes of a rule, since by its notes not everything was searched.
fn no_leak_check(scene: &Scene<'_>) -> bool {
    let visit = scene.visit;
    let purpose = visit.note.as_ref().and_then(|note| note.purpose);
    let in_part = visit
        .searches
        .iter()
        .any(|search| search.note.all_visible.is_some_and(|all| !all.value));
    purpose.is_some_and(|purpose| purpose.value == Purpose::PeriodicCheck)
        && in_part
        && obligations(scene.site, scene.system, scene.number + 1, visit.last_day())
            .iter()
            .any(|duty| duty.duty == Duty::LeakCheck && duty.from.day < visit.name.date)
}

/// The first leak left open, with what the customer answered to the first advice.
fn put_off(scene: &Scene<'_>) -> Option<String> {
    let left = |standing: &Standing| matches!(standing, Standing::Noted(FindingState::Open));
    let (_, finding, _) = scene.leaks().find(|(_, _, standing)| left(standing))?;
    let mut advice = scene.visit.note.iter().flat_map(|note| &note.advice);
    let message = Message::of("because-left-open").with("place", scene.place(finding));
    let answer = advice.find_map(|advice| answer(scene, advice))?;
    Some(scene.say(&message.with("answer", answer)))
}

/// A place and what is told of it, as a sentence.
fn place_says(scene: &Scene<'_>, place: &str, what: &str) -> String {
    scene.say(
        &Message::of("place-says")
            .with("place", place)
            .with("what", ended(what)),
    )
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

/// Points that leak again at the same place after a repair, or were known and go on leaking without one.
pub fn leaking_again(scene: &Scene<'_>, repaired: bool) -> Vec<Block> {
    let mut points: Vec<&Identifier> = Vec::new();
    for (_, finding, _) in scene.leaks() {
        let point = finding.note.point.as_ref().map(|point| &point.value);
        points.extend(point.filter(|point| !points.contains(point)));
    }
    points
        .into_iter()
        .filter_map(|point| came_back(scene, point, repaired))
        .collect()
}

fn came_back(scene: &Scene<'_>, point: &Identifier, repaired: bool) -> Option<Block> {
    let life = scene.life(point);
    let spells: Vec<&Spell> = life.of_this_part().collect();
    let (strong, message) = match &life.state {
        State::LeakingAgain { days, times, by } if repaired => {
            let found: Vec<Date> = spells.iter().map(|s| s.found).collect();
            let last = spells.iter().rev().nth(1)?;
            let none = || Text::from("none");
            (
                Message::of("leaked-times").with("times", *times),
                Message::of("leaking-again")
                    .with("found", found)
                    .with("days", *days)
                    .with("by", by.clone().unwrap_or_else(none))
                    .with("seen", last.last_held.map_or_else(none, Text::from)),
            )
        }
        State::StillLeaking { days } if !repaired => (
            Message::of("found-still-leaking"),
            Message::of("still-leaking")
                .with("days", *days)
                .with("found", spells.last()?.found),
        ),
        _ => return None,
    };
    let strong = scene.say(&strong);
    let text = scene.say(
        &message
            .with("place", scene.system.point_name(point))
            .with("strong", strong.as_str()),
    );
    let (before, after) = text.split_once(&strong)?;
    Some(Block::Paragraph {
        c: vec![
            Inline::plain(before),
            Inline::strong(strong.as_str()),
            Inline::plain(after),
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
                let message = Message::of("because-holding")
                    .with("place", scene.system.point_name(point))
                    .with("times", times)
                    .with("days", days);
                scene.say(&message)
            })
        })
        .collect()
}

/// What is still open, and what the customer decided.
pub fn still_open(scene: &Scene<'_>) -> Vec<OpenItem> {
    let mut items = Vec::new();
    let mut places = Vec::new();
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
            let place = scene.place(finding);
            items.push(OpenItem {
                what: place_says(scene, &place, &state_of(scene, finding, standing).1),
                decided: None,
            });
            places.push(place);
        }
    }
    for (place, reason) in not_reached(scene) {
        if places.contains(&place) {
            continue;
        }
        let message = Message::of("open-not-reached")
            .with("several", if place.ends_with('s') { "yes" } else { "no" })
            .with("place", place)
            .with("reason", reason);
        items.push(OpenItem {
            what: scene.say(&message),
            decided: None,
        });
    }
    // An answer decides about what is open; where nothing is, it is agreed and stands with the advice.
    let open = !items.is_empty() || scene.loss_stands();
    for advice in scene.visit.note.iter().flat_map(|note| &note.advice) {
        let Some(what) = &advice.what else {
            continue;
        };
        if advice.answer.is_none() || open {
            items.push(OpenItem {
                what: sentence(&what.value),
                decided: answer(scene, advice),
            });
        }
    }
    items
}

/// What was answered to an advice, and by whom.
fn answer(scene: &Scene<'_>, advice: &AdviceNote) -> Option<String> {
    let by = match &advice.to {
        Some(to) => to.value.clone(),
        None => scene.word("customer"),
    };
    let message = Message::of("answer-of")
        .with("by", by)
        .with("answer", sentence(&advice.answer.as_ref()?.value));
    Some(scene.say(&message))
}

/// What waiting would cost: only where something is open and a loss is known.
pub fn waiting(scene: &Scene<'_>) -> Vec<Block> {
    let open = scene
        .leaks()
        .any(|(_, _, standing)| !matches!(standing, Standing::Proved))
        || scene.loss_stands();
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
        let gwp = circuit
            .lost_co2e
            .as_ref()
            .filter(|_| addition.leaked_kg > 0.0)
            .map(|gwp| scene.tonnes(gwp.value.number() / addition.leaked_kg * kg));
        let missing = circuit.missing.as_ref();
        let message = Message::of("waiting-cost")
            .with("mass", scene.about(kg))
            .with("least", missing.map_or("no", Missing::least))
            .with(
                "since",
                missing.map_or(Text::from("none"), Missing::doubtful_since),
            )
            .with("circuit", scene.system.circuit_choice(circuit.circuit))
            .with("co2e", gwp.unwrap_or_else(|| "none".to_owned()))
            .with("running", if running { "yes" } else { "no" });
        blocks.push(Block::plain(scene.say(&message)));
    }
    blocks
}
