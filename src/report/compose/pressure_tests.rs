//! A pressure test on the page: facts, verdict, results, uncertainty budget, and the course of a log.

use crate::job::PressureTest;
use crate::quantity::{Flavour, Pressure, print, print_as, print_si};
use crate::report::chart::{Course, Line, chart};
use crate::report::compose::scene::Scene;
use crate::report::compose::tests::{duration, entry, gauge, part_name, worked};
use crate::report::data::{
    Block, Chart, Column, ColumnKind, Entry, Row, SeriesStroke, Table, Test,
};
use crate::text::{Message, sentence};
use crate::vocabulary::Word;
use crate::working::hold_change::nitrogenous;
use crate::working::pressure_test::{Hold, HoldVerdict, expected_pressure_pa};
use crate::working::{Value, rounded};

/// The verdict as a sentence.
pub(super) fn pressure_verdict(scene: &Scene<'_>, hold: &Hold) -> String {
    let limit = hold.limit.as_ref();
    let size = limit.map(|limit| limit.value.print(scene.site.units));
    scene.say(&hold.verdict.sentence(&size.unwrap_or_default()))
}

/// A test with all that is said of it.
pub(super) fn pressure_test(scene: &Scene<'_>, test: &PressureTest, hold: &Hold) -> Test {
    let help = hold.most_help();
    let mut prose: Vec<Block> = hold
        .reasons
        .iter()
        .chain(&help)
        .map(|reason| Block::plain(scene.say(reason)))
        .collect();
    prose.extend(
        test.note
            .note
            .as_ref()
            .map(|note| Block::plain(sentence(&note.value))),
    );
    let results = [
        ("result-lost", &hold.change),
        ("result-mean-leak", &hold.leak),
        ("result-largest-leak", &hold.limit),
        ("result-as-nitrogen", &hold.limit_mass),
        ("result-smallest-shown", &hold.smallest),
    ];
    Test {
        id: test.id.0.clone(),
        heading: scene.say(
            &Message::of("pressure-test-heading")
                .with("test", test.id.0.as_str())
                .with("part", part_name(scene, test.circuit, test.section())),
        ),
        verdict: pressure_verdict(scene, hold),
        facts: facts(scene, test),
        results: expected(scene, test, hold)
            .into_iter()
            .chain(
                results
                    .into_iter()
                    .filter_map(|(key, figure)| Some(worked(key, figure.as_ref()?, scene))),
            )
            .collect(),
        chart: course(scene, test),
        prose,
        tables: budget_table(scene, hold).into_iter().collect(),
        cautions: Vec::new(),
    }
}

/// The pressure expected at the end, by gauge where the readings beside it are.
fn expected(scene: &Scene<'_>, test: &PressureTest, hold: &Hold) -> Option<Entry> {
    let figure = hold.expected.as_ref()?;
    let mut entry = worked("result-expected", figure, scene);
    let by_gauge = matches!(test.end.pressure.value.value, Pressure::Gauge(_));
    let air = figure.inputs.iter().rfind(|input| input.symbol == "p_air");
    if let (
        true,
        Some(air),
        Value::Computed {
            si, uncertainty, ..
        },
    ) = (by_gauge, air, &figure.value)
    {
        entry.value = scene.value(&Value::Computed {
            flavour: Flavour::GaugePressure,
            si: si - air.value.number(),
            uncertainty: *uncertainty,
        });
    }
    Some(entry)
}

fn facts(scene: &Scene<'_>, test: &PressureTest) -> Vec<Entry> {
    let units = scene.site.units;
    let reading = |reading: &crate::job::PressureReading| {
        let temperature = reading
            .temperature
            .map_or_else(|| "none".to_owned(), |t| print(&t.value, units).to_string());
        let message = Message::of("test-reading")
            .with("moment", scene.words().moment(reading.at.value.civil))
            .figure("pressure", print(&reading.pressure.value, units))
            .figure("temperature", temperature);
        scene.say(&message)
    };
    let gas = test.note.gas.map_or("", |gas| gas.value.word());
    let mut facts = vec![
        entry(scene, "test-gas", scene.words().phrase(gas)),
        entry(scene, "test-start", reading(&test.start)),
        entry(scene, "test-end", reading(&test.end)),
        entry(scene, "test-held", duration(test.seconds())),
    ];
    if let Some(most) = scene
        .system
        .circuits
        .get(test.circuit)
        .and_then(|c| c.most(test.section()))
    {
        facts.push(entry(
            scene,
            "test-highest-allowable",
            scene.figure(print(&most.value, units)),
        ));
    }
    facts.extend(gauge(scene, test.note.gauge.as_ref()));
    if let Some(limit) = &test.note.leak_limit {
        facts.push(entry(
            scene,
            "test-limit-asked",
            scene.figure(print(&limit.value, units)),
        ));
    }
    facts
}

