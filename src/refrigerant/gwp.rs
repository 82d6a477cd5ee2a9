//! Global warming potential by law or assessment report, and CO2 equivalent.
//!
//! The GWP of a blend is the sum of its constituents' GWP by nominal mass fraction: Regulation (EU) 2024/573 Annex VI,
//! Regulation (EU) No 517/2014 Annex IV, 40 CFR 84.64(b). It is never rounded here; who prints it rounds it, half up.

use std::sync::LazyLock;

use super::data_file::rows;
use super::refrigerant::Component;
use super::source::{Mark, Sourced, source};
use super::substance::{Substance, substance};

/// The table that GWP is taken from; a rule set names the one it asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum GwpSet {
    /// Regulation (EU) 2024/573.
    Eu2024,
    /// Regulation (EU) No 517/2014, which Great Britain retains.
    Eu2014,
    /// 40 CFR 84.64.
    Us84,
    /// IPCC Fourth Assessment Report, 100 years.
    Ar4,
    /// IPCC Fifth Assessment Report, 100 years, without climate-carbon feedbacks.
    Ar5,
    /// IPCC Sixth Assessment Report, 100 years.
    Ar6,
}

impl GwpSet {
    /// Every set, in order.
    pub const ALL: [Self; 6] = [
        Self::Eu2024,
        Self::Eu2014,
        Self::Us84,
        Self::Ar4,
        Self::Ar5,
        Self::Ar6,
    ];

    /// Gives the name to print.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Eu2024 => "Regulation (EU) 2024/573",
            Self::Eu2014 => "Regulation (EU) No 517/2014",
            Self::Us84 => "40 CFR 84.64",
            Self::Ar4 => "IPCC AR4, 100 years",
            Self::Ar5 => "IPCC AR5, 100 years",
            Self::Ar6 => "IPCC AR6, 100 years",
        }
    }
}

/// The part that one constituent has in a GWP.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GwpTerm {
    /// The constituent.
    pub substance: &'static Substance,
    /// Its nominal share in mass %.
    pub mass_percent: f64,
    /// Its GWP, with the source.
    pub gwp: Sourced<f64>,
}

/// The GWP of a refrigerant under one set, with all that it was worked out from.
#[derive(Clone, Debug, PartialEq)]
pub struct Gwp {
    /// The GWP in kg CO2 per kg, not rounded.
    pub value: f64,
    /// The constituents that were summed.
    pub terms: Vec<GwpTerm>,
    /// The constituents left out because the set lists none: 40 CFR 84.64(c) only.
    pub excluded: Vec<&'static Substance>,
}

impl Gwp {
    /// Tells whether a GWP that counts was only recalled, so that the output must say so.
    pub fn is_from_memory(&self) -> bool {
        self.terms
            .iter()
            .any(|term| term.gwp.source.mark == Mark::Memory)
    }
}

/// Works out the GWP of a mixture from pairs of mass % and GWP: Annex VI of Regulation (EU) 2024/573.
pub fn mixture_gwp(parts: impl IntoIterator<Item = (f64, f64)>) -> f64 {
    // Percent times GWP first: those products are mostly whole numbers, so an exact half stays an exact half.
    let sum: f64 = parts
        .into_iter()
        .map(|(mass_percent, gwp)| mass_percent * gwp)
        .sum();
    sum / 100.0
}

/// Works out the CO2 equivalent in kg of a mass in kg: mass times GWP (Regulation (EU) 2024/573, Article 3, point (3)).
pub fn co2e_kg(mass_kg: f64, gwp: f64) -> f64 {
    mass_kg * gwp
}

/// Works out the GWP of a composition; `None` where the set holds no value that the sum needs.
pub(super) fn gwp(components: &[Component], set: GwpSet) -> Option<Gwp> {
    let mut terms = Vec::new();
    let mut excluded = Vec::new();
    for &Component {
        substance,
        mass_percent,
    } in components
    {
        match listed(set, substance) {
            Some(gwp) => terms.push(GwpTerm {
                substance,
                mass_percent,
                gwp,
            }),
            None if set == GwpSet::Us84 => excluded.push(substance),
            None => return None,
        }
    }
    if terms.is_empty() {
        return None;
    }
    let value = mixture_gwp(terms.iter().map(|term| (term.mass_percent, term.gwp.value)));
    Some(Gwp {
        value,
        terms,
        excluded,
    })
}

type Table = Vec<(&'static Substance, Sourced<f64>)>;

static TABLES: LazyLock<Vec<(GwpSet, Table)>> = LazyLock::new(|| {
    let table = |set| (set, read(set).unwrap_or_default());
    GwpSet::ALL.into_iter().map(table).collect()
});

fn listed(set: GwpSet, substance: &Substance) -> Option<Sourced<f64>> {
    let (_, table) = TABLES.iter().find(|(of, _)| *of == set)?;
    let row = table
        .iter()
        .find(|(of, _)| of.designation == substance.designation)?;
    Some(row.1)
}

fn read(set: GwpSet) -> Result<Table, String> {
    let text = match set {
        GwpSet::Eu2024 => include_str!("data/gwp_eu_2024.csv"),
        GwpSet::Eu2014 => include_str!("data/gwp_eu_2014.csv"),
        GwpSet::Us84 => include_str!("data/gwp_us_84.csv"),
        GwpSet::Ar4 => include_str!("data/gwp_ar4.csv"),
        GwpSet::Ar5 => include_str!("data/gwp_ar5.csv"),
        GwpSet::Ar6 => include_str!("data/gwp_ar6.csv"),
    };
    rows(text, |[of, gwp, code]| {
        let value = gwp.parse().ok()?;
        let source = source(code)?;
        Some((substance(of)?, Sourced { value, source }))
    })
}

#[cfg(test)]
mod tests {
    use super::super::{OzoneClass, find};
    use super::*;

    #[test]
    fn every_table_reads_and_lists_no_substance_twice() {
        for set in GwpSet::ALL {
            let table = read(set).unwrap();
            let mut seen: Vec<_> = table.iter().map(|(of, _)| of.designation).collect();
            seen.sort_unstable();
            seen.dedup();
            assert_eq!(seen.len(), table.len(), "{}", set.title());
        }
    }

    #[test]
    fn an_ozone_depleting_refrigerant_has_no_gwp_in_the_f_gas_laws() {
        let r22 = find("R-22").unwrap();
        assert_eq!(r22.ozone_class(), Some(OzoneClass::Two));
        for set in [GwpSet::Eu2024, GwpSet::Eu2014, GwpSet::Us84] {
            assert_eq!(r22.gwp(set), None, "{}", set.title());
        }
        assert_eq!(r22.gwp(GwpSet::Ar4).unwrap().value, 1810.0);
    }

    #[test]
    fn us_84_leaves_an_unlisted_constituent_out_and_says_which() {
        let gwp = find("R-508B").unwrap().gwp(GwpSet::Us84).unwrap();
        assert_eq!(gwp.value, 6808.0);
        let excluded: Vec<_> = gwp.excluded.iter().map(|of| of.designation).collect();
        assert_eq!(excluded, ["R-116"]);
    }

    #[test]
    fn a_gwp_from_memory_says_so() {
        assert!(
            find("R-514A")
                .unwrap()
                .gwp(GwpSet::Eu2014)
                .unwrap()
                .is_from_memory()
        );
        assert!(
            !find("R-449A")
                .unwrap()
                .gwp(GwpSet::Eu2024)
                .unwrap()
                .is_from_memory()
        );
    }
}
