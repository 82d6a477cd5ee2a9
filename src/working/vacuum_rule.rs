//! What the course of a vacuum rise shows by itself: the slopes of its thirds, how well they are
//! known, its bend, and the verdict that follows.
//!
//! The rule takes no law for moisture and outgassing. It rests on one premise: gas given off by
//! walls, water and oil is never taken up again during the test, so that a leak cannot be larger
//! than the slope of the last third. How often it is right stands in DEVELOPERS.md.

use statrs::distribution::{ContinuousCDF, FisherSnedecor, StudentsT};

/// A shorter rise does not tell a leak from moisture, s.
pub const LEAST_S: f64 = 20.0 * 60.0;
/// Fewer rows do not either.
pub const LEAST_ROWS: usize = 30;
/// Fewest rows of each third.
const LEAST_ROWS_OF_THIRD: usize = 8;
/// Above a tenth of an atmosphere the inflow through a leak slows, Pa (viscous flow: 1 − (p ÷ air)²).
pub const MOST_PA: f64 = 10_132.5;
/// Rows that a longer log is averaged to.
const MOST_ROWS: usize = 3_000;
/// Probability that a slope is not above its upper end.
const ONE_SIDED: f64 = 0.99;
/// Probability below which a bend is not put down to chance.
const CHANCE: f64 = 0.01;

/// A slope, Pa/s, and half the width of its interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slope {
    /// Pa/s.
    pub pa_s: f64,
    /// Half width, Pa/s: noise with its memory, and the step of the gauge.
    pub half: f64,
}

/// Which way a rise bends, beyond chance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bend {
    /// Straight, as far as the readings show.
    Straight,
    /// Slower and slower.
    Levelling,
    /// Now faster, now slower.
    Uneven,
}

/// The course of a rise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Course {
    /// First third.
    pub early: Slope,
    /// Last third.
    pub late: Slope,
    /// All of it.
    pub whole: Slope,
    /// How it bends.
    pub bend: Bend,
    /// When the last third begins, s.
    pub late_from_s: f64,
    /// When it ends, s.
    pub end_s: f64,
    /// Pressure of the straight line through the last third at its end, Pa.
    pub end_pa: f64,
}

/// Why a log shows no more than whether the limit was met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unfit {
    /// Less than 20 minutes.
    Short,
    /// Fewer than 30 rows.
    FewRows,
    /// Too few rows in one of the thirds.
    Uneven,
    /// Not a vacuum: above a tenth of an atmosphere.
    NotVacuum,
    /// The same value in every row.
    Constant,
    /// It rose and then stood still at once.
    Stopped,
    /// It fell.
    Fell,
}

/// What a rise shows about a leak.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Judged {
    /// Nothing larger than the upper end, and the vacuum was kept.
    NothingLarger,
    /// Nothing larger than the upper end, but the vacuum was not kept.
    NothingLargerAboveHold,
    /// It rises as air coming in does.
    Leak,
    /// It levels off above the hold, as moisture and gas out of the oil do.
    Moisture,
    /// It bends, and not enough.
    Bending,
    /// It rises now faster, now slower.
    Uneven,
    /// The readings are too coarse for the limit.
    Coarse,
    /// Without the volume no size; it does not level off.
    NoSize,
}

/// The volume under test, m³, with half the width of its interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// m³.
    pub m3: f64,
    /// Half width, m³.
    pub half: f64,
}

/// A straight line by least squares.
struct Line {
    slope: f64,
    mean_s: f64,
    mean_pa: f64,
    spread: f64,
    residue: f64,
    rows: f64,
}

fn line(rows: &[(f64, f64)]) -> Line {
    let count = rows.len() as f64;
    let mean_s = rows.iter().map(|row| row.0).sum::<f64>() / count;
    let mean_pa = rows.iter().map(|row| row.1).sum::<f64>() / count;
    let spread: f64 = rows.iter().map(|row| (row.0 - mean_s).powi(2)).sum();
    let slope = rows
        .iter()
        .map(|row| (row.0 - mean_s) * (row.1 - mean_pa))
        .sum::<f64>()
        / spread;
    let residue = rows
        .iter()
        .map(|row| (row.1 - mean_pa - slope * (row.0 - mean_s)).powi(2))
        .sum();
    Line {
        slope,
        mean_s,
        mean_pa,
        spread,
        residue,
        rows: count,
    }
}