fn course(scene: &Scene<'_>, test: &PressureTest) -> Option<Chart> {
    let log = test.log.as_ref()?;
    let corrected = corrected(scene, test);
    let (name, flavour) = if log.gauge {
        ("chart-pressure-gauge", Flavour::GaugePressure)
    } else {
        ("chart-pressure-absolute", Flavour::AbsolutePressure)
    };
    let mut drawn = chart(&Course {
        time_s: &log.time_s,
        value_si: &log.pressure_pa,
        flavour,
        written: log.pressure_unit,
        units: scene.site.units,
        words: scene.words(),
        name,
        time_name: "chart-time-since-start",
        limit: None,
        from_zero: false,
        lines: corrected.iter().cloned().collect(),
    })?;
    let pressure =
        |&(_, si): &(f64, f64)| scene.figure(print_si(flavour, si, None, scene.site.units));
    let ends = corrected.as_ref().map(|line| &line.points);
    if let Some((first, last)) = ends.and_then(|points| points.first().zip(points.last())) {
        let message = Message::of("chart-alt-corrected")
            .figure("first", pressure(first))
            .figure("last", pressure(last));
        drawn.alt += &format!(" {}", scene.say(&message).replace('\u{a0}', " "));
    }
    Some(drawn)
}

/// The course as it would have been at the temperature of its first rows: the thermometer's, since
/// only the fit knows how far the gas was behind. Rows are averaged over runs, so that steps of gauge
/// and thermometer do not hide a slow loss.
fn corrected(scene: &Scene<'_>, test: &PressureTest) -> Option<Line> {
    const RUNS: usize = 96;
    let log = test.log.as_ref()?;
    if !nitrogenous(test) || log.temperature_k.len() != log.pressure_pa.len() {
        return None;
    }
    let air = if log.gauge {
        scene.visit.atmosphere.pressure().si()
    } else {
        0.0
    };
    let run = log.time_s.len().div_ceil(RUNS);
    let mean = |values: &[f64]| values.iter().sum::<f64>() / values.len() as f64;
    let first_k = mean(log.temperature_k.chunks(run).next()?);
    let runs = log.time_s.chunks(run).zip(log.pressure_pa.chunks(run));
    let points = runs
        .zip(log.temperature_k.chunks(run))
        .map(|((times, pressures), temperatures)| {
            let absolute = mean(pressures) + air;
            let at_first = expected_pressure_pa(absolute, mean(temperatures), first_k)?;
            Some((mean(times), at_first - air))
        })
        .collect::<Option<Vec<_>>>()?;
    Some(Line {
        label: scene.word("chart-corrected"),
        stroke: SeriesStroke::Dashed,
        points,
    })
}

/// What each input adds to the uncertainty of the pressure lost.
fn budget_table(scene: &Scene<'_>, hold: &Hold) -> Option<Table> {
    let budget = &hold.budget;
    if budget.contributions.is_empty() || hold.verdict == HoldVerdict::Strength {
        return None;
    }
    // One unit for the column, with the decimals of the whole.
    let flavour = Flavour::PressureDifference;
    let together = print_si(flavour, budget.variance().sqrt(), None, scene.site.units);
    let decimals = together.number.split_once('.').map_or(0, |(_, d)| d.len());
    let decimals = u8::try_from(decimals).unwrap_or(u8::MAX);
    let pressure = |pascal| {
        print_as(flavour, pascal, together.unit, decimals)
            .map_or_else(String::new, |printed| scene.figure(printed.number))
    };
    let share_of = |part| match 100.0 * budget.share(part) {
        share if share < 1.0 => "<\u{a0}1\u{a0}%".to_owned(),
        share => format!("{}\u{a0}%", rounded(share, 0)),
    };
    let prefix = format!("{}/", scene.visit.path);
    let row = |cells: [String; 4], total| Row {
        cells: cells.to_vec(),
        total,
    };
    let mut rows: Vec<Row> = budget
        .contributions
        .iter()
        .map(|part| {
            let from = part
                .origin
                .say(scene.sources, scene.words())
                .replace(&prefix, "");
            let cells = [
                scene.say(&part.what),
                pressure(part.pascal),
                share_of(part),
                from,
            ];
            row(cells, false)
        })
        .collect();
    let whole = [
        scene.word("budget-together"),
        pressure(budget.variance().sqrt()),
        "100\u{a0}%".to_owned(),
        scene.word("budget-root"),
    ];
    rows.push(row(whole, true));
    let column = |head: &'static str, kind| Column {
        head: scene.say(&Message::of(head).with("unit", together.unit)),
        kind,
    };
    Some(Table {
        title: scene.word("budget-title"),
        columns: vec![
            column("budget-contribution", ColumnKind::Text),
            column("budget-standard-uncertainty", ColumnKind::Short),
            column("budget-share", ColumnKind::Short),
            column("budget-from", ColumnKind::Text),
        ],
        rows,
        note: String::new(),
    })
}
