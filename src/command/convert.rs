//! `convert`: a quantity in every unit of its kind.

use crate::command::console::{Console, Exit};
use crate::command::convert_leak::{Asked, convert_leak, counts_bubbles, size_and_gas};
use crate::quantity::{
    AbsolutePressure, Conversion, Kind, Length, Printed, Refusal, STANDARD_ATMOSPHERE,
    Unconvertible, atmosphere_at, parse, read,
};
use serde_json::json;

/// Converts a quantity, to one unit or to all.
pub fn convert(
    asked: &Asked<'_>,
    altitude: Option<&str>,
    as_json: bool,
    console: &Console,
) -> Exit {
    let Asked { quantity, to, .. } = *asked;
    let atmosphere: AbsolutePressure = match altitude.map(parse::<Length>) {
        None => STANDARD_ATMOSPHERE,
        Some(Ok(altitude)) => atmosphere_at(altitude.value),
        Some(Err(refusal)) => {
            console.err(&format!("error: --altitude: {}\n", refusal.what));
            return Exit::Usage;
        }
    };
    if let (None, Some((size, gas))) = (asked.gas, size_and_gas(quantity)) {
        let asked = Asked {
            quantity: size,
            gas: Some(gas),
            ..*asked
        };
        return convert_leak(&asked, atmosphere, as_json, console);
    }
    if asked.gas.is_some() || counts_bubbles(quantity) {
        return convert_leak(asked, atmosphere, as_json, console);
    }
    match crate::quantity::convert(quantity, to, Some(atmosphere)) {
        Ok(conversions) if as_json => {
            let list: Vec<_> = conversions.iter().map(json_of).collect();
            let value = json!({ "version": 1, "command": "convert", "quantity": quantity, "results": list });
            console.out(&format!("{value:#}\n"));
            Exit::Fine
        }
        Ok(conversions) => {
            for conversion in &conversions {
                if to.is_none() {
                    let kind = conversion.flavour.describe();
                    console.out(&format!("{}, {kind}:\n", conversion.from));
                }
                let indent = if to.is_none() { "  " } else { "" };
                for printed in &conversion.to {
                    console.out(&format!("{indent}{printed}\n"));
                }
            }
            Exit::Fine
        }
        Err(fault) => {
            let (text, refusal) = match fault {
                Unconvertible::Text(refusal) => (quantity, refusal),
                Unconvertible::Unit(refusal) => (to.unwrap_or_default(), refusal),
            };
            console.err(&refused(text, refusal));
            if needs_gas(quantity, to) {
                console.err("  = help: between mass and throughput the gas counts: add it, such as --gas R-134a\n");
            }
            Exit::Usage
        }
    }
}

/// Tells whether one of quantity and unit is a mass per time and the other a throughput.
fn needs_gas(quantity: &str, to: Option<&str>) -> bool {
    let flavour = |text: &str| {
        read(Kind::LeakRate, text)
            .ok()
            .map(|reading| reading.flavour)
    };
    let wanted = to.and_then(|to| flavour(&format!("1 {to}")));
    flavour(quantity).is_some_and(|of| wanted.is_some_and(|wanted| wanted != of))
}

fn json_of(conversion: &Conversion) -> serde_json::Value {
    let printed = |printed: &Printed| json!({ "number": printed.number, "unit": printed.unit });
    json!({
        "kind": conversion.flavour.describe(),
        "from": printed(&conversion.from),
        "to": conversion.to.iter().map(printed).collect::<Vec<_>>(),
    })
}

/// A refusal of a part of the command line, with a caret under it.
fn refused(text: &str, refusal: Refusal) -> String {
    let before = text
        .get(..refusal.range.start)
        .unwrap_or("")
        .chars()
        .count();
    let carets = text.get(refusal.range).unwrap_or("").chars().count().max(1);
    let mut out = format!(
        "error: {}\n    {text}\n    {}{}\n",
        refusal.what,
        " ".repeat(before),
        "^".repeat(carets)
    );
    if let Some(why) = refusal.why {
        out += &format!("  = why: {why}\n");
    }
    for cure in refusal.cures {
        out += &format!("  = help: write `{cure}`\n");
    }
    out
}
