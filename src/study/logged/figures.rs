//! Each figure before and after, with its spread, and why it was not told.

use super::{
    draw::{SLOPE_SD, draw_sd},
    factors::{capacity_sd, cooling_sd},
    ground::Ground,
    part::PartFit,
    unit::FINE_S,
};
use crate::{
    plan::{Plan, Unit, cooling::Control},
    quantity::{in_joules_per_kelvin, in_watts_per_kelvin},
    study::{
        night::fit::{LEAST_SD, TOLD, loss_sd, usable_sd},
        spread::least::Known,
    },
};

/// What a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fitted {
    /// Heat that comes in for each kelvin, W/K.
    CabinLoss,
    /// Heat that air, contents and shell take up, kJ/K.
    CabinCapacity,
    /// Cooling for each watt drawn, in the weather that was met.
    CoolingPerWatt,
    /// Draw of the unit while on, in the weather that was met, W at the bank.
    Draw,
    /// How the draw changes with the weather, per cent by the kelvin.
    DrawSlope,
    /// What the bank gives from full to empty, Wh.
    Usable,
}

/// Why a log does not tell a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Untold {
    /// Its spread is nearly as wide as before.
    TooLittle,
    /// No temperature of the cabin was logged.
    NoThermometer,
    /// No temperature outdoors was logged.
    NoOutdoors,
    /// The weather hardly changed while the unit ran.
    SteadyWeather,
    /// The unit was never on.
    UnitOff,
    /// Rows are too far apart to see the unit switch.
    RowsTooFarApart,
    /// The unit follows the load: it has no one draw.
    FollowsLoad,
    /// The plan has settled runs of the unit, which say it.
    OwnRuns,
    /// No volts were logged.
    NoVolts,
}

/// A figure before and after, in the unit that [`Fitted`] names, with half-widths at two
/// standard deviations in the same.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FittedFigure {
    /// Which.
    pub what: Fitted,
    /// By the plan as it is.
    pub before: f64,
    /// By the plan's spread.
    pub before_half: f64,
    /// By the fit, told or not; as before where there was none.
    pub after: f64,
    /// Standard error of the fit, twice.
    pub after_half: f64,
    /// Absent: the log tells it.
    pub untold: Option<Untold>,
}

/// All of them, in the order of [`Fitted`]; one that cannot be had of this plan is left out.
pub(super) fn figures(ground: &Ground, fit: &PartFit) -> Vec<FittedFigure> {
    let plan = &ground.plan;
    let found = fit.found();
    let middle_c = fit.draw.as_ref().map(|draw| draw.middle_c);
    let of = |plan: &Plan| Numbers::of(ground, plan, middle_c);
    let Some((before, after)) = of(plan).zip(of(&found.on(plan))) else {
        return Vec::new();
    };
    let thermometer = ground.cabin_c.is_none().then_some(Untold::NoThermometer);
    let unit = (!ground.unit.was_on).then_some(Untold::UnitOff);
    let volts = (!ground.bins.has(|bin| bin.volts)).then_some(Untold::NoVolts);
    let rows = [
        (Fitted::CabinLoss, loss_sd(plan), found.loss, thermometer),
        (
            Fitted::CabinCapacity,
            capacity_sd(plan),
            found.capacity,
            thermometer,
        ),
        (
            Fitted::CoolingPerWatt,
            cooling_sd(plan),
            found.per_watt,
            thermometer.or(unit),
        ),
        (Fitted::Draw, draw_sd(ground), found.draw, no_draw(ground)),
        (Fitted::Usable, usable_sd(plan), found.usable, volts),
    ];
    let mut all: Vec<FittedFigure> = rows
        .into_iter()
        .map(|(what, sd, known, why)| {
            let numbers = (before.get(what), after.get(what));
            figure(what, numbers, sd, known, why)
        })
        .collect();
    all.insert(4, slope(ground, fit, before.slope_percent_k));
    all.retain(|one| {
        [one.before, one.before_half, one.after, one.after_half]
            .iter()
            .all(|n| n.is_finite())
    });
    all
}

/// `sd` is the plan's own as a share, `why` what keeps the log from telling it at all.
fn figure(
    what: Fitted,
    (before, after): (f64, f64),
    sd: f64,
    known: Option<Known>,
    why: Option<Untold>,
) -> FittedFigure {
    let sd = sd.max(LEAST_SD);
    let before_half = 2.0 * sd * before;
    // What hardly moved is shown as it came out, and said to be untold.
    let known = known.filter(|_| why.is_none());
    let share = |known: Known| known.sd / known.value.max(0.2);
    let is_told = known.is_some_and(|known| share(known) < TOLD * sd && sd > LEAST_SD);
    FittedFigure {
        what,
        before,
        before_half,
        after: known.map_or(before, |_| after),
        after_half: known.map_or(before_half, |known| 2.0 * share(known) * after),
        untold: why.or((!is_told).then_some(Untold::TooLittle)),
    }
}

