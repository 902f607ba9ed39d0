//! The hot day's walk: what must hold between two days that differ in one thing.
//!
//! Each law has its conditions, and they are said with it. Two are common to most:
//!
//! - The bank's temperature is held. A warm bank holds more and loses less (lead-acid
//!   by the kelvin, LFP's resistance), so that a hotter day may well last longer.
//! - Hours until empty are compared at equal cooling: a unit that stops, or cannot
//!   start, leaves more to the loads. So days are left out in which it stopped.
//!
//! `PROPTEST_CASES=5000 cargo test --test properties walk` for a long run.

use super::{any_plan::any_plan, day::a_day};
use proptest::prelude::*;
use till_morning::{
    answer::{
        DayAnswer,
        day::{DayEvent, Happening, day},
    },
    plan::{
        Cable, Figure, Load, Measured, ModeRow, Plan,
        cabin::CabinField,
        path::{BankField, Path},
        supply::Charger,
    },
};

fn answered(plan: &Plan) -> DayAnswer {
    day(plan).unwrap_or_else(|| panic!("{:?}", plan.errors()))
}

fn figure(value: f64) -> Option<Figure> {
    Some(Figure::label(value))
}

/// More events than this a day are chatter.
const MOST_EVENTS: usize = 300;

/// A step, the last one to be told apart: where in its cycle a thermostat is when
/// the bank is empty makes so much of a difference.
const NEAR_H: f64 = 0.2;

/// A day by day and night: whatever the start, two days, the bank at 25 °C.
fn a_held_day() -> impl Strategy<Value = Plan> {
    (a_day(), prop::collection::vec(0.0..120.0f64, 0..3)).prop_map(|(mut plan, loads)| {
        plan.supply.bank_c = figure(25.0);
        plan.loads = loads
            .into_iter()
            .map(|watts| Load {
                name: "load".into(),
                power_w: Figure::label(watts),
            })
            .collect();
        plan
    })
}

/// The same with nothing that charges.
fn an_unfed_day() -> impl Strategy<Value = Plan> {
    a_held_day().prop_map(|mut plan| {
        plan.supply.arrays.clear();
        plan.supply.chargers.clear();
        plan
    })
}

fn has_stopped(day: &DayAnswer) -> bool {
    day.events
        .iter()
        .any(|event| matches!(event.what, Happening::UnitStopped { .. }))
}

fn empty_h(day: &DayAnswer) -> f64 {
    day.empty_h.unwrap_or(day.span_h)
}

/// How long a cabin may take to be cooled down, and the step that shows it was not; one
/// more where twelve steps of ten minutes add up to a hair less than two hours.
const PULL_DOWN_H: f64 = 2.0 + 2.0 / 6.0;

/// Until the set point is lost, or the bank empty. What ends while the cabin may
/// still be cooled down was not held since its mode began: whether the air touched
/// the band in that time or never came to it says nothing.
fn held_h(day: &DayAnswer) -> f64 {
    let ends_h = day.lost_h.unwrap_or(day.span_h).min(empty_h(day));
    if ends_h >= day.span_h {
        return ends_h;
    }
    let began = |event: &&DayEvent| {
        let is_on = matches!(event.what, Happening::ModeChanged { mode: Some(_) });
        is_on && event.hours_h <= ends_h && ends_h <= event.hours_h + PULL_DOWN_H + 1e-6
    };
    let began = day.events.iter().find(began);
    began.map_or(ends_h, |event| event.hours_h)
}

/// The events of one simulated day at the most.
fn most_events(day: &DayAnswer) -> usize {
    let mut by_day = vec![0; day.days.len() + 1];
    for event in &day.events {
        by_day[(event.hours_h / 24.0) as usize] += 1;
    }
    by_day.into_iter().max().unwrap_or(0)
}

