//! The validated model: a book with its sites, systems and visits, names resolved and times as instants.

use crate::job::accuracy::Accuracy;
use crate::job::moment::Moment;
use crate::job::registry::Registry;
use crate::job::test::{PressureTest, VacuumTest};
use crate::notes::{
    BookNote, CircuitNote, CylinderEventNote, CylinderNote, DetectorCheckNote, EarlierNote,
    FindingNote, InForceNote, InstrumentNote, MovementNote, OperatingNote, PersonNote, PointNote,
    RoomNote, SearchNote, SectionNote, SiteNote, SystemNote, VisitName, VisitNote,
};
use crate::quantity::{AbsolutePressure, Mass, Measured, Pressure, UnitSystem, Volume};
use crate::refrigerant::Refrigerant;
use crate::text::prose::Block;
use crate::text::{FileId, Noted, Span, Text};
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::vocabulary::site_file::Language;
use crate::vocabulary::system_file::PlanKind;
use crate::vocabulary::{Designation, Identifier};
use jiff::civil::Date;
use jiff::tz::TimeZone;

/// A whole book.
#[derive(Debug)]
pub struct Book {
    /// `rimebook.toml`.
    pub file: FileId,
    /// `rimebook.toml` as written, if it could be read.
    pub note: Option<BookNote>,
    /// People.
    pub people: Registry<PersonNote>,
    /// Instruments.
    pub instruments: Registry<InstrumentNote>,
    /// Cylinders.
    pub cylinders: Registry<CylinderNote>,
    /// What happened to cylinders between jobs, by day.
    pub cylinder_events: Vec<CylinderEventNote>,
    /// The sites, by folder name.
    pub sites: Vec<Site>,
}

/// A site.
#[derive(Debug)]
pub struct Site {
    /// Folder name.
    pub folder: String,
    /// `site.toml`.
    pub file: FileId,
    /// As written, if it could be read.
    pub note: Option<SiteNote>,
    /// Its time zone; UTC where it could not be read, which is told.
    pub zone: TimeZone,
    /// Units that the reports print.
    pub units: UnitSystem,
    /// Language of its reports.
    pub language: Language,
    /// Air pressure where no barometer was read, and where that comes from.
    pub atmosphere: Atmosphere,
    /// Rooms.
    pub rooms: Registry<RoomNote>,
    /// Systems, by folder name.
    pub systems: Vec<System>,
}

/// Air pressure and where it comes from.
#[derive(Clone, Copy, Debug)]
pub enum Atmosphere {
    /// Read on a barometer.
    Barometer(Noted<Measured<AbsolutePressure>>),
    /// From the altitude of the site.
    Altitude(Noted<Measured<crate::quantity::Length>>),
    /// The standard atmosphere, for want of either.
    Standard,
}

impl Atmosphere {
    /// The pressure.
    pub fn pressure(&self) -> AbsolutePressure {
        match self {
            Atmosphere::Barometer(noted) => noted.value.value,
            Atmosphere::Altitude(noted) => crate::quantity::atmosphere_at(noted.value.value),
            Atmosphere::Standard => crate::quantity::STANDARD_ATMOSPHERE,
        }
    }
}

/// A system.
#[derive(Debug)]
pub struct System {
    /// Folder name.
    pub folder: String,
    /// Path from the root of the book.
    pub path: String,
    /// `system.toml`.
    pub file: FileId,
    /// As written, if it could be read.
    pub note: Option<SystemNote>,
    /// Circuits in the order of the file; one without a name where none is written.
    pub circuits: Vec<Circuit>,
    /// Registered points.
    pub points: Registry<PointNote>,
    /// Registered areas.
    pub areas: Registry<()>,
    /// History before this book, or by others, in order of time.
    pub earlier: Vec<Earlier>,
    /// Plans to retrofit or retire, in order of time.
    pub plans: Vec<Plan>,
    /// Visits, by day and number.
    pub visits: Vec<Visit>,
}

/// A circuit.
#[derive(Debug)]
pub struct Circuit {
    /// Its name; none where the system has only one and does not name it.
    pub id: Option<Identifier>,
    /// Where it is registered.
    pub span: Span,
    /// As written.
    pub note: Option<CircuitNote>,
    /// Sections.
    pub sections: Registry<SectionNote>,
    /// What was in force from when, in order of time.
    pub in_force: Vec<InForce>,
}

