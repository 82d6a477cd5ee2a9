//! Where a gas detector, or another method, alone stands for a search, for the evidence of a leak
//! or for a proof.

use crate::caution::look_result::text;
use crate::caution::scene::{Scene, gives_place};
use crate::job::{Search, Timed, covers, matches_pattern};
use crate::notes::{DetectorCheckNote, Look};
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::method_word::MethodWord;
use crate::working::repair_proof::{Ground, clearances};
use jiff::civil::Date;

/// The methods that are asked about.
pub type Methods = fn(MethodWord) -> bool;

/// One use of a gas detector, or of another method that is asked about.
#[derive(Clone, Copy)]
pub struct DetectorUse<'a> {
    /// Which one, as written; none where the note does not say.
    pub instrument: Option<&'a str>,
    /// The local day.
    pub day: Date,
    /// Where it stands in the notes.
    pub span: Span,
    /// The circuit, where it is known.
    pub circuit: Option<usize>,
    /// The search, if it was one.
    pub search: Option<&'a Search>,
    /// The look, if it was one.
    pub look: Option<&'a Look>,
    /// By which method.
    pub method: MethodWord,
}

impl DetectorUse<'_> {
    /// Whether a trial on a reference leak is of its instrument and its day.
    pub fn is_tried_by(&self, check: &Timed<DetectorCheckNote>) -> bool {
        let instrument = check.note.instrument.as_ref().map(|id| id.value.0.as_str());
        let known = self.instrument.is_some() && instrument.is_some();
        (!known || self.instrument == instrument) && check.at.value.date() == self.day
    }

    /// What the background of the search, or the look, says, in lower case.
    pub fn words(&self) -> String {
        let background = self
            .search
            .and_then(|search| search.note.background.as_ref());
        let background = background.map(|background| background.value.to_lowercase());
        background.or(self.look.map(text)).unwrap_or_default()
    }

    /// Where those words stand.
    pub fn words_span(&self) -> Span {
        let background = self
            .search
            .and_then(|search| search.note.background.as_ref());
        background.map_or(self.span, |background| background.span)
    }
}

/// Whether a method is that of a gas detection device.
pub fn uses_detector(method: MethodWord) -> bool {
    matches!(method, MethodWord::Electronic | MethodWord::Tracer)
}

/// Every use of a gas detector in a visit, in the order of the notes.
pub fn uses<'a>(scene: &Scene<'a>) -> Vec<DetectorUse<'a>> {
    uses_of(scene, uses_detector)
}

/// Every use of some methods in a visit, in the order of the notes.
fn uses_of<'a>(scene: &Scene<'a>, methods: Methods) -> Vec<DetectorUse<'a>> {
    let visit = scene.visit;
    let searches = visit
        .searches
        .iter()
        .filter_map(|search| of_search(search, methods));
    let looks = visit.findings.iter().flat_map(|finding| {
        let proofs = finding.note.proofs.iter().filter_map(|proof| match proof {
            crate::notes::Proof::Look(look) => Some(look),
            crate::notes::Proof::Named(_) => None,
        });
        let evidence = finding.note.evidence.iter();
        evidence
            .chain(proofs)
            .filter_map(|look| of_look(scene, look, finding.circuit, methods))
    });
    searches.chain(looks).collect()
}

fn of_search(search: &Search, methods: Methods) -> Option<DetectorUse<'_>> {
    let method = search.note.method?;
    methods(method.value).then_some(DetectorUse {
        instrument: search
            .note
            .instrument
            .as_ref()
            .map(|id| id.value.0.as_str()),
        day: search.started.value.date(),
        span: search
            .note
            .instrument
            .as_ref()
            .map_or(method.span, |id| id.span),
        circuit: search.circuit,
        search: Some(search),
        look: None,
        method: method.value,
    })
}

fn of_look<'a>(
    scene: &Scene<'a>,
    look: &'a Look,
    circuit: Option<usize>,
    methods: Methods,
) -> Option<DetectorUse<'a>> {
    methods(look.method.value).then_some(DetectorUse {
        instrument: look.with.as_ref().map(|with| with.value.as_str()),
        day: scene.day(look.at.value)?,
        span: look.span,
        circuit,
        search: None,
        look: Some(look),
        method: look.method.value,
    })
}

/// The weak uses that stand alone: a search of places that nothing sounder went over, the only
/// direct evidence of a finding, the only clearance of a repair. Of those that are `same`, the first.
pub fn sole<'a>(
    scene: &Scene<'a>,
    weak: impl Fn(&DetectorUse<'a>) -> bool,
    same: impl Fn(&DetectorUse<'a>, &DetectorUse<'a>) -> bool,
) -> Vec<DetectorUse<'a>> {
    sole_of(scene, uses_detector, weak, same)
}

/// The same of other methods than gas detectors.
pub fn sole_of<'a>(
    scene: &Scene<'a>,
    methods: Methods,
    weak: impl Fn(&DetectorUse<'a>) -> bool,
    same: impl Fn(&DetectorUse<'a>, &DetectorUse<'a>) -> bool,
) -> Vec<DetectorUse<'a>> {
    let mut found: Vec<DetectorUse<'a>> = Vec::new();
    let alone = uses_of(scene, methods).into_iter().filter(|one| weak(one));
    let alone = alone.filter(|one| match one.search {
        Some(search) => !searched_otherwise(scene, search, methods, &weak),
        None => !shown_otherwise(scene, one.span, methods, &weak),
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
    methods: Methods,
    weak: &impl Fn(&DetectorUse<'a>) -> bool,
) -> bool {
    let sound: Vec<&Search> = scene
        .visit
        .searches
        .iter()
        .filter(|other| !std::ptr::eq(*other, search))
        .filter(|other| other.note.method.is_some_and(|m| gives_place(m.value)))
        .filter(|other| of_search(other, methods).is_none_or(|one| !weak(&one)))
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
    methods: Methods,
    weak: &impl Fn(&DetectorUse<'a>) -> bool,
) -> bool {
    let sound = |other: &'a Look, circuit| {
        let one = of_look(scene, other, circuit, methods);
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
                Ground::Search(other) => of_search(other, methods).is_none_or(|one| !weak(&one)),
                Ground::Pressure(_) | Ground::Vacuum(_) => true,
            });
        }
    }
    true
}