/// EnergyBalance, and what every day keeps to.
fn is_sound(day: &DayAnswer, plan: &Plan) -> Result<(), TestCaseError> {
    let (gap_wh, moved_wh) = (day.energy.gap_wh, day.energy.throughput_wh());
    // A bank measured at a thousandth of its label has the label's micro-ohms: there
    // a step's amps follow from volts that no float tells apart.
    let is_measured = plan.banks[0].measured != Measured::default();
    let within = if is_measured { 1e-6 } else { 1e-9 };
    prop_assert!(
        gap_wh.abs() <= within * moved_wh.max(1.0),
        "{gap_wh} of {moved_wh} {plan:?}"
    );
    let most = most_events(day);
    prop_assert!(most <= MOST_EVENTS, "{most} events {plan:?}");
    comes_back_by_charge(day)
}

/// What is back on has been charged since it was off, and was off for a while; with
/// nothing that charges nothing comes back.
fn comes_back_by_charge(day: &DayAnswer) -> Result<(), TestCaseError> {
    let mut off: Option<&DayEvent> = None;
    for event in &day.events {
        match event.what {
            Happening::Empty { .. } => {
                prop_assert!(off.is_none(), "off twice: {:?}", day.events);
                off = Some(event);
            }
            Happening::BackOn => {
                let since = off.take();
                prop_assert!(since.is_some(), "back on and was not off: {:?}", day.events);
                let since_h = since.map_or(0.0, |event| event.hours_h);
                prop_assert!(event.hours_h - since_h >= 0.5 - 1e-6);
                let charge_at = |at_h: f64| {
                    let after = day.trace.iter().find(|point| point.hours_h >= at_h - 1e-9);
                    after.map_or(100.0, |point| point.charge_percent)
                };
                let (from, to) = (charge_at(since_h), charge_at(event.hours_h));
                prop_assert!(to > from, "{from} {to} {event:?}");
                prop_assert!(day.energy.solar_wh + day.energy.charger_wh > 0.0);
            }
            _ => {}
        }
    }
    Ok(())
}

