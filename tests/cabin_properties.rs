//! What holds for any cabin in any weather.

use proptest::prelude::*;
use till_morning::physics::cabin::*;
use till_morning::quantity::*;

fn still_air() -> MoistStore {
    MoistStore {
        dry_air: kilograms(15.0),
        air_change: kilograms_per_second(0.0),
    }
}

fn stepper(stores: &Stores, thermostat: Thermostat, step_s: f64) -> Stepper {
    Stepper::new(stores, &still_air(), thermostat, seconds(step_s)).unwrap()
}

fn cycling(low_c: f64, high_c: f64) -> Thermostat {
    Thermostat::Cycling {
        off_below: celsius(low_c),
        on_above: celsius(high_c),
    }
}

fn outdoors(outdoor_c: f64, gains_w: f64) -> Drive {
    Drive {
        outdoor_c,
        gains_w,
        ..Drive::default()
    }
}

fn at(air_c: f64, running: Running) -> State {
    State {
        air_c,
        shell_c: air_c,
        humidity_ratio: 0.01,
        running,
    }
}

fn dry(sensible_w: f64) -> Cooling {
    Cooling {
        sensible_w,
        coil: None,
    }
}

fn van() -> Body {
    Body {
        kind: BodyKind::Van,
        inside_length: meters(3.6),
        insulation: Insulation::Partial,
        colour: Colour::Light,
        glazing: Glazing::Double,
        covers: Covers::None,
        shade: 0.0,
    }
}

fn any_stores() -> impl Strategy<Value = Stores> {
    (
        (2e4..1e6_f64, 1e5..5e6_f64),
        (0.0..80.0_f64, 0.0..0.05_f64),
        (0.0..400.0_f64, 0.0..200.0_f64),
    )
        .prop_map(
            |((air, shell), (glass, change), (inside, outside))| Stores {
                air: joules_per_kelvin(air),
                shell: joules_per_kelvin(shell),
                glass: watts_per_kelvin(glass),
                air_change: kilograms_per_second(change),
                air_to_shell: watts_per_kelvin(inside),
                shell_to_outside: watts_per_kelvin(outside),
            },
        )
}

fn any_drive() -> impl Strategy<Value = Drive> {
    (
        10.0..50.0_f64,
        0.002..0.025_f64,
        (0.0..800.0_f64, -200.0..2_000.0_f64),
        (0.0..400.0_f64, 0.0..2e-4_f64),
    )
        .prop_map(
            |(outdoor_c, outdoor_ratio, (glass, shell), (people, water))| Drive {
                outdoor_c,
                outdoor_ratio,
                sun_glass_w: glass,
                sun_shell_w: shell,
                people_w: people,
                people_kg_s: water,
                gains_w: 30.0,
            },
        )
}

fn any_thermostat() -> impl Strategy<Value = Thermostat> {
    prop_oneof![
        Just(Thermostat::Off),
        Just(Thermostat::RunsOn),
        (18.0..28.0_f64, 0.3..3.0_f64).prop_map(|(low, band)| cycling(low, low + band)),
        (18.0..28.0_f64, 0.3..3.0_f64, 0.0..0.9_f64).prop_map(|(set, band, floor)| {
            Thermostat::Modulating {
                set: celsius(set),
                band: kelvin_steps(band),
                floor,
            }
        }),
    ]
}

fn any_unit() -> impl Strategy<Value = Option<Cooling>> {
    proptest::option::weighted(
        0.9,
        (0.0..3_000.0_f64, 0.0..0.1_f64, 0.004..0.012_f64).prop_map(|(w, kg_s, ratio)| Cooling {
            sensible_w: w,
            coil: Some(WetCoil {
                contact_kg_s: kg_s,
                surface_ratio: ratio,
            }),
        }),
    )
}

