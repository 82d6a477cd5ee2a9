//! A refrigerant as lines for people, each figure with the number of its source.

use crate::quantity::{AbsolutePressure, Flavour, UnitSystem, print_si};
use crate::refrigerant::{Gwp, GwpSet, Mark, Refrigerant, Source};
use std::fmt::Write;

/// What was asked for with `--at`.
pub(super) enum At {
    /// A temperature, K.
    Temperature(f64),
    /// An absolute pressure, Pa.
    Pressure(f64),
}

/// The lines, and the sources they point to.
pub(super) struct Sheet {
    text: String,
    sources: Vec<&'static Source>,
}

impl Sheet {
    /// The whole sheet; `place` says where the gauge pressures hold.
    pub(super) fn of(
        refrigerant: &Refrigerant,
        states: &[At],
        air: AbsolutePressure,
        place: &str,
    ) -> String {
        let mut sheet = Self {
            text: String::new(),
            sources: Vec::new(),
        };
        sheet.identity(refrigerant);
        sheet.limits(refrigerant);
        sheet.points(refrigerant);
        sheet.potentials(refrigerant);
        if !states.is_empty() {
            sheet.line(
                "",
                &format!("gauge pressures {place}, air at {}", absolute(air.si())),
            );
        }
        for state in states {
            match *state {
                At::Temperature(kelvin) => sheet.at_temperature(refrigerant, kelvin, air),
                At::Pressure(pascal) => sheet.at_pressure(refrigerant, pascal, air),
            }
        }
        sheet.text.push_str("sources\n");
        for (index, source) in sheet.sources.iter().enumerate() {
            let _ = writeln!(sheet.text, "  [{}] {}", index + 1, source.citation);
        }
        sheet.text
    }

    fn line(&mut self, key: &str, value: &str) {
        let _ = writeln!(self.text, "{key:<34}{value}");
    }

    /// `  [1]`, with a word where the figure was only remembered.
    fn mark(&mut self, source: &'static Source) -> String {
        let known = self.sources.iter().position(|known| *known == source);
        let number = known.unwrap_or_else(|| {
            self.sources.push(source);
            self.sources.len() - 1
        });
        let memory = if source.mark == Mark::Memory {
            ", from memory: verify"
        } else {
            ""
        };
        format!("  [{}]{memory}", number + 1)
    }

    fn sourced(&mut self, key: &str, printed: &str, source: &'static Source) {
        let mark = self.mark(source);
        self.line(key, &format!("{printed}{mark}"));
    }

    fn identity(&mut self, refrigerant: &Refrigerant) {
        self.line("refrigerant", refrigerant.designation);
        if !refrigerant.names.is_empty() {
            self.line("also called", &refrigerant.names.join("; "));
        }
        match refrigerant.safety_class {
            Some(class) => self.sourced("safety class", &class.value.to_string(), class.source),
            None => self.line("safety class", "none held"),
        }
        let parts = refrigerant.components.iter();
        let parts: Vec<String> = parts
            .map(|part| format!("{} {} %", part.substance.designation, part.mass_percent))
            .collect();
        if let Some(source) = refrigerant.composition_source {
            self.sourced("composition by mass", &parts.join(", "), source);
        } else {
            let formula = refrigerant.components.first();
            let formula = formula.map_or("", |part| part.substance.formula);
            self.line("composition", &format!("one substance, {formula}"));
        }
        let molar = crate::working::rounded(refrigerant.molar_mass_kg_per_kmol(), 2);
        if let Some(source) = refrigerant.molar_mass_source() {
            self.sourced("molar mass", &format!("{molar} g/mol"), source);
        }
    }

    fn limits(&mut self, refrigerant: &Refrigerant) {
        let concentration = |si| {
            let in_units = |units| print_si(Flavour::MassPerVolume, si, None, units);
            format!(
                "{} ({})",
                in_units(UnitSystem::Metric),
                in_units(UnitSystem::Us)
            )
        };
        for (key, value) in [
            (
                "lower flammable limit (LFL)",
                refrigerant.lower_flammability_limit_kg_m3,
            ),
            ("practical limit, EN 378", refrigerant.practical_limit_kg_m3),
            ("ATEL or ODL, EN 378", refrigerant.toxicity_limit_kg_m3),
            ("RCL, ASHRAE 34", refrigerant.concentration_limit_kg_m3),
        ] {
            let nothing = if key.starts_with("lower") && refrigerant.is_flammable() == Some(false) {
                "none: no flame spreads in its class"
            } else {
                "none held"
            };
            match value {
                Some(limit) => {
                    let ppm = refrigerant
                        .concentration_limit_ppm
                        .filter(|_| key.starts_with("RCL"));
                    let ppm = ppm.map_or_else(String::new, |ppm| format!(", {} ppm", ppm.value));
                    self.sourced(
                        key,
                        &format!("{}{ppm}", concentration(limit.value)),
                        limit.source,
                    );
                }
                None => self.line(key, nothing),
            }
        }
    }

