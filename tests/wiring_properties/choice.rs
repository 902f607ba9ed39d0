use super::{build, column, place};
use proptest::prelude::*;
use till_morning::physics::wiring::{
    Demand, FuseAdvice, Path, Refusal, Rule, Surroundings, choose, design_current, recommend,
};
use till_morning::quantity::{
    amps, celsius, in_amps, in_celsius, in_watts, meters, ohms, volts, watts,
};

fn demand() -> impl Strategy<Value = Demand> {
    prop_oneof![
        (0.5..300.0).prop_map(|current_a| Demand::Current(amps(current_a))),
        (5.0..3000.0, 0.6..1.0).prop_map(|(power_w, efficiency)| Demand::Power {
            power: watts(power_w),
            efficiency,
        }),
    ]
}

prop_compose! {
    fn surroundings()(
        ambient_c in -20.0..100.0,
        engine_space in any::<bool>(),
        bundled in 1u32..40,
        enclosed in any::<bool>(),
        sheathed in any::<bool>(),
        insulation in column(),
        terminals in column(),
    ) -> Surroundings {
        Surroundings {
            ambient: celsius(ambient_c), engine_space, bundled, enclosed, sheathed, insulation, terminals,
        }
    }
}

prop_compose! {
    fn path()(
        demand in demand(),
        one_way_m in 0.0..30.0,
        source_v in 10.0..48.0,
        allowed_drop in 0.005..0.2,
        build in build(),
        place in place(),
        surroundings in surroundings(),
    ) -> Path {
        Path {
            demand,
            one_way: meters(one_way_m),
            source_at_cut_off: volts(source_v),
            charge: volts(source_v * 1.2),
            allowed_drop,
            build,
            place,
            surroundings,
        }
    }
}

/// The same path made worse in every respect by some amount, or left alone.
fn harder(
    path: &Path,
    longer_m: f64,
    hotter_c: f64,
    more: u32,
    heavier: f64,
    tighter: f64,
) -> Path {
    let mut hard = *path;
    hard.one_way = path.one_way + meters(longer_m);
    let warm = in_celsius(path.surroundings.ambient) + hotter_c;
    hard.surroundings.ambient = celsius(warm);
    hard.surroundings.bundled += more;
    hard.surroundings.enclosed |= more % 2 == 1;
    hard.allowed_drop *= tighter;
    hard.demand = match path.demand {
        Demand::Current(current) => Demand::Current(current * heavier),
        Demand::Power { power, efficiency } => Demand::Power {
            power: power * heavier,
            efficiency,
        },
    };
    hard
}

