//! A sentence on what the limit of a test would mean in service, for the appendix.

use crate::report::compose::scene::Scene;
use crate::text::Message;
use crate::working::service_equivalent::InService;

/// The sentence for the last of its workings.
pub fn in_service(scene: &Scene<'_>, found: &InService) -> String {
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
    scene.say(&message)
}
