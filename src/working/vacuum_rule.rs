//! What the rise of a vacuum shows: a bound that holds whatever the outgassing, and a careful verdict.
//!
//! Gas from walls, oil and water comes off ever more slowly while the temperature is steady. The slope
//! of the last third of the rise therefore bounds the leak from above, whatever the shape of the rest.
//! Source of the rule: the project's own numerical study (`tests/decay_vacuum.rs` repeats it).

use statrs::distribution::{ContinuousCDF, FisherSnedecor, StudentsT};

/// Shortest rise that is judged, s.
pub const SHORTEST_S: f64 = 20.0 * 60.0;
/// Fewest rows that are judged.
pub const FEWEST_ROWS: usize = 30;
/// The temperature may move by this much during the rise, K: a judgement.
pub const STEADY_K: f64 = 2.0;
/// A rise is straight where its last third is shown to be at least this share as steep as its first,
/// and the first as the last: a judgement, tried on simulated rises.
const STRAIGHT: f64 = 0.7;
/// Above a tenth of the atmosphere a leak no longer flows at a constant rate, Pa.
pub const HIGHEST_PA: f64 = 10_000.0;

/// A rise at constant volume.
#[derive(Clone, Copy, Debug)]
pub struct Series<'a> {
    /// Seconds, rising.
    pub time_s: &'a [f64],
    /// Absolute pressure, Pa.
    pub pressure_pa: &'a [f64],
    /// Volume, m³.
    pub volume_m3: f64,
    /// Half width of its uncertainty, m³.
    pub volume_half_m3: f64,
    /// Step of the gauge, Pa, as far as known; the readings may show a coarser one.
    pub step_pa: f64,
    /// Pressure that the rise should stay below, Pa.
    pub hold_pa: f64,
    /// Leak that decides, Pa m³/s, if one was named.
    pub leak_limit: Option<f64>,
}

/// A straight line through part of a rise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slope {
    /// Pa/s.
    pub pa_s: f64,
    /// Half width of its uncertainty, 95 %, Pa/s.
    pub half_pa_s: f64,
    /// Middle of the part: s, Pa.
    pub middle: (f64, f64),
}

/// What a rise shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RiseVerdict {
    /// The bound lies below the limit of the leak, or no limit was named and the rise stayed low.
    NothingLarger,
    /// The rise is straight, and larger than gas from inside would explain.
    Leak,
    /// The rise slows down above what was asked for: water or gas from inside.
    Moisture,
    /// It does not decide.
    Inconclusive,
}

/// The rise in figures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judged {
    /// Slope of the last third.
    pub late: Slope,
    /// Slope of the first third, Pa/s.
    pub early_pa_s: f64,
    /// Largest leak that it leaves possible, Pa m³/s.
    pub upper: f64,
    /// Least leak if nothing but a leak raised the pressure, Pa m³/s.
    pub lower: f64,
    /// Whether the rise slows down beyond chance.
    pub curved: bool,
    /// What it shows.
    pub verdict: RiseVerdict,
}

/// Judges a rise; `None` where it is too short, too sparse, or without a spread of times.
pub fn judged(series: &Series<'_>) -> Option<Judged> {
    let (time, pressure) = (series.time_s, series.pressure_pa);
    let (first, last) = (*time.first()?, *time.last()?);
    let span = last - first;
    let enough = time.len() >= FEWEST_ROWS && time.len() == pressure.len() && span >= SHORTEST_S;
    if !enough || pressure.iter().any(|p| !p.is_finite() || *p > HIGHEST_PA) {
        return None;
    }
    let begin = time.partition_point(|t| *t < first + span * 2.0 / 3.0);
    let end = time.partition_point(|t| *t <= first + span / 3.0);
    let step = step_of(pressure).max(series.step_pa);
    let late = slope(&time[begin..], &pressure[begin..], step)?;
    let early = slope(&time[..end], &pressure[..end], step)?;
    let whole = slope(time, pressure, step)?;
    let curved = slows_down(time, pressure) && late.pa_s < 0.8 * early.pa_s;
    // Only a rise that is shown to be straight reads as a leak: one that merely cannot be told from
    // straight may be gas from inside.
    let straight = !curved && straight(time, pressure);
    let upper = (series.volume_m3 + series.volume_half_m3) * (late.pa_s.max(0.0) + late.half_pa_s);
    let lower =
        (series.volume_m3 - series.volume_half_m3).max(0.0) * (whole.pa_s - whole.half_pa_s);
    let high = *pressure.last()? > series.hold_pa;
    let levelled = curved && high && late.pa_s < 0.5 * early.pa_s;
    let verdict = match series.leak_limit {
        Some(limit) if upper < limit && !high => RiseVerdict::NothingLarger,
        Some(limit) if upper < limit => RiseVerdict::Moisture,
        Some(limit) if straight && lower > limit / 3.0 => RiseVerdict::Leak,
        _ if levelled => RiseVerdict::Moisture,
        None if !high => RiseVerdict::NothingLarger,
        _ => RiseVerdict::Inconclusive,
    };
    Some(Judged {
        late,
        early_pa_s: early.pa_s,
        upper,
        lower,
        curved,
        verdict,
    })
}

