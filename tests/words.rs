//! The fixed sentences in four languages: each there, each used, none left in English on the page.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use fluent::FluentResource;
use rimebook::caution::{ALL, find};
use rimebook::command::Loaded;
use rimebook::history::{LEGEND, OF_ITS_SECTION, OTHERS, State};
use rimebook::job::{Site, System};
use rimebook::language::{FILES, Words, phrase_id};
use rimebook::report::compose::{
    STANDINGS, Scene, compose, history_report, records_pack, site_history,
};
use rimebook::report::data::ReportData;
use rimebook::report::visit_figures::VisitFigures;
use rimebook::ruleset::{RULE_SETS, records};
use rimebook::text::{Diagnostic, Severity};
use rimebook::vocabulary::Word;
use rimebook::vocabulary::book_file::{CylinderHappening, GasOrigin};
use rimebook::vocabulary::finding_field::{FindingKind, FindingState};
use rimebook::vocabulary::method_word::MethodWord;
use rimebook::vocabulary::readings_file::{Plant, PressureTestPurpose, TestGas};
use rimebook::vocabulary::refrigerant_file::{
    ChargedTo, Destination, MassHow, MovementKind, MovementWhy,
};
use rimebook::vocabulary::site_file::{Language, LeakRateMethodWord, RoomKind};
use rimebook::vocabulary::system_file::{Category, EarlierHappening, Status};
use rimebook::vocabulary::visit_file::{Extension, LeftAs, OutcomeWord, Purpose};
use rimebook::working::evidence::Grade;
use rimebook::working::outcome::{LOOKED_AT, NO_PROOF, NO_REPAIR, OutcomeKind, shown};
use serde_json::Value;

/// Ids of a language's messages, each with the names that it uses.
fn messages(language: &str) -> BTreeMap<String, BTreeSet<String>> {
    let (_, files) = FILES.iter().find(|(word, _)| *word == language).unwrap();
    let mut all = BTreeMap::new();
    for (file, text) in *files {
        let mut id = String::new();
        for line in text.lines().filter(|line| !line.starts_with('#')) {
            if let Some((name, _)) = line
                .split_once(" =")
                .filter(|_| line.starts_with(|c: char| c.is_ascii_lowercase()))
            {
                name.clone_into(&mut id);
                let before = all.insert(id.clone(), BTreeSet::new());
                assert!(before.is_none(), "{language}/{file}.ftl has {id} twice");
            }
            let mut rest = line;
            while let Some((_, after)) = rest.split_once('$') {
                let end = after
                    .find(|c: char| !c.is_ascii_alphanumeric() && c != '-' && c != '_')
                    .unwrap_or(after.len());
                all.get_mut(&id).unwrap().insert(after[..end].to_owned());
                rest = &after[end..];
            }
        }
    }
    all
}

#[test]
fn every_message_file_reads_whole() {
    for (language, files) in FILES {
        for (name, text) in files {
            let read = FluentResource::try_new((*text).to_owned());
            assert!(read.is_ok(), "{language}/{name}.ftl: {:?}", read.err());
        }
    }
}

