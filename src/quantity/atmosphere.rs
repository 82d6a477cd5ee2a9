//! The pressure of the air around a gauge when nobody read a barometer.

use super::measured::Length;
use super::pressure::AbsolutePressure;

/// The standard atmosphere at sea level, 101 325 Pa (ISO 2533, ICAO Doc 7488).
pub const STANDARD_ATMOSPHERE: AbsolutePressure = AbsolutePressure::new(101_325.0);

/// The standard atmosphere at an altitude, p = 101 325 Pa · (1 − L h / T₀)^(g / (R L)).
///
/// L = 6.5 K/km, T₀ = 288.15 K, g = 9.806 65 m/s², R = 287.05287 J/(kg K), and h = r z / (r + z) the
/// geopotential altitude with r = 6 356 766 m: ISO 2533 and ICAO Doc 7488, troposphere. The altitude
/// is held to the range of the formula, −5 km to 11 km.
pub fn atmosphere_at(altitude: Length) -> AbsolutePressure {
    const LAPSE: f64 = 6.5e-3;
    const EXPONENT: f64 = 9.806_65 / (287.052_87 * LAPSE);
    const EARTH_RADIUS: f64 = 6_356_766.0;
    let geometric = altitude.si().clamp(-5_000.0, 11_000.0);
    let height = EARTH_RADIUS * geometric / (EARTH_RADIUS + geometric);
    let ratio = 1.0 - LAPSE * height / 288.15;
    AbsolutePressure::new(STANDARD_ATMOSPHERE.si() * ratio.powf(EXPONENT))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sea_level_is_the_standard_atmosphere() {
        assert_eq!(atmosphere_at(Length::new(0.0)), STANDARD_ATMOSPHERE);
    }

    #[test]
    fn altitudes_have_their_published_pressure() {
        // 17.554, 12.228, 10.108, 8.297, 5.461 and 3.468 psi: US Standard Atmosphere at
        // engineeringtoolbox.com/standard-atmosphere-d_604.html (its column is headed geopotential,
        // but the figures are those of the geometric altitude).
        for (feet, published) in [
            (-5_000.0, 17.554),
            (5_000.0, 12.228),
            (10_000.0, 10.108),
            (15_000.0, 8.297),
            (25_000.0, 5.461),
            (35_000.0, 3.468),
        ] {
            let psi = atmosphere_at(Length::new(feet * 0.3048)).si() / 6_894.757;
            assert!((psi - published).abs() < 0.000_6, "{feet} ft: {psi}");
        }
    }

    #[test]
    fn an_altitude_beyond_the_formula_is_held_to_its_range() {
        let highest = atmosphere_at(Length::new(11_000.0));
        assert_eq!(atmosphere_at(Length::new(50_000.0)), highest);
    }
}
