//! Reads one table with typed keys: every wrong, missing or unknown key is told, and nothing wrong is used.

use crate::notes::book_notes::is_unusual;
use crate::notes::from_note::{FromNote, Reading, read_list};
use crate::notes::toml_text::TomlText;
use crate::text::{Diagnostic, Diagnostics, FileId, Noted, Source, Span, nearest, or_list};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::{Form, Key, Table, TableMark};
use toml::de::{DeTable, DeValue};

/// Where a table stands, and whether all of it could be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whole {
    /// Its header or opening.
    pub span: Span,
    /// Whether every key of it could be read; if not, nothing is said of keys that are missing.
    pub sound: bool,
    /// Whether every table under it could be recognised; if not, a name may be among the lost ones.
    pub complete: bool,
}

/// What all readers of one file share.
pub(super) struct FileReader<'f, 's> {
    pub file: FileId,
    pub source: &'s Source,
    pub text: &'f TomlText<'s>,
    pub diagnostics: Diagnostics,
    /// Text that may reach an output and holds more than plain ASCII.
    pub printable: Vec<Span>,
}

/// One table being read.
pub(super) struct TableReader<'t> {
    tree: &'t DeTable<'t>,
    table: &'static Table,
    span: Span,
    sound: bool,
    complete: bool,
}

impl<'f> FileReader<'f, '_> {
    /// The top of the file.
    pub fn top(&self, table: &'static Table) -> TableReader<'f> {
        TableReader::new(self.text.tree.get_ref(), table, Span::file_start(self.file))
    }
}

impl<'t> TableReader<'t> {
    fn new(tree: &'t DeTable<'t>, table: &'static Table, span: Span) -> Self {
        Self {
            tree,
            table,
            span,
            sound: true,
            complete: true,
        }
    }

    /// The value of a key, if it is there and right.
    pub fn get<T: FromNote>(
        &mut self,
        file: &mut FileReader<'_, '_>,
        key: &Key<T>,
    ) -> Option<Noted<T>> {
        let value = self.take(file, key.name, key.required, key.example)?;
        let reading = Reading {
            file: file.file,
            source: file.source,
            key: key.name,
            form: key.form,
            example: key.example,
        };
        let read = T::read(value, &reading, &mut file.diagnostics);
        self.sound &= read.is_some();
        if matches!(key.form, Form::Text)
            && key.name != PRIVATE.name
            && read.is_some()
            && is_unusual(&file.source.text[value.span()])
        {
            file.printable.push(Span::new(file.file, value.span()));
        }
        read.map(|read| Noted::new(read, Span::new(file.file, value.span())))
    }

    /// The values of a key that holds a list; wrong ones are told and left out.
    pub fn list<T: FromNote>(
        &mut self,
        file: &mut FileReader<'_, '_>,
        key: &Key<Vec<Noted<T>>>,
    ) -> Vec<Noted<T>> {
        let Some(value) = self.take(file, key.name, key.required, key.example) else {
            return Vec::new();
        };
        let reading = Reading {
            file: file.file,
            source: file.source,
            key: key.name,
            form: key.form,
            example: key.example,
        };
        let (list, sound) = read_list(value, &reading, &mut file.diagnostics);
        self.sound &= sound;
        list
    }

