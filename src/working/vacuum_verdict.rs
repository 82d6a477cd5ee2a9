//! What a vacuum test shows about a leak, and the messages for it: one table.

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

impl Shown {
    /// The message of what was shown, which takes the bounds `upper` and `lower`, and `none` for `upper`
    /// where there is no volume.
    pub const fn sentence(self) -> &'static str {
        match self {
            Shown::NothingLarger => "vacuum-nothing-larger",
            Shown::NothingLargerAboveHold => "vacuum-nothing-larger-above-hold",
            Shown::Leak => "vacuum-leak",
            Shown::Moisture => "vacuum-moisture",
            Shown::LevelsAboveWater => "vacuum-levels-above-water",
            Shown::Bending => "vacuum-bending",
            Shown::Uneven => "vacuum-uneven",
            Shown::Coarse => "vacuum-coarse",
            Shown::NoSize => "vacuum-no-size",
            Shown::AcceptanceOnly => "vacuum-acceptance-only",
        }
    }

    /// The message of what would settle it; `None` where nothing is open.
    pub const fn settles(self) -> Option<&'static str> {
        match self {
            Shown::NothingLarger | Shown::AcceptanceOnly => None,
            Shown::Leak | Shown::Bending => Some("vacuum-settle-second-fact"),
            Shown::NothingLargerAboveHold | Shown::Moisture => Some("vacuum-settle-dry"),
            Shown::LevelsAboveWater => Some("vacuum-settle-above-water"),
            Shown::Uneven => Some("vacuum-settle-uneven"),
            Shown::Coarse => Some("vacuum-settle-coarse"),
            Shown::NoSize => Some("vacuum-settle-no-size"),
        }
    }
}
