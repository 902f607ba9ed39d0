//! The operating point of one source and the branches on its bars.
//!
//! A source (volts behind a resistance) feeds bars; each branch hangs on them
//! behind a resistance of its own. Constant power draws more amps as volts
//! fall, so the point solves a quadratic in each branch and a concave equation
//! on the bars; where no current can carry the power there is no point.
//!
//! Bare numbers: this is the innermost loop of every run.

/// What a branch takes at the far end of its own resistance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Load {
    Power {
        w: f64,
    },
    /// Negative: a charger that gives.
    Current {
        a: f64,
    },
    Resistor {
        ohm: f64,
    },
}

/// A load behind a resistance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Branch {
    pub ohm: f64,
    pub load: Load,
}

impl Branch {
    #[must_use]
    pub const fn power(w: f64, ohm: f64) -> Self {
        Self {
            ohm,
            load: Load::Power { w },
        }
    }
    #[must_use]
    pub const fn current(a: f64, ohm: f64) -> Self {
        Self {
            ohm,
            load: Load::Current { a },
        }
    }

    /// Amps at a voltage on the bars, and how they change with it (A/V).
    /// Nothing where the branch's own resistance lets no current carry it.
    fn amps(&self, bar_v: f64) -> Option<(f64, f64)> {
        match self.load {
            Load::Current { a } => Some((a, 0.0)),
            Load::Resistor { ohm } => Some((bar_v / (ohm + self.ohm), 1.0 / (ohm + self.ohm))),
            Load::Power { w } => {
                // V I = w + R I²; the smaller root, written so that R = 0 is no case.
                let root = (bar_v * bar_v - 4.0 * self.ohm * w).sqrt();
                let amps = 2.0 * w / (bar_v + root);
                (root > 0.0).then_some((amps, -amps / root))
            }
        }
    }

    /// Amps from the bars when they stand at `bar_v`; 0 where none carry it.
    #[must_use]
    pub fn amps_at(&self, bar_v: f64) -> f64 {
        self.amps(bar_v).map_or(0.0, |(amps, _)| amps)
    }

    /// Whether any volts are left at the load: a constant current behind a long
    /// cable could ask for more than there are.
    fn has_volts(&self, bar_v: f64) -> bool {
        match self.load {
            Load::Current { a } => bar_v - self.ohm * a > 0.0,
            Load::Power { .. } | Load::Resistor { .. } => true,
        }
    }

    /// Watts at the load when the bars stand at `bar_v`.
    #[must_use]
    pub fn taker_w(&self, bar_v: f64) -> f64 {
        self.amps(bar_v)
            .map_or(0.0, |(amps, _)| (bar_v - self.ohm * amps) * amps)
    }

    /// Volts at the load when the bars stand at `bar_v`.
    #[must_use]
    pub fn taker_v(&self, bar_v: f64) -> f64 {
        bar_v - self.ohm * self.amps(bar_v).map_or(0.0, |(amps, _)| amps)
    }
}

/// Where the circuit settles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    pub bar_v: f64,
    pub amps: f64,
    /// By how much the amps change with the source's own volts, A/V.
    pub amps_per_v: f64,
}

/// What stands between a source's own volts and the bars.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inner {
    pub ohm: f64,
    /// What it drops beyond its resistance while it gives.
    pub sag: Option<Sag>,
}

/// A drop that is not in proportion to the current: `ohm I + tafel asinh(I / exchange)`,
/// and a gap that is there at any current above `gap_a`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sag {
    pub ohm: f64,
    pub tafel_v: f64,
    pub exchange_a: f64,
    pub gap_v: f64,
    pub gap_a: f64,
}

impl Sag {
    fn hypotenuse_a(&self, amps: f64) -> f64 {
        (amps * amps + self.exchange_a * self.exchange_a).sqrt()
    }
}

impl From<f64> for Inner {
    /// A resistance alone.
    fn from(ohm: f64) -> Self {
        Self { ohm, sag: None }
    }
}

