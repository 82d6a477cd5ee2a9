//! What a log of a pressure test lost beyond temperature, by least squares over the whole course.

use crate::refrigerant::nitrogen_z;
use crate::working::least_squares::least_squares;

/// The course of a test: equally long columns.
#[derive(Clone, Copy, Debug)]
pub struct Course<'l> {
    /// Seconds, ascending.
    pub time_s: &'l [f64],
    /// Pressure, Pa.
    pub pressure_pa: &'l [f64],
    /// What makes it absolute, Pa: the air's for a gauge, else 0.
    pub air_pa: f64,
    /// Temperature, K.
    pub temperature_k: &'l [f64],
}

/// What the course says.
#[derive(Clone, Debug, PartialEq)]
pub struct LogFit {
    /// Pressure lost over the test, Pa.
    pub lost_pa: f64,
    /// Its standard uncertainty from the scatter about the fit, its autocorrelation in it, Pa.
    pub scatter_pa: f64,
    /// Standard deviation of the five-minute means about the fit, Pa.
    pub residual_pa: f64,
    /// Standard uncertainty of what the share followed moved the loss by, Pa.
    pub following_pa: f64,
    /// How many means in a row say the same: the integrated autocorrelation.
    pub correlation: f64,
    /// Means fitted.
    pub means: usize,
    /// Share of a temperature change that the gas followed; `None` where no change told it.
    pub followed: Option<f64>,
    /// How far the gas was behind the thermometer, s; `None` where no change told it.
    pub behind_s: Option<f64>,
}

/// Equal times over which rows are averaged before the fit: five minutes of a day.
const MEANS: usize = 288;

/// Standard uncertainty of the share of a temperature change that the gas follows, beside 1.
pub const FOLLOWED: f64 = 0.15;
/// Standard uncertainty of the time by which the gas is behind the thermometer, s.
pub const BEHIND_S: f64 = 3600.0;

/// Share of the shift that `c₂` brings to the loss which is taken as its standard uncertainty: a day's
/// hours of sun can tell another share than the slow drift that looks like a leak (simulated logs).
pub const FOLLOWING_DOUBT: f64 = 0.4;
/// Means without which a course is no log.
pub const FEWEST_MEANS: usize = 24;
/// Range of the temperature that tells how the gas followed, K.
const TOLD_K: f64 = 0.5;

/// Fits `p = [ZT ÷ (ZT)₀] × (P₀ − D t ÷ t_end) + c₁ dT/dt + c₂ (T − T̄)`; `None` outside the table of
/// nitrogen, or with fewer than [`FEWEST_MEANS`].
///
/// `c₁` and `c₂` are held near 0 as [`FOLLOWED`] and [`BEHIND_S`] say, each as one more observation,
/// since a temperature that only drifts cannot tell them from a leak. The rows' variance is multiplied by
/// the integrated autocorrelation of the residuals.
pub fn fit_log(course: &Course<'_>) -> Option<LogFit> {
    let means = smoothed(&averaged(course));
    if means.len() < FEWEST_MEANS {
        return None;
    }
    let first = *means.first()?;
    let end = *course.time_s.last()? - course.time_s.first()?;
    let per_kelvin = first.pressure / first.temperature;
    let mut columns = columns(&means, end)?;
    let mut pressures: Vec<f64> = means.iter().map(|mean| mean.pressure).collect();
    pressures.extend([0.0, 0.0]);
    let rows = means.len();
    // How much the two held coefficients weigh depends on the scatter, which the fit tells.
    let mut noise = 0.1 * per_kelvin;
    let mut fitted = None;
    for _ in 0..4 {
        *columns.get_mut(2)?.get_mut(rows)? = noise / (FOLLOWED * per_kelvin);
        *columns.get_mut(3)?.get_mut(rows + 1)? = noise / (BEHIND_S * per_kelvin);
        let fit = least_squares(&columns, &pressures)?;
        let (residual, correlation) = scatter(fit.residuals.get(..rows)?);
        noise = (residual * correlation.sqrt()).max(1e-6 * first.pressure);
        fitted = Some((fit, residual, correlation));
    }
    let (fit, residual_pa, correlation) = fitted?;
    let [_, Some(lost_pa), following, rate] = fit.coefficients[..] else {
        return None;
    };
    // The same without `c₂`: how far the share that the gas followed moved the loss.
    columns.remove(2);
    let unmoved = least_squares(&columns, &pressures)?.coefficients;
    let weights = fit.weights.get(1)?.iter();
    let moved = range_k(&means) > TOLD_K;
    Some(LogFit {
        lost_pa,
        scatter_pa: noise * weights.map(|weight| weight.powi(2)).sum::<f64>().sqrt(),
        following_pa: FOLLOWING_DOUBT * (lost_pa - (*unmoved.get(1)?)?).abs(),
        residual_pa,
        correlation,
        means: rows,
        followed: following.filter(|_| moved).map(|pa| 1.0 + pa / per_kelvin),
        behind_s: rate.filter(|_| moved).map(|pa_s| -pa_s / per_kelvin),
    })
}

