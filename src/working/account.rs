//! Charge account of a circuit: every movement, gross, and net per job.

use crate::job::{Accuracy, Moment, MovedMass, Movement, System, Visit, refrigerant_of};
use crate::quantity::{Flavour, Mass, Measured};
use crate::refrigerant::Refrigerant;
use crate::text::{Message, Noted, Span, Text};
use crate::vocabulary::Identifier;
use crate::vocabulary::refrigerant_file::{
    ChargedTo, Destination, MassHow, MovementKind, MovementWhy,
};
use crate::vocabulary::system_file::EarlierHappening;
use crate::vocabulary::visit_file::Purpose;
use crate::working::working::{Figure, Method, Origin, Value, Working};
use jiff::civil::Date;

/// Net addition of one job.
pub static NET: Method = Method {
    id: "net-addition",
    name: "Net addition of a job",
    formula: "net = sum charged − sum recovered − sum lost in service, purged or vented;  U = 2u, u² = sum of (a² ÷ 3 + step² ÷ 12) over the scale readings",
    mathematics: "m_\"net\" = sum m_\"charged\" - sum m_\"recovered\" - sum m_\"other\", \\ quad u^2 = sum (a^2 / 3 + s^2 / 12)",
    source: "common practice: what was recovered and charged back is not a loss; uncertainty by JCGM 100:2008 5.1 (accuracy a of the scale and its step taken as rectangular, F.2.2.1), coverage factor 2",
};

/// Share of a purge that has to be destroyed for it to count in no leak rate, and where that is written.
const DESTROYED: (f64, &str) = (0.98, "40 CFR 82.157(k); 98 %");

/// How the uncertainty of a mass is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Basis {
    /// Written with ±, taken with a coverage factor of 2.
    Written,
    /// From the accuracy of the scale.
    Scale(Noted<Accuracy>),
    /// From the last digit alone: the accuracy of the scale is not known.
    Step,
    /// Not known.
    Unknown,
}

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
    /// Expanded uncertainty, coverage factor 2, kg.
    pub uncertainty_kg: Option<f64>,
    /// How that is known.
    pub basis: Basis,
    /// Where the mass stands.
    pub spans: Vec<Span>,
    /// The cylinder.
    pub cylinder: Option<Identifier>,
    /// What moved, where the movement itself says it.
    pub refrigerant: Option<&'static Refrigerant>,
    /// Number of the visit; none for an earlier record.
    pub visit: Option<usize>,
    /// How far it was charged, where that is noted.
    pub charged_to: Option<ChargedTo>,
    /// Purged and destroyed to the share that the rule asks for.
    pub destroyed: bool,
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

    /// Whether it was charged to the full charge.
    pub fn to_full(&self) -> bool {
        self.charged_to.is_some_and(ChargedTo::is_full)
    }

    /// Whether it went neither into nor out of a cylinder.
    pub fn is_let_out(&self) -> bool {
        !matches!(self.kind, MovementKind::Charged | MovementKind::Recovered)
    }
}

/// Refrigerant that a job had to add: its net, where that is more than nothing.
#[derive(Clone, Debug, PartialEq)]
pub struct Addition {
    /// When the last of it was charged.
    pub at: Noted<Moment>,
    /// How much, net of what was recovered, kg.
    pub kg: f64,
    /// How much of it made up for a purge that was destroyed, and counts in no leak rate, kg.
    pub destroyed_kg: f64,
    /// Where that purge stands.
    pub destroyed_spans: Vec<Span>,
    /// How much of it had leaked: what was lost in service, vented or purged is no leak, kg.
    pub leaked_kg: f64,
    /// Expanded uncertainty, coverage factor 2, kg.
    pub uncertainty_kg: Option<f64>,
    /// Where it stands.
    pub spans: Vec<Span>,
    /// Number of the visit; none for an earlier record.
    pub visit: Option<usize>,
    /// How far it was charged, where that is noted.
    pub charged_to: Option<ChargedTo>,
    /// What a charge for the season put in beyond what was taken out for it, kg.
    pub beyond_season_kg: f64,
    /// Whether it shows a loss: any does where nothing was recovered; else what had leaked has to be
    /// more than the scales can tell.
    pub shows_loss: bool,
}

