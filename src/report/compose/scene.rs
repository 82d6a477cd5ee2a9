//! What a report is composed from, and the questions that several of its parts ask.

use crate::history::{PointHistory, State};
use crate::job::{Book, Finding, Site, System, Visit, covers};
use crate::refrigerant::Refrigerant;
use crate::report::data::PointState;
use crate::report::printed;
use crate::report::visit_figures::VisitFigures;
use crate::text::Sources;
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::{Identifier, Word};
use crate::working::outcome::{Standing, is_leak};

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
    /// The purpose with a capital, or `Visit`.
    pub fn purpose(&self) -> String {
        self.visit
            .note
            .as_ref()
            .and_then(|note| note.purpose)
            .map_or_else(
                || "Visit".to_owned(),
                |purpose| printed::capital(purpose.value.word()),
            )
    }

    /// The contractor's name.
    pub fn contractor_name(&self) -> String {
        self.book
            .note
            .as_ref()
            .and_then(|note| note.contractor.as_ref())
            .and_then(|contractor| contractor.name.as_ref())
            .map_or_else(|| "The contractor".to_owned(), |name| name.value.clone())
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
        use crate::vocabulary::finding_field::FindingKind;
        let defect = finding
            .note
            .kind
            .is_some_and(|kind| kind.value == FindingKind::Defect);
        let again = finding.note.repairs.is_empty() && !is_leak(finding);
        match standing {
            Standing::Proved if again => {
                (PointState::Holding, "repaired earlier, holding".to_owned())
            }
            Standing::Proved => (PointState::RepairedProved, "repaired, proved".to_owned()),
            Standing::NotProved => (
                PointState::RepairedNotProved,
                "repaired, not proved".to_owned(),
            ),
            Standing::Noted(_) if defect => (PointState::Defect, noted(standing)),
            Standing::Noted(state) => (
                match state {
                    FindingState::Temporary => PointState::Temporary,
                    FindingState::Isolated => PointState::Isolated,
                    FindingState::Suspect => PointState::Suspect,
                    FindingState::SuspectCleared => PointState::SuspectCleared,
                    _ => PointState::Open,
                },
                noted(standing),
            ),
        }
    }

    /// Printed mass in the site's units.
    pub fn mass(&self, kg: f64, uncertainty: Option<f64>) -> String {
        use crate::quantity::{Flavour, print_si};
        print_si(Flavour::Mass, kg, uncertainty, self.site.units).to_string()
    }

    /// A mass as a rough figure: one or two digits.
    pub fn about(&self, kg: f64) -> String {
        use crate::quantity::{Flavour, print_si};
        let printed = print_si(Flavour::Mass, kg, Some(kg * 0.1), self.site.units);
        format!("{}\u{a0}{}", printed.number, printed.unit)
    }

    /// Tonnes of CO2 equivalent in print.
    pub fn tonnes(&self, co2e_kg: f64) -> String {
        let value = crate::working::Value::CarbonDioxide {
            kg: co2e_kg,
            uncertainty: None,
        };
        value.print(self.site.units)
    }
}

/// The technician's own word for how a finding was left.
fn noted(standing: Standing) -> String {
    match standing {
        Standing::Noted(FindingState::Open) => "left open".to_owned(),
        Standing::Noted(FindingState::Temporary) => "temporary repair".to_owned(),
        Standing::Noted(state) => state.word().to_owned(),
        Standing::Proved | Standing::NotProved => String::new(),
    }
}
