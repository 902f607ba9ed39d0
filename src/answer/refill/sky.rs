//! By the sun alone: tomorrow under several skies, and how sure that is.

use super::{
    SkyDay, SunRefill, chargers,
    setting::{Night, Setting, sun_alone, unit_off},
    watch::{DAY_H, Watch},
};
use crate::{
    physics::solar::charger::Charger,
    plan::{
        Figure, Plan,
        day::DayField as D,
        path::{BankField as B, ModeField as M, Path},
        supply::{ArrayField as A, SupplyField as S},
    },
    simulate::{
        charge::FillEnd,
        day::{How, Inputs, Scene, Start, run},
    },
    study::spread::{Band, Share},
};

/// Skies shown beside the plan's own, per cent of cloud.
const SKIES_PERCENT: [f64; 3] = [0.0, 50.0, 100.0];
/// Modes whose figures are moved for the band.
const MOST_MODES: usize = 4;
/// Charge that counts as back: so far below, per cent of what the bank holds.
const BACK_WITHIN_PERCENT: f64 = 0.5;

/// The first 24 hours of a plan without chargers; nothing where it cannot be run.
pub fn sky_day(scene: &Scene, plan: &Plan) -> Option<SkyDay> {
    let inputs = Inputs::new(scene, plan)?;
    let mut watch = Watch::default();
    let how = How {
        until_h: Some(DAY_H),
        ..How::default()
    };
    let outcome = run(scene, &inputs, &how, &mut watch)?;
    let first = watch.points.first()?.1;
    let mut low = (0.0, first);
    for &at in &watch.points {
        if at.1 < low.1 {
            low = at;
        }
    }
    let (lowest_h, lowest_percent) = low;
    let after = watch.points.iter().filter(|at| at.0 >= lowest_h);
    let highest_percent = after.fold(lowest_percent, |most, at| at.1.max(most));
    let taken = first - lowest_percent;
    let back = if taken > BACK_WITHIN_PERCENT {
        100.0 * (highest_percent - lowest_percent) / taken
    } else {
        100.0
    };
    let energy = outcome.energy;
    Some(SkyDay {
        cloud_percent: plan.number(Path::Day(D::CloudPercent))?,
        start_percent: first,
        lowest_percent,
        lowest_h,
        end_percent: 100.0 * outcome.end_share,
        highest_percent,
        repaid_h: watch.reaches(lowest_h, first - BACK_WITHIN_PERCENT),
        repaid_percent: back,
        solar_wh: energy.solar_wh,
        spilled_wh: energy.spilled_wh,
        used_wh: energy.loads_wh + energy.unit_wh,
        empty_h: watch.empty_h,
    })
}

/// All but the bands. Nothing without panels, or where the day cannot be run.
///
/// `from`: the share that idle hours are counted from, 0 to 1.
pub fn sun_refill(plan: &Plan, night: &Night, setting: &Setting, from: f64) -> Option<SunRefill> {
    if plan.supply.arrays.is_empty() {
        return None;
    }
    let alone = sun_alone(plan);
    let scene = Scene::new(&alone)?;
    let tomorrow = sky_day(&scene, &alone)?;
    let mut skies = Vec::new();
    if plan.day.imported.global_w_m2.is_empty() {
        let mut other = alone.clone();
        for cloud in SKIES_PERCENT {
            if (cloud - tomorrow.cloud_percent).abs() < 5.0 {
                continue;
            }
            other.day.cloud_percent = Some(Figure::exact(cloud));
            skies.extend(sky_day(&scene, &other));
        }
    }
    let end = tomorrow.end_percent;
    Some(SunRefill {
        idle_h: idle_h(plan, night, setting, from),
        tomorrow,
        end_percent: Band {
            low: end,
            likely: end,
            high: end,
        },
        spread_from: Vec::new(),
        skies,
    })
}

/// Puts the band of the day's end in.
pub fn with_band(sun: &mut SunRefill, (band, shares): (Band, Vec<Share>)) {
    sun.end_percent = Band {
        high: band.high.min(100.0),
        ..band
    };
    sun.spread_from = shares;
}

/// Hours from the wanted hour on until the charge asked for, the unit off.
fn idle_h(plan: &Plan, night: &Night, setting: &Setting, from: f64) -> Option<f64> {
    let mut alone = unit_off(&sun_alone(plan));
    alone.day.days_count = Some(7);
    let scene = Scene::coarse(&alone)?;
    let inputs = Inputs::new(&scene, &alone)?;
    let how = How {
        is_quick: true,
        start: Some(Start {
            at_h: night.wanted_h,
            soc: from,
            cabin: night.morning.end_cabin,
        }),
        ..How::default()
    };
    let mut watch = Watch::default();
    run(&scene, &inputs, &how, &mut watch)?;
    let full = called_full(setting, inputs.bank.charging.hold_v);
    let to = 100.0 * setting.to.min(full);
    let at_h = watch.reaches(night.wanted_h, to - BACK_WITHIN_PERCENT)?;
    Some(at_h - night.wanted_h)
}

/// The charge at which held volts leave the bank no more than the usual end
/// current: what a controller calls full.
fn called_full(setting: &Setting, hold_v: f64) -> f64 {
    let end_a = setting.end_a;
    let charger = Charger {
        most_a: 10.0 * end_a,
        hold_v,
        end_a,
        efficiency: 1.0,
        source_w: None,
    };
    let filled = chargers::fill(setting, charger, &[], 0.0);
    match filled.end {
        FillEnd::CalledFull => filled.held,
        _ => 1.0,
    }
}

/// The addresses that tomorrow hangs on, with a spread.
///
/// A few modes are enough: more are moved in vain, each at the cost of two days.
pub fn paths(plan: &Plan) -> Vec<Path> {
    let mut paths: Vec<Path> = [D::CloudPercent, D::HighC, D::LinkeTurbidity]
        .map(Path::Day)
        .to_vec();
    let bank = [
        B::BatteryRatedAh,
        B::HealthPercent,
        B::StartChargePercent,
        B::MeasuredAh,
        B::MeasuredWh,
    ];
    paths.extend(bank.map(|field| Path::Bank(0, field)));
    paths.push(Path::Supply(S::ArrayLossPercent));
    for at in 0..plan.supply.arrays.len() {
        paths.extend([A::RatedW, A::ShadingPercent].map(|field| Path::Array(at, field)));
    }
    let mut modes: Vec<_> = plan.mode_rows();
    modes.retain(|row| row.2.is_some());
    modes.sort_by_key(|row| (row.1, row.2));
    modes.dedup_by_key(|row| (row.1, row.2));
    modes.truncate(MOST_MODES);
    for (_, unit, mode) in modes {
        let fields = [M::PowerW, M::CurrentA, M::CoolingW];
        paths.extend(fields.map(|field| Path::Mode(unit, mode.unwrap_or(0), field)));
    }
    let is_measured = plan.banks.first().is_some_and(|bank| bank.is_measured());
    paths.retain(|&path| match path {
        // What was measured replaces what the label says.
        Path::Bank(_, B::BatteryRatedAh | B::HealthPercent) => !is_measured,
        _ => true,
    });
    paths
}
