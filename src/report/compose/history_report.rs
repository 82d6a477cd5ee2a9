//! The history of a system or a site composed for print: time lines of points, charts, and their tables.

use crate::history::{PointHistory, State, by_whom};
use crate::quantity::print_mass;
use crate::report::compose::account::columns;
use crate::report::compose::history::{HistoryData, history};
use crate::report::compose::history_charts::{
    carbon_dioxide, rates, refrigerant, row, test_limits,
};
use crate::report::compose::history_time_line::{legend, time_line};
use crate::report::compose::scene::Scene;
use crate::report::compose::{contractor, document};
use crate::report::data::{Chart, ColumnKind, Head, Table};
use crate::report::history_data::{HistoryChapter, HistoryReport};
use crate::text::{Message, capital};
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
    report.cures = cures(last, &chapters);
    let lead = Message::of("history-site-lead")
        .with("systems", scenes.len())
        .with("cures", yes_no(!report.cures.rows.is_empty()));
    report.lead = vec![last.say(&lead)];
    if report.cures.rows.is_empty() {
        report.lead.push(last.word("history-nothing-came-back"));
    }
    report.systems = systems(last, &chapters);
    report.chapters = chapters
        .iter()
        .map(|chapter| chapter.composed(chapter.scene.system.name().to_owned()))
        .collect();
    Some(report)
}

/// A history without its chapters, named after what it is of.
fn framed(scene: &Scene<'_>, name: &str, draft: bool) -> HistoryReport {
    let mut document = document(scene, draft);
    let day = scene.visit.last_day();
    let title = Message::of("history-title")
        .with("name", name)
        .with("day", day);
    document.title = scene.say(&title).replace('\u{a0}', " ");
    name.clone_into(&mut document.footer.system);
    document.footer.kind = scene.word("history-kind");
    document.footer.date = scene.words().day(day);
    HistoryReport {
        document,
        contractor: contractor(scene),
        head: Head {
            kind: scene.word("history-kind"),
            date: scene.say(&Message::of("as-at").with("day", day)),
            system: name.to_owned(),
            ..Head::default()
        },
        notes: vec![
            scene.word("history-absence"),
            scene.word("history-looked-at"),
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
        let points = time_line(&self.lives, scene.words());
        let mut charts = Vec::new();
        for (circuit, figures) in data.circuits.iter().zip(&scene.figures.circuits) {
            let choice = scene.system.circuit_choice(figures.circuit);
            charts.extend(refrigerant(scene, circuit, &choice));
            charts.extend(carbon_dioxide(scene, circuit, &choice));
        }
        charts.extend(rates(scene, data));
        charts.extend(test_limits(scene, data));
        // A single bar tells no more than its row of the table.
        for part in charts.iter_mut().filter(|part| part.chart.bars.len() < 2) {
            part.chart = Chart::default();
        }
        HistoryChapter {
            title,
            lead: lead(scene, data),
            legend: legend(&points, scene.words()),
            points,
            point_table: self.point_table(),
            charts,
            visits: visits(scene, data),
            earlier: earlier(scene),
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
            let looked = life.last_look();
            let looked = looked.map(|step| self.scene.words().day(step.until));
            row(vec![
                place.clone(),
                life.of_this_part().count().to_string(),
                held.join(", "),
                looked.unwrap_or_default(),
                stands(self.scene, life),
            ])
        });
        let cures = self.lives.iter().any(|(_, life)| life.needs_cure());
        Table {
            title: String::new(),
            columns: columns(
                self.scene,
                &[
                    ("head-where", ColumnKind::Text),
                    ("head-leaks", ColumnKind::Number),
                    ("head-repairs-held", ColumnKind::Short),
                    ("head-last-looked-at", ColumnKind::Short),
                    ("head-state", ColumnKind::Text),
                ],
            ),
            rows: rows.collect(),
            note: self
                .scene
                .say(&Message::of("history-points-note").with("cures", yes_no(cures))),
        }
    }
}

fn yes_no(is: bool) -> &'static str {
    if is { "yes" } else { "no" }
}

/// How a point stands at the last visit; the day of its own last look stands beside it.
fn stands(scene: &Scene<'_>, life: &PointHistory) -> String {
    match life.state {
        State::NotLookedAt => scene.word("point-not-looked-at-then"),
        ref state => scene.words().text(&state.describe()),
    }
}

