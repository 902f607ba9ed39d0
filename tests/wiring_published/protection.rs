use super::{awg, gauge, near};
use till_morning::physics::wiring::{
    Column, Family, FuseAdvice, FusePosition, ModuleString, Parallel, Place, RatingSource,
    Surroundings, ampacity, array_current, cold_morning, fuse_ceiling, fuse_each, marine_allowance,
    position_met, prospective_fault, ratings, recommend, small_conductor_cap, string_fuses,
    suitability,
};
use till_morning::quantity::{amps, celsius, feet, in_amps, in_volts, inches, ohms, volts};

fn marine_105_c() -> Surroundings {
    Surroundings {
        ambient: celsius(30.0),
        engine_space: false,
        bundled: 2,
        sheathed: false,
        enclosed: false,
        insulation: Column::C105,
        terminals: Column::C105,
    }
}

/// NFPA 70 section 240.6(A), the list from six reprints that agree (15 A up);
/// the additional ratings 1, 3, 6, 10 from memory.
#[test]
fn nec_standard_ratings() {
    let printed = "1 3 6 10 \
        15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 \
        450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000";
    let listed: Vec<f64> = ratings()
        .into_iter()
        .filter(|rating| rating.source == RatingSource::Nfpa70)
        .map(|rating| in_amps(rating.current))
        .collect();
    let printed: Vec<f64> = printed
        .split_whitespace()
        .map(|number| number.parse().unwrap())
        .collect();
    assert_eq!(listed, printed);
}

/// 125 % of a continuous current and the next rating (NFPA 70 210.20(A) and
/// 215.3, from memory): 24 A, 30; 32 A, 40; 80 A, 100. And 30 A, 40; 100 A,
/// 125; 150 A, 200 (arithmetic). A small load takes a vehicle's 7.5 or 5 A.
#[test]
fn continuous_loads() {
    let rows = [
        (24.0, 30.0),
        (32.0, 40.0),
        (80.0, 100.0),
        (30.0, 40.0),
        (100.0, 125.0),
        (150.0, 200.0),
        (5.5, 7.5),
        (4.0, 5.0),
    ];
    for (continuous_a, fuse_a) in rows {
        let advice = recommend(amps(continuous_a), amps(1000.0)).unwrap();
        let FuseAdvice::Use(fuse) = advice else {
            panic!("{continuous_a} A: {advice:?}");
        };
        near(in_amps(fuse.current), fuse_a, 0.0);
    }
}

/// 33 CFR 183.455(c)(1) against table 5 at 105 C: what 150 % lets pass and the
/// stricter rule does not. 40 A on 14 (35 A, 52.5) but 12 (45 A); 125 A on 6
/// (120 A, 180) but 4 (160 A); 200 A on 4 (160 A, 240) but 2 (210 A).
#[test]
fn boat_fuse_rule_and_the_stricter_one() {
    let rows = [
        (30.0, 40.0, 14, 52.5, 12),
        (100.0, 125.0, 6, 180.0, 4),
        (150.0, 200.0, 4, 240.0, 2),
    ];
    for (load_a, fuse_a, by_law, law_a, stricter) in rows {
        let thin = ampacity(awg(by_law), &marine_105_c()).unwrap();
        let allowance = marine_allowance(&thin, volts(14.6)).unwrap();
        near(in_amps(allowance.highest), law_a, 1e-9);
        assert!(allowance.highest >= amps(fuse_a) && !allowance.next_size_up);
        assert!(matches!(
            recommend(amps(load_a), fuse_ceiling(Place::Boat, &thin)).unwrap(),
            FuseAdvice::ConductorMustGrow { needs, .. } if needs.current == amps(fuse_a)
        ));
        let thick = ampacity(awg(stricter), &marine_105_c()).unwrap();
        assert!(matches!(
            recommend(amps(load_a), fuse_ceiling(Place::Boat, &thick)).unwrap(),
            FuseAdvice::Use(fuse) if fuse.current == amps(fuse_a)
        ));
        // 33 CFR 183.455(c)(2): from 50 V up the table's own value, or the
        // next standard rating.
        let high = marine_allowance(&thin, volts(58.4)).unwrap();
        assert!(high.next_size_up && high.highest == thin.allowed);
    }
}

/// NFPA 70 table 552.10(E)(1) (from memory): low-voltage conductors of park
/// trailers, 18 6 A, 16 8, 14 15, 12 20, 10 30. Table 5 for boats has nothing
/// of the kind.
#[test]
fn small_conductors_on_wheels() {
    for (number, cap_a) in [(18, 6.0), (16, 8.0), (14, 15.0), (12, 20.0), (10, 30.0)] {
        let cap = small_conductor_cap(Place::Vehicle, gauge(number));
        assert_eq!(cap, Some(amps(cap_a)));
        assert_eq!(small_conductor_cap(Place::Boat, gauge(number)), None);
        let rated = ampacity(awg(number), &marine_105_c()).unwrap();
        assert!(fuse_ceiling(Place::Vehicle, &rated) <= rated.allowed);
    }
    assert_eq!(small_conductor_cap(Place::Vehicle, gauge(8)), None);
}

