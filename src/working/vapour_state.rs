//! Superheat and subcooling of the running plant, with the glide of a blend.

use crate::job::{Atmosphere, OperatingReading, System, Visit};
use crate::quantity::{Flavour, Measured, Pressure};
use crate::refrigerant::Refrigerant;
use crate::text::{Message, Noted, Text};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Superheat of the suction vapour.
pub static SUPERHEAT: Method = Method {
    id: "superheat",
    name: "Superheat of the suction vapour",
    formula: "ΔT = T_suction − T_dew(p_suction), absolute pressure",
    mathematics: "Delta T = T_\"suction\" - T_\"dew\" (p_\"suction\")",
    source: "common practice; dew temperature from the table made with CoolProp 8.0.0",
};

/// Subcooling of the liquid.
pub static SUBCOOLING: Method = Method {
    id: "subcooling",
    name: "Subcooling of the liquid",
    formula: "ΔT = T_bubble(p_liquid) − T_liquid, absolute pressure",
    mathematics: "Delta T = T_\"bubble\" (p_\"liquid\") - T_\"liquid\"",
    source: "common practice; bubble temperature from the table made with CoolProp 8.0.0",
};

/// What a reading of the running plant tells of the refrigerant.
#[derive(Clone, Debug)]
pub struct VapourState {
    /// Superheat at the suction.
    pub superheat: Option<Figure>,
    /// Subcooling of the liquid.
    pub subcooling: Option<Figure>,
    /// Whether the warm side runs above the critical point, where there is no subcooling.
    pub above_critical: bool,
}

/// Works out a reading, by its number in the visit, counted from nought.
pub fn vapour_state(system: &System, visit: &Visit, number: usize) -> Option<VapourState> {
    let reading = visit.operating.get(number)?;
    let refrigerant = refrigerant_of(system, visit, reading)?;
    // Numbered by time, so that the order of the tables matters only within one minute.
    let moment = (reading.at.value, reading.circuit, number);
    let others = visit.operating.iter().enumerate();
    let before = others.filter(|(index, other)| (other.at.value, other.circuit, *index) < moment);
    let rank = before.count() + 1;
    let id = |part: &str| format!("operating/{rank}/{part}");
    Some(VapourState {
        superheat: superheat(reading, visit, refrigerant, &id("superheat")),
        subcooling: subcooling(reading, visit, refrigerant, &id("subcooling")),
        above_critical: above_critical(reading, visit, refrigerant),
    })
}

fn refrigerant_of(
    system: &System,
    visit: &Visit,
    reading: &OperatingReading,
) -> Option<&'static Refrigerant> {
    system
        .in_force(reading.circuit, visit.last_day())?
        .refrigerant
}

/// The superheat of a reading without its working, K.
pub fn superheat_k(system: &System, visit: &Visit, reading: &OperatingReading) -> Option<f64> {
    let absolute = absolute_pa(&reading.note.suction_pressure?, visit);
    let dew = refrigerant_of(system, visit, reading)?.dew_temperature_k(absolute)?;
    Some(reading.note.suction_temperature?.value.value.si() - dew)
}

/// The subcooling of a reading without its working, K.
pub fn subcooling_k(system: &System, visit: &Visit, reading: &OperatingReading) -> Option<f64> {
    let absolute = absolute_pa(&reading.note.liquid_pressure?, visit);
    let bubble = refrigerant_of(system, visit, reading)?.bubble_temperature_k(absolute)?;
    Some(bubble - reading.note.liquid_temperature?.value.value.si())
}

fn superheat(
    reading: &OperatingReading,
    visit: &Visit,
    refrigerant: &Refrigerant,
    id: &str,
) -> Option<Figure> {
    let (pressure, temperature) = (
        reading.note.suction_pressure?,
        reading.note.suction_temperature?,
    );
    let absolute = absolute_pa(&pressure, visit);
    let dew = refrigerant.dew_temperature_k(absolute)?;
    let mut working = Working::of(&SUPERHEAT, id, Text::Phrase(SUPERHEAT.name));
    let suction = working.take("T_suction", &temperature);
    take_pressure(&mut working, "p_suction", &pressure, visit);
    let half = half_span(&pressure, absolute, |p| refrigerant.dew_temperature_k(p));
    saturation(&mut working, "T_dew", dew, half, refrigerant);
    glide(&mut working, refrigerant, absolute);
    working.note(Message::of("note-resolution"));
    Some(working.finish(difference(suction - dew, half, &temperature)))
}

