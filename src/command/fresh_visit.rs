//! The files of a fresh visit: what is known already is written in them, as comments where only the
//! technician can know.

use crate::command::loaded::Loaded;
use crate::job::{Finding, Site, System, refrigerant_of};
use crate::quantity::{Flavour, print, print_si};
use crate::report::compose::{Scene, next_dates};
use crate::report::visit_figures::VisitFigures;
use crate::text::{Noted, Span};
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::system_file::EarlierHappening;
use crate::vocabulary::visit_file::Purpose;
use crate::vocabulary::{Identifier, Word};
use crate::working::account::{Addition, accounts};
use crate::working::cylinder_balance::cylinder_balances;
use crate::working::outcome::{Outcome, Standing, outcome_by};
use jiff::civil::Date;

/// A visit that is about to be made.
pub struct FreshVisit<'a> {
    /// The book.
    pub loaded: &'a Loaded,
    /// The site.
    pub site: &'a Site,
    /// The system.
    pub system: &'a System,
    /// Its day.
    pub date: Date,
    /// What for.
    pub purpose: Purpose,
    /// Who goes, if it is known.
    pub by: Option<Identifier>,
}

/// How a point stands that should be looked at first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Stands {
    LeftOpen,
    NotProved,
    NotLookedAtSince,
    Temporary,
    Suspect,
}

impl Stands {
    fn words(self) -> &'static str {
        match self {
            Stands::LeftOpen => "left open",
            Stands::NotProved => "repaired, not proved",
            Stands::NotLookedAtSince => "repaired, proved, not checked again",
            Stands::Temporary => "repaired for the time being, or shut off",
            Stands::Suspect => "suspect, not cleared",
        }
    }
}

/// A point to look at first.
struct Open<'a> {
    stands: Stands,
    finding: &'a Finding,
    since: Date,
    repaired: usize,
}

impl Open<'_> {
    /// In a few words.
    fn words(&self) -> String {
        let times = match self.repaired {
            0 | 1 => String::new(),
            times => format!(", repaired {times} times"),
        };
        let point = self.finding.note.point.as_ref();
        let id = point.map_or_else(String::new, |point| format!(" ({})", point.value));
        format!(
            "{}{id}: {} since {}{times}",
            tame(&self.finding.note.title),
            self.stands.words(),
            self.since
        )
    }
}

/// Number of a system's visits up to a day.
fn visits_until(system: &System, day: Date) -> usize {
    system
        .visits
        .partition_point(|visit| visit.name.date <= day)
}

/// Points to look at first: how each last stood on a day, the most urgent first.
fn open_points(system: &System, day: Date) -> Vec<Open<'_>> {
    let accounts = accounts(system);
    let outcomes: Vec<Option<Outcome>> = (0..visits_until(system, day))
        .map(|number| outcome_by(system, &accounts, number))
        .collect();
    let mut told: Vec<&Identifier> = Vec::new();
    let mut open = Vec::new();
    for (number, (visit, outcome)) in system.visits.iter().zip(&outcomes).enumerate().rev() {
        let Some(outcome) = outcome else { continue };
        for (finding, standing) in visit.findings.iter().zip(&outcome.standings) {
            let point = finding.note.point.as_ref().map(|point| &point.value);
            if point.is_some_and(|point| told.contains(&point)) {
                continue;
            }
            told.extend(point);
            let later = outcomes[number + 1..].iter().flatten();
            let verified = point.is_some_and(|point| {
                outcome.verified.contains(point)
                    || later
                        .flat_map(|later| &later.verified)
                        .any(|id| id == point)
            });
            let Some(stands) = stands(*standing, verified) else {
                continue;
            };
            open.push(Open {
                stands,
                finding,
                since: visit.last_day(),
                repaired: times_repaired(system, point, day),
            });
        }
    }
    open.sort_by_key(|open| open.stands);
    open
}

