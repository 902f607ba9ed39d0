//! Odds and bands of hot days: the bank sized so that it just lasts or just does not.

use super::{
    counted::{Cover, Reliability},
    truth::{Dice, truth},
};
use till_morning::{
    answer::day::{DayAnswer, DayPoint, day},
    physics::battery::Chemistry,
    plan::{Figure, ModeRow, Path, Plan, day::DayField, supply::Array},
    study::spread::{Band, BandPoint, Sampler},
};

#[derive(Clone, Copy, PartialEq)]
enum Family {
    Thermostat,
    Panels,
    LeadAcid,
}

/// Plans of each family, and truths of each plan.
const PLANS: u32 = 41;
const TRUTHS: usize = 50;
/// Where the curves of charge and cabin are looked at, hours from the start.
const CHARGE_H: f64 = 2.0;
const CABIN_H: f64 = 4.0;

/// The demonstration on other days and banks, its unit on from the start.
fn any_plan(dice: &mut Dice, family: Family) -> Plan {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    // Each plan draws its own days, as if by chance.
    plan.day.seed_number = Some(dice.between(1.0, 1e6) as u32);
    plan.day.high_c = Some(Figure::label(dice.between(31.0, 38.0)));
    plan.day.low_c = Some(Figure::label(dice.between(19.0, 25.0)));
    plan.cabin.set_point_c = Some(dice.between(20.0, 24.0));
    plan.supply.arrays.clear();
    let mode = dice.one_of(&[0, 1]);
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        unit: 0,
        mode: Some(mode),
    }];
    plan.night.wanted_h = dice.between(8.0, 11.0);
    let bank = &mut plan.banks[0];
    bank.parallel_count = 1;
    bank.battery_current_limit_a = None;
    match family {
        Family::Thermostat => {}
        Family::Panels => {
            plan.night.start_clock_min = 14 * 60;
            plan.night.wanted_h = dice.between(12.0, 15.0);
            plan.supply.arrays = vec![Array {
                rated_w: Some(Figure::label(dice.between(100.0, 300.0))),
                panels_series_count: Some(2),
                ..Array::default()
            }];
        }
        Family::LeadAcid => {
            bank.chemistry = dice.one_of(&[Chemistry::Agm, Chemistry::Flooded, Chemistry::Gel]);
            bank.battery_nominal_v = Some(24.0);
            bank.depth_percent = Some(dice.between(50.0, 80.0));
        }
    }
    let just_enough_ah = just_enough_ah(&plan);
    let share = match family {
        // Peukert's law asks for more than the Ah drawn.
        Family::LeadAcid => dice.between(1.0, 1.4),
        Family::Panels => dice.between(0.9, 1.2),
        Family::Thermostat => dice.between(0.8, 1.5),
    };
    plan.banks[0].battery_rated_ah = Figure::label(just_enough_ah * share);
    plan
}

/// Ah that a bank without an end gives until the wanted hour, over the depth.
fn just_enough_ah(plan: &Plan) -> f64 {
    const LARGE_AH: f64 = 3000.0;
    let depth = 0.01 * plan.banks[0].depth_percent.unwrap();
    let mut large = plan.clone();
    large.banks[0].battery_rated_ah = Figure::label(LARGE_AH);
    large.banks[0].depth_percent = Some(100.0);
    let trace = day(&large).unwrap().trace;
    let until = |point: &&DayPoint| point.hours_h <= plan.night.wanted_h;
    let least = trace.iter().filter(until).map(|point| point.charge_percent);
    0.01 * LARGE_AH * (trace[0].charge_percent - least.fold(100.0, f64::min)) / depth
}

/// 10 and 90 % of drawn days: one more day is below each with that chance (Hyndman &
/// Fan, *The American Statistician* 50(4), 1996, definition 6).
fn tenths(mut values: Vec<f64>) -> (f64, f64) {
    values.sort_by(f64::total_cmp);
    let at = |share: f64| {
        let rank = share * (values.len() + 1) as f64 - 1.0;
        let (lower, part) = (rank as usize, rank.fract());
        values[lower] + part * (values[lower + 1] - values[lower])
    };
    (at(0.1), at(0.9))
}

/// What is counted of a family.
#[derive(Default)]
struct Counted {
    hours: [Cover; 2],
    warmest: [Cover; 2],
    charge: Cover,
    cabin: Cover,
    lasting: Reliability,
    holding: Reliability,
}

