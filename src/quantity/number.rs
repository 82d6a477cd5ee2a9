//! The number at the front of a quantity: decimal with a point, exponent, or fraction of an inch.

use std::ops::Range;

use super::refusal::Refusal;

/// A number, where it stands, and how finely it was written.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Number {
    pub value: f64,
    /// What one unit in the last digit is worth; of a fraction, one part.
    pub step: f64,
    pub is_fraction: bool,
    pub range: Range<usize>,
}

/// Spaces that may stand between groups of three digits.
const GROUPING: [char; 4] = ['\u{a0}', '\u{202f}', '\u{2009}', '\u{2007}'];
/// No physical quantity of this trade lies outside ten to the plus or minus this.
const LARGEST_EXPONENT: i32 = 30;
const VULGAR: [(char, u32, u32); 7] = [
    ('½', 1, 2),
    ('¼', 1, 4),
    ('¾', 3, 4),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
];
const SUPERSCRIPT: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];

/// A place in a text that moves forward.
#[derive(Debug, Clone)]
pub(super) struct Cursor<'a> {
    pub text: &'a str,
    pub at: usize,
}

impl<'a> Cursor<'a> {
    pub fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or_default()
    }

    pub fn spaces(&mut self) {
        self.at += self.rest().len() - self.rest().trim_start().len();
    }

    pub fn eat(&mut self, any_of: &[&str]) -> bool {
        for start in any_of {
            if self.rest().starts_with(start) {
                self.at += start.len();
                return true;
            }
        }
        false
    }

    fn digits(&mut self) -> &'a str {
        let rest = self.rest();
        let end = rest
            .find(|character: char| !character.is_ascii_digit())
            .unwrap_or(rest.len());
        self.at += end;
        rest.get(..end).unwrap_or_default()
    }

    fn sign(&mut self) -> &'static str {
        let sign = if self.eat(&["-", "−"]) {
            "-"
        } else {
            self.eat(&["+"]);
            ""
        };
        self.spaces();
        sign
    }
}

/// Reads the number at the cursor and moves past it.
pub(super) fn scan(cursor: &mut Cursor) -> Result<Number, Refusal> {
    cursor.spaces();
    let start = cursor.at;
    let sign = cursor.sign();
    if let Some((value, parts)) = fraction(cursor)? {
        return Ok(Number {
            value: if sign.is_empty() { value } else { -value },
            step: 1.0 / f64::from(parts),
            is_fraction: true,
            range: start..cursor.at,
        });
    }
    let body_start = cursor.at;
    let body = body(cursor);
    if !body.contains(|character: char| character.is_ascii_digit()) {
        return Err(not_a_number(cursor.text, start));
    }
    let body = plain(cursor, body, body_start)?;
    let exponent = exponent(cursor);
    let range = start..cursor.at;
    let digits_after_point = body.split_once('.').map_or(0, |(_, after)| after.len());
    let digits_after_point = i32::try_from(digits_after_point).unwrap_or(i32::MAX);
    let value: Option<f64> = format!("{sign}{body}e{exponent}").parse().ok();
    let Some(value) = value else {
        return Err(not_a_number(cursor.text, start));
    };
    let step = power_of_ten(exponent.saturating_sub(digits_after_point));
    let bound = power_of_ten(LARGEST_EXPONENT);
    let magnitude = value.abs();
    if exponent.abs() > LARGEST_EXPONENT
        || digits_after_point > LARGEST_EXPONENT
        || magnitude > bound
        || (magnitude > 0.0 && magnitude < 1.0 / bound)
    {
        return Err(Refusal::new(range, "the number is too large or too small")
            .because("no reading on a refrigeration plant is of that size; check the exponent"));
    }
    Ok(Number {
        value,
        step,
        is_fraction: false,
        range,
    })
}

/// Exact, or the nearest there is, for every exponent that passes.
fn power_of_ten(exponent: i32) -> f64 {
    if exponent < 0 {
        1.0 / 10f64.powi(exponent.saturating_neg())
    } else {
        10f64.powi(exponent)
    }
}

fn not_a_number(text: &str, start: usize) -> Refusal {
    let rest = text.get(start..).unwrap_or_default().trim_end();
    let refusal = Refusal::new(
        start..start + rest.len(),
        if rest.is_empty() {
            "there is no number here".to_owned()
        } else {
            format!("`{rest}` does not begin with a number")
        },
    );
    let why = match rest.chars().next() {
        Some('<' | '>' | '~' | '≈' | '≤' | '≥') => {
            "a reading is one number; write how unsure it is with `±`"
        }
        _ => "a quantity is a number and its unit",
    };
    refusal.because(why)
}

