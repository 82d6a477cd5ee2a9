//! What is said about a place in the notes: data only, no colour, no terminal.

use crate::text::{Message, Sources, Span};

/// How grave it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Text that cannot be read or cannot be true.
    Error,
    /// A thing that was done, or claimed, and should be looked at.
    Caution,
}

impl Severity {
    /// The word shown.
    pub fn word(self) -> &'static str {
        match self {
            Severity::Error => "error",
            Severity::Caution => "caution",
        }
    }
}

/// A place with a few words about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Label {
    /// The place.
    pub span: Span,
    /// What is to be said of it; may be empty.
    pub text: String,
}

/// A way to put it right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cure {
    /// What to do.
    pub text: String,
    /// The text to write there instead, when it is known.
    pub patch: Option<(Span, String)>,
}

/// One problem: what, where, why it matters, and the corrected line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Diagnostic {
    /// How grave.
    pub severity: Severity,
    /// Stable kebab-case name of the problem.
    pub name: &'static str,
    /// What is wrong, in one sentence without a final period.
    pub what: String,
    /// The same sentence for the page, where the report carries it.
    pub page: Option<Message>,
    /// The place it is about.
    pub primary: Label,
    /// Other places that explain it.
    pub others: Vec<Label>,
    /// Why it matters.
    pub why: Option<String>,
    /// Ways to put it right.
    pub cures: Vec<Cure>,
}

impl Diagnostic {
    /// An error at a place.
    pub fn error(name: &'static str, span: Span, what: impl Into<String>) -> Self {
        Self::new(Severity::Error, name, span, what.into())
    }

    /// A caution at a place.
    pub fn caution(name: &'static str, span: Span, what: impl Into<String>) -> Self {
        Self::new(Severity::Caution, name, span, what.into())
    }

    fn new(severity: Severity, name: &'static str, span: Span, what: String) -> Self {
        Self {
            severity,
            name,
            what,
            page: None,
            primary: Label {
                span,
                text: String::new(),
            },
            others: Vec::new(),
            why: None,
            cures: Vec::new(),
        }
    }

    /// Adds words at the caret.
    #[must_use]
    pub fn here(mut self, text: impl Into<String>) -> Self {
        self.primary.text = text.into();
        self
    }

    /// Adds another place.
    #[must_use]
    pub fn also(mut self, span: Span, text: impl Into<String>) -> Self {
        self.others.push(Label {
            span,
            text: text.into(),
        });
        self
    }

    /// Adds the reason it matters.
    #[must_use]
    pub fn why(mut self, text: impl Into<String>) -> Self {
        self.why = Some(text.into());
        self
    }

    /// Adds advice.
    #[must_use]
    pub fn cure(mut self, text: impl Into<String>) -> Self {
        self.cures.push(Cure {
            text: text.into(),
            patch: None,
        });
        self
    }

    /// Adds a corrected text for a place.
    #[must_use]
    pub fn patch(mut self, text: impl Into<String>, span: Span, to: impl Into<String>) -> Self {
        self.cures.push(Cure {
            text: text.into(),
            patch: Some((span, to.into())),
        });
        self
    }
}

/// All that was found, in the order it was found until [`Diagnostics::sort`].
#[derive(Clone, Debug, Default)]
pub struct Diagnostics {
    list: Vec<Diagnostic>,
}

impl Diagnostics {
    /// Adds one.
    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.list.push(diagnostic);
    }

    /// Adds all of another.
    pub fn append(&mut self, mut other: Diagnostics) {
        self.list.append(&mut other.list);
    }

    /// Puts them in the order of path, place and name, and drops exact repeats.
    pub fn sort(&mut self, sources: &Sources) {
        let key = |d: &Diagnostic| {
            (
                sources.get(d.primary.span.file).path.clone(),
                d.primary.span,
                d.severity,
                d.name,
                d.what.clone(),
            )
        };
        self.list.sort_by_cached_key(key);
        self.list.dedup();
    }

    /// All of them.
    pub fn iter(&self) -> impl Iterator<Item = &Diagnostic> {
        self.list.iter()
    }

    /// Keeps those that satisfy a condition.
    pub fn retain(&mut self, keep: impl FnMut(&Diagnostic) -> bool) {
        self.list.retain(keep);
    }

    /// How many errors.
    pub fn errors(&self) -> usize {
        self.count(Severity::Error)
    }

    /// How many cautions.
    pub fn cautions(&self) -> usize {
        self.count(Severity::Caution)
    }

    fn count(&self, severity: Severity) -> usize {
        self.list.iter().filter(|d| d.severity == severity).count()
    }
}
