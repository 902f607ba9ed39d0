//! Any plan at all: every further question is answered in plain numbers or left.

#[path = "../properties/any_plan.rs"]
mod any_plan;

use any_plan::any_plan;
use proptest::prelude::*;
use till_morning::{
    answer::day::{Further, further},
    plan::{
        CheckIn, Figure, ModeRow, Plan,
        supply::{Array, Charger},
    },
};

/// A reading, sane or not.
fn check_in() -> impl Strategy<Value = CheckIn> {
    let clock_min = prop_oneof![8 => 0..1440u32, 1 => any::<u32>()];
    let charge = prop_oneof![8 => 0.0..=100.0f64, 1 => any::<f64>()];
    let cabin = prop_oneof![8 => -30.0..=80.0f64, 1 => any::<f64>()];
    let day = prop_oneof![8 => 0..3u32, 1 => any::<u32>()];
    (
        proptest::option::weighted(0.9, clock_min),
        proptest::option::of(day),
        proptest::option::weighted(0.8, charge),
        proptest::option::of(cabin),
    )
        .prop_map(|(clock_min, day_count, charge, cabin)| CheckIn {
            clock_min,
            day_count,
            charge_percent: charge.map(Figure::measured),
            cabin_c: cabin.map(Figure::guess),
        })
}

/// What is not a finite number becomes null in JSON, and is then no number to
/// read back.
fn is_sound(plan: &Plan) -> Result<(), TestCaseError> {
    let found = further(plan);
    let json = serde_json::to_string(&found).unwrap();
    prop_assert!(!json.contains("null"), "{plan:?}");
    let read: Further = serde_json::from_str(&json).unwrap();
    prop_assert_eq!(read, found);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn any_plan_is_asked(
        plan in prop_oneof![any_plan(true), any_plan(false)],
        check_ins in prop::collection::vec(check_in(), 0..5),
        rows in prop::collection::vec((0..1440u32, 0..3usize), 0..4),
        has_supply in any::<bool>(),
    ) {
        let mut plan = plan;
        // One day is as good as seven.
        plan.day.days_count = Some(1);
        plan.check_ins = check_ins;
        if has_supply {
            plan.supply.arrays.push(Array::default());
            plan.supply.chargers.push(Charger::default());
        }
        plan.mode_plan = rows
            .into_iter()
            .map(|(from, mode)| ModeRow {
                from_clock_min: Some(from),
                unit: 0,
                mode: (mode > 0).then_some(0),
            })
            .collect();
        is_sound(&plan)?;
    }

    /// The demo under readings of any kind.
    #[test]
    fn any_reading_is_met(check_ins in prop::collection::vec(check_in(), 1..6)) {
        let mut plan = Plan::demo();
        plan.day.days_count = Some(1);
        plan.check_ins = check_ins;
        is_sound(&plan)?;
    }
}
