//! Outcome of a visit, worked out from findings, proofs and movements; and claims that go beyond them.

use crate::job::{Finding, PressureTest, System, Visit, covers};
use crate::notes::{Look, Proof};
use crate::text::Span;
use crate::vocabulary::Identifier;
use crate::vocabulary::Word;
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::method_word::Shows;
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};
use crate::vocabulary::visit_file::{OutcomeWord, Purpose};
use crate::working::account::{Account, accounts};
use crate::working::pressure_test::{HoldVerdict, hold};
pub use crate::working::repair_proof::moment_of;
use crate::working::repair_proof::{Ground, last_repair, written};
use crate::working::vacuum_test::rise;
use jiff::civil::DateTime;
use std::cell::OnceCell;

/// How a finding stands by the evidence.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// Repaired, and a proof after the last repair shows it.
    Proved,
    /// Repaired, without such a proof.
    NotProved,
    /// As the technician noted it.
    Noted(FindingState),
}

/// What the evidence shows where a leak is called proved that nobody repaired.
pub const NO_REPAIR: &str = "no repair is noted, here or earlier";

/// What it shows where a repair is called proved and is not.
pub const NO_PROOF: &str =
    "no proof after the last repair bears it, or a test after it lost pressure";

/// What a visit shows where something was looked at or tested after a repair that stays unproved.
pub const LOOKED_AT: &str = "repaired, but what was looked at after the repair does not prove it";

/// A claim that the evidence does not bear.
#[derive(Clone, Debug)]
pub struct Beyond {
    /// Where it is claimed.
    pub span: Span,
    /// What is claimed.
    pub claim: &'static str,
    /// What the evidence shows.
    pub shown: &'static str,
}

/// How a visit ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OutcomeKind {
    /// Every leak found was repaired and proved.
    RepairedProved,
    /// Every leak found was repaired, not every repair was proved.
    RepairedNotProved,
    /// Some leaks were repaired, others are open.
    PartlyRepaired,
    /// Leaks were found and left open.
    LeftOpen,
    /// Only suspicions.
    SuspectsOnly,
    /// Refrigerant was lost and no leak was found.
    NotFoundLossStands,
    /// Searched, nothing found, nothing added.
    NothingFound,
    /// Earlier repairs were looked at again and nothing was shown there.
    RepairVerified,
    /// Refrigerant was added without a repair or a search.
    GasAdded,
    /// Changed to another refrigerant.
    Retrofitted,
    /// None of these.
    Other,
}

impl OutcomeKind {
    /// Every kind.
    pub const ALL: [OutcomeKind; 11] = [
        OutcomeKind::RepairedProved,
        OutcomeKind::RepairedNotProved,
        OutcomeKind::PartlyRepaired,
        OutcomeKind::LeftOpen,
        OutcomeKind::SuspectsOnly,
        OutcomeKind::NotFoundLossStands,
        OutcomeKind::NothingFound,
        OutcomeKind::RepairVerified,
        OutcomeKind::GasAdded,
        OutcomeKind::Retrofitted,
        OutcomeKind::Other,
    ];
}

/// The outcome of a visit.
#[derive(Clone, Debug)]
pub struct Outcome {
    /// How it ended.
    pub kind: OutcomeKind,
    /// How the leaks found stand, where the visit ended in something else too: a retrofit.
    pub leaks: Option<OutcomeKind>,
    /// How each finding stands, in the order of the findings.
    pub standings: Vec<Standing>,
    /// Points repaired earlier that were looked at again without a sign, with the look.
    pub verified: Vec<Identifier>,
    /// Whether refrigerant had to be added because it was lost, in any circuit.
    pub added: bool,
    /// Claims beyond the evidence.
    pub beyond: Vec<Beyond>,
    /// Whether every repair that is not proved was looked at or tested after it.
    looked_at: bool,
}

impl Outcome {
    /// What the evidence shows, in words.
    pub fn shown(&self) -> &'static str {
        self.shown_of(self.kind)
    }

    /// Whether every leak found was repaired.
    pub fn all_repaired(&self) -> bool {
        let kind = self.leaks.unwrap_or(self.kind);
        matches!(
            kind,
            OutcomeKind::RepairedProved | OutcomeKind::RepairedNotProved
        )
    }

    /// The same of one of its two kinds.
    pub fn shown_of(&self, kind: OutcomeKind) -> &'static str {
        if kind == OutcomeKind::RepairedNotProved && self.looked_at {
            LOOKED_AT
        } else {
            shown(kind)
        }
    }
}

/// Works out the outcome of a visit of a system, by its number.
pub fn outcome(system: &System, number: usize) -> Option<Outcome> {
    outcome_by(system, &accounts(system), number)
}

