//! Linear stores, solved exactly.
//!
//! A linear network driven by inputs that run straight between two instants
//! has a closed solution. Turned to its own modes, each obeys
//! `y' = lambda y + u + v t`, whose solution, integral and slopes need only
//! the functions `e^z`, `phi1`, `phi2`, `phi3` of `z = lambda t`:
//!
//! ```text
//! phi1 = (e^z - 1) / z,  phi2 = (phi1 - 1) / z,  phi3 = (phi2 - 1/2) / z
//! y(t)       = y0 e^z    + t phi1 u    + t^2 phi2 v
//! integral y = y0 t phi1 + t^2 phi2 u  + t^3 phi3 v
//! ```
//!
//! Source: Hochbruck and Ostermann, "Exponential integrators", Acta Numerica
//! 19 (2010), section 2.1.

/// Below this the functions are summed as series: the recurrences cancel.
const SERIES_BELOW: f64 = 0.5;
/// Events are located to this, seconds (a hundredth of what is promised).
const EVENT_S: f64 = 1e-9;

/// `e^z` and the first three phi functions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Phi {
    pub e: f64,
    pub p1: f64,
    pub p2: f64,
    pub p3: f64,
}

impl Phi {
    /// The functions at `z`; modes decay, so `z` is seldom above zero.
    pub(super) fn at(z: f64) -> Self {
        if z.abs() < SERIES_BELOW {
            let p3 = phi3_series(z);
            let p2 = 0.5 + z * p3;
            let p1 = 1.0 + z * p2;
            let e = 1.0 + z * p1;
            return Self { e, p1, p2, p3 };
        }
        let e = z.exp();
        let p1 = (e - 1.0) / z;
        let p2 = (p1 - 1.0) / z;
        let p3 = (p2 - 0.5) / z;
        Self { e, p1, p2, p3 }
    }
}

/// `phi3` as the sum of `z^k / (k + 3)!`, to the last digit below one half.
fn phi3_series(z: f64) -> f64 {
    // 1 / (k + 3)! for k from 11 down to 0.
    const TERMS: [f64; 12] = [
        1.147_074_559_772_972_5e-11,
        1.605_904_383_682_161_5e-10,
        2.087_675_698_786_81e-9,
        2.505_210_838_544_172e-8,
        2.755_731_922_398_589e-7,
        2.755_731_922_398_589_3e-6,
        2.480_158_730_158_73e-5,
        1.984_126_984_126_984e-4,
        1.388_888_888_888_889e-3,
        8.333_333_333_333_333e-3,
        4.166_666_666_666_666_4e-2,
        1.666_666_666_666_666_6e-1,
    ];
    TERMS.iter().fold(0.0, |sum, term| sum * z + term)
}

/// One mode over one segment: `y' = lambda y + u + v t` from `y` at `t = 0`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Mode {
    pub y: f64,
    pub lambda: f64,
    pub u: f64,
    pub v: f64,
}

impl Mode {
    /// `y` after `t`; `phi` at `lambda t`.
    #[inline]
    pub(super) fn after(&self, t: f64, phi: &Phi) -> f64 {
        self.y * phi.e + t * (phi.p1 * self.u + t * phi.p2 * self.v)
    }

    /// Integral of `y` from 0 to `t`.
    #[inline]
    pub(super) fn integral(&self, t: f64, phi: &Phi) -> f64 {
        t * (self.y * phi.p1 + t * (phi.p2 * self.u + t * phi.p3 * self.v))
    }

    /// `y'` at `t`, given `y` there.
    #[inline]
    fn rate(&self, y: f64, t: f64) -> f64 {
        self.lambda * y + self.u + self.v * t
    }

    /// `y''` at 0; at `t` it is this times `e^(lambda t)`.
    #[inline]
    fn bend(&self) -> f64 {
        self.lambda * self.rate(self.y, 0.0) + self.v
    }
}

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
        let bend = |e0: f64, e1: f64| {
            self.weight[0] * self.modes[0].bend() * e0 + self.weight[1] * self.modes[1].bend() * e1
        };
        let (bend_0, bend_1) = (bend(1.0, 1.0), bend(phi[0].e, phi[1].e));
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
            return Some(self.solve(from.t, to.t));
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
        (self.spot_at(top).value >= 0.0).then(|| self.solve(from.t, top))
    }

    /// Time at which a hump turns, by halving: seldom needed.
    fn crest(&self, mut low: f64, mut high: f64) -> f64 {
        for _ in 0..60 {
            let mid = 0.5 * (low + high);
            if self.spot_at(mid).rate > 0.0 {
                low = mid;
            } else {
                high = mid;
            }
        }
        low
    }

    /// The one rise between `low`, where the curve is below zero, and `high`,
    /// where it is not: Newton's steps, halving where they leave the bracket.
    fn solve(&self, mut low: f64, mut high: f64) -> f64 {
        let start = self.spot_at(low);
        // The chord is a poor guess on a bend, the tangent a good one nearby.
        let mut t = low - start.value / start.rate;
        for _ in 0..80 {
            if !(t > low && t < high) {
                t = 0.5 * (low + high);
            }
            let here = self.spot_at(t);
            if here.value < 0.0 {
                low = t;
            } else {
                high = t;
            }
            let next = t - here.value / here.rate;
            if (next - t).abs() < EVENT_S || high - low < EVENT_S {
                return next.clamp(low, high);
            }
            t = next;
        }
        high
    }

    fn start(&self) -> Spot {
        let unit = Phi::at(0.0);
        self.spot(0.0, &[unit, unit])
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

#[cfg(test)]
mod tests {
    use super::*;

    /// Series and recurrences agree where they meet, and the series with the
    /// definitions at a z where these are still good.
    #[test]
    fn phi_is_smooth() {
        for sign in [-1.0, 1.0] {
            let (inside, outside) = (
                Phi::at(sign * (SERIES_BELOW - 1e-12)),
                Phi::at(sign * (SERIES_BELOW + 1e-12)),
            );
            assert!((inside.e - outside.e).abs() < 1e-11);
            assert!((inside.p1 - outside.p1).abs() < 1e-11);
            assert!((inside.p2 - outside.p2).abs() < 1e-11);
            assert!((inside.p3 - outside.p3).abs() < 1e-11);
        }
        assert!((Phi::at(-0.25).e - (-0.25_f64).exp()).abs() < 1e-16);
        assert_eq!(Phi::at(0.0).p3, 1.0 / 6.0);
    }

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
