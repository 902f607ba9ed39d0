//! The kinetic two-tank model of lead-acid.

use super::{near, near_share};
use till_morning::physics::battery::{kinetic::Kinetic, peukert};

/// The cell of Jongerden & Haverkort, "Which battery model to use?", IET
/// Software 3(6), 2009: 7200 A s, c = 0.625, k = 4.5e-5 /s. Constants from public
/// code that quotes them; the outcomes from memory of the paper, recomputed here
/// by another program (91.14 and 202.9 min).
fn published() -> Kinetic {
    Kinetic {
        total_ah: 2.0,
        at_hand_share: 0.625,
        per_hour: 3600.0 * 4.5e-5 / (0.625 * 0.375),
    }
}

#[test]
fn a_steady_current_empties_it_in_91_minutes() {
    let cell = published();
    near(
        60.0 * cell.hours_to_empty(cell.rested(2.0), 0.96),
        91.0,
        1.0,
    );
}

#[test]
fn on_and_off_by_the_second_it_lasts_203_minutes() {
    let cell = published();
    let half = cell.stretch(0.5 / 3600.0);
    let mut tanks = cell.rested(2.0);
    let mut halves = 0;
    while tanks.at_hand_ah > 0.0 {
        tanks = half.after(tanks, if halves % 2 == 0 { 0.96 } else { 0.0 });
        halves += 1;
    }
    near(f64::from(halves) / 120.0, 203.0, 1.0);
}

/// Between the rates it is fitted to, two tanks and Peukert's law (rated-hour
/// form) are two descriptions of the same battery. Peukert's law is itself good
/// to 3 % over C/20 to 1C (PyBaMM, lead-acid full model).
#[test]
fn fitted_it_keeps_to_the_rates_it_was_fitted_to() {
    for exponent in [1.05, 1.1, 1.2] {
        let bank = Kinetic::fitted(100.0, 20.0, exponent).unwrap();
        for (over_h, share) in [
            (20.0, 1e-6),
            (5.0, 1e-6),
            (1.0, 1e-6),
            (2.0, 0.04),
            (10.0, 0.04),
        ] {
            let amps = 5.0 * (20.0_f64 / over_h).powf(1.0 / exponent);
            let full = bank.rested(bank.total_ah);
            let law = 100.0 * peukert::share_of_rated(amps / 5.0, exponent);
            near_share(amps * bank.hours_to_empty(full, amps), law, share);
        }
    }
}
