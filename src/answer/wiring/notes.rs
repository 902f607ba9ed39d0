//! What must be known beside the numbers, where it applies.

use super::{
    asks::{self, BANK},
    bank::BankLimits,
    leg::{LegAnswer, Verdict},
    solar::SolarSide,
};
use crate::{
    plan::{
        Feed, Plan,
        path::Path,
        supply::ChargerKind,
        wiring::{Leg, TakeOff, WiringField as W},
    },
    wiring::beyond_scope,
};
use serde::{Deserialize, Serialize};

/// A caution with its numbers, weightiest first in an answer.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "matter", rename_all = "snake_case")]
pub enum CarryNote {
    /// The system reaches 50 V while it charges: the tables end there.
    BeyondFiftyVolts {
        charge_v: f64,
    },
    /// A number of this leg lies beyond what the tables reckon: no answer.
    LegBeyondTables {
        leg: Leg,
    },
    /// No kind of fuse breaks what may flow there in the rating wanted.
    NoKindSuits {
        leg: Leg,
        fault_a: f64,
    },
    /// With one string open the others are beyond their limit.
    OneOpens {
        worst_a: f64,
        limit_a: f64,
    },
    /// From two strings in parallel each has a fuse of its own.
    FuseEachString {
        parallel_count: u32,
    },
    /// Blocks share unequally by where the cables leave.
    UnequalShares {
        worst_a: f64,
        even_a: f64,
    },
    /// Blocks of different age, make or use together.
    MixedBlocks,
    /// In series only as the maker allows; more than that is stated.
    SeriesAsAllowed {
        series_count: u32,
    },
    SeriesBeyondMaker {
        series_count: u32,
        most_count: u32,
    },
    /// Lithium is not charged below this.
    LithiumCold {
        least_c: f64,
        coldest_c: f64,
    },
    /// A battery that opens while an engine charges it.
    EngineCharge,
    /// An inverter or converter draws a rush when it is connected.
    Precharge,
    /// What the inverter gives for a moment is below what the start takes.
    InverterPeak {
        peak_w: f64,
        start_w: f64,
    },
    /// Nothing is said of the cable after the converter or inverter.
    BehindConverter,
    /// All drops from bank to unit together.
    DropsTogether {
        dropped_percent: f64,
    },
    /// The panels exceed the controller on the coldest morning.
    ColdPanels {
        open_v: f64,
        limit_v: f64,
    },
    /// What the controller bears was not said.
    ControllerNotSaid {
        open_v: f64,
    },
    /// Hot panels stand below the bank's charge volts.
    PanelsBelowBank {
        best_v: f64,
        charge_v: f64,
    },
    /// A fuse in each string of panels.
    FuseEachPanelString {
        strings_count: u32,
    },
    /// Lead-acid gives off hydrogen: this much air, through openings so large.
    Ventilate {
        air_m3_h: f64,
        opening_mm2: f64,
    },
}

/// Drops from bank to unit that together are too much: the 5 % of the advice in
/// NFPA 70 section 210.19(A), for feeder and branch (from memory).
const TOGETHER_PERCENT: f64 = 5.0;

/// Every caution that applies.
pub(super) fn notes(
    plan: &Plan,
    legs: &[LegAnswer],
    bank: Option<&BankLimits>,
    solar: Option<&SolarSide>,
) -> Vec<CarryNote> {
    let mut notes = Vec::new();
    if let Some(charge_v) = asks::charge_v(plan)
        && beyond_scope(crate::quantity::volts(charge_v)).unwrap_or(true)
    {
        notes.push(CarryNote::BeyondFiftyVolts { charge_v });
    }
    notes.extend(legs.iter().filter_map(no_kind_suits));
    notes.extend(solar.iter().flat_map(|side| panels(plan, side)));
    notes.extend(bank.iter().flat_map(|limits| blocks(plan, limits)));
    notes.extend(charging(plan));
    notes.extend(feed(plan));
    notes.extend(together(plan, legs));
    notes.extend(super::ventilate(plan));
    notes
}

fn no_kind_suits(leg: &LegAnswer) -> Option<CarryNote> {
    let protection = leg.protection.as_ref()?;
    let fault_a = protection.fault_a;
    let none = protection.kinds.iter().all(|one| !one.suits);
    none.then_some(CarryNote::NoKindSuits {
        leg: leg.leg,
        fault_a,
    })
}

