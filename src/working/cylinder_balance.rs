//! What went into and out of a cylinder in the whole book, and what no note tells of.

use crate::job::{Book, Moment, MovedMass, Movement};
use crate::notes::{CylinderEventNote, CylinderNote};
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::book_file::CylinderHappening;
use crate::vocabulary::refrigerant_file::MovementKind;
use jiff::civil::{Date, DateTime};

/// A difference between two weighings of a cylinder that no note explains.
#[derive(Clone, Copy, Debug)]
pub struct Difference {
    /// When it was seen.
    pub on: Date,
    /// How much more it weighed, kg; negative for less.
    pub kg: f64,
    /// Where it was weighed.
    pub span: Span,
}

/// The balance of a cylinder. Before + filled + recovered − charged − let out − given back
/// + differences = left.
#[derive(Clone, Debug)]
pub struct CylinderBalance<'a> {
    /// Its name.
    pub id: &'a Identifier,
    /// As registered.
    pub note: &'a CylinderNote,
    /// In it when it was first weighed, kg, unless it was filled then.
    pub before_kg: f64,
    /// Filled at a depot, kg.
    pub filled_kg: f64,
    /// Recovered into it, kg.
    pub recovered_kg: f64,
    /// Charged from it, kg.
    pub charged_kg: f64,
    /// Out of it otherwise, kg.
    pub let_out_kg: f64,
    /// Given back or emptied, kg.
    pub given_back_kg: f64,
    /// What no note explains.
    pub differences: Vec<Difference>,
    /// What is left in it, kg; without a tare, cylinder and gas together; none where it was given back.
    pub left_kg: Option<f64>,
}

enum Step<'a> {
    Moved(&'a Movement),
    Happened(&'a CylinderEventNote, CylinderHappening, Date),
}

/// The balance of every cylinder that was used, by name.
pub fn cylinder_balances(book: &Book) -> Vec<CylinderBalance<'_>> {
    book.cylinders
        .iter()
        .filter_map(|(id, note)| balance(book, id, note))
        .collect()
}

/// Steps in order of time: an event without a time comes before the movements of its day, but for a
/// return or an emptying, which comes after.
fn steps<'a>(book: &'a Book, id: &Identifier) -> Vec<Step<'a>> {
    let of_id =
        |name: Option<&crate::text::Noted<Identifier>>| name.is_some_and(|n| n.value == *id);
    let mut steps: Vec<((DateTime, u8), Step)> = Vec::new();
    let systems = book.sites.iter().flat_map(|site| &site.systems);
    for movement in systems.flat_map(|s| &s.visits).flat_map(|v| &v.movements) {
        if of_id(movement.note.cylinder.as_ref()) {
            let Moment { civil, .. } = movement.at.value;
            steps.push(((civil, 1), Step::Moved(movement)));
        }
    }
    for event in &book.cylinder_events {
        let (Some(at), Some(what), true) = (event.at, event.what, of_id(event.cylinder.as_ref()))
        else {
            continue;
        };
        let leaves = matches!(
            what.value,
            CylinderHappening::Returned | CylinderHappening::Emptied
        );
        let at = at.value;
        let time = match (at.time, leaves) {
            (Some(time), _) => time.civil,
            (None, false) => at.date.at(0, 0, 0, 0),
            (None, true) => at.date.at(23, 59, 59, 0),
        };
        steps.push(((time, 0), Step::Happened(event, what.value, at.date)));
    }
    steps.sort_by_key(|(at, _)| *at);
    steps.into_iter().map(|(_, step)| step).collect()
}

fn balance<'a>(
    book: &'a Book,
    id: &'a Identifier,
    note: &'a CylinderNote,
) -> Option<CylinderBalance<'a>> {
    let steps = steps(book, id);
    if steps.is_empty() {
        return None;
    }
    let tare = note.tare.map_or(0.0, |tare| tare.value.value.si());
    let mut balance = CylinderBalance {
        id,
        note,
        before_kg: 0.0,
        filled_kg: 0.0,
        recovered_kg: 0.0,
        charged_kg: 0.0,
        let_out_kg: 0.0,
        given_back_kg: 0.0,
        differences: Vec::new(),
        left_kg: None,
    };
    let mut begun = false;
    for step in steps {
        match step {
            Step::Moved(movement) => {
                if let MovedMass::Weighed { before, .. } = movement.amount {
                    let on = movement.at.value.date();
                    let net = before.value.value.si() - tare;
                    balance.weighed(net, on, before.span, begun);
                }
                balance.moved(movement, begun);
            }
            Step::Happened(event, what, on) => balance.happened(event, what, on, tare, begun),
        }
        begun = true;
    }
    Some(balance)
}

impl CylinderBalance<'_> {
    /// A weighing before anything moves: the first one opens the balance, any other is compared.
    fn weighed(&mut self, net: f64, on: Date, span: Span, begun: bool) {
        match self.left_kg {
            Some(left) => {
                let kg = net - left;
                if kg.abs() > 1e-9 {
                    self.differences.push(Difference { on, kg, span });
                }
            }
            None if begun => self.filled_kg += net,
            None => self.before_kg = net,
        }
        self.left_kg = Some(net);
    }

    fn moved(&mut self, movement: &Movement, begun: bool) {
        let kg = movement.amount.kg();
        let into = movement.kind == MovementKind::Recovered;
        match movement.kind {
            MovementKind::Recovered => self.recovered_kg += kg,
            MovementKind::Charged => self.charged_kg += kg,
            _ => self.let_out_kg += kg,
        }
        if self.left_kg.is_none() && !into {
            // Not weighed: it held at least what came out of it.
            if begun {
                self.filled_kg += kg;
            } else {
                self.before_kg = kg;
            }
            self.left_kg = Some(kg);
        }
        let left = self.left_kg.unwrap_or(0.0);
        self.left_kg = Some(if into { left + kg } else { left - kg });
    }

    fn happened(
        &mut self,
        event: &CylinderEventNote,
        what: CylinderHappening,
        on: Date,
        tare: f64,
        begun: bool,
    ) {
        let gross = event
            .gross
            .map(|gross| (gross.value.value.si() - tare, gross.span));
        match (what, gross) {
            (CylinderHappening::Filled, Some((net, _))) => {
                self.filled_kg += net - self.left_kg.unwrap_or(0.0);
                self.left_kg = Some(net);
            }
            (CylinderHappening::Weighed, Some((net, span))) => {
                self.weighed(net, on, span, begun);
            }
            (CylinderHappening::Returned, gross) => {
                if let Some((net, span)) = gross {
                    self.weighed(net, on, span, begun);
                }
                self.given_back_kg += self.left_kg.unwrap_or(0.0);
                self.left_kg = None;
            }
            (CylinderHappening::Emptied, gross) => {
                let net = gross.map_or(0.0, |(net, _)| net);
                self.given_back_kg += self.left_kg.unwrap_or(net) - net;
                self.left_kg = Some(net);
            }
            _ => {}
        }
    }
}
