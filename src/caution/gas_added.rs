//! The leaks known in a circuit and left open: for the two cautions about gas added.

use crate::caution::scene::Scene;
use crate::job::{Finding, Visit};
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::{FindingKind, FindingState};

/// A leak known in a circuit at the end of the visit and not repaired: its name, and where that stands.
pub fn open_leak(scene: &Scene<'_>, circuit: usize) -> Option<(String, Span)> {
    let mut looked_at = Vec::new();
    let visits = scene.earlier_visits().chain(std::iter::once(scene.visit));
    for visit in visits.rev() {
        let current = visit.name == scene.visit.name;
        for finding in &visit.findings {
            let point = finding.note.point.as_ref().map(|point| &point.value);
            let followed = match point {
                Some(point) => !looked_at.contains(&point) && !renewed(scene, point, visit),
                // Without a point an earlier finding cannot be followed.
                None => current,
            };
            if let Some(span) =
                open(finding).filter(|_| followed && finding.circuit == Some(circuit))
            {
                return Some((finding.note.title.clone(), span));
            }
        }
        let points = visit.findings.iter().filter_map(|f| f.note.point.as_ref());
        looked_at.extend(points.map(|point| &point.value));
    }
    None
}

/// Whether a point was replaced or removed from a visit on until now.
fn renewed(scene: &Scene<'_>, point: &Identifier, since: &Visit) -> bool {
    let note = scene.system.points.get(point);
    let mut days = note
        .into_iter()
        .flat_map(|note| note.replaced.iter().chain(&note.removed));
    days.any(|day| (since.name.date..=scene.visit.last_day()).contains(&day.value))
}

fn open(finding: &Finding) -> Option<Span> {
    let note = &finding.note;
    let leak = note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Leak);
    match note.state {
        Some(state) => (state.value == FindingState::Open && leak).then_some(state.span),
        None => (leak && note.repairs.is_empty() && note.proofs.is_empty()).then_some(note.span),
    }
}
