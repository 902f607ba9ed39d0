//! Finding the first time a thermostat's threshold is crossed.

use super::exact::{Mode, Phi};
use crate::search::{root, stepped};

/// A search for an event ends with a step this short, seconds. The steps are
/// cubic: the one that follows would be nearer its cube, far below the 4 us
/// (1e-9 h) that is promised.
const EVENT_S: f64 = 1e-4;

/// A sum of two modes and a straight line: a temperature less a threshold, or
/// a load less a capacity. Its first rise through zero is an event.
///
/// Its second derivative is two decaying exponentials, so it changes sign at
/// most once: that is what makes "the *first* crossing" findable for certain.
#[derive(Debug, Clone, Copy)]
pub(super) struct Curve {
    pub modes: [Mode; 2],
    pub weight: [f64; 2],
    pub base: f64,
    pub slope: f64,
}

/// Value and slope of a [`Curve`] at a time.
#[derive(Debug, Clone, Copy)]
struct Spot {
    t: f64,
    value: f64,
    rate: f64,
}

impl Curve {
    /// The first time in `0..=until` at which the curve comes up to zero.
    ///
    /// At once if it is above zero to begin with, or at zero and rising.
    /// `phi` holds the functions at `lambda until` of both modes.
    pub(super) fn first_rise(&self, until: f64, phi: &[Phi; 2]) -> Option<f64> {
        let start = self.start();
        if start.value > 0.0 || (start.value == 0.0 && start.rate > 0.0) {
            return Some(0.0);
        }
        let end = self.spot(until, phi);
        let (bend_0, bend_1) = (self.bend([1.0; 2]), self.bend([phi[0].e, phi[1].e]));
        if bend_0 * bend_1 >= 0.0 {
            return self.rise_between(start, end, bend_0 + bend_1 < 0.0);
        }
        let turn = self.spot_at(self.inflection(until));
        self.rise_between(start, turn, bend_0 < 0.0)
            .or_else(|| self.rise_between(turn, end, bend_1 < 0.0))
    }

    /// Where the second derivative vanishes, if it changes sign at all.
    fn inflection(&self, until: f64) -> f64 {
        let [a, b] = [0, 1].map(|i| self.weight[i] * self.modes[i].bend());
        let t = (-a / b).ln() / (self.modes[1].lambda - self.modes[0].lambda);
        if t > 0.0 && t < until { t } else { 0.5 * until }
    }

    /// First rise between two spots that have no inflection between them.
    fn rise_between(&self, from: Spot, to: Spot, hollow_down: bool) -> Option<f64> {
        if from.value >= 0.0 && from.rate > 0.0 {
            return Some(from.t);
        }
        if to.value >= 0.0 {
            return Some(self.solve(from, to.t));
        }
        // Below zero at both ends: only a hump between can reach it.
        if !(hollow_down && from.rate > 0.0 && to.rate < 0.0) {
            return None;
        }
        // A hump lies under its tangents, so under where they meet.
        let meet = (to.value - from.value + to.rate * (from.t - to.t)) / (from.rate - to.rate);
        if from.value + from.rate * meet < 0.0 {
            return None;
        }
        let top = self.crest(from.t, to.t);
        (self.spot_at(top).value >= 0.0).then(|| self.solve(from, top))
    }

    /// Time at which a hump turns: seldom needed.
    fn crest(&self, low: f64, high: f64) -> f64 {
        root(|t| -self.spot_at(t).rate, low, high)
    }

    /// The one rise between `from`, where the curve is below zero, and `high`,
    /// where it is not, by Halley's steps.
    fn solve(&self, from: Spot, high: f64) -> f64 {
        let of = |t: f64| {
            // Nearly every search begins at the start of a leg, where nothing has decayed.
            if t == 0.0 && from.t == 0.0 {
                return (from.value, parabola(from, self.bend([1.0; 2])));
            }
            let phi = self.modes.map(|mode| Phi::at(mode.lambda * t));
            let here = self.spot(t, &phi);
            (here.value, parabola(here, self.bend(phi.map(|phi| phi.e))))
        };
        stepped(of, (from.t, high), from.t, EVENT_S)
    }

    #[inline]
    fn start(&self) -> Spot {
        let (mut value, mut rate) = (self.base, self.slope);
        for (mode, weight) in self.modes.iter().zip(self.weight) {
            value += weight * mode.y;
            rate += weight * mode.rate(mode.y, 0.0);
        }
        Spot {
            t: 0.0,
            value,
            rate,
        }
    }

    /// Second derivative, given the decay of both modes so far.
    #[inline]
    fn bend(&self, e: [f64; 2]) -> f64 {
        self.weight[0] * self.modes[0].bend() * e[0] + self.weight[1] * self.modes[1].bend() * e[1]
    }

    fn spot_at(&self, t: f64) -> Spot {
        self.spot(t, &self.modes.map(|mode| Phi::at(mode.lambda * t)))
    }

    #[inline]
    fn spot(&self, t: f64, phi: &[Phi; 2]) -> Spot {
        let (mut value, mut rate) = (self.base + self.slope * t, self.slope);
        for ((mode, phi), weight) in self.modes.iter().zip(phi).zip(self.weight) {
            let y = mode.after(t, phi);
            value += weight * y;
            rate += weight * mode.rate(y, t);
        }
        Spot { t, value, rate }
    }
}

/// Step to where the parabola that fits the curve here rises through zero; to
/// where its tangent does, if the parabola never does. Not a number on a flat
/// curve, which the caller's bracket catches.
fn parabola(here: Spot, bend: f64) -> f64 {
    let root = (here.rate * here.rate - 2.0 * here.value * bend).sqrt();
    let step = -2.0 * here.value / (here.rate + root);
    if step.is_finite() {
        step
    } else {
        -here.value / here.rate
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn curve(fast: f64, slow: f64, slope: f64, base: f64) -> Curve {
        let decay = |lambda| Mode {
            y: 1.0,
            lambda,
            ..Mode::default()
        };
        Curve {
            modes: [decay(-1.0), decay(-0.1)],
            weight: [fast, slow],
            base,
            slope,
        }
    }

    fn rise(curve: &Curve, until: f64) -> Option<f64> {
        curve.first_rise(until, &curve.modes.map(|m| Phi::at(m.lambda * until)))
    }

    /// A hump that ends below zero again is seen, and its *first* crossing taken.
    #[test]
    fn hump_between_ends_is_found() {
        // -2 e^-t + e^-t/10 crosses zero at ln 2 / 0.9, peaks, and sinks.
        let hump = curve(-2.0, 1.0, 0.0, 0.0);
        assert!((rise(&hump, 3.0).unwrap() - 2.0_f64.ln() / 0.9).abs() < 1e-9);
        let low = curve(-2.0, 1.0, 0.0, -0.2);
        assert!(low.spot_at(0.0).value < 0.0 && low.spot_at(30.0).value < 0.0);
        let first = rise(&low, 30.0).unwrap();
        assert!(low.spot_at(first).value.abs() < 1e-9 && first < 3.0);
    }

    /// A hump that stays below zero is no event, nor is a fall from zero.
    #[test]
    fn no_event_without_a_rise() {
        assert_eq!(rise(&curve(-2.0, 1.0, 0.0, -0.9), 30.0), None);
        assert_eq!(rise(&curve(1.0, 1.0, 0.0, -2.0), 5.0), None);
    }
}
