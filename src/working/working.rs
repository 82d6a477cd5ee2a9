//! Provenance: a figure is made only through a working, which keeps every input with its origin.

use crate::language::Words;
use crate::quantity::{Flavour, Measured, Quantity, Reading, UnitSystem, print_reading, print_si};
use crate::text::{Message, Noted, Sources, Span, Text};

/// How a figure is worked out, the same for every figure of its kind.
#[derive(Debug, PartialEq, Eq)]
pub struct Method {
    /// Kebab-case name; also that of its formula in the report.
    pub id: &'static str,
    /// Name in print.
    pub name: &'static str,
    /// The formula as plain text, also read aloud in its place.
    pub formula: &'static str,
    /// The formula in the typesetter's mathematics.
    pub mathematics: &'static str,
    /// Where it is published.
    pub source: &'static str,
}

/// Where an input comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Origin {
    /// A place in the notes.
    Note(Span),
    /// Two or more places in the notes, compared.
    Notes(Vec<Span>),
    /// Another figure, by its id.
    Figure(String),
    /// A table, with its source.
    Table(Text),
    /// A constant, with its source.
    Constant(&'static str),
    /// An assumption, with its reason.
    Assumed(&'static str),
}

/// A value that can be printed in the site's units.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// As written in the notes.
    Written(Reading),
    /// Worked out: its form, SI value and the half width of its uncertainty.
    Computed {
        /// Its form.
        flavour: Flavour,
        /// SI value.
        si: f64,
        /// Half width of the uncertainty, SI.
        uncertainty: Option<f64>,
    },
    /// CO₂ equivalent, kg, with the half width of its uncertainty; printed in tonnes everywhere, as
    /// the laws of both unit systems count it.
    CarbonDioxide {
        /// kg.
        kg: f64,
        /// Half width of the uncertainty, kg.
        uncertainty: Option<f64>,
    },
    /// A pure number with a number of decimals.
    Number(f64, usize),
    /// A percentage with a number of decimals.
    Percent(f64, usize),
    /// Whole days.
    Days(i64),
    /// Words.
    Words(Text),
}

impl Value {
    /// As written in the notes.
    pub fn written<T: Quantity>(measured: &Measured<T>) -> Self {
        Value::Written(Reading {
            flavour: measured.value.flavour(),
            si: measured.value.si(),
            uncertainty: measured.uncertainty,
            step: measured.step,
            unit: measured.unit,
        })
    }

    /// A mass that was worked out, kg, with the half width of its uncertainty.
    pub fn mass(kg: f64, uncertainty: Option<f64>) -> Self {
        Value::Computed {
            flavour: Flavour::Mass,
            si: kg,
            uncertainty,
        }
    }

    /// Printed in the units of a site, in English.
    pub fn print(&self, units: UnitSystem) -> String {
        self.say(units, Words::english())
    }

    /// Printed in the units and the language of a site.
    pub fn say(&self, units: UnitSystem, words: &Words) -> String {
        let printed = match self {
            Value::Written(reading) => print_reading(reading, units).to_string(),
            Value::Computed {
                flavour,
                si,
                uncertainty,
            } => print_si(*flavour, *si, *uncertainty, units).to_string(),
            Value::CarbonDioxide { kg, uncertainty } => tonnes(*kg, *uncertainty),
            Value::Number(number, decimals) => rounded(*number, *decimals),
            Value::Percent(number, decimals) => {
                format!("{}\u{a0}%", rounded(*number, *decimals))
            }
            Value::Days(days) => return words.say(&Message::of("days").with("days", *days)),
            Value::Words(text) => return words.text(text),
        };
        words.figure(&printed)
    }

    /// The bare number: SI, or the number itself.
    pub fn number(&self) -> f64 {
        match self {
            Value::Written(reading) => reading.si,
            Value::Computed { si, .. } => *si,
            Value::CarbonDioxide { kg, .. } => *kg,
            Value::Number(number, _) | Value::Percent(number, _) => *number,
            Value::Days(days) => *days as f64,
            Value::Words(_) => f64::NAN,
        }
    }
}

/// Tonnes of CO₂ equivalent: three significant digits or so.
fn tonnes(kg: f64, uncertainty: Option<f64>) -> String {
    let tonnes = kg / 1000.0;
    let decimals = match tonnes.abs() {
        t if t >= 100.0 => 0,
        t if t >= 10.0 => 1,
        _ => 2,
    };
    let half = uncertainty
        .map(|half| rounded(half / 1000.0, decimals))
        .filter(|half| half.contains(|c: char| c.is_ascii_digit() && c != '0'))
        .map_or_else(String::new, |half| format!("\u{a0}±\u{a0}{half}"));
    format!("{}{half}\u{a0}t\u{a0}CO₂e", rounded(tonnes, decimals))
}

