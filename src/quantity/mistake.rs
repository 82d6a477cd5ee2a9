//! What someone probably meant who wrote a unit that is not in the table.

use super::find::{Found, Lookup, by_symbol, lookup, names};
use super::kind::{Flavour, Kind};
use super::number::{Cursor, scan};
use super::refusal::Refusal;
use super::resolve::resolve;
use super::rounding::{Decimal, significant_exponent};
use super::written::{PLUS_MINUS, Written, shortest};

/// A unit that differs from a known one by a factor of a thousand million.
pub(super) fn wrong_prefix(kind: Kind, written: &Written, found: &[Found]) -> Refusal {
    let units = match resolve(found, kind, written.typed()) {
        Ok((found, flavour)) => vec![found.symbol(flavour)],
        Err(misfit) => misfit.units,
    };
    let meant = found.first().map_or("", |found| found.unit.symbol);
    written
        .refuse(format!("`{}` is not `{meant}`", written.typed()))
        .because("a small `m` is a thousandth, a capital `M` a million")
        .cured(written.with_units(&units))
}

/// A unit that is not in the table: known to be ambiguous, followed by more text, or misspelt.
pub(super) fn unknown(kind: Kind, written: &Written) -> Refusal {
    ambiguous(kind, written)
        .or_else(|| uncertainty_after_unit(written))
        .or_else(|| range_of_values(written))
        .or_else(|| trailing_text(written))
        .unwrap_or_else(|| misspelt(kind, written))
}

fn ambiguous(kind: Kind, written: &Written) -> Option<Refusal> {
    let typed = written.typed().to_lowercase();
    let refuse = |why: &str, cures: Vec<String>| {
        Some(
            written
                .refuse(format!("`{}` can mean several units", written.typed()))
                .because(why)
                .cured(cures),
        )
    };
    match (typed.as_str(), kind) {
        ("ton" | "tons", Kind::Power) => {
            let refrigeration = by_symbol("TR", Flavour::Power)?;
            let kilowatts = refrigeration.to_si(written.number.value) / 1000.0;
            let digits = Decimal::rounded(kilowatts, significant_exponent(kilowatts, 3));
            let mut cures = written.with_units(&["TR"]);
            if written.uncertainty.is_none() {
                cures.push(format!("{} kW", digits.plain()));
            }
            refuse(
                "a ton of cooling is written `TR`, 3.517 kW; a ton is also a mass",
                cures,
            )
        }
        ("ton" | "tons", _) => refuse(
            "a tonne is 1000 kg, a short ton 907 kg",
            written.with_units(&["t", "short ton"]),
        ),
        ("gal" | "gals" | "gallon" | "gallons", _) => refuse(
            "a US gallon is 3.785 L, an imperial gallon 4.546 L",
            written.with_units(&["US gal", "imp gal"]),
        ),
        _ if typed.ends_with("month") || typed.ends_with("months") => Some(
            written
                .refuse(format!("`{}` has no fixed length", written.typed()))
                .because("months differ; write days, or a rate per day or per year"),
        ),
        _ => None,
    }
}

/// `24.8 bar g ± 0.1 bar`: the uncertainty belongs before the unit.
fn uncertainty_after_unit(written: &Written) -> Option<Refusal> {
    let typed = written.typed();
    let (unit, half) = PLUS_MINUS.iter().find_map(|sign| typed.split_once(*sign))?;
    let unit = unit.trim();
    let mut cursor = Cursor { text: half, at: 0 };
    let half = scan(&mut cursor).ok()?;
    let after = cursor.rest().trim();
    let figures = written.figures();
    let half = if after == "%" {
        shortest((written.number.value * half.value / 100.0).abs())
    } else {
        shortest(half.value)
    };
    Some(
        written
            .refuse("the uncertainty stands after the unit")
            .because("number, uncertainty, unit: the two numbers share the unit")
            .cured([format!("{figures} ± {half} {unit}")]),
    )
}

/// `10-12 bar g`: a reading is one value.
fn range_of_values(written: &Written) -> Option<Refusal> {
    let typed = written.typed();
    let rest = ["-", "−", "to ", "..", "…"]
        .iter()
        .find_map(|sign| typed.strip_prefix(sign))?;
    let mut cursor = Cursor { text: rest, at: 0 };
    let upper = scan(&mut cursor).ok()?.value;
    let lower = written.number.value;
    let (middle, half) = (f64::midpoint(lower, upper), (upper - lower) / 2.0);
    let refusal = Refusal::new(
        written.number.range.start..written.unit.end,
        "this is a range, not a reading",
    )
    .because("write the middle and how far either side it may be");
    let unit = cursor.rest().trim();
    Some(if half > 0.0 {
        refusal.cured([format!("{} ± {} {unit}", shortest(middle), shortest(half))])
    } else {
        refusal
    })
}

/// `12 kg approx.`: a unit that reads, and then something else.
fn trailing_text(written: &Written) -> Option<Refusal> {
    let typed = written.typed();
    let mut ends = typed
        .char_indices()
        .filter(|(_, character)| !character.is_alphanumeric() && *character != '/')
        .map(|(at, _)| at);
    let end = ends.rfind(|end| {
        typed
            .get(..*end)
            .is_some_and(|unit| matches!(lookup(unit), Lookup::Known(_)))
    })?;
    let (unit, rest) = typed.split_at_checked(end)?;
    let rest = rest.trim_start();
    let refusal = Refusal::new(
        written.unit.end - rest.len()..written.unit.end,
        format!("`{rest}` after the unit is not understood"),
    );
    // To drop a further number would change the reading.
    Some(if rest.starts_with(|first: char| first.is_ascii_digit()) {
        refusal.because("one number, or two units that belong together such as `9 lb 4 oz`")
    } else {
        refusal
            .because("nothing may follow the unit; put remarks in a note")
            .cured([format!("{} {}", written.figures(), unit.trim())])
    })
}

fn misspelt(kind: Kind, written: &Written) -> Refusal {
    const LONGEST: usize = 32;
    let typed = written.typed();
    let refusal = written
        .refuse(format!("`{typed}` is not a unit that is known here"))
        .because(format!(
            "{} is expected, such as `{}`",
            kind.describe(),
            kind.example()
        ));
    if typed.len() > LONGEST {
        return refusal;
    }
    let lower = typed.to_lowercase();
    let nearest = similar::get_close_matches(lower.as_str(), &names(kind), 1, 0.6);
    match nearest.first() {
        Some(name) => refusal.cured([format!("{} {name}", written.figures())]),
        None => refusal,
    }
}
