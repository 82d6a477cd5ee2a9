//! Reading a quantity: the text is understood wholly, or refused with the place, the reason and the
//! corrected text.

use super::character;
use super::compound::compound;
use super::find::{Lookup, lookup};
use super::kind::Kind;
use super::measured::{Measured, Quantity, Reading};
use super::mistake::{unknown, wrong_prefix};
use super::possible::{check_fraction, check_value};
use super::refusal::Refusal;
use super::resolve::{Misfit, resolve};
use super::written::split;

/// Reads a quantity of type `T`.
pub fn parse<T: Quantity>(text: &str) -> Result<Measured<T>, Refusal> {
    let reading = read(T::KIND, text)?;
    match T::from_si(reading.flavour, reading.si) {
        Some(value) => Ok(Measured {
            value,
            uncertainty: reading.uncertainty,
            step: reading.step,
            unit: reading.unit,
        }),
        None => Err(Refusal::new(
            0..text.len(),
            format!(
                "this is {}, but {} is expected here",
                reading.flavour.describe(),
                T::KIND.describe()
            ),
        )),
    }
}

/// Reads a quantity of a kind known only at run time.
///
/// Every cure of a refusal is itself a text that reads.
pub fn read(kind: Kind, text: &str) -> Result<Reading, Refusal> {
    read_once(kind, text).map_err(|refusal| {
        let mut cures = Vec::new();
        for cure in &refusal.cures {
            settle(kind, cure, 3, &mut cures);
        }
        Refusal { cures, ..refusal }
    })
}

/// Adds the cure, or, where it has a fault of its own, what cures that.
fn settle(kind: Kind, cure: &str, depth: u8, settled: &mut Vec<String>) {
    match read_once(kind, cure) {
        Ok(_) => {
            if !settled.iter().any(|known| known == cure) {
                settled.push(cure.to_owned());
            }
        }
        Err(refusal) => {
            for further in refusal.cures.iter().filter(|_| depth > 0) {
                settle(kind, further, depth.saturating_sub(1), settled);
            }
        }
    }
}

