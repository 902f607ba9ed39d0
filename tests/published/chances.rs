//! Width of bands and odds, where one normal input makes them known in closed form.

use super::{
    answered,
    days::{dark_hours, exact, flat_bank, load_alone, normal_share, only_spread},
    near, near_share, power,
};
use till_morning::{
    plan::{Figure, ModeRow, Path, Plan, cabin::CabinField as C, path::ModeField as M},
    study::spread::Sampler,
};

fn spread(value: f64, percent: f64) -> Figure {
    Figure {
        spread_percent: Some(percent),
        ..Figure::exact(value)
    }
}

/// Energy over power, and nothing unsure but the power: 1200 Wh at 100 W known to
/// 10 % at two standard deviations (GUM, JCGM 100:2008, 5.1: y = f(x), moved by the
/// input's own uncertainty) are 12 h, and between 1200/110 and 1200/90.
#[test]
fn a_runs_band_is_as_wide_as_its_one_input() {
    let mut plan = Plan::of(flat_bank(12.0, 100.0), power(100.0));
    let path = Path::Mode(0, 0, M::PowerW);
    only_spread(&mut plan, path);
    plan.set_figure(path, spread(100.0, 10.0));
    let band = answered(&plan).runs[0].hours_h;
    near(band.likely, 12.0, 1e-6);
    near(band.low, 1200.0 / 110.0, 1e-6);
    near(band.high, 1200.0 / 90.0, 1e-6);

    // Two alike and independent: by the root of the sum of squares.
    plan.loads.push(till_morning::plan::Load {
        name: "Load".into(),
        power_w: spread(100.0, 10.0),
    });
    let band = answered(&plan).runs[0].hours_h;
    near(band.likely, 6.0, 1e-6);
    near(band.low, 6.0 - 2f64.sqrt() * (6.0 - 1200.0 / 210.0), 1e-6);
    near(band.high, 6.0 + 2f64.sqrt() * (1200.0 / 190.0 - 6.0), 1e-6);
}

/// A load of 100 W, a standard deviation of 5 W (half of its spread of 10 %), and all
/// else known: 1200 Wh last to the wanted hour where the load is at most 1200 Wh over
/// it, which has a share of the normal distribution (NIST/SEMATECH e-Handbook,
/// 1.3.6.6.1). Hours between 2.5 and 97.5 % of the days lie 1.96 deviations apart.
///
/// Of 2500 days; the odds' own standard deviation is then at most 0.9 %.
#[test]
fn odds_of_lasting_are_those_of_the_one_input() {
    for wanted_h in [11.25, 12.6] {
        let mut plan = load_alone(flat_bank(12.0, 100.0), Figure::exact(100.0));
        only_spread(&mut plan, Path::Load(0));
        plan.set_figure(Path::Load(0), spread(100.0, 10.0));
        plan.night.wanted_h = wanted_h;
        let mut sampler = Sampler::new(&plan).unwrap();
        sampler.step(2500);
        let odds = sampler.finish().unwrap().odds;
        let share = normal_share((1200.0 / wanted_h - 100.0) / 5.0);
        near(odds.lasting_percent, 100.0 * share, 1.2);
        near_share(odds.hours_h.low, 1200.0 / (100.0 + 1.96 * 5.0), 5e-3);
        near_share(odds.hours_h.high, 1200.0 / (100.0 - 1.96 * 5.0), 5e-3);
        near_share(odds.hours_h.likely, 12.0, 3e-3);
    }
}

/// A drawn number's own standard deviation, of 20,000: half of the stated spread, and
/// nineteen in twenty within it (95.45 % at two deviations).
#[test]
fn drawn_numbers_are_as_wide_as_their_spread() {
    let mut plan = load_alone(flat_bank(12.0, 100.0), Figure::exact(100.0));
    only_spread(&mut plan, Path::Load(0));
    plan.set_figure(Path::Load(0), spread(100.0, 10.0));
    assert_eq!(plan.errors(), []);
    let sampler = Sampler::new(&plan).unwrap();
    let drawn: Vec<f64> = (0..20_000)
        .map(|run| sampler.drawn_plan(run).loads[0].power_w.value)
        .collect();
    let count = drawn.len() as f64;
    let mean = drawn.iter().sum::<f64>() / count;
    let variance = drawn.iter().map(|w| (w - mean).powi(2)).sum::<f64>() / (count - 1.0);
    near(mean, 100.0, 0.15);
    near_share(variance.sqrt(), 5.0, 0.02);
    let within = drawn.iter().filter(|w| (*w - 100.0).abs() <= 10.0).count();
    near(within as f64 / count, 0.954_5, 0.005);
}

/// A cabin in the dark of 35 °C outdoors, its heat the one thing unsure, cooled by a
/// unit on a bank that cannot end.
fn cooled(gains_w: Figure) -> Plan {
    let mut plan = load_alone(flat_bank(12.0, 10_000.0), Figure::exact(1.0));
    plan.units[0].modes[0] = power(300.0);
    plan.units[0].cooling.cooling_w = exact(1000.0);
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        unit: 0,
        mode: Some(0),
    }];
    plan.night.wanted_h = 12.0;
    plan.cabin.people_count = Some(0);
    plan.cabin.animals_count = Some(0);
    plan.cabin.set_point_c = Some(26.0);
    plan.cabin.start_c = exact(26.0);
    dark_hours(&mut plan, 35.0);
    only_spread(&mut plan, Path::Cabin(C::GainsW));
    plan.set_figure(Path::Cabin(C::GainsW), gains_w);
    plan
}

/// Odds of days drawn from a plan.
#[track_caller]
fn odds(plan: &Plan, count: u32) -> till_morning::answer::day::Odds {
    assert_eq!(plan.errors(), []);
    let mut sampler = Sampler::new(plan).unwrap();
    sampler.step(count);
    sampler.finish().unwrap().odds
}

/// The set point is held up to some heat and no further: found by halving, with
/// nothing unsure. With the heat normal about a value beside it, the odds of holding
/// are the share of the normal distribution below it, while the odds of lasting stay
/// a hundred: a night that lasts may well be a hot one.
///
/// Of 600 days: the odds' own standard deviation is at most 1.5 %.
#[test]
fn odds_of_holding_are_not_those_of_lasting() {
    let holds = |gains_w: f64| odds(&cooled(Figure::exact(gains_w)), 1).holding_percent > 50.0;
    let (mut held_w, mut lost_w) = (0.0, 2000.0);
    assert!(holds(held_w) && !holds(lost_w));
    while lost_w - held_w > 0.01 {
        let middle_w = 0.5 * (held_w + lost_w);
        if holds(middle_w) {
            held_w = middle_w;
        } else {
            lost_w = middle_w;
        }
    }
    assert!(held_w > 100.0, "{held_w}");
    for deviations in [-1.0, 1.5] {
        // Spread 20 %: a standard deviation of a tenth of the value.
        let mean_w = held_w / (1.0 + 0.1 * deviations);
        let odds = odds(&cooled(spread(mean_w, 20.0)), 600);
        near(odds.lasting_percent, 100.0, 0.0);
        near(odds.holding_percent, 100.0 * normal_share(deviations), 2.5);
    }
}
