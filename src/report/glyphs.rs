//! Which characters the shipped fonts can print.
//!
//! PDF/A forbids a missing glyph, so text is tested before it is typeset: `check` names the character
//! and its place instead of an export that fails.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use typst::layout::Abs;
use typst::text::{Font, FontVariant, FontVariations};

use crate::report::world;

static PRINTABLE: LazyLock<BTreeSet<char>> =
    LazyLock::new(|| world::fonts().iter().flat_map(glyphs_of).collect());

/// The characters for which a font has a glyph; some fonts list characters and give them none.
fn glyphs_of(font: &Font) -> Vec<char> {
    let (variant, variations) = (FontVariant::default(), FontVariations::default());
    let instance = font
        .clone()
        .instantiate(variant, Abs::pt(10.0), &variations);
    let listed = font.info().coverage.iter().filter_map(char::from_u32);
    let drawn = |&character: &char| instance.ttf().glyph_index(character).is_some();
    listed.filter(drawn).collect()
}

/// Lists the characters that no shipped font can print, each with its byte offset in the text.
///
/// A line end is printable; a tab and every other control character are not, and neither are private
/// characters.
pub fn unprintable(text: &str) -> Vec<(usize, char)> {
    let fails = |&(_, character): &(usize, char)| !printable(character);
    text.char_indices().filter(fails).collect()
}

fn printable(character: char) -> bool {
    match character {
        // The last four have no glyph of their own, but the typesetter understands them.
        ' '..='~' | '\n' | '\r' | '\u{ad}' | '\u{200b}'..='\u{200d}' | '\u{2060}' => true,
        // PDF/A forbids these even where a font draws them.
        '\u{e000}'..='\u{f8ff}' | '\u{feff}' | '\u{fffe}' | '\u{ffff}' => false,
        _ => !character.is_control() && PRINTABLE.contains(&character),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_words_and_signs_of_the_trade_can_be_printed() {
        let text =
            "CO₂e, s⁻¹, R‑404A, −12.5 °C, 30 ± 10 g/yr, Δp, µm, p₁ → p₂, ≤ ≥ ≈, 12 345, „é“ ñ ł ž";
        assert_eq!(unprintable(text), []);
    }

    #[test]
    fn a_character_without_a_glyph_is_named_with_its_place() {
        assert_eq!(unprintable("ok 字 ok"), [(3, '字')]);
        assert_eq!(
            unprintable("é\u{7}\t😀"),
            [(2, '\u{7}'), (3, '\t'), (4, '😀')]
        );
        assert_eq!(
            unprintable("\u{e001}\u{fffe}"),
            [(0, '\u{e001}'), (3, '\u{fffe}')]
        );
    }
}
