//! Lines of a finding's fields: times, evidence, sizes, repairs, proofs.

use crate::notes::from_note::word_unknown;
use crate::quantity::{LeakRate, Measured, Pressure, Refusal};
use crate::text::{Diagnostic, Diagnostics, Noted, Span};
use crate::vocabulary::method_word::MethodWord;
use crate::vocabulary::{Identifier, Word};
use jiff::civil::Time;

/// A time of day, on the first or a later day of the visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct DayTime {
    /// Day of the visit, from 1.
    pub day: u8,
    /// Time of day.
    pub time: Time,
}

/// A look at a point: when, how, with what, and what was seen.
#[derive(Clone, Debug, PartialEq)]
pub struct Look {
    /// When.
    pub at: Noted<DayTime>,
    /// By which method.
    pub method: Noted<MethodWord>,
    /// Words between the method and the first comma: an instrument, or more about the sign.
    pub with: Option<Noted<String>>,
    /// What was seen, up to the first semicolon.
    pub result: String,
    /// What else was seen.
    pub detail: Option<String>,
    /// The line.
    pub span: Span,
}

impl Look {
    /// Whether it found what it looked for. A result that begins with a word of [`NOTHING_FOUND`]
    /// says that it did not.
    pub fn positive(&self) -> bool {
        let first = self
            .result
            .split(|c: char| !c.is_alphanumeric())
            .find(|word| !word.is_empty())
            .unwrap_or("")
            .to_lowercase();
        !NOTHING_FOUND.contains(&first.as_str())
    }
}

/// First words of a result that tell of nothing found, in English, German, French and Spanish.
const NOTHING_FOUND: [&str; 24] = [
    "no", "none", "not", "nothing", "clear", "clean", "negative", "kein", "keine", "keiner",
    "keinen", "nicht", "nichts", "ohne", "negativ", "aucun", "aucune", "rien", "pas", "sans",
    "ningún", "ninguna", "nada", "sin",
];

/// The size of a leak.
#[derive(Clone, Debug, PartialEq)]
pub struct Size {
    /// How large.
    pub rate: Noted<Measured<LeakRate>>,
    /// Whether it was measured, not estimated.
    pub measured: bool,
    /// How it was found, as written.
    pub how: String,
    /// With which instrument or method, as written.
    pub by: Option<Noted<String>>,
    /// Pressure inside while it was measured.
    pub pressure: Option<Noted<Measured<Pressure>>>,
}

/// A repair.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Repair {
    /// When, if noted.
    pub at: Option<Noted<DayTime>>,
    /// What was done.
    pub what: String,
    /// The line.
    pub span: Span,
}

/// A proof of a repair.
#[derive(Clone, Debug, PartialEq)]
pub enum Proof {
    /// A test or a search, by its name.
    Named(Noted<Identifier>),
    /// A look at the point.
    Look(Look),
}

/// A text and its place, from which parts are cut with their places.
#[derive(Clone, Copy)]
pub(super) struct Piece<'t> {
    pub text: &'t str,
    pub span: Span,
}

impl Piece<'_> {
    pub fn trim(self) -> Self {
        let start = self.text.len() - self.text.trim_start().len();
        let text = self.text.trim();
        Piece {
            text,
            span: self.span.part(start..start + text.len()),
        }
    }

    pub fn from(self, start: usize) -> Self {
        Piece {
            text: &self.text[start..],
            span: self.span.part(start..self.text.len()),
        }
    }

    pub fn to(self, end: usize) -> Self {
        Piece {
            text: &self.text[..end],
            span: self.span.part(0..end),
        }
    }

    /// Parts before and after the first of a character, the character left out.
    pub fn split(self, at: char) -> (Self, Option<Self>) {
        match self.text.find(at) {
            Some(index) => (
                self.to(index).trim(),
                Some(self.from(index + at.len_utf8()).trim()),
            ),
            None => (self.trim(), None),
        }
    }

    fn word(self) -> (Self, Self) {
        let piece = self.trim();
        let end = piece
            .text
            .find(char::is_whitespace)
            .unwrap_or(piece.text.len());
        (piece.to(end), piece.from(end).trim())
    }
}