/// A number with a fixed count of decimals, ties half up, with a true minus.
pub fn rounded(number: f64, decimals: usize) -> String {
    crate::quantity::rounded(number, u8::try_from(decimals).unwrap_or(u8::MAX))
}

/// One input of a working.
#[derive(Clone, Debug, PartialEq)]
pub struct Input {
    /// Its symbol in the formula.
    pub symbol: &'static str,
    /// Its value.
    pub value: Value,
    /// Where it comes from.
    pub origin: Origin,
}

/// A figure with its whole working.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// Stable name within its visit, such as `pressure-test/p1/limit`.
    pub id: String,
    /// What it is.
    pub title: Text,
    /// How it was worked out.
    pub method: &'static Method,
    /// From what.
    pub inputs: Vec<Input>,
    /// The result.
    pub value: Value,
    /// What else the reader has to know.
    pub notes: Vec<Text>,
}

/// A figure in the making.
#[derive(Debug)]
pub struct Working {
    figure: Figure,
}

impl Working {
    /// Begins a figure.
    pub fn of(method: &'static Method, id: impl Into<String>, title: impl Into<Text>) -> Self {
        Self {
            figure: Figure {
                id: id.into(),
                title: title.into(),
                method,
                inputs: Vec::new(),
                value: Value::Number(f64::NAN, 0),
                notes: Vec::new(),
            },
        }
    }

    /// Takes a noted quantity, SI.
    pub fn take<T: Quantity>(&mut self, symbol: &'static str, noted: &Noted<Measured<T>>) -> f64 {
        self.input(
            symbol,
            Value::written(&noted.value),
            Origin::Note(noted.span),
        )
    }

    /// Takes another figure.
    pub fn take_figure(&mut self, symbol: &'static str, figure: &Figure) -> f64 {
        self.input(
            symbol,
            figure.value.clone(),
            Origin::Figure(figure.id.clone()),
        )
    }

    /// Takes any value with its origin.
    pub fn input(&mut self, symbol: &'static str, value: Value, origin: Origin) -> f64 {
        let number = value.number();
        self.figure.inputs.push(Input {
            symbol,
            value,
            origin,
        });
        number
    }

    /// Adds a remark for the reader.
    pub fn note(&mut self, note: impl Into<Text>) {
        self.figure.notes.push(note.into());
    }

    /// Ends the working.
    pub fn finish(mut self, value: Value) -> Figure {
        self.figure.value = value;
        self.figure
    }
}

impl Origin {
    /// In print: `readings.toml:14`, the id of a figure, a source, an assumption.
    pub fn say(&self, sources: &Sources, words: &Words) -> String {
        match self {
            Origin::Note(span) => sources.place(*span),
            Origin::Notes(spans) => places(spans, sources),
            Origin::Figure(id) => id.clone(),
            Origin::Table(source) => words.text(source),
            Origin::Constant(source) => words.phrase(source),
            Origin::Assumed(reason) => words.say(&Message::of("assumed").phrase("reason", reason)),
        }
    }
}

/// Places in the notes, the file named once for its lines: `refrigerant.toml:9, 10, 20`.
fn places(spans: &[Span], sources: &Sources) -> String {
    let mut out = String::new();
    let mut last = None;
    let mut places: Vec<String> = spans.iter().map(|span| sources.place(*span)).collect();
    places.dedup();
    for place in places {
        let (file, line) = place.rsplit_once(':').unwrap_or((&place, ""));
        if last.as_deref() == Some(file) {
            out.push_str(&format!(", {line}"));
        } else {
            if last.is_some() {
                out.push_str(", ");
            }
            out.push_str(&place);
            last = Some(file.to_owned());
        }
    }
    out
}

impl Figure {
    /// The whole working as text, from inputs to result.
    pub fn print(&self, sources: &Sources, units: UnitSystem) -> String {
        use std::fmt::Write;
        let words = Words::english();
        let mut out = String::new();
        let method = self.method;
        let _ = writeln!(out, "{} ({})", words.text(&self.title), self.id);
        let _ = writeln!(out, "  method   {}", method.name);
        let _ = writeln!(out, "  formula  {}", method.formula);
        let _ = writeln!(out, "  source   {}", method.source);
        let width = self
            .inputs
            .iter()
            .map(|input| input.symbol.chars().count())
            .max()
            .unwrap_or(0);
        for input in &self.inputs {
            let pad = " ".repeat(width - input.symbol.chars().count());
            let _ = writeln!(
                out,
                "  input    {}{pad} = {}   [{}]",
                input.symbol,
                input.value.print(units),
                input.origin.say(sources, words)
            );
        }
        let _ = writeln!(out, "  result   {}", self.value.print(units));
        for note in &self.notes {
            let _ = writeln!(out, "  note     {}", words.text(note));
        }
        out
    }
}
