//! The charts of a history, each with the table of its numbers.

use crate::history::Year;
use crate::quantity::{Flavour, print_as, print_si};
use crate::report::chart::ticks;
use crate::report::compose::account::{columns, mass_unit};
use crate::report::compose::history::{CircuitHistory, Dated, HistoryData};
use crate::report::compose::scene::Scene;
use crate::report::data::{Axis, Bar, BarFill, Chart, ColumnKind, Limit, Row, Table, Tick};
use crate::report::history_data::ChartWithTable;
use crate::ruleset::trigger_percent;
use crate::text::{Message, Text, capital};

/// A row of a table.
pub(super) fn row(cells: Vec<String>) -> Row {
    Row {
        cells,
        total: false,
    }
}

/// A number in a unit, for drawing, and as it is printed.
fn in_unit(flavour: Flavour, si: f64, unit: &str, decimals: u8) -> Option<(f64, String)> {
    let printed = print_as(flavour, si, unit, decimals)?.number;
    let value = print_as(flavour, si, unit, 9)?
        .number
        .replace('−', "-")
        .parse()
        .ok()?;
    Some((value, printed))
}

/// Bars under one label: height, number above it, how it is drawn.
type Group = (String, Vec<(f64, String, BarFill)>);

/// Groups of bars, each under its label, as a chart without words; limits are drawn across it.
fn bars(scene: &Scene<'_>, groups: &[Group], limits: &[(f64, String)]) -> Chart {
    let values = groups.iter().flat_map(|(_, bars)| bars).map(|bar| bar.0);
    let most = values
        .chain(limits.iter().map(|limit| limit.0))
        .fold(0.0, f64::max);
    let (_, top, up) = ticks(0.0, if most > 0.0 { most } else { 1.0 });
    let slot = 1.0 / groups.len().max(1) as f64;
    // Few bars are not drawn as wide as the sheet.
    let widest = groups
        .iter()
        .map(|(_, bars)| bars.len())
        .max()
        .unwrap_or(1)
        .max(1) as f64;
    let width = (0.8 * slot / widest).min(0.09);
    let mut drawn = Vec::new();
    for (index, (_, bars)) in groups.iter().enumerate() {
        let middle = slot * (index as f64 + 0.5);
        for (place, (value, label, fill)) in bars.iter().enumerate() {
            let left = middle + width * (place as f64 - 0.5 * bars.len() as f64);
            drawn.push(Bar {
                across: [left + 0.04 * width, left + 0.96 * width],
                up: (value / top).max(0.0),
                fill: *fill,
                label: label.clone(),
            });
        }
    }
    let tick = |at: f64, label: String| Tick { at, label };
    Chart {
        across: Axis {
            title: String::new(),
            ticks: (0..)
                .zip(groups)
                .map(|(index, (label, _))| tick(slot * (f64::from(index) + 0.5), label.clone()))
                .collect(),
        },
        up: Axis {
            title: String::new(),
            ticks: up
                .into_iter()
                .map(|(value, label)| tick(value / top, scene.figure(label)))
                .collect(),
        },
        limits: limits
            .iter()
            .map(|(value, label)| Limit {
                at: value / top,
                label: label.clone(),
            })
            .collect(),
        bars: drawn,
        ..Chart::default()
    }
}

/// The last of a list, as many as a chart has room for.
fn shown<T>(list: &[T], most: usize) -> &[T] {
    list.get(list.len().saturating_sub(most)..).unwrap_or(list)
}

/// Figures as bars, those of a day side by side under it.
fn by_day(
    scene: &Scene<'_>,
    dated: &[&Dated],
    value: impl Fn(&Dated) -> (f64, String),
    limits: &[(f64, String)],
) -> Chart {
    let mut groups: Vec<Group> = Vec::new();
    for figure in shown(dated, 8) {
        let (value, label) = value(figure);
        let bar = (value, label, BarFill::Full);
        match groups.last_mut() {
            Some((day, bars)) if *day == figure.day => bars.push(bar),
            _ => groups.push((figure.day.clone(), vec![bar])),
        }
    }
    let mut chart = bars(scene, &groups, limits);
    chart.across.title = scene.word("head-visit");
    if dated.len() > 8 {
        chart.caption = scene.word("chart-last-eight");
    }
    chart
}

/// A title, and which circuit it is of where there are several.
fn titled(scene: &Scene<'_>, id: &'static str, choice: &Text) -> String {
    scene.say(&Message::of(id).with("circuit", choice.clone()))
}

