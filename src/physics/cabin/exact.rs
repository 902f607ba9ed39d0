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
    #[inline]
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
///
/// Even and odd powers go side by side: half the waiting of one long chain.
#[inline]
fn phi3_series(z: f64) -> f64 {
    // 1 / (k + 3)! for k even, then odd, from 10 and 11 down.
    const EVEN: [f64; 6] = [
        1.605_904_383_682_161_5e-10,
        2.505_210_838_544_172e-8,
        2.755_731_922_398_589_3e-6,
        1.984_126_984_126_984e-4,
        8.333_333_333_333_333e-3,
        1.666_666_666_666_666_6e-1,
    ];
    const ODD: [f64; 6] = [
        1.147_074_559_772_972_5e-11,
        2.087_675_698_786_81e-9,
        2.755_731_922_398_589e-7,
        2.480_158_730_158_73e-5,
        1.388_888_888_888_889e-3,
        4.166_666_666_666_666_4e-2,
    ];
    let square = z * z;
    let sum = |terms: [f64; 6]| terms.iter().fold(0.0, |sum, term| sum * square + term);
    sum(EVEN) + z * sum(ODD)
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
    pub(super) fn rate(&self, y: f64, t: f64) -> f64 {
        self.lambda * y + self.u + self.v * t
    }

    /// `y''` at 0; at `t` it is this times `e^(lambda t)`.
    #[inline]
    pub(super) fn bend(&self) -> f64 {
        self.lambda * self.rate(self.y, 0.0) + self.v
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
}
