//! A leak was found and the rest of the circuit was not searched.

use crate::caution::scene::{gives_place, on_circuit};
use crate::caution::{Caution, Edit, Scene};
use crate::job::{covers, matches_pattern};
use crate::notes::PointNote;
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::FindingKind;
use crate::vocabulary::visit_file::Purpose;

const READINGS: &str = "larchwick/cheese-store/2026-03-04/readings.toml";

const LESS: [Edit; 2] = [
    Edit {
        file: READINGS,
        from: "areas = [\"unit/*\"]",
        to: "areas = [\"unit/drier\"]",
    },
    Edit {
        file: READINGS,
        from: "areas = [\"cooler/*\", \"unit/*\"]",
        to: "areas = [\"cooler/*\"]",
    },
];

pub(super) static CAUTION: Caution = Caution {
    name: "search-stopped-at-first-leak",
    summary: "a leak was found and registered points were neither searched nor listed as not reached",
    finds: "In a visit made to search, in a circuit in which a leak was found and a search is noted: registered points that no direct method went over in this visit, that no finding speaks of, and that no search lists as not reached.",
    matters: "One leak found does not mean the only leak; the rest of the loss may come from a point that nobody looked at.",
    put_right: "Search the rest, or list the points as `not-reached` with the reason.",
    source: "Regulation (EC) 1516/2007 Article 4 (systematic check) and Article 6 (inspect other parts); common practice",
    example: &LESS,
    near_miss: &[
        LESS[0],
        Edit {
            file: READINGS,
            from: LESS[1].from,
            to: "areas = [\"cooler/*\"]\nnot-reached = [ { point = \"unit/*\", reason = \"behind the locked guard\" } ]",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let purpose = scene.visit.note.as_ref().and_then(|note| note.purpose);
    let to_search = purpose.is_some_and(|purpose| {
        matches!(
            purpose.value,
            Purpose::SearchAndRepair | Purpose::Search | Purpose::PeriodicCheck
        )
    });
    if !to_search {
        return;
    }
    for circuit in 0..scene.system.circuits.len() {
        found.extend(stopped(scene, circuit));
    }
}

fn stopped(scene: &Scene<'_>, circuit: usize) -> Option<Diagnostic> {
    let mut findings = scene.visit.findings.iter();
    let leak = findings.find(|finding| {
        let leak = finding
            .note
            .kind
            .is_some_and(|kind| kind.value == FindingKind::Leak);
        leak && on_circuit(finding, circuit) && !finding.note.evidence.is_empty()
    })?;
    let search = scene.visit.searches.iter().find(|search| {
        let direct = search
            .note
            .method
            .is_some_and(|method| gives_place(method.value));
        direct && search.circuit.is_none_or(|searched| searched == circuit)
    })?;
    let left: Vec<&Identifier> = scene
        .system
        .points
        .iter()
        .filter(|(id, point)| in_circuit(scene, point, circuit) && !accounted_for(scene, id))
        .map(|(id, _)| id)
        .collect();
    let first = left.first()?;
    let names: Vec<String> = left.iter().take(6).map(|id| format!("`{id}`")).collect();
    let more = left.len() - names.len();
    let span = scene.system.points.span(first).unwrap_or(leak.note.span);
    Some(
        CAUTION
            .says(
                search
                    .note
                    .method
                    .map_or(search.note.whole.span, |method| method.span),
                Message::of("caution-search-stopped-at-first-leak")
                    .with("points", names.join(", "))
                    .with("more", more),
            )
            .here("the searches of this visit do not go over them")
            .also(leak.note.span, "the leak found")
            .also(span, "the first of the points")
            .cure("search the rest, or list the points as `not-reached` with the reason"),
    )
}

/// Whether a point is in a circuit and was there that day.
fn in_circuit(scene: &Scene<'_>, point: &PointNote, circuit: usize) -> bool {
    let here = match &point.circuit {
        Some(id) => scene.system.circuit(&id.value) == Some(circuit),
        None => scene.system.circuits.len() == 1,
    };
    let day = scene.visit.name.date;
    here && !point.removed.iter().any(|removed| removed.value <= day)
}

fn accounted_for(scene: &Scene<'_>, point: &Identifier) -> bool {
    let searched = scene.visit.searches.iter().any(|search| {
        let direct = search
            .note
            .method
            .is_some_and(|method| gives_place(method.value));
        direct && covers(search, point)
    });
    let listed = scene.visit.searches.iter().any(|search| {
        let mut places = search
            .note
            .not_reached
            .iter()
            .filter_map(|place| place.point.as_ref());
        places.any(|place| matches_pattern(&place.value.0, &point.0))
    });
    let spoken_of = scene.visit.findings.iter().any(|finding| {
        finding
            .note
            .point
            .as_ref()
            .is_some_and(|id| id.value == *point)
    });
    searched || listed || spoken_of
}
