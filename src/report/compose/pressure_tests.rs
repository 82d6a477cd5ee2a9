//! A pressure test on the page: facts, verdict, results, uncertainty budget, and the course of a log.

use crate::job::PressureTest;
use crate::quantity::{Flavour, print, print_si};
use crate::report::chart::{Course, chart};
use crate::report::compose::scene::Scene;
use crate::report::compose::tests::{duration, entry, gauge, part_name, worked};
use crate::report::data::{Block, Chart, Column, ColumnKind, Entry, Row, Table, Test};
use crate::report::printed::{self, sentence};
use crate::vocabulary::Word;
use crate::working::pressure_test::{Hold, HoldVerdict};
use crate::working::rounded;

/// The verdict as a sentence.
pub(super) fn pressure_verdict(scene: &Scene<'_>, hold: &Hold) -> String {
    let size = hold.limit.as_ref().map(|limit| scene.value(&limit.value));
    hold.verdict.sentence(&size.unwrap_or_default())
}

/// A test with all that is said of it.
pub(super) fn pressure_test(scene: &Scene<'_>, test: &PressureTest, hold: &Hold) -> Test {
    let mut prose: Vec<Block> = hold.reasons.iter().map(Block::plain).collect();
    prose.extend(hold.most_help().map(Block::plain));
    prose.extend(
        test.note
            .note
            .as_ref()
            .map(|note| Block::plain(sentence(&note.value))),
    );
    let results = [
        ("Expected at the end", &hold.expected),
        ("Lost beyond temperature", &hold.change),
        ("Mean leak", &hold.leak),
        ("Largest leak left possible", &hold.limit),
        ("As nitrogen", &hold.limit_mass),
        ("Smallest it could have shown", &hold.smallest),
    ];
    Test {
        id: test.id.0.clone(),
        heading: format!(
            "Pressure test {} of {}",
            test.id,
            part_name(scene, test.circuit, test.section())
        ),
        verdict: pressure_verdict(scene, hold),
        facts: facts(scene, test),
        results: results
            .into_iter()
            .filter_map(|(key, figure)| Some(worked(key, figure.as_ref()?, scene)))
            .collect(),
        chart: course(scene, test),
        prose,
        tables: budget_table(scene, hold).into_iter().collect(),
        cautions: Vec::new(),
    }
}

fn facts(scene: &Scene<'_>, test: &PressureTest) -> Vec<Entry> {
    let units = scene.site.units;
    let reading = |reading: &crate::job::PressureReading| {
        let pressure = print(&reading.pressure.value, units);
        let temperature = reading
            .temperature
            .map_or_else(String::new, |t| format!(", {}", print(&t.value, units)));
        format!(
            "{}: {pressure}{temperature}",
            printed::moment(reading.at.value.civil)
        )
    };
    let mut facts = vec![
        entry("Gas", test.note.gas.map_or("", |gas| gas.value.word())),
        entry("Start", reading(&test.start)),
        entry("End", reading(&test.end)),
        entry("Held", duration(test.seconds())),
    ];
    if let Some(most) = scene
        .system
        .circuits
        .get(test.circuit)
        .and_then(|c| c.most(test.section()))
    {
        facts.push(entry(
            "Highest allowable",
            print(&most.value, units).to_string(),
        ));
    }
    facts.extend(gauge(test.note.gauge.as_ref()));
    if let Some(limit) = &test.note.leak_limit {
        facts.push(entry(
            "Limit asked for",
            print(&limit.value, units).to_string(),
        ));
    }
    facts
}

fn course(scene: &Scene<'_>, test: &PressureTest) -> Option<Chart> {
    let log = test.log.as_ref()?;
    let (name, flavour) = if log.gauge {
        ("Pressure (gauge)", Flavour::GaugePressure)
    } else {
        ("Pressure (absolute)", Flavour::AbsolutePressure)
    };
    chart(&Course {
        time_s: &log.time_s,
        value_si: &log.pressure_pa,
        flavour,
        written: log.pressure_unit,
        units: scene.site.units,
        name,
        time_name: "Time since the start",
        limit: None,
        from_zero: false,
        lines: Vec::new(),
    })
}

/// What each input adds to the uncertainty of the pressure lost.
fn budget_table(scene: &Scene<'_>, hold: &Hold) -> Option<Table> {
    let budget = &hold.budget;
    if budget.contributions.is_empty() || hold.verdict == HoldVerdict::Strength {
        return None;
    }
    let pressure = |pascal| {
        let flavour = Flavour::PressureDifference;
        print_si(flavour, pascal, None, scene.site.units).to_string()
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
            let share = format!("{}\u{a0}%", rounded(100.0 * budget.share(part), 0));
            let from = part
                .origin
                .say(scene.sources, scene.words())
                .replace(&prefix, "");
            let cells = [
                printed::capital(part.what),
                pressure(part.pascal),
                share,
                from,
            ];
            row(cells, false)
        })
        .collect();
    let whole = [
        "All together".to_owned(),
        pressure(budget.variance().sqrt()),
        "100\u{a0}%".to_owned(),
        "root of the sum of squares".to_owned(),
    ];
    rows.push(row(whole, true));
    let column = |head: &str, kind| Column {
        head: head.to_owned(),
        kind,
    };
    Some(Table {
        title: "What makes the pressure lost uncertain".to_owned(),
        columns: vec![
            column("Contribution", ColumnKind::Text),
            column("Standard uncertainty", ColumnKind::Short),
            column("Share of variance", ColumnKind::Short),
            column("From", ColumnKind::Text),
        ],
        rows,
        note: String::new(),
    })
}
