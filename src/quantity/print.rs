//! Printing a quantity in the site's units, with as many digits as it deserves.

use std::fmt;

use super::find::{Found, by_symbol};
use super::kind::Flavour;
use super::measured::{Mass, Measured, Quantity, Reading};
use super::preferred::preferred;
use super::rounding::{
    Decimal, leading_exponent, shortest_exponent, significant_exponent, uncertainty_exponent,
};
use super::unit::{COMPOUNDS, Compound, UnitSystem};

/// A quantity ready to be set: digits, uncertainty in the same unit, unit.
///
/// Its `Display` joins them with no-break spaces.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Printed {
    /// The digits, with the true minus sign.
    pub number: String,
    /// Half width of the uncertainty.
    pub uncertainty: Option<String>,
    /// The unit's symbol.
    pub unit: &'static str,
}

impl fmt::Display for Printed {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut text = self.number.clone();
        if let Some(uncertainty) = &self.uncertainty {
            let power = text.find(" × ").map(|at| text[at..].to_owned());
            text = match power.and_then(|power| Some((uncertainty.strip_suffix(&power)?, power))) {
                Some((half, power)) => {
                    let number = text.trim_end_matches(&power);
                    format!("({number} ± {half}){power}")
                }
                None => format!("{text} ± {uncertainty}"),
            };
        }
        text = format!("{text} {}", self.unit);
        formatter.write_str(&text.replace(' ', "\u{a0}"))
    }
}

/// A written number in the site's units: as written if its unit belongs to them, else converted.
///
/// A converted number ends at the power of ten nearest (in ratio) to the last written digit, or at
/// that of its uncertainty, but keeps two significant digits.
pub fn print<T: Quantity>(measured: &Measured<T>, system: UnitSystem) -> Printed {
    let reading = Reading {
        flavour: measured.value.flavour(),
        si: measured.value.si(),
        uncertainty: measured.uncertainty,
        step: measured.step,
        unit: measured.unit,
    };
    print_reading(&reading, system)
}

/// A written number whose kind is known only at run time, in the site's units.
pub fn print_reading(reading: &Reading, system: UnitSystem) -> Printed {
    match written_unit(reading) {
        Some(WrittenUnit::Pair(pair, small)) if belongs(small, system) => {
            in_pair(reading, pair, small)
        }
        Some(WrittenUnit::Single(found)) if belongs(found, system) => as_written(reading, found),
        _ => {
            let (found, symbol) = preferred(reading.flavour, reading.si, system);
            converted(reading, found, symbol, 2)
        }
    }
}

/// A computed value in the site's units.
///
/// The uncertainty (SI, of the difference kind) decides the digits: two where it begins with 1 or 2,
/// else one. Without one, three significant digits; a temperature has at most two decimals.
pub fn print_si(
    flavour: Flavour,
    si: f64,
    uncertainty: Option<f64>,
    system: UnitSystem,
) -> Printed {
    // An uncertainty larger than the value decides the unit: 0.00 ± 0.21 bar, not 0 ± 21000 Pa.
    let size = match uncertainty {
        Some(half) if flavour.base() == flavour && half.abs() > si.abs() => half,
        _ => si,
    };
    let (found, symbol) = preferred(flavour, size, system);
    let value = found.number(si);
    let half = uncertainty
        .map(|half| (half / found.unit.factor).abs())
        .filter(|half| *half > 0.0);
    let exponent = match half {
        Some(half) => uncertainty_exponent(half),
        None if flavour == Flavour::Temperature => significant_exponent(value, 3).max(-2),
        None => significant_exponent(value, 3),
    };
    set(value, exponent, half.map(|half| (half, exponent)), symbol)
}

/// A value in the unit with this symbol, with this many decimals; none if no such unit fits.
pub fn print_as(flavour: Flavour, si: f64, symbol: &str, decimals: u8) -> Option<Printed> {
    let found = by_symbol(symbol, flavour)?;
    let exponent = -i32::from(decimals);
    Some(Printed {
        number: Decimal::rounded(found.number(si), exponent).plain(),
        uncertainty: None,
        unit: found.symbol(flavour),
    })
}

