//! Every figure of a visit, in the order of the report.

use crate::job::{Site, System, Visit};
use crate::language::Words;
use crate::refrigerant::Refrigerant;
use crate::ruleset::{Coverage, RuleSet, coverage, last_verification, method_of, plant_of};
pub use crate::ruleset::{gwp_set_of, rules_of};
use crate::text::{Message, Sources};
use crate::working::account::{Account, account};
use crate::working::co2_equivalent::co2_equivalent;
use crate::working::leak_rate::{Missing, More, Window, lost_in_year};
use crate::working::leaks_explained::{Explained, Loss, leaks_explained};
use crate::working::outcome::{Outcome, outcome};
use crate::working::pressure_test::{Hold, hold};
use crate::working::room::{Room, RoomLimit, rooms};
use crate::working::service_equivalent::{InService, of_pressure_test, of_vacuum_test};
use crate::working::taken_out::{TakenOut, taken_out};
use crate::working::vacuum_test::{Rise, rise};
use crate::working::vapour_state::{VapourState, vapour_state};
use crate::working::{Figure, Origin, Value};

/// What is known of one circuit at a visit.
#[derive(Debug)]
pub struct CircuitFigures {
    /// Number of the circuit.
    pub circuit: usize,
    /// Its account up to the visit.
    pub account: Account,
    /// Net addition of the visit.
    pub net: Option<Figure>,
    /// Charge as CO2 equivalent.
    pub charge_co2e: Option<Figure>,
    /// What this visit's addition made up, as CO2 equivalent.
    pub lost_co2e: Option<Figure>,
    /// What was missing in all, where earlier partial additions belong to the same loss.
    pub missing_in_all: Option<Figure>,
    /// That as CO2 equivalent.
    pub missing_co2e: Option<Figure>,
    /// The loss that this visit's addition made up, or the last part of it.
    pub missing: Option<Missing>,
    /// What the leaks found explain of it; none where no leak was found or the loss is not known.
    pub explained: Option<Explained>,
    /// What was taken out to change the refrigerant, and what it was.
    pub taken_out: Option<(&'static Refrigerant, TakenOut)>,
    /// That as CO2 equivalent.
    pub taken_out_co2e: Option<Figure>,
    /// Plain loss per year.
    pub plain: Option<Figure>,
    /// What was lost in the calendar year up to the visit.
    pub in_year: Option<Figure>,
    /// Statutory leak rates with the rule that asks for each.
    pub statutory: Vec<(&'static RuleSet, Figure)>,
    /// Whether each rule in force covers it.
    pub coverage: Vec<(&'static RuleSet, Coverage)>,
}

/// All figures of a visit.
#[derive(Debug)]
pub struct VisitFigures {
    /// By circuit.
    pub circuits: Vec<CircuitFigures>,
    /// Pressure tests, in the order of the visit's.
    pub holds: Vec<Hold>,
    /// Vacuum tests, in the order of the visit's.
    pub rises: Vec<Rise>,
    /// Readings of the running plant, in the order of the visit's.
    pub states: Vec<Option<VapourState>>,
    /// Rooms that the system reaches.
    pub rooms: Vec<Room>,
    /// What the limit of each pressure test means in service.
    pub holds_in_service: Vec<Option<InService>>,
    /// What the bound of each vacuum test means in service.
    pub rises_in_service: Vec<Option<InService>>,
    /// How the visit ended.
    pub outcome: Outcome,
}

impl VisitFigures {
    /// Works out everything of a visit, by its number.
    pub fn of(site: &Site, system: &System, number: usize) -> Option<Self> {
        let visit = system.visits.get(number)?;
        let circuits = (0..system.circuits.len())
            .map(|circuit| circuit_figures(site, system, circuit, number))
            .collect();
        let holds: Vec<Hold> = visit
            .pressure_tests
            .iter()
            .filter_map(|test| Some(hold(test, system.circuits.get(test.circuit)?, visit)))
            .collect();
        let rises: Vec<Rise> = visit
            .vacuum_tests
            .iter()
            .map(|test| rise(test, system, visit))
            .collect();
        let refrigerant = |circuit| system.in_force(circuit, visit.last_day())?.refrigerant;
        let held = visit.pressure_tests.iter().zip(&holds);
        let holds_in_service = held
            .map(|(test, hold)| {
                let circuit = system.circuits.get(test.circuit)?;
                let refrigerant = refrigerant(test.circuit)?;
                of_pressure_test(test, hold.limit.as_ref(), circuit, refrigerant, visit)
            })
            .collect();
        let risen = visit.vacuum_tests.iter().zip(&rises);
        let rises_in_service = risen
            .map(|(test, rise)| {
                let circuit = system.circuits.get(test.circuit)?;
                let refrigerant = refrigerant(test.circuit)?;
                of_vacuum_test(test, rise.upper.as_ref(), circuit, refrigerant, visit)
            })
            .collect();
        Some(Self {
            holds_in_service,
            rises_in_service,
            circuits,
            holds,
            rises,
            states: (0..visit.operating.len())
                .map(|reading| vapour_state(system, visit, reading))
                .collect(),
            rooms: rooms(site, system, visit.last_day(), room_limit(site)),
            outcome: outcome(system, number)?,
        })
    }

    /// All figures, in the order of the report.
    pub fn all(&self) -> Vec<&Figure> {
        let mut all = Vec::new();
        for circuit in &self.circuits {
            all.extend(&circuit.net);
            if let Some((_, out)) = &circuit.taken_out {
                all.push(&out.recovered);
                all.extend(&out.short);
            }
            all.extend(&circuit.taken_out_co2e);
            all.extend(&circuit.missing_in_all);
            all.extend(&circuit.plain);
            all.extend(&circuit.in_year);
            if let Some(Explained::Sized(share)) = &circuit.explained {
                all.push(&share.figure);
            }
            all.extend(circuit.statutory.iter().map(|(_, figure)| figure));
            all.extend(&circuit.charge_co2e);
            // Of a loss that was put back in parts the whole is told, not the last part.
            all.extend(circuit.missing_co2e.as_ref().or(circuit.lost_co2e.as_ref()));
        }
        for (hold, in_service) in self.holds.iter().zip(&self.holds_in_service) {
            all.extend(hold.figures());
            all.extend(in_service.iter().flat_map(InService::figures));
        }
        for (rise, in_service) in self.rises.iter().zip(&self.rises_in_service) {
            all.extend(rise.figures());
            all.extend(in_service.iter().flat_map(InService::figures));
        }
        for state in self.states.iter().flatten() {
            all.extend(&state.superheat);
            all.extend(&state.subcooling);
        }
        for room in &self.rooms {
            all.extend(&room.concentration);
            all.extend(&room.quarter);
        }
        all
    }
}

/// Which limit of a room the code of a site goes by: that of ASHRAE 34 under the rules of the United
/// States, else that of EN 378-1 (common practice; the local code decides).
fn room_limit(site: &Site) -> RoomLimit {
    use crate::vocabulary::site_file::RuleSetWord;
    let american = site
        .note
        .iter()
        .flat_map(|note| &note.rules)
        .any(|rule| matches!(rule.value, RuleSetWord::Us82 | RuleSetWord::Us84));
    if american {
        RoomLimit::Concentration
    } else {
        RoomLimit::Practical
    }
}

fn circuit_figures(site: &Site, system: &System, circuit: usize, number: usize) -> CircuitFigures {
    let visit = &system.visits[number];
    let account = account(system, circuit, number);
    let label = |part: &str| match system.circuits[circuit].id.as_ref() {
        Some(id) if system.several_circuits() => format!("circuit/{id}/{part}"),
        _ => format!("charge/{part}"),
    };
    let titled = |id| Message::of(id).with("circuit", system.circuit_choice(circuit));
    let in_force = system.in_force(circuit, visit.last_day());
    let refrigerant = in_force.and_then(|entry| entry.refrigerant);
    let full = in_force.and_then(|entry| entry.note.full_charge);
    let plant = plant_of(system);
    let mut figures = CircuitFigures {
        circuit,
        net: account.net_of(number, &label("net-addition"), titled("title-net-addition")),
        charge_co2e: None,
        lost_co2e: None,
        missing_in_all: None,
        missing_co2e: None,
        missing: None,
        explained: None,
        taken_out: None,
        taken_out_co2e: None,
        plain: None,
        in_year: None,
        statutory: Vec::new(),
        coverage: Vec::new(),
        account,
    };
    let (Some(refrigerant), Some(full)) = (refrigerant, full) else {
        return figures;
    };
    let full_kg = full.value.value.si();
    for rules in rules_of(site, visit.last_day()) {
        figures
            .coverage
            .push((rules, coverage(rules, refrigerant, full_kg, plant)));
    }
    let set = figures
        .coverage
        .iter()
        .find(|(_, coverage)| coverage.covered)
        .map_or_else(
            || gwp_set_of(site, visit.last_day()),
            |(rules, _)| rules.gwp,
        );
    figures.charge_co2e = co2_equivalent(
        (Value::written(&full.value), Origin::Note(full.span)),
        refrigerant,
        set,
        &label("full-charge-co2e"),
        titled("title-full-charge-co2e"),
    );
    let before = visit.name.date.yesterday().ok();
    let before = before.and_then(|day| system.in_force(circuit, day));
    let old = before.and_then(|entry| entry.refrigerant.zip(entry.note.full_charge));
    figures.taken_out = old.and_then(|(old, full)| {
        let out = taken_out(&figures.account, number, &full, label, titled)?;
        Some((old, out))
    });
    figures.taken_out_co2e = figures.taken_out.as_ref().and_then(|(old, out)| {
        let mass = (
            out.recovered.value.clone(),
            Origin::Figure(out.recovered.id.clone()),
        );
        co2_equivalent(
            mass,
            old,
            set,
            &label("recovered-co2e"),
            titled("title-recovered-co2e"),
        )
    });
    let Some(addition) = figures.account.addition_of(number).cloned() else {
        return figures;
    };
    figures.lost_co2e = co2_equivalent(
        (
            Value::mass(addition.leaked_kg, addition.uncertainty_kg),
            Origin::Notes(addition.spans.clone()),
        ),
        refrigerant,
        set,
        &label("loss-co2e"),
        titled("title-loss-co2e"),
    );
    let mut window = Window {
        account: &figures.account,
        full: &full,
        addition: &addition,
        verified: last_verification(system, number),
        first: None,
    };
    let year = addition.at.value.date().year();
    // The rule that asks for it: 40 CFR 82.157(j), 84.106(j).
    let asked =
        |(rules, covered): &(&RuleSet, Coverage)| covered.covered && rules.exceedance.is_some();
    let asked = figures.coverage.iter().any(asked);
    let in_year = lost_in_year(
        &figures.account,
        &full,
        year,
        &label(&format!("lost-in-year/{year}")),
        titled("title-lost-in-year").with("year", year.to_string()),
    );
    let plain = window.plain(&label("loss-per-year"), titled("title-loss-per-year"));
    let mut statutory = Vec::new();
    for (rules, coverage) in &figures.coverage {
        if !rules.asks_leak_rate || !coverage.covered {
            continue;
        }
        window.first = rules.first_calculation;
        let (method, slug) = method_of(site);
        let title = titled("title-leak-rate").phrase("rules", rules.title);
        let figure = window.rate(method, &label(&format!("leak-rate/{slug}")), title);
        statutory.extend(figure.map(|figure| (*rules, figure)));
    }
    let missing = window.missing();
    let missing_in_all = window.missing_in_all(&label("missing-in-all"), titled("title-missing"));
    figures.missing_co2e = missing_in_all.as_ref().and_then(|whole| {
        let mass = (whole.value.clone(), Origin::Figure(whole.id.clone()));
        let title = titled("title-missing-co2e");
        co2_equivalent(mass, refrigerant, set, &label("missing-co2e"), title)
    });
    figures.explained = missing.since.and_then(|(since, _)| {
        let loss = Loss {
            since,
            until: addition.at,
            kg: missing.kg,
            // What one addition made up is known with its uncertainty; a sum of several is not.
            uncertainty_kg: addition.uncertainty_kg.filter(|_| missing.parts.len() == 1),
            spans: &addition.spans,
            installed: figures
                .account
                .installed_full
                .is_some_and(|from| from.value == since.value),
            complete: missing.more != Some(More::NotComplete),
        };
        let id = label("leaks-explained");
        let named = (id.as_str(), titled("title-leaks-explained"));
        leaks_explained(system, number, circuit, &loss, named)
    });
    figures.missing_in_all = missing_in_all;
    figures.missing = Some(missing);
    figures.plain = plain;
    figures.in_year = in_year.filter(|_| asked);
    figures.statutory = statutory;
    figures
}

/// Every figure of a visit as JSON: id, title, printed value, SI value, inputs with their places.
pub fn figures_json(figures: &VisitFigures, site: &Site, sources: &Sources) -> serde_json::Value {
    let words = Words::english();
    figures
        .all()
        .into_iter()
        .map(|figure| {
            let number = figure.value.number();
            serde_json::json!({
                "id": figure.id,
                "title": words.text(&figure.title),
                "method": figure.method.id,
                "printed": figure.value.print(site.units),
                "value": number.is_finite().then_some(number),
                "inputs": figure.inputs.iter().map(|input| serde_json::json!({
                    "symbol": input.symbol,
                    "printed": input.value.print(site.units),
                    "origin": input.origin.say(sources, words),
                })).collect::<Vec<_>>(),
                "notes": figure.notes.iter().map(|note| words.text(note)).collect::<Vec<_>>(),
            })
        })
        .collect()
}

/// What each pressure test of a visit shows, as JSON: its id, the verdict, and why.
pub fn pressure_tests_json(
    figures: &VisitFigures,
    site: &Site,
    visit: &Visit,
) -> serde_json::Value {
    let words = Words::english();
    visit
        .pressure_tests
        .iter()
        .zip(&figures.holds)
        .map(|(test, hold)| {
            let size = hold
                .limit
                .as_ref()
                .map(|limit| limit.value.print(site.units));
            serde_json::json!({
                "id": test.id.0,
                "verdict": words.say(&hold.verdict.sentence(&size.unwrap_or_default())),
                "reasons": hold.reasons.iter().map(|reason| words.say(reason)).collect::<Vec<_>>(),
                "would-help": hold.most_help().map(|help| words.say(&help)),
            })
        })
        .collect()
}
