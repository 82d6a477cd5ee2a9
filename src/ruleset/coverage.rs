//! Whether a rule set covers a circuit, and why.

use crate::refrigerant::{EuAnnex, OzoneClass, Refrigerant, co2e_kg};
use crate::ruleset::RuleSet;
use crate::text::{Message, Text};
use crate::vocabulary::site_file::RuleSetWord;
use crate::vocabulary::system_file::Category;

/// A pound, kg: exact by the international yard and pound agreement of 1959.
const POUND: f64 = 0.453_592_37;

/// Whether a rule set covers a circuit.
#[derive(Clone, Debug, PartialEq)]
pub struct Coverage {
    /// It does.
    pub covered: bool,
    /// Why, in a sentence with its citation.
    pub why: Text,
    /// Whether the text of the rule does not say: a blend of Annex I and Annex II gases.
    pub undecided: bool,
    /// Charge in t CO2e under the rule's GWP set.
    pub co2e_t: Option<f64>,
    /// Charge in kg that counts by mass (Annex II section 1).
    pub annex_two_kg: f64,
}

/// What of a system matters for coverage.
#[derive(Clone, Copy, Debug, Default)]
pub struct Plant {
    /// Labelled as hermetically sealed.
    pub hermetic: bool,
    /// In a residential building.
    pub residential: bool,
    /// Whether it is of the light commercial kind, if it is noted.
    pub light_commercial: Option<bool>,
    /// Its category, if it is noted.
    pub category: Option<Category>,
}

impl Plant {
    /// Air conditioning or a heat pump.
    fn is_cooling(self) -> bool {
        self.category.is_none_or(|category| {
            matches!(category, Category::ComfortCooling | Category::HeatPump)
        })
    }

    /// Air conditioning or a heat pump of the residential and light commercial kind, as far as the
    /// notes tell.
    fn is_small_cooling(self) -> bool {
        (self.residential || self.light_commercial == Some(true)) && self.is_cooling()
    }
}

/// Works out the coverage of a circuit with a full charge in kg.
///
/// 40 CFR 82.157(a), 84.106(a), 84.64; Regulation (EU) 2024/573, Article 5(1).
pub fn coverage(
    rules: &RuleSet,
    refrigerant: &Refrigerant,
    full_kg: f64,
    plant: Plant,
) -> Coverage {
    let gwp = refrigerant.gwp(rules.gwp).map(|gwp| gwp.value);
    let co2e_t = gwp.map(|gwp| co2e_kg(full_kg, gwp) / 1000.0);
    let pounds = full_kg / POUND;
    // Half a gram decides nothing: what was written as exactly the threshold is at it.
    let at_least = |value: f64, threshold: f64| value >= threshold * (1.0 - 1e-9);
    let annex_two_kg =
        if refrigerant.is_in_eu_annex(EuAnnex::TwoSectionOne) && !in_annex_one(refrigerant) {
            full_kg
        } else {
            0.0
        };
    let (covered, why) = match rules.word {
        RuleSetWord::Us82 => {
            let ozone = refrigerant.ozone_class().is_some();
            let enough = at_least(pounds, 50.0);
            (
                ozone && enough,
                match (ozone, enough) {
                    (false, _) => Text::Phrase("no ozone-depleting substance in it (82.157(a))"),
                    (true, false) => Text::Phrase("full charge below 50 lb (82.157(a))"),
                    (true, true) => Message::of("class-with-50-lb")
                        .phrase("class", class_word(refrigerant.ozone_class()))
                        .into(),
                },
            )
        }
        RuleSetWord::Us84 => {
            let potent = gwp.is_some_and(is_potent);
            let regulated = refrigerant.contains_us_regulated() || potent;
            let enough = at_least(pounds, 15.0);
            let ozone_only =
                refrigerant.ozone_class().is_some() && !refrigerant.contains_us_regulated();
            (
                regulated && enough && !ozone_only && !plant.is_small_cooling(),
                if ozone_only {
                    Text::Phrase("only ozone-depleting substances in it (84.106(a))")
                } else if !regulated {
                    Text::Phrase(
                        "no regulated substance and GWP not above 53 (84.106(a), 84.64(b))",
                    )
                } else if plant.is_small_cooling() {
                    Text::Phrase(
                        "residential and light commercial air conditioning is left out (84.106(a))",
                    )
                } else if enough
                    && plant.light_commercial.is_none()
                    && plant.category.is_some()
                    && plant.is_cooling()
                {
                    Message::of("covered-84-not-said").into()
                } else if enough {
                    Text::Phrase(
                        "15 lb or more of a regulated substance, or of a substitute with GWP above 53 (84.106(a))",
                    )
                } else {
                    Text::Phrase("full charge below 15 lb (84.106(a))")
                },
            )
        }
        RuleSetWord::Eu2024 => europe(refrigerant, co2e_t, annex_two_kg, full_kg, plant),
        RuleSetWord::Gb => {
            let tonnes = co2e_t.unwrap_or(0.0);
            let annex = in_annex_one(refrigerant);
            let exempt = plant.hermetic && tonnes < 10.0;
            (
                annex && at_least(tonnes, 5.0) && !exempt,
                Text::Phrase(match (annex, at_least(tonnes, 5.0), exempt) {
                    (false, _, _) => "no fluorinated gas of Annex I in it",
                    (true, false, _) => "below 5 t CO₂e (Article 4)",
                    (true, true, true) => {
                        "labelled hermetic and below 10 t CO₂e (from memory, verify)"
                    }
                    (true, true, false) => "5 t CO₂e or more (Article 4)",
                }),
            )
        }
        RuleSetWord::GbOzone => {
            let ozone = refrigerant.ozone_class().is_some();
            let exempt = plant.hermetic && !at_least(full_kg, 6.0);
            let enough = at_least(full_kg, 3.0);
            (
                ozone && enough && !exempt,
                Text::Phrase(match (ozone, enough, exempt) {
                    (false, _, _) => "no ozone-depleting substance in it (Article 23)",
                    (true, false, _) => "full charge below 3 kg (Article 23(2))",
                    (true, true, true) => "labelled hermetic and below 6 kg (Article 23(2))",
                    (true, true, false) => {
                        "3 kg or more of an ozone-depleting substance (Article 23(2))"
                    }
                }),
            )
        }
    };
    let undecided = rules.word == RuleSetWord::Eu2024
        && !covered
        && in_annex_one(refrigerant)
        && !plant.hermetic
        && at_least(blended_kg(refrigerant, full_kg), 1.0);
    Coverage {
        covered,
        why,
        undecided,
        co2e_t,
        annex_two_kg,
    }
}

