//! Substances: what refrigerants are made of, and where the laws list them.

use std::sync::LazyLock;

use super::data_file::{optional, rows};

/// The chemical family, as the trade abbreviates it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// Chlorofluorocarbon (CFC).
    Chlorofluorocarbon,
    /// Hydrochlorofluorocarbon (HCFC).
    Hydrochlorofluorocarbon,
    /// Hydrofluorocarbon (HFC).
    Hydrofluorocarbon,
    /// Unsaturated hydrofluorocarbon (HFO).
    Hydrofluoroolefin,
    /// Unsaturated hydrochlorofluorocarbon (HCFO).
    Hydrochlorofluoroolefin,
    /// Unsaturated hydrochlorocarbon (HCO).
    Hydrochloroolefin,
    /// Perfluorocarbon (PFC).
    Perfluorocarbon,
    /// Bromofluorocarbon (halon).
    Halon,
    /// Iodofluorocarbon.
    Iodofluorocarbon,
    /// Hydrocarbon (HC).
    Hydrocarbon,
    /// Ether.
    Ether,
    /// Ammonia, carbon dioxide, water.
    Inorganic,
}

/// Where Regulation (EU) 2024/573 lists a substance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EuAnnex {
    /// Annex I section 1: hydrofluorocarbons.
    OneSectionOne,
    /// Annex I section 2: perfluorocarbons.
    OneSectionTwo,
    /// Annex II section 1: unsaturated hydro(chloro)fluorocarbons.
    TwoSectionOne,
}

/// The class of an ozone-depleting substance in 40 CFR part 82 subpart A, appendices A and B; class I weighs more.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum OzoneClass {
    /// Class II: hydrochlorofluorocarbons.
    Two,
    /// Class I: chlorofluorocarbons and halons.
    One,
}

/// A substance that refrigerants are made of.
#[derive(Debug, PartialEq)]
pub struct Substance {
    /// `R-134a`.
    pub designation: &'static str,
    /// Its chemical family.
    pub family: Family,
    /// Its chemical formula in plain letters and digits.
    pub formula: &'static str,
    /// Its chemical name.
    pub name: &'static str,
    /// Molar mass in kg/kmol (CoolProp 8.0.0).
    pub molar_mass_kg_per_kmol: f64,
    /// Where Regulation (EU) 2024/573 lists it.
    pub eu_annex: Option<EuAnnex>,
    /// Its class as an ozone-depleting substance.
    pub ozone_class: Option<OzoneClass>,
    /// Whether 40 CFR part 84 appendix A lists it as a regulated substance.
    pub us_regulated: bool,
}

static SUBSTANCES: LazyLock<Vec<Substance>> = LazyLock::new(|| read().unwrap_or_default());

/// Finds a substance by its designation as the data files write it.
pub(super) fn substance(designation: &str) -> Option<&'static Substance> {
    SUBSTANCES
        .iter()
        .find(|substance| substance.designation == designation)
}

fn read() -> Result<Vec<Substance>, String> {
    rows(
        include_str!("data/substances.csv"),
        |[
            designation,
            family,
            formula,
            name,
            molar_mass,
            annex,
            ozone,
            us,
        ]| {
            Some(Substance {
                designation,
                family: family_of(family)?,
                formula,
                name,
                molar_mass_kg_per_kmol: molar_mass.parse().ok()?,
                eu_annex: optional(annex, annex_of)?,
                ozone_class: optional(ozone, ozone_class_of)?,
                us_regulated: us == "yes",
            })
        },
    )
}

fn family_of(cell: &str) -> Option<Family> {
    Some(match cell {
        "CFC" => Family::Chlorofluorocarbon,
        "HCFC" => Family::Hydrochlorofluorocarbon,
        "HFC" => Family::Hydrofluorocarbon,
        "HFO" => Family::Hydrofluoroolefin,
        "HCFO" => Family::Hydrochlorofluoroolefin,
        "HCO" => Family::Hydrochloroolefin,
        "PFC" => Family::Perfluorocarbon,
        "halon" => Family::Halon,
        "iodofluorocarbon" => Family::Iodofluorocarbon,
        "hydrocarbon" => Family::Hydrocarbon,
        "ether" => Family::Ether,
        "inorganic" => Family::Inorganic,
        _ => return None,
    })
}

fn annex_of(cell: &str) -> Option<EuAnnex> {
    match cell {
        "I.1" => Some(EuAnnex::OneSectionOne),
        "I.2" => Some(EuAnnex::OneSectionTwo),
        "II.1" => Some(EuAnnex::TwoSectionOne),
        _ => None,
    }
}

fn ozone_class_of(cell: &str) -> Option<OzoneClass> {
    match cell {
        "I" => Some(OzoneClass::One),
        "II" => Some(OzoneClass::Two),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_substances_read() {
        assert!(
            read().is_ok_and(|list| list.len() > 40),
            "{:?}",
            read().err()
        );
    }

    #[test]
    fn the_lists_of_the_laws_agree_with_the_families() {
        for substance in SUBSTANCES.iter() {
            let family = substance.family;
            let hydrofluorocarbon = family == Family::Hydrofluorocarbon;
            assert_eq!(
                substance.us_regulated, hydrofluorocarbon,
                "{}",
                substance.designation
            );
            let annex = match family {
                Family::Hydrofluorocarbon => Some(EuAnnex::OneSectionOne),
                Family::Perfluorocarbon => Some(EuAnnex::OneSectionTwo),
                Family::Hydrofluoroolefin | Family::Hydrochlorofluoroolefin => {
                    Some(EuAnnex::TwoSectionOne)
                }
                _ => None,
            };
            assert_eq!(substance.eu_annex, annex, "{}", substance.designation);
            let ozone = match family {
                Family::Chlorofluorocarbon | Family::Halon => Some(OzoneClass::One),
                Family::Hydrochlorofluorocarbon => Some(OzoneClass::Two),
                _ => None,
            };
            assert_eq!(substance.ozone_class, ozone, "{}", substance.designation);
        }
    }
}
