//! Whether a test could have shown a leak of the size that was found.

use crate::job::Finding;
use crate::quantity::LeakRate;
use crate::report::compose::scene::Scene;
use crate::vocabulary::Identifier;
use crate::working::service_equivalent::InService;

/// Whether a test, by its name, leaves a leak of the size of a finding possible.
///
/// Its limit is compared as mass of refrigerant in service, by the manner of flow that makes it least,
/// with the most that the leak may be: its size and the uncertainty, grown with the square of the
/// absolute pressure where it was sized at less than in service. False where they cannot be compared.
pub(super) fn is_coarse(scene: &Scene<'_>, finding: &Finding, test: &Identifier) -> bool {
    let least = limit(scene, test).and_then(|limit| {
        let rates = limit.viscous.iter().chain(&limit.molecular);
        let least = rates
            .map(|rate| rate.value.number())
            .min_by(f64::total_cmp)?;
        Some((least, limit.pressure.value.number()))
    });
    let most = |service_pa: f64| {
        let size = finding.note.size.as_ref()?;
        let LeakRate::Mass(rate) = size.rate.value.value else {
            return None;
        };
        let most = rate + size.rate.value.uncertainty.unwrap_or(0.0);
        let air = scene.visit.atmosphere.pressure();
        let excess = |pa: f64| pa.powi(2) - air.si().powi(2);
        let grown = size.pressure.map_or(1.0, |at| {
            excess(service_pa) / excess(at.value.value.absolute(air).si())
        });
        (grown > 0.0).then(|| most * grown.max(1.0))
    };
    least.is_some_and(|(least, service_pa)| most(service_pa).is_some_and(|most| least > most))
}

/// What the limit of a test means in service.
fn limit<'s>(scene: &'s Scene<'_>, name: &Identifier) -> Option<&'s InService> {
    let visit = scene.visit;
    let pressure = visit.pressure_tests.iter().map(|test| &test.id);
    let vacuum = visit.vacuum_tests.iter().map(|test| &test.id);
    let pressure = pressure.zip(&scene.figures.holds_in_service);
    let mut all = pressure.chain(vacuum.zip(&scene.figures.rises_in_service));
    all.find(|(id, _)| *id == name)?.1.as_ref()
}
