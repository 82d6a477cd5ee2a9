//! From the unit as someone typed it to the rows of the table that it can mean.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::kind::{Flavour, Kind};
use super::unit::{UNITS, Unit};

/// What follows a pressure unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Reference {
    Bare,
    Gauge,
    Absolute,
    /// Counted downwards from the atmosphere.
    Below,
}

/// A row of the table and, for a pressure, what it is measured from.
#[derive(Debug, Clone, Copy)]
pub(super) struct Found {
    pub unit: &'static Unit,
    pub reference: Reference,
}

/// What a typed unit turned out to be.
#[derive(Debug)]
pub(super) enum Lookup {
    /// It can mean each of these.
    Known(&'static [Found]),
    /// Only if the case of its first letter is ignored, which would be a factor of a thousand million.
    WrongPrefix(&'static [Found]),
    Unknown,
}

impl Found {
    /// Its symbol for a value of this flavour.
    pub fn symbol(self, flavour: Flavour) -> &'static str {
        let Some(referenced) = &self.unit.referenced else {
            return self.unit.symbol;
        };
        match flavour {
            Flavour::GaugePressure if self.reference == Reference::Below => referenced.below,
            Flavour::GaugePressure => referenced.gauge,
            Flavour::AbsolutePressure => referenced.absolute,
            Flavour::VacuumPressure if !self.is_fine() => referenced.absolute,
            _ => self.unit.symbol,
        }
    }

    /// Whether the unit is one that vacuum gauges show, so that it needs no `a` in a vacuum test.
    pub fn is_fine(self) -> bool {
        const LARGEST: f64 = 134.0;
        self.unit.referenced.is_some() && self.unit.factor < LARGEST
    }

    /// SI value of one unit, negative when counted downwards.
    pub fn factor(self) -> f64 {
        if self.reference == Reference::Below {
            -self.unit.factor
        } else {
            self.unit.factor
        }
    }

    /// The value in SI.
    pub fn to_si(self, number: f64) -> f64 {
        number * self.factor() + self.unit.offset
    }

    /// The value in this unit.
    pub fn number(self, si: f64) -> f64 {
        (si - self.unit.offset) / self.factor()
    }
}

/// The spelling without what does not count: spaces, dots, hyphens, brackets, forms of letters.
pub(super) fn key(typed: &str) -> String {
    let mut key = String::with_capacity(typed.len());
    let joined;
    let typed = if typed.contains(" per ") {
        joined = typed.replace(" per ", "/");
        &joined
    } else {
        typed
    };
    for character in typed.chars() {
        match character {
            '²' => key.push('2'),
            '³' => key.push('3'),
            'μ' => key.push('µ'),
            '∆' => key.push('Δ'),
            'º' | '˚' => key.push('°'),
            '℃' => key.push_str("°C"),
            '℉' => key.push_str("°F"),
            '.' | '·' | '⋅' | '∙' | '-' | '(' | ')' => {}
            space if space.is_whitespace() => {}
            other => key.push(other),
        }
    }
    match key.rsplit_once('/') {
        Some((above, below)) => format!("{above}/{}", time_word(below)),
        None => key,
    }
}

fn time_word(word: &str) -> &str {
    match word.to_ascii_lowercase().as_str() {
        "year" | "years" | "yrs" | "yr" | "y" | "a" | "annum" => "yr",
        "day" | "days" | "d" => "d",
        "hour" | "hours" | "hr" | "hrs" | "h" => "h",
        "minute" | "minutes" | "mins" | "min" => "min",
        "second" | "seconds" | "sec" | "s" => "s",
        _ => word,
    }
}

type Index = BTreeMap<String, Vec<Found>>;

/// By exact key, and by key in lower case.
static INDEX: LazyLock<(Index, Index)> = LazyLock::new(|| {
    let mut exact = Index::new();
    let mut folded = Index::new();
    for unit in UNITS {
        for spelling in std::iter::once(&unit.symbol).chain(unit.spellings) {
            for (suffix, reference) in suffixes(unit) {
                let key = format!("{}{suffix}", key(spelling));
                let found = Found {
                    unit,
                    reference: *reference,
                };
                insert(&mut folded, key.to_lowercase(), found);
                insert(&mut exact, key, found);
            }
        }
    }
    (exact, folded)
});

fn insert(index: &mut Index, key: String, found: Found) {
    let rows = index.entry(key).or_default();
    if !rows.iter().any(|row| std::ptr::eq(row.unit, found.unit)) {
        rows.push(found);
    }
}

fn suffixes(unit: &Unit) -> &'static [(&'static str, Reference)] {
    const BARE: (&str, Reference) = ("", Reference::Bare);
    if unit.referenced.is_none() {
        return &[BARE];
    }
    &[
        BARE,
        ("g", Reference::Gauge),
        ("gauge", Reference::Gauge),
        ("a", Reference::Absolute),
        ("abs", Reference::Absolute),
        ("absolute", Reference::Absolute),
        ("vac", Reference::Below),
        ("vacuum", Reference::Below),
    ]
}

