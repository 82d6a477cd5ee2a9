//! What follows a leak rate above the trigger: repair, the two verification tests, inspections, a plan;
//! and the report of a chronic loss. 40 CFR 82.157(d) to (j), 84.106(d) to (j).

use crate::job::{Finding, Plan, Visit};
use crate::notes::Proof;
use crate::ruleset::automatic_detection::{audit_instead, automatic_detection};
use crate::ruleset::deadline::covers;
use crate::ruleset::in_force::{covered_on, statutory_rate};
use crate::ruleset::obligation::{Duty, Event, Obligation};
use crate::ruleset::past::{Past, clears, repaired};
use crate::ruleset::plan::plans_of;
use crate::ruleset::rule_set::{Exceedance, RuleSet, Yearly, is_chronic, trigger_percent};
use crate::text::{Message, Span, Text};
use crate::vocabulary::refrigerant_file::MovementKind;
use crate::vocabulary::system_file::Category;
use crate::working::account::{Account, Addition, account};
use crate::working::outcome::{is_leak, moment_of, proves};
use jiff::ToSpan;
use jiff::civil::{Date, DateTime, date};

/// A pound, kg: exact by the international yard and pound agreement of 1959.
const POUND: f64 = 0.453_592_37;

/// An addition at which the leak rate was over the trigger.
struct Over<'a> {
    past: Past<'a>,
    rules: &'static RuleSet,
    law: Exceedance,
    circuit: usize,
    number: usize,
    from: Event,
    category: Category,
}

/// All duties of a circuit that a rule with a leak rate names.
pub(super) fn duties(
    past: &Past<'_>,
    rules: &'static RuleSet,
    circuit: usize,
    all: &mut Vec<Obligation>,
) {
    let Some(law) = rules.exceedance else {
        return;
    };
    let Some(last) = past.count.checked_sub(1) else {
        return;
    };
    let account = account(past.system, circuit, last);
    let category = past.system.note.as_ref().and_then(|note| note.category);
    let mut last_over = None;
    for addition in &account.additions {
        let (Some(number), Some(category)) = (addition.visit, category) else {
            continue;
        };
        let day = addition.at.value.date();
        if !covers(past, rules, circuit, day) {
            continue;
        }
        let place = (past.site, past.system);
        let rate = statutory_rate(rules, place, &account, (circuit, number))
            .map(|figure| figure.value.number());
        let trigger = trigger_percent(category.value);
        let Some(rate) = rate.filter(|rate| *rate > trigger) else {
            continue;
        };
        let over = Over {
            past: *past,
            rules,
            law,
            circuit,
            number,
            from: Event {
                day,
                what: format!("leak rate {rate:.2} % at this addition, over {trigger} %"),
                span: addition_span(addition),
            },
            category: category.value,
        };
        over.tests(all);
        last_over = Some(over);
    }
    if let Some(over) = last_over {
        all.extend(over.inspection());
    }
    chronic(past, rules, law, circuit, &account, all);
}

fn addition_span(addition: &Addition) -> Span {
    addition.spans.last().copied().unwrap_or(addition.at.span)
}

/// A visit that repaired every leak it found in a circuit, and when.
struct RepairVisit<'a> {
    number: usize,
    visit: &'a Visit,
    findings: Vec<&'a Finding>,
    event: Event,
}

