//! `refrigerant.toml`: from the tree to typed notes.

use crate::notes::table_reader::{FileReader, TableReader, Whole};
use crate::quantity::{Fraction, Mass, Measured};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::refrigerant_file::{
    ChargedTo, Destination, MassHow, MovementKind, MovementWhy, movement,
};
use crate::vocabulary::{Designation, Identifier, LocalTime, Noted, refrigerant_file};

/// `refrigerant.toml` as written.
#[derive(Clone, Debug)]
pub struct RefrigerantNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Movements.
    pub movement: Vec<MovementNote>,
}

impl RefrigerantNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use refrigerant_file::top as keys;
        let movement = reader
            .tables(input, &keys::MOVEMENT, &movement::TABLE)
            .into_iter()
            .map(|reader| MovementNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self { whole, movement }
    }
}

/// A movement of refrigerant.
#[derive(Clone, Debug)]
pub struct MovementNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Which way it moved.
    pub kind: Option<Noted<MovementKind>>,
    /// Why.
    pub why: Option<Noted<MovementWhy>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Which section.
    pub section: Option<Noted<Identifier>>,
    /// When it was done.
    pub at: Option<Noted<LocalTime>>,
    /// Who did it.
    pub by: Option<Noted<Identifier>>,
    /// What moved, where no cylinder says it.
    pub refrigerant: Option<Noted<Designation>>,
    /// Which cylinder.
    pub cylinder: Option<Noted<Identifier>>,
    /// Which scale.
    pub scale: Option<Noted<Identifier>>,
    /// What the cylinder weighed before.
    pub before: Option<Noted<Measured<Mass>>>,
    /// What the cylinder weighed afterwards.
    pub after: Option<Noted<Measured<Mass>>>,
    /// How much moved, where it was not weighed before and after.
    pub mass: Option<Noted<Measured<Mass>>>,
    /// How that mass was determined.
    pub how: Option<Noted<MassHow>>,
    /// Where recovered refrigerant goes.
    pub destination: Option<Noted<Destination>>,
    /// Share of a purge that is destroyed.
    pub destroyed: Option<Noted<Measured<Fraction>>>,
    /// How far it was charged.
    pub charged_to: Option<Noted<ChargedTo>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl MovementNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use refrigerant_file::movement as keys;
        let kind = reader.get(input, &keys::KIND);
        let why = reader.get(input, &keys::WHY);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let section = reader.get(input, &keys::SECTION);
        let at = reader.get(input, &keys::AT);
        let by = reader.get(input, &keys::BY);
        let refrigerant = reader.get(input, &keys::REFRIGERANT);
        let cylinder = reader.get(input, &keys::CYLINDER);
        let scale = reader.get(input, &keys::SCALE);
        let before = reader.get(input, &keys::BEFORE);
        let after = reader.get(input, &keys::AFTER);
        let mass = reader.get(input, &keys::MASS);
        let how = reader.get(input, &keys::HOW);
        let destination = reader.get(input, &keys::DESTINATION);
        let destroyed = reader.get(input, &keys::DESTROYED);
        let charged_to = reader.get(input, &keys::CHARGED_TO);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            kind,
            why,
            circuit,
            section,
            at,
            by,
            refrigerant,
            cylinder,
            scale,
            before,
            after,
            mass,
            how,
            destination,
            destroyed,
            charged_to,
            note,
        }
    }
}
