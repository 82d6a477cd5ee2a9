//! The first page, for the customer: outcome, facts, points, what is open.

use crate::notes::Proof;
use crate::quantity::{Flavour, LeakRate, Quantity};
use crate::report::compose::scene::Scene;
use crate::report::data::{
    Block, Caution, Entry, Fact, Head, OpenItem, Outcome, PointRow, PointState, Points,
};
use crate::report::printed::{self, counted, sentence};
use crate::text::Diagnostic;
use crate::vocabulary::Word;
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::visit_file::LeftAs;
use crate::working::evidence::grade;
use crate::working::outcome::{OutcomeKind, Standing, proves};
use crate::working::pressure_test::HoldVerdict;

/// What was visited, why and when.
pub fn head(scene: &Scene<'_>) -> Head {
    let mut line = vec![scene.site.name().to_owned()];
    for (index, _) in scene.system.circuits.iter().enumerate() {
        let mut parts = Vec::new();
        if let Some(entry) = scene.system.in_force(index, scene.visit.last_day()) {
            if let Some(refrigerant) = entry.refrigerant {
                parts.push(refrigerant.designation.to_owned());
            }
            if let Some(full) = &entry.note.full_charge {
                parts.push(crate::quantity::print(&full.value, scene.site.units).to_string());
            }
        }
        if let Some(figure) = scene
            .figures
            .circuits
            .get(index)
            .and_then(|c| c.charge_co2e.as_ref())
        {
            parts.push(scene.tonnes(figure.value.number()));
        }
        let parts = parts.join(", ");
        if scene.system.several_circuits() {
            line.push(format!("{}: {parts}", scene.system.circuit_name(index)));
        } else {
            line.push(parts);
        }
    }
    if let Some(class) = scene.refrigerant(0).and_then(|r| r.safety_class) {
        let words = if class.value.is_flammable() {
            "flammable"
        } else {
            "not flammable"
        };
        line.push(format!("{}, {words}", class.value));
    }
    Head {
        kind: scene.purpose(),
        date: printed::days(scene.visit.name.date, scene.visit.last_day()),
        system: scene.system.name().to_owned(),
        line,
        particulars: particulars(scene),
    }
}

fn particulars(scene: &Scene<'_>) -> Vec<Entry> {
    let mut entries = Vec::new();
    let mut add = |key: &str, value: Option<String>| {
        if let Some(value) = value {
            entries.push(Entry {
                key: key.to_owned(),
                value,
                working: None,
            });
        }
    };
    let site = scene.site.note.as_ref();
    let text = |value: &Option<crate::text::Noted<String>>| {
        value.as_ref().map(|noted| noted.value.clone())
    };
    add("Operator", site.and_then(|s| text(&s.operator)));
    add("Address", site.and_then(|s| text(&s.address)));
    let system = scene.system.note.as_ref();
    add(
        "Category",
        system
            .and_then(|s| s.category)
            .map(|c| c.value.word().to_owned()),
    );
    add(
        "In service since",
        system
            .and_then(|s| s.installed)
            .map(|d| printed::day(d.value)),
    );
    let visit = scene.visit.note.as_ref();
    add("Complaint", visit.and_then(|v| text(&v.complaint)));
    add(
        "Air outside",
        visit
            .and_then(|v| v.ambient)
            .map(|t| crate::quantity::print(&t.value, scene.site.units).to_string()),
    );
    add(
        "Left",
        visit
            .and_then(|v| v.left)
            .map(|l| l.value.word().to_owned()),
    );
    add(
        "Back in normal operation",
        scene
            .visit
            .back
            .map(|back| printed::moment(back.value.civil)),
    );
    entries
}

/// The outcome in one sentence, and why.
pub fn outcome(scene: &Scene<'_>) -> Outcome {
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
    let mut text = match scene.figures.outcome.kind {
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
    };
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
    let mut because = Vec::new();
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
            Some(since) => format!(
                "About {mass} of refrigerant had been lost from {name} since {}.",
                printed::day(since.value.date())
            ),
            None => format!("About {mass} of refrigerant had been lost from {name}."),
        });
    }
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

/// At most four facts.
pub fn facts(scene: &Scene<'_>) -> Vec<Fact> {
    let mut facts = Vec::new();
    facts.extend(joint_fact(scene));
    facts.extend(test_fact(scene));
    facts.extend(refrigerant_fact(scene));
    if let Some(next) = crate::report::compose::legal::next_dates(scene).first() {
        facts.push(Fact {
            label: "Next".to_owned(),
            value: format!("{} {}", next.what, next.by),
            qualifier: next.not_before.clone(),
            working: None,
        });
    }
    facts.truncate(4);
    facts
}

