//! A small dense linear system, solved by elimination with row exchange.
//!
//! Two to some sixty unknowns: the batteries of a bank, the factors of a fit.

/// Solves `rows` of coefficients for a right-hand side.
///
/// `None` where there is no one solution: a pivot vanishes because two equations
/// say the same, a number is none, or there are as many equations as unknowns not.
#[must_use]
pub fn solve(rows: &[Vec<f64>], right: &[f64]) -> Option<Vec<f64>> {
    let size = right.len();
    if rows.len() != size || rows.iter().any(|row| row.len() != size) {
        return None;
    }
    // Each row with its own right-hand side behind it.
    let mut rows: Vec<Vec<f64>> = rows
        .iter()
        .zip(right)
        .map(|(row, &right)| row.iter().copied().chain([right]).collect())
        .collect();
    for column in 0..size {
        let pivot = (column..size).max_by(|&a, &b| {
            let (a, b) = (rows[a][column].abs(), rows[b][column].abs());
            a.total_cmp(&b)
        })?;
        if !(rows[pivot][column].abs() > f64::MIN_POSITIVE && rows[pivot][column].is_finite()) {
            return None;
        }
        rows.swap(column, pivot);
        eliminate(&mut rows, column);
    }
    let found = substitute(&rows);
    found.iter().all(|value| value.is_finite()).then_some(found)
}

/// Takes the pivot row out of all rows below it.
fn eliminate(rows: &mut [Vec<f64>], column: usize) {
    let (above, below) = rows.split_at_mut(column + 1);
    let pivot = &above[column];
    for row in below {
        let share = row[column] / pivot[column];
        for (entry, from_pivot) in row.iter_mut().zip(pivot).skip(column) {
            *entry -= share * from_pivot;
        }
    }
}

/// Unknowns of a triangular system, last first.
fn substitute(rows: &[Vec<f64>]) -> Vec<f64> {
    let size = rows.len();
    let mut found = vec![0.0; size];
    for (place, row) in rows.iter().enumerate().rev() {
        let known: f64 = (place + 1..size).map(|k| row[k] * found[k]).sum();
        found[place] = (row[size] - known) / row[place];
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn solves_where_the_first_pivot_is_zero() {
        // 2y = 4, x + y = 5.
        let found = solve(&[vec![0.0, 2.0], vec![1.0, 1.0]], &[4.0, 5.0]);
        assert_eq!(found, Some(vec![3.0, 2.0]));
    }

    /// The Hilbert matrix, whose inverse is known in whole numbers (Choi,
    /// *American Mathematical Monthly* 90 (1983), 301, from memory).
    #[test]
    fn solves_what_is_nearly_singular() {
        let rows: Vec<Vec<f64>> = (0..4)
            .map(|i| (0..4).map(|k| 1.0 / f64::from(i + k + 1)).collect())
            .collect();
        let first = solve(&rows, &[1.0, 0.0, 0.0, 0.0]).unwrap();
        for (found, printed) in first.iter().zip([16.0, -120.0, 240.0, -140.0]) {
            assert!((found / printed - 1.0).abs() < 1e-11, "{found} {printed}");
        }
    }

    #[test]
    fn says_so_when_there_is_no_one_solution() {
        let two = [vec![1.0, 1.0], vec![1.0, 1.0]];
        assert_eq!(solve(&two, &[2.0, 3.0]), None);
        assert_eq!(solve(&two, &[2.0]), None);
        assert_eq!(solve(&[vec![f64::NAN]], &[1.0]), None);
        assert_eq!(solve(&[vec![1.0]], &[f64::NAN]), None);
    }
}
