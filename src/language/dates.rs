//! Dates, times, counts and lists as a language writes them.

use jiff::civil::{Date, DateTime};

use crate::language::Words;
use crate::text::{Message, Text};

const MONTHS: [&str; 12] = [
    "month-january",
    "month-february",
    "month-march",
    "month-april",
    "month-may",
    "month-june",
    "month-july",
    "month-august",
    "month-september",
    "month-october",
    "month-november",
    "month-december",
];

impl Words {
    /// `18 June 2026`, with no-break spaces.
    pub fn day(&self, date: Date) -> String {
        self.say(&self.parts("date-day", date))
    }

    /// `18 June`.
    pub fn day_month(&self, date: Date) -> String {
        self.say(&self.parts("date-day-month", date))
    }

    /// `17 and 18 June 2026`, `30 June to 2 July 2026`, or one day.
    pub fn days(&self, first: Date, last: Date) -> String {
        if first == last {
            return self.day(first);
        }
        let next = first.tomorrow().ok() == Some(last);
        let month = (first.year(), first.month()) == (last.year(), last.month());
        let id = match (month, next) {
            (true, true) => "date-two-days",
            (true, false) => "date-days-of-a-month",
            (false, true) => "date-two-days-of-two-months",
            (false, false) => "date-from-to",
        };
        let from = if first.year() == last.year() {
            self.day_month(first)
        } else {
            self.day(first)
        };
        let message = self
            .parts(id, last)
            .with("first", i64::from(first.day()))
            .with("from", from)
            .with("to", self.day(last));
        self.say(&message)
    }

    /// `18 June, 16:10`.
    pub fn moment(&self, civil: DateTime) -> String {
        let message = Message::of("date-moment")
            .with("day", self.day_month(civil.date()))
            .with("clock", clock(civil));
        self.say(&message)
    }

    fn parts(&self, id: &'static str, date: Date) -> Message {
        let month = usize::try_from(date.month()).unwrap_or(1).wrapping_sub(1);
        let month = MONTHS.get(month).copied().unwrap_or("");
        Message::of(id)
            .with("day", i64::from(date.day()))
            .with("month", self.word(month))
            .with("year", date.year().to_string())
    }

    /// The names of the months.
    pub(super) fn months(&self) -> Vec<String> {
        MONTHS.iter().map(|month| self.word(month)).collect()
    }

    /// `a, b and c`.
    pub fn and_list<S: AsRef<str>>(&self, parts: &[S]) -> String {
        match parts {
            [] => String::new(),
            [one] => one.as_ref().to_owned(),
            [head @ .., last] => {
                let head: Vec<&str> = head.iter().map(AsRef::as_ref).collect();
                let message = Message::of("and-list")
                    .with("head", head.join(", "))
                    .with("last", last.as_ref());
                self.say(&message)
            }
        }
    }

    /// Small counts in words where the language writes them so: `two`.
    pub fn count(&self, number: usize) -> String {
        self.say(&Message::of("count").with("count", Text::from(number)))
    }
}

/// `16:10`.
pub fn clock(civil: DateTime) -> String {
    format!("{:02}:{:02}", civil.hour(), civil.minute())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::vocabulary::site_file::Language;
    use jiff::civil::date;

    #[test]
    fn days_are_joined_as_people_write_them() {
        let june = |day| date(2026, 6, day);
        let say =
            |language, first, last| Words::of(language).days(first, last).replace('\u{a0}', "_");
        let two = (june(17), june(18));
        let over = (june(30), date(2026, 7, 2));
        for (language, one, few, across) in [
            (
                Language::English,
                "1_June_2026",
                "17 and 18_June_2026",
                "30_June to 2_July_2026",
            ),
            (
                Language::AmericanEnglish,
                "June_1,_2026",
                "June_17 and_18,_2026",
                "June_30 to July_2,_2026",
            ),
            (
                Language::German,
                "1._Juni_2026",
                "17. und 18._Juni_2026",
                "30._Juni bis 2._Juli_2026",
            ),
            (
                Language::French,
                "1er_juin_2026",
                "17 et 18_juin_2026",
                "30_juin au 2_juillet_2026",
            ),
            (
                Language::Spanish,
                "1_de_junio_de_2026",
                "17 y 18_de_junio_de_2026",
                "30_de_junio al 2_de_julio_de_2026",
            ),
        ] {
            assert_eq!(say(language, june(1), june(1)), one);
            assert_eq!(say(language, two.0, two.1), few);
            assert_eq!(say(language, over.0, over.1), across);
        }
    }
}
