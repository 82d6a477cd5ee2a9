//! The history of a system or a site composed for print: time lines of points, charts, and their tables.

use crate::history::PointHistory;
use crate::job::{Site, System};
use crate::quantity::print;
use crate::report::compose::history::{HistoryData, history};
use crate::report::compose::history_charts::{
    carbon_dioxide, column, rates, refrigerant, row, test_limits,
};
use crate::report::compose::history_time_line::{legend, time_line};
use crate::report::compose::scene::Scene;
use crate::report::compose::{contractor, document};
use crate::report::data::{ColumnKind, Head, Table};
use crate::report::history_data::{HistoryChapter, HistoryReport};
use crate::report::printed;
use crate::vocabulary::Word;

/// Composes the history of a system up to and with the visit of a scene.
pub fn history_report(scene: &Scene<'_>, draft: bool) -> Option<HistoryReport> {
    let chapter = Chapter::of(scene)?;
    let mut report = framed(scene, scene.system.name(), draft);
    report.head.line = vec![scene.site.name().to_owned()];
    report.chapters = vec![chapter.composed(String::new())];
    Some(report)
}

/// Composes the history of a site: what needs a lasting cure across its systems, then a chapter for
/// each, up to and with the visits of the scenes.
pub fn site_history(scenes: &[Scene<'_>], draft: bool) -> Option<HistoryReport> {
    let last = scenes.iter().max_by_key(|scene| scene.visit.last_day())?;
    let chapters: Vec<Chapter<'_>> = scenes.iter().map(Chapter::of).collect::<Option<_>>()?;
    let mut report = framed(last, last.site.name(), draft);
    report.lead = vec![format!(
        "{} of this site: first what needs a lasting cure, then a chapter for each.",
        printed::capital(&printed::counted(scenes.len(), "system", "systems"))
    )];
    report.cures = cures(&chapters);
    if report.cures.rows.is_empty() {
        report.lead.push("By these notes no part that is there now has leaked more than once, and none was left leaking.".to_owned());
    }
    report.systems = systems(&chapters);
    report.chapters = chapters
        .iter()
        .map(|chapter| chapter.composed(chapter.scene.system.name().to_owned()))
        .collect();
    Some(report)
}

/// A history without its chapters, named after what it is of.
fn framed(scene: &Scene<'_>, name: &str, draft: bool) -> HistoryReport {
    let mut document = document(scene, draft);
    let as_at = printed::day(scene.visit.last_day());
    document.title = format!("History of {name}, as at {as_at}").replace('\u{a0}', " ");
    name.clone_into(&mut document.footer.system);
    HistoryReport {
        document,
        contractor: contractor(scene),
        head: Head {
            kind: "History".to_owned(),
            date: format!("as at {as_at}"),
            system: name.to_owned(),
            ..Head::default()
        },
        notes: vec![
            "The absence of a record is not the absence of a leak: a year without an entry is one of which nothing is noted, not one without a leak.".to_owned(),
            "A place that was looked at without a sign showed nothing at that visit, by the method of that visit; a smaller leak may have been there.".to_owned(),
        ],
        ..HistoryReport::default()
    }
}

/// A system with the lives of its points, in the order of its register.
struct Chapter<'a> {
    scene: &'a Scene<'a>,
    data: HistoryData,
    lives: Vec<(String, PointHistory)>,
}

impl<'a> Chapter<'a> {
    fn of(scene: &'a Scene<'a>) -> Option<Self> {
        let system = scene.system;
        let points = system.points.iter().map(|(id, _)| id);
        Some(Self {
            scene,
            data: history(scene.site, system, scene.number, scene.words())?,
            lives: points
                .map(|id| {
                    let life = PointHistory::of(system, id, scene.number);
                    (system.point_name(id), life)
                })
                .collect(),
        })
    }

    fn composed(&self, title: String) -> HistoryChapter {
        let (scene, data) = (self.scene, &self.data);
        let several = scene.system.several_circuits();
        let points = time_line(&self.lives);
        let mut charts = Vec::new();
        for circuit in &data.circuits {
            charts.extend(refrigerant(scene, circuit, several));
            charts.extend(carbon_dioxide(circuit, several));
        }
        charts.extend(rates(scene, data));
        charts.extend(test_limits(scene, data));
        HistoryChapter {
            title,
            lead: lead(data, several),
            legend: legend(&points),
            points,
            point_table: self.point_table(),
            charts,
            visits: visits(data),
            earlier: earlier(scene.site, scene.system),
        }
    }

    /// Lives of the points, those that need a lasting cure first, then by how often they leaked.
    fn worst_first(&self) -> Vec<&(String, PointHistory)> {
        let mut lives: Vec<_> = self.lives.iter().collect();
        lives.sort_by_key(|(_, life)| {
            (!life.needs_cure(), usize::MAX - life.of_this_part().count())
        });
        lives
    }

    fn point_table(&self) -> Table {
        let rows = self.worst_first().into_iter().map(|(place, life)| {
            let held = life.spells.iter().filter_map(|spell| spell.held);
            let held: Vec<String> = held.map(|days| days.to_string()).collect();
            let looked = life.last_look().map(|step| step.until.to_string());
            row(vec![
                place.clone(),
                life.of_this_part().count().to_string(),
                held.join(", "),
                looked.unwrap_or_default(),
                self.scene.words().text(&life.state.describe()),
            ])
        });
        Table {
            title: String::new(),
            columns: vec![
                column("Where", ColumnKind::Text),
                column("Leaks", ColumnKind::Number),
                column("Repairs held, days", ColumnKind::Short),
                column("Last looked at", ColumnKind::Short),
                column("State", ColumnKind::Text),
            ],
            rows: rows.collect(),
            note: "Those that need a lasting cure come first. Leaks are of the part that is there now; a replaced part begins anew. Days are from each repair until the place was found leaking again.".to_owned(),
        }
    }
}

