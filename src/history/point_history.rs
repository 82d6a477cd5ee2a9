//! The life of a point up to a visit: how often it leaked, how long repairs held, how it stands now
//! against its own last look.

use crate::history::step::{Seen, Step, steps};
use crate::job::{System, Visit};
use crate::text::{Message, Span, Text};
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::FindingState;
use crate::working::outcome::{Standing, standing_of};
use jiff::civil::Date;

/// A repair of a leak.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Repair {
    /// The day.
    pub day: Date,
    /// What was done, as written; empty where it is not known.
    pub what: Vec<String>,
    /// By whom, where it was not a visit of this book.
    pub by: Option<Text>,
    /// Number of the visit.
    pub visit: Option<usize>,
    /// Whether it was for the time being, or only shut off.
    pub lasting: bool,
    /// Where it stands; none for a replaced part.
    pub span: Option<Span>,
}

impl Repair {
    /// The day on which the part was replaced, by the register, where that was the repair.
    fn replaced(&self) -> Option<Date> {
        self.span.is_none().then_some(self.day)
    }
}

/// A leak from the day it was found to the day it was found again, or to now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spell {
    /// When it was found.
    pub found: Date,
    /// By whom, where it was not a visit of this book.
    pub by: Option<Text>,
    /// When else it was seen leaking before it was repaired.
    pub seen_again: Vec<Date>,
    /// The last repair before it leaked again.
    pub repair: Option<Repair>,
    /// Days from that repair until it was found leaking again.
    pub held: Option<i64>,
    /// When the repair was last seen to hold.
    pub last_held: Option<Date>,
    /// Whether it was in a part that has been replaced or taken out since.
    pub old_part: bool,
}

/// How a point stands at a visit, compared with its own last look.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum State {
    /// Found leaking, or suspected, for the first time in this part.
    New,
    /// It leaked at its last look, was not repaired, and leaks: days since it was found.
    StillLeaking {
        /// Days since it was found.
        days: i64,
    },
    /// It leaks again after a repair.
    LeakingAgain {
        /// Days from the last repair until it was found leaking.
        days: i64,
        /// How often this part has leaked, this time included.
        times: usize,
        /// Who repaired it last, where it was not a visit of this book.
        by: Option<Text>,
    },
    /// Repaired earlier and looked at now; nothing was shown.
    RepairedHolding {
        /// Days since the repair.
        days: i64,
        /// Whether the place itself was looked at, not only its section tested.
        at_place: bool,
        /// Day on which its part was replaced, where that was the repair.
        replaced: Option<Date>,
    },
    /// Repaired earlier and not looked at since, now included.
    RepairedNotRetested {
        /// Days since the repair.
        days: i64,
        /// Day on which its part was replaced, where that was the repair.
        replaced: Option<Date>,
    },
    /// A leak or a suspicion of before, not repaired, and not shown now.
    LeftOpen {
        /// Days since it was found.
        days: i64,
        /// Whether it is only a suspicion.
        suspect: bool,
        /// Whether it was looked at now, and nothing was shown.
        looked: bool,
    },
    /// A suspicion was looked into and cleared.
    SuspectCleared,
    /// Nothing was ever shown here, nor now.
    NothingShown,
    /// Not looked at now; nothing was open here.
    NotLookedAt,
    /// The part is no longer there.
    TakenOut,
}

impl State {
    /// The states that have nothing but their word.
    pub const PLAIN: [State; 5] = [
        State::New,
        State::SuspectCleared,
        State::NothingShown,
        State::NotLookedAt,
        State::TakenOut,
    ];

    /// The word of the state, the same everywhere.
    pub fn word(&self) -> &'static str {
        match self {
            State::New => "new",
            State::StillLeaking { .. } => "still leaking",
            State::LeakingAgain { .. } => "leaking again at the same place",
            State::RepairedHolding { .. } => "repaired, holding",
            State::RepairedNotRetested { .. } => "repaired, not re-tested",
            State::LeftOpen { .. } => "left open",
            State::SuspectCleared => "suspect cleared",
            State::NothingShown => "nothing shown",
            State::NotLookedAt => "not looked at",
            State::TakenOut => "taken out",
        }
    }

    /// The word, and what belongs to it: days, times, who repaired it.
    pub fn describe(&self) -> Text {
        let yes = |yes: bool| if yes { "yes" } else { "no" };
        match self {
            State::StillLeaking { days } => Message::of("point-still-leaking").with("days", *days),
            State::LeakingAgain { days, times, by } => Message::of("point-leaking-again")
                .with("days", *days)
                .with("times", *times)
                .with("by", by.clone().unwrap_or_else(|| "none".into())),
            State::RepairedHolding {
                days: 0,
                replaced: Some(day),
                ..
            } => Message::of("point-replaced").with("day", *day),
            State::RepairedHolding {
                at_place,
                replaced: Some(day),
                ..
            } => Message::of("point-replaced-holding")
                .with("day", *day)
                .with("section-only", yes(!*at_place)),
            State::RepairedHolding { days, at_place, .. } => Message::of("point-repaired-holding")
                .with("days", *days)
                .with("section-only", yes(!*at_place)),
            State::RepairedNotRetested {
                replaced: Some(day),
                ..
            } => Message::of("point-replaced-not-looked-at").with("day", *day),
            State::RepairedNotRetested { days, .. } => {
                Message::of("point-not-retested").with("days", *days)
            }
            State::LeftOpen {
                days,
                suspect,
                looked,
            } => Message::of("point-left-open")
                .with("days", *days)
                .with("suspect", yes(*suspect))
                .with("looked", yes(*looked)),
            _ => return Text::Phrase(self.word()),
        }
        .into()
    }
}

