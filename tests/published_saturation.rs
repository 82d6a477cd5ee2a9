//! Saturation, water vapour and nitrogen against published values; each table names its source.
//!
//! "CoolProp 8.0.0" beside a value means computed once, apart from the program's tables: a check of the tables, not of physics.

use rimebook::refrigerant::{Refrigerant, find, nitrogen_z, water_vapour_pressure_pa};

fn held(designation: &str) -> &'static Refrigerant {
    find(designation).expect("the refrigerant is held")
}

fn kelvin(celsius: f64) -> f64 {
    celsius + 273.15
}

fn assert_near(found: Option<f64>, expected: f64, share: f64, what: &str) {
    let found = found.expect("a value inside the range");
    assert!(
        (found / expected - 1.0).abs() <= share,
        "{what}: {found}, published {expected}"
    );
}

#[test]
fn published_vapour_pressures_come_out() {
    for (designation, points, share, _source) in [
        (
            "R-134a",
            &[(0.0, 292.80e3)][..],
            2e-4,
            "Mechanical Engineers' Handbook, vol. 4, table 14",
        ),
        (
            "R-22",
            &[(-40.0, 1.0522e5), (-20.0, 2.4534e5), (0.0, 4.9811e5)],
            4e-4,
            "Moran and Shapiro, table A-7",
        ),
        (
            "R-32",
            &[
                (-40.0, 1.777e5),
                (-20.0, 4.060e5),
                (0.0, 8.139e5),
                (20.0, 14.759e5),
                (40.0, 24.781e5),
            ],
            2e-3,
            "allchemi.com, appendix 9",
        ),
        (
            "R-744",
            &[(-20.0, 1.9696e6), (0.0, 3.4851e6)],
            1e-4,
            "people.ohio.edu, CO2_TempSat1",
        ),
        (
            "R-717",
            &[(-40.0, 71.71e3), (-20.0, 190.11e3)],
            1.2e-3,
            "IIR table (scribd 551370461)",
        ),
    ] {
        for (celsius, pascal) in points {
            let found = held(designation).bubble_pressure_pa(kelvin(*celsius));
            assert_near(
                found,
                *pascal,
                share,
                &format!("{designation} at {celsius} °C"),
            );
        }
    }
}

#[test]
fn published_saturation_temperatures_of_r_134a_come_out() {
    // Mechanical Engineers' Handbook, vol. 4, table 14 (an older equation of state: 0.2 K).
    let table = [
        (1e5, -26.52),
        (2e5, -10.18),
        (4e5, 8.86),
        (6e5, 21.54),
        (8e5, 31.35),
        (10e5, 39.41),
        (12e5, 46.36),
    ];
    for (pascal, celsius) in table {
        let found = held("R-134a").dew_temperature_k(pascal).unwrap() - 273.15;
        assert!((found - celsius).abs() < 0.2, "{pascal} Pa: {found}");
    }
}

#[test]
fn vapour_pressures_agree_with_coolprop_at_round_temperatures() {
    // CoolProp 8.0.0, bar abs at -40, -20, 0, 20 and 40 °C, to the digits given; blends: bubble, then dew.
    for (designation, bubble, dew) in [
        ("R-134a", [0.5121, 1.3273, 2.928, 5.7171, 10.166], None),
        ("R-22", [1.0523, 2.4531, 4.9799, 9.1002, 15.336], None),
        ("R-32", [1.7741, 4.0575, 8.131, 14.746, 24.783], None),
        ("R-290", [1.1112, 2.4452, 4.7446, 8.3646, 13.694], None),
        ("R-717", [0.7163, 1.9003, 4.2925, 8.5704, 15.545], None),
        (
            "R-410A",
            [1.755, 4.007, 8.007, 14.475, 24.256],
            Some([1.749, 3.993, 7.981, 14.429, 24.186]),
        ),
        (
            "R-404A",
            [1.353, 3.071, 6.102, 10.972, 18.295],
            Some([1.310, 3.002, 6.003, 10.844, 18.150]),
        ),
        (
            "R-407C",
            [1.203, 2.799, 5.679, 10.376, 17.489],
            Some([0.857, 2.147, 4.607, 8.803, 15.412]),
        ),
    ] {
        let refrigerant = held(designation);
        for (index, celsius) in [-40.0, -20.0, 0.0, 20.0, 40.0].into_iter().enumerate() {
            let what = format!("{designation} at {celsius} °C");
            let temperature = kelvin(celsius);
            assert_near(
                refrigerant.bubble_pressure_pa(temperature),
                bubble[index] * 1e5,
                6e-4,
                &what,
            );
            let dew = dew.unwrap_or(bubble)[index];
            assert_near(
                refrigerant.dew_pressure_pa(temperature),
                dew * 1e5,
                6e-4,
                &what,
            );
        }
    }
}

