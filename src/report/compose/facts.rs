//! The four facts under the outcome: the repaired places, the test, the refrigerant, the next date.

use crate::job::{Finding, covers};
use crate::notes::Proof;
use crate::report::compose::legal::next_in_short;
use crate::report::compose::scene::Scene;
use crate::report::compose::test_fact::test_fact;
use crate::report::data::{Fact, NextDate};
use crate::text::Message;
use crate::vocabulary::method_word::MethodWord;
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::vocabulary::{Identifier, Word};
use crate::working::Figure;
use crate::working::leak_rate::Missing;
use crate::working::outcome::proves;
use crate::working::repair_proof::gives_place;

/// At most four facts.
pub fn facts(scene: &Scene<'_>) -> Vec<Fact> {
    let mut facts = Vec::new();
    facts.extend(joint_fact(scene));
    facts.extend(test_fact(scene));
    facts.extend(refrigerant_fact(scene));
    facts.extend(next_fact(scene));
    facts.truncate(4);
    facts
}

/// What is next; what is overdue is told as overdue, with what comes after it.
fn next_fact(scene: &Scene<'_>) -> Option<Fact> {
    let dates = next_in_short(scene);
    let overdue = dates.iter().find(|date| date.overdue);
    let ahead = dates.iter().find(|date| !date.overdue);
    let told = |date: &NextDate| format!("{} {}", date.what, date.by);
    match (overdue, ahead) {
        (Some(late), _) => Some(Fact {
            label: scene.word("fact-overdue"),
            value: told(late),
            qualifier: ahead
                .map(|next| scene.say(&Message::of("fact-then").with("next", told(next)))),
            working: None,
        }),
        (None, Some(next)) => Some(Fact {
            label: scene.word("fact-next"),
            value: told(next),
            qualifier: next.not_before.clone(),
            working: None,
        }),
        (None, None) => None,
    }
}

fn joint_fact(scene: &Scene<'_>) -> Option<Fact> {
    let repaired: Vec<_> = scene
        .leaks()
        .filter(|(_, finding, _)| !finding.note.repairs.is_empty())
        .collect();
    let looks: Vec<_> = repaired
        .iter()
        .map(|(_, finding, _)| proving(scene, finding))
        .filter(|methods| !methods.is_empty())
        .collect();
    if repaired.is_empty() {
        let checked = scene.holding();
        return (!checked.is_empty()).then(|| Fact {
            label: scene.word("fact-earlier-repairs"),
            value: scene
                .say(&Message::of("fact-earlier-repairs-checked").with("repairs", checked.len())),
            qualifier: by_methods(scene, methods_at(scene, &checked)),
            working: None,
        });
    }
    let label = scene.say(&Message::of("fact-repaired-places").with("places", repaired.len()));
    if looks.is_empty() {
        return Some(Fact {
            label,
            value: scene.word("fact-not-checked-again"),
            qualifier: None,
            working: None,
        });
    }
    let all = looks.len() == repaired.len();
    let value = if all && looks.len() == 1 {
        Message::of("fact-checked-again")
    } else if all {
        Message::of("fact-all-checked-again")
    } else {
        Message::of("fact-some-checked-again")
            .with("checked", looks.len())
            .with("repaired", repaired.len())
    };
    Some(Fact {
        label,
        value: scene.say(&value),
        qualifier: by_methods(scene, looks.concat()),
        working: None,
    })
}

/// The methods of the looks that prove a finding's repair.
fn proving(scene: &Scene<'_>, finding: &Finding) -> Vec<MethodWord> {
    let proofs = finding.note.proofs.iter();
    let proving = proofs.filter(|proof| proves(scene.system, scene.visit, proof, None));
    proving
        .filter_map(|proof| match proof {
            Proof::Look(look) => Some(look.method.value),
            Proof::Named(_) => None,
        })
        .collect()
}

/// The methods by which points repaired earlier were looked at again.
fn methods_at(scene: &Scene<'_>, points: &[(&Identifier, i64)]) -> Vec<MethodWord> {
    let at = |id: &Identifier| points.iter().any(|(point, _)| *point == id);
    let findings = scene.visit.findings.iter().filter(|finding| {
        let point = finding.note.point.as_ref();
        point.is_some_and(|point| at(&point.value))
    });
    let looked = findings.flat_map(|finding| {
        let evidence = finding.note.evidence.iter();
        let clear = evidence.filter(|look| !look.positive());
        let mut methods: Vec<MethodWord> = clear.map(|look| look.method.value).collect();
        methods.extend(proving(scene, finding));
        methods
    });
    let searches = scene.visit.searches.iter();
    let searched = searches
        .filter(|search| points.iter().any(|(point, _)| covers(search, point)))
        .filter_map(|search| Some(search.note.method?.value));
    let all = looked.chain(searched);
    all.filter(|method| gives_place(*method)).collect()
}

