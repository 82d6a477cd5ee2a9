//! The report as plain data: what the founder of a report fills in and the template prints.
//!
//! Every number arrives here as text, with its unit, its decimals and its true minus already chosen;
//! the template only sets type. The single exceptions are positions (0 to 1, or percent of a picture)
//! and counts that name a virtual file. Keys are kebab-case in JSON. A part that a visit lacks is
//! `None` or an empty list and then leaves no trace on the page. Line breaks inside a `String` are not
//! meant to occur; longer text is [`Block`]s.

use std::collections::BTreeMap;

use crate::language::Words;
use schemars::JsonSchema;
use serde::Serialize;

pub use crate::report::drawing_data::{
    Axis, Bar, BarFill, Chart, Limit, Pipe, PointState, Schematic, SchematicMark, Series,
    SeriesStroke, Side, Symbol, Tick, Vessel,
};
pub use crate::text::prose::{Block, Inline};

/// The whole report of one visit, in the order of its pages.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct ReportData {
    /// What the document is: title, language, paper, colours, footer.
    pub document: Document,
    /// Who made the visit.
    pub contractor: Contractor,
    /// What was visited, why and when.
    pub head: Head,
    /// The one sentence that a stranger understands, and why it is so.
    pub outcome: Outcome,
    /// At most four facts under the outcome; more are set in a second row.
    pub facts: Vec<Fact>,
    /// Cautions that lead the first page, the gravest first.
    pub cautions: Vec<Caution>,
    /// Points that leak again at the same place.
    pub leaking_again: Vec<Block>,
    /// Points that were found leaking before, were not repaired, and leaked still.
    pub still_leaking: Vec<Block>,
    /// Every point looked at or worked on.
    pub points: Points,
    /// What is still open, and what the customer decided.
    pub still_open: Vec<OpenItem>,
    /// What has to happen next, the earliest first.
    pub next: Vec<NextDate>,
    /// What waiting would cost.
    pub waiting: Vec<Block>,
    /// What an issue after the first changes.
    pub revision: Option<Revision>,
    /// What was checked for safety; the standing cautions are in the template.
    pub safety: Safety,
    /// One entry per heading of the findings.
    pub findings: Vec<Finding>,
    /// The circuits as drawings, those with a numbered point.
    pub schematics: Vec<Schematic>,
    /// Pressure and vacuum tests.
    pub tests: Vec<Test>,
    /// The refrigerant account, by circuit and by cylinder.
    pub account: Part,
    /// Operating readings.
    pub readings: Part,
    /// The points over time and the earlier records.
    pub history: Part,
    /// Where the system stands under the rules in force.
    pub legal: Vec<LegalRow>,
    /// How it was searched, and what that could not show.
    pub method: Method,
    /// Work done and parts used.
    pub work: Part,
    /// Advice given, with the answers.
    pub advice: Vec<Advice>,
    /// People, instruments and cylinders used.
    pub used: Part,
    /// Who signs.
    pub signatures: Vec<Signature>,
    /// The workings of the appendix, in the order of their numbers.
    pub workings: Vec<WorkingEntry>,
}

/// What the document is.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Document {
    /// Title in the metadata: "Leak search and repair, Flake ice machine 1, 18 June 2026".
    pub title: String,
    /// Author in the metadata: the contractor, or the technician.
    pub author: String,
    /// Two or three letters of ISO 639: "en".
    pub language: String,
    /// The words that the template prints by itself, by their names.
    pub words: PageWords,
    /// Two letters of ISO 3166: "GB".
    pub region: Option<String>,
    /// The size of the sheets.
    pub paper: Paper,
    /// Accent colour as "#rrggbb"; none takes the template's own.
    pub accent: Option<String>,
    /// Whether the watermark is laid over every page.
    pub draft: bool,
    /// The date that goes into the metadata; PDF/A-3 demands one.
    pub date: DocumentDate,
    /// What stands at the foot of every page.
    pub footer: Footer,
}

