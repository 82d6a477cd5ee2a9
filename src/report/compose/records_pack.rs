//! The records of a system composed for an inspector: its plate, each rule with its fields, and the
//! events in order of time.

use crate::quantity::print;
use crate::report::compose::legal;
use crate::report::compose::record_events::events;
use crate::report::compose::scene::Scene;
use crate::report::compose::{contractor, document};
use crate::report::data::{DocumentDate, Entry, Head};
use crate::report::printed;
use crate::report::records_data::{RecordField, RecordGroup, RecordsPack, RuleRecords};
use crate::ruleset::{Present, RecordRow, rules_of};
use crate::text::{Noted, Sources};
use crate::vocabulary::Word;
use jiff::civil::Date;

/// Composes the records pack of a system as at a day, of the rows that its rules ask for.
pub fn records_pack(scene: &Scene<'_>, rows: &[RecordRow], on: Date) -> RecordsPack {
    let system = scene.system.name();
    let as_at = printed::day(on);
    let mut document = document(scene, false);
    document.title = format!("Records of {system}, as at {as_at}").replace('\u{a0}', " ");
    document.date = DocumentDate {
        year: on.year().max(1),
        month: u8::try_from(on.month()).unwrap_or(1),
        day: u8::try_from(on.day()).unwrap_or(1),
    };
    document.footer.date = on.to_string();
    RecordsPack {
        document,
        contractor: contractor(scene),
        head: Head {
            kind: "Records".to_owned(),
            date: format!("as at {as_at}"),
            system: system.to_owned(),
            line: vec![scene.site.name().to_owned()],
            particulars: Vec::new(),
        },
        lead: vec![lead(scene, rows, on)],
        nameplate: nameplate(scene),
        legal: legal::rows(scene),
        rules: rules(scene, rows),
        events: events(scene),
        notes: vec![
            "A field that is present was written down; that it is true and enough is for its writer and the inspector to say.".to_owned(),
            "Files are named from the root of the book, each with its line. The notes are attached to this document as data, private parts left out.".to_owned(),
        ],
        ..RecordsPack::default()
    }
}

fn is_missing(row: &RecordRow) -> bool {
    matches!(row.present, Present::Missing { .. })
}

fn lead(scene: &Scene<'_>, rows: &[RecordRow], on: Date) -> String {
    let missing = rows.iter().filter(|row| is_missing(row)).count();
    let day = printed::day(on);
    let mut coverage = scene
        .figures
        .circuits
        .iter()
        .flat_map(|circuit| &circuit.coverage);
    let undecided = coverage.any(|(_, coverage)| coverage.undecided);
    if rules_of(scene.site, on).is_empty() {
        format!(
            "No rule set is named as in force at this site on {day}, so that no field is asked for. What the notes tell stands below all the same."
        )
    } else if rows.is_empty() && undecided {
        format!(
            "The rules in force at this site on {day} do not decide whether they cover this system, so that no field is asked for here. What the notes tell stands below all the same."
        )
    } else if rows.is_empty() {
        format!(
            "No rule set in force at this site on {day} covers this system, so that no field is asked for. What the notes tell stands below all the same."
        )
    } else if missing == 0 {
        format!("Every field that the rules in force on {day} ask for is on record.")
    } else {
        format!(
            "Missing: {missing} of the {} fields that the rules in force on {day} ask for.",
            rows.len()
        )
    }
}

