//! Where a figure comes from: every figure of this floor carries a source and how far it may be relied on.

use std::sync::LazyLock;

use super::data_file::rows;

/// How a figure was come by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// Read in a stored copy of the work named.
    Seen,
    /// Recalled; the output must say "from memory, verify", and no safety statement may rest on it alone.
    Memory,
    /// Worked out by a named program.
    Computed,
}

/// A work, law or program that figures were taken from.
#[derive(Debug, PartialEq, Eq)]
pub struct Source {
    /// The short name used in the data files.
    pub code: &'static str,
    /// How the figures were come by.
    pub mark: Mark,
    /// The citation to print.
    pub citation: &'static str,
}

/// A figure with its source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sourced<T> {
    /// The figure.
    pub value: T,
    /// Where it comes from.
    pub source: &'static Source,
}

static SOURCES: LazyLock<Vec<Source>> = LazyLock::new(|| read().unwrap_or_default());

fn read() -> Result<Vec<Source>, String> {
    rows(
        include_str!("data/sources.csv"),
        |[code, mark, citation]| {
            let mark = match mark {
                "seen" => Mark::Seen,
                "memory" => Mark::Memory,
                "computed" => Mark::Computed,
                _ => return None,
            };
            Some(Source {
                code,
                mark,
                citation,
            })
        },
    )
}

/// Finds the source of a code used in a data file.
pub(super) fn source(code: &str) -> Option<&'static Source> {
    SOURCES.iter().find(|source| source.code == code)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_list_of_sources_reads() {
        assert!(
            read().is_ok_and(|sources| sources.len() > 20),
            "{:?}",
            read()
        );
    }

    #[test]
    fn what_is_from_memory_says_so_in_its_citation() {
        for source in SOURCES.iter().filter(|source| source.mark == Mark::Memory) {
            let told = source.citation.to_lowercase();
            assert!(
                told.contains("from memory") || told.contains("no value"),
                "{}",
                source.code
            );
        }
    }
}
