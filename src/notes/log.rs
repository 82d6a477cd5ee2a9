//! A gauge's or logger's CSV file: named columns with their units, bad rows named by line.

use crate::quantity::{Kind, read};
use crate::text::{Diagnostic, Diagnostics, FileId, Noted, Source, Span, nearest, or_list};
use jiff::civil::DateTime;
use std::ops::Range;

/// A log in SI: equally long columns.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Log {
    /// Seconds since the first row.
    pub time_s: Vec<f64>,
    /// Pressure in Pa: as the test's kind of pressure is, gauge or absolute.
    pub pressure_pa: Vec<f64>,
    /// Whether the pressure column is gauge.
    pub gauge: bool,
    /// Temperature in K; empty where there is no such column.
    pub temperature_k: Vec<f64>,
    /// The unit of the pressure column.
    pub pressure_unit: &'static str,
    /// Step of the last digit of the pressures, Pa.
    pub pressure_step_pa: f64,
    /// The file.
    pub span: Option<Span>,
}

/// Which columns to read.
pub struct Columns<'c> {
    /// Column of the time.
    pub time: &'c Noted<String>,
    /// Column of the pressure.
    pub pressure: &'c Noted<String>,
    /// What kind of pressure it is.
    pub pressure_kind: Kind,
    /// Column of the temperature.
    pub temperature: Option<&'c Noted<String>>,
}

/// Most bad rows told of one file.
const MOST_TOLD: usize = 5;

/// Reads a log; `None` if anything in it is wrong.
pub fn read_log(
    file: FileId,
    source: &Source,
    columns: &Columns<'_>,
    diagnostics: &mut Diagnostics,
) -> Option<Log> {
    let mut reader = LogReader {
        file,
        source,
        diagnostics,
        told: 0,
    };
    let log = reader.read(columns);
    let told = reader.told;
    if told > MOST_TOLD {
        reader.diagnostics.push(
            Diagnostic::error(
                "log-rows",
                Span::file_start(file),
                format!("{} more rows of this log are wrong", told - MOST_TOLD),
            )
            .cure("mend the first ones, then check again"),
        );
    }
    log.filter(|_| told == 0)
}

/// One column: its place in the row and how its numbers become SI.
struct Column {
    index: usize,
    unit: Option<Unit>,
}

struct Unit {
    kind: Kind,
    suffix: String,
    name: &'static str,
    gauge: bool,
    /// SI value = scale × number + shift; every unit of a log is linear.
    scale: f64,
    shift: f64,
}

struct LogReader<'l> {
    file: FileId,
    source: &'l Source,
    diagnostics: &'l mut Diagnostics,
    told: usize,
}