/// The same with the accounts of its circuits, where they are known already.
pub fn outcome_by(system: &System, accounts: &[Account], number: usize) -> Option<Outcome> {
    let visit = system.visits.get(number)?;
    let tested = Tested::of(system, visit);
    let mut beyond = Vec::new();
    let standings: Vec<Standing> = visit
        .findings
        .iter()
        .map(|finding| standing(&tested, number, finding, &mut beyond))
        .collect();
    let verified = verified(&tested, number);
    let added = accounts
        .iter()
        .filter_map(|account| account.addition_of(number))
        .any(|addition| addition.shows_loss);
    let kind = kind(visit, &standings, &verified, added);
    let leaks = of_leaks(visit, &standings).filter(|leaks| *leaks != kind);
    let mut outcome = Outcome {
        kind,
        leaks,
        looked_at: looked_at(visit, &standings),
        standings,
        verified,
        added,
        beyond,
    };
    if let Some(claim) = visit.note.as_ref().and_then(|note| note.outcome)
        && !bears(kind, claim.value)
        && !leaks.is_some_and(|leaks| bears(leaks, claim.value))
    {
        outcome.beyond.push(Beyond {
            span: claim.span,
            claim: claim.value.word(),
            shown: outcome.shown(),
        });
    }
    Some(outcome)
}

/// Whether every repair of a leak that is not proved was looked at or tested after it.
fn looked_at(visit: &Visit, standings: &[Standing]) -> bool {
    let findings = visit.findings.iter().zip(standings);
    let mut unproved = findings
        .filter(|(finding, standing)| is_leak(finding) && **standing == Standing::NotProved);
    unproved.all(|(finding, _)| {
        let repaired = last_repair(visit, finding).map(|(at, _)| at);
        let written = finding
            .note
            .proofs
            .iter()
            .filter_map(|proof| written(visit, proof));
        written
            .into_iter()
            .any(|proof| repaired.is_none_or(|repaired| proof.at >= repaired))
    })
}

fn kind(
    visit: &Visit,
    standings: &[Standing],
    verified: &[Identifier],
    added: bool,
) -> OutcomeKind {
    let suspects = visit
        .findings
        .iter()
        .zip(standings)
        .any(|(finding, standing)| {
            !is_leak(finding) && matches!(standing, Standing::Noted(FindingState::Suspect))
        });
    let retrofit = visit
        .movements
        .iter()
        .any(|movement| movement.why == Some(MovementWhy::Retrofit));
    let purpose = visit
        .note
        .as_ref()
        .and_then(|note| note.purpose)
        .map(|p| p.value);
    let searched = !visit.searches.is_empty();
    if retrofit {
        return OutcomeKind::Retrofitted;
    }
    if let Some(leaks) = of_leaks(visit, standings) {
        return leaks;
    }
    if purpose == Some(Purpose::Verification) && !verified.is_empty() {
        return OutcomeKind::RepairVerified;
    }
    match (searched, added) {
        (true, true) => OutcomeKind::NotFoundLossStands,
        (false, true) => OutcomeKind::GasAdded,
        (_, false) if suspects => OutcomeKind::SuspectsOnly,
        (true, false) => OutcomeKind::NothingFound,
        (false, false) => OutcomeKind::Other,
    }
}

/// How the leaks found at a visit stand; none where none was found.
fn of_leaks(visit: &Visit, standings: &[Standing]) -> Option<OutcomeKind> {
    let leaks: Vec<Standing> = visit
        .findings
        .iter()
        .zip(standings)
        .filter(|(finding, _)| is_leak(finding))
        .map(|(_, standing)| *standing)
        .collect();
    let repaired = |s: &Standing| matches!(s, Standing::Proved | Standing::NotProved);
    (!leaks.is_empty()).then(|| {
        if leaks.iter().all(|s| *s == Standing::Proved) {
            OutcomeKind::RepairedProved
        } else if leaks.iter().all(repaired) {
            OutcomeKind::RepairedNotProved
        } else if leaks.iter().any(repaired) {
            OutcomeKind::PartlyRepaired
        } else {
            OutcomeKind::LeftOpen
        }
    })
}

/// Whether a finding shows a leak at this visit: noted as one, and not merely looked at again.
pub fn is_leak(finding: &Finding) -> bool {
    let note = &finding.note;
    let closed = matches!(
        note.state.map(|state| state.value),
        Some(
            FindingState::RepairedProved
                | FindingState::RepairedNotProved
                | FindingState::SuspectCleared
        )
    );
    note.kind
        .is_some_and(|kind| kind.value == FindingKind::Leak)
        && (note.evidence.iter().any(Look::positive) || !note.repairs.is_empty() || !closed)
}