/// Whether a substitute's GWP brings it in: above 53, and 53 is not (40 CFR 84.106(a)).
fn is_potent(gwp: f64) -> bool {
    gwp > 53.0
}

fn europe(
    refrigerant: &Refrigerant,
    co2e_t: Option<f64>,
    annex_two_kg: f64,
    full_kg: f64,
    plant: Plant,
) -> (bool, Text) {
    let annex_one = in_annex_one(refrigerant);
    if !annex_one && annex_two_kg == 0.0 {
        return (
            false,
            Text::Phrase("no gas of Annex I or Annex II section 1 in it (Article 5(1))"),
        );
    }
    let tonnes = if annex_one {
        co2e_t.unwrap_or(0.0)
    } else {
        0.0
    };
    let at_least = |value: f64, threshold: f64| value >= threshold * (1.0 - 1e-9);
    if annex_one && !at_least(tonnes, 5.0) && at_least(blended_kg(refrigerant, full_kg), 1.0) {
        return (
            false,
            Text::Phrase(
                "counted by its GWP the blend is below 5 t CO₂e (usual practice, from memory, verify); of its Annex II gases alone there is 1 kg or more, for which Article 5(1) asks leak checks: ask the authority, or check as if covered",
            ),
        );
    }
    if !at_least(tonnes, 5.0) && !at_least(annex_two_kg, 1.0) {
        return (
            false,
            Text::Phrase("below 5 t CO₂e and below 1 kg of Annex II gases (Article 5(1))"),
        );
    }
    if plant.hermetic
        && (if annex_one {
            tonnes < 10.0
        } else {
            annex_two_kg < 2.0
        })
    {
        return (
            false,
            Text::Phrase("labelled hermetic and below 10 t CO₂e or 2 kg (Article 5(1))"),
        );
    }
    if plant.hermetic && plant.residential && full_kg < 3.0 {
        return (
            false,
            Text::Phrase("residential, labelled hermetic and below 3 kg (Article 5(1))"),
        );
    }
    let why = if annex_one {
        "5 t CO₂e or more of Annex I gases (Article 5(1))"
    } else {
        "1 kg or more of Annex II section 1 gases (Article 5(1))"
    };
    (true, Text::Phrase(why))
}

/// Whether it is, or contains, a gas of Annex I; a blend is treated as Annex I by its GWP, which is
/// usual practice (from memory, verify).
fn in_annex_one(refrigerant: &Refrigerant) -> bool {
    refrigerant.is_in_eu_annex(EuAnnex::OneSectionOne)
        || refrigerant.is_in_eu_annex(EuAnnex::OneSectionTwo)
}

/// Mass of the Annex II gases in a charge, kg.
fn blended_kg(refrigerant: &Refrigerant, full_kg: f64) -> f64 {
    refrigerant
        .components
        .iter()
        .filter(|part| part.substance.eu_annex == Some(EuAnnex::TwoSectionOne))
        .map(|part| part.mass_percent / 100.0 * full_kg)
        .sum()
}

fn class_word(class: Option<OzoneClass>) -> &'static str {
    match class {
        Some(OzoneClass::One) => "class I substance",
        Some(OzoneClass::Two) => "class II substance",
        None => "substance",
    }
}

#[cfg(test)]
mod tests {
    use super::is_potent;

    #[test]
    fn a_gwp_of_exactly_53_is_not_above_53() {
        assert!(!is_potent(53.0) && is_potent(53.01));
    }
}
