//! `rimebook.toml`: from the tree to typed notes.

use crate::notes::table_reader::{FileReader, TableReader, Whole};
use crate::quantity::{LeakRate, Mass, Measured};
use crate::text::{Accent, Diagnostic};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::book_file::{
    CylinderHappening, GasOrigin, Paper, contractor, cylinder, cylinder_event, defaults,
    instrument, person,
};
use crate::vocabulary::safety_class::SafetyClass;
use crate::vocabulary::site_file::{Language, UnitsWord};
use crate::vocabulary::{
    Amount, DateOrMonth, DateOrTime, Designation, Identifier, Noted, book_file,
};
use jiff::civil::Date;

/// `rimebook.toml` as written.
#[derive(Clone, Debug)]
pub struct BookNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Who did the work.
    pub contractor: Option<ContractorNote>,
    /// What holds for every site that does not say otherwise.
    pub defaults: Option<DefaultsNote>,
    /// People.
    pub person: Vec<PersonNote>,
    /// Instruments.
    pub instrument: Vec<InstrumentNote>,
    /// Cylinders.
    pub cylinder: Vec<CylinderNote>,
    /// What happened to cylinders between jobs.
    pub cylinder_event: Vec<CylinderEventNote>,
}

impl BookNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::top as keys;
        let contractor = reader
            .table(input, &keys::CONTRACTOR, &contractor::TABLE)
            .map(|reader| ContractorNote::read(reader, input));
        let defaults = reader
            .table(input, &keys::DEFAULTS, &defaults::TABLE)
            .map(|reader| DefaultsNote::read(reader, input));
        let person = reader
            .tables(input, &keys::PERSON, &person::TABLE)
            .into_iter()
            .map(|reader| PersonNote::read(reader, input))
            .collect();
        let instrument = reader
            .tables(input, &keys::INSTRUMENT, &instrument::TABLE)
            .into_iter()
            .map(|reader| InstrumentNote::read(reader, input))
            .collect();
        let cylinder = reader
            .tables(input, &keys::CYLINDER, &cylinder::TABLE)
            .into_iter()
            .map(|reader| CylinderNote::read(reader, input))
            .collect();
        let cylinder_event = reader
            .tables(input, &keys::CYLINDER_EVENT, &cylinder_event::TABLE)
            .into_iter()
            .map(|reader| CylinderEventNote::read(reader, input))
            .collect();
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            contractor,
            defaults,
            person,
            instrument,
            cylinder,
            cylinder_event,
        }
    }
}

/// The contractor.
#[derive(Clone, Debug)]
pub struct ContractorNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// The contractor's name, as the head of the report prints it.
    pub name: Option<Noted<String>>,
    /// Postal address.
    pub address: Option<Noted<String>>,
    /// Telephone, as printed.
    pub telephone: Option<Noted<String>>,
    /// Mail address, as printed.
    pub email: Option<Noted<String>>,
    /// The company's certificate number.
    pub certificate: Option<Noted<String>>,
    /// SVG or PNG file, from the root of the book.
    pub logo: Option<Noted<String>>,
    /// Folder of own parts of the template, from the root of the book.
    pub templates: Option<Noted<String>>,
    /// The one accent colour of the report, as #rrggbb.
    pub accent: Option<Noted<String>>,
    /// Paper of the report.
    pub paper: Option<Noted<Paper>>,
}

impl ContractorNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::contractor as keys;
        let name = reader.get(input, &keys::NAME);
        let address = reader.get(input, &keys::ADDRESS);
        let telephone = reader.get(input, &keys::TELEPHONE);
        let email = reader.get(input, &keys::EMAIL);
        let certificate = reader.get(input, &keys::CERTIFICATE);
        let logo = reader.get(input, &keys::LOGO);
        let templates = reader.get(input, &keys::TEMPLATES);
        let accent = reader
            .get(input, &keys::ACCENT)
            .filter(|noted| is_colour(noted, input));
        let paper = reader.get(input, &keys::PAPER);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            name,
            address,
            telephone,
            email,
            certificate,
            logo,
            templates,
            accent,
            paper,
        }
    }
}

/// Whether an accent is a colour; tells it if not.
fn is_colour(accent: &Noted<String>, input: &mut FileReader<'_, '_>) -> bool {
    if Accent::read(&accent.value).is_some() {
        return true;
    }
    input.diagnostics.push(
        Diagnostic::error(
            "colour-unreadable",
            accent.span,
            format!("`{}` is not a colour as it is written here", accent.value),
        )
        .here("six hexadecimal digits after a #")
        .why("the report takes its headings' colour from it")
        .patch("for instance", accent.span, "\"#2f5d62\""),
    );
    false
}

/// What holds for every site.
#[derive(Clone, Debug)]
pub struct DefaultsNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Time zone by its name in the IANA database.
    pub timezone: Option<Noted<String>>,
    /// Language of the reports.
    pub language: Option<Noted<Language>>,
    /// Units that the reports print.
    pub units: Option<Noted<UnitsWord>>,
}

impl DefaultsNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::defaults as keys;
        let timezone = reader.get(input, &keys::TIMEZONE);
        let language = reader.get(input, &keys::LANGUAGE);
        let units = reader.get(input, &keys::UNITS);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            timezone,
            language,
            units,
        }
    }
}

