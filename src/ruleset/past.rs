//! The past of a system up to a visit, and the questions that several duties ask of it.

use crate::job::{Finding, Moment, Search, Site, System, Visit, covers};
use crate::notes::Look;
use crate::ruleset::obligation::Event;
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::method_word::Shows;
use crate::vocabulary::system_file::EarlierHappening;
use crate::vocabulary::visit_file::Purpose;
use crate::working::outcome::{moment_of, outcome};
use jiff::civil::Date;

/// The past of a system up to a visit.
#[derive(Clone, Copy)]
pub(super) struct Past<'a> {
    pub site: &'a Site,
    pub system: &'a System,
    /// How many of its visits count.
    pub count: usize,
    /// The day it is looked at.
    pub on: Date,
}

impl<'a> Past<'a> {
    /// The visits that count, with their numbers.
    pub fn visits(&self) -> impl DoubleEndedIterator<Item = (usize, &'a Visit)> + use<'a> {
        self.system.visits.iter().take(self.count).enumerate()
    }

    /// The circuit of a finding; the only one where none is named.
    pub fn circuit_of(&self, finding: &Finding) -> Option<usize> {
        finding
            .circuit
            .or((self.system.circuits.len() == 1).then_some(0))
    }

    /// The first visit after one, and not before a moment, that looked at a point again, and what it
    /// showed there. Without a point: a verification that searched the circuit.
    pub fn looked_again(
        &self,
        number: usize,
        point: Option<&Identifier>,
        circuit: usize,
        not_before: Option<Moment>,
    ) -> Option<Event> {
        self.visits().skip(number + 1).find_map(|(later, visit)| {
            let late = not_before.is_none_or(|from| {
                visit
                    .end()
                    .map_or(visit.name.date >= from.date(), |end| end >= from)
            });
            let (what, span) = late
                .then(|| match point {
                    Some(point) => self.look_at(later, visit, point),
                    None => verified_without_point(visit, circuit),
                })
                .flatten()?;
            Some(Event {
                day: visit.name.date,
                what: what.to_owned(),
                span,
            })
        })
    }

    fn look_at(
        &self,
        number: usize,
        visit: &Visit,
        point: &Identifier,
    ) -> Option<(&'static str, Span)> {
        let here = visit
            .findings
            .iter()
            .find(|f| f.note.point.as_ref().is_some_and(|id| id.value == *point));
        if let Some(look) = here.and_then(|f| f.note.evidence.iter().find(|l| l.positive())) {
            return Some(("looked at again, leaking", look.span));
        }
        let verified = outcome(self.system, number)?.verified;
        if !verified.contains(point) {
            return None;
        }
        let span = here.map(|f| f.note.span).or_else(|| {
            let search = visit.searches.iter().find(|s| covers(s, point))?;
            Some(search.note.whole.span)
        })?;
        Some(("looked at again, nothing shown there", span))
    }

    /// Leak checks of a circuit, the oldest first: a search by a direct method that says it went over
    /// all that is visible and accessible, or a periodic check that does not say the contrary; and
    /// those of earlier records.
    pub fn checks(&self, circuit: usize) -> Vec<Event> {
        let earlier = self.system.earlier.iter().filter_map(|entry| {
            let what = entry.note.what?;
            let check = what.value == EarlierHappening::Checked && entry.circuit == circuit;
            check.then(|| Event {
                day: entry.at.value.date(),
                what: "checked, by earlier records".to_owned(),
                span: entry.at.span,
            })
        });
        let noted = self.visits().filter_map(|(_, visit)| {
            let search = whole_check(visit, circuit)?;
            Some(Event {
                day: search.started.value.date(),
                what: "leak check".to_owned(),
                span: search.note.whole.span,
            })
        });
        let mut all: Vec<Event> = earlier.chain(noted).filter(|e| e.day <= self.on).collect();
        all.sort_by_key(|event| event.day);
        all
    }
}

/// The search that makes a visit a leak check of a circuit.
pub(super) fn whole_check(visit: &Visit, circuit: usize) -> Option<&Search> {
    let periodic = visit
        .note
        .as_ref()
        .and_then(|note| note.purpose)
        .is_some_and(|purpose| purpose.value == Purpose::PeriodicCheck);
    let direct = |search: &&Search| {
        search.circuit.is_none_or(|searched| searched == circuit)
            && search
                .note
                .method
                .is_some_and(|method| method.value.shows() == Shows::Place)
    };
    let says = |wanted: bool| {
        visit.searches.iter().filter(direct).find(|search| {
            search
                .note
                .all_visible
                .is_some_and(|all| all.value == wanted)
        })
    };
    says(true).or_else(|| {
        let silent = says(false).is_none();
        visit
            .searches
            .iter()
            .find(direct)
            .filter(|_| periodic && silent)
    })
}

fn verified_without_point(visit: &Visit, circuit: usize) -> Option<(&'static str, Span)> {
    let purpose = visit.note.as_ref()?.purpose?;
    let search = visit
        .searches
        .iter()
        .find(|search| search.circuit.is_none_or(|searched| searched == circuit))?;
    (purpose.value == Purpose::Verification).then_some(("searched again", search.note.whole.span))
}

/// The last repair of a finding.
pub(super) fn repaired(visit: &Visit, finding: &Finding) -> Option<Event> {
    let repair = finding.note.repairs.last()?;
    Some(Event {
        day: repair
            .at
            .map_or(visit.name.date, |at| moment_of(visit, at.value).date()),
        what: "repaired".to_owned(),
        span: repair.span,
    })
}

/// A look that shows nothing at its place.
pub(super) fn clears(look: &Look) -> bool {
    !look.positive() && look.method.value.shows() == Shows::Place
}
