//! Keys of `refrigerant.toml`: every movement of refrigerant.

use crate::quantity::{Fraction, Mass, Measured};
use crate::vocabulary::book_file::PRIVATE;
use crate::vocabulary::key::{Entry, Form, Identifier, Key, Table};
use crate::vocabulary::value::{Designation, LocalTime, TableMark};
use crate::vocabulary::word::Word;

/// Which way refrigerant moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MovementKind {
    /// From a cylinder into the system.
    Charged,
    /// From the system into a cylinder.
    Recovered,
    /// Out through a relief valve.
    ReliefLifted,
    /// Out through a purger or with air.
    Purged,
    /// Let out.
    Vented,
    /// Lost in hoses and couplings during work.
    LostInService,
}

impl Word for MovementKind {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "charged",
            MovementKind::Charged,
            "from a cylinder into the system",
        ),
        (
            "recovered",
            MovementKind::Recovered,
            "from the system into a cylinder",
        ),
        (
            "relief lifted",
            MovementKind::ReliefLifted,
            "out through a relief valve",
        ),
        (
            "purged",
            MovementKind::Purged,
            "out through a purger or with air",
        ),
        ("vented", MovementKind::Vented, "let out"),
        (
            "lost in service",
            MovementKind::LostInService,
            "lost in hoses and couplings during work",
        ),
    ];
}

/// Why it moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MovementWhy {
    /// First charge.
    Installation,
    /// To open the system for a repair.
    Repair,
    /// Charge after a repair.
    Recharge,
    /// Added because some was missing.
    TopUp,
    /// Taken out or put back for the season.
    Seasonal,
    /// Change to another refrigerant.
    Retrofit,
    /// Other service work.
    Service,
    /// Taking out of use.
    Decommissioning,
}

impl Word for MovementWhy {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("installation", MovementWhy::Installation, "first charge"),
        (
            "repair",
            MovementWhy::Repair,
            "to open the system for a repair",
        ),
        ("recharge", MovementWhy::Recharge, "charge after a repair"),
        (
            "top-up",
            MovementWhy::TopUp,
            "added because some was missing",
        ),
        ("leak", MovementWhy::TopUp, "added because some was missing"),
        (
            "seasonal",
            MovementWhy::Seasonal,
            "taken out or put back for the season",
        ),
        (
            "retrofit",
            MovementWhy::Retrofit,
            "change to another refrigerant",
        ),
        ("service", MovementWhy::Service, "other service work"),
        (
            "decommissioning",
            MovementWhy::Decommissioning,
            "taking out of use",
        ),
    ];
}

/// How a mass was determined without two scale readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MassHow {
    /// On a scale, difference noted.
    Weighed,
    /// By the label of a cylinder emptied or filled.
    CylinderLabel,
    /// Estimated.
    Estimated,
}

impl Word for MassHow {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        ("weighed", MassHow::Weighed, "on a scale, difference noted"),
        (
            "cylinder label",
            MassHow::CylinderLabel,
            "by the label of a cylinder emptied or filled",
        ),
        ("estimated", MassHow::Estimated, "estimated"),
    ];
}

/// How far it was charged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChargedTo {
    /// To the full charge by weight.
    FullByWeight,
    /// Until the sight glass cleared.
    FullBySightGlass,
    /// To the right subcooling.
    FullBySubcooling,
    /// Not to the full charge.
    Partial,
}

impl ChargedTo {
    /// Whether it was charged to the full charge, by whatever sign.
    pub fn is_full(self) -> bool {
        self != ChargedTo::Partial
    }
}

impl Word for ChargedTo {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "full by weight",
            ChargedTo::FullByWeight,
            "to the full charge by weight",
        ),
        (
            "full",
            ChargedTo::FullByWeight,
            "to the full charge by weight",
        ),
        (
            "full by sight glass",
            ChargedTo::FullBySightGlass,
            "until the sight glass cleared",
        ),
        (
            "full by subcooling",
            ChargedTo::FullBySubcooling,
            "to the right subcooling",
        ),
        ("partial", ChargedTo::Partial, "not to the full charge"),
    ];
}

/// Where recovered refrigerant goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Destination {
    /// Back into the same system.
    SameSystem,
    /// Kept in the cylinder.
    Held,
    /// To be recycled.
    Recycling,
    /// To a reclaimer.
    Reclaim,
    /// To be destroyed.
    Destruction,
}

