//! An alarm of a sensor near something that makes it alarm by itself.

use crate::caution::detector_use::uses_detector;
use crate::caution::look_result::text;
use crate::caution::scene::gives_place;
use crate::caution::{Caution, Edit, Scene};
use crate::notes::Look;
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Identifier;

const FINDINGS: &str = "larchwick/cheese-store/2026-03-04/findings.md";

/// Kinds of sensor, and what disturbs each.
const DISTURBED: &[(&[&str], &[&str])] = &[
    (
        &["infrared"],
        &["alcohol", "ethanol", "propanol", "isopropyl"],
    ),
    (
        &["heated diode", "semiconductor"],
        &["oil", "soap", "solvent", "saturated", "flooded"],
    ),
];

/// Words that say that it was kept away.
const KEPT_AWAY: &[&str] = &["no ", "away", "wiped", "rinsed", "aired", "clean air"];

pub(super) static CAUTION: Caution = Caution {
    name: "sensor-disturbed",
    summary: "a leak rests on the alarm of a sensor near something that disturbs it",
    finds: "A finding whose only direct evidence is alarms of a detector with an infrared sensor where the line or the background of the search names alcohol, or with a heated diode or a semiconductor where it names oil, soap, solvent or a sensor that was flooded. A line that says it was kept away, wiped, rinsed or aired says nothing.",
    matters: "Such a sensor alarms at these things, or stays dull for a while after them: the alarm need not be refrigerant.",
    put_right: "Air the place and the sensor and try again, or use bubble solution; write what that showed.",
    source: "common practice",
    example: &[
        Edit {
            file: FINDINGS,
            from: "alarm; clean air, alarm again",
            to: "alarm; next to the alcohol wipes",
        },
        Edit {
            file: FINDINGS,
            from: "  - 10:50 bubbles, foam after 4 min\n",
            to: "",
        },
    ],
    near_miss: &[Edit {
        file: FINDINGS,
        from: "alarm; clean air, alarm again",
        to: "alarm; next to the alcohol wipes",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let direct: Vec<&Look> = finding
            .note
            .evidence
            .iter()
            .filter(|look| look.positive() && gives_place(look.method.value))
            .collect();
        let disturbers: Option<Vec<_>> = direct.iter().map(|look| disturber(scene, look)).collect();
        let Some(((sensor, word), look)) = disturbers
            .and_then(|words| words.first().copied())
            .zip(direct.first())
        else {
            continue;
        };
        let mut diagnostic = CAUTION
            .says(
                look.span,
                Message::of("caution-sensor-disturbed")
                    .with("finding", finding.note.title.as_str())
                    .with("sensor", sensor.replace(' ', "-"))
                    .with("word", word),
            )
            .here("the only direct evidence");
        if let Some(span) = sensor_span(scene, look) {
            diagnostic = diagnostic.also(span, "its sensor");
        }
        found.push(
            diagnostic.cure("air the place and the sensor and try again, or use bubble solution"),
        );
    }
}

fn sensor_span(scene: &Scene<'_>, look: &Look) -> Option<crate::text::Span> {
    let id = Identifier(look.with.as_ref()?.value.clone());
    let sensor = scene.book.instruments.get(&id)?.sensor.as_ref()?;
    Some(sensor.span)
}

/// The kind of sensor and what disturbs it, by the words of the look or of the search around it.
fn disturber(scene: &Scene<'_>, look: &Look) -> Option<(&'static str, &'static str)> {
    if !uses_detector(look.method.value) {
        return None;
    }
    let id = Identifier(look.with.as_ref()?.value.clone());
    let sensor = scene.book.instruments.get(&id)?.sensor.as_ref()?;
    let sensor = sensor.value.to_lowercase();
    let at = scene.moment(look.at.value)?;
    let around = scene.visit.searches.iter().filter(|search| {
        let same = search
            .note
            .instrument
            .as_ref()
            .is_some_and(|used| used.value == id);
        same && search.started.value <= at && at <= search.ended.value
    });
    let backgrounds = around
        .filter_map(|search| search.note.background.as_ref())
        .map(|background| background.value.to_lowercase());
    let texts = std::iter::once(text(look)).chain(backgrounds);
    let told: Vec<String> = texts
        .filter(|text| !KEPT_AWAY.iter().any(|word| text.contains(word)))
        .collect();
    let words = DISTURBED.iter().filter_map(|(kinds, words)| {
        let kind = kinds.iter().find(|kind| sensor.contains(**kind))?;
        let word = words
            .iter()
            .find(|word| told.iter().any(|text| text.contains(**word)))?;
        Some((*kind, *word))
    });
    words.into_iter().next()
}
