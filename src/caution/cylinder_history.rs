//! What happened to each cylinder in the whole book: movements in every visit, and events between.

use crate::job::{Book, Moment, Movement};
use crate::notes::CylinderEventNote;
use crate::vocabulary::Identifier;
use std::collections::BTreeMap;

/// Movements and events by cylinder, each in order of time; made once for a book.
#[derive(Debug, Default)]
pub struct CylinderHistory<'a> {
    movements: BTreeMap<&'a Identifier, Vec<&'a Movement>>,
    events: BTreeMap<&'a Identifier, Vec<&'a CylinderEventNote>>,
}

impl<'a> CylinderHistory<'a> {
    /// The history of every cylinder of a book.
    pub fn of(book: &'a Book) -> Self {
        let mut history = Self::default();
        let systems = book.sites.iter().flat_map(|site| &site.systems);
        let visits = systems.flat_map(|system| &system.visits);
        for movement in visits.flat_map(|visit| &visit.movements) {
            if let Some(id) = &movement.note.cylinder {
                history
                    .movements
                    .entry(&id.value)
                    .or_default()
                    .push(movement);
            }
        }
        for movements in history.movements.values_mut() {
            movements.sort_by_key(|movement| movement.at.value);
        }
        for event in &book.cylinder_events {
            if let Some(id) = &event.cylinder {
                history.events.entry(&id.value).or_default().push(event);
            }
        }
        history
    }

    /// The last movement of a cylinder before a moment.
    pub fn last_movement(&self, cylinder: &Identifier, before: Moment) -> Option<&'a Movement> {
        let movements = self.movements.get(cylinder)?;
        let count = movements.partition_point(|movement| movement.at.value < before);
        movements.get(count.checked_sub(1)?).copied()
    }

    /// The events of a cylinder, by day.
    pub fn events(&self, cylinder: &Identifier) -> &[&'a CylinderEventNote] {
        self.events.get(cylinder).map_or(&[], Vec::as_slice)
    }
}
