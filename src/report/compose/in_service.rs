//! One line on what the limit of a test would mean in service.

use crate::report::compose::scene::Scene;
use crate::report::data::Block;
use crate::text::Message;
use crate::working::service_equivalent::InService;

/// The line for the block of a test; none where its limit has no meaning in service.
pub fn in_service(scene: &Scene<'_>, found: Option<&InService>) -> Option<Block> {
    let found = found?;
    let message = match (&found.viscous, &found.molecular) {
        (Some(viscous), Some(molecular)) => {
            let (low, high) = if viscous.value.number() < molecular.value.number() {
                (viscous, molecular)
            } else {
                (molecular, viscous)
            };
            Message::of("service-between")
                .with("low", scene.value(&low.value))
                .with("high", scene.value(&high.value))
        }
        (None, Some(molecular)) => {
            Message::of("service-molecular-only").with("rate", scene.value(&molecular.value))
        }
        (_, None) => Message::of("service-inwards"),
    };
    let message = message
        .with("refrigerant", found.refrigerant)
        .with("pressure", scene.value(&found.pressure.value));
    Some(Block::plain(scene.say(&message)))
}
