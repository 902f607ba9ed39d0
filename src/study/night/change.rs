//! What could be changed in a plan to buy hours, one thing at a time.

use crate::{
    plan::{
        Figure, Plan,
        cabin::{CabinField as C, Colour, Covers, Insulation},
        check::MOST_ARRAYS,
        path::{BankField as B, Path},
        supply::{Array, ArrayField as A, ChargerField as G},
    },
    range,
};
use serde::{Deserialize, Serialize};

/// One change, with what it changes to: [`Change::applied_to`] makes the plan.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "change", rename_all = "snake_case")]
pub enum Change {
    /// One more string of the same batteries side by side.
    /// To so many strings.
    OneMoreString { parallel_count: u32 },
    /// More panel watts in an array, to `rated_w`; one past the last is a new array, flat.
    PanelWatts { array: usize, rated_w: f64 },
    /// Panels out from under what shades them.
    PanelsInTheOpen { array: usize, shading_percent: f64 },
    /// A stronger charger, to `most_a`.
    ChargerAmps { charger: usize, most_a: f64 },
    /// Charged full before the start.
    FullAtStart,
    /// A warmer set point.
    SetPoint { set_point_c: f64 },
    /// A mode that draws less, wherever `mode` of `unit` is planned now: places in the plan.
    LowerMode {
        unit: usize,
        mode: usize,
        lower: usize,
    },
    /// Covers before the windows.
    Covers { covers: Covers },
    /// The cabin and the panels on its roof under trees: share of the sun kept off, 0 to 100.
    Shade { shade_percent: f64 },
    /// The next better insulation.
    Insulation { insulation: Insulation },
    /// A pale outside.
    Colour { colour: Colour },
    /// A load left out.
    LoadOff { load: usize },
}

/// Panel watts that one more panel brings where none is there yet, and at least.
const PANEL_W: f64 = 100.0;
/// Share of the sun kept off by trees.
const TREES_PERCENT: f64 = 50.0;
/// A stronger charger's amps over those of the one at hand.
const CHARGER_RATIO: f64 = 1.5;
/// A warmer set point, by so much.
const WARMER_K: f64 = 1.0;
/// Shading of panels that is worth a word.
const LEAST_SHADING_PERCENT: f64 = 10.0;
/// Loads that are tried left out.
const MOST_LOADS_OFF: usize = 4;
/// Kilograms of framed panels for each watt (common practice, no source).
const PANEL_KG_PER_W: f64 = 0.06;

impl Change {
    /// All that apply to a plan, in a fixed order: the bank first, then what
    /// feeds it, what is asked of the unit, the cabin, the loads.
    ///
    /// A choice whose figure is stated (a measured shell, say) is left out: it
    /// would change nothing.
    #[must_use]
    pub fn all_for(plan: &Plan) -> Vec<Self> {
        let mut all = Vec::new();
        Self::of_bank(plan, &mut all);
        Self::of_supply(plan, &mut all);
        Self::of_modes(plan, &mut all);
        Self::of_cabin(plan, &mut all);
        Self::of_loads(plan, &mut all);
        all
    }

    /// The first bank alone: the days know no other.
    fn of_bank(plan: &Plan, all: &mut Vec<Self>) {
        let Some(bank) = plan.banks.first() else {
            return;
        };
        let parallel_count = bank.parallel_count.saturating_add(1);
        if range::PARALLEL_COUNT.accepts(f64::from(parallel_count)) {
            all.push(Self::OneMoreString { parallel_count });
        }
        let start = plan.number(Path::Bank(0, B::StartChargePercent));
        if start.is_some_and(|percent| percent < 100.0) {
            all.push(Self::FullAtStart);
        }
    }

    /// The largest array grows; each that is shaded, and each charger, is tried by itself.
    fn of_supply(plan: &Plan, all: &mut Vec<Self>) {
        let arrays = plan.supply.arrays.len();
        let number = |array, field| plan.number(Path::Array(array, field)).unwrap_or(0.0);
        let biggest = (0..arrays).reduce(|a, b| {
            if number(b, A::RatedW) > number(a, A::RatedW) {
                b
            } else {
                a
            }
        });
        match biggest {
            Some(array) => {
                // Half as much again, in whole small panels.
                let now_w = number(array, A::RatedW);
                let more_w = (0.5 * now_w / PANEL_W).round().max(1.0) * PANEL_W;
                let rated_w = (now_w + more_w).min(range::ARRAY_W.max);
                if rated_w > now_w {
                    all.push(Self::PanelWatts { array, rated_w });
                }
            }
            None if arrays < MOST_ARRAYS => all.push(Self::PanelWatts {
                array: arrays,
                rated_w: 2.0 * PANEL_W,
            }),
            None => {}
        }
        all.extend((0..arrays).filter_map(|array| {
            (number(array, A::ShadingPercent) >= LEAST_SHADING_PERCENT).then_some(
                Self::PanelsInTheOpen {
                    array,
                    shading_percent: 0.0,
                },
            )
        }));
        all.extend((0..plan.supply.chargers.len()).filter_map(|charger| {
            let now_a = plan.number(Path::Charger(charger, G::MostA))?;
            let most_a = (CHARGER_RATIO * now_a).round().max(now_a + 1.0);
            let most_a = most_a.min(range::CHARGER_A.max);
            (most_a > now_a).then_some(Self::ChargerAmps { charger, most_a })
        }));
    }

