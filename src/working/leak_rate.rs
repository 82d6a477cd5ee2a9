//! Leak rate of an independent circuit: the two statutory methods and plain percent per year.

use crate::job::Moment;
use crate::quantity::{Flavour, Mass, Measured};
use crate::text::{Message, Noted, Text};
use crate::vocabulary::refrigerant_file::{ChargedTo, MovementKind};
use crate::working::account::{Account, Addition, Entry};
use crate::working::working::{Figure, Method, Origin, Value, Working};
use jiff::civil::Date;

/// Annualizing method: each addition scaled up to a year.
pub static ANNUALIZING: Method = Method {
    id: "leak-rate-annualizing",
    name: "Leak rate, annualizing method",
    formula: "rate = 100 % × (added ÷ full charge) ÷ (shorter of days since the last addition and 365, ÷ 365)",
    mathematics: "r = 100 % dot (m_\"added\" / m_\"full\") dot (365 / min(d, 365))",
    source: "40 CFR 82.152, \"leak rate\"; for part 84 the same by 84.102 (from memory, verify)",
};

/// Rolling average method: additions of a window over the full charge.
pub static ROLLING: Method = Method {
    id: "leak-rate-rolling-average",
    name: "Leak rate, rolling average method",
    formula: "rate = 100 % × sum of additions in the window ÷ full charge",
    mathematics: "r = 100 % dot (sum m_\"added\") / m_\"full\"",
    source: "40 CFR 82.152, \"leak rate\"; for part 84 the same by 84.102 (from memory, verify)",
};

/// What was missing in all.
pub static MISSING: Method = Method {
    id: "missing-in-all",
    name: "Refrigerant missing in all",
    formula: "missing = sum of what each charge put back, up to the one that ended the loss",
    mathematics: "m_\"missing\" = sum m_\"lost\"",
    source: "an addition that did not fill the circuit belongs to the same loss as the next one, common practice; so does 40 CFR 82.152, \"leak rate\", for several additions for one leak",
};

/// Plain loss per year.
pub static PLAIN: Method = Method {
    id: "loss-per-year",
    name: "Loss per year in percent of the full charge",
    formula: "rate = 100 % × (lost ÷ full charge) × 365 ÷ days",
    mathematics: "r = 100 % dot (m_\"lost\" / m_\"full\") dot (365 / d)",
    source: "common practice; days counted from the last addition, a year of 365 days",
};

/// Sum of a calendar year.
pub static LOST_IN_YEAR: Method = Method {
    id: "lost-in-year",
    name: "Added in a calendar year in percent of the full charge",
    formula: "share = 100 % × sum of the year's additions ÷ full charge",
    mathematics: "s = 100 % dot (sum m_\"added\") / m_\"full\"",
    source: "40 CFR 82.157(j) and 84.106(j): 125 % or more in a calendar year is to be reported",
};

/// Rate of one addition scaled up to a year, %; `None` for a second addition on the same day.
pub fn annualizing(added_kg: f64, full_kg: f64, days: i64) -> Option<f64> {
    let days = days.min(365);
    (days > 0 && full_kg > 0.0).then(|| 100.0 * (added_kg / full_kg) / (days as f64 / 365.0))
}

/// Sum of the additions of a window over the full charge, %.
pub fn rolling_average(sum_kg: f64, full_kg: f64) -> Option<f64> {
    (full_kg > 0.0).then(|| 100.0 * sum_kg / full_kg)
}

/// Loss scaled to a year without a cap, %.
pub fn plain(added_kg: f64, full_kg: f64, days: i64) -> Option<f64> {
    (days > 0 && full_kg > 0.0).then(|| 100.0 * (added_kg / full_kg) * 365.0 / days as f64)
}

/// Which statutory method.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeakRateMethod {
    /// Each addition scaled up to a year.
    Annualizing,
    /// Additions of a window.
    RollingAverage,
}

/// What a rule set says about the first calculation after it came into force.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FirstCalculation {
    /// Day from which the rule asks for calculations.
    pub from: Date,
    /// The citation.
    pub source: &'static str,
}

