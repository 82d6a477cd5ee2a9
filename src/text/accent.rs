//! A colour as `#rrggbb`, and whether text in it can be read on white.
//!
//! Relative luminance and contrast ratio are those of W3C, Web Content Accessibility Guidelines 2.1
//! (Recommendation of 5 June 2018), section 6, terms; 4.5 : 1 is success criterion 1.4.3 (level AA).

/// The least contrast of text on white, WCAG 2.1 criterion 1.4.3.
pub const LEAST_CONTRAST: f64 = 4.5;

/// A colour of the screen, eight bits a channel in sRGB.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Accent(pub [u8; 3]);

impl Accent {
    /// Reads `#rrggbb`, in letters of either case.
    pub fn read(text: &str) -> Option<Self> {
        let digits = text.strip_prefix('#')?;
        if digits.len() != 6 || !digits.bytes().all(|b| b.is_ascii_hexdigit()) {
            return None;
        }
        let [_, red, green, blue] = u32::from_str_radix(digits, 16).ok()?.to_be_bytes();
        Some(Self([red, green, blue]))
    }

    /// As `#rrggbb`.
    pub fn print(self) -> String {
        let [red, green, blue] = self.0;
        format!("#{red:02x}{green:02x}{blue:02x}")
    }

    /// Contrast ratio against white, 1 to 21: (1 + 0.05) / (L + 0.05).
    pub fn contrast(self) -> f64 {
        let [red, green, blue] = self.0.map(linear);
        1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05)
    }

    /// The colour itself, or mixed with black in steps of 1 % until it can be read on white.
    #[must_use]
    pub fn readable(self) -> Self {
        let mixed = |percent: u16| {
            self.0
                .map(|channel| u8::try_from(u16::from(channel) * percent / 100).unwrap_or(channel))
        };
        (0..=100)
            .rev()
            .map(|percent| Self(mixed(percent)))
            .find(|colour| colour.contrast() >= LEAST_CONTRAST)
            .unwrap_or(Self([0; 3]))
    }
}

/// A channel without its gamma, 0 to 1, with the threshold of WCAG 2.1 (0.03928).
fn linear(channel: u8) -> f64 {
    let share = f64::from(channel) / 255.0;
    if share <= 0.03928 {
        share / 12.92
    } else {
        ((share + 0.055) / 1.055).powf(2.4)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn contrast(text: &str) -> f64 {
        Accent::read(text).unwrap().contrast()
    }

    #[test]
    fn black_has_the_greatest_contrast_and_white_none() {
        // The ends of the scale as WCAG 2.1 states them: "contrast ratios can range from 1 to 21".
        assert!((contrast("#000000") - 21.0).abs() < 1e-12);
        assert!((contrast("#ffffff") - 1.0).abs() < 1e-12);
    }

    #[test]
    fn the_lightest_grey_that_passes_is_one_step_darker_than_one_that_fails() {
        // Derived by hand: 0x76 is 118/255 = 0.46275, L = 0.18116, 1.05/0.23116 = 4.5423;
        // 0x77 is 119/255 = 0.46667, L = 0.18448, 1.05/0.23448 = 4.4781.
        assert!((contrast("#767676") - 4.5423).abs() < 2e-4);
        assert!((contrast("#777777") - 4.4781).abs() < 2e-4);
    }

    #[test]
    fn full_red_and_full_blue_have_the_contrast_of_their_weight() {
        // Derived: a full channel has L equal to its weight, 1.05/0.2626 and 1.05/0.1222.
        assert!((contrast("#ff0000") - 1.05 / 0.2626).abs() < 1e-12);
        assert!((contrast("#0000FF") - 1.05 / 0.1222).abs() < 1e-12);
    }

    #[test]
    fn every_colour_is_made_readable_by_the_least_step_and_a_readable_one_is_kept() {
        for text in ["#2f5d62", "#000000", "#767676"] {
            let colour = Accent::read(text).unwrap();
            assert_eq!(colour.readable(), colour, "{text}");
        }
        for channels in (0..512u32).map(|step| [step / 64 * 36, step / 8 % 8 * 36, step % 8 * 36]) {
            let colour = Accent(channels.map(|channel| u8::try_from(channel).unwrap()));
            let readable = colour.readable();
            assert!(readable.contrast() >= LEAST_CONTRAST, "{}", colour.print());
            if readable != colour {
                assert!(
                    readable.contrast() < LEAST_CONTRAST + 0.3,
                    "darker than need be"
                );
            }
        }
    }

    #[test]
    fn only_six_hexadecimal_digits_are_a_colour() {
        assert_eq!(Accent::read("#2F5d62").unwrap().print(), "#2f5d62");
        for text in [
            "2f5d62", "#2f5d6", "#2f5d622", "#2f5d6g", "teal", "", "#+f5d62", "#äöü",
        ] {
            assert_eq!(Accent::read(text), None, "{text}");
        }
    }
}
