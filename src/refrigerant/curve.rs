//! Interpolation in a table of nodes: the cubic through the four nodes around the place asked for.

/// Interpolates `ys` at `x` by the cubic through the four nodes of `xs` around it; `xs` ascends.
///
/// `None` outside the nodes, never extrapolated, and where fewer than four nodes are held.
pub(super) fn interpolate(xs: &[f64], ys: &[f64], x: f64) -> Option<f64> {
    let start = four_around(xs, x)?;
    let (xs, ys) = (xs.get(start..start + 4)?, ys.get(start..start + 4)?);
    Some(cubic(xs, ys, x))
}

/// Gives the first of the four nodes around `x`; at the ends the outermost four.
pub(super) fn four_around(xs: &[f64], x: f64) -> Option<usize> {
    let inside = *xs.first()? <= x && x <= *xs.last()?;
    let last_start = xs.len().checked_sub(4)?;
    let above = xs.partition_point(|node| *node < x);
    inside.then(|| above.saturating_sub(2).min(last_start))
}

/// Lagrange's polynomial through all the nodes given.
fn cubic(xs: &[f64], ys: &[f64], x: f64) -> f64 {
    let weight = |node: f64| {
        let others = xs.iter().filter(|other| **other != node);
        others
            .map(|other| (x - other) / (node - other))
            .product::<f64>()
    };
    xs.iter().zip(ys).map(|(node, y)| weight(*node) * y).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cubic_comes_back_exactly_and_nothing_beyond_the_nodes() {
        let xs = [0.0, 1.0, 2.5, 3.0, 4.5, 6.0];
        let cubic = |x: f64| 1.0 - 2.0 * x + 0.5 * x * x - 0.1 * x * x * x;
        let ys = xs.map(cubic);
        for x in [0.0, 0.3, 1.0, 2.0, 2.9, 4.4, 5.9, 6.0] {
            let found = interpolate(&xs, &ys, x).unwrap();
            assert!((found - cubic(x)).abs() < 1e-12, "{x}");
        }
        for x in [-0.001, 6.001, f64::NAN] {
            assert_eq!(interpolate(&xs, &ys, x), None);
        }
    }
}