impl Counted {
    fn plan(&mut self, plan: &Plan, dice: &mut Dice) {
        let mut sampler = Sampler::new(plan).unwrap();
        sampler.step(plan.number(Path::Day(DayField::SamplesCount)).unwrap() as u32);
        let told = sampler.finish().unwrap();
        let odds = told.odds;
        let drawn = sampler.days();
        let hours = tenths(drawn.iter().map(|day| day.hours_h).collect());
        let warmest = tenths(drawn.iter().map(|day| day.warmest_c).collect());
        let truths: Vec<DayAnswer> = (0..TRUTHS)
            .map(|_| day(&truth(plan, dice)).unwrap())
            .collect();
        for truth in &truths {
            // One that outlasts the day's span is told as that, and no hour.
            if odds.hours_h.high < sampler.span_h() {
                let truth_h = truth.empty_h.unwrap_or(truth.span_h);
                self.hours[0].count(hours, truth_h);
                self.hours[1].count((odds.hours_h.low, odds.hours_h.high), truth_h);
            }
            let band = odds.warmest_c;
            self.warmest[0].count(warmest, truth.warmest_c);
            self.warmest[1].count((band.low, band.high), truth.warmest_c);
            self.curves(plan, &told.bands, truth);
        }
        let reached = |at_h: Option<f64>| at_h.is_none_or(|at_h| at_h >= sampler.wanted_h());
        let lasting: Vec<bool> = truths.iter().map(|it| reached(it.empty_h)).collect();
        let holding: Vec<bool> = truths
            .iter()
            .map(|it| reached(it.empty_h) && reached(it.lost_h))
            .collect();
        self.lasting
            .count(odds.lasting_percent, odds.samples_count, &lasting);
        self.holding
            .count(odds.holding_percent, odds.samples_count, &holding);
    }

    /// The bands' points of the cabin are means of twenty minutes.
    fn curves(&mut self, plan: &Plan, bands: &[BandPoint], truth: &DayAnswer) {
        let band_at = |at_h: f64| {
            let is_there = |band: &&BandPoint| (band.hours_h - at_h).abs() < 1e-6;
            bands.iter().find(is_there).unwrap()
        };
        let of = |band: Band| (band.low, band.high);
        let band = band_at(CHARGE_H).charge_percent;
        // A bank that stopped stays at its floor: no more than one value to be in.
        let floor_percent = 100.0 - plan.banks[0].depth_percent.unwrap();
        if band.low > floor_percent + 0.5 {
            let is_there = |point: &&DayPoint| (point.hours_h - CHARGE_H).abs() < 1e-3;
            let point = truth.trace.iter().find(is_there).unwrap();
            self.charge.count(of(band), point.charge_percent);
        }
        let mean_c = cabin_c(&truth.trace, CABIN_H - 1.0 / 3.0, CABIN_H);
        self.cabin.count(of(band_at(CABIN_H).cabin_c), mean_c);
    }
}

/// The cabin's mean over a time; each point has the mean since the one before.
fn cabin_c(trace: &[DayPoint], from_h: f64, to_h: f64) -> f64 {
    let (mut hours, mut kelvin_h) = (0.0, 0.0);
    for two in trace.windows(2) {
        let within_h = two[1].hours_h.min(to_h) - two[0].hours_h.max(from_h);
        hours += within_h.max(0.0);
        kelvin_h += within_h.max(0.0) * two[1].cabin_c;
    }
    kelvin_h / hours
}

fn counted(family: Family, seed: u64) -> Counted {
    let mut dice = Dice::of(seed);
    let mut counted = Counted::default();
    for _ in 0..PLANS {
        let plan = any_plan(&mut dice, family);
        assert_eq!(plan.errors(), []);
        counted.plan(&plan, &mut dice);
    }
    counted
}

#[track_caller]
fn holds(name: &str, counted: &Counted) {
    for (of, [eighty, ninety_five]) in [("hours", counted.hours), ("warmest", counted.warmest)] {
        eighty.holds_eighty(&format!("{name}, {of}"));
        ninety_five.holds_ninety_five(&format!("{name}, {of}"));
    }
    let (charge, cabin) = (counted.charge, counted.cabin);
    charge.holds_ninety_five(&format!("{name}, charge after {CHARGE_H} h"));
    cabin.holds_ninety_five(&format!("{name}, cabin after {CABIN_H} h"));
    counted.lasting.holds(&format!("{name}, lasting"));
    counted.holding.holds(&format!("{name}, holding"));
    assert!(counted.lasting.tenths() >= 7, "{name}");
}

#[test]
fn a_night_with_a_thermostat() {
    holds("thermostat", &counted(Family::Thermostat, 11));
}

#[test]
fn a_day_with_panels() {
    holds("panels", &counted(Family::Panels, 12));
}

#[test]
fn a_night_on_lead_acid() {
    holds("lead-acid night", &counted(Family::LeadAcid, 13));
}
