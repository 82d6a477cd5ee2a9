//! Figures of the demo book against a ledger made by hand for it, without this program. The book is
//! invented and the ledger with it: nothing here is a published value.

use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;

const POUND: f64 = 0.453_592_37;

/// Figure values in SI by visit and id, and the outcomes by visit, of the demo book.
fn figures() -> (BTreeMap<String, f64>, BTreeMap<String, String>) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["check", "--format", "json"])
        .arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example"))
        .output()
        .unwrap();
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let mut values = BTreeMap::new();
    let mut outcomes = BTreeMap::new();
    for visit in told["visits"].as_array().unwrap() {
        let name = visit["visit"].as_str().unwrap();
        let outcome = visit["outcome"].as_str().unwrap();
        outcomes.insert(name.to_owned(), outcome.to_owned());
        for figure in visit["figures"].as_array().unwrap() {
            if let Some(value) = figure["value"].as_f64() {
                values.insert(format!("{name}/{}", figure["id"].as_str().unwrap()), value);
            }
        }
    }
    (values, outcomes)
}

const FLAKE: &str = "brackwater/flake-ice-1/";
const COLD: &str = "brackwater/cold-store-1/";
const CHILLER: &str = "dunmarrow/process-chiller-1/";
const ICE_BANK: &str = "dunmarrow/ice-bank-1/";

/// System, visit and figure; the ledger's number in SI or percent; half of its last digit.
const LEDGER: &[(&str, &str, f64, f64)] = &[
    // Leak rates. Days run to the day of the charge.
    (
        FLAKE,
        "2025-02-18/circuit/a/loss-per-year",
        6.95 / 46.0 * 36500.0 / 253.0,
        0.005,
    ),
    (FLAKE, "2026-02-03/circuit/a/loss-per-year", 28.68, 0.01),
    (
        FLAKE,
        "2026-06-17/circuit/a/loss-per-year",
        6.25 / 47.0 * 36500.0 / 135.0,
        0.005,
    ),
    (CHILLER, "2025-07-09/charge/loss-per-year", 11.82, 0.005),
    (CHILLER, "2025-07-15/charge/loss-per-year", 16.93, 0.005),
    (
        CHILLER,
        "2026-02-24/charge/leak-rate/annualizing",
        6.36,
        0.005,
    ),
    (
        CHILLER,
        "2026-05-19/charge/leak-rate/annualizing",
        43.06,
        0.005,
    ),
    (
        ICE_BANK,
        "2025-06-10/charge/leak-rate/annualizing",
        22.22,
        0.005,
    ),
    (ICE_BANK, "2025-06-10/charge/loss-per-year", 22.15, 0.005),
    // CO2 equivalents, kg.
    (
        FLAKE,
        "2025-02-18/circuit/a/full-charge-co2e",
        180.4e3,
        50.0,
    ),
    (FLAKE, "2026-02-03/circuit/a/full-charge-co2e", 65.6e3, 50.0),
    (FLAKE, "2025-02-18/circuit/a/loss-co2e", 27.26e3, 5.0),
    (FLAKE, "2026-02-03/circuit/a/loss-co2e", 5.72e3, 5.0),
    (FLAKE, "2026-06-17/circuit/a/loss-co2e", 8.73e3, 5.0),
    (COLD, "2026-04-21/charge/full-charge-co2e", 1.746e3, 0.5),
    (COLD, "2026-04-21/charge/loss-co2e", 0.17e3, 5.0),
    (CHILLER, "2026-02-24/charge/loss-co2e", 25.3e3, 50.0),
    (CHILLER, "2026-05-19/charge/loss-co2e", 38.1e3, 50.0),
    // Pressure lost beyond what temperature explains, Pa, and leak sizes, Pa m³/s.
    (FLAKE, "2025-02-18/pressure-test/p1/change", -86.0, 1.0),
    (FLAKE, "2025-02-18/pressure-test/p1/leak", -2.6e-4, 0.05e-4),
    (FLAKE, "2025-02-18/pressure-test/p1/limit", 4.1e-2, 0.1e-2),
    (FLAKE, "2025-10-13/pressure-test/p-b/change", -323.0, 1.0),
    (FLAKE, "2025-10-13/pressure-test/p-b/leak", -1.0e-3, 0.05e-3),
    (FLAKE, "2026-06-17/pressure-test/p1/change", 392.0, 1.0),
    (FLAKE, "2026-06-17/pressure-test/p1/leak", 1.9e-4, 0.06e-4),
    (COLD, "2026-04-21/pressure-test/p1/change", 402.0, 1.0),
    (COLD, "2026-04-21/pressure-test/p1/leak", 2.1e-3, 0.05e-3),
    (CHILLER, "2026-05-19/pressure-test/p1/change", 109.0, 1.0),
    (CHILLER, "2026-05-19/pressure-test/p1/leak", 4e-3, 0.5e-3),
    (ICE_BANK, "2025-06-10/pressure-test/p1/change", 187.0, 1.0),
    (ICE_BANK, "2025-06-10/pressure-test/p1/leak", 6e-5, 0.5e-5),
    // Mean rise of a vacuum as a throughput, Pa m³/s.
    (FLAKE, "2025-02-18/vacuum-test/v2/rise", 1.0e-3, 0.05e-3),
    (
        FLAKE,
        "2026-06-17/vacuum-test/v1/rise",
        161.4e-3 * 60.0 * 0.133_322 / 1800.0,
        0.01e-3,
    ),
    (CHILLER, "2026-05-19/vacuum-test/v1/rise", 1.39e-2, 0.005e-2),
    // Its last third by least squares, worked out apart from this program.
    (
        FLAKE,
        "2025-02-18/vacuum-test/v1/late-slope",
        3.295e-3,
        0.001e-3,
    ),
    (
        FLAKE,
        "2025-10-13/vacuum-test/v-a/late-slope",
        1.600e-4,
        0.001e-4,
    ),
    (
        FLAKE,
        "2026-06-17/vacuum-test/v1/late-slope",
        1.360e-4,
        0.001e-4,
    ),
    (
        CHILLER,
        "2026-05-19/vacuum-test/v1/late-slope",
        1.382e-2,
        0.001e-2,
    ),
    // Lost from the circuit, kg: net of what was recovered, and of what the work let out.
    (FLAKE, "2025-02-18/circuit/a/net-addition", 6.95, 0.005),
    (FLAKE, "2026-02-03/circuit/a/net-addition", 4.10, 0.005),
    (FLAKE, "2026-06-17/circuit/a/net-addition", 6.25, 0.005),
    (COLD, "2026-04-21/charge/net-addition", 1.20, 0.005),
    (
        CHILLER,
        "2026-05-19/charge/net-addition",
        21.10 * POUND,
        0.005 * POUND,
    ),
    (
        ICE_BANK,
        "2025-06-10/charge/net-addition",
        8.97 * POUND,
        0.005 * POUND,
    ),
];