impl Word for Destination {
    const WORDS: &'static [(&'static str, Self, &'static str)] = &[
        (
            "same system",
            Destination::SameSystem,
            "back into the same system",
        ),
        ("held", Destination::Held, "kept in the cylinder"),
        ("recycling", Destination::Recycling, "to be recycled"),
        ("reclaim", Destination::Reclaim, "to a reclaimer"),
        ("destruction", Destination::Destruction, "to be destroyed"),
    ];
}

/// Keys of `[[movement]]`.
pub mod movement {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const KIND: Key<MovementKind> =
        Key::word("kind", "Which way it moved.", "\"charged\"").required();
    pub const WHY: Key<MovementWhy> = Key::word("why", "Why.", "\"recharge\"");
    pub const CIRCUIT: Key<Identifier> =
        Key::id("circuit", "Which circuit, if there are several.", "\"a\"");
    pub const SECTION: Key<Identifier> = Key::id("section", "Which section.", "\"liquid-2\"");
    pub const AT: Key<LocalTime> =
        Key::new("at", Form::Time, "When it was done.", "2026-06-18T15:40").required();
    pub const BY: Key<Identifier> = Key::id("by", "Who did it.", "\"t2\"");
    pub const REFRIGERANT: Key<Designation> = Key::new(
        "refrigerant",
        Form::Refrigerant,
        "What moved, where no cylinder says it.",
        "\"R-449A\"",
    );
    pub const CYLINDER: Key<Identifier> = Key::id("cylinder", "Which cylinder.", "\"c-114\"");
    pub const SCALE: Key<Identifier> = Key::id("scale", "Which scale.", "\"s-1\"");
    pub const BEFORE: Key<Measured<Mass>> = Key::quantity(
        "before",
        "What the cylinder weighed before.",
        "\"26.30 kg\"",
    );
    pub const AFTER: Key<Measured<Mass>> = Key::quantity(
        "after",
        "What the cylinder weighed afterwards.",
        "\"16.85 kg\"",
    );
    pub const MASS: Key<Measured<Mass>> = Key::quantity(
        "mass",
        "How much moved, where it was not weighed before and after.",
        "\"9 ± 3 kg\"",
    );
    pub const HOW: Key<MassHow> =
        Key::word("how", "How that mass was determined.", "\"estimated\"");
    pub const DESTINATION: Key<Destination> = Key::word(
        "destination",
        "Where recovered refrigerant goes.",
        "\"same system\"",
    );
    pub const DESTROYED: Key<Measured<Fraction>> = Key::quantity(
        "destroyed",
        "Share of a purge that is destroyed; at 98 % or more it counts in no leak rate.",
        "\"98 %\"",
    );
    pub const CHARGED_TO: Key<ChargedTo> = Key::word(
        "charged-to",
        "How far it was charged.",
        "\"full by weight\"",
    );
    pub const NOTE: Key<String> = Key::text("note", "More about it.", "\"hoses pumped out first\"");
    const KEYS: &[Entry] = &[
        KIND.entry(),
        WHY.entry(),
        CIRCUIT.entry(),
        SECTION.entry(),
        AT.entry(),
        BY.entry(),
        REFRIGERANT.entry(),
        CYLINDER.entry(),
        SCALE.entry(),
        BEFORE.entry(),
        AFTER.entry(),
        MASS.entry(),
        HOW.entry(),
        DESTINATION.entry(),
        DESTROYED.entry(),
        CHARGED_TO.entry(),
        NOTE.entry(),
        PRIVATE.entry(),
    ];
    pub static TABLE: Table = Table {
        name: "movement",
        about: "One movement of refrigerant.",
        keys: KEYS,
    };
}

/// Keys of `the top of the file`.
pub mod top {
    #![expect(missing_docs, reason = "each key carries its line about it")]
    use super::*;

    pub const MOVEMENT: Key<Vec<TableMark>> = Key::new(
        "movement",
        Form::Tables(&super::movement::TABLE),
        "Movements.",
        "",
    );
    const KEYS: &[Entry] = &[MOVEMENT.entry(), PRIVATE.entry()];
    pub static TABLE: Table = Table {
        name: "",
        about: "Refrigerant in and out.",
        keys: KEYS,
    };
}
