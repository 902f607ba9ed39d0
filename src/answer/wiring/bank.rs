//! What each battery is asked, through series and parallel, and what it bears.

use super::{
    asks::{self, BANK},
    circuit::{Verdict, current_a},
    protection::{KindFigures, kinds, rating_for, string_fault, string_ohm},
};
use crate::{
    physics::wiring::{self, Battery, Parallel, Row, fuse_each},
    plan::{
        Plan,
        part::Choice,
        path::Path,
        wiring::{TakeOff, WiringField as W},
    },
    quantity::{amps, in_amps, ohms, volts},
    simulate::assemble,
};
use serde::{Deserialize, Serialize};

/// A current held against what one battery bears.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Burden {
    /// Of the whole bank.
    pub total_a: f64,
    /// Of the battery that is burdened most.
    pub worst_a: f64,
    /// What one battery bears; absent where that is not said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit_a: Option<f64>,
    /// Worst against limit; no guess decides it once the answer is judged.
    pub verdict: Verdict,
}

/// The batteries and what is asked of them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BankLimits {
    /// Batteries in each string.
    pub series_count: u32,
    /// Strings.
    pub parallel_count: u32,
    /// Where the two cables leave, as stated or usual.
    pub take_off: TakeOff,
    /// For hours, at the bank's lowest volts.
    pub continuous: Burden,
    /// When the unit starts, everything else running.
    pub start: Burden,
    /// How long the start lasts.
    pub start_ms: f64,
    /// The surge is held against the continuous limit: no peak is said, or none
    /// that lasts so long.
    pub start_by_continuous: bool,
    /// When one string has switched itself off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub one_open: Option<Burden>,
    /// With every charger and the panels at once.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub charge: Option<Burden>,
    /// The worst battery by each take-off, in the order of their names.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub by_take_off: Vec<TakeOffShare>,
    /// From two in parallel each string needs its own fuse.
    pub fuse_each: bool,
    /// What that fuse is rated for, so that it bears the load when a neighbour has opened.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub string_fuse_a: Option<f64>,
    /// What it must break: all other strings at once.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub string_fault_a: Option<f64>,
    /// Every kind of fuse held against that; empty where none is needed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub string_kinds: Vec<KindFigures>,
}

/// The burden of the worst battery by where the cables leave.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct TakeOffShare {
    /// Where the cables leave.
    pub take_off: TakeOff,
    /// For hours, at the bank's lowest volts.
    pub worst_a: f64,
}

/// The batteries of the first bank; nothing where the plan lacks a figure, or one lies
/// beyond what the wiring room takes.
///
/// Verdicts are by the figures as they stand, guesses and all.
#[must_use]
pub fn bank_limits(plan: &Plan) -> Option<BankLimits> {
    let bank = plan.banks.get(BANK)?;
    let row = |take_off| row(plan, take_off);
    let taken = plan.wiring.take_off_taken();
    let low_v = asks::low_v(plan)?;
    let unit = asks::unit(plan)?;
    let others_a = asks::loads_w(plan) / low_v;
    let running_a = current_a(unit.demand, low_v)? + others_a;
    let start_a = plan
        .number(Path::Wiring(W::StartA))?
        .max(running_a - others_a)
        + others_a;
    let charging_a: f64 = asks::charge_currents(plan).iter().map(|(_, a)| a).sum();
    let limit_a = plan.battery_limit_a(BANK);
    let worst = |total_a: f64| worst_a(&row(taken)?, total_a);
    let (peak_a, start_by_continuous) = peak(plan, limit_a);
    let fuse_each = fuse_each(Parallel::BatteryCases, bank.parallel_count).ok()?;
    let worst_running_a = worst(running_a)?;
    let charge = (charging_a > 0.0).then(|| {
        let limit_a = plan.number(Path::Wiring(W::BatteryChargeA));
        Some(burden(charging_a, worst(charging_a)?, limit_a))
    });
    let charge = charge.flatten();
    let open_a = one_open(&row(taken)?, running_a);
    // It must not open too when a neighbour has.
    let for_hours_a = [open_a, charge.map(|one| one.worst_a)]
        .into_iter()
        .flatten()
        .fold(worst_running_a, f64::max);
    let string_fuse_a = fuse_each.then(|| rating_for(for_hours_a)).flatten();
    let string_fault_a = string_fault(plan, asks::charge_v(plan)?).map(|(fault_a, _)| {
        // The others feed a fault in this string through its own fuse.
        fault_a * f64::from(bank.parallel_count.saturating_sub(1).max(1))
    });
    let string_kinds = string_fuse_a
        .zip(string_fault_a)
        .and_then(|(rating_a, fault_a)| Some(kinds(asks::charge_v(plan)?, fault_a, rating_a)));
    Some(BankLimits {
        series_count: bank.series_count,
        parallel_count: bank.parallel_count,
        take_off: taken,
        continuous: burden(running_a, worst_running_a, limit_a),
        start: burden(start_a, worst(start_a)?, peak_a),
        start_ms: plan.number(Path::Wiring(W::StartMs))?,
        start_by_continuous,
        one_open: open_a.map(|worst_a| burden(running_a, worst_a, limit_a)),
        charge,
        by_take_off: by_take_off(plan, running_a),
        fuse_each,
        string_fuse_a,
        string_fault_a: string_fault_a.filter(|_| fuse_each),
        string_kinds: string_kinds.unwrap_or_default(),
    })
}

