//! What a pressure test shows, and the words for it.

use crate::job::{PressureReading, PressureTest};
use crate::text::Message;
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
    /// Messages of the sentence, and of a few words for a line.
    const fn ids(self) -> (&'static str, &'static str) {
        match self {
            HoldVerdict::NothingLarger => ("hold-nothing-larger", "hold-nothing-larger-short"),
            HoldVerdict::Leak => ("hold-leak", "hold-leak-short"),
            HoldVerdict::Inconclusive => ("hold-inconclusive", "hold-inconclusive-short"),
            HoldVerdict::HeldNoSize => ("hold-no-size", "hold-no-size-short"),
            HoldVerdict::Strength => ("hold-strength", "hold-strength-short"),
        }
    }

    /// The verdict as a sentence, with the largest leak left possible as printed.
    pub fn sentence(self, size: &str) -> Message {
        Message::of(self.ids().0).figure("size", size)
    }

    /// The verdict in a few words, with the largest leak left possible as printed.
    pub fn short(self, size: &str) -> Message {
        Message::of(self.ids().1).figure("size", size)
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
    reasons: &mut Vec<Message>,
) -> HoldVerdict {
    let strength = |purpose| purpose == PressureTestPurpose::Strength;
    if test.note.purpose.is_some_and(|noted| strength(noted.value)) {
        return HoldVerdict::Strength;
    }
    let Some((lost, u_lost)) = change else {
        return HoldVerdict::Inconclusive;
    };
    if !is_steady(test) {
        reasons.push(Message::of("hold-reason-unsteady"));
        reasons.push(Message::of("hold-settle-unsteady"));
        return HoldVerdict::Inconclusive;
    }
    let limit = test.note.leak_limit.map(|limit| limit.value.value.si());
    let (lost, u, limit) = match leak {
        Some((leak, u_leak)) => (leak, u_leak, limit),
        None => (lost, u_lost, None),
    };
    if lost < -u {
        reasons.push(Message::of("hold-reason-rose"));
        return HoldVerdict::Inconclusive;
    }
    if leak.is_none() {
        reasons.push(Message::of("hold-reason-no-volume"));
    }
    match limit {
        Some(limit) if lost - u > limit / 3.0 => HoldVerdict::Leak,
        None if lost - u > 0.0 => HoldVerdict::Leak,
        None if leak.is_none() => HoldVerdict::HeldNoSize,
        None => HoldVerdict::NothingLarger,
        Some(limit) if lost.max(0.0) + u < limit => HoldVerdict::NothingLarger,
        Some(limit) => {
            reasons.push(Message::of(if u > limit / 2.0 {
                "hold-reason-coarse"
            } else {
                "hold-reason-near"
            }));
            HoldVerdict::Inconclusive
        }
    }
}
