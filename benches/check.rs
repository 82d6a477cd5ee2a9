//! How fast a book is checked, beside merely reading the same files; how fast quantities are parsed.
//!
//! `cargo bench` prints a table: rows of one size belong together, and the quotient of `check` and `read`
//! is the ratio that matters. Nothing here fails for being slow. The book is written by this file, so
//! that its size is free.

#![expect(
    clippy::unwrap_used,
    reason = "a benchmark that cannot write its book has nothing to measure"
)]

use divan::counter::{BytesCount, ItemsCount};
use divan::{Bencher, black_box};
use jiff::ToSpan;
use jiff::civil::{Date, date};
use rimebook::command::load;
use rimebook::quantity::{GaugePressure, LeakRate, Mass, parse};
use std::fs;
use std::path::Path;
use tempfile::TempDir;

const VISITS: [usize; 3] = [100, 1_000, 10_000];
const VISITS_OF_A_SYSTEM: usize = 20;
const SYSTEMS_OF_A_SITE: usize = 10;

fn main() {
    divan::main();
}

/// Reads, checks and works out a whole book.
#[divan::bench(args = VISITS, sample_count = 5, sample_size = 1)]
fn check(bencher: Bencher, visits: usize) {
    let book = write_book(visits);
    let (loaded, _) = load(book.path()).unwrap();
    assert_eq!(loaded.diagnostics.errors(), 0);
    bencher
        .counter(BytesCount::new(read_all(book.path())))
        .bench_local(|| load(black_box(book.path())).unwrap());
}

/// Reads the same files and nothing more.
#[divan::bench(args = VISITS, sample_count = 5, sample_size = 1)]
fn read(bencher: Bencher, visits: usize) {
    let book = write_book(visits);
    bencher
        .counter(BytesCount::new(read_all(book.path())))
        .bench_local(|| read_all(black_box(book.path())));
}

/// Parses quantities as they stand in notes.
#[divan::bench]
fn quantities(bencher: Bencher) {
    bencher.counter(ItemsCount::new(3_usize)).bench(|| {
        (
            parse::<GaugePressure>(black_box("24.8 ± 0.1 bar g")).is_ok(),
            parse::<Mass>(black_box("9 lb 4 oz")).is_ok(),
            parse::<LeakRate>(black_box("14 g/yr")).is_ok(),
        )
    });
}

/// The bytes of all files under a folder.
fn read_all(folder: &Path) -> usize {
    walkdir::WalkDir::new(folder)
        .into_iter()
        .map(Result::unwrap)
        .filter(|entry| entry.file_type().is_file())
        .map(|entry| fs::read(entry.path()).unwrap().len())
        .sum()
}

/// Writes a book of so many visits, in good order.
fn write_book(visits: usize) -> TempDir {
    let book = tempfile::tempdir().unwrap();
    fs::write(book.path().join("rimebook.toml"), BOOK).unwrap();
    for number in 0..visits {
        let system = number / VISITS_OF_A_SYSTEM;
        let site = book
            .path()
            .join(format!("site-{}", system / SYSTEMS_OF_A_SITE));
        let system = site.join(format!("unit-{}", system % SYSTEMS_OF_A_SITE));
        let weeks = i64::try_from(number % VISITS_OF_A_SYSTEM).unwrap() * 4;
        let day = date(2024, 7, 1).checked_add(weeks.weeks()).unwrap();
        let point = format!("coil/joint-{}", number % VISITS_OF_A_SYSTEM);
        write_visit(&system.join(day.to_string()), day, &point);
        fs::write(site.join("site.toml"), SITE).unwrap();
        fs::write(system.join("system.toml"), system_text()).unwrap();
    }
    book
}

/// The system, with a point for each visit, so that no joint leaks twice.
fn system_text() -> String {
    let point = |number: usize| POINT.replace("NUMBER", &number.to_string());
    let points: String = (0..VISITS_OF_A_SYSTEM).map(point).collect();
    format!("{SYSTEM}{points}")
}

fn write_visit(folder: &Path, day: Date, point: &str) {
    fs::create_dir_all(folder).unwrap();
    let files = [
        ("visit.toml", VISIT),
        ("refrigerant.toml", REFRIGERANT),
        ("readings.toml", READINGS),
        ("findings.md", FINDINGS),
    ];
    for (name, text) in files {
        let text = text
            .replace("DAY", &day.to_string())
            .replace("POINT", point);
        fs::write(folder.join(name), text).unwrap();
    }
}