/// What is known before a look.
#[derive(Clone, Debug)]
enum Condition {
    Sound,
    Suspected(Date),
    Leaking(Date),
    Repaired { repair: Repair, retested: bool },
    Gone,
}

/// The life of a point up to a visit.
#[derive(Clone, Debug)]
pub struct PointHistory {
    /// The point.
    pub point: Identifier,
    /// Everything told of it, in order of time.
    pub steps: Vec<Step>,
    /// Its leaks, in order of time.
    pub spells: Vec<Spell>,
    /// How it stands at the visit.
    pub state: State,
}

impl PointHistory {
    /// The life of a point up to and with a visit, by its number.
    pub fn of(system: &System, point: &Identifier, last: usize) -> Self {
        let steps = steps(system, point, last);
        let mut life = Life {
            system,
            condition: Condition::Sound,
            spells: Vec::new(),
        };
        let end = system.visits.get(last).map(Visit::last_day);
        let mut state = None;
        for step in &steps {
            let compared = life.take(step);
            let here = step.visit == Some(last);
            state = if here { compared } else { state };
            // Replaced in the course of this visit: what held before was another part.
            let visit = system.visits.get(last);
            let now = visit.is_some_and(|visit| step.day >= visit.name.date);
            if now && step.seen == Seen::Replaced {
                state = state.map(|state| match state {
                    State::RepairedHolding { at_place, .. } => State::RepairedHolding {
                        days: 0,
                        at_place,
                        replaced: Some(step.day),
                    },
                    state => state,
                });
            }
        }
        let state = match life.condition {
            Condition::Gone => State::TakenOut,
            ref condition => state.unwrap_or_else(|| unseen(condition, end)),
        };
        Self {
            point: point.clone(),
            steps,
            spells: life.spells,
            state,
        }
    }

    /// Leaks of the part that is there now.
    pub fn of_this_part(&self) -> impl DoubleEndedIterator<Item = &Spell> {
        self.spells.iter().filter(|spell| !spell.old_part)
    }

    /// The last step that looked at it or at its section.
    pub fn last_look(&self) -> Option<&Step> {
        self.steps.iter().rfind(|step| step.is_look())
    }

    /// The repair that the last leak of this part, or the leak before a replacement, ended with.
    pub fn last_repair(&self) -> Option<&Repair> {
        self.spells.iter().rev().find_map(|s| s.repair.as_ref())
    }

    /// Whether it needs a lasting cure: this part has leaked more than once, or leaks now.
    pub fn needs_cure(&self) -> bool {
        let times = self.of_this_part().count();
        let open = self
            .of_this_part()
            .last()
            .is_some_and(|spell| spell.repair.as_ref().is_none_or(|r| !r.lasting));
        times > 1 || open
    }
}

/// How a point stands that the visit did not look at.
fn unseen(condition: &Condition, end: Option<Date>) -> State {
    let since = |day: &Date| end.map_or(0, |end| days(*day, end));
    match condition {
        Condition::Leaking(found) | Condition::Suspected(found) => State::LeftOpen {
            days: since(found),
            suspect: matches!(condition, Condition::Suspected(_)),
            looked: false,
        },
        Condition::Repaired {
            repair,
            retested: false,
        } => State::RepairedNotRetested {
            days: since(&repair.day),
            replaced: repair.replaced(),
        },
        Condition::Gone => State::TakenOut,
        Condition::Sound | Condition::Repaired { .. } => State::NotLookedAt,
    }
}

/// Days between two days.
pub(super) fn days(from: Date, to: Date) -> i64 {
    i64::from((to - from).get_days())
}

/// A life as it is read, step by step.
struct Life<'s> {
    system: &'s System,
    condition: Condition,
    spells: Vec<Spell>,
}

