//! Operating readings as one table.

use crate::quantity::{Flavour, Measured, Quantity, UnitSystem, print, print_as};
use crate::report::compose::scene::Scene;
use crate::report::data::{Column, ColumnKind, Part, Row, Table};
use crate::text::Noted;

/// Readings of the running plant: one column per reading, one row per quantity that was read.
pub fn readings(scene: &Scene<'_>) -> Part {
    let readings = &scene.visit.operating;
    if readings.is_empty() {
        return Part::default();
    }
    let several = scene.system.several_circuits();
    let mut columns = vec![Column {
        head: scene.word("reading-head"),
        kind: ColumnKind::Text,
    }];
    for reading in readings {
        let at = scene.words().moment(reading.at.value.civil);
        columns.push(Column {
            head: match scene
                .system
                .circuits
                .get(reading.circuit)
                .and_then(|c| c.id.as_ref())
            {
                Some(id) if several => format!("{id}, {at}"),
                _ => at,
            },
            kind: ColumnKind::Short,
        });
    }
    let mut rows = Vec::new();
    let mut add = |name: &'static str, cells: Vec<Option<String>>| {
        if cells.iter().any(Option::is_some) {
            let cells = std::iter::once(scene.word(name))
                .chain(cells.into_iter().map(Option::unwrap_or_default))
                .collect();
            rows.push(Row {
                cells,
                total: false,
            });
        }
    };
    add(
        "reading-suction-pressure",
        all(scene, |note| note.suction_pressure),
    );
    add(
        "reading-suction-temperature",
        all(scene, |note| note.suction_temperature),
    );
    add(
        "reading-discharge-pressure",
        all(scene, |note| note.discharge_pressure),
    );
    add(
        "reading-discharge-temperature",
        all(scene, |note| note.discharge_temperature),
    );
    add(
        "reading-liquid-pressure",
        all(scene, |note| note.liquid_pressure),
    );
    add(
        "reading-liquid-temperature",
        all(scene, |note| note.liquid_temperature),
    );
    add("reading-air-on-condenser", all(scene, |note| note.ambient));
    add(
        "reading-receiver-level",
        all(scene, |note| note.receiver_level),
    );
    add(
        "reading-compressor-current",
        all(scene, |note| note.compressor_current),
    );
    let state = |get: &dyn Fn(&crate::working::vapour_state::VapourState) -> Option<String>| {
        scene
            .figures
            .states
            .iter()
            .map(|state| state.as_ref().and_then(get))
            .collect::<Vec<_>>()
    };
    let printed_state = |figure: fn(
        &crate::working::vapour_state::VapourState,
    ) -> &Option<crate::working::Figure>| {
        scene
            .figures
            .states
            .iter()
            .map(|state| {
                figure(state.as_ref()?)
                    .as_ref()
                    .map(|figure| difference(scene, figure.value.number()))
            })
            .collect::<Vec<_>>()
    };
    add("reading-superheat", printed_state(|state| &state.superheat));
    add(
        "reading-subcooling",
        printed_state(|state| &state.subcooling),
    );
    add(
        "reading-warm-side",
        state(&|state| {
            state
                .above_critical
                .then(|| scene.word("reading-above-critical"))
        }),
    );
    let texts = |get: fn(&crate::notes::OperatingNote) -> &Option<Noted<String>>| {
        readings
            .iter()
            .map(|reading| get(&reading.note).as_ref().map(|text| text.value.clone()))
            .collect::<Vec<_>>()
    };
    add("reading-sight-glass", texts(|note| &note.sight_glass));
    add("reading-remark", texts(|note| &note.note));
    Part {
        tables: vec![Table {
            title: scene.word("reading-title"),
            columns,
            rows,
            note: String::new(),
        }],
        ..Part::default()
    }
}

/// A temperature difference with one decimal: the accuracy of gauge and thermometer, which is not in
/// the ± of its working, allows no more.
fn difference(scene: &Scene<'_>, kelvin: f64) -> String {
    let unit = match scene.site.units {
        UnitSystem::Metric => "K",
        UnitSystem::Us => "Δ°F",
    };
    print_as(Flavour::TemperatureDifference, kelvin, unit, 1)
        .map_or_else(String::new, |printed| scene.figure(printed))
}

/// One cell per reading.
fn all<T: Quantity>(
    scene: &Scene<'_>,
    get: impl Fn(&crate::notes::OperatingNote) -> Option<Noted<Measured<T>>>,
) -> Vec<Option<String>> {
    scene
        .visit
        .operating
        .iter()
        .map(|reading| get(&reading.note).map(|m| scene.figure(print(&m.value, scene.site.units))))
        .collect()
}
