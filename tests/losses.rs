//! What was lost is told alike everywhere on the page. The demo book is invented.

use rimebook::command::load;
use rimebook::report::compose::{Scene, compose};
use rimebook::report::visit_figures::VisitFigures;
use rimebook::working::leak_rate::More;
use serde_json::Value;
use std::path::Path;

const POUND: f64 = 0.453_592_37;

/// The figures of a visit of the demo book, and its page.
fn page(site: &str, system: &str, day: &str) -> (VisitFigures, Value) {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let visit = demo.join(site).join(system).join(day);
    let (loaded, target) = load(&visit).unwrap();
    let (site, system, number) = loaded.visits_of(&target).into_iter().next().unwrap();
    let figures = || VisitFigures::of(site, system, number).unwrap();
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit: &system.visits[number],
        figures: figures(),
        fingerprint: String::new(),
    };
    let data = compose(&scene, &[], false).data;
    (figures(), serde_json::to_value(&data).unwrap())
}

fn says(page: &Value, wanted: &str) {
    let text = page.to_string().replace('\u{a0}', " ");
    assert!(text.contains(wanted), "{wanted}\nis not in\n{text}");
}

#[test]
fn a_loss_put_back_in_parts_is_one_loss() {
    let (figures, page) = page("dunmarrow", "process-chiller-1", "2025-07-15");
    let circuit = &figures.circuits[0];
    let missing = circuit.missing.as_ref().unwrap();
    assert!((missing.kg - 35.0 * POUND).abs() < 1e-6);
    assert_eq!(missing.parts.len(), 2);
    assert_eq!(missing.more, None, "it ended full");
    // 35 lb of R-507A, GWP 3985: 24 lb and 11 lb together.
    let co2e = circuit.missing_co2e.as_ref().unwrap().value.number();
    assert!((co2e - 35.0 * POUND * 3985.0).abs() < 1.0);
    says(&page, "35.0 lb of refrigerant was missing from the system.");
    says(&page, "24.0 lb on 9 July 2025 and 11.0 lb on 15 July 2025");
    says(&page, "35.0 lb had been missing in all, 63.3 t CO₂e");
    says(
        &page,
        "If all of it was lost since 6 August 2024, about 37 lb",
    );
}

#[test]
fn a_loss_that_ended_half_filled_is_at_least_so_much() {
    let (figures, page) = page("dunmarrow", "process-chiller-1", "2025-07-09");
    let missing = figures.circuits[0].missing.as_ref().unwrap();
    assert_eq!(missing.more, Some(More::Partial));
    says(&page, "At least 24.0 lb of refrigerant was missing");
    says(&page, "At least 24.0 lb had been lost");
    says(&page, "at least 26.0 lb a year");
    says(&page, "charged, not to full");
}

#[test]
fn a_full_charge_weighed_in_at_installation_is_a_weighed_start() {
    let (figures, page) = page("brackwater", "cold-store-1", "2026-04-21");
    // The book begins a year after the installation.
    let missing = figures.circuits[0].missing.as_ref().unwrap();
    assert_eq!(missing.more, Some(More::NotComplete));
    says(&page, "At least 1.20 kg of refrigerant had been lost");
    let text = page.to_string();
    assert!(!text.contains("not known well enough"), "{text}");
}

#[test]
fn a_change_of_refrigerant_tells_what_was_missing_before_it() {
    let (figures, page) = page("brackwater", "flake-ice-1", "2025-10-13");
    // By hand: 71.60 − 26.20 and 71.30 − 26.60 recovered, 0.2 let out of each, of 46.00 kg.
    let out = |circuit: usize| &figures.circuits[circuit].taken_out.as_ref().unwrap().1;
    for (circuit, recovered, short) in [(0, 45.40, 0.40), (1, 44.70, 1.10)] {
        let out = out(circuit);
        assert!((out.recovered.value.number() - recovered).abs() < 1e-9);
        assert!((out.short.as_ref().unwrap().value.number() - short).abs() < 1e-9);
    }
    says(&page, "90.1 kg R-404A recovered; 1.50 kg had been missing");
}
