//! What moved in and out of a circuit, year by year, earlier records told apart.

use crate::job::System;
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::working::account::Account;
use std::collections::BTreeMap;

/// One calendar year of a circuit; masses in kg.
#[derive(Clone, Copy, Debug, Default, PartialEq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct Year {
    /// The year.
    pub year: i16,
    /// The refrigerant that moved, or was in force at the end of the year; empty where none is noted.
    pub refrigerant: &'static str,
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
    /// What of the full charge did not come out at a change of refrigerant; none without one.
    pub missing_at_retrofit_kg: Option<f64>,
    /// The full charge that it is of.
    pub retrofit_charge_kg: f64,
}

/// The years of a circuit's account, the first to the last with a movement or a visit; a year in which
/// the refrigerant was changed is told for each.
pub fn years(system: &System, circuit: usize, account: &Account) -> Vec<Year> {
    let visited = system.visits.iter().map(|visit| visit.name.date.year());
    let moved = account.entries.iter().map(|e| e.at.value.date().year());
    let known: Vec<i16> = visited.chain(moved).collect();
    let (Some(first), Some(last)) = (known.iter().min(), known.iter().max()) else {
        return Vec::new();
    };
    let since = account.complete_since.map(crate::job::Moment::date);
    let mut years: BTreeMap<(i16, usize), Year> = BTreeMap::new();
    let mut gases: Vec<&'static str> = Vec::new();
    let mut of = |years: &mut BTreeMap<(i16, usize), Year>, year: i16, gas: &'static str| {
        let order = gases.iter().position(|known| *known == gas);
        let order = order.unwrap_or_else(|| {
            gases.push(gas);
            gases.len() - 1
        });
        let complete = since.is_some_and(|since| since.year() < year);
        years.entry((year, order)).or_insert(Year {
            year,
            refrigerant: gas,
            complete,
            ..Year::default()
        });
        (year, order)
    };
    for entry in &account.entries {
        let day = entry.at.value.date();
        let out = entry.kind != MovementKind::Charged;
        let before = day.yesterday().ok().filter(|_| out);
        let in_force = before
            .and_then(|before| system.in_force(circuit, before))
            .or_else(|| system.in_force(circuit, day));
        let gas = entry
            .refrigerant
            .or(in_force.and_then(|known| known.refrigerant));
        let key = of(
            &mut years,
            day.year(),
            gas.map_or("", |gas| gas.designation),
        );
        let Some(year) = years.get_mut(&key) else {
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
        if out && entry.why == Some(MovementWhy::Retrofit) {
            let full = in_force.and_then(|known| known.note.full_charge);
            let full = full.map_or(0.0, |full| full.value.value.si());
            let left = year.missing_at_retrofit_kg.unwrap_or(full);
            year.retrofit_charge_kg = full;
            year.missing_at_retrofit_kg = Some(left - entry.kg);
        }
    }
    for addition in account.additions.iter().filter(|a| a.visit.is_some()) {
        let day = addition.at.value.date();
        let gas = system
            .in_force(circuit, day)
            .and_then(|known| known.refrigerant);
        let key = of(
            &mut years,
            day.year(),
            gas.map_or("", |gas| gas.designation),
        );
        if let Some(year) = years.get_mut(&key) {
            year.leaked_kg += addition.leaked_kg;
        }
    }
    for year in *first..=*last {
        if years.range((year, 0)..=(year, usize::MAX)).next().is_none() {
            let end = jiff::civil::Date::new(year, 12, 31).ok();
            let gas = end.and_then(|end| system.in_force(circuit, end)?.refrigerant);
            of(&mut years, year, gas.map_or("", |gas| gas.designation));
        }
    }
    years.into_values().collect()
}
