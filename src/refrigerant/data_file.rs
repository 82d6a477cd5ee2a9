//! The one reader of the data files: lines of cells parted by semicolons, `#` lines and the heading left out.
//!
//! A file of `data/` is checked in and proved by the tests, so a fault in one is ours; it is still told by line, never a panic.

/// Reads each line of `N` cells with `read`.
///
/// Errors: the first line that has another number of cells or that `read` refuses.
pub(super) fn rows<const N: usize, T>(
    text: &'static str,
    read: impl Fn([&'static str; N]) -> Option<T>,
) -> Result<Vec<T>, String> {
    let is_data = |line: &str| !line.is_empty() && !line.starts_with('#');
    let numbered = (1..).zip(text.lines());
    let data = numbered.filter(|(_, line)| is_data(line)).skip(1);
    data.map(|(number, line)| {
        let cells: Vec<&'static str> = line.split(';').collect();
        let row = <[&'static str; N]>::try_from(cells).ok();
        row.and_then(&read)
            .ok_or_else(|| format!("line {number}: {line}"))
    })
    .collect()
}

/// Reads a cell that may be empty: `None` where `read` refuses it, `Some(None)` where it is empty.
#[expect(
    clippy::option_option,
    reason = "refused and empty are different things"
)]
pub(super) fn optional<T>(
    cell: &'static str,
    read: impl Fn(&'static str) -> Option<T>,
) -> Option<Option<T>> {
    if cell.is_empty() {
        Some(None)
    } else {
        read(cell).map(Some)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_with_a_cell_too_few_is_told_by_its_number() {
        let text = "# remark\na;b\n1;2\n3\n";
        assert_eq!(
            rows(text, |[a, b]| Some((a, b))),
            Err("line 4: 3".to_owned())
        );
    }
}