fn stands(standing: Standing, verified: bool) -> Option<Stands> {
    match standing {
        _ if verified => None,
        Standing::Proved => Some(Stands::NotLookedAtSince),
        Standing::NotProved => Some(Stands::NotProved),
        Standing::Noted(FindingState::Open) => Some(Stands::LeftOpen),
        Standing::Noted(FindingState::Temporary | FindingState::Isolated) => {
            Some(Stands::Temporary)
        }
        Standing::Noted(FindingState::Suspect) => Some(Stands::Suspect),
        Standing::Noted(_) => None,
    }
}

/// How often a point was repaired up to a day, by anybody.
fn times_repaired(system: &System, point: Option<&Identifier>, day: Date) -> usize {
    let Some(point) = point else { return 0 };
    let here = |id: Option<&Noted<Identifier>>| id.is_some_and(|id| id.value == *point);
    let visits = &system.visits[..visits_until(system, day)];
    let findings = visits.iter().flat_map(|visit| &visit.findings);
    let ours = findings.filter(|f| here(f.note.point.as_ref()) && !f.note.repairs.is_empty());
    let earlier = system.earlier.iter().filter(|earlier| {
        let what = earlier.note.what.as_ref().map(|what| what.value);
        here(earlier.note.point.as_ref()) && what == Some(EarlierHappening::Repaired)
    });
    ours.count() + earlier.count()
}

/// What a visit is for by what stands open: a repair that was not looked at since is verified, a leak
/// left open repaired, else the system is checked.
pub fn purpose_by_what_is_open(system: &System, day: Date) -> Purpose {
    let open = open_points(system, day);
    let any = |wanted: &[Stands]| open.iter().any(|open| wanted.contains(&open.stands));
    if any(&[Stands::LeftOpen, Stands::Temporary]) {
        Purpose::SearchAndRepair
    } else if any(&[Stands::NotProved, Stands::NotLookedAtSince]) {
        Purpose::Verification
    } else {
        Purpose::PeriodicCheck
    }
}

/// Every file with its name.
pub fn files(fresh: &FreshVisit<'_>) -> [(&'static str, String); 4] {
    [
        ("visit.toml", fresh.visit()),
        ("refrigerant.toml", fresh.refrigerant()),
        ("readings.toml", fresh.readings()),
        ("findings.md", fresh.findings()),
    ]
}

/// Text on one line that ends no comment, neither of TOML nor of Markdown.
fn tame(text: &str) -> String {
    let words: Vec<&str> = text.split_whitespace().collect();
    words.join(" ").replace("--", "- -").replace('>', "›")
}

