//! Inverse questions: which bank, draw or depth carries the hours wanted.
//!
//! Each is a bracketed search over the run itself, so what is found runs for
//! the hours asked: no rule of thumb stands between them.

pub mod day;

use crate::{
    physics::battery::Pack,
    plan::finding::{Finding, Matter},
    plan::{
        Feed, Plan, Unknown,
        path::{BankField, Path},
    },
    range::{self, Range},
    search::{Search, search},
    simulate::assemble,
    simulate::{held_span, hours_on},
};
use serde::{Deserialize, Serialize};

/// The number that was asked for, on one bank.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Sizing {
    /// Place of the bank in the plan.
    pub bank: usize,
    /// Place of the unit in the plan.
    pub unit: usize,
    /// Place of the mode within its unit.
    pub mode: usize,
    /// Hours that were asked for.
    pub wanted_h: f64,
    /// What was found.
    #[serde(flatten)]
    pub found: Found,
}

/// What was found, or that nothing within the accepted range does it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "unknown", rename_all = "snake_case")]
pub enum Found {
    /// The hours of the plan as it is: nothing was searched for.
    Hours { hours_h: f64 },
    /// Batteries like the plan's.
    Bank(NeededBank),
    /// The most that the mode may draw, in watts or amps as the plan states it.
    Draw {
        draw: f64,
        /// Written beside the [`Sizing`]'s own `unit`, hence the longer key.
        #[serde(rename = "draw_unit")]
        unit: range::Unit,
    },
    /// The least depth of discharge that carries the hours, 0 to 100.
    Depth { depth_percent: f64 },
    /// Nothing in the accepted range does; a finding names field and range.
    None,
}

/// The bank that carries the hours, and the whole batteries that make it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct NeededBank {
    /// Just enough, new: Ah from full to empty.
    pub needed_ah: f64,
    /// The same at nominal volts.
    pub needed_wh: f64,
    /// With the design margin, and still enough when aged: Ah from full to empty.
    pub with_reserve_ah: f64,
    /// The same at nominal volts.
    pub with_reserve_wh: f64,
    /// Batteries in series that the unit's voltage needs.
    pub series_count: u32,
    /// Strings in parallel that hold at least the Ah with reserve.
    pub parallel_count: u32,
    /// Both multiplied.
    pub batteries_count: u32,
    /// What those batteries run when new.
    pub hours_new_h: f64,
    /// What they run when aged to the plan's share of capacity.
    pub hours_aged_h: f64,
}

/// Strings of the present battery that are tried.
const SCALES: (f64, f64) = (1e-3, 1e4);

/// Answers the unknown of the night for one bank, one unit and one of its modes: places in
/// the plan, which is to be without errors there.
///
/// Where nothing in the accepted range does it, [`Found::None`], and a caution is pushed.
/// Nothing where the plan lacks one of the three.
pub fn size(
    plan: &Plan,
    bank: usize,
    unit: usize,
    mode: usize,
    findings: &mut Vec<Finding>,
) -> Option<Sizing> {
    let wanted_h = plan.night.wanted_h;
    let (found, looked) = match plan.night.unknown {
        Unknown::Hours => {
            let hours_h = crate::simulate::hours(plan, bank, unit, mode)?;
            (Found::Hours { hours_h }, None)
        }
        Unknown::Bank => needed_bank(plan, bank, unit, mode)?,
        Unknown::Draw => {
            let path = plan.draw_path(unit, mode)?;
            solved(plan, (bank, unit, mode), path, |draw, unit| Found::Draw {
                draw,
                unit,
            })?
        }
        Unknown::Depth => {
            let path = Path::Bank(bank, BankField::DepthPercent);
            solved(plan, (bank, unit, mode), path, |depth_percent, _| {
                Found::Depth { depth_percent }
            })?
        }
    };
    if let Some((field, Range { min, max, unit })) = looked {
        findings.push(Finding::caution(
            Some(field),
            Matter::Unreachable { min, max, unit },
        ));
    }
    Some(Sizing {
        bank,
        unit,
        mode,
        wanted_h,
        found,
    })
}

/// What was found, and where nothing was: the field and the values tried.
type Looked = (Found, Option<(Path, Range)>);

