//! Leak sizes, bubbles, viscosities and the change of gas against published values, each with its source.
//!
//! "CoolProp 8.0.0" beside a value means computed once, apart from the program's tables. "Derived" means worked out by hand
//! from the formula beside it; such a value is never to be cited as published.

use rimebook::refrigerant::{Gas, find, gas};
use rimebook::working::bubbles::throughput_of_bubbles;
use rimebook::working::leak_size::{YEAR_S, mass_rate, throughput};
use rimebook::working::service_equivalent::{Bracket, Flow, in_service};

const ROOM_K: f64 = 293.15;
const FREEZING_K: f64 = 273.15;
const ATMOSPHERE: f64 = 101_325.0;
/// mol/s of 1 Pa m³/s at 0 °C.
const MOLES: f64 = 1.0 / (8.314_462_618 * FREEZING_K);

fn near(found: f64, expected: f64, share: f64, what: &str) {
    assert!(
        (found / expected - 1.0).abs() <= share,
        "{what}: found {found}, expected {expected}"
    );
}

fn held(name: &str) -> Gas {
    gas(name).expect("the gas is held")
}

fn grams_per_year(throughput: f64, name: &str) -> f64 {
    mass_rate(throughput, held(name).molar_mass_kg_per_kmol, ROOM_K) * 1e3 * YEAR_S
}

#[test]
fn viscosities_at_room_temperature_are_those_of_coolprop() {
    // CoolProp 8.0.0, µPa s at 20 °C and 101 325 Pa, to the digits given.
    for (name, micro) in [
        ("nitrogen", 17.57),
        ("air", 18.21),
        ("helium", 19.62),
        ("hydrogen", 8.80),
        ("R-134a", 11.62),
        ("R-32", 13.14),
        ("R-290", 8.01),
        ("R-744", 14.68),
        ("R-717", 9.91),
        ("R-22", 13.55),
        ("R-1234yf", 12.18),
        ("R-410A", 12.65),
        ("R-404A", 12.02),
        ("R-407C", 12.03),
    ] {
        let found = held(name).viscosity_pa_s.unwrap().value * 1e6;
        assert!((found - micro).abs() < 0.0051, "{name}: {found}");
    }
}

fn from_helium(name: &str) -> Bracket {
    let flow = |gas| Flow {
        gas,
        from_pa: 10.0 * ATMOSPHERE,
        to_pa: ATMOSPHERE,
    };
    in_service(1.0, &flow(held("helium")), &flow(held(name))).unwrap()
}

#[test]
fn another_gas_leaks_as_its_viscosity_or_its_molar_mass_says() {
    // Derived: ratios of CoolProp's viscosities (20 °C, 1 atm), and roots of the molar masses' ratios.
    for (name, viscous, molecular) in [
        ("nitrogen", 1.116, 0.378),
        ("air", 1.078, 0.372),
        ("hydrogen", 2.230, 1.409),
        ("argon", 0.879, 0.317),
    ] {
        let found = from_helium(name);
        near(found.viscous_pa_m3_s.unwrap(), viscous, 6e-4, name);
        near(found.molecular_pa_m3_s, molecular, 1.6e-3, name);
    }
}

#[test]
fn more_pressure_lets_out_more_by_its_square_or_by_its_difference() {
    // Derived: helium at 10 against 1 atm, raised to 20: (400 - 1) / (100 - 1), and (20 - 1) / (10 - 1).
    let flow = |atmospheres: f64| Flow {
        gas: held("helium"),
        from_pa: atmospheres * ATMOSPHERE,
        to_pa: ATMOSPHERE,
    };
    let found = in_service(1e-3, &flow(10.0), &flow(20.0)).unwrap();
    near(
        found.viscous_pa_m3_s.unwrap(),
        4.0303e-3,
        1e-4,
        "viscous flow",
    );
    near(found.molecular_pa_m3_s, 2.1111e-3, 1e-4, "molecular flow");
    let inwards = Flow {
        from_pa: 0.5 * ATMOSPHERE,
        ..flow(1.0)
    };
    assert_eq!(in_service(1e-3, &flow(10.0), &inwards), None);
}

#[test]
fn the_limit_of_a_test_means_this_much_in_service() {
    // Computed once apart from the program with CoolProp 8.0.0: refrigerant, bar abs in service, g/yr of nitrogen 1e-3 Pa m³/s
    // at 40 bar g (viscous), of air 1e-5 Pa m³/s into a vacuum (molecular), and of the same (viscous).
    for (name, bar, hold, rise_molecular, rise_viscous) in [
        ("R-410A", 24.2, 454.0, 136.0, 7690.0),
        ("R-32", 24.8, 329.0, 118.0, 5580.0),
        ("R-134a", 10.2, 122.0, 64.0, 2070.0),
        ("R-290", 13.7, 139.0, 58.0, 2360.0),
    ] {
        let service = Flow {
            gas: held(name),
            from_pa: bar * 1e5,
            to_pa: ATMOSPHERE,
        };
        let nitrogen = Flow {
            gas: held("nitrogen"),
            from_pa: 40e5 + ATMOSPHERE,
            to_pa: ATMOSPHERE,
        };
        let found = in_service(1e-3, &nitrogen, &service).unwrap();
        let viscous = grams_per_year(found.viscous_pa_m3_s.unwrap(), name);
        near(viscous, hold, 5e-3, name);
        let air = Flow {
            gas: held("air"),
            from_pa: ATMOSPHERE,
            to_pa: 0.0,
        };
        let found = in_service(1e-5, &air, &service).unwrap();
        let molecular = grams_per_year(found.molecular_pa_m3_s, name);
        near(molecular, rise_molecular, 8e-3, name);
        let viscous = grams_per_year(found.viscous_pa_m3_s.unwrap(), name);
        near(viscous, rise_viscous, 8e-3, name);
    }
}