#[test]
fn every_message_stands_in_every_language_and_uses_what_english_uses() {
    let english = messages("en");
    let mut wrong = Vec::new();
    for language in ["de", "fr", "es"] {
        let other = messages(language);
        for (id, names) in &english {
            match other.get(id) {
                None => wrong.push(format!("{language}: {id} is missing")),
                Some(used) if !used.is_subset(names) => {
                    wrong.push(format!("{language}: {id} uses {used:?}, English {names:?}"));
                }
                Some(_) => {}
            }
        }
        let more = other
            .keys()
            .filter(|id| !english.contains_key(*id) && !id.starts_with("phrase-"));
        wrong.extend(more.map(|id| format!("{language}: {id} is not in English")));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// All source text below a folder, with its unit tests.
fn source(folder: &str, ending: &str) -> String {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    walkdir::WalkDir::new(root)
        .sort_by_file_name()
        .into_iter()
        .map(Result::unwrap)
        .filter(|entry| entry.path().to_string_lossy().ends_with(ending))
        .map(|entry| std::fs::read_to_string(entry.path()).unwrap())
        .collect()
}

#[test]
fn every_message_is_asked_for_and_every_one_asked_for_is_there() {
    let english = messages("en");
    let (rust, typst) = (source("src", ".rs"), source("templates", ".typ"));
    let unused: Vec<&String> = english
        .keys()
        .filter(|id| match id.strip_prefix("page-") {
            Some(name) if name.starts_with("standing-") => false,
            Some(name) => !typst.contains(&format!("word.{name}")),
            None => !rust.contains(&format!("\"{id}\"")),
        })
        .collect();
    assert!(unused.is_empty(), "nobody asks for {unused:?}");
    for call in ["Message::of(\"", ".word(\""] {
        let asked = rust.split(call).skip(1);
        let missing: Vec<&str> = asked
            .filter_map(|rest| rest.split('"').next())
            .filter(|id| !english.contains_key(*id))
            .collect();
        assert!(missing.is_empty(), "no message {missing:?}");
    }
}

/// Every string of a document, with where it stands; what only names something else is left out.
fn strings(value: &Value, at: &str, out: &mut Vec<(String, String)>) {
    const NAMES: [&str; 17] = [
        "id",
        "working",
        "formula",
        "formula-text",
        "fingerprint",
        "language",
        "region",
        "words",
        "name",
        "point",
        "state",
        "kind",
        "shape",
        "fill",
        "stroke",
        "symbol",
        "t",
    ];
    match value {
        Value::String(text) => out.push((at.to_owned(), text.clone())),
        Value::Array(list) => {
            for (index, one) in list.iter().enumerate() {
                strings(one, &format!("{at}[{index}]"), out);
            }
        }
        Value::Object(map) => {
            for (key, one) in map.iter().filter(|(key, _)| !NAMES.contains(&key.as_str())) {
                strings(one, &format!("{at}.{key}"), out);
            }
        }
        _ => {}
    }
}

/// The report of a visit as data, and the scene it is composed from.
pub fn composed<'l>(
    loaded: &'l Loaded,
    site: &'l Site,
    system: &'l System,
    number: usize,
) -> (Scene<'l>, ReportData) {
    let visit = &system.visits[number];
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit,
        figures: VisitFigures::of(site, system, number).unwrap(),
        fingerprint: String::new(),
    };
    let cautions: Vec<&Diagnostic> = loaded
        .diagnostics
        .iter()
        .filter(|diagnostic| diagnostic.severity == Severity::Caution)
        .filter(|diagnostic| find(diagnostic.name).is_some_and(|c| c.limits_claim))
        .filter(|diagnostic| {
            let file = diagnostic.primary.span.file;
            loaded.sources.get(file).path.starts_with(&visit.path)
        })
        .collect();
    let data = compose(&scene, &cautions, false).data;
    (scene, data)
}

/// The documents of the demo book in a language, as data.
fn documents(loaded: &mut Loaded, language: Language) -> Vec<(String, Value)> {
    for site in &mut loaded.book.sites {
        site.language = language;
    }
    let mut out = Vec::new();
    for site in &loaded.book.sites {
        let mut last = Vec::new();
        for system in &site.systems {
            for (number, visit) in system.visits.iter().enumerate() {
                let (scene, report) = composed(loaded, site, system, number);
                out.push((visit.path.clone(), serde_json::to_value(report).unwrap()));
                if number + 1 == system.visits.len() {
                    let history = history_report(&scene, false).unwrap();
                    let name = format!("history of {}", system.path);
                    out.push((name, serde_json::to_value(history).unwrap()));
                    let on = visit.last_day();
                    let rows = records(&loaded.book, site, system, number + 1, on);
                    let pack = records_pack(&scene, &rows, on);
                    let name = format!("records of {}", system.path);
                    out.push((name, serde_json::to_value(pack).unwrap()));
                    last.push(scene);
                }
            }
        }
        let history = site_history(&last, false).unwrap();
        let name = format!("history of {}", site.name());
        out.push((name, serde_json::to_value(history).unwrap()));
    }
    out
}