/// Rounding trips no limit.
fn burden(total_a: f64, worst_a: f64, limit_a: Option<f64>) -> Burden {
    let verdict = match limit_a {
        None => Verdict::NotSaid,
        // An even share is computed to the last digit but two.
        Some(limit_a) if worst_a <= limit_a * (1.0 + 1e-9) => Verdict::Carries,
        Some(_) => Verdict::Fails,
    };
    Burden {
        total_a,
        worst_a,
        limit_a,
        verdict,
    }
}

/// What a surge is held against: the battery's peak if it lasts as long as the
/// surge, else its continuous limit.
fn peak(plan: &Plan, limit_a: Option<f64>) -> (Option<f64>, bool) {
    let number = |field| plan.number(Path::Wiring(field));
    let lasts = match (number(W::BatteryPeakMs), number(W::StartMs)) {
        (Some(bears_ms), Some(start_ms)) => bears_ms >= start_ms,
        // A peak with no time to it is a moment's: not said to last.
        _ => false,
    };
    match number(W::BatteryPeakA).filter(|_| lasts) {
        Some(peak_a) => (Some(peak_a), false),
        None => (limit_a, true),
    }
}

/// The strings in a row, each half charged and at its likely resistance.
fn row(plan: &Plan, take_off: TakeOff) -> Option<Row> {
    let bank = plan.banks.get(BANK)?;
    let pack = assemble::pack(plan, BANK)?.pack;
    let ohm = string_ohm(plan, false)? * f64::from(bank.series_count);
    let battery = Battery {
        open_circuit: volts(pack.curve.at(0.5)),
        resistance: ohms(ohm.max(1e-5)),
    };
    Some(Row {
        batteries: vec![battery; usize::try_from(bank.parallel_count).ok()?],
        link: ohms(plan.number(Path::Wiring(W::LinkMohm))? / 1000.0),
        take_off: match take_off {
            TakeOff::SameEnd => wiring::TakeOff::SameEnd,
            TakeOff::Diagonal => wiring::TakeOff::Diagonal,
            TakeOff::BusBar => wiring::TakeOff::BusBar,
        },
    })
}

/// The current of the most-loaded battery for so much in all.
fn worst_a(row: &Row, total_a: f64) -> Option<f64> {
    Some(in_amps(row.share(amps(total_a)).ok()?.highest))
}

/// The worst battery's current whichever string has opened.
fn one_open(row: &Row, total_a: f64) -> Option<f64> {
    (0..row.batteries.len())
        .filter_map(|opened| {
            let sharing = row.share_with_one_open(amps(total_a), opened).ok()?;
            Some(in_amps(sharing.highest))
        })
        .reduce(f64::max)
}

/// None for a single string.
fn by_take_off(plan: &Plan, total_a: f64) -> Vec<TakeOffShare> {
    let several = plan
        .banks
        .get(BANK)
        .is_some_and(|bank| bank.parallel_count > 1);
    let all = TakeOff::ALL.iter().filter(|_| several);
    all.filter_map(|&take_off| {
        let worst_a = worst_a(&row(plan, take_off)?, total_a)?;
        Some(TakeOffShare { take_off, worst_a })
    })
    .collect()
}