impl Addition {
    /// Whether it charged the circuit to the full charge.
    pub fn to_full(&self) -> bool {
        self.charged_to.is_some_and(ChargedTo::is_full)
    }

    /// What counts in a leak rate by rule, kg.
    pub fn counted_kg(&self) -> f64 {
        self.kg - self.destroyed_kg
    }
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
    /// The day on which the full charge was weighed in at installation, if that is what is in force.
    pub installed_full: Option<Noted<Moment>>,
}

/// Expanded uncertainty of a scale reading, kg, and how it is known.
fn weighed(mass: &Measured<Mass>, scale: Option<Noted<Accuracy>>) -> (f64, Basis) {
    if let Some(written) = mass.uncertainty {
        return (written, Basis::Written);
    }
    let half = scale.map_or(0.0, |a| a.value.half_width(mass.value.si()));
    let standard = (half * half / 3.0 + mass.step * mass.step / 12.0).sqrt();
    (2.0 * standard, scale.map_or(Basis::Step, Basis::Scale))
}

/// Expanded uncertainty of a movement, kg, how it is known, and where its mass stands.
fn uncertainty(movement: &Movement) -> (Option<f64>, Basis, Vec<Span>) {
    match movement.amount {
        MovedMass::Weighed { before, after } => {
            let (one, basis) = weighed(&before.value, movement.scale);
            let (other, _) = weighed(&after.value, movement.scale);
            (Some(one.hypot(other)), basis, vec![before.span, after.span])
        }
        MovedMass::Stated(mass) => {
            let on_scale = movement
                .note
                .how
                .is_some_and(|how| how.value == MassHow::Weighed);
            let known = match mass.value.uncertainty {
                Some(written) => (Some(written), Basis::Written),
                None if on_scale && movement.scale.is_some() => {
                    let (one, basis) = weighed(&mass.value, movement.scale);
                    (Some(one * std::f64::consts::SQRT_2), basis)
                }
                None => (None, Basis::Unknown),
            };
            (known.0, known.1, vec![mass.span])
        }
    }
}

/// The accounts of all circuits of a system up to its last visit.
pub fn accounts(system: &System) -> Vec<Account> {
    let last = system.visits.len().saturating_sub(1);
    (0..system.circuits.len())
        .map(|circuit| account(system, circuit, last))
        .collect()
}

/// The account of a circuit up to and with a visit.
pub fn account(system: &System, circuit: usize, last: usize) -> Account {
    let mut entries = earlier(system, circuit);
    for (number, visit) in system.visits.iter().enumerate().take(last + 1) {
        let purpose = visit.note.as_ref().and_then(|note| note.purpose);
        for movement in visit.movements.iter().filter(|m| m.circuit == circuit) {
            entries.push(entry(
                movement,
                number,
                purpose.map(|purpose| purpose.value),
            ));
        }
    }
    let begun = system.visits.first().and_then(Visit::start);
    let mut account = Account::of(entries, begun);
    let day = system.visits.get(last).map(Visit::last_day);
    account.installed_full = day.and_then(|day| installed_full(system, circuit, day));
    account
}

fn earlier(system: &System, circuit: usize) -> Vec<Entry> {
    let of_circuit = system.earlier.iter().filter(|e| e.circuit == circuit);
    of_circuit
        .filter_map(|earlier| {
            let kind = match earlier.note.what.as_ref()?.value {
                EarlierHappening::Charged => MovementKind::Charged,
                EarlierHappening::Recovered => MovementKind::Recovered,
                _ => return None,
            };
            let mass = earlier.note.mass?;
            Some(Entry {
                at: earlier.at,
                kind,
                why: None,
                kg: mass.value.value.si(),
                uncertainty_kg: mass.value.uncertainty,
                basis: mass
                    .value
                    .uncertainty
                    .map_or(Basis::Unknown, |_| Basis::Written),
                spans: vec![mass.span],
                cylinder: None,
                refrigerant: None,
                visit: None,
                charged_to: None,
                destroyed: false,
            })
        })
        .collect()
}

/// The day from which a full charge weighed in at installation has been in force, on a day.
fn installed_full(system: &System, circuit: usize, day: Date) -> Option<Noted<Moment>> {
    let in_force = system.in_force(circuit, day)?;
    let by = in_force.note.full_charge_by.as_ref()?.value.to_lowercase();
    (by.contains("weighed") && by.contains("installation")).then_some(in_force.from)
}

