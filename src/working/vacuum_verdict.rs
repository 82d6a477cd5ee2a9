//! What a vacuum test shows about a leak, and the words for it: one table.

/// What a vacuum test shows about a leak.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shown {
    /// Nothing larger than the upper bound, and the vacuum was kept.
    NothingLarger,
    /// Nothing larger than the upper bound, but the vacuum was not kept.
    NothingLargerAboveHold,
    /// It rises as air coming in does.
    Leak,
    /// It levels off above the hold.
    Moisture,
    /// It levels off above the vapour pressure of water.
    LevelsAboveWater,
    /// It bends, and not enough.
    Bending,
    /// It rises now faster, now slower.
    Uneven,
    /// The readings are too coarse for the limit.
    Coarse,
    /// Without the volume no size; it does not level off.
    NoSize,
    /// No more than whether the limit was met.
    AcceptanceOnly,
}

/// The words for a verdict; `{upper}` and `{lower}` stand for the bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Words {
    /// What was shown.
    pub says: &'static str,
    /// The same where there is no volume and so no bound.
    pub without_bound: &'static str,
    /// What would settle it; empty where nothing is open.
    pub settles: &'static str,
}

const SECOND_FACT: &str = "A rise by itself does not prove a leak. What would settle it: a pressure test with nitrogen and bubbles, or pumping for an hour more and a second rise; if the last third rises as fast again, it is air coming in, if slower, it is gas given off.";
const DRY: &str = "What would settle it: break the vacuum with dry nitrogen, change the drier, pump again until it holds, and repeat the rise. A wet system hides a leak, so this is no clearance.";

impl Shown {
    /// Its words.
    pub fn words(self) -> Words {
        let (says, without_bound, settles) = match self {
            Shown::NothingLarger => ("Nothing larger than {upper} was shown.", "", ""),
            Shown::NothingLargerAboveHold => (
                "Nothing larger than {upper} was shown, but the vacuum was not kept: moisture, gas out of the oil, or not pumped deep enough.",
                "",
                DRY,
            ),
            Shown::Leak => (
                "It rises in a straight line, as air coming in does: between {lower} and {upper}.",
                "",
                SECOND_FACT,
            ),
            Shown::Moisture => (
                "It levels off, as moisture and gas out of the oil do; a leak up to {upper} may hide in it. Dry and repeat.",
                "It levels off, as moisture and gas out of the oil do; without the volume no leak size can be given. Dry and repeat.",
                DRY,
            ),
            Shown::LevelsAboveWater => (
                "It levels off above what water can reach at this temperature: not water alone, but refrigerant out of the oil, or air; a leak up to {upper} may hide in it.",
                "It levels off above what water can reach at this temperature: not water alone, but refrigerant out of the oil, or air.",
                "What would settle it: pump again with the oil warm, repeat the rise, and prove the joints under pressure with nitrogen and bubbles.",
            ),
            Shown::Bending => (
                "The test does not decide: it rises slower and slower, and gas given off cannot be told from a leak of up to {upper}.",
                "",
                SECOND_FACT,
            ),
            Shown::Uneven => (
                "The test does not decide: it rises now faster, now slower, which a steady leak does not do; up to {upper} remains possible.",
                "",
                "What would settle it: pump again, keep valves, hoses and temperature as they are, and repeat the rise. A pressure test with nitrogen shows a leak that comes and goes if it is open at that time.",
            ),
            Shown::Coarse => (
                "The test does not decide: up to {upper} remains possible, more than the limit asked for.",
                "",
                "What would settle it: a longer rise, a finer gauge, or a smaller part of the circuit; or a pressure test with nitrogen and bubbles.",
            ),
            Shown::NoSize => (
                "",
                "It does not level off; without the volume no leak size can be given.",
                "What would settle it: note the volume under test, or prove the joints under pressure with nitrogen and bubbles.",
            ),
            Shown::AcceptanceOnly => ("", "About a leak it shows no more than that.", ""),
        };
        Words {
            says,
            without_bound,
            settles,
        }
    }
}
