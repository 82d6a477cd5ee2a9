//! What moved in and out of a circuit, year by year, earlier records told apart.

use crate::job::System;
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::working::account::Account;
use std::collections::BTreeMap;

/// One calendar year of a circuit; masses in kg.
#[derive(Clone, Copy, Debug, Default, PartialEq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct Year {
    /// The year.
    pub year: i16,
    /// Charged at visits of this book, gross.
    pub charged_kg: f64,
    /// Charged by earlier records or others.
    pub charged_by_others_kg: f64,
    /// Recovered at visits of this book.
    pub recovered_kg: f64,
    /// Recovered by earlier records or others.
    pub recovered_by_others_kg: f64,
    /// What jobs of this book had to add for leaks, net.
    pub leaked_kg: f64,
    /// Whether every movement of the whole year is known.
    pub complete: bool,
}

/// The years of a circuit's account, the first to the last with a movement or a visit.
pub fn years(system: &System, account: &Account) -> Vec<Year> {
    let mut years: BTreeMap<i16, Year> = BTreeMap::new();
    let visited = system.visits.iter().map(|visit| visit.name.date.year());
    let moved = account.entries.iter().map(|e| e.at.value.date().year());
    let known: Vec<i16> = visited.chain(moved).collect();
    let (Some(first), Some(last)) = (known.iter().min(), known.iter().max()) else {
        return Vec::new();
    };
    let since = account.complete_since.map(crate::job::Moment::date);
    for year in *first..=*last {
        let complete = since.is_some_and(|since| since.year() < year);
        years.insert(
            year,
            Year {
                year,
                complete,
                ..Year::default()
            },
        );
    }
    for entry in &account.entries {
        let Some(year) = years.get_mut(&entry.at.value.date().year()) else {
            continue;
        };
        let ours = entry.visit.is_some();
        match entry.kind {
            MovementKind::Charged if ours => year.charged_kg += entry.kg,
            MovementKind::Charged => year.charged_by_others_kg += entry.kg,
            MovementKind::Recovered if ours => year.recovered_kg += entry.kg,
            MovementKind::Recovered => year.recovered_by_others_kg += entry.kg,
            _ => {}
        }
    }
    for addition in account.additions.iter().filter(|a| a.visit.is_some()) {
        if let Some(year) = years.get_mut(&addition.at.value.date().year()) {
            year.leaked_kg += addition.leaked_kg;
        }
    }
    years.into_values().collect()
}
