//! The findings: evidence, repair, proof, prose and photographs.

use crate::job::Finding;
use crate::language::clock;
use crate::notes::{Look, PictureNote, Proof, When};
use crate::report::compose::WantedPhotograph;
use crate::report::compose::scene::Scene;
use crate::report::data::{Entry, Evidence, Finding as Printed, Photo, Picture, Ring};
use crate::text::{Message, sentence};
use crate::vocabulary::Word;
use crate::working::evidence::grade;
use crate::working::outcome::moment_of;

/// One entry per finding.
pub fn findings(scene: &Scene<'_>, photographs: &mut Vec<WantedPhotograph>) -> Vec<Printed> {
    scene
        .findings()
        .map(|(number, finding, standing)| {
            let (state, state_words) = scene.state(finding, standing);
            Printed {
                number: number.to_string(),
                heading: finding.note.title.clone(),
                point: finding.note.point.as_ref().map(|id| id.value.0.clone()),
                state,
                state_words,
                facts: facts(scene, finding),
                evidence: finding
                    .note
                    .evidence
                    .iter()
                    .map(|look| evidence(scene, look))
                    .collect(),
                prose: finding.note.prose.clone(),
                pictures: pictures(finding, number, photographs),
                cautions: Vec::new(),
            }
        })
        .collect()
}

fn facts(scene: &Scene<'_>, finding: &Finding) -> Vec<Entry> {
    let note = &finding.note;
    let words = scene.words();
    let mut facts = Vec::new();
    let mut add = |key: &'static str, value: String| {
        facts.push(Entry {
            key: scene.word(key),
            value,
            working: None,
        });
    };
    if let Some(kind) = note.kind {
        add("finding-kind", words.phrase(kind.value.word()));
    }
    if let Some(grade) = grade(note) {
        let evidence = Message::of("evidence-grade")
            .phrase("grade", grade.word())
            .phrase("meaning", grade.meaning());
        add("finding-evidence", scene.say(&evidence));
    }
    if let Some(size) = &note.size {
        let rate = crate::quantity::print(&size.rate.value, scene.site.units);
        add(
            "finding-size",
            format!("{}, {}", scene.figure(rate), size.how),
        );
    }
    if let Some(cause) = &note.cause {
        add("finding-cause", cause.value.clone());
    }
    for repair in &note.repairs {
        let value = match repair.at {
            Some(at) => format!("{}, {}", time(scene, at.value), repair.what),
            None => repair.what.clone(),
        };
        add("finding-repair", value);
    }
    for proof in &note.proofs {
        add("finding-proof", proof_words(scene, proof));
    }
    facts
}

fn time(scene: &Scene<'_>, at: crate::notes::DayTime) -> String {
    let civil = moment_of(scene.visit, at);
    if scene.visit.name.date == scene.visit.last_day() {
        clock(civil)
    } else {
        scene.words().moment(civil)
    }
}

fn proof_words(scene: &Scene<'_>, proof: &Proof) -> String {
    match proof {
        Proof::Look(look) => {
            let line = evidence(scene, look);
            scene.say(
                &Message::of("proof-look")
                    .with("time", line.time)
                    .with("method", line.method)
                    .with("result", line.result),
            )
        }
        Proof::Named(name) => {
            let verdict = crate::report::compose::tests::verdict_of(scene, &name.value);
            let message = match verdict {
                Some(verdict) => Message::of("proof-test").with("verdict", verdict),
                None => Message::of("proof-search"),
            };
            scene.say(&message.with("name", name.value.to_string()))
        }
    }
}

fn evidence(scene: &Scene<'_>, look: &Look) -> Evidence {
    let method = scene.words().phrase(look.method.value.word());
    let method = match &look.with {
        Some(with) => format!("{method} {}", with.value),
        None => method,
    };
    Evidence {
        time: time(scene, look.at.value),
        method,
        result: match &look.detail {
            Some(detail) => format!("{}; {detail}", look.result),
            None => look.result.clone(),
        },
    }
}

/// Pictures in the order of the notes; a before and the after that follows it side by side.
fn pictures(
    finding: &Finding,
    number: usize,
    photographs: &mut Vec<WantedPhotograph>,
) -> Vec<Picture> {
    let shown: Vec<(&PictureNote, &str)> = finding
        .pictures
        .iter()
        .filter_map(|(index, path)| Some((finding.note.pictures.get(*index)?, path.as_str())))
        .collect();
    let mut pictures = Vec::new();
    let mut index = 0;
    while let Some((note, path)) = shown.get(index) {
        let after = shown
            .get(index + 1)
            .filter(|(next, _)| note.when == Some(When::Before) && next.when == Some(When::After));
        if let Some((after, after_path)) = after {
            let before = photo(note, path, number, true, photographs);
            let after = photo(after, after_path, number, true, photographs);
            pictures.push(Picture::Pair { before, after });
            index += 2;
        } else {
            let photograph = photo(note, path, number, false, photographs);
            pictures.push(Picture::One { photograph });
            index += 1;
        }
    }
    pictures
}

/// A caption without the word before or after at its start, which the pair prints itself.
fn unmarked(caption: &str) -> &str {
    let marks = ["before", "after"];
    match caption.split_once([':', ',']) {
        Some((first, rest)) if marks.contains(&first.trim().to_lowercase().as_str()) => rest.trim(),
        _ => caption,
    }
}

fn photo(
    note: &PictureNote,
    path: &str,
    number: usize,
    half_width: bool,
    photographs: &mut Vec<WantedPhotograph>,
) -> Photo {
    photographs.push(WantedPhotograph {
        path: path.to_owned(),
        half_width,
    });
    Photo {
        number: photographs.len(),
        caption: sentence(if half_width {
            unmarked(&note.caption)
        } else {
            &note.caption
        }),
        alt: sentence(&note.caption),
        rings: note
            .rings
            .iter()
            .map(|(x, y)| Ring {
                x: x * 100.0,
                y: y * 100.0,
                label: number.to_string(),
            })
            .collect(),
    }
}
