//! What the leaks found explain of a loss: only where every one of them was measured.

use crate::job::{Finding, Moment, System, Visit};
use crate::notes::Size;
use crate::quantity::{Flavour, LeakRate};
use crate::text::{Message, Noted, Span};
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::refrigerant_file::ChargedTo;
use crate::working::leak_rate::days_between;
use crate::working::outcome::is_leak;
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Mass that the measured leaks can have let out.
pub static EXPLAINED: Method = Method {
    id: "leaks-explained",
    name: "What the leaks found explain of the loss",
    formula: "explained = sum of leak size × time it leaked, from the least of both to the most of both",
    mathematics: "m_\"explained\" = [sum dot(m)_\"least\" t_\"least\", sum dot(m)_\"most\" t_\"most\"]",
    source: "interval arithmetic; that a leak kept the size it was measured at is an assumption",
};

/// Seconds of a day.
const DAY_S: f64 = 86_400.0;

/// What the leaks found explain.
#[derive(Clone, Debug, PartialEq)]
pub enum Explained {
    /// A leak was not measured as a mass per time, so that no sum can be made.
    NotSized {
        /// How many leaks were found.
        leaks: usize,
    },
    /// Every leak was measured.
    Sized(Box<Share>),
}

/// The share of a loss that measured leaks explain.
#[derive(Clone, Debug, PartialEq)]
pub struct Share {
    /// The middle of the interval and half its width.
    pub figure: Figure,
    /// The least and the most that the leaks can have let out, kg.
    pub explained_kg: (f64, f64),
    /// What the intervals say.
    pub verdict: Verdict,
}

/// What the interval of the leaks says beside that of the loss.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Even the most that the leaks can have let out is less than the least that was lost.
    OthersRemain,
    /// Even the least that they would have let out is more than the most that was lost.
    MoreThanLost,
    /// The intervals overlap, or the loss is not known well enough to say.
    Open,
}

/// A loss of a circuit.
#[derive(Clone, Debug)]
pub struct Loss<'a> {
    /// When refrigerant was charged before it.
    pub since: Noted<Moment>,
    /// When it was made up.
    pub until: Noted<Moment>,
    /// How much, kg.
    pub kg: f64,
    /// Half width of its uncertainty, kg, if it is known.
    pub uncertainty_kg: Option<f64>,
    /// Where it stands.
    pub spans: &'a [Span],
    /// Whether it is counted from the installation, at which the full charge was weighed in.
    pub installed: bool,
    /// Whether every charge since it began is known; else more may have been lost.
    pub complete: bool,
}

/// A leak from its first sighting to its repair.
struct Leak<'a> {
    point: Option<&'a Identifier>,
    size: Option<&'a Size>,
    seen: Moment,
    stopped: Option<Moment>,
}

/// Compares two intervals, each from the least to the most.
pub fn verdict(explained: (f64, f64), lost: (f64, f64)) -> Verdict {
    if explained.1 < lost.0 {
        Verdict::OthersRemain
    } else if explained.0 > lost.1 {
        Verdict::MoreThanLost
    } else {
        Verdict::Open
    }
}

