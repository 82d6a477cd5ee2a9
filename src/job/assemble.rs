//! From notes to the validated book: sites, systems, circuits, registers.

use crate::job::assemble_visit::VisitAssembler;
use crate::job::book::{
    Atmosphere, Book, Circuit, Earlier, InForce, Plan, Site, System, refrigerant_of,
};
use crate::job::moment;
use crate::job::registry::Registry;
use crate::notes::{BookNote, Notes, SiteNotes, SystemNote, SystemNotes};
use crate::quantity::UnitSystem;
use crate::text::{Diagnostic, Diagnostics, Noted, Sources, Span};
use crate::vocabulary::site_file::{Language, UnitsWord};
use crate::vocabulary::{Designation, Identifier};
use jiff::tz::TimeZone;
use rayon::prelude::*;

/// Builds the book of the notes, telling everything that cannot be.
pub fn assemble(notes: Notes, sources: &Sources, diagnostics: &mut Diagnostics) -> Book {
    let note = notes.book.note;
    let sound = note.as_ref().is_some_and(|note| note.whole.complete);
    let home = Span::file_start(notes.book.file);
    let mut people = Registry::new("person", home, sound);
    let mut instruments = Registry::new("instrument", home, sound);
    let mut cylinders = Registry::new("cylinder", home, sound);
    let mut cylinder_events = Vec::new();
    if let Some(note) = &note {
        for person in &note.person {
            people.add(person.id.as_ref(), person.clone(), diagnostics);
        }
        for instrument in &note.instrument {
            instruments.add(instrument.id.as_ref(), instrument.clone(), diagnostics);
        }
        for cylinder in &note.cylinder {
            cylinders.add(cylinder.id.as_ref(), cylinder.clone(), diagnostics);
            check_refrigerant(cylinder.refrigerant.as_ref(), diagnostics);
        }
        for event in &note.cylinder_event {
            if let Some(id) = &event.cylinder {
                cylinders.resolve(id, diagnostics);
            }
        }
        cylinder_events.clone_from(&note.cylinder_event);
        cylinder_events.sort_by_key(|event| event.at.map(|at| at.value.date));
    }
    let mut book = Book {
        file: notes.book.file,
        note,
        people,
        instruments,
        cylinders,
        cylinder_events,
        sites: Vec::new(),
    };
    let (book_so_far, folder) = (&book, &notes.folder);
    book.sites = on_all_cores(notes.sites, diagnostics, |site, diagnostics| {
        let mut assembler = SiteAssembler {
            book: book_so_far,
            folder,
            sources,
            diagnostics,
        };
        assembler.site(site)
    });
    book
}

/// Works on parts on all cores; what is made of them, and what is told of them, keeps their order.
fn on_all_cores<P: Send, M: Send>(
    parts: Vec<P>,
    diagnostics: &mut Diagnostics,
    make: impl Fn(P, &mut Diagnostics) -> M + Sync,
) -> Vec<M> {
    let made: Vec<(M, Diagnostics)> = parts
        .into_par_iter()
        .map(|part| {
            let mut told = Diagnostics::default();
            (make(part, &mut told), told)
        })
        .collect();
    let keep = |(made, told)| {
        diagnostics.append(told);
        made
    };
    made.into_iter().map(keep).collect()
}

/// Tells a refrigerant that is not known.
fn check_refrigerant(designation: Option<&Noted<Designation>>, diagnostics: &mut Diagnostics) {
    let Some(designation) = designation else {
        return;
    };
    if crate::refrigerant::find(&designation.value.0).is_some() {
        return;
    }
    let near = crate::refrigerant::nearest(&designation.value.0);
    let mut diagnostic = Diagnostic::error(
        "refrigerant-unknown",
        designation.span,
        format!(
            "`{}` is not a refrigerant in the tables",
            designation.value.0
        ),
    )
    .here("not a known designation")
    .why("its class, limits and warming potential come from its designation");
    if near.is_empty() {
        diagnostic = diagnostic.cure("write its ASHRAE or ISO 817 number, such as \"R-449A\"");
    }
    for near in near {
        diagnostic = diagnostic.patch(
            format!("did you mean `{near}`?"),
            designation.span,
            format!("\"{near}\""),
        );
    }
    diagnostics.push(diagnostic);
}

struct SiteAssembler<'a> {
    book: &'a Book,
    folder: &'a crate::notes::Folder,
    sources: &'a Sources,
    diagnostics: &'a mut Diagnostics,
}

