use super::{awg, circular_mils, gauge, near};
use till_morning::physics::wiring::{
    Awg, Build, Choice, Column, Demand, Finding, Metric, Path, Place, Rule, Size, Surroundings,
    System, choose,
};
use till_morning::quantity::{
    amps, celsius, feet, in_amps, in_volts, meters, square_millimeters, volts, watts,
};

/// A path with little in its way: short, cool, wide terminals.
fn easy(current_a: f64) -> Path {
    Path {
        demand: Demand::Current(amps(current_a)),
        one_way: meters(1.0),
        source_at_cut_off: volts(12.0),
        charge: volts(14.6),
        allowed_drop: 0.03,
        build: Build::FlexibleTinned,
        place: Place::Boat,
        surroundings: Surroundings {
            ambient: celsius(30.0),
            engine_space: false,
            bundled: 2,
            sheathed: false,
            enclosed: false,
            insulation: Column::C105,
            terminals: Column::C105,
        },
    }
}

fn chosen(path: &Path) -> Choice {
    choose(path).unwrap()
}

/// FAA AC 43.13-1B example 1 (p. 11-26): 28 V, 50 ft with the ground return,
/// 20 A continuous, 1 V, 20 C: between 10 and 8, so 8. Our conductor is taken
/// warm (the example's is not), which leaves 8.
#[test]
fn faa_example_1() {
    let path = Path {
        one_way: feet(25.0),
        source_at_cut_off: volts(28.0),
        charge: volts(28.0),
        allowed_drop: 1.0 / 28.0,
        surroundings: Surroundings {
            ambient: celsius(20.0),
            ..easy(20.0).surroundings
        },
        ..easy(20.0)
    };
    let choice = chosen(&path);
    let picked = choice.awg.unwrap();
    assert_eq!((picked.size, picked.decided_by), (awg(8), Rule::Drop));
    let cold_v = |number| {
        let trial = choice.trials.iter().find(|trial| trial.size == awg(number));
        in_volts(trial.unwrap().loaded.unwrap().cold.volts)
    };
    assert!(cold_v(10) > 1.0 && cold_v(8) < 1.0);
}

/// 33 CFR 183.455(c) with table 5 at 105 C, by the stricter rule that the fuse
/// never exceeds the conductor: 30 A and 40 A fuse, 12; 100 A and 125 A, 4;
/// 150 A and 200 A, 2. The conductor one size down would carry the current.
#[test]
fn the_fuse_decides() {
    for (load_a, fuse_a, number) in [(30.0, 40.0, 12), (100.0, 125.0, 4), (150.0, 200.0, 2)] {
        let path = Path {
            one_way: meters(0.2),
            ..easy(load_a)
        };
        let picked = chosen(&path).awg.unwrap();
        assert_eq!(
            (picked.size, picked.decided_by),
            (awg(number), Rule::FuseFit)
        );
        near(in_amps(picked.fuse.current), fuse_a, 0.0);
    }
}

/// NFPA 70 table 552.10(E)(1) (from memory): 16 A continuous takes 20 A, which
/// 12 may carry in a trailer; 14 may not though table 5 gives it 35 A.
#[test]
fn a_vehicle_asks_for_more_copper() {
    let short = Path {
        one_way: meters(0.2),
        ..easy(16.0)
    };
    assert_eq!(chosen(&short).awg.unwrap().size, awg(16));
    let vehicle = Path {
        place: Place::Vehicle,
        ..short
    };
    let picked = chosen(&vehicle).awg.unwrap();
    assert_eq!((picked.size, picked.decided_by), (awg(12), Rule::FuseFit));
}

/// 33 CFR 183.425(d), (e): not thinner than 16 alone, 18 in a sheath.
#[test]
fn the_law_has_a_thinnest_wire() {
    let mut path = easy(0.1);
    let picked = chosen(&path).awg.unwrap();
    assert_eq!(
        (picked.size, picked.decided_by),
        (awg(16), Rule::MechanicalMinimum)
    );
    let metric = |mm2| Size::Metric(Metric::new(square_millimeters(mm2)).unwrap());
    assert_eq!(chosen(&path).metric.unwrap().size, metric(1.5));
    path.surroundings.sheathed = true;
    assert_eq!(chosen(&path).awg.unwrap().size, awg(18));
    assert_eq!(chosen(&path).metric.unwrap().size, metric(1.0));
}

/// A hot roof space: 90 A with 75 C terminals in 60 C air leaves sqrt(15/45) =
/// 0.577 of table 5. 125 A of fuse ask for 217 A of table: 1/0 (230 A) by the
/// law of NFPA 70 section 310.15(B).
#[test]
fn a_hot_roof_space() {
    let mut path = easy(90.0);
    path.one_way = meters(0.5);
    path.surroundings.ambient = celsius(60.0);
    path.surroundings.terminals = Column::C75;
    let picked = chosen(&path).awg.unwrap();
    assert_eq!((picked.size, picked.decided_by), (awg(0), Rule::FuseFit));
    path.surroundings.ambient = celsius(75.0);
    let choice = chosen(&path);
    assert!(choice.awg.is_none() && choice.metric.is_none());
    let no_room = |finding: &Finding| matches!(finding, Finding::NoRoomForHeat { .. });
    assert!(choice.findings.iter().any(no_room));
}

/// What no conductor mends is said and is no error: a 48 V bank beyond the
/// scope of the table, a power no current carries, a run too long for copper.
#[test]
fn findings() {
    let charge = volts(58.4);
    let high = chosen(&Path {
        charge,
        source_at_cut_off: volts(44.0),
        ..easy(50.0)
    });
    assert_eq!(high.findings, [Finding::BeyondTableScope { charge }]);
    let far = chosen(&Path {
        demand: Demand::Power {
            power: watts(3000.0),
            efficiency: 0.85,
        },
        one_way: meters(400.0),
        ..easy(1.0)
    });
    assert!(far.findings.contains(&Finding::NoCurrentCarries));
    let long = chosen(&Path {
        one_way: meters(100.0),
        ..easy(100.0)
    });
    let nothing = [
        Finding::NothingPasses(System::Awg),
        Finding::NothingPasses(System::Metric),
    ];
    assert_eq!(long.findings, nothing);
    assert_eq!(long.trials.len(), 15 + 14);
    assert!(
        choose(&Path {
            allowed_drop: 0.0,
            ..easy(1.0)
        })
        .is_err()
    );
}

/// Both systems side by side: each the smallest of its own that passes, so
/// neither is a conversion of the other. 50 A, 3 m, 3 % of 12 V: 0.36 V over 6
/// m ask for at most 1.2 milliohm a metre. ABYC E-11's formula (10.75) asks for
/// gauge 4; hot and tinned the same gauge holds.
#[test]
fn both_systems_stand_side_by_side() {
    let choice = chosen(&Path {
        one_way: meters(3.0),
        ..easy(50.0)
    });
    let circular_mil = 10.75 * 50.0 * (6.0 / 0.3048) / 0.36;
    let by_abyc = Awg::at_least(circular_mils(circular_mil)).unwrap();
    assert_eq!(by_abyc, Some(gauge(4)));
    let (awg, metric) = (choice.awg.unwrap(), choice.metric.unwrap());
    assert_eq!(awg.size, Size::Awg(gauge(4)));
    assert_eq!(awg.decided_by, Rule::Drop);
    assert_eq!(metric.decided_by, Rule::Drop);
    assert_eq!(
        metric.size,
        Size::Metric(Metric::new(square_millimeters(25.0)).unwrap())
    );
}
