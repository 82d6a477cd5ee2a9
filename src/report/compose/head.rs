//! What was visited, why and when: the head of the first page.

use crate::report::compose::scene::Scene;
use crate::report::data::{Entry, Head};
use crate::text::Message;
use crate::vocabulary::Word;

/// What was visited, why and when.
pub fn head(scene: &Scene<'_>) -> Head {
    let mut line = vec![scene.site.name().to_owned()];
    for (index, _) in scene.system.circuits.iter().enumerate() {
        let mut parts = Vec::new();
        if let Some(entry) = scene.system.in_force(index, scene.visit.last_day()) {
            if let Some(refrigerant) = entry.refrigerant {
                parts.push(refrigerant.designation.to_owned());
            }
            if let Some(full) = &entry.note.full_charge {
                parts.push(scene.figure(crate::quantity::print(&full.value, scene.site.units)));
            }
        }
        if let Some(figure) = scene
            .figures
            .circuits
            .get(index)
            .and_then(|c| c.charge_co2e.as_ref())
        {
            parts.push(scene.tonnes(figure.value.number()));
        }
        let parts = parts.join(", ");
        if scene.system.several_circuits() {
            let circuit = scene.system.circuit_choice(index);
            let message = Message::of("head-line-circuit").with("circuit", circuit);
            line.push(scene.say(&message.with("parts", parts)));
        } else {
            line.push(parts);
        }
    }
    if let Some(class) = scene.refrigerant(0).and_then(|r| r.safety_class) {
        let id = if class.value.is_flammable() {
            "class-flammable"
        } else {
            "class-not-flammable"
        };
        line.push(scene.say(&Message::of(id).with("class", class.value.to_string())));
    }
    Head {
        kind: scene.purpose(),
        date: scene
            .words()
            .days(scene.visit.name.date, scene.visit.last_day()),
        system: scene.system.name().to_owned(),
        line,
        particulars: particulars(scene),
    }
}

fn particulars(scene: &Scene<'_>) -> Vec<Entry> {
    let mut entries = Vec::new();
    let mut add = |key: &'static str, value: Option<String>| {
        if let Some(value) = value {
            entries.push(Entry {
                key: scene.word(key),
                value,
                working: None,
            });
        }
    };
    let site = scene.site.note.as_ref();
    let text = |value: &Option<crate::text::Noted<String>>| {
        value.as_ref().map(|noted| noted.value.clone())
    };
    add("plant-operator", site.and_then(|s| text(&s.operator)));
    add("plant-address", site.and_then(|s| text(&s.address)));
    let system = scene.system.note.as_ref();
    add(
        "plant-category",
        system
            .and_then(|s| s.category)
            .map(|c| scene.words().phrase(c.value.word())),
    );
    add(
        "plant-in-service-since",
        system
            .and_then(|s| s.installed)
            .map(|d| scene.words().day(d.value)),
    );
    let visit = scene.visit.note.as_ref();
    add("plant-complaint", visit.and_then(|v| text(&v.complaint)));
    add(
        "plant-air-outside",
        visit
            .and_then(|v| v.ambient)
            .map(|t| scene.figure(crate::quantity::print(&t.value, scene.site.units))),
    );
    add(
        "plant-left",
        visit
            .and_then(|v| v.left)
            .map(|l| scene.words().phrase(l.value.word())),
    );
    add(
        "plant-back-in-normal-operation",
        scene
            .visit
            .back
            .map(|back| scene.words().moment(back.value.civil)),
    );
    entries
}
