//! `convert` and `refrigerant` as they are typed in a van.

use std::process::Command;

/// What the program says: output, errors, exit code.
fn said(arguments: &[&str]) -> (String, String, i32) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(arguments)
        .env("NO_COLOR", "1")
        .output()
        .unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap().replace('\u{a0}', " ");
    (
        text(output.stdout),
        text(output.stderr),
        output.status.code().unwrap(),
    )
}

fn shows(arguments: &[&str], parts: &[&str]) {
    let (out, err, code) = said(arguments);
    assert_eq!(code, 0, "{arguments:?}: {err}");
    for part in parts {
        assert!(out.contains(part), "{arguments:?} lacks `{part}`:\n{out}");
    }
}

fn refuses(arguments: &[&str], parts: &[&str]) {
    let (out, err, code) = said(arguments);
    assert_eq!((code, out.as_str()), (2, ""), "{arguments:?}");
    for part in parts {
        assert!(err.contains(part), "{arguments:?} lacks `{part}`:\n{err}");
    }
}

#[test]
fn a_refrigerant_is_shown_with_its_sources() {
    shows(
        &["refrigerant", "r449a", "--at", "-10 °C"],
        &[
            "R-449A",
            "R-32 24.3 %",
            "87.21 g/mol",
            "1397.0",
            "4.4066 bar a, 3.39 bar g, 49.2 psig",
            "from memory: verify",
            "Regulation (EU) No 517/2014, Annex I",
            "CoolProp 8.0.0",
        ],
    );
    // Ammonia's limits need all their digits.
    shows(
        &["refrigerant", "ammonia", "--at", "0 °C"],
        &["R-717", "B2L", "0.350 g/m³", "0.220 g/m³", "116 g/m³"],
    );
    shows(
        &["refrigerant", "R-22", "--at", "0 °C"],
        &[
            "4.980 bar a",
            "GWP, Regulation (EU) 2024/573",
            "none listed",
        ],
    );
}

#[test]
fn a_pressure_gives_the_temperatures_that_superheat_and_subcooling_count_from() {
    shows(
        &["refrigerant", "R-407C", "--at", "14.6 bar g"],
        &["bubble temperature", "dew temperature", "glide"],
    );
    let glide = said(&["refrigerant", "R-134a", "--at", "5 bar g"]).0;
    assert!(!glide.contains("glide"), "a single substance has none");
    // At 1600 m the same gauge pressure is less.
    let at_sea = said(&["refrigerant", "R-134a", "--at", "2 bar g"]).0;
    let above = said(&[
        "refrigerant",
        "R-134a",
        "--at",
        "2 bar g",
        "--altitude",
        "1600 m",
    ])
    .0;
    assert!(above != at_sea);
    assert!(above.contains("at that altitude"));
}

#[test]
fn carbon_dioxide_sublimes_and_has_no_saturation_above_its_critical_point() {
    shows(&["refrigerant", "CO2"], &["sublimes at 1 atm", "−78.46 °C"]);
    refuses(
        &["refrigerant", "CO2", "--at", "40 °C"],
        &[
            "outside the saturation table",
            "critical point, 30.98 °C",
            "27.94 °C",
        ],
    );
    refuses(&["refrigerant", "CO2", "--at", "90 bar g"], &["critical"]);
}

#[test]
fn what_cannot_be_looked_up_says_why() {
    refuses(&["refrigerant", "R-494A"], &["did you mean", "R-449A"]);
    refuses(&["refrigerant", "sugar"], &["not a refrigerant"]);
    refuses(
        &["refrigerant", "R-438A", "--at", "0 °C"],
        &["no saturation table of R-438A is held", "CoolProp"],
    );
    refuses(
        &["refrigerant", "R-22", "--at", "5"],
        &["has no unit", "\"-10 °C\"", "\"14.6 bar g\""],
    );
    refuses(
        &["refrigerant", "R-22", "--at", "24 bar"],
        &["gauge or absolute", "`24 bar g`"],
    );
}

