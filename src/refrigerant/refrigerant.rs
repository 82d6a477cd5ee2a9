//! One refrigerant: what it is made of, how safe it is, what the laws count it as.

use super::gwp::{Gwp, GwpSet, gwp};
use super::source::{Source, Sourced, source};
use super::substance::{EuAnnex, OzoneClass, Substance};
use crate::vocabulary::safety_class::SafetyClass;

/// A constituent of a refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Component {
    /// The substance.
    pub substance: &'static Substance,
    /// Its nominal share in mass %.
    pub mass_percent: f64,
}

/// A refrigerant. `None` in a field means that no value is held, except the flammability limit of class A1 and B1.
#[derive(Debug, PartialEq)]
pub struct Refrigerant {
    /// The designation as it is printed: `R-449A`.
    pub designation: &'static str,
    /// Other names that mean this refrigerant: `ammonia`, `NH3`.
    pub names: Vec<&'static str>,
    /// The constituents, in the order of the designation list.
    pub components: Vec<Component>,
    /// Where the composition comes from; a pure substance needs none.
    pub composition_source: Option<&'static Source>,
    /// Safety class (ASHRAE 34, ISO 817).
    pub safety_class: Option<Sourced<SafetyClass>>,
    /// Lower flammability limit in kg/m3.
    pub lower_flammability_limit_kg_m3: Option<Sourced<f64>>,
    /// Refrigerant concentration limit of ASHRAE 34 in kg/m3.
    pub concentration_limit_kg_m3: Option<Sourced<f64>>,
    /// The same limit in ppm by volume.
    pub concentration_limit_ppm: Option<Sourced<f64>>,
    /// Acute-toxicity exposure limit or oxygen-deprivation limit of EN 378-1, the lower one, in kg/m3.
    pub toxicity_limit_kg_m3: Option<Sourced<f64>>,
    /// Practical limit of EN 378-1 in kg/m3.
    pub practical_limit_kg_m3: Option<Sourced<f64>>,
    /// Bubble point at 101 325 Pa in K; for carbon dioxide the sublimation point.
    pub normal_boiling_point_k: Option<Sourced<f64>>,
    /// Dew point at 101 325 Pa in K.
    pub normal_dew_point_k: Option<Sourced<f64>>,
    /// Critical temperature in K.
    pub critical_temperature_k: Option<Sourced<f64>>,
    /// Critical pressure in Pa.
    pub critical_pressure_pa: Option<Sourced<f64>>,
}

impl Refrigerant {
    /// Works out the molar mass in kg/kmol: 100 over the sum of mass % by molar mass.
    pub fn molar_mass_kg_per_kmol(&self) -> f64 {
        let kmol = |part: &Component| part.mass_percent / part.substance.molar_mass_kg_per_kmol;
        100.0 / self.components.iter().map(kmol).sum::<f64>()
    }

    /// Tells where the molar mass comes from: CoolProp, but of R-13B1, which it does not hold, the Handbook.
    pub fn molar_mass_source(&self) -> Option<&'static Source> {
        let mut parts = self.components.iter();
        let printed = parts.any(|part| part.substance.designation == "R-13B1");
        source(if printed { "handbook" } else { "coolprop" })
    }

    /// Works out the GWP under a set; `None` where the set holds no value that the sum needs.
    pub fn gwp(&self, set: GwpSet) -> Option<Gwp> {
        gwp(&self.components, set)
    }

    /// Tells whether it is a mixture.
    pub fn is_blend(&self) -> bool {
        self.components.len() > 1
    }

    /// Gives the class of its most ozone-depleting constituent: 40 CFR 82.157 covers a blend that contains one.
    pub fn ozone_class(&self) -> Option<OzoneClass> {
        let classes = self.components.iter();
        classes.filter_map(|part| part.substance.ozone_class).max()
    }

    /// Tells whether a constituent stands in that annex of Regulation (EU) 2024/573; a mixture with one is in scope.
    pub fn is_in_eu_annex(&self, annex: EuAnnex) -> bool {
        let mut parts = self.components.iter();
        parts.any(|part| part.substance.eu_annex == Some(annex))
    }

    /// Tells whether a constituent is a regulated substance of 40 CFR part 84 appendix A (an HFC).
    pub fn contains_us_regulated(&self) -> bool {
        self.components
            .iter()
            .any(|part| part.substance.us_regulated)
    }

    /// Tells whether a flame can spread, where the class is known.
    pub fn is_flammable(&self) -> Option<bool> {
        self.safety_class.map(|class| class.value.is_flammable())
    }
}