/// Least squares line, its uncertainty widened for readings that hang together and for coarse steps.
fn slope(time: &[f64], pressure: &[f64], step: f64) -> Option<Slope> {
    let n = time.len() as f64;
    let (middle_t, middle_p) = (mean(time)?, mean(pressure)?);
    let sxx: f64 = time.iter().map(|t| (t - middle_t).powi(2)).sum();
    let span = time.last()? - time.first()?;
    if n < 5.0 || sxx <= 0.0 || span <= 0.0 {
        return None;
    }
    let sxy: f64 = time
        .iter()
        .zip(pressure)
        .map(|(t, p)| (t - middle_t) * (p - middle_p))
        .sum();
    let pa_s = sxy / sxx;
    let residuals: Vec<f64> = time
        .iter()
        .zip(pressure)
        .map(|(t, p)| p - middle_p - pa_s * (t - middle_t))
        .collect();
    let variance = residuals.iter().map(|r| r * r).sum::<f64>() / (n - 2.0);
    let widened = widening(&residuals);
    // A step hides a drift of up to itself over the part.
    let coarse = step / span / 3f64.sqrt();
    let spread = (variance / sxx * widened + coarse * coarse).sqrt();
    let freedom = (n / widened - 2.0).max(2.0);
    Some(Slope {
        pa_s,
        half_pa_s: t_quantile(freedom)? * spread,
        middle: (middle_t, middle_p),
    })
}

/// How much wider the interval of a mean is for readings that hang together: first-order
/// autocorrelation r of the residuals, (1 + r) ÷ (1 − r).
fn widening(residuals: &[f64]) -> f64 {
    let power: f64 = residuals.iter().map(|r| r * r).sum();
    if power <= 0.0 {
        return 1.0;
    }
    let product: f64 = residuals.windows(2).map(|pair| pair[0] * pair[1]).sum();
    // The estimate is low in short series; Bartlett's 1/√n is added for it.
    let r = (product / power + 1.0 / (residuals.len() as f64).sqrt()).clamp(0.0, 0.95);
    (1.0 + r) / (1.0 - r)
}

/// Whether a parabola fits better than a line beyond chance (F at 1 %), and bends downwards.
fn slows_down(time: &[f64], pressure: &[f64]) -> bool {
    let Some(fit) = parabola(time, pressure) else {
        return false;
    };
    let freedom = time.len() as f64 - 3.0;
    let line = residual_sum(time, pressure, |t| fit.line.0 + fit.line.1 * t);
    let bent_residuals: Vec<f64> = time
        .iter()
        .zip(pressure)
        .map(|(t, p)| p - fit.at(*t))
        .collect();
    let bent: f64 = bent_residuals.iter().map(|r| r * r).sum();
    if fit.bend >= 0.0 || line <= bent {
        return false;
    }
    let widened = widening(&bent_residuals);
    let f = (line - bent) / (bent / freedom).max(f64::MIN_POSITIVE) / widened;
    FisherSnedecor::new(1.0, (freedom / widened).max(2.0))
        .is_ok_and(|distribution| f > distribution.inverse_cdf(0.99))
}

/// Whether the rise is shown to be straight: of the parabola through it, anywhere within its
/// uncertainty, the last third is nearly as steep as the first, and the other way round.
fn straight(time: &[f64], pressure: &[f64]) -> bool {
    let bounds = || {
        let fit = parabola(time, pressure)?;
        let residuals: Vec<f64> = time
            .iter()
            .zip(pressure)
            .map(|(t, p)| p - fit.at(*t))
            .collect();
        let widened = widening(&residuals);
        let freedom = time.len() as f64 - 3.0;
        let variance = residuals.iter().map(|r| r * r).sum::<f64>() / freedom;
        let spread = (variance / fit.power * widened).sqrt();
        let half = t_quantile((freedom / widened).max(2.0))? * spread;
        // From the middle of a third to the middle of the whole.
        let arm = 2.0 / 3.0 * (time.last()? - time.first()?);
        Some((fit.line.1, arm * (fit.bend - half), arm * (fit.bend + half)))
    };
    bounds().is_some_and(|(slope, down, up)| {
        slope + down > STRAIGHT * (slope - down) && slope - up > STRAIGHT * (slope + up)
    })
}

/// A parabola in centred time by orthogonal polynomials, and the line beside it.
struct Parabola {
    line: (f64, f64),
    bend: f64,
    middle: f64,
    skew: f64,
    spread: f64,
    /// Sum of the squares of the bent part, s⁴.
    power: f64,
}