impl Inner {
    /// Volts dropped at a current, and how they change with it; the gap left out.
    fn drop(&self, amps: f64) -> (f64, f64) {
        match self.sag {
            Some(sag) if amps > 0.0 => {
                let ohm = self.ohm + sag.ohm;
                let hypotenuse_a = sag.hypotenuse_a(amps);
                // asinh, for positive currents, from the root that the slope takes too.
                let over = sag.tafel_v * ((amps + hypotenuse_a) / sag.exchange_a).ln();
                (ohm * amps + over, ohm + sag.tafel_v / hypotenuse_a)
            }
            _ => (self.ohm * amps, self.ohm),
        }
    }

    /// How the volts dropped change with the current; the gap left out.
    fn drop_per_a(&self, amps: f64) -> f64 {
        match self.sag {
            Some(sag) if amps > 0.0 => self.ohm + sag.ohm + sag.tafel_v / sag.hypotenuse_a(amps),
            _ => self.ohm,
        }
    }

    /// The gap at a current, and how it changes with it.
    fn gap(&self, amps: f64) -> (f64, f64) {
        match self.sag {
            Some(Sag { gap_v, gap_a, .. }) if amps > 0.0 && gap_v > 0.0 => {
                let whole = amps + gap_a;
                (gap_v * amps / whole, gap_v * gap_a / (whole * whole))
            }
            _ => (0.0, 0.0),
        }
    }

    /// The current that stands between the source's own volts and volts at the bars;
    /// negative where it is charged.
    #[must_use]
    pub fn amps_between(&self, ocv_v: f64, bar_v: f64) -> f64 {
        let drop_v = ocv_v - bar_v;
        if self.sag.is_none() || drop_v <= 0.0 {
            return drop_v / self.ohm;
        }
        // The drop rises ever less steeply: from no current up, Newton's steps stay
        // below the root.
        let mut amps = 0.0;
        for _ in 0..MOST_STEPS {
            let (drop, gap) = (self.drop(amps), self.gap(amps));
            let slope = if amps > 0.0 {
                drop.1 + gap.1
            } else {
                self.slope_at_rest()
            };
            let step = (drop_v - drop.0 - gap.0) / slope;
            amps += step;
            if step <= 1e-13 * amps {
                break;
            }
        }
        amps
    }

    fn slope_at_rest(&self) -> f64 {
        self.sag.map_or(self.ohm, |sag| {
            let gap = if sag.gap_v > 0.0 {
                sag.gap_v / sag.gap_a
            } else {
                0.0
            };
            self.ohm + sag.ohm + sag.tafel_v / sag.exchange_a + gap
        })
    }
}

/// Enough for quadratic convergence from anywhere above the root.
const MOST_STEPS: usize = 60;

/// The operating point: the higher of the two voltages that satisfy it.
///
/// `ocv_v` behind `inner` feeds `branches`. Nothing where no current carries the
/// power. Relative error below 1e-12.
///
/// A gap is taken at the current that flows without it (of which it changes little),
/// so that a current near nothing finds no cliff.
#[must_use]
pub fn settle(ocv_v: f64, inner: impl Into<Inner>, branches: &[Branch]) -> Option<Point> {
    let inner = inner.into();
    let given = |branch: &Branch| match branch.load {
        Load::Current { a } => (-a).max(0.0),
        _ => 0.0,
    };
    let above_v = ocv_v + inner.ohm * branches.iter().map(given).sum::<f64>();
    let first = settle_smooth(ocv_v, &inner, branches, above_v)?;
    let (gap_v, per_a) = inner.gap(first.amps);
    if gap_v <= 0.0 {
        return Some(first);
    }
    // With less behind them the bars stand lower.
    let second = settle_smooth(ocv_v - gap_v, &inner, branches, first.bar_v)?;
    Some(Point {
        amps_per_v: second.amps_per_v * (1.0 - per_a * first.amps_per_v),
        ..second
    })
}

/// A step so small, of volts, where the balance falls so much, leaves an error of its
/// square: below the rounding.
const LAST_STEP: f64 = 1e-7;
const WELL_FALLING: f64 = 0.5;

