//! A small dense linear system, solved by elimination with row exchange.
//!
//! Banks have a handful of batteries; a matrix library would outweigh its use in
//! the page.

/// Solve `rows` of coefficients, each ending in its right-hand side.
///
/// `None` when a pivot vanishes: two equations say the same, or one holds a
/// number that is none. A network of positive resistances never does.
pub(super) fn solve(mut rows: Vec<Vec<f64>>) -> Option<Vec<f64>> {
    let size = rows.len();
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
    Some(substitute(&rows))
}

/// Take the pivot row out of all rows below it.
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
        let found = solve(vec![vec![0.0, 2.0, 4.0], vec![1.0, 1.0, 5.0]]);
        assert_eq!(found, Some(vec![3.0, 2.0]));
    }

    #[test]
    fn says_so_when_there_is_no_one_solution() {
        assert_eq!(solve(vec![vec![1.0, 1.0, 2.0], vec![1.0, 1.0, 3.0]]), None);
        assert_eq!(solve(vec![vec![f64::NAN, 1.0]]), None);
    }
}
