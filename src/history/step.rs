//! Everything told of one point, step by step: what visits and earlier records saw, and what was done.

use crate::job::{Finding, System, Visit, covers};
use crate::notes::{DayTime, Look, Proof};
use crate::text::{Span, Text};
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::method_word::Shows;
use crate::vocabulary::system_file::EarlierHappening;
use crate::vocabulary::{Identifier, Word};
use crate::working::outcome::is_leak;
use crate::working::pressure_test::{HoldVerdict, hold};
use crate::working::vacuum_test::rise;
use jiff::civil::Date;

/// What a step saw at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// A leak.
    Leak,
    /// A sign that may be a leak.
    Suspect,
    /// A suspicion looked into and cleared.
    Cleared,
    /// Looked at by a method that shows the place; nothing was shown.
    Nothing,
    /// Only a test of its section held; the place itself was not looked at.
    SectionHeld,
    /// Meant to be looked at and not reached.
    NotReached,
    /// The part was replaced.
    Replaced,
    /// The part was taken out.
    Removed,
}

/// A way in which a point was looked at.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Looked {
    /// In words: `electronic`, or `pressure test of its section`.
    pub word: &'static str,
    /// Whether it looks at the place itself, not only at the section.
    pub at_place: bool,
}

/// Tests that look at the section of a point, not at its place.
pub const OF_ITS_SECTION: [&str; 2] =
    ["pressure test of its section", "vacuum test of its section"];
/// Who made an earlier record that does not say by whom.
pub const OTHERS: &str = "others";

/// Who did something that was no visit of this book: `others` is a word of ours, a name is not.
pub fn by_whom(by: &str) -> Text {
    if by == OTHERS {
        Text::Phrase(OTHERS)
    } else {
        by.into()
    }
}

/// Repairs of one visit or record.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mended {
    /// The day of the last one.
    pub day: Date,
    /// What was done, as written; empty where the record does not say.
    pub what: Vec<String>,
    /// How it was left, as noted.
    pub left: Option<FindingState>,
    /// Where it stands.
    pub span: Span,
}

/// One visit or record, as far as it concerns a point.
#[derive(Clone, Debug)]
pub struct Step {
    /// When it began.
    pub day: Date,
    /// Its last day.
    pub until: Date,
    /// Number of the visit; none for an earlier record or an entry of the register.
    pub visit: Option<usize>,
    /// By whom, where it was not a visit of this book.
    pub by: Option<Text>,
    /// What it saw.
    pub seen: Seen,
    /// What was repaired.
    pub mended: Option<Mended>,
    /// With what it was looked at.
    pub with: Vec<Looked>,
    /// Where it stands in the notes.
    pub span: Option<Span>,
}

impl Step {
    /// Whether it looked at the point or at its section.
    pub fn is_look(&self) -> bool {
        !matches!(self.seen, Seen::NotReached | Seen::Replaced | Seen::Removed)
    }
}

/// The steps of a point up to and with a visit, in order of time.
pub fn steps(system: &System, point: &Identifier, last: usize) -> Vec<Step> {
    let mut told: Vec<Step> = earlier(system, point).collect();
    for (number, visit) in system.visits.iter().enumerate().take(last + 1) {
        told.extend(of_visit(system, number, visit, point));
    }
    told.sort_by_key(|step| (step.day, step.visit));
    // A part replaced in the course of a visit comes after what the visit found in the old one.
    for entry in register(system, point) {
        let before = told.iter().rposition(|step| step.day <= entry.day);
        told.insert(before.map_or(0, |index| index + 1), entry);
    }
    let end = system
        .visits
        .get(last)
        .map(|visit| visit.last_day().max(visit.name.date));
    told.retain(|step| end.is_none_or(|end| step.day <= end));
    told
}

