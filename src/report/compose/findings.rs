//! The findings: evidence, repair, proof, prose and photographs.

use crate::job::Finding;
use crate::language::clock;
use crate::notes::{Look, PictureNote, Proof, Size, When};
use crate::report::compose::WantedPhotograph;
use crate::report::compose::coarse::is_coarse;
use crate::report::compose::scene::Scene;
use crate::report::data::{Entry, Evidence, Finding as Printed, Photo, Picture, Ring};
use crate::text::{Message, sentence};
use crate::vocabulary::Word;
use crate::vocabulary::finding_field::FindingKind;
use crate::vocabulary::method_word::MethodWord;
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
                pictures: pictures(scene, finding, number, photographs),
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
    if let Some(point) = &note.point
        && scene.system.points.get(&point.value).is_some()
    {
        add("finding-where", scene.system.point_name(&point.value));
    }
    if let Some(kind) = note.kind.filter(|kind| kind.value == FindingKind::Defect) {
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
        let rate = scene.figure(rate);
        add("finding-size", format!("{rate}, {}", how(scene, size)));
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
        add("finding-proof", proof_words(scene, finding, proof));
    }
    facts
}

/// How a size was found: as written, where it says more than by what and at which pressure.
fn how(scene: &Scene<'_>, size: &Size) -> String {
    let verb = if size.measured {
        "measured"
    } else {
        "estimated"
    };
    let by = size.by.as_ref().map(|by| by.value.as_str());
    let pressure = size.how.split_once(" at ").map(|(_, pressure)| pressure);
    let mut plain = verb.to_owned();
    for (word, told) in [(" by ", by), (" at ", pressure)] {
        if let Some(told) = told {
            plain += word;
            plain += told;
        }
    }
    if plain != size.how {
        return size.how.clone();
    }
    let by = by.map_or_else(|| "none".to_owned(), |by| with_method(scene, by));
    let message = Message::of("size-how")
        .with("measured", if size.measured { "yes" } else { "no" })
        .with("by", by)
        .figure("pressure", pressure.unwrap_or("none"));
    scene.say(&message)
}

/// What something was measured with: the method in the language of the site, the rest as written.
fn with_method(scene: &Scene<'_>, by: &str) -> String {
    let (first, rest) = by.split_once(' ').unwrap_or((by, ""));
    match MethodWord::of(first) {
        Some(method) => {
            let method = scene.words().phrase(method.word());
            format!("{method} {rest}").trim_end().to_owned()
        }
        None => by.to_owned(),
    }
}

fn time(scene: &Scene<'_>, at: crate::notes::DayTime) -> String {
    let civil = moment_of(scene.visit, at);
    if scene.visit.name.date == scene.visit.last_day() {
        clock(civil)
    } else {
        scene.words().moment(civil)
    }
}

fn proof_words(scene: &Scene<'_>, finding: &Finding, proof: &Proof) -> String {
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
                Some(verdict) => {
                    let coarse = is_coarse(scene, finding, &name.value);
                    Message::of("proof-test")
                        .with("verdict", verdict)
                        .with("coarse", if coarse { "yes" } else { "no" })
                }
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
    scene: &Scene<'_>,
    finding: &Finding,
    number: usize,
    photographs: &mut Vec<WantedPhotograph>,
) -> Vec<Picture> {
    let shown: Vec<(&PictureNote, &str)> = finding
        .pictures
        .iter()
        .filter_map(|(index, path)| Some((finding.note.pictures.get(*index)?, path.as_str())))
        .collect();
    let marks = [
        "before".to_owned(),
        "after".to_owned(),
        scene.word("page-before").to_lowercase(),
        scene.word("page-after").to_lowercase(),
    ];
    let mut pictures = Vec::new();
    let mut index = 0;
    while let Some((note, path)) = shown.get(index) {
        let after = shown
            .get(index + 1)
            .filter(|(next, _)| note.when == Some(When::Before) && next.when == Some(When::After));
        if let Some((after, after_path)) = after {
            let caption = unmarked(&note.caption, &marks);
            let before = photo(note, path, number, Some(caption), photographs);
            let caption = unmarked(&after.caption, &marks);
            let after = photo(after, after_path, number, Some(caption), photographs);
            pictures.push(Picture::Pair { before, after });
            index += 2;
        } else {
            let photograph = photo(note, path, number, None, photographs);
            pictures.push(Picture::One { photograph });
            index += 1;
        }
    }
    pictures
}

/// A caption without the word before or after at its start, which the pair prints itself.
fn unmarked<'c>(caption: &'c str, marks: &[String]) -> &'c str {
    match caption.split_once([':', ',']) {
        Some((first, rest)) if marks.contains(&first.trim().to_lowercase()) => rest.trim(),
        _ => caption,
    }
}

fn photo(
    note: &PictureNote,
    path: &str,
    number: usize,
    of_a_pair: Option<&str>,
    photographs: &mut Vec<WantedPhotograph>,
) -> Photo {
    photographs.push(WantedPhotograph {
        path: path.to_owned(),
        half_width: of_a_pair.is_some(),
    });
    Photo {
        number: photographs.len(),
        caption: sentence(of_a_pair.unwrap_or(&note.caption)),
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
