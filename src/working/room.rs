//! A room against what would be in its air if the largest circuit that can reach it came out.

use crate::job::{Site, System};
use crate::quantity::{Flavour, Mass, Measured, Volume};
use crate::refrigerant::{Mark, Refrigerant, Sourced};
use crate::text::{Message, Noted, Span, Text};
use crate::vocabulary::Identifier;
use crate::vocabulary::site_file::RoomKind;
use crate::working::working::{Figure, Method, Origin, Value, Working};
use jiff::civil::Date;

/// Concentration in a room.
pub static CONCENTRATION: Method = Method {
    id: "room-concentration",
    name: "Concentration in the room if the whole charge came out",
    formula: "c = m ÷ V",
    mathematics: "c = m / V",
    source: "charge over room volume, as EN 378-1 and ASHRAE 15 compare it with their limits; evenly mixed, which the air near the floor is not at first",
};

/// The same where no volume is noted.
pub static CONCENTRATION_BY_AREA: Method = Method {
    id: "room-concentration-by-area",
    name: CONCENTRATION.name,
    formula: "c = m ÷ (A × h)",
    mathematics: "c = m / (A dot h)",
    source: CONCENTRATION.source,
};

/// A quarter of the lower flammable limit.
pub static QUARTER_LIMIT: Method = Method {
    id: "quarter-flammable-limit",
    name: "A quarter of the lower flammable limit",
    formula: "c_¼ = 0.25 × LFL",
    mathematics: "c_(1/4) = 0.25 \"LFL\"",
    source: "screening at 25 % of the LFL, common practice",
};

/// Which limit the code of a site goes by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoomLimit {
    /// Practical limit of EN 378-1.
    Practical,
    /// Refrigerant concentration limit of ASHRAE 34.
    Concentration,
}

/// A room that the circuits of a system reach.
#[derive(Clone, Debug)]
pub struct Room {
    /// Its name in the notes.
    pub id: Identifier,
    /// What kind of room it is.
    pub kind: RoomKind,
    /// Where it is noted.
    pub span: Span,
    /// The circuit that holds most among those that reach it.
    pub circuit: usize,
    /// Its refrigerant.
    pub refrigerant: &'static Refrigerant,
    /// Concentration; none where the size is not noted, or where nobody stays.
    pub concentration: Option<Figure>,
    /// The limit of the site's code, kg/m³, where a value is held.
    pub limit: Option<Sourced<f64>>,
    /// A quarter of the lower flammable limit.
    pub quarter: Option<Figure>,
    /// Whether the lower flammable limit was only remembered.
    pub quarter_from_memory: bool,
}

impl Room {
    /// Whether a size is needed and not noted: an occupied room reached by a flammable or more toxic
    /// refrigerant.
    pub fn size_wanted(&self) -> bool {
        self.kind == RoomKind::Occupied
            && self.concentration.is_none()
            && self
                .refrigerant
                .safety_class
                .is_some_and(|class| class.value.is_flammable() || class.value.is_more_toxic())
    }

    /// Whether the concentration lies above a value, kg/m³.
    pub fn above(&self, limit_kg_m3: f64) -> Option<bool> {
        Some(self.concentration.as_ref()?.value.number() > limit_kg_m3)
    }
}

/// Whether a value may carry a statement on safety: one from memory may not.
pub fn may_be_stated(limit: &Sourced<f64>) -> bool {
    limit.source.mark != Mark::Memory
}

/// Every room that a system reaches, with the largest single circuit that can enter it on a day.
pub fn rooms(site: &Site, system: &System, day: Date, limit: RoomLimit) -> Vec<Room> {
    site.rooms
        .iter()
        .filter_map(|(id, note)| {
            let reaching = (0..system.circuits.len()).filter(|circuit| {
                system.circuits[*circuit]
                    .note
                    .iter()
                    .flat_map(|note| &note.rooms)
                    .any(|room| room.value == *id)
            });
            let (circuit, charge, refrigerant) = reaching
                .filter_map(|circuit| {
                    let entry = system.in_force(circuit, day)?;
                    Some((circuit, entry.note.full_charge?, entry.refrigerant?))
                })
                .reduce(|most, next| {
                    if next.1.value.value.si() > most.1.value.value.si() {
                        next
                    } else {
                        most
                    }
                })?;
            let kind = note.kind?.value;
            let occupied = kind == RoomKind::Occupied;
            let concentration = occupied.then(|| concentration(id, note, &charge)).flatten();
            let flammable = refrigerant.lower_flammability_limit_kg_m3.as_ref();
            Some(Room {
                id: id.clone(),
                kind,
                span: site.rooms.span(id)?,
                circuit,
                refrigerant,
                concentration,
                limit: match limit {
                    RoomLimit::Practical => refrigerant.practical_limit_kg_m3,
                    RoomLimit::Concentration => refrigerant.concentration_limit_kg_m3,
                },
                quarter: flammable
                    .filter(|_| occupied)
                    .map(|limit| quarter(id, refrigerant, limit)),
                quarter_from_memory: flammable.is_some_and(|limit| !may_be_stated(limit)),
            })
        })
        .collect()
}

fn concentration(
    id: &Identifier,
    note: &crate::notes::RoomNote,
    charge: &Noted<Measured<Mass>>,
) -> Option<Figure> {
    let mut working = Working::of(
        if note.volume.is_some() {
            &CONCENTRATION
        } else {
            &CONCENTRATION_BY_AREA
        },
        format!("room/{id}/concentration"),
        Message::of("title-room-concentration").with("room", id.0.as_str()),
    );
    let mass = working.take("m", charge);
    let volume = volume(&mut working, note)?;
    (volume > 0.0).then(|| {
        working.finish(Value::Computed {
            flavour: Flavour::MassPerVolume,
            si: mass / volume,
            uncertainty: None,
        })
    })
}

fn volume(working: &mut Working, note: &crate::notes::RoomNote) -> Option<f64> {
    if let Some(volume) = &note.volume {
        let noted: &Noted<Measured<Volume>> = volume;
        return Some(working.take("V", noted));
    }
    let (area, height) = (note.area?, note.height?);
    Some(working.take("A", &area) * working.take("h", &height))
}

fn quarter(id: &Identifier, refrigerant: &Refrigerant, limit: &Sourced<f64>) -> Figure {
    let mut working = Working::of(
        &QUARTER_LIMIT,
        format!("room/{id}/quarter-flammable-limit"),
        Message::of("title-quarter-flammable-limit").with("refrigerant", refrigerant.designation),
    );
    working.input(
        "LFL",
        Value::Computed {
            flavour: Flavour::MassPerVolume,
            si: limit.value,
            uncertainty: None,
        },
        Origin::Table(Text::Phrase(limit.source.citation)),
    );
    working.finish(Value::Computed {
        flavour: Flavour::MassPerVolume,
        si: limit.value * 0.25,
        uncertainty: None,
    })
}