/// Methods by their names, each once; how the detector was proved, where one was used.
fn by_methods(scene: &Scene<'_>, mut methods: Vec<MethodWord>) -> Option<String> {
    methods.sort_unstable_by_key(|method| method.word());
    methods.dedup();
    let proved = proved_on(scene);
    let named: Vec<String> = methods
        .into_iter()
        .map(|method| {
            let name = scene.words().phrase(method.word());
            let detector = matches!(method, MethodWord::Electronic | MethodWord::Tracer);
            match proved.as_ref().filter(|_| detector) {
                Some(proved) => format!("{name} ({proved})"),
                None => name,
            }
        })
        .collect();
    (!named.is_empty()).then(|| scene.words().series(&named))
}

/// How the detector was proved that day.
fn proved_on(scene: &Scene<'_>) -> Option<String> {
    let check = scene
        .visit
        .detector_checks
        .iter()
        .rev()
        .find(|check| check.note.responded.is_some_and(|yes| yes.value))?;
    let leak = check.note.reference_leak.as_ref()?;
    Some(scene.say(&Message::of("fact-detector-proved").with("leak", leak.value.as_str())))
}

/// What came out of all circuits before a change of refrigerant, and what had been missing.
fn taken_out(scene: &Scene<'_>) -> Option<String> {
    let circuits = scene.figures.circuits.iter();
    let out: Vec<_> = circuits.filter_map(|c| c.taken_out.as_ref()).collect();
    let (old, _) = out.first()?;
    let kg = |figure: &Figure| figure.value.number();
    let recovered: f64 = out.iter().map(|(_, out)| kg(&out.recovered)).sum();
    let missing: f64 = out
        .iter()
        .filter_map(|(_, out)| out.short.as_ref())
        .map(kg)
        .sum();
    let missing = (missing > 0.0).then(|| scene.mass(missing, None));
    out.iter().all(|(other, _)| other == old).then(|| {
        let message = Message::of("fact-taken-out")
            .with("refrigerant", old.designation)
            .with("mass", scene.mass(recovered, None))
            .with("missing", missing.unwrap_or_else(|| "none".to_owned()));
        scene.say(&message)
    })
}

fn refrigerant_fact(scene: &Scene<'_>) -> Option<Fact> {
    let added: Vec<_> = scene
        .figures
        .circuits
        .iter()
        .filter_map(|circuit| Some((circuit, circuit.account.addition_of(scene.number)?)))
        .collect();
    if added.is_empty() {
        let moved = &scene.visit.movements;
        let retrofit: f64 = moved
            .iter()
            .filter(|movement| {
                movement.kind == MovementKind::Charged
                    && movement.why == Some(MovementWhy::Retrofit)
            })
            .map(|movement| movement.amount.kg())
            .sum();
        let (value, qualifier) = if moved.is_empty() {
            (scene.word("fact-none-added"), None)
        } else if retrofit > 0.0 {
            let charged = Message::of("fact-charged").with("mass", scene.mass(retrofit, None));
            let qualifier = taken_out(scene).unwrap_or_else(|| scene.word("fact-after-retrofit"));
            (scene.say(&charged), Some(qualifier))
        } else {
            return None;
        };
        return Some(Fact {
            label: scene.word("fact-refrigerant"),
            value,
            qualifier,
            working: None,
        });
    }
    let leaked: f64 = added.iter().map(|(_, addition)| addition.leaked_kg).sum();
    let missing = || {
        added
            .iter()
            .filter_map(|(circuit, _)| circuit.missing.as_ref())
    };
    let in_all: f64 = missing().map(|missing| missing.kg).sum();
    let least = missing().find(|missing| missing.more.is_some());
    let least = least.map_or("no", Missing::least);
    let co2e: f64 = added
        .iter()
        .filter_map(|(circuit, _)| circuit.missing_co2e.as_ref().or(circuit.lost_co2e.as_ref()))
        .map(|figure| figure.value.number())
        .sum();
    let co2e = (co2e > 0.0).then(|| scene.tonnes(co2e));
    let in_parts = missing().any(|missing| missing.parts.len() > 1);
    let working = added
        .first()
        .and_then(|(circuit, _)| {
            let in_all = circuit.missing_in_all.as_ref().filter(|_| !in_parts);
            in_all.or(circuit.net.as_ref())
        })
        .map(|figure| figure.id.clone());
    let (value, qualifier) = if in_parts {
        let in_all = Message::of("fact-missing-in-all")
            .with("mass", scene.mass(in_all, None))
            .with("least", least)
            .with("co2e", co2e.unwrap_or_else(|| "none".to_owned()));
        (Message::of("fact-put-back"), Some(scene.say(&in_all)))
    } else {
        (Message::of("fact-lost").with("least", least), co2e)
    };
    Some(Fact {
        label: scene.word("fact-refrigerant"),
        value: scene.say(&value.with("mass", scene.mass(leaked, None))),
        qualifier,
        working,
    })
}