/// What held in a circuit from a moment on.
#[derive(Debug)]
pub struct InForce {
    /// From when.
    pub from: Noted<Moment>,
    /// As written.
    pub note: InForceNote,
    /// The refrigerant.
    pub refrigerant: Option<&'static Refrigerant>,
}

/// Something before this book, or by others.
#[derive(Debug)]
pub struct Earlier {
    /// When.
    pub at: Noted<Moment>,
    /// Number of the circuit.
    pub circuit: usize,
    /// As written.
    pub note: EarlierNote,
}

/// A plan to retrofit or retire.
#[derive(Debug)]
pub struct Plan {
    /// Number of the circuit.
    pub circuit: usize,
    /// What it is for.
    pub kind: PlanKind,
    /// Day it was made.
    pub made: Noted<Date>,
    /// The last day for it, as the plan says.
    pub complete_by: Noted<Date>,
    /// Day it was done.
    pub completed: Option<Noted<Date>>,
}

/// A visit.
#[derive(Debug)]
pub struct Visit {
    /// Day and number.
    pub name: VisitName,
    /// Path of the folder from the root.
    pub path: String,
    /// Its files.
    pub files: Vec<FileId>,
    /// `visit.toml` as written, if it could be read.
    pub note: Option<VisitNote>,
    /// Who was there, from when to when.
    pub attendance: Vec<Attendance>,
    /// Movements of refrigerant, in order of time.
    pub movements: Vec<Movement>,
    /// Detector checks, in order of the file.
    pub detector_checks: Vec<Timed<DetectorCheckNote>>,
    /// Searches, in order of the file.
    pub searches: Vec<Search>,
    /// Pressure tests.
    pub pressure_tests: Vec<PressureTest>,
    /// Vacuum tests.
    pub vacuum_tests: Vec<VacuumTest>,
    /// Operating readings.
    pub operating: Vec<OperatingReading>,
    /// When it ran normally again.
    pub back: Option<Noted<Moment>>,
    /// Prose before the findings.
    pub introduction: Vec<Block>,
    /// Findings.
    pub findings: Vec<Finding>,
    /// Air pressure of the day.
    pub atmosphere: Atmosphere,
}

/// A note with its moment.
#[derive(Debug)]
pub struct Timed<T> {
    /// When.
    pub at: Noted<Moment>,
    /// As written.
    pub note: T,
}

/// Who was there.
#[derive(Debug)]
pub struct Attendance {
    /// Name in the register of people.
    pub by: Noted<Identifier>,
    /// Arrived.
    pub from: Noted<Moment>,
    /// Left.
    pub to: Noted<Moment>,
}

/// A movement of refrigerant.
#[derive(Debug)]
pub struct Movement {
    /// Which way.
    pub kind: MovementKind,
    /// Why.
    pub why: Option<MovementWhy>,
    /// Number of the circuit.
    pub circuit: usize,
    /// When.
    pub at: Noted<Moment>,
    /// How much, and how that is known.
    pub amount: MovedMass,
    /// Accuracy of the scale, where one is named and its register gives it.
    pub scale: Option<Noted<Accuracy>>,
    /// As written.
    pub note: MovementNote,
}

/// How much refrigerant moved.
#[derive(Clone, Copy, Debug)]
pub enum MovedMass {
    /// By two scale readings of a cylinder.
    Weighed {
        /// Before.
        before: Noted<Measured<Mass>>,
        /// After.
        after: Noted<Measured<Mass>>,
    },
    /// As stated.
    Stated(Noted<Measured<Mass>>),
}

impl MovedMass {
    /// The mass, kg.
    pub fn kg(&self) -> f64 {
        match self {
            MovedMass::Weighed { before, after } => {
                (before.value.value.si() - after.value.value.si()).abs()
            }
            MovedMass::Stated(mass) => mass.value.value.si(),
        }
    }

