//! The fourth question: can the wiring carry it?
//!
//! The plan's first bank, the unit that is asked for, its loads and all that
//! charges, brought to the calculation room of [`crate::physics::wiring`]. Of two
//! readings the cautious one is taken: the strongest mode, at the lowest volts,
//! through the hottest copper, with the lowest resistance in a fault.

mod asks;
mod bank;
mod circuit;
mod face;
mod guesses;
mod judge;
mod notes;
mod protection;
mod remedy;
mod sizes;
mod solar;

pub(super) use asks::charge_v_of;
pub use asks::{AskedBy, is_beyond_fifty};
pub use bank::{BankLimits, Burden, TakeOffShare};
pub use circuit::{CircuitAnswer, CircuitNote, Verdict};
pub use judge::Open;
pub use notes::WiringNote;
pub use protection::{FaultFrom, FuseFault, KindFigures, Position, Protection};
pub use remedy::Remedy;
pub use sizes::{
    AmpacityFigures, LoadedFigures, Needed, RuleName, RuleNeeds, SizeFigures, SizeName, SizeSystem,
};
pub use solar::SolarSide;

use crate::{
    physics::battery,
    physics::wiring::{Gassing, ventilation},
    plan::finding::Finding,
    plan::{Path, Plan, part::Choice, wiring::Circuit},
    quantity::{amp_hours, in_cubic_meters_per_hour, in_square_millimeters},
};
use asks::BANK;
use serde::{Deserialize, Serialize};

/// Everything about the wiring.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WiringAnswer {
    /// Of all cables, fuses and limits that were said; no guess decides it.
    pub verdict: Verdict,
    /// What it waits for, the unit's cable first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub open: Vec<Open>,
    /// In the order of the current: distribution, unit, charger, panels. Those
    /// that the plan has.
    pub circuits: Vec<CircuitAnswer>,
    /// What each battery is asked; absent where the plan lacks a figure for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bank: Option<BankLimits>,
    /// The panels' side; absent without panels.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub solar: Option<SolarSide>,
    /// Highest volts of the bank, while it charges.
    pub charge_v: f64,
    /// Weightiest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<WiringNote>,
}

/// Answers the fourth question; nothing where the plan's bank, unit or wiring
/// has an error (which the answer's findings name).
#[must_use]
pub fn wiring(plan: &Plan) -> Option<WiringAnswer> {
    let charge_v = asks::charge_v(plan)?;
    if plan
        .errors()
        .iter()
        .any(|error| stands_in_the_way(plan, error))
    {
        return None;
    }
    let mut circuits: Vec<CircuitAnswer> = Vec::new();
    let mut beyond = Vec::new();
    for &circuit in Circuit::ALL {
        if asks::ask(plan, circuit).is_none() {
            continue;
        }
        match face::circuit(plan, circuit) {
            Some(circuit) => circuits.push(circuit),
            None => beyond.push(WiringNote::CircuitBeyondTables { circuit }),
        }
    }
    for circuit in &mut circuits {
        circuit.remedies = remedy::remedies(plan, circuit);
    }
    let solar = solar::solar_side(plan).filter(|side| side.strings_count > 0);
    let bank = bank::bank_limits(plan);
    let mut notes = notes::notes(plan, &circuits, bank.as_ref(), solar.as_ref());
    notes.splice(0..0, beyond);
    let mut answer = WiringAnswer {
        verdict: Verdict::NotSaid,
        open: Vec::new(),
        circuits,
        bank,
        solar,
        charge_v,
        notes,
    };
    judge::judge(plan, &mut answer);
    Some(answer)
}

/// Errors of the first bank, of the unit asked for, of what charges and of the
/// wiring.
fn stands_in_the_way(plan: &Plan, error: &Finding) -> bool {
    let unit = plan.night.asked_unit;
    let modes = plan.units.get(unit).map_or(0, |unit| unit.modes.len());
    let of_supply = matches!(
        error.field,
        Some(Path::Supply(_) | Path::Arrays | Path::Array(..) | Path::Chargers | Path::Charger(..))
    );
    of_supply
        || Plan::blocks_wiring_only(error)
        || Plan::blocks_bank(error, BANK)
        || (0..modes.max(1)).any(|mode| Plan::blocks(error, BANK, unit, mode))
}

/// Cables from the bank for which no fuse is named, with what they carry for hours;
/// none where an error stands in the way of the question.
pub(super) fn unfused(plan: &Plan) -> Vec<(Circuit, f64)> {
    let errors = plan.errors();
    if errors.iter().any(|error| stands_in_the_way(plan, error)) {
        return Vec::new();
    }
    let circuits = Circuit::ALL
        .iter()
        .filter(|&&circuit| circuit != Circuit::Panel);
    circuits
        .filter(|&&circuit| plan.wiring.installation(circuit).fuse_a.is_none())
        .filter_map(|&circuit| Some((circuit, asks::ask(plan, circuit)?.continuous_a)))
        .collect()
}

/// Air that a lead-acid bank wants, m³ an hour, and an opening for it, mm².
pub(super) fn ventilate(plan: &Plan, bank: usize) -> Option<(f64, f64)> {
    let bank = plan.banks.get(bank)?;
    let gassing = match bank.chemistry.data().gassing? {
        battery::Gassing::Vented => Gassing::VentedHeldVoltage,
        battery::Gassing::Sealed => Gassing::SealedHeldVoltage,
    };
    let cells = bank.reading().cells * bank.series_count;
    let capacity = bank.battery_rated_ah.value * f64::from(bank.parallel_count);
    let air = ventilation(cells, amp_hours(capacity), gassing).ok()?;
    Some((
        in_cubic_meters_per_hour(air.air),
        in_square_millimeters(air.opening),
    ))
}
