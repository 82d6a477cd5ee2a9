//! What a pressure test shows, and the words for it.

use crate::job::{PressureReading, PressureTest};
use crate::vocabulary::readings_file::PressureTestPurpose;

/// What a pressure test shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HoldVerdict {
    /// Nothing larger than the limit.
    NothingLarger,
    /// More was lost than temperature and readings explain.
    Leak,
    /// It does not decide.
    Inconclusive,
    /// The pressure held within its uncertainty; without a volume no size can be given.
    HeldNoSize,
    /// A strength test: it held the pressure.
    Strength,
}

impl HoldVerdict {
    /// The sentence, and a few words for a line; `{}` stands for the largest leak left possible.
    const fn words(self) -> (&'static str, &'static str) {
        match self {
            HoldVerdict::NothingLarger => (
                "Nothing larger than {} was shown.",
                "Nothing larger than {}",
            ),
            HoldVerdict::Leak => (
                "More pressure was lost than temperature and readings explain: it leaks.",
                "Pressure was lost",
            ),
            HoldVerdict::Inconclusive => ("The test does not decide.", "Not decided"),
            HoldVerdict::HeldNoSize => (
                "The pressure held within its uncertainty; no leak size can be stated without the volume.",
                "Pressure held; no size can be stated",
            ),
            HoldVerdict::Strength => (
                "Strength test: it says nothing about small leaks.",
                "Strength test only",
            ),
        }
    }

    /// The verdict as a sentence, with the largest leak left possible as printed.
    pub fn sentence(self, size: &str) -> String {
        self.words().0.replace("{}", size)
    }

    /// The verdict in a few words, with the largest leak left possible as printed.
    pub fn short(self, size: &str) -> String {
        self.words().1.replace("{}", size)
    }
}

/// Hours from which a test decides whatever the temperatures did.
const LONG_HOURS: f64 = 23.0;
/// Difference of start and end temperature up to which a shorter test decides, K (judgement, after
/// simulated tests).
const SAME_K: f64 = 2.0;

/// Whether a test went over a whole day's warmth and cold.
pub fn is_long(test: &PressureTest) -> bool {
    test.seconds() >= LONG_HOURS * 3600.0
}

/// Temperature of a reading, K.
pub fn temperature_k(reading: &PressureReading) -> Option<f64> {
    reading.temperature.map(|noted| noted.value.value.si())
}

/// Whether a test went over a whole day, or ended as warm as it began.
pub fn is_steady(test: &PressureTest) -> bool {
    let both = temperature_k(&test.start).zip(temperature_k(&test.end));
    is_long(test) || both.is_some_and(|(start, end)| (start - end).abs() <= SAME_K + 1e-9)
}

/// A loss or a leak with the half width of its uncertainty.
pub(super) type Interval = (f64, f64);

/// Judges a test by its change of pressure, Pa, and its leak, Pa m³/s; adds why it does not decide and
/// what would settle it.
pub(super) fn judge(
    test: &PressureTest,
    change: Option<Interval>,
    leak: Option<Interval>,
    reasons: &mut Vec<String>,
) -> HoldVerdict {
    let strength = |purpose| purpose == PressureTestPurpose::Strength;
    if test.note.purpose.is_some_and(|noted| strength(noted.value)) {
        return HoldVerdict::Strength;
    }
    let Some((lost, u_lost)) = change else {
        return HoldVerdict::Inconclusive;
    };
    if !is_steady(test) {
        reasons.push("The test was shorter than 23 hours and its start and end temperatures differ by more than 2 K: the gas may lag behind the pipe by more than a leak would show.".to_owned());
        reasons.push("To settle it: read again when the pipe is within 2 K of its temperature at the start, or log pressure and temperature for 23 hours or more.".to_owned());
        return HoldVerdict::Inconclusive;
    }
    let limit = test.note.leak_limit.map(|limit| limit.value.value.si());
    let (lost, u, limit) = match leak {
        Some((leak, u_leak)) => (leak, u_leak, limit),
        None => (lost, u_lost, None),
    };
    if lost < -u {
        reasons.push("The pressure rose by more than the readings explain; check the thermometer's place, and whether a valve let gas in.".to_owned());
        return HoldVerdict::Inconclusive;
    }
    if leak.is_none() {
        reasons.push("The volume under test is not noted, so that no leak size can be stated; add it to the register or to the test.".to_owned());
    }
    match limit {
        Some(limit) if lost - u > limit / 3.0 => HoldVerdict::Leak,
        None if lost - u > 0.0 => HoldVerdict::Leak,
        None if leak.is_none() => HoldVerdict::HeldNoSize,
        None => HoldVerdict::NothingLarger,
        Some(limit) if lost.max(0.0) + u < limit => HoldVerdict::NothingLarger,
        Some(limit) => {
            reasons.push(
                if u > limit / 2.0 {
                    "What it could have shown is coarser than the limit asked for. To settle it: hold longer, at a steadier temperature, or test a smaller section."
                } else {
                    "The loss lies too near the limit asked for to call it either way. To settle it: repeat the test for longer, or go over the joints with bubbles or a detector."
                }
                .to_owned(),
            );
            HoldVerdict::Inconclusive
        }
    }
}
