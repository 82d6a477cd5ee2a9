//! The history report as plain data: what the template `history.typ` prints.

use crate::report::data::{Chart, Contractor, Document, Head, Revision, Table, WorkingEntry};
use schemars::JsonSchema;
use serde::Serialize;

/// A system over the years, in the order of its pages.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct HistoryReport {
    /// What the document is.
    pub document: Document,
    /// Who made it.
    pub contractor: Contractor,
    /// Which system, as at which day.
    pub head: Head,
    /// Always none: a history is not issued.
    pub revision: Option<Revision>,
    /// Always empty: the workings stand in the reports of the visits.
    pub workings: Vec<WorkingEntry>,
    /// What the pages show, and from when on they are complete.
    pub lead: Vec<String>,
    /// The points over time, in as many parts as the sheet asks for.
    pub points: Vec<TimeLine>,
    /// The marks that occur in them, with their meaning.
    pub legend: Vec<TimeMark>,
    /// The points in a table, those that need a lasting cure first.
    pub point_table: Table,
    /// Charts, each with the table of its numbers.
    pub charts: Vec<ChartWithTable>,
    /// The visits and how they ended.
    pub visits: Table,
    /// What the pages do not show.
    pub notes: Vec<String>,
}

/// The points over some days with a record: a row for each point, a column for each day.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct TimeLine {
    /// The days, in order; not to scale.
    pub days: Vec<String>,
    /// The rows.
    pub rows: Vec<TimeRow>,
}

/// A point over time.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct TimeRow {
    /// Where it is.
    pub place: String,
    /// For each day its marks, in order of time; most are empty.
    pub cells: Vec<Vec<TimeMark>>,
}

/// A mark on a time line.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct TimeMark {
    /// Its shape.
    pub shape: TimeShape,
    /// The letters beside it.
    pub letters: String,
    /// What it means; empty beside the time line, where the legend tells it.
    pub meaning: String,
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
