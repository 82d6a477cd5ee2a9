//! The records pack as plain data: what the template `records.typ` prints for an inspector.

use crate::report::data::{
    Contractor, Document, Entry, Head, LegalRow, Revision, Table, WorkingEntry,
};
use schemars::JsonSchema;
use serde::Serialize;

/// What has to be on record of a system by the rules in force, and what happened to it.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct RecordsPack {
    /// What the document is.
    pub document: Document,
    /// Who made it.
    pub contractor: Contractor,
    /// Which system, as at which day.
    pub head: Head,
    /// Always none: a records pack is not issued.
    pub revision: Option<Revision>,
    /// Always empty: the workings stand in the reports of the visits.
    pub workings: Vec<WorkingEntry>,
    /// How much is on record and how much is missing, or that no rule asks for anything.
    pub lead: Vec<String>,
    /// The plate and the place of the system.
    pub nameplate: Vec<Entry>,
    /// Which rules cover it, and why.
    pub legal: Vec<LegalRow>,
    /// The rules that ask for something, each with its fields.
    pub rules: Vec<RuleRecords>,
    /// Everything that happened, in order of time.
    pub events: Table,
    /// What the pages do not show.
    pub notes: Vec<String>,
}

/// What one rule wants on record.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct RuleRecords {
    /// The rule.
    pub title: String,
    /// How many fields are there and missing, and how long they are kept.
    pub lead: Vec<String>,
    /// Whether the rule was only remembered in part and has to be verified.
    pub verify: bool,
    /// Fields of the system, then those of each visit.
    pub groups: Vec<RecordGroup>,
}

/// Fields that belong together.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct RecordGroup {
    /// The system, or a visit.
    pub title: String,
    /// The fields.
    pub fields: Vec<RecordField>,
}

/// A field of the record.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub struct RecordField {
    /// What is asked for.
    pub asked: String,
    /// The citation that asks for it.
    pub source: String,
    /// What it is about, such as a circuit, a cylinder or a point; empty for none.
    pub about: String,
    /// Whether it is missing.
    pub missing: bool,
    /// What is on record; empty where it is missing.
    pub value: String,
    /// File and line that hold it, or the file where it belongs.
    pub place: String,
}
