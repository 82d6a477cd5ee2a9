//! The history of each system of the demo book as it goes to the page. The book is invented; what is
//! expected of it was read from its notes, without this program.

use rimebook::report::compose::{Scene, history_report};
use rimebook::report::history_data::{HistoryReport, TimeShape};
use rimebook::report::visit_figures::VisitFigures;
use std::path::Path;

fn of(system: &str) -> HistoryReport {
    let book = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let (loaded, target) = rimebook::command::load(&book.join(system)).unwrap();
    let (site, system, number) = loaded.last_visits_of(&target)[0];
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit: &system.visits[number],
        figures: VisitFigures::of(site, system, number).unwrap(),
        fingerprint: String::new(),
    };
    history_report(&scene, false).unwrap()
}

const SYSTEMS: [&str; 4] = [
    "brackwater/flake-ice-1",
    "brackwater/cold-store-1",
    "dunmarrow/process-chiller-1",
    "dunmarrow/ice-bank-1",
];

#[test]
fn every_chart_stays_on_its_sheet_and_has_its_table_and_its_words() {
    for system in SYSTEMS {
        let report = of(system);
        assert!(report.charts.len() >= 2, "{system}");
        for part in &report.charts {
            let chart = &part.chart;
            assert!(!chart.alt.is_empty() && !part.table.rows.is_empty());
            let ticks = chart.across.ticks.iter().chain(&chart.up.ticks);
            let heights = chart.bars.iter().map(|bar| bar.up);
            let edges = chart.bars.iter().flat_map(|bar| bar.across);
            let limits = chart.limits.iter().map(|limit| limit.at);
            for at in ticks
                .map(|tick| tick.at)
                .chain(heights)
                .chain(edges)
                .chain(limits)
            {
                assert!((0.0..=1.0).contains(&at), "{system}, {}: {at}", part.title);
            }
        }
        for line in &report.points {
            assert!(line.rows.len() == report.point_table.rows.len());
            assert!(
                line.rows
                    .iter()
                    .all(|row| row.cells.len() == line.days.len())
            );
        }
        let notes = report.notes.join(" ");
        assert!(notes.contains("absence of a record is not the absence of a leak"));
    }
}

/// The solenoid's inlet of drum a came back twice, and the notes say so on those days.
#[test]
fn a_point_that_came_back_is_drawn_as_such_on_its_day() {
    let report = of("brackwater/flake-ice-1");
    let again = report.points.iter().any(|line| {
        let cells = line.rows.iter().flat_map(|row| &row.cells);
        cells.flatten().any(|mark| mark.shape == TimeShape::Again)
    });
    assert!(again);
    assert!(report.legend.iter().any(|mark| mark.letters == "L!"));
    assert!(report.legend.iter().all(|mark| !mark.meaning.is_empty()));
}
