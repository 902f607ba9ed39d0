//! A load in stages: the emergency-load sum of light aircraft, where the draw
//! changes as the crew sheds loads.

use super::near;
use till_morning::{
    physics::battery::{Capacity, Pack, curve::Curve},
    physics::circuit::Branch,
    search::{Search, search},
    simulate::{Job, Run, Stop, job::Limits, run_down},
};

/// 35 Ah of which 75 % count (26.25 Ah), 43.5 A for 5 min, 48.1 A for 10 min,
/// then 34.0 A: 40.8 min in all (an avionics maker's installation manual, by
/// the electrical load analysis of light aircraft; its sum is in A·min).
///
/// That sum knows no voltage and no Peukert's law (its 75 % stand for them), so
/// the pack has no resistance and an exponent of one; each stage is a run from
/// the share held where the one before ended.
#[test]
fn emergency_loads_of_an_aircraft() {
    let pack = pack_of(35.0);
    let floor = 0.25;
    let after_first = share_after(&pack, 43.5, 1.0, 5.0 / 60.0);
    let after_second = share_after(&pack, 48.1, after_first, 10.0 / 60.0);
    let last = stage(&pack, 34.0, after_second, floor);
    assert_eq!(last.stop, Stop::ChargeFloor { kept_percent: 25.0 });
    near(60.0 * last.hours, 25.8, 0.05);
    near(5.0 + 10.0 + 60.0 * last.hours, 40.8, 0.05);
    near((1.0 - floor) * pack.held_ah() * 60.0, 1575.0, 1e-9);
}

/// The sample duty cycle of IEEE 485, Annex A (from memory): 435.0 Ah removed.
#[test]
fn duty_cycle_of_a_station_battery() {
    let minutes = [
        (320.0, 1.0),
        (100.0, 29.0),
        (280.0, 30.0),
        (200.0, 60.0),
        (40.0, 59.0),
        (120.0, 1.0),
    ];
    let pack = pack_of(1000.0);
    let mut held = 1.0;
    for (amps, minutes) in minutes {
        held = share_after(&pack, amps, held, minutes / 60.0);
    }
    near((1.0 - held) * pack.held_ah(), 435.0, 0.05);
}

fn pack_of(ah: f64) -> Pack {
    Pack {
        curve: Curve::new(&[(0.0, 11.8), (1.0, 12.7)]).expect("a curve"),
        polarisation: None,
        ohm: 0.0,
        capacity: Capacity {
            ah,
            rated_a: ah,
            exponent: 1.0,
        },
        empty_charge: 0.0,
        cutoff_v: 0.0,
        limit_a: None,
        parasitic_w: 0.0,
    }
}

fn stage(pack: &Pack, amps: f64, from: f64, to: f64) -> Run {
    let load = [Branch::power(0.0, 0.0), Branch::current(amps, 0.0)];
    let job = Job {
        on: load,
        off: load,
        duty: 1.0,
        limits: Limits::default(),
    };
    run_down(pack, &job, from, to)
}

/// The share still held after so many hours: the floor that the run reaches then.
#[track_caller]
fn share_after(pack: &Pack, amps: f64, from: f64, hours: f64) -> f64 {
    let lasts = |to: f64| stage(pack, amps, from, to).hours;
    match search(lasts, 0.0, from, hours) {
        Search::Found(to) => to,
        outside => panic!("{outside:?}"),
    }
}
