//! Vapour pressure of water and ice, for what a vacuum can and cannot be blamed on.

/// Triple point of water: temperature in K, pressure in Pa (IAPWS R14-08).
const TRIPLE_K: f64 = 273.16;
const TRIPLE_PA: f64 = 611.657;
/// Critical point of water: temperature in K, pressure in Pa (IAPWS SR1-86(1992)).
const CRITICAL_K: f64 = 647.096;
const CRITICAL_PA: f64 = 22.064e6;
/// Factors and exponents of the sublimation pressure, IAPWS R14-08(2011), equation 6.
const ICE: [(f64, f64); 3] = [
    (-21.214_400_6, 0.003_333_333_33),
    (27.320_381_9, 1.206_666_67),
    (-6.105_981_30, 1.703_333_33),
];
/// Factors and exponents of the saturation pressure, IAPWS SR1-86(1992), equation 1 (Wagner and Pruss 1993).
const LIQUID: [(f64, f64); 6] = [
    (-7.859_517_83, 1.0),
    (1.844_082_59, 1.5),
    (-11.786_649_7, 3.0),
    (22.680_741_1, 3.5),
    (-15.961_871_9, 4.0),
    (1.801_225_02, 7.5),
];

/// Gives the vapour pressure of water in Pa at a temperature in K, over ice below the triple point, else over liquid.
///
/// Range: -80 to +100 °C, `None` outside. Sources: IAPWS R14-08(2011) for ice, IAPWS SR1-86(1992) for liquid.
pub fn water_vapour_pressure_pa(temperature_k: f64) -> Option<f64> {
    let sum = |terms: &[(f64, f64)], of: f64| {
        terms
            .iter()
            .map(|(factor, power)| factor * of.powf(*power))
            .sum::<f64>()
    };
    if !(193.15..=373.15).contains(&temperature_k) {
        None
    } else if temperature_k < TRIPLE_K {
        let theta = temperature_k / TRIPLE_K;
        Some(TRIPLE_PA * (sum(&ICE, theta) / theta).exp())
    } else {
        let tau = 1.0 - temperature_k / CRITICAL_K;
        Some(CRITICAL_PA * (CRITICAL_K / temperature_k * sum(&LIQUID, tau)).exp())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ice_and_liquid_meet_at_the_triple_point() {
        let ice = water_vapour_pressure_pa(TRIPLE_K - 1e-9).unwrap();
        let liquid = water_vapour_pressure_pa(TRIPLE_K).unwrap();
        assert!((ice / liquid - 1.0).abs() < 1e-5, "{ice} {liquid}");
        assert_eq!(water_vapour_pressure_pa(193.0), None);
        assert_eq!(water_vapour_pressure_pa(374.0), None);
    }
}
