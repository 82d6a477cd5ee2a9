//! `visit.toml`: from the tree to typed notes.

use crate::notes::table_reader::{FileReader, TableReader, Whole};
use crate::quantity::{AbsolutePressure, Concentration, Fraction, Measured, Temperature};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::visit_file::{
    DueWord, Extension, LeftAs, OutcomeWord, Purpose, advice, attendance, due, safety_check, work,
};
use crate::vocabulary::{Identifier, LocalTime, Noted, visit_file};
use jiff::civil::Date;

/// `visit.toml` as written.
#[derive(Clone, Debug)]
pub struct VisitNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Why the visit was made.
    pub purpose: Option<Noted<Purpose>>,
    /// Who was there, from when to when.
    pub attendance: Vec<AttendanceNote>,
    /// What the customer said.
    pub complaint: Option<Noted<String>>,
    /// Temperature of the air outside.
    pub ambient: Option<Noted<Measured<Temperature>>>,
    /// Air pressure at the site.
    pub barometer: Option<Noted<Measured<AbsolutePressure>>>,
    /// How the system was left.
    pub left: Option<Noted<LeftAs>>,
    /// When it ran normally again.
    pub back: Option<Noted<LocalTime>>,
    /// Your own claim of how it ended; Rimebook works out its own beside it.
    pub outcome: Option<Noted<OutcomeWord>>,
    /// Safety checks.
    pub safety_check: Vec<SafetyCheckNote>,
    /// Work, part by part.
    pub work: Vec<WorkNote>,
    /// Advice.
    pub advice: Vec<AdviceNote>,
    /// Dates set by hand.
    pub due: Vec<DueNote>,
}

impl VisitNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use visit_file::top as keys;
        let purpose = reader.get(input, &keys::PURPOSE);
        let attendance = reader
            .tables(input, &keys::ATTENDANCE, &attendance::TABLE)
            .into_iter()
            .map(|reader| AttendanceNote::read(reader, input))
            .collect();
        let complaint = reader.get(input, &keys::COMPLAINT);
        let ambient = reader.get(input, &keys::AMBIENT);
        let barometer = reader.get(input, &keys::BAROMETER);
        let left = reader.get(input, &keys::LEFT);
        let back = reader.get(input, &keys::BACK);
        let outcome = reader.get(input, &keys::OUTCOME);
        let safety_check = reader
            .tables(input, &keys::SAFETY_CHECK, &safety_check::TABLE)
            .into_iter()
            .map(|reader| SafetyCheckNote::read(reader, input))
            .collect();
        let work = reader
            .tables(input, &keys::WORK, &work::TABLE)
            .into_iter()
            .map(|reader| WorkNote::read(reader, input))
            .collect();
        let advice = reader
            .tables(input, &keys::ADVICE, &advice::TABLE)
            .into_iter()
            .map(|reader| AdviceNote::read(reader, input))
            .collect();
        let due = reader
            .tables(input, &keys::DUE, &due::TABLE)
            .into_iter()
            .map(|reader| DueNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            purpose,
            attendance,
            complaint,
            ambient,
            barometer,
            left,
            back,
            outcome,
            safety_check,
            work,
            advice,
            due,
        }
    }
}

/// Who was there.
#[derive(Clone, Debug)]
pub struct AttendanceNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Who.
    pub by: Option<Noted<Identifier>>,
    /// Arrived.
    pub from: Option<Noted<LocalTime>>,
    /// Left.
    pub to: Option<Noted<LocalTime>>,
}

impl AttendanceNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use visit_file::attendance as keys;
        let by = reader.get(input, &keys::BY);
        let from = reader.get(input, &keys::FROM);
        let to = reader.get(input, &keys::TO);
        let whole = reader.finish(input);
        Self {
            whole,
            by,
            from,
            to,
        }
    }
}

