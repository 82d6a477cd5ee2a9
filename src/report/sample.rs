//! Reports for the tests of the page: a visit of the demo book, a small one, one of a size that hardly
//! ever occurs.

#![expect(clippy::unwrap_used, reason = "for unit tests only")]

use crate::report::compose::{Scene, compose};
use crate::report::data::{Head, Paper, Picture, ReportData};
use crate::report::visit_figures::VisitFigures;
use std::path::Path;

/// The richest visit of the demo book; it wants at most six photographs.
pub fn rich() -> ReportData {
    let visit = "jobs-example/brackwater/flake-ice-1/2026-06-17";
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(visit);
    let (loaded, target) = crate::command::load(&path).unwrap();
    let (site, system, number) = loaded.visits_of(&target)[0];
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit: &system.visits[number],
        figures: VisitFigures::of(site, system, number).unwrap(),
        fingerprint: "7c1e 40aa 93d2".to_owned(),
    };
    let composed = compose(&scene, &[], false);
    assert!(!composed.photographs.is_empty() && composed.photographs.len() <= 6);
    composed.data
}

/// A small job: nothing but what every visit has.
pub fn small() -> ReportData {
    let mut data = ReportData::default();
    data.document.paper = Paper::Letter;
    "Periodic leak check, Bottle cooler".clone_into(&mut data.document.title);
    "Saltmarsh Cooling".clone_into(&mut data.contractor.name);
    data.head = Head {
        kind: "Periodic leak check".to_owned(),
        date: "18 June 2026".to_owned(),
        system: "Bottle cooler".to_owned(),
        line: vec!["Creamery".to_owned(), "R-513A, 9 lb 4 oz".to_owned()],
        particulars: vec![],
    };
    "The parts that could be reached were searched; no alarm was given."
        .clone_into(&mut data.outcome.sentence);
    data
}

/// Many points, pictures and movements, names without end.
pub fn large() -> ReportData {
    let long = "Low-temperature evaporator of the third blast freezer on the mezzanine above the packing hall, distributor header, northernmost braze of the eleven";
    let mut data = rich();
    long.clone_into(&mut data.head.system);
    long.clone_into(&mut data.document.footer.system);
    long.clone_into(&mut data.contractor.name);
    let point = data.points.rows[0].clone();
    data.points.rows = (1..=60)
        .map(|number| {
            let mut row = point.clone();
            row.number = number.to_string();
            if number % 7 == 0 {
                long.clone_into(&mut row.place);
            }
            row
        })
        .collect();
    let finding = data.findings[0].clone();
    data.findings = (1..=12)
        .map(|number| {
            let mut finding = finding.clone();
            finding.number = number.to_string();
            if number % 5 == 0 {
                long.clone_into(&mut finding.heading);
            }
            finding.point = Some("packing-hall/mezzanine/blast-freezer-3/evaporator-low/distributor-header/braze-11-north-of-the-eleven".to_owned());
            for picture in &mut finding.pictures {
                if let Picture::Pair { after, .. } = picture {
                    long.clone_into(&mut after.caption);
                }
            }
            finding
        })
        .collect();
    let rows = data.account.tables[0].rows.clone();
    data.account.tables[0].rows = rows.iter().cycle().take(400).cloned().collect();
    data.document.draft = true;
    data
}
