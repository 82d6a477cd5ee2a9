//! One quantity in every unit it can have, for someone who only wants it converted.

use super::find::{Found, Lookup, Reference, lookup};
use super::kind::{Flavour, Kind};
use super::measured::Reading;
use super::parse::read;
use super::pressure::AbsolutePressure;
use super::print::{Printed, converted, in_unit};
use super::refusal::Refusal;
use super::resolve::got;
use super::unit::UNITS;

/// A text read as one flavour, and what it is in other units.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Conversion {
    /// What the text was read as.
    pub flavour: Flavour,
    /// As written.
    pub from: Printed,
    /// In the other units, in the order of the table of units.
    pub to: Vec<Printed>,
}

/// Why a text could not be converted; the range of the refusal is within the text it names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unconvertible {
    /// The quantity cannot be read.
    Text(Refusal),
    /// The unit asked for is unknown, or not one of the quantity's.
    Unit(Refusal),
}

/// Converts a quantity to `to`, or to every unit of everything it can be.
///
/// Gauge becomes absolute, and the other way, only under a given atmosphere. Fewer than three
/// significant digits are never shown, whatever the text has.
pub fn convert(
    text: &str,
    to: Option<&str>,
    atmosphere: Option<AbsolutePressure>,
) -> Result<Vec<Conversion>, Unconvertible> {
    let readings = readings(text).map_err(Unconvertible::Text)?;
    let wanted = to.map(wanted).transpose().map_err(Unconvertible::Unit)?;
    let conversions: Vec<Conversion> = readings
        .iter()
        .map(|reading| Conversion {
            flavour: reading.flavour,
            from: in_unit(reading),
            to: everywhere(reading, atmosphere, wanted),
        })
        .filter(|conversion| !conversion.to.is_empty())
        .collect();
    match (to, readings.first()) {
        (Some(to), Some(first)) if conversions.is_empty() => {
            Err(Unconvertible::Unit(not_its_unit(to, first, wanted)))
        }
        _ => Ok(conversions),
    }
}

/// Everything the text can be, each flavour once.
fn readings(text: &str) -> Result<Vec<Reading>, Refusal> {
    let mut readings: Vec<Reading> = Vec::new();
    let mut refusals = Vec::new();
    // A vacuum reading is an absolute pressure, or a plain one, seen more closely.
    for kind in Kind::ALL
        .into_iter()
        .filter(|kind| *kind != Kind::VacuumPressure)
    {
        match read(kind, text) {
            Ok(reading) => {
                // What is absolute by nature is not listed again as a difference.
                let is_new = readings.iter().all(|known| {
                    known.flavour != reading.flavour
                        && (known.flavour.base(), known.unit)
                            != (reading.flavour.base(), reading.unit)
                });
                if is_new {
                    readings.push(reading);
                }
            }
            Err(refusal) => refusals.push((kind, refusal)),
        }
    }
    if readings.is_empty() {
        Err(most_telling(refusals))
    } else {
        Ok(readings)
    }
}

/// The refusal of the kind that the unit belongs to; else the first one that has a cure.
fn most_telling(refusals: Vec<(Kind, Refusal)>) -> Refusal {
    let fallback = refusals.first().map(|(_, refusal)| refusal.clone());
    let best = refusals
        .into_iter()
        .find(|(_, refusal)| !refusal.cures.is_empty())
        .map(|(_, refusal)| refusal);
    best.or(fallback)
        .unwrap_or_else(|| Refusal::new(0..0, "there is no quantity here"))
}

fn wanted(to: &str) -> Result<&'static [Found], Refusal> {
    match lookup(to) {
        Lookup::Known(found) => Ok(found),
        Lookup::WrongPrefix(_) => Err(Refusal::new(0..to.len(), format!("`{to}` is not a unit"))
            .because("a small `m` is a thousandth, a capital `M` a million")),
        Lookup::Unknown => {
            let refusal = Refusal::new(0..to.len(), format!("`{to}` is not a unit known here"));
            let names: Vec<&str> = UNITS.iter().map(|unit| unit.symbol).collect();
            let nearest = similar::get_close_matches(to, &names, 1, 0.6);
            Err(refusal.cured(nearest.first().map(|name| (*name).to_owned())))
        }
    }
}

fn not_its_unit(to: &str, reading: &Reading, wanted: Option<&[Found]>) -> Refusal {
    let is_pressure = reading.flavour.base() == Flavour::PressureDifference;
    let refusal = Refusal::new(
        0..to.len(),
        format!("{} cannot be given in `{to}`", reading.flavour.describe()),
    );
    let both = is_pressure
        && wanted.is_some_and(|rows| rows.iter().any(|row| row.unit.referenced.is_some()));
    if both {
        refusal.because(
            "gauge and absolute differ by the atmosphere, which must be given; a difference is neither",
        )
    } else {
        refusal
    }
}

/// The reading in all units, or in those wanted.
fn everywhere(
    reading: &Reading,
    atmosphere: Option<AbsolutePressure>,
    wanted: Option<&[Found]>,
) -> Vec<Printed> {
    let mut printed = Vec::new();
    for reading in std::iter::once(*reading).chain(across(reading, atmosphere)) {
        let flavour = reading.flavour;
        for unit in UNITS.iter().filter(|unit| unit.flavour == flavour.base()) {
            for found in forms(unit, flavour) {
                let symbol = found.symbol(flavour);
                let sensible = match wanted {
                    Some(rows) => rows.iter().any(|row| {
                        std::ptr::eq(row.unit, unit) && wanted_symbol(*row, flavour) == Some(symbol)
                    }),
                    None => found.reference != Reference::Below || found.number(reading.si) > 0.0,
                };
                if sensible && !symbol.is_empty() {
                    printed.push(converted(&reading, found, symbol, 3));
                }
            }
        }
    }
    printed
}

