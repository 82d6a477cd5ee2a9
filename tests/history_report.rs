//! The history of each system of the demo book as it goes to the page. The book is invented; what is
//! expected of it was read from its notes, without this program.

use rimebook::report::compose::{Scene, history_report, site_history};
use rimebook::report::history_data::{HistoryChapter, HistoryReport, TimeRow, TimeShape};
use rimebook::report::visit_figures::VisitFigures;
use std::path::Path;

/// The history of a system, or of a site.
fn report_of(path: &str) -> HistoryReport {
    let book = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let (loaded, target) = rimebook::command::load(&book.join(path)).unwrap();
    let last = loaded.last_visits_of(&target);
    let scenes: Vec<Scene<'_>> = last
        .into_iter()
        .map(|(site, system, number)| Scene {
            sources: &loaded.sources,
            book: &loaded.book,
            site,
            system,
            number,
            visit: &system.visits[number],
            figures: VisitFigures::of(site, system, number).unwrap(),
            fingerprint: String::new(),
        })
        .collect();
    if path.contains('/') {
        history_report(&scenes[0], false).unwrap()
    } else {
        site_history(&scenes, false).unwrap()
    }
}

fn of(system: &str) -> HistoryChapter {
    report_of(system).chapters.remove(0)
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
            assert!(!part.table.rows.is_empty());
            // Only two bars or more say something that their table does not.
            assert_ne!(chart.bars.len(), 1);
            assert_eq!(chart.alt.is_empty(), chart.bars.is_empty());
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
        assert!(!report.point_table.rows.is_empty() && !report.visits.rows.is_empty());
    }
    let notes = report_of(SYSTEMS[0]).notes.join(" ");
    assert!(notes.contains("absence of a record is not the absence of a leak"));
}

/// Left and right of a mark, mm: a shape of 2.3 mm about its day, then letters of 7 pt, most of which
/// are narrower than the 1.5 mm reckoned here, on a scale of 106 mm (the narrowest sheet).
fn extent(at: f64, letters: &str) -> (f64, f64) {
    let middle = 106.0 * at;
    let wide = 1.5 * letters.chars().count() as f64;
    (middle - 1.15, middle + 1.15 + wide)
}

fn collide(row: &TimeRow) -> bool {
    let marks = row.marks.iter().enumerate();
    marks.into_iter().any(|(index, one)| {
        row.marks[index + 1..].iter().any(|other| {
            let (a, b) = (
                extent(one.at, &one.letters),
                extent(other.at, &other.letters),
            );
            let both_quiet = one.shape == TimeShape::Nothing && other.shape == TimeShape::Nothing;
            one.lane == other.lane && !both_quiet && a.0 < b.1 && b.0 < a.1
        })
    })
}

#[test]
fn marks_stand_at_their_day_in_order_and_none_covers_another() {
    for system in SYSTEMS {
        let line = of(system).points;
        assert!(line.ticks.len() > 1 && !line.rows.is_empty(), "{system}");
        assert!(line.ticks.is_sorted_by(|one, next| one.at < next.at));
        for row in &line.rows {
            assert!(row.marks.iter().all(|mark| (0.0..=1.0).contains(&mark.at)));
            assert!(row.marks.iter().all(|mark| mark.lane < row.lanes));
            assert!(row.marks.is_sorted_by(|one, next| one.at <= next.at));
            assert!(!collide(row), "{system}: {row:?}");
            assert!(row.alt.starts_with(&row.place) && row.alt.ends_with('.'));
        }
    }
}

/// The scale of flake ice machine 1 begins on 1 January 2024 and ends with 2026; the repair by others
/// of 11 June 2024 is its day 162, the last visit of 9 July 2026 its day 920, of 1096.
#[test]
fn the_scale_is_true_to_time() {
    let line = of("brackwater/flake-ice-1").points;
    let labels: Vec<&str> = line.ticks.iter().map(|tick| tick.label.as_str()).collect();
    assert_eq!(labels.first(), Some(&"2024-01"));
    assert_eq!(labels.last(), Some(&""));
    let marks = || line.rows.iter().flat_map(|row| &row.marks);
    let first = marks().map(|mark| mark.at).fold(1.0, f64::min);
    let last = marks().map(|mark| mark.at).fold(0.0, f64::max);
    assert!((first - 162.0 / 1096.0).abs() < 1e-9, "{first}");
    assert!((last - 920.0 / 1096.0).abs() < 1e-9, "{last}");
}

