//! What a key is: its name, the form of its value, whether it must be there, a line about it, an example.

use crate::quantity::{Kind, Measured, Quantity};
use crate::vocabulary::word::{Word, WordEntry};
use std::marker::PhantomData;

/// The form of a value, as the manual names it.
#[derive(Clone, Copy, Debug)]
pub enum Form {
    /// Free text for people.
    Text,
    /// A writer's own short name, without spaces.
    Identifier,
    /// A refrigerant by its designation.
    Refrigerant,
    /// Several of the writer's names.
    Identifiers,
    /// A quantity with its unit, of one kind.
    Quantity(Kind),
    /// A quantity with its unit, of whichever of these kinds it is.
    Amount(&'static [Kind]),
    /// One word of a closed list.
    Word(fn() -> Vec<WordEntry>),
    /// Several words of a closed list.
    Words(fn() -> Vec<WordEntry>),
    /// A day.
    Date,
    /// Several days.
    Dates,
    /// A day or a month.
    DateOrMonth,
    /// A local date and time.
    Time,
    /// A local date, with a time if known.
    DateOrTime,
    /// `true` or `false`.
    Boolean,
    /// A whole number.
    Integer,
    /// An inline table.
    Table(&'static Table),
    /// A list of inline tables.
    Tables(&'static Table),
}

/// A typed key: what the reader is asked with.
#[derive(Debug)]
pub struct Key<T> {
    /// As it stands in the file.
    pub name: &'static str,
    /// The form of its value.
    pub form: Form,
    /// Whether the table is incomplete without it.
    pub required: bool,
    /// One line about it.
    pub about: &'static str,
    /// The value of an example line.
    pub example: &'static str,
    value: PhantomData<fn() -> T>,
}

/// A writer's own short name of a thing: a person, a cylinder, a point.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Identifier(pub String);

impl std::fmt::Display for Identifier {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

impl<T> Key<T> {
    /// A key that may be left out.
    pub const fn new(
        name: &'static str,
        form: Form,
        about: &'static str,
        example: &'static str,
    ) -> Self {
        Self {
            name,
            form,
            required: false,
            about,
            example,
            value: PhantomData,
        }
    }

    /// The same key, without which its table is incomplete.
    #[must_use]
    pub const fn required(mut self) -> Self {
        self.required = true;
        self
    }

    /// The key without its type, for a table's list.
    pub const fn entry(&self) -> Entry {
        Entry {
            name: self.name,
            form: self.form,
            required: self.required,
            about: self.about,
            example: self.example,
        }
    }
}

impl Key<String> {
    /// A key for free text.
    pub const fn text(name: &'static str, about: &'static str, example: &'static str) -> Self {
        Self::new(name, Form::Text, about, example)
    }
}

impl Key<Identifier> {
    /// A key for the writer's name of one thing.
    pub const fn id(name: &'static str, about: &'static str, example: &'static str) -> Self {
        Self::new(name, Form::Identifier, about, example)
    }
}

impl<T: Quantity> Key<Measured<T>> {
    /// A key for a quantity of the type's kind.
    pub const fn quantity(name: &'static str, about: &'static str, example: &'static str) -> Self {
        Self::new(name, Form::Quantity(T::KIND), about, example)
    }
}

impl<W: Word> Key<W> {
    /// A key for one word of a closed list.
    pub const fn word(name: &'static str, about: &'static str, example: &'static str) -> Self {
        Self::new(name, Form::Word(W::list), about, example)
    }
}

/// A key of a table, its type put aside.
#[derive(Clone, Copy, Debug)]
pub struct Entry {
    /// As it stands in the file.
    pub name: &'static str,
    /// The form of its value.
    pub form: Form,
    /// Whether the table is incomplete without it.
    pub required: bool,
    /// One line about it.
    pub about: &'static str,
    /// The value of an example line.
    pub example: &'static str,
}

impl Entry {
    /// The table under it, if it holds one or several.
    pub fn inner(&self) -> Option<&'static Table> {
        match self.form {
            Form::Table(table) | Form::Tables(table) => Some(table),
            _ => None,
        }
    }

    /// A line of it with its example, or with a table in which every key has its own.
    pub fn example_line(&self) -> String {
        let name = self.name;
        let Some(table) = self.inner() else {
            return format!("{name} = {}", self.example);
        };
        let keys: Vec<String> = table.keys.iter().map(Entry::example_line).collect();
        let inline = format!("{{ {} }}", keys.join(", "));
        match self.form {
            Form::Tables(_) => format!("{name} = [ {inline} ]"),
            _ => format!("{name} = {inline}"),
        }
    }
}

/// The keys that may stand together.
#[derive(Debug)]
pub struct Table {
    /// Name as the file writes it; empty for the top of a file.
    pub name: &'static str,
    /// One line about it.
    pub about: &'static str,
    /// Its keys.
    pub keys: &'static [Entry],
}

impl Table {
    /// All names of keys.
    pub fn names(&self) -> Vec<&'static str> {
        self.keys.iter().map(|entry| entry.name).collect()
    }

    /// It and all tables below it.
    pub fn with_inner(&'static self) -> Vec<&'static Table> {
        let below = self.keys.iter().filter_map(Entry::inner);
        let below = below.flat_map(Table::with_inner);
        std::iter::once(self).chain(below).collect()
    }

    /// A text in which every key of it stands with its example.
    pub fn example_text(&self) -> String {
        let lines = self.keys.iter().map(Entry::example_line);
        lines.flat_map(|line| [line, "\n".to_owned()]).collect()
    }

    /// The entry of a name.
    pub fn entry(&self, name: &str) -> Option<&Entry> {
        self.keys.iter().find(|entry| entry.name == name)
    }
}

/// The kinds of file a book holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FileKind {
    /// `rimebook.toml`.
    Book,
    /// `site.toml`.
    Site,
    /// `system.toml`.
    System,
    /// `visit.toml`.
    Visit,
    /// `refrigerant.toml`.
    Refrigerant,
    /// `readings.toml`.
    Readings,
    /// `findings.md`.
    Findings,
}

impl FileKind {
    /// The file's name in its folder.
    pub fn file_name(self) -> &'static str {
        match self {
            FileKind::Book => "rimebook.toml",
            FileKind::Site => "site.toml",
            FileKind::System => "system.toml",
            FileKind::Visit => "visit.toml",
            FileKind::Refrigerant => "refrigerant.toml",
            FileKind::Readings => "readings.toml",
            FileKind::Findings => "findings.md",
        }
    }
}
