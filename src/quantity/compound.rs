//! Two units one after the other: pounds and ounces, hours and minutes, feet and inches.

use super::find::{Found, Lookup, lookup};
use super::kind::Kind;
use super::measured::Reading;
use super::refusal::Refusal;
use super::unit::{COMPOUNDS, Compound};
use super::written::{Written, shortest, split};

/// `9 lb 4 oz` and its like; none if the text has one number only.
pub(super) fn compound(kind: Kind, written: &Written) -> Result<Option<(Found, Reading)>, Refusal> {
    let typed = written.typed();
    let Some((first_end, second_start)) = second_number(typed) else {
        return Ok(None);
    };
    let (big, rest) = (
        typed.get(..first_end).unwrap_or_default().trim_end(),
        typed.get(second_start..).unwrap_or_default(),
    );
    let second = split(rest).map_err(|refusal| shifted(refusal, written, second_start))?;
    let Some((pair, big, small)) = pair(kind, big, second.typed()) else {
        return Ok(None);
    };
    let whole = written.number.value;
    let flavour = small.unit.flavour;
    let (first, rest) = (pair.big, pair.small);
    let refuse = |what: String| {
        let refusal = written.refuse(what);
        refusal.because("two units together read only as whole ones and a rest")
    };
    if written.uncertainty.is_some() || second.uncertainty.is_some() {
        return Err(refuse("an uncertainty needs one unit only".to_owned()));
    }
    let is_whole = whole.fract() == 0.0 && !written.number.is_fraction;
    if !is_whole || !(0.0..pair.ratio).contains(&second.number.value) {
        let total = (whole.abs() * pair.ratio + second.number.value).copysign(whole);
        let what = if is_whole {
            format!("{} {rest} make one {first}", pair.ratio)
        } else {
            format!("the {first} before {rest} are not whole")
        };
        return Err(refuse(what).cured([
            format!("{} {first}", shortest(total / pair.ratio)),
            format!("{} {rest}", shortest(total)),
        ]));
    }
    let reading = Reading {
        flavour,
        si: whole.signum() * (whole.abs() * big.unit.factor + small.to_si(second.number.value)),
        uncertainty: None,
        step: second.number.step * small.unit.factor,
        unit: pair.symbol,
    };
    Ok(Some((small, reading)))
}

/// Where a first unit ends and a second number begins within what follows the first number.
fn second_number(typed: &str) -> Option<(usize, usize)> {
    let (start, _) = typed
        .char_indices()
        .find(|(_, character)| character.is_ascii_digit())?;
    let before = typed.get(..start)?.trim_end();
    let is_unit = !before.is_empty()
        && COMPOUNDS.iter().any(|pair| {
            matches!(lookup(before), Lookup::Known(rows)
                if rows.iter().any(|row| row.unit.symbol == pair.big))
        });
    is_unit.then_some((before.len(), start))
}

fn pair(kind: Kind, big: &str, small: &str) -> Option<(&'static Compound, Found, Found)> {
    let (Lookup::Known(big), Lookup::Known(small)) = (lookup(big), lookup(small)) else {
        return None;
    };
    COMPOUNDS.iter().find_map(|pair| {
        let is = |found: &&Found, symbol: &str| {
            found.unit.symbol == symbol && kind.flavours().contains(&found.unit.flavour)
        };
        let big = big.iter().find(|found| is(found, pair.big))?;
        let small = small.iter().find(|found| is(found, pair.small))?;
        Some((pair, *big, *small))
    })
}

/// A refusal within the part that begins `start` bytes into the unit, seen from the whole text.
fn shifted(refusal: Refusal, written: &Written, start: usize) -> Refusal {
    let offset = written.unit.start + start;
    let before = written.text.get(..offset).unwrap_or_default();
    Refusal {
        range: refusal.range.start + offset..refusal.range.end + offset,
        cures: refusal
            .cures
            .iter()
            .map(|cure| format!("{before}{cure}"))
            .collect(),
        ..refusal
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_pairs_that_belong_together_are_taken() {
        let read = |text| compound(Kind::Mass, &split(text).unwrap()).unwrap();
        assert_eq!(read("9 lb 4 oz").unwrap().1.unit, "lb oz");
        assert!(read("9 lb").is_none());
        assert!(read("9 lb 4 in").is_none());
        assert!(read("9 ft3").is_none());
        assert!(read("26 lb/1000 ft3").is_none());
    }
}
