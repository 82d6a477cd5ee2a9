//! Parts of a refrigeration circuit, told by the words of a register, and where each stands on the loop.

/// A part of a circuit, in the order in which refrigerant meets it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CircuitPart {
    /// Presses the vapour.
    Compressor,
    /// The line of hot vapour, and what stands in it.
    Discharge,
    /// Turns vapour to liquid.
    Condenser,
    /// Holds liquid.
    Receiver,
    /// Takes water out of the liquid.
    Drier,
    /// Shows the liquid.
    SightGlass,
    /// Shuts the liquid off.
    SolenoidValve,
    /// The line of liquid, and what else stands in it.
    LiquidLine,
    /// Lets liquid into the evaporator.
    ExpansionDevice,
    /// Boils the liquid.
    Evaporator,
    /// The line of cold vapour, and what stands in it.
    SuctionLine,
}

/// Words that name a part, the more particular first: the first that is found decides.
///
/// Common practice of the trade.
const WORDS: &[(&str, CircuitPart)] = &[
    ("suction", CircuitPart::SuctionLine),
    ("accumulator", CircuitPart::SuctionLine),
    ("discharge", CircuitPart::Discharge),
    ("hot gas", CircuitPart::Discharge),
    ("oil separator", CircuitPart::Discharge),
    ("expansion", CircuitPart::ExpansionDevice),
    ("txv", CircuitPart::ExpansionDevice),
    ("capillary", CircuitPart::ExpansionDevice),
    ("float valve", CircuitPart::ExpansionDevice),
    ("distributor", CircuitPart::ExpansionDevice),
    ("solenoid", CircuitPart::SolenoidValve),
    ("sight glass", CircuitPart::SightGlass),
    ("drier", CircuitPart::Drier),
    ("filter", CircuitPart::Drier),
    ("compressor", CircuitPart::Compressor),
    ("shaft seal", CircuitPart::Compressor),
    ("liquid stop valve", CircuitPart::LiquidLine),
    ("liquid line", CircuitPart::LiquidLine),
    ("king valve", CircuitPart::Receiver),
    ("receiver", CircuitPart::Receiver),
    ("gas cooler", CircuitPart::Condenser),
    ("condensing", CircuitPart::Condenser),
    ("condenser", CircuitPart::Condenser),
    ("evaporator", CircuitPart::Evaporator),
    ("cooler", CircuitPart::Evaporator),
    ("chiller", CircuitPart::Evaporator),
    ("coil", CircuitPart::Evaporator),
    ("drum", CircuitPart::Evaporator),
    ("plate freezer", CircuitPart::Evaporator),
    ("freezer", CircuitPart::Evaporator),
    ("cabinet", CircuitPart::Evaporator),
    ("showcase", CircuitPart::Evaporator),
    ("display case", CircuitPart::Evaporator),
    ("ice bank", CircuitPart::Evaporator),
    ("indoor unit", CircuitPart::Evaporator),
    ("outdoor unit", CircuitPart::Condenser),
];

impl CircuitPart {
    /// The part that words of a register name; none if they name none.
    pub fn named_in(words: &str) -> Option<Self> {
        let words = words.to_lowercase();
        WORDS
            .iter()
            .find(|(word, _)| words.contains(word))
            .map(|(_, part)| *part)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_more_particular_word_decides() {
        assert_eq!(
            CircuitPart::named_in("Evaporator 1, expansion valve inlet"),
            Some(CircuitPart::ExpansionDevice)
        );
        assert_eq!(
            CircuitPart::named_in("Drum A, suction outlet flange"),
            Some(CircuitPart::SuctionLine)
        );
        assert_eq!(
            CircuitPart::named_in("cooler 1"),
            Some(CircuitPart::Evaporator)
        );
        assert_eq!(CircuitPart::named_in("guard"), None);
    }
}
