//! The history report as plain data: what the template `history.typ` prints.

use crate::report::data::{Chart, Contractor, Document, Head, Revision, Table, Tick, WorkingEntry};
use schemars::JsonSchema;
use serde::Serialize;

/// Systems over the years: one, or all of a site, each in a chapter.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct HistoryReport {
    /// What the document is.
    pub document: Document,
    /// Who made it.
    pub contractor: Contractor,
    /// Which system or site, as at which day.
    pub head: Head,
    /// Always none: a history is not issued.
    pub revision: Option<Revision>,
    /// Always empty: the workings stand in the reports of the visits.
    pub workings: Vec<WorkingEntry>,
    /// What the document holds; empty for one system.
    pub lead: Vec<String>,
    /// Points of all systems that need a lasting cure, the worst first; no rows for one system.
    pub cures: Table,
    /// The systems of the site side by side; no rows for one system.
    pub systems: Table,
    /// A chapter for each system.
    pub chapters: Vec<HistoryChapter>,
    /// What the pages do not show.
    pub notes: Vec<String>,
}

/// A system over the years, in the order of its pages.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct HistoryChapter {
    /// The system; empty where it is the only one.
    pub title: String,
    /// What the pages show, and from when on they are complete.
    pub lead: Vec<String>,
    /// The points over time; no rows where no point has a record.
    pub points: TimeLine,
    /// The marks that occur in them, with their meaning.
    pub legend: Vec<TimeMark>,
    /// The points in a table, those that need a lasting cure first.
    pub point_table: Table,
    /// Charts, each with the table of its numbers.
    pub charts: Vec<ChartWithTable>,
    /// The visits and how they ended.
    pub visits: Table,
    /// Records from before this book, or of others.
    pub earlier: Table,
}

/// The points on a scale of time.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct TimeLine {
    /// Beginnings of years, quarters or months.
    pub ticks: Vec<Tick>,
    /// The rows.
    pub rows: Vec<TimeRow>,
}

/// A point over time.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct TimeRow {
    /// Where it is.
    pub place: String,
    /// The row in words, for whoever cannot see it.
    pub alt: String,
    /// Its marks, in order of time.
    pub marks: Vec<TimeMark>,
    /// How many marks stand above one another where records lie close, at least 1.
    pub lanes: usize,
}

/// A mark on a time line.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct TimeMark {
    /// Its shape.
    pub shape: TimeShape,
    /// The letters beside it; empty where the last of several equal marks has them.
    pub letters: String,
    /// What it means; empty on the time line, where the legend tells it.
    pub meaning: String,
    /// Its day on the scale, 0 to 1.
    pub at: f64,
    /// How far down it stands in its row, from 0.
    pub lane: usize,
}

/// Shapes of a time line, each told by its form alone.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum TimeShape {
    /// A leak was found, or is there still: a filled triangle.
    Leak,
    /// It leaks again after a repair: a filled triangle over a line.
    Again,
    /// Repaired and noted as proved: an open ring.
    Proved,
    /// Repaired, not proved: a half-filled ring.
    Repaired,
    /// Suspected: a filled diamond.
    Suspect,
    /// A suspicion was cleared: an open diamond.
    Cleared,
    /// Only a test of its section held: an open square.
    SectionHeld,
    /// Looked at, nothing shown: a dot.
    #[default]
    Nothing,
    /// Not reached: a dash.
    NotReached,
    /// The part was replaced or taken out: a cross.
    Replaced,
}

/// A chart and its numbers.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct ChartWithTable {
    /// What it is of.
    pub title: String,
    /// The chart.
    pub chart: Chart,
    /// Its numbers.
    pub table: Table,
}