/// Refrigerant charged and recovered by year; none where nothing is known of any.
pub(super) fn refrigerant(
    scene: &Scene<'_>,
    circuit: &CircuitHistory,
    choice: &Text,
) -> Option<ChartWithTable> {
    let unit = mass_unit(scene);
    let mass = |kg: f64| {
        let (value, printed) = in_unit(Flavour::Mass, kg, unit, 2)?;
        Some((value, scene.figure(printed)))
    };
    if circuit.years.is_empty() {
        return None;
    }
    let first = circuit.years.first().map(|year| year.refrigerant);
    let several = circuit
        .years
        .iter()
        .any(|year| Some(year.refrigerant) != first);
    let named = |year: &Year| {
        if several {
            format!("{}\u{a0}{}", year.year, year.refrigerant)
        } else {
            year.year.to_string()
        }
    };
    let groups: Vec<_> = shown(&circuit.years, 8)
        .iter()
        .map(|year| {
            let of_year = [
                (year.charged_kg, BarFill::Full),
                (year.charged_by_others_kg, BarFill::Striped),
                (year.recovered_kg, BarFill::Outline),
                (year.recovered_by_others_kg, BarFill::Dashed),
            ];
            let bars = of_year
                .into_iter()
                .filter(|(kg, _)| *kg > 0.0)
                .filter_map(|(kg, fill)| mass(kg).map(|(value, label)| (value, label, fill)))
                .collect();
            (named(year), bars)
        })
        .collect();
    let mut chart = bars(scene, &groups, &[]);
    chart.up.title = scene.say(&Message::of("refrigerant-in").with("unit", unit));
    chart.across.title = scene.word("head-year");
    chart.caption = scene.word("refrigerant-caption");
    chart.alt = scene.word("refrigerant-alt");
    let printed_mass = |kg: f64| mass(kg).map_or_else(String::new, |(_, printed)| printed);
    // Where others may have added some, or some was missing at a change, no addition is no knowledge.
    let leaked = |year: &Year| {
        let known = year.complete && year.missing_at_retrofit_kg.is_none();
        if known || year.leaked_kg > 0.0 {
            printed_mass(year.leaked_kg)
        } else {
            scene.word("not-known")
        }
    };
    let missing = circuit.years.iter().filter_map(|year| {
        let missing = year.missing_at_retrofit_kg.filter(|kg| *kg > 0.005)?;
        let in_unit = |kg: f64| format!("{}\u{a0}{unit}", printed_mass(kg));
        let message = Message::of("refrigerant-missing-at-change")
            .with("year", year.year.to_string())
            .with("missing", in_unit(missing))
            .with("full", in_unit(year.retrofit_charge_kg));
        Some(scene.say(&message))
    });
    let notes: Vec<String> = std::iter::once(scene.word("refrigerant-note"))
        .chain(missing)
        .collect();
    Some(ChartWithTable {
        title: titled(scene, "refrigerant-by-year", choice),
        chart,
        table: Table {
            title: String::new(),
            columns: columns(
                scene,
                &[
                    ("head-year", ColumnKind::Short),
                    ("head-charged", ColumnKind::Number),
                    ("head-charged-by-others", ColumnKind::Number),
                    ("head-recovered", ColumnKind::Number),
                    ("head-recovered-by-others", ColumnKind::Number),
                    ("head-leaked", ColumnKind::Number),
                ],
            ),
            rows: circuit
                .years
                .iter()
                .map(|year| {
                    let mut name = named(year);
                    if !year.complete {
                        name.push('*');
                    }
                    row(vec![
                        name,
                        printed_mass(year.charged_kg),
                        printed_mass(year.charged_by_others_kg),
                        printed_mass(year.recovered_kg),
                        printed_mass(year.recovered_by_others_kg),
                        leaked(year),
                    ])
                })
                .collect(),
            note: notes.join(" "),
        },
    })
}

/// CO₂ equivalent lost by year; none where nothing was lost.
pub(super) fn carbon_dioxide(
    scene: &Scene<'_>,
    circuit: &CircuitHistory,
    choice: &Text,
) -> Option<ChartWithTable> {
    let lost: Vec<(i16, f64)> = circuit
        .co2e_lost_kg
        .iter()
        .map(|(year, kg)| (*year, kg / 1000.0))
        .collect();
    if lost.is_empty() {
        return None;
    }
    let years: Vec<i16> = lost.iter().map(|(year, _)| *year).collect();
    let values = lost
        .iter()
        .map(|(_, tonnes)| (*tonnes, scene.figure(crate::working::rounded(*tonnes, 2))))
        .collect::<Vec<_>>();
    let groups: Vec<_> = shown(&years, 8)
        .iter()
        .zip(shown(&values, 8))
        .map(|(year, (value, label))| {
            (
                year.to_string(),
                vec![(*value, label.clone(), BarFill::Full)],
            )
        })
        .collect();
    let mut chart = bars(scene, &groups, &[]);
    chart.up.title = scene.word("co2e-in");
    chart.across.title = scene.word("head-year");
    chart.alt = scene.word("co2e-alt");
    Some(ChartWithTable {
        title: titled(scene, "co2e-by-year", choice),
        chart,
        table: Table {
            title: String::new(),
            columns: columns(
                scene,
                &[
                    ("head-year", ColumnKind::Short),
                    ("head-lost-co2e", ColumnKind::Number),
                ],
            ),
            rows: years
                .iter()
                .zip(values)
                .map(|(year, (_, printed))| row(vec![year.to_string(), printed]))
                .collect(),
            note: scene.word("co2e-note"),
        },
    })
}