/// A mass in the one unit of a register, kg or lb, with its ± where one is written.
///
/// It keeps the decimals it was written with; one written in another unit has two, or as many as its
/// last digit needs.
pub fn print_mass(measured: &Measured<Mass>, system: UnitSystem) -> Printed {
    let unit = match system {
        UnitSystem::Metric => "kg",
        UnitSystem::Us => "lb",
    };
    let Some(found) = by_symbol(unit, Flavour::Mass) else {
        return print(measured, system);
    };
    let step = (measured.step / found.unit.factor).log10();
    let exponent = if measured.unit == unit && (step - step.round()).abs() < 1e-9 {
        step.round() as i32
    } else {
        (step + 1e-9).floor().min(-2.0) as i32
    };
    let half = measured
        .uncertainty
        .map(|half| half / found.unit.factor)
        .filter(|half| *half > 0.0)
        .map(|half| {
            (
                half,
                shortest_exponent(half).max(uncertainty_exponent(half)),
            )
        });
    let exponent = half.map_or(exponent, |(_, of_half)| exponent.min(of_half));
    let digits = |value: f64, exponent: i32| Decimal::rounded(value, exponent).plain();
    Printed {
        number: digits(found.number(measured.value.si()), exponent),
        uncertainty: half.map(|(half, exponent)| digits(half, exponent)),
        unit,
    }
}

/// A reading in the unit it was written in.
pub(super) fn in_unit(reading: &Reading) -> Printed {
    match written_unit(reading) {
        Some(WrittenUnit::Pair(pair, small)) => in_pair(reading, pair, small),
        Some(WrittenUnit::Single(found)) => as_written(reading, found),
        None => print_si(
            reading.flavour,
            reading.si,
            reading.uncertainty,
            UnitSystem::Metric,
        ),
    }
}

/// A reading in another unit, with at least `least` significant digits unless an uncertainty rules.
pub(super) fn converted(
    reading: &Reading,
    found: Found,
    symbol: &'static str,
    least: i32,
) -> Printed {
    let value = found.number(reading.si);
    let factor = found.unit.factor;
    if let Some(half) = reading.uncertainty.filter(|half| *half > 0.0) {
        let exponent = uncertainty_exponent(half / factor);
        return set(value, exponent, Some((half / factor, exponent)), symbol);
    }
    let by_step = (step_for_conversion(reading) / factor).log10().round() as i32;
    let exponent = match leading_exponent(value) {
        // Zero on a thermometer is a mark, not a quantity: no share of it is meant.
        Some(_) if reading.flavour == Flavour::Temperature => by_step.min(2 - least),
        Some(_) => by_step.min(significant_exponent(value, least)),
        None => by_step,
    };
    set(value, exponent, None, symbol)
}

/// A fraction of an inch is a nominal size: it converts to a tenth of a millimetre, not to its part.
fn step_for_conversion(reading: &Reading) -> f64 {
    const FINEST: f64 = 1.0 / 256.0;
    match written_unit(reading) {
        Some(WrittenUnit::Single(found)) if parts(reading, found).is_some() => {
            found.unit.factor * FINEST
        }
        _ => reading.step,
    }
}

