//! Where every kilogram of a circuit came from and went: each transfer with both its ends, and what
//! follows of what is in the circuit now.

use crate::job::{Book, InForce, Moment, System, refrigerant_of};
use crate::refrigerant::Refrigerant;
use crate::text::{Noted, Span};
use crate::vocabulary::Identifier;
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::working::account::{Account, Entry, jobs};

/// An end of a transfer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// The circuit.
    Circuit,
    /// A cylinder.
    Cylinder(Identifier),
    /// A cylinder that is not named.
    UnnamedCylinder,
    /// Out of the circuit otherwise than by a leak.
    LetOut(MovementKind),
    /// Purged and destroyed.
    Destroyed,
    /// Missing when the circuit was next filled or emptied: it had leaked.
    Leaked,
}

/// One movement with both its ends, or a loss that a filling showed.
#[derive(Clone, Debug)]
pub struct Transfer {
    /// When; of a loss, when it was shown.
    pub at: Moment,
    /// Out of where.
    pub from: Place,
    /// Into where.
    pub to: Place,
    /// Why.
    pub why: Option<MovementWhy>,
    /// How much, kg; negative for a loss where more was found than expected.
    pub kg: f64,
    /// Expanded uncertainty, coverage factor 2, kg.
    pub uncertainty_kg: Option<f64>,
    /// Number of the visit; none for an earlier record.
    pub visit: Option<usize>,
    /// Where it stands in the notes.
    pub span: Option<Span>,
}

/// How it is known what is in a circuit now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Known {
    /// It was filled by its last movement; what leaked since then is not taken off.
    Filled,
    /// Worked out from the last filling or from the full charge taken as its content: at most this.
    AtMost,
    /// All of it was taken out.
    Emptied,
    /// No full charge is noted to begin from.
    Unknown,
}

/// What one refrigerant did in a circuit.
#[derive(Clone, Debug)]
pub struct Balance {
    /// The refrigerant.
    pub refrigerant: Option<&'static Refrigerant>,
    /// What was in the circuit before the first movement of this book, kg: nothing where it was first
    /// charged then, else taken as the full charge in force.
    pub before_kg: Option<f64>,
    /// Every transfer, in order of time.
    pub transfers: Vec<Transfer>,
    /// What is in the circuit after the last of them, kg.
    pub now_kg: Option<f64>,
    /// How that is known.
    pub known: Known,
}

/// What a balance is made from.
struct Around<'a> {
    book: &'a Book,
    system: &'a System,
    circuit: usize,
}

/// The balances of a circuit, one for each refrigerant, in the order in which they came.
pub fn balances(book: &Book, system: &System, circuit: usize, account: &Account) -> Vec<Balance> {
    let around = Around {
        book,
        system,
        circuit,
    };
    let mut balances: Vec<Balance> = Vec::new();
    let of_book: Vec<Entry> = account
        .entries
        .iter()
        .filter(|entry| entry.visit.is_some())
        .cloned()
        .collect();
    for job in jobs(&of_book) {
        let mut gases: Vec<Option<&'static Refrigerant>> = Vec::new();
        for entry in job {
            let gas = around.gas(entry);
            if !gases.contains(&gas) {
                gases.push(gas);
            }
        }
        for gas in gases {
            let lines: Vec<&Entry> = job.iter().filter(|e| around.gas(e) == gas).collect();
            let known = balances.iter().position(|known| known.refrigerant == gas);
            let index = known.unwrap_or_else(|| {
                balances.push(around.opened(gas, &lines));
                balances.len() - 1
            });
            around.job(&mut balances[index], &lines);
        }
    }
    balances
}