impl Parabola {
    fn at(&self, t: f64) -> f64 {
        let x = t - self.middle;
        self.line.0 + self.line.1 * t + self.bend * (x * x - self.skew * x - self.spread)
    }
}

fn parabola(time: &[f64], pressure: &[f64]) -> Option<Parabola> {
    let n = time.len() as f64;
    let middle = mean(time)?;
    let sum = |f: &dyn Fn(f64) -> f64| time.iter().map(|t| f(t - middle)).sum::<f64>();
    let (s2, s3) = (sum(&|x| x * x), sum(&|x| x.powi(3)));
    if s2 <= 0.0 {
        return None;
    }
    let (skew, spread) = (s3 / s2, s2 / n);
    let second = |x: f64| x * x - skew * x - spread;
    let power = sum(&|x| second(x).powi(2));
    if power <= 0.0 {
        return None;
    }
    let dot = |f: &dyn Fn(f64) -> f64| {
        time.iter()
            .zip(pressure)
            .map(|(t, p)| f(t - middle) * p)
            .sum::<f64>()
    };
    let slope = dot(&|x| x) / s2;
    let level = mean(pressure)?;
    Some(Parabola {
        line: (level - slope * middle, slope),
        bend: dot(&second) / power,
        middle,
        skew,
        spread,
        power,
    })
}

fn residual_sum(time: &[f64], pressure: &[f64], fit: impl Fn(f64) -> f64) -> f64 {
    time.iter()
        .zip(pressure)
        .map(|(t, p)| (p - fit(*t)).powi(2))
        .sum()
}

/// The step of a gauge: the least difference between two of its readings, Pa.
fn step_of(pressure: &[f64]) -> f64 {
    let mut sorted = pressure.to_vec();
    sorted.sort_by(f64::total_cmp);
    let step = sorted
        .windows(2)
        .map(|pair| pair[1] - pair[0])
        .filter(|difference| *difference > 1e-6)
        .fold(f64::INFINITY, f64::min);
    if step.is_finite() { step } else { 0.0 }
}

fn mean(values: &[f64]) -> Option<f64> {
    (!values.is_empty()).then(|| values.iter().sum::<f64>() / values.len() as f64)
}

/// Two-sided 95 % quantile of Student's t.
fn t_quantile(freedom: f64) -> Option<f64> {
    StudentsT::new(0.0, 1.0, freedom)
        .ok()
        .map(|distribution| distribution.inverse_cdf(0.975))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rise(shape: impl Fn(f64) -> f64, limit: Option<f64>) -> Option<Judged> {
        let time: Vec<f64> = (0..181).map(|row| f64::from(row) * 10.0).collect();
        let pressure: Vec<f64> = time.iter().map(|t| shape(*t)).collect();
        judged(&Series {
            time_s: &time,
            pressure_pa: &pressure,
            volume_m3: 8e-3,
            volume_half_m3: 0.0,
            step_pa: 0.133,
            hold_pa: 66.66,
            leak_limit: limit,
        })
    }

    #[test]
    fn a_straight_rise_above_the_limit_is_a_leak() {
        let judged = rise(|t| 20.0 + 1e-4 / 8e-3 * t, Some(1e-5)).unwrap();
        assert_eq!(judged.verdict, RiseVerdict::Leak);
        assert!((judged.lower / 1e-4 - 1.0).abs() < 0.01, "{judged:?}");
    }

    #[test]
    fn a_rise_that_levels_off_above_the_hold_is_moisture() {
        let judged = rise(|t| 20.0 + 400.0 * (1.0 - (-t / 300.0f64).exp()), Some(1e-5)).unwrap();
        assert_eq!(judged.verdict, RiseVerdict::Moisture);
        assert!(judged.curved);
    }

    #[test]
    fn a_low_flat_vacuum_shows_nothing_larger_than_its_bound() {
        let judged = rise(|t| 20.0 + 1e-4 * t, Some(1e-5)).unwrap();
        assert_eq!(judged.verdict, RiseVerdict::NothingLarger);
        assert!(judged.upper >= 8e-7 && judged.upper < 1e-5);
    }

    #[test]
    fn a_stuck_gauge_shows_nothing_below_its_step() {
        let judged = rise(|_| 20.0, None).unwrap();
        assert!(judged.upper > 8e-3 * 0.133 / 1800.0, "{judged:?}");
    }

    #[test]
    fn a_short_a_sparse_and_a_high_rise_are_not_judged() {
        let few: Vec<f64> = (0..29).map(|row| f64::from(row) * 60.0).collect();
        let low = vec![20.0; 29];
        let series = |time: &[f64], pressure: &[f64]| {
            judged(&Series {
                time_s: time,
                pressure_pa: pressure,
                volume_m3: 8e-3,
                volume_half_m3: 0.0,
                step_pa: 0.133,
                hold_pa: 66.0,
                leak_limit: None,
            })
            .is_some()
        };
        assert!(!series(&few, &low));
        assert!(rise(|_| 20_000.0, None).is_none());
    }
}
