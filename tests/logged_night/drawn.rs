//! Nights drawn from our own forward model, with what the plan does not know drawn by
//! its spreads: this tests our arithmetic, not the model.

use super::nights::{Chance, Scatter, Truth, logged, plan, true_plan};
use till_morning::{
    plan::Plan,
    quantity::in_watts_per_kelvin,
    simulate::day::{Inputs, Scene},
    study::logged::{Fitted, FittedNight, LoggedNight, MeterSd, logged_night},
};

const NIGHTS: u64 = 60;
/// What the fit takes a step's mean to scatter by, times the root of its ten rows.
const SCATTER: Scatter = Scatter {
    cabin_k: 0.2 * 3.162,
    outdoor_k: 0.1,
    volts: 0.003 * 25.6 * 3.162,
    draw: 0.02,
};

pub fn fitted(plan: &Plan, log: &till_morning::physics::bench::log::Log) -> FittedNight {
    match logged_night(plan, log, MeterSd::default()) {
        LoggedNight::Fitted(night) => *night,
        other => panic!("{other:?}"),
    }
}

/// One standard deviation before, as a share.
fn sd_before(plan: &Plan, what: Fitted) -> f64 {
    let log = logged(plan, &Truth::AS_PLANNED, 4.0, SCATTER, &mut Chance(0));
    let night = fitted(plan, &log);
    let figure = night.figures.iter().find(|one| one.what == what);
    let figure = figure.expect("a figure");
    0.5 * figure.before_half / figure.before
}

fn loss_w_k(plan: &Plan) -> f64 {
    let scene = Scene::new(plan).unwrap();
    in_watts_per_kelvin(Inputs::new(&scene, plan).unwrap().stores.overall())
}

/// At two standard deviations 95.4 % of the truths lie within the interval: of 60
/// nights 57.3, and 51 or fewer in 15 of 10 000 rows of nights (binomial). And the
/// intervals are no wider than they need be: squares of misses over standard deviations
/// are 1 on the mean, and of 60 nights from 0.55 to 1.6 but for 4 in 1000 (chi-square).
#[test]
fn truths_lie_within_their_intervals_as_often_as_stated() {
    let plan = plan();
    let all = [
        Fitted::CabinLoss,
        Fitted::CabinCapacity,
        Fitted::CoolingPerWatt,
        Fitted::Draw,
        Fitted::Usable,
    ];
    let sds = all.map(|what| sd_before(&plan, what));
    let (mut within, mut squares, mut narrowed) = ([0; 5], [0.0; 5], [0.0; 5]);
    for night in 0..NIGHTS {
        let mut chance = Chance(1000 + night);
        let mut drawn = |sd: f64| 1.0 + sd * chance.normal();
        let truth = Truth {
            loss: drawn(sds[0]),
            capacity: drawn(sds[1]),
            per_watt: drawn(sds[2]),
            draw: drawn(sds[3]),
            usable: drawn(sds[4]),
            apart_k: 0.5 * (drawn(1.0) - 1.0),
            start_share: 0.9 + 0.02 * (drawn(1.0) - 1.0),
            level_v: 0.005 * 25.6 * (drawn(1.0) - 1.0),
        };
        let log = logged(&plan, &truth, 11.0, SCATTER, &mut chance);
        let night = fitted(&plan, &log);
        let truths = [
            loss_w_k(&true_plan(&plan, &truth)) / loss_w_k(&plan),
            truth.capacity,
            truth.per_watt,
            truth.draw,
            truth.usable,
        ];
        for (at, what) in all.into_iter().enumerate() {
            let figure = night.figures.iter().find(|one| one.what == what).unwrap();
            let miss = figure.after - truths[at] * figure.before;
            within[at] += u32::from(miss.abs() <= figure.after_half);
            squares[at] += (2.0 * miss / figure.after_half).powi(2) / NIGHTS as f64;
            narrowed[at] += figure.after_half / figure.before_half / NIGHTS as f64;
        }
    }
    println!("within {within:?} of {NIGHTS}, squares {squares:.2?}, narrowed to {narrowed:.2?}");
    for at in 0..all.len() {
        assert!(within[at] >= 52, "{:?}: {}", all[at], within[at]);
        assert!(
            (0.55..=1.6).contains(&squares[at]),
            "{:?}: {}",
            all[at],
            squares[at]
        );
    }
    // And something was told: loss, capacity and draw.
    assert!(narrowed[0] < 0.75 && narrowed[1] < 0.75 && narrowed[3] < 0.75);
}