#[test]
fn every_refrigerant_can_be_shown_both_ways() {
    for refrigerant in rimebook::refrigerant::all() {
        shows(
            &["refrigerant", refrigerant.designation],
            &["sources", "[1]"],
        );
        let (out, _, _) = said(&["refrigerant", refrigerant.designation, "--format", "json"]);
        let value: serde_json::Value = serde_json::from_str(&out).unwrap();
        assert_eq!(value["designation"], refrigerant.designation);
        assert!(value["molar-mass-source"].is_string());
    }
}

#[test]
fn a_leak_size_is_converted_for_its_gas_and_says_so() {
    let stated = ["Gas at 20.0 °C", "365 days", "102.03 g/mol"];
    shows(
        &[
            "convert", "14 g/yr", "Pa m3/s", "--gas", "R-134a", "--at", "20 °C",
        ],
        &[&["1.060 × 10⁻⁵ Pa m³/s"][..], &stated].concat(),
    );
    shows(
        &["convert", "5 g/yr R-134a"],
        &[&["3.787 × 10⁻⁶ Pa m³/s", "0.1764 oz/yr"][..], &stated].concat(),
    );
    // The other way, and a standard cubic centimetre, which is counted at 0 °C whatever --at says.
    shows(
        &["convert", "1e-5 Pa m3/s", "g/yr", "--gas", "R-410A"],
        &["9.39"],
    );
    for at in ["0 °C", "20 °C", "40 °C"] {
        shows(
            &[
                "convert",
                "1 std cc/s",
                "kg/yr",
                "--gas",
                "R-134a",
                "--at",
                at,
            ],
            &["143.6 kg/yr"],
        );
    }
}

#[test]
fn another_gas_at_another_pressure_gives_a_bracket() {
    let service = ["--as", "R-410A", "--as-between", "24.2 bar a", "0 bar g"];
    let hold = [
        "convert",
        "1e-3 Pa m3/s",
        "g/yr",
        "--gas",
        "nitrogen",
        "--between",
        "40 bar g",
        "0 bar g",
    ];
    shows(
        &[&hold[..], &service].concat(),
        &[
            "viscous flow:\n  453.6 g/yr",
            "molecular flow:\n  338.2 g/yr",
            "17.57 µPa s",
        ],
    );
    refuses(
        &[
            "convert",
            "1e-3 Pa m3/s",
            "--gas",
            "helium",
            "--as",
            "air",
            "--between",
            "0 bar g",
            "40 bar g",
        ],
        &["no gas flows", "first"],
    );
    refuses(&["convert", "1e-3 Pa m3/s", "--as", "air"], &["--gas"]);
}

#[test]
fn bubbles_are_a_leak_size_once_they_have_a_rate_and_a_width() {
    shows(
        &["convert", "1 bubble/s of 1 mm", "Pa m3/s"],
        &["5.305 × 10⁻⁵ Pa m³/s"],
    );
    shows(
        &["convert", "1 bubble in 10 s of 1 mm", "Pa m3/s"],
        &["5.305 × 10⁻⁶ Pa m³/s"],
    );
    shows(
        &["convert", "6 bubbles/min of 1 mm of R-290", "g/yr"],
        &["3.027 g/yr"],
    );
    for text in [
        "6 bubbles",
        "bubbles/min of 1 mm",
        "-1 bubble/s of 1 mm",
        "1 bubble/s of 0 mm",
        "1 bubble/kg of 1 mm",
    ] {
        refuses(&["convert", text], &["bubbles/min of 1 mm"]);
    }
}

#[test]
fn mass_and_throughput_ask_for_the_gas() {
    refuses(
        &["convert", "14 g/yr", "Pa m3/s"],
        &["add it, such as --gas R-134a"],
    );
    refuses(
        &["convert", "5 g/yr", "--gas", "R-133a"],
        &["did you mean", "R-134a"],
    );
    refuses(
        &["convert", "5 g/yr", "psig", "--gas", "R-134a"],
        &["cannot be given in `psig`"],
    );
}