#[test]
fn a_gas_without_a_viscosity_has_no_viscous_end() {
    let flow = |name| Flow {
        gas: held(name),
        from_pa: 2.0 * ATMOSPHERE,
        to_pa: ATMOSPHERE,
    };
    let found = in_service(1e-3, &flow("nitrogen"), &flow("R-1233zd(E)")).unwrap();
    assert_eq!(found.viscous_pa_m3_s, None);
    assert!(found.molecular_pa_m3_s > 0.0);
}

#[test]
fn bubbles_are_as_large_as_printed() {
    // "1 mm³/s" is 1e-3 atm cm³/s: CERN Accelerator School 2017 (scribd.com document 409459119).
    let cubic_millimetre = (6.0 / std::f64::consts::PI).cbrt() * 1e-3;
    let found = throughput_of_bubbles(1.0, cubic_millimetre, ATMOSPHERE);
    near(found, 1e-3 * 0.101_325, 1e-9, "1 mm³/s");
    // Derived: 1 mm wide, one a second and one in ten seconds; a cubic millimetre in ten seconds.
    near(
        throughput_of_bubbles(1.0, 1e-3, ATMOSPHERE),
        5.305e-5,
        1e-3,
        "1/s",
    );
    near(
        throughput_of_bubbles(0.1, 1e-3, ATMOSPHERE),
        5.305e-6,
        1e-3,
        "1 in 10 s",
    );
    near(
        throughput_of_bubbles(0.1, cubic_millimetre, ATMOSPHERE),
        1.013e-5,
        1e-3,
        "1 mm³ in 10 s",
    );
}

#[test]
fn printed_limits_of_methods_agree_in_their_units() {
    // Bubble emission, 4.5e-10 mol/s or 1e-5 std cm³/s: ASTM E515-11, scope (standards.iteh.ai).
    near(1e-5 * 0.101_325 * MOLES, 4.5e-10, 0.01, "ASTM E515");
    // Thermal conductivity, 1e-5 Pa m³/s or 1e-4 std cm³/s: an ASTM practice, scope (ndls.org.cn).
    near(
        1e-4 * 0.101_325,
        1e-5,
        0.02,
        "thermal-conductivity detector",
    );
    // Halide torch, 8 to 10 oz/yr of, "about 1e-4 Pa m³/s": ASNT, NDT Handbook vol. 1, 3rd ed. An order of
    // magnitude only.
    for (name, ounces) in [("R-12", 8.0), ("R-12", 10.0), ("R-22", 8.0), ("R-22", 10.0)] {
        let molar = find(name).unwrap().molar_mass_kg_per_kmol();
        let found = throughput(ounces * 28.3495e-3 / YEAR_S, molar, ROOM_K);
        assert!((0.5e-4..3e-4).contains(&found), "{name}: {found}");
    }
}

#[test]
fn leak_sizes_of_some_gases_come_out() {
    // Derived, at 0 °C but for the last: 10 g of R-134a (M 102) in ten years; air, 1 oz/yr, in atm cm³/s; air, 1e-2 mbar L/s in
    // g/yr, at 0 and at 20 °C.
    let ten_years = throughput(1e-3 / YEAR_S, 102.0, FREEZING_K);
    near(ten_years, 7.06e-7, 1e-3, "10 g in ten years");
    let air = held("air").molar_mass_kg_per_kmol;
    let ounce = throughput(28.3495e-3 / YEAR_S, air, FREEZING_K) / 0.101_325;
    near(ounce, 6.955e-4, 1e-3, "1 oz/yr of air");
    let grams = |kelvin| mass_rate(1e-3, air, kelvin) * 1e3 * YEAR_S;
    near(grams(FREEZING_K), 402.0, 2e-3, "at 0 °C");
    near(grams(ROOM_K), 375.0, 2e-3, "at 20 °C");
    // Derived: 1 cm³ of gas at 1 atm in 12 days, 3 cm³ in a year, 1 cm³ in 300 years.
    for (volume, seconds, expected) in [
        (1e-6, 12.0 * 86_400.0, 9.8e-8),
        (3e-6, YEAR_S, 9.6e-9),
        (1e-6, 300.0 * YEAR_S, 1.07e-11),
    ] {
        near(
            volume * ATMOSPHERE / seconds,
            expected,
            5e-3,
            "a volume in a time",
        );
    }
}
