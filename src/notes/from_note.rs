//! From a value of the TOML tree to a typed value, or a diagnostic with the corrected line.

use crate::notes::table_reader::found;
use crate::quantity::{Kind, Measured, Quantity, Refusal, UnitSystem, plausible, print_si};
use crate::text::{Diagnostic, Diagnostics, FileId, Noted, Source, Span, nearest, quoted_or};
use crate::vocabulary::{
    Amount, DateOrMonth, DateOrTime, Designation, Form, Identifier, LocalTime, Word,
};
use jiff::civil::{Date, DateTime};
use jiff::tz::Offset;
use std::ops::Range;
use toml::Spanned;
use toml::de::DeValue;
use toml::value::Datetime;

/// What is known of the key whose value is read.
pub(super) struct Reading<'r> {
    pub file: FileId,
    pub source: &'r Source,
    pub key: &'static str,
    pub form: Form,
    pub example: &'static str,
}

type Value<'v> = Spanned<DeValue<'v>>;

/// A type that a value of the notes can have.
pub(super) trait FromNote: Sized {
    /// Reads it, or tells why not.
    fn read(
        value: &Value<'_>,
        reading: &Reading<'_>,
        diagnostics: &mut Diagnostics,
    ) -> Option<Self>;
}

impl Reading<'_> {
    fn span(&self, value: &Value<'_>) -> Span {
        Span::new(self.file, value.span())
    }

    /// The place of a part of a text value: exact where the text has no escapes, else all of it.
    fn within(&self, value: &Value<'_>, text: &str, part: Range<usize>) -> Span {
        let whole = self.span(value);
        let inner = whole.part(1..value.span().len().saturating_sub(1));
        if self.source.text.get(inner.range()) == Some(text) {
            inner.part(part)
        } else {
            whole
        }
    }

    fn wrong(&self, value: &Value<'_>, expected: &str) -> Diagnostic {
        Diagnostic::error(
            "form-unexpected",
            self.span(value),
            format!("`{}` should be {expected}", self.key),
        )
        .here(format!(
            "expected {expected}, found {}",
            found(value.get_ref())
        ))
        .cure(format!("write it as `{} = {}`", self.key, self.example))
    }

    fn text<'v>(
        &self,
        value: &'v Value<'_>,
        expected: &str,
        diagnostics: &mut Diagnostics,
    ) -> Option<&'v str> {
        let text = value.get_ref().as_str();
        if text.is_none() {
            diagnostics.push(self.wrong(value, expected));
        }
        text
    }
}

impl FromNote for String {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let text = reading.text(value, "text in quotation marks", d)?;
        if text.trim().is_empty() {
            d.push(
                Diagnostic::error(
                    "text-empty",
                    reading.span(value),
                    format!("`{}` is empty", reading.key),
                )
                .here("nothing between the quotation marks")
                .cure("write it, or take the line out"),
            );
            return None;
        }
        Some(text.to_owned())
    }
}

impl FromNote for Identifier {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let text = reading.text(value, "a short name in quotation marks", d)?;
        if let Some((at, c)) = text
            .char_indices()
            .find(|(_, c)| c.is_whitespace() || c.is_control() || "{}[]#,\"".contains(*c))
        {
            let hyphened: String = text
                .split_whitespace()
                .collect::<Vec<_>>()
                .join("-")
                .replace(|c: char| "{}[]#,\"".contains(c), "");
            d.push(
                Diagnostic::error(
                    "name-with-space",
                    reading.within(value, text, at..at + c.len_utf8()),
                    format!("`{text}` cannot be a short name"),
                )
                .here("no spaces, commas or brackets in a short name")
                .patch(
                    "join it with hyphens, here and wherever it is used",
                    reading.span(value),
                    format!("\"{hyphened}\""),
                ),
            );
            return None;
        }
        if text.is_empty() {
            d.push(reading.wrong(value, "a short name").here("it is empty"));
            return None;
        }
        Some(Identifier(text.to_owned()))
    }
}

impl FromNote for Designation {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        reading
            .text(value, "a refrigerant in quotation marks", d)
            .map(|text| Designation(text.to_owned()))
    }
}

impl FromNote for bool {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let read = value.get_ref().as_bool();
        if read.is_none() {
            let mut diagnostic = reading.wrong(value, "true or false");
            diagnostic.cures.clear();
            let likely = match value.get_ref().as_str().map(str::to_lowercase).as_deref() {
                Some("true" | "yes" | "y") => Some("true"),
                Some("false" | "no" | "n") => Some("false"),
                _ => None,
            };
            d.push(match likely {
                Some(word) => diagnostic.patch(
                    "write it without quotation marks",
                    reading.span(value),
                    word,
                ),
                None => diagnostic.cure("write true or false, without quotation marks"),
            });
        }
        read
    }
}