    /// The table under a key.
    pub fn table(
        &mut self,
        file: &mut FileReader<'_, '_>,
        key: &Key<TableMark>,
        table: &'static Table,
    ) -> Option<TableReader<'t>> {
        let value = self.take(file, key.name, key.required, key.example)?;
        let span = Span::new(file.file, value.span());
        if let DeValue::Table(inner) = value.get_ref() {
            return Some(TableReader::new(inner, table, span));
        }
        self.sound = false;
        self.complete = false;
        let double = matches!(value.get_ref(), DeValue::Array(items)
            if items.iter().all(|item| matches!(item.get_ref(), DeValue::Table(_))));
        let mut diagnostic = Diagnostic::error(
            "table-expected",
            span,
            format!("`{}` holds keys of its own", key.name),
        );
        diagnostic = if double {
            diagnostic
                .here("there is only one of these")
                .cure(format!("write `[{}]` with single brackets, once", key.name))
        } else {
            diagnostic
                .here(format!(
                    "expected a table, found {}",
                    found(value.get_ref())
                ))
                .cure(format!("write `{} = {}`", key.name, table_example(table)))
        };
        file.diagnostics.push(diagnostic);
        None
    }

    /// The tables under a key.
    pub fn tables(
        &mut self,
        file: &mut FileReader<'_, '_>,
        key: &Key<Vec<TableMark>>,
        table: &'static Table,
    ) -> Vec<TableReader<'t>> {
        let Some(value) = self.take(file, key.name, key.required, key.example) else {
            return Vec::new();
        };
        let items = match value.get_ref() {
            DeValue::Array(items) => items,
            other => {
                self.sound = false;
                self.complete = false;
                let single = matches!(other, DeValue::Table(_));
                let span = Span::new(file.file, value.span());
                let diagnostic = Diagnostic::error(
                    "list-expected",
                    span,
                    format!("there may be several of `{}`", key.name),
                );
                file.diagnostics.push(if single {
                    diagnostic
                        .here("single brackets make it the only one")
                        .patch("use double brackets", span, format!("[[{}]]", key.name))
                } else {
                    diagnostic
                        .here(format!("expected tables, found {}", found(other)))
                        .cure(format!("write `[[{}]]` on a line of its own", key.name))
                });
                return Vec::new();
            }
        };
        let mut readers = Vec::new();
        for item in items {
            let span = Span::new(file.file, item.span());
            if let DeValue::Table(inner) = item.get_ref() {
                readers.push(TableReader::new(inner, table, span));
            } else {
                self.sound = false;
                file.diagnostics.push(
                    Diagnostic::error(
                        "table-expected",
                        span,
                        format!("each of `{}` holds keys of its own", key.name),
                    )
                    .here(format!("expected a table, found {}", found(item.get_ref())))
                    .cure(format!("write `{}`", table_example(table))),
                );
            }
        }
        readers
    }

    fn take(
        &mut self,
        file: &mut FileReader<'_, '_>,
        name: &'static str,
        required: bool,
        example: &str,
    ) -> Option<&'t toml::Spanned<DeValue<'t>>> {
        #[cfg(test)]
        crate::notes::asked::record(self.table, name);
        let Some((key, value)) = self.tree.get_key_value(name) else {
            if file.text.may_hold(file.source, self.span, name) || (required && self.misspelt(name))
            {
                self.sound = false;
            } else if required {
                self.sound = false;
                file.diagnostics.push(self.missing(name, example, file));
            }
            return None;
        };
        let bad = file.text.is_bad(file.source, &key.span())
            || (!holds_tables(value.get_ref()) && file.text.is_bad(file.source, &value.span()));
        if bad {
            self.sound = false;
            return None;
        }
        Some(value)
    }

    /// Whether an unknown key of this table is told as a slip of this one.
    fn misspelt(&self, name: &'static str) -> bool {
        let known = self.table.names();
        self.tree.iter().any(|(key, _)| {
            let key = key.get_ref().as_ref();
            !known.contains(&key) && nearest(key, &[name]).is_some()
        })
    }

    fn missing(&self, name: &str, example: &str, file: &FileReader<'_, '_>) -> Diagnostic {
        let about = self.table.entry(name).map_or("", |entry| entry.about);
        let of = match self.table.name {
            "" => file.source.path.rsplit('/').next().unwrap_or("").to_owned(),
            name => format!("[[{name}]]"),
        };
        Diagnostic::error(
            "key-missing",
            self.span,
            format!("`{name}` is missing in {of}"),
        )
        .here("should be in this table")
        .why(about)
        .cure(format!("add a line such as `{name} = {example}`"))
    }

    /// Tells every key that nobody asked for.
    pub fn finish(mut self, input: &mut FileReader<'_, '_>) -> Whole {
        let of_table = |name: &str| self.table.entry(name).is_some();
        let mut unknown: Vec<_> = self
            .tree
            .iter()
            .filter(|(key, _)| !of_table(key.get_ref()))
            .collect();
        unknown.sort_by_key(|(key, _)| key.span().start);
        let known = if unknown.is_empty() {
            Vec::new()
        } else {
            self.table.names()
        };
        for (key, value) in unknown {
            self.sound = false;
            self.complete &= !matches!(value.get_ref(), DeValue::Table(_) | DeValue::Array(_));
            if input.text.is_bad(input.source, &key.span()) {
                continue;
            }
            let span = Span::new(input.file, key.span());
            let name = key.get_ref();
            let place = match self.table.name {
                "" => "at the top of this file".to_owned(),
                table => format!("in [[{table}]]"),
            };
            let mut diagnostic =
                Diagnostic::error("key-unknown", span, format!("unknown key `{name}` {place}"))
                    .here("not one of the keys here")
                    .why("a misspelt key would silently be left out of the report");
            if !self.table.name.is_empty() {
                diagnostic = diagnostic.also(self.span, "in this table");
            }
            let free: Vec<&'static str> = known
                .iter()
                .copied()
                .filter(|known| !self.tree.contains_key(*known))
                .collect();
            diagnostic = match nearest(name, &free).or_else(|| nearest(name, &known)) {
                Some(near) => diagnostic.patch(format!("did you mean `{near}`?"), span, near),
                None => diagnostic.cure(format!("the keys here are {}", or_list(&known))),
            };
            input.diagnostics.push(diagnostic);
        }
        Whole {
            span: self.span,
            sound: self.sound,
            complete: self.complete && !input.text.lost_tables,
        }
    }
}

/// Whether a value is a table or a list with tables in it: what is wrong in them is their own.
fn holds_tables(value: &DeValue<'_>) -> bool {
    match value {
        DeValue::Table(_) => true,
        DeValue::Array(items) => items
            .iter()
            .any(|item| matches!(item.get_ref(), DeValue::Table(_))),
        _ => false,
    }
}

fn table_example(table: &Table) -> String {
    let parts: Vec<String> = table
        .keys
        .iter()
        .filter(|entry| entry.required)
        .map(|entry| format!("{} = {}", entry.name, entry.example))
        .collect();
    format!("{{ {} }}", parts.join(", "))
}

/// What was found, in words.
pub(super) fn found(value: &DeValue<'_>) -> &'static str {
    match value {
        DeValue::String(_) => "text",
        DeValue::Integer(_) | DeValue::Float(_) => "a bare number",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "a date or time",
        DeValue::Array(_) => "a list",
        DeValue::Table(_) => "a table",
    }
}
