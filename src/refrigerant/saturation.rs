//! Saturation: bubble and dew pressure, their temperatures, densities, viscosity of the vapour, between the lines of a checked-in table.
//!
//! The table was computed with CoolProp 8.0.0 (`tests/outside/generate_refrigerants.py`) from about -100 °C or 500 Pa up to
//! 0.99 of the critical temperature where CoolProp finds two phases so far. Pressures are interpolated in (1/T, ln p),
//! within 0.02 % and 0.01 K of CoolProp. Nothing is extrapolated: `None` outside. CoolProp's own mixtures lie within half a
//! kelvin of the normal boiling points that the ASHRAE Handbook prints, twelve blends within 1.5 K (they are named in
//! `tests/published_saturation.rs`); the two that stray further, R-432A and R-445A, have no table.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::curve::interpolate;
use super::data_file::{optional, rows};
use super::refrigerant::Refrigerant;
use super::source::{Source, source};

/// The columns of one refrigerant, by rising temperature.
#[derive(Debug, Default)]
struct Columns {
    /// -1/T in 1/K: rises with T, as the interpolation wants it.
    place: Vec<f64>,
    ln_bubble: Vec<f64>,
    ln_dew: Vec<f64>,
    liquid: Vec<f64>,
    ln_vapour: Vec<f64>,
    /// Empty where there is no model.
    ln_viscosity: Vec<f64>,
}

type Tables = BTreeMap<&'static str, Columns>;

static TABLES: LazyLock<Tables> = LazyLock::new(|| read().unwrap_or_default());

impl Refrigerant {
    /// Tells where the saturation table comes from; `None` where none is held.
    pub fn saturation_source(&self) -> Option<&'static Source> {
        self.columns().and_then(|_| source("coolprop"))
    }

    /// Gives the lowest and the highest temperature of the saturation table in K.
    pub fn saturation_range_k(&self) -> Option<(f64, f64)> {
        let places = &self.columns()?.place;
        Some((-1.0 / places.first()?, -1.0 / places.last()?))
    }

    /// Gives the absolute pressure in Pa at which the liquid begins to boil.
    pub fn bubble_pressure_pa(&self, temperature_k: f64) -> Option<f64> {
        let columns = self.columns()?;
        let ln = interpolate(&columns.place, &columns.ln_bubble, -1.0 / temperature_k)?;
        Some(ln.exp())
    }

    /// Gives the absolute pressure in Pa at which the vapour begins to condense; never above the bubble pressure.
    pub fn dew_pressure_pa(&self, temperature_k: f64) -> Option<f64> {
        let columns = self.columns()?;
        let ln = interpolate(&columns.place, &columns.ln_dew, -1.0 / temperature_k)?;
        Some(ln.exp().min(self.bubble_pressure_pa(temperature_k)?))
    }

    /// Gives the temperature in K at which the liquid begins to boil at an absolute pressure in Pa.
    pub fn bubble_temperature_k(&self, pressure_pa: f64) -> Option<f64> {
        let columns = self.columns()?;
        let place = interpolate(&columns.ln_bubble, &columns.place, pressure_pa.ln())?;
        Some(-1.0 / place)
    }

    /// Gives the temperature in K at which the vapour begins to condense at an absolute pressure in Pa; never below the
    /// bubble temperature where that is in the table too.
    pub fn dew_temperature_k(&self, pressure_pa: f64) -> Option<f64> {
        let columns = self.columns()?;
        let place = interpolate(&columns.ln_dew, &columns.place, pressure_pa.ln())?;
        let bubble = self.bubble_temperature_k(pressure_pa);
        Some(bubble.map_or(-1.0 / place, |bubble| bubble.max(-1.0 / place)))
    }

    /// Gives the density in kg/m3 of the liquid at its bubble point.
    pub fn liquid_density_kg_m3(&self, temperature_k: f64) -> Option<f64> {
        let columns = self.columns()?;
        interpolate(&columns.place, &columns.liquid, -1.0 / temperature_k)
    }

    /// Gives the density in kg/m3 of the vapour at its dew point.
    pub fn vapour_density_kg_m3(&self, temperature_k: f64) -> Option<f64> {
        let columns = self.columns()?;
        let ln = interpolate(&columns.place, &columns.ln_vapour, -1.0 / temperature_k)?;
        Some(ln.exp())
    }

    /// Gives the viscosity in Pa s of the vapour at its dew point; `None` too where CoolProp holds no model of it.
    pub fn vapour_viscosity_pa_s(&self, temperature_k: f64) -> Option<f64> {
        let columns = self.columns()?;
        let ln = interpolate(&columns.place, &columns.ln_viscosity, -1.0 / temperature_k)?;
        Some(ln.exp())
    }

    fn columns(&self) -> Option<&'static Columns> {
        TABLES.get(self.designation)
    }
}

