//! The charts of a history, each with the table of its numbers.

use crate::quantity::{Flavour, UnitSystem, print_as, print_si};
use crate::report::chart::ticks;
use crate::report::compose::history::{CircuitHistory, Dated, HistoryData};
use crate::report::compose::scene::Scene;
use crate::report::data::{Axis, Bar, BarFill, Chart, Column, ColumnKind, Limit, Row, Table, Tick};
use crate::report::history_data::ChartWithTable;
use crate::report::printed;
use crate::ruleset::trigger_percent;

/// A column of a table.
pub(super) fn column(head: &str, kind: ColumnKind) -> Column {
    Column {
        head: head.to_owned(),
        kind,
    }
}

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
fn bars(groups: &[Group], limits: &[(f64, String)]) -> Chart {
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
                .map(|(value, label)| tick(value / top, label))
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
    let mut chart = bars(&groups, limits);
    "Visit".clone_into(&mut chart.across.title);
    if dated.len() > 8 {
        "The last eight; all stand in the table.".clone_into(&mut chart.caption);
    }
    chart
}

/// A title, and which circuit it is of where there are several.
fn titled(title: &str, circuit: &CircuitHistory, several: bool) -> String {
    if several {
        format!("{title}, {}", lower(&circuit.name))
    } else {
        title.to_owned()
    }
}

fn mass_unit(scene: &Scene<'_>) -> &'static str {
    match scene.site.units {
        UnitSystem::Metric => "kg",
        UnitSystem::Us => "lb",
    }
}

/// Refrigerant charged and recovered by year; none where nothing is known of any.
pub(super) fn refrigerant(
    scene: &Scene<'_>,
    circuit: &CircuitHistory,
    several: bool,
) -> Option<ChartWithTable> {
    let unit = mass_unit(scene);
    let mass = |kg: f64| in_unit(Flavour::Mass, kg, unit, 2);
    if circuit.years.is_empty() {
        return None;
    }
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
            (year.year.to_string(), bars)
        })
        .collect();
    let mut chart = bars(&groups, &[]);
    chart.up.title = format!("Refrigerant, {unit}");
    "Year".clone_into(&mut chart.across.title);
    "Filled: charged. Striped: charged by others or in earlier records. White: recovered. Dashed: recovered by others.".clone_into(&mut chart.caption);
    "Bars of the refrigerant charged and recovered in each year; the numbers stand in the table below."
        .clone_into(&mut chart.alt);
    let head = |name: &str| column(&format!("{name}, {unit}"), ColumnKind::Number);
    let printed_mass = |kg: f64| mass(kg).map_or_else(String::new, |(_, printed)| printed);
    Some(ChartWithTable {
        title: titled("Refrigerant by year", circuit, several),
        chart,
        table: Table {
            title: String::new(),
            columns: vec![
                column("Year", ColumnKind::Short),
                head("Charged"),
                head("Charged by others"),
                head("Recovered"),
                head("Recovered by others"),
                head("Leaked"),
            ],
            rows: circuit
                .years
                .iter()
                .map(|year| {
                    let mut name = year.year.to_string();
                    if !year.complete {
                        name.push('*');
                    }
                    row(vec![
                        name,
                        printed_mass(year.charged_kg),
                        printed_mass(year.charged_by_others_kg),
                        printed_mass(year.recovered_kg),
                        printed_mass(year.recovered_by_others_kg),
                        printed_mass(year.leaked_kg),
                    ])
                })
                .collect(),
            note: "Leaked is what jobs had to add because it was missing, net of what they recovered. * not every movement of the year is known.".to_owned(),
        },
    })
}

/// CO₂ equivalent lost by year; none where nothing was lost.
pub(super) fn carbon_dioxide(circuit: &CircuitHistory, several: bool) -> Option<ChartWithTable> {
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
        .map(|(_, tonnes)| (*tonnes, crate::working::rounded(*tonnes, 2)))
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
    let mut chart = bars(&groups, &[]);
    "CO₂ equivalent lost, t".clone_into(&mut chart.up.title);
    "Year".clone_into(&mut chart.across.title);
    "Bars of the CO₂ equivalent lost in each year; the numbers stand in the table below."
        .clone_into(&mut chart.alt);
    Some(ChartWithTable {
        title: titled("CO₂ equivalent lost by year", circuit, several),
        chart,
        table: Table {
            title: String::new(),
            columns: vec![
                column("Year", ColumnKind::Short),
                column("Lost, t CO₂e", ColumnKind::Number),
            ],
            rows: years
                .iter()
                .zip(values)
                .map(|(year, (_, printed))| row(vec![year.to_string(), printed]))
                .collect(),
            note: "Counted in the year in which it was found missing.".to_owned(),
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
    let limits: Vec<(f64, String)> = trigger
        .map(|percent| (percent, format!("trigger, {percent}\u{a0}%")))
        .into_iter()
        .collect();
    let mut chart = by_day(
        dated,
        |figure| (figure.value, figure.printed.clone()),
        &limits,
    );
    "% of the full charge".clone_into(&mut chart.up.title);
    chart.alt = match trigger {
        Some(percent) => format!(
            "Bars of the rate at each addition, with the trigger of {percent} % as a line; the numbers stand in the table below."
        ),
        None => {
            "Bars of the rate at each addition; the numbers stand in the table below.".to_owned()
        }
    };
    let mut columns = vec![
        column("Visit", ColumnKind::Short),
        column("Rate", ColumnKind::Short),
    ];
    if trigger.is_some() {
        columns.push(column("Against the trigger", ColumnKind::Text));
    }
    let rows = dated.iter().map(|figure| {
        let mut cells = vec![day_of(figure), figure.printed.clone()];
        cells.extend(trigger.map(|percent| {
            if figure.value > percent {
                format!("over {percent}\u{a0}%")
            } else {
                format!("not over {percent}\u{a0}%")
            }
        }));
        row(cells)
    });
    ChartWithTable {
        title: title.to_owned(),
        chart,
        table: Table {
            title: String::new(),
            columns,
            rows: rows.collect(),
            note: match (by_law, trigger) {
                (true, None) => "No category is noted, so that no trigger can be named.".to_owned(),
                (true, Some(_)) => String::new(),
                (false, _) => "What each addition had to make up, per year of the time since the one before; no rule sets a trigger for this figure.".to_owned(),
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
    let mut chart = by_day(&all, |figure| value(figure).unwrap_or_default(), &[]);
    chart.up.title = format!("Largest leak left possible, {unit}");
    "Bars of the largest leak that each pressure test left possible; the numbers stand in the table below."
        .clone_into(&mut chart.alt);
    let rows = all.iter().map(|figure| {
        row(vec![
            day_of(figure),
            printed::capital(&figure.about),
            figure.printed.clone(),
        ])
    });
    Some(ChartWithTable {
        title: "Pressure tests: no leak larger than".to_owned(),
        chart,
        table: Table {
            title: String::new(),
            columns: vec![
                column("Visit", ColumnKind::Short),
                column("What was tested", ColumnKind::Text),
                column("Not larger than", ColumnKind::Short),
            ],
            rows: rows.collect(),
            note: "Tests of a day stand from left to right in the order of this table.".to_owned(),
        },
    })
}

fn day_of(figure: &Dated) -> String {
    figure
        .day
        .parse()
        .map_or_else(|_| figure.day.clone(), printed::day)
}

fn lower(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_lowercase().chain(letters).collect()
    })
}
