//! The history of a system composed for print: a time line of its points, charts, and their tables.

use crate::history::{LEGEND, PointHistory, marks};
use crate::quantity::{Flavour, UnitSystem, print_as, print_si};
use crate::report::chart::ticks;
use crate::report::compose::history::{CircuitHistory, Dated, HistoryData, history};
use crate::report::compose::scene::Scene;
use crate::report::compose::{contractor, document};
use crate::report::data::{
    Axis, Bar, BarFill, Chart, Column, ColumnKind, Head, Limit, Row, Table, Tick,
};
use crate::report::history_data::{
    ChartWithTable, HistoryReport, TimeLine, TimeMark, TimeRow, TimeShape,
};
use crate::report::printed;
use crate::ruleset::trigger_percent;
use jiff::civil::Date;
use std::collections::BTreeSet;

/// Composes the history up to and with the visit of a scene.
pub fn history_report(scene: &Scene<'_>, draft: bool) -> Option<HistoryReport> {
    let data = history(scene.site, scene.system, scene.number, scene.words())?;
    let lives: Vec<PointHistory> = scene
        .system
        .points
        .iter()
        .map(|(id, _)| PointHistory::of(scene.system, id, scene.number))
        .collect();
    let points = time_lines(scene, &lives);
    let mut charts = Vec::new();
    for circuit in &data.circuits {
        charts.extend(refrigerant(scene, circuit));
        charts.extend(carbon_dioxide(circuit));
    }
    charts.extend(rates(scene, &data));
    charts.extend(test_limits(scene, &data));
    let mut document = document(scene, draft);
    let as_at = printed::day(scene.visit.last_day());
    document.title = format!("History of {}, as at {as_at}", data.system).replace('\u{a0}', " ");
    Some(HistoryReport {
        document,
        contractor: contractor(scene),
        head: Head {
            kind: "History".to_owned(),
            date: format!("as at {as_at}"),
            system: data.system.clone(),
            line: vec![scene.site.name().to_owned()],
            particulars: Vec::new(),
        },
        lead: lead(&data),
        legend: legend(&points),
        points,
        point_table: point_table(&data),
        charts,
        visits: visits(&data),
        notes: vec![
            "The absence of a record is not the absence of a leak: a year without an entry is one of which nothing is noted, not one without a leak.".to_owned(),
            "A place that was looked at without a sign showed nothing at that visit, by the method of that visit; a smaller leak may have been there.".to_owned(),
        ],
        ..HistoryReport::default()
    })
}

fn lead(data: &HistoryData) -> Vec<String> {
    let mut lead = vec![format!(
        "{} of this book, and the earlier records in it.",
        printed::capital(&printed::counted(data.visits.len(), "visit", "visits"))
    )];
    for circuit in &data.circuits {
        let since = circuit.complete_since.as_ref();
        lead.push(match since.and_then(|day| day.parse().ok()) {
            Some(since) => format!(
                "{}: the record of refrigerant is complete only since {}.",
                circuit.name,
                printed::day(since)
            ),
            None => format!(
                "{}: the notes name no day from which the record of refrigerant is complete.",
                circuit.name
            ),
        });
    }
    lead
}

/// Most days beside one another on a sheet.
const MOST_DAYS: usize = 9;

fn time_lines(scene: &Scene<'_>, lives: &[PointHistory]) -> Vec<TimeLine> {
    let days: BTreeSet<Date> = lives
        .iter()
        .flat_map(|life| life.steps.iter().map(|step| step.day))
        .collect();
    let days: Vec<Date> = days.into_iter().collect();
    days.chunks(MOST_DAYS)
        .map(|days| TimeLine {
            days: days.iter().map(Date::to_string).collect(),
            rows: lives
                .iter()
                .map(|life| TimeRow {
                    place: scene.system.point_name(&life.point),
                    cells: days.iter().map(|day| marks_of(life, *day)).collect(),
                })
                .collect(),
        })
        .collect()
}

/// The marks of a point on a day.
fn marks_of(life: &PointHistory, day: Date) -> Vec<TimeMark> {
    let steps = life.steps.iter().filter(|step| step.day == day);
    steps
        .flat_map(|step| {
            let all = marks(life, step);
            let letters: Vec<String> = all.split_whitespace().map(str::to_owned).collect();
            letters
        })
        .map(|letters| TimeMark {
            shape: shape(letters.trim_end_matches('*')),
            letters,
            meaning: String::new(),
        })
        .collect()
}