/// The symbol a wanted unit has for this flavour; none if it asks for another reference.
///
/// A bare pressure unit asks for no reference, so it takes the one of the reading.
fn wanted_symbol(row: Found, flavour: Flavour) -> Option<&'static str> {
    (row.reference == Reference::Bare || got(row) == flavour).then(|| row.symbol(flavour))
}

fn forms(unit: &'static super::unit::Unit, flavour: Flavour) -> Vec<Found> {
    let form = |reference| Found { unit, reference };
    match flavour {
        Flavour::GaugePressure if unit.symbol == "inHg" => {
            vec![form(Reference::Gauge), form(Reference::Below)]
        }
        Flavour::GaugePressure => vec![form(Reference::Gauge)],
        Flavour::AbsolutePressure => vec![form(Reference::Absolute)],
        _ => vec![form(Reference::Bare)],
    }
}

/// The same pressure from the other zero.
fn across(reading: &Reading, atmosphere: Option<AbsolutePressure>) -> Option<Reading> {
    let atmosphere = atmosphere?.si();
    let (flavour, si) = match reading.flavour {
        Flavour::GaugePressure => (Flavour::AbsolutePressure, reading.si + atmosphere),
        Flavour::AbsolutePressure => (Flavour::GaugePressure, reading.si - atmosphere),
        _ => return None,
    };
    // Deeper than the given atmosphere is high, there is no absolute pressure.
    (flavour == Flavour::GaugePressure || si >= 0.0).then_some(Reading {
        flavour,
        si,
        ..*reading
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn listed(text: &str, to: Option<&str>, atmosphere: Option<f64>) -> Vec<String> {
        convert(text, to, atmosphere.map(AbsolutePressure::new))
            .unwrap()
            .iter()
            .flat_map(|conversion| &conversion.to)
            .map(|printed| printed.to_string().replace('\u{a0}', " "))
            .collect()
    }

    #[test]
    fn a_quantity_is_given_in_the_unit_asked_for() {
        assert_eq!(listed("24.8 bar g", Some("psig"), None), ["360 psig"]);
        assert_eq!(listed("24.8 bar g", Some("psi"), None), ["360 psig"]);
        assert_eq!(listed("500 micron", Some("Pa"), None), ["66.7 Pa a"]);
        assert_eq!(listed("18 inHg vac", Some("bar g"), None), ["−0.610 bar g"]);
        assert_eq!(
            listed("-0.61 bar g", Some("inHg vac"), None),
            ["18.0 inHg vac"]
        );
        assert_eq!(listed("3/8 in", Some("mm"), None), ["9.53 mm"]);
        assert_eq!(listed("1 lb", Some("g"), None), ["454 g"]);
        assert_eq!(listed("100 °C", Some("°F"), None), ["212.0 °F"]);
        assert_eq!(listed("6 K", Some("Δ°F"), None), ["10.8 Δ°F"]);
    }

    #[test]
    fn gauge_and_absolute_meet_only_under_a_given_atmosphere() {
        assert_eq!(
            listed("24.80 bar g", Some("bar a"), Some(1.009e5)),
            ["25.81 bar a"]
        );
        let refused = convert("24.8 bar g", Some("bar a"), None).unwrap_err();
        let Unconvertible::Unit(refusal) = refused else {
            panic!("{refused:?}");
        };
        assert!(refusal.why.unwrap().contains("atmosphere"));
        assert!(
            listed("24.8 bar g", None, None)
                .iter()
                .all(|text| !text.ends_with(" a"))
        );
    }

    #[test]
    fn everything_that_a_text_can_be_is_listed() {
        let flavours = |text| -> Vec<Flavour> {
            let conversions = convert(text, None, None).unwrap();
            conversions.iter().map(|one| one.flavour).collect()
        };
        assert_eq!(
            flavours("500 micron"),
            [Flavour::AbsolutePressure, Flavour::Length]
        );
        assert_eq!(flavours("24.8 bar"), [Flavour::PressureDifference]);
        assert_eq!(
            flavours("291 K"),
            [Flavour::Temperature, Flavour::TemperatureDifference]
        );
        assert_eq!(flavours("14 g/yr"), [Flavour::MassRate]);
        assert_eq!(flavours("60 %"), [Flavour::Fraction]);
        assert!(listed("9.45 kg", None, None).contains(&"20.83 lb".to_owned()));
    }

    #[test]
    fn what_cannot_be_converted_says_why() {
        let text = |text, to| convert(text, to, None).unwrap_err();
        assert!(matches!(text("12,5 kg", None), Unconvertible::Text(refusal)
            if refusal.cures == ["12.5 kg"]));
        assert!(
            matches!(text("24.8 barr g", None), Unconvertible::Text(refusal)
            if refusal.cures == ["24.8 bar g"])
        );
        assert!(matches!(
            text("12 kg", Some("bar g")),
            Unconvertible::Unit(_)
        ));
        assert!(matches!(
            text("12 kg", Some("pounsd")),
            Unconvertible::Unit(_)
        ));
    }
}
