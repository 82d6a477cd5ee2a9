//! Words for ways of finding and proving a leak, with the properties that grades and cautions read.

use crate::vocabulary::word::Word;

/// A way of finding or proving a leak.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MethodWord {
    /// Looking.
    Visual,
    /// Oil where none belongs.
    Oil,
    /// Ice or frost where none belongs.
    Ice,
    /// Corrosion.
    Corrosion,
    /// A hiss, by ear.
    Sound,
    /// A level, pressure, temperature or current that is off.
    Parameter,
    /// A break or hole that was seen.
    Break,
    /// A jet that was seen, heard or felt.
    Jet,
    /// Electronic leak detector.
    Electronic,
    /// Bubble solution.
    Bubbles,
    /// Tracer gas and its detector.
    Tracer,
    /// Ultrasonic detector.
    Ultrasonic,
    /// Fluorescent dye.
    Dye,
    /// Wet litmus, for ammonia.
    Litmus,
    /// Halide torch.
    Halide,
    /// Pressure test.
    PressureTest,
    /// Vacuum test.
    VacuumTest,
}

impl Word for MethodWord {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("visual", MethodWord::Visual, "looking"),
        ("oil", MethodWord::Oil, "oil where none belongs"),
        ("ice", MethodWord::Ice, "ice or frost where none belongs"),
        ("corrosion", MethodWord::Corrosion, "corrosion"),
        ("sound", MethodWord::Sound, "a hiss, by ear"),
        (
            "parameter",
            MethodWord::Parameter,
            "a level, pressure, temperature or current that is off",
        ),
        (
            "break",
            MethodWord::Break,
            "a break or a hole that was seen",
        ),
        (
            "jet",
            MethodWord::Jet,
            "a jet of gas or oil that was seen, heard or felt",
        ),
        (
            "electronic",
            MethodWord::Electronic,
            "electronic leak detector",
        ),
        ("bubbles", MethodWord::Bubbles, "bubble solution"),
        ("tracer", MethodWord::Tracer, "tracer gas with its detector"),
        ("ultrasonic", MethodWord::Ultrasonic, "ultrasonic detector"),
        ("dye", MethodWord::Dye, "fluorescent dye under its lamp"),
        (
            "litmus",
            MethodWord::Litmus,
            "wet litmus paper, for ammonia",
        ),
        (
            "halide",
            MethodWord::Halide,
            "halide torch, only for refrigerants with chlorine",
        ),
        (
            "pressure test",
            MethodWord::PressureTest,
            "pressure held by a gas; shows that, not where",
        ),
        (
            "vacuum test",
            MethodWord::VacuumTest,
            "rise of a vacuum; shows that, not where",
        ),
    ];
}

/// What a method can show by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shows {
    /// A sign that something may leak here.
    Sign,
    /// The place of a leak.
    Place,
    /// A leak beyond doubt.
    Evident,
    /// That the circuit leaks, not where.
    Whole,
}

impl MethodWord {
    /// What it can show by itself.
    ///
    /// Direct methods and indirect signs as Regulation (EC) 1516/2007, Articles 6 and 7, divides
    /// them; litmus, ultrasound and halide torch as direct: common practice. Pressure and vacuum
    /// tests cannot give the place: 40 CFR 82.152, "leak inspection".
    pub fn shows(self) -> Shows {
        match self {
            MethodWord::Visual
            | MethodWord::Oil
            | MethodWord::Ice
            | MethodWord::Corrosion
            | MethodWord::Parameter => Shows::Sign,
            MethodWord::Break | MethodWord::Jet => Shows::Evident,
            MethodWord::Sound
            | MethodWord::Electronic
            | MethodWord::Bubbles
            | MethodWord::Tracer
            | MethodWord::Ultrasonic
            | MethodWord::Dye
            | MethodWord::Litmus
            | MethodWord::Halide => Shows::Place,
            MethodWord::PressureTest | MethodWord::VacuumTest => Shows::Whole,
        }
    }

    /// Whether it can set fire to a flammable mixture: an open flame (common practice).
    pub fn can_ignite(self) -> bool {
        matches!(self, MethodWord::Halide)
    }

    /// Whether it makes a later look by the other method at the same point doubtful: solution
    /// closes small leaks and wets a sensor (common practice).
    pub fn spoils(self, later: MethodWord) -> bool {
        let sensors = [
            MethodWord::Electronic,
            MethodWord::Tracer,
            MethodWord::Halide,
        ];
        self == MethodWord::Bubbles && sensors.contains(&later)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn solution_before_a_sensor_spoils_it_and_not_the_other_way_round() {
        assert!(MethodWord::Bubbles.spoils(MethodWord::Electronic));
        assert!(!MethodWord::Electronic.spoils(MethodWord::Bubbles));
    }
}
