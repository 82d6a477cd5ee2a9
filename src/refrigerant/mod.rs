//! Refrigerants: designations, composition, safety, GWP by law, saturation; nitrogen and water for the tests.
//!
//! Input: a designation or a bare number in SI units (Pa, K, kg/m3, kg/kmol, kg). Output: facts with their source beside
//! them, or `None` where no value is held; nothing is extrapolated. The data are the checked-in files of `data/`.

mod catalogue;
mod curve;
mod data_file;
mod gas;
mod gwp;
mod nitrogen;
#[expect(
    clippy::module_inception,
    reason = "the file is named after its one type"
)]
mod refrigerant;
mod saturation;
mod source;
mod substance;
mod water;

pub use crate::vocabulary::safety_class::SafetyClass;
pub use catalogue::{all, find, nearest};
pub use gas::{Gas, gas, test_gases};
pub use gwp::{Gwp, GwpSet, GwpTerm, co2e_kg, mixture_gwp};
pub use nitrogen::nitrogen_z;
pub use refrigerant::{Component, Refrigerant};
pub use source::{Mark, Source, Sourced};
pub use substance::{EuAnnex, Family, OzoneClass, Substance};
pub use water::water_vapour_pressure_pa;
