//! TOML text to a tree with spans, every syntax error told in words for people who are not programmers.

use crate::text::{Diagnostic, Diagnostics, FileId, Source, Span};
use std::collections::BTreeSet;
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// The tree of a file, and what of it could not be read.
pub(super) struct TomlText<'s> {
    pub tree: Spanned<DeTable<'s>>,
    /// Lines (from 1) that could not be parted into keys and values: nothing on them is used.
    bad_lines: BTreeSet<usize>,
    /// Bytes of single values that cannot be, such as `07`: they are never used.
    bad_values: Vec<Range<usize>>,
    /// Whether a header or a bracket is among the bad lines, so that whole tables may be lost.
    pub lost_tables: bool,
}

impl TomlText<'_> {
    /// Whether any of these bytes could not be read.
    pub fn is_bad(&self, source: &Source, range: &Range<usize>) -> bool {
        if self.bad_lines.is_empty() && self.bad_values.is_empty() {
            return false;
        }
        let first = source.position(range.start as u32).0;
        let last = source.position(range.end as u32).0;
        let overlaps = |bad: &Range<usize>| bad.start < range.end && range.start < bad.end;
        self.bad_lines.range(first..=last).next().is_some() || self.bad_values.iter().any(overlaps)
    }

    /// Whether a key that is not in a table may be on a line of it that could not be read.
    pub fn may_hold(&self, source: &Source, table: Span, key: &str) -> bool {
        if self.bad_lines.is_empty() {
            return false;
        }
        let first = source.position(table.start).0;
        let last = source.position(table.end).0;
        if self.bad_lines.range(first..=last).next().is_some() {
            return true;
        }
        let text = |line: usize| source.text[source.line(line)].trim_start();
        let lines = source.text.lines().count();
        (first..=lines)
            .filter(|line| *line > last || table.end == 0)
            .take_while(|line| !text(*line).starts_with('['))
            .filter(|line| self.bad_lines.contains(line))
            .any(|line| key_of_line(text(line)).is_some_and(|known| known == key))
    }
}

/// Most lines told of one file.
const MOST_TOLD: usize = 50;

type Fault = (Range<usize>, String);

/// A text in which every line that would end its reading is blanked, byte for byte, so that what
/// comes after it is read too; and what was wrong on those lines.
struct Mended {
    text: String,
    faults: Vec<Fault>,
    blanked: BTreeSet<usize>,
}

impl Mended {
    /// Blanks line by line until all the rest is read, within bounds.
    fn of(source: &Source) -> Self {
        let mut mended = Self {
            text: source.text.clone(),
            faults: Vec::new(),
            blanked: BTreeSet::new(),
        };
        while mended.faults.len() <= MOST_TOLD && mended.blank_next(source) {}
        mended
    }

    fn blank_next(&mut self, source: &Source) -> bool {
        let (tree, errors) = DeTable::parse_recoverable(&self.text);
        let next = errors
            .iter()
            .filter_map(|error| Some((error.span()?, error.message())))
            .filter(|(_, message)| ends_reading(message))
            .min_by_key(|(range, _)| range.start);
        let Some((range, message)) = next else {
            return false;
        };
        let tree = tree.get_ref();
        let opening = if message.starts_with("unclosed") {
            opening_bracket(tree, range.start)
        } else if message.starts_with("invalid") {
            let text = tree.iter().find_map(|(_, value)| plain_at(value, &range));
            text.map(|text| text.start)
        } else {
            None
        };
        let at = opening.map_or(range, |opening| opening..opening + 1);
        let first = source.position(at.start as u32).0;
        let header = self.text[source.line(first)].trim_start().starts_with('[');
        let goes_on = self.text[source.line(first)]
            .trim_end()
            .ends_with(['[', '{']);
        let last = if (opening.is_some() || goes_on) && !header {
            last_of_value(source, first)
        } else {
            first
        };
        let mut text = self.text.clone();
        self.faults.push((at, message.to_owned()));
        for line in first..=last {
            if !self.blanked.insert(line) {
                return false;
            }
            let range = source.line(line);
            text.replace_range(range.clone(), &blank(range.len(), header));
        }
        self.text = text;
        true
    }
}

/// Whether the parser gives up what comes after such an error.
fn ends_reading(message: &str) -> bool {
    ["key with no value", "unclosed", "invalid multi-line"]
        .iter()
        .any(|start| message.starts_with(start))
}

