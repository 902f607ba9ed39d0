//! The plans of drawn days: every number that has a spread, drawn anew.

use super::{
    chance::{normal, place_of, uniform},
    usual::half_width,
};
use crate::plan::{
    Figure, Plan,
    cabin::CabinField as C,
    day::DayField as D,
    path::{BankField as B, Path},
};

/// A number that is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Drawn {
    path: Path,
    figure: Figure,
    /// One standard deviation.
    sd: f64,
    place: u64,
}

/// Draws plans like one plan, the same every time.
#[derive(Clone, Debug, PartialEq)]
pub struct Draws {
    plan: Plan,
    drawn: Vec<Drawn>,
    seed: u32,
}

impl Draws {
    /// What a plan's drawn days are drawn from. The plan is to be without errors.
    #[must_use]
    pub fn new(plan: &Plan) -> Self {
        Self::of_modes(plan, &plan.mode_rows())
    }

    /// The same where the modes that may come on are others than the plan's:
    /// rows as of [`Plan::mode_rows`].
    #[must_use]
    pub fn of_modes(plan: &Plan, rows: &[(u32, usize, Option<usize>)]) -> Self {
        // The range of the seed is that of the type; casts saturate.
        let seed = plan.number(Path::Day(D::SeedNumber)).unwrap_or(1.0) as u32;
        Self {
            drawn: drawn(plan, rows),
            seed,
            plan: plan.clone(),
        }
    }

    /// The plan of one drawn day, the same for the same number. Drawn figures keep origin and
    /// spread and stay in their accepted ranges.
    #[must_use]
    pub fn plan(&self, run_number: u32) -> Plan {
        let mut plan = self.plan.clone();
        for drawn in &self.drawn {
            let value = drawn.figure.value + drawn.sd * self.deviate(run_number, drawn.place);
            let value = drawn
                .path
                .range()
                .map_or(value, |range| value.max(range.min).min(range.max));
            plan.set_figure(drawn.path, drawn.figure.with(value));
        }
        plan
    }

    /// The standard normal deviate of a run at a place ([`super::chance::place_of`] a name), for
    /// what is drawn beside the plan's own numbers.
    #[must_use]
    pub fn deviate(&self, run_number: u32, place: u64) -> f64 {
        normal(uniform(self.seed, run_number, place))
    }
}

/// The numbers of a plan that are drawn.
fn drawn(plan: &Plan, modes: &[(u32, usize, Option<usize>)]) -> Vec<Drawn> {
    let is_planned = |unit: usize, mode: Option<usize>| {
        modes
            .iter()
            .any(|row| row.1 == unit && (mode.is_none() || row.2 == mode))
    };
    let is_measured = plan.banks.first().is_some_and(|bank| bank.is_measured());
    plan.paths()
        .into_iter()
        .filter(|&path| match path {
            Path::Bank(bank, B::BatteryRatedAh | B::HealthPercent) => bank == 0 && !is_measured,
            Path::Bank(bank, _) => bank == 0,
            Path::Unit(unit, _) | Path::Cooling(unit, _) => is_planned(unit, None),
            Path::Mode(unit, mode, _) => is_planned(unit, Some(mode)),
            // What follows from it is drawn itself.
            Path::Cabin(C::InsideLengthM) | Path::CheckIn(..) => false,
            _ => true,
        })
        .filter_map(|path| {
            let figure = plan.figure(path)?;
            let sd = 0.5 * half_width(path, figure);
            (sd > 0.0).then(|| Drawn {
                path,
                figure,
                sd,
                place: place_of(&path.to_string()),
            })
        })
        .collect()
}
