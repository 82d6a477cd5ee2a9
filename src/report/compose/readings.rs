//! Operating readings as one table.

use crate::quantity::{Measured, Quantity, print};
use crate::report::compose::scene::Scene;
use crate::report::data::{Column, ColumnKind, Part, Row, Table};
use crate::report::printed;
use crate::text::Noted;

/// Readings of the running plant: one column per reading, one row per quantity that was read.
pub fn readings(scene: &Scene<'_>) -> Part {
    let readings = &scene.visit.operating;
    if readings.is_empty() {
        return Part::default();
    }
    let several = scene.system.several_circuits();
    let mut columns = vec![Column {
        head: "Reading".to_owned(),
        kind: ColumnKind::Text,
    }];
    for reading in readings {
        let at = printed::moment(reading.at.value.civil);
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
    let mut add = |name: &str, cells: Vec<Option<String>>| {
        if cells.iter().any(Option::is_some) {
            let cells = std::iter::once(name.to_owned())
                .chain(cells.into_iter().map(Option::unwrap_or_default))
                .collect();
            rows.push(Row {
                cells,
                total: false,
            });
        }
    };
    add("Suction pressure", all(scene, |note| note.suction_pressure));
    add(
        "Suction temperature",
        all(scene, |note| note.suction_temperature),
    );
    add(
        "Discharge pressure",
        all(scene, |note| note.discharge_pressure),
    );
    add(
        "Discharge temperature",
        all(scene, |note| note.discharge_temperature),
    );
    add("Liquid pressure", all(scene, |note| note.liquid_pressure));
    add(
        "Liquid temperature",
        all(scene, |note| note.liquid_temperature),
    );
    add("Air on the condenser", all(scene, |note| note.ambient));
    add("Receiver level", all(scene, |note| note.receiver_level));
    add(
        "Compressor current",
        all(scene, |note| note.compressor_current),
    );
    let state = |get: fn(&crate::working::vapour_state::VapourState) -> Option<String>| {
        scene
            .figures
            .states
            .iter()
            .map(|state| state.as_ref().and_then(get))
            .collect::<Vec<_>>()
    };
    let units = scene.site.units;
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
                    .map(|figure| figure.value.print(units))
            })
            .collect::<Vec<_>>()
    };
    add("Superheat", printed_state(|state| &state.superheat));
    add("Subcooling", printed_state(|state| &state.subcooling));
    add(
        "Warm side",
        state(|state| {
            state
                .above_critical
                .then(|| "above the critical point: no subcooling".to_owned())
        }),
    );
    let texts = |get: fn(&crate::notes::OperatingNote) -> &Option<Noted<String>>| {
        readings
            .iter()
            .map(|reading| get(&reading.note).as_ref().map(|text| text.value.clone()))
            .collect::<Vec<_>>()
    };
    add("Sight glass", texts(|note| &note.sight_glass));
    add("Remark", texts(|note| &note.note));
    Part {
        tables: vec![Table {
            title: "Readings of the running plant".to_owned(),
            columns,
            rows,
            note: String::new(),
        }],
        ..Part::default()
    }
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
        .map(|reading| get(&reading.note).map(|m| print(&m.value, scene.site.units).to_string()))
        .collect()
}