/// Why more may have been lost than the charges noted put back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum More {
    /// The circuit was not charged to full.
    Partial,
    /// How far it was charged is not noted.
    NotNoted,
    /// There may have been charges since the beginning of the loss that this book does not know of.
    NotComplete,
}

/// A loss of a circuit, as the charges show it that put it back.
#[derive(Clone, Debug)]
pub struct Missing {
    /// When refrigerant was charged before it, if that is known, and whether to full.
    pub since: Option<(Noted<Moment>, bool)>,
    /// What was put back, by when, kg.
    pub parts: Vec<(Noted<Moment>, f64)>,
    /// All of it, kg.
    pub kg: f64,
    /// Why it may have been more.
    pub more: Option<More>,
}

impl Missing {
    /// Whether it was at least this much, as a message asks it: `yes` or `no`.
    pub fn least(&self) -> &'static str {
        if self.more.is_some() { "yes" } else { "no" }
    }

    /// The day of the charge before it where that is not known to have filled the circuit, so that
    /// some of it may have been missing then already; else `none`.
    pub fn doubtful_since(&self) -> Text {
        let doubtful = self.since.filter(|(_, full)| !full);
        doubtful.map_or(Text::from("none"), |(since, _)| since.value.date().into())
    }
}

/// What a leak rate is worked out from.
#[derive(Clone, Copy, Debug)]
pub struct Window<'a> {
    /// The account of the circuit.
    pub account: &'a Account,
    /// Full charge in force.
    pub full: &'a Noted<Measured<Mass>>,
    /// The addition that asks for the calculation.
    pub addition: &'a Addition,
    /// When a follow-up verification last showed all identified leaks repaired.
    pub verified: Option<Noted<Moment>>,
    /// The exception of a rule's first calculation.
    pub first: Option<FirstCalculation>,
}

