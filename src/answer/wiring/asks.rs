//! What each circuit of the wiring is asked to carry.

use crate::{
    physics::wiring::Demand,
    plan::{
        Feed, Figure, Plan,
        path::{BankField as B, Path, UnitField as U},
        supply::{ArrayField as A, ChargerField as G, SupplyField as S},
        wiring::{Circuit, WiringField as W},
    },
    quantity::{amps, watts},
    simulate::assemble::{Asked, asked_of_feed, input_w},
};
use serde::{Deserialize, Serialize};

/// Whose current a circuit was sized for: the largest there is.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "by", rename_all = "snake_case")]
pub enum AskedBy {
    /// The strongest mode of the unit asked for.
    Mode { unit: usize, mode: usize },
    /// What the inverter or converter is rated for: anything may be put on it.
    Rating { unit: usize },
    /// The unit and all other loads.
    Everything,
    /// The strongest charger.
    Charger { charger: usize },
    /// The controller of the panels.
    Controller,
    /// The panels' short-circuit current.
    Panels,
}

/// What a circuit is asked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ask {
    /// Which stretch of cable.
    pub circuit: Circuit,
    /// Whose current it is.
    pub by: AskedBy,
    /// A current, or a power that takes more of it at fewer volts.
    pub demand: Demand,
    /// For hours, at nominal volts.
    pub continuous_a: f64,
    /// When the unit starts; absent for circuits that do not feed it.
    pub start_a: Option<f64>,
    /// The source's lowest volts.
    pub low_v: f64,
    /// Its highest.
    pub charge_v: f64,
}

/// The bank that the wiring hangs on.
pub const BANK: usize = 0;

/// Highest terminal volts of the bank: what its chargers hold, and at least what
/// its chemistry is charged to. Nothing without a bank.
///
/// A cell's volts at the end of a full charge, lead-acid flooded while it is
/// equalised: common practice, no source.
#[must_use]
pub fn charge_v(plan: &Plan) -> Option<f64> {
    charge_v_of(plan, BANK)
}

/// The same of any bank of the plan.
#[must_use]
pub fn charge_v_of(plan: &Plan, bank: usize) -> Option<f64> {
    let bank = plan.banks.get(bank)?;
    let cell_v = bank.chemistry.data().charging.most_cell_v;
    let cells = f64::from(bank.reading().cells) * f64::from(bank.series_count);
    let held = plan.supply.chargers.iter().filter_map(|one| one.hold_v);
    let held = held.filter(|&hold_v| crate::range::CUTOFF_V.accepts(hold_v));
    Some(held.fold(cell_v * cells, f64::max).max(bank.nominal_v()))
}

/// From this charge voltage on the tables of 33 CFR 183.425 have nothing to say.
#[must_use]
pub fn is_beyond_fifty(charge_v: f64) -> bool {
    crate::physics::wiring::beyond_scope(crate::quantity::volts(charge_v)).unwrap_or(true)
}

/// Lowest terminal volts of the bank at which it still feeds the unit: the
/// higher of its own cut-off and of what stops the unit, and no less than half
/// of nominal where neither is believable.
#[must_use]
pub fn low_v(plan: &Plan) -> Option<f64> {
    let unit = plan.night.asked_unit;
    let far = if plan.is_direct(unit) {
        U::CutoffV
    } else {
        U::InverterCutoffV
    };
    let far_v = plan.number(Path::Unit(unit, far)).unwrap_or(0.0);
    let own_v = plan.number(Path::Bank(BANK, B::CutoffV)).unwrap_or(0.0);
    let nominal_v = plan.banks.get(BANK)?.nominal_v();
    Some(far_v.max(own_v).max(0.5 * nominal_v))
}

/// Watts of everything else that runs.
pub fn loads_w(plan: &Plan) -> f64 {
    plan.loads.iter().map(|load| load.power_w.value).sum()
}

