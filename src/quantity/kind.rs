//! What a place in the notes expects, and the forms a value of each kind can take.

/// What a place in the notes expects.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// Gauge or absolute, and the text says which.
    Pressure,
    /// Gauge only: the most a plate allows, the range of a gauge.
    GaugePressure,
    /// A vacuum reading, absolute by nature.
    VacuumPressure,
    /// Absolute only: a barometer.
    AbsolutePressure,
    /// How much two pressures differ.
    PressureDifference,
    /// A temperature.
    Temperature,
    /// Superheat, subcooling, glide.
    TemperatureDifference,
    /// A mass.
    Mass,
    /// A volume.
    Volume,
    /// A length or an altitude.
    Length,
    /// An area.
    Area,
    /// A length of time.
    Duration,
    /// A leak rate, by mass or by throughput.
    LeakRate,
    /// A leak rate by pressure times volume per time only.
    Throughput,
    /// Gas in air.
    Concentration,
    /// A tightening torque.
    Torque,
    /// An electric current.
    Current,
    /// A power.
    Power,
    /// A percentage.
    Fraction,
}

/// The one form a value has: its SI unit and the units it can be printed in follow from it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Flavour {
    /// Pa above the atmosphere.
    GaugePressure,
    /// Pa above vacuum.
    AbsolutePressure,
    /// Pa above vacuum, printed in the small units of a vacuum gauge.
    VacuumPressure,
    /// Pa.
    PressureDifference,
    /// K.
    Temperature,
    /// K.
    TemperatureDifference,
    /// kg.
    Mass,
    /// m³.
    Volume,
    /// m.
    Length,
    /// m².
    Area,
    /// s.
    Duration,
    /// kg/s.
    MassRate,
    /// Pa m³/s.
    Throughput,
    /// kg/m³.
    MassPerVolume,
    /// Volume fraction.
    Parts,
    /// Part of the lower flammable limit.
    OfLowerFlammableLimit,
    /// N m.
    Torque,
    /// A.
    Current,
    /// W.
    Power,
    /// 0 to 1.
    Fraction,
}

impl Kind {
    /// The kind in words with its article, as in "a pressure (gauge or absolute)".
    pub const fn describe(self) -> &'static str {
        match self {
            Self::Pressure => "a pressure (gauge or absolute)",
            Self::GaugePressure => "a gauge pressure",
            Self::VacuumPressure => "a vacuum reading (absolute)",
            Self::AbsolutePressure => "an absolute pressure",
            Self::PressureDifference => "a pressure difference",
            Self::Temperature => "a temperature",
            Self::TemperatureDifference => "a temperature difference",
            Self::Mass => "a mass",
            Self::Volume => "a volume",
            Self::Length => "a length",
            Self::Area => "an area",
            Self::Duration => "a length of time",
            Self::LeakRate => "a leak rate",
            Self::Throughput => "a leak rate as pressure times volume per time",
            Self::Concentration => "a concentration in air",
            Self::Torque => "a torque",
            Self::Current => "an electric current",
            Self::Power => "a power",
            Self::Fraction => "a percentage",
        }
    }

    /// A text of this kind that reads.
    pub const fn example(self) -> &'static str {
        match self {
            Self::Pressure | Self::GaugePressure => "24.8 bar g",
            Self::VacuumPressure => "500 micron",
            Self::AbsolutePressure => "1009 mbar a",
            Self::PressureDifference => "0.4 bar",
            Self::Temperature => "-12.5 °C",
            Self::TemperatureDifference => "6.2 K",
            Self::Mass => "9.45 kg",
            Self::Volume => "31 ± 3 L",
            Self::Length => "1.4 m",
            Self::Area => "42 m2",
            Self::Duration => "35 min",
            Self::LeakRate => "14 g/yr",
            Self::Throughput => "1e-4 Pa m3/s",
            Self::Concentration => "500 ppm",
            Self::Torque => "60 N m",
            Self::Current => "11.2 A",
            Self::Power => "30 kW",
            Self::Fraction => "60 %",
        }
    }

    /// The forms a value of this kind can have.
    pub const fn flavours(self) -> &'static [Flavour] {
        match self {
            Self::Pressure => &[Flavour::GaugePressure, Flavour::AbsolutePressure],
            Self::GaugePressure => &[Flavour::GaugePressure],
            Self::VacuumPressure => &[Flavour::VacuumPressure],
            Self::AbsolutePressure => &[Flavour::AbsolutePressure],
            Self::PressureDifference => &[Flavour::PressureDifference],
            Self::Temperature => &[Flavour::Temperature],
            Self::TemperatureDifference => &[Flavour::TemperatureDifference],
            Self::Mass => &[Flavour::Mass],
            Self::Volume => &[Flavour::Volume],
            Self::Length => &[Flavour::Length],
            Self::Area => &[Flavour::Area],
            Self::Duration => &[Flavour::Duration],
            Self::LeakRate => &[Flavour::MassRate, Flavour::Throughput],
            Self::Throughput => &[Flavour::Throughput],
            Self::Concentration => &[
                Flavour::MassPerVolume,
                Flavour::Parts,
                Flavour::OfLowerFlammableLimit,
            ],
            Self::Torque => &[Flavour::Torque],
            Self::Current => &[Flavour::Current],
            Self::Power => &[Flavour::Power],
            Self::Fraction => &[Flavour::Fraction],
        }
    }

    /// The units a technician most likely means who wrote none.
    pub(super) const fn likely_units(self) -> &'static [&'static str] {
        match self {
            Self::Pressure | Self::GaugePressure => &["bar g", "psig"],
            Self::VacuumPressure => &["micron", "Pa"],
            Self::AbsolutePressure => &["mbar a", "psia"],
            Self::PressureDifference => &["bar", "psi"],
            Self::Temperature => &["°C", "°F"],
            Self::TemperatureDifference => &["K", "Δ°F"],
            Self::Mass => &["kg", "lb"],
            Self::Volume => &["L", "ft³"],
            Self::Length => &["m", "mm", "ft", "in"],
            Self::Area => &["m²", "ft²"],
            Self::Duration => &["min", "h"],
            Self::LeakRate => &["g/yr", "oz/yr"],
            Self::Throughput => &["Pa m³/s", "mbar L/s"],
            Self::Concentration => &["ppm", "% LFL"],
            Self::Torque => &["N m", "lbf ft"],
            Self::Current => &["A"],
            Self::Power => &["kW", "TR"],
            Self::Fraction => &["%"],
        }
    }

    /// Every kind, in the order a text of unknown kind is tried.
    pub const ALL: [Self; 19] = [
        Self::Pressure,
        Self::GaugePressure,
        Self::VacuumPressure,
        Self::AbsolutePressure,
        Self::PressureDifference,
        Self::Temperature,
        Self::TemperatureDifference,
        Self::Mass,
        Self::Volume,
        Self::Length,
        Self::Area,
        Self::Duration,
        Self::LeakRate,
        Self::Throughput,
        Self::Concentration,
        Self::Torque,
        Self::Current,
        Self::Power,
        Self::Fraction,
    ];
}