/// Newton from above: the balance `emf - drop(amps(v)) - v` is concave in `v`
/// and negative above the wanted root, so each step stays above it. A slope
/// that is no longer falling means the summit was passed: there is no root.
fn settle_smooth(ocv_v: f64, inner: &Inner, branches: &[Branch], above_v: f64) -> Option<Point> {
    let mut bar_v = above_v;
    for _ in 0..MOST_STEPS {
        let (amps, slope) = total(branches, bar_v)?;
        let (drop_v, ohm) = inner.drop(amps);
        let balance = ocv_v - drop_v - bar_v;
        let falling = 1.0 + ohm * slope;
        if falling <= 0.0 || bar_v <= 0.0 {
            return None;
        }
        let step = balance / falling;
        bar_v += step;
        // Every true step goes down. One up is rounding: the root is met, also
        // where it is nearly double and no step gets as small as the other test.
        let least = if falling > WELL_FALLING {
            LAST_STEP
        } else {
            1e-13
        };
        if step >= -least * bar_v.abs() {
            let (amps, slope) = total(branches, bar_v)?;
            let carried = branches.iter().all(|branch| branch.has_volts(bar_v));
            let amps_per_v = slope / (1.0 + inner.drop_per_a(amps) * slope);
            return (bar_v > 0.0 && carried).then_some(Point {
                bar_v,
                amps,
                amps_per_v,
            });
        }
    }
    None
}

/// Amps of all branches at a voltage on the bars, and how they change with it.
fn total(branches: &[Branch], bar_v: f64) -> Option<(f64, f64)> {
    branches
        .iter()
        .try_fold((0.0, 0.0), |(amps, slope), branch| {
            let of_branch = branch.amps(bar_v)?;
            Some((amps + of_branch.0, slope + of_branch.1))
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn constant_power_is_the_quadratic() {
        // 13.2 V behind 10 mΩ giving 300 W: I = (E - sqrt(E² - 4RP)) / 2R.
        let point = settle(13.2, 0.01, &[Branch::power(300.0, 0.0)]).unwrap();
        let amps = (13.2 - (13.2f64 * 13.2 - 12.0).sqrt()) / 0.02;
        assert!((point.amps - amps).abs() < 1e-9);
        assert!((point.bar_v * point.amps - 300.0).abs() < 1e-9);
    }

    #[test]
    fn power_that_no_current_carries_has_no_point() {
        // The most that 12 V behind 0.1 Ω can give is E² / 4R = 360 W.
        assert!(settle(12.0, 0.1, &[Branch::power(359.0, 0.0)]).is_some());
        assert!(settle(12.0, 0.1, &[Branch::power(361.0, 0.0)]).is_none());
        assert!(settle(12.0, 0.0, &[Branch::power(361.0, 0.1)]).is_none());
        assert!(settle(f64::NAN, 0.1, &[Branch::power(1.0, 0.0)]).is_none());
        // 10 A through 1.3 Ω need 13 V, and a point with any left at the end.
        assert!(settle(13.1, 0.0, &[Branch::current(10.0, 1.3)]).is_some());
        assert!(settle(12.9, 0.0, &[Branch::current(10.0, 1.3)]).is_none());
    }

    #[test]
    fn the_most_that_can_be_carried_is_met_closely() {
        // E² = 4 R P: just above there is a point, just below there is none.
        let unit = [Branch::power(320.0, 0.06)];
        let summit_v = f64::sqrt(4.0 * 0.1 * 320.0);
        for share in [1e-4, 1e-6, 1e-8, 1e-10, 1e-12] {
            let point = settle(summit_v * (1.0 + share), 0.04, &unit);
            let unit_v = unit[0].taker_v(point.unwrap().bar_v);
            assert!(
                (unit_v / summit_v - 0.5).abs() < 2.0 * share.sqrt(),
                "{share}"
            );
            assert_eq!(
                settle(summit_v * (1.0 - share), 0.04, &unit),
                None,
                "{share}"
            );
        }
    }
}
