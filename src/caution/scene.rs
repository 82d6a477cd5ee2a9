//! What a caution looks at: one visit with its system, site and book, and the visits before it.

use crate::caution::cylinder_history::CylinderHistory;
use crate::job::{Book, Moment, Movement, Search, Site, System, Visit};
use crate::notes::DayTime;
use crate::quantity::{Measured, Quantity, print};
use crate::refrigerant::Refrigerant;
use crate::text::Span;
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::vocabulary::site_file::RuleSetWord;
use crate::working::account::{Account, Addition};
use crate::working::outcome::Outcome;
use jiff::ToSpan;
use jiff::civil::Date;

/// One visit and all that stands around it.
#[derive(Clone, Copy)]
pub struct Scene<'a> {
    /// The book.
    pub book: &'a Book,
    /// The site.
    pub site: &'a Site,
    /// The system.
    pub system: &'a System,
    /// Number of the visit in its system.
    pub number: usize,
    /// The visit.
    pub visit: &'a Visit,
    /// The account of each circuit of the system, up to its last visit.
    pub accounts: &'a [Account],
    /// How it ended and how its findings stand.
    pub outcome: &'a Outcome,
    /// What happened to each cylinder of the book.
    pub cylinders: &'a CylinderHistory<'a>,
}

impl<'a> Scene<'a> {
    /// The visits to this system before this one, in order of time.
    pub fn earlier_visits(&self) -> impl DoubleEndedIterator<Item = &'a Visit> + use<'a> {
        self.system.visits.iter().take(self.number)
    }

    /// What this visit had to add to a circuit, and its first charge that did, where it shows that
    /// refrigerant had been lost.
    pub fn made_up_loss(&self, circuit: usize) -> Option<(&'a Addition, &'a Movement)> {
        let addition = self
            .accounts
            .get(circuit)?
            .addition_of(self.number)
            .filter(|addition| addition.shows_loss)?;
        let first = self.visit.movements.iter().find(|movement| {
            movement.circuit == circuit
                && movement.kind == MovementKind::Charged
                && addition.spans.contains(&movement.amount.span())
        })?;
        Some((addition, first))
    }

    /// The local day of a time in the findings.
    pub fn day(&self, at: DayTime) -> Option<Date> {
        let days = i64::from(at.day) - 1;
        self.visit.name.date.checked_add(days.days()).ok()
    }

    /// The moment of a time in the findings; none for a time that the clock skipped.
    pub fn moment(&self, at: DayTime) -> Option<Moment> {
        let civil = self.day(at)?.to_datetime(at.time);
        let ambiguous = self.site.zone.to_ambiguous_timestamp(civil);
        let instant = ambiguous.compatible().ok()?;
        Some(Moment { instant, civil })
    }

    /// The refrigerant in force in a circuit at the end of a day.
    pub fn refrigerant(&self, circuit: usize, day: Date) -> Option<&'static Refrigerant> {
        self.system.in_force(circuit, day)?.refrigerant
    }

    /// Where the site says that a rule set is in force.
    pub fn rule(&self, rule: RuleSetWord) -> Option<Span> {
        let rules = &self.site.note.as_ref()?.rules;
        rules
            .iter()
            .find(|noted| noted.value == rule)
            .map(|noted| noted.span)
    }

    /// The last charge or recovery of a circuit before a moment, in this visit or an earlier one.
    pub fn last_filling(&self, circuit: usize, before: Moment) -> Option<&'a Movement> {
        self.earlier_visits()
            .chain(std::iter::once(self.visit))
            .flat_map(|visit| &visit.movements)
            .filter(|movement| movement.circuit == circuit && movement.at.value < before)
            .filter(|movement| {
                matches!(
                    movement.kind,
                    MovementKind::Charged | MovementKind::Recovered
                )
            })
            .max_by_key(|movement| movement.at.value)
    }

    /// A written quantity in the site's units.
    pub fn print<T: Quantity>(&self, measured: &Measured<T>) -> String {
        print(measured, self.site.units).to_string()
    }
}

pub use crate::working::repair_proof::{gives_place, on_circuit};

/// Whether a search went over a circuit.
pub fn searched_circuit(search: &Search, circuit: usize) -> bool {
    search.circuit.is_none_or(|searched| searched == circuit)
}