#[test]
fn glides_at_one_atmosphere_come_out() {
    // CoolProp 8.0.0, K.
    for (designation, glide, within) in [
        ("R-410A", 0.08, 0.01),
        ("R-404A", 0.75, 0.02),
        ("R-407C", 7.0, 0.1),
        ("R-454B", 1.21, 0.02),
        ("R-448A", 6.5, 0.1),
        ("R-449A", 6.05, 0.02),
    ] {
        let refrigerant = held(designation);
        let dew = refrigerant.dew_temperature_k(101_325.0).unwrap();
        let found = dew - refrigerant.bubble_temperature_k(101_325.0).unwrap();
        assert!((found - glide).abs() < within, "{designation}: {found}");
    }
}

#[test]
fn the_handbook_s_boiling_points_come_out() {
    // ASHRAE Handbook Fundamentals 2021 (SI), chapter 29, tables 1, 2 and 5. For some blends the mixture model and the
    // Handbook part by more than the half degree that most keep; sister blends of the same constituents agree.
    let looser = [
        ("R-411B", 1.2),
        ("R-417A", 1.2),
        ("R-422B", 1.0),
        ("R-422C", 0.9),
        ("R-430A", 0.9),
        ("R-431A", 1.5),
        ("R-443A", 1.1),
        ("R-444B", 0.8),
        ("R-451A", 1.2),
        ("R-451B", 1.3),
        ("R-502", 0.9),
        ("R-504", 1.5),
    ];
    let mut count = 0;
    for line in include_str!("points/handbook_boiling.csv")
        .lines()
        .filter(|line| line.starts_with("R-"))
    {
        let cells: Vec<&str> = line.split(';').collect();
        let refrigerant = held(cells[0]);
        let within = looser
            .iter()
            .find(|(designation, _)| *designation == cells[0])
            .map_or(0.5, |(_, within)| *within);
        let pairs = [
            (refrigerant.bubble_temperature_k(101_325.0), cells[1]),
            (refrigerant.dew_temperature_k(101_325.0), cells[2]),
            (
                refrigerant.normal_boiling_point_k.map(|point| point.value),
                cells[1],
            ),
            (
                refrigerant.normal_dew_point_k.map(|point| point.value),
                cells[2],
            ),
        ];
        for (found, printed) in pairs {
            // Table 1 prints whole degrees.
            let within = if printed.contains('.') {
                within
            } else {
                within + 0.5
            };
            let (Some(found), Ok(printed)) = (found, printed.parse::<f64>()) else {
                continue;
            };
            let found = found - 273.15;
            assert!(
                (found - printed).abs() < within,
                "{}: {found:.2}, printed {printed}",
                cells[0]
            );
            count += 1;
        }
    }
    assert!(count > 400, "{count} figures");
}

