//! From the notes of a visit to the validated visit: every name resolved, every time an instant.

use crate::job::assemble::{circuit_of, section_of};
use crate::job::book::{
    Atmosphere, Attendance, Book, Finding, MovedMass, Movement, OperatingReading, Search, Site,
    System, Timed, Visit, matches_pattern,
};
use crate::job::moment::{self, Moment};
use crate::job::test::{PressureReading, PressureTest, VacuumReading, VacuumTest};
use crate::notes::{
    Columns, FindingNote, FindingsNote, Folder, Log, MovementNote, PressureTestNote, Proof,
    ReadingsNote, RefrigerantNote, SearchNote, VacuumTestNote, VisitNote, VisitNotes, read_log,
};
use crate::quantity::{
    AbsolutePressure, GaugePressure, Kind, Measured, Pressure, Temperature, VacuumPressure,
};
use crate::text::{Diagnostic, Diagnostics, FileId, Noted, Sources, Span};
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::vocabulary::{Identifier, LocalTime};
use jiff::civil::Date;
use jiff::tz::TimeZone;

/// Assembles one visit.
pub(super) struct VisitAssembler<'a> {
    pub book: &'a Book,
    pub site: &'a Site,
    pub system: &'a System,
    pub folder: &'a Folder,
    pub sources: &'a Sources,
    /// The zone, if it is known; without it no time is resolved and nothing more is said.
    pub zone: Option<&'a TimeZone>,
    pub diagnostics: &'a mut Diagnostics,
}

