//! The fourth question: can the wiring carry it?
//!
//! The plan's first bank, the unit that is asked for, its loads and all that
//! charges, brought to the calculation room of [`crate::wiring`]. Of two
//! readings the cautious one is taken: the strongest mode, at the lowest volts,
//! through the hottest copper, with the lowest resistance in a fault.

mod asks;
mod bank;
mod leg;
mod notes;
mod protection;
mod sizes;
mod solar;

pub use asks::AskedBy;
pub use bank::{BankLimits, Burden, TakeOffShare};
pub use leg::{LegAnswer, LegNote, Verdict};
pub use notes::CarryNote;
pub use protection::{FaultFrom, FuseFault, KindFigures, Position, Protection};
pub use sizes::{
    AmpacityFigures, LoadedFigures, Needed, RuleName, RuleNeeds, SizeFigures, SizeName, SizeSystem,
};
pub use solar::SolarSide;

use crate::{
    bank::Chemistry,
    finding::Finding,
    plan::{Path, Plan},
    quantity::{amp_hours, in_cubic_meters_per_hour, in_square_millimeters},
    wiring::{Gassing, ventilation},
};
use asks::{Ask, BANK};
use serde::{Deserialize, Serialize};

/// Everything about the wiring.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WiringAnswer {
    /// Of all cables, fuses and limits that were said.
    pub verdict: Verdict,
    /// In the order of the current: distribution, unit, charger, panels. Those
    /// that the plan has.
    pub legs: Vec<LegAnswer>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bank: Option<BankLimits>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub solar: Option<SolarSide>,
    /// Highest volts of the bank, while it charges.
    pub charge_v: f64,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<CarryNote>,
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
    let mut legs: Vec<LegAnswer> = Vec::new();
    let mut beyond = Vec::new();
    let mut add = |legs: &mut Vec<LegAnswer>, ask: Option<Ask>, upstream_v: f64| {
        let Some(ask) = ask else { return };
        match leg::leg(plan, &ask, upstream_v) {
            Some(leg) => legs.push(leg),
            None => beyond.push(CarryNote::LegBeyondTables { leg: ask.leg }),
        }
    };
    add(&mut legs, asks::distribution(plan), 0.0);
    let upstream_v = legs.first().map_or(0.0, leg::dropped_v);
    add(&mut legs, asks::unit(plan), upstream_v);
    add(&mut legs, asks::charger(plan), 0.0);
    add(&mut legs, solar::ask(plan), 0.0);
    let solar = solar::solar_side(plan).filter(|side| side.strings_count > 0);
    let bank = bank::bank_limits(plan);
    let mut notes = notes::notes(plan, &legs, bank.as_ref(), solar.as_ref());
    notes.splice(0..0, beyond);
    Some(WiringAnswer {
        verdict: verdict(&legs, bank.as_ref(), solar.as_ref()),
        legs,
        bank,
        solar,
        charge_v,
        notes,
    })
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

/// Anything that fails fails all; the unit's cable must have been said.
fn verdict(legs: &[LegAnswer], bank: Option<&BankLimits>, solar: Option<&SolarSide>) -> Verdict {
    let burdens = bank.iter().flat_map(|bank| {
        let held = [Some(bank.continuous), Some(bank.start), bank.charge];
        held.into_iter().flatten().map(|burden| burden.verdict)
    });
    let cold = solar.and_then(|side| side.within).map(|within| {
        if within {
            Verdict::Carries
        } else {
            Verdict::Fails
        }
    });
    let all: Vec<Verdict> = legs
        .iter()
        .map(|leg| leg.verdict)
        .chain(burdens)
        .chain(cold)
        .collect();
    let cable = legs
        .iter()
        .find(|leg| leg.leg == crate::plan::wiring::Leg::Unit);
    if all.contains(&Verdict::Fails) {
        Verdict::Fails
    } else {
        cable.map_or(Verdict::NotSaid, |leg| leg.verdict)
    }
}

/// Air for lead-acid.
fn ventilate(plan: &Plan) -> Option<CarryNote> {
    let bank = plan.banks.get(BANK)?;
    let gassing = match bank.chemistry {
        Chemistry::Flooded => Gassing::VentedHeldVoltage,
        Chemistry::Agm | Chemistry::Gel => Gassing::SealedHeldVoltage,
        Chemistry::Lfp | Chemistry::Nmc | Chemistry::SodiumIon => return None,
    };
    let cells = bank.reading().cells * bank.series_count;
    let capacity = bank.block_rated_ah.value * f64::from(bank.parallel_count);
    let air = ventilation(cells, amp_hours(capacity), gassing).ok()?;
    Some(CarryNote::Ventilate {
        air_m3_h: in_cubic_meters_per_hour(air.air),
        opening_mm2: in_square_millimeters(air.opening),
    })
}