impl Over<'_> {
    fn obligation(
        &self,
        duty: Duty,
        what: &'static str,
        source: &'static str,
        by: Date,
    ) -> Obligation {
        let asked = (self.rules, Text::Phrase(source));
        let what = Text::Phrase(what);
        Obligation::of(asked, duty, what, self.circuit, self.from.clone(), by)
    }

    /// The plan to retrofit or retire that was made after it.
    fn plan(&self) -> Option<&Plan> {
        plans_of(&self.past, self.circuit).find(|plan| plan.made.value >= self.from.day)
    }

    /// The repair of it: at the visit of the addition, or at the first after it.
    fn repair(&self) -> Option<RepairVisit<'_>> {
        self.past
            .visits()
            .skip(self.number)
            .find_map(|(number, visit)| {
                let findings: Vec<&Finding> = visit
                    .findings
                    .iter()
                    .filter(|f| is_leak(f) && self.past.circuit_of(f) == Some(self.circuit))
                    .collect();
                let days: Option<Vec<Event>> = findings
                    .iter()
                    .map(|finding| repaired(visit, finding))
                    .collect();
                let event = days?.into_iter().max_by_key(|event| event.day)?;
                Some(RepairVisit {
                    number,
                    visit,
                    findings,
                    event,
                })
            })
    }

    fn tests(&self, all: &mut Vec<Obligation>) {
        let law = &self.law;
        let day = self.from.day;
        let Ok(by) = day.checked_add(law.repair.value.days()) else {
            return;
        };
        let shutdown = day.checked_add(law.shutdown_days.days()).ok();
        let industrial = self.category == Category::IndustrialProcess;
        let longer = Some(match shutdown.filter(|_| industrial) {
            Some(until) => format!(
                "by {until} with an industrial process shutdown ({} days); {}",
                law.shutdown_days, law.extensions
            ),
            None => law.extensions.to_owned(),
        });
        let repair = self.repair();
        let plan = self.plan();
        // 82.157(c)(1) and 84.106(c)(1) let the operator choose; from memory.
        let instead = plan.map(|plan| Event {
            day: plan.made.value,
            what: "a plan to retrofit or retire was made instead (from memory, verify)".to_owned(),
            span: plan.made.span,
        });
        let mut duty = self.obligation(Duty::Repair, "Repair the leaks", law.repair.source, by);
        duty.note.clone_from(&longer);
        duty.done = repair
            .as_ref()
            .map(|repair| repair.event.clone())
            .or_else(|| instead.clone());
        all.push(duty);
        let initial = repair.as_ref().and_then(|repair| self.initial(repair));
        let mut duty = self.obligation(
            Duty::InitialTest,
            "Initial verification test of the repair, before refrigerant is added back",
            law.initial,
            by,
        );
        duty.note = longer;
        duty.done = initial.clone().or(instead);
        all.push(duty);
        if let (Some(repair), Some(initial)) = (&repair, initial) {
            all.extend(self.follow_up(repair, initial));
        }
        let failed = repair.is_none() && self.past.on > by;
        if let Ok(due) = by.checked_add(law.plan.value.days())
            && (failed || plan.is_some())
        {
            let mut duty = self.obligation(
                Duty::Plan,
                "Plan to retrofit or retire the system, since no repair is noted in its time",
                law.plan.source,
                due,
            );
            duty.note = Some("not if the repair was made within an extension; relief if the rate is shown to be under the trigger within 180 days".to_owned());
            duty.done = plan.map(|plan| Event {
                day: plan.made.value,
                what: "plan made".to_owned(),
                span: plan.made.span,
            });
            all.push(duty);
        }
    }

    /// The last of the proofs between a repair and the first charge after it, if every repair has one.
    fn initial(&self, repair: &RepairVisit<'_>) -> Option<Event> {
        let visit = repair.visit;
        let proofs: Option<Vec<Event>> = repair
            .findings
            .iter()
            .map(|finding| {
                let after = finding
                    .note
                    .repairs
                    .last()?
                    .at
                    .map(|at| moment_of(visit, at.value));
                let charge = visit
                    .movements
                    .iter()
                    .filter(|m| m.circuit == self.circuit && m.kind == MovementKind::Charged)
                    .map(|m| m.at.value.civil)
                    .filter(|at| after.is_none_or(|after| *at > after))
                    .min();
                finding
                    .note
                    .proofs
                    .iter()
                    .filter(|proof| proves(self.past.system, visit, proof, after))
                    .filter_map(|proof| proof_at(visit, proof))
                    .filter(|(at, _)| charge.is_none_or(|charge| *at <= charge))
                    .min_by_key(|(at, _)| *at)
                    .map(|(at, span)| Event {
                        day: at.date(),
                        what: "tested before refrigerant was added back".to_owned(),
                        span,
                    })
            })
            .collect();
        proofs?.into_iter().max_by_key(|event| event.day)
    }

    fn follow_up(&self, repair: &RepairVisit<'_>, initial: Event) -> Option<Obligation> {
        let visit = repair.visit;
        let evacuated = visit.vacuum_tests.iter().any(|t| t.circuit == self.circuit)
            || visit
                .movements
                .iter()
                .any(|m| m.circuit == self.circuit && m.kind == MovementKind::Recovered);
        let from = match visit.back.filter(|_| evacuated) {
            Some(back) => Event {
                day: back.value.date(),
                what: "back in normal operation after evacuation".to_owned(),
                span: back.span,
            },
            None => initial,
        };
        let by = from.day.checked_add(self.law.follow_up.value.days()).ok()?;
        let looked: Option<Vec<Event>> = repair
            .findings
            .iter()
            .map(|finding| {
                let point = finding.note.point.as_ref().map(|id| &id.value);
                self.past.looked_again(
                    repair.number,
                    point,
                    self.circuit,
                    visit.back.map(|b| b.value),
                )
            })
            .collect();
        let mut duty = self.obligation(
            Duty::FollowUp,
            "Follow-up verification test",
            self.law.follow_up.source,
            by,
        );
        duty.not_before_words = Some(Text::Phrase("after return to normal operation"));
        duty.not_before = visit.back.map(|back| back.value);
        duty.from = from;
        duty.done = looked.and_then(|events| events.into_iter().max_by_key(|event| event.day));
        Some(duty)
    }

    /// The next leak inspection, until a year has passed since the rate was over the trigger.
    fn inspection(&self) -> Option<Obligation> {
        let (_, size) = covered_on(self.rules, self.past.system, self.circuit, self.past.on)?;
        let refrigeration = matches!(
            self.category,
            Category::CommercialRefrigeration | Category::IndustrialProcess
        );
        let quarterly =
            refrigeration && size.kg >= self.law.quarterly_from_lb * POUND * (1.0 - 1e-9);
        let tested = self.repair().and_then(|repair| {
            let initial = self.initial(&repair)?;
            self.follow_up(&repair, initial)?.done
        });
        let start = match self.law.yearly {
            Yearly::AfterFollowUp => tested?,
            Yearly::CalendarYear => self.from.clone(),
        };
        let end = start.day.checked_add(1.year()).ok()?;
        let checked = self.past.checks(self.circuit).into_iter().filter(|event| {
            event.day > start.day
                || (event.day == start.day && self.law.yearly == Yearly::CalendarYear)
        });
        let last = checked.max_by_key(|event| event.day);
        let from = last.clone().unwrap_or_else(|| start.clone());
        let by = match (quarterly, self.law.yearly) {
            (true, _) => from.day.checked_add(3.months()).ok()?,
            (false, Yearly::AfterFollowUp) if last.is_none() => end,
            (false, Yearly::CalendarYear) if last.is_none() => date(start.day.year(), 12, 31),
            _ => return None,
        };
        if by > end {
            return None;
        }
        if let Some(audit) = audit_instead(&self.past, self.rules, self.circuit) {
            // Where one has to be there anyway, its audit is told already.
            let anyway = automatic_detection(&self.past, self.rules, self.circuit).is_some();
            return (!anyway).then_some(audit);
        }
        let what = "Leak inspection of all visible and accessible parts";
        let mut duty = self.obligation(Duty::LeakCheck, what, self.law.inspections, by);
        duty.source = Message::of("inspections-until")
            .phrase("source", self.law.inspections)
            .with("quarterly", if quarterly { "yes" } else { "no" })
            .into();
        duty.from = from;
        duty.note = Some(
            "by a certified technician; an automatic leak detection system that is audited yearly may stand instead".to_owned(),
        );
        Some(duty)
    }
}