/// What the unit's feed takes from its cable: the strongest mode, or what an
/// inverter or converter is rated for, if that is more.
fn unit_demand(plan: &Plan) -> Option<(AskedBy, Demand, f64)> {
    let unit_at = plan.night.asked_unit;
    let unit = plan.units.get(unit_at)?;
    let nominal_v = plan.banks.get(BANK)?.nominal_v();
    let modes = unit.modes.iter().enumerate();
    let (at, mode) = modes.max_by(|(_, a), (_, b)| {
        let (a, b) = (a.draw.nominal_w(), b.draw.nominal_w());
        a.total_cmp(&b)
    })?;
    let by = AskedBy::Mode {
        unit: unit_at,
        mode: at,
    };
    let asked = asked_of_feed(mode, unit, nominal_v, unit_at, at, &mut Vec::new());
    let watts_out = match asked {
        Asked::Amps(current_a) => {
            return Some((by, Demand::Current(amps(current_a)), current_a));
        }
        Asked::Watts(watts_out) => watts_out,
    };
    let rated_w = match unit.feed {
        Feed::Direct => None,
        Feed::DcDc {
            output_v, limit_a, ..
        } => limit_a.map(|limit| limit.value * output_v),
        Feed::Inverter { limit_w, .. } => limit_w.map(|limit| limit.value),
    };
    let (by, watts_out) = match rated_w {
        Some(rated_w) if rated_w > watts_out => (AskedBy::Rating { unit: unit_at }, rated_w),
        _ => (by, watts_out),
    };
    let taken_w = input_w(&unit.feed, watts_out);
    Some((by, power(taken_w), taken_w / nominal_v))
}

fn power(taken_w: f64) -> Demand {
    Demand::Power {
        power: watts(taken_w),
        efficiency: 1.0,
    }
}

fn start_a(plan: &Plan) -> Option<f64> {
    plan.number(Path::Wiring(W::StartA))
}

/// What a circuit is asked; nothing where the plan does not have it.
pub fn ask(plan: &Plan, circuit: Circuit) -> Option<Ask> {
    match circuit {
        Circuit::Distribution => distribution(plan),
        Circuit::Unit => unit(plan),
        Circuit::Charger => charger(plan),
        Circuit::Panel => super::solar::ask(plan),
    }
}

/// The cable to the unit that is asked for, or to its converter or inverter.
pub fn unit(plan: &Plan) -> Option<Ask> {
    let (by, demand, continuous_a) = unit_demand(plan)?;
    Some(Ask {
        circuit: Circuit::Unit,
        by,
        demand,
        continuous_a,
        start_a: start_a(plan),
        low_v: low_v(plan)?,
        charge_v: charge_v(plan)?,
    })
}

/// The cable that all share, if there is one.
pub fn distribution(plan: &Plan) -> Option<Ask> {
    plan.wiring.distribution_m?;
    let unit = unit(plan)?;
    let nominal_v = plan.banks.get(BANK)?.nominal_v();
    let demand = match unit.demand {
        Demand::Current(current) => Demand::Current(current + amps(loads_w(plan) / unit.low_v)),
        Demand::Power { power: taken, .. } => Demand::Power {
            power: taken + watts(loads_w(plan)),
            efficiency: 1.0,
        },
    };
    Some(Ask {
        circuit: Circuit::Distribution,
        by: AskedBy::Everything,
        demand,
        continuous_a: unit.continuous_a + loads_w(plan) / nominal_v,
        ..unit
    })
}

/// Amps of each charger, and of the panels' controller last; those that the plan does not
/// say are left out.
pub fn charge_currents(plan: &Plan) -> Vec<(AskedBy, f64)> {
    let chargers = (0..plan.supply.chargers.len()).filter_map(|charger| {
        let most_a = plan.number(Path::Charger(charger, G::MostA))?;
        Some((AskedBy::Charger { charger }, most_a))
    });
    let controller = controller_a(plan).map(|most_a| (AskedBy::Controller, most_a));
    chargers.chain(controller).collect()
}

/// What the controller may put into the bank: its limit, or all the panels'
/// watts at the bank's lowest volts.
fn controller_a(plan: &Plan) -> Option<f64> {
    let rated_w: f64 = (0..plan.supply.arrays.len())
        .filter_map(|array| plan.number(Path::Array(array, A::RatedW)))
        .sum();
    if rated_w <= 0.0 {
        return None;
    }
    let by_panels = rated_w / low_v(plan)?;
    let limit = plan.number(Path::Supply(S::ControllerLimitA));
    Some(limit.unwrap_or(by_panels))
}

/// The cable of the strongest charger.
pub fn charger(plan: &Plan) -> Option<Ask> {
    let all = charge_currents(plan).into_iter();
    let (by, current_a) = all.max_by(|(_, a), (_, b)| a.total_cmp(b))?;
    Some(Ask {
        circuit: Circuit::Charger,
        by,
        demand: Demand::Current(amps(current_a)),
        continuous_a: current_a,
        start_a: None,
        low_v: low_v(plan)?,
        charge_v: charge_v(plan)?,
    })
}

/// A number of the plan, if it is stated.
pub fn stated(plan: &Plan, path: Path) -> Option<f64> {
    plan.stated(path).map(|figure: Figure| figure.value)
}