impl FreshVisit<'_> {
    /// Points to look at first, in a few words each.
    pub fn look_first(&self) -> Vec<String> {
        open_points(self.system, self.date)
            .iter()
            .map(Open::words)
            .collect()
    }

    fn head(&self, about: &str) -> String {
        format!(
            "# {}, {}. {about}\n# A line that begins with # is a comment: take the # away and correct what it says.\n\n",
            tame(self.system.name()),
            tame(self.site.name())
        )
    }

    fn visit(&self) -> String {
        let day = self.date;
        let by = self.by.as_ref().map_or("who", |by| by.0.as_str());
        let due: String = self
            .due()
            .iter()
            .map(|line| format!("# {line}\n"))
            .collect();
        let words: Vec<&str> = Purpose::WORDS.iter().map(|(word, _, _)| *word).collect();
        format!(
            "{}{due}purpose = \"{}\"   # {}\nattendance = [\n  # {{ by = \"{by}\", from = {day}T08:00, to = {day}T17:00 }},\n]\n# complaint = \"…\"\n# ambient = \"17 °C\"\n# barometer = \"1013 mbar a\"\n# left = \"running\"\n# back-in-normal-operation = {day}T16:00\n# outcome = \"…\"\n\n# [[safety-check]]\n# at = {day}T08:05\n# air = \"0 ppm\"\n# ventilated = true\n\n# [[work]]\n# part = \"…\"\n# work = \"…\"\n\n# [[advice]]\n# what = \"…\"\n# to = \"…\"\n# answer = \"…\"\n\n# [[due]]\n# what = \"leak check\"\n# by = {day}\n",
            self.head("Who, when and why."),
            self.purpose.word(),
            words.join(" | "),
        )
    }

    /// What the last visit left to be done by a day.
    fn due(&self) -> Vec<String> {
        let Some(number) = visits_until(self.system, self.date).checked_sub(1) else {
            return Vec::new();
        };
        let Some(figures) = VisitFigures::of(self.site, self.system, number) else {
            return Vec::new();
        };
        let scene = Scene {
            sources: &self.loaded.sources,
            book: &self.loaded.book,
            site: self.site,
            system: self.system,
            number,
            visit: &self.system.visits[number],
            figures,
            fingerprint: String::new(),
        };
        let next = next_dates(&scene).into_iter();
        next.map(|next| {
            let not_before = next
                .not_before
                .map_or_else(String::new, |when| format!(", {when}"));
            let because = next
                .because
                .map_or_else(String::new, |why| format!(" ({why})"));
            tame(&format!(
                "due: {} {}{not_before}{because}",
                next.what, next.by
            ))
        })
        .collect()
    }

    fn refrigerant(&self) -> String {
        let day = self.date;
        let mut text = self.head("Every movement of refrigerant, by the scale.");
        let mut gases = Vec::new();
        for (circuit, account) in accounts(self.system).iter().enumerate() {
            let Some(in_force) = self.system.in_force(circuit, day) else {
                continue;
            };
            let gas = in_force
                .refrigerant
                .map_or("refrigerant not known", |gas| gas.designation);
            let full = in_force.note.full_charge.map_or_else(String::new, |full| {
                format!(", full charge {}", print(&full.value, self.site.units))
            });
            let name = self.system.circuit_name(circuit);
            text += &format!("# {name}: {gas}{full}\n");
            let before = |addition: &&Addition| addition.at.value.date() <= day;
            if let Some(last) = account.additions.iter().rfind(before) {
                let mass = print_si(Flavour::Mass, last.kg, None, self.site.units);
                let by = last.visit.map_or(", by an earlier record", |_| "");
                text += &format!("#   last added {mass} on {}{by}\n", last.at.value.date());
            }
            if !gases.contains(&in_force.refrigerant) {
                gases.push(in_force.refrigerant);
            }
        }
        text.extend(gases.into_iter().map(|gas| self.cylinders(gas)));
        let circuit = self.circuit_line(0);
        text += &format!(
            "\n# [[movement]]\n# kind = \"recovered\"\n# why = \"repair\"\n{circuit}# at = {day}T10:00\n# cylinder = \"…\"\n# scale = \"…\"\n# before = \"0.00 kg\"\n# after = \"0.00 kg\"\n\n# [[movement]]\n# kind = \"charged\"\n# why = \"recharge\"\n{circuit}# at = {day}T15:00\n# cylinder = \"…\"\n# scale = \"…\"\n# before = \"0.00 kg\"\n# after = \"0.00 kg\"\n# charged-to = \"full by weight\"\n"
        );
        text
    }

    /// Cylinders of a refrigerant, with what is left in them.
    fn cylinders(&self, gas: Option<&'static crate::refrigerant::Refrigerant>) -> String {
        let all = cylinder_balances(&self.loaded.book).into_iter();
        let of_gas =
            all.filter(|c| gas.is_some() && refrigerant_of(c.note.refrigerant.as_ref()) == gas);
        of_gas
            .filter_map(|cylinder| {
                let left = cylinder.left_kg?;
                cylinder.note.tare?;
                let mass = print_si(Flavour::Mass, left, None, self.site.units);
                Some(format!("# cylinder {}: {mass} left in it\n", cylinder.id))
            })
            .collect()
    }

    fn circuit_line(&self, circuit: usize) -> String {
        let id = self
            .system
            .circuits
            .get(circuit)
            .and_then(|c| c.id.as_ref());
        id.filter(|_| self.system.several_circuits())
            .map_or_else(String::new, |id| format!("# circuit = \"{id}\"\n"))
    }

    fn readings(&self) -> String {
        let day = self.date;
        let mut areas: Vec<&str> = Vec::new();
        let registered = self.system.points.iter().map(|(id, _)| id);
        for id in registered.chain(self.system.areas.iter().map(|(id, ())| id)) {
            let area = id.0.split_once('/').map_or(id.0.as_str(), |(area, _)| area);
            if !areas.contains(&area) {
                areas.push(area);
            }
        }
        let areas: Vec<String> = areas.iter().map(|area| format!("\"{area}/*\"")).collect();
        let mut text = self.head("Detector checks, searches, tests and readings of the plant.");
        text += &format!(
            "# [[detector-check]]\n# instrument = \"…\"\n# at = {day}T08:10\n# reference-leak = \"5 g/yr R-134a\"\n# responded = true\n\n# [[search]]\n# id = \"s1\"\n# method = \"electronic\"\n# instrument = \"…\"\n# started = {day}T08:20\n# ended = {day}T09:30\n# plant = \"running\"\n# areas = [{}]\n# not-reached = [ {{ point = \"…\", reason = \"…\" }} ]\n# all-visible-and-accessible-inspected = true\n",
            areas.join(", ")
        );
        for circuit in 0..self.system.circuits.len() {
            text += &self.last_reading(circuit);
        }
        text
    }

    /// The last readings of a running circuit, as they were written.
    fn last_reading(&self, circuit: usize) -> String {
        let known = visits_until(self.system, self.date);
        let readings = self
            .system
            .visits
            .iter()
            .take(known)
            .flat_map(|visit| &visit.operating);
        let name = self.system.circuit_name(circuit);
        let Some(last) = readings
            .filter(|r| r.circuit == circuit)
            .max_by_key(|r| r.at.value)
        else {
            return String::new();
        };
        let note = &last.note;
        let lines: [(&str, Option<Span>); 7] = [
            ("suction-pressure", note.suction_pressure.map(|n| n.span)),
            (
                "suction-temperature",
                note.suction_temperature.map(|n| n.span),
            ),
            ("liquid-pressure", note.liquid_pressure.map(|n| n.span)),
            (
                "liquid-temperature",
                note.liquid_temperature.map(|n| n.span),
            ),
            ("ambient", note.ambient.map(|n| n.span)),
            ("sight-glass", note.sight_glass.as_ref().map(|n| n.span)),
            ("receiver-level", note.receiver_level.map(|n| n.span)),
        ];
        let written: String = lines
            .iter()
            .filter_map(|(key, span)| {
                let text = tame(self.loaded.sources.text((*span)?));
                Some(format!("# {key} = {text}\n"))
            })
            .collect();
        format!(
            "\n# {name}, as it was read on {}; read again:\n# [[operating]]\n# at = {}T16:00\n{}{written}",
            last.at.value.civil.strftime("%Y-%m-%d %H:%M"),
            self.date,
            self.circuit_line(circuit)
        )
    }

    fn findings(&self) -> String {
        let open = open_points(self.system, self.date);
        if open.is_empty() {
            return "<!-- A heading is a finding: ## What and where {#point}, then its fields as a list. -->\n"
                .to_owned();
        }
        let mut text = "<!-- Look at these first. To use one, take its line with the two marks away, above and below. -->\n".to_owned();
        for one in &open {
            let title = tame(&one.finding.note.title);
            let id = one.finding.note.point.as_ref();
            let id = id.map_or_else(String::new, |id| format!(" {{#{}}}", tame(&id.value.0)));
            text += &format!(
                "\n<!-- {}\n## {title}{id}\n\n- kind: leak\n- evidence:\n  - 09:00 …\n- state: …\n-->\n",
                one.words()
            );
        }
        text
    }
}