#[test]
fn the_demo_books_figures_are_those_of_the_ledger() {
    let (values, _) = figures();
    let mut wrong = String::new();
    for (system, id, expected, tolerance) in LEDGER {
        match values.get(&format!("{system}{id}")) {
            Some(found) if (found - expected).abs() <= *tolerance => {}
            found => {
                wrong +=
                    &format!("{system}{id}: ledger {expected} ± {tolerance}, found {found:?}\n");
            }
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

#[test]
fn the_demo_books_outcomes_are_those_of_the_ledger() {
    const REPAIRED: &str = "every leak found was repaired and proved";
    const VERIFIED: &str = "earlier repairs were looked at again, nothing was shown there";
    const NOTHING: &str = "searched, nothing found";
    let ledger = [
        (FLAKE, "2025-02-18", REPAIRED),
        (FLAKE, "2025-03-13", VERIFIED),
        (FLAKE, "2025-08-12", NOTHING),
        (FLAKE, "2025-10-13", "changed to another refrigerant"),
        (
            FLAKE,
            "2026-02-03",
            "repaired, but what was looked at after the repair does not prove it",
        ),
        (FLAKE, "2026-06-17", REPAIRED),
        (FLAKE, "2026-07-09", VERIFIED),
        (COLD, "2025-05-06", NOTHING),
        (COLD, "2026-04-21", REPAIRED),
        (COLD, "2026-05-12", VERIFIED),
        (
            CHILLER,
            "2025-07-09",
            "refrigerant was added, no search and no repair are noted",
        ),
        (
            CHILLER,
            "2025-07-15",
            "refrigerant had been lost, and its leak was not found",
        ),
        (CHILLER, "2026-02-24", "leaks were found and left open"),
        (CHILLER, "2026-05-19", REPAIRED),
        (CHILLER, "2026-05-27", VERIFIED),
        (ICE_BANK, "2025-06-10", REPAIRED),
        (ICE_BANK, "2026-08-11", NOTHING),
    ];
    let (_, outcomes) = figures();
    let expected: BTreeMap<String, String> = ledger
        .into_iter()
        .map(|(system, visit, outcome)| (format!("{system}{visit}"), outcome.to_owned()))
        .collect();
    assert_eq!(outcomes, expected);
}
