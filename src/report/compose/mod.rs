//! From the validated visit and its figures to the report as plain data.

mod account;
mod coarse;
mod facts;
mod findings;
mod first_page;
mod head;
mod history;
mod history_charts;
mod history_report;
mod history_time_line;
mod leaks_explained;
mod legal;
mod method;
mod points;
mod pressure_tests;
mod readings;
mod record_events;
mod records_pack;
mod scene;
mod schematic;
mod test_fact;
mod tests;
mod vacuum_tests;
mod workings;

pub use history::{HistoryData, history};
pub use history_report::{history_report, site_history};
pub use legal::next_dates;
pub use records_pack::records_pack;
pub use scene::{STANDINGS, Scene};
pub use workings::formulas;

use crate::report::data::{
    Contractor, Document, DocumentDate, Footer, PageWords, Paper, ReportData, Signature,
};
use crate::text::{Accent, Diagnostic, Message};
use crate::vocabulary::book_file;

/// A photograph of the report: path from the root of the book, and its longest side in pixels.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WantedPhotograph {
    /// Path from the root of the book.
    pub path: String,
    /// Whether it stands beside another.
    pub half_width: bool,
}

/// A report before its photographs are read.
#[derive(Clone, Debug)]
pub struct Composed {
    /// The report as plain data.
    pub data: ReportData,
    /// Its photographs, in the order of their numbers.
    pub photographs: Vec<WantedPhotograph>,
}

/// Composes the report of a visit.
pub fn compose(scene: &Scene<'_>, cautions: &[&Diagnostic], draft: bool) -> Composed {
    let mut photographs = Vec::new();
    let findings = findings::findings(scene, &mut photographs);
    let mut data = ReportData {
        document: document(scene, draft),
        contractor: contractor(scene),
        head: head::head(scene),
        outcome: first_page::outcome(scene),
        facts: facts::facts(scene),
        cautions: first_page::cautions(scene, cautions),
        leaking_again: first_page::leaking_again(scene, true),
        still_leaking: first_page::leaking_again(scene, false),
        points: points::points(scene),
        still_open: first_page::still_open(scene),
        next: legal::next(scene),
        waiting: first_page::waiting(scene),
        revision: None,
        safety: method::safety(scene),
        findings,
        schematics: Vec::new(),
        tests: tests::tests(scene),
        account: account::account(scene),
        readings: readings::readings(scene),
        history: account::history(scene),
        legal: legal::rows(scene),
        method: method::method(scene),
        work: method::work(scene),
        advice: method::advice(scene),
        used: method::used(scene),
        signatures: signatures(scene),
        workings: Vec::new(),
    };
    data.schematics = schematic::schematics(scene, &data.points);
    data.workings = workings::workings(scene);
    Composed { data, photographs }
}

fn document(scene: &Scene<'_>, draft: bool) -> Document {
    let words = scene.words();
    let visit = scene.visit;
    let last = visit.last_day();
    let kind = scene.purpose();
    let system = scene.system.name();
    let contractor = scene
        .book
        .note
        .as_ref()
        .and_then(|note| note.contractor.as_ref());
    let paper = contractor.and_then(|c| c.paper).map(|paper| paper.value);
    Document {
        title: format!("{kind}, {system}, {}", words.days(visit.name.date, last))
            .replace('\u{a0}', " "),
        author: scene.contractor_name(),
        language: words.tag().to_owned(),
        words: PageWords(words.page().clone()),
        region: words.region().map(str::to_owned),
        paper: match paper {
            Some(book_file::Paper::Letter) => Paper::Letter,
            _ => Paper::A4,
        },
        accent: contractor
            .and_then(|c| c.accent.as_ref())
            .and_then(|accent| Accent::read(&accent.value))
            .map(|accent| accent.readable().print()),
        draft,
        date: DocumentDate {
            year: last.year(),
            month: u8::try_from(last.month()).unwrap_or(1),
            day: u8::try_from(last.day()).unwrap_or(1),
        },
        footer: Footer {
            kind: scene.word("page-report"),
            date: last.to_string(),
            system: system.to_owned(),
            issue: String::new(),
            fingerprint: scene.fingerprint.clone(),
        },
    }
}

fn contractor(scene: &Scene<'_>) -> Contractor {
    let note = scene
        .book
        .note
        .as_ref()
        .and_then(|note| note.contractor.as_ref());
    let text = |value: &Option<crate::text::Noted<String>>| {
        value.as_ref().map(|noted| noted.value.clone())
    };
    Contractor {
        name: scene.contractor_name(),
        certificate: note
            .and_then(|n| text(&n.certificate))
            .map(|number| scene.say(&Message::of("certificate-of-firm").with("number", number))),
        telephone: note.and_then(|n| text(&n.telephone)),
        address: note.and_then(|n| text(&n.address)),
    }
}

fn signatures(scene: &Scene<'_>) -> Vec<Signature> {
    let mut signatures: Vec<Signature> = scene
        .people()
        .into_iter()
        .map(|id| {
            let person = scene.book.people.get(id);
            let certificate = person.and_then(|p| p.certificate.as_ref());
            let category = person.and_then(|p| p.category.as_ref());
            Signature {
                role: scene.word("signs-for-contractor"),
                name: scene.book.person_name(id),
                certificate: certificate.map(|number| {
                    let message = match category {
                        Some(category) => Message::of("certificate-with-category")
                            .with("category", category.value.as_str()),
                        None => Message::of("certificate-of-person"),
                    };
                    scene.say(&message.with("number", number.value.as_str()))
                }),
                statement: None,
            }
        })
        .collect();
    signatures.push(Signature {
        role: scene.word("signs-for-operator"),
        name: String::new(),
        certificate: None,
        statement: None,
    });
    signatures
}