/// Columns of `P₀`, `D`, `c₂` and `c₁`, with two rows more for the coefficients that are held.
fn columns(means: &[Mean], end: f64) -> Option<Vec<Vec<f64>>> {
    let zt = |mean: &Mean| Some(nitrogen_z(mean.pressure, mean.temperature)? * mean.temperature);
    let reference = zt(means.first()?)?;
    let ratios = means.iter().map(|mean| Some(zt(mean)? / reference));
    let ratios: Vec<f64> = ratios.collect::<Option<_>>()?;
    let mean_k = means.iter().map(|mean| mean.temperature).sum::<f64>() / means.len() as f64;
    let lost = |(ratio, mean): (&f64, &Mean)| -ratio * mean.time / end;
    let mut columns = vec![
        ratios.clone(),
        ratios.iter().zip(means).map(lost).collect(),
        means.iter().map(|mean| mean.temperature - mean_k).collect(),
        means.iter().map(|mean| mean.rate).collect(),
    ];
    for column in &mut columns {
        column.extend([0.0, 0.0]);
    }
    Some(columns)
}

#[derive(Clone, Copy)]
struct Mean {
    slot: usize,
    time: f64,
    pressure: f64,
    temperature: f64,
    /// K/s
    rate: f64,
}

/// Means over equal times: a thick stretch of the log weighs no more than a thin one.
fn averaged(course: &Course<'_>) -> Vec<Mean> {
    let (Some(start), Some(end)) = (course.time_s.first(), course.time_s.last()) else {
        return Vec::new();
    };
    let width = ((end - start) / MEANS as f64).max(f64::MIN_POSITIVE);
    let mut means: Vec<Mean> = Vec::new();
    let mut rows = 0.0;
    for ((time, pressure), temperature) in course
        .time_s
        .iter()
        .zip(course.pressure_pa)
        .zip(course.temperature_k)
    {
        let (time, pressure) = (time - start, pressure + course.air_pa);
        let slot = ((time / width) as usize).min(MEANS - 1);
        if let Some(mean) = means.last_mut().filter(|mean| mean.slot == slot) {
            rows += 1.0;
            mean.time += (time - mean.time) / rows;
            mean.pressure += (pressure - mean.pressure) / rows;
            mean.temperature += (temperature - mean.temperature) / rows;
        } else {
            rows = 1.0;
            means.push(Mean {
                slot,
                time,
                pressure,
                temperature: *temperature,
                rate: 0.0,
            });
        }
    }
    means
}

fn range_k(means: &[Mean]) -> f64 {
    let kelvin = means.iter().map(|mean| mean.temperature);
    let (low, high) = kelvin.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), k| {
        (low.min(k), high.max(k))
    });
    high - low
}

/// Half of the stretch over which the temperature is smoothed, s.
const SMOOTH_S: f64 = 1800.0;

/// Temperature and its rate from the line through the means half an hour about: the gas follows no
/// faster, and the thermometer's own noise would tell that it did not follow at all.
fn smoothed(means: &[Mean]) -> Vec<Mean> {
    let line = |here: &Mean| {
        let near = means
            .iter()
            .filter(|mean| (mean.time - here.time).abs() <= SMOOTH_S);
        let (mut n, mut t, mut k, mut tt, mut tk) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for mean in near {
            let (dt, dk) = (mean.time - here.time, mean.temperature - here.temperature);
            n += 1.0;
            t += dt;
            k += dk;
            tt += dt * dt;
            tk += dt * dk;
        }
        let spread = n * tt - t * t;
        let rate = if spread > 0.0 {
            (n * tk - t * k) / spread
        } else {
            0.0
        };
        Mean {
            temperature: here.temperature + (k - rate * t) / n,
            rate,
            ..*here
        }
    };
    means.iter().map(line).collect()
}