/// Whether an outcome bears a technician's claim.
fn bears(kind: OutcomeKind, claim: OutcomeWord) -> bool {
    use OutcomeKind as K;
    match claim {
        OutcomeWord::FoundAndRepaired => matches!(kind, K::RepairedProved),
        OutcomeWord::FoundLeftOpen => {
            matches!(kind, K::LeftOpen | K::PartlyRepaired | K::SuspectsOnly)
        }
        OutcomeWord::NotFound => matches!(
            kind,
            K::NotFoundLossStands | K::NothingFound | K::SuspectsOnly
        ),
        OutcomeWord::NothingFound => matches!(kind, K::NothingFound),
        OutcomeWord::RepairVerified => matches!(kind, K::RepairVerified),
        OutcomeWord::GasAdded => matches!(
            kind,
            K::GasAdded | K::NotFoundLossStands | K::LeftOpen | K::SuspectsOnly
        ),
        OutcomeWord::Retrofitted => matches!(kind, K::Retrofitted),
    }
}

/// What the evidence shows, in words for the claim that goes beyond it.
pub fn shown(kind: OutcomeKind) -> &'static str {
    match kind {
        OutcomeKind::RepairedProved => "every leak found was repaired and proved",
        OutcomeKind::RepairedNotProved => "repaired, but no proof after the repair is noted",
        OutcomeKind::PartlyRepaired => "some leaks were repaired, others are open",
        OutcomeKind::LeftOpen => "leaks were found and left open",
        OutcomeKind::SuspectsOnly => "there are suspicions that were not cleared",
        OutcomeKind::NotFoundLossStands => "refrigerant had been lost, and its leak was not found",
        OutcomeKind::NothingFound => "searched, nothing found",
        OutcomeKind::RepairVerified => {
            "earlier repairs were looked at again, nothing was shown there"
        }
        OutcomeKind::GasAdded => "refrigerant was added, no search and no repair are noted",
        OutcomeKind::Retrofitted => "changed to another refrigerant",
        OutcomeKind::Other => "no search, no leak and no proof are noted",
    }
}

/// How one finding of a visit stands, without the rest of its outcome.
pub fn standing_of(system: &System, number: usize, finding: &Finding) -> Standing {
    let Some(visit) = system.visits.get(number) else {
        return Standing::NotProved;
    };
    let tested = Tested::of(system, visit);
    standing(&tested, number, finding, &mut Vec::new())
}

/// A visit with what its pressure tests show, each worked out once and only if it is asked for.
struct Tested<'a> {
    system: &'a System,
    visit: &'a Visit,
    verdicts: Vec<(&'a PressureTest, OnceCell<Option<HoldVerdict>>)>,
}

impl<'a> Tested<'a> {
    fn of(system: &'a System, visit: &'a Visit) -> Self {
        let tests = visit.pressure_tests.iter();
        Self {
            system,
            visit,
            verdicts: tests.map(|test| (test, OnceCell::new())).collect(),
        }
    }

    /// What one of its tests shows.
    fn verdict(&self, test: &PressureTest) -> Option<HoldVerdict> {
        let mut verdicts = self.verdicts.iter();
        let (_, verdict) = verdicts.find(|(one, _)| std::ptr::eq(*one, test))?;
        *verdict.get_or_init(|| {
            let circuit = self.system.circuits.get(test.circuit)?;
            Some(hold(test, circuit, self.visit).verdict)
        })
    }

    fn held(&self, test: &PressureTest) -> bool {
        matches!(
            self.verdict(test),
            Some(HoldVerdict::NothingLarger | HoldVerdict::HeldNoSize)
        )
    }

    /// Whether a proof shows the place or its circuit to hold, and comes after the last repair.
    fn proves(&self, proof: &Proof, after: Option<DateTime>) -> bool {
        let Some(clearance) = written(self.visit, proof) else {
            return false;
        };
        let shows = match clearance.ground {
            Ground::Look(look) => clears(look),
            Ground::Search(_) => true,
            Ground::Pressure(test) => self.held(test),
            Ground::Vacuum(test) => rise(test, self.system, self.visit).bears_proof(),
        };
        shows && after.is_none_or(|after| clearance.at >= after)
    }

    fn any_proves(&self, finding: &Finding, after: Option<DateTime>) -> bool {
        let mut proofs = finding.note.proofs.iter();
        proofs.any(|proof| self.proves(proof, after))
    }

