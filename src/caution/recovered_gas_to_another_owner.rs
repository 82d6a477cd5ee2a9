//! Recovered refrigerant put into another owner's system.

use crate::caution::example::VISIT;
use crate::caution::{Caution, Edit, Scene};
use crate::job::{Movement, Site};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Identifier;
use crate::vocabulary::book_file::{CylinderHappening, GasOrigin};
use crate::vocabulary::refrigerant_file::MovementKind;
use jiff::civil::Date;

pub(super) static CAUTION: Caution = Caution {
    name: "recovered-gas-to-another-owner",
    summary: "refrigerant recovered from one owner's system was charged into another's",
    finds: "A charge from a cylinder into which refrigerant was recovered at a site of another operator, with no event since that it was emptied, returned or filled, and an origin that is not `reclaimed`.",
    matters: "Used gas may carry moisture, acid and other gases from the first plant into the second; some laws let it change owners only after a reclaimer has cleaned and tested it.",
    put_right: "Have the charge tested, or take it out and charge reclaimed or new gas. If the cylinder had been emptied or refilled, write that as a [[cylinder-event]].",
    source: "common practice; 40 CFR 82.154(d), from memory: verify",
    example: &[
        OTHER_SITE,
        OTHER_SYSTEM,
        OTHER_VISIT,
        OTHER_MOVEMENT,
        VISIT,
        CHARGED,
    ],
    near_miss: &[
        OTHER_SITE,
        OTHER_SYSTEM,
        OTHER_VISIT,
        OTHER_MOVEMENT,
        Edit {
            file: "rimebook.toml",
            from: "",
            to: "\n[[cylinder-event]]\ncylinder = \"rec-1\"\nat = 2026-10-20\nwhat = \"filled\"\ngross = \"16.60 kg\"\n",
        },
        VISIT,
        CHARGED,
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

const OTHER_SITE: Edit = Edit {
    file: "quillmoor/site.toml",
    from: "",
    to: "operator = \"Quillmoor Dairy (invented)\"\naddress = \"Quillmoor, a place that does not exist\"\ntimezone = \"Europe/Dublin\"\naltitude = \"20 m\"\nunits = \"metric\"\nrules = [\"eu-2024-573\"]\n",
};
const OTHER_SYSTEM: Edit = Edit {
    file: "quillmoor/milk-tank/system.toml",
    from: "",
    to: "name = \"Milk tank\"\ncategory = \"commercial refrigeration\"\n\n[[in-force]]\nfrom = 2024-01-10\nrefrigerant = \"R-454C\"\nfull-charge = \"6.00 kg\"\nstatus = \"in use\"\n",
};
const OTHER_VISIT: Edit = Edit {
    file: "quillmoor/milk-tank/2026-10-12/visit.toml",
    from: "",
    to: "purpose = \"service\"\nattendance = [ { by = \"n1\", from = 2026-10-12T09:00, to = 2026-10-12T12:00 } ]\n",
};
const OTHER_MOVEMENT: Edit = Edit {
    file: "quillmoor/milk-tank/2026-10-12/refrigerant.toml",
    from: "",
    to: "[[movement]]\nkind = \"recovered\"\nwhy = \"decommissioning\"\nat = 2026-10-12T10:00\nby = \"n1\"\ncylinder = \"rec-1\"\nscale = \"scale-1\"\nbefore = \"14.60 kg\"\nafter = \"16.60 kg\"\ndestination = \"held\"\n",
};
const CHARGED: Edit = Edit {
    file: crate::caution::example::REFRIGERANT,
    from: "",
    to: "[[movement]]\nkind = \"charged\"\nwhy = \"recharge\"\nat = 2026-11-03T11:30\nby = \"n1\"\ncylinder = \"rec-1\"\nscale = \"scale-1\"\nbefore = \"16.60 kg\"\nafter = \"16.00 kg\"\ncharged-to = \"full by weight\"\n",
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for movement in &scene.visit.movements {
        let Some(id) = &movement.note.cylinder else {
            continue;
        };
        let origin = scene
            .book
            .cylinders
            .get(&id.value)
            .and_then(|note| note.origin);
        let reclaimed = origin.is_some_and(|origin| origin.value == GasOrigin::Reclaimed);
        if reclaimed || movement.kind != MovementKind::Charged {
            continue;
        }
        let Some((site, recovery)) = recovered_elsewhere(scene, movement, &id.value) else {
            continue;
        };
        found.push(
            CAUTION.says(
                id.span,
                Message::of("caution-recovered-gas-to-another-owner")
                    .with("cylinder", id.value.0.as_str())
                    .with("site", site.name()),
            )
            .here("charged into this system")
            .also(recovery.at.span, "recovered from another owner's system")
            .cure("have the charge tested, or take it out and charge reclaimed or new gas")
            .cure(
                "if the cylinder had been emptied or filled since, write it as [[cylinder-event]]",
            ),
        );
        return;
    }
}

/// The last recovery into a cylinder at another operator's site that nothing emptied since.
fn recovered_elsewhere<'a>(
    scene: &Scene<'a>,
    charge: &Movement,
    cylinder: &Identifier,
) -> Option<(&'a Site, &'a Movement)> {
    let others = scene
        .book
        .sites
        .iter()
        .filter(|site| is_another(scene.site, site));
    let movements = others.flat_map(|site| {
        let visits = site.systems.iter().flat_map(|system| &system.visits);
        visits.flat_map(move |visit| visit.movements.iter().map(move |one| (site, one)))
    });
    movements
        .filter(|(_, one)| one.kind == MovementKind::Recovered)
        .filter(|(_, one)| {
            one.note
                .cylinder
                .as_ref()
                .is_some_and(|id| id.value == *cylinder)
        })
        .filter(|(_, one)| one.at.value < charge.at.value)
        .filter(|(_, one)| {
            !started_anew(scene, cylinder, one.at.value.date(), charge.at.value.date())
        })
        .max_by_key(|(_, one)| one.at.value)
}

/// Whether two sites are of different operators, both of them noted.
fn is_another(one: &Site, other: &Site) -> bool {
    let operator = |site: &Site| {
        let note = site.note.as_ref()?;
        Some(note.operator.as_ref()?.value.trim().to_lowercase())
    };
    operator(one)
        .zip(operator(other))
        .is_some_and(|(one, other)| one != other)
}

/// Whether the cylinder was emptied, returned or filled on a day between.
fn started_anew(scene: &Scene<'_>, cylinder: &Identifier, from: Date, to: Date) -> bool {
    scene.cylinders.events(cylinder).iter().any(|event| {
        let anew = event.what.is_some_and(|what| {
            !matches!(
                what.value,
                CylinderHappening::Retested | CylinderHappening::Weighed
            )
        });
        let day = event.at.map(|at| at.value.date);
        anew && day.is_none_or(|day| (from..=to).contains(&day))
    })
}
