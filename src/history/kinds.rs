//! Which kinds of point leak most: leaks per point-year, with an exact interval for small numbers.

use crate::history::PointHistory;
use crate::job::{Book, Moment, System, Visit};
use crate::text::Noted;
use jiff::civil::Date;
use statrs::distribution::{ChiSquared, ContinuousCDF};
use std::collections::BTreeMap;

/// Leaks of one kind of point.
#[derive(Clone, Debug, PartialEq)]
pub struct KindRate {
    /// The kind, as registered.
    pub kind: String,
    /// How many points of it.
    pub points: usize,
    /// Leaks found, one found still leaking counted once.
    pub leaks: usize,
    /// Years that its points were watched, together.
    pub point_years: f64,
    /// Leaks per point-year; none without a year.
    pub rate: Option<f64>,
    /// Exact interval of that rate, 95 % two-sided.
    pub interval: Option<(f64, f64)>,
}

/// The exact two-sided interval of the mean of a Poisson count, by quantiles of chi-square:
/// `χ²(α/2; 2n) / 2` to `χ²(1 − α/2; 2n + 2) / 2`.
///
/// Source: F. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28 (1936) 437,
/// from memory.
pub fn poisson_interval(count: usize, confidence: f64) -> Option<(f64, f64)> {
    let tail = (1.0 - confidence) / 2.0;
    let number = f64::from(u32::try_from(count).ok()?);
    let quantile = |freedom: f64, p: f64| Some(ChiSquared::new(freedom).ok()?.inverse_cdf(p) / 2.0);
    let low = if count == 0 {
        0.0
    } else {
        quantile(2.0 * number, tail)?
    };
    Some((low, quantile(2.0 * number + 2.0, 1.0 - tail)?))
}

/// Leaks by kind over all systems that a condition keeps, the most per point-year first.
///
/// A point is watched from the first record of its system, or from the day its system was put in
/// where that is later, to the last visit; not while it was taken out.
pub fn kinds(book: &Book, keep: impl Fn(&System) -> bool) -> Vec<KindRate> {
    let mut tally: BTreeMap<String, (usize, usize, f64)> = BTreeMap::new();
    for system in book.sites.iter().flat_map(|site| &site.systems) {
        let Some(last) = system.visits.len().checked_sub(1).filter(|_| keep(system)) else {
            continue;
        };
        let Some((from, to)) = watched(system) else {
            continue;
        };
        for (id, note) in system.points.iter() {
            let Some(kind) = &note.kind else { continue };
            let history = PointHistory::of(system, id, last);
            let entry = tally.entry(kind.value.clone()).or_default();
            entry.0 += 1;
            entry.1 += history.spells.iter().filter(|s| s.found >= from).count();
            entry.2 += years_there(from, to, &note.replaced, &note.removed);
        }
    }
    let mut kinds: Vec<KindRate> = tally
        .into_iter()
        .map(|(kind, (points, leaks, point_years))| {
            let per_year = |count: f64| count / point_years;
            let counted = f64::from(u32::try_from(leaks).unwrap_or(u32::MAX));
            let some = point_years > 0.0;
            KindRate {
                kind,
                points,
                leaks,
                point_years,
                rate: some.then(|| per_year(counted)),
                interval: poisson_interval(leaks, 0.95)
                    .filter(|_| some)
                    .map(|(low, high)| (per_year(low), per_year(high))),
            }
        })
        .collect();
    kinds.sort_by(|a, b| {
        let rate = |kind: &KindRate| kind.rate.unwrap_or(-1.0);
        rate(b).total_cmp(&rate(a)).then(a.kind.cmp(&b.kind))
    });
    kinds
}

/// The first and the last day that anything is known of a system.
fn watched(system: &System) -> Option<(Date, Date)> {
    let last = system.visits.last()?.last_day();
    let first = system
        .earlier
        .iter()
        .map(|earlier| earlier.at.value)
        .map(Moment::date)
        .chain(system.visits.first().map(|visit: &Visit| visit.name.date))
        .min()?;
    let installed = system.note.as_ref().and_then(|note| note.installed);
    Some((installed.map_or(first, |day| day.value.max(first)), last))
}

/// Years of 365 days between two days without those from a removal to the next replacement.
fn years_there(from: Date, to: Date, replaced: &[Noted<Date>], removed: &[Noted<Date>]) -> f64 {
    let days = |from: Date, to: Date| f64::from((to - from).get_days().max(0));
    let mut gone: Vec<Date> = removed.iter().map(|day| day.value).collect();
    gone.sort();
    let mut watched = days(from, to);
    let mut counted = from;
    for start in gone {
        let back = replaced.iter().map(|day| day.value).filter(|d| *d >= start);
        let end = back.min().unwrap_or(to).min(to);
        let start = start.max(counted);
        watched -= days(start, end);
        counted = counted.max(end);
    }
    watched.max(0.0) / 365.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(found: f64, expected: f64) -> bool {
        (found - expected).abs() < 1e-4
    }

    #[test]
    fn the_exact_interval_is_the_analytic_one_where_there_is_one() {
        // Derived: with no count the upper end is −ln 0.025; with one the lower end is −ln 0.975.
        let (low, high) = poisson_interval(0, 0.95).unwrap();
        assert!(low.abs() < 1e-12 && near(high, -(0.025_f64.ln())));
        let (low, _) = poisson_interval(1, 0.95).unwrap();
        assert!(near(low, -(0.975_f64.ln())), "{low}");
    }

    #[test]
    fn the_exact_interval_is_that_of_the_printed_tables() {
        // From memory: the usual tables of exact 95 % limits for a Poisson count (after Garwood 1936).
        for (count, low, high) in [
            (1, 0.0253, 5.5716),
            (5, 1.6235, 11.6683),
            (10, 4.7954, 18.3904),
        ] {
            let found = poisson_interval(count, 0.95).unwrap();
            assert!(
                near(found.0, low) && near(found.1, high),
                "{count}: {found:?}"
            );
        }
    }

    #[test]
    fn the_tails_of_the_interval_hold_what_they_say() {
        // Derived: at the upper end of the interval of 2, at most two events have 2.5 %.
        let (_, m) = poisson_interval(2, 0.95).unwrap();
        assert!(near((-m).exp() * (1.0 + m + m * m / 2.0), 0.025));
    }

    #[test]
    fn years_without_the_part_are_not_counted() {
        use jiff::civil::date;
        let span = crate::text::Span::file_start(crate::text::FileId(0));
        let noted = |day| vec![Noted::new(day, span)];
        let years = years_there(
            date(2023, 1, 1),
            date(2025, 1, 1),
            &noted(date(2024, 1, 1)),
            &noted(date(2023, 1, 1)),
        );
        assert!((years - 366.0 / 365.0).abs() < 1e-9, "{years}");
    }
}