const BOOK: &str = r#"[contractor]
name = "Bench Cooling (invented)"

[[person]]
id = "t1"
name = "Ann Example"
certificate = "BENCH-1"
category = "I"
certified-until = 2029-12-31

[[instrument]]
id = "ld-1"
kind = "electronic leak detector"
sensor = "infrared"
sensitivity = "3 g/yr"
rated-for = ["A1"]
checked = [2024-06-03, 2025-05-05]

[[instrument]]
id = "g-1"
kind = "pressure gauge"
range = "60 bar g"
accuracy = "0.25 % of range"
resolution = "0.01 bar"
calibrated = [2024-06-03, 2025-05-05]

[[instrument]]
id = "g-2"
kind = "vacuum gauge"
range = "20000 micron"
accuracy = "10 % of reading"
resolution = "1 micron"
calibrated = [2024-06-03, 2025-05-05]
"#;

const SITE: &str = r#"name = "Bench site"
operator = "Bench Storage (invented)"
timezone = "Europe/Lisbon"
altitude = "10 m"
units = "metric"
rules = ["eu-2024-573"]
"#;

const SYSTEM: &str = r#"name = "Bench unit"
installed = 2024-06-03

[[in-force]]
from = 2024-06-03
refrigerant = "R-449A"
full-charge = "40.0 kg"
full-charge-by = "weighed at installation"
status = "in use"

[[circuit]]
id = "a"
sections = [
  { id = "liquid", most = "28 bar g", volume = "3.4 ± 0.3 L" },
]
"#;

const POINT: &str = r#"
[[point]]
id = "coil/joint-NUMBER"
kind = "flare joint"
part = "expansion valve"
where = "Coil, joint NUMBER"
section = "liquid"
"#;

const VISIT: &str = r#"purpose = "leak search and repair"
attendance = [ { by = "t1", from = DAYT08:00, to = DAYT17:00 } ]
complaint = "Low suction pressure alarm."
ambient = "17 °C"
barometer = "1009 mbar a"
left = "running"
back-in-normal-operation = DAYT16:10

[[safety-check]]
at = DAYT08:10
air = "0 ppm"
ventilated = true
"#;

const REFRIGERANT: &str = r#"[[movement]]
kind = "recovered"
why = "repair"
at = DAYT10:50
mass = "3.20 ± 0.02 kg"
how = "weighed"

[[movement]]
kind = "charged"
why = "recharge"
at = DAYT15:40
mass = "3.60 ± 0.02 kg"
how = "weighed"
charged-to = "full by weight"
"#;

const READINGS: &str = r#"[[detector-check]]
instrument = "ld-1"
at = DAYT08:20
reference-leak = "5 g/yr R-134a"
responded = true

[[search]]
id = "s1"
by = "t1"
method = "electronic"
instrument = "ld-1"
started = DAYT08:30
ended = DAYT10:00
plant = "running"
pressure = "12.4 bar g"
background = "clean"
areas = ["coil/*"]

[[pressure-test]]
id = "p1"
purpose = "tightness"
gas = "nitrogen"
section = "liquid"
gauge = "g-1"
by = "t1"
start = { at = DAYT11:50, pressure = "27.50 bar g", temperature = "16.4 °C" }
end = { at = DAYT13:50, pressure = "27.61 bar g", temperature = "17.4 °C" }

[[vacuum-test]]
id = "v1"
circuit = "a"
gauge = "g-2"
by = "t1"
isolated = DAYT14:50
warmest-pipe = "19 °C"
start = { at = DAYT14:50, pressure = "180 micron" }
end = { at = DAYT15:20, pressure = "240 micron" }
accept-below = "500 micron"
accept-by = "maker"

[[operating]]
at = DAYT16:40
suction-pressure = "1.9 bar g"
suction-temperature = "-14.0 °C"
suction-at = "compressor inlet"
liquid-pressure = "14.6 bar g"
liquid-temperature = "27.5 °C"
sight-glass = "clear"
"#;

const FINDINGS: &str = "## Flare nut of a joint of the coil {#POINT}

- kind: leak
- evidence:
  - 08:55 oil, wiped, back at 09:50
  - 09:10 electronic ld-1, alarm; clean air, alarm again
- cause: nut backed off
- repair: 11:30 flare remade
- proof: p1
- proof: v1
- proof: 16:20 electronic ld-1, no alarm
- state: repaired, proved

The nut had backed off about a quarter turn. The line shakes with the compressor.
";
