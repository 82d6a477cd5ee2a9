//! Prose as a tree of blocks and inlines: a closed set of tags that the report template knows.
//!
//! It is made from the Markdown of the notes. Text is always data: nothing in it is ever evaluated
//! by the typesetter.

use schemars::JsonSchema;
use serde::Serialize;

/// A block of prose.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(tag = "t", rename_all = "kebab-case")]
pub enum Block {
    /// A paragraph.
    Paragraph {
        /// What it says.
        c: Vec<Inline>,
    },
    /// A heading inside the prose; set as a run-in line, never as a heading of the document.
    Heading {
        /// What it says.
        c: Vec<Inline>,
    },
    /// A list without numbers.
    List {
        /// The items.
        items: Vec<Vec<Block>>,
    },
    /// A list with numbers.
    Numbered {
        /// Number of the first item.
        start: u64,
        /// The items.
        items: Vec<Vec<Block>>,
    },
    /// A quotation.
    Quote {
        /// What is quoted.
        c: Vec<Block>,
    },
    /// Text in a fixed layout, line by line.
    Code {
        /// The lines.
        text: String,
    },
    /// A table; every row has as many cells as the head.
    Table {
        /// Cells of the head.
        head: Vec<Vec<Inline>>,
        /// Rows of cells.
        rows: Vec<Vec<Vec<Inline>>>,
    },
    /// A line across.
    Rule,
}

/// A run inside a block.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(tag = "t", rename_all = "kebab-case")]
pub enum Inline {
    /// Plain text.
    Text {
        /// The text.
        text: String,
    },
    /// Important text.
    Strong {
        /// What is important.
        c: Vec<Inline>,
    },
    /// Emphasised text.
    Emphasis {
        /// What is emphasised.
        c: Vec<Inline>,
    },
    /// Text that no longer holds.
    Struck {
        /// What no longer holds.
        c: Vec<Inline>,
    },
    /// A name or a value, as written.
    Code {
        /// The text.
        text: String,
    },
    /// A link out of the document; the address is printed where it differs from the words.
    Link {
        /// Address: http, https, mailto or tel.
        to: String,
        /// The words of the link.
        c: Vec<Inline>,
    },
    /// A reference to a working of the appendix.
    Working {
        /// Id of the working.
        id: String,
    },
    /// A line break.
    Break,
}

impl Block {
    /// Makes a paragraph of plain text.
    pub fn plain(text: impl Into<String>) -> Self {
        Self::Paragraph {
            c: vec![Inline::plain(text)],
        }
    }
}

impl Inline {
    /// Makes plain text.
    pub fn plain(text: impl Into<String>) -> Self {
        Self::Text { text: text.into() }
    }

    /// Its words, without their form.
    pub fn words(&self) -> String {
        match self {
            Self::Text { text } | Self::Code { text } => text.clone(),
            Self::Strong { c }
            | Self::Emphasis { c }
            | Self::Struck { c }
            | Self::Link { c, .. } => c.iter().map(Self::words).collect(),
            Self::Working { .. } => String::new(),
            Self::Break => " ".to_owned(),
        }
    }

    /// Makes important text.
    pub fn strong(text: impl Into<String>) -> Self {
        Self::Strong {
            c: vec![Self::plain(text)],
        }
    }
}
