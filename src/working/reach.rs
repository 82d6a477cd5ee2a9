//! How far the searches of a visit reached: every registered point and area, by what, or why not.

use crate::job::{System, Visit, covers};
use crate::vocabulary::Identifier;
use crate::vocabulary::method_word::{MethodWord, Shows};

/// Whether a place was looked at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reach {
    /// Searched or looked at, by these methods, each once.
    Looked(Vec<MethodWord>),
    /// Not reached, and why.
    NotReached(String),
    /// Nothing is noted of it.
    NotLookedAt,
}

/// Every registered point, then every registered area, with how far the visit reached it.
pub fn reach<'a>(system: &'a System, visit: &Visit) -> Vec<(&'a Identifier, Reach)> {
    let points = system.points.iter().map(|(id, _)| id);
    let areas = system.areas.iter().map(|(id, ())| id);
    points
        .chain(areas)
        .map(|id| (id, reach_of(visit, id)))
        .collect()
}

fn reach_of(visit: &Visit, id: &Identifier) -> Reach {
    // `rack/*` takes in the area `rack`, too.
    let inside = Identifier(format!("{id}/"));
    let searched = visit
        .searches
        .iter()
        .filter(|search| covers(search, id) || covers(search, &inside))
        .filter_map(|search| search.note.method);
    let looked = visit
        .findings
        .iter()
        .filter(|finding| {
            let point = finding.note.point.as_ref();
            point.is_some_and(|point| point.value == *id)
        })
        .flat_map(|finding| &finding.note.evidence)
        .map(|look| look.method)
        .filter(|method| method.value.shows() != Shows::Whole);
    let mut methods: Vec<MethodWord> = searched.chain(looked).map(|noted| noted.value).collect();
    methods.sort_unstable();
    methods.dedup();
    if !methods.is_empty() {
        return Reach::Looked(methods);
    }
    let reason = visit
        .searches
        .iter()
        .flat_map(|search| &search.note.not_reached)
        .find(|place| {
            let pattern = place.point.as_ref();
            pattern.is_some_and(|pattern| {
                let pattern = &pattern.value.0;
                crate::job::matches_pattern(pattern, &id.0)
                    || crate::job::matches_pattern(pattern, &inside.0)
            })
        })
        .and_then(|place| place.reason.as_ref());
    reason.map_or(Reach::NotLookedAt, |reason| {
        Reach::NotReached(reason.value.clone())
    })
}