fn joint_fact(scene: &Scene<'_>) -> Option<Fact> {
    let repaired: Vec<_> = scene
        .leaks()
        .filter(|(_, finding, _)| !finding.note.repairs.is_empty())
        .collect();
    let looks: Vec<_> = repaired
        .iter()
        .filter_map(|(_, finding, _)| {
            finding
                .note
                .proofs
                .iter()
                .rev()
                .find_map(|proof| match proof {
                    Proof::Look(look) if proves(scene.system, scene.visit, proof, None) => {
                        Some(look)
                    }
                    _ => None,
                })
        })
        .collect();
    if repaired.is_empty() {
        let checked = scene.figures.outcome.verified.len();
        return (checked > 0).then(|| Fact {
            label: "Earlier repairs".to_owned(),
            value: format!(
                "{} checked again, nothing shown",
                printed::capital(&printed::count(checked))
            ),
            qualifier: proved_on(scene),
            working: None,
        });
    }
    let label = if repaired.len() == 1 {
        "Repaired place".to_owned()
    } else {
        format!(
            "{} repaired places",
            printed::capital(&printed::count(repaired.len()))
        )
    };
    Some(if looks.is_empty() {
        Fact {
            label,
            value: "Not checked again with a detector or bubbles".to_owned(),
            qualifier: None,
            working: None,
        }
    } else {
        let all = looks.len() == repaired.len();
        let mut methods: Vec<&str> = looks.iter().map(|look| look.method.value.word()).collect();
        methods.sort_unstable();
        methods.dedup();
        let shown = looks.first().map_or("", |look| look.result.as_str());
        Fact {
            label,
            value: if looks.len() == 1 {
                format!("Checked again, {shown}")
            } else if all {
                "All checked again, nothing shown".to_owned()
            } else {
                format!(
                    "{} of {} checked again, nothing shown",
                    looks.len(),
                    repaired.len()
                )
            },
            qualifier: Some(match proved_on(scene) {
                Some(proved) => format!("{}; {proved}", methods.join(", ")),
                None => methods.join(", "),
            }),
            working: None,
        }
    })
}

/// How the detector was proved that day.
fn proved_on(scene: &Scene<'_>) -> Option<String> {
    let check = scene
        .visit
        .detector_checks
        .iter()
        .rev()
        .find(|check| check.note.responded.is_some_and(|yes| yes.value))?;
    let leak = check.note.reference_leak.as_ref()?;
    Some(format!("detector proved on {}", leak.value))
}

fn test_fact(scene: &Scene<'_>) -> Option<Fact> {
    let (test, hold) = scene
        .visit
        .pressure_tests
        .iter()
        .zip(&scene.figures.holds)
        .rfind(|(_, hold)| hold.verdict != HoldVerdict::Strength)?;
    let what = match test.section() {
        Some(section) => format!("Section {section}, tested"),
        None if scene.system.several_circuits() => printed::capital(&format!(
            "{}, tested",
            scene.system.circuit_name(test.circuit)
        )),
        None => "Whole circuit, tested".to_owned(),
    };
    let size = hold.limit_mass.as_ref().or(hold.limit.as_ref());
    let value = match (hold.verdict, size) {
        (HoldVerdict::NothingLarger, Some(figure)) => {
            format!("Nothing larger than {}", rate(scene, figure))
        }
        (HoldVerdict::Leak, _) => "Pressure was lost".to_owned(),
        (HoldVerdict::HeldNoSize, _) => "Pressure held; no size can be given".to_owned(),
        _ => "Not decided".to_owned(),
    };
    let gas = test.note.gas.map_or("gas", |gas| gas.value.word());
    let pressure = crate::quantity::print(&test.start.pressure.value, scene.site.units);
    Some(Fact {
        label: what,
        value,
        qualifier: Some(format!(
            "{gas} at {pressure} for {}",
            crate::report::compose::tests::duration(scene, test.seconds())
        )),
        working: size.map(|figure| figure.id.clone()),
    })
}

/// A mass rate in grams or ounces a day, of the test gas.
fn rate(scene: &Scene<'_>, figure: &crate::working::Figure) -> String {
    let printed = figure.value.print(scene.site.units);
    match figure.value {
        crate::working::Value::Computed {
            flavour: Flavour::MassRate,
            si,
            ..
        } => {
            let unit = match scene.site.units {
                crate::quantity::UnitSystem::Metric => "g",
                crate::quantity::UnitSystem::Us => "oz",
            };
            let day = crate::quantity::print_as(Flavour::Mass, si * 86_400.0, unit, 9)
                .and_then(|printed| printed.number.parse::<f64>().ok());
            day.map_or(printed, |day| {
                format!("{}\u{a0}{unit} of nitrogen a day", rounded_up(day))
            })
        }
        _ => printed,
    }
}