/// Lower case, single spaces, no signs at the ends: how a note's words are looked for.
fn plain(text: &str) -> String {
    let words: Vec<&str> = text.split(|c: char| !c.is_alphanumeric()).collect();
    let words: Vec<&str> = words.into_iter().filter(|word| !word.is_empty()).collect();
    words.join(" ").to_lowercase()
}

/// Words that German, French and Spanish do not have.
const ENGLISH: [&str; 15] = [
    "the", "and", "of", "were", "which", "with", "by", "from", "has", "have", "been", "at", "not",
    "that", "this",
];

/// Whether a text names lines of the notes.
fn is_place(text: &str) -> bool {
    text.contains(".toml:") || text.contains(".md:")
}

/// Whether a formula holds words, not only symbols.
fn says_words(formula: &str) -> bool {
    formula
        .split(|c: char| !c.is_ascii_alphanumeric() && c != '_')
        .any(|word| word.len() > 3 && word.chars().all(|c| c.is_ascii_lowercase()))
}

/// What of a text is English and not the writer's: the text itself, or a few words of it.
fn left(text: &str, notes: &str) -> Option<String> {
    let words: Vec<String> = plain(text).split(' ').map(str::to_owned).collect();
    let written = |from: usize| {
        let three = words.get(from..from + 3);
        three.is_some_and(|three| notes.contains(&three.join(" ")))
    };
    (1..words.len().saturating_sub(1))
        .filter(|at| ENGLISH.contains(&words[*at].as_str()))
        .find(|at| !written(at - 1) && !written(*at))
        .map(|at| words[at - 1..=at + 1].join(" "))
}

/// Names and units that are the same in every language.
const SAME: [&str; 4] = ["micron", "psia", "psig", "CoolProp"];

/// Without what is no word of a language: symbols, places in the notes, names and units.
fn spoken(text: &str) -> String {
    let kept = text.split([' ', '\u{a0}']).filter(|word| {
        let place = word.contains(".toml:") || word.contains(".csv:");
        let paragraph = word.contains(")(") && word.starts_with(|c: char| c.is_ascii_digit());
        !place && !paragraph && !word.contains('_') && !SAME.contains(word)
    });
    kept.collect::<Vec<_>>().join(" ")
}

/// Whether a text is of the notes, in pieces at most: a place and what is told of it, several repairs,
/// what the plate of a circuit says after its refrigerant and masses.
fn written(text: &str, notes: &str) -> bool {
    let plate = text.starts_with("R-");
    let figure = |piece: &str| piece.contains(|c: char| c.is_ascii_digit());
    let mut pieces = text
        .split(": ")
        .flat_map(|piece| piece.split("; "))
        .flat_map(|piece| piece.split(if plate { ", " } else { "; " }));
    pieces.all(|piece| plate && figure(piece) || notes.contains(&plain(piece)))
}

