//! The inverter's loss form against a published efficiency curve.
//!
//! NREL's PVWatts (v5 manual) gives an inverter's output from its input:
//! `out/in = (0.96/0.9637) (-0.0162 z - 0.0059/z + 0.9858)` with `z` the input
//! over the rated input, so output is a quadratic of input. Ours is input as a
//! quadratic of output, which is that one turned round to second order.

use super::{bare_bank, near, power};
use till_morning::{
    physics::battery::Chemistry,
    plan::{Feed, Figure, Mode, Plan},
};

const RATED_IN_W: f64 = 2000.0;

/// The published efficiency at a share of the rated input.
fn published(z: f64) -> f64 {
    0.96 / 0.9637 * (-0.0162 * z - 0.0059 / z + 0.9858)
}

/// The published quadratic turned round to second order about no output: the
/// three coefficients of our form, and nothing fitted.
fn turned_round() -> Feed {
    let [a, b, c]: [f64; 3] = [-0.0162, 0.9858, -0.0059].map(|x| x * 0.96 / 0.9637);
    // The input at no output: the smaller root of a z² + b z + c.
    let idle = (-b + (b * b - 4.0 * a * c).sqrt()) / (2.0 * a);
    let slope = b + 2.0 * a * idle;
    let (first, second) = (1.0 / slope, -a / slope.powi(3));
    Feed::Inverter {
        no_load_w: Figure::label(idle * RATED_IN_W),
        proportional_loss_percent: Figure::label(100.0 * (first - 1.0)),
        square_loss_percent_per_kw: Figure::label(100.0 * second / (RATED_IN_W / 1000.0)),
        limit_w: None,
        cutoff_v: None,
    }
}

/// Watts that the inverter takes from a bank for watts that its load takes,
/// read off a whole answer.
fn taken_w(load_w: f64) -> f64 {
    let mut plan = Plan::of(bare_bank(Chemistry::Lfp, 25.6, 200.0), power(load_w));
    plan.units[0].feed = turned_round();
    let run = super::answered(&plan).runs.remove(0);
    run.unit_wh / run.hours_h.likely
}

/// Efficiency at a share of the rated input.
fn efficiency(z: f64) -> f64 {
    let out_w = published(z) * z * RATED_IN_W;
    out_w / taken_w(out_w)
}

/// From a twentieth of the rated input to all of it within 0.0006: what the
/// published curve has beyond second order.
#[test]
fn a_published_efficiency_curve() {
    let rows = [
        (0.05, 0.8637),
        (0.1, 0.9216),
        (0.2, 0.9494),
        (0.3, 0.9576),
        (0.5, 0.9622),
        (0.75, 0.9621),
        (1.0, 0.9600),
    ];
    for (z, printed) in rows {
        near(published(z), printed, 5e-5);
        near(efficiency(z), printed, 6e-4);
    }
}

/// The two weighted efficiencies in use, with their published weights: 0.9592
/// by California's, 0.9542 by Europe's, of the same curve.
#[test]
fn weighted_efficiencies() {
    let california = [
        (0.1, 0.04),
        (0.2, 0.05),
        (0.3, 0.12),
        (0.5, 0.21),
        (0.75, 0.53),
        (1.0, 0.05),
    ];
    let europe = [
        (0.05, 0.03),
        (0.1, 0.06),
        (0.2, 0.13),
        (0.3, 0.10),
        (0.5, 0.48),
        (1.0, 0.20),
    ];
    for (weights, printed) in [(california, 0.95921), (europe, 0.95424)] {
        let whole: f64 = weights.iter().map(|(_, weight)| weight).sum();
        near(whole, 1.0, 1e-12);
        let mean: f64 = weights
            .iter()
            .map(|(z, weight)| weight * efficiency(*z))
            .sum();
        near(mean, printed, 3e-4);
    }
}

/// A unit on standby all night still pays for the inverter being on.
#[test]
fn no_load_is_drawn_by_an_idle_inverter() {
    let mut mode: Mode = power(1000.0);
    mode.duty_percent = Some(Figure::label(1.0));
    let mut plan = Plan::of(bare_bank(Chemistry::Lfp, 25.6, 200.0), mode);
    plan.units[0].feed = turned_round();
    let run = super::answered(&plan).runs.remove(0);
    let Feed::Inverter { no_load_w, .. } = turned_round() else {
        unreachable!()
    };
    // The same published curve: -0.0059/z is a loss of 0.0059 of the rating.
    near(no_load_w.value, 0.0059 / 0.9858 * RATED_IN_W, 0.01);
    let mean_w = run.unit_wh / run.hours_h.likely;
    near(
        mean_w,
        0.99 * no_load_w.value + 0.01 * taken_w(1000.0),
        1e-2,
    );
}