/// A person.
#[derive(Clone, Debug)]
pub struct PersonNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes.
    pub id: Option<Noted<Identifier>>,
    /// Full name, as signed.
    pub name: Option<Noted<String>>,
    /// Number of the personal certificate.
    pub certificate: Option<Noted<String>>,
    /// Category or type of the certificate.
    pub category: Option<Noted<String>>,
    /// Last day on which the certificate is valid.
    pub certified_until: Option<Noted<Date>>,
}

impl PersonNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::person as keys;
        let id = reader.get(input, &keys::ID);
        let name = reader.get(input, &keys::NAME);
        let certificate = reader.get(input, &keys::CERTIFICATE);
        let category = reader.get(input, &keys::CATEGORY);
        let certified_until = reader.get(input, &keys::CERTIFIED_UNTIL);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            name,
            certificate,
            category,
            certified_until,
        }
    }
}

/// An instrument.
#[derive(Clone, Debug)]
pub struct InstrumentNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes.
    pub id: Option<Noted<Identifier>>,
    /// What it is, in the words of the trade.
    pub kind: Option<Noted<String>>,
    /// Kind of sensor.
    pub sensor: Option<Noted<String>>,
    /// Smallest leak it is made to find.
    pub sensitivity: Option<Noted<Measured<LeakRate>>>,
    /// Safety classes of refrigerant it may be used with.
    pub rated_for: Vec<Noted<SafetyClass>>,
    /// Days of its yearly checks.
    pub checked: Vec<Noted<Date>>,
    /// Days of its calibrations.
    pub calibrated: Vec<Noted<Date>>,
    /// Top of its range.
    pub range: Option<Noted<Amount>>,
    /// Accuracy: a share of the range or of the reading, or a quantity.
    pub accuracy: Option<Noted<String>>,
    /// Smallest step it shows.
    pub resolution: Option<Noted<Amount>>,
    /// Serial number.
    pub serial: Option<Noted<String>>,
}

impl InstrumentNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::instrument as keys;
        let id = reader.get(input, &keys::ID);
        let kind = reader.get(input, &keys::KIND);
        let sensor = reader.get(input, &keys::SENSOR);
        let sensitivity = reader.get(input, &keys::SENSITIVITY);
        let rated_for = reader.list(input, &keys::RATED_FOR);
        let checked = reader.list(input, &keys::CHECKED);
        let calibrated = reader.list(input, &keys::CALIBRATED);
        let range = reader.get(input, &keys::RANGE);
        let accuracy = reader.get(input, &keys::ACCURACY);
        let resolution = reader.get(input, &keys::RESOLUTION);
        let serial = reader.get(input, &keys::SERIAL);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            kind,
            sensor,
            sensitivity,
            rated_for,
            checked,
            calibrated,
            range,
            accuracy,
            resolution,
            serial,
        }
    }
}

/// A cylinder.
#[derive(Clone, Debug)]
pub struct CylinderNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Short name used in the notes.
    pub id: Option<Noted<Identifier>>,
    /// What it holds.
    pub refrigerant: Option<Noted<Designation>>,
    /// Weight of the empty cylinder.
    pub tare: Option<Noted<Measured<Mass>>>,
    /// Most it may weigh on the scale, cylinder and gas together.
    pub most: Option<Noted<Measured<Mass>>>,
    /// Month or day of the next proof test.
    pub retest: Option<Noted<DateOrMonth>>,
    /// Where its gas comes from.
    pub origin: Option<Noted<GasOrigin>>,
    /// Name and address of the reclaiming or recycling facility.
    pub facility: Option<Noted<String>>,
    /// Certificate number of that facility.
    pub facility_certificate: Option<Noted<String>>,
}

impl CylinderNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::cylinder as keys;
        let id = reader.get(input, &keys::ID);
        let refrigerant = reader.get(input, &keys::REFRIGERANT);
        let tare = reader.get(input, &keys::TARE);
        let most = reader.get(input, &keys::MOST);
        let retest = reader.get(input, &keys::RETEST);
        let origin = reader.get(input, &keys::ORIGIN);
        let facility = reader.get(input, &keys::FACILITY);
        let facility_certificate = reader.get(input, &keys::FACILITY_CERTIFICATE);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            id,
            refrigerant,
            tare,
            most,
            retest,
            origin,
            facility,
            facility_certificate,
        }
    }
}

/// What happened to a cylinder between jobs.
#[derive(Clone, Debug)]
pub struct CylinderEventNote {
    /// Its place, and whether all of it could be read.
    pub whole: Whole,
    /// Which cylinder.
    pub cylinder: Option<Noted<Identifier>>,
    /// When.
    pub at: Option<Noted<DateOrTime>>,
    /// What happened.
    pub what: Option<Noted<CylinderHappening>>,
    /// What it weighed on the scale afterwards, cylinder and gas together.
    pub gross: Option<Noted<Measured<Mass>>>,
}

impl CylinderEventNote {
    pub(super) fn read(mut reader: TableReader<'_>, input: &mut FileReader<'_, '_>) -> Self {
        use book_file::cylinder_event as keys;
        let cylinder = reader.get(input, &keys::CYLINDER);
        let at = reader.get(input, &keys::AT);
        let what = reader.get(input, &keys::WHAT);
        let gross = reader.get(input, &keys::GROSS);
        reader.get(input, &PRIVATE);
        let whole = reader.finish(input);
        Self {
            whole,
            cylinder,
            at,
            what,
            gross,
        }
    }
}
