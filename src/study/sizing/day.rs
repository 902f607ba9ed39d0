//! Inverse questions on the hot day: how much of one thing is enough.
//!
//! Enough is: the bank not empty and the set point held until the wanted hour of
//! the last day that the plan covers. Each answer is a bracketed search over runs
//! of the day itself, and what is found was run and held.

use crate::{
    plan::finding::{Finding, Matter},
    plan::{
        Figure, Plan,
        cabin::CabinField as C,
        day::DayField as D,
        path::{BankField as B, Path},
        supply::{Array, ArrayField as A, ChargerField as G},
    },
    range::{self, Range},
    search::{Edge, edge},
    simulate::day::{How, Inputs, Scene, run},
    study::night::SearchScenario,
};
use serde::{Deserialize, Serialize};

/// What is asked for, all else given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum DayUnknown {
    /// Ah of a battery, all batteries alike.
    BankAh,
    /// Watts of the first array, or of a flat one where there is none.
    PanelW,
    /// Amps of the first charger.
    ChargerA,
    /// The coolest set point.
    SetPointC,
    /// The hottest day, its night as much hotter.
    HighC,
}

impl DayUnknown {
    /// Each once.
    pub const ALL: [Self; 5] = [
        Self::BankAh,
        Self::PanelW,
        Self::ChargerA,
        Self::SetPointC,
        Self::HighC,
    ];

    /// The number of the plan that it speaks of.
    #[must_use]
    pub const fn path(self) -> Path {
        match self {
            Self::BankAh => Path::Bank(0, B::BatteryRatedAh),
            Self::PanelW => Path::Array(0, A::RatedW),
            Self::ChargerA => Path::Charger(0, G::MostA),
            Self::SetPointC => Path::Cabin(C::SetPointC),
            Self::HighC => Path::Day(D::HighC),
        }
    }

    /// The values tried, from the modest end to the end where it holds most
    /// easily, and how close the search goes (a share of the value for Ah and
    /// amps, else in the unit).
    const fn tried(self) -> (f64, f64, f64) {
        match self {
            Self::BankAh => (
                range::BATTERY_RATED_AH.min,
                range::BATTERY_RATED_AH.max,
                0.005,
            ),
            Self::PanelW => (range::ARRAY_W.min, range::ARRAY_W.max, 5.0),
            Self::ChargerA => (range::CHARGER_A.min, range::CHARGER_A.max, 0.01),
            Self::SetPointC => (range::SET_POINT_C.min, range::SET_POINT_C.max, 0.05),
            Self::HighC => (range::OUTDOOR_C.max, range::OUTDOOR_C.min, 0.05),
        }
    }
}

/// How much is enough, or that nothing in reach is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DaySizing {
    /// What was asked for.
    pub unknown: DayUnknown,
    /// Held until then, hours from the start: the wanted hour of the last day.
    pub goal_h: f64,
    /// How much it is.
    #[serde(flatten)]
    pub found: DayFound,
    /// That nothing in the range does it, and which range.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub finding: Option<Finding>,
}

/// What a search on the day came to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "found", rename_all = "snake_case")]
pub enum DayFound {
    /// This much holds, and the next tried, on the other side of it, does not.
    Enough {
        value: f64,
        fails_at: f64,
        unit: range::Unit,
    },
    /// Even the least (or, of a day, the hottest) that is accepted holds.
    Any { value: f64, unit: range::Unit },
    /// Nothing that is accepted holds. Whether then the bank lasts and it is the
    /// set point that is lost: a matter of the unit, and of nothing asked here.
    None { lasts: bool },
}

impl DaySizing {
    /// The plan with what was found, and what goes along with it; nothing where nothing was.
    #[must_use]
    pub fn applied_to(&self, plan: &Plan) -> Option<Plan> {
        match self.found {
            DayFound::Enough { value, .. } | DayFound::Any { value, .. } => {
                Some(with(plan, self.unknown, value))
            }
            DayFound::None { .. } => None,
        }
    }
}

