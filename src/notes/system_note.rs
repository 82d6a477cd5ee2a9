//! `system.toml`: from the tree to typed notes.

use crate::notes::table_reader::{FileReader, TableReader, Whole};
use crate::quantity::{Mass, Measured, Pressure, Volume};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::system_file::{
    Category, EarlierHappening, PlanKind, Status, area, circuit, earlier, in_force, plan, point,
    section,
};
use crate::vocabulary::{DateOrTime, Designation, Identifier, Noted, system_file};
use jiff::civil::Date;

/// `system.toml` as written.
#[derive(Clone, Debug)]
pub struct SystemNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Name of the system, as the report prints it.
    pub name: Option<Noted<String>>,
    /// Year on the plate.
    pub made: Option<Noted<i64>>,
    /// Day it was put into service.
    pub installed: Option<Noted<Date>>,
    /// Category, as the leak-rate triggers divide them.
    pub category: Option<Noted<Category>>,
    /// Serial number on the plate.
    pub serial: Option<Noted<String>>,
    /// Labelled as hermetically sealed.
    pub hermetic_label: Option<Noted<bool>>,
    /// In a residential building.
    pub residential: Option<Noted<bool>>,
    /// Air conditioner or heat pump of the light commercial kind.
    pub light_commercial: Option<Noted<bool>>,
    /// Has a fixed leakage detection system that alerts the operator.
    pub leak_detection_system: Option<Noted<bool>>,
    /// Days on which that system was checked.
    pub leak_detection_checked: Vec<Noted<Date>>,
    /// Days on which a chronic loss was reported.
    pub chronic_loss_reported: Vec<Noted<Date>>,
    /// Plans to retrofit or retire.
    pub plan: Vec<PlanNote>,
    /// Refrigerant and charge over time.
    pub in_force: Vec<InForceNote>,
    /// Circuits.
    pub circuit: Vec<CircuitNote>,
    /// Areas.
    pub area: Vec<AreaNote>,
    /// Points.
    pub point: Vec<PointNote>,
    /// Earlier history.
    pub earlier: Vec<EarlierNote>,
}

impl SystemNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::top as keys;
        let name = reader.get(input, &keys::NAME);
        let made = reader.get(input, &keys::MADE);
        let installed = reader.get(input, &keys::INSTALLED);
        let category = reader.get(input, &keys::CATEGORY);
        let serial = reader.get(input, &keys::SERIAL);
        let hermetic_label = reader.get(input, &keys::HERMETIC_LABEL);
        let residential = reader.get(input, &keys::RESIDENTIAL);
        let light_commercial = reader.get(input, &keys::LIGHT_COMMERCIAL);
        let leak_detection_system = reader.get(input, &keys::LEAK_DETECTION_SYSTEM);
        let leak_detection_checked = reader.list(input, &keys::LEAK_DETECTION_CHECKED);
        let chronic_loss_reported = reader.list(input, &keys::CHRONIC_LOSS_REPORTED);
        let plan = reader
            .tables(input, &keys::PLAN, &plan::TABLE)
            .into_iter()
            .map(|reader| PlanNote::read(reader, input))
            .collect();
        let in_force = reader
            .tables(input, &keys::IN_FORCE, &in_force::TABLE)
            .into_iter()
            .map(|reader| InForceNote::read(reader, input))
            .collect();
        let circuit = reader
            .tables(input, &keys::CIRCUIT, &circuit::TABLE)
            .into_iter()
            .map(|reader| CircuitNote::read(reader, input))
            .collect();
        let area = reader
            .tables(input, &keys::AREA, &area::TABLE)
            .into_iter()
            .map(|reader| AreaNote::read(reader, input))
            .collect();
        let point = reader
            .tables(input, &keys::POINT, &point::TABLE)
            .into_iter()
            .map(|reader| PointNote::read(reader, input))
            .collect();
        let earlier = reader
            .tables(input, &keys::EARLIER, &earlier::TABLE)
            .into_iter()
            .map(|reader| EarlierNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            name,
            made,
            installed,
            category,
            serial,
            hermetic_label,
            residential,
            light_commercial,
            leak_detection_system,
            leak_detection_checked,
            chronic_loss_reported,
            plan,
            in_force,
            circuit,
            area,
            point,
            earlier,
        }
    }
}

/// A plan to retrofit or retire.
#[derive(Clone, Debug)]
pub struct PlanNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Day it was made.
    pub made: Option<Noted<Date>>,
    /// What it is for.
    pub kind: Option<Noted<PlanKind>>,
    /// The last day for it, as the plan says.
    pub complete_by: Option<Noted<Date>>,
    /// Day it was done.
    pub completed: Option<Noted<Date>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl PlanNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::plan as keys;
        let made = reader.get(input, &keys::MADE);
        let kind = reader.get(input, &keys::KIND);
        let complete_by = reader.get(input, &keys::COMPLETE_BY);
        let completed = reader.get(input, &keys::COMPLETED);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            made,
            kind,
            complete_by,
            completed,
            circuit,
            note,
        }
    }
}