fn nameplate(scene: &Scene<'_>) -> Vec<Entry> {
    let text = |noted: &Option<Noted<String>>| noted.as_ref().map(|noted| noted.value.clone());
    let site = scene.site.note.as_ref();
    let note = scene.system.note.as_ref();
    let yes = |noted: Option<Noted<bool>>| {
        noted.map(|noted| if noted.value { "yes" } else { "no" }.to_owned())
    };
    let mut entries = vec![
        ("Operator", site.and_then(|site| text(&site.operator))),
        ("Address", site.and_then(|site| text(&site.address))),
        ("Telephone", site.and_then(|site| text(&site.telephone))),
        ("Serial number", note.and_then(|note| text(&note.serial))),
        (
            "Year of making",
            note.and_then(|note| Some(note.made?.value.to_string())),
        ),
        (
            "In service since",
            note.and_then(|note| Some(printed::day(note.installed?.value))),
        ),
        (
            "Category",
            note.and_then(|note| Some(note.category?.value.word().to_owned())),
        ),
        (
            "Labelled as hermetically sealed",
            note.and_then(|note| yes(note.hermetic_label)),
        ),
        (
            "Leakage detection system",
            note.and_then(|note| yes(note.leak_detection_system)),
        ),
    ];
    let mut list: Vec<Entry> = entries
        .drain(..)
        .filter_map(|(key, value)| Some(entry(key.to_owned(), value?)))
        .collect();
    for circuit in &scene.figures.circuits {
        let name = printed::capital(&scene.system.circuit_name(circuit.circuit));
        if let Some(plate) = charge(scene, circuit.circuit) {
            list.push(entry(name, plate));
        }
    }
    list
}

fn entry(key: String, value: String) -> Entry {
    Entry {
        key,
        value,
        working: None,
    }
}

/// Refrigerant, full charge and CO₂ equivalent of a circuit.
fn charge(scene: &Scene<'_>, circuit: usize) -> Option<String> {
    let entry = scene.system.in_force(circuit, scene.visit.last_day())?;
    let refrigerant = entry.refrigerant.map(|gas| gas.designation.to_owned());
    let full = entry.note.full_charge.as_ref();
    let full = full.map(|mass| print(&mass.value, scene.site.units).to_string());
    let figures = scene
        .figures
        .circuits
        .iter()
        .find(|known| known.circuit == circuit);
    let co2e = figures.and_then(|figures| figures.charge_co2e.as_ref());
    let co2e = co2e.map(|figure| scene.tonnes(figure.value.number()));
    let by = entry
        .note
        .full_charge_by
        .as_ref()
        .map(|by| by.value.clone());
    let parts: Vec<String> = [refrigerant, full, co2e, by]
        .into_iter()
        .flatten()
        .collect();
    (!parts.is_empty()).then(|| parts.join(", "))
}

fn rules(scene: &Scene<'_>, rows: &[RecordRow]) -> Vec<RuleRecords> {
    let of_rule = rows.chunk_by(|one, next| one.rules.word == next.rules.word);
    of_rule.filter_map(|rows| rule(scene, rows)).collect()
}

fn rule(scene: &Scene<'_>, rows: &[RecordRow]) -> Option<RuleRecords> {
    let rules = rows.first()?.rules;
    let missing = rows.iter().filter(|row| is_missing(row)).count();
    let kept = &rules.records;
    Some(RuleRecords {
        title: rules.title.to_owned(),
        lead: vec![
            format!("Fields asked for: {}; missing: {missing}.", rows.len()),
            format!(
                "Records are kept for at least {} years ({}).",
                kept.value, kept.source
            ),
        ],
        verify: rules.verify,
        groups: rows
            .chunk_by(|one, next| one.visit == next.visit)
            .map(|rows| RecordGroup {
                title: group_title(scene, rows.first().and_then(|row| row.visit)),
                fields: rows.iter().map(|row| field(row, scene.sources)).collect(),
            })
            .collect(),
    })
}

fn group_title(scene: &Scene<'_>, visit: Option<usize>) -> String {
    let visit = visit.and_then(|number| scene.system.visits.get(number));
    let Some(visit) = visit else {
        return "The system".to_owned();
    };
    let days = printed::days(visit.name.date, visit.last_day());
    match visit.note.as_ref().and_then(|note| note.purpose) {
        Some(purpose) => format!("{days}, {}", purpose.value.word()),
        None => days,
    }
}

fn field(row: &RecordRow, sources: &Sources) -> RecordField {
    let (value, place) = match &row.present {
        Present::Here { value, span } => {
            let written = || {
                let text = sources.text(*span).trim_matches('"');
                text.split_whitespace().collect::<Vec<_>>().join(" ")
            };
            (value.clone().unwrap_or_else(written), sources.place(*span))
        }
        Present::Missing { file, .. } => (String::new(), file.clone()),
    };
    RecordField {
        asked: printed::capital(row.subject.title()),
        source: row.source.to_owned(),
        about: row.about.clone(),
        missing: is_missing(row),
        value,
        place,
    }
}