impl Around<'_> {
    /// What moved: as the movement, its cylinder or the entry in force says.
    fn gas(&self, entry: &Entry) -> Option<&'static Refrigerant> {
        let of_cylinder = || {
            let cylinder = self.book.cylinders.get(entry.cylinder.as_ref()?)?;
            refrigerant_of(cylinder.refrigerant.as_ref())
        };
        let in_force = || {
            let day = entry.at.value.date();
            self.system.in_force(self.circuit, day)?.refrigerant
        };
        entry.refrigerant.or_else(of_cylinder).or_else(in_force)
    }

    /// The full charge in force with a refrigerant at a moment, kg.
    fn full_kg(&self, gas: Option<&'static Refrigerant>, at: &Noted<Moment>) -> Option<f64> {
        let circuit = self.system.circuits.get(self.circuit)?;
        let of_gas = |entry: &&InForce| {
            entry.refrigerant == gas && entry.from.value.date() <= at.value.date()
        };
        let in_force = circuit.in_force.iter().rfind(of_gas)?;
        Some(in_force.note.full_charge?.value.value.si())
    }

    fn opened(&self, gas: Option<&'static Refrigerant>, lines: &[&Entry]) -> Balance {
        let first = lines.first();
        let anew = first.is_some_and(|first| {
            first.kind == MovementKind::Charged
                && matches!(
                    first.why,
                    Some(MovementWhy::Installation | MovementWhy::Retrofit)
                )
        });
        let before_kg = if anew {
            Some(0.0)
        } else {
            first.and_then(|first| self.full_kg(gas, &first.at))
        };
        Balance {
            refrigerant: gas,
            before_kg,
            transfers: Vec::new(),
            now_kg: before_kg,
            known: before_kg.map_or(Known::Unknown, |_| Known::AtMost),
        }
    }

    /// Enters the lines of a job that are of one refrigerant.
    fn job(&self, balance: &mut Balance, lines: &[&Entry]) {
        for entry in lines {
            let (from, to) = ends(entry);
            balance.transfers.push(Transfer {
                at: entry.at.value,
                from,
                to,
                why: entry.why,
                kg: entry.kg,
                uncertainty_kg: entry.uncertainty_kg,
                visit: entry.visit,
                span: entry.spans.last().copied(),
            });
            balance.now_kg = balance.now_kg.map(|kg| kg + entry.signed_kg());
        }
        let (Some(last), Some(now)) = (lines.last(), balance.now_kg) else {
            return;
        };
        let charged = lines.iter().rfind(|e| e.kind == MovementKind::Charged);
        let full = self.full_kg(balance.refrigerant, &last.at);
        let emptied = charged.is_none()
            && lines.iter().any(|entry| {
                matches!(
                    entry.why,
                    Some(MovementWhy::Retrofit | MovementWhy::Decommissioning)
                )
            });
        let (holds, known) = match (charged, full) {
            _ if emptied => (0.0, Known::Emptied),
            (Some(charged), Some(full)) if charged.to_full() => (full, Known::Filled),
            // It holds no more than its full charge: what went in beyond it had been lost before.
            (_, Some(full)) if now > full => (full, Known::AtMost),
            _ => (now, Known::AtMost),
        };
        let missing = now - holds;
        if missing.abs() > 1e-9 {
            let shown_by = charged.unwrap_or(last);
            balance.transfers.push(Transfer {
                at: shown_by.at.value,
                from: Place::Circuit,
                to: Place::Leaked,
                why: None,
                kg: missing,
                uncertainty_kg: None,
                visit: last.visit,
                span: None,
            });
        }
        balance.now_kg = Some(holds);
        balance.known = known;
    }
}

fn ends(entry: &Entry) -> (Place, Place) {
    let cylinder = entry
        .cylinder
        .clone()
        .map_or(Place::UnnamedCylinder, Place::Cylinder);
    match entry.kind {
        MovementKind::Charged => (cylinder, Place::Circuit),
        MovementKind::Recovered => (Place::Circuit, cylinder),
        _ if entry.destroyed => (Place::Circuit, Place::Destroyed),
        kind => (Place::Circuit, Place::LetOut(kind)),
    }
}

/// Sums of transfers, kg, with the expanded uncertainty where that of each is known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sums {
    /// Into the circuit.
    pub charged: f64,
    /// Out of it, into cylinders.
    pub recovered: f64,
    /// Out of it otherwise than by a leak.
    pub let_out: f64,
    /// Missing.
    pub leaked: f64,
    /// Variance of the noted ones at coverage factor 2, kg².
    pub variance: f64,
}

impl Sums {
    /// The sums of some transfers.
    pub fn of<'a>(transfers: impl IntoIterator<Item = &'a Transfer>) -> Self {
        let mut sums = Self::default();
        for transfer in transfers {
            let sum = match (&transfer.from, &transfer.to) {
                (_, Place::Circuit) => &mut sums.charged,
                (_, Place::Leaked) => &mut sums.leaked,
                (_, Place::LetOut(_) | Place::Destroyed) => &mut sums.let_out,
                _ => &mut sums.recovered,
            };
            *sum += transfer.kg;
            sums.variance += transfer.uncertainty_kg.map_or(0.0, |half| half * half);
        }
        sums
    }

    /// What they add to the circuit.
    pub fn change(&self) -> f64 {
        self.charged - self.recovered - self.let_out - self.leaked
    }
}
