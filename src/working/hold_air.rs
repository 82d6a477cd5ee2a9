//! The pressure of the air around a gauge, as the readings of a pressure test need it.

use crate::job::{Atmosphere, Visit};
use crate::quantity::{Flavour, Measured, Pressure};
use crate::text::{Message, Noted};
use crate::working::hold_budget::{Budget, Cause, Contribution};
use crate::working::working::{Origin, Value, Working};

/// Half width of the change of the air pressure between two gauge readings, Pa.
const AIR_PA: f64 = 500.0;

/// The air around the gauge, and whether a working has taken it.
pub(super) struct Air<'v> {
    atmosphere: &'v Atmosphere,
    taken: bool,
}

impl<'v> Air<'v> {
    /// The air of a visit.
    pub(super) fn of(visit: &'v Visit) -> Self {
        Self {
            atmosphere: &visit.atmosphere,
            taken: false,
        }
    }

    /// Takes its pressure into a working, once, Pa.
    pub(super) fn take(&mut self, working: &mut Working) -> f64 {
        let air = self.atmosphere.pressure().si();
        if !self.taken {
            self.taken = true;
            let origin = match self.atmosphere {
                Atmosphere::Barometer(noted) => Origin::Note(noted.span),
                Atmosphere::Altitude(noted) => Origin::Note(noted.span),
                Atmosphere::Standard => {
                    Origin::Assumed("standard atmosphere, for want of a barometer or an altitude")
                }
            };
            let value = Value::Computed {
                flavour: Flavour::AbsolutePressure,
                si: air,
                uncertainty: None,
            };
            working.input("p_air", value, origin);
        }
        air
    }

    /// Absolute pressure of a reading, Pa, taken into a working with the air pressure it needs.
    pub(super) fn absolute(
        &mut self,
        working: &mut Working,
        symbol: &'static str,
        noted: &Noted<Measured<Pressure>>,
    ) -> f64 {
        working.take(symbol, noted);
        if matches!(noted.value.value, Pressure::Gauge(_)) {
            self.take(working);
        }
        noted.value.value.absolute(self.atmosphere.pressure()).si()
    }

    /// Adds what a change of the air between the readings of a gauge is worth, if it was needed.
    pub(super) fn contribute(&self, working: &mut Working, budget: &mut Budget) {
        if !self.taken {
            return;
        }
        let part = Contribution {
            cause: Cause::Air,
            what: Message::of("budget-air"),
            pascal: AIR_PA / 3f64.sqrt(),
            origin: Origin::Assumed(
                "the air pressure may have changed by 5 hPa between the readings",
            ),
        };
        budget.add(working, "u(air)", part);
    }
}