/// A safety check.
#[derive(Clone, Debug)]
pub struct SafetyCheckNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// When.
    pub at: Option<Noted<LocalTime>>,
    /// Refrigerant in the air of the room.
    pub air: Option<Noted<Measured<Concentration>>>,
    /// Oxygen in the air of the room.
    pub oxygen: Option<Noted<Measured<Fraction>>>,
    /// The room was ventilated.
    pub ventilated: Option<Noted<bool>>,
    /// The plant was locked off.
    pub locked_off: Option<Noted<bool>>,
    /// Sources of ignition found, and what was done.
    pub ignition_sources: Option<Noted<String>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl SafetyCheckNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use visit_file::safety_check as keys;
        let at = reader.get(input, &keys::AT);
        let air = reader.get(input, &keys::AIR);
        let oxygen = reader.get(input, &keys::OXYGEN);
        let ventilated = reader.get(input, &keys::VENTILATED);
        let locked_off = reader.get(input, &keys::LOCKED_OFF);
        let ignition_sources = reader.get(input, &keys::IGNITION_SOURCES);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            at,
            air,
            oxygen,
            ventilated,
            locked_off,
            ignition_sources,
            note,
        }
    }
}

/// Work on a part.
#[derive(Clone, Debug)]
pub struct WorkNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Which part.
    pub part: Option<Noted<String>>,
    /// What was done to it.
    pub work: Option<Noted<String>>,
    /// The registered point it concerns.
    pub point: Option<Noted<Identifier>>,
    /// Which circuit, if there are several.
    pub circuit: Option<Noted<Identifier>>,
    /// When.
    pub at: Option<Noted<LocalTime>>,
    /// Brazed with nitrogen flowing through the pipe.
    pub nitrogen_purge: Option<Noted<bool>>,
}

impl WorkNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use visit_file::work as keys;
        let part = reader.get(input, &keys::PART);
        let work = reader.get(input, &keys::WORK);
        let point = reader.get(input, &keys::POINT);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let at = reader.get(input, &keys::AT);
        let nitrogen_purge = reader.get(input, &keys::NITROGEN_PURGE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            part,
            work,
            point,
            circuit,
            at,
            nitrogen_purge,
        }
    }
}

/// Advice and its answer.
#[derive(Clone, Debug)]
pub struct AdviceNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// The advice.
    pub what: Option<Noted<String>>,
    /// To whom.
    pub to: Option<Noted<String>>,
    /// What they decided.
    pub answer: Option<Noted<String>>,
    /// When.
    pub at: Option<Noted<LocalTime>>,
}

impl AdviceNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use visit_file::advice as keys;
        let what = reader.get(input, &keys::WHAT);
        let to = reader.get(input, &keys::TO);
        let answer = reader.get(input, &keys::ANSWER);
        let at = reader.get(input, &keys::AT);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            what,
            to,
            answer,
            at,
        }
    }
}

/// A date set by hand.
#[derive(Clone, Debug)]
pub struct DueNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// What has to be done.
    pub what: Option<Noted<DueWord>>,
    /// The last day for it.
    pub by: Option<Noted<Date>>,
    /// Which circuit, if it is for one of several.
    pub circuit: Option<Noted<Identifier>>,
    /// The registered point it concerns.
    pub point: Option<Noted<Identifier>>,
    /// Why a repair may take longer than the rule says.
    pub extension: Option<Noted<Extension>>,
    /// Day on which the operator asked the authority for the longer time.
    pub asked: Option<Noted<Date>>,
    /// More about it.
    pub note: Option<Noted<String>>,
}

impl DueNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use visit_file::due as keys;
        let what = reader.get(input, &keys::WHAT);
        let by = reader.get(input, &keys::BY);
        let circuit = reader.get(input, &keys::CIRCUIT);
        let point = reader.get(input, &keys::POINT);
        let extension = reader.get(input, &keys::EXTENSION);
        let asked = reader.get(input, &keys::ASKED);
        let note = reader.get(input, &keys::NOTE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            what,
            by,
            circuit,
            point,
            extension,
            asked,
            note,
        }
    }
}
