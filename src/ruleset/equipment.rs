//! Dates of people, instruments and cylinders: certificates, checks, calibrations, proof tests.

use crate::job::Book;
use crate::ruleset::obligation::Event;
use crate::text::Noted;
use crate::vocabulary::refrigerant_file::MovementKind;
use jiff::ToSpan;
use jiff::civil::Date;

/// A date of a person, an instrument or a cylinder.
#[derive(Clone, Debug)]
pub struct EquipmentDate {
    /// What has to be done.
    pub what: String,
    /// What it is about: `instrument ld-2`.
    pub about: String,
    /// What it counts from.
    pub from: Event,
    /// The last day.
    pub by: Date,
    /// Where it is asked for.
    pub source: &'static str,
}

/// What falls due of the contractor's own people, instruments and cylinders, known on a day.
pub fn equipment_dates(book: &Book, on: Date) -> Vec<EquipmentDate> {
    let mut dates = Vec::new();
    for (id, person) in book.people.iter() {
        if let Some(until) = person.certified_until {
            dates.push(EquipmentDate {
                what: format!("Renew the certificate of {}", book.person_name(id)),
                about: format!("person {id}"),
                from: event(until, "last day of the certificate"),
                by: until.value,
                source: "the certificate",
            });
        }
    }
    for (id, instrument) in book.instruments.iter() {
        let last = |days: &[Noted<Date>]| {
            days.iter()
                .copied()
                .filter(|day| day.value <= on)
                .max_by_key(|day| day.value)
        };
        let kind = instrument
            .kind
            .as_ref()
            .map_or("instrument", |kind| kind.value.as_str());
        let mut push = |last: Option<Noted<Date>>, what: &str, was: &str, source| {
            if let Some(last) = last
                && let Ok(by) = last.value.checked_add(1.year())
            {
                dates.push(EquipmentDate {
                    what: format!("{what} {kind} {id}"),
                    about: format!("instrument {id}"),
                    from: event(last, was),
                    by,
                    source,
                });
            }
        };
        push(
            last(&instrument.checked),
            "Check",
            "last check",
            "every 12 months: Regulation (EC) 1516/2007 Article 6 for gas detectors; else common practice",
        );
        push(
            last(&instrument.calibrated),
            "Calibrate",
            "last calibration",
            "yearly, common practice",
        );
    }
    for (id, cylinder) in book.cylinders.iter() {
        if let Some(retest) = &cylinder.retest
            && !is_returned(book, id, on)
        {
            dates.push(EquipmentDate {
                what: format!("Proof test of cylinder {id}"),
                about: format!("cylinder {id}"),
                from: Event {
                    day: retest.value.last,
                    what: "next proof test".to_owned(),
                    span: retest.span,
                },
                by: retest.value.last,
                source: "the stamp on the cylinder",
            });
        }
    }
    dates
}

fn event(day: Noted<Date>, what: &str) -> Event {
    Event {
        day: day.value,
        what: what.to_owned(),
        span: day.span,
    }
}

/// Whether a cylinder was given back, and not used since.
fn is_returned(book: &Book, id: &crate::vocabulary::Identifier, on: Date) -> bool {
    use crate::vocabulary::book_file::CylinderHappening as H;
    let events = book.cylinder_events.iter().filter_map(|event| {
        let here = event.cylinder.as_ref().is_some_and(|c| c.value == *id);
        let day = event.at?.value.date;
        (here && day <= on).then_some((day, event.what?.value))
    });
    let Some((day, what)) = events.max_by_key(|(day, _)| *day) else {
        return false;
    };
    let used_later = book
        .sites
        .iter()
        .flat_map(|site| &site.systems)
        .flat_map(|system| &system.visits)
        .flat_map(|visit| &visit.movements)
        .filter(|m| matches!(m.kind, MovementKind::Charged | MovementKind::Recovered))
        .any(|m| {
            m.note.cylinder.as_ref().is_some_and(|c| c.value == *id) && m.at.value.date() > day
        });
    what == H::Returned && !used_later
}