/// The square term beside a line: its factor, the residue left with it, and the residuals.
fn square(rows: &[(f64, f64)]) -> (f64, f64, Vec<f64>) {
    let line = line(rows);
    let at = |row: &(f64, f64)| row.0 - line.mean_s;
    let cubes: f64 = rows.iter().map(|row| at(row).powi(3)).sum();
    let (mean, tilt) = (line.spread / line.rows, cubes / line.spread);
    let shape = |row: &(f64, f64)| at(row).powi(2) - mean - tilt * at(row);
    let norm: f64 = rows.iter().map(|row| shape(row).powi(2)).sum();
    let factor = rows.iter().map(|row| shape(row) * row.1).sum::<f64>() / norm;
    let left: Vec<f64> = rows
        .iter()
        .map(|row| row.1 - line.mean_pa - line.slope * at(row) - factor * shape(row))
        .collect();
    let residue = left.iter().map(|r| r * r).sum();
    (factor, residue, left)
}

/// Rows that one independent row is worth: `1 + 2 Σ ρₖ`, summed up to the first that is not above
/// zero, and at least one.
fn memory(left: &[f64]) -> f64 {
    let total: f64 = left.iter().map(|r| r * r).sum();
    if total <= 0.0 {
        return 1.0;
    }
    let sum: f64 = (1..left.len() / 3)
        .map(|lag| {
            let later = left.iter().skip(lag);
            left.iter().zip(later).map(|(a, b)| a * b).sum::<f64>() / total
        })
        .take_while(|correlation| *correlation > 0.0)
        .sum();
    // The fitted curve has taken some of the memory away, the more the longer it is.
    let seen = 2.0 * sum;
    1.0 + seen / (1.0 - 4.0 * seen / left.len() as f64).max(0.25)
}

/// Smallest difference between two values that occur, at least the step of the last digit; the first
/// rows suffice.
fn step(rows: &[(f64, f64)], digit: f64) -> f64 {
    let mut values: Vec<f64> = rows.iter().take(MOST_ROWS).map(|row| row.1).collect();
    values.sort_by(f64::total_cmp);
    values
        .windows(2)
        .map(|pair| pair[1] - pair[0])
        .filter(|gap| *gap > 0.5 * digit)
        .fold(f64::INFINITY, f64::min)
        .max(digit)
}

/// A slope with its interval, for noise with a memory and a gauge with a step.
fn slope(rows: &[(f64, f64)], memory: f64, step: f64) -> Slope {
    let line = line(rows);
    let memory = memory.min(line.rows / 4.0);
    let variance = line.residue / (line.rows - 2.0 * memory).max(1.0);
    let noise = (variance * memory / line.spread).sqrt();
    let freedom = (line.rows / memory - 2.0).max(2.0);
    let seconds = rows.last().map_or(0.0, |row| row.0) - rows.first().map_or(0.0, |row| row.0);
    // A staircase of k steps misleads a fitted slope by up to one step in k over its length.
    let stairs = (line.slope.abs() * seconds / step).max(1.0);
    Slope {
        pa_s: line.slope,
        half: student(freedom) * noise + step / (seconds * stairs),
    }
}

fn student(freedom: f64) -> f64 {
    StudentsT::new(0.0, 1.0, freedom).map_or(f64::INFINITY, |law| law.inverse_cdf(ONE_SIDED))
}

/// Averages neighbouring rows of a long log.
fn averaged(rows: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let size = rows.len().div_ceil(MOST_ROWS);
    let mean = |run: &[(f64, f64)]| {
        let count = run.len() as f64;
        let sum = run
            .iter()
            .fold((0.0, 0.0), |sum, row| (sum.0 + row.0, sum.1 + row.1));
        (sum.0 / count, sum.1 / count)
    };
    rows.chunks(size.max(1)).map(mean).collect()
}

