//! One visit beside another: charge, tests and operating readings, in the site's units.

use crate::job::{OperatingReading, Site, System, Visit};
use crate::quantity::{Flavour, Measured, Quantity, Temperature, print, print_si};
use crate::text::Noted;
use crate::vocabulary::Identifier;
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::working::Figure;
use crate::working::account::account;
use crate::working::pressure_test::hold;
use crate::working::vacuum_test::rise;

/// How far two ambient temperatures may lie apart for operating readings to be compared, K; our
/// choice.
const LIKE_AMBIENT_K: f64 = 5.0;

/// One thing at both visits, in print.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct Compared {
    /// `charge`, `test` or `operating`.
    pub group: &'static str,
    /// What it is.
    pub what: String,
    /// At the earlier visit; none where it was not noted.
    pub then: Option<String>,
    /// At the later visit.
    pub now: Option<String>,
    /// By how much it changed, or why it is not compared.
    pub note: Option<String>,
}

/// Everything that two visits of a system, by their numbers, have to compare.
pub fn differences(site: &Site, system: &System, then: usize, now: usize) -> Vec<Compared> {
    let mut all = charge(site, system, then, now);
    if let (Some(before), Some(after)) = (system.visits.get(then), system.visits.get(now)) {
        all.extend(tests(site, system, before, after));
        for circuit in 0..system.circuits.len() {
            all.extend(operating(site, system, circuit, before, after));
        }
    }
    all.retain(|compared| {
        compared.then.is_some() || compared.now.is_some() || compared.note.is_some()
    });
    all
}

fn of_circuit(system: &System, circuit: usize) -> String {
    if system.several_circuits() {
        format!(", {}", system.circuit_name(circuit))
    } else {
        String::new()
    }
}

fn charge(site: &Site, system: &System, then: usize, now: usize) -> Vec<Compared> {
    let mut all = Vec::new();
    for circuit in 0..system.circuits.len() {
        let of = of_circuit(system, circuit);
        let line = |what: &str, value: &dyn Fn(usize) -> Option<String>| Compared {
            group: "charge",
            what: format!("{what}{of}"),
            then: value(then),
            now: value(now),
            note: None,
        };
        let force = |number: usize| {
            let visit = system.visits.get(number)?;
            system.in_force(circuit, visit.last_day())
        };
        all.push(line("Refrigerant", &|number| {
            Some(force(number)?.refrigerant?.designation.to_owned())
        }));
        all.push(line("Full charge", &|number| {
            let full = force(number)?.note.full_charge?;
            Some(print(&full.value, site.units).to_string())
        }));
        let account = account(system, circuit, then.max(now));
        let mass = |kg: f64| print_si(Flavour::Mass, kg, None, site.units).to_string();
        for (what, kind) in [
            ("Charged", MovementKind::Charged),
            ("Recovered", MovementKind::Recovered),
        ] {
            all.push(line(what, &|number| {
                let kg = account.sum(kind, |entry| entry.visit == Some(number));
                (kg > 0.0).then(|| mass(kg))
            }));
        }
        all.push(line("Net addition", &|number| {
            Some(mass(account.addition_of(number)?.kg))
        }));
    }
    all
}

/// A tested part and what the test showed, in print.
struct Tested<'v> {
    kind: &'static str,
    circuit: usize,
    section: Option<&'v Identifier>,
    shown: String,
}

fn tests(site: &Site, system: &System, then: &Visit, now: &Visit) -> Vec<Compared> {
    let before = tested(site, system, then);
    let mut all: Vec<Compared> = Vec::new();
    let after = tested(site, system, now);
    let same = |a: &Tested<'_>, b: &Tested<'_>| {
        a.kind == b.kind && a.circuit == b.circuit && a.section == b.section
    };
    let part = |test: &Tested<'_>| {
        let section = test.section.map(|id| format!(", section {id}"));
        let of = of_circuit(system, test.circuit);
        format!("{}{of}{}", test.kind, section.unwrap_or_default())
    };
    for test in &after {
        all.push(Compared {
            group: "test",
            what: part(test),
            then: before
                .iter()
                .rfind(|t| same(t, test))
                .map(|t| t.shown.clone()),
            now: Some(test.shown.clone()),
            note: None,
        });
    }
    for test in &before {
        if !after.iter().any(|t| same(t, test)) {
            all.push(Compared {
                group: "test",
                what: part(test),
                then: Some(test.shown.clone()),
                now: None,
                note: None,
            });
        }
    }
    all
}