#[test]
fn the_handbook_s_critical_points_come_out() {
    // ASHRAE Handbook Fundamentals 2021 (SI), chapter 29, table 5: °C and kPa.
    for (designation, celsius, kilopascal) in [
        ("R-744", 30.978, 7377.3),
        ("R-32", 78.105, 5782.0),
        ("R-125", 66.023, 3617.7),
        ("R-22", 96.145, 4990.0),
        ("R-717", 132.25, 11333.0),
        ("R-134a", 101.06, 4059.3),
        ("R-290", 96.74, 4251.2),
        ("R-600a", 134.66, 3629.0),
        ("R-1234yf", 94.7, 3382.2),
        ("R-1234ze(E)", 109.37, 3636.3),
        ("R-410A", 71.358, 4902.6),
        ("R-404A", 72.046, 3728.9),
        ("R-407C", 86.034, 4629.8),
        ("R-507A", 70.617, 3705.0),
        ("R-123", 183.68, 3661.8),
    ] {
        let refrigerant = held(designation);
        let found = refrigerant.critical_temperature_k.unwrap().value - 273.15;
        assert!((found - celsius).abs() < 0.3, "{designation}: {found}");
        let pressure = refrigerant
            .critical_pressure_pa
            .map(|pressure| pressure.value);
        assert_near(pressure, kilopascal * 1e3, 4e-3, designation);
    }
}

#[test]
fn water_vapour_pressure_agrees_with_the_tables() {
    // CRC Handbook 1992-93, kPa at 0 to 30 °C (lcm91.tripod.com/documents/vp_H2O.htm).
    let crc = [
        (0.0, 0.61129),
        (5.0, 0.8726),
        (10.0, 1.2281),
        (15.0, 1.7056),
        (20.0, 2.3388),
        (25.0, 3.1690),
        (30.0, 4.2455),
    ];
    for (celsius, kilopascal) in crc {
        assert_near(
            water_vapour_pressure_pa(kelvin(celsius)),
            kilopascal * 1e3,
            6e-4,
            &format!("water at {celsius} °C"),
        );
    }
    // CoolProp 8.0.0 (IAPWS-95), Pa.
    let iapws = [
        (5.0, 872.6),
        (10.0, 1228.2),
        (15.0, 1705.8),
        (20.0, 2339.3),
        (25.0, 3169.9),
        (30.0, 4247.0),
    ];
    for (celsius, pascal) in iapws {
        assert_near(
            water_vapour_pressure_pa(kelvin(celsius)),
            pascal,
            1e-4,
            &format!("water at {celsius} °C"),
        );
    }
    // Triple point: Wexler 1976, J. Res. NBS 80A (doi 10.6028/jres.080A.071).
    assert_near(
        water_vapour_pressure_pa(273.16),
        611.657,
        1e-5,
        "triple point",
    );
    // IAPWS R14-08(2011): 8.94735 Pa at 230 K, the release's check value (from memory).
    assert_near(
        water_vapour_pressure_pa(230.0),
        8.94735,
        1e-5,
        "ice at 230 K",
    );
    // Micron over ice at -5, -10, -20 and -30 °C, worked out from the same release.
    for (celsius, micron) in [
        (-5.0, 3013.0),
        (-10.0, 1949.0),
        (-20.0, 774.0),
        (-30.0, 285.0),
    ] {
        let pascal = micron * 101_325.0 / 760_000.0;
        assert_near(
            water_vapour_pressure_pa(kelvin(celsius)),
            pascal,
            5e-4,
            &format!("ice at {celsius} °C"),
        );
    }
}

#[test]
fn nitrogen_agrees_with_coolprop_at_round_states() {
    // CoolProp 8.0.0, Z at 0, 10, 20, 30 and 40 °C, five decimals.
    for (bar, factors) in [
        (10.0, [0.99574, 0.99685, 0.99782, 0.99865, 0.99937]),
        (25.8, [0.99014, 0.99294, 0.99534, 0.99742, 0.99922]),
        (40.0, [0.98638, 0.99057, 0.99418, 0.99728, 0.99997]),
        (45.0, [0.98534, 0.99001, 0.99401, 0.99746, 1.00044]),
    ] {
        for (celsius, expected) in [0.0, 10.0, 20.0, 30.0, 40.0].into_iter().zip(factors) {
            let found = nitrogen_z(bar * 1e5, kelvin(celsius)).unwrap();
            assert!(
                (found - expected).abs() < 6e-6,
                "{bar} bar, {celsius} °C: {found}"
            );
        }
    }
}
