//! What is due as iCalendar (RFC 5545): a day for each item, its stamp and name made from the item
//! itself, so that the same notes give the same file and a calendar knows an item again.

use crate::command::due::{Due, Item};
use icalendar::{Calendar, Component, Event, EventLike, Property};
use jiff::ToSpan;
use jiff::civil::Date;
use sha2::{Digest, Sha256};

/// All items as one calendar.
pub fn calendar(due: &Due) -> String {
    let mut calendar = Calendar::empty();
    calendar
        .append_property(Property::new("VERSION", "2.0"))
        .append_property(Property::new("PRODID", "-//Rimebook//due//EN"))
        .append_property(Property::new("CALSCALE", "GREGORIAN"))
        .append_property(Property::new("X-WR-CALNAME", "Rimebook, due"));
    for item in &due.items {
        calendar.push(event(item));
    }
    calendar.to_string()
}

fn event(item: &Item) -> Event {
    let mut lines = vec![item.because.clone()];
    if item.verify {
        lines.push("from memory in part: verify".to_owned());
    }
    lines.extend(item.not_before.clone());
    lines.push(format!("counted from: {}", item.from));
    lines.extend(item.note.clone());
    let mut event = Event::new();
    event
        .uid(&name(item))
        .append_property(Property::new(
            "DTSTAMP",
            format!("{}T000000Z", compact(item.from_day)),
        ))
        .append_property(day("DTSTART", item.by))
        .append_property(day("DTEND", item.by.saturating_add(1.day())))
        .summary(&item.what)
        .location(&item.place)
        .description(&lines.join("\n"))
        .append_property(Property::new("TRANSP", "TRANSPARENT"));
    event.done()
}

fn day(key: &str, date: Date) -> Property {
    Property::new(key, compact(date))
        .add_parameter("VALUE", "DATE")
        .done()
}

/// `20260801`.
fn compact(date: Date) -> String {
    date.to_string().replace('-', "")
}

/// A name that stays the same while the item does: of what, where and what it counts from.
fn name(item: &Item) -> String {
    let text = format!("{}\n{}\n{}", item.what, item.place, item.from_day);
    let digits: String = Sha256::digest(text.as_bytes())
        .iter()
        .take(12)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    format!("{digits}@rimebook")
}
