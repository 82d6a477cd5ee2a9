//! The course of a log as a chart: scaled points, ticks at round numbers, printed labels.

use crate::language::Words;
use crate::quantity::{Flavour, UnitSystem, print_as, print_si};
use crate::report::data::{Axis, Chart, Limit, Series, SeriesStroke, Tick};
use crate::text::Message;

/// What is drawn.
#[derive(Clone, Debug)]
pub struct Course<'a> {
    /// Seconds since the start.
    pub time_s: &'a [f64],
    /// The value, SI.
    pub value_si: &'a [f64],
    /// Its form.
    pub flavour: Flavour,
    /// Unit of the log's own column, which the axis keeps where it can.
    pub written: &'a str,
    /// Units of the site.
    pub units: UnitSystem,
    /// Its language.
    pub words: &'a Words,
    /// Message of the name of the value.
    pub name: &'static str,
    /// Message of the name of the time.
    pub time_name: &'static str,
    /// A limit, SI, and its label.
    pub limit: Option<(f64, String)>,
    /// Whether the vertical axis begins at zero.
    pub from_zero: bool,
    /// Lines drawn over it.
    pub lines: Vec<Line>,
}

/// A line over a course, or part of it.
#[derive(Clone, Debug)]
pub struct Line {
    /// Name at its end.
    pub label: String,
    /// How it is drawn.
    pub stroke: SeriesStroke,
    /// Its points: s, SI.
    pub points: Vec<(f64, f64)>,
}

/// Most points drawn: the extremes of as many runs of rows are kept.
const MOST_POINTS: usize = 400;

/// Draws a course; `None` where there is nothing to draw.
pub fn chart(course: &Course<'_>) -> Option<Chart> {
    let words = course.words;
    let name = words.word(course.name);
    let end_s = *course.time_s.last()?;
    let (time_unit, time_scale) = if end_s > 3.0 * 3600.0 {
        ("h", 3600.0)
    } else {
        ("min", 60.0)
    };
    let (lowest, highest) = extremes(course.value_si)?;
    let unit = match in_unit(course.flavour, highest, course.written) {
        Some(_) => course.written,
        None => print_si(course.flavour, highest, None, course.units).unit,
    };
    let factor = in_unit(course.flavour, 1.0, unit)? - in_unit(course.flavour, 0.0, unit)?;
    let shift = in_unit(course.flavour, 0.0, unit)?;
    let to_unit = |si: f64| factor * si + shift;
    let mut top = to_unit(highest);
    let mut bottom = to_unit(lowest);
    if let Some((limit, _)) = &course.limit {
        top = top.max(to_unit(*limit));
    }
    for (_, si) in course.lines.iter().flat_map(|line| &line.points) {
        top = top.max(to_unit(*si));
        bottom = bottom.min(to_unit(*si));
    }
    if course.from_zero {
        bottom = 0.0;
    }
    if top - bottom < 1e-12 * top.abs().max(1e-12) {
        top += 1.0;
        bottom -= 1.0;
    }
    let (bottom, top, up_ticks) = ticks(bottom, top);
    let (_, across_end, across_ticks) = ticks(0.0, end_s / time_scale);
    let place = |value: f64| ((value - bottom) / (top - bottom)).clamp(0.0, 1.0);
    let points = thinned(course.time_s, course.value_si)
        .into_iter()
        .map(|(time, si)| [time / time_scale / across_end, place(to_unit(si))])
        .collect();
    let axis = |title: String, ticks: Vec<(f64, String)>, place: &dyn Fn(f64) -> f64| Axis {
        title,
        ticks: ticks
            .into_iter()
            .map(|(value, label)| Tick {
                at: place(value),
                label: words.figure(&label),
            })
            .collect(),
    };
    let at = |si: f64| format!("{} {unit}", trimmed(to_unit(si)));
    let limit = course.limit.as_ref();
    let alt = Message::of("chart-alt")
        .with("name", name.as_str())
        .figure(
            "time",
            format!("{} {time_unit}", trimmed(end_s / time_scale)),
        )
        .figure("first", at(*course.value_si.first()?))
        .figure("last", at(*course.value_si.last()?))
        .with("limit", limit.map_or("none", |(_, label)| label.as_str()));
    Some(Chart {
        alt: words.say(&alt).replace('\u{a0}', " "),
        caption: String::new(),
        across: axis(
            format!("{}, {time_unit}", words.word(course.time_name)),
            across_ticks,
            &|value| value / across_end,
        ),
        up: axis(format!("{name}, {unit}"), up_ticks, &place),
        series: std::iter::once(Series {
            label: words.word("chart-measured"),
            stroke: SeriesStroke::Full,
            points,
        })
        .chain(course.lines.iter().map(|line| {
            Series {
                label: line.label.clone(),
                stroke: line.stroke,
                points: line
                    .points
                    .iter()
                    .map(|(time, si)| [time / time_scale / across_end, place(to_unit(*si))])
                    .collect(),
            }
        }))
        .collect(),
        limits: course
            .limit
            .iter()
            .map(|(si, label)| Limit {
                at: place(to_unit(*si)),
                label: label.clone(),
            })
            .collect(),
        bars: Vec::new(),
    })
}

