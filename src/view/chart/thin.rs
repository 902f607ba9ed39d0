//! Fewer points, where there are more than the pixels can show.
//!
//! Per pixel column the lowest and the highest point stay, and the ends of the
//! whole run: no peak or dip is lost, which averaging or every-n-th would do.

/// A point in pixels.
pub type Px = (f64, f64);

/// Thins a run that has more than two points per pixel column.
///
/// Points are in rising x. The first, the last, and each column's lowest and
/// highest stay, in order: at most two per column and two more.
#[must_use]
pub fn thin(points: &[Px]) -> Vec<Px> {
    let (Some(first), Some(last)) = (points.first(), points.last()) else {
        return Vec::new();
    };
    if points.len() <= 2 * columns(first.0, last.0) {
        return points.to_vec();
    }
    let end = points.len() - 1;
    let mut kept = vec![0];
    let mut from = 0;
    for column in points.chunk_by(|a, b| a.0.floor() == b.0.floor()) {
        let (low, high) = extremes(column);
        kept.push(from + low.min(high));
        kept.push(from + low.max(high));
        from += column.len();
    }
    kept.push(end);
    kept.dedup();
    kept.into_iter().map(|i| points[i]).collect()
}

/// Thins a band with more than two points per pixel column to one per column:
/// the lowest low and the highest high. Ends of the run keep their x.
#[must_use]
pub fn thin_band(points: &[(f64, Px)]) -> Vec<(f64, Px)> {
    let (Some(first), Some(last)) = (points.first(), points.last()) else {
        return Vec::new();
    };
    if points.len() <= 2 * columns(first.0, last.0) {
        return points.to_vec();
    }
    let mut kept: Vec<_> = points
        .chunk_by(|a, b| a.0.floor() == b.0.floor())
        .map(|column| (column[0].0, widest(column)))
        .collect();
    kept.push(*last);
    kept
}

/// Pixel columns that a run touches.
fn columns(from_px: f64, to_px: f64) -> usize {
    (to_px.floor() - from_px.floor()).max(0.0) as usize + 1
}

/// Where in a column the lowest and the highest y are; the earliest on a tie.
fn extremes(column: &[Px]) -> (usize, usize) {
    let (mut low, mut high) = (0, 0);
    for (i, point) in column.iter().enumerate() {
        if point.1 < column[low].1 {
            low = i;
        }
        if point.1 > column[high].1 {
            high = i;
        }
    }
    (low, high)
}

/// The smallest first and the largest second end in a column.
fn widest(column: &[(f64, Px)]) -> Px {
    column.iter().fold(column[0].1, |(low, high), (_, ends)| {
        (low.min(ends.0), high.max(ends.1))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_lone_spike_survives() {
        let mut points: Vec<Px> = (0..1000).map(|i| (f64::from(i) / 100.0, 5.0)).collect();
        points[437].1 = 90.0;
        let kept = thin(&points);
        assert!(kept.contains(&points[437]));
        assert!(kept.len() <= 22, "{}", kept.len());
    }

    #[test]
    fn few_points_are_left_alone() {
        let points = [(0.0, 1.0), (0.5, 2.0), (10.0, 3.0)];
        assert_eq!(thin(&points), points);
        assert!(thin(&[]).is_empty());
    }
}
