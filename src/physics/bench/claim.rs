//! A verdict on each claim.
//!
//! A figure y with expanded uncertainty U (95.45 %) is held against what is
//! claimed. A verdict is given only where the whole interval y - U to y + U
//! agrees with it: JCGM 106:2012, acceptance and rejection with a guard band as
//! wide as U (8.3). What gaps in a log may hold widens the interval.

use super::measured::{Measured, Shrinks, Source};
use crate::quantity::Time;

/// Which way is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Better {
    /// A capacity, an airflow.
    Higher,
    /// A draw.
    Lower,
    /// Neither; the figure should be met.
    Neither,
}

/// One claimed figure, in the unit of the measured one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Claim {
    /// The figure.
    pub value: f64,
    /// What it may be off by either way, where the claim says so; a width, not
    /// a share.
    pub tolerance: Option<f64>,
    /// Which way is better.
    pub better: Better,
}

/// What is said of a claimed figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Better than claimed, all of the interval.
    BeatsIt,
    /// Worse than claimed, all of the interval.
    FallsShort,
    /// Within the tolerance of the claim, all of the interval.
    MeetsIt,
    /// The interval allows more than one of these.
    TooCloseToCall,
}

/// What is said of a claimed range.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RangeVerdict {
    /// In the range, all of the interval.
    Inside,
    /// Below the range, all of the interval.
    OutsideBelow,
    /// Above the range, all of the interval.
    OutsideAbove,
    /// The interval crosses an end of the range.
    TooCloseToCall,
}

/// A verdict with what it rests on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Judged<V> {
    /// The verdict.
    pub verdict: V,
    /// The interval, `None` when no accuracy can be claimed: pulses between
    /// the rows, or a number that is not finite.
    pub interval: Option<(f64, f64)>,
}

/// The interval that the verdict must hold for.
#[must_use]
pub fn interval(measured: &Measured) -> Option<(f64, f64)> {
    let expanded = measured.expanded()?;
    let (least, most) = measured.unseen;
    let low = measured.value - expanded + least.min(0.0);
    let high = measured.value + expanded + most.max(0.0);
    (low.is_finite() && high.is_finite()).then_some((low, high))
}

/// Holds a figure against a claimed one.
///
/// In this order:
/// - *bears it out*: there is a tolerance, and the interval lies within it;
/// - *beats it*: the interval lies on the better side of the claim;
/// - *falls short*: it lies on the worse side, of the claim's tolerance where it
///   has one. A figure 3 % low does not fall short of a claim of plus or minus
///   5 %. Where neither way is better, either side is the worse;
/// - else *too close to call*.
///
/// ```
/// use till_morning::physics::bench::claim::{Better, Claim, Verdict, judge};
/// use till_morning::physics::bench::measured::Measured;
/// let claim = Claim { value: 4096.0, tolerance: None, better: Better::Higher };
/// // 4319 Wh, good to 60 Wh at k = 2, for a claimed 4096.
/// assert_eq!(judge(&Measured::known(4319.0, 30.0), &claim).verdict, Verdict::BeatsIt);
/// // Good to 300 Wh only, the same figure decides nothing.
/// assert_eq!(judge(&Measured::known(4319.0, 150.0), &claim).verdict, Verdict::TooCloseToCall);
/// ```
#[must_use]
pub fn judge(measured: &Measured, claim: &Claim) -> Judged<Verdict> {
    let tolerance = claim.tolerance.filter(|t| t.is_finite()).map(f64::abs);
    let slack = tolerance.unwrap_or(0.0);
    let Some((low, high)) = interval(measured).filter(|_| claim.value.is_finite()) else {
        return Judged {
            verdict: Verdict::TooCloseToCall,
            interval: None,
        };
    };
    let (above, below) = (low > claim.value, high < claim.value);
    let (too_high, too_low) = (low > claim.value + slack, high < claim.value - slack);
    let within = tolerance.is_some() && low >= claim.value - slack && high <= claim.value + slack;
    let (beats, short) = match claim.better {
        Better::Higher => (above, too_low),
        Better::Lower => (below, too_high),
        Better::Neither => (false, too_low || too_high),
    };
    let verdict = match () {
        () if within => Verdict::MeetsIt,
        () if beats => Verdict::BeatsIt,
        () if short => Verdict::FallsShort,
        () => Verdict::TooCloseToCall,
    };
    Judged {
        verdict,
        interval: Some((low, high)),
    }
}

