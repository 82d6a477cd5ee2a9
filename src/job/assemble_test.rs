//! From a noted pressure or vacuum test, with two readings or a log, to the one shape of a test.

use crate::job::assemble::section_of;
use crate::job::assemble_visit::VisitAssembler;
use crate::job::book::Visit;
use crate::job::moment::{self, Moment};
use crate::job::test::{PressureReading, PressureTest, VacuumReading, VacuumTest};
use crate::notes::{Columns, Log, PressureTestNote, VacuumTestNote, read_log};
use crate::quantity::{
    AbsolutePressure, GaugePressure, Kind, Measured, Pressure, Temperature, VacuumPressure,
};
use crate::text::{Diagnostic, FileId, Noted, Span};

impl VisitAssembler<'_> {
    pub(super) fn pressure_test(
        &mut self,
        note: PressureTestNote,
        visit: &Visit,
    ) -> Option<PressureTest> {
        let circuit = self.circuit(note.circuit.as_ref(), note.whole.span, note.whole.sound);
        if let Some(section) = &note.section {
            section_of(
                self.system,
                note.circuit.as_ref(),
                section,
                self.diagnostics,
            );
        }
        for instrument in [&note.gauge, &note.thermometer].into_iter().flatten() {
            self.book.instruments.resolve(instrument, self.diagnostics);
        }
        if let Some(by) = &note.by {
            self.book.people.resolve(by, self.diagnostics);
        }
        let read = |this: &mut Self, reading: Option<&crate::notes::PressureReadingNote>| {
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
        let unread = [&note.start, &note.end]
            .into_iter()
            .flatten()
            .any(|reading| !reading.whole.sound);
        let (start, end, log) = if let Some(log_note) = &note.log {
            let started = self
                .inside(note.started, visit)
                .or(start.map(|start| start.at));
            let log = self.log(
                visit,
                log_note.file.as_ref(),
                log_note.time.as_ref(),
                log_note.pressure.as_ref(),
                Kind::Pressure,
                log_note.temperature.as_ref(),
            );
            let started = self.log_start(started, "started", note.whole.span, note.whole.sound);
            let (log, started) = (log?, started?);
            let (start, end) = self.pressure_ends(&log, started, log_note.whole.span)?;
            (start, end, Some(log))
        } else {
            if note.whole.sound && !unread && (note.start.is_none() || note.end.is_none()) {
                self.readings_missing(note.whole.span, "pressure test");
            }
            (start?, end?, None)
        };
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

    fn pressure_ends(
        &self,
        log: &Log,
        started: Noted<Moment>,
        span: Span,
    ) -> Option<(PressureReading, PressureReading)> {
        let reading = |index: usize| -> Option<PressureReading> {
            let si = *log.pressure_pa.get(index)?;
            let value = if log.gauge {
                Pressure::Gauge(GaugePressure::new(si))
            } else {
                Pressure::Absolute(AbsolutePressure::new(si))
            };
            let temperature = log.temperature_k.get(index).map(|k| {
                Noted::new(
                    Measured {
                        value: Temperature::new(*k),
                        uncertainty: None,
                        step: 0.1,
                        unit: "°C",
                    },
                    span,
                )
            });
            Some(PressureReading {
                at: Noted::new(
                    started
                        .value
                        .after(*log.time_s.get(index)?, &self.site.zone),
                    started.span,
                ),
                pressure: Noted::new(
                    Measured {
                        value,
                        uncertainty: None,
                        step: log.pressure_step_pa,
                        unit: log.pressure_unit,
                    },
                    span,
                ),
                temperature,
            })
        };
        Some((reading(0)?, reading(log.time_s.len().checked_sub(1)?)?))
    }

    pub(super) fn vacuum_test(
        &mut self,
        note: VacuumTestNote,
        visit: &Visit,
    ) -> Option<VacuumTest> {
        let circuit = self.circuit(note.circuit.as_ref(), note.whole.span, note.whole.sound);
        if let Some(section) = &note.section {
            section_of(
                self.system,
                note.circuit.as_ref(),
                section,
                self.diagnostics,
            );
        }
        if let Some(gauge) = &note.gauge {
            self.book.instruments.resolve(gauge, self.diagnostics);
        }
        if let Some(by) = &note.by {
            self.book.people.resolve(by, self.diagnostics);
        }
        let read = |this: &mut Self, reading: Option<&crate::notes::VacuumReadingNote>| {
            let reading = reading?;
            let at = this.inside(reading.at, visit);
            Some(VacuumReading {
                at: at?,
                pressure: reading.pressure?,
            })
        };
        let start = read(self, note.start.as_ref());
        let end = read(self, note.end.as_ref());
        let unread = [&note.start, &note.end]
            .into_iter()
            .flatten()
            .any(|reading| !reading.whole.sound);
        let isolated = self.inside(note.isolated, visit);
        let (start, end, log) = if let Some(log_note) = &note.log {
            let log = self.log(
                visit,
                log_note.file.as_ref(),
                log_note.time.as_ref(),
                log_note.pressure.as_ref(),
                Kind::VacuumPressure,
                log_note.temperature.as_ref(),
            );
            let isolated = self.log_start(isolated, "isolated", note.whole.span, note.whole.sound);
            let (log, isolated) = (log?, isolated?);
            let (start, end) = self.vacuum_ends(&log, isolated, log_note.whole.span)?;
            (start, end, Some(log))
        } else {
            if note.whole.sound && !unread && (note.start.is_none() || note.end.is_none()) {
                self.readings_missing(note.whole.span, "vacuum test");
            }
            (start?, end?, None)
        };
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

    fn vacuum_ends(
        &self,
        log: &Log,
        isolated: Noted<Moment>,
        span: Span,
    ) -> Option<(VacuumReading, VacuumReading)> {
        let reading = |index: usize| -> Option<VacuumReading> {
            Some(VacuumReading {
                at: Noted::new(
                    isolated
                        .value
                        .after(*log.time_s.get(index)?, &self.site.zone),
                    isolated.span,
                ),
                pressure: Noted::new(
                    Measured {
                        value: VacuumPressure::new(*log.pressure_pa.get(index)?),
                        uncertainty: None,
                        step: log.pressure_step_pa,
                        unit: log.pressure_unit,
                    },
                    span,
                ),
            })
        };
        Some((reading(0)?, reading(log.time_s.len().checked_sub(1)?)?))
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

    fn log(
        &mut self,
        visit: &Visit,
        file: Option<&Noted<String>>,
        time: Option<&Noted<String>>,
        pressure: Option<&Noted<String>>,
        kind: Kind,
        temperature: Option<&Noted<String>>,
    ) -> Option<Log> {
        let file = file?;
        let id = self.visit_file_id(visit, file)?;
        let columns = Columns {
            time: time?,
            pressure: pressure?,
            pressure_kind: kind,
            temperature,
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