/// The last line of a value that is never closed: before the next header or `key =`.
fn last_of_value(source: &Source, first: usize) -> usize {
    let text = |line: usize| source.text[source.line(line)].trim_start();
    let lines = source.text.lines().count();
    (first + 1..=lines)
        .find(|line| {
            let text = text(*line);
            text.starts_with('[') || (text.contains('=') && key_of_line(text).is_some())
        })
        .map_or(lines, |next| next - 1)
}

/// Nothing, or in place of a header one of a table that nobody reads.
fn blank(length: usize, header: bool) -> String {
    if header && length > 4 {
        format!("[[{}]]", "x".repeat(length - 4))
    } else {
        " ".repeat(length)
    }
}

/// Parses a file, telling every syntax error once; `room` is for a text that has to be mended.
pub(super) fn parse<'m>(
    file: FileId,
    source: &'m Source,
    room: &'m mut String,
    diagnostics: &mut Diagnostics,
) -> TomlText<'m> {
    let (mut tree, mut errors) = DeTable::parse_recoverable(&source.text);
    let (mut faults, mut blanked) = (Vec::new(), BTreeSet::new());
    if errors.iter().any(|error| ends_reading(error.message())) {
        let mended = Mended::of(source);
        (*room, faults, blanked) = (mended.text, mended.faults, mended.blanked);
        (tree, errors) = DeTable::parse_recoverable(room);
    }
    faults.extend(
        errors
            .iter()
            .map(|error| (error.span().unwrap_or(0..0), error.message().to_owned())),
    );
    faults.sort_by_key(|(range, message)| (range.start, message.clone()));
    let line_of = |range: &Range<usize>| source.position(range.start as u32).0;
    let (of_values, of_lines): (Vec<_>, Vec<_>) = faults
        .into_iter()
        .partition(|(range, message)| wrong_value(tree.get_ref(), range, message).is_some());
    let mut bad_lines = BTreeSet::new();
    let mut wrong = Vec::new();
    for fault in &of_lines {
        if bad_lines.insert(line_of(&fault.0)) {
            wrong.push(fault);
        }
    }
    bad_lines.extend(&blanked);
    for (range, message) in wrong.iter().take(MOST_TOLD) {
        diagnostics.push(explain(file, source, tree.get_ref(), range, message));
    }
    if let Some((range, _)) = wrong.get(MOST_TOLD) {
        let more = wrong.len() - MOST_TOLD;
        let line = Span::new(file, source.line(line_of(range)));
        diagnostics.push(
            Diagnostic::error(
                "not-toml",
                line,
                format!("{more} more lines cannot be read"),
            )
            .here("the first of them")
            .cure("is this another kind of file? Mend the first lines, then check again"),
        );
    }
    let mut bad_values = Vec::new();
    for (range, message) in &of_values {
        let value = wrong_value(tree.get_ref(), range, message)
            .filter(|value| !bad_lines.contains(&line_of(range)) && !bad_values.contains(value));
        if let Some(value) = value {
            diagnostics.push(explain(file, source, tree.get_ref(), range, message));
            bad_values.push(value);
        }
    }
    let lost_tables = wrong.len() > MOST_TOLD
        || bad_lines.iter().any(|line| {
            let text = source.text[source.line(*line)].trim();
            text.starts_with(['[', '{', ']', '}']) || text.ends_with(['[', '{', ','])
        });
    TomlText {
        tree,
        bad_lines,
        bad_values,
        lost_tables,
    }
}

/// The bytes of the one value that an error is about, where the rest of its line was read.
fn wrong_value(table: &DeTable<'_>, range: &Range<usize>, message: &str) -> Option<Range<usize>> {
    let of_value = [
        "must be quoted",
        "leading zero",
        "invalid date",
        "invalid time",
    ];
    of_value
        .iter()
        .any(|part| message.contains(part))
        .then(|| table.iter().find_map(|(_, value)| plain_at(value, range)))
        .flatten()
}

/// The plain value, not empty, whose bytes hold a range.
fn plain_at(value: &Spanned<DeValue<'_>>, range: &Range<usize>) -> Option<Range<usize>> {
    match value.get_ref() {
        DeValue::Table(table) => table.iter().find_map(|(_, inner)| plain_at(inner, range)),
        DeValue::Array(items) => items.iter().find_map(|item| plain_at(item, range)),
        _ => Some(value.span())
            .filter(|span| span.start <= range.start && range.end <= span.end && !span.is_empty()),
    }
}