impl Window<'_> {
    /// The statutory figure by a method.
    pub fn rate(&self, method: LeakRateMethod, id: &str, title: impl Into<Text>) -> Option<Figure> {
        match method {
            LeakRateMethod::Annualizing => self.annualizing(id, title),
            LeakRateMethod::RollingAverage => self.rolling(id, title),
        }
    }

    /// The additions that belong to one loss: this one, and those before it that did not fill the
    /// circuit ("multiple additions related to same leak", 40 CFR 82.152) or were made the same day.
    fn group(&self) -> &[Addition] {
        let additions = &self.account.additions;
        let last = additions
            .iter()
            .rposition(|known| known.at.value == self.addition.at.value)
            .unwrap_or(0);
        let mut first = last;
        while first > 0 {
            let before = &additions[first - 1];
            let same_day = before.at.value.date() == additions[first].at.value.date();
            let partial = before.visit.is_some() && !before.to_full();
            if !(same_day || partial) {
                break;
            }
            first -= 1;
        }
        additions.get(first..=last).unwrap_or(&[])
    }

    /// Whether an addition was before the circuit was last charged anew.
    fn is_before_anew(&self, addition: &Addition) -> bool {
        self.account
            .charged_anew
            .is_some_and(|anew| addition.at.value < anew.value)
    }

    /// The charge before this loss, by another job: an addition, or one that filled the circuit,
    /// such as that of an installation, a retrofit or a repair that lost nothing.
    fn previous(&self) -> Option<&Entry> {
        let first = self.group().first()?;
        let added = |entry: &Entry| {
            let additions = &self.account.additions;
            additions
                .iter()
                .any(|known| known.at.value == entry.at.value)
        };
        self.account.entries.iter().rfind(|entry| {
            let other_job = entry.visit.is_none() || entry.visit != first.visit;
            let charged = entry.kind == MovementKind::Charged;
            let before = entry.at.value < first.at.value;
            charged && before && other_job && (entry.to_full() || added(entry))
        })
    }

    /// The first calculation after the rule's day has no addition between that day and this one.
    fn is_first(&self) -> Option<FirstCalculation> {
        let first = self.first?;
        let is_first = self.addition.at.value.date() >= first.from
            && self
                .previous()
                .is_none_or(|earlier| earlier.at.value.date() < first.from);
        is_first.then_some(first)
    }

    /// The installation that weighed the full charge in, where no charge is noted between it and this
    /// loss.
    fn installed(&self) -> Option<Noted<Moment>> {
        let first = self.group().first()?;
        self.account
            .installed_full
            .filter(|from| self.previous().is_none() && from.value < first.at.value)
    }

    fn days(&self, working: &mut Working) -> Option<i64> {
        let installed = self.installed();
        let start = match self.previous() {
            Some(previous) => previous.at,
            None => installed?,
        };
        let days = days_between(start.value, self.addition.at.value);
        working.input(
            "d",
            Value::Days(days),
            Origin::Notes(vec![start.span, self.addition.at.span]),
        );
        if installed.is_some() {
            working.note(Message::of("note-from-installation"));
        }
        Some(days)
    }

    fn annualizing(&self, id: &str, title: impl Into<Text>) -> Option<Figure> {
        let mut working = Working::of(&ANNUALIZING, id, title);
        let added = self.added(&mut working);
        let full = working.take("m_full", self.full);
        let days = if let Some(first) = self.is_first() {
            working.input("d", Value::Days(365), Origin::Constant(first.source));
            working.note(Message::of("note-first-calculation"));
            365
        } else {
            let days = self.days(&mut working)?;
            let note = if days > 365 {
                "note-annualized-at-most"
            } else {
                "note-annualized"
            };
            working.note(Message::of(note).with("days", days));
            days
        };
        let rate = annualizing(added, full, days)?;
        say_apart(self.group(), &mut working);
        Some(working.finish(Value::Percent(rate, 2)))
    }

    fn rolling(&self, id: &str, title: impl Into<Text>) -> Option<Figure> {
        let mut working = Working::of(&ROLLING, id, title);
        let end = self.addition.at.value;
        let mut start = end.date().checked_sub(jiff::Span::new().days(365)).ok()?;
        let mut since = "year";
        if let Some(verified) = self
            .verified
            .filter(|v| v.value.date() > start && v.value < end)
        {
            start = verified.value.date();
            since = "verification";
            working.input(
                "from",
                Value::Words(Text::Figure(start.to_string())),
                Origin::Note(verified.span),
            );
        }
        if let Some(first) = self.is_first()
            && first.from > start
        {
            start = first.from;
            since = "rule";
            working.input(
                "from",
                Value::Words(Text::Figure(start.to_string())),
                Origin::Constant(first.source),
            );
        }
        let mut sum = 0.0;
        let mut counted = Vec::new();
        for addition in &self.account.additions {
            let day = addition.at.value.date();
            let inside = day > start || (day == start && self.verified.is_none());
            if inside && addition.at.value <= end && !self.is_before_anew(addition) {
                sum += addition_kg(addition, &mut working);
                counted.push(addition);
            }
        }
        say_apart(counted, &mut working);
        let full = working.take("m_full", self.full);
        working.note(Message::of("note-window").with("since", since));
        Some(working.finish(Value::Percent(rolling_average(sum, full)?, 2)))
    }

    /// When refrigerant was last charged before this loss, and whether to full.
    pub fn since(&self) -> Option<(Noted<Moment>, bool)> {
        self.previous()
            .map(|entry| (entry.at, entry.to_full()))
            .or_else(|| self.installed().map(|from| (from, true)))
    }

    /// The loss as the charges show it that put it back.
    pub fn missing(&self) -> Missing {
        let parts = self.group().iter();
        let parts: Vec<_> = parts.map(|part| (part.at, part.leaked_kg)).collect();
        let since = self.since();
        let not_complete = |from: &Noted<Moment>| {
            let complete = self.account.complete_since;
            complete.is_none_or(|complete| complete.date() > from.value.date())
        };
        let more = match (self.addition.charged_to, &since) {
            (Some(ChargedTo::Partial), _) => Some(More::Partial),
            (None, _) => Some(More::NotNoted),
            (Some(_), Some((from, true))) if not_complete(from) => Some(More::NotComplete),
            _ => None,
        };
        Missing {
            since,
            kg: parts.iter().map(|(_, kg)| kg).sum(),
            parts,
            more,
        }
    }

    /// What was missing in all as a figure; none where one addition put it all back.
    pub fn missing_in_all(&self, id: &str, title: impl Into<Text>) -> Option<Figure> {
        let mut working = Working::of(&MISSING, id, title);
        let group = self.group();
        let put_back = |addition: &Addition| {
            let kg = addition.leaked_kg;
            mass(addition, "m_lost", kg, &mut working)
        };
        let kg = group.iter().map(put_back).sum();
        if !self.addition.to_full() {
            working.note(Message::of("note-not-to-full"));
        }
        (group.len() > 1).then(|| {
            working.finish(Value::Computed {
                flavour: Flavour::Mass,
                si: kg,
                uncertainty: None,
            })
        })
    }

    /// Plain loss per year since the last addition.
    pub fn plain(&self, id: &str, title: impl Into<Text>) -> Option<Figure> {
        let mut working = Working::of(&PLAIN, id, title);
        let added: f64 = self
            .group()
            .iter()
            .map(|addition| mass(addition, "m_lost", addition.leaked_kg, &mut working))
            .sum();
        let full = working.take("m_full", self.full);
        let days = self.days(&mut working)?;
        let rate = plain(added, full, days)?;
        if !self.addition.to_full() {
            working.note(Message::of("note-not-to-full"));
        }
        if self.previous().is_some_and(|previous| !previous.to_full()) {
            working.note(Message::of("note-not-known-full-before"));
        }
        working.note(Message::of("note-loss-over-days").with("days", days));
        Some(working.finish(Value::Percent(rate, 1)))
    }

    fn added(&self, working: &mut Working) -> f64 {
        self.group()
            .iter()
            .map(|addition| addition_kg(addition, working))
            .sum()
    }
}