/// Rates at each visit that had one, a chart for each circuit and rule, which share a title.
pub(super) fn rates(scene: &Scene<'_>, data: &HistoryData) -> Vec<ChartWithTable> {
    let mut titles: Vec<&str> = Vec::new();
    for figure in &data.rates {
        if !titles.contains(&figure.title.as_str()) {
            titles.push(&figure.title);
        }
    }
    let of = |title: &str| -> Vec<&Dated> {
        data.rates
            .iter()
            .filter(|figure| figure.title == title)
            .collect()
    };
    titles
        .into_iter()
        .map(|title| rate(scene, title, &of(title)))
        .collect()
}

fn rate(scene: &Scene<'_>, title: &str, dated: &[&Dated]) -> ChartWithTable {
    let system = scene.system.note.as_ref();
    let category = system.and_then(|note| note.category);
    // Only a rate that a law asks for has a trigger.
    let by_law = dated.iter().any(|figure| figure.id.contains("leak-rate/"));
    let trigger = category
        .filter(|_| by_law)
        .map(|category| trigger_percent(category.value));
    let against =
        |id: &'static str, percent: f64| scene.say(&Message::of(id).figure("trigger", percent));
    let limits: Vec<(f64, String)> = trigger
        .map(|percent| (percent, against("rate-trigger", percent)))
        .into_iter()
        .collect();
    let mut chart = by_day(
        scene,
        dated,
        |figure| (figure.value, figure.printed.clone()),
        &limits,
    );
    chart.up.title = scene.word("rate-in");
    let named = trigger.map_or_else(|| "none".to_owned(), |percent| percent.to_string());
    chart.alt = scene.say(&Message::of("rate-alt").with("trigger", Text::Figure(named)));
    let mut heads = vec![
        ("head-visit", ColumnKind::Short),
        ("head-rate", ColumnKind::Short),
    ];
    heads.extend(trigger.map(|_| ("head-against-trigger", ColumnKind::Text)));
    let rows = dated.iter().map(|figure| {
        let mut cells = vec![day_of(scene, figure), figure.printed.clone()];
        cells.extend(trigger.map(|percent| {
            if figure.value > percent {
                against("rate-over", percent)
            } else {
                against("rate-not-over", percent)
            }
        }));
        row(cells)
    });
    ChartWithTable {
        title: title.to_owned(),
        chart,
        table: Table {
            title: String::new(),
            columns: columns(scene, &heads),
            rows: rows.collect(),
            note: match (by_law, trigger) {
                (true, None) => scene.word("rate-without-category"),
                (true, Some(_)) => String::new(),
                (false, _) => scene.word("rate-without-rule"),
            },
        },
    }
}

/// What each pressure test left possible; none where no test has a limit.
pub(super) fn test_limits(scene: &Scene<'_>, data: &HistoryData) -> Option<ChartWithTable> {
    let all: Vec<&Dated> = data.test_limits.iter().collect();
    let most = all.iter().map(|figure| figure.value).reduce(f64::max)?;
    let unit = print_si(Flavour::Throughput, most, None, scene.site.units).unit;
    let value = |figure: &Dated| {
        let (value, _) = in_unit(Flavour::Throughput, figure.value, unit, 9)?;
        let number = figure.printed.split([' ', '\u{a0}']).next();
        Some((value, number.unwrap_or_default().to_owned()))
    };
    let mut chart = by_day(scene, &all, |figure| value(figure).unwrap_or_default(), &[]);
    let shown_unit = scene.figure(unit);
    chart.up.title = scene.say(&Message::of("test-limits-in").with("unit", shown_unit));
    chart.alt = scene.word("test-limits-alt");
    let together = all.windows(2).any(|pair| pair[0].day == pair[1].day);
    let rows = all.iter().map(|figure| {
        row(vec![
            day_of(scene, figure),
            capital(&figure.about),
            figure.printed.clone(),
        ])
    });
    Some(ChartWithTable {
        title: scene.word("test-limits"),
        chart,
        table: Table {
            title: String::new(),
            columns: columns(
                scene,
                &[
                    ("head-visit", ColumnKind::Short),
                    ("head-tested", ColumnKind::Text),
                    ("head-not-larger", ColumnKind::Short),
                ],
            ),
            rows: rows.collect(),
            note: if together {
                scene.word("test-limits-note")
            } else {
                String::new()
            },
        },
    })
}

fn day_of(scene: &Scene<'_>, figure: &Dated) -> String {
    figure
        .day
        .parse()
        .map_or_else(|_| figure.day.clone(), |day| scene.words().day(day))
}