fn shape(letters: &str) -> TimeShape {
    match letters {
        "L" | "L.." => TimeShape::Leak,
        "L!" => TimeShape::Again,
        "R+" => TimeShape::Proved,
        "R" | "T" => TimeShape::Repaired,
        "S" => TimeShape::Suspect,
        "-" => TimeShape::NotReached,
        "N" | "X" => TimeShape::Replaced,
        _ => TimeShape::Nothing,
    }
}

/// The marks that occur, as the legend of the time line tells them.
fn legend(lines: &[TimeLine]) -> Vec<TimeMark> {
    let cells = || {
        lines
            .iter()
            .flat_map(|line| &line.rows)
            .flat_map(|row| row.cells.iter().flatten())
    };
    LEGEND
        .iter()
        .filter(|(letters, _)| {
            cells().any(|mark| match *letters {
                "*" => mark.letters.ends_with('*'),
                _ => mark.letters.trim_end_matches('*') == *letters,
            })
        })
        .map(|(letters, meaning)| TimeMark {
            shape: shape(letters),
            letters: (*letters).to_owned(),
            meaning: meaning.split(';').next().unwrap_or_default().to_owned(),
        })
        .collect()
}

fn column(head: &str, kind: ColumnKind) -> Column {
    Column {
        head: head.to_owned(),
        kind,
    }
}

fn row(cells: Vec<String>) -> Row {
    Row {
        cells,
        total: false,
    }
}

fn point_table(data: &HistoryData) -> Table {
    let mut points: Vec<_> = data.points.iter().collect();
    points.sort_by_key(|point| usize::MAX - point.times);
    Table {
        title: String::new(),
        columns: vec![
            column("Where", ColumnKind::Text),
            column("Leaks", ColumnKind::Number),
            column("Today", ColumnKind::Text),
        ],
        rows: points
            .into_iter()
            .map(|point| {
                row(vec![
                    point.place.clone(),
                    point.times.to_string(),
                    point.state.clone(),
                ])
            })
            .collect(),
        note: "Leaks of the part that is there now; a replaced part begins anew.".to_owned(),
    }
}