fn panels(plan: &Plan, side: &SolarSide) -> Vec<CarryNote> {
    let mut notes = Vec::new();
    let open_v = side.cold_open_v;
    match (side.within, side.controller_limit_v) {
        (Some(false), Some(limit_v)) => notes.push(CarryNote::ColdPanels { open_v, limit_v }),
        (None, _) => notes.push(CarryNote::ControllerNotSaid { open_v }),
        _ => {}
    }
    if let (false, Some(charge_v)) = (side.charges_hot, asks::charge_v(plan)) {
        notes.push(CarryNote::PanelsBelowBank {
            best_v: side.hot_best_v,
            charge_v,
        });
    }
    if side.string_fuses {
        notes.push(CarryNote::FuseEachPanelString {
            strings_count: side.strings_count,
        });
    }
    notes
}

fn blocks(plan: &Plan, limits: &BankLimits) -> Vec<CarryNote> {
    let mut notes = Vec::new();
    if let Some(open) = limits.one_open
        && let (Verdict::Fails, Some(limit_a)) = (open.verdict, open.limit_a)
    {
        notes.push(CarryNote::OneOpens {
            worst_a: open.worst_a,
            limit_a,
        });
    }
    if limits.fuse_each {
        notes.push(CarryNote::FuseEachString {
            parallel_count: limits.parallel_count,
        });
    }
    let even_a = limits.continuous.total_a / f64::from(limits.parallel_count);
    if limits.take_off != TakeOff::BusBar && limits.continuous.worst_a > 1.02 * even_a {
        notes.push(CarryNote::UnequalShares {
            worst_a: limits.continuous.worst_a,
            even_a,
        });
    }
    if plan.wiring.mixed_blocks && (limits.parallel_count > 1 || limits.series_count > 1) {
        notes.push(CarryNote::MixedBlocks);
    }
    notes.extend(match plan.wiring.most_series_count {
        Some(most) if limits.series_count > most => Some(CarryNote::SeriesBeyondMaker {
            series_count: limits.series_count,
            most_count: most,
        }),
        None if limits.series_count > 1 => Some(CarryNote::SeriesAsAllowed {
            series_count: limits.series_count,
        }),
        _ => None,
    });
    notes
}

fn charging(plan: &Plan) -> Vec<CarryNote> {
    let mut notes = Vec::new();
    let is_lithium = plan
        .banks
        .get(BANK)
        .is_some_and(|bank| !bank.chemistry.is_lead_acid());
    let number = |field| plan.number(Path::Wiring(field));
    if let (true, false, Some(least_c), Some(coldest_c)) = (
        is_lithium,
        asks::charge_currents(plan).is_empty(),
        number(W::ChargeLeastC),
        number(W::ColdestC),
    ) && coldest_c < least_c
    {
        notes.push(CarryNote::LithiumCold { least_c, coldest_c });
    }
    let by_engine = |kind| kind == Some(ChargerKind::Engine);
    if is_lithium && plan.supply.chargers.iter().any(|one| by_engine(one.kind)) {
        notes.push(CarryNote::EngineCharge);
    }
    notes
}

fn feed(plan: &Plan) -> Vec<CarryNote> {
    let Some(unit) = plan.units.get(plan.night.asked_unit) else {
        return Vec::new();
    };
    if matches!(unit.feed, Feed::Direct) {
        return Vec::new();
    }
    let mut notes = vec![CarryNote::Precharge, CarryNote::BehindConverter];
    let number = |field| plan.number(Path::Wiring(field));
    if let (Feed::Inverter { .. }, Some(peak_w), Some(start_a), Some(nominal_v)) = (
        unit.feed,
        number(W::InverterPeakW),
        number(W::StartA),
        plan.banks.get(BANK).map(crate::plan::Bank::nominal_v),
    ) {
        let start_w = start_a * nominal_v;
        if start_w > peak_w {
            notes.push(CarryNote::InverterPeak { peak_w, start_w });
        }
    }
    notes
}

fn together(plan: &Plan, legs: &[LegAnswer]) -> Option<CarryNote> {
    let both = |leg: &&LegAnswer| matches!(leg.leg, Leg::Distribution | Leg::Unit);
    let along: Vec<&LegAnswer> = legs.iter().filter(both).collect();
    let dropped_v: f64 = along.iter().map(|leg| super::leg::dropped_v(leg)).sum();
    let dropped_percent = 100.0 * dropped_v / asks::low_v(plan)?;
    (along.len() > 1 && dropped_percent > TOGETHER_PERCENT)
        .then_some(CarryNote::DropsTogether { dropped_percent })
}