/// Holds a figure against a claimed range; its ends in either order.
#[must_use]
pub fn judge_range(measured: &Measured, ends: (f64, f64)) -> Judged<RangeVerdict> {
    let (from, to) = (ends.0.min(ends.1), ends.0.max(ends.1));
    let sound = ends.0.is_finite() && ends.1.is_finite();
    let Some((low, high)) = interval(measured).filter(|_| sound) else {
        return Judged {
            verdict: RangeVerdict::TooCloseToCall,
            interval: None,
        };
    };
    let verdict = match () {
        () if high < from => RangeVerdict::OutsideBelow,
        () if low > to => RangeVerdict::OutsideAbove,
        () if low >= from && high <= to => RangeVerdict::Inside,
        () => RangeVerdict::TooCloseToCall,
    };
    Judged {
        verdict,
        interval: Some((low, high)),
    }
}

/// The figure as a share of the claim: 1.054 is 105.4 %. `None` of a claim of
/// zero or of what is not finite.
#[must_use]
pub fn share_of_claim(measured: f64, claimed: f64) -> Option<f64> {
    let share = measured / claimed;
    (claimed != 0.0 && share.is_finite()).then_some(share)
}

/// What would make a verdict decisive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Decisive {
    /// The expanded uncertainty that must be reached, in the unit of the figure.
    pub expanded: f64,
    /// Measuring this long in all; `None` where no time suffices.
    pub minutes: Option<f64>,
    /// A meter whose limit is at most this, in the unit of the figure, and all
    /// else as it is; `None` where no meter suffices.
    pub meter_limit: Option<f64>,
}

/// What would make the verdict on a claimed figure decisive; `None` when it is
/// so already, or when the figure lies on the edge, where nothing helps.
#[must_use]
pub fn decisive(measured: &Measured, claim: &Claim) -> Option<Decisive> {
    if judge(measured, claim).verdict != Verdict::TooCloseToCall || !claim.value.is_finite() {
        return None;
    }
    let (y, c) = (measured.value, claim.value);
    let Some(slack) = claim.tolerance.filter(|t| t.is_finite()).map(f64::abs) else {
        return remedy(measured, (y - c).abs());
    };
    let to_edges = ((y - (c - slack)).abs()).min((y - (c + slack)).abs());
    let to_claim = match claim.better {
        Better::Higher => y - c,
        Better::Lower => c - y,
        Better::Neither => 0.0,
    };
    remedy(measured, to_edges.max(to_claim))
}

/// The same for a claimed range.
#[must_use]
pub fn decisive_range(measured: &Measured, ends: (f64, f64)) -> Option<Decisive> {
    if judge_range(measured, ends).verdict != RangeVerdict::TooCloseToCall {
        return None;
    }
    let distance = (measured.value - ends.0)
        .abs()
        .min((measured.value - ends.1).abs());
    remedy(measured, distance)
}

/// What would bring the expanded uncertainty under `distance`.
/// The meter is changed alone, or the time is: each is a remedy by itself. The
/// coverage factor is kept as it is, which is a little strict where more time
/// would also bring more degrees of freedom.
fn remedy(measured: &Measured, distance: f64) -> Option<Decisive> {
    let known = measured.expanded().is_some();
    if !(known && distance > 0.0 && distance.is_finite()) {
        return None;
    }
    // A little inside, for an interval that touches the edge decides nothing.
    let wanted = 0.999 * distance / measured.coverage();
    let sum = |keep: &dyn Fn(&super::measured::Part) -> bool| -> f64 {
        measured
            .parts
            .iter()
            .filter(|p| keep(p))
            .map(|p| p.standard * p.standard)
            .sum()
    };
    let left = wanted * wanted - sum(&|p| p.source != Source::Meter);
    let meter_limit = (left > 0.0).then(|| (3.0 * left).sqrt());
    let fixed = sum(&|p| p.shrinks == Shrinks::Never) - wanted * wanted;
    let by_time = sum(&|p| p.shrinks == Shrinks::WithTime);
    let by_root = sum(&|p| p.shrinks == Shrinks::WithRootOfTime);
    let longer = times_longer(fixed, by_root, by_time);
    let minutes = longer
        .zip(measured.lasted)
        .map(|(times, lasted): (f64, Time)| times * crate::quantity::in_minutes(lasted));
    Some(Decisive {
        expanded: distance,
        minutes,
        meter_limit,
    })
}

/// The least `n >= 1` with `fixed + by_root / n + by_time / n^2 <= 0`.
fn times_longer(fixed: f64, by_root: f64, by_time: f64) -> Option<f64> {
    if fixed >= 0.0 {
        return None;
    }
    // In 1/n the root of a quadratic, written so that nothing cancels.
    let below = by_root + (by_root * by_root - 4.0 * by_time * fixed).sqrt();
    let n = below / (-2.0 * fixed);
    n.is_finite().then_some(n.max(1.0))
}
