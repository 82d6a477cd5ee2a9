//! Cautions: dangerous, improper or weak things that were done or claimed, one file each.
//!
//! Input: a [`Scene`], one visit with what stands around it. Output: diagnostics of the grade
//! caution. To add one: write its file, put it into [`ALL`]; the tests run its two examples.

#[expect(
    clippy::module_inception,
    reason = "the file holds the one type the floor is named after"
)]
mod caution;
mod class_rating;
mod cylinder_history;
mod detector_rule;
mod detector_use;
mod example;
mod gas_added;
mod look_result;
mod scene;
mod words;
mod worked_by;

mod accent_too_pale;
mod air_above_limit;
mod background_hides_leak;
mod brazed_without_purge;
mod bubbles_before_detector;
mod certificate_category_wrong;
mod certificate_expired;
mod certificate_missing;
mod charged_without_evacuation;
mod cylinder_above_its_most;
mod cylinder_does_not_add_up;
mod cylinder_past_retest;
mod date_later_than_rule;
mod detector_not_proved;
mod detector_not_rated_for_class;
mod drier_not_replaced;
mod dye_from_earlier_leak;
mod flame_near_flammable;
mod gas_added_leak_not_found;
mod gas_added_without_repair;
mod gas_added_without_search;
mod gauge_beyond_its_range;
mod hold_at_moving_temperature;
mod hold_too_coarse_for_leak;
mod hydrogen_above_five_percent;
mod hydrogen_mixed_on_site;
mod instrument_check_overdue;
mod leaking_again;
mod liquid_above_bubble_point;
mod low_pressure_search;
mod method_blind_to_refrigerant;
mod moisture_read_as_leak;
mod moved_more_than_charge;
mod no_bubbles_too_soon;
mod oil_at_service_valve;
mod outcome_beyond_evidence;
mod oxygen_low;
mod oxygen_or_air_used;
mod pressure_above_plate;
mod pressure_test_as_leak_inspection;
mod proof_before_repair;
mod proof_coarser_than_leak;
mod proved_by_looking;
mod quantity_implausible;
mod recovered_gas_to_another_owner;
mod reference_leak_of_another_kind;
mod repaired_not_retested;
mod rise_at_moving_temperature;
mod room_size_missing;
mod search_in_moving_air;
mod search_stopped_at_first_leak;
mod searched_while_empty;
mod sensitivity_below_rule;
mod sensor_disturbed;
mod sign_without_direct_check;
mod strength_pressure_without_source;
mod suction_below_dew_point;
mod test_coarser_than_limit;
mod test_gas_with_refrigerant_inside;
mod test_too_short;
mod tool_not_rated_for_class;
mod ultrasonic_in_noise;
mod vacuum_gauge_too_coarse;
mod vented;
mod volume_missing;
mod warm_side_below_suction;
mod wrong_cylinder;

pub use caution::{Caution, Edit};
pub use cylinder_history::CylinderHistory;
pub use scene::Scene;

use crate::text::Diagnostic;

/// Every caution, by name.
pub static ALL: &[&Caution] = &[
    &accent_too_pale::CAUTION,
    &air_above_limit::CAUTION,
    &background_hides_leak::CAUTION,
    &brazed_without_purge::CAUTION,
    &bubbles_before_detector::CAUTION,
    &certificate_category_wrong::CAUTION,
    &certificate_expired::CAUTION,
    &certificate_missing::CAUTION,
    &charged_without_evacuation::CAUTION,
    &cylinder_above_its_most::CAUTION,
    &cylinder_does_not_add_up::CAUTION,
    &cylinder_past_retest::CAUTION,
    &date_later_than_rule::CAUTION,
    &detector_not_proved::CAUTION,
    &detector_not_rated_for_class::CAUTION,
    &drier_not_replaced::CAUTION,
    &dye_from_earlier_leak::CAUTION,
    &flame_near_flammable::CAUTION,
    &gas_added_leak_not_found::CAUTION,
    &gas_added_without_repair::CAUTION,
    &gas_added_without_search::CAUTION,
    &gauge_beyond_its_range::CAUTION,
    &hold_at_moving_temperature::CAUTION,
    &hold_too_coarse_for_leak::CAUTION,
    &hydrogen_above_five_percent::CAUTION,
    &hydrogen_mixed_on_site::CAUTION,
    &instrument_check_overdue::CAUTION,
    &leaking_again::CAUTION,
    &liquid_above_bubble_point::CAUTION,
    &low_pressure_search::CAUTION,
    &method_blind_to_refrigerant::CAUTION,
    &moisture_read_as_leak::CAUTION,
    &moved_more_than_charge::CAUTION,
    &no_bubbles_too_soon::CAUTION,
    &oil_at_service_valve::CAUTION,
    &outcome_beyond_evidence::CAUTION,
    &oxygen_low::CAUTION,
    &oxygen_or_air_used::CAUTION,
    &pressure_above_plate::CAUTION,
    &pressure_test_as_leak_inspection::CAUTION,
    &proof_before_repair::CAUTION,
    &proof_coarser_than_leak::CAUTION,
    &proved_by_looking::CAUTION,
    &quantity_implausible::CAUTION,
    &recovered_gas_to_another_owner::CAUTION,
    &reference_leak_of_another_kind::CAUTION,
    &repaired_not_retested::CAUTION,
    &rise_at_moving_temperature::CAUTION,
    &room_size_missing::CAUTION,
    &search_in_moving_air::CAUTION,
    &search_stopped_at_first_leak::CAUTION,
    &searched_while_empty::CAUTION,
    &sensitivity_below_rule::CAUTION,
    &sensor_disturbed::CAUTION,
    &sign_without_direct_check::CAUTION,
    &strength_pressure_without_source::CAUTION,
    &suction_below_dew_point::CAUTION,
    &test_coarser_than_limit::CAUTION,
    &test_gas_with_refrigerant_inside::CAUTION,
    &test_too_short::CAUTION,
    &tool_not_rated_for_class::CAUTION,
    &ultrasonic_in_noise::CAUTION,
    &vacuum_gauge_too_coarse::CAUTION,
    &vented::CAUTION,
    &volume_missing::CAUTION,
    &warm_side_below_suction::CAUTION,
    &wrong_cylinder::CAUTION,
];

/// Everything to be looked at in one visit.
///
/// `sound` tells whether all notes that bear on the visit could be read. If not, cautions that rest
/// on something not being written are left out: what is missing may stand in what was not read.
pub fn check(scene: &Scene<'_>, sound: bool) -> Vec<Diagnostic> {
    let mut found = Vec::new();
    let asked = ALL
        .iter()
        .filter(|caution| sound || !caution.rests_on_absence);
    for caution in asked {
        (caution.check)(scene, &mut found);
    }
    found
}

/// The caution of a name.
pub fn find(name: &str) -> Option<&'static Caution> {
    ALL.iter().copied().find(|caution| caution.name == name)
}