proptest! {
    // A quarter of the usual number: each case is two days or more.
    #![proptest_config({
        let usual = ProptestConfig::default();
        ProptestConfig { cases: usual.cases / 4, ..usual }
    })]

    /// EnergyBalance close to 1e-9 and events are few: on days that could be somewhere.
    #[test]
    fn sound_on_any_day(plan in a_day()) {
        is_sound(&answered(&plan), &plan)?;
    }

    /// The same at the ends of every range, shallow banks and changing modes among
    /// them.
    #[test]
    fn sound_on_any_plan(plan in any_plan(false), rows in prop::collection::vec((0..1440u32, any::<bool>()), 0..12), depth in prop::option::of(1.0..5.0f64)) {
        let mut plan = plan;
        plan.day.days_count = Some(1);
        plan.night.wanted_h = plan.night.wanted_h.min(24.0);
        if let (Some(depth), Some(bank)) = (depth, plan.banks.first_mut()) {
            bank.depth_percent = Some(depth);
        }
        plan.mode_plan = rows
            .into_iter()
            .map(|(clock_min, is_on)| ModeRow {
                from_clock_min: Some(clock_min),
                mode: is_on.then_some(0),
                ..ModeRow::default()
            })
            .collect();
        if let Some(day) = day(&plan) {
            is_sound(&day, &plan)?;
        }
    }

    /// A unit that never starts is no load. (No charger that is warm with the cabin,
    /// which is shut up with a mode planned and aired with none.)
    #[test]
    fn loads_only_is_a_unit_that_never_starts(plan in a_held_day()) {
        let mut plan = plan;
        plan.supply.chargers.clear();
        plan.units[0].cutoff_v = figure(400.0);
        let mut alone = plan.clone();
        alone.mode_plan = vec![ModeRow::default()];
        let (never, alone) = (answered(&plan), answered(&alone));
        prop_assert_eq!(never.energy.unit_wh, 0.0);
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-6 * b.abs().max(1.0);
        prop_assert!(near(empty_h(&never), empty_h(&alone)), "{:?} {:?}", never.empty_h, alone.empty_h);
        prop_assert!(near(never.energy.loads_wh, alone.energy.loads_wh));
        prop_assert!(near(never.energy.solar_wh, alone.energy.solar_wh));
        prop_assert!(near(never.least_charge_percent, alone.least_charge_percent));
    }

    /// Hotter never holds the set point longer, nor lasts longer while both hold it.
    /// (No supply: where the sun all but carries the loads, a charge that touches its
    /// floor does so at any minute. A narrow band: at the foot of a wide one a unit
    /// rests on the milder day and is behind when the heat comes.)
    #[test]
    fn hotter_never_lasts_longer(plan in an_unfed_day(), hotter_k in 0.5..8.0f64) {
        let mut plan = plan;
        plan.cabin.dead_band_k = Some(0.3);
        let mut hotter = plan.clone();
        for figure in [&mut hotter.day.high_c, &mut hotter.day.low_c] {
            *figure = figure.map(|figure| figure.with(figure.value + hotter_k));
        }
        let (mild, hot) = (answered(&plan), answered(&hotter));
        prop_assert!(held_h(&hot) <= held_h(&mild) + NEAR_H, "{} {}", held_h(&hot), held_h(&mild));
        let is_equal = mild.lost_h.is_none() && hot.lost_h.is_none();
        if is_equal && !has_stopped(&mild) && !has_stopped(&hot) {
            let (hot_h, mild_h) = (empty_h(&hot), empty_h(&mild));
            prop_assert!(hot_h <= mild_h * 1.01 + NEAR_H, "{hot_h} {mild_h}");
        }
    }

    /// More bank never holds it shorter. (Resistance held, no supply.)
    #[test]
    fn more_bank_never_holds_shorter(plan in an_unfed_day(), more in 1.0..4.0f64) {
        let mut plan = plan;
        plan.banks[0].battery_resistance_mohm = figure(5.0);
        let mut larger = plan.clone();
        larger.banks[0].battery_rated_ah.value *= more;
        let (small, large) = (answered(&plan), answered(&larger));
        prop_assert!(held_h(&large) >= held_h(&small) - NEAR_H, "{} {}", held_h(&large), held_h(&small));
        if !has_stopped(&small) && !has_stopped(&large) {
            prop_assert!(empty_h(&large) >= empty_h(&small) - NEAR_H);
        }
    }

    /// More panels, with no limit of amps at the controller, leave no less in the
    /// bank at its lowest, nor empty it sooner.
    #[test]
    fn more_panels_are_never_worse(plan in a_held_day(), more_w in 0.0..600.0f64) {
        let mut sunnier = plan.clone();
        sunnier.supply.arrays[0].rated_w =
            plan.supply.arrays[0].rated_w.map(|rated| rated.with(rated.value + more_w));
        let (dim, bright) = (answered(&plan), answered(&sunnier));
        if has_stopped(&dim) || has_stopped(&bright) {
            return Ok(());
        }
        prop_assert!(empty_h(&bright) >= empty_h(&dim) - NEAR_H, "{} {}", empty_h(&bright), empty_h(&dim));
        if dim.empty_h.is_none() && bright.empty_h.is_none() {
            let (least, was) = (bright.least_charge_percent, dim.least_charge_percent);
            prop_assert!(least >= was - 1.0, "{least} {was}");
        }
    }

    /// A thinner cable never holds it longer, nor lasts longer with the unit running.
    #[test]
    fn a_thinner_cable_is_never_better(plan in an_unfed_day(), length_m in 0.5..12.0f64, thinner in 1.0..8.0f64) {
        let mut plan = plan;
        plan.units[0].cable = Cable { length_m: Some(length_m), area_mm2: Some(16.0), ..plan.units[0].cable };
        let mut thin = plan.clone();
        thin.units[0].cable.area_mm2 = Some(16.0 / thinner);
        let (thick, thin) = (answered(&plan), answered(&thin));
        prop_assert!(held_h(&thin) <= held_h(&thick) + NEAR_H, "{} {}", held_h(&thin), held_h(&thick));
        if !has_stopped(&thick) && !has_stopped(&thin) {
            prop_assert!(empty_h(&thin) <= empty_h(&thick) + NEAR_H);
        }
    }

    /// Twice the bank under twice of all that is electric, cable and panels and fuel
    /// too, for the same cooling: every hour, volt and degree stays.
    #[test]
    fn twice_of_everything_keeps_the_hours(plan in a_held_day(), standby_w in 0.0..20.0f64, parasitic_w in 0.0..5.0f64) {
        let mut plan = plan;
        let mode = &mut plan.units[0].modes[0];
        mode.standby_w = figure(standby_w);
        mode.cooling_w = figure(2.5 * mode.draw.nominal_w());
        plan.units[0].cooling.cooling_w = plan.units[0].modes[0].cooling_w;
        plan.banks[0].parasitic_w = figure(parasitic_w);
        // By default a share of the loads warms the cabin.
        plan.cabin.gains_w = figure(40.0);
        plan.units[0].cable = Cable { length_m: Some(3.0), area_mm2: Some(16.0), temperature_c: 40.0, connections_mohm: 1.0 };
        let twice = twice(&plan);
        let (one, two) = (answered(&plan), answered(&twice));
        prop_assert!((empty_h(&two) - empty_h(&one)).abs() <= 1e-3, "{} {}", empty_h(&two), empty_h(&one));
        prop_assert!((held_h(&two) - held_h(&one)).abs() <= 1e-3);
        let near = |a: f64, b: f64| (a - 2.0 * b).abs() <= 1e-5 * a.abs().max(1.0);
        prop_assert!(near(two.energy.unit_wh, one.energy.unit_wh), "{:?} {:?}", two.energy, one.energy);
        prop_assert!(near(two.energy.loads_wh, one.energy.loads_wh));
        prop_assert!(near(two.energy.lost_wh, one.energy.lost_wh));
        // Rounding may call a bank full, or a tank empty, a step sooner: not counted.
        let stops = |day: &DayAnswer| {
            let is = |event: &&DayEvent| {
                matches!(
                    event.what,
                    Happening::Empty { .. } | Happening::BackOn | Happening::UnitStopped { .. }
                )
            };
            day.events.iter().filter(is).count()
        };
        prop_assert_eq!(stops(&one), stops(&two));
    }

    /// The warmest cabin while held stays within its band, however it got there.
    /// (Half a kelvin beyond the band still counts as held.)
    #[test]
    fn the_warmest_held_cabin_is_in_its_band(plan in a_held_day()) {
        let day = answered(&plan);
        let once_held = day.trace.iter().any(|point| point.mode.is_some() && point.cabin_c <= day.set_point_c);
        if once_held && held_h(&day) >= day.wanted_h && !has_stopped(&day) {
            let band_k = plan.number(Path::Cabin(CabinField::DeadBandK)).unwrap();
            let most_c = day.set_point_c + 0.5 * band_k + 0.5;
            prop_assert!(day.warmest_c <= most_c + 1e-6, "{} {most_c}", day.warmest_c);
        }
    }
}

