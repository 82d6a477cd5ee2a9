//! One line on what the limit of a test would mean in service.

use crate::quantity::UnitSystem;
use crate::report::data::Block;
use crate::working::service_equivalent::InService;

/// The line for the block of a test; none where its limit has no meaning in service.
pub fn in_service(found: Option<&InService>, units: UnitSystem) -> Option<Block> {
    let found = found?;
    let refrigerant = found.refrigerant;
    let pressure = found.pressure.value.print(units);
    let text = match (&found.viscous, &found.molecular) {
        (Some(viscous), Some(molecular)) => {
            let (low, high) = if viscous.value.number() < molecular.value.number() {
                (viscous, molecular)
            } else {
                (molecular, viscous)
            };
            format!(
                "In service, with vapour of {refrigerant} at {pressure} behind it, an opening of that size would let out between {} and {}; which, the test cannot tell.",
                low.value.print(units),
                high.value.print(units)
            )
        }
        (None, Some(molecular)) => format!(
            "In service, with vapour of {refrigerant} at {pressure} behind it, an opening of that size would let out {} in molecular flow; viscous flow cannot be worked out, since no viscosity of {refrigerant} is held.",
            molecular.value.print(units)
        ),
        (_, None) => format!(
            "In service {refrigerant} stands at {pressure} here, not above the air outside: a leak would let air in, not refrigerant out."
        ),
    };
    Some(Block::plain(text))
}
