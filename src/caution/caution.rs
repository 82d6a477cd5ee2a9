//! What a caution is: its text under fixed headings, two examples, and the check itself.

use crate::caution::scene::Scene;
use crate::text::Diagnostic;

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
    /// Whether the report carries it because it limits what the report may claim.
    pub limits_claim: bool,
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