/// Standard deviation and integrated autocorrelation of residuals, up to where it first vanishes.
fn scatter(residuals: &[f64]) -> (f64, f64) {
    let freedom = residuals.len().saturating_sub(4).max(1) as f64;
    let squares: f64 = residuals.iter().map(|rest| rest * rest).sum();
    if squares <= 0.0 {
        return (0.0, 1.0);
    }
    let mut correlation = 1.0;
    for lag in 1..residuals.len() / 2 {
        let paired = residuals.iter().zip(residuals.iter().skip(lag));
        let rho = paired.map(|(a, b)| a * b).sum::<f64>() / squares;
        if rho <= 0.0 {
            break;
        }
        correlation += 2.0 * rho;
    }
    ((squares / freedom).sqrt(), correlation)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A course of a day, 30 bar at first, of an amount of gas that loses `lost_pa`.
    fn day(temperature: impl Fn(f64) -> f64, lost_pa: f64) -> (Vec<f64>, Vec<f64>, Vec<f64>) {
        let time: Vec<f64> = (0..=144).map(|row| f64::from(row) * 600.0).collect();
        let kelvin: Vec<f64> = time.iter().map(|t| temperature(t / 86_400.0)).collect();
        let zt = |p: f64, k: f64| nitrogen_z(p, k).unwrap() * k;
        let start = zt(30e5, kelvin[0]);
        let pressure = time.iter().zip(&kelvin).map(|(t, k)| {
            let mut p = 30e5;
            for _ in 0..4 {
                p = (30e5 - lost_pa * t / 86_400.0) * zt(p, *k) / start;
            }
            p
        });
        let pressure = pressure.collect();
        (time, pressure, kelvin)
    }

    fn fitted(rows: &(Vec<f64>, Vec<f64>, Vec<f64>)) -> Option<LogFit> {
        fit_log(&Course {
            time_s: &rows.0,
            pressure_pa: &rows.1,
            air_pa: 0.0,
            temperature_k: &rows.2,
        })
    }

    #[test]
    fn a_known_loss_comes_back_through_a_day_of_warmth() {
        let wave = |day: f64| 290.0 + 6.0 * (6.0 * day).sin() + 2.0 * day;
        let fit = fitted(&day(wave, 20_000.0)).unwrap();
        assert!((fit.lost_pa - 20_000.0).abs() < 60.0, "{fit:?}");
        assert!((fit.followed.unwrap() - 1.0).abs() < 0.01, "{fit:?}");
    }

    #[test]
    fn a_steady_temperature_tells_no_share_and_harms_nothing() {
        let fit = fitted(&day(|_| 290.0, 5_000.0)).unwrap();
        assert!((fit.lost_pa - 5_000.0).abs() < 5.0, "{fit:?}");
        assert_eq!((fit.followed, fit.behind_s), (None, None));
    }

    #[test]
    fn a_gap_and_a_thick_stretch_change_little() {
        let (time, pressure, kelvin) = day(|day| 290.0 + 4.0 * (6.0 * day).sin(), 20_000.0);
        let keep = |row: usize| !(30..60).contains(&row);
        let without_gap = |column: &[f64]| -> Vec<f64> {
            let rows = column.iter().enumerate().filter(|(row, _)| keep(*row));
            rows.map(|(_, value)| *value).collect()
        };
        let fit = fitted(&(
            without_gap(&time),
            without_gap(&pressure),
            without_gap(&kelvin),
        ));
        assert!((fit.unwrap().lost_pa - 20_000.0).abs() < 100.0);
    }

    #[test]
    fn too_few_rows_or_an_empty_log_fit_nothing() {
        let (time, pressure, kelvin) = day(|_| 290.0, 0.0);
        let few = |column: &[f64]| column.iter().copied().take(20).collect::<Vec<_>>();
        assert_eq!(fitted(&(few(&time), few(&pressure), few(&kelvin))), None);
        assert_eq!(fitted(&(Vec::new(), Vec::new(), Vec::new())), None);
    }

    #[test]
    fn an_hour_on_every_time_changes_no_bit() {
        let rows = day(|day| 290.0 + 4.0 * (6.0 * day).sin(), 20_000.0);
        let later = rows.0.iter().map(|time| time + 3_600.0).collect();
        assert_eq!(
            fitted(&(later, rows.1.clone(), rows.2.clone())),
            fitted(&rows)
        );
    }
}
