//! The command line.

use crate::command::console::{Console, Exit};
use crate::command::convert_leak::Asked;
use crate::command::loaded::{LoadFault, Loaded, Target, load};
use crate::command::{
    account, check, compare, convert, due, explain, points, records, refrigerant, start, watch,
};
use clap::{Parser, Subcommand, ValueEnum};
use jiff::civil::Date;
use std::ffi::OsString;
use std::path::{Path, PathBuf};

/// Compiles plain-text job notes about refrigerant leaks into checked figures and a report.
///
/// A book is a folder with rimebook.toml in its root; in it a folder for each site, in that one for
/// each system, in that one for each visit, named by its day. Every command takes the path of a book,
/// a site, a system or a visit, and finds the rest by itself.
#[derive(Debug, Parser)]
#[command(name = "rimebook", version, max_term_width = 100)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Reads the notes and tells every problem, each with its place, reason and cure
    ///
    /// Errors are text that cannot be read or cannot be true; cautions are things that were done, or
    /// claimed, and should be looked at. Nothing is written. With --format json every figure is
    /// printed too, with its inputs.
    Check {
        /// Book, site, system or visit
        #[arg(default_value = ".")]
        path: PathBuf,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Accounts for the refrigerant: where every kilogram came from and went
    ///
    /// By circuit, by year, movement by movement and by cylinder. What is in the circuit now is worked
    /// out from its last filling; a loss is what was missing then. Earlier records by others stand apart
    /// and are in no sum. Of a visit: its system up to and with that visit. As CSV one table, masses
    /// in kg: rimebook account --format csv --by year.
    Account {
        /// Book, site, system or visit
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Only this table; as CSV the movements if left out
        #[arg(long, value_enum)]
        by: Option<AccountTable>,
        /// For people, for machines, or a table for a spreadsheet
        #[arg(long, value_enum, default_value = "people")]
        format: Sheet,
    },
    /// Makes the PDF reports of the visits under a path
    ///
    /// Reports go to the folder reports/ in the root of the book. No report is made of a visit while
    /// an error stands in a file that it reads; --draft makes one all the same, with a watermark.
    /// --issue freezes issue A of one visit; after a change of its notes the next is issue B, with a
    /// list of what changed. --history makes one PDF of each system instead, as at its last visit under
    /// the path: its points over time, refrigerant by year, leak rates, and what the tests left possible;
    /// given a site, one PDF with a chapter for each of its systems.
    #[cfg(feature = "pdf")]
    Report {
        /// Book, site, system or visit
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Make a watermarked report in spite of errors
        #[arg(long)]
        draft: bool,
        /// Make the history of each system, or of a site, instead of the reports of visits
        #[arg(long, conflicts_with = "issue")]
        history: bool,
        /// Folder to write to, instead of reports/ in the book
        #[arg(long)]
        into: Option<PathBuf>,
        /// Freeze a numbered issue of one visit's report; issued.json beside its notes keeps it
        #[arg(long)]
        issue: bool,
        /// Day of the issue, instead of today
        #[arg(long, value_name = "DATE", requires = "issue")]
        on: Option<jiff::civil::Date>,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Writes the draft of a mail that carries the report of a visit
    ///
    /// A file that any mail program opens: subject, a summary in plain text, the PDF attached, the
    /// recipient from `report-to` in site.toml. Nothing is sent. Given a system, its last visit is
    /// taken. The same notes give the same bytes.
    #[cfg(feature = "pdf")]
    Mail {
        /// A visit, or a system for its last one
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Folder to write to, instead of reports/ in the book
        #[arg(long)]
        into: Option<PathBuf>,
    },
    /// Tells which notes an old report was made from, and whether they have changed since
    ///
    /// Every report carries the digests of the notes, logs and photographs that it read. Run inside
    /// the book, or give its path, to compare.
    #[cfg(feature = "pdf")]
    MadeFrom {
        /// The PDF
        pdf: PathBuf,
        /// The book to compare with
        #[arg(default_value = ".")]
        path: PathBuf,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Compares a visit with an earlier one: what came back, what holds, what changed
    ///
    /// Examples: rimebook compare jobs-example/brackwater/flake-ice-1; rimebook compare
    /// brackwater/flake-ice-1/2026-06-17 --with 2025-02-18. Each point is compared with its own last
    /// look, charge, tests and readings with the visit before, or with the one that is named. Findings
    /// without an id are matched by their wording, as a proposal.
    Compare {
        /// Visit, or the system, site or book whose last visits are compared
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Visit of the same system to compare with, by the name of its folder
        #[arg(long)]
        with: Option<String>,
        /// Show the differences of the notes themselves, word by word, without what is private
        #[arg(long)]
        notes: bool,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Lists the registered points with their history, those that need a lasting cure first
    ///
    /// Every point has its whole life on one line of time, how often it leaked, how long each repair
    /// held, and when and with what it was last looked at. Over several systems: which kinds of point
    /// leak most per point-year.
    Points {
        /// Book, site, system, or a visit as whose end the points are shown
        #[arg(default_value = ".")]
        path: PathBuf,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Makes the folder of today's visit to a system, from its register and what stands open
    ///
    /// Points to look at first, last readings and dates that are due stand in it as comments; nothing
    /// that is there is ever written over: a second visit of a day gets -2 behind its day. Examples:
    /// rimebook start jobs-example/brackwater/flake-ice-1; rimebook start . --on 2026-09-01 --by t1.
    Start {
        /// The system
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Day of the visit; today at the site if left out
        #[arg(long)]
        on: Option<jiff::civil::Date>,
        /// Who goes, by the id in rimebook.toml
        #[arg(long)]
        by: Option<String>,
        /// What for, in a word of the list for `purpose`; by what stands open if left out
        #[arg(long)]
        purpose: Option<String>,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Converts a quantity to another unit, or to all of its kind
    ///
    /// Examples: rimebook convert "24.8 bar g" psig; rimebook convert "14 g/yr" oz/yr;
    /// rimebook convert "500 micron". Gauge and absolute are told apart; the air pressure is the
    /// standard atmosphere unless --altitude is given.
    ///
    /// A leak size changes between mass and throughput when its gas is named: rimebook convert
    /// "14 g/yr" "Pa m3/s" --gas R-134a --at "20 °C"; rimebook convert "5 g/yr R-134a"; rimebook convert "6 bubbles/min of 1 mm"
    /// g/yr --gas R-290. What the opening would let out of another gas, at other pressures:
    /// rimebook convert "1e-3 Pa m3/s" g/yr --gas nitrogen --between "40 bar g" "0 bar g" --as R-410A
    /// --as-between "24.2 bar a" "0 bar g". Air that came into a vacuum: --gas air --between
    /// "0 bar g" "0 Pa a".
    Convert {
        /// The quantity with its unit, as one argument
        #[arg(allow_hyphen_values = true)]
        quantity: String,
        /// The unit wanted; all if left out
        to: Option<String>,
        /// Gas that leaks: a refrigerant, nitrogen, air, helium, hydrogen or argon
        #[arg(long)]
        gas: Option<String>,
        /// Temperature of the gas; 20 °C if left out
        #[arg(long, allow_hyphen_values = true)]
        at: Option<String>,
        /// Gas that the same opening would let out instead
        #[arg(long = "as", value_name = "GAS", requires = "gas")]
        other: Option<String>,
        /// Pressures before and behind the opening
        #[arg(long, num_args = 2, value_names = ["FROM", "TO"], allow_hyphen_values = true, requires = "other")]
        between: Vec<String>,
        /// The same for the gas of --as; those of --between if left out
        #[arg(long, num_args = 2, value_names = ["FROM", "TO"], allow_hyphen_values = true, requires = "other")]
        as_between: Vec<String>,
        /// Height above the sea, for the air pressure
        #[arg(long)]
        altitude: Option<String>,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Shows a refrigerant: class, limits, GWP by law, and its saturation
    ///
    /// Examples: rimebook refrigerant R-449A; rimebook refrigerant r449a --at "-10 °C";
    /// rimebook refrigerant ammonia --at "8 bar g". At a temperature it gives the pressures of boiling
    /// liquid (bubble) and of condensing vapour (dew); at a pressure their temperatures, from which
    /// subcooling and superheat count. Every value names its source; what is from memory says so.
    /// Works without a network.
    Refrigerant {
        /// Designation in any usual spelling, or a common name
        name: String,
        /// Temperature or pressure on the saturation line; may be given several times
        #[arg(long, allow_hyphen_values = true)]
        at: Vec<String>,
        /// Height above the sea, for gauge pressures
        #[arg(long)]
        altitude: Option<String>,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
    /// Lists what is due across all sites, what is overdue first
    ///
    /// Verification tests, leak checks, repairs, reports and leakage detection systems by the rules in
    /// force at each site; for a whole book also certificates, yearly checks and calibrations, and
    /// proof tests of cylinders. Each line says what it counts from, with its file and line. Visits
    /// after the day are left out. Examples: rimebook due; rimebook due brackwater --within "30 days";
    /// rimebook due --format calendar --into due.ics. Exit code 3: something is overdue or falls due
    /// within the time asked for.
    Due {
        /// Book, site or system
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Day from which to look, such as 2026-08-01; today if left out
        #[arg(long)]
        on: Option<Date>,
        /// How far to look ahead
        #[arg(long, default_value = "90 days")]
        within: String,
        /// For people, for machines, or as iCalendar (RFC 5545) for any calendar
        #[arg(long, value_enum, default_value = "people")]
        format: DueFormat,
        /// File to write to, instead of standard output
        #[arg(long)]
        into: Option<PathBuf>,
    },
    /// Lists what has to be on record by the rules in force, and what is missing
    ///
    /// For each system and rule: every field with the file and line that hold it, or the file and the
    /// line to write. With --format csv a table for an inspector, one row for each field, to be filtered
    /// by rule, field, day or what is missing; with --pdf a document for an inspector of each system:
    /// its plate, each rule with its fields, and the events in order of time, as at its last visit where
    /// no day is given. Visits after the day are left out.
    /// Examples: rimebook records brackwater/flake-ice-1; rimebook records --format csv --into
    /// records.csv; rimebook records brackwater/flake-ice-1 --pdf. Exit code 3: something is missing.
    Records {
        /// Book, site or system
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Day as at which to look, such as 2026-08-01; today if left out
        #[arg(long)]
        on: Option<Date>,
        /// For people, for machines, or as a table
        #[arg(long, value_enum, default_value = "people")]
        format: Sheet,
        /// File to write to, instead of standard output; with --pdf the folder, instead of reports/
        #[arg(long)]
        into: Option<PathBuf>,
        /// Make a PDF of each system for an inspector
        #[cfg(feature = "pdf")]
        #[arg(long, conflicts_with = "format")]
        pdf: bool,
    },
    /// Checks again whenever a note is saved; with --report, prints again too
    ///
    /// Runs until it is interrupted. Nothing but the reports is written.
    Watch {
        /// Book, site, system or visit
        #[arg(default_value = ".")]
        path: PathBuf,
        /// Make the reports of the path after every change
        #[cfg(feature = "pdf")]
        #[arg(long)]
        report: bool,
    },
    /// Prints the completions of a shell, or the manual page
    ///
    /// Example: rimebook completions bash > ~/.local/share/bash-completion/completions/rimebook
    Completions {
        /// The shell; `man` gives the manual page in roff
        #[arg(value_enum)]
        shell: Wanted,
    },
    /// Explains a caution, or how a figure was worked out
    ///
    /// Examples: rimebook explain pressure-above-plate; rimebook explain pressure-test/p1
    /// jobs-example/brackwater. A figure is named by its id, as check --format json and the
    /// report's appendix print it, or by the beginning of it.
    Explain {
        /// Name of a caution, or id of a figure
        name: String,
        /// Book, site, system or visit to look for the figure in
        #[arg(default_value = ".")]
        path: PathBuf,
        /// For people or for machines
        #[arg(long, value_enum, default_value = "people")]
        format: Format,
    },
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum Format {
    /// For people
    People,
    /// JSON with a version number
    Json,
}

/// How tables are printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Sheet {
    /// For people
    People,
    /// JSON with a version number
    Json,
    /// Comma-separated values
    Csv,
}

/// A table of the account.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum AccountTable {
    /// Sums of each circuit
    Circuit,
    /// Sums of each cylinder over the whole book
    Cylinder,
    /// Sums of each calendar year
    Year,
    /// Every movement
    Movement,
}

/// How what is due is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum DueFormat {
    /// For people
    People,
    /// JSON with a version number
    Json,
    /// iCalendar, RFC 5545
    Calendar,
}

/// What completions are wanted for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum Wanted {
    /// Bash
    Bash,
    /// Elvish
    Elvish,
    /// Fish
    Fish,
    /// PowerShell
    Powershell,
    /// Zsh
    Zsh,
    /// The manual page
    Man,
}

/// Writes completions or the manual page, drawn from the table of arguments.
fn completions(wanted: Wanted, console: &Console) -> Exit {
    use clap_complete::Shell;
    let mut command = <Arguments as clap::CommandFactory>::command();
    let mut text = Vec::new();
    let shell = match wanted {
        Wanted::Bash => Shell::Bash,
        Wanted::Elvish => Shell::Elvish,
        Wanted::Fish => Shell::Fish,
        Wanted::Powershell => Shell::PowerShell,
        Wanted::Zsh => Shell::Zsh,
        Wanted::Man => {
            if clap_mangen::Man::new(command).render(&mut text).is_err() {
                return Exit::OurFault;
            }
            console.out(&String::from_utf8_lossy(&text));
            return Exit::Fine;
        }
    };
    clap_complete::generate(shell, &mut command, "rimebook", &mut text);
    console.out(&String::from_utf8_lossy(&text));
    Exit::Fine
}

/// Runs a command line and gives the exit code.
pub fn run(arguments: impl IntoIterator<Item = OsString>) -> u8 {
    let console = Console::of_process();
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(error) => {
            let _ = error.print();
            return if error.use_stderr() {
                Exit::Usage as u8
            } else {
                Exit::Fine as u8
            };
        }
    };
    let exit = match arguments.command {
        Command::Check { path, format } => with_book(&path, &console, |loaded, target| {
            if format == Format::Json {
                check::json(loaded, target, &console)
            } else {
                check::people(loaded, target, &console)
            }
        }),
        Command::Account { path, by, format } => with_book(&path, &console, |loaded, target| {
            account::account(loaded, target, by, format, &console)
        }),
        #[cfg(feature = "pdf")]
        Command::Report {
            path,
            draft,
            history,
            into,
            issue,
            on,
            format,
        } => with_book(&path, &console, |loaded, target| {
            let options = crate::command::report::Options {
                draft,
                history,
                into: into.as_deref(),
                issue,
                on,
                json: format == Format::Json,
                watching: false,
            };
            crate::command::report::report(loaded, target, &options, &console)
        }),
        #[cfg(feature = "pdf")]
        Command::MadeFrom { pdf, path, format } => {
            crate::command::made_from::tell(&pdf, &path, format == Format::Json, &console)
        }
        #[cfg(feature = "pdf")]
        Command::Mail { path, into } => with_book(&path, &console, |loaded, target| {
            crate::command::mail::mail(loaded, target, into.as_deref(), &console)
        }),
        Command::Compare {
            path,
            with,
            notes,
            format,
        } => with_book(&path, &console, |loaded, target| {
            let options = compare::Options {
                with: with.as_deref(),
                notes,
                json: format == Format::Json,
            };
            compare::compare(loaded, target, &options, &console)
        }),
        Command::Points { path, format } => with_book(&path, &console, |loaded, target| {
            points::points(loaded, target, format == Format::Json, &console)
        }),
        Command::Start {
            path,
            on,
            by,
            purpose,
            format,
        } => with_book(&path, &console, |loaded, target| {
            let wanted = start::Wanted {
                on,
                by: by.as_deref(),
                purpose: purpose.as_deref(),
            };
            start::start(loaded, target, &wanted, format == Format::Json, &console)
        }),
        Command::Convert {
            quantity,
            to,
            gas,
            at,
            other,
            between,
            as_between,
            altitude,
            format,
        } => {
            let asked = Asked {
                quantity: &quantity,
                to: to.as_deref(),
                gas: gas.as_deref(),
                at: at.as_deref(),
                other: other.as_deref(),
                between: &between,
                other_between: &as_between,
            };
            convert::convert(
                &asked,
                altitude.as_deref(),
                format == Format::Json,
                &console,
            )
        }
        Command::Refrigerant {
            name,
            at,
            altitude,
            format,
        } => {
            let as_json = format == Format::Json;
            refrigerant::refrigerant(&name, &at, altitude.as_deref(), as_json, &console)
        }
        Command::Due {
            path,
            on,
            within,
            format,
            into,
        } => with_book(&path, &console, |loaded, target| {
            let print: due::Print = match format {
                DueFormat::People => due::people,
                DueFormat::Json => due::json,
                DueFormat::Calendar => crate::command::calendar::calendar,
            };
            due::due(
                loaded,
                target,
                (on, &within),
                print,
                into.as_deref(),
                &console,
            )
        }),
        Command::Records {
            path,
            on,
            format,
            into,
            #[cfg(feature = "pdf")]
            pdf,
        } => with_book(&path, &console, |loaded, target| {
            #[cfg(feature = "pdf")]
            if pdf {
                return crate::command::printed_records::print_records(
                    loaded,
                    target,
                    on,
                    into.as_deref(),
                    &console,
                );
            }
            let print: records::Print = match format {
                Sheet::People => records::people,
                Sheet::Json => records::json,
                Sheet::Csv => records::csv,
            };
            records::records(loaded, target, on, print, into.as_deref(), &console)
        }),
        Command::Completions { shell } => completions(shell, &console),
        #[cfg(feature = "pdf")]
        Command::Watch { path, report } => watch::watch(&path, &console, &|loaded, target| {
            if report {
                let options = crate::command::report::Options {
                    watching: true,
                    ..Default::default()
                };
                crate::command::report::report(loaded, target, &options, &console)
            } else {
                Exit::Fine
            }
        }),
        #[cfg(not(feature = "pdf"))]
        Command::Watch { path } => watch::watch(&path, &console, &|_, _| Exit::Fine),
        Command::Explain { name, path, format } => {
            explain::explain(&name, &path, format == Format::Json, &console)
        }
    };
    exit as u8
}

fn with_book(
    path: &Path,
    console: &Console,
    command: impl FnOnce(&Loaded, &Target) -> Exit,
) -> Exit {
    match load(path) {
        Ok((loaded, target)) => command(&loaded, &target),
        Err(fault) => {
            console.err(&fault.message());
            match fault {
                LoadFault::NoBook(_) => Exit::Usage,
                LoadFault::Disk(_, error) if error.kind() == std::io::ErrorKind::NotFound => {
                    Exit::Usage
                }
                LoadFault::Disk(..) => Exit::Disk,
            }
        }
    }
}