/// Errors: a line that does not read, a table not by rising temperature and pressure, a dew pressure above the bubble pressure.
fn read() -> Result<Tables, String> {
    let lines = rows(
        include_str!("data/saturation.csv"),
        |[
            designation,
            temperature,
            bubble,
            dew,
            liquid,
            vapour,
            viscosity,
        ]| {
            let bubble: f64 = bubble.parse().ok()?;
            let dew = if dew.is_empty() {
                bubble
            } else {
                dew.parse().ok()?
            };
            let numbers = [
                temperature.parse().ok()?,
                bubble,
                dew,
                liquid.parse().ok()?,
                vapour.parse().ok()?,
            ];
            let viscosity: Option<f64> = optional(viscosity, |cell| cell.parse().ok())?;
            let possible = numbers.iter().all(|number| *number > 0.0) && dew <= bubble;
            possible.then_some((designation, numbers, viscosity))
        },
    )?;
    let mut tables = Tables::new();
    let mut current = "";
    for (designation, [temperature, bubble, dew, liquid, vapour], viscosity) in lines {
        if !designation.is_empty() {
            current = designation;
        }
        let columns = tables.entry(current).or_default();
        columns.place.push(-1.0 / temperature);
        columns.ln_bubble.push(bubble.ln());
        columns.ln_dew.push(dew.ln());
        columns.liquid.push(liquid);
        columns.ln_vapour.push(vapour.ln());
        let micro = |value: f64| (1e-6 * value).ln();
        columns.ln_viscosity.extend(viscosity.map(micro));
    }
    let rises = |column: &[f64]| column.is_sorted_by(|one, next| one < next);
    let wrong = tables.iter().find(|(_, columns)| {
        !(rises(&columns.place)
            && rises(&columns.ln_bubble)
            && rises(&columns.ln_dew)
            && columns.place.len() >= 4
            && [0, columns.place.len()].contains(&columns.ln_viscosity.len()))
    });
    match wrong {
        Some((designation, _)) => Err(format!(
            "{designation}: not rising, too short, or with gaps"
        )),
        None => Ok(tables),
    }
}

#[cfg(test)]
mod tests {
    use super::super::{all, find};
    use super::*;

    #[test]
    fn the_tables_read_and_belong_to_refrigerants_that_are_held() {
        let tables = read().unwrap();
        assert!(tables.len() > 120);
        assert!(tables.keys().all(|designation| {
            find(designation).is_some_and(|found| found.designation == *designation)
        }));
    }

    #[test]
    fn every_table_covers_what_a_technician_meets_or_ends_near_the_critical_point() {
        for refrigerant in all() {
            let (Some((low, high)), Some(critical)) = (
                refrigerant.saturation_range_k(),
                refrigerant.critical_temperature_k,
            ) else {
                continue;
            };
            assert!(
                high <= 0.991 * critical.value,
                "{}",
                refrigerant.designation
            );
            assert!(
                high >= 0.95 * critical.value || high > 340.0,
                "{} {high}",
                refrigerant.designation
            );
            // CoolProp's equation of state for R-114 begins at 0 °C.
            let from = refrigerant.bubble_pressure_pa(low).unwrap();
            assert!(
                low < 233.5 || from < 2000.0 || refrigerant.designation == "R-114",
                "{} {low}",
                refrigerant.designation
            );
        }
    }

    #[test]
    fn nothing_is_given_outside_the_table() {
        for refrigerant in all() {
            let Some((low, high)) = refrigerant.saturation_range_k() else {
                assert_eq!(refrigerant.bubble_pressure_pa(273.15), None);
                continue;
            };
            for temperature in [
                low - 0.01,
                high + 0.01,
                0.0,
                -300.0,
                f64::NAN,
                f64::INFINITY,
            ] {
                assert_eq!(refrigerant.bubble_pressure_pa(temperature), None);
                assert_eq!(refrigerant.dew_pressure_pa(temperature), None);
                assert_eq!(refrigerant.liquid_density_kg_m3(temperature), None);
                assert_eq!(refrigerant.vapour_density_kg_m3(temperature), None);
            }
            for pressure in [0.0, -1e5, 1.0, 1e9, f64::NAN] {
                assert_eq!(refrigerant.bubble_temperature_k(pressure), None);
                assert_eq!(refrigerant.dew_temperature_k(pressure), None);
            }
        }
    }

    #[test]
    fn temperature_and_pressure_lead_back_to_each_other_and_bubble_lies_above_dew() {
        for refrigerant in all() {
            let Some((low, high)) = refrigerant.saturation_range_k() else {
                continue;
            };
            for step in 1..400 {
                let temperature = low + (high - low) * f64::from(step) / 400.0;
                let bubble = refrigerant.bubble_pressure_pa(temperature).unwrap();
                let dew = refrigerant.dew_pressure_pa(temperature).unwrap();
                assert!(dew <= bubble);
                let back = refrigerant.bubble_temperature_k(bubble).unwrap();
                assert!(
                    (back - temperature).abs() < 0.002,
                    "{} {temperature} {back}",
                    refrigerant.designation
                );
                let back = refrigerant.dew_temperature_k(dew).unwrap();
                assert!(
                    (back - temperature).abs() < 0.002,
                    "{} {temperature} {back}",
                    refrigerant.designation
                );
            }
        }
    }
}
