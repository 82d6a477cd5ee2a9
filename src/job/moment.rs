//! Local times of the notes as instants: a skipped or doubled hour is never guessed.

use crate::text::{Diagnostic, Diagnostics, Noted};
use crate::vocabulary::{DateOrTime, LocalTime};
use jiff::civil::{Date, DateTime};
use jiff::tz::{AmbiguousOffset, TimeZone};
use jiff::{SignedDuration, Timestamp};

/// An instant, and what a watch at the site showed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Moment {
    /// The instant.
    pub instant: Timestamp,
    /// Local date and time.
    pub civil: DateTime,
}

impl Moment {
    /// Seconds from another moment to this one.
    pub fn seconds_since(self, earlier: Moment) -> f64 {
        self.instant.duration_since(earlier.instant).as_secs_f64()
    }

    /// The moment some seconds later, in a zone.
    #[must_use]
    pub fn after(self, seconds: f64, zone: &TimeZone) -> Self {
        let later = SignedDuration::try_from_secs_f64(seconds)
            .ok()
            .and_then(|duration| self.instant.checked_add(duration).ok())
            .unwrap_or(self.instant);
        Self {
            instant: later,
            civil: zone.to_datetime(later),
        }
    }

    /// The local day.
    pub fn date(self) -> Date {
        self.civil.date()
    }
}

/// The instant of a local time; tells a time that the clock skipped or showed twice.
pub fn resolve(
    noted: &Noted<LocalTime>,
    zone: &TimeZone,
    diagnostics: &mut Diagnostics,
) -> Option<Noted<Moment>> {
    let civil = noted.value.civil;
    if let Some(offset) = noted.value.offset {
        return with_offset(noted, offset, zone, diagnostics);
    }
    let ambiguous = zone.to_ambiguous_timestamp(civil);
    match ambiguous.offset() {
        AmbiguousOffset::Unambiguous { .. } => {
            let instant = ambiguous.compatible().ok()?;
            Some(Noted::new(Moment { instant, civil }, noted.span))
        }
        AmbiguousOffset::Gap { before, after } => {
            let shift = after.seconds() - before.seconds();
            let step = SignedDuration::from_secs(i64::from(shift));
            let diagnostic = Diagnostic::error(
                "time-skipped",
                noted.span,
                format!("the clocks skipped {} that day", clock(civil)),
            )
            .here("this time did not exist at the site")
            .why("clocks were put forward over it");
            let later = civil.checked_add(step).unwrap_or(civil);
            let earlier = civil.checked_sub(step).unwrap_or(civil);
            diagnostics.push(
                diagnostic
                    .patch("by the new clock", noted.span, minutes(later))
                    .patch("before the change", noted.span, minutes(earlier)),
            );
            None
        }
        AmbiguousOffset::Fold { before, after } => {
            diagnostics.push(
                Diagnostic::error(
                    "time-doubled",
                    noted.span,
                    format!("the clocks showed {} twice that day", clock(civil)),
                )
                .here("two instants have this time")
                .why("clocks were put back over it, an hour lies between the two")
                .patch(
                    "the first time",
                    noted.span,
                    format!("{}{}", minutes(civil), offset_text(before)),
                )
                .patch(
                    "the second time",
                    noted.span,
                    format!("{}{}", minutes(civil), offset_text(after)),
                ),
            );
            None
        }
    }
}

fn with_offset(
    noted: &Noted<LocalTime>,
    offset: jiff::tz::Offset,
    zone: &TimeZone,
    diagnostics: &mut Diagnostics,
) -> Option<Noted<Moment>> {
    let instant = offset.to_timestamp(noted.value.civil).ok()?;
    let civil = zone.to_datetime(instant);
    if civil != noted.value.civil {
        diagnostics.push(
            Diagnostic::error(
                "offset-not-of-the-site",
                noted.span,
                "this offset from UTC is not that of the site at this time",
            )
            .here(format!("at the site it was {}", minutes(civil)))
            .why("times of the notes are local to the site")
            .patch("write the local time", noted.span, minutes(civil)),
        );
        return None;
    }
    Some(Noted::new(Moment { instant, civil }, noted.span))
}