/// All that is electric doubled; the cabin and what cools it as it was.
fn twice(plan: &Plan) -> Plan {
    let mut twice = plan.clone();
    let double = |figure: Option<Figure>| figure.map(|figure| figure.with(2.0 * figure.value));
    twice.banks[0].parallel_count *= 2;
    twice.banks[0].parasitic_w = double(plan.banks[0].parasitic_w);
    for load in &mut twice.loads {
        load.power_w.value *= 2.0;
    }
    let path = plan.draw_path(0, 0).unwrap();
    twice.set_number(path, 2.0 * plan.number(path).unwrap());
    twice.units[0].modes[0].standby_w = double(plan.units[0].modes[0].standby_w);
    let cable = &mut twice.units[0].cable;
    cable.area_mm2 = cable.area_mm2.map(|mm2| 2.0 * mm2);
    cable.connections_mohm *= 0.5;
    for array in &mut twice.supply.arrays {
        array.rated_w = double(array.rated_w);
    }
    for charger in &mut twice.supply.chargers {
        *charger = Charger {
            most_a: double(charger.most_a),
            source_w: double(charger.source_w),
            fuel_l: double(charger.fuel_l),
            ..*charger
        };
    }
    // What is by the bank's size without being stated: its resistance and limit.
    assert_eq!(
        twice.number(Path::Bank(0, BankField::BatteryRatedAh)),
        plan.number(Path::Bank(0, BankField::BatteryRatedAh))
    );
    twice
}
