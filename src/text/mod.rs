//! Ground floor: source files, places in them, and what is said about those places. Knows no trade.

mod accent;
mod diagnostic;
mod message;
mod nearest;
mod noted;
pub mod prose;
mod render;
mod sentence;
mod source;

pub use accent::{Accent, LEAST_CONTRAST};
pub use diagnostic::{Cure, Diagnostic, Diagnostics, Label, Severity};
pub use message::{Message, Text};
pub use nearest::{nearest, or_list, quoted_or};
pub use noted::Noted;
pub use render::{Look, render, summary, to_json};
pub use sentence::{capital, ended, sentence, small};
pub use source::{FileId, Source, Sources, Span};