#[derive(Clone, Copy)]
enum WrittenUnit {
    Single(Found),
    Pair(&'static Compound, Found),
}

fn written_unit(reading: &Reading) -> Option<WrittenUnit> {
    let flavour = reading.flavour;
    if let Some(found) = by_symbol(reading.unit, flavour) {
        return Some(WrittenUnit::Single(found));
    }
    let pair = COMPOUNDS.iter().find(|pair| pair.symbol == reading.unit)?;
    Some(WrittenUnit::Pair(pair, by_symbol(pair.small, flavour)?))
}

fn belongs(found: Found, system: UnitSystem) -> bool {
    found.unit.system.is_none_or(|own| own == system)
}

/// How many parts of the unit the last digit is, if the number was written as a fraction.
fn parts(reading: &Reading, found: Found) -> Option<u32> {
    let parts = found.unit.factor / reading.step;
    [2u32, 4, 8, 16, 32, 64]
        .into_iter()
        .find(|count| (parts / f64::from(*count) - 1.0).abs() < 1e-9)
}

fn as_written(reading: &Reading, found: Found) -> Printed {
    let value = found.number(reading.si);
    let half = reading.uncertainty.map(|half| {
        let half = half / found.unit.factor;
        (half, shortest_exponent(half))
    });
    let symbol = found.symbol(reading.flavour);
    if let (Some(parts), None) = (parts(reading, found), half) {
        return Printed {
            number: fraction(value, parts),
            uncertainty: None,
            unit: symbol,
        };
    }
    let exponent = (reading.step / found.unit.factor).log10().round() as i32;
    set(value, exponent, half, symbol)
}

fn fraction(value: f64, parts: u32) -> String {
    let parts = u64::from(parts);
    let count = (value.abs() * parts as f64).round() as u64;
    let sign = if value < 0.0 { "−" } else { "" };
    match (count / parts, count % parts) {
        (0, rest) => format!("{sign}{rest}/{parts}"),
        (whole, 0) => format!("{sign}{whole}"),
        (whole, rest) => format!("{sign}{whole} {rest}/{parts}"),
    }
}

fn in_pair(reading: &Reading, pair: &Compound, small: Found) -> Printed {
    let total = small.number(reading.si);
    let exponent = (reading.step / small.unit.factor).log10().round() as i32;
    // Half a step more than the value, so that a rest of 60 min never comes of rounding.
    let nudge = 10f64.powi(exponent) * 1e-3;
    let whole = ((total.abs() + nudge) / pair.ratio).floor();
    let rest = (total.abs() - whole * pair.ratio).max(0.0);
    let sign = if total < 0.0 { "−" } else { "" };
    Printed {
        number: format!(
            "{sign}{} {} {}",
            Decimal::rounded(whole, 0).plain(),
            pair.big,
            Decimal::rounded(rest, exponent).plain()
        ),
        uncertainty: None,
        unit: small.unit.symbol,
    }
}

/// Digits down to `exponent`; powers of ten below a thousandth and from ten million on.
fn set(value: f64, exponent: i32, half: Option<(f64, i32)>, unit: &'static str) -> Printed {
    const SMALLEST: i32 = -3;
    const LARGEST: i32 = 7;
    let leading = [Some(value), half.map(|(half, _)| half)]
        .into_iter()
        .flatten()
        .filter_map(leading_exponent)
        .max()
        .unwrap_or(exponent.clamp(SMALLEST, LARGEST - 1));
    let digits = |value: f64, exponent: i32| {
        let decimal = Decimal::rounded(value, exponent);
        if (SMALLEST..LARGEST).contains(&leading) {
            decimal.plain()
        } else {
            decimal.scientific(leading)
        }
    };
    Printed {
        number: digits(value, exponent),
        uncertainty: half.map(|(half, exponent)| digits(half, exponent)),
        unit,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::find::symbols;
    use crate::quantity::kind::Kind;
    use crate::quantity::read;
    use UnitSystem::{Metric, Us};

    fn plain(printed: &Printed) -> String {
        printed.to_string().replace('\u{a0}', " ")
    }

    fn shown(kind: Kind, text: &str, system: UnitSystem) -> String {
        plain(&print_reading(&read(kind, text).unwrap(), system))
    }

    #[test]
    fn a_number_in_a_unit_of_the_site_stays_as_it_was_written() {
        for (kind, text) in [
            (Kind::Pressure, "24.80 bar g"),
            (Kind::Pressure, "2480 kPa g"),
            (Kind::Mass, "14.10 kg"),
            (Kind::Mass, "0.350 kg"),
            (Kind::Mass, "9 ± 0.05 kg"),
            (Kind::Temperature, "−12.5 °C"),
            (Kind::Duration, "2 h 10 min"),
            (Kind::LeakRate, "1.2 × 10⁻⁵ mbar L/s"),
        ] {
            assert_eq!(shown(kind, text, Metric), text);
        }
        for (kind, text) in [
            (Kind::Pressure, "18 inHg vac"),
            (Kind::Length, "3/8 in"),
            (Kind::Length, "1 1/2 in"),
            (Kind::Mass, "9 lb 4 oz"),
            (Kind::Mass, "9 lb 4.5 oz"),
            (Kind::Length, "−5 ft 3 in"),
            (Kind::TemperatureDifference, "11 Δ°F"),
        ] {
            assert_eq!(shown(kind, text, Us), text);
        }
    }

    #[test]
    fn a_converted_number_keeps_the_meaning_of_its_last_digit() {
        assert_eq!(shown(Kind::Pressure, "24.8 bar g", Us), "360 psig");
        assert_eq!(shown(Kind::Pressure, "24.80 bar g", Us), "359.7 psig");
        assert_eq!(shown(Kind::Pressure, "360 psig", Metric), "24.8 bar g");
        assert_eq!(
            shown(Kind::VacuumPressure, "500 micron", Metric),
            "500 micron"
        );
        assert_eq!(shown(Kind::VacuumPressure, "66.7 Pa", Us), "500 micron");
        assert_eq!(shown(Kind::Temperature, "-12.5 °C", Us), "9.5 °F");
        assert_eq!(shown(Kind::Temperature, "0 °F", Metric), "−18 °C");
        assert_eq!(shown(Kind::Mass, "9.45 kg", Us), "20.83 lb");
        assert_eq!(shown(Kind::Mass, "12 oz", Metric), "340 g");
        assert_eq!(shown(Kind::Mass, "1 lb", Metric), "450 g");
        assert_eq!(shown(Kind::Mass, "9 lb 4 oz", Metric), "4.20 kg");
        assert_eq!(shown(Kind::Length, "3/8 in", Metric), "9.5 mm");
        assert_eq!(shown(Kind::LeakRate, "0.5 oz/yr", Metric), "14 g/yr");
        assert_eq!(shown(Kind::Pressure, "0.0 bar g", Us), "0 psig");
    }

    #[test]
    fn a_mass_of_a_register_is_in_one_unit_with_the_decimals_it_was_written_with() {
        let shown = |text: &str, system| {
            let reading = read(Kind::Mass, text).unwrap();
            let mass = Measured {
                value: Mass::new(reading.si),
                uncertainty: reading.uncertainty,
                step: reading.step,
                unit: reading.unit,
            };
            plain(&print_mass(&mass, system))
        };
        for text in [
            "10.75 kg",
            "47.00 kg",
            "2 kg",
            "0.2 ± 0.1 kg",
            "38.85 ± 0.05 kg",
        ] {
            assert_eq!(shown(text, Metric), text);
        }
        assert_eq!(shown("50 g", Metric), "0.050 kg");
        assert_eq!(shown("64 lb", Us), "64 lb");
        assert_eq!(shown("11 oz", Us), "0.69 lb");
        assert_eq!(shown("9 lb 4 oz", Us), "9.25 lb");
        // 9.45 ÷ 0.453 592 37.
        assert_eq!(shown("9.45 kg", Us), "20.83 lb");
    }

    #[test]
    fn an_uncertainty_decides_the_digits_of_a_converted_number() {
        assert_eq!(
            shown(Kind::Pressure, "24.8 ± 0.1 bar g", Us),
            "359.7 ± 1.5 psig"
        );
        assert_eq!(shown(Kind::Mass, "9 ± 3 kg", Us), "20 ± 7 lb");
        assert_eq!(shown(Kind::Volume, "31 ± 3 L", Us), "1.09 ± 0.11 ft³");
        assert_eq!(
            shown(Kind::Temperature, "16.4 ± 0.5 °C", Us),
            "61.5 ± 0.9 °F"
        );
    }

    #[test]
    fn a_computed_value_has_the_digits_it_deserves() {
        let shown =
            |flavour, si, uncertainty, system| plain(&print_si(flavour, si, uncertainty, system));
        let mass = Flavour::Mass;
        assert_eq!(
            shown(mass, 14.1062, Some(0.0234), Metric),
            "14.106 ± 0.023 kg"
        );
        assert_eq!(shown(mass, 14.1062, Some(0.3), Metric), "14.1 ± 0.3 kg");
        assert_eq!(shown(mass, 14.1062, None, Metric), "14.1 kg");
        assert_eq!(shown(mass, -14.1062, None, Us), "−31.1 lb");
        assert_eq!(shown(mass, 0.25, None, Metric), "250 g");
        assert_eq!(shown(mass, 1.0, None, Metric), "1.00 kg");
        assert_eq!(shown(mass, 0.0, None, Metric), "0.00 kg");
        assert_eq!(shown(mass, 86.35, Some(12.0), Metric), "86 ± 12 kg");
        assert_eq!(shown(mass, 863.5, Some(120.0), Metric), "860 ± 120 kg");
        let rate = 1.0e-3 / 31_536_000.0;
        assert_eq!(
            shown(Flavour::MassRate, 21.5 * rate, Some(3.0 * rate), Metric),
            "22 ± 3 g/yr"
        );
        assert_eq!(
            shown(Flavour::MassRate, 2_087.5 * rate, None, Metric),
            "2.09 kg/yr"
        );
        assert_eq!(
            shown(Flavour::MassRate, 14.2 * rate, None, Us),
            "0.501 oz/yr"
        );
        assert_eq!(
            shown(Flavour::Throughput, 1.234e-5, Some(2.0e-6), Metric),
            "(1.23 ± 0.20) × 10⁻⁵ Pa m³/s"
        );
        assert_eq!(
            shown(Flavour::Throughput, -1.0e-6, Some(2.0e-5), Metric),
            "(−0.1 ± 2.0) × 10⁻⁵ Pa m³/s"
        );
        assert_eq!(
            shown(Flavour::Temperature, 273.154, None, Metric),
            "0.00 °C"
        );
        assert_eq!(
            shown(Flavour::Temperature, 289.55, Some(0.7), Us),
            "61.5 ± 1.3 °F"
        );
        assert_eq!(
            shown(Flavour::GaugePressure, 2.5813e6, None, Metric),
            "25.8 bar g"
        );
        assert_eq!(shown(Flavour::Parts, 0.002, None, Metric), "2000 ppm");
        assert_eq!(
            shown(Flavour::OfLowerFlammableLimit, 0.25, None, Us),
            "25.0 % LFL"
        );
    }

    #[test]
    fn a_unit_and_decimals_may_be_asked_for() {
        let printed = print_as(Flavour::GaugePressure, 2.0875e6, "bar g", 2).unwrap();
        assert_eq!(plain(&printed), "20.88 bar g");
        let printed = print_as(Flavour::GaugePressure, -6.0955e4, "inHg vac", 0).unwrap();
        assert_eq!(plain(&printed), "18 inHg vac");
        assert_eq!(print_as(Flavour::GaugePressure, 1.0e5, "bar a", 1), None);
        assert_eq!(print_as(Flavour::Mass, 1.0, "bar g", 1), None);
    }

    #[test]
    fn what_is_printed_reads_back_to_within_its_last_digit() {
        for kind in Kind::ALL {
            for symbol in symbols(kind) {
                let Ok(reading) = read(kind, &format!("287.46 {symbol}")) else {
                    continue;
                };
                for system in [Metric, Us] {
                    let text = print_reading(&reading, system).to_string();
                    let again = read(kind, &text).unwrap();
                    let error = (again.si - reading.si).abs();
                    // A last digit may stand for up to √10 of the written steps.
                    let allowed = 0.501 * again.step.max(reading.step * 3.163);
                    assert!(error <= allowed, "287.46 {symbol} to {text}");
                }
            }
        }
    }
}