    fn points(&mut self, refrigerant: &Refrigerant) {
        let boiling = refrigerant.normal_boiling_point_k;
        let sublimes = boiling
            .zip(refrigerant.saturation_range_k())
            .is_some_and(|(boiling, (low, _))| boiling.value < low);
        match boiling {
            Some(point) if sublimes => {
                self.sourced("sublimes at 1 atm", &both(point.value), point.source);
            }
            Some(point) => {
                let dew = refrigerant
                    .normal_dew_point_k
                    .filter(|_| refrigerant.is_blend());
                let dew = dew.map_or_else(String::new, |dew| format!(", dew {}", both(dew.value)));
                self.sourced(
                    "boils at 1 atm",
                    &format!("{}{dew}", both(point.value)),
                    point.source,
                );
            }
            None => self.line("boils at 1 atm", "none held"),
        }
        match refrigerant.critical_temperature_k {
            Some(critical) => {
                let pascal = refrigerant.critical_pressure_pa;
                let pascal =
                    pascal.map_or_else(String::new, |at| format!(", {}", absolute(at.value)));
                self.sourced(
                    "critical point",
                    &format!("{}{pascal}", both(critical.value)),
                    critical.source,
                );
            }
            None => self.line("critical point", "none held"),
        }
        match refrigerant.gas().viscosity_pa_s {
            Some(held) => {
                let micro = crate::working::rounded(held.value * 1e6, 2);
                self.sourced(
                    "viscosity, 20 °C, 1 atm",
                    &format!("{micro} µPa s"),
                    held.source,
                );
            }
            None => self.line("viscosity, 20 °C, 1 atm", "none held"),
        }
    }

    fn potentials(&mut self, refrigerant: &Refrigerant) {
        for set in GwpSet::ALL {
            let Some(gwp) = refrigerant.gwp(set) else {
                self.line(&format!("GWP, {}", set.title()), "none listed");
                continue;
            };
            let marks: String = sources_of(&gwp)
                .into_iter()
                .map(|source| self.mark(source))
                .collect();
            let left_out = match gwp.excluded.as_slice() {
                [] => String::new(),
                excluded => {
                    let names: Vec<&str> = excluded.iter().map(|one| one.designation).collect();
                    format!("  (without {}, which it does not list)", names.join(", "))
                }
            };
            let value = crate::working::rounded(gwp.value, 1);
            self.line(
                &format!("GWP, {}", set.title()),
                &format!("{value}{marks}{left_out}"),
            );
        }
    }

    fn at_temperature(&mut self, refrigerant: &Refrigerant, kelvin: f64, air: AbsolutePressure) {
        self.line("at", &both(kelvin));
        let pressures = [
            (
                "  bubble pressure (liquid)",
                refrigerant.bubble_pressure_pa(kelvin),
            ),
            (
                "  dew pressure (vapour)",
                refrigerant.dew_pressure_pa(kelvin),
            ),
        ];
        for (key, found) in pressures {
            if let Some(found) = found {
                self.saturation(key, &pressure(found, air), refrigerant);
            }
        }
        for (key, found, unit) in [
            (
                "  liquid density",
                refrigerant.liquid_density_kg_m3(kelvin),
                "kg/m³",
            ),
            (
                "  vapour density",
                refrigerant.vapour_density_kg_m3(kelvin),
                "kg/m³",
            ),
            (
                "  vapour viscosity",
                refrigerant
                    .vapour_viscosity_pa_s(kelvin)
                    .map(|eta| eta * 1e6),
                "µPa s",
            ),
        ] {
            match found {
                Some(found) => {
                    let printed = crate::working::rounded(found, 2);
                    self.saturation(key, &format!("{printed} {unit}"), refrigerant);
                }
                None => self.line(key, "none held"),
            }
        }
    }

    fn at_pressure(&mut self, refrigerant: &Refrigerant, pascal: f64, air: AbsolutePressure) {
        self.line("at", &pressure(pascal, air));
        let (bubble, dew) = (
            refrigerant.bubble_temperature_k(pascal),
            refrigerant.dew_temperature_k(pascal),
        );
        for (key, found) in [
            ("  bubble temperature (liquid)", bubble),
            ("  dew temperature (vapour)", dew),
        ] {
            match found {
                Some(found) => self.saturation(key, &both(found), refrigerant),
                None => self.line(key, "outside the table"),
            }
        }
        if let (Some(bubble), Some(dew)) = (bubble, dew)
            && refrigerant.is_blend()
        {
            self.line(
                "  glide",
                &format!("{} K", crate::working::rounded(dew - bubble, 2)),
            );
        }
    }

    fn saturation(&mut self, key: &str, printed: &str, refrigerant: &Refrigerant) {
        match refrigerant.saturation_source() {
            Some(source) => self.sourced(key, printed, source),
            None => self.line(key, printed),
        }
    }
}

/// An absolute pressure with four or five digits.
pub(super) fn absolute(pascal: f64) -> String {
    let close = Some(pascal * 2e-4);
    let printed = print_si(Flavour::AbsolutePressure, pascal, close, UnitSystem::Metric);
    format!("{} {}", printed.number, printed.unit)
}

/// `4.4066 bar a, 3.39 bar g, 49.2 psig`.
fn pressure(pascal: f64, air: AbsolutePressure) -> String {
    let gauge = |units| print_si(Flavour::GaugePressure, pascal - air.si(), None, units);
    let (bar, psi) = (gauge(UnitSystem::Metric), gauge(UnitSystem::Us));
    format!("{}, {bar}, {psi}", absolute(pascal))
}

/// `−10.00 °C`.
pub(super) fn celsius(kelvin: f64) -> String {
    format!("{} °C", crate::working::rounded(kelvin - 273.15, 2))
}

/// `−10.00 °C (14.0 °F)`.
fn both(kelvin: f64) -> String {
    let fahrenheit = crate::working::rounded(kelvin.mul_add(1.8, -459.67), 1);
    format!("{} ({fahrenheit} °F)", celsius(kelvin))
}

/// The works behind a GWP, each once, in order.
pub(super) fn sources_of(gwp: &Gwp) -> Vec<&'static Source> {
    let mut sources: Vec<&'static Source> = Vec::new();
    for term in &gwp.terms {
        if !sources.contains(&term.gwp.source) {
            sources.push(term.gwp.source);
        }
    }
    sources
}
