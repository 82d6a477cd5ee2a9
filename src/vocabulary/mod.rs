//! Every key, closed word and method of the notes, in one table per kind of file.
//!
//! The reader, the checks, the manual and the schema draw from these tables. To add a key: write
//! its constant, put it in its table's list, and ask the reader for it with the constant.

mod key;
mod value;
mod word;

pub mod book_file;
pub mod circuit_part;
pub mod finding_field;
pub mod method_word;
pub mod readings_file;
pub mod refrigerant_file;
pub mod safety_class;
pub mod site_file;
pub mod system_file;
pub mod visit_file;

pub use key::{Entry, FileKind, Form, Identifier, Key, Table};
pub use value::{Amount, DateOrMonth, DateOrTime, Designation, LocalTime, Noted, TableMark};
pub use word::{Word, WordEntry};

/// The TOML files of a book with the table of their top.
pub const TOPS: [(FileKind, &Table); 6] = [
    (FileKind::Book, &book_file::top::TABLE),
    (FileKind::Site, &site_file::top::TABLE),
    (FileKind::System, &system_file::top::TABLE),
    (FileKind::Visit, &visit_file::top::TABLE),
    (FileKind::Refrigerant, &refrigerant_file::top::TABLE),
    (FileKind::Readings, &readings_file::top::TABLE),
];