fn addition_kg(addition: &Addition, working: &mut Working) -> f64 {
    let added = mass(addition, "m_added", addition.kg, working);
    if addition.destroyed_kg <= 0.0 {
        return added;
    }
    let destroyed = Value::Computed {
        flavour: Flavour::Mass,
        si: addition.destroyed_kg,
        uncertainty: None,
    };
    let origin = Origin::Notes(addition.destroyed_spans.clone());
    added - working.input("m_destroyed", destroyed, origin)
}

/// Says what of the additions is not counted, and what is counted though it was put in for the season.
fn say_apart<'a>(additions: impl IntoIterator<Item = &'a Addition>, working: &mut Working) {
    let (mut destroyed, mut beyond) = (false, false);
    for addition in additions {
        destroyed |= addition.destroyed_kg > 0.0;
        beyond |= addition.beyond_season_kg > 0.0;
    }
    if destroyed {
        working.note(Message::of("note-destroyed"));
    }
    if beyond {
        working.note(Message::of("note-beyond-season"));
    }
}

/// What was lost from a circuit in a calendar year as a share of its full charge, from the additions
/// noted; `None` where there are none.
pub fn lost_in_year(
    account: &Account,
    full: &Noted<Measured<Mass>>,
    year: i16,
    id: &str,
    title: impl Into<Text>,
) -> Option<Figure> {
    let mut working = Working::of(&LOST_IN_YEAR, id, title);
    let of_year = |addition: &&Addition| addition.at.value.date().year() == year;
    let additions: Vec<&Addition> = account.additions.iter().filter(of_year).collect();
    let sum: f64 = additions
        .iter()
        .map(|addition| addition_kg(addition, &mut working))
        .sum();
    let full = working.take("m_full", full);
    say_apart(additions.iter().copied(), &mut working);
    if account
        .complete_since
        .is_none_or(|since| since.date().year() >= year)
    {
        working.note(Message::of("note-year-not-complete"));
    }
    let share = rolling_average(sum, full)?;
    (!additions.is_empty()).then(|| working.finish(Value::Percent(share, 2)))
}

fn mass(addition: &Addition, symbol: &'static str, kg: f64, working: &mut Working) -> f64 {
    working.input(
        symbol,
        Value::Computed {
            flavour: Flavour::Mass,
            si: kg,
            uncertainty: addition.uncertainty_kg,
        },
        Origin::Notes(addition.spans.clone()),
    )
}

/// Whole days between the dates of two moments.
pub fn days_between(earlier: Moment, later: Moment) -> i64 {
    i64::from((later.date() - earlier.date()).get_days())
}
