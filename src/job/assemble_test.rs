//! From a noted pressure or vacuum test, with two readings or a log, to the one shape of a test.

use crate::job::assemble::section_of;
use crate::job::assemble_visit::VisitAssembler;
use crate::job::book::Visit;
use crate::job::moment::{self, Moment};
use crate::job::test::{PressureReading, PressureTest, VacuumReading, VacuumTest};
use crate::notes::{
    Columns, Log, PressureReadingNote, PressureTestNote, VacuumReadingNote, VacuumTestNote, Whole,
    read_log,
};
use crate::quantity::{
    AbsolutePressure, GaugePressure, Kind, Measured, Pressure, Temperature, VacuumPressure,
};
use crate::text::{Diagnostic, FileId, Noted, Span};
use crate::vocabulary::Identifier;

/// What a noted pressure test and a noted vacuum test have in common.
struct Common<'n> {
    /// "pressure test".
    what: &'static str,
    whole: &'n Whole,
    circuit: Option<&'n Noted<Identifier>>,
    section: Option<&'n Noted<Identifier>>,
    instruments: [Option<&'n Noted<Identifier>>; 2],
    by: Option<&'n Noted<Identifier>>,
    /// Whether both readings are there, and whether each that is there could be read.
    readings: (bool, bool),
}

/// Where the rows of a log come from.
struct LogPlace<'n> {
    span: Span,
    file: Option<&'n Noted<String>>,
    time: Option<&'n Noted<String>>,
    pressure: Option<&'n Noted<String>>,
    kind: Kind,
    temperature: Option<&'n Noted<String>>,
    /// When its first row was, and the key that says so.
    start: (Option<Noted<Moment>>, &'static str),
}

/// First and last reading, and the log if they are its rows.
type Ends<R> = (R, R, Option<Log>);