impl Life<'_> {
    /// Takes a step in and says how it compares with what was known before.
    fn take(&mut self, step: &Step) -> Option<State> {
        let state = match step.seen {
            Seen::Leak => Some(self.leak(step)),
            Seen::Suspect => Some(self.suspect(step)),
            Seen::Cleared => {
                if let Condition::Repaired { .. } = self.condition {
                    self.clear(step, true)
                } else {
                    self.condition = Condition::Sound;
                    Some(State::SuspectCleared)
                }
            }
            Seen::Nothing => self.clear(step, true),
            Seen::SectionHeld => self.clear(step, false),
            Seen::NotReached => None,
            Seen::Replaced => {
                self.renew(step);
                None
            }
            Seen::Removed => {
                self.old_part();
                self.condition = Condition::Gone;
                None
            }
        };
        if let Some(mended) = &step.mended {
            let lasting = !matches!(
                mended.left,
                Some(FindingState::Temporary | FindingState::Isolated)
            );
            let repair = Repair {
                day: mended.day,
                what: mended.what.clone(),
                by: step.by.clone(),
                visit: step.visit,
                lasting,
                span: Some(mended.span),
            };
            let still = mended.left == Some(FindingState::Open);
            let leaking = matches!(self.condition, Condition::Leaking(_));
            if !still {
                if let Some(spell) = self.spells.last_mut().filter(|_| leaking) {
                    spell.repair = Some(repair.clone());
                }
                self.condition = Condition::Repaired {
                    retested: self.proved(step),
                    repair,
                };
            }
        }
        state
    }

    /// Whether the visit that repaired also proved it.
    fn proved(&self, step: &Step) -> bool {
        let Some((number, span)) = step.visit.zip(step.span) else {
            return false;
        };
        let noted = step.mended.as_ref().and_then(|mended| mended.left);
        if noted != Some(FindingState::RepairedProved) {
            return false;
        }
        let visit = self.system.visits.get(number);
        visit
            .iter()
            .flat_map(|visit| &visit.findings)
            .filter(|finding| finding.note.point.as_ref().is_some_and(|p| p.span == span))
            .any(|finding| standing_of(self.system, number, finding) == Standing::Proved)
    }

    fn leak(&mut self, step: &Step) -> State {
        let times = self.spells.iter().filter(|s| !s.old_part).count();
        if let Some(spell) = self.spells.last_mut().filter(|s| !s.old_part) {
            let Some(repair) = &spell.repair else {
                let state = State::StillLeaking {
                    days: days(spell.found, step.day),
                };
                if step.by.is_none() || step.mended.is_none() {
                    spell.seen_again.push(step.day);
                }
                self.condition = Condition::Leaking(spell.found);
                return state;
            };
            let held = days(repair.day, step.day);
            spell.held = Some(held);
            let state = State::LeakingAgain {
                days: held,
                times: times + 1,
                by: repair.by.clone(),
            };
            self.found(step);
            return state;
        }
        self.found(step);
        State::New
    }

    fn found(&mut self, step: &Step) {
        self.spells.push(Spell {
            found: step.day,
            by: step.by.clone(),
            seen_again: Vec::new(),
            repair: None,
            held: None,
            last_held: None,
            old_part: false,
        });
        self.condition = Condition::Leaking(step.day);
    }

    fn suspect(&mut self, step: &Step) -> State {
        let left = |found: &Date, suspect: bool| State::LeftOpen {
            days: days(*found, step.day),
            suspect,
            looked: false,
        };
        match &self.condition {
            Condition::Suspected(found) => left(found, true),
            Condition::Leaking(found) => left(found, false),
            _ => {
                self.condition = Condition::Suspected(step.day);
                State::New
            }
        }
    }

    /// Nothing was shown at the place, or its section held.
    fn clear(&mut self, step: &Step, at_place: bool) -> Option<State> {
        let until = step.until;
        match &mut self.condition {
            Condition::Repaired { repair, retested } => {
                *retested = true;
                if let Some(spell) = self.spells.last_mut() {
                    spell.last_held = Some(until);
                }
                Some(State::RepairedHolding {
                    days: days(repair.day, until),
                    at_place,
                    replaced: repair.replaced(),
                })
            }
            Condition::Leaking(found) | Condition::Suspected(found) => {
                let found = *found;
                Some(State::LeftOpen {
                    days: days(found, until),
                    suspect: matches!(self.condition, Condition::Suspected(_)),
                    looked: at_place,
                })
            }
            Condition::Gone => {
                self.condition = Condition::Sound;
                Some(State::NothingShown)
            }
            Condition::Sound => at_place.then_some(State::NothingShown),
        }
    }

    /// A new part: the count starts anew, and what leaked before is repaired by it.
    fn renew(&mut self, step: &Step) {
        let renewal = Repair {
            day: step.day,
            what: vec!["part replaced".to_owned()],
            by: None,
            visit: None,
            lasting: true,
            span: None,
        };
        if let Some(spell) = self.spells.last_mut().filter(|s| !s.old_part)
            && spell.repair.is_none()
        {
            spell.repair = Some(renewal.clone());
        }
        let retested = matches!(&self.condition, Condition::Repaired { repair, retested: true }
            if repair.day >= step.day);
        let troubled = !self.spells.is_empty() && !matches!(self.condition, Condition::Gone);
        self.old_part();
        self.condition = if troubled {
            Condition::Repaired {
                repair: renewal,
                retested,
            }
        } else {
            Condition::Sound
        };
    }

    fn old_part(&mut self) {
        for spell in &mut self.spells {
            spell.old_part = true;
        }
    }
}
