//! The fact of the first page that says what the tests of the visit showed.

use crate::job::{Finding, PressureTest, VacuumTest};
use crate::notes::Proof;
use crate::quantity::{Flavour, UnitSystem, print, print_as};
use crate::report::compose::coarse::is_coarse;
use crate::report::compose::scene::Scene;
use crate::report::compose::tests::duration;
use crate::report::data::Fact;
use crate::text::{Message, Text};
use crate::vocabulary::{Identifier, Word};
use crate::working::outcome::moment_of;
use crate::working::pressure_test::{Hold, HoldVerdict};
use crate::working::vacuum_test::Rise;
use crate::working::vacuum_verdict::Shown;
use crate::working::{Figure, Value, rounded};

/// What the pressure tests showed, and where none was made, what a vacuum test did.
pub(super) fn test_fact(scene: &Scene<'_>) -> Option<Fact> {
    pressure_fact(scene).or_else(|| vacuum_fact(scene))
}

type Held<'a> = (&'a PressureTest, &'a Hold);

/// The last test of each part; one that failed before a repair is told only where none came after.
fn last_of_each_part<'a>(scene: &'a Scene<'_>) -> Vec<Held<'a>> {
    let mut last: Vec<Held<'a>> = Vec::new();
    let held = scene.visit.pressure_tests.iter().zip(&scene.figures.holds);
    for (test, hold) in held.filter(|(_, hold)| hold.verdict != HoldVerdict::Strength) {
        last.retain(|(other, _)| {
            (other.circuit, other.section()) != (test.circuit, test.section())
        });
        last.push((test, hold));
    }
    let mended = |(test, hold): &Held<'_>| hold.verdict == HoldVerdict::Leak && later(scene, test);
    if !last.iter().all(mended) {
        last.retain(|held| !mended(held));
    }
    last
}

fn pressure_fact(scene: &Scene<'_>) -> Option<Fact> {
    let mut last = last_of_each_part(scene);
    let leaks = last
        .iter()
        .any(|(_, hold)| hold.verdict == HoldVerdict::Leak);
    if !leaks && last.iter().any(|(test, _)| test.section().is_none()) {
        last.retain(|(test, _)| test.section().is_none());
    }
    let order = |hold: &Hold| match hold.verdict {
        HoldVerdict::Leak => 0,
        HoldVerdict::Inconclusive => 1,
        HoldVerdict::HeldNoSize => 2,
        HoldVerdict::NothingLarger | HoldVerdict::Strength => 3,
    };
    let worst = last.iter().map(|(_, hold)| order(hold)).min()?;
    last.retain(|(_, hold)| order(hold) == worst);
    let size = |hold: &Hold| {
        hold.limit
            .as_ref()
            .map_or(0.0, |limit| limit.value.number())
    };
    let &(test, hold) = last
        .iter()
        .max_by(|(_, a), (_, b)| size(a).total_cmp(&size(b)))?;
    let mut circuits: Vec<usize> = vec![test.circuit];
    if test.section().is_none() {
        circuits = last.iter().map(|(test, _)| test.circuit).collect();
    }
    let size = hold.limit_mass.as_ref().or(hold.limit.as_ref());
    let printed = size.map(|figure| a_day(scene, figure, "fact-nitrogen-a-day"));
    let gas = match test.note.gas {
        Some(gas) => scene.words().phrase(gas.value.word()),
        None => scene.word("fact-gas"),
    };
    let made = Message::of("fact-test")
        .with("gas", gas)
        .figure(
            "pressure",
            print(&test.start.pressure.value, scene.site.units),
        )
        .with("duration", duration(test.seconds()))
        .with("later", if later(scene, test) { "yes" } else { "no" });
    let mut qualifier = vec![scene.say(&made)];
    qualifier.extend(coarse(scene, &test.id));
    if test.section().is_some() {
        qualifier.extend(whole_under_vacuum(scene, test.circuit));
    }
    Some(Fact {
        label: label(scene, &circuits, test.section()),
        value: scene.say(&hold.verdict.short(&printed.unwrap_or_default())),
        qualifier: Some(scene.words().series(&qualifier)),
        working: size.map(|figure| figure.id.clone()),
    })
}