/// Looks for English in the demo book's documents of a language.
fn left_in_english(language: Language) {
    let book = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let (mut loaded, _) = rimebook::command::load(&book).unwrap();
    let notes: String = loaded
        .sources
        .iter()
        .map(|(_, source)| format!(" {} ", plain(&source.text)))
        .collect();
    let english = documents(&mut loaded, Language::English);
    let other = documents(&mut loaded, language);
    let mut found: BTreeMap<String, String> = BTreeMap::new();
    for ((name, ours), (_, theirs)) in english.iter().zip(&other) {
        let (mut first, mut second) = (Vec::new(), Vec::new());
        strings(ours, "", &mut first);
        strings(theirs, "", &mut second);
        assert_eq!(first.len(), second.len(), "{name} has other parts");
        for ((at, ours), (_, theirs)) in first.iter().zip(&second) {
            assert!(!theirs.contains('⟦'), "{name}{at}: no message for {theirs}");
            let words = plain(&spoken(theirs));
            let same = ours == theirs
                && words
                    .split(' ')
                    .any(|word| word.len() > 3 && word.chars().all(char::is_alphabetic))
                && !is_place(theirs);
            let why = match same {
                _ if written(theirs, &notes) || written(&spoken(theirs), &notes) => None,
                true => Some(String::new()),
                false => left(theirs, &notes),
            };
            if let Some(why) = why {
                let place = format!("{name}{at}");
                found
                    .entry(theirs.clone())
                    .or_insert(format!("{place} {why}"));
            }
        }
    }
    let list: Vec<String> = found
        .iter()
        .map(|(text, place)| format!("{place}: {text}"))
        .collect();
    assert!(
        list.is_empty(),
        "{} texts are English still:\n{}",
        list.len(),
        list.join("\n")
    );
}

#[test]
fn nothing_of_a_german_report_is_english_but_the_notes() {
    left_in_english(Language::German);
}

#[test]
fn nothing_of_a_french_report_is_english_but_the_notes() {
    left_in_english(Language::French);
}

#[test]
fn nothing_of_a_spanish_report_is_english_but_the_notes() {
    left_in_english(Language::Spanish);
}

/// Fixed origins of inputs that reach the page: those written where they are used, and the constants.
fn origins() -> Vec<&'static str> {
    use rimebook::working::{
        hold_change, hold_log, pressure_test, service_equivalent, vacuum_test,
    };
    let workings: &'static str = source("src/working", ".rs").leak();
    let mut all = vec![
        hold_change::STUDY,
        hold_log::SIMULATED,
        pressure_test::NITROGEN.2,
        service_equivalent::HIGH_SIDE.1,
        service_equivalent::LOW_SIDE.1,
        vacuum_test::AIR.2,
    ];
    for call in ["Origin::Assumed(", "Origin::Constant("] {
        let asked = workings.split(call).skip(1);
        let literal = |rest: &'static str| rest.trim_start().strip_prefix('"')?.split('"').next();
        all.extend(asked.filter_map(literal));
    }
    all
}

/// Words of a closed list of the notes.
fn listed<W: Word>() -> impl Iterator<Item = &'static str> {
    W::list().into_iter().map(|entry| entry.word)
}

/// Closed words of the notes that reach the page, and those by which outcomes and points stand.
fn vocabulary_words() -> Vec<&'static str> {
    let mut all: Vec<&str> = Vec::new();
    all.extend(listed::<Purpose>().chain(listed::<LeftAs>()));
    all.extend(listed::<OutcomeWord>().chain(listed::<Plant>()));
    all.extend(listed::<FindingKind>().chain(listed::<FindingState>()));
    all.extend(listed::<MethodWord>().chain(listed::<TestGas>()));
    all.extend(listed::<PressureTestPurpose>().chain(listed::<MovementKind>()));
    all.extend(listed::<MovementWhy>().chain(listed::<MassHow>()));
    all.extend(listed::<ChargedTo>().chain(listed::<Destination>()));
    all.extend(listed::<GasOrigin>().chain(listed::<CylinderHappening>()));
    all.extend(listed::<Category>().chain(listed::<Status>()));
    all.extend(listed::<EarlierHappening>().chain(listed::<RoomKind>()));
    all.extend(listed::<LeakRateMethodWord>());
    all.extend(STANDINGS.iter().chain(&OF_ITS_SECTION));
    all.push(OTHERS);
    all.extend(listed::<Extension>());
    all.extend(LEGEND.iter().map(|(_, meaning)| *meaning));
    all.extend(["true", "false"]);
    all.extend(OutcomeKind::ALL.into_iter().map(shown));
    all.extend(State::PLAIN.iter().map(State::word));
    let grades = Grade::ALL.into_iter();
    all.extend(grades.flat_map(|grade| [grade.word(), grade.meaning()]));
    all
}