impl FromNote for i64 {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let read = value
            .get_ref()
            .as_integer()
            .and_then(|integer| i64::from_str_radix(integer.as_str(), integer.radix()).ok());
        if read.is_none() {
            d.push(reading.wrong(value, "a whole number"));
        }
        read
    }
}

impl<W: Word> FromNote for W {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let text = reading.text(value, "one of a few words, in quotation marks", d)?;
        let read = W::of(text);
        if read.is_none() {
            let words: Vec<&'static str> = W::WORDS.iter().map(|(word, _, _)| *word).collect();
            d.push(word_unknown(
                reading.key,
                text,
                reading.span(value),
                &words,
                true,
            ));
        }
        read
    }
}

/// Tells a word that is not in a closed list, with the nearest one or all of them.
pub(super) fn word_unknown(
    key: &str,
    text: &str,
    span: Span,
    words: &[&'static str],
    quoted: bool,
) -> Diagnostic {
    let diagnostic = Diagnostic::error(
        "word-unknown",
        span,
        format!("`{text}` is not one of the words for `{key}`"),
    )
    .here("not a word of this list");
    let list = format!("the words are {}", quoted_or(words));
    match nearest(text, words) {
        Some(near) => {
            let to = if quoted {
                format!("\"{near}\"")
            } else {
                near.to_owned()
            };
            diagnostic
                .cure(list)
                .patch(format!("did you mean `{near}`?"), span, to)
        }
        None => diagnostic.cure(list),
    }
}

impl<T: Quantity> FromNote for Measured<T> {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let text = quantity_text(value, reading, &[T::KIND], d)?;
        match crate::quantity::parse::<T>(text) {
            Ok(measured) => {
                implausible(value, reading, text, measured.value, d);
                Some(measured)
            }
            Err(refusal) => {
                d.push(refused(value, reading, text, refusal));
                None
            }
        }
    }
}

/// Name of the caution about a quantity far outside what is expected.
pub const IMPLAUSIBLE: &str = "quantity-implausible";

fn implausible<T: Quantity>(
    value: &Value<'_>,
    reading: &Reading<'_>,
    text: &str,
    quantity: T,
    d: &mut Diagnostics,
) {
    let flavour = quantity.flavour();
    let Some((low, high)) = plausible(flavour) else {
        return;
    };
    if (low..=high).contains(&quantity.si()) {
        return;
    }
    let print = |si| print_si(flavour, si, None, UnitSystem::Metric);
    d.push(
        Diagnostic::caution(
            IMPLAUSIBLE,
            reading.span(value),
            format!(
                "`{text}` is far outside what is expected of `{}`",
                reading.key
            ),
        )
        .here(format!("expected {} to {}", print(low), print(high)))
        .why("a slipped decimal point or a wrong unit makes every figure that rests on it wrong")
        .cure("look at the number and its unit again; if it is right, leave it"),
    );
}

impl FromNote for Amount {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let Form::Amount(kinds) = reading.form else {
            return None;
        };
        let text = quantity_text(value, reading, kinds, d)?;
        let mut refusals = Vec::new();
        for kind in kinds {
            match crate::quantity::read(*kind, text) {
                Ok(amount) => return Some(amount),
                Err(refusal) => refusals.push(refusal),
            }
        }
        let cured = refusals
            .iter()
            .position(|refusal| !refusal.cures.is_empty());
        let mut refusal = refusals.into_iter().nth(cured.unwrap_or(0))?;
        if text.trim().parse::<f64>().is_ok() {
            refusal.why = Some("its unit says what is measured".to_owned());
            refusal.cures.clear();
        }
        d.push(refused(value, reading, text, refusal));
        None
    }
}

fn quantity_text<'v>(
    value: &'v Value<'_>,
    reading: &Reading<'_>,
    kinds: &[Kind],
    d: &mut Diagnostics,
) -> Option<&'v str> {
    let text = value.get_ref().as_str();
    if text.is_none() {
        let expected = kinds.first().map_or("a quantity", |kind| kind.describe());
        let mut diagnostic = reading.wrong(value, &format!("{expected} with its unit"));
        if let DeValue::Integer(_) | DeValue::Float(_) = value.get_ref() {
            diagnostic = diagnostic.why("a number without a unit is never guessed");
        }
        d.push(diagnostic);
    }
    text
}

fn refused(value: &Value<'_>, reading: &Reading<'_>, text: &str, refusal: Refusal) -> Diagnostic {
    let span = reading.within(value, text, refusal.range);
    let mut diagnostic = Diagnostic::error("quantity-unreadable", span, refusal.what)
        .here(format!("in `{}`", reading.key));
    diagnostic.why = refusal.why;
    if refusal.cures.is_empty() {
        return diagnostic.cure(format!(
            "write it as `{} = {}`",
            reading.key, reading.example
        ));
    }
    let several = refusal.cures.len() > 1;
    for cure in refusal.cures {
        let words = if several { "if this is meant" } else { "write" };
        diagnostic = diagnostic.patch(words, reading.span(value), format!("\"{cure}\""));
    }
    diagnostic
}

