//! The fixed sentences of the report in the reader's language; the notes stay as written.
//!
//! Input: a [`Message`](crate::text::Message) and what goes into it. Output: text. To add a sentence:
//! put its message, with the same id, into `templates/words/en`, `de`, `fr` and `es`; `tests/words.rs`
//! fails where one is missing, is asked for by nobody, or uses what it is not given.

mod dates;
mod figure;
mod phrase;
mod words;

pub use dates::clock;
pub use phrase::phrase_id;
pub use words::{FILES, Words};
