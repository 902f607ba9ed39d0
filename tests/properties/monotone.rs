//! More load never runs longer; more bank, or deeper, never shorter.

use super::{
    hours,
    sane_plan::{labelled_plan, measured_bank, plan_on, sane_plan},
};
use proptest::prelude::*;
use till_morning::plan::{
    Figure, Load, Plan,
    path::{BankField as B, ModeField as M, Path, UnitField as U},
};

/// Rounding, not a licence: a run is integrated to better than this.
const SLACK: f64 = 1e-8;

fn no_longer(less: &Plan, more: &Plan) -> Result<(), TestCaseError> {
    let (longer_h, shorter_h) = (hours(less), hours(more));
    prop_assert!(
        shorter_h <= longer_h * (1.0 + SLACK),
        "{shorter_h} over {longer_h}"
    );
    Ok(())
}

/// The plan with a number times a factor, kept in its range.
fn scaled(plan: &Plan, path: Path, factor: f64) -> Plan {
    let mut scaled = plan.clone();
    let (number, range) = (plan.number(path).unwrap(), path.range().unwrap());
    scaled.set_number(path, (number * factor).clamp(range.min, range.max));
    scaled
}

proptest! {
    #[test]
    fn more_draw_never_runs_longer(plan in sane_plan(), factor in 1.0..4.0) {
        let path = plan.draw_path(0, 0).unwrap();
        no_longer(&plan, &scaled(&plan, path, factor))?;
    }

    #[test]
    fn more_duty_never_runs_longer(plan in sane_plan(), factor in 1.0..4.0) {
        let path = Path::Mode(0, 0, M::DutyPercent);
        no_longer(&plan, &scaled(&plan, path, factor))?;
    }

    #[test]
    fn more_standby_never_runs_longer(plan in sane_plan(), factor in 1.0..4.0) {
        let path = Path::Mode(0, 0, M::StandbyW);
        no_longer(&plan, &scaled(&plan, path, factor))?;
    }

    #[test]
    fn another_load_never_runs_longer(plan in sane_plan(), watts in 0.0..300.0) {
        let mut more = plan.clone();
        more.loads.push(Load { name: String::new(), power_w: Figure::label(watts) });
        no_longer(&plan, &more)?;
        no_longer(&plan, &scaled(&plan, Path::Bank(0, B::ParasiticW), 1.0 + watts))?;
    }

    #[test]
    fn a_longer_or_thinner_or_hotter_cable_never_runs_longer(plan in sane_plan(), factor in 1.0..4.0) {
        no_longer(&plan, &scaled(&plan, Path::Unit(0, U::CableLengthM), factor))?;
        no_longer(&plan, &scaled(&plan, Path::Unit(0, U::ConnectionsMohm), factor))?;
        no_longer(&plan, &scaled(&plan, Path::Unit(0, U::CableTemperatureC), factor))?;
        no_longer(&plan, &scaled(&plan, Path::Unit(0, U::CableAreaMm2), 1.0 / factor))?;
    }

    #[test]
    fn a_lossier_feed_never_runs_longer(plan in sane_plan(), factor in 1.0..1.3) {
        for field in [U::IdleW, U::NoLoadW, U::ProportionalLossPercent, U::SquareLossPercentPerKw] {
            let path = Path::Unit(0, field);
            if plan.number(path).is_some() {
                no_longer(&plan, &scaled(&plan, path, factor))?;
            }
        }
        let path = Path::Unit(0, U::EfficiencyPercent);
        if plan.number(path).is_some() {
            no_longer(&plan, &scaled(&plan, path, 1.0 / factor))?;
        }
    }

    /// By its label: of a measured bank the label says nothing.
    #[test]
    fn more_bank_never_runs_shorter(plan in labelled_plan(), factor in 1.0..4.0, strings in 1u32..4) {
        no_longer(&scaled(&plan, Path::Bank(0, B::BatteryRatedAh), factor), &plan)?;
        no_longer(&scaled(&plan, Path::Bank(0, B::HealthPercent), factor), &plan)?;
        let mut more = plan.clone();
        more.banks[0].parallel_count += strings;
        no_longer(&more, &plan)?;
    }

    /// More measured, at the same mean volts and under the same load.
    #[test]
    fn more_measured_never_runs_shorter(plan in plan_on(measured_bank().boxed()), factor in 1.0..2.0) {
        let mut more = scaled(&plan, Path::Bank(0, B::MeasuredAh), factor);
        if plan.banks[0].measured.measured_wh.is_some() {
            more = scaled(&more, Path::Bank(0, B::MeasuredWh), factor);
        }
        no_longer(&more, &plan)?;
    }

    #[test]
    fn deeper_or_fuller_never_runs_shorter(plan in sane_plan(), factor in 1.0..4.0) {
        no_longer(&scaled(&plan, Path::Bank(0, B::DepthPercent), factor), &plan)?;
        no_longer(&scaled(&plan, Path::Bank(0, B::StartChargePercent), factor), &plan)?;
    }

    #[test]
    fn more_resistance_or_a_higher_cut_off_never_runs_longer(plan in labelled_plan(), factor in 1.0..3.0) {
        no_longer(&plan, &scaled(&plan, Path::Bank(0, B::BatteryResistanceMohm), factor))?;
        no_longer(&plan, &scaled(&plan, Path::Bank(0, B::CutoffV), factor))?;
        let path = Path::Unit(0, U::CutoffV);
        if plan.number(path).is_some() {
            no_longer(&plan, &scaled(&plan, path, factor))?;
        }
        let path = Path::Bank(0, B::BatteryCurrentLimitA);
        if plan.number(path).is_some() {
            no_longer(&plan, &scaled(&plan, path, 1.0 / factor))?;
        }
    }
}