/// What a typed unit can mean. Case counts only where it changes a prefix.
pub(super) fn lookup(typed: &str) -> Lookup {
    let (exact, folded) = &*INDEX;
    let key = key(typed);
    if let Some(rows) = exact.get(&key) {
        return Lookup::Known(rows);
    }
    let lower = key.to_lowercase();
    match folded.get(&lower) {
        None => Lookup::Unknown,
        Some(rows) if rows.iter().all(|row| prefix_differs(&key, &lower, *row)) => {
            Lookup::WrongPrefix(rows)
        }
        Some(rows) => Lookup::Known(rows),
    }
}

/// Whether the key differs from the unit in `m` (a thousandth) against `M` (a million).
fn prefix_differs(key: &str, lower: &str, found: Found) -> bool {
    let (Some(typed), Some(printed)) = (key.chars().next(), found.unit.symbol.chars().next())
    else {
        return false;
    };
    let is_prefix = lower.strip_prefix('m').is_some_and(|rest| {
        INDEX.1.get(rest).is_some_and(|rows| {
            rows.iter()
                .any(|row| row.unit.flavour == found.unit.flavour)
        })
    });
    is_prefix && typed != printed
}

/// The unit with exactly this symbol, as printed, for a value of this flavour.
pub(super) fn by_symbol(symbol: &str, flavour: Flavour) -> Option<Found> {
    const REFERENCES: [Reference; 4] = [
        Reference::Bare,
        Reference::Gauge,
        Reference::Absolute,
        Reference::Below,
    ];
    UNITS
        .iter()
        .filter(|unit| unit.flavour == flavour.base())
        .flat_map(|unit| REFERENCES.map(|reference| Found { unit, reference }))
        .find(|found| found.symbol(flavour) == symbol)
}

/// The symbols a value of this kind can be printed with.
pub(super) fn symbols(kind: Kind) -> Vec<&'static str> {
    let mut symbols = Vec::new();
    for flavour in kind.flavours() {
        for unit in UNITS.iter().filter(|unit| unit.flavour == flavour.base()) {
            for reference in [Reference::Gauge, Reference::Below] {
                let symbol = Found { unit, reference }.symbol(*flavour);
                if !symbol.is_empty() && !symbols.contains(&symbol) {
                    symbols.push(symbol);
                }
            }
        }
    }
    symbols
}

/// All that a value of this kind can be written with, symbols first.
pub(super) fn names(kind: Kind) -> Vec<&'static str> {
    let mut names = symbols(kind);
    for flavour in kind.flavours() {
        for unit in UNITS.iter().filter(|unit| unit.flavour == flavour.base()) {
            names.extend(unit.spellings);
        }
    }
    names
}

#[cfg(test)]
mod tests {
    use super::*;

    fn known(typed: &str) -> Vec<(&'static str, Reference)> {
        match lookup(typed) {
            Lookup::Known(rows) => rows
                .iter()
                .map(|found| (found.unit.symbol, found.reference))
                .collect(),
            _ => Vec::new(),
        }
    }

    #[test]
    fn spacing_dots_and_brackets_do_not_count() {
        for typed in ["bar g", "barg", "bar(g)", "bar (g)", "Bar G", "bar gauge"] {
            assert_eq!(known(typed), [("bar", Reference::Gauge)], "{typed}");
        }
        for typed in ["mbar l/s", "mbar·L/s", "mbar.l/s", "mbar L per second"] {
            assert_eq!(known(typed), [("mbar L/s", Reference::Bare)], "{typed}");
        }
        for typed in ["g/yr", "g/a", "g per year", "G/Year"] {
            assert_eq!(known(typed), [("g/yr", Reference::Bare)], "{typed}");
        }
    }

    #[test]
    fn the_case_of_a_prefix_counts_and_other_case_does_not() {
        for typed in ["mPa", "mpa g", "Mbar", "MBAR a", "MTorr", "MM", "ML", "MA"] {
            assert!(matches!(lookup(typed), Lookup::WrongPrefix(_)), "{typed}");
        }
        for typed in ["KG", "PSIG", "MPA", "kpa a", "Min", "MMHG", "Micron", "M3"] {
            assert!(matches!(lookup(typed), Lookup::Known(_)), "{typed}");
        }
    }

    #[test]
    fn no_two_rows_of_one_flavour_share_a_spelling() {
        for (key, rows) in &INDEX.0 {
            for (place, row) in rows.iter().enumerate() {
                assert!(
                    rows.iter()
                        .skip(place + 1)
                        .all(|other| other.unit.flavour != row.unit.flavour),
                    "{key}"
                );
            }
        }
    }

    #[test]
    fn symbols_lead_back_to_their_rows() {
        for kind in Kind::ALL {
            for symbol in symbols(kind) {
                assert!(
                    kind.flavours()
                        .iter()
                        .any(|flavour| by_symbol(symbol, *flavour).is_some()),
                    "{symbol}"
                );
            }
        }
    }
}
