//! What a person is named for in a visit.

use crate::caution::Scene;
use crate::text::Span;
use crate::vocabulary::Identifier;
use jiff::civil::Date;

/// Each name that stands beside a movement, a search or a test, with its place and the day.
pub(super) fn named<'a>(
    scene: &Scene<'a>,
) -> impl Iterator<Item = (&'a Identifier, Span, Date)> + use<'a> {
    let visit = scene.visit;
    let movements = visit
        .movements
        .iter()
        .map(|movement| (&movement.note.by, movement.at.value.date()));
    let searches = visit
        .searches
        .iter()
        .map(|search| (&search.note.by, search.started.value.date()));
    let pressure = visit
        .pressure_tests
        .iter()
        .map(|test| (&test.note.by, test.start.at.value.date()));
    let vacuum = visit
        .vacuum_tests
        .iter()
        .map(|test| (&test.note.by, test.start.at.value.date()));
    let all = movements.chain(searches).chain(pressure).chain(vacuum);
    all.filter_map(|(by, day)| by.as_ref().map(|by| (&by.value, by.span, day)))
}
