//! The GUM and its supplements, NIST, and two libraries.

use super::table::{near, number, rows};
use till_morning::physics::bench::claim::chance_at_least;
use till_morning::physics::bench::line::fit;
use till_morning::physics::bench::measured::Measured;
use till_morning::physics::bench::propagate::{Input, propagate};
use till_morning::physics::bench::sample::{Shape, sample};
use till_morning::physics::bench::student::{coverage_factor, quantile};

const EXAMPLES: &str = include_str!("../data/uncertainty_examples.csv");
const NORRIS: &str = include_str!("../data/nist_norris.csv");

type Model = fn(&[f64]) -> f64;

/// Equal to the six decimals that the file prints.
#[track_caller]
fn printed(got: f64, cell: &str) {
    assert!(
        (got - number(cell)).abs() <= 5.001e-7,
        "got {got}, want {cell}"
    );
}

// JCGM 100:2008, H.1: an end gauge. u = 32 nm, 16 degrees of freedom, and
// k = 2.92 at 99 % (budget from memory; u and freedom as printed there).
#[test]
fn gum_h1_end_gauge() {
    let with = |value, standard, freedom| Input {
        value,
        standard,
        freedom: Some(freedom),
    };
    // l = ls + d - ls (da * theta + as * dt), nanometres and kelvins.
    let inputs = [
        with(50_000_623.0, 25.0, 18.0),
        with(215.0, 9.7, 25.6),
        with(0.0, 0.58e-6, 50.0),
        Input::new(-0.1, 0.41),
        Input::new(11.5e-6, 1.2e-6),
        with(0.0, 0.029, 2.0),
    ];
    let out = propagate(
        |x| x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]),
        &inputs,
        &[],
    )
    .unwrap();
    near(out.value, 50_000_838.0, 1e-9);
    assert_eq!(out.standard.round(), 32.0);
    let freedom = out.freedom.unwrap();
    assert_eq!(freedom.floor(), 16.0);
    let row = rows(EXAMPLES)
        .into_iter()
        .find(|r| r[0].starts_with("GUM_H1_nu_eff"))
        .unwrap();
    // The row's rounded sum, 1002 nm^2, gives 16.73; the unrounded one 16.7.
    near(freedom, number(&row[8]), 5e-3);
    near(quantile(0.99, freedom), number(&row[9]), 1e-4);
}

