//! Where a command writes, and the exit codes.

use crate::text::Look;
use std::io::{IsTerminal, Write};

/// Exit codes, the same for every command.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Exit {
    /// All is well.
    Fine = 0,
    /// The notes have errors.
    Errors = 1,
    /// The command line is wrong.
    Usage = 2,
    /// Something is due, or missing, where that was asked (`due`, `records`).
    Due = 3,
    /// A fault of this program.
    OurFault = 70,
    /// The disk could not be read or written.
    Disk = 74,
}

/// Standard output and error, with what is known of the terminal.
#[derive(Debug)]
pub struct Console {
    /// Whether a person watches the progress.
    pub progress: bool,
    /// How diagnostics are drawn.
    pub look: Look,
}

impl Console {
    /// The console of this process; `NO_COLOR` is honoured.
    pub fn of_process() -> Self {
        let terminal = std::io::stderr().is_terminal();
        let plain = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
        Self {
            progress: terminal,
            look: Look {
                colour: terminal && !plain,
                width: None,
            },
        }
    }

    /// Writes a result to standard output.
    pub fn out(&self, text: &str) {
        // A reader that has gone away is no fault of ours.
        let _ = anstream::stdout().write_all(text.as_bytes());
    }

    /// Writes a message to standard error.
    pub fn err(&self, text: &str) {
        let _ = anstream::stderr().write_all(text.as_bytes());
    }
}
