//! An occupied room that a flammable or toxic refrigerant can reach, and whose size is not noted.

use crate::caution::example::VISIT;
use crate::caution::{Caution, Edit, Scene};
use crate::text::Diagnostic;
use crate::working::room::{RoomLimit, rooms};

pub(super) static CAUTION: Caution = Caution {
    name: "room-size-missing",
    summary: "a flammable or toxic refrigerant can reach an occupied room of unknown size",
    finds: "A system of safety class A2L, A2, A3 or any class B whose circuits reach an occupied room without a volume, or an area and a height.",
    matters: "Whether the air of the room could become dangerous if the charge came out cannot be worked out, and the report has to say so.",
    put_right: "Measure the room and write `area` and `height`, or `volume`, in site.toml.",
    source: "EN 378-1 and ASHRAE 15 compare the charge with the volume of the room; the local code decides",
    example: &[
        VISIT,
        Edit {
            file: "larchwick/site.toml",
            from: "height = \"4.0 m\"\n",
            to: "",
        },
    ],
    near_miss: &[
        VISIT,
        Edit {
            file: "larchwick/site.toml",
            from: "area = \"95 m2\"\nheight = \"4.0 m\"\n",
            to: "volume = \"380 m3\"\n",
        },
    ],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    // Told once, at the last visit of the system.
    let last = scene.system.visits.last();
    if last.is_none_or(|visit| visit.name != scene.visit.name) {
        return;
    }
    // Which limit it would be held against does not matter here.
    let rooms = rooms(
        scene.site,
        scene.system,
        scene.visit.last_day(),
        RoomLimit::Practical,
    );
    for room in rooms.iter().filter(|room| room.size_wanted()) {
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                room.span,
                format!(
                    "{} can reach room `{}`, whose size is not noted",
                    room.refrigerant.designation, room.id
                ),
            )
            .here("people are in it")
            .why(CAUTION.matters)
            .cure("write `area` and `height`, or `volume`, of the room"),
        );
    }
}
