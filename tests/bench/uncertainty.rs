//! The GUM: degrees of freedom, means of readings, coverage.

use super::table::{near, number, rows};
use till_morning::physics::bench::propagate::{Input, effective_freedom};
use till_morning::physics::bench::student::{coverage_factor, quantile};

const EXAMPLES: &str = include_str!("../data/uncertainty_examples.csv");

// JCGM 100:2008, H.1: an end gauge. u = 32 nm, 16 degrees of freedom, and
// k = 2.92 at 99 % (budget from memory; u and freedom as printed there).
#[test]
fn gum_h1_end_gauge() {
    // l = ls + d - ls (da * theta + as * dt), nanometres and kelvins: what each
    // input makes of u(l), by its slope. da is 0, so theta and as make none.
    let length = 50_000_623.0;
    let parts = [
        (25.0, Some(18.0)),
        (9.7, Some(25.6)),
        (length * -0.1 * 0.58e-6, Some(50.0)),
        (length * 11.5e-6 * 0.029, Some(2.0)),
    ];
    let squares: f64 = parts.iter().map(|part| part.0 * part.0).sum();
    let standard = squares.sqrt();
    assert_eq!(standard.round(), 32.0);
    let freedom = effective_freedom(standard, parts.into_iter()).unwrap();
    assert_eq!(freedom.floor(), 16.0);
    let row = rows(EXAMPLES)
        .into_iter()
        .find(|r| r[0].starts_with("GUM_H1_nu_eff"))
        .unwrap();
    // The row's rounded sum, 1002 nm^2, gives 16.73; the unrounded one 16.7.
    near(freedom, number(&row[8]), 5e-3);
    near(quantile(0.99, freedom), number(&row[9]), 1e-4);
}

// JCGM 100:2008, Table H.2: five readings each of volts, milliamperes and radians, with
// their means and the standard deviations of these as printed there (from memory).
#[test]
fn gum_h2_means_of_readings() {
    let read = [
        ([5.007, 4.994, 5.005, 4.990, 4.999], 4.9990, 0.0032, 5e-5),
        (
            [19.663, 19.639, 19.640, 19.685, 19.678],
            19.6610,
            0.0095,
            5e-5,
        ),
        (
            [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
            1.044_46,
            0.000_75,
            5e-6,
        ),
    ];
    for (readings, mean, standard, half_digit) in read {
        let found = Input::repeated(&readings).unwrap();
        assert!((found.value - mean).abs() < 1e-9, "{found:?}");
        // To the last digit printed there.
        assert!((found.standard - standard).abs() <= half_digit, "{found:?}");
        assert_eq!(found.freedom, Some(4.0));
    }
}

// JCGM 100:2008, Table G.2, column 95.45 % (from memory), two decimals.
#[test]
fn coverage_factors_of_the_gum() {
    for (freedom, want) in [
        (1.0, 13.97),
        (2.0, 4.53),
        (3.0, 3.31),
        (4.0, 2.87),
        (5.0, 2.65),
        (8.0, 2.37),
        (10.0, 2.28),
        (16.0, 2.17),
        (20.0, 2.13),
        (50.0, 2.05),
    ] {
        let got = coverage_factor(Some(freedom));
        assert!((got - want).abs() <= 0.005 + 1e-9, "{freedom}: {got}");
    }
    assert_eq!(coverage_factor(None), 2.0);
}