impl SiteAssembler<'_> {
    fn site(&mut self, notes: SiteNotes) -> Site {
        let note = notes.site.note;
        let defaults = self
            .book
            .note
            .as_ref()
            .and_then(|book: &BookNote| book.defaults.as_ref());
        let zone = note
            .as_ref()
            .and_then(|note| note.timezone.as_ref())
            .or_else(|| defaults.and_then(|d| d.timezone.as_ref()));
        let zone = if let Some(name) = zone {
            moment::zone(name, self.diagnostics)
        } else {
            if let Some(note) = note.as_ref().filter(|note| note.whole.sound) {
                self.diagnostics.push(
                    Diagnostic::error(
                        "key-missing",
                        note.whole.span,
                        "`timezone` is missing in site.toml",
                    )
                    .here("should be in this file")
                    .why("all times of the site's notes are read in it")
                    .cure("add a line such as `timezone = \"Europe/Lisbon\"`"),
                );
            }
            None
        };
        let units = note
            .as_ref()
            .and_then(|note| note.units)
            .or_else(|| defaults.and_then(|d| d.units));
        let language = note
            .as_ref()
            .and_then(|note| note.language)
            .or_else(|| defaults.and_then(|d| d.language));
        let mut rooms = Registry::new(
            "room",
            Span::file_start(notes.site.file),
            note.as_ref().is_some_and(|note| note.whole.complete),
        );
        for room in note.iter().flat_map(|note| &note.room) {
            rooms.add(room.id.as_ref(), room.clone(), self.diagnostics);
        }
        let atmosphere = note
            .as_ref()
            .and_then(|note| note.altitude)
            .map_or(Atmosphere::Standard, Atmosphere::Altitude);
        let mut site = Site {
            folder: notes.name,
            file: notes.site.file,
            note,
            zone: zone.clone().unwrap_or(TimeZone::UTC),
            units: match units.map(|units| units.value) {
                Some(UnitsWord::Us) => UnitSystem::Us,
                _ => UnitSystem::Metric,
            },
            language: language.map_or(Language::English, |language| language.value),
            atmosphere,
            rooms,
            systems: Vec::new(),
        };
        let (book, folder, sources) = (self.book, self.folder, self.sources);
        site.systems = on_all_cores(notes.systems, self.diagnostics, |system, diagnostics| {
            let mut assembler = SiteAssembler {
                book,
                folder,
                sources,
                diagnostics,
            };
            assembler.system(&site, zone.is_some(), system)
        });
        site
    }

    fn system(&mut self, site: &Site, zone_known: bool, notes: SystemNotes) -> System {
        let note = notes.system.note;
        let file = notes.system.file;
        let home = Span::file_start(file);
        let sound = note.as_ref().is_some_and(|note| note.whole.complete);
        let mut system = System {
            path: format!("{}/{}", site.folder, notes.name),
            folder: notes.name,
            file,
            circuits: Vec::new(),
            points: Registry::new("point", home, sound),
            areas: Registry::new("area", home, sound),
            earlier: Vec::new(),
            plans: Vec::new(),
            visits: Vec::new(),
            note: note.clone(),
        };
        if let Some(note) = &note {
            self.circuits(site, &mut system, note);
            self.register(&mut system, note);
            self.earlier(site, &mut system, note);
            self.plans(&mut system, note);
        } else {
            system.circuits.push(unnamed_circuit(home));
        }
        let has_visits = !notes.visits.is_empty();
        for visit in notes.visits {
            let mut assembler = VisitAssembler {
                book: self.book,
                site,
                system: &system,
                folder: self.folder,
                sources: self.sources,
                zone: zone_known.then_some(&site.zone),
                diagnostics: self.diagnostics,
            };
            let visit = assembler.visit(visit);
            system.visits.push(visit);
        }
        if has_visits {
            self.in_force_before_visits(&system);
        }
        system
    }

    fn circuits(&mut self, site: &Site, system: &mut System, note: &SystemNote) {
        let mut names: Registry<()> =
            Registry::new("circuit", note.whole.span, note.whole.complete);
        for circuit in &note.circuit {
            names.add(circuit.id.as_ref(), (), self.diagnostics);
            let mut sections = Registry::new("section", circuit.whole.span, circuit.whole.complete);
            for section in &circuit.sections {
                sections.add(section.id.as_ref(), section.clone(), self.diagnostics);
            }
            for room in &circuit.rooms {
                site.rooms.resolve(room, self.diagnostics);
            }
            system.circuits.push(Circuit {
                id: circuit.id.as_ref().map(|id| id.value.clone()),
                span: circuit.id.as_ref().map_or(circuit.whole.span, |id| id.span),
                note: Some(circuit.clone()),
                sections,
                in_force: Vec::new(),
            });
        }
        if system.circuits.is_empty() {
            let mut only = unnamed_circuit(note.whole.span);
            only.id = note
                .in_force
                .iter()
                .find_map(|entry| entry.circuit.as_ref())
                .map(|id| id.value.clone());
            system.circuits.push(only);
        }
        for entry in &note.in_force {
            check_refrigerant(entry.refrigerant.as_ref(), self.diagnostics);
            let circuit = circuit_of(
                system,
                entry.circuit.as_ref(),
                entry.whole.span,
                entry.whole.sound,
                self.diagnostics,
            );
            let from = entry
                .from
                .and_then(|from| moment::resolve_day(&from, &site.zone, self.diagnostics));
            let (Some(circuit), Some(from)) = (circuit, from) else {
                continue;
            };
            let list = &mut system.circuits[circuit].in_force;
            if let Some(first) = list.iter().find(|known| known.from.value == from.value) {
                self.diagnostics.push(
                    Diagnostic::error(
                        "in-force-twice",
                        from.span,
                        "two entries are in force from the same moment",
                    )
                    .here("the second one")
                    .also(first.from.span, "the first one")
                    .why("only one refrigerant and one full charge can hold at a time")
                    .cure("correct one of the two days, or name the circuit of each"),
                );
                continue;
            }
            list.push(InForce {
                from,
                note: entry.clone(),
                refrigerant: refrigerant_of(entry.refrigerant.as_ref()),
            });
            list.sort_by_key(|entry| entry.from.value);
        }
    }

    fn register(&mut self, system: &mut System, note: &SystemNote) {
        for area in &note.area {
            system.areas.add(area.id.as_ref(), (), self.diagnostics);
        }
        for point in &note.point {
            if let Some(circuit) = &point.circuit {
                circuit_of(
                    system,
                    Some(circuit),
                    point.whole.span,
                    true,
                    self.diagnostics,
                );
            }
            if let Some(section) = &point.section {
                section_of(system, point.circuit.as_ref(), section, self.diagnostics);
            }
            system
                .points
                .add(point.id.as_ref(), point.clone(), self.diagnostics);
        }
    }

    fn earlier(&mut self, site: &Site, system: &mut System, note: &SystemNote) {
        for entry in &note.earlier {
            let circuit = circuit_of(
                system,
                entry.circuit.as_ref(),
                entry.whole.span,
                entry.whole.sound,
                self.diagnostics,
            );
            if let Some(point) = &entry.point {
                system.points.resolve(point, self.diagnostics);
            }
            let at = entry
                .at
                .and_then(|at| moment::resolve_day(&at, &site.zone, self.diagnostics));
            if let (Some(circuit), Some(at)) = (circuit, at) {
                system.earlier.push(Earlier {
                    at,
                    circuit,
                    note: entry.clone(),
                });
            }
        }
        system.earlier.sort_by_key(|entry| entry.at.value);
    }

    fn plans(&mut self, system: &mut System, note: &SystemNote) {
        for plan in &note.plan {
            let circuit = circuit_of(
                system,
                plan.circuit.as_ref(),
                plan.whole.span,
                plan.whole.sound,
                self.diagnostics,
            );
            let (Some(circuit), Some(made), Some(kind), Some(complete_by)) =
                (circuit, plan.made, plan.kind, plan.complete_by)
            else {
                continue;
            };
            let ends = [Some(complete_by), plan.completed].into_iter().flatten();
            for end in ends.filter(|end| end.value < made.value) {
                self.diagnostics.push(
                    Diagnostic::error(
                        "plan-ends-before-it-is-made",
                        end.span,
                        format!("{} is before the plan was made", end.value),
                    )
                    .here("this day")
                    .also(made.span, "the day it was made")
                    .why("the year that a plan may take is counted from the day it was made")
                    .cure("correct one of the two days"),
                );
            }
            system.plans.push(Plan {
                circuit,
                kind: kind.value,
                made,
                complete_by,
                completed: plan.completed,
            });
        }
        system.plans.sort_by_key(|plan| plan.made.value);
    }

    /// Each circuit needs a refrigerant in force on the first day it was visited.
    fn in_force_before_visits(&mut self, system: &System) {
        let Some(note) = system.note.as_ref().filter(|note| note.whole.sound) else {
            return;
        };
        let Some(first) = system.visits.first() else {
            return;
        };
        let unread = note.in_force.iter().any(|entry| !entry.whole.sound)
            || note.circuit.iter().any(|circuit| circuit.id.is_none());
        if unread {
            return;
        }
        for (index, circuit) in system.circuits.iter().enumerate() {
            if system.in_force(index, first.last_day()).is_some() {
                continue;
            }
            let span = circuit
                .in_force
                .first()
                .map_or(circuit.span, |entry| entry.from.span);
            self.diagnostics.push(
                Diagnostic::error(
                    "nothing-in-force",
                    span,
                    format!(
                        "nothing says which refrigerant {} held on {}",
                        system.circuit_name(index),
                        first.name.date
                    ),
                )
                .here("in force only later, or not at all")
                .also(
                    Span::file_start(first.files.first().copied().unwrap_or(system.file)),
                    "visited before that",
                )
                .cure("add [[in-force]] with from, refrigerant and full-charge for that day or earlier"),
            );
        }
    }
}

