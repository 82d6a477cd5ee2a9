//! The refrigerant account by circuit and by cylinder, and the history of points and charges.

use crate::quantity::{Flavour, UnitSystem, print_as};
use crate::report::compose::points;
use crate::report::compose::scene::Scene;
use crate::report::data::{Block, Column, ColumnKind, Entry, Part, Row, Table};
use crate::report::visit_figures::CircuitFigures;
use crate::text::{Message, Text};
use crate::vocabulary::Word;
use crate::vocabulary::book_file::GasOrigin;
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::working::Figure;
use crate::working::account::Entry as Line;
use crate::working::leak_rate::Missing;

/// Columns by the messages of their heads; a mass is in the site's unit.
pub(super) fn columns(scene: &Scene<'_>, heads: &[(&'static str, ColumnKind)]) -> Vec<Column> {
    heads
        .iter()
        .map(|(head, kind)| Column {
            head: scene.say(&Message::of(head).with("unit", mass_unit(scene))),
            kind: *kind,
        })
        .collect()
}

/// A sentence or label about a circuit; a system of one circuit needs no name for it.
fn of_circuit(scene: &Scene<'_>, id: &'static str, circuit: usize) -> String {
    scene.say(&Message::of(id).with("circuit", scene.system.circuit_choice(circuit)))
}

pub(super) fn mass_unit(scene: &Scene<'_>) -> &'static str {
    match scene.site.units {
        UnitSystem::Metric => "kg",
        UnitSystem::Us => "lb",
    }
}

/// A mass in the site's unit with two decimals, signed.
fn signed(scene: &Scene<'_>, kg: f64) -> String {
    print_as(Flavour::Mass, kg.abs(), mass_unit(scene), 2).map_or_else(String::new, |printed| {
        let sign = if kg < 0.0 { "−" } else { "" };
        scene.figure(format!("{sign}{}", printed.number))
    })
}

/// The account of the visit.
pub fn account(scene: &Scene<'_>) -> Part {
    let mut part = Part::default();
    for circuit in &scene.figures.circuits {
        let lines: Vec<&Line> = circuit.account.entries_of(scene.number).collect();
        if let Some(net) = &circuit.net {
            part.facts.push(Entry {
                key: of_circuit(scene, "account-net", circuit.circuit),
                value: scene.value(&net.value),
                working: Some(net.id.clone()),
            });
        }
        part.facts.extend(taken_out(scene, circuit));
        let missing = circuit.missing.as_ref();
        let least = missing.map_or("no", Missing::least);
        if let Some(whole) = &circuit.missing_in_all {
            let figure = Message::of("account-at-least").with("least", least);
            part.facts.push(Entry {
                key: of_circuit(scene, "account-missing", circuit.circuit),
                value: scene.say(&figure.with("figure", scene.value(&whole.value))),
                working: Some(whole.id.clone()),
            });
        }
        if let Some(plain) = &circuit.plain {
            part.facts.push(Entry {
                key: of_circuit(scene, "account-loss-per-year", circuit.circuit),
                value: scene.say(
                    &Message::of("account-of-full-charge")
                        .with("share", scene.value(&plain.value))
                        .with("least", least)
                        .with(
                            "since",
                            missing.map_or(Text::from("none"), Missing::doubtful_since),
                        ),
                ),
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
                    scene.word("account-sum"),
                    String::new(),
                    String::new(),
                    signed(scene, net),
                ],
                total: true,
            });
        }
        part.tables.push(Table {
            title: of_circuit(scene, "account-movements", circuit.circuit),
            columns: columns(
                scene,
                &[
                    ("head-when", ColumnKind::Short),
                    ("head-movement", ColumnKind::Text),
                    ("head-why", ColumnKind::Short),
                    ("head-cylinder", ColumnKind::Name),
                    ("head-mass", ColumnKind::Number),
                ],
            ),
            rows,
            note: scene.word("account-signs"),
        });
    }
    part.tables.extend(cylinders(scene));
    if part.tables.is_empty() && part.facts.is_empty() {
        part.lead
            .push(Block::plain(scene.word("account-nothing-moved")));
    }
    part
}

