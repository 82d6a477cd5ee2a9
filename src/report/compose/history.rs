//! The history of a system as plain data: visits and their outcomes, refrigerant by year, rates and
//! test limits over time, points and their lives.

use crate::history::{PointHistory, Year, time_line, years};
use crate::job::{Site, System, Visit};
use crate::language::Words;
use crate::report::visit_figures::VisitFigures;
use crate::text::Message;
use crate::vocabulary::Word;
use serde::Serialize;
use std::collections::BTreeMap;

/// A system from its first record to a visit.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct HistoryData {
    /// Its name.
    pub system: String,
    /// The last day of the last visit.
    pub as_at: String,
    /// The visits, in order.
    pub visits: Vec<VisitLine>,
    /// The circuits.
    pub circuits: Vec<CircuitHistory>,
    /// Rates at each visit that had one.
    pub rates: Vec<Dated>,
    /// What each pressure test left possible.
    pub test_limits: Vec<Dated>,
    /// The points, each on its line of time.
    pub points: Vec<PointLine>,
}

/// A visit and how it ended.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct VisitLine {
    /// Its first day.
    pub day: String,
    /// Its purpose.
    pub purpose: String,
    /// Its outcome.
    pub outcome: String,
}

/// A circuit over the years.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct CircuitHistory {
    /// Its name.
    pub name: String,
    /// From when every movement is known.
    pub complete_since: Option<String>,
    /// Refrigerant by calendar year.
    pub years: Vec<Year>,
    /// CO₂ equivalent of what jobs had to add for leaks, kg, by calendar year.
    pub co2e_lost_kg: BTreeMap<i16, f64>,
}

/// A figure of a visit.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct Dated {
    /// First day of the visit.
    pub day: String,
    /// Id of the figure, by which `explain` finds its working.
    pub id: String,
    /// Its title.
    pub title: String,
    /// What it is of, such as circuit, section and test; empty where the title tells it.
    pub about: String,
    /// In print.
    pub printed: String,
    /// SI value, or percent.
    pub value: f64,
}

/// A point and its life.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct PointLine {
    /// Where it is, in words.
    pub place: String,
    /// Its line of time.
    pub line: String,
    /// How often the part that is there now has leaked.
    pub times: usize,
    /// How it stands.
    pub state: String,
}

/// Composes the history of a system up to and with a visit, by its number, in a language.
pub fn history(site: &Site, system: &System, last: usize, words: &Words) -> Option<HistoryData> {
    let figures: Vec<VisitFigures> = (0..=last)
        .map(|number| VisitFigures::of(site, system, number))
        .collect::<Option<_>>()?;
    let mut data = HistoryData {
        system: system.name().to_owned(),
        as_at: system.visits.get(last)?.last_day().to_string(),
        ..HistoryData::default()
    };
    for (visit, figures) in system.visits.iter().zip(&figures) {
        let day = visit.name.date.to_string();
        let purpose = visit.note.as_ref().and_then(|note| note.purpose);
        data.visits.push(VisitLine {
            day: day.clone(),
            purpose: purpose.map_or_else(String::new, |purpose| words.phrase(purpose.value.word())),
            outcome: words.phrase(figures.outcome.shown()),
        });
        for figure in figures.all() {
            let dated = Dated {
                day: day.clone(),
                id: figure.id.clone(),
                title: words.text(&figure.title),
                about: tested(system, visit, &figure.id, words),
                printed: figure.value.say(site.units, words),
                value: figure.value.number(),
            };
            if figure.id.ends_with("loss-per-year") || figure.id.contains("leak-rate/") {
                data.rates.push(dated);
            } else if figure.id.starts_with("pressure-test/") && figure.id.ends_with("/limit") {
                data.test_limits.push(dated);
            }
        }
    }
    let end = figures.last()?;
    data.circuits = end
        .circuits
        .iter()
        .map(|circuit| CircuitHistory {
            name: words.say(
                &Message::of("circuit-named")
                    .with("circuit", system.circuit_choice(circuit.circuit)),
            ),
            complete_since: circuit
                .account
                .complete_since
                .map(|since| since.date().to_string()),
            years: years(system, circuit.circuit, &circuit.account),
            co2e_lost_kg: co2e_by_year(system, &figures, circuit.circuit),
        })
        .collect();
    data.points = system
        .points
        .iter()
        .map(|(id, _)| {
            let life = PointHistory::of(system, id, last);
            PointLine {
                place: system.point_name(id),
                line: time_line(&life),
                times: life.of_this_part().count(),
                state: words.text(&life.state.describe()),
            }
        })
        .collect();
    Some(data)
}

/// Circuit, section and name of the pressure test that a figure belongs to; empty for another figure.
fn tested(system: &System, visit: &Visit, figure: &str, words: &Words) -> String {
    let name = figure
        .strip_prefix("pressure-test/")
        .and_then(|rest| rest.strip_suffix("/limit"));
    let mut tests = visit.pressure_tests.iter();
    let Some(test) = name.and_then(|name| tests.find(|test| test.id.0 == name)) else {
        return String::new();
    };
    let section = test.section().map(ToString::to_string);
    words.say(
        &Message::of("test-limit-of")
            .with("circuit", system.circuit_choice(test.circuit))
            .with("section", section.unwrap_or_else(|| "none".to_owned()))
            .with("test", test.id.0.clone()),
    )
}

fn co2e_by_year(system: &System, figures: &[VisitFigures], circuit: usize) -> BTreeMap<i16, f64> {
    let mut sums = BTreeMap::new();
    for (visit, figures) in system.visits.iter().zip(figures) {
        let of_circuit = figures.circuits.iter().find(|c| c.circuit == circuit);
        if let Some(lost) = of_circuit.and_then(|circuit| circuit.lost_co2e.as_ref()) {
            *sums.entry(visit.name.date.year()).or_insert(0.0) += lost.value.number();
        }
    }
    sums
}
