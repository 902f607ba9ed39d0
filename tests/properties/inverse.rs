//! What was searched for does what was asked.

use super::{
    answer, close, hours,
    sane_plan::{labelled_plan, sane_plan},
};
use proptest::prelude::*;
use till_morning::{
    plan::{
        Feed, Figure, Plan, Unknown,
        path::{BankField as B, Path},
    },
    study::sizing::{Found, NeededBank},
};

/// The hours are as wanted; or no value gives them, and the one found stands
/// where they jump over what is wanted (a limit that lets a run start at all).
fn as_wanted(wanted_h: f64, hours_at: impl Fn(f64) -> f64) -> Result<(), TestCaseError> {
    let found_h = hours_at(1.0);
    let (below_h, above_h) = (hours_at(1.0 - 1e-6), hours_at(1.0 + 1e-6));
    let jumps = (below_h - wanted_h) * (above_h - wanted_h) < 0.0 && !close(below_h, above_h, 1e-3);
    prop_assert!(
        close(found_h, wanted_h, 1e-6) || jumps,
        "{found_h} for {wanted_h}, beside {below_h} and {above_h}"
    );
    Ok(())
}

fn asked(mut plan: Plan, unknown: Unknown, wanted_h: f64) -> (Plan, Found) {
    plan.night.unknown = unknown;
    plan.night.wanted_h = wanted_h;
    let found = answer(&plan).sizing.remove(0).found;
    plan.night.unknown = Unknown::Hours;
    (plan, found)
}

/// The plan's bank as one string of `share` of the Ah that was found, with the
/// resistance and the limit that go with it.
fn on_needed(plan: &Plan, needed: &NeededBank, share: f64) -> Plan {
    let mut plan = plan.clone();
    let number = |plan: &Plan, field| plan.number(Path::Bank(0, field));
    let health = number(&plan, B::HealthPercent).unwrap() / 100.0;
    let battery_ah = share * needed.needed_ah / health;
    let strings = battery_ah / plan.banks[0].battery_rated_ah.value;
    let milliohm = number(&plan, B::BatteryResistanceMohm).unwrap() / strings;
    let cutoff_v = number(&plan, B::CutoffV).unwrap();
    let bank = &mut plan.banks[0];
    // What the chemistry would say of a battery of that many Ah is another thing.
    bank.battery_resistance_mohm = Some(Figure::label(milliohm));
    bank.battery_current_limit_a = bank
        .battery_current_limit_a
        .map(|a| a.with(a.value * strings));
    bank.battery_rated_ah.value = battery_ah;
    bank.cutoff_v = Some(Figure::label(cutoff_v));
    (bank.series_count, bank.parallel_count) = (needed.series_count, 1);
    plan
}

proptest! {
    #[test]
    fn the_bank_found_runs_as_long(plan in labelled_plan(), wanted_h in 0.5..60.0) {
        let (plan, found) = asked(plan, Unknown::Bank, wanted_h);
        if let Found::Bank(needed) = found {
            // Very small and very large ones are outside what a plan may say.
            if on_needed(&plan, &needed, 1.0).errors().is_empty() {
                as_wanted(wanted_h, |share| hours(&on_needed(&plan, &needed, share)))?;
            }
        }
    }

    /// A unit of twice or three times the volts wants its batteries in series: the
    /// same bank is found as from batteries that stand in series already, whatever
    /// was stated or measured of the bank in volts.
    #[test]
    fn batteries_in_series_are_as_if_planned(plan in sane_plan(), wanted_h in 0.5..60.0, times in 2u32..4) {
        let mut flat = plan;
        flat.units[0].feed = Feed::Direct;
        flat.units[0].supply_v = Some(flat.banks[0].nominal_v() * f64::from(times));
        let mut stood = flat.clone();
        let (bank, factor) = (&mut stood.banks[0], f64::from(times));
        bank.series_count *= times;
        bank.cutoff_v = bank.cutoff_v.map(|v| v.with(v.value * factor));
        bank.measured.measured_wh = bank.measured.measured_wh.map(|wh| wh.with(wh.value * factor));
        bank.measured.load_w = bank.measured.load_w.map(|w| w.with(w.value * factor));
        // Three times the measured load may be more than a plan can say.
        if !stood.errors().is_empty() {
            return Ok(());
        }
        let found = |plan| asked(plan, Unknown::Bank, wanted_h).1;
        prop_assert_eq!(found(flat), found(stood));
    }

    /// The whole batteries offered are enough when new, and when aged.
    #[test]
    fn the_batteries_offered_are_enough(plan in labelled_plan(), wanted_h in 0.5..60.0) {
        let (_, found) = asked(plan, Unknown::Bank, wanted_h);
        if let Found::Bank(needed) = found {
            prop_assert!(needed.hours_new_h >= wanted_h * (1.0 - 1e-6), "{needed:?}");
            prop_assert!(needed.hours_aged_h >= wanted_h * (1.0 - 1e-6), "{needed:?}");
            prop_assert!(needed.hours_new_h >= needed.hours_aged_h * (1.0 - 1e-9), "{needed:?}");
            prop_assert_eq!(needed.batteries_count, needed.series_count * needed.parallel_count);
        }
    }

    #[test]
    fn the_draw_found_runs_as_long(plan in labelled_plan(), wanted_h in 0.5..60.0) {
        let (plan, found) = asked(plan, Unknown::Draw, wanted_h);
        if let Found::Draw { draw, .. } = found {
            let path = plan.draw_path(0, 0).unwrap();
            as_wanted(wanted_h, |share| {
                let mut plan = plan.clone();
                let range = path.range().unwrap();
                plan.set_number(path, (draw * share).clamp(range.min, range.max));
                hours(&plan)
            })?;
        }
    }

    #[test]
    fn the_depth_found_runs_as_long(plan in labelled_plan(), wanted_h in 0.5..60.0) {
        let (plan, found) = asked(plan, Unknown::Depth, wanted_h);
        if let Found::Depth { depth_percent } = found {
            as_wanted(wanted_h, |share| {
                let mut plan = plan.clone();
                plan.banks[0].depth_percent = Some((depth_percent * share).clamp(1.0, 100.0));
                hours(&plan)
            })?;
        }
    }

    /// Nothing found means that neither end of what was tried would do.
    #[test]
    fn nothing_found_is_out_of_reach(plan in labelled_plan(), wanted_h in 0.5..60.0) {
        let (plan, found) = asked(plan, Unknown::Draw, wanted_h);
        if let Found::None = found {
            let path = plan.draw_path(0, 0).unwrap();
            let at = |draw| {
                let mut plan = plan.clone();
                plan.set_number(path, draw);
                hours(&plan)
            };
            let range = path.range().unwrap();
            prop_assert!(at(range.min) < wanted_h || at(range.max) > wanted_h);
        }
    }
}