impl VisitAssembler<'_> {
    pub(super) fn pressure_test(
        &mut self,
        note: PressureTestNote,
        visit: &Visit,
    ) -> Option<PressureTest> {
        let common = Common {
            what: "pressure test",
            whole: &note.whole,
            circuit: note.circuit.as_ref(),
            section: note.section.as_ref(),
            instruments: [note.gauge.as_ref(), note.thermometer.as_ref()],
            by: note.by.as_ref(),
            readings: (
                note.start.is_some() && note.end.is_some(),
                sound(note.start.as_ref(), |reading| reading.whole.sound)
                    && sound(note.end.as_ref(), |reading| reading.whole.sound),
            ),
        };
        let circuit = self.names(&common);
        let read = |this: &mut Self, reading: Option<&PressureReadingNote>| {
            let reading = reading?;
            let at = this.inside(reading.at, visit);
            Some(PressureReading {
                at: at?,
                pressure: reading.pressure?,
                temperature: reading.temperature,
            })
        };
        let start = read(self, note.start.as_ref());
        let end = read(self, note.end.as_ref());
        let started = self
            .inside(note.started, visit)
            .or(start.map(|start| start.at));
        let place = note.log.as_ref().map(|log| LogPlace {
            span: log.whole.span,
            file: log.file.as_ref(),
            time: log.time.as_ref(),
            pressure: log.pressure.as_ref(),
            kind: Kind::Pressure,
            temperature: log.temperature.as_ref(),
            start: (started, "started"),
        });
        let (start, end, log) = self.ends(&common, place, visit, (start, end), pressure_row)?;
        let circuit = circuit?;
        let id = note.id.clone()?.value;
        let ordered = moment::check_order(&start.at, &end.at, "this test", self.diagnostics)
            && self.lasts(&start.at, &end.at);
        ordered.then_some(PressureTest {
            id,
            circuit,
            start,
            end,
            log,
            note,
        })
    }

    pub(super) fn vacuum_test(
        &mut self,
        note: VacuumTestNote,
        visit: &Visit,
    ) -> Option<VacuumTest> {
        let common = Common {
            what: "vacuum test",
            whole: &note.whole,
            circuit: note.circuit.as_ref(),
            section: note.section.as_ref(),
            instruments: [note.gauge.as_ref(), None],
            by: note.by.as_ref(),
            readings: (
                note.start.is_some() && note.end.is_some(),
                sound(note.start.as_ref(), |reading| reading.whole.sound)
                    && sound(note.end.as_ref(), |reading| reading.whole.sound),
            ),
        };
        let circuit = self.names(&common);
        let read = |this: &mut Self, reading: Option<&VacuumReadingNote>| {
            let reading = reading?;
            let at = this.inside(reading.at, visit);
            Some(VacuumReading {
                at: at?,
                pressure: reading.pressure?,
            })
        };
        let start = read(self, note.start.as_ref());
        let end = read(self, note.end.as_ref());
        let isolated = self.inside(note.isolated, visit);
        let place = note.log.as_ref().map(|log| LogPlace {
            span: log.whole.span,
            file: log.file.as_ref(),
            time: log.time.as_ref(),
            pressure: log.pressure.as_ref(),
            kind: Kind::VacuumPressure,
            temperature: log.temperature.as_ref(),
            start: (isolated, "isolated"),
        });
        let (start, end, log) = self.ends(&common, place, visit, (start, end), vacuum_row)?;
        let circuit = circuit?;
        let id = note.id.clone()?.value;
        let ordered = moment::check_order(&start.at, &end.at, "this test", self.diagnostics)
            && self.lasts(&start.at, &end.at);
        ordered.then_some(VacuumTest {
            id,
            circuit,
            start,
            end,
            log,
            note,
        })
    }

    /// The circuit of a test; tells what its other names do not stand for.
    fn names(&mut self, common: &Common<'_>) -> Option<usize> {
        let whole = common.whole;
        let circuit = self.circuit(common.circuit, whole.span, whole.sound);
        if let Some(section) = common.section {
            section_of(self.system, common.circuit, section, self.diagnostics);
        }
        for instrument in common.instruments.into_iter().flatten() {
            self.book.instruments.resolve(instrument, self.diagnostics);
        }
        if let Some(by) = common.by {
            self.book.people.resolve(by, self.diagnostics);
        }
        circuit
    }

    /// First and last reading: as noted, or the rows of the log.
    fn ends<R>(
        &mut self,
        common: &Common<'_>,
        place: Option<LogPlace<'_>>,
        visit: &Visit,
        (start, end): (Option<R>, Option<R>),
        row: impl Fn(&Log, usize, Noted<Moment>, Span) -> Option<R>,
    ) -> Option<Ends<R>> {
        let Some(place) = place else {
            let (both, sound) = common.readings;
            if common.whole.sound && sound && !both {
                self.readings_missing(common.whole.span, common.what);
            }
            return Some((start?, end?, None));
        };
        let log = self.log(visit, &place);
        let (first, key) = place.start;
        let first = self.log_start(first, key, common.whole.span, common.whole.sound);
        let (log, first) = (log?, first?);
        let at = |index: usize| {
            let seconds = *log.time_s.get(index)?;
            let moment = first.value.after(seconds, &self.site.zone);
            row(&log, index, Noted::new(moment, first.span), place.span)
        };
        let (start, end) = (at(0)?, at(log.time_s.len().checked_sub(1)?)?);
        Some((start, end, Some(log)))
    }

    fn lasts(&mut self, start: &Noted<Moment>, end: &Noted<Moment>) -> bool {
        if end.value.instant > start.value.instant {
            return true;
        }
        self.diagnostics.push(
            Diagnostic::error("test-without-duration", end.span, "this test lasts no time")
                .here("the end")
                .also(start.span, "the start")
                .why("a change needs two readings with time between them")
                .cure("correct one of the two times"),
        );
        false
    }

    fn log_start(
        &mut self,
        start: Option<Noted<Moment>>,
        key: &str,
        span: Span,
        sound: bool,
    ) -> Option<Noted<Moment>> {
        if start.is_none() && sound && self.zone.is_some() {
            self.diagnostics.push(
                Diagnostic::error(
                    "key-missing",
                    span,
                    format!("`{key}` is missing beside the log"),
                )
                .here("should be in this table")
                .why("it is the time of the log's first row")
                .cure(format!("add a line such as `{key} = 2026-06-18T14:55`")),
            );
        }
        start
    }

    fn readings_missing(&mut self, span: Span, what: &str) {
        self.diagnostics.push(
            Diagnostic::error(
                "readings-missing",
                span,
                format!("this {what} has neither two readings nor a log"),
            )
            .here("should have `start` and `end`, or `log`")
            .why("without them nothing was shown")
            .cure("write both readings, each with its time and pressure"),
        );
    }

    fn log(&mut self, visit: &Visit, place: &LogPlace<'_>) -> Option<Log> {
        let id = self.visit_file_id(visit, place.file?)?;
        let columns = Columns {
            time: place.time?,
            pressure: place.pressure?,
            pressure_kind: place.kind,
            temperature: place.temperature,
        };
        read_log(id, self.sources.get(id), &columns, self.diagnostics)
    }

    fn visit_file_id(&mut self, visit: &Visit, file: &Noted<String>) -> Option<FileId> {
        let path = format!("{}/{}", visit.path, file.value);
        let inside =
            !file.value.split('/').any(|part| part == "..") && !file.value.starts_with('/');
        if let Some(id) = self.folder.texts.get(&path).filter(|_| inside) {
            return (!self.folder.unreadable.contains(id)).then_some(*id);
        }
        let there: Vec<&str> = self
            .folder
            .texts
            .keys()
            .filter_map(|path| path.strip_prefix(&format!("{}/", visit.path)))
            .filter(|name| name.to_lowercase().ends_with(".csv"))
            .collect();
        let diagnostic = Diagnostic::error(
            "log-missing",
            file.span,
            format!("there is no log `{}` in this visit", file.value),
        )
        .here("not in the visit folder")
        .why("without it nothing was shown");
        self.diagnostics
            .push(match crate::text::nearest(&file.value, &there) {
                Some(near) => diagnostic.patch(
                    format!("did you mean `{near}`?"),
                    file.span,
                    format!("\"{near}\""),
                ),
                None => diagnostic.cure("put the CSV file into the visit folder and name it here"),
            });
        None
    }
}

