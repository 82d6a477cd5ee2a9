//! The units each system of units prints, by the size of the value (common practice).

use super::find::{Found, Reference, by_symbol};
use super::kind::Flavour;
use super::unit::{UNITS, UnitSystem};

/// The unit a system prefers for a value of this size, and its symbol.
pub(super) fn preferred(flavour: Flavour, si: f64, system: UnitSystem) -> (Found, &'static str) {
    let choice = choices(flavour, system);
    let largest_that_fits = choice
        .iter()
        .rev()
        .find(|(from, _)| si == 0.0 || si.abs() >= *from * (1.0 - 1e-12))
        .or(choice.first());
    let symbol = largest_that_fits.map_or("", |(_, symbol)| *symbol);
    let found = by_symbol(symbol, flavour).unwrap_or_else(|| in_si(flavour));
    (found, found.symbol(flavour))
}

/// The first row of a flavour, were a preferred symbol ever missing from the table.
fn in_si(flavour: Flavour) -> Found {
    let row = UNITS.iter().find(|unit| unit.flavour == flavour.base());
    Found {
        unit: row.unwrap_or(&UNITS[0]),
        reference: Reference::Bare,
    }
}

/// The units a system prints, each from the SI value at which it begins.
fn choices(flavour: Flavour, system: UnitSystem) -> &'static [(f64, &'static str)] {
    const GRAMS_PER_YEAR: f64 = 1e-3 / 31_536_000.0;
    const POUND: f64 = 0.453_592_37;
    let is_metric = system == UnitSystem::Metric;
    match flavour {
        Flavour::GaugePressure if is_metric => &[(0.0, "bar g")],
        Flavour::GaugePressure => &[(0.0, "psig")],
        Flavour::AbsolutePressure if is_metric => &[(0.0, "Pa a"), (1_000.0, "bar a")],
        Flavour::AbsolutePressure => &[(0.0, "psia")],
        Flavour::VacuumPressure if is_metric => &[(0.0, "Pa")],
        Flavour::VacuumPressure => &[(0.0, "micron")],
        Flavour::PressureDifference if is_metric => &[(0.0, "Pa"), (1_000.0, "bar")],
        Flavour::PressureDifference => &[(0.0, "psi")],
        Flavour::Temperature if is_metric => &[(0.0, "°C")],
        Flavour::Temperature => &[(0.0, "°F")],
        Flavour::TemperatureDifference if is_metric => &[(0.0, "K")],
        Flavour::TemperatureDifference => &[(0.0, "Δ°F")],
        Flavour::Mass if is_metric => &[(0.0, "g"), (1.0, "kg")],
        Flavour::Mass => &[(0.0, "oz"), (POUND, "lb")],
        Flavour::Volume if is_metric => &[(0.0, "mL"), (1e-4, "L"), (1.0, "m³")],
        Flavour::Volume => &[(0.0, "in³"), (2.831_684e-3, "ft³")],
        Flavour::Length if is_metric => &[(0.0, "mm"), (1.0, "m")],
        Flavour::Length => &[(0.0, "in"), (0.3048, "ft")],
        Flavour::Area if is_metric => &[(0.0, "cm²"), (0.1, "m²")],
        Flavour::Area => &[(0.0, "in²"), (0.092_903_04, "ft²")],
        Flavour::Duration => &[(0.0, "s"), (120.0, "min"), (7_200.0, "h"), (172_800.0, "d")],
        Flavour::MassRate if is_metric => &[(0.0, "g/yr"), (1_000.0 * GRAMS_PER_YEAR, "kg/yr")],
        Flavour::MassRate => &[(0.0, "oz/yr"), (POUND / 31_536_000.0, "lb/yr")],
        Flavour::Throughput if is_metric => &[(0.0, "Pa m³/s")],
        Flavour::Throughput => &[(0.0, "atm cc/s")],
        Flavour::MassPerVolume if is_metric => &[(0.0, "g/m³")],
        Flavour::MassPerVolume => &[(0.0, "lb/1000 ft³")],
        Flavour::Parts => &[(0.0, "ppm"), (0.01, "% vol")],
        Flavour::OfLowerFlammableLimit => &[(0.0, "% LFL")],
        Flavour::Torque if is_metric => &[(0.0, "N m")],
        Flavour::Torque => &[(0.0, "lbf ft")],
        Flavour::Current => &[(0.0, "mA"), (0.1, "A")],
        Flavour::Power => &[(0.0, "W"), (1_000.0, "kW")],
        Flavour::Fraction => &[(0.0, "%")],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Kind;
    use crate::quantity::find::symbols;
    use UnitSystem::{Metric, Us};

    #[test]
    fn every_preferred_unit_is_in_the_table() {
        for kind in Kind::ALL {
            for flavour in kind.flavours() {
                for system in [Metric, Us] {
                    for (_, symbol) in choices(*flavour, system) {
                        assert!(symbols(kind).contains(symbol), "{symbol}");
                        assert!(by_symbol(symbol, *flavour).is_some(), "{symbol}");
                    }
                }
            }
        }
    }
}
