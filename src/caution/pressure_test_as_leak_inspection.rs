//! A pressure or vacuum test where a search by a direct method is called for.

use crate::caution::example::{CHECK_READINGS, check_also};
use crate::caution::scene::gives_place;
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message, Span};
use crate::vocabulary::method_word::Shows;
use crate::vocabulary::visit_file::Purpose;

const SEARCH: &str = "by = \"n2\"\nmethod = \"electronic\"\ninstrument = \"sniffer-1\"";

pub(super) static CAUTION: Caution = Caution {
    name: "pressure-test-as-leak-inspection",
    summary: "a pressure or vacuum test stands for a search",
    finds: "A search by pressure test or vacuum test, or a periodic leak check or leak search with such a test and no search, where nothing in the visit was gone over by a method that gives the place of a leak.",
    matters: "Such a test shows that a circuit leaks or does not, never where; it does not count as a leak inspection by itself.",
    put_right: "Search the circuit by a direct method as well: detector, bubble solution or dye.",
    source: "40 CFR 82.152, leak inspection (standing pressure and vacuum decay tests only together with methods that give the location); Regulation (EC) 1516/2007 Article 6 (direct methods)",
    example: &[Edit {
        file: CHECK_READINGS,
        from: SEARCH,
        to: "by = \"n2\"\nmethod = \"pressure test\"",
    }],
    near_miss: &[check_also(
        r#"
[[search]]
method = "pressure test"
started = 2026-09-16T10:25
ended = 2026-09-16T10:55
areas = ["cooler/*", "unit/*"]
"#,
    )],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let visit = scene.visit;
    let methods = || {
        visit
            .searches
            .iter()
            .filter_map(|search| search.note.method)
    };
    let looks = || {
        visit
            .findings
            .iter()
            .flat_map(|finding| &finding.note.evidence)
    };
    if methods().any(|method| gives_place(method.value))
        || looks().any(|look| gives_place(look.method.value))
    {
        return;
    }
    let named = methods()
        .find(|method| method.value.shows() == Shows::Whole)
        .map(|method| method.span);
    let Some(span) = named.or_else(|| test_for_search(scene)) else {
        return;
    };
    let mut diagnostic = CAUTION
        .says(
            span,
            Message::of("caution-pressure-test-as-leak-inspection"),
        )
        .here("shows whether it leaks, not where");
    if let Some(purpose) = visit.note.as_ref().and_then(|note| note.purpose) {
        diagnostic = diagnostic.also(purpose.span, "the visit was made for this");
    }
    found.push(diagnostic.cure("search the circuit by a direct method as well"));
}

/// The first test of a visit that was made to search and in which nothing was searched.
fn test_for_search(scene: &Scene<'_>) -> Option<Span> {
    let visit = scene.visit;
    let purpose = visit.note.as_ref()?.purpose?;
    let to_search = matches!(purpose.value, Purpose::PeriodicCheck | Purpose::Search);
    let pressure = visit
        .pressure_tests
        .first()
        .map(|test| test.note.whole.span);
    let vacuum = visit.vacuum_tests.first().map(|test| test.note.whole.span);
    pressure
        .or(vacuum)
        .filter(|_| to_search && visit.searches.is_empty() && visit.findings.is_empty())
}
