//! Accuracy of an instrument as its register gives it: a share of the range, of the reading, or a quantity.

use crate::notes::InstrumentNote;
use crate::quantity::{Quantity, parse};
use crate::text::Noted;

/// Half width within which a reading is right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Accuracy {
    /// The part that is the same at every reading, SI.
    pub fixed: f64,
    /// The part that grows with the reading, as a share of it.
    pub share: f64,
}

impl Accuracy {
    /// The accuracy of an instrument for readings of a kind of quantity; `None` where the register
    /// does not give it, or not in a form that can be reckoned with.
    pub fn of<T: Quantity>(instrument: &InstrumentNote) -> Option<Noted<Self>> {
        let noted = instrument.accuracy.as_ref()?;
        let text = noted.value.trim().trim_start_matches(['±', ' ']);
        let accuracy = if let Some((number, of)) = text.split_once('%') {
            let share = number.trim().parse::<f64>().ok()? / 100.0;
            match of.trim() {
                "of range" => Self {
                    fixed: share * instrument.range?.value.si,
                    share: 0.0,
                },
                "of reading" => Self { fixed: 0.0, share },
                _ => return None,
            }
        } else {
            Self {
                fixed: parse::<T>(text).ok()?.value.si(),
                share: 0.0,
            }
        };
        (accuracy.fixed >= 0.0 && accuracy.share >= 0.0).then(|| Noted::new(accuracy, noted.span))
    }

    /// The half width at a reading, SI.
    pub fn half_width(self, reading: f64) -> f64 {
        self.fixed + self.share * reading.abs()
    }
}