fn row(scene: &Scene<'_>, line: &Line) -> Row {
    Row {
        cells: vec![
            scene.words().moment(line.at.value.civil),
            movement(scene, line),
            line.why
                .map_or_else(String::new, |why| scene.words().phrase(why.word())),
            line.cylinder
                .as_ref()
                .map_or_else(String::new, |id| id.0.clone()),
            signed(scene, line.signed_kg()),
        ],
        total: false,
    }
}

/// What was taken out to change the refrigerant, how much less than the full charge that was, and its
/// CO2 equivalent.
fn taken_out(scene: &Scene<'_>, circuit: &CircuitFigures) -> Vec<Entry> {
    let Some((old, out)) = &circuit.taken_out else {
        return Vec::new();
    };
    let entry = |id, figure: &Figure| Entry {
        key: scene.say(
            &Message::of(id)
                .with("refrigerant", old.designation)
                .with("circuit", scene.system.circuit_choice(circuit.circuit)),
        ),
        value: scene.value(&figure.value),
        working: Some(figure.id.clone()),
    };
    let short = out
        .short
        .iter()
        .map(|figure| entry("account-less-than-full", figure));
    let co2e = circuit.taken_out_co2e.iter();
    std::iter::once(entry("account-recovered", &out.recovered))
        .chain(short)
        .chain(co2e.map(|figure| entry("account-recovered-co2e", figure)))
        .collect()
}

/// Which way refrigerant moved, and how far it was charged: the next loss is counted from there.
fn movement(scene: &Scene<'_>, line: &Line) -> String {
    let kind = scene.words().phrase(line.kind.word());
    let Some(to) = line
        .charged_to
        .filter(|_| line.kind == MovementKind::Charged)
    else {
        return kind;
    };
    let message = Message::of("account-charged-to")
        .with("movement", kind)
        .with("full", if to.is_full() { "yes" } else { "no" })
        .phrase("to", to.word());
    scene.say(&message)
}

/// Cylinders used: scale readings and where their gas comes from.
fn cylinders(scene: &Scene<'_>) -> Option<Table> {
    let unit = mass_unit(scene);
    let number =
        |mass: Option<crate::text::Noted<crate::quantity::Measured<crate::quantity::Mass>>>| {
            mass.and_then(|mass| print_as(Flavour::Mass, mass.value.value.si(), unit, 2))
                .map_or_else(String::new, |printed| scene.figure(printed.number))
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
                        MovementKind::Recovered => {
                            let word = movement.note.destination.map(|d| d.value.word());
                            scene
                                .words()
                                .phrase(word.unwrap_or(MovementKind::Recovered.word()))
                        }
                        _ => origin.map_or_else(String::new, |o| match o.value {
                            GasOrigin::Empty => scene.word("account-recovered-before"),
                            origin => scene.words().phrase(origin.word()),
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
        title: scene.word("account-cylinders"),
        columns: columns(
            scene,
            &[
                ("head-cylinder", ColumnKind::Name),
                ("head-refrigerant", ColumnKind::Short),
                ("head-origin-or-destination", ColumnKind::Text),
                ("head-before", ColumnKind::Number),
                ("head-after", ColumnKind::Number),
            ],
        ),
        rows,
        note: scene.word("account-gross"),
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
                        scene.words().day(addition.at.value.date()),
                        of_circuit(scene, "account-circuit", circuit.circuit),
                        scene.word(if addition.visit.is_none() {
                            "account-earlier-record"
                        } else {
                            "account-this-book"
                        }),
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
            title: scene.word("account-added-before"),
            columns: columns(
                scene,
                &[
                    ("head-when", ColumnKind::Short),
                    ("head-circuit", ColumnKind::Short),
                    ("head-from-record", ColumnKind::Text),
                    ("head-added", ColumnKind::Number),
                ],
            ),
            rows: rows.into_iter().map(|(_, row)| row).collect(),
            note: std::iter::once(scene.word("account-added-note"))
                .chain(since.map(|since| {
                    scene.say(&Message::of("account-complete-since").with("day", since.date()))
                }))
                .collect::<Vec<_>>()
                .join(" "),
        });
    }
    part
}
