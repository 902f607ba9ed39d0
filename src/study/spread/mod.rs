//! How sure: from the spread of each input to low, likely and high.
//!
//! Of a run at constant draw by first order ([`band`]); of a hot day, which is
//! far from straight, by drawing days ([`Sampler`]).
//!
//! First order: each input is moved by its own spread, both ways, the others at
//! their likely values; the changes add as independent ones do, by their squares
//! (GUM, JCGM 100:2008, 5.1.2), gains and losses apart so that a lopsided answer
//! stays lopsided. No random numbers: the band never jitters while typing.
//!
//! A spread is the half-width at two standard deviations (k = 2), so about
//! nineteen nights in twenty lie between low and high, if the spreads are honest
//! and the inputs independent. `tests/odds` draws truths and counts that they do.

pub mod chance;
mod draws;
pub mod least;
mod odds;
mod sampled;
mod several;
mod usual;

pub use draws::Draws;
pub use odds::{BandPoint, Odds};
pub use sampled::{DrawnDay, Sampled, Sampler, band_of};
pub use several::bands;
pub use usual::half_width;

use crate::plan::{Figure, Path, Plan};
use serde::{Deserialize, Serialize};

/// Low, likely and high of one number, in its own unit: 2.5, 50 and 97.5 % of drawn days, or
/// likely and two standard deviations to each side.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Band {
    /// By first order never below 0.
    pub low: f64,
    /// At every input's own value, or the middle of drawn days.
    pub likely: f64,
    /// Never below `likely`.
    pub high: f64,
}

impl Band {
    /// The same width about another likely value; not below nothing.
    #[must_use]
    pub fn about(self, likely: f64) -> Self {
        let moved = likely - self.likely;
        Self {
            low: (self.low + moved).max(0.0),
            likely,
            high: self.high + moved,
        }
    }
}

/// One input's part in a band.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Share {
    /// The input.
    pub field: Path,
    /// Hours (or of whatever the band is) lost when this input moves by its spread to the worse
    /// side, 0 or above.
    pub lost_h: f64,
    /// The same gained when it moves to the better side, 0 or above.
    pub gained_h: f64,
    /// Its share of the band's squared width, 0 to 100; all of them make 100.
    pub share_percent: f64,
}

/// The spread of a figure in per cent: its own, or the usual for its origin.
///
/// None for temperatures, whose spread is no share; see [`half_width`].
#[must_use]
pub fn percent_of(path: Path, figure: Figure) -> f64 {
    figure
        .spread_percent
        .unwrap_or_else(|| usual::usual_percent(path, figure.from))
}

/// A change too small to be more than rounding, as a share of the hours.
const LEAST_SHARE: f64 = 1e-9;

/// The band of `hours` at `plan`, and each input's part in it, largest first.
///
/// `hours` must answer the same for the same plan. Only the addresses given by
/// `paths` are moved; values are kept inside their accepted range.
#[must_use]
pub fn band(plan: &Plan, paths: &[Path], hours: impl Fn(&Plan) -> f64) -> (Band, Vec<Share>) {
    let likely = hours(plan);
    let mut moved = plan.clone();
    let mut shares = Vec::new();
    for &path in paths {
        let Some(figure) = plan.figure(path) else {
            continue;
        };
        let spread = half_width(path, figure);
        let (Some(range), true) = (path.range(), spread > 0.0) else {
            continue;
        };
        // Not `clamp`, here and in `chart`: what it says in a panic that cannot be
        // brings the printing of floats into the page, 6 kB.
        let mut change = |value: f64| {
            let stated = plan.stated(path);
            moved.set_figure(path, figure.with(value.max(range.min).min(range.max)));
            let changed = hours(&moved) - likely;
            match stated {
                Some(stated) => moved.set_figure(path, stated),
                None => moved.clear(path),
            };
            changed
        };
        let (down, up) = (change(figure.value - spread), change(figure.value + spread));
        let (lost_h, gained_h) = ((-down.min(up)).max(0.0), down.max(up).max(0.0));
        if lost_h.max(gained_h) > LEAST_SHARE * likely {
            shares.push(Share {
                field: path,
                lost_h,
                gained_h,
                share_percent: 0.0,
            });
        }
    }
    let (lost, gained) = (
        root_sum(&shares, |s| s.lost_h),
        root_sum(&shares, |s| s.gained_h),
    );
    let width = |share: &Share| (share.lost_h + share.gained_h).powi(2);
    let whole: f64 = shares.iter().map(width).sum();
    for share in &mut shares {
        share.share_percent = 100.0 * width(share) / whole;
    }
    largest_first(&mut shares);
    (
        Band {
            low: (likely - lost).max(0.0),
            likely,
            high: likely + gained,
        },
        shares,
    )
}

/// A dozen at the most: the plainest sort is the smallest.
fn largest_first(shares: &mut [Share]) {
    for end in 1..shares.len() {
        for at in (1..=end).rev() {
            if shares[at].share_percent > shares[at - 1].share_percent {
                shares.swap(at, at - 1);
            }
        }
    }
}

fn root_sum(shares: &[Share], of: impl Fn(&Share) -> f64) -> f64 {
    shares
        .iter()
        .map(|share| of(share).powi(2))
        .sum::<f64>()
        .sqrt()
}
