//! What cannot be true of any quantity, and is refused however well it is written.

use super::find::{Found, Reference};
use super::kind::Flavour;
use super::measured::Reading;
use super::print::in_unit;
use super::refusal::Refusal;
use super::unit::UnitSystem;
use super::written::{Written, shortest};

/// Refuses a fraction of a unit that rulers and scales do not divide so.
pub(super) fn check_fraction(written: &Written, found: Found) -> Result<(), Refusal> {
    if !written.number.is_fraction || found.unit.system == Some(UnitSystem::Us) {
        return Ok(());
    }
    Err(Refusal::new(
        written.number.range.clone(),
        format!("a fraction does not go with `{}`", found.unit.symbol),
    )
    .because("fractions are for inches, feet, pounds and ounces")
    .replacing(written.text, [shortest(written.number.value)]))
}

/// Refuses what cannot be true.
pub(super) fn check_value(
    written: &Written,
    found: Found,
    reading: &Reading,
) -> Result<(), Refusal> {
    let figures = written.number.range.clone();
    let typed = written.typed();
    let flavour = reading.flavour;
    let number = written.number.value;
    if found.reference == Reference::Below && number < 0.0 {
        return Err(Refusal::new(
            figures,
            format!("`{typed}` already counts below the atmosphere"),
        )
        .because("a minus sign before it would mean above")
        .cured([
            format!("{} {typed}", shortest(-number)),
            format!("{} {}", shortest(-number), gauge_symbol(found)),
        ]));
    }
    if flavour == Flavour::Temperature && found.unit.symbol == "K" && reading.si <= 100.0 {
        return Err(written
            .refuse("as a temperature this is colder than any plant; as a difference it has no place here")
            .because("a temperature is expected here, and `K` mostly marks a difference")
            .cured([
                format!("{} °C", written.figures()),
                format!("{} K", shortest(number + 273.15)),
            ]));
    }
    if flavour == Flavour::Fraction && reading.si > 1.0 {
        return Err(
            Refusal::new(figures, "a part cannot be more than the whole")
                .because("at most 100 % is expected here"),
        );
    }
    let Some(least) = flavour.least() else {
        return Ok(());
    };
    if reading.si >= least {
        return Ok(());
    }
    let refusal = Refusal::new(figures, below_least(flavour, least, found));
    let positive = format!("{} {typed}", shortest(-number));
    Err(match flavour {
        Flavour::AbsolutePressure => refusal
            .because("absolute pressure counts from a perfect vacuum")
            .cured([
                format!("{} {}", shortest(number), gauge_symbol(found)),
                positive,
            ]),
        Flavour::GaugePressure => {
            refusal.because("a perfect vacuum is one atmosphere, about 1.01 bar, below zero gauge")
        }
        Flavour::Temperature => refusal.because("nothing is colder"),
        _ => refusal
            .because(format!("{} is never negative", flavour.describe()))
            .cured([positive]),
    })
}

/// The symbol of the same unit as gauge; as it stands for a unit that is absolute by nature.
fn gauge_symbol(found: Found) -> &'static str {
    let reference = Reference::Gauge;
    match (Found { reference, ..found }).symbol(Flavour::GaugePressure) {
        "" => found.unit.symbol,
        symbol => symbol,
    }
}

fn below_least(flavour: Flavour, least: f64, found: Found) -> String {
    match flavour {
        Flavour::Temperature => {
            let zero = Reading {
                flavour,
                si: least,
                uncertainty: None,
                step: 0.01 * found.unit.factor,
                unit: found.unit.symbol,
            };
            format!("this is below absolute zero, {}", in_unit(&zero))
        }
        Flavour::GaugePressure => "this is below a perfect vacuum".to_owned(),
        _ => "this is less than nothing".to_owned(),
    }
}
