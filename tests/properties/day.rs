//! The hot day: books that close, and more of a good thing is never less.

use super::any_plan::any_plan;
use proptest::{prelude::*, sample::select};
use serde_json::Value;
use till_morning::{
    answer::{DayAnswer, day::day},
    bank::Chemistry,
    plan::{
        Bank, Figure, Mode, Plan,
        cabin::{BodyKind, Covers, Insulation},
        cooling::Control,
        supply::{Array, BankPlace, Charger, ChargerKind, ControllerKind},
    },
};

fn figure(value: f64) -> Option<Figure> {
    Some(Figure::label(value))
}

/// Any day that could be somewhere, on a bank of any kind.
fn a_day() -> impl Strategy<Value = Plan> {
    let bank = (
        select(&Chemistry::ALL[..]),
        20.0..600.0f64,
        20.0..100.0f64,
        20.0..100.0f64,
    );
    let unit = (80.0..900.0f64, any::<bool>(), 1.5..4.5f64, 0.0..90.0f64);
    let weather = (
        -10.0..45.0f64,
        0.0..20.0f64,
        -10.0..25.0f64,
        0.0..100.0f64,
        0..1440u32,
        1..3u32,
    );
    let cabin = (
        select(vec![
            BodyKind::Van,
            BodyKind::TentCabin,
            BodyKind::Boat,
            BodyKind::SmallCabin,
        ]),
        select(vec![
            Insulation::Bare,
            Insulation::Partial,
            Insulation::Heavy,
        ]),
        18.0..30.0f64,
        0.2..4.0f64,
        0..5u32,
    );
    let supply = (
        0.0..900.0f64,
        any::<bool>(),
        prop::option::of(1.0..60.0f64),
        0..1440u32,
        select(vec![
            BankPlace::Cabin,
            BankPlace::Locker,
            BankPlace::Outside,
        ]),
    );
    (bank, unit, weather, cabin, supply).prop_map(
        |(
            (chemistry, ah, depth, start),
            (watts, is_modulating, cop, floor),
            weather,
            cabin,
            supply,
        )| {
            let mut plan = Plan::of(
                Bank::of(chemistry, 12.0, ah),
                Mode::of_power("Cool", Figure::label(watts)),
            );
            plan.banks[0].series_count = 2;
            plan.banks[0].depth_percent = Some(depth);
            plan.banks[0].start_charge_percent = figure(start);
            let cooling = &mut plan.units[0].cooling;
            cooling.control = is_modulating.then_some(Control::Modulating);
            (cooling.cop, cooling.floor_percent) = (figure(cop), figure(floor));
            let (high, range, dew, cloud, clock, days) = weather;
            plan.day.high_c = figure(high);
            plan.day.low_c = figure(high - range);
            plan.day.dew_point_c = figure(dew.min(high));
            plan.day.cloud_percent = figure(cloud);
            plan.day.days_count = Some(days);
            plan.night.start_clock_min = clock;
            let (kind, insulation, set, band, people) = cabin;
            plan.cabin.kind = Some(kind);
            plan.cabin.insulation = Some(insulation);
            plan.cabin.covers = Some(Covers::Curtains);
            plan.cabin.set_point_c = Some(set);
            plan.cabin.dead_band_k = Some(band);
            plan.cabin.people_count = Some(people);
            let (panels, is_direct, charger, from, place) = supply;
            plan.supply.arrays = vec![Array {
                rated_w: figure(panels),
                panels_series_count: Some(2),
                ..Array::default()
            }];
            plan.supply.controller = is_direct.then_some(ControllerKind::Direct);
            plan.supply.bank_place = Some(place);
            plan.supply.chargers = charger
                .map(|most| Charger {
                    kind: Some(ChargerKind::Generator),
                    most_a: figure(most),
                    from_clock_min: Some(from),
                    until_clock_min: Some((from + 200) % 1440),
                    fuel_l: figure(2.0),
                    ..Charger::default()
                })
                .into_iter()
                .collect();
            plan
        },
    )
}

fn answered(plan: &Plan) -> DayAnswer {
    day(plan).expect("a day that can be run")
}

fn has_odd_number(value: &Value) -> bool {
    match value {
        // A float that is no number is written as null, and no field is null.
        Value::Null => true,
        Value::Array(list) => list.iter().any(has_odd_number),
        Value::Object(map) => map.values().any(has_odd_number),
        _ => false,
    }
}

/// How near two emptyings are told apart. The weather of a step is its mean, so
/// where the sun all but carries the loads, and the charge only just touches its
/// floor, the minute is not known: a third of a step.
const NEAR_H: f64 = 0.06;

/// Energy that the unit took from the bank until the bank was first empty.
fn unit_wh(day: &DayAnswer) -> f64 {
    day.energy.unit_wh
}