/// The words that a template prints by itself: headings, footer, heads of columns.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(transparent)]
pub struct PageWords(pub BTreeMap<String, String>);

impl Default for PageWords {
    fn default() -> Self {
        Self(Words::english().page().clone())
    }
}

/// A size of sheet.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Paper {
    /// 210 mm by 297 mm.
    #[default]
    A4,
    /// 8.5 in by 11 in.
    Letter,
}

/// A calendar date, validated before it comes here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct DocumentDate {
    /// Year, 1 to 9999.
    pub year: i16,
    /// Month, 1 to 12.
    pub month: u8,
    /// Day, 1 to 31.
    pub day: u8,
}

impl Default for DocumentDate {
    fn default() -> Self {
        Self {
            year: 1970,
            month: 1,
            day: 1,
        }
    }
}

/// The texts at the foot of every page; the page numbers are the template's.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Footer {
    /// What the document is: "Report", "Records".
    pub kind: String,
    /// "2026-06-18".
    pub date: String,
    /// "Flake ice machine 1".
    pub system: String,
    /// "issue B"; empty for none.
    pub issue: String,
    /// Short fingerprint of the notes: "7c1e 40aa 93d2".
    pub fingerprint: String,
}

/// Who made the visit.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Contractor {
    /// Name of the firm.
    pub name: String,
    /// Certificate of the firm, with its word: "certificate PT-0412".
    pub certificate: Option<String>,
    /// Telephone number.
    pub telephone: Option<String>,
    /// Address on one line.
    pub address: Option<String>,
}

/// What was visited, why and when.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Head {
    /// "Leak search and repair".
    pub kind: String,
    /// "18 June 2026" or "18 and 19 June 2026".
    pub date: String,
    /// "Flake ice machine 1".
    pub system: String,
    /// Parts of the line under the system: site, refrigerant, charge, CO₂e, safety class.
    pub line: Vec<String>,
    /// More about the place and the plant, for the method part: key and value.
    pub particulars: Vec<Entry>,
}

/// The outcome of the visit.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Outcome {
    /// One sentence, or two short ones.
    pub sentence: String,
    /// Two or three sentences that say why.
    pub because: Vec<String>,
}

/// A fact of the first page.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Fact {
    /// "Repaired joint".
    pub label: String,
    /// "Re-checked, no alarm".
    pub value: String,
    /// "electronic, proved on 5 g/yr".
    pub qualifier: Option<String>,
    /// Id of the working behind the value.
    pub working: Option<String>,
}

/// A caution for the reader of the report.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Caution {
    /// Name in kebab-case: "outcome-beyond-evidence".
    pub name: String,
    /// What is wrong, in a sentence.
    pub sentence: String,
    /// Why it matters, or what would put it right.
    pub because: Option<String>,
}

/// The points, as one table.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Points {
    /// Unit of the sizes, for the head of the column: "g/yr"; none if nothing is sized.
    pub size_unit: Option<String>,
    /// One row per point.
    pub rows: Vec<PointRow>,
}

/// One point of the first page.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct PointRow {
    /// Number in the report, the same as the finding's: "1".
    pub number: String,
    /// Where it is, in words.
    pub place: String,
    /// Shape of the state.
    pub state: PointState,
    /// Words of the state: "holding, 197 days".
    pub state_words: String,
    /// Evidence grade: "confirmed"; empty for none.
    pub evidence: String,
    /// "30 ± 10", "not sized", or empty.
    pub size: String,
}

/// Something that is still open.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct OpenItem {
    /// What is open, in a sentence.
    pub what: String,
    /// What the customer decided about it, by whom and when.
    pub decided: Option<String>,
}

