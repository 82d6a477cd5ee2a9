//! A point's life on one line.

use crate::history::point_history::PointHistory;
use crate::history::step::{Seen, Step};
use crate::vocabulary::finding_field::FindingState;

/// What the marks mean, a line each.
pub const LEGEND: &[(&str, &str)] = &[
    ("L", "leak found"),
    ("L!", "found leaking again after a repair"),
    ("L..", "found still leaking"),
    ("R+", "repaired and noted as proved"),
    ("R", "repaired, not proved"),
    ("T", "repaired for the time being, or shut off"),
    ("S", "suspected"),
    ("C", "suspicion cleared"),
    (
        "ok",
        "looked at, nothing shown; ok×3 for three visits together",
    ),
    ("~", "only a test of its section held"),
    ("-", "not reached"),
    ("N", "part replaced, the count starts anew"),
    ("X", "part taken out"),
    ("*", "by others, or from earlier records"),
];

/// The line: month and marks of each step, looks without a sign drawn together.
pub fn time_line(history: &PointHistory) -> String {
    let mut parts: Vec<String> = Vec::new();
    let mut quiet: Vec<&Step> = Vec::new();
    for step in &history.steps {
        if step.seen == Seen::Nothing && step.by.is_none() {
            quiet.push(step);
            continue;
        }
        parts.extend(drawn_together(&mut quiet));
        parts.push(format!("{} {}", month(step), marks(history, step)));
    }
    parts.extend(drawn_together(&mut quiet));
    parts.join(" · ")
}

fn month(step: &Step) -> String {
    format!("{:04}-{:02}", step.day.year(), step.day.month())
}

fn drawn_together(quiet: &mut Vec<&Step>) -> Option<String> {
    let first = month(quiet.first()?);
    let last = month(quiet.last()?);
    let number = quiet.len();
    quiet.clear();
    Some(match number {
        1 => format!("{first} ok"),
        _ if first == last => format!("{first} ok×{number}"),
        _ => format!("{first} to {last} ok×{number}"),
    })
}

/// The marks of a step, as [`LEGEND`] explains them, with a space between.
pub fn marks(history: &PointHistory, step: &Step) -> String {
    let spells = || history.spells.iter();
    let seen = match step.seen {
        Seen::Leak if spells().any(|s| s.seen_again.contains(&step.day)) => "L..",
        Seen::Leak if spells().any(|s| s.found == step.day && history.is_again(s)) => "L!",
        // An earlier record of a repair tells of no finding apart from it.
        Seen::Leak if step.by.is_some() && step.mended.is_some() => "",
        Seen::Leak => "L",
        Seen::Suspect => "S",
        Seen::Cleared => "C",
        Seen::Nothing => "ok",
        Seen::SectionHeld => "~",
        Seen::NotReached => "-",
        Seen::Replaced => "N",
        Seen::Removed => "X",
    };
    let repair = step.mended.as_ref().map_or("", |mended| match mended.left {
        Some(FindingState::RepairedProved) => "R+",
        Some(FindingState::Temporary | FindingState::Isolated) => "T",
        _ => "R",
    });
    let others = if step.by.is_some() { "*" } else { "" };
    let marks: Vec<&str> = [seen, repair]
        .into_iter()
        .filter(|m| !m.is_empty())
        .collect();
    format!("{}{others}", marks.join(" "))
}

impl PointHistory {
    /// Whether a leak came after a repair of the same part.
    fn is_again(&self, spell: &crate::history::Spell) -> bool {
        let index = self.spells.iter().position(|known| known == spell);
        index
            .and_then(|index| index.checked_sub(1))
            .and_then(|before| self.spells.get(before))
            .is_some_and(|before| before.held.is_some())
    }
}