fn entry(movement: &Movement, visit: usize, purpose: Option<Purpose>) -> Entry {
    let (uncertainty_kg, basis, spans) = uncertainty(movement);
    let note = &movement.note;
    let to_destruction = note
        .destination
        .is_some_and(|destination| destination.value == Destination::Destruction);
    let share = note.destroyed.map_or(0.0, |share| share.value.value.si());
    Entry {
        at: movement.at,
        kind: movement.kind,
        why: why(movement, purpose),
        kg: movement.amount.kg(),
        uncertainty_kg,
        basis,
        spans,
        cylinder: note.cylinder.as_ref().map(|id| id.value.clone()),
        refrigerant: refrigerant_of(note.refrigerant.as_ref()),
        visit: Some(visit),
        charged_to: note.charged_to.map(|to| to.value),
        destroyed: movement.kind == MovementKind::Purged
            && to_destruction
            && share >= DESTROYED.0 - 1e-9,
    }
}

/// Why it moved: as written; at a first filling or a change of refrigerant, for that.
fn why(movement: &Movement, purpose: Option<Purpose>) -> Option<MovementWhy> {
    let filling = match purpose {
        Some(Purpose::Commissioning) => MovementWhy::Installation,
        Some(Purpose::Retrofit) => MovementWhy::Retrofit,
        _ => return movement.why,
    };
    match movement.why {
        None | Some(MovementWhy::Recharge | MovementWhy::Service)
            if movement.kind == MovementKind::Charged =>
        {
            Some(filling)
        }
        why => why,
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

/// What jobs left behind that a later addition makes up for without a leak.
#[derive(Default)]
struct Carried {
    /// Recovered for a repair and not yet charged back, kg.
    recovered: f64,
    /// Let out otherwise than by a leak, kg.
    let_out: f64,
    /// Of that, purged and destroyed, kg.
    destroyed: f64,
    /// Where that stands.
    destroyed_spans: Vec<Span>,
    /// Taken out for the season, by day, kg.
    season: Vec<(Date, f64)>,
}

impl Carried {
    /// What a charge for the season put in beyond what was taken out for it in the 12 months before, kg.
    fn beyond_season(&mut self, charge: &Entry) -> f64 {
        let day = charge.at.value.date();
        let from = day.checked_sub(jiff::Span::new().years(1)).unwrap_or(day);
        let mut left = charge.kg;
        for (taken, kg) in &mut self.season {
            if *taken >= from {
                let part = kg.min(left);
                *kg -= part;
                left -= part;
            }
        }
        if left > charge.uncertainty_kg.unwrap_or(0.0) + 1e-9 {
            left
        } else {
            0.0
        }
    }

    /// Nets one job.
    fn job(&mut self, job: &[Entry]) -> Option<Addition> {
        let sum = |keep: &dyn Fn(&Entry) -> bool| -> f64 {
            let counted = job.iter().filter(|entry| !is_apart(entry) && keep(entry));
            counted.map(|entry| entry.kg).sum()
        };
        let charged = sum(&|entry| entry.kind == MovementKind::Charged);
        let recovered = sum(&|entry| entry.kind == MovementKind::Recovered);
        let for_repair = sum(&|entry| {
            entry.kind == MovementKind::Recovered && entry.why == Some(MovementWhy::Repair)
        });
        let let_out = self.let_out + sum(&Entry::is_let_out);
        let destroyed = self.destroyed + sum(&|entry| entry.destroyed);
        let purged = job.iter().filter(|entry| entry.destroyed);
        self.destroyed_spans
            .extend(purged.flat_map(|e| e.spans.clone()));
        let mut beyond_season_kg = 0.0;
        for entry in job.iter().filter(|e| e.why == Some(MovementWhy::Seasonal)) {
            match entry.kind {
                MovementKind::Charged => beyond_season_kg += self.beyond_season(entry),
                MovementKind::Recovered => self.season.push((entry.at.value.date(), entry.kg)),
                _ => {}
            }
        }
        let net = charged + beyond_season_kg - recovered - self.recovered;
        let counts = |entry: &&Entry| !is_apart(entry) || beyond_season_kg > 0.0;
        let last = job
            .iter()
            .filter(counts)
            .rfind(|entry| entry.kind == MovementKind::Charged);
        let Some(last) = last.filter(|_| net > 1e-9) else {
            // Filled without a loss: nothing is owed any more.
            let filled = job.iter().any(Entry::to_full);
            self.recovered = if filled {
                0.0
            } else {
                (for_repair - charged + self.recovered).max(0.0)
            };
            (self.let_out, self.destroyed) = if filled {
                (0.0, 0.0)
            } else {
                (let_out, destroyed)
            };
            if filled {
                self.destroyed_spans.clear();
            }
            return None;
        };
        let anything_recovered = recovered + self.recovered > 0.0;
        (self.recovered, self.let_out, self.destroyed) = (0.0, 0.0, 0.0);
        let counted: Vec<&Entry> = job.iter().filter(counts).collect();
        let halves: Option<Vec<f64>> = counted.iter().map(|e| e.uncertainty_kg).collect();
        let uncertainty_kg = halves.map(|h| h.iter().map(|u| u * u).sum::<f64>().sqrt());
        let leaked_kg = (net - let_out).max(0.0);
        let least = uncertainty_kg.filter(|_| anything_recovered).unwrap_or(0.0);
        Some(Addition {
            at: last.at,
            kg: net,
            destroyed_kg: destroyed.min(net),
            destroyed_spans: std::mem::take(&mut self.destroyed_spans),
            leaked_kg,
            uncertainty_kg,
            spans: counted.iter().flat_map(|e| e.spans.clone()).collect(),
            visit: last.visit,
            charged_to: last.charged_to,
            beyond_season_kg,
            shows_loss: leaked_kg > least,
        })
    }
}

/// The movements of one job each: a visit's, or one earlier record.
pub(super) fn jobs(entries: &[Entry]) -> impl Iterator<Item = &[Entry]> {
    entries.chunk_by(|one, next| one.visit.is_some() && one.visit == next.visit)
}

impl Account {
    /// The account of movements in any order; `begun` is when this book begins to know of all.
    pub fn of(mut entries: Vec<Entry>, begun: Option<Moment>) -> Self {
        entries.sort_by_key(|entry| entry.at.value);
        let mut carried = Carried::default();
        let additions = jobs(&entries).filter_map(|job| carried.job(job)).collect();
        let anew = |entry: &&Entry| {
            entry.kind == MovementKind::Charged
                && matches!(
                    entry.why,
                    Some(MovementWhy::Installation | MovementWhy::Retrofit)
                )
        };
        let installed = entries
            .iter()
            .find(|entry| entry.why == Some(MovementWhy::Installation))
            .map(|entry| entry.at.value);
        Self {
            charged_anew: entries.iter().rfind(anew).map(|entry| entry.at),
            complete_since: begun.into_iter().chain(installed).min(),
            additions,
            entries,
            installed_full: None,
        }
    }

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
    pub fn net_of(&self, visit: usize, id: &str, title: impl Into<Text>) -> Option<Figure> {
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
            working.note(Message::of("note-apart-from-loss"));
        }
        self.say_basis(visit, &mut working);
        Some(working.finish(Value::Computed {
            flavour: Flavour::Mass,
            si: net,
            uncertainty: variance.map(f64::sqrt).filter(|half| *half > 0.0),
        }))
    }
    /// Says how the uncertainty of each mass of a visit is known.
    fn say_basis(&self, visit: usize, working: &mut Working) {
        let mut told = Vec::new();
        for entry in self.entries_of(visit) {
            if told.contains(&entry.basis) {
                continue;
            }
            told.push(entry.basis);
            match entry.basis {
                Basis::Written => {
                    working.note(Message::of("note-uncertainty-written"));
                }
                Basis::Scale(accuracy) if accuracy.value.share > 0.0 => {
                    let percent = Value::Percent(100.0 * accuracy.value.share, 2);
                    working.input("a", percent, Origin::Note(accuracy.span));
                }
                Basis::Scale(accuracy) => {
                    let half = Value::Computed {
                        flavour: Flavour::Mass,
                        si: accuracy.value.fixed,
                        uncertainty: None,
                    };
                    working.input("a", half, Origin::Note(accuracy.span));
                }
                Basis::Step => working.note(Message::of("note-scale-not-known")),
                Basis::Unknown => {
                    working.note(Message::of("note-not-weighed"));
                }
            }
        }
    }
}