/// Digits with all separators found between them; the spaces between groups left out.
fn body(cursor: &mut Cursor) -> String {
    let mut body = String::new();
    loop {
        body.push_str(cursor.digits());
        let mut ahead = cursor.clone();
        if let Some(mark) = [".", ",", "'"].into_iter().find(|mark| ahead.eat(&[mark])) {
            let digit_follows = ahead.rest().starts_with(|next: char| next.is_ascii_digit());
            // `12. kg` is harmless; a comma or an apostrophe belongs to the number only within it.
            let ends_a_number = mark == "." && !body.is_empty() && !body.contains('.');
            if !digit_follows && !ends_a_number {
                return body;
            }
            body.push_str(mark);
        } else if !body.is_empty() && ahead.rest().starts_with(GROUPING) {
            ahead.spaces();
            let mut group = ahead.clone();
            if group.digits().len() != 3 || group.rest().starts_with('/') {
                return body;
            }
        } else {
            return body;
        }
        cursor.at = ahead.at;
    }
}

/// The body if it has at most a decimal point; otherwise what it may have meant.
fn plain(cursor: &Cursor, body: String, start: usize) -> Result<String, Refusal> {
    let range = start..cursor.at;
    let mut ahead = cursor.clone();
    ahead.spaces();
    let next = ahead.digits();
    if ahead.at > cursor.at && !next.is_empty() {
        let refusal = Refusal::new(
            start..ahead.at,
            format!("`{body} {next}` is two numbers side by side"),
        )
        .because("a space may hide a lost decimal point");
        let readings = [format!("{body}{next}"), format!("{body}.{next}")];
        return Err(if next.len() == 3 && !body.contains(['.', ',', '\'']) {
            refusal.replacing(cursor.text, readings)
        } else {
            refusal
        });
    }
    if !body.contains([',', '\'']) && body.matches('.').count() <= 1 {
        return Ok(body);
    }
    let refusal = if body.contains(',') {
        Refusal::new(range, format!("`{body}` has a comma"))
            .because("a comma is a decimal sign to some readers and parts thousands for others")
    } else {
        Refusal::new(range, format!("`{body}` cannot be read as one number"))
            .because("a number here has at most one decimal point and nothing between thousands")
    };
    Err(refusal.replacing(cursor.text, separator_readings(&body)))
}

/// What digits with separators may mean, the thousands first.
fn separator_readings(body: &str) -> Vec<String> {
    let body = body.replace('\'', "");
    let joined = body.replace([',', '.'], "");
    let groups: Vec<&str> = body.split([',', '.']).collect();
    let is_grouped = groups.iter().skip(1).all(|group| group.len() == 3)
        && groups
            .first()
            .is_some_and(|first| (1..=3).contains(&first.len()) && !first.starts_with('0'));
    let (commas, points) = (body.matches(',').count(), body.matches('.').count());
    let last_is_comma = body.rfind(',') > body.rfind('.');
    match (commas, points) {
        (0, 0 | 1) => vec![body],
        (1, 0) if is_grouped => vec![joined, body.replace(',', ".")],
        (1, 0) => vec![body.replace(',', ".")],
        (_, 0) | (0, _) if is_grouped => vec![joined],
        (_, 1) if !last_is_comma => vec![body.replace(',', "")],
        (1, _) if last_is_comma => vec![body.replace('.', "").replace(',', ".")],
        _ => Vec::new(),
    }
}

/// The power of ten after a mantissa: `e-5`, `×10^-5` or `× 10⁻⁵`; 0 if there is none.
fn exponent(cursor: &mut Cursor) -> i32 {
    let mut ahead = cursor.clone();
    let (sign, digits) = if ahead.eat(&["e", "E"]) {
        (ahead.sign(), ahead.digits().to_owned())
    } else {
        ahead.spaces();
        if !ahead.eat(&["×", "x", "*"]) {
            return 0;
        }
        ahead.spaces();
        if ahead.eat(&["10^"]) {
            (ahead.sign(), ahead.digits().to_owned())
        } else if ahead.eat(&["10"]) {
            let sign = if ahead.eat(&["⁻"]) { "-" } else { "" };
            (sign, superscript_digits(&mut ahead))
        } else {
            return 0;
        }
    };
    if digits.is_empty() {
        return 0;
    }
    cursor.at = ahead.at;
    let size = digits.parse().unwrap_or(i32::MAX).min(9_999);
    if sign == "-" { -size } else { size }
}

fn superscript_digits(cursor: &mut Cursor) -> String {
    let mut digits = String::new();
    while let Some(character) = cursor.rest().chars().next() {
        let Some(digit) = SUPERSCRIPT.iter().position(|&sign| sign == character) else {
            break;
        };
        digits.push_str(&digit.to_string());
        cursor.at += character.len_utf8();
    }
    digits
}

