//! Charge account of a circuit: every movement, gross, and net per job.

use crate::job::{Moment, MovedMass, Movement, System, Visit};
use crate::quantity::{Flavour, Mass, Measured};
use crate::text::{Noted, Span};
use crate::vocabulary::Identifier;
use crate::vocabulary::refrigerant_file::{ChargedTo, MovementKind, MovementWhy};
use crate::vocabulary::system_file::EarlierHappening;
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Net addition of one job.
pub static NET: Method = Method {
    id: "net-addition",
    name: "Net addition of a job",
    formula: "net = sum charged − sum recovered − sum lost in service, purged or vented",
    mathematics: "m_\"net\" = sum m_\"charged\" - sum m_\"recovered\" - sum m_\"other\"",
    source: "common practice: what was recovered and charged back is not a loss",
};

/// A line of an account.
#[derive(Clone, Debug)]
pub struct Entry {
    /// When.
    pub at: Noted<Moment>,
    /// Which way.
    pub kind: MovementKind,
    /// Why.
    pub why: Option<MovementWhy>,
    /// How much, kg.
    pub kg: f64,
    /// Half width of its uncertainty, kg.
    pub uncertainty_kg: Option<f64>,
    /// Where the mass stands.
    pub spans: Vec<Span>,
    /// The cylinder.
    pub cylinder: Option<Identifier>,
    /// Number of the visit; none for an earlier record.
    pub visit: Option<usize>,
    /// Charged to the full charge.
    pub to_full: bool,
}

impl Entry {
    /// What it adds to the circuit: negative where it takes out.
    pub fn signed_kg(&self) -> f64 {
        if self.kind == MovementKind::Charged {
            self.kg
        } else {
            -self.kg
        }
    }
}

/// Refrigerant that a job had to add: its net, where that is more than nothing.
#[derive(Clone, Debug)]
pub struct Addition {
    /// When the last of it was charged.
    pub at: Noted<Moment>,
    /// How much, net of what was recovered, kg.
    pub kg: f64,
    /// How much of it had leaked: what was lost in service, vented or purged is no leak, kg.
    pub leaked_kg: f64,
    /// Half width of its uncertainty, kg.
    pub uncertainty_kg: Option<f64>,
    /// Where it stands.
    pub spans: Vec<Span>,
    /// Number of the visit; none for an earlier record.
    pub visit: Option<usize>,
    /// Charged to the full charge.
    pub to_full: bool,
}

/// The account of one circuit up to a visit.
#[derive(Clone, Debug, Default)]
pub struct Account {
    /// All lines, in order of time.
    pub entries: Vec<Entry>,
    /// What jobs had to add because it was lost, in order of time.
    pub additions: Vec<Addition>,
    /// When the circuit was last charged anew: at installation, or with another refrigerant.
    pub charged_anew: Option<Noted<Moment>>,
    /// From when every movement is known.
    pub complete_since: Option<Moment>,
}

/// Uncertainty of a mass as noted: as written, else half a step.
fn half_width(mass: &Measured<Mass>) -> f64 {
    mass.uncertainty.unwrap_or(mass.step / 2.0)
}

/// Mass and uncertainty of a movement, kg.
pub fn moved(amount: &MovedMass) -> (f64, Option<f64>, Vec<Span>) {
    match amount {
        MovedMass::Weighed { before, after } => {
            let half = half_width(&before.value).hypot(half_width(&after.value));
            (amount.kg(), Some(half), vec![before.span, after.span])
        }
        MovedMass::Stated(mass) => (amount.kg(), mass.value.uncertainty, vec![mass.span]),
    }
}

/// The account of a circuit up to and with a visit.
pub fn account(system: &System, circuit: usize, last: usize) -> Account {
    let mut entries = Vec::new();
    for earlier in system.earlier.iter().filter(|e| e.circuit == circuit) {
        let kind = match earlier.note.what.as_ref().map(|what| what.value) {
            Some(EarlierHappening::Charged) => MovementKind::Charged,
            Some(EarlierHappening::Recovered) => MovementKind::Recovered,
            _ => continue,
        };
        let Some(mass) = earlier.note.mass else {
            continue;
        };
        entries.push(Entry {
            at: earlier.at,
            kind,
            why: None,
            kg: mass.value.value.si(),
            uncertainty_kg: mass.value.uncertainty,
            spans: vec![mass.span],
            cylinder: None,
            visit: None,
            to_full: false,
        });
    }
    for (number, visit) in system.visits.iter().enumerate().take(last + 1) {
        for movement in visit.movements.iter().filter(|m| m.circuit == circuit) {
            entries.push(entry(movement, number));
        }
    }
    entries.sort_by_key(|entry| entry.at.value);
    let additions = additions(&entries);
    let charged_anew = entries
        .iter()
        .rfind(|entry| {
            entry.kind == MovementKind::Charged
                && matches!(
                    entry.why,
                    Some(MovementWhy::Installation | MovementWhy::Retrofit)
                )
        })
        .map(|entry| entry.at);
    let complete_since = system
        .visits
        .first()
        .and_then(Visit::start)
        .into_iter()
        .chain(
            entries
                .iter()
                .find(|e| e.why == Some(MovementWhy::Installation))
                .map(|e| e.at.value),
        )
        .min();
    Account {
        entries,
        additions,
        charged_anew,
        complete_since,
    }
}

