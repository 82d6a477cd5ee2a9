//! Issues of a report: what was frozen when, and what a later one changes.

use crate::language::Words;
use crate::report::compose::Scene;
use crate::report::data::Revision;
use crate::text::Message;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Name of the file beside the notes of a visit.
pub const ISSUED: &str = "issued.json";

/// The issues of a visit's report, the oldest first.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub struct Issues {
    /// Version of this file's form.
    pub version: u32,
    /// The issues.
    pub issues: Vec<Issue>,
}

/// One issue.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub struct Issue {
    /// `A`, `B` and so on.
    pub issue: String,
    /// The day it was issued.
    pub on: String,
    /// What it was made from.
    #[serde(flatten)]
    pub state: State,
}

/// What a report says and what it was made from, short enough to keep.
///
/// Outcome, findings and figures stand in English whatever the language of the site, so that another
/// language is no change.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub struct State {
    /// SHA-256 of every note, log and photograph, by path from the root of the book.
    pub files: BTreeMap<String, String>,
    /// How the visit ended, as `check --format json` says it.
    pub outcome: String,
    /// Printed figures, by id.
    pub figures: BTreeMap<String, String>,
    /// Titles of the figures as the page gave them, by id.
    pub titles: BTreeMap<String, String>,
    /// How each finding stands, by its heading.
    pub findings: BTreeMap<String, String>,
}

impl State {
    /// The state of a visit's report.
    pub fn of(scene: &Scene<'_>, files: BTreeMap<String, String>) -> Self {
        let all = || scene.figures.all().into_iter();
        let outcome = &scene.figures.outcome;
        let ended: Vec<&str> = std::iter::once(outcome.kind)
            .chain(outcome.leaks)
            .map(|kind| outcome.shown_of(kind))
            .collect();
        Self {
            files,
            outcome: ended.join(ALSO),
            figures: all()
                .map(|figure| (figure.id.clone(), figure.value.print(scene.site.units)))
                .collect(),
            titles: all()
                .map(|figure| (figure.id.clone(), scene.words().text(&figure.title)))
                .collect(),
            findings: scene
                .findings()
                .map(|(_, finding, standing)| {
                    let words = Scene::stands(finding, standing).1;
                    (finding.note.title.clone(), words.to_owned())
                })
                .collect(),
        }
    }

    /// What is different from an earlier state, one sentence each, in a language.
    pub fn changes_since(&self, earlier: &State, words: &Words) -> Vec<String> {
        let mut changes = Vec::new();
        if self.outcome != earlier.outcome {
            let ended = |state: &State| {
                let parts = state.outcome.split(ALSO);
                parts
                    .map(|part| words.phrase(part))
                    .collect::<Vec<_>>()
                    .join(ALSO)
            };
            changes.push(
                Message::of("change-outcome")
                    .with("now", ended(self))
                    .with("before", ended(earlier)),
            );
        }
        self.findings_since(earlier, words, &mut changes);
        self.figures_since(earlier, words, &mut changes);
        let files: Vec<&str> = self
            .files
            .iter()
            .filter(|(path, digest)| earlier.files.get(*path) != Some(digest))
            .map(|(path, _)| path)
            .chain(
                earlier
                    .files
                    .keys()
                    .filter(|path| !self.files.contains_key(*path)),
            )
            .map(String::as_str)
            .collect();
        if !files.is_empty() {
            changes.push(Message::of("change-notes").with("files", files));
        }
        changes.iter().map(|change| words.say(change)).collect()
    }

    fn findings_since(&self, earlier: &State, words: &Words, changes: &mut Vec<Message>) {
        for (heading, now) in &self.findings {
            let message = match earlier.findings.get(heading) {
                None => Message::of("change-finding-added"),
                Some(before) if before != now => {
                    Message::of("change-finding").with("before", words.phrase(before))
                }
                Some(_) => continue,
            };
            changes.push(
                message
                    .with("finding", heading.as_str())
                    .with("now", words.phrase(now)),
            );
        }
        for heading in earlier.findings.keys() {
            if !self.findings.contains_key(heading) {
                let message = Message::of("change-finding-taken-out");
                changes.push(message.with("finding", heading.as_str()));
            }
        }
    }

    fn figures_since(&self, earlier: &State, words: &Words, changes: &mut Vec<Message>) {
        for (id, now) in &self.figures {
            let message = match earlier.figures.get(id) {
                None => Message::of("change-figure-added"),
                Some(before) if before != now => {
                    Message::of("change-figure").with("before", words.figure(before))
                }
                Some(_) => continue,
            };
            let title = self.titles.get(id).unwrap_or(id);
            changes.push(
                message
                    .with("title", title.as_str())
                    .with("now", words.figure(now)),
            );
        }
        for id in earlier.figures.keys() {
            if !self.figures.contains_key(id) {
                let title = earlier.titles.get(id).unwrap_or(id);
                let message = Message::of("change-figure-taken-out");
                changes.push(message.with("title", title.as_str()));
            }
        }
    }
}

/// Stands between two outcomes of one visit.
const ALSO: &str = "; ";

/// What stands in the foot of the page, what the head says of a revision, and the issue to be kept.
#[derive(Clone, Debug, Default)]
pub struct Standing {
    /// For the foot; empty where nothing was issued.
    pub foot: String,
    /// For the head, from the second issue on.
    pub revision: Option<Revision>,
    /// To be added to the file; none where nothing is new.
    pub new: Option<Issue>,
}

