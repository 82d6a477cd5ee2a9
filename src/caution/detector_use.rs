//! Where a gas detector alone stands for a search, for the evidence of a leak or for a proof.

use crate::caution::scene::{Scene, gives_place};
use crate::job::{Moment, Search, covers, matches_pattern};
use crate::notes::Look;
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::method_word::MethodWord;
use crate::working::repair_proof::{Ground, clearances};
use jiff::civil::Date;

/// One use of a gas detector.
#[derive(Clone, Copy)]
pub struct DetectorUse<'a> {
    /// Which one, as written; none where the note does not say.
    pub instrument: Option<&'a str>,
    /// When.
    pub at: Moment,
    /// Where it stands in the notes.
    pub span: Span,
    /// The circuit, where it is known.
    pub circuit: Option<usize>,
    /// The search, if it was one.
    pub search: Option<&'a Search>,
}

impl DetectorUse<'_> {
    /// The local day.
    pub fn day(&self) -> Date {
        self.at.date()
    }
}

/// Whether a method is that of a gas detection device.
pub fn uses_detector(method: MethodWord) -> bool {
    matches!(method, MethodWord::Electronic | MethodWord::Tracer)
}

/// Every use of a gas detector in a visit, in the order of the notes.
pub fn uses<'a>(scene: &Scene<'a>) -> Vec<DetectorUse<'a>> {
    let visit = scene.visit;
    let searches = visit.searches.iter().filter_map(of_search);
    let looks = visit.findings.iter().flat_map(|finding| {
        let proofs = finding.note.proofs.iter().filter_map(|proof| match proof {
            crate::notes::Proof::Look(look) => Some(look),
            crate::notes::Proof::Named(_) => None,
        });
        let evidence = finding.note.evidence.iter();
        evidence
            .chain(proofs)
            .filter_map(|look| of_look(scene, look, finding.circuit))
    });
    searches.chain(looks).collect()
}

fn of_search(search: &Search) -> Option<DetectorUse<'_>> {
    let method = search.note.method?;
    uses_detector(method.value).then_some(DetectorUse {
        instrument: search
            .note
            .instrument
            .as_ref()
            .map(|id| id.value.0.as_str()),
        at: search.started.value,
        span: search
            .note
            .instrument
            .as_ref()
            .map_or(method.span, |id| id.span),
        circuit: search.circuit,
        search: Some(search),
    })
}

fn of_look<'a>(
    scene: &Scene<'a>,
    look: &'a Look,
    circuit: Option<usize>,
) -> Option<DetectorUse<'a>> {
    uses_detector(look.method.value).then_some(DetectorUse {
        instrument: look.with.as_ref().map(|with| with.value.as_str()),
        at: scene.moment(look.at.value)?,
        span: look.span,
        circuit,
        search: None,
    })
}

/// The weak uses that stand alone: a search of places that nothing sounder went over, the only
/// direct evidence of a finding, the only clearance of a repair. Of those that are `same`, the first.
pub fn sole<'a>(
    scene: &Scene<'a>,
    weak: impl Fn(&DetectorUse<'a>) -> bool,
    same: impl Fn(&DetectorUse<'a>, &DetectorUse<'a>) -> bool,
) -> Vec<DetectorUse<'a>> {
    let mut found: Vec<DetectorUse<'a>> = Vec::new();
    let alone = uses(scene).into_iter().filter(|one| weak(one));
    let alone = alone.filter(|one| match one.search {
        Some(search) => !searched_otherwise(scene, search, &weak),
        None => !shown_otherwise(scene, one.span, &weak),
    });
    for one in alone {
        if !found.iter().any(|other| same(other, &one)) {
            found.push(one);
        }
    }
    found
}

/// Whether every place of a search was gone over by another one that is sound.
fn searched_otherwise<'a>(
    scene: &Scene<'a>,
    search: &Search,
    weak: &impl Fn(&DetectorUse<'a>) -> bool,
) -> bool {
    let sound: Vec<&Search> = scene
        .visit
        .searches
        .iter()
        .filter(|other| !std::ptr::eq(*other, search))
        .filter(|other| other.note.method.is_some_and(|m| gives_place(m.value)))
        .filter(|other| of_search(other).is_none_or(|one| !weak(&one)))
        .collect();
    let area_covered = |area: &Identifier| {
        let points = scene.system.points_of(&area.0);
        let by_pattern = |other: &&Search| {
            let mut areas = other.note.areas.iter();
            areas.any(|wider| matches_pattern(&wider.value.0, &area.0))
        };
        let by_point = |point: &&Identifier| sound.iter().any(|other| covers(other, point));
        sound.iter().any(by_pattern) || (!points.is_empty() && points.iter().all(by_point))
    };
    search
        .note
        .areas
        .iter()
        .all(|area| area_covered(&area.value))
}

/// Whether the finding that a look stands in is shown, or cleared, by something sound besides.
fn shown_otherwise<'a>(
    scene: &Scene<'a>,
    look: Span,
    weak: &impl Fn(&DetectorUse<'a>) -> bool,
) -> bool {
    let sound = |other: &'a Look, circuit| {
        let one = of_look(scene, other, circuit);
        gives_place(other.method.value) && one.is_none_or(|one| !weak(&one))
    };
    for finding in &scene.visit.findings {
        let mut evidence = finding.note.evidence.iter();
        if evidence.any(|other| other.span == look) {
            let mut others = finding.note.evidence.iter();
            return others.any(|other| sound(other, finding.circuit));
        }
        let cleared = clearances(scene.system, scene.visit, finding);
        if cleared.iter().any(|clearance| clearance.span == look) {
            return cleared.iter().any(|clearance| match clearance.ground {
                Ground::Look(other) => sound(other, finding.circuit),
                Ground::Search(other) => of_search(other).is_none_or(|one| !weak(&one)),
                Ground::Pressure(_) | Ground::Vacuum(_) => true,
            });
        }
    }
    true
}
