//! The contract of the templates: the JSON Schemas of `report.json` are those that are checked in.

use rimebook::report::data::ReportData;
use rimebook::report::history_data::HistoryReport;
use rimebook::report::records_data::RecordsPack;
use schemars::{Schema, schema_for};
use std::fs;
use std::path::Path;

fn compare(name: &str, schema: &Schema) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("templates/{name}.schema.json"));
    let text = serde_json::to_string_pretty(schema).unwrap() + "\n";
    if std::env::var_os("RIMEBOOK_REFRESH").is_some() {
        fs::write(&path, &text).unwrap();
    }
    let expected = fs::read_to_string(&path).unwrap_or_default();
    assert!(
        expected == text,
        "templates/{name}.schema.json is not that of the types in src/report; RIMEBOOK_REFRESH=1 writes it anew"
    );
}

#[test]
fn the_schemas_of_the_documents_are_those_that_are_checked_in() {
    compare("report", &schema_for!(ReportData));
    compare("history", &schema_for!(HistoryReport));
    compare("records", &schema_for!(RecordsPack));
}
