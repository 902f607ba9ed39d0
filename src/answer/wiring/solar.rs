//! The panels' side: currents to size for, and the coldest morning's volts.

use super::{
    asks::{Ask, AskedBy, charge_v, stated},
    circuit::Verdict,
};
use crate::{
    physics::wiring::{self, Demand, ModuleString, cold_morning, string_fuses},
    plan::{
        Plan,
        path::Path,
        supply::{ArrayField as A, SupplyField as S},
        wiring::{Circuit, WiringField as W},
    },
    quantity::{amps, celsius, in_amps, in_volts, volts},
};
use serde::{Deserialize, Serialize};

/// Short-circuit current over that at the most power, where a label does not
/// give it: 1.08, the upper end of usual panels (common practice, no source).
const SHORT_OVER_BEST: f64 = 1.08;
/// Cells of a panel in full sun on a hot roof, °C (common practice, no source).
const HOT_CELL_C: f64 = 70.0;

/// The panels' side.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SolarSide {
    /// Short-circuit current of all strings together, in standard sun.
    pub short_circuit_a: f64,
    /// Whether that is stated for all of them, or worked out from their watts.
    pub short_circuit_stated: bool,
    /// What wire and fuse are sized for: 1.25 × 1.25 times that (NFPA 70 section 690.8, from
    /// memory).
    pub design_a: f64,
    /// In parallel, of all groups; 0 without panels.
    pub strings_count: u32,
    /// Whether each string needs its own fuse.
    pub string_fuses: bool,
    /// Its rating, where each needs one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub string_fuse_a: Option<f64>,
    /// The coldest morning that the plan reckons with.
    pub coldest_c: f64,
    /// The longest string with no current, at that temperature.
    pub cold_open_v: f64,
    /// What the controller bears, and whether that is enough.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub controller_limit_v: Option<f64>,
    /// Whether that is no less than the cold volts; absent where it is not stated.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub within: Option<bool>,
    /// Of the panels against the controller; no guess decides it.
    pub verdict: Verdict,
    /// The shortest string at its most power, cells at 70 °C.
    pub hot_best_v: f64,
    /// Whether that is above the bank's charge volts.
    pub charges_hot: bool,
}

/// One group of panels that lie alike.
struct Group {
    /// In parallel.
    strings: u32,
    /// Short-circuit current of one string.
    short_a: f64,
    /// Whether that is typed.
    short_stated: bool,
    /// Open-circuit volts of one panel.
    open_v: f64,
    /// Volts of one panel at its most power.
    best_v: f64,
    /// Panels in a string.
    in_series: u32,
}

/// Nothing for one without watts.
fn group(plan: &Plan, at: usize) -> Option<Group> {
    let path = |field| Path::Array(at, field);
    let number = |field| plan.number(path(field));
    let in_series = number(A::PanelsSeriesCount)?;
    let strings = number(A::PanelsParallelCount)?;
    let best_v = number(A::PanelBestV)?;
    let rated_w = number(A::RatedW)?;
    if rated_w <= 0.0 {
        return None;
    }
    let stated_a = stated(plan, path(A::PanelShortA));
    let worked_out_a = SHORT_OVER_BEST * rated_w / (strings * in_series * best_v);
    Some(Group {
        strings: strings as u32,
        short_a: stated_a.unwrap_or(worked_out_a),
        short_stated: stated_a.is_some(),
        // A panel's open volts are above its best ones, whatever is typed.
        open_v: number(A::PanelOpenV)?.max(best_v),
        best_v,
        in_series: in_series as u32,
    })
}

fn groups(plan: &Plan) -> Vec<Group> {
    (0..plan.supply.arrays.len())
        .filter_map(|at| group(plan, at))
        .collect()
}

/// The panels' side of a plan; without panels it has no strings, and its volts say nothing.
/// Nothing where a figure is beyond what the wiring room takes.
#[must_use]
pub fn solar_side(plan: &Plan) -> Option<SolarSide> {
    let groups = groups(plan);
    let strings_count: u32 = groups.iter().map(|group| group.strings).sum();
    let short_a: f64 = groups
        .iter()
        .map(|group| f64::from(group.strings) * group.short_a)
        .sum();
    let longest_a = groups.iter().map(|group| group.short_a).fold(0.0, f64::max);
    let design_a = groups
        .iter()
        .map(|group| wiring::array_current(amps(group.short_a), group.strings))
        .sum::<Result<_, _>>()
        .ok()?;
    let design_a = in_amps(design_a);
    let coldest_c = plan.number(Path::Wiring(W::ColdestC))?;
    let per_kelvin = plan.number(Path::Supply(S::PanelVoltsPercentPerK))? / 100.0;
    let limit_v = plan.number(Path::Supply(S::ControllerLimitV));
    let cold_v = |group: &Group| {
        let string = ModuleString {
            open_circuit: volts(group.open_v),
            per_kelvin,
            in_series: group.in_series,
        };
        let morning = cold_morning(
            &string,
            celsius(coldest_c),
            volts(limit_v.unwrap_or(1000.0)),
        );
        Some(in_volts(morning.ok()?.open_circuit))
    };
    let cold_open_v = groups.iter().filter_map(cold_v).fold(0.0, f64::max);
    let hot = (1.0 + per_kelvin * (HOT_CELL_C - 25.0)).max(0.1);
    let hot_best_v = groups
        .iter()
        .map(|group| group.best_v * f64::from(group.in_series) * hot)
        .fold(f64::INFINITY, f64::min);
    let each = string_fuses(strings_count).ok()?;
    let string_fuse =
        wiring::recommend(amps(wiring::BRIGHT_SUN_SHARE * longest_a), amps(10_000.0)).ok()?;
    let rating = match string_fuse {
        wiring::FuseAdvice::Use(rating) => Some(in_amps(rating.current)),
        _ => None,
    };
    Some(SolarSide {
        short_circuit_a: short_a,
        short_circuit_stated: groups.iter().all(|group| group.short_stated),
        design_a,
        strings_count,
        string_fuses: each,
        string_fuse_a: each.then_some(rating).flatten(),
        coldest_c,
        cold_open_v,
        controller_limit_v: limit_v,
        within: limit_v.map(|limit_v| cold_open_v <= limit_v),
        verdict: match limit_v {
            None => Verdict::NotSaid,
            Some(limit_v) if cold_open_v <= limit_v => Verdict::Carries,
            Some(_) => Verdict::Fails,
        },
        hot_best_v,
        charges_hot: hot_best_v > charge_v(plan)?,
    })
}

/// The cable from the panels. The second 1.25 of the code is the fuse's 125 %,
/// which also holds the conductor to it: a fuse never exceeds what that bears.
pub fn ask(plan: &Plan) -> Option<Ask> {
    let side = solar_side(plan)?;
    Some(Ask {
        circuit: Circuit::Panel,
        by: AskedBy::Panels,
        demand: Demand::Current(amps(wiring::BRIGHT_SUN_SHARE * side.short_circuit_a)),
        continuous_a: side.short_circuit_a,
        start_a: None,
        low_v: side.hot_best_v,
        charge_v: side.cold_open_v,
    })
}
