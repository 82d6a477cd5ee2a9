//! Dates, counts and lists in English, as the report prints them.

use jiff::civil::{Date, DateTime};

pub use crate::text::{capital, ended, sentence};

const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// `18 June 2026`, joined by no-break spaces.
pub fn day(date: Date) -> String {
    format!("{}\u{a0}{}", day_month(date), date.year())
}

/// `18 June`.
pub fn day_month(date: Date) -> String {
    let month = usize::try_from(date.month()).unwrap_or(1);
    let name = MONTHS.get(month.wrapping_sub(1)).copied().unwrap_or("");
    format!("{}\u{a0}{name}", date.day())
}

/// `17 and 18 June 2026`, `30 June to 2 July 2026`, or one day.
pub fn days(first: Date, last: Date) -> String {
    if first == last {
        return day(first);
    }
    let next = first.tomorrow().ok() == Some(last);
    let joint = if next { "and" } else { "to" };
    if (first.year(), first.month()) == (last.year(), last.month()) {
        format!("{} {joint} {}", first.day(), day(last))
    } else if first.year() == last.year() {
        format!("{} {joint} {}", day_month(first), day(last))
    } else {
        format!("{} {joint} {}", day(first), day(last))
    }
}

/// `18 June, 16:10`.
pub fn moment(civil: DateTime) -> String {
    format!("{}, {}", day_month(civil.date()), clock(civil))
}

/// `16:10`.
pub fn clock(civil: DateTime) -> String {
    format!("{:02}:{:02}", civil.hour(), civil.minute())
}

/// Small counts in words: `two`; from thirteen on in digits.
pub fn count(number: usize) -> String {
    const WORDS: [&str; 13] = [
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve",
    ];
    WORDS
        .get(number)
        .map_or_else(|| number.to_string(), |word| (*word).to_owned())
}

/// `one leak`, `two leaks`.
pub fn counted(number: usize, one: &str, many: &str) -> String {
    format!("{} {}", count(number), if number == 1 { one } else { many })
}

/// `a, b and c`.
pub fn and_list<S: AsRef<str>>(parts: &[S]) -> String {
    match parts {
        [] => String::new(),
        [one] => one.as_ref().to_owned(),
        [head @ .., last] => {
            let head: Vec<&str> = head.iter().map(AsRef::as_ref).collect();
            format!("{} and {}", head.join(", "), last.as_ref())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn days_are_joined_as_people_write_them() {
        let june = |day| date(2026, 6, day);
        assert_eq!(days(june(17), june(18)), "17 and 18\u{a0}June\u{a0}2026");
        assert_eq!(
            days(june(30), date(2026, 7, 2)),
            "30\u{a0}June to 2\u{a0}July\u{a0}2026"
        );
        assert_eq!(days(june(1), june(1)), "1\u{a0}June\u{a0}2026");
    }

    #[test]
    fn counts_and_sentences_read_as_prose() {
        assert_eq!(counted(1, "leak", "leaks"), "one leak");
        assert_eq!(counted(2, "leak", "leaks"), "two leaks");
        assert_eq!(and_list(&["a", "b", "c"]), "a, b and c");
        assert_eq!(sentence("nut backed off"), "Nut backed off.");
    }
}