/// When a proof was made, and where it stands.
fn proof_at(visit: &Visit, proof: &Proof) -> Option<(DateTime, Span)> {
    match proof {
        Proof::Look(look) => clears(look).then(|| (moment_of(visit, look.at.value), look.span)),
        Proof::Named(name) => {
            let pressure = visit.pressure_tests.iter().find(|t| t.id == name.value);
            let vacuum = visit.vacuum_tests.iter().find(|t| t.id == name.value);
            let at = pressure
                .map(|t| t.end.at.value.civil)
                .or(vacuum.map(|t| t.end.at.value.civil))?;
            Some((at, name.span))
        }
    }
}

/// Reports of calendar years in which 125 % or more of the full charge was lost.
fn chronic(
    past: &Past<'_>,
    rules: &'static RuleSet,
    law: Exceedance,
    circuit: usize,
    account: &Account,
    all: &mut Vec<Obligation>,
) {
    let mut told = None;
    for addition in &account.additions {
        let day = addition.at.value.date();
        if told.is_some_and(|year| year == day.year()) || !covers(past, rules, circuit, day) {
            continue;
        }
        let same_year = account
            .additions
            .iter()
            .filter(|a| a.at.value.date().year() == day.year() && a.at.value <= addition.at.value);
        let lost: f64 = same_year.map(|a| a.leaked_kg).sum();
        let full = covered_on(rules, past.system, circuit, day).map_or(0.0, |(_, size)| size.kg);
        if !is_chronic(lost, full) {
            continue;
        }
        told = Some(day.year());
        let by = date(day.year() + 1, 3, 1);
        let note = past.system.note.as_ref();
        let done = note
            .into_iter()
            .flat_map(|note| &note.chronic_loss_reported)
            .find(|noted| noted.value > day && noted.value <= past.on);
        let what = Message::of("report-loss")
            .figure("percent", format!("{:.0}", 100.0 * lost / full))
            .with("year", day.year().to_string())
            .into();
        let from = Event {
            day,
            what: format!(
                "with this addition {} % or more of the full charge in the calendar year",
                law.chronic.value
            ),
            span: addition_span(addition),
        };
        let asked = (rules, Text::Phrase(law.chronic.source));
        all.push(Obligation {
            done: done.map(|noted| Event {
                day: noted.value,
                what: "reported".to_owned(),
                span: noted.span,
            }),
            ..Obligation::of(asked, Duty::Report, what, circuit, from, by)
        });
    }
}