/// 33 CFR 183.455(b): at the source, else 7 in, else 40 in sheathed all the
/// way. NFPA 70 section 552.10(E)(4): 18 in (457 mm).
#[test]
fn fuse_positions() {
    let met = |place, along_in, enclosed| position_met(place, inches(along_in), enclosed).unwrap();
    assert_eq!(met(Place::Boat, 0.0, false), Some(FusePosition::AtSource));
    let seven = Some(FusePosition::Within(inches(7.0)));
    assert_eq!(met(Place::Boat, 7.0, false), seven);
    assert_eq!(met(Place::Boat, 7.1, false), None);
    let forty = Some(FusePosition::WithinIfEnclosed(inches(40.0)));
    assert_eq!(met(Place::Boat, 40.0, true), forty);
    assert_eq!(met(Place::Boat, 40.1, true), None);
    assert!(met(Place::Vehicle, 18.0, false).is_some());
    assert_eq!(met(Place::Vehicle, 18.1, true), None);
    assert_eq!(position_met(Place::Cabin, feet(100.0), true), Ok(None));
    near(457.0 / 25.4, 18.0, 0.01);
}

/// Batteries from two in parallel (common practice, no source); solar strings
/// from three (the exception of NFPA 70 section 690.9(A), from memory).
#[test]
fn a_fuse_for_each_part() {
    let each = |what, count| fuse_each(what, count).unwrap();
    assert!(!each(Parallel::BatteryCases, 1) && each(Parallel::BatteryCases, 2));
    assert!(!each(Parallel::SolarStrings, 2) && each(Parallel::SolarStrings, 3));
    assert_eq!(string_fuses(3), Ok(true));
}

/// Ohm's law: 14.6 V over 2 milliohm is 7300 A, more than a blade, a strip or
/// a 32 V cube breaks. A cube's 58 V ends below the 58.4 V of sixteen charging
/// LFP cells. (What each kind breaks: common practice, from memory.)
#[test]
fn faults_of_lithium_banks() {
    let fault = prospective_fault(volts(14.6), ohms(0.002), ohms(0.0)).unwrap();
    near(in_amps(fault), 7300.0, 1e-9);
    let suits = |family, charge_v, rating_a| {
        suitability(family, volts(charge_v), fault, amps(rating_a))
            .unwrap()
            .suits()
    };
    assert!(suits(Family::ClassT, 14.6, 200.0));
    for family in [Family::Blade, Family::Anl, Family::Mrbf, Family::Breaker] {
        assert!(!suits(family, 14.6, 40.0), "{family:?}");
    }
    let cube = suitability(Family::Mrbf, volts(58.4), amps(100.0), amps(100.0)).unwrap();
    assert!(!cube.bears_voltage && !cube.suits());
    assert!(suits(Family::ClassT, 58.4, 200.0));
}

/// NFPA 70 section 690.8: 1.25 x 1.25 = 1.5625 (from memory). A published
/// sizing page: 9.5 A, 14.8 A, fuse 15 A; there the second 1.25 is the fuse's
/// own, so no third is added.
#[test]
fn solar_currents() {
    near(in_amps(array_current(amps(1.0), 1).unwrap()), 1.5625, 1e-12);
    let design = array_current(amps(9.5), 1).unwrap();
    near(in_amps(design), 14.8, 0.05);
    let next = ratings()
        .into_iter()
        .find(|rating| rating.current >= design);
    assert_eq!(next.map(|rating| rating.current), Some(amps(15.0)));
}

/// NFPA 70 section 690.7(A) by the module's coefficient (arithmetic): two in
/// series of 37.4 V, -0.29 %/K, at -20 C: 74.8 x 1.1305 = 84.56 V, inside a
/// 100 V limit; three are not.
#[test]
fn cold_morning_voltage() {
    let string = |in_series| ModuleString {
        open_circuit: volts(37.4),
        per_kelvin: -0.0029,
        in_series,
    };
    let two = cold_morning(&string(2), celsius(-20.0), volts(100.0)).unwrap();
    near(in_volts(two.open_circuit), 84.5614, 1e-9);
    near(in_volts(two.margin), 15.4386, 1e-9);
    assert!(two.within);
    assert!(
        !cold_morning(&string(3), celsius(-20.0), volts(100.0))
            .unwrap()
            .within
    );
}
