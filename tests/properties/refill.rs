//! Filling it again, through the contract.

use super::{
    any_plan::any_plan,
    day::{a_day, has_odd_number},
};
use proptest::prelude::*;
use till_morning::{
    answer::{
        RefillAnswer,
        refill::{Fill, refill},
    },
    plan::{
        Figure, Plan,
        supply::{Charger, ChargerKind},
    },
    simulate::charge::FillEnd,
};

/// A day on a bank with a charger that is never on by the clock.
fn a_refill() -> impl Strategy<Value = Plan> {
    let charger = (
        2.0..120.0f64,
        50.0..100.0f64,
        prop::option::of(100.0..3000.0),
    );
    (a_day(), charger, 0.0..90.0f64, 20.0..100.0f64).prop_map(
        |(mut plan, (amps, efficiency, source_w), from, to)| {
            plan.day.days_count = Some(1);
            plan.supply.refill_from_percent = Some(Figure::exact(from));
            plan.supply.refill_to_percent = Some(to);
            plan.supply.chargers = vec![Charger {
                kind: Some(ChargerKind::Engine),
                most_a: Some(Figure::label(amps)),
                efficiency_percent: Some(Figure::label(efficiency)),
                source_w: source_w.map(Figure::label),
                ..Charger::default()
            }];
            plan
        },
    )
}

fn answered(plan: &Plan) -> RefillAnswer {
    refill(plan).expect("a plan without errors")
}

/// The longest step of lead-acid: its end is known no better.
const NEAR_H: f64 = 0.1;

/// Lead-acid that is filled fast is called full with a little less in it: what has
/// not seeped in goes in afterwards.
const CALLED_FULL_PERCENT: f64 = 1.5;

fn is_no_slower(quick: &Fill, slow: &Fill) -> Result<(), TestCaseError> {
    if slow.is_filled {
        let ends = (
            quick.end,
            quick.reached_percent,
            slow.end,
            slow.reached_percent,
        );
        let is_full = quick.is_filled
            || quick.end == FillEnd::CalledFull
                && quick.reached_percent >= slow.reached_percent - CALLED_FULL_PERCENT;
        prop_assert!(is_full, "{ends:?}");
        let (quick_h, slow_h) = (quick.hours_h.likely, slow.hours_h.likely);
        prop_assert!(quick_h <= slow_h + NEAR_H, "{quick_h} {slow_h} {ends:?}");
    }
    Ok(())
}

proptest! {
    // A tenth of the usual number: each case runs weeks.
    #![proptest_config({
        let usual = ProptestConfig::default();
        ProptestConfig { cases: usual.cases / 10, ..usual }
    })]

    /// Energy: what the charger gives is kept, taken beside, or lost; charge: what
    /// went in is what stayed and what did not. Bands lie about the likely.
    #[test]
    fn books_of_a_refill_close(plan in a_refill()) {
        let answer = answered(&plan);
        prop_assert!(!has_odd_number(&serde_json::to_value(&answer).unwrap()));
        for charger in &answer.chargers {
            for fill in [Some(&charger.idle), charger.cooling.as_ref()].into_iter().flatten() {
                let stored_wh = fill.charger_wh - fill.loads_wh - fill.lost_wh;
                // Nothing is kept at fewer volts than an empty bank's or more than are held.
                let volts = |least: f64| (fill.into_ah * least) - 1e-6;
                prop_assert!(stored_wh <= fill.into_ah * charger.hold_v + 1e-6);
                prop_assert!(stored_wh >= volts(5.0), "{stored_wh} {}", fill.into_ah);
                prop_assert!(fill.lost_wh >= 0.0 && fill.taken_wh >= fill.charger_wh);
                let band = fill.hours_h;
                prop_assert!(band.low <= band.likely && band.likely <= band.high);
            }
        }
    }

    /// More amps and a lower goal are never slower; what runs beside never helps.
    #[test]
    fn what_helps_is_never_slower(plan in a_refill(), more in 1.0..3.0f64, less in 1.0..60.0f64) {
        let base = answered(&plan);
        let mut stronger = plan.clone();
        let charger = &mut stronger.supply.chargers[0];
        charger.most_a = charger.most_a.map(|amps| amps.with(amps.value * more));
        is_no_slower(&answered(&stronger).chargers[0].idle, &base.chargers[0].idle)?;
        let mut lower = plan.clone();
        lower.supply.refill_to_percent = plan.supply.refill_to_percent.map(|to| (to - less).max(1.0));
        is_no_slower(&answered(&lower).chargers[0].idle, &base.chargers[0].idle)?;
        if let Some(cooling) = &base.chargers[0].cooling {
            is_no_slower(&base.chargers[0].idle, cooling)?;
        }
    }

    /// A cloudier sky never gives more, nor leaves more.
    #[test]
    fn a_cloudier_sky_never_gives_more(plan in a_refill()) {
        let Some(sun) = answered(&plan).sun else { return Ok(()) };
        let mut skies = sun.skies;
        skies.push(sun.tomorrow);
        skies.sort_by(|a, b| a.cloud_percent.total_cmp(&b.cloud_percent));
        for two in skies.windows(2) {
            let offered = |sky: &till_morning::answer::refill::SkyDay| sky.solar_wh + sky.spilled_wh;
            prop_assert!(offered(&two[1]) <= offered(&two[0]) * 1.001 + 0.1, "{two:?}");
        }
    }

    /// Any plan at all: answered or refused, never odd.
    #[test]
    fn any_plan_gives_a_refill_or_none(plan in any_plan(false), wild in any_plan(true)) {
        for plan in [plan, wild] {
            if let Some(answer) = refill(&plan) {
                prop_assert!(!has_odd_number(&serde_json::to_value(&answer).unwrap()), "{plan:?}");
            }
        }
    }
}