    /// A warmer set point, and each mode that is planned one lower.
    fn of_modes(plan: &Plan, all: &mut Vec<Self>) {
        if let Some(now_c) = plan.number(Path::Cabin(C::SetPointC))
            && range::SET_POINT_C.accepts(now_c + WARMER_K)
        {
            all.push(Self::SetPoint {
                set_point_c: now_c + WARMER_K,
            });
        }
        let mut seen = Vec::new();
        for (_, unit, mode) in plan.mode_rows() {
            let Some(mode) = mode.filter(|&mode| !seen.contains(&(unit, mode))) else {
                continue;
            };
            seen.push((unit, mode));
            if let Some(lower) = next_lower(plan, unit, mode) {
                all.push(Self::LowerMode { unit, mode, lower });
            }
        }
    }

    /// Only choices that still stand for a figure: one that is stated would not move with them.
    fn of_cabin(plan: &Plan, all: &mut Vec<Self>) {
        let cabin = &plan.cabin;
        let covers = cabin.covers.unwrap_or(Covers::InsideMats);
        let has_glass = [C::WallGlassM2, C::RoofGlassM2]
            .iter()
            .any(|&field| plan.number(Path::Cabin(field)).unwrap_or(0.0) > 0.0);
        if cabin.glass_gain_percent.is_none() && has_glass && covers != Covers::OutsideCovers {
            all.push(Self::Covers {
                covers: Covers::OutsideCovers,
            });
        }
        let shade = plan.number(Path::Cabin(C::ShadePercent)).unwrap_or(0.0);
        if shade < TREES_PERCENT {
            all.push(Self::Shade {
                shade_percent: TREES_PERCENT,
            });
        }
        let better = match cabin.insulation.unwrap_or(Insulation::Partial) {
            Insulation::Bare => Some(Insulation::Partial),
            Insulation::Partial => Some(Insulation::Normal),
            Insulation::Normal => Some(Insulation::Heavy),
            Insulation::Heavy => None,
        };
        if let Some(insulation) = better.filter(|_| cabin.shell_w_m2_k.is_none()) {
            all.push(Self::Insulation { insulation });
        }
        let is_dark = cabin.colour.unwrap_or(Colour::Light) != Colour::Light;
        if is_dark && cabin.absorptance_percent.is_none() {
            all.push(Self::Colour {
                colour: Colour::Light,
            });
        }
    }

    /// The largest few.
    fn of_loads(plan: &Plan, all: &mut Vec<Self>) {
        let mut loads: Vec<(usize, f64)> = plan
            .loads
            .iter()
            .map(|load| load.power_w.value)
            .enumerate()
            .filter(|load| load.1 > 0.0)
            .collect();
        loads.sort_by(|a, b| b.1.total_cmp(&a.1));
        let largest = loads.into_iter().take(MOST_LOADS_OFF);
        all.extend(largest.map(|(load, _)| Self::LoadOff { load }));
    }

    /// The plan with this changed and all else left. What does not fit the plan
    /// (of another plan, say) changes nothing.
    #[must_use]
    pub fn applied_to(self, plan: &Plan) -> Plan {
        let mut plan = plan.clone();
        match self {
            Self::OneMoreString { parallel_count } => more_strings(&mut plan, parallel_count),
            Self::PanelWatts { array, rated_w } => panel_watts(&mut plan, array, rated_w),
            Self::PanelsInTheOpen {
                array,
                shading_percent,
            } => set(
                &mut plan,
                Path::Array(array, A::ShadingPercent),
                shading_percent,
            ),
            Self::ChargerAmps { charger, most_a } => {
                set(&mut plan, Path::Charger(charger, G::MostA), most_a);
            }
            Self::FullAtStart => set(&mut plan, Path::Bank(0, B::StartChargePercent), 100.0),
            Self::SetPoint { set_point_c } => {
                set(&mut plan, Path::Cabin(C::SetPointC), set_point_c);
            }
            Self::LowerMode { unit, mode, lower } => lower_mode(&mut plan, unit, mode, lower),
            Self::Covers { covers } => plan.cabin.covers = Some(covers),
            Self::Shade { shade_percent } => shade(&mut plan, shade_percent),
            Self::Insulation { insulation } => plan.cabin.insulation = Some(insulation),
            Self::Colour { colour } => plan.cabin.colour = Some(colour),
            Self::LoadOff { load } => set(&mut plan, Path::Load(load), 0.0),
        }
        plan
    }