/// `[day 2] 08:55` at the start of a line, and the rest. `None` where there is no time;
/// `Some(None)` where there is one that cannot be, which is told.
fn day_time<'t>(
    piece: Piece<'t>,
    diagnostics: &mut Diagnostics,
) -> Option<(Option<Noted<DayTime>>, Piece<'t>)> {
    let piece = piece.trim();
    let mut day = 1;
    let mut rest = piece;
    let (bracketed, open) = match piece.text.strip_prefix('[') {
        Some(inner) => (inner, 1),
        None => (piece.text, 0),
    };
    if let Some(after) = bracketed.strip_prefix("day ") {
        let digits: String = after.chars().take_while(char::is_ascii_digit).collect();
        day = digits.parse().unwrap_or(0);
        let end = open + 4 + digits.len();
        let close = usize::from(open == 1 && piece.text[end..].starts_with(']'));
        rest = piece.from(end + close).trim();
    }
    let (word, after) = rest.word();
    let (hour, minute) = word.text.split_once(':')?;
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    if !digits(hour) || !digits(minute) {
        return None;
    }
    let time = hour
        .parse()
        .ok()
        .zip(minute.parse().ok())
        .and_then(|(hour, minute)| Time::new(hour, minute, 0, 0).ok());
    let Some(time) = time.filter(|_| day >= 1 && minute.len() == 2) else {
        diagnostics.push(
            Diagnostic::error(
                "time-impossible",
                word.span,
                format!("`{}` is no time of day", word.text),
            )
            .here("hours 00 to 23, minutes 00 to 59")
            .cure("write it as 08:55, on a later day as [day 2] 08:55"),
        );
        return Some((None, after));
    };
    Some((Some(Noted::new(DayTime { day, time }, word.span)), after))
}

/// An evidence line.
pub(super) fn look(piece: Piece<'_>, diagnostics: &mut Diagnostics) -> Option<Look> {
    let piece = piece.trim();
    let Some((at, rest)) = day_time(piece, diagnostics) else {
        diagnostics.push(
            Diagnostic::error(
                "evidence-without-time",
                piece.span,
                "this line does not begin with a time",
            )
            .here("expected HH:MM, then the method, then what was seen")
            .why("the order of the methods decides what the evidence is worth")
            .cure("write it as `09:10 electronic ld-2, alarm; clean air, alarm again`"),
        );
        return None;
    };
    let (head, result) = rest.split(',');
    let method = method_word(head, diagnostics);
    let Some(result) = result.filter(|result| !result.text.is_empty()) else {
        diagnostics.push(
            Diagnostic::error(
                "evidence-without-result",
                piece.span,
                "this line does not say what was seen",
            )
            .here("expected a comma and the result after the method")
            .cure("write it as `09:10 electronic ld-2, alarm` or `…, no alarm`"),
        );
        return None;
    };
    let (method, with) = method?;
    let (result, detail) = result.split(';');
    Some(Look {
        at: at?,
        method,
        with: (!with.text.is_empty()).then(|| Noted::new(with.text.to_owned(), with.span)),
        result: one_line(result.text),
        detail: detail.map(|detail| one_line(detail.text)),
        span: piece.span,
    })
}