/// Something that has to happen.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct NextDate {
    /// "Re-check the repaired joint".
    pub what: String,
    /// "by 18 July 2026".
    pub by: String,
    /// Whether the day had passed at this visit.
    pub overdue: bool,
    /// "not before 19 June, 16:10".
    pub not_before: Option<String>,
    /// The rule or the advice it comes from.
    pub because: Option<String>,
}

/// What an issue after the first changes.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Revision {
    /// "B".
    pub issue: String,
    /// "issue A of 18 June 2026".
    pub replaces: String,
    /// The changes, one sentence each.
    pub changes: Vec<String>,
}

/// A key and a value of a narrow list of facts.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Entry {
    /// "Cause".
    pub key: String,
    /// "nut backed off, line unclipped for 1.4 m".
    pub value: String,
    /// Id of the working behind the value.
    pub working: Option<String>,
}

/// What was checked for safety.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Safety {
    /// What was checked on the day, each with its time and its reading.
    pub checked: Vec<Entry>,
    /// The room against its limits, in prose.
    pub room: Vec<Block>,
    /// Cautions that belong to this refrigerant or plant, beyond the standing ones.
    pub cautions: Vec<String>,
}

/// A finding.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Finding {
    /// Number in the report: "1".
    pub number: String,
    /// Heading of the finding.
    pub heading: String,
    /// Id of the point: "evap-1/txv-inlet".
    pub point: Option<String>,
    /// Shape of its state.
    pub state: PointState,
    /// Words of its state.
    pub state_words: String,
    /// Kind, evidence grade, size, cause, repairs, proofs in order.
    pub facts: Vec<Entry>,
    /// Evidence, in order of time.
    pub evidence: Vec<Evidence>,
    /// The writer's prose for the customer.
    pub prose: Vec<Block>,
    /// Photographs.
    pub pictures: Vec<Picture>,
    /// Cautions that concern this finding.
    pub cautions: Vec<Caution>,
}

/// A line of evidence.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Evidence {
    /// "09:10" or "day 2, 09:10".
    pub time: String,
    /// "electronic, ld-2".
    pub method: String,
    /// "alarm; clean air, alarm again".
    pub result: String,
}

/// One photograph, or two that belong side by side.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "t", rename_all = "kebab-case")]
pub enum Picture {
    /// A photograph by itself.
    One {
        /// The photograph.
        photograph: Photo,
    },
    /// The same place before and after the work.
    Pair {
        /// Before the work.
        before: Photo,
        /// After the work.
        after: Photo,
    },
}

/// A photograph on the page.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Photo {
    /// Place in the list of photographs given to the typesetter, from 1.
    pub number: usize,
    /// Caption; empty for none.
    pub caption: String,
    /// Alternative text; where empty the caption serves.
    pub alt: String,
    /// Rings drawn on the photograph.
    pub rings: Vec<Ring>,
}

/// A ring on a photograph.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Ring {
    /// From the left, in percent of the width, 0 to 100.
    pub x: f64,
    /// From the top, in percent of the height, 0 to 100.
    pub y: f64,
    /// Number beside the ring; empty for none.
    pub label: String,
}

/// A pressure or vacuum test.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Test {
    /// Id in the notes: "p1".
    pub id: String,
    /// "Pressure test of liquid line 2".
    pub heading: String,
    /// What the test showed, in a sentence that never says "no leak".
    pub verdict: String,
    /// Gas, gauge, start, end, duration, limits.
    pub facts: Vec<Entry>,
    /// Results, each with its uncertainty: smallest leak shown, in service.
    pub results: Vec<Entry>,
    /// The course of the test.
    pub chart: Option<Chart>,
    /// More to say, in prose.
    pub prose: Vec<Block>,
    /// What makes its result uncertain.
    pub tables: Vec<Table>,
    /// Cautions that concern this test.
    pub cautions: Vec<Caution>,
}