/// What the leaks known in a circuit explain of its loss; none where no leak was found.
///
/// A leak may have begun at any time since the charge before the loss, unless it was seen earlier;
/// a search that missed it does not show that it was not there.
pub fn leaks_explained(
    system: &System,
    number: usize,
    circuit: usize,
    loss: &Loss<'_>,
    (id, title): (&str, Message),
) -> Option<Explained> {
    let mut leaks = leaks(system, number, circuit);
    leaks.retain(|leak| {
        let after = |at| days_between(loss.since.value, at) > 0;
        leak.stopped.is_none_or(after)
    });
    if leaks.is_empty() {
        return None;
    }
    let mut working = Working::of(&EXPLAINED, id, title);
    let (mut least, mut most) = (0.0, 0.0);
    for leak in &leaks {
        let Some(size) = leak.size.filter(|size| size.measured) else {
            return Some(Explained::NotSized { leaks: leaks.len() });
        };
        let LeakRate::Mass(_) = size.rate.value.value else {
            return Some(Explained::NotSized { leaks: leaks.len() });
        };
        let rate = working.take("ṁ", &size.rate);
        let half = size.rate.value.uncertainty;
        let half = half.unwrap_or(size.rate.value.step / 2.0);
        let (shortest, longest) = days_of(leak, loss);
        working.input(
            "t",
            if shortest == longest {
                Value::Days(longest)
            } else {
                Value::Words(
                    Message::of("days-from-to")
                        .with("from", shortest)
                        .with("to", longest)
                        .into(),
                )
            },
            Origin::Notes(vec![loss.since.span, loss.until.span]),
        );
        least += (rate - half).max(0.0) * shortest as f64 * DAY_S;
        most += (rate + half) * longest as f64 * DAY_S;
    }
    working.input(
        "m_lost",
        Value::Computed {
            flavour: Flavour::Mass,
            si: loss.kg,
            uncertainty: loss.uncertainty_kg,
        },
        Origin::Notes(loss.spans.to_vec()),
    );
    working.note(Message::of("note-leak-may-have-begun"));
    let begun = loss.installed || is_weighed(system, loss.since.value);
    let weighed = begun && is_weighed(system, loss.until.value);
    let verdict = if let Some(half) = loss.uncertainty_kg.filter(|_| weighed) {
        let most_lost = if loss.complete {
            loss.kg + half
        } else {
            f64::INFINITY
        };
        verdict((least, most), (loss.kg - half, most_lost))
    } else {
        working.note(Message::of("note-loss-not-known-well"));
        Verdict::Open
    };
    Some(Explained::Sized(Box::new(Share {
        figure: working.finish(Value::Computed {
            flavour: Flavour::Mass,
            si: f64::midpoint(least, most),
            uncertainty: Some((most - least) / 2.0),
        }),
        explained_kg: (least, most),
        verdict,
    })))
}

/// Every leak known in a circuit up to a visit, each found again at its point counted once until its
/// repair.
fn leaks(system: &System, number: usize, circuit: usize) -> Vec<Leak<'_>> {
    let mut leaks: Vec<Leak<'_>> = Vec::new();
    for visit in system.visits.iter().take(number + 1) {
        let found = visit.findings.iter().filter(|finding| {
            is_leak(finding) && finding.circuit.is_none_or(|found| found == circuit)
        });
        for finding in found {
            let Some(seen) = visit.start() else { continue };
            let point = finding.note.point.as_ref().map(|point| &point.value);
            let known = leaks
                .iter()
                .position(|leak| point.is_some() && leak.point == point && leak.stopped.is_none());
            let place = known.unwrap_or_else(|| {
                leaks.push(Leak {
                    point,
                    size: None,
                    seen,
                    stopped: None,
                });
                leaks.len() - 1
            });
            if let Some(leak) = leaks.get_mut(place) {
                leak.size = finding.note.size.as_ref().or(leak.size);
                leak.stopped = stopped(visit, finding);
            }
        }
    }
    leaks
}

/// When a leak was repaired or shut off, if it was: at the latest at the end of the visit.
fn stopped(visit: &Visit, finding: &Finding) -> Option<Moment> {
    let state = finding.note.state.map(|state| state.value);
    let open = matches!(state, None | Some(FindingState::Open));
    visit.end().filter(|_| !open)
}

/// The shortest and the longest time that a leak can have leaked within a loss, whole days.
fn days_of(leak: &Leak<'_>, loss: &Loss<'_>) -> (i64, i64) {
    let until = leak
        .stopped
        .map_or(loss.until.value, |at| at.min(loss.until.value));
    let seen = leak.seen.max(loss.since.value);
    (
        days_between(seen, until).max(0),
        days_between(loss.since.value, until).max(0),
    )
}

/// Whether a circuit was charged to full by weight at a moment.
fn is_weighed(system: &System, at: Moment) -> bool {
    system
        .visits
        .iter()
        .flat_map(|visit| &visit.movements)
        .any(|movement| {
            movement.at.value == at
                && movement
                    .note
                    .charged_to
                    .is_some_and(|to| to.value == ChargedTo::FullByWeight)
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn others_remain_only_when_the_intervals_do_not_touch() {
        assert_eq!(verdict((0.0, 0.9), (1.0, 1.2)), Verdict::OthersRemain);
        assert_eq!(verdict((0.0, 1.0), (1.0, 1.2)), Verdict::Open);
        assert_eq!(verdict((0.5, 3.0), (1.0, 1.2)), Verdict::Open);
        assert_eq!(verdict((1.3, 3.0), (1.0, 1.2)), Verdict::MoreThanLost);
    }
}
