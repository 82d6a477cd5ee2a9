//! Whatever number stands before whatever unit: converted to any other unit and read again, it is the same.

use proptest::prelude::*;
use rimebook::quantity::{Kind, STANDARD_ATMOSPHERE, convert, read};

/// One text of each kind that a unit can have, without its number.
const UNITS: [&str; 22] = [
    "bar g", "psia", "bar", "micron", "°C", "K", "kg", "L", "mm", "m²", "min", "g/yr", "Pa m³/s",
    "g/m³", "ppm", "% LFL", "N m", "A", "kW", "%", "inHg vac", "Δ°F",
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_quantity_converted_and_read_again_is_the_same(number in 0.01f64..2000.0, decimals in 0usize..4) {
        let number = format!("{number:.decimals$}");
        for unit in UNITS {
            let text = format!("{number} {unit}");
            let Ok(conversions) = convert(&text, None, Some(STANDARD_ATMOSPHERE)) else { continue };
            for conversion in conversions {
                for printed in &conversion.to {
                    let printed = printed.to_string();
                    let again = Kind::ALL.into_iter().filter_map(|kind| read(kind, &printed).ok());
                    let again: Vec<_> = again.collect();
                    prop_assert!(!again.is_empty(), "{text} to {printed} does not read");
                    let original = Kind::ALL.into_iter().filter_map(|kind| read(kind, &text).ok());
                    let original = original.into_iter().find(|reading| reading.flavour == conversion.flavour);
                    let original = original.expect("it was converted");
                    // Gauge and absolute lie an atmosphere apart.
                    let close = again.iter().any(|again| {
                        let shift = [0.0, STANDARD_ATMOSPHERE.si(), -STANDARD_ATMOSPHERE.si()];
                        let allowed = 0.501 * again.step.max(original.step * 3.163);
                        shift.iter().any(|shift| (again.si + shift - original.si).abs() <= allowed)
                    });
                    prop_assert!(close, "{text} to {printed}");
                }
            }
        }
    }
}