proptest! {
    /// Longer, hotter, more bundled, heavier, tighter: no size passes a rule
    /// that it failed where all was easier.
    #[test]
    fn a_harder_path_is_never_easier_to_carry(
        path in path(),
        longer_m in 0.0..20.0,
        hotter_c in 0.0..20.0,
        more in 0u32..20,
        heavier in 1.0..2.0,
        tighter in 0.5..1.0,
    ) {
        let hard = harder(&path, longer_m, hotter_c, more, heavier, tighter);
        let (easy, hard) = (choose(&path).unwrap(), choose(&hard).unwrap());
        for (easy, hard) in easy.trials.iter().zip(&hard.trials) {
            for rule in Rule::ALL {
                prop_assert!(easy.passes(rule) || !hard.passes(rule), "{rule:?} {:?}", easy.size);
            }
        }
    }

    /// A thicker conductor of the same system passes whatever a thinner does.
    #[test]
    fn a_thicker_conductor_is_never_worse(path in path()) {
        let choice = choose(&path).unwrap();
        for pair in choice.trials.windows(2) {
            if pair[0].size.system() == pair[1].size.system() {
                for rule in Rule::ALL {
                    prop_assert!(pair[1].passes(rule) || !pair[0].passes(rule), "{rule:?}");
                }
            }
        }
    }

    /// What is chosen passes all, the next thinner fails the rule named, and
    /// the fuse lies between 125 % of the current and the ampacity.
    #[test]
    fn the_choice_is_the_smallest_and_its_fuse_protects_it(path in path()) {
        let choice = choose(&path).unwrap();
        for chosen in [choice.awg, choice.metric].into_iter().flatten() {
            let at = choice.trials.iter().position(|trial| trial.size == chosen.size).unwrap();
            let trial = &choice.trials[at];
            prop_assert!(trial.passes_all());
            let (ampacity, loaded) = (trial.ampacity.unwrap(), trial.loaded.unwrap());
            prop_assert!(chosen.fuse.current <= ampacity.allowed);
            prop_assert!(in_amps(chosen.fuse.current) >= 1.25 * in_amps(loaded.current) - 1e-6);
            prop_assert!(loaded.hot.share <= path.allowed_drop);
            let smaller = at.checked_sub(1).map(|below| &choice.trials[below]);
            match smaller.filter(|below| below.size.system() == chosen.size.system()) {
                Some(below) => prop_assert!(!below.passes(chosen.decided_by)),
                None => prop_assert_eq!(chosen.decided_by, Rule::MechanicalMinimum),
            }
        }
    }

    /// The estimate lies between the air and the hotter of air and rating.
    #[test]
    fn the_conductor_stays_within_what_it_is_reckoned_for(path in path()) {
        for trial in choose(&path).unwrap().trials {
            if let Some(loaded) = trial.loaded {
                let rating = path.surroundings.column().rating();
                let ambient = path.surroundings.reckoned_ambient().unwrap();
                let hottest = rating.value.max(ambient.value);
                prop_assert!(loaded.conductor.value <= hottest + 1e-9);
                prop_assert!(loaded.conductor.value >= ambient.value - 1e-9);
            }
        }
    }

    /// Recommended means: fits, is enough, and no listed rating below is.
    #[test]
    fn a_recommended_fuse_never_exceeds_its_ceiling(
        current_a in 0.01..4000.0,
        ceiling_a in 0.0..5000.0,
    ) {
        match recommend(amps(current_a), amps(ceiling_a)).unwrap() {
            FuseAdvice::Use(fuse) => {
                prop_assert!(fuse.current <= amps(ceiling_a));
                prop_assert!(in_amps(fuse.current) >= 1.25 * current_a * (1.0 - 1e-9));
            }
            FuseAdvice::ConductorMustGrow { needs, ceiling } => {
                prop_assert!(needs.current > ceiling);
            }
            FuseAdvice::BeyondList => prop_assert!(1.25 * current_a > 6000.0 * (1.0 - 1e-9)),
        }
    }

    /// The current found carries the power, and is the smaller of the two that
    /// do; where none is found, the most is below what was asked.
    #[test]
    fn constant_power_is_solved_or_refused(
        power_w in 0.1..5000.0,
        efficiency in 0.05..1.0,
        source_v in 1.0..100.0,
        path_ohm in 0.0..1.0,
    ) {
        let demand = Demand::Power { power: watts(power_w), efficiency };
        match design_current(demand, volts(source_v), ohms(path_ohm)) {
            Ok(current) => {
                let current_a = in_amps(current);
                let arrives_w = (source_v - current_a * path_ohm) * current_a;
                prop_assert!((arrives_w - power_w / efficiency).abs() < 1e-6 * power_w / efficiency);
                prop_assert!(current_a * path_ohm <= source_v / 2.0 * (1.0 + 1e-9));
            }
            Err(Refusal::NoCurrentCarries { most }) => prop_assert!(in_watts(most) < power_w),
            // At most half the source volts are lost, so over 5000 A is asked.
            Err(Refusal::OutOfRange { .. }) => {
                prop_assert!(power_w / efficiency > 5000.0 * 0.5 * source_v);
            }
            Err(other) => prop_assert!(false, "{other:?}"),
        }
    }
}