    /// The same as one number: the coarser last digit of two readings, and their ± where one is written.
    pub fn measured(&self) -> Measured<Mass> {
        match self {
            MovedMass::Weighed { before, after } => {
                let (one, other) = (before.value, after.value);
                let coarser = if one.step > other.step { one } else { other };
                let halves = [one.uncertainty, other.uncertainty];
                let noted = halves.iter().any(Option::is_some);
                Measured {
                    value: Mass::new(self.kg()),
                    uncertainty: noted
                        .then(|| halves[0].unwrap_or(0.0).hypot(halves[1].unwrap_or(0.0))),
                    ..coarser
                }
            }
            MovedMass::Stated(mass) => mass.value,
        }
    }

    /// Where it stands.
    pub fn span(&self) -> Span {
        match self {
            MovedMass::Weighed { after, .. } => after.span,
            MovedMass::Stated(mass) => mass.span,
        }
    }
}

/// A search.
#[derive(Debug)]
pub struct Search {
    /// Began.
    pub started: Noted<Moment>,
    /// Ended.
    pub ended: Noted<Moment>,
    /// Number of the circuit, where only one was searched.
    pub circuit: Option<usize>,
    /// As written.
    pub note: SearchNote,
}

/// Readings of the running plant.
#[derive(Debug)]
pub struct OperatingReading {
    /// When.
    pub at: Noted<Moment>,
    /// Number of the circuit.
    pub circuit: usize,
    /// As written.
    pub note: OperatingNote,
}

/// A finding.
#[derive(Debug)]
pub struct Finding {
    /// Number of the circuit, where it is known.
    pub circuit: Option<usize>,
    /// As written.
    pub note: FindingNote,
    /// Its pictures that can be shown: place in the note's list and path from the root.
    pub pictures: Vec<(usize, String)>,
}

impl Book {
    /// A person's name as signed, or the name in the notes.
    pub fn person_name(&self, id: &Identifier) -> String {
        self.people
            .get(id)
            .and_then(|person| person.name.as_ref())
            .map_or_else(|| id.0.clone(), |name| name.value.clone())
    }

    /// What a movement moved: as it says itself, else what its cylinder is registered with, else what
    /// was in the circuit, which for what came out at a change of refrigerant is the one before.
    pub fn refrigerant_moved(
        &self,
        system: &System,
        movement: &Movement,
    ) -> Option<&'static Refrigerant> {
        let cylinder = movement.note.cylinder.as_ref();
        let cylinder = cylinder.and_then(|id| self.cylinders.get(&id.value));
        let written = movement.note.refrigerant.as_ref();
        let registered = || refrigerant_of(cylinder?.refrigerant.as_ref());
        refrigerant_of(written).or_else(registered).or_else(|| {
            let day = movement.at.value.date();
            let before = day.yesterday().unwrap_or(day);
            let out = movement.kind != MovementKind::Charged;
            let earlier = || system.in_force(movement.circuit, before).filter(|_| out);
            earlier()
                .or_else(|| system.in_force(movement.circuit, day))?
                .refrigerant
        })
    }
}

impl Site {
    /// Name as printed.
    pub fn name(&self) -> &str {
        let note = self.note.as_ref();
        note.and_then(|note| note.name.as_ref().or(note.operator.as_ref()))
            .map_or(&self.folder, |name| &name.value)
    }
}

impl System {
    /// Name as printed.
    pub fn name(&self) -> &str {
        self.note
            .as_ref()
            .and_then(|note| note.name.as_ref())
            .map_or(&self.folder, |name| &name.value)
    }

    /// What was in force in a circuit at the end of a day.
    pub fn in_force(&self, circuit: usize, day: Date) -> Option<&InForce> {
        self.circuits
            .get(circuit)?
            .in_force
            .iter()
            .rev()
            .find(|entry| entry.from.value.date() <= day)
    }

    /// Whether more than one circuit has to be told apart.
    pub fn several_circuits(&self) -> bool {
        self.circuits.len() > 1
    }

    /// The circuit of a name.
    pub fn circuit(&self, id: &Identifier) -> Option<usize> {
        self.circuits
            .iter()
            .position(|circuit| circuit.id.as_ref() == Some(id))
    }

