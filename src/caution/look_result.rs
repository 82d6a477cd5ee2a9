//! What the result of a look says in the technician's own words.

use crate::notes::Look;

/// Words that tell that the place was made fit for the next method.
const CLEANED: &[&str] = &["rins", "dried", "wash", "wiped", "cleaned", "blown off"];

/// Result and detail of a look, in lower case.
pub fn text(look: &Look) -> String {
    let detail = look.detail.as_deref().unwrap_or_default();
    format!("{} {detail}", look.result).to_lowercase()
}

/// The longest time in minutes that the look names, as in `none in 25 min`.
pub fn minutes(look: &Look) -> Option<f64> {
    let text = text(look);
    let words: Vec<&str> = text.split_whitespace().collect();
    words
        .windows(2)
        .filter_map(|pair| {
            let number: f64 = pair[0].parse().ok()?;
            let unit = pair[1].trim_end_matches(|c: char| !c.is_alphanumeric());
            match unit {
                "min" | "mins" | "minute" | "minutes" => Some(number),
                "h" | "hour" | "hours" => Some(number * 60.0),
                "s" | "second" | "seconds" => Some(number / 60.0),
                _ => None,
            }
        })
        .filter(|minutes| minutes.is_finite())
        .max_by(f64::total_cmp)
}

/// Whether the look says that the place was rinsed, dried or wiped.
pub fn cleaned(look: &Look) -> bool {
    let text = text(look);
    CLEANED.iter().any(|word| text.contains(word))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::notes::DayTime;
    use crate::text::{FileId, Noted, Span};
    use crate::vocabulary::method_word::MethodWord;
    use jiff::civil::time;

    fn look(result: &str, detail: Option<&str>) -> Look {
        let span = Span::file_start(FileId(0));
        let at = DayTime {
            day: 1,
            time: time(9, 0, 0, 0),
        };
        Look {
            at: Noted::new(at, span),
            method: Noted::new(MethodWord::Bubbles, span),
            with: None,
            result: result.to_owned(),
            detail: detail.map(str::to_owned),
            span,
        }
    }

    #[test]
    fn the_longest_time_named_counts() {
        assert_eq!(
            minutes(&look("none in 25 min", Some("wiped 5 min"))),
            Some(25.0)
        );
        assert_eq!(minutes(&look("none in half an hour", None)), None);
        assert_eq!(minutes(&look("none, watched", Some("1.5 h;"))), Some(90.0));
    }

    #[test]
    fn rinsing_is_read_in_result_or_detail() {
        assert!(cleaned(&look("no alarm", Some("soap rinsed off"))));
        assert!(!cleaned(&look("no alarm", None)));
    }
}
