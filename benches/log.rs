//! How fast a log of a million rows is read, fitted and drawn.
//!
//! `cargo bench --bench log` prints a table; `tests/outside/log_numpy.py` reads and fits the same file with
//! numpy, for comparison. Nothing here fails for being slow. The log is written by this file.

#![expect(
    clippy::unwrap_used,
    reason = "a benchmark that cannot write its log has nothing to measure"
)]

use divan::counter::ItemsCount;
use divan::{Bencher, black_box};
use rimebook::language::Words;
use rimebook::notes::{Columns, Log, read_log};
use rimebook::quantity::{Flavour, Kind, UnitSystem};
use rimebook::report::chart::{Course as Drawn, chart};
use rimebook::text::{Diagnostics, FileId, Noted, Source, Span};
use rimebook::working::pressure_log::{Course, fit_log};
use std::fmt::Write;

const ROWS: usize = 1_000_000;

fn main() {
    // The same file for numpy, where a path is given.
    if let Some(path) = std::env::var_os("RIMEBOOK_LOG") {
        std::fs::write(path, text()).unwrap();
        return;
    }
    divan::main();
}

/// A day of rows: a wave of temperature, the pressure that follows it, and a loss.
fn text() -> String {
    let mut text = String::from("t_s,p_bar_g,T_C\n");
    for row in 0..ROWS {
        let day = row as f64 / ROWS as f64;
        let celsius = 15.0 + 5.0 * (6.0 * day).sin();
        let bar = 25.0 * (273.15 + celsius) / 288.15 - 0.02 * day;
        writeln!(text, "{:.3},{bar:.4},{celsius:.2}", day * 90_000.0).unwrap();
    }
    text
}

fn read_from(source: &Source) -> Log {
    let name = |name: &str| Noted::new(name.to_owned(), Span::file_start(FileId(0)));
    let (time, pressure, temperature) = (name("t_s"), name("p_bar_g"), name("T_C"));
    let columns = Columns {
        time: &time,
        pressure: &pressure,
        pressure_kind: Kind::Pressure,
        temperature: Some(&temperature),
    };
    read_log(FileId(0), source, &columns, &mut Diagnostics::default()).unwrap()
}

fn fit(log: &Log) -> f64 {
    let course = Course {
        time_s: &log.time_s,
        pressure_pa: &log.pressure_pa,
        air_pa: 101_325.0,
        temperature_k: &log.temperature_k,
    };
    fit_log(&course).unwrap().lost_pa
}

fn draw(log: &Log) -> usize {
    let drawn = chart(&Drawn {
        time_s: &log.time_s,
        value_si: &log.pressure_pa,
        flavour: Flavour::GaugePressure,
        written: log.pressure_unit,
        units: UnitSystem::Metric,
        words: Words::english(),
        name: "chart-pressure-gauge",
        time_name: "chart-time-since-start",
        limit: None,
        from_zero: false,
        lines: Vec::new(),
    });
    drawn.unwrap().series.len()
}

fn source() -> Source {
    Source::new("hold.csv".to_owned(), text())
}

#[divan::bench(sample_count = 5, sample_size = 1)]
fn read(bencher: Bencher) {
    let source = source();
    let bencher = bencher.counter(ItemsCount::new(ROWS));
    bencher.bench_local(|| read_from(black_box(&source)));
}

#[divan::bench(sample_count = 5, sample_size = 1)]
fn read_fit_and_draw(bencher: Bencher) {
    let source = source();
    let bencher = bencher.counter(ItemsCount::new(ROWS));
    bencher.bench_local(|| {
        let log = read_from(black_box(&source));
        (fit(&log), draw(&log))
    });
}
