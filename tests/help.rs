//! The whole `--help` of the program and of every command as a golden file; refreshed by
//! `RIMEBOOK_REFRESH=1`.

use std::path::Path;
use std::process::Command;

fn said(arguments: &[&str]) -> (String, String, i32) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(arguments)
        .env("NO_COLOR", "1")
        .env("COLUMNS", "100")
        .output()
        .unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (
        text(output.stdout),
        text(output.stderr),
        output.status.code().unwrap(),
    )
}

/// Compares with a golden file of `tests/help/`; each command has its own, so that a build without
/// the typesetter checks the rest.
fn compare(name: &str, found: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("tests/help/{name}.txt"));
    if std::env::var_os("RIMEBOOK_REFRESH").is_some() {
        std::fs::write(path, found).unwrap();
        return;
    }
    let expected = std::fs::read_to_string(path).unwrap_or_default();
    let diff = similar::TextDiff::from_lines(expected.as_str(), found);
    assert!(
        expected == found,
        "\n{}",
        diff.unified_diff().header(name, "found")
    );
}

/// The commands that the program lists.
fn commands() -> Vec<String> {
    let (help, _, _) = said(&["--help"]);
    help.lines()
        .skip_while(|line| *line != "Commands:")
        .skip(1)
        .take_while(|line| !line.is_empty())
        .filter_map(|line| line.strip_prefix("  ")?.split(' ').next())
        .filter(|word| !word.is_empty() && *word != "help")
        .map(str::to_owned)
        .collect()
}

#[test]
fn the_help_of_every_command_is_as_reviewed() {
    let commands = commands();
    assert!(commands.len() >= 3, "{commands:?}");
    for command in commands {
        // Without the typesetter they have one option less.
        if matches!(command.as_str(), "watch" | "records") && !cfg!(feature = "pdf") {
            continue;
        }
        let (help, _, code) = said(&[&command, "--help"]);
        assert_eq!(code, 0);
        compare(&command, &help);
    }
}

#[test]
#[cfg(feature = "pdf")]
fn the_help_of_the_program_is_as_reviewed() {
    compare("rimebook", &said(&["--help"]).0);
}

#[test]
fn a_wrong_command_line_exits_with_two_and_teaches() {
    for arguments in [
        &["chekc"][..],
        &["check", "--fromat"],
        &["check", "no/such/place"],
    ] {
        let (out, err, code) = said(arguments);
        assert_eq!((out.as_str(), code), ("", 2), "{arguments:?}: {err}");
        assert!(err.starts_with("error: "), "{err}");
    }
}

#[test]
fn conversions_keep_gauge_absolute_and_difference_apart() {
    // 6.2 K is a difference; written in °C it would be a temperature.
    let (out, _, code) = said(&["convert", "24.8 bar g", "psig"]);
    assert_eq!((out.as_str(), code), ("360\u{a0}psig\n", 0));
    let (_, err, code) = said(&["convert", "6.2 K", "bar"]);
    assert_eq!(code, 2, "{err}");
    let (_, err, code) = said(&["convert", "24.8 bar", "kPa g"]);
    assert_eq!(code, 2, "{err}");
}