    /// Whether a pressure test named as proof, after the last repair, lost pressure, and no later test
    /// of the same part held.
    fn contradicted(&self, finding: &Finding, after: Option<DateTime>) -> bool {
        let tests = self
            .visit
            .pressure_tests
            .iter()
            .filter(|test| after.is_none_or(|after| test.start.at.value.civil >= after));
        let named = |id: &Identifier| {
            let mut proofs = finding.note.proofs.iter();
            proofs.any(|proof| matches!(proof, Proof::Named(name) if name.value == *id))
        };
        tests.clone().any(|lost| {
            let held_later = || {
                tests.clone().any(|later| {
                    later.start.at.value >= lost.end.at.value
                        && later.circuit == lost.circuit
                        && (later.section() == lost.section() || later.section().is_none())
                        && self.held(later)
                })
            };
            named(&lost.id) && self.verdict(lost) == Some(HoldVerdict::Leak) && !held_later()
        })
    }
}

/// Whether a proof shows the place or its circuit to hold, and comes after the last repair.
pub fn proves(system: &System, visit: &Visit, proof: &Proof, after: Option<DateTime>) -> bool {
    Tested::of(system, visit).proves(proof, after)
}

fn standing(
    tested: &Tested<'_>,
    number: usize,
    finding: &Finding,
    beyond: &mut Vec<Beyond>,
) -> Standing {
    let note = &finding.note;
    let Some(state) = note.state else {
        return Standing::Noted(FindingState::Open);
    };
    if !matches!(
        state.value,
        FindingState::RepairedProved | FindingState::RepairedNotProved
    ) {
        return Standing::Noted(state.value);
    }
    let repaired_before = note
        .point
        .as_ref()
        .is_some_and(|point| repaired_earlier(tested.system, number, &point.value));
    let proved = if note.repairs.is_empty() {
        repaired_before && (note.evidence.iter().any(clears) || tested.any_proves(finding, None))
    } else {
        let last = note
            .repairs
            .iter()
            .filter_map(|repair| repair.at)
            .map(|at| moment_of(tested.visit, at.value))
            .max();
        tested.any_proves(finding, last) && !tested.contradicted(finding, last)
    };
    match (state.value, proved) {
        (FindingState::RepairedProved, false) => {
            let shown = if note.repairs.is_empty() && !repaired_before {
                NO_REPAIR
            } else {
                NO_PROOF
            };
            beyond.push(Beyond {
                span: state.span,
                claim: state.value.word(),
                shown,
            });
            Standing::NotProved
        }
        (FindingState::RepairedProved, true) => Standing::Proved,
        _ => Standing::NotProved,
    }
}

/// A look that shows nothing at the place.
fn clears(look: &Look) -> bool {
    !look.positive() && look.method.value.shows() == Shows::Place
}

/// Whether a repair of a point is noted at an earlier visit, or the earlier history names the point.
pub fn repaired_earlier(system: &System, number: usize, point: &Identifier) -> bool {
    system.visits[..number].iter().any(|visit| {
        visit.findings.iter().any(|finding| {
            !finding.note.repairs.is_empty()
                && finding
                    .note
                    .point
                    .as_ref()
                    .is_some_and(|id| id.value == *point)
        })
    }) || system.earlier.iter().any(|earlier| {
        earlier
            .note
            .point
            .as_ref()
            .is_some_and(|id| id.value == *point)
    })
}

/// Points repaired at earlier visits that this visit looked at again and found nothing.
fn verified(tested: &Tested<'_>, number: usize) -> Vec<Identifier> {
    let visit = tested.visit;
    let mut points: Vec<Identifier> = Vec::new();
    for earlier in &tested.system.visits[..number] {
        for finding in &earlier.findings {
            if let Some(point) = &finding.note.point
                && !finding.note.repairs.is_empty()
                && !points.contains(&point.value)
            {
                points.push(point.value.clone());
            }
        }
    }
    points.retain(|point| {
        let here: Vec<&Finding> = visit
            .findings
            .iter()
            .filter(|f| f.note.point.as_ref().is_some_and(|id| id.value == *point))
            .collect();
        let seen = here
            .iter()
            .any(|f| f.note.evidence.iter().any(Look::positive));
        let cleared = here
            .iter()
            .any(|f| f.note.evidence.iter().any(clears) || tested.any_proves(f, None));
        let searched = visit.searches.iter().any(|search| covers(search, point));
        !seen && (cleared || searched)
    });
    points
}

/// Refrigerant charged at a visit, kg, all circuits.
pub fn charged_kg(visit: &Visit) -> f64 {
    visit
        .movements
        .iter()
        .filter(|movement| movement.kind == MovementKind::Charged)
        .map(|movement| movement.amount.kg())
        .sum()
}
