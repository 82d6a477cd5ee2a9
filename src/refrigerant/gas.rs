//! A gas that a leak lets through: its molar mass and its viscosity, for what one gas leaks where another was measured.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::catalogue::find;
use super::data_file::{optional, rows};
use super::refrigerant::Refrigerant;
use super::source::{Sourced, source};

/// A test gas, air, or the vapour of a refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gas {
    /// Its name as it is printed: `nitrogen`, `R-410A`.
    pub name: &'static str,
    /// Molar mass in kg/kmol.
    pub molar_mass_kg_per_kmol: f64,
    /// Viscosity in Pa s at 20 °C and 101 325 Pa, where a model is held.
    ///
    /// Of what is liquid there: as a thin gas. Of a blend that CoolProp holds no model of: by Wilke's rule. The
    /// viscosity of a vapour changes little with pressure: that of R-410A at 20 °C is 6 % more at saturation.
    pub viscosity_pa_s: Option<Sourced<f64>>,
}

struct Row {
    molar_mass: Option<f64>,
    viscosity: f64,
    thin: f64,
}

static ROWS: LazyLock<BTreeMap<&'static str, Row>> = LazyLock::new(|| read().unwrap_or_default());

/// Finds a gas by a refrigerant's designation in any usual spelling, or by the name of a test gas: `nitrogen`, `N2`, `air`.
pub fn gas(text: &str) -> Option<Gas> {
    if let Some(refrigerant) = find(text) {
        return Some(refrigerant.gas());
    }
    let plain = text.trim().to_lowercase();
    let name = match plain.as_str() {
        "n2" | "ofn" | "dry nitrogen" | "oxygen-free nitrogen" => "nitrogen",
        "he" => "helium",
        "h2" => "hydrogen",
        "ar" => "argon",
        other => other,
    };
    let (name, row) = ROWS.get_key_value(name)?;
    Some(Gas {
        name,
        molar_mass_kg_per_kmol: row.molar_mass?,
        viscosity_pa_s: sourced(row.viscosity, "coolprop"),
    })
}

/// Gives the names of the test gases, in order.
pub fn test_gases() -> impl Iterator<Item = &'static str> {
    let gases = ROWS.iter().filter(|(_, row)| row.molar_mass.is_some());
    gases.map(|(name, _)| *name)
}

impl Refrigerant {
    /// Gives it as a gas that leaks.
    pub fn gas(&self) -> Gas {
        let viscosity_pa_s = match ROWS.get(self.designation) {
            Some(row) => sourced(row.viscosity, "coolprop"),
            None => self.mixed().and_then(|value| sourced(value, "wilke")),
        };
        Gas {
            name: self.designation,
            molar_mass_kg_per_kmol: self.molar_mass_kg_per_kmol(),
            viscosity_pa_s,
        }
    }

    /// Viscosity as a thin gas at 20 °C from those of its constituents, if all are held; to 0.01 µPa s, since the rule knows it
    /// no closer and the last bits differ between machines.
    fn mixed(&self) -> Option<f64> {
        let part = |part: &super::refrigerant::Component| {
            let molar_mass = part.substance.molar_mass_kg_per_kmol;
            Some(Part {
                moles: part.mass_percent / molar_mass,
                viscosity: ROWS.get(part.substance.designation)?.thin,
                molar_mass,
            })
        };
        let parts: Vec<Part> = self.components.iter().map(part).collect::<Option<_>>()?;
        (parts.len() > 1).then(|| (wilke(&parts) * 1e8).round() / 1e8)
    }
}

struct Part {
    moles: f64,
    viscosity: f64,
    molar_mass: f64,
}