/// Searches one number of the plan for the hours wanted.
fn solved(
    plan: &Plan,
    (bank, unit, mode): (usize, usize, usize),
    path: Path,
    found: impl Fn(f64, range::Unit) -> Found,
) -> Option<Looked> {
    let range = path.range()?;
    let hours = |value: f64| {
        let mut moved = plan.clone();
        moved.set_number(path, value);
        crate::simulate::hours(&moved, bank, unit, mode).unwrap_or(0.0)
    };
    Some(
        match search(hours, range.min, range.max, plan.night.wanted_h) {
            Search::Found(value) => (found(value, range.unit), None),
            Search::Outside { .. } => (Found::None, Some((path, range))),
        },
    )
}

/// Enough strings of one battery, as a number with a fraction, then whole ones. Margin and
/// age are put on the Ah that were found, and not on the hours.
fn needed_bank(plan: &Plan, bank: usize, unit: usize, mode: usize) -> Option<Looked> {
    // The same batteries in the series count that the unit's voltage needs.
    let plan = in_series(plan, bank, needed_series(plan, bank, unit));
    let one_string = one_string(&plan, bank)?;
    let job = assemble::job(&plan, bank, unit, mode, &one_string)?.job;
    let span = held_span(&plan, bank)?;
    let hours = |strings: f64| hours_on(&one_string.times(strings), &job, span);
    let wanted_h = plan.night.wanted_h;
    // Doubled until it is enough: the sizes in question span seven decades.
    let mut enough = SCALES.0;
    while enough < SCALES.1 && hours(enough) < wanted_h {
        enough *= 2.0;
    }
    let least = (enough / 2.0).max(SCALES.0);
    let strings = match search(hours, least, enough, wanted_h) {
        Search::Found(strings) => strings,
        Search::Outside { .. } => {
            let path = Path::Bank(bank, BankField::BatteryRatedAh);
            return Some((Found::None, Some((path, range::BATTERY_RATED_AH))));
        }
    };
    let left = plan.night.ageing_percent / 100.0;
    let reserve = (1.0 + plan.night.margin_percent / 100.0) / left;
    let series_count = plan.banks[bank].series_count;
    // Rounding must not ask for one string more than what was found exactly.
    let parallel_count = (strings * reserve - 1e-9).ceil().max(1.0) as u32;
    let (ah, volts) = (one_string.held_ah(), plan.banks[bank].nominal_v());
    let needed_ah = ah * strings;
    let chosen = one_string.times(f64::from(parallel_count));
    Some((
        Found::Bank(NeededBank {
            needed_ah,
            needed_wh: needed_ah * volts,
            with_reserve_ah: needed_ah * reserve,
            with_reserve_wh: needed_ah * reserve * volts,
            series_count,
            parallel_count,
            batteries_count: series_count * parallel_count,
            hours_new_h: hours_on(&chosen, &job, span),
            hours_aged_h: hours_on(&chosen.aged(left), &job, span),
        }),
        None,
    ))
}

/// The plan with its bank's batteries so many in series: what is stated of the
/// whole bank in volts, or follows them, goes along.
fn in_series(plan: &Plan, bank: usize, series_count: u32) -> Plan {
    let mut plan = plan.clone();
    let the_bank = &mut plan.banks[bank];
    let ratio = f64::from(series_count) / f64::from(the_bank.series_count);
    the_bank.series_count = series_count;
    let measured = &mut the_bank.measured;
    for figure in [
        &mut the_bank.cutoff_v,
        &mut measured.measured_wh,
        &mut measured.load_w,
    ] {
        *figure = figure.map(|figure| figure.with(figure.value * ratio));
    }
    plan
}

/// The pack of one string, measured or by its label.
fn one_string(plan: &Plan, bank: usize) -> Option<Pack> {
    let pack = assemble::warm_pack(plan, bank)?.pack;
    Some(pack.times(1.0 / f64::from(plan.banks[bank].parallel_count)))
}

/// Batteries in series that a direct unit needs; as planned behind a converter.
fn needed_series(plan: &Plan, bank: usize, unit: usize) -> u32 {
    let planned = plan.banks[bank].series_count;
    let (Feed::Direct, Some(supply_v)) = (&plan.units[unit].feed, plan.units[unit].supply_v) else {
        return planned;
    };
    let Range { min, max, .. } = range::SERIES_COUNT;
    (supply_v / plan.banks[bank].reading().volts)
        .round()
        .clamp(min, max) as u32
}
