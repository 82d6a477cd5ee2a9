//! What Regulation (EC) 1516/2007 asks of a gas detector, where it is in force.

use crate::caution::detector_use::{DetectorUse, sole};
use crate::caution::scene::Scene;
use crate::notes::InstrumentNote;
use crate::text::{Noted, Span};
use crate::vocabulary::Identifier;
use crate::vocabulary::site_file::RuleSetWord;

/// A detector that alone was relied on and falls short of the rule.
pub struct ShortOfRule<'a, T> {
    /// Where it was relied on.
    pub one: DetectorUse<'a>,
    /// Which detector.
    pub id: &'a str,
    /// What falls short, where it is noted.
    pub fault: Noted<T>,
    /// Where the site says that the rule is in force.
    pub rule: Span,
}

/// The detectors that alone were relied on and have a fault, each once.
pub fn short_of_rule<'a, T>(
    scene: &Scene<'a>,
    fault: impl Fn(&InstrumentNote, &DetectorUse<'a>) -> Option<Noted<T>>,
) -> Vec<ShortOfRule<'a, T>> {
    let Some(rule) = scene.rule(RuleSetWord::Eu2024) else {
        return Vec::new();
    };
    let faulty = |one: &DetectorUse<'a>| {
        let id = Identifier(one.instrument?.to_owned());
        fault(scene.book.instruments.get(&id)?, one)
    };
    let weak = |one: &DetectorUse<'a>| faulty(one).is_some();
    let same = |one: &DetectorUse<'a>, other: &DetectorUse<'a>| one.instrument == other.instrument;
    sole(scene, weak, same)
        .into_iter()
        .filter_map(|one| {
            Some(ShortOfRule {
                id: one.instrument?,
                fault: faulty(&one)?,
                one,
                rule,
            })
        })
        .collect()
}
