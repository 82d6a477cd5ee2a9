//! What a caution is: its text under fixed headings, two examples, and the check itself.

use crate::caution::scene::Scene;
use crate::language::Words;
use crate::text::{Diagnostic, Message, Span};

/// A caution: a thing done or claimed that should be looked at, and never a reason to alter an honest note.
pub struct Caution {
    /// Kebab-case name of the problem.
    pub name: &'static str,
    /// One line about it.
    pub summary: &'static str,
    /// When it speaks and when it does not.
    pub finds: &'static str,
    /// Why it matters.
    pub matters: &'static str,
    /// What would put it right.
    pub put_right: &'static str,
    /// The rule or standard with its place, or "common practice".
    pub source: &'static str,
    /// Edits of the book of good practice that make it speak.
    pub example: &'static [Edit],
    /// Edits of the book of good practice that come near and leave it silent.
    pub near_miss: &'static [Edit],
    /// Adds what is found in one visit.
    pub check: fn(&Scene<'_>, &mut Vec<Diagnostic>),
    /// Whether the report carries it: it limits what the report may claim, or something dangerous or
    /// improper was done to the customer's plant.
    pub limits_claim: bool,
    /// Whether it rests on something that is not written, so that a note that could not be read may
    /// be what is missing.
    pub rests_on_absence: bool,
}

/// An edit of one file of a book.
#[derive(Clone, Copy, Debug)]
pub struct Edit {
    /// Path from the root of the book.
    pub file: &'static str,
    /// Text that stands there once; empty: `to` is put at the end of the file, which is made if there is none.
    pub from: &'static str,
    /// Text instead.
    pub to: &'static str,
}

/// Columns that the text of a caution is wrapped to.
const WIDTH: usize = 88;

impl Caution {
    /// Speaks at a place, and why it matters: in English on the screen, in the site's language on the
    /// page, which every caution that limits a claim is carried to.
    ///
    /// The message is `caution-` and the name; it begins small, ends without a full stop, and sets
    /// names in back-ticks, which the page leaves out. The reason is a phrase of its English.
    pub(super) fn says(&self, span: Span, message: Message) -> Diagnostic {
        let what = Words::english().say(&message);
        let mut diagnostic = Diagnostic::caution(self.name, span, what).why(self.matters);
        diagnostic.page = Some(message);
        diagnostic
    }

    /// All of it as text for a terminal.
    pub fn print(&self) -> String {
        let mut text = format!("{}: {}\n", self.name, self.summary);
        let mut part = |heading: &str, body: &str| {
            text.extend(["\n", heading, "\n", body]);
        };
        part("What it finds", &wrapped(self.finds));
        part("Why it matters", &wrapped(self.matters));
        part("What puts it right", &wrapped(self.put_right));
        part("An example that it speaks on", &print_edits(self.example));
        part(
            "One that comes near and leaves it silent",
            &print_edits(self.near_miss),
        );
        part("Source", &wrapped(self.source));
        if self.limits_claim {
            let carried = "The report carries this caution.";
            part("In the report", &wrapped(carried));
        }
        text
    }
}

/// Lines indented by two columns and broken between words.
fn wrapped(text: &str) -> String {
    let mut lines = String::new();
    let mut line = String::from(" ");
    for word in text.split_whitespace() {
        if line.chars().count() + 1 + word.chars().count() > WIDTH {
            lines += &line;
            lines.push('\n');
            line = String::from(" ");
        }
        line.push(' ');
        line += word;
    }
    lines + &line + "\n"
}

fn print_edits(edits: &[Edit]) -> String {
    let indented = |text: &str| -> String {
        let lines = text.trim_matches('\n').lines();
        lines.flat_map(|line| ["    ", line, "\n"]).collect()
    };
    let one = |edit: &Edit| match (edit.from, edit.to) {
        ("", to) => format!("  {} with\n{}", edit.file, indented(to)),
        (from, "") => format!("  {} without\n{}", edit.file, indented(from)),
        (from, to) => format!(
            "  {} with\n{}  instead of\n{}",
            edit.file,
            indented(to),
            indented(from)
        ),
    };
    edits.iter().map(one).collect()
}