/// A day, or a moment, as the moment it begins.
pub fn resolve_day(
    noted: &Noted<DateOrTime>,
    zone: &TimeZone,
    diagnostics: &mut Diagnostics,
) -> Option<Noted<Moment>> {
    match noted.value.time {
        Some(time) => resolve(&Noted::new(time, noted.span), zone, diagnostics),
        None => day(noted.value.date, zone).map(|moment| Noted::new(moment, noted.span)),
    }
}

/// The moment a day begins.
pub fn day(date: Date, zone: &TimeZone) -> Option<Moment> {
    let midnight = date.at(0, 0, 0, 0);
    let instant = zone.to_ambiguous_timestamp(midnight).compatible().ok()?;
    Some(Moment {
        instant,
        civil: midnight,
    })
}

fn clock(civil: DateTime) -> String {
    format!("{:02}:{:02}", civil.hour(), civil.minute())
}

/// As the notes write a local time.
pub fn minutes(civil: DateTime) -> String {
    format!("{}T{}", civil.date(), clock(civil))
}

fn offset_text(offset: jiff::tz::Offset) -> String {
    let seconds = offset.seconds();
    let sign = if seconds < 0 { '-' } else { '+' };
    let minutes = seconds.abs() / 60;
    format!("{sign}{:02}:{:02}", minutes / 60, minutes % 60)
}

/// Tells that something ended before it began.
pub fn check_order(
    start: &Noted<Moment>,
    end: &Noted<Moment>,
    what: &str,
    diagnostics: &mut Diagnostics,
) -> bool {
    if end.value.instant >= start.value.instant {
        return true;
    }
    diagnostics.push(
        Diagnostic::error(
            "end-before-start",
            end.span,
            format!("{what} ends before it begins"),
        )
        .here("the end")
        .also(start.span, "the start")
        .cure("correct one of the two times"),
    );
    false
}

/// The zone of a name of the IANA database.
pub fn zone(name: &Noted<String>, diagnostics: &mut Diagnostics) -> Option<TimeZone> {
    if let Ok(zone) = TimeZone::get(&name.value)
        && zone.iana_name().is_some()
    {
        return Some(zone);
    }
    let known: Vec<String> = jiff::tz::db()
        .available()
        .map(|name| name.to_string())
        .collect();
    let known: Vec<&str> = known.iter().map(String::as_str).collect();
    let diagnostic = Diagnostic::error(
        "timezone-unknown",
        name.span,
        format!("`{}` is not a time zone", name.value),
    )
    .here("not in the IANA database")
    .why("all times of the site's notes are read in it");
    diagnostics.push(match crate::text::nearest(&name.value, &known) {
        Some(near) => diagnostic.patch(
            format!("did you mean `{near}`?"),
            name.span,
            format!("\"{near}\""),
        ),
        None => diagnostic.cure("write a name such as \"Europe/Lisbon\" or \"America/Chicago\""),
    });
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::{FileId, Span};

    fn told(text: &str) -> Vec<(&'static str, Vec<String>)> {
        let zone = TimeZone::get("Europe/Lisbon").unwrap();
        let mut diagnostics = Diagnostics::default();
        let noted = Noted::new(
            LocalTime {
                civil: text.parse().unwrap(),
                offset: None,
            },
            Span::new(FileId(0), 0..1),
        );
        resolve(&noted, &zone, &mut diagnostics);
        diagnostics
            .iter()
            .map(|d| {
                let patches = d.cures.iter().filter_map(|c| c.patch.clone());
                (d.name, patches.map(|(_, to)| to).collect())
            })
            .collect()
    }

    #[test]
    fn clock_changes_offer_both_instants() {
        assert_eq!(
            told("2026-03-29T01:30"),
            [(
                "time-skipped",
                vec!["2026-03-29T02:30".to_owned(), "2026-03-29T00:30".to_owned()]
            )]
        );
        assert_eq!(
            told("2026-10-25T01:30"),
            [(
                "time-doubled",
                vec![
                    "2026-10-25T01:30+01:00".to_owned(),
                    "2026-10-25T01:30+00:00".to_owned()
                ]
            )]
        );
        assert_eq!(told("2026-06-18T01:30"), []);
    }
}
