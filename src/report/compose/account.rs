//! The refrigerant account by circuit and by cylinder, and the history of points and charges.

use crate::quantity::{Flavour, UnitSystem, print_as};
use crate::report::compose::points;
use crate::report::compose::scene::Scene;
use crate::report::data::{Block, Column, ColumnKind, Entry, Part, Row, Table};
use crate::report::printed::{self, capital};
use crate::vocabulary::Word;
use crate::vocabulary::book_file::GasOrigin;
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::working::account::Entry as Line;

fn columns(heads: &[(&str, ColumnKind)]) -> Vec<Column> {
    heads
        .iter()
        .map(|(head, kind)| Column {
            head: (*head).to_owned(),
            kind: *kind,
        })
        .collect()
}

fn mass_unit(scene: &Scene<'_>) -> &'static str {
    match scene.site.units {
        UnitSystem::Metric => "kg",
        UnitSystem::Us => "lb",
    }
}

/// A mass in the site's unit with two decimals, signed.
fn signed(scene: &Scene<'_>, kg: f64) -> String {
    print_as(Flavour::Mass, kg.abs(), mass_unit(scene), 2).map_or_else(String::new, |printed| {
        if kg < 0.0 {
            format!("−{}", printed.number)
        } else {
            printed.number
        }
    })
}

/// The account of the visit.
pub fn account(scene: &Scene<'_>) -> Part {
    let mut part = Part::default();
    let unit = mass_unit(scene);
    for circuit in &scene.figures.circuits {
        let lines: Vec<&Line> = circuit.account.entries_of(scene.number).collect();
        let name = scene.system.circuit_name(circuit.circuit);
        let of = if scene.system.several_circuits() {
            format!(", {name}")
        } else {
            String::new()
        };
        if let Some(net) = &circuit.net {
            part.facts.push(Entry {
                key: format!("Net{of}"),
                value: scene.value(&net.value),
                working: Some(net.id.clone()),
            });
        }
        if let Some(plain) = &circuit.plain {
            part.facts.push(Entry {
                key: format!("Loss per year{of}"),
                value: format!("{} of the full charge", scene.value(&plain.value)),
                working: Some(plain.id.clone()),
            });
        }
        if lines.is_empty() {
            continue;
        }
        let mut rows: Vec<Row> = lines.iter().map(|line| row(scene, line)).collect();
        let retrofit = circuit.account.is_retrofit(scene.number);
        if !retrofit {
            let net: f64 = lines.iter().map(|line| line.signed_kg()).sum();
            rows.push(Row {
                cells: vec![
                    String::new(),
                    "net".to_owned(),
                    String::new(),
                    String::new(),
                    signed(scene, net),
                ],
                total: true,
            });
        }
        part.tables.push(Table {
            title: if scene.system.several_circuits() {
                capital(&name)
            } else {
                "Movements".to_owned()
            },
            columns: columns(&[
                ("When", ColumnKind::Short),
                ("Movement", ColumnKind::Text),
                ("Why", ColumnKind::Short),
                ("Cylinder", ColumnKind::Name),
                (&format!("Mass, {unit}"), ColumnKind::Number),
            ]),
            rows,
            note:
                "In is positive, out is negative. What was recovered and charged back is no loss."
                    .to_owned(),
        });
    }
    part.tables.extend(cylinders(scene));
    if part.tables.is_empty() && part.facts.is_empty() {
        part.lead.push(Block::plain("No refrigerant was moved."));
    }
    part
}

fn row(scene: &Scene<'_>, line: &Line) -> Row {
    Row {
        cells: vec![
            printed::moment(line.at.value.civil),
            line.kind.word().to_owned(),
            line.why
                .map_or_else(String::new, |why| why.word().to_owned()),
            line.cylinder
                .as_ref()
                .map_or_else(String::new, |id| id.0.clone()),
            signed(scene, line.signed_kg()),
        ],
        total: false,
    }
}

/// Cylinders used: scale readings and where their gas comes from.
fn cylinders(scene: &Scene<'_>) -> Option<Table> {
    let unit = mass_unit(scene);
    let number =
        |mass: Option<crate::text::Noted<crate::quantity::Measured<crate::quantity::Mass>>>| {
            mass.and_then(|mass| print_as(Flavour::Mass, mass.value.value.si(), unit, 2))
                .map_or_else(String::new, |printed| printed.number)
        };
    let rows: Vec<Row> = scene
        .visit
        .movements
        .iter()
        .filter_map(|movement| {
            let id = &movement.note.cylinder.as_ref()?.value;
            let cylinder = scene.book.cylinders.get(id);
            let origin = cylinder.and_then(|c| c.origin);
            Some(Row {
                cells: vec![
                    id.0.clone(),
                    cylinder
                        .and_then(|c| c.refrigerant.as_ref())
                        .and_then(|r| crate::refrigerant::find(&r.value.0))
                        .map_or_else(String::new, |r| r.designation.to_owned()),
                    match movement.kind {
                        MovementKind::Recovered => movement
                            .note
                            .destination
                            .map_or_else(|| "recovered".to_owned(), |d| d.value.word().to_owned()),
                        _ => origin.map_or_else(String::new, |o| match o.value {
                            GasOrigin::Empty => "recovered before".to_owned(),
                            origin => origin.word().to_owned(),
                        }),
                    },
                    number(movement.note.before),
                    number(movement.note.after),
                ],
                total: false,
            })
        })
        .collect();
    (!rows.is_empty()).then(|| Table {
        title: "Cylinders".to_owned(),
        columns: columns(&[
            ("Cylinder", ColumnKind::Name),
            ("Refrigerant", ColumnKind::Short),
            ("Origin or destination", ColumnKind::Text),
            (&format!("Before, {unit}"), ColumnKind::Number),
            (&format!("After, {unit}"), ColumnKind::Number),
        ]),
        rows,
        note: "Scale readings of cylinder and gas together.".to_owned(),
    })
}

/// Points over time, and every movement known of before this visit.
pub fn history(scene: &Scene<'_>) -> Part {
    let mut part = Part::default();
    part.tables.extend(points::history(scene));
    let mut rows = Vec::new();
    for circuit in &scene.figures.circuits {
        for addition in circuit
            .account
            .additions
            .iter()
            .filter(|addition| addition.visit != Some(scene.number))
        {
            rows.push((
                addition.at.value,
                Row {
                    cells: vec![
                        printed::day(addition.at.value.date()),
                        capital(&scene.system.circuit_name(circuit.circuit)),
                        if addition.visit.is_none() {
                            "earlier record".to_owned()
                        } else {
                            "this book".to_owned()
                        },
                        signed(scene, addition.kg),
                    ],
                    total: false,
                },
            ));
        }
    }
    rows.sort_by_key(|(at, _)| *at);
    if !rows.is_empty() {
        let since = scene
            .figures
            .circuits
            .iter()
            .filter_map(|circuit| circuit.account.complete_since)
            .min();
        part.tables.push(Table {
            title: "Refrigerant added before, net of each job".to_owned(),
            columns: columns(&[
                ("When", ColumnKind::Short),
                ("Circuit", ColumnKind::Short),
                ("From", ColumnKind::Text),
                (&format!("Added, {}", mass_unit(scene)), ColumnKind::Number),
            ]),
            rows: rows.into_iter().map(|(_, row)| row).collect(),
            note: since.map_or_else(String::new, |since| {
                format!("Complete only since {}.", printed::day(since.date()))
            }),
        });
    }
    part
}