/// How much of one thing is enough for the plan's days.
///
/// Nothing where the plan cannot be run, or has no charger to ask for.
///
/// ```
/// use till_morning::{plan::Plan, study::sizing::day::{DayFound, DayUnknown, size_day}};
/// let sizing = size_day(&Plan::demo(), DayUnknown::BankAh).unwrap();
/// let DayFound::Enough { value, fails_at, .. } = sizing.found else { panic!() };
/// assert!(fails_at < value && value < 105.0);
/// ```
#[must_use]
pub fn size_day(plan: &Plan, unknown: DayUnknown) -> Option<DaySizing> {
    if unknown == DayUnknown::ChargerA && plan.supply.chargers.is_empty() {
        return None;
    }
    let mut ground = SearchScenario::days(plan, 1)?;
    // A wanted hour beyond the first day has made the days as many as it takes.
    let scene = &ground.scene;
    let goal_h = (scene.span_h - 24.0 * (scene.wanted_h / 24.0).ceil()) + scene.wanted_h;
    ground.until_h = goal_h;
    ground.ends_when_empty = true;
    let holds = |value: f64| {
        let outcome = ground.outcome(&with(plan, unknown, value));
        outcome.is_some_and(|outcome| outcome.holds_to(goal_h))
    };
    let (near, far, within) = unknown.tried();
    let range = unknown.path().range()?;
    let unit = range.unit;
    let mut sought = edge(holds, near, far, within);
    // The search walks in longer steps than the day's own answer; what it finds must
    // hold there, or the search goes on from it in the shorter ones.
    let fine = Scene::new(plan)?;
    let how = How {
        ends_when_empty: true,
        until_h: Some(goal_h),
        ..How::default()
    };
    let holds_finely = |value: f64| {
        let inputs = Inputs::new(&fine, &with(plan, unknown, value));
        let outcome = inputs.and_then(|inputs| run(&fine, &inputs, &how, &mut ()));
        outcome.is_some_and(|outcome| outcome.holds_to(goal_h))
    };
    let first_found = match sought {
        Edge::Between { holds, .. } => Some(holds),
        Edge::FromTheStart => Some(near),
        Edge::Nowhere => None,
    };
    if let Some(value) = first_found.filter(|&value| !holds_finely(value)) {
        sought = edge(holds_finely, value, far, within);
    }
    let found = match sought {
        Edge::Between { fails, holds } => DayFound::Enough {
            value: holds,
            fails_at: fails,
            unit,
        },
        Edge::FromTheStart => DayFound::Any { value: near, unit },
        Edge::Nowhere => DayFound::None {
            lasts: ground
                .outcome(&with(plan, unknown, far))
                .is_some_and(|outcome| outcome.lasts_to(goal_h)),
        },
    };
    let finding = matches!(found, DayFound::None { .. }).then(|| {
        let Range { min, max, unit } = range;
        Finding::caution(Some(unknown.path()), Matter::Unreachable { min, max, unit })
    });
    Some(DaySizing {
        unknown,
        goal_h,
        found,
        finding,
    })
}

/// Every unknown that the plan has.
#[must_use]
pub fn size_all(plan: &Plan) -> Vec<DaySizing> {
    let all = DayUnknown::ALL.iter();
    all.filter_map(|&unknown| size_day(plan, unknown)).collect()
}

/// The plan with one thing changed, and what goes along with it.
fn with(plan: &Plan, unknown: DayUnknown, value: f64) -> Plan {
    let mut plan = plan.clone();
    match unknown {
        DayUnknown::BankAh => batteries_of(&mut plan, value),
        DayUnknown::HighC => day_of(&mut plan, value),
        DayUnknown::PanelW if plan.supply.arrays.is_empty() => {
            plan.supply.arrays.push(Array {
                rated_w: Some(Figure::label(value)),
                ..Array::default()
            });
        }
        _ => {
            plan.set_number(unknown.path(), value);
        }
    }
    plan
}

/// Batteries of another size: what is stated of a battery or of the bank in amps or
/// watt-hours grows with it, resistance shrinks.
fn batteries_of(plan: &mut Plan, ah: f64) {
    let Some(bank) = plan.banks.first_mut() else {
        return;
    };
    let ratio = ah / bank.battery_rated_ah.value;
    bank.battery_rated_ah.value = ah;
    let measured = &mut bank.measured;
    for figure in [
        &mut bank.battery_current_limit_a,
        &mut measured.measured_ah,
        &mut measured.measured_wh,
        &mut measured.load_w,
    ] {
        *figure = figure.map(|figure| figure.with(figure.value * ratio));
    }
    let milliohm = &mut bank.battery_resistance_mohm;
    *milliohm = milliohm.map(|figure| figure.with(figure.value / ratio));
}

/// A hotter day has a night as much hotter; damp stays as it is.
fn day_of(plan: &mut Plan, high_c: f64) {
    let number = |field| plan.number(Path::Day(field)).unwrap_or(0.0);
    let apart_k = number(D::HighC) - number(D::LowC);
    let low_c = (high_c - apart_k).max(range::OUTDOOR_C.min);
    plan.set_number(Path::Day(D::HighC), high_c);
    plan.set_number(Path::Day(D::LowC), low_c.min(range::OUTDOOR_C.max));
}