fn subcooling(
    reading: &OperatingReading,
    visit: &Visit,
    refrigerant: &Refrigerant,
    id: &str,
) -> Option<Figure> {
    let (pressure, temperature) = (
        reading.note.liquid_pressure?,
        reading.note.liquid_temperature?,
    );
    let absolute = absolute_pa(&pressure, visit);
    let bubble = refrigerant.bubble_temperature_k(absolute)?;
    let mut working = Working::of(&SUBCOOLING, id, Text::Phrase(SUBCOOLING.name));
    let liquid = working.take("T_liquid", &temperature);
    take_pressure(&mut working, "p_liquid", &pressure, visit);
    let half = half_span(&pressure, absolute, |p| refrigerant.bubble_temperature_k(p));
    saturation(&mut working, "T_bubble", bubble, half, refrigerant);
    glide(&mut working, refrigerant, absolute);
    working.note(Message::of("note-resolution"));
    Some(working.finish(difference(bubble - liquid, half, &temperature)))
}

fn above_critical(reading: &OperatingReading, visit: &Visit, refrigerant: &Refrigerant) -> bool {
    let pressure = reading
        .note
        .liquid_pressure
        .or(reading.note.discharge_pressure);
    pressure
        .zip(refrigerant.critical_pressure_pa)
        .is_some_and(|(pressure, critical)| absolute_pa(&pressure, visit) > critical.value)
}

/// Absolute pressure with the air of the visit, Pa.
pub fn absolute_pa(pressure: &Noted<Measured<Pressure>>, visit: &Visit) -> f64 {
    pressure
        .value
        .value
        .absolute(visit.atmosphere.pressure())
        .si()
}

fn take_pressure(
    working: &mut Working,
    symbol: &'static str,
    pressure: &Noted<Measured<Pressure>>,
    visit: &Visit,
) {
    working.take(symbol, pressure);
    if !matches!(pressure.value.value, Pressure::Gauge(_)) {
        return;
    }
    let origin = match &visit.atmosphere {
        Atmosphere::Barometer(noted) => Origin::Note(noted.span),
        Atmosphere::Altitude(noted) => Origin::Note(noted.span),
        Atmosphere::Standard => Origin::Constant("standard atmosphere, ISO 2533"),
    };
    working.input(
        "p_air",
        Value::Computed {
            flavour: Flavour::AbsolutePressure,
            si: visit.atmosphere.pressure().si(),
            uncertainty: None,
        },
        origin,
    );
}

/// Half width of a reading: as written, else half its last digit.
fn half_width<T>(noted: &Noted<Measured<T>>) -> f64 {
    let measured = &noted.value;
    measured.uncertainty.unwrap_or(measured.step / 2.0)
}

/// Half of what a saturation temperature changes over the width of the pressure reading, K.
fn half_span(
    pressure: &Noted<Measured<Pressure>>,
    absolute: f64,
    temperature: impl Fn(f64) -> Option<f64>,
) -> Option<f64> {
    let half = half_width(pressure);
    let (low, high) = (temperature(absolute - half)?, temperature(absolute + half)?);
    Some((high - low) / 2.0)
}

fn saturation(
    working: &mut Working,
    symbol: &'static str,
    kelvin: f64,
    half: Option<f64>,
    refrigerant: &Refrigerant,
) {
    let source = refrigerant
        .saturation_source()
        .map_or("", |source| source.citation);
    working.input(
        symbol,
        Value::Computed {
            flavour: Flavour::Temperature,
            si: kelvin,
            uncertainty: half,
        },
        Origin::Table(
            Message::of("origin-saturation")
                .with("refrigerant", refrigerant.designation)
                .phrase("source", source)
                .into(),
        ),
    );
}

fn glide(working: &mut Working, refrigerant: &Refrigerant, pressure_pa: f64) {
    let (Some(dew), Some(bubble)) = (
        refrigerant.dew_temperature_k(pressure_pa),
        refrigerant.bubble_temperature_k(pressure_pa),
    ) else {
        return;
    };
    if dew - bubble > 0.3 {
        working.note(
            Message::of("note-glide")
                .with("refrigerant", refrigerant.designation)
                .figure("glide", crate::working::rounded(dew - bubble, 1)),
        );
    }
}

fn difference<T>(kelvin: f64, half: Option<f64>, temperature: &Noted<Measured<T>>) -> Value {
    Value::Computed {
        flavour: Flavour::TemperatureDifference,
        si: kelvin,
        uncertainty: half.map(|half| half.hypot(half_width(temperature))),
    }
}