fn unnamed_circuit(span: Span) -> Circuit {
    Circuit {
        id: None,
        span,
        note: None,
        sections: Registry::new("section", span, true),
        in_force: Vec::new(),
    }
}

/// The number of a circuit by its name; the only one where it is not named.
pub(super) fn circuit_of(
    system: &System,
    id: Option<&Noted<Identifier>>,
    table: Span,
    sound: bool,
    diagnostics: &mut Diagnostics,
) -> Option<usize> {
    let complete = system.note.as_ref().is_some_and(|note| {
        note.whole.complete && note.circuit.iter().all(|circuit| circuit.id.is_some())
    });
    let Some(id) = id else {
        if system.circuits.len() <= 1 {
            return Some(0);
        }
        if sound && complete {
            let names: Vec<String> = system
                .circuits
                .iter()
                .filter_map(|circuit| circuit.id.as_ref())
                .map(|id| format!("`{id}`"))
                .collect();
            let first = system
                .circuits
                .first()
                .map_or(table, |circuit| circuit.span);
            diagnostics.push(
                Diagnostic::error(
                    "circuit-not-named",
                    table,
                    "this does not say which circuit",
                )
                .here("should have a line `circuit = …`")
                .also(first, "the system has several circuits")
                .why("each independent circuit has its own account and its own leak rate")
                .cure(format!("name {}", crate::text::or_list(&names))),
            );
        }
        return None;
    };
    if let Some(index) = system.circuit(&id.value) {
        return Some(index);
    }
    if system.circuits.len() == 1 && system.circuits[0].id.is_none() && complete {
        diagnostics.push(
            Diagnostic::error(
                "name-unknown",
                id.span,
                format!("there is no circuit `{}`", id.value),
            )
            .here("not registered")
            .also(
                Span::file_start(system.file),
                "this system names no circuits",
            )
            .cure("add [[circuit]] to system.toml, or take the line out"),
        );
        return None;
    }
    if complete {
        let home = system.circuits.first().map_or(table, |first| first.span);
        let mut registry = Registry::new("circuit", home, true);
        for circuit in &system.circuits {
            if let Some(known) = &circuit.id {
                registry.add(
                    Some(&Noted::new(known.clone(), circuit.span)),
                    (),
                    &mut Diagnostics::default(),
                );
            }
        }
        registry.resolve(id, diagnostics);
    }
    None
}

/// Checks that a section exists in a circuit, or in any where the circuit is not named.
pub(super) fn section_of(
    system: &System,
    circuit: Option<&Noted<Identifier>>,
    section: &Noted<Identifier>,
    diagnostics: &mut Diagnostics,
) {
    let candidates: Vec<&Circuit> = match circuit.and_then(|id| system.circuit(&id.value)) {
        Some(index) => system.circuits.get(index).into_iter().collect(),
        None => system.circuits.iter().collect(),
    };
    let known = candidates
        .iter()
        .any(|circuit| circuit.sections.get(&section.value).is_some());
    let complete = candidates.iter().all(|circuit| circuit.sections.complete);
    if known || !complete || !system.note.as_ref().is_some_and(|note| note.whole.complete) {
        return;
    }
    if let Some(circuit) = candidates.first() {
        diagnostics.push(circuit.sections.unknown(section));
    }
}
