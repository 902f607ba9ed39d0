//! Lead-acid run time against current: Peukert's law (1897) in the rated-hour
//! form `t = H (C / (I H))^k`, and what published rate tables say of it.

use super::{bare_bank, current, hours, near, near_share};
use till_morning::{
    physics::battery::{Capacity, Chemistry},
    plan::{Bank, Figure},
};

/// Peukert's exponent between two points of a rate table: hours and amps of each.
fn exponent_between(slow: (f64, f64), fast: (f64, f64)) -> f64 {
    (slow.0 / fast.0).ln() / (fast.1 / slow.1).ln()
}

/// A lead-acid bank of its rated Ah, over its rated hours, with an exponent.
fn lead_acid(nominal_v: f64, rated_ah: f64, rated_h: f64, exponent: f64) -> Bank {
    Bank {
        rated_hours_h: Some(rated_h),
        peukert_exponent: Some(Figure::label(exponent)),
        ..bare_bank(Chemistry::Flooded, nominal_v, rated_ah)
    }
}

/// 100 Ah at 20 h, in the rated-hour form as textbooks print it (the numbers
/// are arithmetic from that formula, to a thousandth of an hour).
#[test]
fn rated_hour_form() {
    let rows: [(f64, [(f64, f64); 5]); 6] = [
        (
            1.05,
            [
                (5.0, 20.0),
                (10.0, 9.659),
                (20.0, 4.665),
                (50.0, 1.783),
                (100.0, 0.861),
            ],
        ),
        (
            1.1,
            [
                (10.0, 9.330),
                (20.0, 4.353),
                (25.0, 3.405),
                (50.0, 1.589),
                (100.0, 0.741),
            ],
        ),
        (
            1.15,
            [
                (5.0, 20.0),
                (10.0, 9.013),
                (20.0, 4.061),
                (50.0, 1.416),
                (100.0, 0.638),
            ],
        ),
        (
            1.2,
            [
                (10.0, 8.706),
                (20.0, 3.789),
                (25.0, 2.899),
                (50.0, 1.262),
                (100.0, 0.549),
            ],
        ),
        (
            1.25,
            [
                (5.0, 20.0),
                (10.0, 8.409),
                (20.0, 3.536),
                (50.0, 1.125),
                (100.0, 0.473),
            ],
        ),
        (
            1.3,
            [
                (10.0, 8.123),
                (20.0, 3.299),
                (25.0, 2.468),
                (50.0, 1.002),
                (100.0, 0.407),
            ],
        ),
    ];
    for (exponent, run_times) in rows {
        let bank = lead_acid(12.0, 100.0, 20.0, exponent);
        for (amps, published_h) in run_times {
            near(hours(&bank, current(amps, 12.0)), published_h, 0.0005);
        }
    }
}

/// A teaching article gets 14.5 h from "100 Ah" at 5 A with k = 1.2: it takes
/// the 100 Ah as counted at one ampere (`t = C / I^k`). Of a bank rated over
/// 20 h those 5 A are the rated current, and it lasts its 20 h.
///
/// The forms are one law: said to be counted at one ampere (100 Ah over 100 h)
/// the same bank does give 14.5 h.
#[test]
fn the_one_ampere_form_is_not_mixed_in() {
    let rated_over = |rated_h| lead_acid(12.0, 100.0, rated_h, 1.2);
    near_share(hours(&rated_over(20.0), current(5.0, 12.0)), 20.0, 1e-9);
    near(hours(&rated_over(100.0), current(5.0, 12.0)), 14.50, 0.005);
    // Another teaching page, in that form: 250 Ah at one ampere, 20 A, k = 1.3
    // leave 101.77 Ah and 5.0886 h.
    let at_one_ampere = Capacity {
        ah: 250.0,
        rated_a: 1.0,
        exponent: 1.3,
    };
    near(at_one_ampere.ah_at(20.0), 101.77, 0.005);
    near(at_one_ampere.ah_at(20.0) / 20.0, 5.0886, 5e-5);
}

/// The 20-hour rating as two army courses define it: US Army OS 010, "Battery
/// Ratings" (5 A for 20 h is 100 Ah, and at 10 A it lasts less than 10 h), and
/// OD 1633 (20 A for 20 h is 400 Ah).
#[test]
fn what_a_twenty_hour_rating_means() {
    // The usual exponent and the usual hours of the chemistry: nothing stated.
    let usual = |rated_ah| bare_bank(Chemistry::Flooded, 12.0, rated_ah);
    near_share(hours(&usual(100.0), current(5.0, 12.0)), 20.0, 1e-9);
    near_share(hours(&usual(400.0), current(20.0, 12.0)), 20.0, 1e-9);
    assert!(hours(&usual(100.0), current(10.0, 12.0)) < 10.0);
    for chemistry in [Chemistry::Agm, Chemistry::Gel] {
        assert!(hours(&bare_bank(chemistry, 12.0, 100.0), current(10.0, 12.0)) < 10.0);
    }
}