    /// A circuit as printed: `circuit a`, or `the system` where there is only one.
    pub fn circuit_name(&self, circuit: usize) -> String {
        match self.circuits.get(circuit).and_then(|c| c.id.as_ref()) {
            Some(id) if self.several_circuits() => format!("circuit {id}"),
            _ => "the system".to_owned(),
        }
    }

    /// The id of a circuit for a message, or `none` where the system has but one.
    ///
    /// Sentences choose by it: `{ $circuit -> [none] the system *[other] circuit { $circuit } }`.
    pub fn circuit_choice(&self, circuit: usize) -> Text {
        match self.circuits.get(circuit).and_then(|c| c.id.as_ref()) {
            Some(id) if self.several_circuits() => Text::Written(id.0.clone()),
            _ => Text::Written("none".to_owned()),
        }
    }

    /// A point in words a customer understands.
    pub fn point_name(&self, id: &Identifier) -> String {
        self.points
            .get(id)
            .and_then(|point| point.place.as_ref())
            .map_or_else(|| id.0.clone(), |place| place.value.clone())
    }

    /// Points and areas that a pattern stands for.
    pub fn points_of(&self, pattern: &str) -> Vec<&Identifier> {
        self.points
            .iter()
            .map(|(id, _)| id)
            .filter(|id| matches_pattern(pattern, &id.0))
            .collect()
    }
}

impl Circuit {
    /// The parts under test: one section, or all of the circuit.
    pub fn volumes(&self, section: Option<&Identifier>) -> Option<Vec<&Noted<Measured<Volume>>>> {
        match section {
            Some(id) => Some(vec![self.sections.get(id)?.volume.as_ref()?]),
            None if self.sections.is_empty() => Some(vec![self.note.as_ref()?.volume.as_ref()?]),
            None => self
                .sections
                .iter()
                .map(|(_, section)| section.volume.as_ref())
                .collect(),
        }
    }

    /// The lowest highest allowable pressure of the parts under test.
    pub fn most(&self, section: Option<&Identifier>) -> Option<&Noted<Measured<Pressure>>> {
        let mut plates: Vec<&Noted<Measured<Pressure>>> = match section {
            Some(id) => self.sections.get(id)?.most.iter().collect(),
            None => self
                .sections
                .iter()
                .filter_map(|(_, section)| section.most.as_ref())
                .chain(self.note.as_ref().and_then(|note| note.most.as_ref()))
                .collect(),
        };
        plates.sort_by(|a, b| si(&a.value).total_cmp(&si(&b.value)));
        plates.into_iter().next()
    }
}

fn si(pressure: &Measured<Pressure>) -> f64 {
    use crate::quantity::Quantity;
    pressure.value.si()
}

impl Visit {
    /// The first arrival, or the start of the folder's day.
    pub fn start(&self) -> Option<Moment> {
        self.attendance.iter().map(|a| a.from.value).min()
    }

    /// The last departure: a report is as at this moment.
    pub fn end(&self) -> Option<Moment> {
        self.attendance.iter().map(|a| a.to.value).max()
    }

    /// The last day of the visit.
    pub fn last_day(&self) -> Date {
        self.end().map_or(self.name.date, Moment::date)
    }
}

/// Whether a name fits a pattern: `*` stands for the rest; an area's name for all that is in it.
pub fn matches_pattern(pattern: &str, name: &str) -> bool {
    match pattern.strip_suffix('*') {
        Some(start) => name.starts_with(start),
        None => {
            name == pattern
                || name
                    .strip_prefix(pattern)
                    .is_some_and(|r| r.starts_with('/'))
        }
    }
}

/// A refrigerant by the writer's designation.
pub fn refrigerant_of(designation: Option<&Noted<Designation>>) -> Option<&'static Refrigerant> {
    crate::refrigerant::find(&designation?.value.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn patterns_stand_for_the_rest_of_a_name_or_an_area() {
        assert!(matches_pattern("evap-1/*", "evap-1/txv-inlet"));
        assert!(matches_pattern("evap-1", "evap-1/txv-inlet"));
        assert!(!matches_pattern("evap-1", "evap-10/txv-inlet"));
        assert!(!matches_pattern("evap-1/*", "evap-2/txv-inlet"));
    }
}