    /// Kilograms that it adds to `plan`: of batteries by usual watt-hours a kilogram of their
    /// chemistry, of panels by their watts. Absent where it adds none to speak of.
    #[must_use]
    pub fn mass_kg(self, plan: &Plan) -> Option<f64> {
        match self {
            Self::OneMoreString { .. } => {
                let bank = plan.banks.first()?;
                let wh = bank.battery_rated_ah.value * bank.nominal_v();
                Some(wh / bank.chemistry.data().wh_per_kg)
            }
            Self::PanelWatts { array, rated_w } => {
                let now_w = plan.number(Path::Array(array, A::RatedW)).unwrap_or(0.0);
                Some((rated_w - now_w).max(0.0) * PANEL_KG_PER_W)
            }
            _ => None,
        }
    }

    /// What it costs, in the currency of the plan's price: one string's part of it. Absent of
    /// anything but the bank, and without a price.
    #[must_use]
    pub fn cost(self, plan: &Plan) -> Option<f64> {
        let price = plan.price.price_number?;
        let strings = f64::from(plan.banks.first()?.parallel_count);
        matches!(self, Self::OneMoreString { .. }).then(|| price / strings)
    }
}

/// The unit's mode that draws the most of those that draw less than `mode`; nothing where
/// none does.
#[must_use]
pub(super) fn next_lower(plan: &Plan, unit: usize, mode: usize) -> Option<usize> {
    let modes = &plan.units.get(unit)?.modes;
    let now_w = modes.get(mode)?.draw.nominal_w();
    let lower = modes.iter().enumerate().filter_map(|(at, other)| {
        let other_w = other.draw.nominal_w();
        (other_w < now_w).then_some((at, other_w))
    });
    lower
        .reduce(|best, next| if next.1 > best.1 { next } else { best })
        .map(|(at, _)| at)
}

/// Writes a number where the plan has a place for it, in its range or not: what is tried is
/// kept in range by [`Change::all_for`].
fn set(plan: &mut Plan, path: Path, value: f64) {
    // A figure keeps its origin: a load turned off is no less known.
    match plan.figure(path) {
        Some(figure) => plan.set_figure(path, figure.with(value)),
        None => plan.set_number(path, value),
    };
}

/// What is measured of the whole bank grows with its strings.
fn more_strings(plan: &mut Plan, parallel_count: u32) {
    let Some(bank) = plan.banks.first_mut() else {
        return;
    };
    let ratio = f64::from(parallel_count) / f64::from(bank.parallel_count.max(1));
    bank.parallel_count = parallel_count;
    let measured = &mut bank.measured;
    for figure in [
        &mut measured.measured_ah,
        &mut measured.measured_wh,
        &mut measured.load_w,
    ] {
        *figure = figure.map(|figure| figure.with(figure.value * ratio));
    }
}

/// A new array past the last; else more panels side by side, as the volts must stay.
fn panel_watts(plan: &mut Plan, array: usize, rated_w: f64) {
    if array == plan.supply.arrays.len() {
        plan.supply.arrays.push(Array {
            rated_w: Some(Figure::label(rated_w)),
            ..Array::default()
        });
        return;
    }
    // As many more panels side by side.
    let now_w = plan.number(Path::Array(array, A::RatedW)).unwrap_or(0.0);
    if let Some(the_array) = plan.supply.arrays.get_mut(array)
        && now_w > 0.0
    {
        let more = |count: u32| (f64::from(count) * rated_w / now_w).round() as u32;
        the_array.panels_parallel_count = the_array.panels_parallel_count.map(more);
    }
    set(plan, Path::Array(array, A::RatedW), rated_w);
}

fn lower_mode(plan: &mut Plan, unit: usize, mode: usize, lower: usize) {
    let night = &mut plan.night;
    if plan.mode_plan.is_empty() && (night.asked_unit, night.asked_mode) == (unit, mode) {
        night.asked_mode = lower;
    }
    for row in &mut plan.mode_plan {
        if row.unit == unit && row.mode == Some(mode) {
            row.mode = Some(lower);
        }
    }
}

/// Trees keep the sun off the roof's panels too.
fn shade(plan: &mut Plan, shade_percent: f64) {
    let was = plan.number(Path::Cabin(C::ShadePercent)).unwrap_or(0.0);
    set(plan, Path::Cabin(C::ShadePercent), shade_percent);
    let left = (100.0 - shade_percent) / (100.0 - was).max(1.0);
    for array in 0..plan.supply.arrays.len() {
        let path = Path::Array(array, A::ShadingPercent);
        let shading = plan.number(path).unwrap_or(0.0);
        set(plan, path, 100.0 - (100.0 - shading) * left.min(1.0));
    }
}
