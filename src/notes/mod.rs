//! From the files of a book to typed notes, each file by itself: text and kind in, notes and diagnostics out.

#[cfg(test)]
mod asked;
mod book_note;
mod book_notes;
mod finding_line;
mod findings_note;
mod folder;
mod from_note;
mod log;
mod prose_reader;
mod readings_note;
mod refrigerant_note;
mod site_note;
mod system_note;
mod table_reader;
mod toml_text;
mod visit_note;

pub use book_note::*;
pub use book_notes::{FileNote, Notes, SiteNotes, SystemNotes, VisitNotes, read_notes};
pub use finding_line::{DayTime, Look, Proof, Repair, Size};
pub use findings_note::{FindingNote, FindingsNote, PictureNote, When};
pub use folder::{FileFact, Folder, VisitName, find_root, read_folder};
pub use from_note::IMPLAUSIBLE;
pub use log::{Columns, Log, read_log};
pub use readings_note::*;
pub use refrigerant_note::*;
pub use site_note::*;
pub use system_note::*;
pub use table_reader::Whole;
pub use visit_note::*;
