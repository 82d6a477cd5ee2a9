//! Whether water alone can have made a rise: not above its vapour pressure at the warmest part.

use crate::job::{VacuumTest, Visit};
use crate::quantity::{Flavour, Measured, Reading, Temperature};
use crate::refrigerant::water_vapour_pressure_pa;
use crate::text::{Message, Noted};
use crate::working::working::{Figure, Method, Value, Working};

/// Vapour pressure of water at the warmest part.
pub static WATER: Method = Method {
    id: "vapour-pressure-of-water",
    name: "Vapour pressure of water at the warmest part",
    formula: "p_water = saturation pressure of water (ice below 0 °C) at T",
    mathematics: "p_\"water\" = p_\"sat\" (T)",
    source: "IAPWS SR1-86(1992) over liquid, IAPWS R14-08(2011) over ice",
};

/// Share by which a reading must be above it, for what a vacuum gauge may be out.
const GAUGE: f64 = 0.10;

/// The temperature that water in the system cannot pass: the warmest pipe, else the air of the day.
pub fn warmest(test: &VacuumTest, visit: &Visit) -> Option<Noted<Measured<Temperature>>> {
    let ambient = visit.note.as_ref().and_then(|note| note.ambient);
    test.note.warmest_pipe.or(ambient)
}

/// The highest pressure that water alone can reach, as a figure; `None` where no temperature is noted.
pub fn water_limit(test: &VacuumTest, visit: &Visit) -> Option<Figure> {
    let temperature = warmest(test, visit)?;
    let id = format!("vacuum-test/{}/water", test.id);
    let mut working = Working::of(&WATER, id, Message::of("water-title"));
    let kelvin = working.take("T", &temperature);
    let si = water_vapour_pressure_pa(kelvin)?;
    if test.note.warmest_pipe.is_none() {
        working.note(Message::of("water-note-air"));
    }
    // In the unit of the limit, or of the readings: beside them it is read.
    let beside = test.note.accept_below.unwrap_or(test.start.pressure);
    // Three digits.
    let digits = (si / beside.value.step).log10().floor() - 2.0;
    let step = beside.value.step * 10f64.powf(digits.max(0.0));
    Some(working.finish(Value::Written(Reading {
        flavour: Flavour::VacuumPressure,
        si,
        uncertainty: None,
        step,
        unit: beside.value.unit,
    })))
}

/// Whether a test ended above what water alone can reach.
pub fn above_water(test: &VacuumTest, limit: Option<&Figure>) -> bool {
    let end = test.end.pressure.value.value.si();
    limit.is_some_and(|limit| end > limit.value.number() * (1.0 + GAUGE))
}

#[cfg(test)]
mod tests {
    use crate::refrigerant::water_vapour_pressure_pa;

    #[test]
    fn a_cold_system_is_held_against_ice() {
        // Sublimation pressures in micron by IAPWS R14-08(2011), computed apart from this program.
        for (celsius, micron) in [(-5.0, 3013.0), (-10.0, 1949.0), (-20.0, 774.0)] {
            let pressure = water_vapour_pressure_pa(273.15 + celsius).unwrap();
            assert!((pressure / 0.133_322_37 - micron).abs() < 1.0, "{celsius}");
        }
    }
}