fn entry(movement: &Movement, visit: usize) -> Entry {
    let (kg, uncertainty_kg, spans) = moved(&movement.amount);
    Entry {
        at: movement.at,
        kind: movement.kind,
        why: movement.why,
        kg,
        uncertainty_kg,
        spans,
        cylinder: movement.note.cylinder.as_ref().map(|id| id.value.clone()),
        visit: Some(visit),
        to_full: movement.note.charged_to.is_some_and(|to| {
            matches!(
                to.value,
                ChargedTo::FullByWeight | ChargedTo::FullBySightGlass | ChargedTo::FullBySubcooling
            )
        }),
    }
}

/// Whether a movement belongs to a change of refrigerant, of season or of use, not to a loss.
fn is_apart(entry: &Entry) -> bool {
    matches!(
        entry.why,
        Some(
            MovementWhy::Installation
                | MovementWhy::Retrofit
                | MovementWhy::Seasonal
                | MovementWhy::Decommissioning
        )
    )
}

/// Nets each job: what it charged less what it recovered, relief and purge and service losses apart.
fn additions(entries: &[Entry]) -> Vec<Addition> {
    let mut additions: Vec<Addition> = Vec::new();
    let mut index = 0;
    while index < entries.len() {
        let visit = entries[index].visit;
        let job: Vec<&Entry> = match visit {
            Some(_) => entries[index..]
                .iter()
                .take_while(|entry| entry.visit == visit)
                .collect(),
            None => vec![&entries[index]],
        };
        index += job.len();
        let counted: Vec<&Entry> = job.iter().copied().filter(|e| !is_apart(e)).collect();
        let net: f64 = counted
            .iter()
            .filter(|e| matches!(e.kind, MovementKind::Charged | MovementKind::Recovered))
            .map(|e| e.signed_kg())
            .sum();
        let let_out: f64 = counted
            .iter()
            .filter(|e| !matches!(e.kind, MovementKind::Charged | MovementKind::Recovered))
            .map(|e| e.kg)
            .sum();
        let Some(last) = counted.iter().rfind(|e| e.kind == MovementKind::Charged) else {
            continue;
        };
        if net <= 1e-9 {
            continue;
        }
        let halves: Option<Vec<f64>> = counted.iter().map(|e| e.uncertainty_kg).collect();
        additions.push(Addition {
            at: last.at,
            kg: net,
            leaked_kg: (net - let_out).max(0.0),
            uncertainty_kg: halves.map(|h| h.iter().map(|u| u * u).sum::<f64>().sqrt()),
            spans: counted.iter().flat_map(|e| e.spans.clone()).collect(),
            visit,
            to_full: last.to_full,
        });
    }
    additions
}

impl Account {
    /// The addition of a visit.
    pub fn addition_of(&self, visit: usize) -> Option<&Addition> {
        self.additions
            .iter()
            .find(|addition| addition.visit == Some(visit))
    }

    /// Lines of a visit.
    pub fn entries_of(&self, visit: usize) -> impl Iterator<Item = &Entry> {
        self.entries
            .iter()
            .filter(move |entry| entry.visit == Some(visit))
    }

    /// Sum of a kind of movement, kg, over lines that satisfy a condition.
    pub fn sum(&self, kind: MovementKind, keep: impl Fn(&Entry) -> bool) -> f64 {
        self.entries
            .iter()
            .filter(|entry| entry.kind == kind && keep(entry))
            .map(|entry| entry.kg)
            .sum()
    }

    /// Whether a visit changed the refrigerant, so that its movements are of two and have no sum.
    pub fn is_retrofit(&self, visit: usize) -> bool {
        self.entries_of(visit)
            .any(|entry| entry.why == Some(MovementWhy::Retrofit))
    }

    /// The net addition of a visit as a figure; `None` where nothing moved, or two refrigerants did.
    pub fn net_of(&self, visit: usize, id: &str, title: &str) -> Option<Figure> {
        let mut working = Working::of(&NET, id, title);
        let mut net = 0.0;
        let mut variance = Some(0.0);
        for entry in self.entries_of(visit) {
            let symbol = match entry.kind {
                MovementKind::Charged => "m_charged",
                MovementKind::Recovered => "m_recovered",
                _ => "m_other",
            };
            let kg = working.input(
                symbol,
                Value::Computed {
                    flavour: Flavour::Mass,
                    si: entry.kg,
                    uncertainty: entry.uncertainty_kg,
                },
                Origin::Notes(entry.spans.clone()),
            );
            net += kg * entry.signed_kg().signum();
            variance = variance
                .zip(entry.uncertainty_kg)
                .map(|(sum, half)| sum + half * half);
        }
        if self.entries_of(visit).next().is_none() || self.is_retrofit(visit) {
            return None;
        }
        if self.entries_of(visit).any(is_apart) {
            working.note("Movements for installation, season, retrofit or taking out of use are in this sum; they are not counted as loss in the leak rate.");
        }
        working.note("The uncertainty of a scale reading is half its last digit, where none is written; the accuracy of the scale is not in it.");
        Some(working.finish(Value::Computed {
            flavour: Flavour::Mass,
            si: net,
            uncertainty: variance.map(f64::sqrt).filter(|half| *half > 0.0),
        }))
    }
}
