//! The classes of refrigerant that an instrument is rated for.

use crate::notes::InstrumentNote;
use crate::text::Noted;
use crate::vocabulary::Word;
use crate::vocabulary::safety_class::SafetyClass;

/// How flammable a class is: its part after the letter, in the order 1, 2L, 2, 3.
fn flammability(class: SafetyClass) -> usize {
    let order = ["1", "2L", "2", "3"];
    let part = class.word().get(1..).unwrap_or("");
    order.iter().position(|known| *known == part).unwrap_or(0)
}

/// The most flammable class that an instrument is rated for, if that is less than the one given.
pub fn falls_short(note: &InstrumentNote, class: SafetyClass) -> Option<Noted<SafetyClass>> {
    let rated = note.rated_for.iter().copied();
    rated
        .max_by_key(|rated| flammability(rated.value))
        .filter(|rated| flammability(rated.value) < flammability(class))
}
