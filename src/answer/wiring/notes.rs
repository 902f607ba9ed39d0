//! What must be known beside the numbers, where it applies.

use super::{
    asks::{self, BANK},
    bank::BankLimits,
    circuit::{CircuitAnswer, Verdict},
    solar::SolarSide,
};
use crate::plan::{
    Feed, Plan,
    path::Path,
    wiring::{Circuit, TakeOff, WiringField as W},
};
use serde::{Deserialize, Serialize};

/// Something to know of the numbers, weightiest first in an answer. What can hurt
/// whatever the numbers is a [`crate::answer::Caution`].
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "matter", rename_all = "snake_case")]
pub enum WiringNote {
    /// A number of this circuit lies beyond what the tables reckon: no answer.
    CircuitBeyondTables { circuit: Circuit },
    /// No kind of fuse breaks what may flow there in the rating wanted.
    NoKindSuits { circuit: Circuit, fault_a: f64 },
    /// With one string open the others are beyond their limit.
    OneOpens { worst_a: f64, limit_a: f64 },
    /// From two strings in parallel each has a fuse of its own.
    FuseEachString { parallel_count: u32 },
    /// Batteries share unequally by where the cables leave.
    UnequalShares { worst_a: f64, even_a: f64 },
    /// Batteries of different age, make or use together.
    MixedBatteries,
    /// An inverter or converter draws a rush when it is connected.
    Precharge,
    /// What the inverter gives for a moment is below what the start takes.
    InverterPeak { peak_w: f64, start_w: f64 },
    /// Nothing is said of the cable after the converter or inverter.
    BehindConverter,
    /// All drops from bank to unit together.
    DropsTogether { dropped_percent: f64 },
    /// The panels exceed the controller on the coldest morning.
    ColdPanels { open_v: f64, limit_v: f64 },
    /// What the controller bears was not said.
    ControllerNotSaid { open_v: f64 },
    /// Hot panels stand below the bank's charge volts.
    PanelsBelowBank { best_v: f64, charge_v: f64 },
    /// A fuse in each string of panels.
    FuseEachPanelString { strings_count: u32 },
}

/// Drops from bank to unit that together are too much: the 5 % of the advice in
/// NFPA 70 section 210.19(A), for feeder and branch (from memory).
const TOGETHER_PERCENT: f64 = 5.0;

/// Every caution that applies.
pub(super) fn notes(
    plan: &Plan,
    circuits: &[CircuitAnswer],
    bank: Option<&BankLimits>,
    solar: Option<&SolarSide>,
) -> Vec<WiringNote> {
    let mut notes: Vec<WiringNote> = circuits.iter().filter_map(no_kind_suits).collect();
    notes.extend(solar.iter().flat_map(|side| panels(plan, side)));
    notes.extend(bank.iter().flat_map(|limits| batteries(plan, limits)));
    notes.extend(feed(plan));
    notes.extend(together(plan, circuits));
    notes
}

/// Nothing of a fault that is a guess: no fuse is called wrong by that.
fn no_kind_suits(circuit: &CircuitAnswer) -> Option<WiringNote> {
    let protection = circuit.protection.as_ref()?;
    let fault_a = protection.fault_a;
    if protection.fault_is_guess {
        return None;
    }
    let none = protection.kinds.iter().all(|one| !one.suits);
    none.then_some(WiringNote::NoKindSuits {
        circuit: circuit.circuit,
        fault_a,
    })
}

/// Against the controller, against the bank, among themselves.
fn panels(plan: &Plan, side: &SolarSide) -> Vec<WiringNote> {
    let mut notes = Vec::new();
    let open_v = side.cold_open_v;
    match (side.within, side.controller_limit_v) {
        (Some(false), Some(limit_v)) => notes.push(WiringNote::ColdPanels { open_v, limit_v }),
        (None, _) => notes.push(WiringNote::ControllerNotSaid { open_v }),
        _ => {}
    }
    if let (false, Some(charge_v)) = (side.charges_hot, asks::charge_v(plan)) {
        notes.push(WiringNote::PanelsBelowBank {
            best_v: side.hot_best_v,
            charge_v,
        });
    }
    if side.string_fuses {
        notes.push(WiringNote::FuseEachPanelString {
            strings_count: side.strings_count,
        });
    }
    notes
}

fn batteries(plan: &Plan, limits: &BankLimits) -> Vec<WiringNote> {
    let mut notes = Vec::new();
    if let Some(open) = limits.one_open
        && let (Verdict::Fails, Some(limit_a)) = (open.verdict, open.limit_a)
    {
        notes.push(WiringNote::OneOpens {
            worst_a: open.worst_a,
            limit_a,
        });
    }
    if limits.fuse_each {
        notes.push(WiringNote::FuseEachString {
            parallel_count: limits.parallel_count,
        });
    }
    let even_a = limits.continuous.total_a / f64::from(limits.parallel_count);
    if limits.take_off != TakeOff::BusBar && limits.continuous.worst_a > 1.02 * even_a {
        notes.push(WiringNote::UnequalShares {
            worst_a: limits.continuous.worst_a,
            even_a,
        });
    }
    if plan.wiring.mixed_batteries && (limits.parallel_count > 1 || limits.series_count > 1) {
        notes.push(WiringNote::MixedBatteries);
    }
    notes
}

/// Of a converter or an inverter; nothing for a unit straight on the bank.
fn feed(plan: &Plan) -> Vec<WiringNote> {
    let Some(unit) = plan.units.get(plan.night.asked_unit) else {
        return Vec::new();
    };
    if matches!(unit.feed, Feed::Direct) {
        return Vec::new();
    }
    let mut notes = vec![WiringNote::Precharge, WiringNote::BehindConverter];
    let number = |field| plan.number(Path::Wiring(field));
    if let (Feed::Inverter { .. }, Some(peak_w), Some(start_a), Some(nominal_v)) = (
        unit.feed,
        number(W::InverterPeakW),
        number(W::StartA),
        plan.banks.get(BANK).map(crate::plan::Bank::nominal_v),
    ) {
        let start_w = start_a * nominal_v;
        if start_w > peak_w {
            notes.push(WiringNote::InverterPeak { peak_w, start_w });
        }
    }
    notes
}

/// Of the cables one after another; nothing where there is one alone.
fn together(plan: &Plan, circuits: &[CircuitAnswer]) -> Option<WiringNote> {
    let both =
        |circuit: &&CircuitAnswer| matches!(circuit.circuit, Circuit::Distribution | Circuit::Unit);
    let along: Vec<&CircuitAnswer> = circuits.iter().filter(both).collect();
    let dropped_v: f64 = along
        .iter()
        .map(|circuit| super::circuit::dropped_v(circuit))
        .sum();
    let dropped_percent = 100.0 * dropped_v / asks::low_v(plan)?;
    (along.len() > 1 && dropped_percent > TOGETHER_PERCENT)
        .then_some(WiringNote::DropsTogether { dropped_percent })
}