impl FromNote for Date {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let read = match value.get_ref() {
            DeValue::Datetime(datetime) if datetime.time.is_none() => date_of(datetime),
            _ => None,
        };
        if read.is_none() {
            d.push(unquote_date(
                reading.wrong(value, "a day as year-month-day, without quotation marks"),
                value,
                reading,
            ));
        }
        read
    }
}

impl FromNote for LocalTime {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let read = match value.get_ref() {
            DeValue::Datetime(datetime) => local_time(datetime),
            _ => None,
        };
        if read.is_none() {
            let only_date = matches!(value.get_ref(), DeValue::Datetime(d) if d.time.is_none());
            let mut diagnostic =
                reading.wrong(value, "a date and a time of day, without quotation marks");
            if only_date {
                diagnostic = diagnostic.here("the time of day is missing");
            }
            d.push(unquote_date(diagnostic, value, reading));
        }
        read
    }
}

impl FromNote for DateOrTime {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let read = match value.get_ref() {
            DeValue::Datetime(datetime) => date_of(datetime).map(|date| DateOrTime {
                date,
                time: local_time(datetime),
            }),
            _ => None,
        };
        if read.is_none() {
            d.push(unquote_date(
                reading.wrong(value, "a day, without quotation marks"),
                value,
                reading,
            ));
        }
        read
    }
}

impl FromNote for DateOrMonth {
    fn read(value: &Value<'_>, reading: &Reading<'_>, d: &mut Diagnostics) -> Option<Self> {
        let read = match value.get_ref() {
            DeValue::Datetime(datetime) => date_of(datetime).map(|last| DateOrMonth {
                last,
                month_only: false,
            }),
            DeValue::String(text) => month_or_day(text),
            _ => None,
        };
        if read.is_none() {
            d.push(reading.wrong(value, "a month such as \"2029-03\", or a day"));
        }
        read
    }
}

fn month_or_day(text: &str) -> Option<DateOrMonth> {
    if let Ok(last) = text.parse::<Date>() {
        return Some(DateOrMonth {
            last,
            month_only: false,
        });
    }
    let first = format!("{text}-01").parse::<Date>().ok()?;
    Some(DateOrMonth {
        last: first.last_of_month(),
        month_only: true,
    })
}

fn unquote_date(diagnostic: Diagnostic, value: &Value<'_>, reading: &Reading<'_>) -> Diagnostic {
    let Some(text) = value.get_ref().as_str() else {
        return diagnostic;
    };
    let looks = text.parse::<Date>().is_ok() || text.parse::<DateTime>().is_ok();
    if !looks {
        return diagnostic;
    }
    let mut diagnostic = diagnostic;
    diagnostic.cures.clear();
    diagnostic.patch(
        "write it without quotation marks",
        reading.span(value),
        text,
    )
}

fn date_of(datetime: &Datetime) -> Option<Date> {
    let date = datetime.date.as_ref()?;
    Date::new(
        i16::try_from(date.year).ok()?,
        i8::try_from(date.month).ok()?,
        i8::try_from(date.day).ok()?,
    )
    .ok()
}

fn local_time(datetime: &Datetime) -> Option<LocalTime> {
    let date = date_of(datetime)?;
    let time = datetime.time.as_ref()?;
    let civil = date.at(
        i8::try_from(time.hour).ok()?,
        i8::try_from(time.minute).ok()?,
        time.second.map_or(Some(0), |s| i8::try_from(s).ok())?,
        0,
    );
    let offset = match &datetime.offset {
        None => None,
        Some(toml::value::Offset::Z) => Some(Offset::UTC),
        Some(toml::value::Offset::Custom { minutes }) => {
            Some(Offset::from_seconds(i32::from(*minutes) * 60).ok()?)
        }
    };
    Some(LocalTime { civil, offset })
}

/// Reads each item of a list; says whether all were right.
pub(super) fn read_list<T: FromNote>(
    value: &Value<'_>,
    reading: &Reading<'_>,
    diagnostics: &mut Diagnostics,
) -> (Vec<Noted<T>>, bool) {
    let DeValue::Array(items) = value.get_ref() else {
        let span = reading.span(value);
        let raw = reading.source.text.get(value.span()).unwrap_or("");
        diagnostics.push(
            Diagnostic::error(
                "list-expected",
                span,
                format!("`{}` is a list", reading.key),
            )
            .here(format!(
                "expected a list in square brackets, found {}",
                found(value.get_ref())
            ))
            .patch("put it in square brackets", span, format!("[{raw}]")),
        );
        return (Vec::new(), false);
    };
    let mut list = Vec::new();
    for item in items {
        if let Some(read) = T::read(item, reading, diagnostics) {
            list.push(Noted::new(read, Span::new(reading.file, item.span())));
        }
    }
    let sound = list.len() == items.len();
    (list, sound)
}