/// Viscosity of a mixture of thin gases: Wilke, J. Chem. Phys. 18 (1950) 517, equation 13 (from memory).
fn wilke(parts: &[Part]) -> f64 {
    let weight = |one: &Part, other: &Part| {
        let bracket = 1.0
            + (one.viscosity / other.viscosity).sqrt()
                * (other.molar_mass / one.molar_mass).powf(0.25);
        bracket.powi(2) / (8.0 * (1.0 + one.molar_mass / other.molar_mass)).sqrt()
    };
    let term = |one: &Part| {
        let met: f64 = parts
            .iter()
            .map(|other| other.moles * weight(one, other))
            .sum();
        one.moles * one.viscosity / met
    };
    parts.iter().map(term).sum()
}

fn sourced(value: f64, code: &str) -> Option<Sourced<f64>> {
    let source = source(code)?;
    Some(Sourced { value, source })
}

fn read() -> Result<BTreeMap<&'static str, Row>, String> {
    let list = rows(
        include_str!("data/viscosity.csv"),
        |[name, molar_mass, viscosity, thin]| {
            let micro = |cell: &str| Some(1e-6 * cell.parse::<f64>().ok()?);
            let row = Row {
                molar_mass: optional(molar_mass, |cell| cell.parse().ok())?,
                viscosity: micro(viscosity)?,
                thin: micro(thin)?,
            };
            Some((name, row))
        },
    )?;
    Ok(list.into_iter().collect())
}

#[cfg(test)]
mod tests {
    use super::super::all;
    use super::*;

    #[test]
    fn the_list_reads_and_names_test_gases_and_refrigerants_only() {
        let list = read().unwrap();
        assert!(list.len() > 40);
        for (name, row) in &list {
            let known = find(name).is_some_and(|found| found.designation == *name);
            assert_eq!(known, row.molar_mass.is_none(), "{name}");
        }
        assert_eq!(
            test_gases().collect::<Vec<_>>(),
            ["air", "argon", "helium", "hydrogen", "nitrogen"]
        );
    }

    #[test]
    fn wilke_s_rule_gives_the_printed_value_of_a_flue_gas() {
        // 0.133 CO2, 0.039 O2, 0.828 N2 at 293 K: 1714e-7 g/(cm s), from 1462, 2031 and 1754e-7. Bird, Stewart, Lightfoot,
        // Transport Phenomena (1960), example 1.4-2 (from memory).
        let part = |moles, viscosity, molar_mass| Part {
            moles,
            viscosity,
            molar_mass,
        };
        let found = wilke(&[
            part(0.133, 1462.0, 44.010),
            part(0.039, 2031.0, 32.000),
            part(0.828, 1754.0, 28.016),
        ]);
        assert!((found - 1714.0).abs() < 1.0, "{found}");
    }

    #[test]
    fn wilke_s_rule_is_within_a_twentieth_of_the_four_blends_that_have_a_model() {
        for designation in ["R-404A", "R-407C", "R-410A", "R-507A"] {
            let blend = find(designation).unwrap();
            let model = blend.gas().viscosity_pa_s.unwrap();
            assert_eq!(model.source.code, "coolprop");
            let ratio = blend.mixed().unwrap() / model.value;
            assert!((ratio - 1.0).abs() < 0.05, "{designation}: {ratio}");
        }
    }

    #[test]
    fn most_refrigerants_have_a_viscosity_and_what_has_none_contains_a_substance_without() {
        let without: Vec<&str> = all()
            .iter()
            .filter(|one| one.gas().viscosity_pa_s.is_none())
            .map(|one| one.designation)
            .collect();
        assert!(without.len() < 20, "{without:?}");
        assert!(without.contains(&"R-466A") && without.contains(&"R-1233zd(E)"));
    }

    #[test]
    fn a_gas_is_found_by_the_names_on_its_cylinder() {
        for (text, name) in [
            ("nitrogen", "nitrogen"),
            ("N2", "nitrogen"),
            ("OFN", "nitrogen"),
            ("Air", "air"),
            ("r410a", "R-410A"),
            ("ammonia", "R-717"),
        ] {
            assert_eq!(gas(text).map(|gas| gas.name), Some(name), "{text}");
        }
        assert_eq!(gas("sugar"), None);
    }
}