/// Rounded up to two digits or so: a limit is never made smaller by rounding.
fn rounded_up(value: f64) -> String {
    let decimals = match value {
        v if v >= 10.0 => 0,
        v if v >= 1.0 => 1,
        _ => 2,
    };
    let scale = 10f64.powi(decimals);
    crate::working::rounded((value * scale - 1e-9).ceil() / scale, decimals as usize)
}

fn refrigerant_fact(scene: &Scene<'_>) -> Option<Fact> {
    let added: Vec<_> = scene
        .figures
        .circuits
        .iter()
        .filter_map(|circuit| Some((circuit, circuit.account.addition_of(scene.number)?)))
        .collect();
    if added.is_empty() {
        let moved = scene.figures.circuits.iter().any(|c| c.net.is_some());
        return (!moved).then(|| Fact {
            label: "Refrigerant".to_owned(),
            value: "None added".to_owned(),
            qualifier: None,
            working: None,
        });
    }
    let leaked: f64 = added.iter().map(|(_, addition)| addition.leaked_kg).sum();
    let co2e: f64 = added
        .iter()
        .filter_map(|(circuit, _)| circuit.lost_co2e.as_ref())
        .map(|figure| figure.value.number())
        .sum();
    let working = added
        .first()
        .and_then(|(circuit, _)| circuit.net.as_ref())
        .map(|figure| figure.id.clone());
    Some(Fact {
        label: "Refrigerant".to_owned(),
        value: format!("{} had been lost", scene.mass(leaked, None)),
        qualifier: (co2e > 0.0).then(|| scene.tonnes(co2e)),
        working,
    })
}

/// Cautions that lead the page.
pub fn cautions(cautions: &[&Diagnostic]) -> Vec<Caution> {
    cautions
        .iter()
        .map(|diagnostic| Caution {
            name: diagnostic.name.to_owned(),
            sentence: sentence(&if diagnostic.primary.text.is_empty() {
                diagnostic.what.clone()
            } else {
                format!("{}: {}", diagnostic.what, diagnostic.primary.text)
            })
            .replace('`', ""),
            because: diagnostic.why.as_ref().map(|why| sentence(why)),
        })
        .collect()
}

/// Points that leak again at the same place.
pub fn leaking_again(scene: &Scene<'_>) -> Vec<Block> {
    let mut blocks = Vec::new();
    for (_, finding, _) in scene.leaks() {
        let Some(point) = &finding.note.point else {
            continue;
        };
        let earlier = scene.earlier_leaks(&point.value);
        let Some(first) = earlier.first() else {
            continue;
        };
        let mut days: Vec<String> = earlier.iter().map(|leak| printed::day(leak.date)).collect();
        days.push(printed::day(scene.visit.name.date));
        let times = earlier.len() + 1;
        let months = months_between(first.date, scene.visit.name.date);
        let held = earlier.iter().rev().find_map(|leak| {
            let repaired = leak.repaired?;
            let days = (scene.visit.name.date - repaired).get_days();
            Some(if leak.by_others {
                format!(" The last repair, by {}, held {days} days.", leak.by)
            } else {
                format!(" The last repair held {days} days.")
            })
        });
        let again = if held.is_some() {
            format!(
                "is leaking again, for the {} time in {months} months",
                ordinal(times)
            )
        } else {
            "is still leaking".to_owned()
        };
        blocks.push(Block::Paragraph {
            c: vec![
                crate::report::data::Inline::plain(format!("{} ", scene.place(finding))),
                crate::report::data::Inline::strong(again),
                crate::report::data::Inline::plain(format!(
                    ": {}.{}",
                    printed::and_list(&days),
                    held.unwrap_or_default()
                )),
            ],
        });
    }
    blocks
}

fn months_between(first: jiff::civil::Date, last: jiff::civil::Date) -> i64 {
    let months = |date: jiff::civil::Date| i64::from(date.year()) * 12 + i64::from(date.month());
    (months(last) - months(first)).max(1)
}

fn ordinal(number: usize) -> String {
    const WORDS: [&str; 7] = ["", "first", "second", "third", "fourth", "fifth", "sixth"];
    WORDS
        .get(number)
        .map_or_else(|| format!("{number}th"), |word| (*word).to_owned())
}