/// The course of a log: seconds since the first row, Pa, and the step of its last digit in Pa.
pub fn course(time_s: &[f64], pressure_pa: &[f64], digit_pa: f64) -> Result<Course, Unfit> {
    let raw: Vec<(f64, f64)> = time_s
        .iter()
        .copied()
        .zip(pressure_pa.iter().copied())
        .collect();
    let (Some(first), Some(last)) = (raw.first(), raw.last()) else {
        return Err(Unfit::FewRows);
    };
    let (from, end_s) = (first.0, last.0);
    if end_s - from < LEAST_S - 1.0 {
        return Err(Unfit::Short);
    }
    if raw.len() < LEAST_ROWS {
        return Err(Unfit::FewRows);
    }
    if raw.iter().any(|row| row.1 > MOST_PA) {
        return Err(Unfit::NotVacuum);
    }
    if raw
        .iter()
        .all(|row| (row.1 - first.1).abs() < 0.5 * digit_pa)
    {
        return Err(Unfit::Constant);
    }
    if stopped(&raw, digit_pa) {
        return Err(Unfit::Stopped);
    }
    let third = |share: f64| from + (end_s - from) * share / 3.0;
    let before = |rows: &[(f64, f64)], time: f64| rows.partition_point(|row| row.0 < time);
    let late_raw = &raw[before(&raw, third(2.0))..];
    let mut late_step = step(late_raw, digit_pa);
    if !late_step.is_finite() {
        late_step = step(&raw, digit_pa);
    }
    let rows = averaged(&raw);
    let (one, two) = (before(&rows, third(1.0)), before(&rows, third(2.0)));
    let (early, late) = (&rows[..one], &rows[two..]);
    if early.len().min(two - one).min(late.len()) < LEAST_ROWS_OF_THIRD {
        return Err(Unfit::Uneven);
    }
    let (_, _, left) = square(&rows[one..]);
    let memory = memory(&left);
    let ends = line(late);
    let course = Course {
        early: slope(early, memory, late_step),
        late: slope(late, memory, late_step),
        whole: slope(&rows, memory, late_step),
        bend: Bend::Straight,
        late_from_s: third(2.0),
        end_s,
        end_pa: ends.mean_pa + ends.slope * (end_s - ends.mean_s),
    };
    let falls = |slope: Slope| slope.pa_s + slope.half < 0.0;
    if falls(course.early) || falls(course.late) || falls(course.whole) {
        return Err(Unfit::Fell);
    }
    Ok(Course {
        bend: bend(&rows, &course),
        ..course
    })
}

/// Whether a steep rise stands still from one row to the next, as at the top of a gauge's range.
fn stopped(rows: &[(f64, f64)], digit: f64) -> bool {
    let Some(last) = rows.last() else {
        return false;
    };
    let still = |row: &&(f64, f64)| (row.1 - last.1).abs() < 0.5 * digit;
    let run = rows.iter().rev().take_while(still).count();
    let rising = &rows[..rows.len() - run];
    let mut before = rising.iter().rev();
    match (rising.first(), before.next(), before.nth(4)) {
        (Some(first), Some(near), Some(far)) if run >= 5 => {
            let lately = near.1 - far.1;
            let evenly = (near.1 - first.1) / (near.0 - first.0) * (near.0 - far.0);
            lately >= 4.0 * step(rows, digit) && lately > 0.7 * evenly && evenly > 0.0
        }
        _ => false,
    }
}

/// Parts that a steady leak fills at the same rate.
const PARTS: usize = 6;

fn bend(rows: &[(f64, f64)], course: &Course) -> Bend {
    let straight = line(rows);
    let by_chance = |residue: f64, terms: f64| {
        let freedom = (straight.rows - 2.0 - terms).max(2.0);
        let share = (straight.residue - residue).max(0.0) / residue.max(f64::MIN_POSITIVE);
        FisherSnedecor::new(terms, freedom)
            .is_ok_and(|law| law.sf(share * freedom / terms) >= CHANCE)
    };
    let (factor, squared, _) = square(rows);
    let slower = course.late.pa_s + course.late.half < 0.8 * course.early.pa_s;
    if factor < 0.0 && slower && !by_chance(squared, 1.0) {
        return Bend::Levelling;
    }
    // Noise is taken to have no memory, since uneven gas looks like it: this decides against a leak.
    let parts: Vec<Line> = rows
        .chunks(rows.len().div_ceil(PARTS))
        .filter(|part| part.len() > 2)
        .map(line)
        .collect();
    let residue = parts.iter().map(|part| part.residue).sum();
    let apart = |part: &Line| !(0.67..=1.5).contains(&(part.slope / straight.slope));
    let terms = 2.0 * parts.len() as f64 - 2.0;
    if !by_chance(residue, terms) && parts.iter().any(apart) {
        Bend::Uneven
    } else {
        Bend::Straight
    }
}

impl Room {
    /// A slope as a throughput with half the width of its interval, Pa m³/s.
    pub fn throughput(self, slope: Slope) -> (f64, f64) {
        let half = (self.m3 * slope.half).hypot(slope.pa_s * self.half);
        (self.m3 * slope.pa_s, half)
    }