fn visits(data: &HistoryData) -> Table {
    Table {
        title: String::new(),
        columns: vec![
            column("Visit", ColumnKind::Short),
            column("Purpose", ColumnKind::Text),
            column("Outcome", ColumnKind::Text),
        ],
        rows: data
            .visits
            .iter()
            .map(|visit| {
                let day = visit
                    .day
                    .parse()
                    .map_or_else(|_| visit.day.clone(), printed::day);
                row(vec![day, visit.purpose.clone(), visit.outcome.clone()])
            })
            .collect(),
        note: String::new(),
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

/// A figure of each visit as a bar, under its day.
fn by_day(
    dated: &[&Dated],
    value: impl Fn(&Dated) -> (f64, String),
    limits: &[(f64, String)],
) -> Chart {
    let groups: Vec<_> = shown(dated, 7)
        .iter()
        .map(|figure| {
            let (value, label) = value(figure);
            (figure.day.clone(), vec![(value, label, BarFill::Full)])
        })
        .collect();
    let mut chart = bars(&groups, limits);
    "Visit".clone_into(&mut chart.across.title);
    if groups.len() < dated.len() {
        chart.caption = format!(
            "The last {}; all stand in the table.",
            printed::count(groups.len())
        );
    }
    chart
}

fn mass_unit(scene: &Scene<'_>) -> &'static str {
    match scene.site.units {
        UnitSystem::Metric => "kg",
        UnitSystem::Us => "lb",
    }
}

fn refrigerant(scene: &Scene<'_>, circuit: &CircuitHistory) -> Option<ChartWithTable> {
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
    chart.alt = format!(
        "Bars of the refrigerant charged and recovered in each year, {}; the numbers stand in the table below.",
        lower(&circuit.name)
    );
    let head = |name: &str| column(&format!("{name}, {unit}"), ColumnKind::Number);
    let printed_mass = |kg: f64| mass(kg).map_or_else(String::new, |(_, printed)| printed);
    Some(ChartWithTable {
        title: format!("Refrigerant by year, {}", lower(&circuit.name)),
        chart,
        table: Table {
            title: String::new(),
            columns: vec![
                column("Year", ColumnKind::Short),
                head("Charged"),
                head("by others"),
                head("Recovered"),
                head("by others"),
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

fn carbon_dioxide(circuit: &CircuitHistory) -> Option<ChartWithTable> {
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
    chart.alt = format!(
        "Bars of the CO₂ equivalent lost in each year, {}; the numbers stand in the table below.",
        lower(&circuit.name)
    );
    Some(ChartWithTable {
        title: format!("CO₂ equivalent lost by year, {}", lower(&circuit.name)),
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

/// Rates at each visit that had one, a chart for each kind and circuit, which share a title.
fn rates(scene: &Scene<'_>, data: &HistoryData) -> Vec<ChartWithTable> {
    let mut titles: Vec<&str> = Vec::new();
    for figure in &data.rates {
        if !titles.contains(&figure.title.as_str()) {
            titles.push(&figure.title);
        }
    }
    let system = scene.system.note.as_ref();
    let category = system.and_then(|note| note.category);
    titles
        .into_iter()
        .map(|title| {
            let of_title: Vec<&Dated> = data.rates.iter().filter(|f| f.title == title).collect();
            // Only a rate that a law asks for has a trigger.
            let by_law = of_title
                .iter()
                .any(|figure| figure.id.contains("leak-rate/"));
            let trigger = category
                .filter(|_| by_law)
                .map(|category| trigger_percent(category.value));
            let limits: Vec<(f64, String)> = trigger
                .map(|percent| (percent, format!("trigger, {percent}\u{a0}%")))
                .into_iter()
                .collect();
            let rate = |figure: &Dated| (figure.value, figure.printed.clone());
            let mut chart = by_day(&of_title, rate, &limits);
            "% of the full charge".clone_into(&mut chart.up.title);
            chart.alt = format!(
                "Bars of the {} at each addition{}; the numbers stand in the table below.",
                lower(title),
                trigger.map_or_else(String::new, |percent| format!(
                    ", with the trigger of {percent} % as a line"
                ))
            );
            let mut table = dated_table(&of_title, "Rate");
            if let Some(percent) = trigger {
                table.columns.push(column("Trigger", ColumnKind::Short));
                for (row, figure) in table.rows.iter_mut().zip(&of_title) {
                    let over = if figure.value > percent {
                        "over"
                    } else {
                        "not over"
                    };
                    row.cells.push(format!("{over} {percent}\u{a0}%"));
                }
            } else if by_law {
                "No category is noted, so that no trigger can be named."
                    .clone_into(&mut table.note);
            }
            ChartWithTable {
                title: title.to_owned(),
                chart,
                table,
            }
        })
        .collect()
}

fn test_limits(scene: &Scene<'_>, data: &HistoryData) -> Option<ChartWithTable> {
    let all: Vec<&Dated> = data.test_limits.iter().collect();
    let most = all.iter().map(|figure| figure.value).reduce(f64::max)?;
    let unit = print_si(Flavour::Throughput, most, None, scene.site.units).unit;
    let value = |figure: &Dated| {
        let (value, _) = in_unit(Flavour::Throughput, figure.value, unit, 9)?;
        Some((value, figure.printed.clone()))
    };
    let mut chart = by_day(&all, |figure| value(figure).unwrap_or_default(), &[]);
    chart.up.title = format!("Largest leak left possible, {unit}");
    "Bars of the largest leak that each pressure test left possible; the numbers stand in the table below."
        .clone_into(&mut chart.alt);
    Some(ChartWithTable {
        title: "Pressure tests: no leak larger than".to_owned(),
        chart,
        table: dated_table(&all, "Not larger than"),
    })
}

fn dated_table(dated: &[&Dated], head: &str) -> Table {
    Table {
        title: String::new(),
        columns: vec![
            column("Visit", ColumnKind::Short),
            column("What", ColumnKind::Text),
            column(head, ColumnKind::Short),
        ],
        rows: dated
            .iter()
            .map(|figure| {
                let day = figure
                    .day
                    .parse()
                    .map_or_else(|_| figure.day.clone(), printed::day);
                row(vec![day, figure.title.clone(), figure.printed.clone()])
            })
            .collect(),
        note: String::new(),
    }
}

fn lower(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_lowercase().chain(letters).collect()
    })
}