impl Flavour {
    /// The form in words with its article.
    pub const fn describe(self) -> &'static str {
        match self {
            Self::GaugePressure => "a gauge pressure",
            Self::AbsolutePressure => "an absolute pressure",
            Self::VacuumPressure => "a vacuum reading",
            Self::PressureDifference => "a pressure difference",
            Self::Temperature => "a temperature",
            Self::TemperatureDifference => "a temperature difference",
            Self::Mass => "a mass",
            Self::Volume => "a volume",
            Self::Length => "a length",
            Self::Area => "an area",
            Self::Duration => "a length of time",
            Self::MassRate => "a mass per time",
            Self::Throughput => "a pressure times volume per time",
            Self::MassPerVolume => "a mass per volume",
            Self::Parts => "a concentration by volume",
            Self::OfLowerFlammableLimit => "a part of the lower flammable limit",
            Self::Torque => "a torque",
            Self::Current => "an electric current",
            Self::Power => "a power",
            Self::Fraction => "a percentage",
        }
    }

    /// The flavour under which its units stand in the table: all pressures share one set.
    pub(super) const fn base(self) -> Self {
        match self {
            Self::GaugePressure | Self::AbsolutePressure | Self::VacuumPressure => {
                Self::PressureDifference
            }
            other => other,
        }
    }

    /// The least value that can be true, in SI, for flavours that have one.
    ///
    /// A gauge cannot show less than a perfect vacuum under the highest atmosphere on record,
    /// rounded up (1085 hPa; from memory).
    pub(super) const fn least(self) -> Option<f64> {
        match self {
            Self::GaugePressure => Some(-110_000.0),
            Self::PressureDifference | Self::TemperatureDifference | Self::Length => None,
            _ => Some(0.0),
        }
    }
}

/// The range in SI that a value of this flavour stays within on nearly every job (common practice).
///
/// For a caution, never a refusal. None where no range is worth stating.
pub const fn plausible(flavour: Flavour) -> Option<(f64, f64)> {
    const GRAMS_PER_YEAR: f64 = 1e-3 / 31_536_000.0;
    match flavour {
        // From deep vacuum to a strength test on a transcritical CO2 plant.
        Flavour::GaugePressure => Some((-101_325.0, 2.0e7)),
        Flavour::AbsolutePressure | Flavour::Power => Some((0.0, 2.0e7)),
        Flavour::VacuumPressure => Some((0.1, 110_000.0)),
        Flavour::PressureDifference => Some((-1.0e7, 1.0e7)),
        // -100 °C to 200 °C: cascade suction to discharge gas.
        Flavour::Temperature => Some((173.15, 473.15)),
        Flavour::TemperatureDifference => Some((-60.0, 120.0)),
        Flavour::Mass => Some((0.0, 20_000.0)),
        Flavour::Volume | Flavour::Area => Some((1.0e-6, 100_000.0)),
        Flavour::Length => Some((-430.0, 6_000.0)),
        Flavour::Duration => Some((1.0, 90.0 * 86_400.0)),
        Flavour::MassRate => Some((0.1 * GRAMS_PER_YEAR, 1.0e8 * GRAMS_PER_YEAR)),
        Flavour::Throughput => Some((1.0e-12, 100.0)),
        Flavour::MassPerVolume => Some((0.0, 5.0)),
        Flavour::OfLowerFlammableLimit => Some((0.0, 2.0)),
        Flavour::Torque => Some((1.0, 2_000.0)),
        Flavour::Current => Some((0.0, 3_000.0)),
        Flavour::Parts | Flavour::Fraction => None,
    }
}