/// Points of several systems that need a lasting cure, those that leaked most often first.
fn cures(chapters: &[Chapter<'_>]) -> Table {
    let mut all: Vec<_> = chapters
        .iter()
        .flat_map(|chapter| chapter.lives.iter().map(move |life| (chapter, life)))
        .filter(|(_, (_, life))| life.needs_cure())
        .collect();
    all.sort_by_key(|(_, (_, life))| usize::MAX - life.of_this_part().count());
    let rows = all.into_iter().map(|(chapter, (place, life))| {
        row(vec![
            chapter.scene.system.name().to_owned(),
            place.clone(),
            life.of_this_part().count().to_string(),
            chapter.scene.words().text(&life.state.describe()),
        ])
    });
    Table {
        title: String::new(),
        columns: vec![
            column("System", ColumnKind::Short),
            column("Where", ColumnKind::Text),
            column("Leaks", ColumnKind::Number),
            column("State", ColumnKind::Text),
        ],
        rows: rows.collect(),
        note: "A place needs a lasting cure if the part that is there now has leaked more than once, or was left leaking or repaired only for the time being.".to_owned(),
    }
}

fn systems(chapters: &[Chapter<'_>]) -> Table {
    let rows = chapters.iter().map(|chapter| {
        let lost = chapter
            .data
            .circuits
            .iter()
            .flat_map(|circuit| circuit.co2e_lost_kg.values());
        let tonnes = lost.sum::<f64>() / 1000.0;
        let leaked = chapter
            .lives
            .iter()
            .filter(|(_, life)| !life.spells.is_empty())
            .count();
        let last = chapter.data.visits.last();
        row(vec![
            chapter.scene.system.name().to_owned(),
            chapter.data.visits.len().to_string(),
            leaked.to_string(),
            crate::working::rounded(tonnes, 2),
            last.map(|visit| visit.day.clone()).unwrap_or_default(),
            last.map(|visit| visit.outcome.clone()).unwrap_or_default(),
        ])
    });
    Table {
        title: String::new(),
        columns: vec![
            column("System", ColumnKind::Short),
            column("Visits", ColumnKind::Number),
            column("Points that leaked", ColumnKind::Number),
            column("Lost, t CO₂e", ColumnKind::Number),
            column("Last visit", ColumnKind::Short),
            column("Its outcome", ColumnKind::Text),
        ],
        rows: rows.collect(),
        note: "Lost is what visits of this book found missing, in all years.".to_owned(),
    }
}

fn lead(data: &HistoryData, several: bool) -> Vec<String> {
    let mut lead = vec![format!(
        "{} of this book, and the earlier records in it.",
        printed::capital(&printed::counted(data.visits.len(), "visit", "visits"))
    )];
    for circuit in &data.circuits {
        let since = circuit.complete_since.as_ref();
        let since = since.and_then(|day| day.parse().ok()).map(printed::day);
        lead.push(match (since, several) {
            (Some(since), true) => format!(
                "{}: the record of refrigerant is complete only since {since}.",
                circuit.name
            ),
            (Some(since), false) => {
                format!("The record of refrigerant is complete only since {since}.")
            }
            (None, true) => format!(
                "{}: the notes name no day from which the record of refrigerant is complete.",
                circuit.name
            ),
            (None, false) => {
                "The notes name no day from which the record of refrigerant is complete.".to_owned()
            }
        });
    }
    lead
}

/// Records from before this book, or of others.
fn earlier(site: &Site, system: &System) -> Table {
    let rows = system.earlier.iter().filter_map(|entry| {
        let note = &entry.note;
        let text = |noted: &Option<crate::text::Noted<String>>| {
            noted
                .as_ref()
                .map_or_else(String::new, |noted| noted.value.clone())
        };
        let place = match &note.point {
            Some(point) => system.point_name(&point.value),
            None => printed::capital(&system.circuit_name(entry.circuit)),
        };
        let mass = note.mass.as_ref();
        Some(row(vec![
            entry.at.value.date().to_string(),
            note.what?.value.word().to_owned(),
            place,
            mass.map_or_else(String::new, |mass| {
                print(&mass.value, site.units).to_string()
            }),
            text(&note.by),
            text(&note.source),
        ]))
    });
    Table {
        title: String::new(),
        columns: vec![
            column("When", ColumnKind::Short),
            column("What", ColumnKind::Short),
            column("Where", ColumnKind::Text),
            column("Mass", ColumnKind::Short),
            column("By", ColumnKind::Short),
            column("Told by", ColumnKind::Text),
        ],
        rows: rows.collect(),
        note: "Taken over from records of before this book or of others; marked * where they are drawn.".to_owned(),
    }
}

fn visits(data: &HistoryData) -> Table {
    Table {
        title: String::new(),
        columns: vec![
            column("Visit", ColumnKind::Short),
            column("Purpose", ColumnKind::Text),
            column("Outcome", ColumnKind::Text),
        ],
        rows: data
            .visits
            .iter()
            .map(|visit| {
                let day = visit
                    .day
                    .parse()
                    .map_or_else(|_| visit.day.clone(), printed::day);
                row(vec![day, visit.purpose.clone(), visit.outcome.clone()])
            })
            .collect(),
        note: String::new(),
    }
}
