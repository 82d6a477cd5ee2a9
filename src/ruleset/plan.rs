//! The operator's plans to retrofit or retire: what they say, and the last day a rule gives them.
//! 40 CFR 82.157(h), (i), 84.106(h).

use crate::job::Plan;
use crate::ruleset::deadline::covers;
use crate::ruleset::in_force::{in_use, rules_of};
use crate::ruleset::obligation::{Duty, Event, Obligation};
use crate::ruleset::past::Past;
use crate::ruleset::rule_set::RuleSet;
use crate::text::Text;
use crate::vocabulary::system_file::PlanKind;
use jiff::ToSpan;
use jiff::civil::Date;

/// Plans of a circuit that are known on the day, the oldest first.
pub(super) fn plans_of<'a>(past: &Past<'a>, circuit: usize) -> impl Iterator<Item = &'a Plan> {
    let on = past.on;
    past.system
        .plans
        .iter()
        .filter(move |plan| plan.circuit == circuit && plan.made.value <= on)
}

/// Adds what each plan says, by its own date or by that of the rule, whichever comes first.
pub(super) fn completions(past: &Past<'_>, all: &mut Vec<Obligation>) {
    for circuit in (0..past.system.circuits.len()).filter(|c| in_use(past.system, *c, past.on)) {
        for plan in plans_of(past, circuit) {
            let asks = |rules: &&'static RuleSet| {
                rules.exceedance.is_some() && covers(past, rules, circuit, plan.made.value)
            };
            let rules = rules_of(past.site, past.on).into_iter().find(asks);
            all.push(completion(past, plan, rules, all));
        }
    }
}

fn completion(
    past: &Past<'_>,
    plan: &Plan,
    rules: Option<&'static RuleSet>,
    all: &[Obligation],
) -> Obligation {
    let law = rules.and_then(|rules| rules.exceedance);
    // The day on which this plan was due, where a rule had asked for it.
    let due = all
        .iter()
        .filter(|duty| duty.duty == Duty::Plan && duty.circuit == Some(plan.circuit))
        .filter(|duty| duty.from.day <= plan.made.value)
        .map(|duty| duty.by)
        .max();
    let year = plan.made.value.checked_add(1.year()).ok();
    let late = law.and_then(|law| {
        let months = law.plan_months_from_due?;
        due?.checked_add(months.months()).ok()
    });
    let longest: Option<Date> = due
        .filter(|_| law.is_some())
        .and_then(|_| [year, late].into_iter().flatten().min());
    let own = plan.complete_by.value;
    let by = longest.map_or(own, |longest| longest.min(own));
    let kind = match plan.kind {
        PlanKind::Retrofit => "Retrofit the system, as its plan says",
        PlanKind::Retire => "Retire the system, as its plan says",
    };
    let note = (by < own)
        .then(|| format!("the plan itself says {own}, which is later than the rule allows"));
    Obligation {
        rules,
        source: Text::Phrase(law.map_or("the operator's plan", |law| law.plan_done)),
        duty: Duty::PlanCompletion,
        what: Text::Phrase(kind),
        circuit: Some(plan.circuit),
        point: None,
        from: Event {
            day: plan.made.value,
            what: "plan made".to_owned(),
            span: plan.made.span,
        },
        not_before: None,
        not_before_words: None,
        by,
        typed: None,
        note,
        done: carried_out(past, plan),
        from_memory: false,
    }
}

/// What carried a plan out: the day noted, or another refrigerant in force since.
fn carried_out(past: &Past<'_>, plan: &Plan) -> Option<Event> {
    let noted = plan.completed.filter(|day| day.value <= past.on);
    if let Some(day) = noted {
        return Some(Event {
            day: day.value,
            what: "done as the plan says".to_owned(),
            span: day.span,
        });
    }
    let before = past.system.in_force(plan.circuit, plan.made.value)?;
    let circuit = past.system.circuits.get(plan.circuit)?;
    let changed = circuit.in_force.iter().find(|entry| {
        let day = entry.from.value.date();
        day > plan.made.value && day <= past.on && entry.refrigerant != before.refrigerant
    })?;
    (plan.kind == PlanKind::Retrofit).then(|| Event {
        day: changed.from.value.date(),
        what: "another refrigerant in force".to_owned(),
        span: changed.from.span,
    })
}
