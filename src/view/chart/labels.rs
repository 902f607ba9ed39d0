//! Labels at line ends, moved apart by as little as possible.
//!
//! With each label's stacking offset taken off, "no two overlap" becomes "the
//! numbers do not fall", and the least sum of squared moves is isotonic
//! regression, solved exactly by pooling adjacent violators (Barlow,
//! Bartholomew, Bremner and Brunk, *Statistical Inference under Order
//! Restrictions*, 1972). Holding that answer between two bounds is optimal for
//! the bounded problem too, so the plot's edges cost one clamp.

use super::scale::drawable;

/// A move shorter than this, in pixels, is not seen and needs no leader.
const UNSEEN_PX: f64 = 1.0;

/// Where a label would like to be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wish {
    /// Its middle, px; one that is not a number has no label.
    pub y: f64,
    /// Its height, px.
    pub height: f64,
}

/// Where a label goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// Its middle, px.
    pub y: f64,
    /// Whether it moved far enough to need a leader back to its line.
    pub moved: bool,
}

/// Labels, in the order of the wishes.
#[derive(Clone, Debug, PartialEq)]
pub struct Placement {
    /// One per wish; `None` where the wish had no place.
    pub labels: Vec<Option<Placed>>,
    /// Whether they were too many for the room and overlap evenly.
    pub crowded: bool,
}

/// Places labels between two edges, px, without overlap where they fit.
///
/// Order along y is kept; equal wishes keep the order of the list. The sum of
/// squared moves is the least possible.
///
/// ```
/// use till_morning::view::chart::labels::{Wish, place};
/// let wish = |y| Wish { y, height: 10.0 };
/// let placed = place(&[wish(52.0), wish(48.0)], 0.0, 100.0);
/// let ys: Vec<f64> = placed.labels.iter().flatten().map(|l| l.y).collect();
/// assert_eq!(ys, [55.0, 45.0]);
/// ```
#[must_use]
pub fn place(wishes: &[Wish], top: f64, bottom: f64) -> Placement {
    let (top, bottom) = edges(top, bottom);
    // A handful: each goes in behind those that are as high or higher.
    let mut order: Vec<usize> = Vec::with_capacity(wishes.len());
    for i in (0..wishes.len()).filter(|i| drawable(wishes[*i].y)) {
        order.insert(order.partition_point(|j| wishes[*j].y <= wishes[i].y), i);
    }

    let heights: Vec<f64> = order.iter().map(|i| height(wishes[*i])).collect();
    let stacked = stacked_middles(&heights);
    let total: f64 = heights.iter().sum();
    let crowded = total > bottom - top;
    let middles = if crowded {
        let squeeze = (bottom - top) / total;
        stacked.iter().map(|m| top + m * squeeze).collect()
    } else {
        spread_out(&order, wishes, &stacked, (top, bottom - total))
    };

    let mut labels = vec![None; wishes.len()];
    for (i, y) in order.into_iter().zip(middles) {
        let moved = (y - wishes[i].y).abs() >= UNSEEN_PX;
        labels[i] = Some(Placed { y, moved });
    }
    Placement { labels, crowded }
}

/// Least-squares middles: `free` are the bounds of the offset-free positions.
fn spread_out(order: &[usize], wishes: &[Wish], stacked: &[f64], free: (f64, f64)) -> Vec<f64> {
    let wanted: Vec<f64> = order
        .iter()
        .zip(stacked)
        .map(|(i, middle)| wishes[*i].y - middle)
        .collect();
    isotonic(&wanted)
        .into_iter()
        .zip(stacked)
        .map(|(free_y, middle)| free_y.max(free.0).min(free.1) + middle)
        .collect()
}

/// Middles of labels stacked from zero.
fn stacked_middles(heights: &[f64]) -> Vec<f64> {
    let mut top = 0.0;
    heights
        .iter()
        .map(|height| {
            top += height;
            top - height / 2.0
        })
        .collect()
}

/// The nearest non-falling sequence by least squares: pool adjacent violators.
/// Each pool holds the sum and the count of the values it stands for.
fn isotonic(values: &[f64]) -> Vec<f64> {
    let mut pools: Vec<(f64, f64)> = Vec::with_capacity(values.len());
    for value in values {
        let mut pool = (*value, 1.0);
        while let Some((sum, count)) = pools.pop_if(|last| last.0 / last.1 > pool.0 / pool.1) {
            pool = (pool.0 + sum, pool.1 + count);
        }
        pools.push(pool);
    }
    pools
        .into_iter()
        .flat_map(|(sum, count)| std::iter::repeat_n(sum / count, count as usize))
        .collect()
}

/// A height that is no length counts as none.
fn height(wish: Wish) -> f64 {
    if drawable(wish.height) {
        wish.height.max(0.0)
    } else {
        0.0
    }
}

/// Edges in order; one that is not a number is 0.
fn edges(top: f64, bottom: f64) -> (f64, f64) {
    let hold = |edge: f64| if drawable(edge) { edge } else { 0.0 };
    let (top, bottom) = (hold(top), hold(bottom));
    (top.min(bottom), top.max(bottom))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pools_match_scipy() {
        // scipy 1.17.1, scipy.optimize.isotonic_regression([1.5, 1, 4, 6, 5, 7, 8, 2]).x
        let got = isotonic(&[1.5, 1.0, 4.0, 6.0, 5.0, 7.0, 8.0, 2.0]);
        let third = 17.0 / 3.0; // printed there as 5.66666667
        let expected = [1.25, 1.25, 4.0, 5.5, 5.5, third, third, third];
        assert_eq!(got.len(), expected.len());
        for (got, expected) in got.iter().zip(expected) {
            assert!((got - expected).abs() < 1e-12, "{got} {expected}");
        }
    }

    #[test]
    fn too_many_share_the_room_evenly() {
        let wishes = [Wish {
            y: 5.0,
            height: 10.0,
        }; 4];
        let placed = place(&wishes, 0.0, 20.0);
        assert!(placed.crowded);
        let ys: Vec<f64> = placed.labels.iter().flatten().map(|l| l.y).collect();
        assert_eq!(ys, [2.5, 7.5, 12.5, 17.5]);
    }

    #[test]
    fn no_place_no_label() {
        let wish = |y| Wish { y, height: 10.0 };
        let placed = place(&[wish(f64::NAN), wish(50.0)], 0.0, 100.0);
        assert_eq!(placed.labels[0], None);
        assert_eq!(
            placed.labels[1],
            Some(Placed {
                y: 50.0,
                moved: false
            })
        );
    }
}
