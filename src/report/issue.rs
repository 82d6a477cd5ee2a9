//! Issues of a report: what was frozen when, and what a later one changes.

use crate::language::Words;
use crate::quantity::UnitSystem;
use crate::report::data::{ReportData, Revision};
use crate::report::printed;
use crate::report::visit_figures::VisitFigures;
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
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub struct State {
    /// SHA-256 of every note, log and photograph, by path from the root of the book.
    pub files: BTreeMap<String, String>,
    /// The outcome, in its sentence.
    pub outcome: String,
    /// Printed figures, by id.
    pub figures: BTreeMap<String, String>,
    /// Titles of the figures, by id.
    pub titles: BTreeMap<String, String>,
    /// How each finding stands, by its heading.
    pub findings: BTreeMap<String, String>,
}

impl State {
    /// The state of a report as composed.
    pub fn of(
        data: &ReportData,
        figures: &VisitFigures,
        units: UnitSystem,
        files: BTreeMap<String, String>,
    ) -> Self {
        let all = || figures.all().into_iter();
        Self {
            files,
            outcome: data.outcome.sentence.clone(),
            figures: all()
                .map(|figure| (figure.id.clone(), figure.value.print(units)))
                .collect(),
            titles: all()
                .map(|figure| (figure.id.clone(), Words::english().text(&figure.title)))
                .collect(),
            findings: data
                .findings
                .iter()
                .map(|finding| (finding.heading.clone(), finding.state_words.clone()))
                .collect(),
        }
    }

    /// What is different from an earlier state, one sentence each.
    pub fn changes_since(&self, earlier: &State) -> Vec<String> {
        let mut changes = Vec::new();
        if self.outcome != earlier.outcome {
            changes.push(format!(
                "Outcome: {} (before: {})",
                self.outcome, earlier.outcome
            ));
        }
        for (heading, now) in &self.findings {
            match earlier.findings.get(heading) {
                None => changes.push(format!("Finding added: {heading}, {now}.")),
                Some(before) if before != now => {
                    changes.push(format!("Finding {heading}: {now} (before: {before})."));
                }
                Some(_) => {}
            }
        }
        for heading in earlier.findings.keys() {
            if !self.findings.contains_key(heading) {
                changes.push(format!("Finding taken out: {heading}."));
            }
        }
        for (id, now) in &self.figures {
            let title = self.titles.get(id).map_or(id.as_str(), String::as_str);
            match earlier.figures.get(id) {
                None => changes.push(format!("{title}: {now} (not given before).")),
                Some(before) if before != now => {
                    changes.push(format!("{title}: {now} (before: {before})."));
                }
                Some(_) => {}
            }
        }
        for id in earlier.figures.keys() {
            if !self.figures.contains_key(id) {
                let title = earlier.titles.get(id).map_or(id.as_str(), String::as_str);
                changes.push(format!("{title}: no longer given."));
            }
        }
        let files: Vec<String> = self
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
            .cloned()
            .collect();
        if !files.is_empty() {
            changes.push(format!("Notes changed: {}.", printed::and_list(&files)));
        }
        changes
    }
}

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

    /// How a state stands to what was issued; `issuing` gives the day of a new issue.
    pub fn standing(&self, state: &State, issuing: Option<Date>) -> Standing {
        let last = self.issues.last();
        match (last, issuing) {
            (Some(last), _) if last.state.files == state.files => {
                let before = self.issues.iter().rev().nth(1);
                Standing {
                    foot: format!("issue {}", last.issue),
                    revision: before.map(|before| revision(&last.issue, before, &last.state)),
                    new: None,
                }
            }
            (None, None) => Standing::default(),
            (Some(last), None) => Standing {
                foot: format!("not issued, changed since issue {}", last.issue),
                ..Standing::default()
            },
            (last, Some(day)) => {
                let letter = letter(self.issues.len());
                Standing {
                    foot: format!("issue {letter}"),
                    revision: last.map(|last| revision(&letter, last, state)),
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

fn revision(letter: &str, before: &Issue, state: &State) -> Revision {
    let day = before
        .on
        .parse()
        .map_or_else(|_| before.on.clone(), printed::day);
    Revision {
        issue: letter.to_owned(),
        replaces: format!("issue {} of {day}", before.issue),
        changes: state.changes_since(&before.state),
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
    use jiff::civil::date;

    fn state(digest: &str, loss: &str) -> State {
        let one = |key: &str, value: &str| BTreeMap::from([(key.to_owned(), value.to_owned())]);
        State {
            files: one("site/system/visit/refrigerant.toml", digest),
            outcome: "One leak found.".to_owned(),
            figures: one("charge/net-addition", loss),
            titles: one("charge/net-addition", "Net addition"),
            findings: one("Flare nut", "repaired, proved"),
        }
    }

    fn issued(issues: &mut Issues, state: &State) -> Standing {
        let standing = issues.standing(state, Some(date(2026, 7, 1)));
        issues.issues.extend(standing.new.clone());
        standing
    }

    #[test]
    fn a_changed_note_makes_the_next_issue_with_its_changes() {
        let mut issues = Issues {
            version: 1,
            ..Issues::default()
        };
        assert_eq!(issues.standing(&state("1", "6 kg"), None).foot, "");
        assert_eq!(issued(&mut issues, &state("1", "6 kg")).foot, "issue A");
        assert!(issued(&mut issues, &state("1", "6 kg")).new.is_none());
        let changed = issues.standing(&state("2", "5 kg"), None);
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
                .standing(&state("2", "5 kg"), None)
                .revision
                .is_some()
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
