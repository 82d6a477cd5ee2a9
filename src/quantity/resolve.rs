//! What a unit means where a certain kind is expected, or why it does not belong there.

use super::find::{Found, Reference};
use super::kind::{Flavour, Kind};
use super::unit::UnitSystem;

/// Why a unit that is known does not belong in a place.
#[derive(Debug)]
pub(super) struct Misfit {
    pub what: String,
    pub why: String,
    /// Units that may have been meant, with the number unchanged.
    pub units: Vec<&'static str>,
}

/// The row and flavour a typed unit has in a place of this kind.
pub(super) fn resolve(
    candidates: &[Found],
    kind: Kind,
    typed: &str,
) -> Result<(Found, Flavour), Misfit> {
    for flavour in kind.flavours() {
        let fits = |found: &&Found| found.unit.flavour == flavour.base();
        if let Some(&found) = candidates.iter().find(fits) {
            if found.unit.referenced.is_some() {
                return pressure(found, kind, typed).map(|flavour| (found, flavour));
            }
            return Ok((found, *flavour));
        }
    }
    Err(wrong_kind(candidates, kind, typed))
}

fn wrong_kind(candidates: &[Found], kind: Kind, typed: &str) -> Misfit {
    let first = candidates.first();
    let got = first.map_or(Flavour::Fraction, |found| got(*found));
    let is_us = first.is_some_and(|found| found.unit.system == Some(UnitSystem::Us));
    let (why, units) = match (kind, got) {
        (Kind::TemperatureDifference, Flavour::Temperature) => (
            "superheat, subcooling and glide are differences: 0 °C is a temperature, 0 K is none"
                .to_owned(),
            vec![if is_us { "Δ°F" } else { "K" }],
        ),
        (Kind::Temperature, Flavour::TemperatureDifference) => (
            format!("write it like `{}`", kind.example()),
            vec![if is_us { "°F" } else { "°C" }],
        ),
        (Kind::Concentration, Flavour::Fraction) => (
            "a percentage of the air and one of the lower flammable limit are far apart".to_owned(),
            vec!["% vol", "% LFL"],
        ),
        _ => (format!("write it like `{}`", kind.example()), Vec::new()),
    };
    let is_bare_pressure = got == Flavour::PressureDifference;
    Misfit {
        what: format!(
            "`{typed}` is the unit of {}, but {} is expected here",
            if is_bare_pressure {
                "a pressure"
            } else {
                got.describe()
            },
            kind.describe()
        ),
        why,
        units,
    }
}

/// What a unit measures where nothing is expected.
pub(super) fn got(found: Found) -> Flavour {
    match found.reference {
        Reference::Bare => found.unit.flavour,
        Reference::Absolute => Flavour::AbsolutePressure,
        Reference::Gauge | Reference::Below => Flavour::GaugePressure,
    }
}

/// Gauge, absolute or difference: the one question that is never guessed.
fn pressure(found: Found, kind: Kind, typed: &str) -> Result<Flavour, Misfit> {
    let gauge = found.symbol(Flavour::GaugePressure);
    let absolute = found.symbol(Flavour::AbsolutePressure);
    let difference = found.unit.symbol;
    let is_absolute_by_nature = absolute == difference;
    let misfit = |what: String, why: &str, units: &[&'static str]| {
        Err(Misfit {
            what,
            why: why.to_owned(),
            units: units.to_vec(),
        })
    };
    let gauge_symbol = [gauge];
    let gauge_if_any: &[&str] = if is_absolute_by_nature {
        &[]
    } else {
        &gauge_symbol
    };
    let is_gauge = matches!(found.reference, Reference::Gauge | Reference::Below);
    if is_gauge && is_absolute_by_nature {
        return misfit(
            format!("`{typed}` cannot be gauge"),
            "a vacuum gauge counts from nothing, not from the atmosphere",
            &[difference],
        );
    }
    let is_absolute = found.reference == Reference::Absolute
        || (found.reference == Reference::Bare && is_absolute_by_nature);
    match kind {
        Kind::PressureDifference if found.reference == Reference::Bare => {
            Ok(Flavour::PressureDifference)
        }
        Kind::PressureDifference => misfit(
            format!(
                "`{typed}` is a pressure from zero, but a pressure difference is expected here"
            ),
            "a difference of two pressures is neither gauge nor absolute",
            &[difference],
        ),
        Kind::VacuumPressure => vacuum(found, typed),
        Kind::AbsolutePressure if is_absolute => Ok(Flavour::AbsolutePressure),
        Kind::AbsolutePressure if found.reference == Reference::Below => misfit(
            format!("`{typed}` is gauge, but an absolute pressure is expected here"),
            "what a gauge shows depends on the atmosphere that is to be stated here",
            &[],
        ),
        Kind::AbsolutePressure => misfit(
            if is_gauge {
                format!("`{typed}` is gauge, but an absolute pressure is expected here")
            } else {
                format!("`{typed}` does not say that it is absolute")
            },
            "gauge and absolute differ by one atmosphere, about 1 bar or 14.7 psi",
            &[absolute],
        ),
        Kind::GaugePressure if is_gauge => Ok(Flavour::GaugePressure),
        Kind::GaugePressure if is_absolute => misfit(
            format!("`{typed}` is absolute, but a gauge pressure is expected here"),
            "gauge and absolute differ by one atmosphere, about 1 bar or 14.7 psi",
            gauge_if_any,
        ),
        Kind::GaugePressure => misfit(
            format!("`{typed}` does not say that it is gauge"),
            "gauge and absolute differ by one atmosphere, about 1 bar or 14.7 psi",
            &[gauge],
        ),
        _ if is_gauge => Ok(Flavour::GaugePressure),
        _ if is_absolute => Ok(Flavour::AbsolutePressure),
        _ => {
            // In the trade a bare inch of mercury counts down from the atmosphere.
            let units = if difference == "inHg" {
                ["inHg vac", absolute]
            } else {
                [gauge, absolute]
            };
            misfit(
                format!("`{typed}` does not say whether it is gauge or absolute"),
                "the two differ by one atmosphere, about 1 bar or 14.7 psi",
                &units,
            )
        }
    }
}

fn vacuum(found: Found, typed: &str) -> Result<Flavour, Misfit> {
    let symbol = found.symbol(Flavour::VacuumPressure);
    let (what, why, units) = match found.reference {
        Reference::Absolute => return Ok(Flavour::VacuumPressure),
        Reference::Bare if found.is_fine() => return Ok(Flavour::VacuumPressure),
        Reference::Bare => (
            format!("`{typed}` does not say that it is absolute"),
            "in a vacuum test only the small units of a vacuum gauge are absolute by themselves",
            vec![symbol],
        ),
        Reference::Gauge => (
            format!("`{typed}` is gauge, but a vacuum reading is absolute"),
            "a gauge pressure near vacuum changes with the weather by more than the whole reading",
            vec![symbol],
        ),
        Reference::Below => (
            format!("`{typed}` is too coarse for a vacuum test"),
            "it counts down from an atmosphere that is not noted, and one inch is 25 400 micron; \
             read a vacuum gauge in micron or Pa",
            Vec::new(),
        ),
    };
    Err(Misfit {
        what,
        why: why.to_owned(),
        units,
    })
}