/// A part of the report made of prose, facts and tables.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Part {
    /// Prose before the tables.
    pub lead: Vec<Block>,
    /// Facts before the tables.
    pub facts: Vec<Entry>,
    /// The tables.
    pub tables: Vec<Table>,
    /// Prose after the tables, small.
    pub notes: Vec<Block>,
}

/// A table with a repeated head.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Table {
    /// "Circuit a, R-449A"; also what a screen reader announces.
    pub title: String,
    /// The columns.
    pub columns: Vec<Column>,
    /// The rows; each has as many cells as there are columns.
    pub rows: Vec<Row>,
    /// A line under the table, small; empty for none.
    pub note: String,
}

/// A column of a table.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Column {
    /// Head, with the unit: "Mass, kg".
    pub head: String,
    /// How its cells are set.
    pub kind: ColumnKind,
}

/// How the cells of a column are set.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ColumnKind {
    /// Text that takes what room is left and breaks over lines.
    #[default]
    Text,
    /// Short words as wide as the widest: a date, a word of state.
    Short,
    /// Numbers aligned on their decimals.
    Number,
    /// A name of ours or of the notes, which may break anywhere.
    Name,
}

/// A row of a table.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Row {
    /// The cells, from the left.
    pub cells: Vec<String>,
    /// Whether it sums up the rows before it.
    pub total: bool,
}

/// Where the system stands under one rule.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct LegalRow {
    /// The rule: "Regulation (EU) 2024/573, Article 5".
    pub rule: String,
    /// What it means for this system today.
    pub statement: String,
    /// Whether the rule was only remembered and has to be verified.
    pub verify: bool,
}

/// How it was searched, and what that could not show.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Method {
    /// Prose before the tables.
    pub lead: Vec<Block>,
    /// Searches: areas, method, instrument, time, conditions.
    pub searches: Vec<Table>,
    /// What was not reached, and why.
    pub not_reached: Vec<NotReached>,
    /// What the methods could not show, one sentence each.
    pub limits: Vec<String>,
    /// Cautions about the method that do not lead the first page.
    pub cautions: Vec<Caution>,
}

/// A place that was not reached.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct NotReached {
    /// The place, in words.
    pub place: String,
    /// Why.
    pub reason: String,
}

/// Advice given.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Advice {
    /// The advice, in a sentence.
    pub what: String,
    /// To whom, and when.
    pub to: Option<String>,
    /// The answer.
    pub answer: Option<String>,
}

/// Who signs.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct Signature {
    /// "For the contractor".
    pub role: String,
    /// Name in print; empty leaves a line for it.
    pub name: String,
    /// Certificate and category.
    pub certificate: Option<String>,
    /// What is signed for.
    pub statement: Option<String>,
}

/// A working of the appendix.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct WorkingEntry {
    /// Number in print: "W7".
    pub number: String,
    /// Id, by which entries and inputs refer to it, and by which `explain` finds it.
    pub id: String,
    /// What it belongs to, for the heading of its group: "Pressure test p1".
    pub group: String,
    /// "Loss rate of circuit a, annualizing".
    pub title: String,
    /// Name of the method.
    pub method: String,
    /// Id of the formula in the formulas file; none prints the text instead.
    pub formula: Option<String>,
    /// The formula as text, read aloud as its alternative text too.
    pub formula_text: String,
    /// What went in.
    pub inputs: Vec<WorkingInput>,
    /// The result, with its unit.
    pub result: String,
    /// Its uncertainty: "± 10 g/yr (k = 2)".
    pub uncertainty: Option<String>,
    /// Where the method is published.
    pub source: String,
    /// What else the reader has to know.
    pub notes: Vec<String>,
}

/// What went into a working.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct WorkingInput {
    /// Symbol in the formula: "p₁".
    pub symbol: String,
    /// The value with its unit.
    pub value: String,
    /// Where it comes from: "readings.toml:14", "table of R-449A", "assumed: ...".
    pub origin: String,
    /// Id of the working it is the result of.
    pub working: Option<String>,
}
