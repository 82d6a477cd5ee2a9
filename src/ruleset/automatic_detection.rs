//! Automatic leak detection under 40 CFR 84.108, and its yearly audit where it stands in place of
//! leak inspections (82.157(g)(4)).

use crate::ruleset::deadline::start;
use crate::ruleset::in_force::covered_on;
use crate::ruleset::obligation::{Duty, Event, Obligation};
use crate::ruleset::past::Past;
use crate::ruleset::rule_set::{RuleSet, Size};
use crate::text::Text;
use crate::vocabulary::system_file::Category;
use jiff::ToSpan;
use jiff::civil::Date;

/// A pound, kg: exact by the international yard and pound agreement of 1959.
const POUND: f64 = 0.453_592_37;

/// Who has to fit an automatic leak detection system, and by when.
#[derive(Clone, Copy, Debug)]
pub struct AutomaticDetection {
    /// From this full charge on, lb.
    pub from_lb: f64,
    /// Systems put into service from this day on: within some days of that.
    pub new: (Date, i64),
    /// Systems put into service from the first day on, and before the new ones: by the second.
    pub old: (Date, Date),
    /// The citation.
    pub source: &'static str,
}

impl AutomaticDetection {
    /// Whether a system is of the kind and size that needs one: refrigeration, not cooling for people.
    pub fn asks(&self, category: Option<Category>, size: Size) -> bool {
        let refrigeration = matches!(
            category,
            Some(Category::CommercialRefrigeration | Category::IndustrialProcess)
        );
        refrigeration && size.kg >= self.from_lb * POUND * (1.0 - 1e-9)
    }

    /// The last day for a system put into service on a day; none: not asked of one so old.
    pub fn by(&self, installed: Date) -> Option<Date> {
        if installed >= self.new.0 {
            return installed.checked_add(self.new.1.days()).ok();
        }
        (installed >= self.old.0).then_some(self.old.1)
    }
}

/// An automatic leak detection system where it must be there, or its yearly audit.
pub(super) fn automatic_detection(
    past: &Past<'_>,
    rules: &'static RuleSet,
    circuit: usize,
) -> Option<Obligation> {
    let law = rules.automatic_detection?;
    let (coverage, size) = covered_on(rules, past.system, circuit, past.on)?;
    let note = past.system.note.as_ref()?;
    let category = note.category.map(|category| category.value);
    if !coverage.covered || !law.asks(category, size) {
        return None;
    }
    let installed = note.installed?;
    let by = law.by(installed.value)?;
    let asked = (rules, law.source);
    let duty = if note.leak_detection_system.is_some_and(|yes| yes.value) {
        audit(past, asked, circuit)?
    } else {
        let from = Event {
            day: installed.value,
            what: "put into service".to_owned(),
            span: installed.span,
        };
        let what = Text::Phrase("Fit an automatic leak detection system");
        let asked = (rules, Text::Phrase(law.source));
        Obligation::of(asked, Duty::DetectionSystem, what, circuit, from, by)
    };
    Some(Obligation {
        from_memory: true,
        ..duty
    })
}

/// The audit of the system that stands in place of leak inspections; none where none is fitted.
pub(super) fn audit_instead(
    past: &Past<'_>,
    rules: &'static RuleSet,
    circuit: usize,
) -> Option<Obligation> {
    let note = past.system.note.as_ref()?;
    let fitted = note.leak_detection_system.is_some_and(|yes| yes.value);
    let law = rules.exceedance.filter(|_| fitted)?;
    let mut duty = audit(past, (rules, law.audit), circuit)?;
    duty.add_note("in place of leak inspections of the parts that it watches");
    Some(duty)
}

/// Yearly from the last check that is noted, else from the beginning.
fn audit(
    past: &Past<'_>,
    asked: (&'static RuleSet, &'static str),
    circuit: usize,
) -> Option<Obligation> {
    let checked = past.system.note.as_ref()?.leak_detection_checked.iter();
    let last = checked
        .filter(|noted| noted.value <= past.on)
        .max_by_key(|noted| noted.value);
    let from = match last {
        Some(noted) => Event {
            day: noted.value,
            what: "automatic leak detection system checked".to_owned(),
            span: noted.span,
        },
        None => start(past, asked.0, circuit, "no check of it is noted since")?,
    };
    let by = from.day.checked_add(1.year()).ok()?;
    let what = Text::Phrase("Audit and calibrate the automatic leak detection system");
    let asked = (asked.0, Text::Phrase(asked.1));
    Some(Obligation::of(
        asked,
        Duty::DetectionCheck,
        what,
        circuit,
        from,
        by,
    ))
}
