//! Gauge, absolute and difference: three kinds of pressure that are never mixed by accident.

use super::kind::{Flavour, Kind};
use super::measured::{Quantity, newtype};

newtype! {
    /// A pressure above (or below) the atmosphere around the gauge, in pascals.
    GaugePressure
}
newtype! {
    /// A pressure above nothing at all, in pascals.
    AbsolutePressure
}
newtype! {
    /// How much two pressures differ, in pascals.
    PressureDifference
}
newtype! {
    /// A pressure in a vacuum test, absolute by nature, in pascals.
    VacuumPressure
}

impl GaugePressure {
    /// The absolute pressure, under the given atmosphere.
    pub const fn absolute(self, atmosphere: AbsolutePressure) -> AbsolutePressure {
        AbsolutePressure::new(self.si() + atmosphere.si())
    }
}

impl AbsolutePressure {
    /// What a gauge shows, under the given atmosphere.
    pub const fn gauge(self, atmosphere: AbsolutePressure) -> GaugePressure {
        GaugePressure::new(self.si() - atmosphere.si())
    }
}

impl VacuumPressure {
    /// The same pressure as a plain absolute one.
    pub const fn absolute(self) -> AbsolutePressure {
        AbsolutePressure::new(self.si())
    }
}

/// A pressure as it was written: gauge or absolute.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub enum Pressure {
    /// Above the atmosphere.
    Gauge(GaugePressure),
    /// Above vacuum.
    Absolute(AbsolutePressure),
}

impl Pressure {
    /// The absolute pressure, under the given atmosphere.
    pub const fn absolute(self, atmosphere: AbsolutePressure) -> AbsolutePressure {
        match self {
            Self::Gauge(gauge) => gauge.absolute(atmosphere),
            Self::Absolute(absolute) => absolute,
        }
    }

    /// The gauge pressure, under the given atmosphere.
    pub const fn gauge(self, atmosphere: AbsolutePressure) -> GaugePressure {
        match self {
            Self::Gauge(gauge) => gauge,
            Self::Absolute(absolute) => absolute.gauge(atmosphere),
        }
    }
}

impl Quantity for Pressure {
    const KIND: Kind = Kind::Pressure;

    fn flavour(self) -> Flavour {
        match self {
            Self::Gauge(_) => Flavour::GaugePressure,
            Self::Absolute(_) => Flavour::AbsolutePressure,
        }
    }

    fn si(self) -> f64 {
        match self {
            Self::Gauge(gauge) => gauge.si(),
            Self::Absolute(absolute) => absolute.si(),
        }
    }

    fn from_si(flavour: Flavour, si: f64) -> Option<Self> {
        match flavour {
            Flavour::GaugePressure => Some(Self::Gauge(GaugePressure::new(si))),
            Flavour::AbsolutePressure => Some(Self::Absolute(AbsolutePressure::new(si))),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gauge_and_absolute_differ_by_the_atmosphere_given() {
        let atmosphere = AbsolutePressure::new(100_900.0);
        let gauge = Pressure::Gauge(GaugePressure::new(2_750_000.0));
        assert_eq!(gauge.absolute(atmosphere).si(), 2_850_900.0);
        let absolute = Pressure::Absolute(gauge.absolute(atmosphere));
        assert_eq!(absolute.gauge(atmosphere).si(), 2_750_000.0);
        assert_eq!(gauge.gauge(atmosphere).si(), 2_750_000.0);
        assert_eq!(absolute.absolute(atmosphere).si(), 2_850_900.0);
    }
}
