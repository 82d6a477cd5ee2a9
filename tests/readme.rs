//! The commands that README.md names are commands of this program.

use std::path::Path;
use std::process::Command;

/// What follows `rimebook` or `cargo run … --` in the README's code.
fn commands() -> Vec<String> {
    let readme = Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md");
    let text = std::fs::read_to_string(readme).unwrap();
    let mut commands = Vec::new();
    for code in text.split('`') {
        for line in code.lines().map(str::trim) {
            let line = line.trim_start_matches("$ ");
            let after = match line.split_once(" -- ") {
                Some((cargo, rest)) if cargo.starts_with("cargo run") => Some(rest),
                _ => line.strip_prefix("rimebook "),
            };
            commands.extend(
                after
                    .and_then(|rest| rest.split(' ').next())
                    .map(str::to_owned),
            );
        }
    }
    commands
}

#[test]
fn the_readmes_commands_exist() {
    let commands = commands();
    assert!(!commands.is_empty(), "README.md names no command");
    for command in commands {
        let printing = ["report", "mail", "made-from"].contains(&command.as_str());
        if printing && !cfg!(feature = "pdf") {
            continue;
        }
        let status = Command::new(env!("CARGO_BIN_EXE_rimebook"))
            .args([command.as_str(), "--help"])
            .output()
            .unwrap()
            .status;
        assert!(status.success(), "`rimebook {command}` is no command");
    }
}
