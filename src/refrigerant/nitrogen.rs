//! Compressibility of nitrogen, for the standing pressure test.

use std::sync::LazyLock;

use super::curve::{four_around, interpolate};

/// A table of Z: one row of pressures, then one row per temperature.
#[derive(Default)]
struct Table {
    pressures_pa: Vec<f64>,
    temperatures_k: Vec<f64>,
    rows: Vec<Vec<f64>>,
}

static TABLE: LazyLock<Table> = LazyLock::new(|| read().unwrap_or_default());

/// Gives Z = p / (density · specific gas constant · T) of nitrogen at an absolute pressure in Pa and a temperature in K.
///
/// Range: 0.5 to 60 bar abs and -40 to +70 °C, `None` outside. Source: CoolProp 8.0.0 (equation of state of Span et al.
/// 2000); the interpolation differs from it by less than 2e-6.
pub fn nitrogen_z(pressure_pa: f64, temperature_k: f64) -> Option<f64> {
    let Table {
        pressures_pa,
        temperatures_k,
        rows,
    } = &*TABLE;
    let start = four_around(temperatures_k, temperature_k)?;
    let near = rows.get(start..start + 4)?.iter();
    let along = near.map(|row| interpolate(pressures_pa, row, pressure_pa));
    let values: Vec<f64> = along.collect::<Option<_>>()?;
    interpolate(
        temperatures_k.get(start..start + 4)?,
        &values,
        temperature_k,
    )
}

fn read() -> Option<Table> {
    let mut lines = include_str!("data/nitrogen_z.csv")
        .lines()
        .filter(|line| !line.starts_with('#'));
    let numbers = |line: &str| {
        line.split(';')
            .skip(1)
            .map(|cell| cell.parse().ok())
            .collect::<Option<Vec<f64>>>()
    };
    let mut table = Table {
        pressures_pa: numbers(lines.next()?)?,
        ..Table::default()
    };
    for line in lines {
        table
            .temperatures_k
            .push(line.split(';').next()?.parse().ok()?);
        table.rows.push(numbers(line)?);
    }
    Some(table)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_reads_and_is_full() {
        let table = read().unwrap();
        assert!(table.temperatures_k.is_sorted() && table.pressures_pa.is_sorted());
        assert!(
            table
                .rows
                .iter()
                .all(|row| row.len() == table.pressures_pa.len())
        );
    }

    #[test]
    fn nothing_is_given_outside_the_range() {
        let (low, high) = (233.15, 343.15);
        for (pressure, temperature) in [(0.5e5, low), (60e5, low), (0.5e5, high), (60e5, high)] {
            assert!(nitrogen_z(pressure, temperature).is_some());
        }
        for (pressure, temperature) in [
            (0.49e5, 293.15),
            (60.01e5, 293.15),
            (10e5, low - 0.01),
            (10e5, high + 0.01),
            (f64::NAN, 293.15),
        ] {
            assert_eq!(nitrogen_z(pressure, temperature), None);
        }
    }
}
