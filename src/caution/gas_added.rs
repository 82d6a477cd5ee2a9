//! Refrigerant added to a circuit, and the leaks known in it: for the two cautions about gas added.

use crate::caution::scene::Scene;
use crate::job::{Finding, Movement, Visit};
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::vocabulary::visit_file::Purpose;

/// Refrigerant that goes astray in hoses and readings, kg: less than this is not an addition (judgement).
const NOT_AN_ADDITION_KG: f64 = 0.05;

/// The first movement of this visit that made up for a loss in a circuit, and what it was for.
pub fn added<'a>(
    scene: &Scene<'a>,
    circuit: usize,
    after_repair_too: bool,
) -> Option<&'a Movement> {
    let purpose = scene.visit.note.as_ref().and_then(|note| note.purpose);
    let filling = purpose
        .is_some_and(|purpose| matches!(purpose.value, Purpose::Commissioning | Purpose::Retrofit));
    let movements = || {
        scene
            .visit
            .movements
            .iter()
            .filter(move |movement| movement.circuit == circuit)
    };
    let sum = |kind| {
        movements()
            .filter(|movement| movement.kind == kind)
            .map(|movement| movement.amount.kg())
            .sum::<f64>()
    };
    let net = sum(MovementKind::Charged) - sum(MovementKind::Recovered) > NOT_AN_ADDITION_KG;
    movements().find(|movement| {
        movement.kind == MovementKind::Charged
            && match movement.why {
                Some(MovementWhy::TopUp) => true,
                Some(MovementWhy::Recharge) => net && after_repair_too && !filling,
                None | Some(MovementWhy::Service) => net && !filling,
                _ => false,
            }
    })
}

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