// JCGM 100:2008, H.2: five readings each of volts, milliamperes and phase (Table
// H.2, from memory) give correlated means; outputs as printed there and by the
// Python libraries uncertainties 3.2.3 and GTC 1.5.1. The rounded u and r of
// Table H.3 would give u(R) = 0.070 instead of 0.071.
#[test]
fn gum_h2_impedance() {
    let read: [[f64; 5]; 3] = [
        [5.007, 4.994, 5.005, 4.990, 4.999],
        [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3],
        [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
    ];
    let inputs = read.map(|r| Input::repeated(&r).unwrap());
    let mut r = [0.0; 9];
    for (i, j) in (0..9).map(|k| (k / 3, k % 3)) {
        let (a, b) = (inputs[i], inputs[j]);
        let products: f64 = (0..5)
            .map(|k| (read[i][k] - a.value) * (read[j][k] - b.value))
            .sum();
        let one = if i == j {
            1.0
        } else {
            products / 20.0 / (a.standard * b.standard)
        };
        r[3 * i.max(j) + i.min(j)] = one;
        r[3 * i.min(j) + i.max(j)] = one;
    }
    assert!((r[1] + 0.36).abs() < 0.005 && (r[2] - 0.86).abs() < 0.005);
    let models: [(&str, Model); 3] = [
        ("GUM_H2_R", |x| x[0] / x[1] * x[2].cos()),
        ("GUM_H2_X", |x| x[0] / x[1] * x[2].sin()),
        ("GUM_H2_Z", |x| x[0] / x[1]),
    ];
    for (name, model) in models {
        let row = rows(EXAMPLES).into_iter().find(|r| r[0] == name).unwrap();
        let out = propagate(model, &inputs, &r).unwrap();
        printed(out.value, &row[2]);
        printed(out.standard, &row[3]);
        // As printed in the GUM, to its last digit.
        assert!((out.value - number(&row[6])).abs() < 1e-3);
        assert!((out.standard - number(&row[7])).abs() < 1e-3);
        let normal = inputs.map(|i| (i, Shape::Normal));
        near(
            sample(model, &normal, &r, 100_000, 1).unwrap().standard,
            number(&row[3]),
            0.01,
        );
    }
}

// JCGM 101:2008, 9.2.2 and 9.2.3: four inputs added, normal and even.
#[test]
fn jcgm_101_sum_of_four() {
    for (name, shape) in [
        ("JCGM101_9.2.2_4normals", Shape::Normal),
        ("JCGM101_9.2.3_4rect", Shape::Even),
    ] {
        let row = rows(EXAMPLES).into_iter().find(|r| r[0] == name).unwrap();
        let out = sample(
            |x| x.iter().sum(),
            &[(Input::new(0.0, 1.0), shape); 4],
            &[],
            100_000,
            7,
        );
        let out = out.unwrap();
        assert!(out.mean.abs() < 0.02);
        near(out.standard, 2.0, 0.01);
        // Ends within 0.03 of the standard deviation.
        assert!((out.low - number(&row[8])).abs() < 0.06, "{out:?}");
        assert!((out.high - number(&row[9])).abs() < 0.06, "{out:?}");
    }
}

/// The number behind `key` in a case's name, a per cent sign dividing.
fn of(case: &str, key: &str) -> f64 {
    let word = case
        .split_whitespace()
        .find_map(|w| w.strip_prefix(key))
        .unwrap();
    let digits: String = word
        .chars()
        .take_while(|c| c.is_ascii_digit() || matches!(c, '.' | 'e' | '-'))
        .collect();
    number(&digits) / if word.ends_with('%') { 100.0 } else { 1.0 }
}

/// Value and uncertainty written `100(3)`.
fn pair(case: &str, key: &str) -> Input {
    let word = case
        .split_whitespace()
        .find_map(|w| w.strip_prefix(key))
        .unwrap();
    let (value, standard) = word.trim_end_matches(')').split_once('(').unwrap();
    Input::new(number(value), number(standard))
}

/// First order to 1e-6, sampling to 1 % of the spread and 0.03 of it at the ends.
#[track_caller]
fn both_ways(row: &[String], model: Model, inputs: &[Input]) {
    let linear = propagate(model, inputs, &[]).unwrap();
    printed(linear.value, &row[2]);
    printed(linear.standard, &row[3]);
    let normal: Vec<_> = inputs.iter().map(|i| (*i, Shape::Normal)).collect();
    let sampled = sample(model, &normal, &[], 100_000, 20_260_101).unwrap();
    let spread = number(&row[7]);
    assert!((sampled.mean - number(&row[6])).abs() < 0.02 * spread);
    near(sampled.standard, spread, 0.01);
    assert!(
        (sampled.low - number(&row[8])).abs() < 0.03 * spread,
        "{sampled:?}"
    );
    assert!(
        (sampled.high - number(&row[9])).abs() < 0.03 * spread,
        "{sampled:?}"
    );
}

// Bench energies and run times by uncertainties 3.2.3, GTC 1.5.1 and 4e6 draws
// of numpy.
#[test]
fn bench_figures_by_two_libraries_and_by_sampling() {
    let (mut energies, mut times) = (0, 0);
    for row in rows(EXAMPLES) {
        let case = row[0].as_str();
        if case.starts_with("bench_Wh") {
            let (v, i, t) = (of(case, "V="), of(case, "I="), of(case, "t="));
            let inputs = [
                Input::new(v, v * of(case, "uV=")),
                Input::new(i, 0.0),
                Input::new(1.0, of(case, "gain=")),
                Input::new(0.0, of(case, "off=")),
                Input::new(t, of(case, "ut=")),
            ];
            both_ways(&row, |x| x[0] * (x[1] * x[2] + x[3]) * x[4], &inputs);
            energies += 1;
        } else if case.starts_with("runtime_h") {
            let inputs = ["Q=", "V=", "dod=", "eta=", "P="].map(|key| pair(case, key));
            both_ways(&row, |x| x[0] * x[1] * x[2] * x[3] / x[4], &inputs);
            times += 1;
        }
    }
    assert_eq!((energies, times), (4, 2));
}

// Conformance probabilities (JCGM 106:2012, 7.2) by scipy 1.17.1.
#[test]
fn jcgm_106_conformance_probability() {
    let mut seen = 0;
    for row in rows(EXAMPLES)
        .iter()
        .filter(|r| r[0].starts_with("conformity"))
    {
        let measured = Measured::known(of(&row[0], "y="), of(&row[0], "u="));
        let chance = chance_at_least(&measured, of(&row[0], "claim=")).unwrap();
        assert!((chance - number(&row[8])).abs() < 1e-8, "{chance}");
        seen += 1;
    }
    assert_eq!(seen, 4);
}

// NIST StRD Norris, certified to 15 digits; lower difficulty.
#[test]
fn nist_norris_line() {
    let points: Vec<(f64, f64)> = rows(NORRIS)
        .iter()
        .map(|r| (number(&r[1]), number(&r[0])))
        .collect();
    assert_eq!(points.len(), 36);
    let line = fit(&points).unwrap();
    near(line.intercept, -0.262_323_073_774_029, 1e-10);
    near(line.slope, 1.002_116_818_020_45, 1e-12);
    near(line.intercept_standard, 0.232_818_234_301_152, 1e-10);
    near(line.slope_standard, 0.429_796_848_199_937e-3, 1e-10);
    near(line.residual, 0.884_796_396_144_373, 1e-10);
    assert_eq!(line.freedom, 34.0);
    // At the mean of x the line is known to residual / sqrt n: textbook.
    let mean = points.iter().map(|p| p.0).sum::<f64>() / 36.0;
    near(line.at(mean).1, line.residual / 6.0, 1e-9);
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