fn read_once(kind: Kind, text: &str) -> Result<Reading, Refusal> {
    character::check(text)?;
    let written = split(text)?;
    if written.typed().is_empty() {
        let end = written.figures().len() + written.number.range.start;
        return Err(Refusal::new(
            written.number.range.start..end,
            format!("`{}` has no unit", written.figures()),
        )
        .because(format!("{} is expected here", kind.describe()))
        .cured(written.with_units(kind.likely_units())));
    }
    if let Some((found, reading)) = compound(kind, &written)? {
        check_value(&written, found, &reading)?;
        return Ok(reading);
    }
    let found = match lookup(written.typed()) {
        Lookup::Known(found) => found,
        Lookup::WrongPrefix(found) => return Err(wrong_prefix(kind, &written, found)),
        Lookup::Unknown => return Err(unknown(kind, &written)),
    };
    let (found, flavour) = resolve(found, kind, written.typed()).map_err(|misfit| {
        let Misfit { what, why, units } = misfit;
        written
            .refuse(what)
            .because(why)
            .cured(written.with_units(&units))
    })?;
    let reading = Reading {
        flavour,
        si: found.to_si(written.number.value),
        uncertainty: written
            .uncertainty
            .as_ref()
            .map(|half| half.value * found.unit.factor),
        step: written.number.step * found.unit.factor,
        unit: found.symbol(flavour),
    };
    check_fraction(&written, found)?;
    check_value(&written, found, &reading)?;
    Ok(reading)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::find::symbols;
    use crate::quantity::kind::Flavour;
    use crate::quantity::print::in_unit;
    use crate::quantity::{Mass, Pressure, Temperature};

    fn si(kind: Kind, text: &str) -> f64 {
        read(kind, text)
            .unwrap_or_else(|refusal| panic!("{text}: {refusal:?}"))
            .si
    }

    fn unit(kind: Kind, text: &str) -> &'static str {
        read(kind, text)
            .unwrap_or_else(|refusal| panic!("{text}: {refusal:?}"))
            .unit
    }

    fn cures(kind: Kind, text: &str) -> Vec<String> {
        read(kind, text).unwrap_err().cures
    }

    #[test]
    fn every_kind_reads_its_own_example() {
        for kind in Kind::ALL {
            assert!(read(kind, kind.example()).is_ok(), "{kind:?}");
            for unit in kind.likely_units() {
                assert!(
                    read(kind, &format!("5 {unit}")).is_ok() || *unit == "K",
                    "{unit}"
                );
            }
        }
    }

    #[test]
    fn every_unit_comes_back_as_it_was_written() {
        for kind in Kind::ALL {
            for symbol in symbols(kind) {
                let number = if symbol == "K" && kind == Kind::Temperature {
                    "287.4"
                } else {
                    "17.4"
                };
                let text = format!("{number} {symbol}");
                let Ok(reading) = read(kind, &text) else {
                    // A vacuum of 17.4 MPa below the atmosphere, and the like.
                    assert!(symbol.ends_with("vac"), "{text}");
                    continue;
                };
                assert_eq!(
                    in_unit(&reading).to_string().replace('\u{a0}', " "),
                    text,
                    "{kind:?}"
                );
            }
        }
    }

    #[test]
    fn gauge_is_spelt_in_many_ways() {
        for text in [
            "24.8 bar g",
            "24.8 barg",
            "24.8 bar(g)",
            "24.8 bar (g)",
            "24.8bar g",
            "24.8 Bar G",
            "24.8\u{a0}bar\u{202f}g",
            "2480 kPa g",
            "2.48 MPa g",
        ] {
            assert!((si(Kind::Pressure, text) - 2.48e6).abs() < 1e-6, "{text}");
        }
        assert_eq!(unit(Kind::Pressure, "360 psi g"), "psig");
        assert_eq!(unit(Kind::Pressure, "360 PSIG"), "psig");
        assert_eq!(unit(Kind::Pressure, "375 psi abs"), "psia");
        assert_eq!(unit(Kind::Pressure, "101 kPa(a)"), "kPa a");
        assert_eq!(unit(Kind::Pressure, "18 inHg vac"), "inHg vac");
        assert!((si(Kind::Pressure, "18 in Hg vacuum") + 18.0 * 3_386.388_64).abs() < 0.01);
    }

    #[test]
    fn a_pressure_without_gauge_or_absolute_is_refused_with_both() {
        let refusal = parse::<Pressure>("24.8 bar").unwrap_err();
        assert_eq!(refusal.range, 5..8);
        assert_eq!(refusal.cures, ["24.8 bar g", "24.8 bar a"]);
        assert_eq!(cures(Kind::Pressure, "360 psi"), ["360 psig", "360 psia"]);
        assert_eq!(
            cures(Kind::Pressure, "12,5 bar"),
            ["12.5 bar g", "12.5 bar a"]
        );
        assert_eq!(
            cures(Kind::Pressure, "18 inHg"),
            ["18 inHg vac", "18 inHg a"]
        );
        assert_eq!(cures(Kind::AbsolutePressure, "1009 hPa"), ["1009 hPa a"]);
        assert_eq!(
            cures(Kind::AbsolutePressure, "1009 Mbar a"),
            ["1009 mbar a"]
        );
        assert_eq!(cures(Kind::GaugePressure, "28 bar a"), ["28 bar g"]);
    }

    #[test]
    fn a_difference_is_neither_gauge_nor_absolute() {
        assert_eq!(cures(Kind::PressureDifference, "0.4 bar g"), ["0.4 bar"]);
        assert_eq!(cures(Kind::PressureDifference, "6 psia"), ["6 psi"]);
        assert_eq!(si(Kind::PressureDifference, "0.4 bar"), 4.0e4);
    }

    #[test]
    fn a_vacuum_reading_is_absolute_and_fine() {
        for text in ["500 micron", "500 mTorr", "0.5 Torr", "500 microns"] {
            let pascals = si(Kind::VacuumPressure, text);
            assert!((pascals - 66.661_184).abs() < 1e-6, "{text}: {pascals}");
        }
        assert_eq!(si(Kind::VacuumPressure, "0.5 mbar"), 50.0);
        assert_eq!(si(Kind::VacuumPressure, "0.1 kPa a"), 100.0);
        assert_eq!(cures(Kind::VacuumPressure, "0.1 kPa"), ["0.1 kPa a"]);
        assert_eq!(cures(Kind::VacuumPressure, "0.5 mbar g"), ["0.5 mbar"]);
        let coarse = read(Kind::VacuumPressure, "29.9 inHg vac").unwrap_err();
        assert!(coarse.cures.is_empty() && coarse.why.unwrap().contains("25 400 micron"));
    }

    #[test]
    fn temperatures_and_their_differences_are_kept_apart() {
        for text in [
            "-12.5 °C",
            "−12.5°C",
            "-12.5 C",
            "-12.5 degC",
            "-12.5 ° C",
            "-12.5 ℃",
        ] {
            assert!(
                (si(Kind::Temperature, text) - 260.65).abs() < 1e-9,
                "{text}"
            );
        }
        assert!((si(Kind::Temperature, "9.5 F") - 260.65).abs() < 1e-9);
        assert_eq!(si(Kind::Temperature, "291 K"), 291.0);
        assert_eq!(cures(Kind::Temperature, "6.2 K"), ["6.2 °C", "279.35 K"]);
        assert_eq!(cures(Kind::Temperature, "6.2 Δ°F"), ["6.2 °F"]);
        assert_eq!(cures(Kind::TemperatureDifference, "6.2 °C"), ["6.2 K"]);
        assert_eq!(cures(Kind::TemperatureDifference, "11 °F"), ["11 Δ°F"]);
        for text in ["9 Δ°F", "9 F°", "9 delta °F", "5 K", "5 Δ°C"] {
            let kelvins = si(Kind::TemperatureDifference, text);
            assert!((kelvins - 5.0).abs() < 1e-12, "{text}");
        }
    }

    #[test]
    fn a_wrong_kind_says_what_was_got_and_what_is_expected() {
        let refusal = parse::<Pressure>("12 kg").unwrap_err();
        assert_eq!(refusal.range, 3..5);
        assert!(refusal.what.contains("a mass") && refusal.what.contains("a pressure (gauge"));
        let refusal = parse::<Mass>("24.8 bar").unwrap_err();
        assert!(refusal.what.contains("a pressure, but a mass is expected"));
    }

    #[test]
    fn ambiguous_units_are_decided_by_kind_or_refused() {
        assert_eq!(unit(Kind::Length, "50 micron"), "µm");
        assert_eq!(unit(Kind::VacuumPressure, "50 micron"), "micron");
        assert!((si(Kind::Mass, "4 oz") - 0.113_398_093).abs() < 1e-9);
        assert_eq!(cures(Kind::Mass, "3 tons"), ["3 t", "3 short ton"]);
        assert_eq!(cures(Kind::Power, "3 tons"), ["3 TR", "10.6 kW"]);
        assert_eq!(cures(Kind::Volume, "3 gal"), ["3 US gal", "3 imp gal"]);
        assert_eq!(cures(Kind::Concentration, "20 %"), ["20 % vol", "20 % LFL"]);
    }

    #[test]
    fn slips_get_the_nearest_unit() {
        assert_eq!(cures(Kind::Pressure, "24.8 barr g"), ["24.8 bar g"]);
        assert_eq!(cures(Kind::Mass, "12 kgg"), ["12 kg"]);
        assert_eq!(cures(Kind::VacuumPressure, "500 micorn"), ["500 micron"]);
        assert_eq!(cures(Kind::Pressure, "3 mPa g"), ["3 MPa g"]);
        assert_eq!(cures(Kind::Mass, "12 kg approx."), ["12 kg"]);
        assert_eq!(cures(Kind::Pressure, "10-12 bar g"), ["11 ± 1 bar g"]);
        assert!(cures(Kind::Mass, "12 xyzzy").is_empty());
    }

    #[test]
    fn a_missing_unit_is_refused_with_the_likely_ones() {
        let refusal = parse::<Mass>("9.45").unwrap_err();
        assert_eq!(refusal.range, 0..4);
        assert_eq!(refusal.cures, ["9.45 kg", "9.45 lb"]);
        assert_eq!(cures(Kind::Fraction, "60"), ["60 %"]);
    }

    #[test]
    fn what_cannot_be_true_is_refused() {
        assert_eq!(cures(Kind::Mass, "-3 kg"), ["3 kg"]);
        assert_eq!(
            cures(Kind::Pressure, "-0.5 bar a"),
            ["-0.5 bar g", "0.5 bar a"]
        );
        assert_eq!(
            cures(Kind::Pressure, "-18 inHg vac"),
            ["18 inHg vac", "18 inHg g"]
        );
        let cold = parse::<Temperature>("-300 °C").unwrap_err();
        assert!(cold.what.ends_with("−273.15\u{a0}°C"), "{}", cold.what);
        for (kind, text) in [
            (Kind::Pressure, "-2 bar g"),
            (Kind::Pressure, "35 inHg vac"),
            (Kind::Fraction, "160 %"),
            (Kind::Mass, "1e40 kg"),
            (Kind::Mass, "inf kg"),
        ] {
            assert!(read(kind, text).is_err(), "{text}");
        }
        assert_eq!(si(Kind::Length, "-3 m"), -3.0);
        assert_eq!(si(Kind::GaugePressure, "-0.4 bar g"), -4.0e4);
    }

    #[test]
    fn an_uncertainty_shares_the_unit() {
        for text in ["24.8 ± 0.1 bar(g)", "24.8 +/- 0.1 bar g", "24.8±0.1 barg"] {
            let reading = read(Kind::Pressure, text).unwrap();
            assert!(
                (reading.uncertainty.unwrap() - 1.0e4).abs() < 1e-9,
                "{text}"
            );
        }
        let reading = read(Kind::Temperature, "50.0 ± 0.9 °F").unwrap();
        assert!((reading.uncertainty.unwrap() - 0.5).abs() < 1e-12);
        assert!((reading.step - 0.1 / 1.8).abs() < 1e-12);
        assert_eq!(
            cures(Kind::Pressure, "24.8 bar g ± 0.1 bar"),
            ["24.8 ± 0.1 bar g"]
        );
        assert_eq!(cures(Kind::Mass, "9 kg ± 5 %"), ["9 ± 0.45 kg"]);
        assert_eq!(cures(Kind::Mass, "9 ± 0 kg"), ["9 kg"]);
        assert_eq!(cures(Kind::Mass, "9 ± 0,5 kg"), ["9 ± 0.5 kg"]);
    }

    #[test]
    fn two_units_together_make_one_quantity() {
        assert!((si(Kind::Mass, "9 lb 4 oz") - 9.25 * 0.453_592_37).abs() < 1e-12);
        assert!((si(Kind::Mass, "9lb4oz") - 9.25 * 0.453_592_37).abs() < 1e-12);
        assert_eq!(si(Kind::Duration, "2 h 10 min"), 7_800.0);
        assert_eq!(si(Kind::Duration, "1 d 6 h"), 108_000.0);
        assert!((si(Kind::Length, "-5 ft 3 in") + 63.0 * 0.0254).abs() < 1e-12);
        assert_eq!(cures(Kind::Mass, "9 lb 20 oz"), ["10.25 lb", "164 oz"]);
        assert_eq!(cures(Kind::Mass, "9.5 lb 4 oz"), ["9.75 lb", "156 oz"]);
        assert_eq!(cures(Kind::Mass, "9 lb 4,5 oz"), ["9 lb 4.5 oz"]);
        assert_eq!(read(Kind::Mass, "9 lb 4,5 oz").unwrap_err().range, 5..8);
        assert!(cures(Kind::Duration, "1 h 20 min 30 s").is_empty());
        assert!(read(Kind::Mass, "9 lb 4 in").is_err());
    }

    #[test]
    fn leak_rates_and_concentrations_keep_their_form() {
        let flavour = |kind, text| read(kind, text).unwrap().flavour;
        assert_eq!(flavour(Kind::LeakRate, "14 g/yr"), Flavour::MassRate);
        assert_eq!(
            flavour(Kind::LeakRate, "1.2e-5 mbar l/s"),
            Flavour::Throughput
        );
        assert_eq!(flavour(Kind::Concentration, "500 ppm"), Flavour::Parts);
        assert_eq!(
            flavour(Kind::Concentration, "61 g/m3"),
            Flavour::MassPerVolume
        );
        let limit = read(Kind::Concentration, "20 % LEL").unwrap();
        assert_eq!(limit.flavour, Flavour::OfLowerFlammableLimit);
        assert_eq!(limit.unit, "% LFL");
        // ASHRAE 15: 26 lb/1000 ft³ of R-410A is 416 g/m³ (rc.cfmdistributors.com).
        let room = si(Kind::Concentration, "26 lb/1000 ft3");
        assert!((room - 0.416).abs() < 0.0005);
        // 1 oz/yr is 28.3495 g/yr and 1 lb/yr 453.592 g/yr: NIST SP 811 with a year of any length.
        let grams = si(Kind::LeakRate, "1 g/yr");
        assert!((si(Kind::LeakRate, "1 oz/yr") / grams - 28.3495).abs() < 5e-5);
        assert!((si(Kind::LeakRate, "1 lb/yr") / grams - 453.592).abs() < 5e-4);
        assert!((si(Kind::LeakRate, "365 g/yr") / si(Kind::LeakRate, "1 g/d") - 1.0).abs() < 1e-12);
    }

    /// Texts made of the pieces that quantities are made of, in any order.
    fn scrambled(seed: u64) -> String {
        const PIECES: [&str; 30] = [
            "1", "24", ".", ",", " ", "±", "-", "−", "e", "/", "bar", " g", "(a)", "kg", "lb",
            "oz", "°C", "K", "%", "½", "m", "Pa", "³", "·", "”", "\u{200b}", "inHg", "vac", "tons",
            "\u{a0}",
        ];
        let mut state = seed;
        let mut text = String::new();
        for _ in 0..2 + seed % 7 {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            text.push_str(PIECES[(state >> 33) as usize % PIECES.len()]);
        }
        text
    }

    #[test]
    fn whatever_is_typed_the_range_is_sound_and_every_cure_reads() {
        for seed in 0..40_000 {
            let text = scrambled(seed);
            let kind = Kind::ALL[seed as usize % Kind::ALL.len()];
            match read(kind, &text) {
                Ok(reading) => assert!(reading.si.is_finite() && reading.step > 0.0, "{text}"),
                Err(refusal) => {
                    assert!(text.get(refusal.range).is_some(), "{text}");
                    for cure in refusal.cures {
                        assert!(read(kind, &cure).is_ok(), "{text} to {cure}");
                    }
                }
            }
        }
    }
}
