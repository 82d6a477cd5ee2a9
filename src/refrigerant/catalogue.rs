//! The catalogue: every refrigerant held, and how to find one by what a technician writes.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use similar::get_close_matches;

use super::data_file::{optional, rows};
use super::refrigerant::{Component, Refrigerant};
use super::source::{Source, Sourced, source};
use super::substance::substance;
use crate::vocabulary::Word;
use crate::vocabulary::safety_class::SafetyClass;

/// How many near designations are offered, and how near they must be (`similar`'s ratio).
const NEAR: usize = 3;
const NEAR_ENOUGH: f32 = 0.6;

static REFRIGERANTS: LazyLock<Vec<Refrigerant>> = LazyLock::new(|| read().unwrap_or_default());

static BY_SPELLING: LazyLock<BTreeMap<String, &'static Refrigerant>> = LazyLock::new(|| {
    let spellings = |refrigerant: &'static Refrigerant| {
        let names = refrigerant.names.iter().copied();
        let all = std::iter::once(refrigerant.designation).chain(names);
        all.map(move |name| (spelling(name), refrigerant))
    };
    REFRIGERANTS.iter().flat_map(spellings).collect()
});

/// Gives every refrigerant: pure substances by number, then blends by number.
pub fn all() -> &'static [Refrigerant] {
    &REFRIGERANTS
}

/// Finds a refrigerant in any usual spelling: `R-449A`, `r449a`, `R 449 A`, `HFO-1234yf`, `ammonia`.
pub fn find(text: &str) -> Option<&'static Refrigerant> {
    BY_SPELLING.get(&spelling(text)).copied()
}

/// Gives up to three designations that are spelled much like `text`, the nearest first; swapped signs are nearest.
pub fn nearest(text: &str) -> Vec<&'static str> {
    let written = spelling(text);
    let spellings: Vec<&str> = BY_SPELLING.keys().map(String::as_str).collect();
    let swapped = spellings
        .iter()
        .copied()
        .filter(|known| sorted(known) == sorted(&written));
    let close = get_close_matches(written.as_str(), &spellings, 2 * NEAR, NEAR_ENOUGH);
    let mut near = Vec::new();
    for found in swapped.chain(close) {
        let designation = BY_SPELLING
            .get(found)
            .map(|refrigerant| refrigerant.designation);
        near.extend(designation.filter(|designation| !near.contains(designation)));
    }
    near.truncate(NEAR);
    near
}

fn sorted(spelling: &str) -> Vec<char> {
    let mut signs: Vec<char> = spelling.chars().collect();
    signs.sort_unstable();
    signs
}

/// Letters and digits only, in upper case, without the `R` or family in front of a number.
fn spelling(text: &str) -> String {
    let flat = text.chars().map(|sign| match sign {
        '₀'..='₉' => char::from_digit(u32::from(sign) - u32::from('₀'), 10).unwrap_or(sign),
        _ => sign.to_ascii_uppercase(),
    });
    let plain: String = flat.filter(char::is_ascii_alphanumeric).collect();
    let families = [
        "REFRIGERANT",
        "HCFO",
        "HCFC",
        "HFO",
        "HFC",
        "HC",
        "CFC",
        "PFC",
        "R",
    ];
    let numbers = families
        .iter()
        .filter_map(|family| plain.strip_prefix(family));
    let is_number = |rest: &&str| {
        rest.starts_with(|first: char| first.is_ascii_digit()) || ["C318", "E170"].contains(rest)
    };
    numbers
        .into_iter()
        .find(is_number)
        .map_or_else(|| plain.clone(), str::to_owned)
}

fn read() -> Result<Vec<Refrigerant>, String> {
    let points = read_points()?;
    rows(
        include_str!("data/refrigerants.csv"),
        |[
            designation,
            composition,
            composition_source,
            class,
            class_source,
            lfl,
            lfl_source,
            rcl,
            rcl_ppm,
            rcl_source,
            atel,
            atel_source,
            practical,
            practical_source,
            names,
        ]| {
            let points = points.get(designation).copied().unwrap_or_default();
            let components = components(composition)?;
            let chemical = match components.as_slice() {
                [pure] => pure.substance.name,
                _ => "",
            };
            let names = names.split(',').map(str::trim);
            let other = names.filter(|name| !name.is_empty() && *name != chemical);
            let chemical = Some(chemical).filter(|name| !name.is_empty());
            Some(Refrigerant {
                designation,
                names: chemical.into_iter().chain(other).collect(),
                components,
                composition_source: optional(composition_source, source)?,
                safety_class: sourced(class, class_source, SafetyClass::of)?,
                lower_flammability_limit_kg_m3: sourced(lfl, lfl_source, number)?,
                concentration_limit_kg_m3: sourced(rcl, rcl_source, |cell| {
                    number(cell).map(|grams| grams / 1000.0)
                })?,
                concentration_limit_ppm: sourced(rcl_ppm, rcl_source, number)?,
                toxicity_limit_kg_m3: sourced(atel, atel_source, number)?,
                practical_limit_kg_m3: sourced(practical, practical_source, number)?,
                normal_boiling_point_k: points.boiling,
                normal_dew_point_k: points.dew,
                critical_temperature_k: points.critical_temperature,
                critical_pressure_pa: points.critical_pressure,
            })
        },
    )
}

