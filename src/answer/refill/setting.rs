//! What all fillings of a plan share: bank, loads, the charge they start from.

use super::{FilledFrom, watch::DAY_H};
use crate::{
    physics::battery::{Pack, Store},
    physics::circuit::Branch,
    plan::{
        ModeRow, Plan,
        path::{BankField as B, Path},
        supply::SupplyField as S,
    },
    simulate::{
        assemble,
        day::{Charging, DayPoint, How, Inputs, Outcome, Record, Scene, run},
        run_down,
    },
    simulate::{day::can_be_run, held_span},
};

/// The bank, and what hangs on it while it is filled.
pub struct Setting {
    /// The first bank, at 25 °C.
    pub pack: Pack,
    /// Its charge in time.
    pub store: Store,
    /// What its chemistry is charged with.
    pub charging: Charging,
    /// Its own current at which chargers call it full, A.
    pub end_a: f64,
    /// Loads and the bank's own electronics, W.
    pub beside_w: f64,
    /// Everything but the unit, each with its share of the time.
    pub idle: Vec<(f64, Branch)>,
    /// The same with the asked mode running; absent where the plan has no such mode.
    pub cooling: Option<Vec<(f64, Branch)>>,
    /// Share of what the bank holds that is asked for, 0 to 1.
    pub to: f64,
    /// Whether the bank is ever warm enough to be charged.
    pub may_charge: bool,
}

impl Setting {
    /// Of the first bank, as warm as it gets in the day; nothing where it has errors.
    pub fn new(plan: &Plan, warmest_c: f64) -> Option<Self> {
        let bank = plan.banks.first()?;
        let pack = assemble::pack(plan, 0)?.pack;
        let cells = f64::from(bank.reading().cells) * f64::from(bank.series_count);
        let charging = Charging::usual(bank.chemistry, cells);
        let rated_h = plan.number(Path::Bank(0, B::RatedHoursH))?;
        let loads_w: f64 = plan.loads.iter().map(|load| load.power_w.value).sum();
        let beside_w = loads_w + pack.parasitic_w;
        let (unit, mode) = (plan.night.asked_unit, plan.night.asked_mode);
        let cooling = assemble::job(plan, 0, unit, mode, &pack).map(|assembled| {
            let job = assembled.job;
            let on = job.on.iter().map(|&branch| (job.duty, branch));
            let off = job.off.iter().map(|&branch| (1.0 - job.duty, branch));
            on.chain(off).filter(|(share, _)| *share > 0.0).collect()
        });
        Some(Self {
            store: Store::new(&pack, rated_h, charging.kept),
            beside_w,
            idle: vec![(1.0, Branch::power(beside_w, 0.0))],
            cooling,
            end_a: pack.capacity.ah * charging.end_share,
            may_charge: warmest_c >= charging.between_c.0,
            to: plan.number(Path::Supply(S::RefillToPercent))? / 100.0,
            charging,
            pack,
        })
    }
}

/// The charge that the bank is filled from, as a share (0 to 1), and where it comes from.
pub fn from_share(plan: &Plan, night: Option<&Night>) -> Option<(f64, FilledFrom)> {
    if let Some(percent) = plan.number(Path::Supply(S::RefillFromPercent)) {
        return Some((percent / 100.0, FilledFrom::Stated));
    }
    if let Some(night) = night {
        return Some((night.morning.end_share.clamp(0.0, 1.0), FilledFrom::Night));
    }
    let (unit, mode) = (plan.night.asked_unit, plan.night.asked_mode);
    let pack = assemble::pack(plan, 0)?.pack;
    let job = assemble::job(plan, 0, unit, mode, &pack)?.job;
    let (from, to) = held_span(plan, 0)?;
    let run = run_down(&pack, &job, from, to);
    let left = run.held_after(plan.night.wanted_h).unwrap_or(from);
    Some((left, FilledFrom::ConstantDraw))
}

/// The plan without its chargers, for one day.
pub fn sun_alone(plan: &Plan) -> Plan {
    let mut plan = plan.clone();
    plan.supply.chargers.clear();
    plan.day.days_count = Some(1);
    plan
}

/// The same with the unit off at all hours.
/// The first unit stands in its one row, off from midnight on.
pub fn unit_off(plan: &Plan) -> Plan {
    let mut plan = plan.clone();
    plan.mode_plan = vec![ModeRow {
        from_clock_min: Some(0),
        ..ModeRow::default()
    }];
    plan
}

/// The first night, fed by nothing but panels, and the day after it.
pub struct Night {
    /// Up to the wanted hour, a day at the most.
    pub morning: Outcome,
    /// Hours from the start to there.
    pub wanted_h: f64,
    /// Warmest and coldest bank in the day that follows the start.
    pub bank_c: (f64, f64),
}

/// How the first night ends; nothing where the day cannot be run.
pub fn night(plan: &Plan) -> Option<Night> {
    if !can_be_run(plan) {
        return None;
    }
    let plan = sun_alone(plan);
    let scene = Scene::new(&plan)?;
    let inputs = Inputs::new(&scene, &plan)?;
    let until = |hours: f64| How {
        until_h: Some(hours),
        ..How::default()
    };
    let wanted_h = scene.wanted_h.min(DAY_H);
    let mut record = Record::default();
    let morning = run(&scene, &inputs, &until(wanted_h), &mut ())?;
    run(&scene, &inputs, &How::default(), &mut record)?;
    let bank_c = |point: &DayPoint| inputs.bank_temperature_c(point.cabin_c, point.outdoor_c);
    // The first point is the start, before any day.
    let days = record.points.iter().skip(1).map(bank_c);
    let bank_c = days.fold((f64::NEG_INFINITY, f64::INFINITY), |(most, least), at| {
        (most.max(at), least.min(at))
    });
    Some(Night {
        morning,
        wanted_h,
        bank_c,
    })
}
