//! Dates set by hand at a visit, beside those of the rules: the earlier one stands, and a later one
//! only as far as an extension reaches.

use crate::notes::DueNote;
use crate::ruleset::in_force::in_use;
use crate::ruleset::obligation::{Duty, Event, Obligation, Typed};
use crate::ruleset::past::{Past, repaired};
use crate::text::{Noted, Text};
use crate::vocabulary::system_file::Category;
use crate::vocabulary::visit_file::{DueWord, Extension};
use crate::vocabulary::{Identifier, Word};
use jiff::ToSpan;
use jiff::civil::Date;

/// A date set by hand at a visit.
struct Set<'a> {
    visit: usize,
    day: Date,
    what: Noted<DueWord>,
    by: Noted<Date>,
    circuit: Option<usize>,
    point: Option<&'a Identifier>,
    note: &'a DueNote,
}

/// Lets the dates set by hand lead where they are the earlier ones, and adds those that no rule asks for.
pub(super) fn dates(past: &Past<'_>, all: &mut Vec<Obligation>) {
    for set in last_of_each(past) {
        let mut known = false;
        for duty in all.iter_mut().filter(|duty| set.is_for(duty)) {
            known = true;
            if duty.done.is_none() {
                set.apply(past, duty);
            }
        }
        if !known && set.is_open(past) {
            all.push(set.alone());
        }
    }
}

/// Of several dates for the same thing only the last one counts.
fn last_of_each<'a>(past: &Past<'a>) -> Vec<Set<'a>> {
    let mut sets: Vec<Set<'a>> = Vec::new();
    for (number, visit) in past.visits().rev() {
        for note in visit.note.iter().flat_map(|note| &note.due) {
            let (Some(what), Some(by)) = (note.what, note.by) else {
                continue;
            };
            let set = Set {
                visit: number,
                day: visit.last_day(),
                what,
                by,
                circuit: note
                    .circuit
                    .as_ref()
                    .and_then(|id| past.system.circuit(&id.value)),
                point: note.point.as_ref().map(|id| &id.value),
                note,
            };
            let newer = |s: &Set<'_>| {
                s.visit > number
                    && (s.what.value, s.circuit, s.point) == (what.value, set.circuit, set.point)
            };
            if !sets.iter().any(newer) {
                sets.push(set);
            }
        }
    }
    sets
}