/// A day as the language writes it.
fn in_full(scene: &Scene<'_>, day: &str) -> String {
    day.parse()
        .map_or_else(|_| day.to_owned(), |day| scene.words().day(day))
}

/// Points of several systems that need a lasting cure, those that leaked most often first.
fn cures(scene: &Scene<'_>, chapters: &[Chapter<'_>]) -> Table {
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
            stands(chapter.scene, life),
        ])
    });
    Table {
        title: String::new(),
        columns: columns(
            scene,
            &[
                ("head-system", ColumnKind::Short),
                ("head-where", ColumnKind::Text),
                ("head-leaks", ColumnKind::Number),
                ("head-state", ColumnKind::Text),
            ],
        ),
        rows: rows.collect(),
        note: scene.word("history-cures-note"),
    }
}

fn systems(scene: &Scene<'_>, chapters: &[Chapter<'_>]) -> Table {
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
            scene.figure(crate::working::rounded(tonnes, 2)),
            last.map_or_else(String::new, |visit| in_full(scene, &visit.day)),
            last.map(|visit| visit.outcome.clone()).unwrap_or_default(),
        ])
    });
    Table {
        title: String::new(),
        columns: columns(
            scene,
            &[
                ("head-system", ColumnKind::Short),
                ("head-visits", ColumnKind::Number),
                ("head-points-leaked", ColumnKind::Number),
                ("head-lost-co2e", ColumnKind::Number),
                ("head-last-visit", ColumnKind::Short),
                ("head-its-outcome", ColumnKind::Text),
            ],
        ),
        rows: rows.collect(),
        note: scene.word("history-systems-note"),
    }
}

fn lead(scene: &Scene<'_>, data: &HistoryData) -> Vec<String> {
    let mut lead =
        vec![scene.say(&Message::of("history-visits").with("visits", data.visits.len()))];
    for circuit in &scene.figures.circuits {
        let message = match circuit.account.complete_since {
            Some(since) => Message::of("history-complete-since").with("day", since.date()),
            None => Message::of("history-complete-unknown"),
        };
        let choice = scene.system.circuit_choice(circuit.circuit);
        lead.push(scene.say(&message.with("circuit", choice)));
    }
    lead
}

/// Records from before this book, or of others.
fn earlier(scene: &Scene<'_>) -> Table {
    let system = scene.system;
    let rows = system.earlier.iter().filter_map(|entry| {
        let note = &entry.note;
        let text = |noted: &Option<crate::text::Noted<String>>| {
            noted
                .as_ref()
                .map_or_else(String::new, |noted| noted.value.clone())
        };
        let place = match &note.point {
            Some(point) => system.point_name(&point.value),
            None => scene.say(
                &Message::of("circuit-named").with("circuit", system.circuit_choice(entry.circuit)),
            ),
        };
        let mass = note.mass.as_ref();
        Some(row(vec![
            scene.words().day(entry.at.value.date()),
            scene.words().phrase(note.what?.value.word()),
            place,
            mass.map_or_else(String::new, |mass| {
                scene.figure(print_mass(&mass.value, scene.site.units))
            }),
            note.by.as_ref().map_or_else(String::new, |by| {
                capital(&scene.words().text(&by_whom(&by.value)))
            }),
            text(&note.source),
        ]))
    });
    Table {
        title: String::new(),
        columns: columns(
            scene,
            &[
                ("head-when", ColumnKind::Short),
                ("head-what", ColumnKind::Short),
                ("head-where", ColumnKind::Text),
                ("head-moved", ColumnKind::Short),
                ("head-by", ColumnKind::Short),
                ("head-told-by", ColumnKind::Text),
            ],
        ),
        rows: rows.collect(),
        note: scene.word("history-earlier-note"),
    }
}

fn visits(scene: &Scene<'_>, data: &HistoryData) -> Table {
    Table {
        title: String::new(),
        columns: columns(
            scene,
            &[
                ("head-visit", ColumnKind::Short),
                ("head-purpose", ColumnKind::Text),
                ("head-outcome", ColumnKind::Text),
            ],
        ),
        rows: data
            .visits
            .iter()
            .map(|visit| {
                let day = in_full(scene, &visit.day);
                row(vec![day, visit.purpose.clone(), visit.outcome.clone()])
            })
            .collect(),
        note: String::new(),
    }
}