fn opening_bracket(table: &DeTable<'_>, end: usize) -> Option<usize> {
    table.iter().find_map(|(_, value)| opening_in(value, end))
}

fn opening_in(value: &Spanned<DeValue<'_>>, end: usize) -> Option<usize> {
    let span = value.span();
    match value.get_ref() {
        DeValue::Array(items) => items
            .iter()
            .find_map(|item| opening_in(item, end))
            .or_else(|| (span.end == end).then_some(span.start)),
        DeValue::Table(table) => opening_bracket(table, end)
            .or_else(|| (span.end == end && span.start < end).then_some(span.start)),
        _ => None,
    }
}

/// The bare key a line begins with, whether or not `=` follows it.
fn key_of_line(line: &str) -> Option<String> {
    let key = line.split(['=', ' ', '\t', ':']).next()?.trim();
    let plain = !key.is_empty()
        && key
            .chars()
            .all(|c| c.is_ascii_alphanumeric() || c == '-' || c == '_');
    plain.then(|| key.to_owned())
}

const CURLY: &[char] = &['“', '”', '„', '‟', '‘', '’', '«', '»'];

fn explain(
    file: FileId,
    source: &Source,
    tree: &DeTable<'_>,
    range: &Range<usize>,
    message: &str,
) -> Diagnostic {
    if message.starts_with("duplicate key") {
        return duplicate(file, source, tree, range);
    }
    let (line, _) = source.position(range.start as u32);
    let line_range = source.line(line);
    let text = &source.text[line_range.clone()];
    let value = wrong_value(tree, range, message).or_else(|| {
        let at = range.start.saturating_sub(line_range.start);
        value_on(text, at).map(|part| line_range.start + part.start..line_range.start + part.end)
    });
    let at = |range: Range<usize>| Span::new(file, range);
    if let Some(value) = value {
        let raw = &source.text[value.clone()];
        let span = at(value.clone());
        if raw.contains(CURLY) {
            return Diagnostic::error("curly-quotes", span, "curly quotation marks around a value")
                .here("these marks are for print, not for notes")
                .patch("use straight quotation marks", span, straight(raw));
        }
        if let Some(pointed) = decimal_point(raw) {
            let number = pointed.split_whitespace().count() == 1;
            let to = if number {
                format!("\"{pointed} …\"")
            } else {
                format!("\"{pointed}\"")
            };
            let words = if number {
                "write the decimal with a point and the unit after it, in quotation marks"
            } else {
                "write the decimal with a point, in quotation marks"
            };
            return Diagnostic::error(
                "decimal-comma",
                span,
                format!("`{raw}` has a comma where a decimal point belongs"),
            )
            .here("a comma could be a decimal or a thousand")
            .why("a number is never guessed")
            .patch(words, span, to);
        }
        if message.contains("leading zero") {
            let plain = raw.trim_start_matches('0');
            let plain = if plain.is_empty() { "0" } else { plain };
            return Diagnostic::error("leading-zero", span, format!("`{raw}` begins with a zero"))
                .here("a number has no zero in front")
                .patch("write it without", span, plain);
        }
        if let Some(days) = slashed_date(raw) {
            let mut diagnostic = Diagnostic::error(
                "date-with-slashes",
                span,
                format!("`{raw}` is not a date as the notes write it"),
            )
            .here("year, month and day, joined by hyphens")
            .why("day and month in another order would be a guess");
            for day in days {
                diagnostic = diagnostic.patch("write year-month-day", span, day);
            }
            return diagnostic;
        }
        if message.contains("must be quoted") && !raw.contains('"') {
            return Diagnostic::error(
                "value-not-quoted",
                span,
                format!("`{raw}` stands without quotation marks"),
            )
            .here("text and quantities stand in quotation marks")
            .patch("put it in quotation marks", span, format!("\"{raw}\""));
        }
        if message.contains("invalid basic string") || message.contains("invalid literal string") {
            return Diagnostic::error(
                "text-not-closed",
                span,
                "this text has no closing quotation mark",
            )
            .here("begins here and does not end on its line")
            .patch(
                "close it",
                span,
                format!("\"{}\"", raw.trim_matches('"').trim_end()),
            );
        }
        if message.contains("invalid date") || message.contains("invalid time") {
            let reason = message.split_once(", ").map_or(message, |(_, rest)| rest);
            return Diagnostic::error(
                "date-impossible",
                span,
                format!("`{raw}` is no date and time"),
            )
            .here(reason.to_owned())
            .cure("write it as 2026-06-18 or 2026-06-18T11:05");
        }
    }
    if message.starts_with("unclosed") {
        return Diagnostic::error(
            "bracket-not-closed",
            at(range.clone()),
            "this bracket is never closed",
        )
        .here("opened here")
        .why("everything up to the end of the table was taken for part of it")
        .cure("close it with the same kind of bracket: `[ … ]` or `{ … }`");
    }
    let span = if range.is_empty() {
        at(line_range)
    } else {
        at(range.clone())
    };
    Diagnostic::error("not-toml", span, "this line cannot be read")
        .here(message.to_owned())
        .cure("a line is `key = value`; text and quantities stand in quotation marks")
}

