//! The first page in each language, as text that people can read and review.
//!
//! The cases `german-page`, `french-page`, `spanish-page` and `american-page` hold in `page.txt` what
//! the first page, the findings and the mail of their last visit say. `RIMEBOOK_REFRESH=1` writes them
//! anew; the git diff is the review.

use crate::cases::difference;
use crate::words::composed;
use rimebook::language::Words;
use rimebook::report::mail::{Envelope, summary};
use serde_json::Value;
use std::fmt::Write;
use std::path::Path;

/// Parts of the report that these pages hold, in their order.
const PARTS: [&str; 11] = [
    "document/title",
    "head",
    "outcome",
    "facts",
    "cautions",
    "leaking-again",
    "points",
    "still-open",
    "next",
    "waiting",
    "findings",
];

/// Every text below a value, a line each, with where it stands.
fn lines(value: &Value, at: &str, out: &mut String) {
    match value {
        Value::String(text) if !text.is_empty() => {
            let _ = writeln!(out, "{at}: {}", text.replace('\u{a0}', " "));
        }
        Value::Array(list) => {
            for (index, one) in list.iter().enumerate() {
                lines(one, &format!("{at} {}", index + 1), out);
            }
        }
        Value::Object(map) => {
            for (key, one) in map {
                lines(one, &format!("{at} {key}"), out);
            }
        }
        _ => {}
    }
}

/// The first page, the findings and the mail of the last visit of a case's first system.
fn page(case: &Path) -> String {
    let (loaded, _) = rimebook::command::load(&case.join("book")).unwrap();
    let site = &loaded.book.sites[0];
    let system = &site.systems[0];
    let (_, data) = composed(&loaded, site, system, system.visits.len() - 1);
    let value = serde_json::to_value(&data).unwrap();
    let mut out = String::new();
    for part in PARTS {
        if let Some(value) = value.pointer(&format!("/{part}")) {
            lines(value, part, &mut out);
        }
    }
    let envelope = Envelope {
        from: None,
        to: None,
        date: 0,
        ident: String::new(),
        digest: String::new(),
        file: String::new(),
        telephone: None,
        words: Words::of(site.language),
    };
    out + "\nThe mail:\n" + &summary(&data, &envelope).replace("\r\n", "\n")
}

#[test]
fn the_first_page_speaks_the_language_of_its_site() {
    let cases = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases");
    let told: String = ["german", "french", "spanish", "american"]
        .map(|language| {
            let case = cases.join(format!("{language}-page"));
            let file = case.join("page.txt");
            difference(&file, &format!("{language}-page/page.txt"), &page(&case))
        })
        .concat();
    assert!(told.is_empty(), "\n{told}");
}