/// `3/8`, `1 1/2` or `1½` at the cursor: value and number of parts.
fn fraction(cursor: &mut Cursor) -> Result<Option<(f64, u32)>, Refusal> {
    let start = cursor.at;
    let mut ahead = cursor.clone();
    let mut whole = "0";
    let mut numerator = ahead.digits();
    ahead.spaces();
    if let Some(vulgar) = VULGAR
        .into_iter()
        .find(|(sign, _, _)| ahead.rest().starts_with(*sign))
    {
        let (sign, above, below) = vulgar;
        let whole: f64 = if numerator.is_empty() {
            0.0
        } else {
            numerator.parse().unwrap_or(f64::INFINITY)
        };
        cursor.at = ahead.at + sign.len_utf8();
        return Ok(Some((whole + f64::from(above) / f64::from(below), below)));
    }
    if ahead.rest().starts_with(|next: char| next.is_ascii_digit()) {
        whole = numerator;
        numerator = ahead.digits();
    }
    if numerator.is_empty() || !ahead.eat(&["/"]) {
        return Ok(None);
    }
    let denominator = ahead.digits();
    if denominator.is_empty() {
        return Ok(None);
    }
    let range = start..ahead.at;
    cursor.at = ahead.at;
    let parsed = (
        whole.parse::<u32>(),
        numerator.parse::<u32>(),
        denominator.parse::<u32>(),
    );
    match parsed {
        (Ok(whole), Ok(above), Ok(below @ (2 | 4 | 8 | 16 | 32 | 64))) => Ok(Some((
            f64::from(whole) + f64::from(above) / f64::from(below),
            below,
        ))),
        _ => Err(Refusal::new(
            range.clone(),
            format!(
                "`{}` is not a fraction that rulers have",
                cursor.text.get(range).unwrap_or_default()
            ),
        )
        .because(
            "halves, quarters, eighths, 16ths, 32nds and 64ths are read; else write decimals",
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<(f64, f64, &str), Refusal> {
        let mut cursor = Cursor { text, at: 0 };
        let number = scan(&mut cursor)?;
        Ok((number.value, number.step, cursor.rest()))
    }

    #[test]
    fn numbers_are_read_with_the_step_of_their_last_digit() {
        assert_eq!(read("24.8 bar").unwrap(), (24.8, 0.1, " bar"));
        assert_eq!(read("360psig").unwrap(), (360.0, 1.0, "psig"));
        assert_eq!(read("−12.50 °C").unwrap(), (-12.5, 0.01, " °C"));
        assert_eq!(read("- 12 °C").unwrap(), (-12.0, 1.0, " °C"));
        assert_eq!(read("+5 °C").unwrap(), (5.0, 1.0, " °C"));
        assert_eq!(read("1.2e-5 x").unwrap(), (1.2e-5, 1e-6, " x"));
        assert_eq!(read("1.2 × 10⁻⁵ x").unwrap(), (1.2e-5, 1e-6, " x"));
        assert_eq!(read("1.2x10^5 x").unwrap(), (1.2e5, 1e4, " x"));
        assert_eq!(read("5 each").unwrap(), (5.0, 1.0, " each"));
        assert_eq!(read("5 ea").unwrap(), (5.0, 1.0, " ea"));
        assert_eq!(read("12. kg").unwrap(), (12.0, 1.0, " kg"));
        assert_eq!(read(".5 kg").unwrap(), (0.5, 0.1, " kg"));
    }

    #[test]
    fn thin_and_no_break_spaces_part_thousands() {
        assert_eq!(read("1\u{2009}250 kg").unwrap().0, 1250.0);
        assert_eq!(read("1\u{a0}250\u{202f}000 Pa").unwrap().0, 1_250_000.0);
        assert_eq!(read("12\u{a0}kg").unwrap(), (12.0, 1.0, "\u{a0}kg"));
    }

    #[test]
    fn fractions_of_an_inch_are_read() {
        assert_eq!(read("3/8 in").unwrap(), (0.375, 0.125, " in"));
        assert_eq!(read("1 1/2 in").unwrap(), (1.5, 0.5, " in"));
        assert_eq!(read("1½ in").unwrap(), (1.5, 0.5, " in"));
        assert_eq!(read("⅝\"").unwrap(), (0.625, 0.125, "\""));
        assert!(read("3/7 in").is_err());
    }

    #[test]
    fn separators_offer_each_reading_once() {
        let cures = |text: &str| read(text).unwrap_err().cures;
        assert_eq!(cures("12,5 kg"), ["12.5 kg"]);
        assert_eq!(cures("1,250 kg"), ["1250 kg", "1.250 kg"]);
        assert_eq!(cures("0,250 kg"), ["0.250 kg"]);
        assert_eq!(cures("1,250.5 kg"), ["1250.5 kg"]);
        assert_eq!(cures("1.250,5 kg"), ["1250.5 kg"]);
        assert_eq!(cures("1,250,000 Pa"), ["1250000 Pa"]);
        assert_eq!(cures("1.250.000 Pa"), ["1250000 Pa"]);
        assert_eq!(cures("1'250 kg"), ["1250 kg"]);
        assert_eq!(cures("1 250 kg"), ["1250 kg", "1.250 kg"]);
        assert!(cures("1,2,3 kg").is_empty());
    }

    #[test]
    fn what_is_no_number_is_refused() {
        for text in [
            "", "kg", "NaN kg", "inf kg", "~5 kg", "-kg", "1e400 kg", "1e-99 kg",
        ] {
            assert!(read(text).is_err(), "{text}");
        }
        let digits = "9".repeat(400);
        assert!(read(&digits).is_err());
    }
}