/// In per cent by the kelvin; `before` is the map's.
fn slope(ground: &Ground, fit: &PartFit, before: f64) -> FittedFigure {
    let asked = fit.draw.as_ref().and_then(|draw| draw.slope(ground));
    let told = fit.slope(ground);
    let untold = no_draw(ground).or(match (ground.outdoor_c.is_some(), asked, told) {
        _ if has_own_runs(&ground.plan) => Some(Untold::OwnRuns),
        (false, ..) => Some(Untold::NoOutdoors),
        (_, None, _) => Some(Untold::SteadyWeather),
        (_, _, None) => Some(Untold::TooLittle),
        _ => None,
    });
    let known = asked.filter(|_| untold.is_none_or(|why| why == Untold::TooLittle));
    let before_half = 200.0 * SLOPE_SD;
    FittedFigure {
        what: Fitted::DrawSlope,
        before,
        before_half,
        after: before + known.map_or(0.0, |known| 100.0 * known.value),
        after_half: known.map_or(before_half, |known| 200.0 * known.sd),
        untold,
    }
}

/// Why the log cannot show the draw at all.
fn no_draw(ground: &Ground) -> Option<Untold> {
    match () {
        () if !ground.unit.was_on => Some(Untold::UnitOff),
        () if follows_load(&ground.plan) => Some(Untold::FollowsLoad),
        () if ground.bins.usual_step_s > FINE_S => Some(Untold::RowsTooFarApart),
        () => None,
    }
}

/// Whether one of the units that are planned modulates.
pub(super) fn follows_load(plan: &Plan) -> bool {
    planned_units(plan).any(|unit| unit.cooling.control == Some(Control::Modulating))
}

/// Whether one of the units that are planned has settled runs in the plan.
fn has_own_runs(plan: &Plan) -> bool {
    planned_units(plan).any(|unit| !unit.cooling.unit_map.is_empty())
}

fn planned_units(plan: &Plan) -> impl Iterator<Item = &Unit> {
    let rows = plan.mode_rows().into_iter();
    rows.filter_map(|(_, unit, mode)| mode.and(plan.units.get(unit)))
}

/// A plan's own numbers.
struct Numbers {
    loss_w_k: f64,
    capacity_kj_k: f64,
    per_watt: f64,
    draw_w: f64,
    slope_percent_k: f64,
    usable_wh: f64,
}

impl Numbers {
    /// The unit in weather of `middle_c`, or else of the log's start.
    fn of(ground: &Ground, plan: &Plan, middle_c: Option<f64>) -> Option<Self> {
        let inputs = ground.inputs(plan, 0.0)?;
        let middle_c = middle_c.or(inputs.air.first().map(|air| air.outdoor_c))?;
        let stores = &inputs.stores;
        let rig = inputs.rigs.first();
        let run = |off_k: f64| rig.map(|rig| rig.settled_run(middle_c + off_k));
        let change = run(0.5).zip(run(-0.5));
        let pack = &inputs.bank.pack;
        let mean_v = pack.curve.mean_between(pack.empty_charge.min(0.99), 1.0);
        Some(Self {
            loss_w_k: in_watts_per_kelvin(stores.overall()),
            capacity_kj_k: in_joules_per_kelvin(stores.air + stores.shell) / 1000.0,
            per_watt: run(0.0).map_or(f64::NAN, |run| run.cooling_w / run.draw_w),
            draw_w: run(0.0).map_or(f64::NAN, |run| run.draw_w),
            slope_percent_k: change.map_or(f64::NAN, |(warm, cool)| {
                100.0 * (warm.draw_w / cool.draw_w).ln()
            }),
            usable_wh: pack.held_ah() * mean_v,
        })
    }

    fn get(&self, what: Fitted) -> f64 {
        match what {
            Fitted::CabinLoss => self.loss_w_k,
            Fitted::CabinCapacity => self.capacity_kj_k,
            Fitted::CoolingPerWatt => self.per_watt,
            Fitted::Draw => self.draw_w,
            Fitted::DrawSlope => self.slope_percent_k,
            Fitted::Usable => self.usable_wh,
        }
    }
}
