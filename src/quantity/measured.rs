//! The quantities themselves, in SI, and a number as the technician wrote it.

use super::kind::{Flavour, Kind};

/// One physical quantity, held in SI.
pub trait Quantity: Copy + 'static {
    /// The kind of place in the notes that holds this quantity.
    const KIND: Kind;

    /// Which of its kind's forms this value has.
    fn flavour(self) -> Flavour;

    /// The value in the SI unit of its flavour.
    fn si(self) -> f64;

    /// The quantity with this SI value; none if the flavour is not one of its kind's.
    fn from_si(flavour: Flavour, si: f64) -> Option<Self>;
}

/// A number as the technician wrote it: value, uncertainty, the step of its last digit, its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured<T> {
    /// The quantity.
    pub value: T,
    /// Half width of the uncertainty as written, in SI, of the difference kind.
    pub uncertainty: Option<f64>,
    /// What one unit in the last written digit is worth, in SI, of the difference kind.
    pub step: f64,
    /// The unit as this project prints it.
    pub unit: &'static str,
}

impl<T> Measured<T> {
    /// The same written number, with its value seen as another type.
    pub fn map<U>(self, change: impl FnOnce(T) -> U) -> Measured<U> {
        Measured {
            value: change(self.value),
            uncertainty: self.uncertainty,
            step: self.step,
            unit: self.unit,
        }
    }
}

/// A text read for a kind that is known only at run time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Which form of its kind was written.
    pub flavour: Flavour,
    /// The value in SI.
    pub si: f64,
    /// As in [`Measured::uncertainty`].
    pub uncertainty: Option<f64>,
    /// As in [`Measured::step`].
    pub step: f64,
    /// As in [`Measured::unit`].
    pub unit: &'static str,
}

/// Defines a quantity that has one flavour, named as its kind and flavour are.
macro_rules! newtype {
    ($(#[$documentation:meta])* $name:ident) => {
        $(#[$documentation])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// The quantity with this value in its SI unit.
            pub const fn new(si: f64) -> Self {
                Self(si)
            }

            /// The value in its SI unit.
            pub const fn si(self) -> f64 {
                self.0
            }
        }

        impl Quantity for $name {
            const KIND: Kind = Kind::$name;

            fn flavour(self) -> Flavour {
                Flavour::$name
            }

            fn si(self) -> f64 {
                self.0
            }

            fn from_si(flavour: Flavour, si: f64) -> Option<Self> {
                (flavour == Flavour::$name).then_some(Self(si))
            }
        }
    };
}
pub(super) use newtype;

newtype! {
    /// A temperature, in kelvins.
    Temperature
}
newtype! {
    /// How much two temperatures differ, in kelvins.
    TemperatureDifference
}
newtype! {
    /// A mass, in kilograms.
    Mass
}
newtype! {
    /// A volume, in cubic metres.
    Volume
}
newtype! {
    /// A length, in metres; an altitude may be negative.
    Length
}
newtype! {
    /// An area, in square metres.
    Area
}
newtype! {
    /// A length of time, in seconds.
    Duration
}
newtype! {
    /// A gas flow as pressure times volume per time, in Pa m³/s.
    Throughput
}
newtype! {
    /// A tightening torque, in newton metres.
    Torque
}
newtype! {
    /// An electric current, in amperes.
    Current
}
newtype! {
    /// A power, in watts.
    Power
}
newtype! {
    /// A part of a whole, 0 to 1.
    Fraction
}

/// The size of a leak, by mass or by pV throughput.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub enum LeakRate {
    /// In kg/s; a year is 365 days.
    Mass(f64),
    /// In Pa m³/s; the gas and its temperature are said elsewhere, see
    /// [`reference_temperature`](super::reference_temperature).
    Throughput(f64),
}

impl Quantity for LeakRate {
    const KIND: Kind = Kind::LeakRate;

    fn flavour(self) -> Flavour {
        match self {
            Self::Mass(_) => Flavour::MassRate,
            Self::Throughput(_) => Flavour::Throughput,
        }
    }

    fn si(self) -> f64 {
        match self {
            Self::Mass(si) | Self::Throughput(si) => si,
        }
    }

    fn from_si(flavour: Flavour, si: f64) -> Option<Self> {
        match flavour {
            Flavour::MassRate => Some(Self::Mass(si)),
            Flavour::Throughput => Some(Self::Throughput(si)),
            _ => None,
        }
    }
}

/// How much gas is in the air.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub enum Concentration {
    /// In kg/m³.
    MassPerVolume(f64),
    /// Volume of gas per volume of air, 0 to 1.
    Parts(f64),
    /// Part of the lower flammable limit, 1 being the limit itself.
    OfLowerFlammableLimit(f64),
}

impl Quantity for Concentration {
    const KIND: Kind = Kind::Concentration;

    fn flavour(self) -> Flavour {
        match self {
            Self::MassPerVolume(_) => Flavour::MassPerVolume,
            Self::Parts(_) => Flavour::Parts,
            Self::OfLowerFlammableLimit(_) => Flavour::OfLowerFlammableLimit,
        }
    }

    fn si(self) -> f64 {
        match self {
            Self::MassPerVolume(si) | Self::Parts(si) | Self::OfLowerFlammableLimit(si) => si,
        }
    }

    fn from_si(flavour: Flavour, si: f64) -> Option<Self> {
        match flavour {
            Flavour::MassPerVolume => Some(Self::MassPerVolume(si)),
            Flavour::Parts => Some(Self::Parts(si)),
            Flavour::OfLowerFlammableLimit => Some(Self::OfLowerFlammableLimit(si)),
            _ => None,
        }
    }
}
