//! The points of a system on a true scale of time: where the ticks and marks stand, and how marks are
//! stacked or drawn together where records lie close.

use crate::history::{LEGEND, PointHistory, Step, marks};
use crate::language::Words;
use crate::report::data::Tick;
use crate::report::history_data::{TimeLine, TimeMark, TimeRow, TimeShape};
use crate::text::Message;
use jiff::civil::Date;

/// Width of the scale on the narrowest sheet, and of what stands on it, mm. A wider sheet only leaves
/// more room between two marks.
const SCALE_MM: f64 = 104.0;
const SHAPE_MM: f64 = 2.9;
const LETTER_MM: f64 = 1.5;
const APART_MM: f64 = 0.8;
/// Most steps of the scale.
const MOST_STEPS: i32 = 9;

/// Draws the lives of points, each with the name of its place.
pub fn time_line(lives: &[(String, PointHistory)], words: &Words) -> TimeLine {
    let days = || lives.iter().flat_map(|(_, life)| &life.steps);
    let (first, last) = (days().map(|s| s.day).min(), days().map(|s| s.day).max());
    let Some(scale) = first.zip(last).map(|(first, last)| Scale::of(first, last)) else {
        return TimeLine::default();
    };
    TimeLine {
        ticks: scale.ticks(),
        rows: lives
            .iter()
            .filter(|(_, life)| !life.steps.is_empty())
            .map(|(place, life)| row(place, life, &scale, words))
            .collect(),
    }
}

/// The marks that occur, in the order of their legend.
pub fn legend(line: &TimeLine, words: &Words) -> Vec<TimeMark> {
    let drawn = || line.rows.iter().flat_map(|row| &row.marks);
    LEGEND
        .iter()
        .filter(|(letters, _)| {
            drawn().any(|mark| match *letters {
                "*" => mark.letters.ends_with('*'),
                "ok" => mark.letters.starts_with("ok"),
                _ => mark.letters.trim_end_matches('*') == *letters,
            })
        })
        .map(|(letters, meaning)| TimeMark {
            shape: shape(letters),
            letters: (*letters).to_owned(),
            meaning: words.phrase(meaning),
            ..TimeMark::default()
        })
        .collect()
}

/// A scale from the beginning of a month, quarter or year to the end of another.
struct Scale {
    /// Months since the year 0.
    from: i32,
    to: i32,
    /// Months of a step.
    step: i32,
}

impl Scale {
    fn of(first: Date, last: Date) -> Self {
        let month = |day: Date| i32::from(day.year()) * 12 + i32::from(day.month()) - 1;
        let (first, last) = (month(first), month(last));
        let steps = |step: i32| last.div_euclid(step) - first.div_euclid(step) + 1;
        let step = [1, 3, 6, 12, 24, 60, 120, 1200]
            .into_iter()
            .find(|step| steps(*step) <= MOST_STEPS)
            .unwrap_or(12_000);
        Self {
            from: first.div_euclid(step) * step,
            to: (last.div_euclid(step) + 1) * step,
            step,
        }
    }

    /// The first day of a month, by months since the year 0.
    fn begins(month: i32) -> Date {
        let year = i16::try_from(month.div_euclid(12));
        let of_year = i8::try_from(month.rem_euclid(12) + 1);
        year.ok()
            .zip(of_year.ok())
            .and_then(|(year, month)| Date::new(year, month, 1).ok())
            .unwrap_or(Date::MAX)
    }

    /// The place of a day, 0 to 1.
    fn at(&self, day: Date) -> f64 {
        let from = Self::begins(self.from);
        let days = |to: Date| f64::from((to - from).get_days());
        let whole = days(Self::begins(self.to)).max(1.0);
        (days(day) / whole).clamp(0.0, 1.0)
    }

    fn ticks(&self) -> Vec<Tick> {
        let mut ticks = Vec::new();
        let mut month = self.from;
        while month <= self.to {
            let day = Self::begins(month);
            let label = match (month == self.to, self.step % 12) {
                (true, _) => String::new(),
                (_, 0) => format!("{:04}", day.year()),
                _ => format!("{:04}-{:02}", day.year(), day.month()),
            };
            let at = self.at(day);
            ticks.push(Tick { at, label });
            month += self.step;
        }
        ticks
    }
}

/// Marks that stand together: one, or looks without a sign one after the other.
struct Together {
    days: Vec<Date>,
    letters: String,
}

impl Together {
    fn letters(&self) -> String {
        match self.days.len() {
            1 => self.letters.clone(),
            several => format!("{}×{several}", self.letters),
        }
    }

    fn in_words(&self, words: &Words) -> String {
        let told = meaning(&self.letters, words);
        let message = match self.days.as_slice() {
            [first, .., last] => Message::of("mark-times")
                .with("first", *first)
                .with("last", *last)
                .with("times", self.days.len()),
            [day] => Message::of("mark-once").with("day", *day),
            [] => return told,
        };
        words.say(&message.with("told", told))
    }
}