/// Replacements and removals of the register, in order of time.
fn register(system: &System, point: &Identifier) -> Vec<Step> {
    let Some(note) = system.points.get(point) else {
        return Vec::new();
    };
    let replaced = note.replaced.iter().map(|day| (day, Seen::Replaced));
    let removed = note.removed.iter().map(|day| (day, Seen::Removed));
    let mut entries: Vec<Step> = replaced
        .chain(removed)
        .map(|(day, seen)| Step {
            day: day.value,
            until: day.value,
            visit: None,
            by: None,
            seen,
            mended: None,
            with: Vec::new(),
            span: Some(day.span),
        })
        .collect();
    entries.sort_by_key(|entry| entry.day);
    entries
}

fn earlier<'s>(system: &'s System, point: &'s Identifier) -> impl Iterator<Item = Step> + 's {
    use EarlierHappening as E;
    system.earlier.iter().filter_map(move |entry| {
        let note = &entry.note;
        let what = note.what?;
        if note.point.as_ref()?.value != *point {
            return None;
        }
        let day = entry.at.value.date();
        let seen = match what.value {
            E::LeakFound | E::Repaired => Seen::Leak,
            E::Checked | E::Verified => Seen::Nothing,
            E::Charged | E::Recovered => return None,
        };
        let by = note.by.as_ref();
        Some(Step {
            day,
            until: day,
            visit: None,
            by: Some(by.map_or(Text::Phrase(OTHERS), |by| by_whom(&by.value))),
            seen,
            mended: (what.value == E::Repaired).then_some(Mended {
                day,
                what: Vec::new(),
                left: None,
                span: what.span,
            }),
            with: Vec::new(),
            span: Some(what.span),
        })
    })
}

/// Findings of a visit on a point.
fn findings_at<'v>(
    visit: &'v Visit,
    point: &'v Identifier,
) -> impl Iterator<Item = &'v Finding> + 'v {
    visit.findings.iter().filter(move |finding| {
        let tied = finding.note.point.as_ref();
        tied.is_some_and(|id| id.value == *point)
    })
}

fn of_visit(system: &System, number: usize, visit: &Visit, point: &Identifier) -> Option<Step> {
    let mut with = Vec::new();
    let mut seen: Option<Seen> = None;
    let mut mended: Option<Mended> = None;
    let mut span = None;
    for finding in findings_at(visit, point) {
        let note = &finding.note;
        if note
            .kind
            .is_some_and(|kind| kind.value == FindingKind::Defect)
        {
            continue;
        }
        span = span.or(note.point.as_ref().map(|point| point.span));
        let looks = note.evidence.iter().chain(looks(&note.proofs));
        with.extend(looks.map(|look| Looked {
            word: look.method.value.word(),
            at_place: look.method.value.shows() != Shows::Whole,
        }));
        seen = worse(seen, seen_by(finding));
        if let Some(last) = note.repairs.last() {
            let days = note.repairs.iter().filter_map(|repair| repair.at);
            mended = Some(Mended {
                day: days
                    .map(|at| day_of(visit, at.value))
                    .max()
                    .unwrap_or(visit.name.date),
                what: note.repairs.iter().map(|r| r.what.clone()).collect(),
                left: note.state.map(|state| state.value),
                span: last.span,
            });
        }
    }
    if let Some(methods) = searched(system, visit, point) {
        with.extend(methods);
        seen = worse(seen, Some(Seen::Nothing));
    }
    if seen.is_none() {
        with = coarse_looks(system, visit, point);
        if !with.is_empty() {
            seen = Some(Seen::SectionHeld);
        } else if not_reached(visit, point) {
            seen = Some(Seen::NotReached);
        }
    }
    with.sort();
    with.dedup();
    Some(Step {
        day: visit.name.date,
        until: visit.last_day(),
        visit: Some(number),
        by: None,
        seen: seen?,
        mended,
        with,
        span,
    })
}

fn looks(proofs: &[Proof]) -> impl Iterator<Item = &Look> {
    proofs.iter().filter_map(|proof| match proof {
        Proof::Look(look) => Some(look),
        Proof::Named(_) => None,
    })
}

/// The day of a time in a visit.
fn day_of(visit: &Visit, at: DayTime) -> Date {
    let days = jiff::Span::new().days(i64::from(at.day) - 1);
    let first = visit.name.date;
    first.checked_add(days).unwrap_or(first)
}