fn tested<'v>(site: &Site, system: &System, visit: &'v Visit) -> Vec<Tested<'v>> {
    let pressure = visit.pressure_tests.iter().filter_map(|test| {
        let limit = hold(test, system.circuits.get(test.circuit)?, visit).limit;
        Some(Tested {
            kind: "Pressure test",
            circuit: test.circuit,
            section: test.section(),
            shown: limit.map_or_else(
                || "no limit stated".to_owned(),
                |limit| format!("nothing larger than {}", limit.value.print(site.units)),
            ),
        })
    });
    let vacuum = visit.vacuum_tests.iter().map(|test| {
        let rise = rise(test, system, visit);
        let print = |figure: &Figure| figure.value.print(site.units);
        Tested {
            kind: "Vacuum test",
            circuit: test.circuit,
            section: test.section(),
            shown: match (&rise.upper, &rise.rise) {
                (Some(upper), _) => format!("nothing larger than {}", print(upper)),
                (None, Some(rise)) => format!("mean rise {}", print(rise)),
                (None, None) => "rise not sized".to_owned(),
            },
        }
    });
    pressure.chain(vacuum).collect()
}

/// Temperature of the air about a reading: its own, else that of the visit.
fn ambient(visit: &Visit, reading: &OperatingReading) -> Option<Noted<Measured<Temperature>>> {
    let of_visit = visit.note.as_ref().and_then(|note| note.ambient);
    reading.note.ambient.or(of_visit)
}

fn operating(
    site: &Site,
    system: &System,
    circuit: usize,
    then: &Visit,
    now: &Visit,
) -> Vec<Compared> {
    // The last reading of a visit is that of the plant as it was left.
    let last = |visit: &Visit| -> Option<usize> {
        let mut readings = visit.operating.iter();
        readings.rposition(|reading| reading.circuit == circuit)
    };
    let (Some(before), Some(after)) = (
        last(then).and_then(|index| then.operating.get(index)),
        last(now).and_then(|index| now.operating.get(index)),
    ) else {
        return Vec::new();
    };
    let of = of_circuit(system, circuit);
    let (Some(air_then), Some(air_now)) = (ambient(then, before), ambient(now, after)) else {
        return vec![Compared {
            group: "operating",
            what: format!("Operating readings{of}"),
            then: None,
            now: None,
            note: Some("not compared: an ambient temperature is missing".to_owned()),
        }];
    };
    let apart = (air_now.value.value.si() - air_then.value.value.si()).abs();
    let mut all = vec![Compared {
        group: "operating",
        what: format!("Ambient{of}"),
        then: Some(print(&air_then.value, site.units).to_string()),
        now: Some(print(&air_now.value, site.units).to_string()),
        note: Some(if apart > LIKE_AMBIENT_K {
            format!(
                "readings not compared: more than {LIKE_AMBIENT_K} K apart (our choice of what is alike)"
            )
        } else {
            format!("alike, within {LIKE_AMBIENT_K} K (our choice of what is alike)")
        }),
    }];
    if apart > LIKE_AMBIENT_K {
        return all;
    }
    all.extend(readings(site, &of, before, after));
    all
}

fn readings(
    site: &Site,
    of: &str,
    before: &OperatingReading,
    after: &OperatingReading,
) -> Vec<Compared> {
    let (b, a) = (&before.note, &after.note);
    let units = site.units;
    vec![
        compared(
            "Suction pressure",
            of,
            b.suction_pressure,
            a.suction_pressure,
            units,
        ),
        compared(
            "Suction temperature",
            of,
            b.suction_temperature,
            a.suction_temperature,
            units,
        ),
        compared(
            "Discharge pressure",
            of,
            b.discharge_pressure,
            a.discharge_pressure,
            units,
        ),
        compared(
            "Liquid pressure",
            of,
            b.liquid_pressure,
            a.liquid_pressure,
            units,
        ),
        compared(
            "Liquid temperature",
            of,
            b.liquid_temperature,
            a.liquid_temperature,
            units,
        ),
        compared(
            "Receiver level",
            of,
            b.receiver_level,
            a.receiver_level,
            units,
        ),
        compared(
            "Compressor current",
            of,
            b.compressor_current,
            a.compressor_current,
            units,
        ),
        Compared {
            group: "operating",
            what: format!("Sight glass{of}"),
            then: b.sight_glass.as_ref().map(|words| words.value.clone()),
            now: a.sight_glass.as_ref().map(|words| words.value.clone()),
            note: None,
        },
    ]
}

fn compared<T: Quantity>(
    what: &str,
    of: &str,
    then: Option<Noted<Measured<T>>>,
    now: Option<Noted<Measured<T>>>,
    units: crate::quantity::UnitSystem,
) -> Compared {
    let printed = |noted: &Option<Noted<Measured<T>>>| {
        noted
            .as_ref()
            .map(|noted| print(&noted.value, units).to_string())
    };
    Compared {
        group: "operating",
        what: format!("{what}{of}"),
        then: printed(&then),
        now: printed(&now),
        note: None,
    }
}