/// Every point looked at or worked on.
pub fn points(scene: &Scene<'_>) -> Points {
    let mut rows = Vec::new();
    let mut sized = false;
    for (number, finding, standing) in scene.findings() {
        let (state, state_words) = scene.state(finding, standing);
        let size = size_of(scene, finding);
        sized |= size.as_deref().is_some_and(|size| size != "not sized");
        rows.push(PointRow {
            number: number.to_string(),
            place: scene.place(finding),
            state,
            state_words,
            evidence: grade(&finding.note)
                .map_or_else(String::new, |grade| grade.word().to_owned()),
            size: size.unwrap_or_default(),
        });
    }
    let listed = |point: &crate::vocabulary::Identifier| {
        scene.visit.findings.iter().any(|finding| {
            finding
                .note
                .point
                .as_ref()
                .is_some_and(|id| id.value == *point)
        })
    };
    let mut number = rows.len();
    let mut add = |place: String, state: PointState, words: String| {
        number += 1;
        rows.push(PointRow {
            number: number.to_string(),
            place,
            state,
            state_words: words,
            evidence: String::new(),
            size: String::new(),
        });
    };
    for (point, days) in scene.holding() {
        if !listed(point) {
            add(
                scene.system.point_name(point),
                PointState::Holding,
                format!("holding, {days}\u{a0}days"),
            );
        }
    }
    let named: Vec<String> = scene
        .findings()
        .map(|(_, finding, _)| scene.place(finding))
        .collect();
    for (place, _) in not_reached(scene) {
        if named.contains(&place) {
            continue;
        }
        add(place, PointState::NotReached, "not reached".to_owned());
    }
    let unit = match scene.site.units {
        crate::quantity::UnitSystem::Metric => "g/yr",
        crate::quantity::UnitSystem::Us => "oz/yr",
    };
    Points {
        size_unit: sized.then(|| unit.to_owned()),
        rows,
    }
}

fn size_of(scene: &Scene<'_>, finding: &crate::job::Finding) -> Option<String> {
    let Some(size) = &finding.note.size else {
        return crate::working::outcome::is_leak(finding).then(|| "not sized".to_owned());
    };
    let unit = match scene.site.units {
        crate::quantity::UnitSystem::Metric => "g/yr",
        crate::quantity::UnitSystem::Us => "oz/yr",
    };
    let measured = size.rate.value;
    let LeakRate::Mass(_) = measured.value else {
        return Some(crate::quantity::print(&measured, scene.site.units).to_string());
    };
    let decimals = |si: f64| u8::from(si < 10.0 * LIMIT_OF_WHOLE);
    let in_unit = |si: f64, decimals: u8| {
        crate::quantity::print_as(Flavour::MassRate, si, unit, decimals)
            .map(|printed| printed.number)
    };
    let digits = decimals(measured.value.si());
    let number = in_unit(measured.value.si(), digits)?;
    Some(
        match measured.uncertainty.and_then(|half| in_unit(half, digits)) {
            Some(half) => format!("{number} ± {half}"),
            None => number,
        },
    )
}

/// A gram a year, kg/s: below ten of them a size keeps one decimal.
const LIMIT_OF_WHOLE: f64 = 1e-3 / 31_536_000.0;

/// Places not reached, in words, with the reasons; those reached by another search left out.
pub fn not_reached(scene: &Scene<'_>) -> Vec<(String, String)> {
    let mut places: Vec<(String, String)> = Vec::new();
    for search in &scene.visit.searches {
        for place in &search.note.not_reached {
            let (Some(point), Some(reason)) = (&place.point, &place.reason) else {
                continue;
            };
            if scene.system.points.get(&point.value).is_some() && scene.searched(&point.value) {
                continue;
            }
            let name = place_name(scene, &point.value.0);
            if !places.iter().any(|(known, _)| *known == name) {
                places.push((name, reason.value.clone()));
            }
        }
    }
    places
}

/// A point, or the area that a pattern stands for, in words.
pub fn place_name(scene: &Scene<'_>, pattern: &str) -> String {
    let id = crate::vocabulary::Identifier(pattern.to_owned());
    if scene.system.points.get(&id).is_some() {
        return scene.system.point_name(&id);
    }
    let area = pattern.trim_end_matches('*').trim_end_matches('/');
    scene
        .system
        .note
        .iter()
        .flat_map(|note| &note.area)
        .find(|known| known.id.as_ref().is_some_and(|id| id.value.0 == area))
        .and_then(|known| known.about.as_ref())
        .map_or_else(
            || {
                if pattern == "*" {
                    "everything registered".to_owned()
                } else {
                    area.to_owned()
                }
            },
            |about| about.value.clone(),
        )
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