proptest! {
    /// Heat in, less what the unit took, is what stayed: to 1e-9 of all that
    /// moved. The same for water. And the thermostat keeps its band.
    #[test]
    fn books_close(
        stores in any_stores(),
        thermostat in any_thermostat(),
        drives in proptest::collection::vec(any_drive(), 13),
        unit in any_unit(),
        start_c in 15.0..60.0_f64,
        step_s in 30.0..3_600.0_f64,
    ) {
        let moist = MoistStore { dry_air: kilograms(60.0), air_change: stores.air_change };
        let cabin = Stepper::new(&stores, &moist, thermostat, seconds(step_s)).unwrap();
        let mut state = at(start_c, Running::Off);
        let (mut heat, mut water) = (HeatBook::default(), WaterBook::default());
        for pair in drives.windows(2) {
            let step = cabin.step(&state, &pair[0], &pair[1], unit.as_ref()).unwrap();
            prop_assert!(step.heat.gap_j().abs() <= 1e-9 * step.heat.throughput_j(),
                "{} of {}", step.heat.gap_j(), step.heat.throughput_j());
            prop_assert!(step.running_s <= step_s * (1.0 + 1e-12) && step.full_s <= step.running_s + 1e-9);
            prop_assert!(step.state.air_c.is_finite() && step.state.shell_c.is_finite());
            prop_assert!(step.state.humidity_ratio >= 0.0);
            heat.add(&step.heat);
            water.add(&step.water);
            state = step.state;
        }
        prop_assert!(heat.gap_j().abs() <= 1e-9 * heat.throughput_j());
        let moved = water.condensed_kg.abs() + water.people_kg.abs()
            + water.air_change_kg.abs() + water.stored_kg.abs();
        prop_assert!(water.gap_kg().abs() <= 1e-9 * moved + 1e-15);
    }

    /// One long step is many short ones: the solution is exact, so how time is
    /// cut does not matter (unless the unit's own events fall differently,
    /// which located events must not).
    #[test]
    fn cutting_time_changes_nothing(
        stores in any_stores(), thermostat in any_thermostat(),
        from in any_drive(), to in any_drive(), unit in any_unit(), start_c in 15.0..60.0_f64,
    ) {
        let moist = MoistStore { dry_air: kilograms(60.0), air_change: stores.air_change };
        let unit = unit.map(|unit| Cooling { coil: None, ..unit });
        let long = Stepper::new(&stores, &moist, thermostat, seconds(1_200.0)).unwrap();
        let short = Stepper::new(&stores, &moist, thermostat, seconds(100.0)).unwrap();
        let part = |k: f64| {
            let mix = |a: f64, b: f64| a + (b - a) * k / 12.0;
            Drive {
                outdoor_c: mix(from.outdoor_c, to.outdoor_c),
                outdoor_ratio: mix(from.outdoor_ratio, to.outdoor_ratio),
                sun_glass_w: mix(from.sun_glass_w, to.sun_glass_w),
                sun_shell_w: mix(from.sun_shell_w, to.sun_shell_w),
                people_w: mix(from.people_w, to.people_w),
                people_kg_s: mix(from.people_kg_s, to.people_kg_s),
                gains_w: mix(from.gains_w, to.gains_w),
            }
        };
        let whole = long.step(&at(start_c, Running::Off), &from, &to, unit.as_ref()).unwrap();
        let (mut state, mut running_s, mut switches) = (at(start_c, Running::Off), 0.0, 0);
        for k in 0..12 {
            let k = f64::from(k);
            let step = short.step(&state, &part(k), &part(k + 1.0), unit.as_ref()).unwrap();
            state = step.state;
            running_s += step.running_s;
            switches += step.switches;
        }
        prop_assert_eq!(whole.switches, switches);
        prop_assert!((whole.state.air_c - state.air_c).abs() < 1e-6, "{:?} {:?}", whole.state, state);
        prop_assert!((whole.state.shell_c - state.shell_c).abs() < 1e-6);
        prop_assert!((whole.state.humidity_ratio - state.humidity_ratio).abs() < 1e-12);
        prop_assert!((whole.running_s - running_s).abs() < 1e-3);
    }

    /// Once inside the band with enough capacity and load, the air never
    /// leaves it, however the weather swings within a step.
    #[test]
    fn band_is_kept(drives in proptest::collection::vec(any_drive(), 12), low in 18.0..26.0_f64) {
        let stores = van().figures().unwrap().stores().unwrap();
        let cabin = stepper(&stores, cycling(low, low + 1.0), 900.0);
        let unit = dry(6_000.0);
        let mut state = State { shell_c: low + 0.5, ..at(low + 0.5, Running::Off) };
        for pair in drives.windows(2) {
            let step = cabin.step_watched(&state, &pair[0], &pair[1], Some(&unit), |switch| {
                let on_edge = (switch.air_c - low).abs().min((switch.air_c - low - 1.0).abs());
                assert!(on_edge < 1e-9, "{switch:?}");
            });
            state = step.unwrap().state;
            prop_assert!(state.air_c < low + 1.0 + 1e-9);
        }
    }

    /// Hostile numbers get a typed refusal or finite figures, never a panic.
    #[test]
    fn hostile_numbers(values in proptest::collection::vec(any::<f64>(), 12)) {
        let v = |i: usize| values[i];
        let stores = Stores {
            air: joules_per_kelvin(v(0)), shell: joules_per_kelvin(5e5),
            glass: watts_per_kelvin(v(1)), air_change: kilograms_per_second(v(2)),
            air_to_shell: watts_per_kelvin(30.0), shell_to_outside: watts_per_kelvin(v(3)),
        };
        prop_assert!(Stepper::new(&stores, &still_air(), cycling(v(4), v(5)), seconds(v(6))).is_err());
        let cabin = stepper(&van().figures().unwrap().stores().unwrap(), cycling(24.0, 25.0), 300.0);
        let drive = Drive { outdoor_c: v(7), sun_glass_w: v(8), people_w: v(9), ..outdoors(30.0, 0.0) };
        let state = State { air_c: v(10), ..at(25.0, Running::Full) };
        if let Ok(step) = cabin.step(&state, &drive, &drive, Some(&dry(v(11).abs()))) {
            prop_assert!(step.state.air_c.is_finite() && step.heat.gap_j().is_finite());
        }
        let mut figures = van().figures().unwrap();
        figures.glass_gain = v(0);
        figures.air_density_kg_m3 = v(1);
        if let Ok(sun) = figures.sun(watts_per_square_meter(v(2)), watts_per_square_meter(300.0)) {
            prop_assert!(in_watts(sun.glass).is_finite() && in_watts(sun.shell).is_finite());
        }
    }
}