impl VisitAssembler<'_> {
    pub fn visit(&mut self, notes: VisitNotes) -> Visit {
        let files = notes.files();
        let readings_complete = notes
            .readings
            .as_ref()
            .is_none_or(|file| file.note.as_ref().is_some_and(|note| note.whole.complete));
        let note = notes.visit.note;
        let mut visit = Visit {
            name: notes.name,
            path: notes.path,
            files,
            attendance: Vec::new(),
            movements: Vec::new(),
            detector_checks: Vec::new(),
            searches: Vec::new(),
            pressure_tests: Vec::new(),
            vacuum_tests: Vec::new(),
            operating: Vec::new(),
            back: None,
            introduction: Vec::new(),
            findings: Vec::new(),
            atmosphere: note
                .as_ref()
                .and_then(|note| note.barometer)
                .map_or(self.site.atmosphere, Atmosphere::Barometer),
            note: note.clone(),
        };
        if let Some(note) = &note {
            self.visit_file(note, &mut visit);
        }
        if let Some(note) = notes.refrigerant.and_then(|file| file.note) {
            self.refrigerant_file(note, &mut visit);
        }
        let mut names = TestNames::default();
        if let Some(note) = notes.readings.and_then(|file| file.note) {
            self.readings_file(note, &mut visit, &mut names);
        }
        if let Some(note) = notes.findings.and_then(|file| file.note) {
            self.findings_file(note, &mut visit, &names, readings_complete);
        }
        visit.movements.sort_by_key(|movement| movement.at.value);
        visit
    }

    fn visit_file(&mut self, note: &VisitNote, visit: &mut Visit) {
        for entry in &note.attendance {
            if let Some(by) = &entry.by {
                self.book.people.resolve(by, self.diagnostics);
            }
            let from = self.moment(entry.from);
            let to = self.moment(entry.to);
            let (Some(by), Some(from), Some(to)) = (entry.by.clone(), from, to) else {
                continue;
            };
            if moment::check_order(&from, &to, "this attendance", self.diagnostics) {
                visit.attendance.push(Attendance { by, from, to });
            }
        }
        let first = visit.attendance.iter().min_by_key(|a| a.from.value);
        if let Some(first) = first.filter(|first| first.from.value.date() != visit.name.date) {
            self.diagnostics.push(
                Diagnostic::error(
                    "day-not-of-the-folder",
                    first.from.span,
                    format!(
                        "the visit begins on {}, its folder says {}",
                        first.from.value.date(),
                        visit.name.date
                    ),
                )
                .here("the first arrival")
                .why("times of the findings are counted from the folder's day")
                .cure("correct the day, or rename the folder"),
            );
        }
        for check in &note.safety_check {
            self.inside(check.at, visit);
        }
        for work in &note.work {
            self.inside(work.at, visit);
            if let Some(point) = &work.point {
                self.point(point);
            }
            if let Some(circuit) = &work.circuit {
                circuit_of(
                    self.system,
                    Some(circuit),
                    work.whole.span,
                    true,
                    self.diagnostics,
                );
            }
        }
        for advice in &note.advice {
            self.moment(advice.at);
        }
        visit.back = self.inside(note.back, visit);
    }

    fn refrigerant_file(&mut self, note: RefrigerantNote, visit: &mut Visit) {
        for movement in note.movement {
            visit.movements.extend(self.movement(movement, visit));
        }
    }

    fn movement(&mut self, note: MovementNote, visit: &Visit) -> Option<Movement> {
        let circuit = self.circuit(note.circuit.as_ref(), note.whole.span, note.whole.sound);
        if let Some(section) = &note.section {
            section_of(
                self.system,
                note.circuit.as_ref(),
                section,
                self.diagnostics,
            );
        }
        if let Some(by) = &note.by {
            self.book.people.resolve(by, self.diagnostics);
        }
        if let Some(cylinder) = &note.cylinder {
            self.book.cylinders.resolve(cylinder, self.diagnostics);
        }
        if let Some(scale) = &note.scale {
            self.book.instruments.resolve(scale, self.diagnostics);
        }
        if let Some(name) = &note.refrigerant
            && crate::refrigerant::find(&name.value.0).is_none()
        {
            self.diagnostics.push(
                Diagnostic::error(
                    "refrigerant-unknown",
                    name.span,
                    format!("`{}` is not a refrigerant in the tables", name.value.0),
                )
                .here("not a known designation")
                .cure("write its ASHRAE or ISO 817 number, such as \"R-449A\""),
            );
        }
        let at = self.inside(note.at, visit);
        let amount = self.amount(&note);
        Some(Movement {
            kind: note.kind?.value,
            why: note.why.map(|why| why.value),
            circuit: circuit?,
            at: at?,
            amount: amount?,
            note,
        })
    }

    fn amount(&mut self, note: &MovementNote) -> Option<MovedMass> {
        match (note.before, note.after, note.mass) {
            (Some(before), Some(after), mass) => {
                let amount = self.weighed(note, before, after)?;
                if let Some(mass) = mass {
                    self.agree(amount, mass)?;
                }
                Some(amount)
            }
            (None, None, Some(mass)) => Some(MovedMass::Stated(mass)),
            (before, after, _) => {
                if note.whole.sound {
                    let (span, missing) = match (before, after) {
                        (Some(one), None) => (one.span, "`after` is missing beside `before`"),
                        (None, Some(one)) => (one.span, "`before` is missing beside `after`"),
                        _ => (note.whole.span, "this movement does not say how much"),
                    };
                    self.diagnostics.push(
                        Diagnostic::error("mass-missing", span, missing)
                            .here("how much moved?")
                            .why("the charge account has to add up")
                            .cure("write both scale readings, `before` and `after`")
                            .cure("or `mass` with its uncertainty and `how`"),
                    );
                }
                None
            }
        }
    }

    fn weighed(
        &mut self,
        note: &MovementNote,
        before: Noted<Measured<crate::quantity::Mass>>,
        after: Noted<Measured<crate::quantity::Mass>>,
    ) -> Option<MovedMass> {
        let kind = note.kind?.value;
        let (from, to) = (before.value.value.si(), after.value.value.si());
        let wrong = match kind {
            MovementKind::Recovered => to < from,
            _ => to > from,
        };
        if wrong {
            let (what, why) = if kind == MovementKind::Recovered {
                (
                    "the cylinder weighs less after recovering into it",
                    "gas recovered makes the cylinder heavier",
                )
            } else {
                (
                    "the cylinder weighs more after charging from it",
                    "gas charged makes the cylinder lighter",
                )
            };
            self.diagnostics.push(
                Diagnostic::error("scale-wrong-way", after.span, what)
                    .here("after")
                    .also(before.span, "before")
                    .why(why)
                    .cure("are the two readings, or the kind of movement, exchanged?"),
            );
            return None;
        }
        let cylinder = note
            .cylinder
            .as_ref()
            .and_then(|id| self.book.cylinders.get(&id.value));
        let tare = cylinder.and_then(|cylinder| cylinder.tare);
        let least = if from < to { before } else { after };
        if let Some(tare) = tare
            && least.value.value.si() < tare.value.value.si() - 1e-9
        {
            self.diagnostics.push(
                Diagnostic::error(
                    "below-tare",
                    least.span,
                    "the cylinder weighs less than when it is empty",
                )
                .here("on the scale")
                .also(tare.span, "its weight when empty")
                .cure("correct the reading, the tare or the cylinder's name"),
            );
            return None;
        }
        Some(MovedMass::Weighed { before, after })
    }

    fn agree(
        &mut self,
        amount: MovedMass,
        mass: Noted<Measured<crate::quantity::Mass>>,
    ) -> Option<()> {
        let stated = mass.value.value.si();
        let room = mass.value.uncertainty.unwrap_or(0.0) + mass.value.step.max(0.005);
        if (amount.kg() - stated).abs() <= room {
            return Some(());
        }
        self.diagnostics.push(
            Diagnostic::error(
                "mass-disagrees",
                mass.span,
                "this mass is not the difference of the two scale readings",
            )
            .here(format!("the scale readings give {:.2} kg", amount.kg()))
            .also(amount.span(), "after")
            .why("one movement has one mass")
            .cure("keep the scale readings and take the mass out"),
        );
        None
    }

    fn readings_file(&mut self, note: ReadingsNote, visit: &mut Visit, names: &mut TestNames) {
        for check in note.detector_check {
            if let Some(instrument) = &check.instrument {
                self.book.instruments.resolve(instrument, self.diagnostics);
            }
            if let Some(at) = self.inside(check.at, visit) {
                visit.detector_checks.push(Timed { at, note: check });
            }
        }
        for search in note.search {
            names.add(
                search.id.as_ref(),
                "search",
                search.whole.sound,
                self.diagnostics,
            );
            visit.searches.extend(self.search(search, visit));
        }
        for test in note.pressure_test {
            names.add(test.id.as_ref(), "test", test.whole.sound, self.diagnostics);
            visit.pressure_tests.extend(self.pressure_test(test, visit));
        }
        for test in note.vacuum_test {
            names.add(test.id.as_ref(), "test", test.whole.sound, self.diagnostics);
            visit.vacuum_tests.extend(self.vacuum_test(test, visit));
        }
        for operating in note.operating {
            let circuit = self.circuit(
                operating.circuit.as_ref(),
                operating.whole.span,
                operating.whole.sound,
            );
            let at = self.inside(operating.at, visit);
            if let (Some(circuit), Some(at)) = (circuit, at) {
                visit.operating.push(OperatingReading {
                    at,
                    circuit,
                    note: operating,
                });
            }
        }
    }

    fn search(&mut self, note: SearchNote, visit: &Visit) -> Option<Search> {
        if let Some(by) = &note.by {
            self.book.people.resolve(by, self.diagnostics);
        }
        if let Some(instrument) = &note.instrument {
            self.book.instruments.resolve(instrument, self.diagnostics);
        }
        let circuit = match &note.circuit {
            Some(circuit) => self.circuit(Some(circuit), note.whole.span, true),
            None => (self.system.circuits.len() == 1).then_some(0),
        };
        for area in &note.areas {
            self.point(area);
        }
        for place in &note.not_reached {
            if let Some(point) = &place.point {
                self.point(point);
            }
        }
        let started = self.inside(note.started, visit);
        let ended = self.inside(note.ended, visit);
        let (started, ended) = (started?, ended?);
        moment::check_order(&started, &ended, "this search", self.diagnostics).then_some(Search {
            started,
            ended,
            circuit,
            note,
        })
    }

    fn pressure_test(&mut self, note: PressureTestNote, visit: &Visit) -> Option<PressureTest> {
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

    fn vacuum_test(&mut self, note: VacuumTestNote, visit: &Visit) -> Option<VacuumTest> {
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

    fn findings_file(
        &mut self,
        note: FindingsNote,
        visit: &mut Visit,
        names: &TestNames,
        readings_complete: bool,
    ) {
        visit.introduction = note.introduction;
        for finding in note.findings {
            let finding = self.finding(finding, visit, names, readings_complete);
            visit.findings.push(finding);
        }
    }

    fn finding(
        &mut self,
        note: FindingNote,
        visit: &Visit,
        names: &TestNames,
        readings_complete: bool,
    ) -> Finding {
        let registered = note
            .point
            .as_ref()
            .and_then(|point| self.system.points.resolve(point, self.diagnostics));
        let circuit_name = note
            .circuit
            .as_ref()
            .or(registered.and_then(|point| point.circuit.as_ref()));
        let circuit = match circuit_name {
            Some(_) => self.circuit(circuit_name, note.span, true),
            None => (self.system.circuits.len() == 1).then_some(0),
        };
        let looks = note.proofs.iter().filter_map(|proof| match proof {
            Proof::Look(look) => Some(look),
            Proof::Named(_) => None,
        });
        for look in note.evidence.iter().chain(looks) {
            self.look(look, visit);
        }
        for proof in &note.proofs {
            if let Proof::Named(name) = proof {
                names.check(name, readings_complete, visit, self.diagnostics);
            }
        }
        let pictures = note
            .pictures
            .iter()
            .enumerate()
            .filter_map(|(index, picture)| {
                let path = format!("{}/{}", visit.path, picture.path.value);
                self.photograph(&picture.path, &path)
                    .then_some((index, path))
            })
            .collect();
        Finding {
            circuit,
            note,
            pictures,
        }
    }

    fn look(&mut self, look: &crate::notes::Look, visit: &Visit) {
        let last = i32::from(look.at.value.day) - 1;
        let days = (visit.last_day() - visit.name.date).get_days();
        if last > days && !visit.attendance.is_empty() {
            self.diagnostics.push(
                Diagnostic::error(
                    "day-not-of-the-visit",
                    look.at.span,
                    format!("this visit has no day {}", look.at.value.day),
                )
                .here("on a day nobody was there")
                .cure("correct the day, or the attendance in visit.toml"),
            );
        }
        let needs_instrument = matches!(
            look.method.value,
            crate::vocabulary::method_word::MethodWord::Electronic
                | crate::vocabulary::method_word::MethodWord::Ultrasonic
                | crate::vocabulary::method_word::MethodWord::Tracer
        );
        if let Some(with) = look.with.as_ref().filter(|_| needs_instrument)
            && !with.value.contains(char::is_whitespace)
        {
            self.book.instruments.resolve(
                &Noted::new(Identifier(with.value.clone()), with.span),
                self.diagnostics,
            );
        }
    }

    fn photograph(&mut self, noted: &Noted<String>, path: &str) -> bool {
        let wrong = |what: String, here: &str, cure: &str| {
            Diagnostic::error("photograph-unusable", noted.span, what)
                .here(here)
                .why("the report shows every picture that a finding names")
                .cure(cure)
        };
        let Some(fact) = self.folder.files.get(path) else {
            let prefix = path.strip_suffix(&noted.value).unwrap_or("");
            let there: Vec<&str> = self
                .folder
                .files
                .keys()
                .filter_map(|known| known.strip_prefix(prefix))
                .collect();
            let diagnostic = Diagnostic::error(
                "photograph-missing",
                noted.span,
                format!("there is no photograph `{}`", noted.value),
            )
            .here("not in the visit folder")
            .why("the report shows every picture that a finding names");
            self.diagnostics
                .push(match crate::text::nearest(&noted.value, &there) {
                    Some(near) => {
                        diagnostic.patch(format!("did you mean `{near}`?"), noted.span, near)
                    }
                    None => diagnostic.cure("copy it into photos/, or take the line out"),
                });
            return false;
        };
        let diagnostic = if fact.link {
            wrong(
                format!("`{}` is a link to another place", noted.value),
                "may lead out of the book",
                "copy the picture itself into photos/",
            )
        } else if !(fact.head.starts_with(&[0xff, 0xd8, 0xff])
            || fact.head.starts_with(b"\x89PNG\r\n\x1a\n"))
        {
            let heic = fact.head.get(4..8) == Some(b"ftyp");
            wrong(
                format!("`{}` is not a JPEG or PNG picture", noted.value),
                "its first bytes are those of another kind of file",
                if heic {
                    "save it as JPEG (this is the phone's own HEIC format)"
                } else {
                    "save it as JPEG or PNG"
                },
            )
        } else {
            return true;
        };
        self.diagnostics.push(diagnostic);
        false
    }

    fn circuit(
        &mut self,
        id: Option<&Noted<Identifier>>,
        span: Span,
        sound: bool,
    ) -> Option<usize> {
        circuit_of(self.system, id, span, sound, self.diagnostics)
    }

    /// Tells a point or a pattern that stands for nothing in the register.
    fn point(&mut self, id: &Noted<Identifier>) {
        let name = &id.value.0;
        if name == "*" || !self.system.points_of(name).is_empty() {
            return;
        }
        let area = name.trim_end_matches('*').trim_end_matches('/');
        let first = area.split('/').next().unwrap_or(area);
        let is_area = |text: &str| {
            self.system
                .areas
                .get(&Identifier(text.to_owned()))
                .is_some()
        };
        if is_area(area) || is_area(first) {
            return;
        }
        if !(self.system.points.complete && self.system.areas.complete) {
            return;
        }
        if !name.contains('*') {
            self.diagnostics.push(self.system.points.unknown(id));
            return;
        }
        let mut known: Vec<String> = self
            .system
            .points
            .iter()
            .filter_map(|(id, _)| id.0.split_once('/').map(|(area, _)| format!("{area}/*")))
            .collect();
        known.dedup();
        let known: Vec<&str> = known.iter().map(String::as_str).collect();
        let diagnostic = Diagnostic::error(
            "area-unknown",
            id.span,
            format!("`{name}` stands for no registered point"),
        )
        .here("nothing in system.toml fits this")
        .also(
            self.system.points.home,
            "points and areas are registered here",
        )
        .why("the coverage of the search would be wrong");
        self.diagnostics
            .push(match crate::text::nearest(name, &known) {
                Some(near) => diagnostic.patch(
                    format!("did you mean `{near}`?"),
                    id.span,
                    format!("\"{near}\""),
                ),
                None => diagnostic.cure(format!(
                    "register a point, or an area: `[[area]]` with `id = \"{area}\"`"
                )),
            });
    }

    fn moment(&mut self, time: Option<Noted<LocalTime>>) -> Option<Noted<Moment>> {
        moment::resolve(&time?, self.zone?, self.diagnostics)
    }

    /// A moment of this visit; one on a day when nobody was there is told.
    fn inside(&mut self, time: Option<Noted<LocalTime>>, visit: &Visit) -> Option<Noted<Moment>> {
        let at = self.moment(time)?;
        let first: Date = visit.name.date;
        let last = visit.last_day();
        if visit.attendance.is_empty() || (first..=last).contains(&at.value.date()) {
            return Some(at);
        }
        let attendance = &visit.attendance[0];
        self.diagnostics.push(
            Diagnostic::error(
                "day-not-of-the-visit",
                at.span,
                format!("{} is not a day of this visit", at.value.date()),
            )
            .here("on a day nobody was there")
            .also(attendance.from.span, "who was there, and when")
            .cure("correct the day, or the attendance in visit.toml"),
        );
        None
    }
}

/// Names of tests and searches of a visit.
#[derive(Default)]
struct TestNames {
    names: Vec<(Identifier, Span)>,
    /// A name could not be read, so that an unknown one may be it.
    incomplete: bool,
}

impl TestNames {
    fn add(
        &mut self,
        id: Option<&Noted<Identifier>>,
        what: &str,
        sound: bool,
        diagnostics: &mut Diagnostics,
    ) {
        let Some(id) = id else {
            self.incomplete |= !sound;
            return;
        };
        if let Some((_, first)) = self.names.iter().find(|(known, _)| *known == id.value) {
            diagnostics.push(
                Diagnostic::error(
                    "name-taken",
                    id.span,
                    format!(
                        "another test or search of this visit has the name `{}`",
                        id.value
                    ),
                )
                .here("the second one")
                .also(*first, "the first one")
                .cure(format!("give this {what} another name")),
            );
            return;
        }
        self.names.push((id.value.clone(), id.span));
    }

    fn check(
        &self,
        id: &Noted<Identifier>,
        complete: bool,
        visit: &Visit,
        diagnostics: &mut Diagnostics,
    ) {
        if !complete || self.incomplete || self.names.iter().any(|(known, _)| *known == id.value) {
            return;
        }
        let known: Vec<&str> = self.names.iter().map(|(id, _)| id.0.as_str()).collect();
        let diagnostic = Diagnostic::error(
            "name-unknown",
            id.span,
            format!("there is no test or search `{}` in this visit", id.value),
        )
        .here("named as the proof")
        .why("a repair without its proof must not be called proved");
        let diagnostic = match (self.names.first(), visit.files.first()) {
            (Some((_, span)), _) => diagnostic.also(*span, "the tests and searches are here"),
            (None, Some(file)) => diagnostic.also(
                Span::file_start(*file),
                "this visit has no tests or searches",
            ),
            (None, None) => diagnostic,
        };
        diagnostics.push(match crate::text::nearest(&id.value.0, &known) {
            Some(near) => diagnostic.patch(format!("did you mean `{near}`?"), id.span, near),
            None => {
                diagnostic.cure("write the test's id, or a look: `16:50 electronic ld-2, no alarm`")
            }
        });
    }
}

/// Whether a search covers a point.
pub fn covers(search: &Search, point: &Identifier) -> bool {
    let within = |id: &Noted<Identifier>| matches_pattern(&id.value.0, &point.0);
    let left_out = search
        .note
        .not_reached
        .iter()
        .filter_map(|place| place.point.as_ref())
        .any(within);
    !left_out && search.note.areas.iter().any(within)
}