impl Set<'_> {
    /// Whether it speaks of what a rule asks for, counted from something known when it was set.
    fn is_for(&self, duty: &Obligation) -> bool {
        duty.duty == duty_of(self.what.value)
            && duty.rules.is_some()
            && duty.from.day <= self.day
            && duty.done.as_ref().is_none_or(|done| done.day > self.day)
            && self
                .circuit
                .is_none_or(|circuit| duty.circuit == Some(circuit))
            && self
                .point
                .is_none_or(|point| duty.point.as_ref().is_none_or(|id| id == point))
    }

    fn apply(&self, past: &Past<'_>, duty: &mut Obligation) {
        let law = duty.by;
        let allowed = self.extended(past, duty).unwrap_or(law).max(law);
        duty.by = self.by.value.min(allowed);
        duty.typed = Some(Typed {
            by: self.by,
            visit: self.visit,
            allowed: Some(allowed),
        });
        if let Some(extension) = self.note.extension.filter(|_| duty.by > law) {
            duty.add_note(&format!(
                "{law} without the extension: {}",
                extension.value.word()
            ));
        }
        if self.by.value > allowed {
            duty.add_note(&format!(
                "a later date is noted, {}, which does not move this one",
                self.by.value
            ));
        }
        if let Some(note) = &self.note.note {
            duty.add_note(&note.value);
        }
    }

    /// The last day that an extension gives a repair: 40 CFR 82.157(d), (f), 84.106(d), (f).
    fn extended(&self, past: &Past<'_>, duty: &Obligation) -> Option<Date> {
        let law = duty.rules?.exceedance?;
        if !matches!(duty.duty, Duty::Repair | Duty::InitialTest) {
            return None;
        }
        let category = past.system.note.as_ref()?.category;
        let industrial = category.is_some_and(|c| c.value == Category::IndustrialProcess);
        let from = duty.from.day;
        let plain = if industrial {
            law.shutdown_days
        } else {
            law.repair.value
        };
        let asked = self.note.asked.map(|asked| asked.value);
        let in_time = from.checked_add(plain.days()).ok()?;
        let asked_in_time = asked.is_some_and(|asked| asked >= from && asked <= in_time);
        match self.note.extension?.value {
            Extension::Shutdown if industrial => Some(in_time),
            Extension::Parts if asked_in_time => {
                let days = if industrial {
                    law.parts_shutdown_days
                } else {
                    law.parts_days
                };
                from.checked_add(days.days()).ok()
            }
            Extension::OtherLaw | Extension::Radiological if asked_in_time => Some(self.by.value),
            _ => None,
        }
    }

    /// Whether nothing since has done it.
    fn is_open(&self, past: &Past<'_>) -> bool {
        let all: Vec<usize> = (0..past.system.circuits.len())
            .filter(|circuit| self.circuit.is_none_or(|named| named == *circuit))
            .filter(|circuit| in_use(past.system, *circuit, past.on))
            .collect();
        let note = past.system.note.as_ref();
        let since = |days: &[Noted<Date>]| {
            days.iter()
                .any(|day| day.value > self.day && day.value <= past.on)
        };
        let plans = past
            .system
            .plans
            .iter()
            .filter(|plan| all.contains(&plan.circuit));
        let done = match self.what.value {
            DueWord::LeakCheck => all
                .iter()
                .all(|circuit| past.checks(*circuit).iter().any(|e| e.day > self.day)),
            DueWord::Repair => past
                .visits()
                .skip(self.visit + 1)
                .flat_map(|(_, visit)| visit.findings.iter().map(move |f| (visit, f)))
                .filter(|(_, f)| past.circuit_of(f).is_none_or(|c| all.contains(&c)))
                .filter(|(_, f)| {
                    self.point.is_none_or(|point| {
                        f.note.point.as_ref().is_some_and(|p| p.value == *point)
                    })
                })
                .any(|(visit, finding)| repaired(visit, finding).is_some()),
            DueWord::InitialTest | DueWord::FollowUp | DueWord::Recheck => {
                all.iter().all(|circuit| {
                    past.looked_again(self.visit, self.point, *circuit, None)
                        .is_some()
                })
            }
            DueWord::DetectionSystem => note
                .and_then(|note| note.leak_detection_system)
                .is_some_and(|yes| yes.value),
            DueWord::DetectionCheck => note.is_some_and(|note| since(&note.leak_detection_checked)),
            DueWord::Report => note.is_some_and(|note| since(&note.chronic_loss_reported)),
            DueWord::Plan => plans
                .clone()
                .any(|plan| plan.made.value > self.day && plan.made.value <= past.on),
            DueWord::PlanCompletion => plans
                .clone()
                .any(|plan| plan.completed.is_some_and(|day| day.value <= past.on)),
            DueWord::ReturnVisit => past.count > self.visit + 1,
        };
        !done && !all.is_empty()
    }

    /// As something that only the date set by hand asks for.
    fn alone(&self) -> Obligation {
        let note = self.note.note.as_ref().map(|note| note.value.clone());
        let (what, note) = match (self.what.value, note) {
            (DueWord::ReturnVisit, Some(note)) => (Text::Written(note), None),
            (word, note) => (Text::Phrase(words(word)), note),
        };
        Obligation {
            rules: None,
            source: Text::Phrase("the technician's own date"),
            duty: duty_of(self.what.value),
            what,
            circuit: self.circuit,
            point: self.point.cloned(),
            from: Event {
                day: self.day,
                what: "set at the visit".to_owned(),
                span: self.by.span,
            },
            not_before: None,
            not_before_words: None,
            by: self.by.value,
            typed: Some(Typed {
                by: self.by,
                visit: self.visit,
                allowed: None,
            }),
            note,
            done: None,
            from_memory: false,
        }
    }
}

fn duty_of(word: DueWord) -> Duty {
    match word {
        DueWord::Repair => Duty::Repair,
        DueWord::InitialTest => Duty::InitialTest,
        DueWord::FollowUp => Duty::FollowUp,
        DueWord::Recheck => Duty::Recheck,
        DueWord::LeakCheck => Duty::LeakCheck,
        DueWord::DetectionSystem => Duty::DetectionSystem,
        DueWord::DetectionCheck => Duty::DetectionCheck,
        DueWord::Plan => Duty::Plan,
        DueWord::PlanCompletion => Duty::PlanCompletion,
        DueWord::Report => Duty::Report,
        DueWord::ReturnVisit => Duty::ReturnVisit,
    }
}

/// What has to be done, where no rule says it in its own words.
fn words(word: DueWord) -> &'static str {
    match word {
        DueWord::Repair => "Repair the leak",
        DueWord::InitialTest => "Test the repair before refrigerant is added back",
        DueWord::FollowUp => "Follow-up verification test",
        DueWord::Recheck => "Check the repair again",
        DueWord::LeakCheck => "Leak check",
        DueWord::DetectionSystem => "Fit a leakage detection system",
        DueWord::DetectionCheck => "Check the leakage detection system",
        DueWord::Plan => "Plan to retrofit or retire the system",
        DueWord::PlanCompletion => "Retrofit or retire the system",
        DueWord::Report => "Report the chronic loss",
        DueWord::ReturnVisit => "Return visit",
    }
}