/// Fixed words of tables that reach the page, all that are translated by their English.
fn phrases() -> Vec<&'static str> {
    let mut all = Vec::new();
    for method in rimebook::working::METHODS {
        all.extend([method.name, method.source]);
        all.extend(Some(method.formula).filter(|formula| says_words(formula)));
    }
    all.extend(rimebook::refrigerant::GwpSet::ALL.map(rimebook::refrigerant::GwpSet::title));
    for refrigerant in rimebook::refrigerant::all() {
        let limits = [
            refrigerant.practical_limit_kg_m3,
            refrigerant.concentration_limit_kg_m3,
            refrigerant.lower_flammability_limit_kg_m3,
        ];
        all.extend(
            limits
                .into_iter()
                .flatten()
                .map(|limit| limit.source.citation),
        );
    }
    for rules in RULE_SETS {
        let exceedance = rules.exceedance.iter();
        all.extend([rules.title, rules.records.source]);
        all.extend(rules.checks.iter().map(|checks| checks.source));
        all.extend(rules.repair.iter().map(|repair| repair.source));
        all.extend(rules.recheck.iter().map(|recheck| recheck.source));
        all.extend(rules.detection.iter().map(|detection| detection.source));
        all.extend(exceedance.flat_map(|law| [law.extensions, law.plan_done, law.inspections]));
        all.extend(
            rules
                .fields
                .iter()
                .flat_map(|field| [field.0.title(), field.1]),
        );
    }
    let carried = ALL.iter().filter(|caution| caution.limits_claim);
    all.extend(carried.map(|caution| caution.matters));
    all.extend(OutcomeWord::WORDS.iter().map(|(word, _, _)| *word));
    all.extend([
        FindingState::RepairedProved.word(),
        NO_REPAIR,
        NO_PROOF,
        LOOKED_AT,
    ]);
    // A citation without a word in it is the same in every language.
    all.retain(|text| {
        text.split(|c: char| !c.is_alphabetic())
            .any(|word| word.len() > 3 && word != "viii")
    });
    all.extend(origins());
    all.extend(vocabulary_words());
    all
}

/// Fixed English that stands in the source as `Text::Phrase("…")`.
fn phrases_of_the_source() -> Vec<String> {
    let rust = source("src", ".rs");
    let parts = rust.split("Text::Phrase(").skip(1);
    parts
        .filter_map(|rest| rest.trim_start().strip_prefix('"'))
        .filter_map(|rest| rest.split('"').next())
        .map(str::to_owned)
        .collect()
}

#[test]
fn every_phrase_of_the_tables_is_translated_and_each_has_an_id_of_its_own() {
    let mut ids: BTreeMap<String, &str> = BTreeMap::new();
    let of_the_source = phrases_of_the_source();
    let all = phrases()
        .into_iter()
        .chain(of_the_source.iter().map(String::as_str));
    for phrase in all {
        let before = ids.insert(phrase_id(phrase), phrase);
        assert!(before.is_none_or(|other| other == phrase), "{phrase}");
    }
    for language in ["de", "fr", "es"] {
        let known = messages(language);
        let missing: Vec<_> = ids
            .iter()
            .filter(|(id, _)| !known.contains_key(*id))
            .collect();
        assert!(missing.is_empty(), "{language}: {missing:#?}");
    }
}

#[test]
fn figures_and_days_follow_the_language() {
    let say = |language| {
        let words = Words::of(language);
        (
            words.figure("0.5\u{a0}kg"),
            words.day(jiff::civil::date(2026, 3, 1)),
        )
    };
    assert_eq!(say(Language::English).0, "0.5\u{a0}kg");
    assert_eq!(say(Language::German).0, "0,5\u{a0}kg");
    assert_eq!(
        say(Language::French).1.replace('\u{a0}', " "),
        "1er mars 2026"
    );
}