/// The method at the start of a text, and the words after it.
fn method_word<'t>(
    piece: Piece<'t>,
    diagnostics: &mut Diagnostics,
) -> Option<(Noted<MethodWord>, Piece<'t>)> {
    let lower = piece.text.to_lowercase();
    let found = MethodWord::WORDS
        .iter()
        .filter(|(word, _, _)| {
            lower.strip_prefix(word).is_some_and(|rest| {
                rest.is_empty() || rest.starts_with(|c: char| c.is_whitespace() || c == ':')
            })
        })
        .max_by_key(|(word, _, _)| word.len());
    let Some((word, method, _)) = found else {
        let (first, _) = piece.word();
        let words: Vec<&'static str> = MethodWord::WORDS.iter().map(|(word, _, _)| *word).collect();
        diagnostics.push(word_unknown(
            "method", first.text, first.span, &words, false,
        ));
        return None;
    };
    Some((
        Noted::new(*method, piece.to(word.len()).span),
        piece.from(word.len()).trim(),
    ))
}

/// `30 g/yr, measured by electronic ld-2 at 11 bar g`.
pub(super) fn size(piece: Piece<'_>, diagnostics: &mut Diagnostics) -> Option<Size> {
    let (rate, how) = piece.split(',');
    let rate = match crate::quantity::parse::<LeakRate>(rate.text) {
        Ok(measured) => Noted::new(measured, rate.span),
        Err(refusal) => {
            diagnostics.push(refused(rate, refusal));
            return None;
        }
    };
    let how = how.unwrap_or(piece.from(piece.text.len()));
    let measured = how.text.starts_with("measured");
    if !measured && !how.text.starts_with("estimated") {
        diagnostics.push(
            Diagnostic::error(
                "size-without-how",
                piece.span,
                "this size does not say how it was found",
            )
            .here("measured, or estimated?")
            .why("only measured sizes may be set against the loss")
            .cure("if it was measured, say with what: `…, measured by electronic ld-2 at 11 bar g`")
            .patch(
                "if it was estimated",
                piece.span,
                format!(
                    "{}, estimated",
                    piece.text.split(',').next().unwrap_or("").trim()
                ),
            ),
        );
        return None;
    }
    let (before_pressure, pressure) = match how.text.find(" at ") {
        Some(index) => (how.to(index), Some(how.from(index + 4).trim())),
        None => (how, None),
    };
    let pressure = match pressure.map(|p| (p, crate::quantity::parse::<Pressure>(p.text))) {
        None => None,
        Some((piece, Ok(measured))) => Some(Noted::new(measured, piece.span)),
        Some((piece, Err(refusal))) => {
            diagnostics.push(refused(piece, refusal));
            None
        }
    };
    let by = before_pressure.text.find(" by ").map(|index| {
        let by = before_pressure.from(index + 4).trim();
        Noted::new(by.text.to_owned(), by.span)
    });
    Some(Size {
        rate,
        measured,
        how: how.text.to_owned(),
        by,
        pressure,
    })
}

fn refused(piece: Piece<'_>, refusal: Refusal) -> Diagnostic {
    let mut diagnostic = Diagnostic::error(
        "quantity-unreadable",
        piece.span.part(refusal.range),
        refusal.what,
    )
    .here("in this finding");
    diagnostic.why = refusal.why;
    for cure in refusal.cures {
        diagnostic = diagnostic.patch("write", piece.span, cure);
    }
    diagnostic
}

/// `11:30 flare remade, 60 N m`.
pub(super) fn repair(piece: Piece<'_>, diagnostics: &mut Diagnostics) -> Repair {
    let piece = piece.trim();
    match day_time(piece, diagnostics) {
        Some((at, what)) => Repair {
            at,
            what: one_line(what.text),
            span: piece.span,
        },
        None => Repair {
            at: None,
            what: one_line(piece.text),
            span: piece.span,
        },
    }
}

/// A test's name, or a look.
pub(super) fn proof(piece: Piece<'_>, diagnostics: &mut Diagnostics) -> Option<Proof> {
    let piece = piece.trim();
    if !piece.text.contains(char::is_whitespace) && !piece.text.contains(':') {
        return Some(Proof::Named(Noted::new(
            Identifier(piece.text.to_owned()),
            piece.span,
        )));
    }
    look(piece, diagnostics).map(Proof::Look)
}

/// A text on one line.
pub(super) fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