#[derive(Clone, Copy, Default)]
struct Points {
    boiling: Option<Sourced<f64>>,
    dew: Option<Sourced<f64>>,
    critical_temperature: Option<Sourced<f64>>,
    critical_pressure: Option<Sourced<f64>>,
}

fn read_points() -> Result<BTreeMap<&'static str, Points>, String> {
    let list = rows(
        include_str!("data/points.csv"),
        |[
            designation,
            boiling,
            dew,
            boiling_source,
            temperature,
            pressure,
            critical_source,
        ]| {
            let points = Points {
                boiling: sourced(boiling, boiling_source, number)?,
                dew: sourced(dew, boiling_source, number)?,
                critical_temperature: sourced(temperature, critical_source, number)?,
                critical_pressure: sourced(pressure, critical_source, number)?,
            };
            Some((designation, points))
        },
    )?;
    Ok(list.into_iter().collect())
}

/// Reads `R-32 50 + R-125 50`.
fn components(cell: &str) -> Option<Vec<Component>> {
    let component = |part: &str| {
        let (of, percent) = part.rsplit_once(' ')?;
        Some(Component {
            substance: substance(of)?,
            mass_percent: number(percent)?,
        })
    };
    cell.split(" + ").map(component).collect()
}

#[expect(
    clippy::option_option,
    reason = "refused and empty are different things"
)]
fn sourced<T>(
    cell: &'static str,
    code: &'static str,
    read: impl Fn(&'static str) -> Option<T>,
) -> Option<Option<Sourced<T>>> {
    let with_source = |source: &'static Source| move |value| Sourced { value, source };
    optional(cell, |cell| Some(with_source(source(code)?)(read(cell)?)))
}

fn number(cell: &str) -> Option<f64> {
    cell.parse().ok().filter(|number: &f64| number.is_finite())
}

#[cfg(test)]
mod tests {
    use super::super::{EuAnnex, GwpSet, Mark};
    use super::*;

    #[test]
    fn the_catalogue_reads_and_holds_no_refrigerant_twice() {
        let list = read().unwrap();
        assert!(list.len() > 150);
        let expected: usize = list
            .iter()
            .map(|refrigerant| 1 + refrigerant.names.len())
            .sum();
        let same = list
            .iter()
            .filter(|refrigerant| {
                refrigerant
                    .names
                    .iter()
                    .any(|name| spelling(name) == spelling(refrigerant.designation))
            })
            .count();
        assert_eq!(
            BY_SPELLING.len(),
            expected - same,
            "two refrigerants share a spelling"
        );
    }

    #[test]
    fn every_usual_spelling_finds_its_refrigerant() {
        for (text, designation) in [
            ("R-449A", "R-449A"),
            ("R449A", "R-449A"),
            ("r449a", "R-449A"),
            ("R 449 A", "R-449A"),
            ("R\u{2011}449A", "R-449A"),
            ("404a", "R-404A"),
            ("R-1234ze(E)", "R-1234ze(E)"),
            ("r1234zee", "R-1234ze(E)"),
            ("HFO-1234ze", "R-1234ze(E)"),
            ("HFC-134a", "R-134a"),
            ("HCFC-22", "R-22"),
            ("R507", "R-507A"),
            ("RC318", "R-C318"),
            ("Ammonia", "R-717"),
            ("NH3", "R-717"),
            ("CO2", "R-744"),
            ("CO\u{2082}", "R-744"),
            ("propane", "R-290"),
            ("R600a", "R-600a"),
            ("1,1,1,2-tetrafluoroethane", "R-134a"),
        ] {
            let found = find(text).map(|refrigerant| refrigerant.designation);
            assert_eq!(found, Some(designation), "{text}");
        }
    }

    #[test]
    fn what_is_no_refrigerant_or_leaves_a_choice_is_not_found() {
        for text in [
            "",
            "R",
            "R-",
            "R-404",
            "R-1336mzz",
            "R-407",
            "nitrogen",
            "R-1234ze(Z)",
            "sugar",
        ] {
            assert_eq!(
                find(text).map(|refrigerant| refrigerant.designation),
                None,
                "{text}"
            );
        }
    }

    #[test]
    fn a_slip_gets_the_nearest_designations() {
        assert!(
            nearest("R-494A").contains(&"R-449A"),
            "{:?}",
            nearest("R-494A")
        );
        assert!(nearest("R-1336mzz").contains(&"R-1336mzz(Z)"));
        assert_eq!(nearest("amonia"), ["R-717"]);
        assert!(nearest("R-404").contains(&"R-404A"));
        assert!(nearest("sugar").is_empty());
    }

    #[test]
    fn compositions_add_up_to_a_hundred() {
        for refrigerant in all() {
            let sum: f64 = refrigerant
                .components
                .iter()
                .map(|part| part.mass_percent)
                .sum();
            assert!((sum - 100.0).abs() < 1e-9, "{}", refrigerant.designation);
            assert_eq!(
                refrigerant.is_blend(),
                refrigerant.composition_source.is_some()
            );
        }
    }

    #[test]
    fn concentration_limits_in_mass_and_in_volume_agree() {
        // 24.45 l/mol is the molar volume at 25 °C and 101 325 Pa; the limits are printed to two figures.
        for refrigerant in all() {
            if let (Some(mass), Some(volume)) = (
                refrigerant.concentration_limit_kg_m3,
                refrigerant.concentration_limit_ppm,
            ) {
                let from_volume =
                    volume.value * 1e-6 * refrigerant.molar_mass_kg_per_kmol() / 24.45;
                assert!(
                    (from_volume / mass.value - 1.0).abs() < 0.05,
                    "{}",
                    refrigerant.designation
                );
            }
        }
    }

    #[test]
    fn only_a_flammable_class_has_a_flammability_limit() {
        for refrigerant in all() {
            if refrigerant.lower_flammability_limit_kg_m3.is_some() {
                assert_eq!(
                    refrigerant.is_flammable(),
                    Some(true),
                    "{}",
                    refrigerant.designation
                );
            }
        }
    }

    #[test]
    fn a_practical_limit_that_was_seen_is_a_fifth_of_the_flammability_limit() {
        // Rule of EN 378-1 for class 2L and 3 where toxicity is not lower; R-455A is printed at a quarter, R-170 and R-717 are
        // held down by toxicity, R-600 and R-600a are printed at 23 % and 26 %.
        let exceptions = ["R-455A", "R-170", "R-717", "R-600", "R-600a"];
        for refrigerant in all()
            .iter()
            .filter(|refrigerant| !exceptions.contains(&refrigerant.designation))
        {
            if let (Some(lfl), Some(practical)) = (
                refrigerant.lower_flammability_limit_kg_m3,
                refrigerant.practical_limit_kg_m3,
            ) && practical.source.mark == Mark::Seen
            {
                let ratio = practical.value / lfl.value;
                assert!(
                    (0.19..0.22).contains(&ratio),
                    "{} {ratio}",
                    refrigerant.designation
                );
            }
        }
    }

    #[test]
    fn the_laws_see_what_a_blend_contains() {
        let r449a = find("R-449A").unwrap();
        assert!(
            r449a.is_in_eu_annex(EuAnnex::OneSectionOne)
                && r449a.is_in_eu_annex(EuAnnex::TwoSectionOne)
        );
        assert!(r449a.contains_us_regulated() && r449a.ozone_class().is_none());
        let r1234yf = find("R-1234yf").unwrap();
        assert!(
            !r1234yf.is_in_eu_annex(EuAnnex::OneSectionOne)
                && r1234yf.is_in_eu_annex(EuAnnex::TwoSectionOne)
        );
        assert!(!r1234yf.contains_us_regulated());
        assert_eq!(
            find("R-502").unwrap().ozone_class(),
            Some(super::super::OzoneClass::One)
        );
    }

    #[test]
    fn every_refrigerant_has_a_gwp_in_some_set() {
        for refrigerant in all() {
            assert!(
                GwpSet::ALL
                    .iter()
                    .any(|set| refrigerant.gwp(*set).is_some()),
                "{}",
                refrigerant.designation
            );
        }
    }
}
