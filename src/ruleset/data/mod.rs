//! The rule sets as data, one file each.

pub(super) mod eu_2024;
pub(super) mod gb;
pub(super) mod gb_ozone;
pub(super) mod us_82;
pub(super) mod us_84;
