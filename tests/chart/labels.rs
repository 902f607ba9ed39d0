//! Labels moved apart.

use super::wild;
use proptest::prelude::*;
use till_morning::view::chart::labels::{Wish, place};

#[track_caller]
fn check_places(wishes: &[(f64, f64)], edges: (f64, f64), expected: &[f64], within: f64) {
    let wishes: Vec<Wish> = wishes
        .iter()
        .map(|(y, height)| Wish {
            y: *y,
            height: *height,
        })
        .collect();
    let placement = place(&wishes, edges.0, edges.1);
    let got: Vec<f64> = placement
        .labels
        .iter()
        .map(|label| label.unwrap().y)
        .collect();
    assert!(!placement.crowded);
    assert_eq!(got.len(), expected.len());
    let off = got.iter().zip(expected).map(|(g, e)| (g - e).abs());
    assert!(off.fold(0.0, f64::max) <= within, "{got:?} {expected:?}");
}

#[test]
fn free_labels_match_scipy() {
    // scipy 1.17.1: isotonic_regression(y - offset).x + offset, offset being the
    // running sum of half heights.
    let tall = |ys: [f64; 6]| ys.map(|y| (y, 14.0));
    let far = (-1000.0, 1000.0);
    check_places(
        &tall([10.0, 12.0, 14.0, 50.0, 51.0, 90.0]),
        far,
        &[-2.0, 12.0, 26.0, 43.5, 57.5, 90.0],
        1e-9,
    );
    let mixed = [(100.0, 10.0), (100.0, 20.0), (100.0, 16.0)];
    check_places(&mixed, far, &[84.0, 99.0, 117.0], 1e-9);
}

#[test]
fn bounded_labels_match_scipy() {
    // scipy 1.17.1: minimize(sum of squared moves, method="SLSQP"), gaps and
    // edges as inequality constraints; printed to 8 decimals.
    let wishes = [2.0, 3.0, 5.0, 60.0, 97.0, 99.0].map(|y| (y, 14.0));
    check_places(
        &wishes,
        (0.0, 100.0),
        &[7.0, 21.0, 35.0, 60.0, 79.0, 93.0],
        1e-5,
    );
    let wishes = [
        (-5.0, 10.0),
        (8.0, 12.0),
        (40.0, 14.0),
        (44.0, 10.0),
        (46.0, 12.0),
        (120.0, 16.0),
    ];
    let expected = [
        5.0,
        16.0,
        31.666_666_67,
        43.666_666_67,
        54.666_666_67,
        120.0,
    ];
    check_places(&wishes, (0.0, 130.0), &expected, 1e-5);
}

/// The least cost of three labels on a grid of whole pixels, by trying them all.
fn brute_force(ys: &[f64], height: f64, bottom: i32) -> f64 {
    let half = height / 2.0;
    let cost = |middles: [f64; 3]| -> f64 {
        let moves = middles.iter().zip(ys).map(|(m, y)| (m - y).powi(2));
        moves.sum()
    };
    let mut least = f64::INFINITY;
    for a in 0..=bottom {
        for b in a..=bottom {
            for c in b..=bottom {
                let middles = [a, b, c].map(f64::from);
                let apart = middles.windows(2).all(|p| p[1] - p[0] >= height);
                let inside = middles[0] >= half && middles[2] <= f64::from(bottom) - half;
                if apart && inside {
                    least = least.min(cost(middles));
                }
            }
        }
    }
    least
}

proptest! {
    #[test]
    fn no_grid_placement_moves_less(mut ys in prop::collection::vec(-10.0..60.0f64, 3), height in 2.0..16.0f64) {
        ys.sort_by(f64::total_cmp);
        let wishes: Vec<Wish> = ys.iter().map(|y| Wish { y: *y, height }).collect();
        let labels = place(&wishes, 0.0, 50.0).labels;
        let ours: f64 = labels.iter().zip(&ys).map(|(l, y)| (l.unwrap().y - y).powi(2)).sum();
        prop_assert!(ours <= brute_force(&ys, height, 50) + 1e-6);
    }

    #[test]
    fn labels_that_fit_do_not_overlap(wishes in prop::collection::vec((wild(), 0.0..30.0f64), 0..12), bottom in 0.0..400.0f64) {
        let wishes: Vec<Wish> = wishes.iter().map(|(y, height)| Wish { y: *y, height: *height }).collect();
        let placement = place(&wishes, 0.0, bottom);
        let mut placed: Vec<(f64, Wish)> = placement
            .labels
            .iter()
            .zip(&wishes)
            .filter_map(|(label, wish)| label.map(|l| (l.y, *wish)))
            .collect();
        prop_assert!(placed.iter().all(|(y, _)| y.is_finite()));
        placed.sort_by(|a, b| a.0.total_cmp(&b.0));
        let in_order = |p: &[(f64, Wish)]| {
            let sized = p[0].1.height > 0.0 && p[1].1.height > 0.0;
            !sized || p[0].1.y <= p[1].1.y
        };
        prop_assert!(placement.crowded || placed.windows(2).all(in_order));
        if !placement.crowded {
            for pair in placed.windows(2) {
                let apart = (pair[0].1.height + pair[1].1.height) / 2.0;
                prop_assert!(pair[1].0 - pair[0].0 >= apart - 1e-6);
            }
            for (y, wish) in &placed {
                let half = wish.height / 2.0;
                prop_assert!(*y >= half - 1e-6 && *y <= bottom - half + 1e-6);
            }
        }
    }
}
