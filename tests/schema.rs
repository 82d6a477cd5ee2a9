//! The contract of the templates: the JSON Schema of `report.json` is the one that is checked in.

use rimebook::report::data::ReportData;
use std::fs;
use std::path::Path;

#[test]
fn the_schema_of_the_report_is_the_one_that_is_checked_in() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("templates/report.schema.json");
    let schema = schemars::schema_for!(ReportData);
    let text = serde_json::to_string_pretty(&schema).unwrap() + "\n";
    if std::env::var_os("RIMEBOOK_REFRESH").is_some() {
        fs::write(&path, &text).unwrap();
    }
    let expected = fs::read_to_string(&path).unwrap_or_default();
    assert!(
        expected == text,
        "templates/report.schema.json is not that of src/report/data.rs; RIMEBOOK_REFRESH=1 writes it anew"
    );
}