/// A capacity test is hours run over hours rated (US Navy NEETS, EM 14344:
/// 100 Ah at the 10-hour rate of 10 A). 8.5 h is 85 %, and a bank of 85 %
/// health lasts 8.5 h.
#[test]
fn a_capacity_test_turned_round() {
    let bank = Bank {
        health_percent: Some(Figure::measured(85.0)),
        ..lead_acid(6.0, 100.0, 10.0, 1.2)
    };
    near_share(hours(&bank, current(10.0, 6.0)), 8.5, 1e-9);
}

/// The two-point exponent, `ln(t1/t2) / ln(I2/I1)`: 100 Ah at 20 h and 170
/// minutes of reserve at 25 A give 1.2143.
#[test]
fn exponent_from_reserve_minutes() {
    let reserve_h = 170.0 / 60.0;
    let exponent = exponent_between((20.0, 5.0), (reserve_h, 25.0));
    near(exponent, 1.2143, 5e-5);
    // And back: with it, the 20-hour rating gives those minutes.
    let bank = lead_acid(12.0, 100.0, 20.0, exponent);
    near(hours(&bank, current(25.0, 12.0)), reserve_h, 1e-9);
}

/// "The capacities at 5 h and at 100 h differ by 10 to 20 %" (IEC 62257-8-1:
/// 2007, 3.12 note 2): exponents of 1.033 to 1.065 between those rates.
#[test]
fn exponent_of_slow_rates() {
    let more_at_100_h = |share| exponent_between((100.0, share / 100.0), (5.0, 1.0 / 5.0));
    near(more_at_100_h(1.1), 1.033, 5e-4);
    near(more_at_100_h(1.2), 1.065, 5e-4);
}

/// Hours and Ah of a 6 V flooded deep-cycle battery's published data sheet
/// (maker left out), with 195 minutes at 75 A.
const RATES: [(f64, f64); 4] = [(5.0, 271.0), (10.0, 304.0), (20.0, 330.0), (100.0, 367.0)];
const MINUTES_AT_75_A: f64 = 195.0;

fn rate(row: usize) -> (f64, f64) {
    let (hours, ah) = RATES[row];
    (hours, ah / hours)
}

/// Peukert's exponent is not one number: 1.17 between 5 and 20 h, 1.07 between
/// 20 and 100 h on the same sheet. Carried on to 75 A from the 20-hour rating
/// the first says 205 minutes where 195 are published: 5 % too long, because
/// the capacity falls away faster beyond the rates it was fitted to.
#[test]
fn one_exponent_does_not_fit_a_rate_table() {
    let fast = exponent_between(rate(2), rate(0));
    near(fast, 1.1656, 5e-5);
    near(exponent_between(rate(3), rate(2)), 1.0707, 5e-5);
    let minutes = 60.0 * hours(&lead_acid(6.0, 330.0, 20.0, fast), current(75.0, 6.0));
    near(minutes, 205.0, 0.5);
    near(minutes / MINUTES_AT_75_A, 1.05, 0.005);
}

/// The exponent taken for flooded cells when none is stated, on that sheet: from
/// the 20-hour rating it says every faster rate within 5 %, and never too long by
/// more than a minute. Slower than rated no more than the rated Ah is promised:
/// at 100 h that is 10 % less than the sheet gives.
#[test]
fn the_default_exponent_against_a_rate_table() {
    let usual = bare_bank(Chemistry::Flooded, 6.0, 330.0);
    let lasts = |amps| hours(&usual, current(amps, 6.0));
    for row in [0, 1, 2] {
        let (published_h, amps) = rate(row);
        let found_h = lasts(amps);
        near_share(found_h, published_h, 0.05);
        assert!(
            found_h <= published_h + 1.0 / 60.0,
            "{found_h} {published_h}"
        );
    }
    near_share(60.0 * lasts(75.0), MINUTES_AT_75_A, 0.05);
    let (published_h, amps) = rate(3);
    near(lasts(amps) / published_h, 330.0 / 367.0, 1e-9);
}
