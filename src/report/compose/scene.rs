//! What a report is composed from, and the questions that several of its parts ask.

use crate::history::{PointHistory, State};
use crate::job::{Book, Finding, Site, System, Visit, covers};
use crate::language::Words;
use crate::refrigerant::Refrigerant;
use crate::report::data::PointState;
use crate::report::visit_figures::VisitFigures;
use crate::text::{Message, Sources, capital};
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::{Identifier, Word};
use crate::working::Value;
use crate::working::outcome::{OutcomeKind, Standing, is_leak};

/// One visit with everything around it.
#[derive(Debug)]
pub struct Scene<'a> {
    /// The text files.
    pub sources: &'a Sources,
    /// The book.
    pub book: &'a Book,
    /// The site.
    pub site: &'a Site,
    /// The system.
    pub system: &'a System,
    /// Number of the visit.
    pub number: usize,
    /// The visit.
    pub visit: &'a Visit,
    /// Its figures.
    pub figures: VisitFigures,
    /// Short fingerprint of the notes that the report is made from.
    pub fingerprint: String,
}

impl<'a> Scene<'a> {
    /// The words of the site's language.
    pub fn words(&self) -> &'static Words {
        Words::of(self.site.language)
    }

    /// A sentence in the site's language.
    pub fn say(&self, message: &Message) -> String {
        self.words().say(message)
    }

    /// A sentence with nothing in it.
    pub fn word(&self, id: &'static str) -> String {
        self.words().word(id)
    }

    /// A figure's value in the site's units and language.
    pub fn value(&self, value: &Value) -> String {
        value.say(self.site.units, self.words())
    }

    /// Digits and unit in the site's language.
    #[expect(
        clippy::needless_pass_by_value,
        reason = "what is printed is made for this call"
    )]
    pub fn figure(&self, printed: impl ToString) -> String {
        self.words().figure(&printed.to_string())
    }

    /// The purpose with a capital, or `Visit`.
    pub fn purpose(&self) -> String {
        self.visit
            .note
            .as_ref()
            .and_then(|note| note.purpose)
            .map_or_else(
                || self.word("visit"),
                |purpose| capital(&self.words().phrase(purpose.value.word())),
            )
    }

    /// The contractor's name.
    pub fn contractor_name(&self) -> String {
        self.book
            .note
            .as_ref()
            .and_then(|note| note.contractor.as_ref())
            .and_then(|contractor| contractor.name.as_ref())
            .map_or_else(|| self.word("the-contractor"), |name| name.value.clone())
    }

    /// Who was there, each once, in order of arrival.
    pub fn people(&self) -> Vec<&'a Identifier> {
        let mut people: Vec<&Identifier> = Vec::new();
        for attendance in &self.visit.attendance {
            if !people.contains(&&attendance.by.value) {
                people.push(&attendance.by.value);
            }
        }
        people
    }

    /// The refrigerant of a circuit at the visit's end.
    pub fn refrigerant(&self, circuit: usize) -> Option<&'static Refrigerant> {
        self.system
            .in_force(circuit, self.visit.last_day())?
            .refrigerant
    }

    /// Findings with their number in the report and how they stand.
    pub fn findings(&self) -> impl Iterator<Item = (usize, &'a Finding, Standing)> {
        self.visit
            .findings
            .iter()
            .zip(&self.figures.outcome.standings)
            .enumerate()
            .map(|(index, (finding, standing))| (index + 1, finding, *standing))
    }

    /// Leaks among the findings.
    pub fn leaks(&self) -> impl Iterator<Item = (usize, &'a Finding, Standing)> {
        self.findings().filter(|(_, finding, _)| is_leak(finding))
    }

    /// Whether refrigerant was lost, or a leak is suspected, and no leak was found.
    pub fn loss_stands(&self) -> bool {
        matches!(
            self.figures.outcome.kind,
            OutcomeKind::NotFoundLossStands | OutcomeKind::GasAdded | OutcomeKind::SuspectsOnly
        )
    }

    /// Where a finding is, in words.
    pub fn place(&self, finding: &Finding) -> String {
        finding.note.point.as_ref().map_or_else(
            || finding.note.title.clone(),
            |point| match self.system.points.get(&point.value) {
                Some(_) => self.system.point_name(&point.value),
                None => finding.note.title.clone(),
            },
        )
    }

    /// The life of a point up to this visit.
    pub fn life(&self, point: &Identifier) -> PointHistory {
        PointHistory::of(self.system, point, self.number)
    }

    /// Points repaired before this visit that it looked at again without a sign: days held.
    pub fn holding(&self) -> Vec<(&Identifier, i64)> {
        let points = self.system.points.iter();
        points
            .filter_map(|(point, _)| match self.life(point).state {
                State::RepairedHolding {
                    days,
                    at_place: true,
                    ..
                } => Some((point, days)),
                _ => None,
            })
            .collect()
    }

    /// Whether a search covered a point.
    pub fn searched(&self, point: &Identifier) -> bool {
        self.visit
            .searches
            .iter()
            .any(|search| covers(search, point))
    }

    /// Shape and words of how a finding stands.
    pub fn state(&self, finding: &Finding, standing: Standing) -> (PointState, String) {
        let (shape, words) = Self::stands(finding, standing);
        (shape, self.words().phrase(words))
    }

    /// Shape and words of how a finding stands, the words in English, of [`STANDINGS`].
    pub fn stands(finding: &Finding, standing: Standing) -> (PointState, &'static str) {
        use crate::vocabulary::finding_field::FindingKind;
        let defect = finding
            .note
            .kind
            .is_some_and(|kind| kind.value == FindingKind::Defect);
        let again = finding.note.repairs.is_empty() && !is_leak(finding);
        let [holding, proved, not_proved, ..] = STANDINGS;
        match standing {
            Standing::Proved if again => (PointState::Holding, holding),
            Standing::Proved => (PointState::RepairedProved, proved),
            Standing::NotProved => (PointState::RepairedNotProved, not_proved),
            Standing::Noted(state) => {
                let (shape, words) = noted(state);
                (if defect { PointState::Defect } else { shape }, words)
            }
        }
    }

    /// Printed mass in the site's units.
    pub fn mass(&self, kg: f64, uncertainty: Option<f64>) -> String {
        use crate::quantity::{Flavour, print_si};
        self.figure(print_si(Flavour::Mass, kg, uncertainty, self.site.units))
    }

    /// A mass as a rough figure: one or two digits.
    pub fn about(&self, kg: f64) -> String {
        use crate::quantity::{Flavour, print_si};
        let printed = print_si(Flavour::Mass, kg, Some(kg * 0.1), self.site.units);
        self.figure(format!("{}\u{a0}{}", printed.number, printed.unit))
    }

    /// Tonnes of CO2 equivalent in print.
    pub fn tonnes(&self, co2e_kg: f64) -> String {
        let value = Value::CarbonDioxide {
            kg: co2e_kg,
            uncertainty: None,
        };
        self.value(&value)
    }
}

/// How a finding can stand, in words.
pub const STANDINGS: [&str; 8] = [
    "repaired earlier, holding",
    "repaired, proved",
    "repaired, not proved",
    "temporary repair",
    "isolated",
    "left open",
    "suspect",
    "suspect cleared",
];

/// The technician's own word for how a finding was left.
fn noted(state: FindingState) -> (PointState, &'static str) {
    let [
        _,
        proved,
        not_proved,
        temporary,
        isolated,
        open,
        suspect,
        cleared,
    ] = STANDINGS;
    match state {
        FindingState::RepairedProved => (PointState::Open, proved),
        FindingState::RepairedNotProved => (PointState::Open, not_proved),
        FindingState::Temporary => (PointState::Temporary, temporary),
        FindingState::Isolated => (PointState::Isolated, isolated),
        FindingState::Open => (PointState::Open, open),
        FindingState::Suspect => (PointState::Suspect, suspect),
        FindingState::SuspectCleared => (PointState::SuspectCleared, cleared),
    }
}
