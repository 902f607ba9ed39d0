//! Bands of runs at constant draw, and what is in them.

use super::{
    counted::Cover,
    truth::{Dice, truth},
};
use till_morning::{
    answer::night,
    physics::battery::Chemistry,
    plan::{
        Bank, Cable, Feed, Figure, Load, Mode, Path, Plan, Provenance, Unknown,
        path::BankField as B,
    },
    simulate::{assemble, run_down},
    study::spread::half_width,
};

/// Plans of each family, and truths of each plan.
const PLANS: u32 = 150;
const TRUTHS: u32 = 16;

fn figure(dice: &mut Dice, from: f64, to: f64) -> Figure {
    Figure {
        from: dice.one_of(&[Provenance::Label, Provenance::Measured, Provenance::Guess]),
        ..Figure::guess(dice.between(from, to))
    }
}

fn any_feed(dice: &mut Dice) -> Feed {
    match dice.one_of(&[0, 0, 1, 2]) {
        0 => Feed::Direct,
        1 => Feed::DcDc {
            output_v: 24.0,
            efficiency_percent: figure(dice, 85.0, 96.0),
            idle_w: figure(dice, 1.0, 6.0),
            limit_a: None,
        },
        _ => Feed::Inverter {
            no_load_w: figure(dice, 5.0, 20.0),
            proportional_loss_percent: figure(dice, 3.0, 9.0),
            square_loss_percent_per_kw: figure(dice, 1.0, 4.0),
            limit_w: None,
            cutoff_v: None,
        },
    }
}

/// A bank, a unit and a load, three to thirty hours of it; half of the plans say what
/// the other half leaves to be assumed.
fn any_plan(dice: &mut Dice, chemistry: Chemistry) -> Plan {
    let mut bank = Bank::of(chemistry, dice.one_of(&[12.0, 24.0]), 100.0);
    bank.series_count = dice.one_of(&[1, 2]);
    bank.parallel_count = dice.one_of(&[1, 2, 3]);
    bank.battery_rated_ah = figure(dice, 60.0, 300.0);
    if dice.uniform() < 0.5 {
        bank.health_percent = Some(figure(dice, 70.0, 100.0));
        bank.start_charge_percent = Some(figure(dice, 60.0, 100.0));
    }
    if dice.uniform() < 0.5 {
        bank.depth_percent = Some(dice.between(50.0, 100.0));
    }
    if dice.uniform() < 0.25 {
        // High enough to end it before the depth does.
        let share = if chemistry.is_lead_acid() { 0.97 } else { 0.96 };
        bank.cutoff_v = Some(Figure::measured(share * bank.reading().volts));
    }
    let wh = bank.nominal_v() * bank.battery_rated_ah.value * f64::from(bank.parallel_count);
    let watts = wh / dice.between(3.0, 30.0);
    let mut mode = Mode::of_power("On", figure(dice, watts, watts));
    if dice.uniform() < 0.5 {
        mode.duty_percent = Some(figure(dice, 30.0, 80.0));
        mode.standby_w = Some(figure(dice, 2.0, 10.0));
    }
    let mut plan = Plan::of(bank, mode);
    plan.units[0].feed = any_feed(dice);
    plan.units[0].cable = Cable {
        length_m: Some(dice.between(0.0, 3.0)),
        area_mm2: Some(25.0),
        ..Cable::default()
    };
    plan.loads = vec![Load {
        name: "Lamps".into(),
        power_w: figure(dice, 10.0, 60.0),
    }];
    if dice.uniform() < 0.5 {
        plan.supply.bank_c = Some(Figure::guess(dice.between(0.0, 35.0)));
    }
    plan.night.unknown = Unknown::Hours;
    plan
}

/// The likely hours of a plan's only run, without all that an answer gives beside.
fn hours(plan: &Plan) -> f64 {
    let pack = assemble::warm_pack(plan, 0).unwrap().pack;
    let job = assemble::job(plan, 0, 0, 0, &pack).unwrap().job;
    let share = |field| 0.01 * plan.number(Path::Bank(0, field)).unwrap();
    let start = share(B::StartChargePercent);
    let floor = (1.0 - share(B::DepthPercent)).min(start);
    run_down(&pack, &job, start, floor).hours
}

/// A run's band at its k of 2, and the same half-widths at the k of 80 %.
#[track_caller]
fn bands_hold(name: &str, chemistries: &[Chemistry], seed: u64) {
    let mut dice = Dice::of(seed);
    let (mut eighty, mut ninety_five) = (Cover::default(), Cover::default());
    for _ in 0..PLANS {
        let chemistry = dice.one_of(chemistries);
        let plan = any_plan(&mut dice, chemistry);
        assert_eq!(plan.errors(), []);
        let band = night(&plan).runs[0].hours_h;
        let narrower = 1.281_552 / 2.0;
        let narrow = (
            band.likely - narrower * (band.likely - band.low),
            band.likely + narrower * (band.high - band.likely),
        );
        for _ in 0..TRUTHS {
            let truth_h = hours(&truth(&plan, &mut dice));
            eighty.count(narrow, truth_h);
            ninety_five.count((band.low, band.high), truth_h);
        }
    }
    eighty.holds_eighty(name);
    ninety_five.holds_ninety_five(name);
}

#[test]
fn runs_on_lithium() {
    bands_hold("lithium run", &[Chemistry::Lfp, Chemistry::Nmc], 21);
}

#[test]
fn runs_on_lead_acid() {
    let kinds = [Chemistry::Agm, Chemistry::Flooded, Chemistry::Gel];
    bands_hold("lead-acid run", &kinds, 22);
}

/// Every number that has a spread and moves the hours has its part in the band: with
/// one left out, the band is narrower than it says.
#[test]
fn nothing_that_moves_the_hours_is_left_out() {
    let mut dice = Dice::of(23);
    for chemistry in Chemistry::ALL {
        for _ in 0..4 {
            let plan = any_plan(&mut dice, chemistry);
            let run = night(&plan).runs.remove(0);
            for path in plan.paths() {
                let Some(figure) = plan.figure(path) else {
                    continue;
                };
                let half = half_width(path, figure);
                let moved = |by: f64| {
                    let mut moved = plan.clone();
                    let range = path.range().unwrap();
                    let value = (figure.value + by * half).clamp(range.min, range.max);
                    moved.set_figure(path, figure.with(value));
                    (hours(&moved) - run.hours_h.likely).abs()
                };
                if half > 0.0 && moved(-1.0).max(moved(1.0)) > 1e-6 * run.hours_h.likely {
                    let has_part = run.spread_from.iter().any(|part| part.field == path);
                    assert!(has_part, "{path} of {chemistry:?}");
                }
            }
        }
    }
}
