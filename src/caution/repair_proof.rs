//! The proofs of a repair with their times, and whether anything else showed the place after it.

use crate::caution::look_result::found_nothing;
use crate::caution::scene::{Scene, gives_place, on_circuit};
use crate::job::{Finding, Moment, PressureTest, Search, VacuumTest, covers};
use crate::notes::{Look, Proof};
use crate::text::Span;
use crate::vocabulary::finding_field::{FindingKind, FindingState};

/// What a proof rests on.
#[derive(Clone, Copy)]
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

/// A proof of a finding.
#[derive(Clone, Copy)]
pub struct GroundedProof<'a> {
    /// What it rests on.
    pub ground: Ground<'a>,
    /// When it began.
    pub at: Moment,
    /// Where it stands in the findings.
    pub span: Span,
}

/// Whether a finding is of a leak, or may be, and was repaired in this visit.
pub fn is_repaired_leak(finding: &Finding) -> bool {
    finding.note.kind.is_none_or(|kind| kind.value != FindingKind::Defect)
        && finding.note.state.is_none_or(|state| state.value != FindingState::Isolated)
        && !finding.note.repairs.is_empty()
}

/// When the last repair was made and where that stands, if every repair has its time.
pub fn last_repair(scene: &Scene<'_>, finding: &Finding) -> Option<(Moment, Span)> {
    let times = finding.note.repairs.iter().map(|repair| {
        let at = repair.at?;
        Some((scene.moment(at.value)?, repair.span))
    });
    times.collect::<Option<Vec<_>>>()?.into_iter().max_by_key(|(at, _)| *at)
}

/// The proofs of a finding that can be resolved, and whether that is all of them.
pub fn proofs<'a>(scene: &Scene<'a>, finding: &'a Finding) -> (Vec<GroundedProof<'a>>, bool) {
    let found: Vec<_> = finding
        .note
        .proofs
        .iter()
        .filter_map(|proof| grounded(scene, proof))
        .collect();
    let all = found.len() == finding.note.proofs.len();
    (found, all)
}

fn grounded<'a>(scene: &Scene<'a>, proof: &'a Proof) -> Option<GroundedProof<'a>> {
    let name = match proof {
        Proof::Look(look) => {
            return Some(GroundedProof {
                ground: Ground::Look(look),
                at: scene.moment(look.at.value)?,
                span: look.span,
            });
        }
        Proof::Named(name) => name,
    };
    let visit = scene.visit;
    let pressure = visit.pressure_tests.iter().find(|test| test.id == name.value);
    let vacuum = visit.vacuum_tests.iter().find(|test| test.id == name.value);
    let search = visit
        .searches
        .iter()
        .find(|search| search.note.id.as_ref().is_some_and(|id| id.value == name.value));
    let (ground, at) = match (pressure, vacuum, search) {
        (Some(test), _, _) => (Ground::Pressure(test), test.start.at.value),
        (_, Some(test), _) => (Ground::Vacuum(test), test.start.at.value),
        (_, _, Some(search)) => (Ground::Search(search), search.started.value),
        _ => return None,
    };
    Some(GroundedProof {
        ground,
        at,
        span: name.span,
    })
}

/// The only proofs of a repair that is claimed to be proved: those after the last repair that found
/// nothing. None where nothing is claimed, or where not every proof can be resolved.
pub fn sole_proofs<'a>(scene: &Scene<'a>, finding: &'a Finding) -> Vec<GroundedProof<'a>> {
    let claimed = match finding.note.state {
        Some(state) => matches!(
            state.value,
            FindingState::RepairedProved | FindingState::RepairedNotProved | FindingState::Temporary
        ),
        None => true,
    };
    let (proofs, all) = proofs(scene, finding);
    if !all || !claimed || searched_after_repair(scene, finding) {
        return Vec::new();
    }
    let repaired = last_repair(scene, finding).map(|(at, _)| at);
    proofs
        .into_iter()
        .filter(|proof| repaired.is_none_or(|repaired| proof.at >= repaired))
        .filter(|proof| match proof.ground {
            Ground::Look(look) => found_nothing(look),
            _ => true,
        })
        .collect()
}

/// Whether a search by a direct method went over the place after its last repair.
pub fn searched_after_repair(scene: &Scene<'_>, finding: &Finding) -> bool {
    let Some(point) = &finding.note.point else {
        return false;
    };
    let repaired = last_repair(scene, finding).map(|(at, _)| at);
    scene.visit.searches.iter().any(|search| {
        let direct = search.note.method.is_some_and(|method| gives_place(method.value));
        direct
            && covers(search, &point.value)
            && repaired.is_some_and(|repaired| search.started.value >= repaired)
    })
}

/// Whether a test of the circuit, or of the section the place is in, began after its last repair.
pub fn tested_after_repair(scene: &Scene<'_>, finding: &Finding) -> bool {
    let Some((repaired, _)) = last_repair(scene, finding) else {
        return false;
    };
    let section = finding
        .note
        .point
        .as_ref()
        .and_then(|point| scene.system.points.get(&point.value))
        .and_then(|point| point.section.as_ref())
        .map(|section| &section.value);
    let pressure = scene
        .visit
        .pressure_tests
        .iter()
        .map(|test| (test.circuit, test.section(), test.start.at.value));
    let vacuum = scene
        .visit
        .vacuum_tests
        .iter()
        .map(|test| (test.circuit, test.section(), test.start.at.value));
    pressure.chain(vacuum).any(|(circuit, tested, at)| {
        at >= repaired
            && on_circuit(finding, circuit)
            && (tested.is_none() || section.is_none() || tested == section)
    })
}