fn duplicate(
    file: FileId,
    source: &Source,
    tree: &DeTable<'_>,
    range: &Range<usize>,
) -> Diagnostic {
    let key = &source.text[range.clone()];
    let mut diagnostic = Diagnostic::error(
        "key-twice",
        Span::new(file, range.clone()),
        format!("`{key}` stands twice in the same table"),
    )
    .here("the second one")
    .why("only one of them can be meant")
    .cure("keep one of the two lines");
    let mut earlier = Vec::new();
    collect_keys(tree, key, &mut earlier);
    if let Some(first) = earlier
        .into_iter()
        .filter(|found| found.end <= range.start)
        .max_by_key(|found| found.start)
    {
        diagnostic = diagnostic.also(Span::new(file, first), "the first one");
    }
    diagnostic
}

fn collect_keys(table: &DeTable<'_>, key: &str, found: &mut Vec<Range<usize>>) {
    for (name, value) in table {
        if name.get_ref() == key {
            found.push(name.span());
        }
        match value.get_ref() {
            DeValue::Table(inner) => collect_keys(inner, key, found),
            DeValue::Array(items) => {
                for item in items {
                    if let DeValue::Table(inner) = item.get_ref() {
                        collect_keys(inner, key, found);
                    }
                }
            }
            _ => {}
        }
    }
}

/// The bytes of the value on a `key = value` line, a comment left out; within an inline table, of
/// the value that a place is in.
fn value_on(line: &str, at: usize) -> Option<Range<usize>> {
    let braces = line.find('{').filter(|brace| *brace < at);
    let before = line.get(..at.min(line.len()))?;
    let equals = match braces {
        Some(_) => before.rfind('=')?,
        None => line.find('=')?,
    };
    let rest = &line[equals + 1..];
    let mut quoted = false;
    let mut end = rest.len();
    for (index, c) in rest.char_indices() {
        let ends = match c {
            '#' => true,
            '}' => braces.is_some(),
            ',' => braces.is_some() && !rest[index + 1..].starts_with(|c: char| c.is_ascii_digit()),
            _ => false,
        };
        quoted ^= c == '"';
        if ends && !quoted {
            end = index;
            break;
        }
    }
    let value = &rest[..end];
    let start = equals + 1 + (value.len() - value.trim_start().len());
    let trimmed = value.trim();
    (!trimmed.is_empty()).then(|| start..start + trimmed.len())
}

fn straight(raw: &str) -> String {
    let inner = raw.trim_matches(|c| CURLY.contains(&c) || c == '"' || c == '\'');
    format!("\"{}\"", inner.replace(['“', '”', '„', '‟'], "'"))
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit())
}

/// `12,5` or `12,5 kg` with a point for the comma.
fn decimal_point(raw: &str) -> Option<String> {
    let (whole, rest) = raw.split_once(',')?;
    let part = rest.split_whitespace().next()?;
    let plain = is_digits(whole.trim_start_matches(['-', '+'])) && is_digits(part);
    plain.then(|| format!("{whole}.{rest}"))
}

/// The readings of `12/03/2026` or `12.03.2026` as year-month-day.
fn slashed_date(raw: &str) -> Option<Vec<String>> {
    let parts: Vec<&str> = raw.split(['/', '.']).collect();
    let [a, b, year] = parts.as_slice() else {
        return None;
    };
    if year.len() != 4 || ![a, b, year].iter().all(|part| is_digits(part)) {
        return None;
    }
    let (a, b): (u8, u8) = (a.parse().ok()?, b.parse().ok()?);
    let mut days = Vec::new();
    for (month, day) in [(b, a), (a, b)] {
        let text = format!("{year}-{month:02}-{day:02}");
        if text.parse::<jiff::civil::Date>().is_ok() && !days.contains(&text) {
            days.push(text);
        }
    }
    (!days.is_empty()).then_some(days)
}