#[test]
fn test_limits_name_circuit_section_and_test() {
    let chapter = of("brackwater/flake-ice-1");
    let part = chapter
        .charts
        .iter()
        .find(|part| part.title.starts_with("Largest leak each pressure test"));
    let named: Vec<&str> = part
        .unwrap()
        .table
        .rows
        .iter()
        .map(|row| row.cells[1].as_str())
        .collect();
    assert!(
        named.contains(&"Circuit a, section liquid, test p1"),
        "{named:?}"
    );
    assert!(
        named.contains(&"Circuit b, all sections, test p-b"),
        "{named:?}"
    );
}

#[test]
fn rates_by_law_stand_beside_their_trigger() {
    let chapter = of("dunmarrow/process-chiller-1");
    let by_law: Vec<_> = chapter
        .charts
        .iter()
        .filter(|part| part.title.contains("CFR"))
        .collect();
    assert!(!by_law.is_empty());
    for part in by_law {
        assert!(!part.chart.limits.is_empty() && part.chart.limits[0].label.contains("trigger"));
        let rows = &part.table.rows;
        assert!(
            rows.iter()
                .all(|row| row.cells.last().unwrap().contains("over"))
        );
    }
}

/// By the notes, one place at Brackwater came back: the solenoid inlet of drum A, four times in all.
#[test]
fn a_site_leads_with_what_needs_a_lasting_cure_and_has_a_chapter_a_system() {
    let report = report_of("brackwater");
    assert_eq!(report.chapters.len(), 2);
    assert_eq!(report.systems.rows.len(), 2);
    let first = &report.cures.rows[0].cells;
    assert_eq!(first[0], "Flake ice machine 1");
    assert!(
        first[1].contains("solenoid valve") && first[2] == "4",
        "{first:?}"
    );
    assert!(
        report
            .chapters
            .iter()
            .all(|chapter| !chapter.title.is_empty())
    );
    let other = report_of("dunmarrow");
    assert!(other.cures.rows.is_empty() && other.lead[1].contains("has leaked more than once"));
}

#[test]
fn earlier_records_stand_apart_with_who_told_them() {
    let chapter = of("brackwater/flake-ice-1");
    assert_eq!(chapter.earlier.rows.len(), 6);
    assert!(
        chapter
            .earlier
            .rows
            .iter()
            .all(|row| row.cells[5].starts_with("site logbook p."))
    );
    assert!(
        chapter
            .lead
            .iter()
            .any(|line| line.contains("complete only since 18\u{a0}February\u{a0}2025"))
    );
}

/// The solenoid's inlet of drum a came back twice, and the notes say so on those days.
#[test]
fn a_point_that_came_back_is_drawn_as_such_on_its_day() {
    let report = of("brackwater/flake-ice-1");
    let rows = report.points.rows.iter();
    let again = rows
        .flat_map(|row| &row.marks)
        .any(|mark| mark.shape == TimeShape::Again);
    assert!(again);
    assert!(report.legend.iter().any(|mark| mark.letters == "L!"));
    assert!(report.legend.iter().all(|mark| !mark.meaning.is_empty()));
}

/// Circuit B: 46.00 kg of R-404A noted, 44.70 recovered and 0.2 lost while working on 13 October 2025.
#[test]
fn what_the_notes_do_not_know_is_not_called_nothing_and_gases_are_not_added_together() {
    let chapter = of("brackwater/flake-ice-1");
    let part = chapter
        .charts
        .iter()
        .find(|part| part.title == "Refrigerant by year, circuit b")
        .unwrap();
    let rows: Vec<(String, &str)> = part
        .table
        .rows
        .iter()
        .map(|row| (row.cells[0].replace('\u{a0}', " "), row.cells[5].as_str()))
        .collect();
    let table = [
        ("2023 R-404A*", "not known"),
        ("2024 R-404A*", "not known"),
        ("2025 R-404A*", "not known"),
        ("2025 R-449A*", "not known"),
        ("2026 R-449A", "0.00"),
    ];
    let table = table.map(|(year, leaked)| (year.to_owned(), leaked));
    assert_eq!(rows, table);
    let note = part.table.note.replace('\u{a0}', " ");
    assert!(note.contains("1.10 kg of the full charge of 46.00 kg did not come out"));
}
