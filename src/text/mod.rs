//! Ground floor: source files, places in them, and what is said about those places. Knows no trade.

mod diagnostic;
mod nearest;
mod noted;
pub mod prose;
mod render;
mod source;

pub use diagnostic::{Cure, Diagnostic, Diagnostics, Label, Severity};
pub use nearest::{nearest, or_list, quoted_or};
pub use noted::Noted;
pub use render::{Look, render, summary, to_json};
pub use source::{FileId, Source, Sources, Span};
