//! Two tanks beside each other: charge is kept, and time may be cut anywhere.

use proptest::prelude::*;
use till_morning::physics::battery::kinetic::{Kinetic, Tanks};

/// A bank, a state of it, a current and two lengths of time.
fn cases() -> impl Strategy<Value = (Kinetic, Tanks, f64, (f64, f64))> {
    let bank = (10.0..500.0f64, 0.05..0.95f64, 0.05..20.0f64);
    (
        bank,
        (0.0..=1.0f64, 0.0..=1.0f64),
        -1.0..1.0f64,
        (0.01..10.0f64, 0.01..10.0f64),
    )
        .prop_map(|((total_ah, at_hand_share, per_hour), at, rate, times)| {
            let kinetic = Kinetic {
                total_ah,
                at_hand_share,
                per_hour,
            };
            let tanks = Tanks {
                at_hand_ah: at.0 * kinetic.room_ah(),
                bound_ah: at.1 * (total_ah - kinetic.room_ah()),
            };
            (kinetic, tanks, 0.2 * rate * total_ah, times)
        })
}

proptest! {
    /// What goes is what was drawn, and two stretches make one.
    #[test]
    fn charge_is_kept_and_time_may_be_cut((kinetic, from, amps, (a_h, b_h)) in cases()) {
        let whole = kinetic.stretch(a_h + b_h).after(from, amps);
        let drawn_ah = amps * (a_h + b_h);
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * kinetic.total_ah;
        prop_assert!(near(whole.both_ah(), from.both_ah() - drawn_ah));
        let between = kinetic.stretch(a_h).after(from, amps);
        let parts = kinetic.stretch(b_h).after(between, amps);
        prop_assert!(near(parts.at_hand_ah, whole.at_hand_ah), "{parts:?} {whole:?}");
        prop_assert!(near(parts.bound_ah, whole.bound_ah), "{parts:?} {whole:?}");
    }

    /// At rest the levels come together and never cross.
    #[test]
    fn rest_evens_the_levels((kinetic, from, _, (a_h, b_h)) in cases()) {
        let apart = |tanks: Tanks| {
            let c = kinetic.at_hand_share;
            tanks.at_hand_ah / c - tanks.bound_ah / (1.0 - c)
        };
        let soon = kinetic.stretch(a_h).after(from, 0.0);
        let late = kinetic.stretch(a_h + b_h).after(from, 0.0);
        // Levels are charge over a share that may be a twentieth.
        let slack = 1e-7 * kinetic.total_ah;
        prop_assert!(apart(soon) * apart(from).signum() >= -slack);
        prop_assert!(apart(soon).abs() <= apart(from).abs() + slack);
        prop_assert!(apart(late).abs() <= apart(soon).abs() + slack);
        prop_assert!(soon.at_hand_ah >= -slack && soon.bound_ah >= -slack);
    }

    /// The greatest current leaves nothing at hand, and the greatest into the bank
    /// leaves no room.
    #[test]
    fn the_greatest_currents_are_just_that((kinetic, from, _, (hours, _)) in cases()) {
        let stretch = kinetic.stretch(hours);
        let slack = 1e-9 * kinetic.total_ah;
        let emptied = stretch.after(from, stretch.most_a(from));
        prop_assert!(emptied.at_hand_ah.abs() <= slack, "{emptied:?}");
        let into_a = stretch.most_into_a(from, kinetic.room_ah());
        let filled = stretch.after(from, -into_a);
        prop_assert!(filled.at_hand_ah <= kinetic.room_ah() + slack, "{filled:?}");
        prop_assert!(into_a == 0.0 || (filled.at_hand_ah - kinetic.room_ah()).abs() <= slack);
    }

    /// More current is empty sooner and has given less.
    #[test]
    fn more_current_gives_less((kinetic, _, _, _) in cases(), rates in (0.02..2.0f64, 1.0..3.0f64)) {
        let full = kinetic.rested(kinetic.total_ah);
        let slow_a = rates.0 * kinetic.total_ah;
        let fast_a = slow_a * rates.1;
        let slow_h = kinetic.hours_to_empty(full, slow_a);
        let fast_h = kinetic.hours_to_empty(full, fast_a);
        prop_assert!(fast_h <= slow_h * (1.0 + 1e-9));
        prop_assert!(fast_h * fast_a <= slow_h * slow_a * (1.0 + 1e-9));
        // Never less than what is at hand from the first, nor more than all.
        let given_ah = fast_h * fast_a;
        prop_assert!(given_ah >= kinetic.room_ah() * (1.0 - 1e-9));
        prop_assert!(given_ah <= kinetic.total_ah * (1.0 + 1e-9));
    }

    /// Where a fit is found, it gives the label back.
    #[test]
    fn a_fit_gives_the_label_back(ah in 5.0..500.0f64, hours in 5.0..100.0f64, exponent in 1.02..1.4f64) {
        if let Some(kinetic) = Kinetic::fitted(ah, hours, exponent) {
            let full = kinetic.rested(kinetic.total_ah);
            let lasts_h = kinetic.hours_to_empty(full, ah / hours);
            prop_assert!((lasts_h / hours - 1.0).abs() < 1e-6, "{lasts_h} {hours} {kinetic:?}");
        }
    }
}