/// Whether a reading, if it is there, could be read.
fn sound<R>(reading: Option<&R>, sound: impl Fn(&R) -> bool) -> bool {
    reading.is_none_or(sound)
}

fn pressure_row(log: &Log, index: usize, at: Noted<Moment>, span: Span) -> Option<PressureReading> {
    let si = *log.pressure_pa.get(index)?;
    let value = if log.gauge {
        Pressure::Gauge(GaugePressure::new(si))
    } else {
        Pressure::Absolute(AbsolutePressure::new(si))
    };
    let temperature = log.temperature_k.get(index).map(|k| Measured {
        value: Temperature::new(*k),
        uncertainty: None,
        step: 0.1,
        unit: "°C",
    });
    Some(PressureReading {
        at,
        pressure: Noted::new(written(value, log), span),
        temperature: temperature.map(|measured| Noted::new(measured, span)),
    })
}

fn vacuum_row(log: &Log, index: usize, at: Noted<Moment>, span: Span) -> Option<VacuumReading> {
    let value = VacuumPressure::new(*log.pressure_pa.get(index)?);
    Some(VacuumReading {
        at,
        pressure: Noted::new(written(value, log), span),
    })
}

/// A pressure as the log's column writes it.
fn written<T>(value: T, log: &Log) -> Measured<T> {
    Measured {
        value,
        uncertainty: None,
        step: log.pressure_step_pa,
        unit: log.pressure_unit,
    }
}
