use super::{build, column, place, sum_a, take_off};
use proptest::prelude::*;
use till_morning::physics::wiring::{
    Awg, Battery, Column, Demand, Gassing, Metric, ModuleString, Path, Row, Surroundings,
    array_current, beyond_scope, choose, cold_morning, design_current, drop_over,
    estimated_temperature, heat_factor, hot_factor, prospective_fault, recommend, solid,
    ventilation,
};
use till_morning::quantity::{
    amp_hours, amps, celsius, in_amps, in_ohms, in_volts, meters, ohms, square_millimeters, volts,
    watts,
};

/// Any number a text field could yield, and some it could not.
fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        3 => -10.0..200.0,
        2 => 0.0..1.0,
        1 => prop::num::f64::ANY,
        1 => Just(0.0),
    ]
}

proptest! {
    /// Any number at all: a finite answer or a refusal, never a panic or NaN.
    #[test]
    fn any_numbers_are_answered_or_refused(
        a in any_number(), b in any_number(), c in any_number(), d in any_number(),
        count in any::<u32>(), column in column(),
    ) {
        let finite = |number: f64| number.is_finite();
        let fine = [
            hot_factor(celsius(a)).map_or(true, finite),
            heat_factor(column, celsius(a)).map_or(true, |f| (0.0..=1.0).contains(&f)),
            solid(square_millimeters(a), meters(b), celsius(c)).map_or(true, |r| finite(in_ohms(r))),
            drop_over(ohms(a), amps(b), volts(c)).map_or(true, |drop| finite(drop.share)),
            prospective_fault(volts(a), ohms(b), ohms(c)).map_or(true, |i| finite(in_amps(i))),
            estimated_temperature(celsius(a), celsius(b), amps(c), amps(d))
                .map_or(true, |t| finite(t.value)),
            design_current(Demand::Power { power: watts(a), efficiency: b }, volts(c), ohms(d))
                .map_or(true, |i| finite(in_amps(i))),
            array_current(amps(a), count).map_or(true, |i| finite(in_amps(i))),
            ventilation(count, amp_hours(a), Gassing::VentedFinalCurrent)
                .map_or(true, |v| finite(v.air.value)),
            Metric::at_least(square_millimeters(a)).is_ok()
                == Awg::at_least(square_millimeters(a)).is_ok(),
            beyond_scope(volts(a)).is_ok() || !(1.0..=1000.0).contains(&a),
            recommend(amps(a), amps(b)).is_ok()
                || !(1e-7..=5000.0).contains(&a)
                || !(0.0..=10_000.0).contains(&b),
        ];
        prop_assert!(fine.iter().all(|ok| *ok), "{fine:?}");
        let string = ModuleString { open_circuit: volts(a), per_kelvin: b, in_series: count };
        if let Ok(morning) = cold_morning(&string, celsius(c), volts(d)) {
            prop_assert!(finite(in_volts(morning.margin)));
        }
    }

    /// The same for whole paths and rows.
    #[test]
    fn any_path_or_row_is_answered_or_refused(
        numbers in prop::array::uniform8(any_number()),
        counts in prop::array::uniform2(any::<u32>()),
        flags in prop::array::uniform2(any::<bool>()),
        place in place(), build in build(), take_off in take_off(),
    ) {
        let [a, b, c, d, e, f, g, h] = numbers;
        let surroundings = Surroundings {
            ambient: celsius(a), engine_space: flags[0], bundled: counts[0], enclosed: flags[1], sheathed: flags[1],
            insulation: Column::C105, terminals: Column::C75,
        };
        let path = Path {
            demand: Demand::Power { power: watts(b), efficiency: c }, one_way: meters(d),
            source_at_cut_off: volts(e), charge: volts(f), allowed_drop: g, build, place,
            surroundings,
        };
        if let Ok(choice) = choose(&path) {
            for trial in choice.trials {
                let loaded = trial.loaded.map_or(0.0, |loaded| loaded.hot.share + loaded.cold.share);
                let allowed = trial.ampacity.map_or(0.0, |ampacity| in_amps(ampacity.allowed));
                prop_assert!(loaded.is_finite() && allowed.is_finite());
            }
        }
        let battery = Battery { open_circuit: volts(a), resistance: ohms(b) };
        let other = Battery { open_circuit: volts(e), resistance: ohms(f) };
        let row = Row { batteries: vec![battery, other, battery], link: ohms(h), take_off };
        let shared = [row.share(amps(g)), row.share_with_one_open(amps(g), counts[1] as usize)];
        for sharing in shared.into_iter().flatten() {
            prop_assert!(sum_a(&sharing.currents).is_finite());
            prop_assert!(in_volts(sharing.terminal).is_finite());
        }
    }
}