/// That a test leaves a leak possible whose repair it is named as proof of.
fn coarse(scene: &Scene<'_>, test: &Identifier) -> Option<String> {
    let named = |finding: &Finding| {
        let mut proofs = finding.note.proofs.iter();
        proofs.any(|proof| matches!(proof, Proof::Named(name) if name.value == *test))
    };
    let mut findings = scene.visit.findings.iter();
    findings
        .any(|finding| named(finding) && is_coarse(scene, finding, test))
        .then(|| scene.word("fact-coarse-test"))
}

/// What a vacuum test of the whole circuit showed beside a pressure test of a section.
fn whole_under_vacuum(scene: &Scene<'_>, circuit: usize) -> Option<String> {
    let (_, rise) =
        risen(scene).rfind(|(test, _)| test.section().is_none() && test.circuit == circuit)?;
    let rate = a_day(scene, bound(rise)?, "fact-air-a-day");
    Some(scene.say(&Message::of("fact-whole-under-vacuum").figure("rate", rate)))
}

fn vacuum_fact(scene: &Scene<'_>) -> Option<Fact> {
    let (test, rise) = risen(scene).next_back()?;
    let (value, figure) = match (rise.shown, bound(rise)) {
        (Shown::Leak, _) => (scene.word("fact-air-came-in"), rise.lower.as_ref()),
        (_, Some(figure)) => {
            let rate = a_day(scene, figure, "fact-air-a-day");
            (
                scene.say(&HoldVerdict::NothingLarger.short(&rate)),
                Some(figure),
            )
        }
        _ => return None,
    };
    let made = Message::of("fact-vacuum-test").with("duration", duration(test.seconds()));
    let mut qualifier = vec![scene.say(&made)];
    qualifier.extend(coarse(scene, &test.id));
    Some(Fact {
        label: label(scene, &[test.circuit], test.section()),
        value,
        qualifier: Some(scene.words().series(&qualifier)),
        working: figure.map(|figure| figure.id.clone()),
    })
}

fn risen<'a>(scene: &'a Scene<'_>) -> impl DoubleEndedIterator<Item = (&'a VacuumTest, &'a Rise)> {
    scene.visit.vacuum_tests.iter().zip(&scene.figures.rises)
}

/// The largest leak that a rise left possible, as mass of air, where it showed nothing larger.
fn bound(rise: &Rise) -> Option<&Figure> {
    let shown = matches!(
        rise.shown,
        Shown::NothingLarger | Shown::NothingLargerAboveHold
    );
    rise.upper_mass.as_ref().filter(|_| shown)
}

fn label(scene: &Scene<'_>, circuits: &[usize], section: Option<&Identifier>) -> String {
    let message = if let Some(section) = section {
        Message::of("fact-section-tested").with("section", section.to_string())
    } else {
        let several = scene.system.several_circuits();
        let names = circuits
            .iter()
            .map(|&circuit| scene.system.circuit_choice(circuit));
        Message::of("fact-circuits-tested")
            .with("count", if several { circuits.len() } else { 0 })
            .with("circuits", Text::List(names.collect()))
    };
    scene.say(&message)
}

/// Whether something was repaired after a test.
fn later(scene: &Scene<'_>, test: &PressureTest) -> bool {
    let repairs = scene
        .visit
        .findings
        .iter()
        .flat_map(|finding| &finding.note.repairs);
    repairs
        .filter_map(|repair| repair.at)
        .any(|at| moment_of(scene.visit, at.value) > test.end.at.value.civil)
}

/// A mass rate in grams or ounces a day, of the gas that a message names.
fn a_day(scene: &Scene<'_>, figure: &Figure, of_gas: &'static str) -> String {
    let printed = scene.value(&figure.value);
    let Value::Computed {
        flavour: Flavour::MassRate,
        si,
        ..
    } = figure.value
    else {
        return printed;
    };
    let unit = match scene.site.units {
        UnitSystem::Metric => "g",
        UnitSystem::Us => "oz",
    };
    let day = print_as(Flavour::Mass, si * 86_400.0, unit, 9)
        .and_then(|printed| printed.number.parse::<f64>().ok());
    day.map_or(printed, |day| {
        let mass = format!("{}\u{a0}{unit}", rounded_up(day));
        scene.say(&Message::of(of_gas).figure("mass", mass))
    })
}

/// Rounded up to two digits or so: a limit is never made smaller by rounding.
fn rounded_up(value: f64) -> String {
    let decimals = match value {
        v if v >= 10.0 => 0,
        v if v >= 1.0 => 1,
        _ => 2,
    };
    let scale = 10f64.powi(decimals);
    rounded((value * scale - 1e-9).ceil() / scale, decimals as usize)
}