    /// The largest leak that a course leaves possible, Pa m³/s.
    pub fn upper(self, course: &Course) -> f64 {
        let (q, half) = self.throughput(course.late);
        q.max(0.0) + half
    }

    /// The smallest leak that a straight course can be, Pa m³/s: by all of it and by its last third.
    pub fn lower(self, course: &Course) -> f64 {
        let below = |(q, half): (f64, f64)| q - half;
        below(self.throughput(course.whole)).min(below(self.throughput(course.late)))
    }
}

/// The verdict on a course, in the order of the rule.
///
/// `limit` is the largest leak allowed, Pa m³/s; `hold` the pressure that must not be passed, Pa.
pub fn judge(course: &Course, room: Option<Room>, limit: Option<f64>, hold: f64) -> Judged {
    let kept = course.end_pa <= hold;
    let levelled =
        course.bend == Bend::Levelling && !kept && course.late.pa_s < 0.5 * course.early.pa_s;
    let nothing = if kept {
        Judged::NothingLarger
    } else {
        Judged::NothingLargerAboveHold
    };
    match (room, limit) {
        (Some(room), Some(limit)) if room.upper(course) < limit => nothing,
        (Some(room), Some(limit))
            if course.bend == Bend::Straight && room.lower(course) > limit / 3.0 =>
        {
            Judged::Leak
        }
        _ if levelled => Judged::Moisture,
        (None, _) => Judged::NoSize,
        (Some(_), None) => nothing,
        _ => match course.bend {
            Bend::Levelling => Judged::Bending,
            Bend::Uneven => Judged::Uneven,
            Bend::Straight => Judged::Coarse,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rises(pressure: impl Fn(f64) -> f64) -> Result<Course, Unfit> {
        let time: Vec<f64> = (0..=60).map(|row| f64::from(row) * 30.0).collect();
        let pressure: Vec<f64> = time.iter().map(|time| pressure(*time)).collect();
        course(&time, &pressure, 0.1)
    }

    #[test]
    fn the_slope_of_a_straight_rise_is_its_own() {
        let course = rises(|time| 30.0 + 0.02 * time).unwrap();
        for slope in [course.early, course.late, course.whole] {
            assert!((slope.pa_s - 0.02).abs() < 1e-9, "{slope:?}");
        }
        assert_eq!(course.bend, Bend::Straight);
        assert!((course.end_pa - 66.0).abs() < 1e-6);
    }

    #[test]
    fn the_bound_takes_in_half_the_width_of_the_volume() {
        let course = rises(|time| 30.0 + 0.02 * time).unwrap();
        let exact = Room {
            m3: 0.01,
            half: 0.0,
        };
        let vague = Room {
            half: 0.002,
            ..exact
        };
        assert!(exact.upper(&course) < 2.1e-4);
        assert!((vague.upper(&course) - 2.4e-4).abs() < 0.1e-4);
    }

    #[test]
    fn a_later_clock_changes_nothing() {
        let time: Vec<f64> = (0..=60).map(|row| f64::from(row) * 30.0).collect();
        let later: Vec<f64> = time.iter().map(|time| time + 3600.0).collect();
        let pressure: Vec<f64> = time.iter().map(|time| 30.0 + time.sqrt()).collect();
        let (one, other) = (
            course(&time, &pressure, 0.1).unwrap(),
            course(&later, &pressure, 0.1).unwrap(),
        );
        assert!((one.late.pa_s - other.late.pa_s).abs() < 1e-12);
        assert!((one.late.half - other.late.half).abs() < 1e-12);
        assert!((one.end_pa - other.end_pa).abs() < 1e-9);
        assert_eq!(one.bend, other.bend);
    }

    #[test]
    fn what_bears_no_verdict_is_told_apart() {
        assert_eq!(rises(|_| 30.0), Err(Unfit::Constant));
        assert_eq!(rises(|time| 90.0 - 0.02 * time), Err(Unfit::Fell));
        assert_eq!(rises(|time| 9.0e3 + time), Err(Unfit::NotVacuum));
        let clipped = |time: f64| (30.0 + time).min(1500.0);
        assert_eq!(rises(clipped), Err(Unfit::Stopped));
        assert_eq!(course(&[0.0, 60.0], &[1.0, 2.0], 0.1), Err(Unfit::Short));
        assert_eq!(
            course(&[0.0, 1800.0], &[1.0, 2.0], 0.1),
            Err(Unfit::FewRows)
        );
        assert_eq!(course(&[], &[], 0.1), Err(Unfit::FewRows));
    }
}