impl LogReader<'_> {
    fn read(&mut self, columns: &Columns<'_>) -> Option<Log> {
        let header_line = self.header_line();
        let header = &self.source.text[header_line.clone()];
        let delimiter = match (
            header.contains('\t'),
            header.contains(';'),
            header.contains(','),
        ) {
            (true, _, _) => b'\t',
            (_, true, false) => b';',
            _ => b',',
        };
        let mut csv = csv::ReaderBuilder::new()
            .delimiter(delimiter)
            .flexible(true)
            .comment(Some(b'#'))
            .from_reader(self.source.text.as_bytes());
        let names: Vec<String> = match csv.headers() {
            Ok(names) => names.iter().map(|name| name.trim().to_owned()).collect(),
            Err(_) => Vec::new(),
        };
        let time = self.column(&names, columns.time, Kind::Duration, header_line.clone());
        let pressure = self.column(
            &names,
            columns.pressure,
            columns.pressure_kind,
            header_line.clone(),
        );
        let temperature = columns
            .temperature
            .map(|name| self.column(&names, name, Kind::Temperature, header_line.clone()));
        let (time, pressure) = (time?, pressure?);
        let temperature = match temperature {
            None => None,
            Some(column) => Some(column?),
        };
        let mut log = Log {
            span: Some(Span::new(self.file, header_line)),
            ..Log::default()
        };
        if let Some(unit) = &pressure.unit {
            log.gauge = unit.gauge;
            log.pressure_unit = unit.name;
        }
        self.rows(
            &mut csv,
            names.len(),
            &time,
            &pressure,
            temperature.as_ref(),
            &mut log,
        );
        if self.told == 0 && log.time_s.len() < 2 {
            self.fault(
                Diagnostic::error(
                    "log-too-short",
                    log.span.unwrap_or(Span::file_start(self.file)),
                    "this log has fewer than two rows",
                )
                .here("the head of the log")
                .why("a change needs two readings")
                .cure("export the whole test from the gauge or logger"),
            );
        }
        Some(log)
    }

    /// The first line that is neither blank nor a remark.
    fn header_line(&self) -> Range<usize> {
        let lines = self.source.text.lines().count();
        (1..=lines)
            .map(|line| self.source.line(line))
            .find(|range| {
                let text = self.source.text[range.clone()].trim_start();
                !text.is_empty() && !text.starts_with('#')
            })
            .unwrap_or(0..0)
    }

    fn rows(
        &mut self,
        csv: &mut csv::Reader<&[u8]>,
        width: usize,
        time: &Column,
        pressure: &Column,
        temperature: Option<&Column>,
        log: &mut Log,
    ) {
        let mut record = csv::ByteRecord::new();
        let mut first_instant = None;
        let mut decimals = 0;
        loop {
            match csv.read_byte_record(&mut record) {
                Ok(true) => {}
                Ok(false) => break,
                Err(error) => {
                    let line = error
                        .position()
                        .map_or(1, |position| position.line() as usize);
                    self.row_fault(line, "this row cannot be read", "not a row of a log");
                    break;
                }
            }
            let line = record
                .position()
                .map_or(1, |position| position.line() as usize);
            if record.len() != width {
                self.row_fault(
                    line,
                    &format!("this row has {} values, the head has {width}", record.len()),
                    "a comma as decimal sign, or a value missing?",
                );
                continue;
            }
            let seconds = match &time.unit {
                Some(unit) => self
                    .number(&record, time.index, line)
                    .map(|n| n * unit.scale),
                None => self.instant(&record, time.index, line, &mut first_instant),
            };
            let pressure_pa = self.value(&record, pressure, line);
            let temperature_k = temperature.map(|column| self.value(&record, column, line));
            let (Some(seconds), Some(pressure_pa)) = (seconds, pressure_pa) else {
                continue;
            };
            if log.time_s.last().is_some_and(|last| seconds <= *last) {
                self.row_fault(
                    line,
                    "the time of this row is not after that of the row before",
                    "time runs backwards or stands still here",
                );
                continue;
            }
            if let Some(temperature_k) = temperature_k {
                let Some(temperature_k) = temperature_k else {
                    continue;
                };
                log.temperature_k.push(temperature_k);
            }
            let written = cell(&record, pressure.index).as_bytes();
            let point = written.iter().position(|byte| *byte == b'.');
            decimals = decimals.max(point.map_or(0, |at| written.len() - at - 1));
            log.time_s.push(seconds);
            log.pressure_pa.push(pressure_pa);
        }
        let start = log.time_s.first().copied().unwrap_or(0.0);
        for seconds in &mut log.time_s {
            *seconds -= start;
        }
        let scale = pressure.unit.as_ref().map_or(1.0, |unit| unit.scale);
        log.pressure_step_pa = scale * 10f64.powi(-i32::try_from(decimals).unwrap_or(0));
    }

    fn value(&mut self, record: &csv::ByteRecord, column: &Column, line: usize) -> Option<f64> {
        let number = self.number(record, column.index, line)?;
        let unit = column.unit.as_ref()?;
        let si = unit.scale * number + unit.shift;
        if si < 0.0 && !unit.gauge && unit.kind != Kind::Duration {
            let text = format!("{number} {}", unit.suffix);
            if read(unit.kind, &text).is_err() {
                self.row_fault(line, &format!("`{text}` cannot be"), "below zero");
                return None;
            }
        }
        Some(si)
    }

    fn number(&mut self, record: &csv::ByteRecord, index: usize, line: usize) -> Option<f64> {
        let text = cell(record, index);
        let number = text.parse::<f64>().ok().filter(|n| n.is_finite());
        if number.is_none() {
            if text.is_empty() {
                self.row_fault(
                    line,
                    "a value is missing in this row",
                    "nothing in one column",
                );
                return None;
            }
            let here = if text.contains(',') {
                "a comma could be a decimal or a thousand; export with a decimal point"
            } else {
                "expected a number"
            };
            self.row_fault(line, &format!("`{text}` is not a number"), here);
        }
        number
    }

    fn instant(
        &mut self,
        record: &csv::ByteRecord,
        index: usize,
        line: usize,
        first: &mut Option<DateTime>,
    ) -> Option<f64> {
        let text = cell(record, index);
        let Ok(instant) = text.replacen(' ', "T", 1).parse::<DateTime>() else {
            self.row_fault(
                line,
                &format!("`{text}` is no date and time"),
                "expected 2026-06-18T14:55:00",
            );
            return None;
        };
        let start = *first.get_or_insert(instant);
        Some(instant.duration_since(start).as_secs_f64())
    }

    fn column(
        &mut self,
        names: &[String],
        wanted: &Noted<String>,
        kind: Kind,
        header: Range<usize>,
    ) -> Option<Column> {
        let Some(index) = names.iter().position(|name| *name == wanted.value) else {
            let known: Vec<&str> = names.iter().map(String::as_str).collect();
            let diagnostic = Diagnostic::error(
                "log-column-missing",
                wanted.span,
                format!("the log has no column `{}`", wanted.value),
            )
            .here("named here")
            .also(Span::new(self.file, header), "the columns of the log");
            self.fault(match nearest(&wanted.value, &known) {
                Some(near) => diagnostic.patch(
                    format!("did you mean `{near}`?"),
                    wanted.span,
                    format!("\"{near}\""),
                ),
                None => diagnostic.cure(format!("its columns are {}", or_list(&known))),
            });
            return None;
        };
        let unit = unit_of(&wanted.value, kind);
        if unit.is_none() && kind != Kind::Duration {
            self.fault(
                Diagnostic::error(
                    "log-column-without-unit",
                    wanted.span,
                    format!("the column `{}` does not say its unit", wanted.value),
                )
                .here(format!("expected {}", kind.describe()))
                .also(Span::new(self.file, header), "the columns of the log")
                .why("a number without a unit is never guessed")
                .cure("name the column in the log with its unit: p_micron, p_bar_g, T_C, or `pressure [bar g]`"),
            );
            return None;
        }
        Some(Column { index, unit })
    }

    fn row_fault(&mut self, line: usize, what: &str, here: &str) {
        let span = Span::new(self.file, self.source.line(line));
        self.fault(
            Diagnostic::error("log-row", span, what)
                .here(here)
                .why("a test is not worked out from part of its log")
                .cure("correct the row, or begin it with # to leave it out"),
        );
    }

    fn fault(&mut self, diagnostic: Diagnostic) {
        self.told += 1;
        if self.told <= MOST_TOLD {
            self.diagnostics.push(diagnostic);
        }
    }
}

/// A cell without the blanks about it; the whole log is valid UTF-8, so that every cell is.
fn cell(record: &csv::ByteRecord, index: usize) -> &str {
    let bytes = record.get(index).unwrap_or_default();
    std::str::from_utf8(bytes).unwrap_or_default().trim()
}

/// The unit in a column's name: in brackets, or after an underscore.
fn unit_of(name: &str, kind: Kind) -> Option<Unit> {
    let bracketed = name
        .split_once(['[', '('])
        .map(|(_, rest)| rest.trim_end_matches([']', ')']).trim().to_owned());
    let suffixes = name
        .char_indices()
        .filter(|(_, c)| *c == '_')
        .map(|(index, _)| name[index + 1..].replace('_', " "));
    bracketed.into_iter().chain(suffixes).find_map(|suffix| {
        let one = read(kind, &format!("1 {suffix}")).ok()?;
        let two = read(kind, &format!("2 {suffix}")).ok()?;
        Some(Unit {
            kind,
            scale: two.si - one.si,
            shift: 2.0 * one.si - two.si,
            name: one.unit,
            gauge: one.flavour == crate::quantity::Flavour::GaugePressure,
            suffix,
        })
    })
}
