//! Rounding in decimal digits, ties away from zero, and how many digits a value deserves.

/// A value as decimal digits: the sign, and an integer times a power of ten.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Decimal {
    is_negative: bool,
    digits: u128,
    exponent: i32,
}

const SUPERSCRIPT: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];

impl Decimal {
    /// The value to fifteen significant digits, which drops what binary fractions add.
    fn exact(value: f64) -> Self {
        let text = format!("{:.14e}", if value.is_finite() { value.abs() } else { 0.0 });
        let (mantissa, exponent) = text.split_once('e').unwrap_or((&text, "0"));
        Self {
            is_negative: value < 0.0,
            digits: mantissa.replace('.', "").parse().unwrap_or(0),
            exponent: exponent.parse::<i32>().unwrap_or(0) - 14,
        }
    }

    /// The value rounded to a multiple of ten to the `exponent`, ties away from zero.
    pub fn rounded(value: f64, exponent: i32) -> Self {
        let exact = Self::exact(value);
        let surplus = exponent - exact.exponent;
        let digits = if surplus <= 0 {
            let power = 10u128.checked_pow(surplus.unsigned_abs()).unwrap_or(1);
            exact.digits.saturating_mul(power)
        } else if surplus > 20 {
            0
        } else {
            let power = 10u128.pow(surplus.unsigned_abs());
            (exact.digits + power / 2) / power
        };
        Self {
            is_negative: exact.is_negative && digits != 0,
            digits,
            exponent,
        }
    }

    /// Plain digits, with the true minus sign.
    pub fn plain(self) -> String {
        let sign = if self.is_negative { "−" } else { "" };
        let mut digits = self.digits.to_string();
        if self.exponent >= 0 {
            if self.digits != 0 {
                digits.push_str(&"0".repeat(self.exponent.unsigned_abs() as usize));
            }
            return format!("{sign}{digits}");
        }
        let places = self.exponent.unsigned_abs() as usize;
        let padded = format!("{digits:0>width$}", width = places + 1);
        let (whole, part) = padded.split_at(padded.len() - places);
        format!("{sign}{whole}.{part}")
    }

    /// Digits times ten to the `power`.
    pub fn scientific(self, power: i32) -> String {
        let mantissa = Self {
            exponent: self.exponent - power,
            ..self
        };
        format!("{} × 10{}", mantissa.plain(), superscript(power))
    }
}

fn superscript(power: i32) -> String {
    let sign = if power < 0 { "⁻" } else { "" };
    let digits = power.unsigned_abs().to_string();
    let raised = digits
        .chars()
        .filter_map(|digit| SUPERSCRIPT.get(digit.to_digit(10)? as usize));
    sign.chars().chain(raised.copied()).collect()
}

/// The power of ten of the first digit; none for zero.
pub(super) fn leading_exponent(value: f64) -> Option<i32> {
    let exact = Decimal::exact(value);
    (exact.digits != 0).then_some(exact.exponent + 14)
}

/// The power of ten of the last of `count` significant digits, after rounding.
pub(super) fn significant_exponent(value: f64, count: i32) -> i32 {
    let Some(leading) = leading_exponent(value) else {
        return 1 - count;
    };
    let exponent = leading - count + 1;
    let rounded = Decimal::rounded(value, exponent).digits;
    // 9.996 in three digits is 10.0, not 10.00.
    let carried = rounded == 10u128.pow(count.unsigned_abs());
    exponent + i32::from(carried)
}

/// The power of ten of an uncertainty's last digit: two digits after a leading 1 or 2, else one.
pub(super) fn uncertainty_exponent(uncertainty: f64) -> i32 {
    let exact = Decimal::exact(uncertainty);
    let first = exact.digits / 10u128.pow(14);
    significant_exponent(uncertainty, if first <= 2 { 2 } else { 1 })
}

/// The power of ten of the last digit that is not zero, in at most twelve significant ones.
pub(super) fn shortest_exponent(value: f64) -> i32 {
    let mut decimal = Decimal::rounded(value, significant_exponent(value, 12));
    while decimal.digits != 0 && decimal.digits.is_multiple_of(10) {
        decimal.digits /= 10;
        decimal.exponent += 1;
    }
    decimal.exponent
}

/// The value with this many decimals, ties away from zero, with the true minus sign.
pub fn rounded(value: f64, decimals: u8) -> String {
    Decimal::rounded(value, -i32::from(decimals)).plain()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ties_round_away_from_zero_whatever_the_binary_fraction() {
        assert_eq!(rounded(21.5, 0), "22");
        assert_eq!(rounded(2087.5, 0), "2088");
        assert_eq!(rounded(22.5, 0), "23");
        assert_eq!(rounded(1.005, 2), "1.01");
        assert_eq!(rounded(-0.125, 2), "−0.13");
        assert_eq!(rounded(0.285, 2), "0.29");
        assert_eq!(rounded(0.1 + 0.2, 1), "0.3");
        assert_eq!(rounded(-0.04, 1), "0.0");
        assert_eq!(rounded(f64::NAN, 1), "0.0");
    }

    #[test]
    fn digits_after_a_carry_are_not_one_too_many() {
        assert_eq!(significant_exponent(9.996, 3), -1);
        assert_eq!(significant_exponent(9.994, 3), -2);
        assert_eq!(uncertainty_exponent(0.096), -1);
        assert_eq!(uncertainty_exponent(0.14), -2);
        assert_eq!(uncertainty_exponent(0.31), -1);
    }

    #[test]
    fn powers_of_ten_are_raised() {
        assert_eq!(Decimal::rounded(1.25e-5, -6).scientific(-5), "1.3 × 10⁻⁵");
        assert_eq!(Decimal::rounded(3.0e7, 7).scientific(7), "3 × 10⁷");
    }
}