/// What a finding saw; a finding without a leak, a suspicion or a look saw nothing at all.
fn seen_by(finding: &Finding) -> Option<Seen> {
    let note = &finding.note;
    let failed = note.repairs.is_empty() && looks(&note.proofs).any(Look::positive);
    if is_leak(finding) || failed {
        return Some(Seen::Leak);
    }
    if note
        .state
        .is_some_and(|state| state.value == FindingState::SuspectCleared)
    {
        return Some(Seen::Cleared);
    }
    if note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Suspect)
    {
        return Some(Seen::Suspect);
    }
    let clear = note
        .evidence
        .iter()
        .chain(looks(&note.proofs))
        .any(|look| !look.positive() && look.method.value.shows() == Shows::Place);
    clear.then_some(Seen::Nothing)
}

/// The graver of two sights.
fn worse(one: Option<Seen>, other: Option<Seen>) -> Option<Seen> {
    let rank = |seen: Seen| match seen {
        Seen::Leak => 4,
        Seen::Suspect => 3,
        Seen::Cleared => 2,
        Seen::Nothing => 1,
        _ => 0,
    };
    one.into_iter().chain(other).max_by_key(|seen| rank(*seen))
}

/// The methods of the searches that covered a point, if any did by a method that shows the place.
fn searched(system: &System, visit: &Visit, point: &Identifier) -> Option<Vec<Looked>> {
    let circuit = circuit_of(system, point);
    let methods: Vec<Looked> = visit
        .searches
        .iter()
        .filter(|search| {
            let elsewhere = search.circuit.zip(circuit).is_some_and(|(a, b)| a != b);
            !elsewhere && covers(search, point)
        })
        .filter_map(|search| search.note.method)
        .filter(|method| matches!(method.value.shows(), Shows::Place | Shows::Evident))
        .map(|method| Looked {
            word: method.value.word(),
            at_place: true,
        })
        .collect();
    (!methods.is_empty()).then_some(methods)
}

/// Pressure and vacuum tests that held the section of a point, or the whole circuit.
fn coarse_looks(system: &System, visit: &Visit, point: &Identifier) -> Vec<Looked> {
    let Some(number) = circuit_of(system, point) else {
        return Vec::new();
    };
    let Some(circuit) = system.circuits.get(number) else {
        return Vec::new();
    };
    let section = system.points.get(point).and_then(|n| n.section.as_ref());
    let of_point = |tested: Option<&Identifier>| {
        tested.is_none() || tested == section.map(|section| &section.value)
    };
    let held = visit
        .pressure_tests
        .iter()
        .filter(|test| test.circuit == number && of_point(test.section()))
        .any(|test| {
            matches!(
                hold(test, circuit, visit).verdict,
                HoldVerdict::NothingLarger | HoldVerdict::HeldNoSize
            )
        });
    let evacuated = visit
        .vacuum_tests
        .iter()
        .filter(|test| test.circuit == number && of_point(test.section()))
        .any(|test| rise(test, system, visit).bears_proof());
    let coarse = |word, test: bool| {
        test.then_some(Looked {
            word,
            at_place: false,
        })
    };
    let [pressure, vacuum] = OF_ITS_SECTION;
    let (pressure, vacuum) = (coarse(pressure, held), coarse(vacuum, evacuated));
    pressure.into_iter().chain(vacuum).collect()
}

fn not_reached(visit: &Visit, point: &Identifier) -> bool {
    visit
        .searches
        .iter()
        .flat_map(|search| &search.note.not_reached)
        .filter_map(|place| place.point.as_ref())
        .any(|id| crate::job::matches_pattern(&id.value.0, &point.0))
}

/// Number of a point's circuit: as registered, else the only one.
pub(super) fn circuit_of(system: &System, point: &Identifier) -> Option<usize> {
    let note = system.points.get(point)?;
    match &note.circuit {
        Some(circuit) => system.circuit(&circuit.value),
        None if system.circuits.len() == 1 => Some(0),
        None => None,
    }
}
