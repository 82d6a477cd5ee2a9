//! Bubbles counted in water or seen to grow in foam, as a leak size.

use std::f64::consts::PI;

/// Throughput of bubbles, Pa m³/s: `Q = N × (π ÷ 6) × d³ × p`, from bubbles per second, their diameter in m, and the pressure
/// of the air in Pa.
///
/// The gas in a bubble is taken to be at the pressure of the air; surface tension adds 0.3 % at 1 mm. Derived.
pub fn throughput_of_bubbles(per_second: f64, diameter_m: f64, air_pa: f64) -> f64 {
    per_second * PI / 6.0 * diameter_m.powi(3) * air_pa
}
