//! Plans of plain days, for the checks that run one.

use till_morning::{
    physics::battery::Chemistry,
    plan::{Bank, Figure, Load, Mode, ModeRow, Path, Plan},
    simulate::day::{Inputs, Scene},
    study::spread::half_width,
};

/// What every figure of a closed form is: stated, and without a spread.
#[allow(
    clippy::unnecessary_wraps,
    reason = "it stands in the place of a maybe"
)]
pub fn exact(value: f64) -> Option<Figure> {
    Some(Figure::exact(value))
}

/// A bank of one battery of so many Ah whose volts never change: energy is Ah times
/// volts and nothing else.
pub fn flat_bank(volts: f64, ah: f64) -> Bank {
    Bank {
        battery_open_circuit: super::table(&[(0.0, volts), (1.0, volts)]),
        health_percent: exact(100.0),
        start_charge_percent: exact(100.0),
        ..super::bare_bank(Chemistry::Lfp, volts, ah)
    }
}

/// A day from midnight on in which nothing runs but a load of so many watts.
pub fn load_alone(bank: Bank, load_w: Figure) -> Plan {
    let mut plan = Plan::of(bank, Mode::of_power("Off", Figure::exact(300.0)));
    plan.loads = vec![Load {
        name: "Load".into(),
        power_w: load_w,
    }];
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        unit: 0,
        mode: None,
    }];
    plan.night.start_clock_min = 0;
    plan.supply.bank_c = exact(25.0);
    plan.day.days_count = Some(1);
    plan
}

/// Two days of hours alike, without sun.
pub fn dark_hours(plan: &mut Plan, outdoor_c: f64) {
    let imported = &mut plan.day.imported;
    imported.outdoor_c = vec![outdoor_c; 48];
    imported.global_w_m2 = vec![0.0; 48];
    imported.dew_point_c = vec![-40.0; 48];
}

/// Everything without a spread but one number.
pub fn only_spread(plan: &mut Plan, but: Path) {
    for path in plan.paths() {
        if let Some(figure) = plan.figure(path).filter(|_| path != but)
            && half_width(path, figure) > 0.0
        {
            assert!(plan.set_figure(path, Figure::exact(figure.value)), "{path}");
        }
    }
}

/// The plain numbers of a plan's day.
#[track_caller]
pub fn inputs(plan: &Plan) -> Inputs {
    assert_eq!(plan.errors(), []);
    let scene = Scene::new(plan).unwrap();
    Inputs::new(&scene, plan).unwrap()
}

/// Share of all below so many standard deviations, of the normal distribution: by
/// the error function of Abramowitz and Stegun, 7.1.26 (1.5e-7).
pub fn normal_share(deviations: f64) -> f64 {
    let x = deviations.abs() / 2f64.sqrt();
    let t = 1.0 / (1.0 + 0.327_591_1 * x);
    let sum = [
        1.061_405_429,
        -1.453_152_027,
        1.421_413_741,
        -0.284_496_736,
        0.254_829_592,
    ]
    .into_iter()
    .fold(0.0, |sum, factor| (sum + factor) * t);
    let upper = 0.5 * sum * (-x * x).exp();
    if deviations < 0.0 { upper } else { 1.0 - upper }
}

#[test]
fn the_share_below_is_the_tabulated_one() {
    // NIST/SEMATECH e-Handbook, 1.3.6.7.1.
    for (deviations, share) in [
        (0.0, 0.5),
        (1.0, 0.841_34),
        (1.96, 0.975_0),
        (-1.5, 0.066_81),
    ] {
        super::near(normal_share(deviations), share, 5e-6);
    }
}