impl Issues {
    /// Reads the file's text.
    pub fn read(text: &str) -> Result<Self, String> {
        let issues: Self = serde_json::from_str(text).map_err(|error| error.to_string())?;
        if issues.version == 1 {
            Ok(issues)
        } else {
            Err(format!("version {} is not known", issues.version))
        }
    }

    /// How a state stands to what was issued, in a language; `issuing` gives the day of a new issue.
    pub fn standing(&self, state: &State, issuing: Option<Date>, words: &Words) -> Standing {
        let last = self.issues.last();
        let foot = |id, issue: &str| words.say(&Message::of(id).with("issue", issue));
        match (last, issuing) {
            (Some(last), _) if last.state.files == state.files => {
                let before = self.issues.iter().rev().nth(1);
                Standing {
                    foot: foot("foot-issue", &last.issue),
                    revision: before
                        .map(|before| revision(&last.issue, before, &last.state, words)),
                    new: None,
                }
            }
            (None, None) => Standing::default(),
            (Some(last), None) => Standing {
                foot: foot("foot-changed-since", &last.issue),
                ..Standing::default()
            },
            (last, Some(day)) => {
                let letter = letter(self.issues.len());
                Standing {
                    foot: foot("foot-issue", &letter),
                    revision: last.map(|last| revision(&letter, last, state, words)),
                    new: Some(Issue {
                        issue: letter,
                        on: day.to_string(),
                        state: state.clone(),
                    }),
                }
            }
        }
    }
}

fn revision(letter: &str, before: &Issue, state: &State, words: &Words) -> Revision {
    let day = before
        .on
        .parse()
        .map_or_else(|_| before.on.clone(), |day| words.day(day));
    let replaces = Message::of("revision-replaces")
        .with("issue", before.issue.as_str())
        .with("day", day);
    Revision {
        issue: letter.to_owned(),
        replaces: words.say(&replaces),
        changes: state.changes_since(&before.state, words),
    }
}

/// `A` to `Z`, then `AA` and so on.
fn letter(index: usize) -> String {
    let last = char::from(b'A' + u8::try_from(index % 26).unwrap_or(0));
    if index < 26 {
        last.to_string()
    } else {
        letter(index / 26 - 1) + &last.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::vocabulary::site_file::Language;
    use jiff::civil::date;

    fn state(digest: &str, loss: &str) -> State {
        let one = |key: &str, value: &str| BTreeMap::from([(key.to_owned(), value.to_owned())]);
        State {
            files: one("site/system/visit/refrigerant.toml", digest),
            outcome: "leaks were found and left open".to_owned(),
            figures: one("charge/net-addition", loss),
            titles: one("charge/net-addition", "Net addition"),
            findings: one("Flare nut", "repaired, proved"),
        }
    }

    fn issued(issues: &mut Issues, state: &State) -> Standing {
        let standing = issues.standing(state, Some(date(2026, 7, 1)), Words::english());
        issues.issues.extend(standing.new.clone());
        standing
    }

    #[test]
    fn a_changed_note_makes_the_next_issue_with_its_changes() {
        let mut issues = Issues {
            version: 1,
            ..Issues::default()
        };
        assert_eq!(
            issues
                .standing(&state("1", "6 kg"), None, Words::english())
                .foot,
            ""
        );
        assert_eq!(issued(&mut issues, &state("1", "6 kg")).foot, "issue A");
        assert!(issued(&mut issues, &state("1", "6 kg")).new.is_none());
        let changed = issues.standing(&state("2", "5 kg"), None, Words::english());
        assert_eq!(changed.foot, "not issued, changed since issue A");
        let second = issued(&mut issues, &state("2", "5 kg"));
        let revision = second.revision.unwrap();
        assert_eq!(revision.issue, "B");
        assert_eq!(
            revision.changes,
            [
                "Net addition: 5 kg (before: 6 kg).",
                "Notes changed: site/system/visit/refrigerant.toml."
            ]
        );
        // The same report made again still says what it changed.
        assert!(
            issues
                .standing(&state("2", "5 kg"), None, Words::english())
                .revision
                .is_some()
        );
    }

    #[test]
    fn changes_are_told_in_the_language_of_the_site() {
        let mut now = state("1", "5.5 kg");
        now.outcome = "every leak found was repaired and proved".to_owned();
        let german = Words::of(Language::German);
        assert_eq!(
            now.changes_since(&state("1", "6 kg"), german),
            [
                "Ergebnis: jedes gefundene Leck wurde repariert, der Erfolg jeder Reparatur nachgewiesen (vorher: Leck gefunden, noch nicht repariert)",
                "Net addition: 5,5 kg (vorher: 6 kg).",
            ]
        );
    }

    #[test]
    fn issues_survive_their_file() {
        let mut issues = Issues {
            version: 1,
            ..Issues::default()
        };
        issued(&mut issues, &state("1", "6 kg"));
        let text = serde_json::to_string_pretty(&issues).unwrap();
        assert_eq!(Issues::read(&text).unwrap(), issues);
        assert!(Issues::read("{\"version\": 2, \"issues\": []}").is_err());
        assert_eq!(letter(27), "AB");
    }
}