fn row(place: &str, life: &PointHistory, scale: &Scale, words: &Words) -> TimeRow {
    let mut drawn = Vec::new();
    let mut ends: Vec<f64> = Vec::new();
    let all = together(life);
    for marks in &all {
        let places: Vec<f64> = marks.days.iter().map(|day| scale.at(*day)).collect();
        let (Some(first), Some(last)) = (places.first(), places.last()) else {
            continue;
        };
        let letters = marks.letters();
        let begins = first * SCALE_MM - SHAPE_MM / 2.0;
        let end = last * SCALE_MM
            + SHAPE_MM / 2.0
            + LETTER_MM * letters.chars().count() as f64
            + APART_MM;
        let free = ends.iter().position(|end| *end <= begins);
        let lane = free.unwrap_or(ends.len());
        match ends.get_mut(lane) {
            Some(known) => *known = end,
            None => ends.push(end),
        }
        for (index, at) in places.iter().enumerate() {
            let is_last = index + 1 == places.len();
            drawn.push(TimeMark {
                shape: shape(marks.letters.trim_end_matches('*')),
                letters: if is_last {
                    letters.clone()
                } else {
                    String::new()
                },
                meaning: String::new(),
                at: *at,
                lane,
            });
        }
    }
    let told: Vec<String> = all.iter().map(|marks| marks.in_words(words)).collect();
    TimeRow {
        place: place.to_owned(),
        alt: format!("{place}. {}.", words.series(&told)),
        marks: drawn,
        lanes: ends.len().max(1),
    }
}

/// The marks of a life in order of time; looks without a sign that follow one another go together.
fn together(life: &PointHistory) -> Vec<Together> {
    let mut all: Vec<Together> = Vec::new();
    for step in &life.steps {
        for letters in letters(life, step) {
            match all.last_mut() {
                Some(run) if letters == "ok" && run.letters == "ok" => run.days.push(step.day),
                _ => all.push(Together {
                    days: vec![step.day],
                    letters,
                }),
            }
        }
    }
    all
}

fn letters(life: &PointHistory, step: &Step) -> Vec<String> {
    let all = marks(life, step);
    all.split_whitespace().map(str::to_owned).collect()
}

/// What letters mean, in the words of the legend.
fn meaning(letters: &str, words: &Words) -> String {
    let of = |wanted: &str| {
        let known = LEGEND.iter().find(|(letters, _)| *letters == wanted);
        let meaning = known.map_or_else(String::new, |(_, meaning)| words.phrase(meaning));
        meaning
            .split(';')
            .next()
            .unwrap_or("")
            .trim_end()
            .to_owned()
    };
    let told = of(letters.trim_end_matches('*'));
    if letters.ends_with('*') {
        let message = Message::of("mark-told-by").with("told", told);
        words.say(&message.with("by", of("*")))
    } else {
        told
    }
}

fn shape(letters: &str) -> TimeShape {
    match letters {
        "L" | "L.." => TimeShape::Leak,
        "L!" => TimeShape::Again,
        "R+" => TimeShape::Proved,
        "R" | "T" => TimeShape::Repaired,
        "S" => TimeShape::Suspect,
        "C" => TimeShape::Cleared,
        "~" => TimeShape::SectionHeld,
        "-" => TimeShape::NotReached,
        "N" | "X" => TimeShape::Replaced,
        _ => TimeShape::Nothing,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    fn labels(first: Date, last: Date) -> Vec<String> {
        let ticks = Scale::of(first, last).ticks();
        ticks.into_iter().map(|tick| tick.label).collect()
    }

    #[test]
    fn ticks_are_quarters_of_two_years_and_years_of_eight() {
        let quarters = labels(date(2024, 9, 11), date(2026, 7, 9));
        assert_eq!(quarters.first().map(String::as_str), Some("2024-07"));
        assert_eq!(quarters.len(), 10);
        let years = labels(date(2018, 1, 2), date(2026, 7, 9));
        assert_eq!(years.first().map(String::as_str), Some("2018"));
        assert_eq!(years.last().map(String::as_str), Some(""));
    }

    /// 2026-04-02 is 91 days after 1 January 2026 and 366 lie between 2024-01-01 and 2025-01-01.
    #[test]
    fn a_day_stands_at_its_share_of_the_days() {
        let scale = Scale::of(date(2024, 1, 1), date(2026, 12, 31));
        let whole = 366.0 + 365.0 + 365.0;
        assert!((scale.at(date(2025, 1, 1)) - 366.0 / whole).abs() < 1e-12);
        assert!((scale.at(date(2026, 4, 2)) - 822.0 / whole).abs() < 1e-12);
        assert!(scale.at(date(2024, 1, 1)).abs() < 1e-12);
    }

    #[test]
    fn the_end_of_the_calendar_does_no_harm() {
        let ticks = Scale::of(date(-9999, 1, 1), date(9999, 12, 31)).ticks();
        assert!(ticks.iter().all(|tick| (0.0..=1.0).contains(&tick.at)));
    }
}
