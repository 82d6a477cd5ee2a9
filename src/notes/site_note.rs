//! `site.toml`: from the tree to typed notes.

use crate::notes::table_reader::{FileReader, TableReader, Whole};
use crate::quantity::{Area, Length, Measured, Volume};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::site_file::{
    Language, LeakRateMethodWord, RoomKind, RuleSetWord, UnitsWord, contact, room,
};
use crate::vocabulary::{Identifier, Noted, site_file};

/// `site.toml` as written.
#[derive(Clone, Debug)]
pub struct SiteNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Name of the site, if not that of the operator.
    pub name: Option<Noted<String>>,
    /// Who operates the systems, as the law means it.
    pub operator: Option<Noted<String>>,
    /// Postal address of the site.
    pub address: Option<Noted<String>>,
    /// Telephone of the operator.
    pub telephone: Option<Noted<String>>,
    /// Mail address that reports go to.
    pub report_to: Option<Noted<String>>,
    /// Time zone of the site by its name in the IANA database; all times of its notes are in it.
    pub timezone: Option<Noted<String>>,
    /// Height above the sea, for the air pressure where no barometer was read.
    pub altitude: Option<Noted<Measured<Length>>>,
    /// Language of the reports.
    pub language: Option<Noted<Language>>,
    /// Units that the reports print.
    pub units: Option<Noted<UnitsWord>>,
    /// Rule sets in force at the site.
    pub rules: Vec<Noted<RuleSetWord>>,
    /// Statutory method, where the law gives a choice.
    pub leak_rate_method: Option<Noted<LeakRateMethodWord>>,
    /// People at the site.
    pub contact: Vec<ContactNote>,
    /// Spaces that refrigerant could enter.
    pub room: Vec<RoomNote>,
}

impl SiteNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use site_file::top as keys;
        let name = reader.get(input, &keys::NAME);
        let operator = reader.get(input, &keys::OPERATOR);
        let address = reader.get(input, &keys::ADDRESS);
        let telephone = reader.get(input, &keys::TELEPHONE);
        let report_to = reader.get(input, &keys::REPORT_TO);
        let timezone = reader.get(input, &keys::TIMEZONE);
        let altitude = reader.get(input, &keys::ALTITUDE);
        let language = reader.get(input, &keys::LANGUAGE);
        let units = reader.get(input, &keys::UNITS);
        let rules = reader.list(input, &keys::RULES);
        let leak_rate_method = reader.get(input, &keys::LEAK_RATE_METHOD);
        let contact = reader
            .tables(input, &keys::CONTACT, &contact::TABLE)
            .into_iter()
            .map(|reader| ContactNote::read(reader, input))
            .collect();
        let room = reader
            .tables(input, &keys::ROOM, &room::TABLE)
            .into_iter()
            .map(|reader| RoomNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            name,
            operator,
            address,
            telephone,
            report_to,
            timezone,
            altitude,
            language,
            units,
            rules,
            leak_rate_method,
            contact,
            room,
        }
    }
}

/// A room.
#[derive(Clone, Debug)]
pub struct RoomNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes.
    pub id: Option<Noted<Identifier>>,
    /// Kind of room.
    pub kind: Option<Noted<RoomKind>>,
    /// Floor area.
    pub area: Option<Noted<Measured<Area>>>,
    /// Height of the ceiling.
    pub height: Option<Noted<Measured<Length>>>,
    /// Volume, where area and height do not give it.
    pub volume: Option<Noted<Measured<Volume>>>,
    /// Height of the unit above the floor.
    pub unit_height: Option<Noted<Measured<Length>>>,
    /// How it is ventilated.
    pub ventilation: Option<Noted<String>>,
    /// Fixed gas detector and its alarm.
    pub detector: Option<Noted<String>>,
}

impl RoomNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use site_file::room as keys;
        let id = reader.get(input, &keys::ID);
        let kind = reader.get(input, &keys::KIND);
        let area = reader.get(input, &keys::AREA);
        let height = reader.get(input, &keys::HEIGHT);
        let volume = reader.get(input, &keys::VOLUME);
        let unit_height = reader.get(input, &keys::UNIT_HEIGHT);
        let ventilation = reader.get(input, &keys::VENTILATION);
        let detector = reader.get(input, &keys::DETECTOR);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            kind,
            area,
            height,
            volume,
            unit_height,
            ventilation,
            detector,
        }
    }
}

/// Someone at the site.
#[derive(Clone, Debug)]
pub struct ContactNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Name.
    pub name: Option<Noted<String>>,
    /// What they do.
    pub role: Option<Noted<String>>,
    /// Telephone.
    pub telephone: Option<Noted<String>>,
    /// Mail address.
    pub email: Option<Noted<String>>,
}

impl ContactNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use site_file::contact as keys;
        let name = reader.get(input, &keys::NAME);
        let role = reader.get(input, &keys::ROLE);
        let telephone = reader.get(input, &keys::TELEPHONE);
        let email = reader.get(input, &keys::EMAIL);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            name,
            role,
            telephone,
            email,
        }
    }
}
