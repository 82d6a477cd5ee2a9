//! The records of a system composed for an inspector: its plate, each rule with its fields, and the
//! events in order of time.

use crate::quantity::print_mass;
use crate::report::compose::legal;
use crate::report::compose::record_events::events;
use crate::report::compose::scene::Scene;
use crate::report::compose::{contractor, document};
use crate::report::data::{DocumentDate, Entry, Head};
use crate::report::records_data::{RecordField, RecordGroup, RecordsPack, RuleRecords};
use crate::ruleset::{Present, RecordRow, rules_of};
use crate::text::{Message, Noted, capital};
use crate::vocabulary::Word;
use jiff::civil::Date;

/// Composes the records pack of a system as at a day, of the rows that its rules ask for.
pub fn records_pack(scene: &Scene<'_>, rows: &[RecordRow], on: Date) -> RecordsPack {
    let system = scene.system.name();
    let mut document = document(scene, false);
    let title = Message::of("records-title")
        .with("system", system)
        .with("day", on);
    document.title = scene.say(&title).replace('\u{a0}', " ");
    document.date = DocumentDate {
        year: on.year().max(1),
        month: u8::try_from(on.month()).unwrap_or(1),
        day: u8::try_from(on.day()).unwrap_or(1),
    };
    document.footer.kind = scene.word("records-kind");
    document.footer.date = scene.words().day(on);
    RecordsPack {
        document,
        contractor: contractor(scene),
        head: Head {
            kind: scene.word("records-kind"),
            date: scene.say(&Message::of("as-at").with("day", on)),
            system: system.to_owned(),
            line: vec![scene.site.name().to_owned()],
            particulars: Vec::new(),
        },
        lead: vec![lead(scene, rows, on)],
        nameplate: nameplate(scene),
        legal: legal::rows(scene),
        rules: rules(scene, rows),
        events: events(scene),
        notes: vec![scene.word("records-present"), scene.word("records-files")],
        ..RecordsPack::default()
    }
}

fn is_missing(row: &RecordRow) -> bool {
    matches!(row.present, Present::Missing { .. })
}

fn lead(scene: &Scene<'_>, rows: &[RecordRow], on: Date) -> String {
    let missing = rows.iter().filter(|row| is_missing(row)).count();
    let mut coverage = scene
        .figures
        .circuits
        .iter()
        .flat_map(|circuit| &circuit.coverage);
    let undecided = coverage.any(|(_, coverage)| coverage.undecided);
    let id = if rules_of(scene.site, on).is_empty() {
        "records-none-in-force"
    } else if rows.is_empty() && undecided {
        "records-undecided"
    } else if rows.is_empty() {
        "records-not-covered"
    } else if missing == 0 {
        "records-all-there"
    } else {
        "records-missing"
    };
    let message = Message::of(id)
        .with("day", on)
        .with("missing", missing)
        .with("fields", rows.len());
    scene.say(&message)
}

fn nameplate(scene: &Scene<'_>) -> Vec<Entry> {
    let text = |noted: &Option<Noted<String>>| noted.as_ref().map(|noted| noted.value.clone());
    let site = scene.site.note.as_ref();
    let note = scene.system.note.as_ref();
    let yes = |noted: Option<Noted<bool>>| {
        noted.map(|noted| {
            scene.word(if noted.value {
                "answer-yes"
            } else {
                "answer-no"
            })
        })
    };
    let mut entries = vec![
        ("plant-operator", site.and_then(|site| text(&site.operator))),
        ("plant-address", site.and_then(|site| text(&site.address))),
        (
            "plant-telephone",
            site.and_then(|site| text(&site.telephone)),
        ),
        (
            "plant-serial-number",
            note.and_then(|note| text(&note.serial)),
        ),
        (
            "plant-year-of-making",
            note.and_then(|note| Some(note.made?.value.to_string())),
        ),
        (
            "plant-in-service-since",
            note.and_then(|note| Some(scene.words().day(note.installed?.value))),
        ),
        (
            "plant-category",
            note.and_then(|note| Some(scene.words().phrase(note.category?.value.word()))),
        ),
        (
            "plant-hermetic-label",
            note.and_then(|note| yes(note.hermetic_label)),
        ),
        (
            "plant-detection-system",
            note.and_then(|note| yes(note.leak_detection_system)),
        ),
    ];
    let mut list: Vec<Entry> = entries
        .drain(..)
        .filter_map(|(key, value)| Some(entry(scene.word(key), value?)))
        .collect();
    for circuit in &scene.figures.circuits {
        let choice = scene.system.circuit_choice(circuit.circuit);
        let name = scene.say(&Message::of("circuit-named").with("circuit", choice));
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
    let full = full.map(|mass| scene.figure(print_mass(&mass.value, scene.site.units)));
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
        title: scene.words().phrase(rules.title),
        lead: vec![
            scene.say(
                &Message::of("records-fields")
                    .with("fields", rows.len())
                    .with("missing", missing),
            ),
            scene.say(
                &Message::of("records-kept")
                    .with("years", i64::from(kept.value))
                    .phrase("source", kept.source),
            ),
        ],
        verify: rules.verify,
        groups: rows
            .chunk_by(|one, next| one.visit == next.visit)
            .map(|rows| RecordGroup {
                title: group_title(scene, rows.first().and_then(|row| row.visit)),
                fields: rows.iter().map(|row| field(scene, row)).collect(),
            })
            .collect(),
    })
}

fn group_title(scene: &Scene<'_>, visit: Option<usize>) -> String {
    let visit = visit.and_then(|number| scene.system.visits.get(number));
    let Some(visit) = visit else {
        return scene.word("records-of-system");
    };
    let days = scene.words().days(visit.name.date, visit.last_day());
    match visit.note.as_ref().and_then(|note| note.purpose) {
        Some(purpose) => scene.say(
            &Message::of("records-of-visit")
                .with("days", days)
                .phrase("purpose", purpose.value.word()),
        ),
        None => days,
    }
}

fn field(scene: &Scene<'_>, row: &RecordRow) -> RecordField {
    let (sources, words) = (scene.sources, scene.words());
    let (value, place) = match &row.present {
        Present::Here { value, span } => {
            let written = || {
                let text = sources.text(*span).trim_matches('"');
                text.split_whitespace().collect::<Vec<_>>().join(" ")
            };
            let said = value.as_ref().map(|value| words.text(value));
            (said.unwrap_or_else(written), sources.place(*span))
        }
        Present::Missing { file, .. } => (String::new(), file.clone()),
    };
    RecordField {
        asked: capital(&words.phrase(row.subject.title())),
        source: words.phrase(row.source),
        about: words.text(&row.about),
        missing: is_missing(row),
        value,
        place,
    }
}
