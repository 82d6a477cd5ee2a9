//! Linear least squares with any few columns: orthogonalised one after another, and a column that the
//! ones before it already hold is dropped.

/// A fit.
#[derive(Clone, Debug)]
pub struct LeastSquares {
    /// Coefficient of each column; `None` where it was dropped.
    pub coefficients: Vec<Option<f64>>,
    /// What each row weighs in each coefficient: `c = Σ weight × y`; empty where it was dropped.
    pub weights: Vec<Vec<f64>>,
    /// What is left of `y`.
    pub residuals: Vec<f64>,
}

/// Share of a column that must be new beside those before it.
const NEW: f64 = 1e-7;

/// Fits `y` by a sum of columns of the same length; `None` unless more rows than columns are left.
///
/// Modified Gram–Schmidt with a second pass (Björck 1967; "twice is enough", from memory). Put the
/// columns that matter first: of two that say the same, the later is dropped.
pub fn least_squares(columns: &[Vec<f64>], y: &[f64]) -> Option<LeastSquares> {
    let mut kept: Vec<usize> = Vec::new();
    let mut basis: Vec<Vec<f64>> = Vec::new();
    let mut upper: Vec<Vec<f64>> = Vec::new();
    for (index, column) in columns.iter().enumerate() {
        let size = dot(column, column).sqrt();
        let mut rest = column.clone();
        let mut along = vec![0.0; basis.len()];
        for _ in 0..2 {
            for (direction, along) in basis.iter().zip(&mut along) {
                let part = dot(direction, &rest);
                *along += part;
                add(&mut rest, -part, direction);
            }
        }
        let new = dot(&rest, &rest).sqrt();
        if new.is_finite() && new > NEW * size && size > 0.0 {
            for value in &mut rest {
                *value /= new;
            }
            along.push(new);
            basis.push(rest);
            upper.push(along);
            kept.push(index);
        }
    }
    if y.len() <= kept.len() {
        return None;
    }
    let mut residuals = y.to_vec();
    for direction in &basis {
        let part = dot(direction, &residuals);
        add(&mut residuals, -part, direction);
    }
    let mut fit = LeastSquares {
        coefficients: vec![None; columns.len()],
        weights: vec![Vec::new(); columns.len()],
        residuals,
    };
    // Back substitution, on the rows' weights instead of on one right-hand side.
    let mut solved: Vec<Vec<f64>> = vec![Vec::new(); kept.len()];
    for place in (0..kept.len()).rev() {
        let mut weights = basis.get(place)?.clone();
        for later in place + 1..kept.len() {
            let part = *upper.get(later)?.get(place)?;
            add(&mut weights, -part, solved.get(later)?);
        }
        let own = *upper.get(place)?.get(place)?;
        for weight in &mut weights {
            *weight /= own;
        }
        let column = *kept.get(place)?;
        *fit.coefficients.get_mut(column)? = Some(dot(&weights, y));
        fit.weights.get_mut(column)?.clone_from(&weights);
        *solved.get_mut(place)? = weights;
    }
    Some(fit)
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn add(to: &mut [f64], factor: f64, what: &[f64]) {
    for (to, what) in to.iter_mut().zip(what) {
        *to += factor * what;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parabola() -> (Vec<Vec<f64>>, Vec<f64>) {
        let x: Vec<f64> = (0..50).map(|i| f64::from(i) / 10.0).collect();
        let columns = vec![
            vec![1.0; 50],
            x.clone(),
            x.iter().map(|x| x * x).collect::<Vec<f64>>(),
        ];
        let y = x.iter().map(|x| 3.0 - 2.0 * x + 0.25 * x * x).collect();
        (columns, y)
    }

    #[test]
    fn known_coefficients_come_back() {
        let (columns, y) = parabola();
        let fit = least_squares(&columns, &y).unwrap();
        for (found, true_value) in fit.coefficients.iter().zip([3.0, -2.0, 0.25]) {
            assert!((found.unwrap() - true_value).abs() < 1e-10);
        }
        assert!(fit.residuals.iter().all(|rest| rest.abs() < 1e-10));
    }

    #[test]
    fn a_column_said_twice_is_dropped() {
        let (mut columns, y) = parabola();
        columns.insert(2, columns[1].iter().map(|x| 7.0 * x + 1.0).collect());
        let fit = least_squares(&columns, &y).unwrap();
        assert_eq!(fit.coefficients[2], None);
        assert!((fit.coefficients[3].unwrap() - 0.25).abs() < 1e-10);
    }

    #[test]
    fn fewer_rows_than_columns_fit_nothing() {
        let columns = vec![vec![1.0, 1.0], vec![0.0, 1.0]];
        assert!(least_squares(&columns, &[1.0, 2.0]).is_none());
        assert!(least_squares(&[vec![0.0; 3]], &[1.0, 2.0, 3.0]).is_some());
    }
}