/// What held from a moment on.
#[derive(Clone, Debug)]
pub struct InForceNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// From when.
    pub from: Option<Noted<DateOrTime>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Refrigerant from then on.
    pub refrigerant: Option<Noted<Designation>>,
    /// Full charge from then on.
    pub full_charge: Option<Noted<Measured<Mass>>>,
    /// How the full charge was determined.
    pub full_charge_by: Option<Noted<String>>,
    /// Whether it is in use.
    pub status: Option<Noted<Status>>,
}

impl InForceNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::in_force as keys;
        let from = reader.get(input, &keys::FROM);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let refrigerant = reader.get(input, &keys::REFRIGERANT);
        let full_charge = reader.get(input, &keys::FULL_CHARGE);
        let full_charge_by = reader.get(input, &keys::FULL_CHARGE_BY);
        let status = reader.get(input, &keys::STATUS);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            from,
            circuit,
            refrigerant,
            full_charge,
            full_charge_by,
            status,
        }
    }
}

/// A circuit.
#[derive(Clone, Debug)]
pub struct CircuitNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes.
    pub id: Option<Noted<Identifier>>,
    /// What it is.
    pub about: Option<Noted<String>>,
    /// Rooms that its refrigerant could enter.
    pub rooms: Vec<Noted<Identifier>>,
    /// Highest allowable pressure, where there are no sections.
    pub most: Option<Noted<Measured<Pressure>>>,
    /// Inner volume, where there are no sections.
    pub volume: Option<Noted<Measured<Volume>>>,
    /// Parts that valves can shut off.
    pub sections: Vec<SectionNote>,
}

impl CircuitNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::circuit as keys;
        let id = reader.get(input, &keys::ID);
        let about = reader.get(input, &keys::ABOUT);
        let rooms = reader.list(input, &keys::ROOMS);
        let most = reader.get(input, &keys::MOST);
        let volume = reader.get(input, &keys::VOLUME);
        let sections = reader
            .tables(input, &keys::SECTIONS, &section::TABLE)
            .into_iter()
            .map(|reader| SectionNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            about,
            rooms,
            most,
            volume,
            sections,
        }
    }
}

/// A section.
#[derive(Clone, Debug)]
pub struct SectionNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes.
    pub id: Option<Noted<Identifier>>,
    /// Highest allowable pressure, as the plate says (PS).
    pub most: Option<Noted<Measured<Pressure>>>,
    /// Inner volume, with its uncertainty.
    pub volume: Option<Noted<Measured<Volume>>>,
    /// What it is.
    pub about: Option<Noted<String>>,
}

impl SectionNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::section as keys;
        let id = reader.get(input, &keys::ID);
        let most = reader.get(input, &keys::MOST);
        let volume = reader.get(input, &keys::VOLUME);
        let about = reader.get(input, &keys::ABOUT);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            most,
            volume,
            about,
        }
    }
}

/// An area.
#[derive(Clone, Debug)]
pub struct AreaNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// First part of the point ids it stands for.
    pub id: Option<Noted<Identifier>>,
    /// What it is.
    pub about: Option<Noted<String>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
}

impl AreaNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::area as keys;
        let id = reader.get(input, &keys::ID);
        let about = reader.get(input, &keys::ABOUT);
        let circuit = reader.get(input, &keys::CIRCUIT);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            about,
            circuit,
        }
    }
}

/// A point.
#[derive(Clone, Debug)]
pub struct PointNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes; a part before a slash is its area.
    pub id: Option<Noted<Identifier>>,
    /// Kind of joint or part.
    pub kind: Option<Noted<String>>,
    /// Part of the plant it belongs to.
    pub part: Option<Noted<String>>,
    /// Where it is, in words a customer understands.
    pub place: Option<Noted<String>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Which section.
    pub section: Option<Noted<Identifier>>,
    /// Days on which the part was replaced; each starts its count anew.
    pub replaced: Vec<Noted<Date>>,
    /// Days on which it was taken out.
    pub removed: Vec<Noted<Date>>,
}

impl PointNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::point as keys;
        let id = reader.get(input, &keys::ID);
        let kind = reader.get(input, &keys::KIND);
        let part = reader.get(input, &keys::PART);
        let place = reader.get(input, &keys::WHERE);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let section = reader.get(input, &keys::SECTION);
        let replaced = reader.list(input, &keys::REPLACED);
        let removed = reader.list(input, &keys::REMOVED);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            kind,
            part,
            place,
            circuit,
            section,
            replaced,
            removed,
        }
    }
}

/// Something before this book, or by others.
#[derive(Clone, Debug)]
pub struct EarlierNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// When.
    pub at: Option<Noted<DateOrTime>>,
    /// What happened.
    pub what: Option<Noted<EarlierHappening>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// Which point.
    pub point: Option<Noted<Identifier>>,
    /// How much refrigerant.
    pub mass: Option<Noted<Measured<Mass>>>,
    /// By whom.
    pub by: Option<Noted<String>>,
    /// Where it is written.
    pub source: Option<Noted<String>>,
}

impl EarlierNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use system_file::earlier as keys;
        let at = reader.get(input, &keys::AT);
        let what = reader.get(input, &keys::WHAT);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let point = reader.get(input, &keys::POINT);
        let mass = reader.get(input, &keys::MASS);
        let by = reader.get(input, &keys::BY);
        let source = reader.get(input, &keys::SOURCE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            at,
            what,
            circuit,
            point,
            mass,
            by,
            source,
        }
    }
}
