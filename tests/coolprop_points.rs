//! The tables against random points that CoolProp 8.0.0 gave (`tests/outside/generate_refrigerants.py`, `tests/points/`).
//!
//! `tests/outside/check_refrigerants.py` does the same against CoolProp itself, at points that change with the day; those for
//! nitrogen and water it hands over in a folder named by the environment variable `RIMEBOOK_POINTS`.

use std::path::Path;

use rimebook::refrigerant::{find, nitrogen_z, water_vapour_pressure_pa};

fn numbers<const N: usize>(cells: &[&str]) -> [f64; N] {
    let numbers: Vec<f64> = cells
        .iter()
        .map(|cell| cell.parse().expect("a number"))
        .collect();
    numbers.try_into().expect("as many cells as asked for")
}

/// Gives the checked-in points, or those of the folder that the outside check names.
fn points(name: &str, checked_in: &str) -> String {
    match std::env::var_os("RIMEBOOK_POINTS") {
        Some(folder) => std::fs::read_to_string(Path::new(&folder).join(name)).unwrap_or_default(),
        None => checked_in.to_owned(),
    }
}

fn lines(text: &str) -> impl Iterator<Item = Vec<&str>> {
    let data = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    data.map(|line| line.split(';').collect())
}

#[test]
fn nitrogen_is_within_two_millionths_at_every_point_of_the_gases() {
    let mut count = 0;
    for cells in lines(&points("nitrogen.csv", include_str!("points/nitrogen.csv"))) {
        let [pressure, temperature, z] = numbers(&cells);
        let found = nitrogen_z(pressure, temperature).unwrap();
        assert!(
            (found - z).abs() < 2e-6,
            "{pressure} Pa, {temperature} K: {found}, CoolProp {z}"
        );
        count += 1;
    }
    assert!(count >= 400, "{count} points");
}

#[test]
fn water_is_within_a_ten_thousandth_at_every_point_of_the_gases() {
    let mut count = 0;
    for cells in lines(&points("water.csv", include_str!("points/water.csv"))) {
        let [temperature, pressure] = numbers(&cells);
        let found = water_vapour_pressure_pa(temperature).unwrap();
        assert!(
            (found / pressure - 1.0).abs() < 1e-4,
            "{temperature} K: {found}, CoolProp {pressure}"
        );
        count += 1;
    }
    assert!(count >= 100, "{count} points");
}

#[test]
fn saturation_is_within_two_ten_thousandths_and_a_hundredth_of_a_kelvin_at_every_point() {
    let mut count = 0;
    let mut viscosities = 0;
    for cells in lines(&points(
        "saturation.csv",
        include_str!("points/saturation.csv"),
    )) {
        let refrigerant = find(cells[0]).unwrap();
        let [temperature, bubble, dew, liquid, vapour] = numbers(&cells[1..6]);
        let what = format!("{} at {temperature} K", cells[0]);
        for (name, found, expected, share) in [
            (
                "bubble pressure",
                refrigerant.bubble_pressure_pa(temperature),
                bubble,
                2e-4,
            ),
            (
                "dew pressure",
                refrigerant.dew_pressure_pa(temperature),
                dew,
                2e-4,
            ),
            (
                "liquid density",
                refrigerant.liquid_density_kg_m3(temperature),
                liquid,
                5e-4,
            ),
            (
                "vapour density",
                refrigerant.vapour_density_kg_m3(temperature),
                vapour,
                5e-4,
            ),
        ] {
            let found = found.unwrap();
            assert!(
                (found / expected - 1.0).abs() < share,
                "{what}, {name}: {found}, CoolProp {expected}"
            );
        }
        for (name, found) in [
            (
                "bubble temperature",
                refrigerant.bubble_temperature_k(bubble),
            ),
            ("dew temperature", refrigerant.dew_temperature_k(dew)),
        ] {
            let Some(found) = found else { continue };
            assert!(
                (found - temperature).abs() < 0.01,
                "{what}, {name}: {found}"
            );
        }
        if let (Some(found), Ok(micro)) = (
            refrigerant.vapour_viscosity_pa_s(temperature),
            cells[6].parse::<f64>(),
        ) {
            assert!(
                (found / micro * 1e6 - 1.0).abs() < 5e-4,
                "{what}, vapour viscosity: {found}, CoolProp {micro} µPa s"
            );
            viscosities += 1;
        }
        count += 1;
    }
    assert!(count > 1500, "{count} points");
    assert!(viscosities > 300, "{viscosities} viscosities");
}