fn extremes(values: &[f64]) -> Option<(f64, f64)> {
    let first = *values.first()?;
    Some(values.iter().fold((first, first), |(low, high), value| {
        (low.min(*value), high.max(*value))
    }))
}

fn in_unit(flavour: Flavour, si: f64, unit: &str) -> Option<f64> {
    print_as(flavour, si, unit, 9)?
        .number
        .replace('−', "-")
        .parse()
        .ok()
}

/// A range widened to round numbers, and the round numbers in it with their labels.
pub(super) fn ticks(low: f64, high: f64) -> (f64, f64, Vec<(f64, String)>) {
    let raw = (high - low) / 5.0;
    let power = 10f64.powf(raw.log10().floor());
    let step = [1.0, 2.0, 2.5, 5.0, 10.0]
        .into_iter()
        .map(|factor| factor * power)
        .find(|step| *step >= raw * 0.999)
        .unwrap_or(power * 10.0);
    let first = (low / step + 1e-9).floor();
    let last = (high / step - 1e-9).ceil();
    let decimals = (0..6)
        .find(|decimals| {
            let scaled = step * 10f64.powi(*decimals);
            (scaled - scaled.round()).abs() < 1e-6
        })
        .unwrap_or(6);
    let count = (last - first).round() as i64;
    let ticks = (0..=count)
        .map(|index| {
            let value = (first + index as f64) * step;
            (value, crate::working::rounded(value, decimals as usize))
        })
        .collect();
    (first * step, last * step, ticks)
}

fn trimmed(value: f64) -> String {
    let text = crate::working::rounded(value, 1);
    text.strip_suffix(".0").unwrap_or(&text).to_owned()
}

/// At most [`MOST_POINTS`] points: of each run of rows its lowest and its highest, in order.
fn thinned(time_s: &[f64], values: &[f64]) -> Vec<(f64, f64)> {
    if values.len() <= MOST_POINTS {
        let rows = time_s.iter().copied().zip(values.iter().copied());
        return rows.collect();
    }
    let run = values.len().div_ceil(MOST_POINTS / 2);
    let mut kept = Vec::new();
    for (times, values) in time_s.chunks(run).zip(values.chunks(run)) {
        let by_value = |a: &(f64, f64), b: &(f64, f64)| a.1.total_cmp(&b.1);
        let rows = || times.iter().copied().zip(values.iter().copied());
        let (low, high) = (rows().min_by(by_value), rows().max_by(by_value));
        if let (Some(low), Some(high)) = (low, high) {
            let (first, second) = if low.0 <= high.0 {
                (low, high)
            } else {
                (high, low)
            };
            kept.push(first);
            if first.0 < second.0 {
                kept.push(second);
            }
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_are_round_and_hold_the_range() {
        let (low, high, ticks) = ticks(0.0, 23.0);
        assert_eq!((low, high), (0.0, 25.0));
        let labels: Vec<&str> = ticks.iter().map(|(_, label)| label.as_str()).collect();
        assert_eq!(labels, ["0", "5", "10", "15", "20", "25"]);
    }

    #[test]
    fn thinning_keeps_the_extremes() {
        let time: Vec<f64> = (0..10_000).map(f64::from).collect();
        let mut values = vec![1.0; 10_000];
        values[7_000] = 9.0;
        let kept = thinned(&time, &values);
        assert!(kept.len() <= MOST_POINTS);
        assert!(kept.contains(&(7_000.0, 9.0)));
    }
}
