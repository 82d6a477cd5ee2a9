//! What clears a repair: its proofs, and the tests and searches that went over the place after it.

use crate::job::{Finding, PressureTest, Search, System, VacuumTest, Visit, covers};
use crate::notes::{DayTime, Look, Proof};
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::method_word::{MethodWord, Shows};
use jiff::civil::DateTime;

/// What shows a place after its repair.
#[derive(Clone, Copy, Debug)]
pub enum Ground<'a> {
    /// A look.
    Look(&'a Look),
    /// A pressure test.
    Pressure(&'a PressureTest),
    /// A vacuum test.
    Vacuum(&'a VacuumTest),
    /// A search.
    Search(&'a Search),
}

/// Something that shows a place, with its time and where it stands in the notes.
#[derive(Clone, Copy, Debug)]
pub struct Clearance<'a> {
    /// What it rests on.
    pub ground: Ground<'a>,
    /// When it began.
    pub at: DateTime,
    /// Where it stands.
    pub span: Span,
}

/// Whether a finding is of a leak, or may be, and was repaired in this visit.
pub fn is_repaired_leak(finding: &Finding) -> bool {
    let note = &finding.note;
    let defect = note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Defect);
    let isolated = note
        .state
        .is_some_and(|state| state.value == FindingState::Isolated);
    !defect && !isolated && !note.repairs.is_empty()
}

/// A time of day of a visit as a local date and time.
pub fn moment_of(visit: &Visit, at: DayTime) -> DateTime {
    let days = i64::from(at.day) - 1;
    visit
        .name
        .date
        .checked_add(jiff::Span::new().days(days))
        .unwrap_or(visit.name.date)
        .to_datetime(at.time)
}

/// Whether a method gives the place of a leak.
pub fn gives_place(method: MethodWord) -> bool {
    matches!(method.shows(), Shows::Place | Shows::Evident)
}

/// Whether a finding stands on a circuit, or may.
pub fn on_circuit(finding: &Finding, circuit: usize) -> bool {
    finding.circuit.is_none_or(|found| found == circuit)
}

/// When the last repair was made and where that stands, if every repair has its time.
pub fn last_repair(visit: &Visit, finding: &Finding) -> Option<(DateTime, Span)> {
    let times = finding.note.repairs.iter().map(|repair| {
        let at = repair.at?;
        Some((moment_of(visit, at.value), repair.span))
    });
    let times: Vec<_> = times.collect::<Option<_>>()?;
    times.into_iter().max_by_key(|(at, _)| *at)
}

/// The written proofs of a finding; none if one of them cannot be resolved.
pub fn written_proofs<'a>(visit: &'a Visit, finding: &'a Finding) -> Option<Vec<Clearance<'a>>> {
    let proofs = finding.note.proofs.iter();
    proofs.map(|proof| written(visit, proof)).collect()
}

/// What a proof rests on; none where its name is not that of a test or a search of the visit.
pub fn written<'a>(visit: &'a Visit, proof: &'a Proof) -> Option<Clearance<'a>> {
    match proof {
        Proof::Look(look) => Some(Clearance {
            ground: Ground::Look(look),
            at: moment_of(visit, look.at.value),
            span: look.span,
        }),
        Proof::Named(name) => {
            grounds(visit)
                .find(|(id, _)| *id == Some(&name.value))
                .map(|(_, clearance)| Clearance {
                    span: name.span,
                    ..clearance
                })
        }
    }
}

/// Every test and search of the visit with its name.
fn grounds(visit: &Visit) -> impl Iterator<Item = (Option<&Identifier>, Clearance<'_>)> {
    let of = |ground, at, span| Clearance { ground, at, span };
    let pressure = visit.pressure_tests.iter().map(move |test| {
        let span = test.note.whole.span;
        let ground = Ground::Pressure(test);
        (Some(&test.id), of(ground, test.start.at.value.civil, span))
    });
    let vacuum = visit.vacuum_tests.iter().map(move |test| {
        let span = test.note.whole.span;
        let ground = Ground::Vacuum(test);
        (Some(&test.id), of(ground, test.start.at.value.civil, span))
    });
    let searches = visit.searches.iter().map(move |search| {
        let id = search.note.id.as_ref().map(|id| &id.value);
        let span = search.note.whole.span;
        (
            id,
            of(Ground::Search(search), search.started.value.civil, span),
        )
    });
    pressure.chain(vacuum).chain(searches)
}

/// All that cleared a place after its last repair: the written proofs that found nothing, and the
/// tests and direct searches that went over it even if they are not named as proofs.
///
/// None where a written proof cannot be resolved, so that nothing is said of it.
pub fn clearances<'a>(
    system: &System,
    visit: &'a Visit,
    finding: &'a Finding,
) -> Vec<Clearance<'a>> {
    let Some(mut all) = written_proofs(visit, finding) else {
        return Vec::new();
    };
    let unnamed = grounds(visit).filter(|(id, clearance)| {
        let named = finding
            .note
            .proofs
            .iter()
            .any(|proof| matches!(proof, Proof::Named(name) if Some(&name.value) == *id));
        !named && went_over(system, finding, clearance.ground)
    });
    all.extend(unnamed.map(|(_, clearance)| clearance));
    let repaired = last_repair(visit, finding).map(|(at, _)| at);
    all.retain(|clearance| {
        let nothing = match clearance.ground {
            Ground::Look(look) => !look.positive(),
            _ => true,
        };
        nothing && repaired.is_none_or(|repaired| clearance.at >= repaired)
    });
    all
}

/// Whether a test took in the place of a finding, or a direct search went over it.
fn went_over(system: &System, finding: &Finding, ground: Ground<'_>) -> bool {
    let point = finding.note.point.as_ref().map(|point| &point.value);
    let section = point
        .and_then(|point| system.points.get(point))
        .and_then(|point| point.section.as_ref())
        .map(|section| &section.value);
    let takes_in = |circuit: usize, tested: Option<&Identifier>| {
        on_circuit(finding, circuit) && (tested.is_none() || section.is_none() || tested == section)
    };
    match ground {
        Ground::Look(_) => false,
        Ground::Pressure(test) => takes_in(test.circuit, test.section()),
        Ground::Vacuum(test) => takes_in(test.circuit, test.section()),
        Ground::Search(search) => {
            let direct = search
                .note
                .method
                .is_some_and(|method| gives_place(method.value));
            direct && point.is_some_and(|point| covers(search, point))
        }
    }
}

/// The first clearance of a leak that is called repaired and proved, if every clearance is weak.
pub fn only_weak<'a>(
    system: &System,
    visit: &'a Visit,
    finding: &'a Finding,
    weak: impl Fn(Ground<'a>) -> bool,
) -> Option<Clearance<'a>> {
    let note = &finding.note;
    let defect = note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Defect);
    let claimed = note
        .state
        .is_none_or(|state| state.value == FindingState::RepairedProved);
    if defect || !claimed || note.proofs.is_empty() {
        return None;
    }
    let all = clearances(system, visit, finding);
    let every = all.iter().all(|clearance| weak(clearance.ground));
    all.into_iter().next().filter(|_| every)
}
