//! A measured day.

use super::{
    drawn::fitted,
    vectors::{number, rows},
};
use till_morning::{
    physics::bench::log::{ClockTimes, Log, Notes, Sample, Sense},
    plan::{
        Bank, Figure, Load, Mode, Path, Plan, Unit, cabin::CabinField as C, cooling::UnitCooling,
        cooling::UnitCurves,
    },
};

fn house() -> Plan {
    let mut plan = Plan::demo();
    plan.day = Default::default();
    plan.day.set_place(32.2, -110.9, Some(780.0));
    plan.day.set_date(2023, 8, 28);
    plan.day.utc_offset_min = Some(-420.0);
    plan.supply.arrays.clear();
    plan.mode_plan.clear();
    plan.banks = vec![Bank {
        battery_rated_ah: Figure::guess(5000.0),
        ..plan.banks[0].clone()
    }];
    plan.banks[0].battery_current_limit_a = None;
    plan.loads = vec![Load {
        name: "Electronics".into(),
        power_w: Figure::guess(16.0),
    }];
    let mut unit: Unit = plan.units[0].clone();
    unit.cutoff_v = None;
    unit.cable.length_m = 0.0;
    unit.modes = vec![
        Mode {
            cooling_w: Some(Figure::guess(6800.0)),
            ..Mode::of_power("Low", Figure::guess(1900.0))
        },
        Mode {
            cooling_w: Some(Figure::guess(9700.0)),
            ..Mode::of_power("High", Figure::guess(2850.0))
        },
    ];
    unit.cooling = UnitCooling {
        curves: Some(UnitCurves::TwoStage),
        ..UnitCooling::default()
    };
    plan.units = vec![unit];
    plan.night.asked_unit = 0;
    plan.night.asked_mode = 0;
    plan.cabin = Default::default();
    let mut set = |field, value: f64, spread: f64| {
        plan.set_figure(
            Path::Cabin(field),
            Figure {
                spread_percent: Some(spread),
                ..Figure::guess(value)
            },
        );
    };
    set(C::FloorM2, 150.0, 0.0);
    set(C::VolumeM3, 380.0, 0.0);
    set(C::RoofM2, 150.0, 0.0);
    set(C::WallsM2, 140.0, 0.0);
    set(C::WallGlassM2, 20.0, 30.0);
    set(C::RoofGlassM2, 0.0, 0.0);
    set(C::ShellWM2K, 0.5, 60.0);
    set(C::GlassWM2K, 3.0, 60.0);
    set(C::AirChangesPerH, 0.5, 50.0);
    set(C::AirCapacityKjK, 3000.0, 80.0);
    set(C::ShellCapacityKjK, 15000.0, 80.0);
    set(C::GainsW, 500.0, 50.0);
    plan.cabin.people_count = Some(2);
    plan.cabin.set_point_c = Some(25.56);
    plan
}

#[test]
fn tucson() {
    let plan = house();
    println!("{:?}", plan.errors());
    let all = rows("nist_unit_tucson_28aug_1min.csv");
    let samples: Vec<Sample> = all
        .iter()
        .filter(|row| (300.0..1260.0).contains(&number(row, "minute")))
        .map(|row| Sample {
            time_s: 60.0 * number(row, "minute"),
            watts: Some(number(row, "p_indoor_w") + number(row, "p_outdoor_w")),
            celsius: Some(number(row, "t_room_c")),
            outdoor_c: Some(number(row, "t_out_c")),
            ..Sample::default()
        })
        .collect();
    let notes = Notes {
        clock: ClockTimes::Local,
        ..Notes::default()
    };
    let log = Log::new(samples, None, Sense::Positive, notes).unwrap();
    let night = fitted(&plan, &log);
    for f in &night.figures {
        println!("{f:?}");
    }
    println!(
        "{:?} {:?}",
        night.cabin_misfit_number, night.charged_percent
    );
    if let Some(a) = &night.ahead {
        println!(
            "{:?} {:?} {:?} {:?}",
            a.held_c, a.cabin_k, a.volts_v, a.used_ah
        );
        for p in &a.points {
            println!(
                "{:.2} {:.2?} {:.2?} {:.1} {:.1?}",
                p.hours_h, p.cabin_c, p.foretold_c, p.used_ah, p.foretold_ah
            );
        }
    }
    panic!();
}
