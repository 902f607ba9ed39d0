//! The fifth question: does it do what it claims?
//!
//! [`verdict`] holds each measured figure against its claim, [`meter`] says how
//! well it was read, [`air`] works out cooling from the air side, [`next`] ranks
//! what to measure next. Prices are from [`crate::physics::bench::money`].

pub mod air;
mod meter;
pub mod next;
pub mod verdict;

pub use air::{AirAnswer, AirRefusal, BudgetRow};
pub use next::{How, ToMeasure};
pub use verdict::{ClaimAnswer, ClaimVerdict, Missing};

use super::RunAnswer;
use crate::{
    physics::bench::money::{Life, cost},
    plan::finding::Finding,
    plan::{
        Path, Plan,
        claims::{Claimed, MOST_CLAIMS, PriceField as P},
        path::BankField as B,
    },
    quantity::watt_hours,
};
use serde::{Deserialize, Serialize};

/// Everything about claims. Empty where nothing is claimed and nothing runs.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(default)]
pub struct ClaimsAnswer {
    /// One for each claim that could be judged, in the plan's order.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub claims: Vec<ClaimAnswer>,
    /// Cooling from the air side, where it was read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub air: Option<AirAnswer>,
    /// Why there is none though something was read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub air_refused: Option<AirRefusal>,
    /// What the energy costs; absent without a price or a measured energy.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub money: Option<MoneyAnswer>,
    /// What narrows the hours of the asked mode most, first things first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub next: Vec<ToMeasure>,
}

/// Prices, in the currency of the price paid.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MoneyAnswer {
    /// The energy that the price was held against: the first claim of energy that was measured,
    /// else the first bank's.
    pub measured_wh: f64,
    /// By that energy.
    pub per_wh: f64,
    /// By the part that the depth of discharge leaves.
    pub per_usable_wh: f64,
    /// Over the cycle life, where it is stated, the capacity falling evenly to what is left.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lifetime_kwh: Option<f64>,
    /// By these kilowatt-hours.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub per_lifetime_kwh: Option<f64>,
}

impl ClaimsAnswer {
    /// Whether there is nothing to say.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// Judges the plan's claims; `runs` are those of the same plan's night.
///
/// Total: a claim with an error in it is left out, `Plan::errors` names it.
///
/// ```
/// use till_morning::answer::claims::{ClaimVerdict, claims};
/// use till_morning::plan::{Claim, Figure, Plan, claims::{Claimed, MeterClass}};
/// let mut plan = Plan::demo();
/// plan.claims.push(Claim {
///     claimed_wh: Some(4096.0),
///     measured_wh: Some(Figure::measured(4319.0)),
///     meter: Some(MeterClass::Sheet),
///     of_reading_percent: Some(1.0),
///     ..Claim::of(Claimed::Energy)
/// });
/// let judged = &claims(&plan, &[]).claims[0];
/// assert_eq!(judged.verdict, ClaimVerdict::BeatsIt);
/// assert!((judged.share_percent.unwrap() - 105.4).abs() < 0.05);
/// ```
#[must_use]
pub fn claims(plan: &Plan, runs: &[RunAnswer]) -> ClaimsAnswer {
    let errors = plan.errors();
    let (air, air_refused) = match air::air(plan, &errors) {
        Some(Ok(air)) => (Some(air), None),
        Some(Err(refusal)) => (None, Some(refusal)),
        None => (None, None),
    };
    let judged = (0..plan.claims.len().min(MOST_CLAIMS))
        .filter(|&at| !errors.iter().any(|error| is_of_claim(error, at)))
        .filter_map(|at| verdict::judged(plan, at, air.as_ref()))
        .collect();
    ClaimsAnswer {
        claims: judged,
        money: money(plan, &errors),
        next: next::next(plan, runs),
        air,
        air_refused,
    }
}

fn is_of_claim(error: &Finding, claim: usize) -> bool {
    match error.field {
        Some(Path::Claim(at, _)) => at == claim,
        Some(Path::Claims) => true,
        _ => false,
    }
}

/// The price of the energy claimed first, or of the first bank as measured.
fn money(plan: &Plan, errors: &[Finding]) -> Option<MoneyAnswer> {
    let blocked = |error: &Finding| matches!(error.field, Some(Path::Price(_) | Path::Claim(..)));
    if errors.iter().any(blocked) {
        return None;
    }
    let price = plan.price.price_number?;
    let measured = |at: usize| {
        let claim = &plan.claims[at];
        let value = verdict::measured_value(claim);
        (claim.about_taken() == Claimed::Energy).then_some(value)?
    };
    let of_bank = || Some(plan.banks.first()?.measured.measured_wh?.value);
    let wh = (0..plan.claims.len()).find_map(measured).or_else(of_bank)?;
    let share = |path| plan.number(path).map(|percent| percent / 100.0);
    let depth = share(Path::Price(P::CycleDepthPercent))
        .or_else(|| share(Path::Bank(0, B::DepthPercent)))
        .filter(|depth| *depth > 0.0 && *depth <= 1.0)?;
    let life = Life {
        depth,
        cycles: plan.price.cycles_count.unwrap_or(1.0),
        left: share(Path::Price(P::LeftPercent)).unwrap_or(1.0),
    };
    let cost = cost(price, watt_hours(wh), &life)?;
    let lives = plan.price.cycles_count.is_some();
    Some(MoneyAnswer {
        measured_wh: wh,
        per_wh: cost.per_wh,
        per_usable_wh: cost.per_usable_wh,
        lifetime_kwh: lives.then_some(cost.lifetime_kwh),
        per_lifetime_kwh: lives.then_some(cost.per_lifetime_kwh),
    })
}
