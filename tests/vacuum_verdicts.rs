//! What each log of the case `vacuum-logs` is said to show. The logs are invented.

use rimebook::language::Words;
use rimebook::text::{Diagnostics, Message, Sources};
use rimebook::working::vacuum_test::{Acceptance, Rise, rise};
use rimebook::working::vacuum_verdict::Shown;
use rimebook::{job, notes};
use std::path::Path;

fn rises(system: &str) -> Vec<(String, Rise)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/vacuum-logs/book");
    let (mut sources, mut diagnostics) = (Sources::default(), Diagnostics::default());
    let folder = notes::read_folder(&root, &mut sources, &mut diagnostics).unwrap();
    let notes = notes::read_notes(folder, &mut sources, &mut diagnostics);
    let book = job::assemble(notes, &sources, &mut diagnostics);
    let system = book.sites[0].systems.iter().find(|s| s.folder == system);
    let system = system.unwrap();
    let visit = &system.visits[0];
    visit
        .vacuum_tests
        .iter()
        .map(|test| (test.id.0.clone(), rise(test, system, visit)))
        .collect()
}

/// Test, acceptance, verdict, and words that a reason of it holds.
const EXPECTED: &[(&str, Acceptance, Shown, &str)] = {
    use Acceptance::{Met, NotMet, TooShort};
    use Shown::*;
    &[
        ("nothing", Met, NothingLarger, "No temperature was logged"),
        ("leak", NotMet, Leak, ""),
        ("moisture", NotMet, Moisture, ""),
        ("refrigerant", NotMet, LevelsAboveWater, ""),
        ("bends", Met, Bending, ""),
        ("uneven", NotMet, Uneven, ""),
        ("no-limit", Met, NothingLarger, "held against none"),
        ("short", TooShort, AcceptanceOnly, "shorter than 20 minutes"),
        ("few", Met, AcceptanceOnly, "fewer than 30 rows"),
        ("warming", Met, AcceptanceOnly, "moved by 2.8 K"),
        ("steady", Met, NothingLarger, ""),
        ("stuck", Met, AcceptanceOnly, "same value in every row"),
        ("falls", NotMet, AcceptanceOnly, "The pressure fell"),
        ("top", NotMet, AcceptanceOnly, "top of a gauge's range"),
        ("air", NotMet, AcceptanceOnly, "tenth of an atmosphere"),
        ("two-readings", Met, AcceptanceOnly, "no log"),
        (
            "no-volume",
            NotMet,
            NoSize,
            "volume under test is not noted",
        ),
        (
            "no-volume-moisture",
            NotMet,
            Moisture,
            "volume under test is not noted",
        ),
    ]
};

/// The reasons of a test in English.
fn said(rise: &Rise) -> Vec<String> {
    let words = Words::english();
    rise.reasons
        .iter()
        .map(|reason| words.say(reason))
        .collect()
}

#[test]
fn every_log_of_the_case_is_told_as_what_it_is() {
    let rises = rises("cold-room");
    let mut wrong = String::new();
    for (id, acceptance, shown, reason) in EXPECTED {
        let (_, rise) = rises.iter().find(|(name, _)| name == id).unwrap();
        let said = said(rise).join(" ");
        if rise.acceptance != *acceptance || rise.shown != *shown || !said.contains(reason) {
            wrong += &format!("{id}: {:?} {:?} {said}\n", rise.acceptance, rise.shown);
        }
        let has_bound = rise.upper_bound_pa_m3_s().is_some();
        let asked = rise.course.is_some() && rise.room.is_some();
        assert_eq!(has_bound, asked, "{id}");
    }
    assert!(wrong.is_empty(), "\n{wrong}");
    assert_eq!(rises.len(), EXPECTED.len());
}

#[test]
fn a_chiller_below_the_pressure_of_the_air_draws_it_in_as_in_the_test() {
    let rises = rises("chiller");
    let (_, rise) = &rises[0];
    assert!(
        said(rise)
            .iter()
            .any(|reason| reason.contains("draws air in"))
    );
    // 1.5 Pa a minute in 1.9 m³: 0.0475 Pa m³/s.
    assert_eq!(rise.shown, Shown::Leak);
    let upper = rise.upper_bound_pa_m3_s().unwrap();
    assert!((0.0475..0.0480).contains(&upper), "{upper}");
}

#[test]
fn no_words_claim_that_there_is_no_leak() {
    use Shown::*;
    let all = [
        NothingLarger,
        NothingLargerAboveHold,
        Leak,
        Moisture,
        LevelsAboveWater,
        Bending,
        Uneven,
        Coarse,
        NoSize,
        AcceptanceOnly,
    ];
    let words = Words::english();
    for shown in all {
        let says = ["1 Pa m³/s", "none"].map(|upper| {
            let message = Message::of(shown.sentence()).with("upper", upper);
            words.say(&message.with("lower", upper))
        });
        let settles = shown.settles().map(|id| words.word(id));
        for text in says.into_iter().chain(settles) {
            let text = text.to_lowercase();
            for claim in ["no leak ", "no leak.", "leak-free", "tight"] {
                assert!(!text.replace("no leak size", "").contains(claim), "{text}");
            }
            assert!(text.ends_with('.'), "{text}");
        }
    }
}
