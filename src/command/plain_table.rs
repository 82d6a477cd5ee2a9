//! A table for a terminal, columns as wide as they need, numbers to the right; and for a spreadsheet.

use std::borrow::Cow;

/// A table with its head; a heading that begins with `|` marks a column of numbers.
pub fn plain_table(heads: &[String], rows: &[Vec<String>]) -> String {
    let right: Vec<bool> = heads.iter().map(|head| head.starts_with('|')).collect();
    let head: Vec<String> = heads
        .iter()
        .map(|head| head.trim_start_matches('|').to_owned())
        .collect();
    let lines: Vec<&Vec<String>> = std::iter::once(&head).chain(rows).collect();
    let width = |column: usize| {
        let cells = lines.iter().filter_map(|line| line.get(column));
        cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..heads.len()).map(width).collect();
    let mut out = String::new();
    for line in lines {
        let mut text = String::from("  ");
        for ((cell, width), right) in line.iter().zip(&widths).zip(&right) {
            let space = " ".repeat(width - cell.chars().count());
            let (before, after) = if *right {
                (space.as_str(), "")
            } else {
                ("", space.as_str())
            };
            text += &format!("{before}{cell}{after}  ");
        }
        out += text.trim_end();
        out.push('\n');
    }
    out
}

/// A cell that no spreadsheet takes for a formula: an apostrophe before what begins like one, unless it
/// is a number.
fn guarded(cell: &str) -> Cow<'_, str> {
    let formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']);
    let number = cell.parse::<f64>().is_ok_and(f64::is_finite);
    if formula && !number {
        Cow::Owned(format!("'{cell}"))
    } else {
        Cow::Borrowed(cell)
    }
}

/// A table as comma-separated values (RFC 4180), without the marks of number columns, and without
/// anything that a spreadsheet would run.
pub fn comma_table(heads: &[String], rows: &[Vec<String>]) -> Option<String> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let heads = heads.iter().map(|head| head.trim_start_matches('|'));
    writer.write_record(heads).ok()?;
    for row in rows {
        let cells = row.iter().map(|cell| guarded(cell).into_owned());
        writer.write_record(cells).ok()?;
    }
    String::from_utf8(writer.into_inner().ok()?).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_in_a_cell_is_a_formula_and_numbers_stay_numbers() {
        for formula in [
            "=1+1", "+1+1", "-1-1", "@SUM(A1)", "\t=1", "\r=1", "-inf", "+nan",
        ] {
            assert_eq!(guarded(formula), format!("'{formula}"));
        }
        for plain in [
            "-1.20",
            "+3",
            "-1e-5",
            "",
            "a=b",
            "0.5",
            "− 3",
            "2026-03-10",
        ] {
            assert_eq!(guarded(plain), plain);
        }
    }

    #[test]
    fn numbers_stand_to_the_right_and_commas_are_quoted() {
        let heads = ["When".to_owned(), "|kg".to_owned()];
        let rows = [
            vec!["June, early".to_owned(), "9.00".to_owned()],
            vec!["July".to_owned(), "10.00".to_owned()],
        ];
        assert_eq!(
            plain_table(&heads, &rows),
            "  When            kg\n  June, early   9.00\n  July         10.00\n"
        );
        assert_eq!(
            comma_table(&heads, &rows).unwrap(),
            "When,kg\n\"June, early\",9.00\nJuly,10.00\n"
        );
    }
}
