//! From the notes of a visit to the validated visit: every name resolved, every time an instant.

use crate::job::assemble::circuit_of;
use crate::job::book::{
    Atmosphere, Attendance, Book, OperatingReading, Search, Site, System, Timed, Visit,
    matches_pattern,
};
use crate::job::moment::{self, Moment};
use crate::job::test_names::TestNames;
use crate::notes::{DueNote, Folder, ReadingsNote, SearchNote, VisitNote, VisitNotes};
use crate::text::{Diagnostic, Diagnostics, Noted, Sources, Span};
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

/// Gives back what the lists reserved beyond their length: of a large book that is a third of all.
fn give_back(visit: &mut Visit) {
    visit.movements.shrink_to_fit();
    visit.detector_checks.shrink_to_fit();
    visit.searches.shrink_to_fit();
    visit.pressure_tests.shrink_to_fit();
    visit.vacuum_tests.shrink_to_fit();
    visit.operating.shrink_to_fit();
    visit.findings.shrink_to_fit();
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
            note: None,
        };
        if let Some(note) = &note {
            self.visit_file(note, &mut visit);
        }
        visit.note = note;
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
        give_back(&mut visit);
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
        for due in &note.due {
            self.due(due, visit);
        }
        visit.back = self.inside(note.back, visit);
    }

    /// A date set by hand: its names are known, and it does not lie before the visit that set it.
    fn due(&mut self, due: &DueNote, visit: &Visit) {
        if let Some(point) = &due.point {
            self.point(point);
        }
        if let Some(circuit) = &due.circuit {
            self.circuit(Some(circuit), due.whole.span, true);
        }
        if let Some(by) = due.by.filter(|by| by.value < visit.name.date) {
            self.diagnostics.push(
                Diagnostic::error(
                    "due-before-the-visit",
                    by.span,
                    format!(
                        "this was to be done by {}, before the visit that set the date",
                        by.value
                    ),
                )
                .here(format!("the visit was on {}", visit.name.date))
                .why("a date in the past cannot be kept; often the year is that of the last notes")
                .cure("correct the day"),
            );
        }
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

    pub(super) fn circuit(
        &mut self,
        id: Option<&Noted<Identifier>>,
        span: Span,
        sound: bool,
    ) -> Option<usize> {
        circuit_of(self.system, id, span, sound, self.diagnostics)
    }

    /// Tells a point or a pattern that stands for nothing in the register.
    pub(super) fn point(&mut self, id: &Noted<Identifier>) {
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

    pub(super) fn moment(&mut self, time: Option<Noted<LocalTime>>) -> Option<Noted<Moment>> {
        moment::resolve(&time?, self.zone?, self.diagnostics)
    }

    /// A moment of this visit; one on a day when nobody was there is told.
    pub(super) fn inside(
        &mut self,
        time: Option<Noted<LocalTime>>,
        visit: &Visit,
    ) -> Option<Noted<Moment>> {
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