proptest! {
    // A quarter of the usual number: a day takes some milliseconds.
    #![proptest_config({
        let usual = ProptestConfig::default();
        ProptestConfig { cases: usual.cases / 4, ..usual }
    })]

    /// What comes in is what goes out and what stays: to 1e-9 of what moved.
    #[test]
    fn books_close(plan in a_day()) {
        let day = answered(&plan);
        let energy = day.energy;
        prop_assert!(
            energy.gap_wh.abs() <= 1e-9 * energy.throughput_wh(),
            "{} of {}", energy.gap_wh, energy.throughput_wh()
        );
        let heat = day.heat;
        let moved = [
            heat.glass_wh, heat.shell_wh, heat.air_change_wh, heat.sun_glass_wh,
            heat.sun_shell_wh, heat.people_wh, heat.gains_wh, heat.unit_wh, heat.stored_wh,
        ];
        let throughput: f64 = moved.iter().map(|wh| wh.abs()).sum();
        prop_assert!(heat.gap_wh.abs() <= 1e-9 * throughput, "{} of {throughput}", heat.gap_wh);
        // Charge: what left the store is the amps of the trace, and what charging lost.
        let first = day.trace.first().unwrap().charge_percent;
        let last = day.trace.last().unwrap().charge_percent;
        let held_ah = till_morning::answer::night(&plan).banks[0].held_ah;
        let gone_ah = (first - last) / 100.0 * held_ah;
        prop_assert!((gone_ah - energy.from_store_ah).abs() <= 1e-9 * held_ah + 1e-9 * gone_ah.abs());
        // Lost is never gained, and days make the whole.
        prop_assert!(energy.lost_wh >= -1e-9 * energy.throughput_wh());
        let by_day: f64 = day.days.iter().map(|sum| sum.solar_wh).sum();
        prop_assert!((by_day - energy.solar_wh).abs() <= 1e-9 * energy.solar_wh.max(1.0));
    }

    #[test]
    fn charge_and_volts_stay_where_they_can_be(plan in a_day()) {
        let day = answered(&plan);
        let kept = 100.0 - plan.banks[0].depth_percent.unwrap();
        let start = plan.banks[0].start_charge_percent.unwrap().value;
        for point in &day.trace {
            prop_assert!(point.charge_percent <= 100.0 + 1e-6);
            prop_assert!(point.charge_percent >= kept.min(start) - 0.5, "{point:?}");
            prop_assert!(point.terminal_v > 0.0 && point.terminal_v < 60.0);
        }
        let in_order = day.trace.windows(2).all(|pair| pair[0].hours_h < pair[1].hours_h);
        prop_assert!(in_order);
        prop_assert_eq!(day.trace.last().unwrap().hours_h, day.span_h);
        let json = serde_json::to_value(&day).unwrap();
        prop_assert!(!has_odd_number(&json));
    }

    /// More bank is never empty sooner. (Of lithium, its current not limited:
    /// one that is stopped by a limit or comes back may run otherwise.)
    #[test]
    fn more_bank_is_never_shorter(plan in a_day(), more in 1.0..3.0f64) {
        let mut larger = plan.clone();
        larger.banks[0].block_rated_ah.value *= more;
        larger.banks[0].block_resistance_mohm = figure(5.0);
        let mut plan = plan;
        plan.banks[0].block_resistance_mohm = figure(5.0);
        let (small, large) = (answered(&plan), answered(&larger));
        let hours = |day: &DayAnswer| day.empty_h.unwrap_or(day.span_h);
        prop_assert!(hours(&large) >= hours(&small) - NEAR_H, "{} {}", hours(&large), hours(&small));
    }

    /// A cooler set point never takes less, while the bank lasts.
    #[test]
    fn a_cooler_set_point_never_takes_less(plan in a_day(), cooler in 0.5..6.0f64) {
        let mut plan = plan;
        // A bank that is never empty, so that both run to the end.
        plan.banks[0].block_rated_ah.value = 9000.0;
        plan.banks[0].start_charge_percent = figure(100.0);
        plan.banks[0].depth_percent = Some(100.0);
        plan.units[0].cooling.control = Some(Control::Modulating);
        plan.units[0].cooling.floor_percent = figure(0.0);
        let mut colder = plan.clone();
        colder.cabin.set_point_c = plan.cabin.set_point_c.map(|set| (set - cooler).max(10.0));
        let (warm, cold) = (answered(&plan), answered(&colder));
        prop_assert!(
            unit_wh(&cold) >= unit_wh(&warm) * (1.0 - 0.005) - 1.0,
            "{} {}", unit_wh(&cold), unit_wh(&warm)
        );
    }

    /// More panels never leave less in the bank.
    #[test]
    fn more_panels_never_give_less(plan in a_day(), more in 0.0..600.0f64) {
        let mut sunnier = plan.clone();
        sunnier.supply.arrays[0].rated_w =
            plan.supply.arrays[0].rated_w.map(|rated| rated.with(rated.value + more));
        let (dim, bright) = (answered(&plan), answered(&sunnier));
        let hours = |day: &DayAnswer| day.empty_h.unwrap_or(day.span_h);
        prop_assert!(hours(&bright) >= hours(&dim) - NEAR_H, "{} {}", hours(&bright), hours(&dim));
    }

    /// Any numbers that their ranges accept: answered or refused, never odd.
    #[test]
    fn any_plan_gives_a_day_or_none(plan in any_plan(false), wild in any_plan(true)) {
        for mut plan in [plan, wild] {
            plan.day.days_count = Some(1);
            if let Some(day) = day(&plan) {
                let json = serde_json::to_value(&day).unwrap();
                prop_assert!(!has_odd_number(&json), "{plan:?}");
                let gap = day.energy.gap_wh.abs();
                prop_assert!(gap <= 1e-6 * day.energy.throughput_wh().max(1.0), "{gap} {plan:?}");
            }
        }
    }
}
