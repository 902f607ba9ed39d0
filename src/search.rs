//! Bracketed searches, each capped, so that they end whatever they are given.
//!
//! - [`search`]: where a monotone function takes a value, and that it does not
//! - [`root`]: the same of a rising function and zero, or the nearer end
//! - [`stepped`]: a root by steps that the function knows itself, Newton's or Halley's
//! - [`bisect`]: where a condition changes that is known to differ at the ends
//! - [`edge`]: the same where the ends have to be tried

/// What a search came to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Search {
    Found(f64),
    /// The target is not between the ends; their values.
    Outside {
        at_low: f64,
        at_high: f64,
    },
}

/// Evaluations at the most.
const MOST_STEPS: usize = 80;
/// Width of the last bracket, as a share of the value.
const WIDTH: f64 = 1e-11;
/// A value that far from the target, as a share of it, is beyond a jump.
const JUMP: f64 = 1e-6;

/// Where a monotone `of` takes the value `target` between two ends.
///
/// False position in the Illinois form, which keeps the bracket, with a halving
/// whenever it shrinks too slowly (as it does at a jump). Of a function that
/// jumps over the target, the side of the jump that is above it.
#[must_use]
pub fn search(of: impl Fn(f64) -> f64, low: f64, high: f64, target: f64) -> Search {
    let (mut a, mut b) = (low, high);
    let (mut fa, mut fb) = (of(a) - target, of(b) - target);
    // Not so for NaN either.
    let straddles = fa * fb <= 0.0;
    if !straddles {
        return Search::Outside {
            at_low: fa + target,
            at_high: fb + target,
        };
    }
    if fa == 0.0 {
        return Search::Found(a);
    }
    let mut width_before = (b - a).abs();
    for step in 0..MOST_STEPS {
        let width = (b - a).abs();
        if fb == 0.0 || width <= WIDTH * b.abs().max(1e-9) {
            break;
        }
        let halve = step % 2 == 1 && width > 0.5 * width_before;
        if step % 2 == 1 {
            width_before = width;
        }
        let straight = (a * fb - b * fa) / (fb - fa);
        // An end may be infinite: no straight line leads there.
        let c = if halve || !straight.is_finite() {
            0.5 * (a + b)
        } else {
            straight
        };
        let fc = of(c) - target;
        if fc * fb < 0.0 {
            (a, fa) = (b, fb);
        } else {
            fa *= 0.5;
        }
        (b, fb) = (c, fc);
    }
    // Then the last step may have landed on either side.
    let jumps = fb.abs() > JUMP * target.abs().max(1.0);
    Search::Found(if jumps && fb < 0.0 { a } else { b })
}

/// The root of a rising `of` between two ends; where it has none there, the end
/// nearer to it.
#[must_use]
pub fn root(of: impl Fn(f64) -> f64, low: f64, high: f64) -> f64 {
    match search(of, low, high, 0.0) {
        Search::Found(x) => x,
        Search::Outside { at_high, .. } if at_high < 0.0 => high,
        Search::Outside { .. } => low,
    }
}

/// The root of a rising function between two ends by steps that it knows itself.
///
/// `of` gives its value and the step from there to the root (of Newton's or
/// Halley's kind). A step that leaves the bracket is replaced by halving. It ends
/// behind the first step shorter than `within`: what follows would be nearer its
/// square or cube.
#[must_use]
#[inline]
pub fn stepped(
    of: impl Fn(f64) -> (f64, f64),
    (mut low, mut high): (f64, f64),
    start: f64,
    within: f64,
) -> f64 {
    let mut x = start;
    for _ in 0..MOST_STEPS {
        let (value, step) = of(x);
        if value < 0.0 {
            low = x;
        } else {
            high = x;
        }
        let next = x + step;
        if step.abs() < within || high - low < within {
            // No step is known on a flat: the middle then.
            return if next.is_nan() {
                0.5 * (low + high)
            } else {
                next.clamp(low, high)
            };
        }
        x = if next > low && next < high {
            next
        } else {
            0.5 * (low + high)
        };
    }
    x
}

/// Where a condition that holds from some value on first holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Edge {
    /// It does not hold at the near end, and does at `holds`, close behind `fails`.
    Between { fails: f64, holds: f64 },
    /// It holds at the near end already.
    FromTheStart,
    /// It does not hold at the far end.
    Nowhere,
}

/// Halvings at the most.
const MOST_HALVINGS: usize = 60;

/// The edge of a condition that fails near `near` and holds near `far`, which may
/// lie either way, to `within` (a share of the value if both ends are positive
/// and the far one is over a hundred times the other or less than a hundredth of
/// it; else as it stands). `holds` was tried and held, whatever happens between.
#[must_use]
pub fn edge(holds: impl Fn(f64) -> bool, near: f64, far: f64, within: f64) -> Edge {
    if holds(near) {
        return Edge::FromTheStart;
    }
    if !holds(far) {
        return Edge::Nowhere;
    }
    let is_wide = near > 0.0 && far > 0.0 && !(0.01..=100.0).contains(&(far / near));
    let (fails, holds) = narrow(holds, (near, far), within, is_wide);
    Edge::Between { fails, holds }
}

/// Both sides of the place where a condition changes that fails at one value and
/// holds at another, either way round: no further apart than `within`, or than
/// 60 halvings leave. The ends are not tried.
#[must_use]
pub fn bisect(
    holds: impl FnMut(f64) -> bool,
    fails_at: f64,
    holds_at: f64,
    within: f64,
) -> (f64, f64) {
    narrow(holds, (fails_at, holds_at), within, false)
}

/// Halves by ratio, and measures by it, where that `is_wide`.
fn narrow(
    mut holds: impl FnMut(f64) -> bool,
    (mut fails_at, mut holds_at): (f64, f64),
    within: f64,
    is_wide: bool,
) -> (f64, f64) {
    for _ in 0..MOST_HALVINGS {
        let apart = (holds_at - fails_at).abs();
        let scale = if is_wide { holds_at.abs() } else { 1.0 };
        // Not so for NaN either.
        let is_apart = apart > within * scale;
        if !is_apart {
            break;
        }
        let middle = if is_wide {
            (fails_at * holds_at).sqrt()
        } else {
            0.5 * (fails_at + holds_at)
        };
        if holds(middle) {
            holds_at = middle;
        } else {
            fails_at = middle;
        }
    }
    (fails_at, holds_at)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_roots_jumps_and_their_absence() {
        let Search::Found(x) = search(|x| x * x * x, 0.0, 10.0, 27.0) else {
            panic!()
        };
        assert!((x - 3.0).abs() < 1e-9);
        let Search::Found(x) = search(|x| 1.0 / x, 0.01, 1e6, 2.0) else {
            panic!()
        };
        assert!((x - 0.5).abs() < 1e-9);
        let Search::Found(x) = search(|x| if x < 2.0 { 0.0 } else { 9.0 }, 0.0, 10.0, 5.0) else {
            panic!()
        };
        assert!((2.0..2.0 + 1e-6).contains(&x), "{x}");
        assert_eq!(
            search(|x| x, 0.0, 1.0, 5.0),
            Search::Outside {
                at_low: 0.0,
                at_high: 1.0
            }
        );
        assert!(matches!(
            search(|_| f64::NAN, 0.0, 1.0, 5.0),
            Search::Outside { .. }
        ));
    }

    #[test]
    fn finds_the_edge_of_a_condition_from_either_side() {
        let Edge::Between { fails, holds } = edge(|x| x >= 3.2, 0.0, 10.0, 0.01) else {
            panic!()
        };
        assert!(fails < 3.2 && holds >= 3.2 && holds - fails <= 0.01);
        let Edge::Between { fails, holds } = edge(|x| x <= 7.0, 1e4, 0.1, 0.005) else {
            panic!()
        };
        assert!(fails > 7.0 && holds <= 7.0 && fails - holds <= 0.036);
        assert_eq!(edge(|_| true, 0.0, 1.0, 0.1), Edge::FromTheStart);
        assert_eq!(edge(|_| false, 0.0, 1.0, 0.1), Edge::Nowhere);
    }

    #[test]
    fn finds_the_root_or_the_nearer_end() {
        assert!((root(|x| x * x - 2.0, 0.0, 2.0) - 2f64.sqrt()).abs() < 1e-11);
        // Too much to say how much, from 3 on.
        let of = |x: f64| if x < 3.0 { x - 1.0 } else { f64::INFINITY };
        assert!((root(of, -100.0, 100.0) - 1.0).abs() < 1e-9);
        assert_eq!(root(|x| x, 1.0, 2.0), 1.0);
        assert_eq!(root(|x| x, -2.0, -1.0), -1.0);
        assert_eq!(root(|x| x, -2.0, 0.0), 0.0);
    }

    #[test]
    fn steps_to_the_root_and_halves_where_they_lead_out() {
        // Newton's for x^3 = 27; from 0.1 the first one lands at 900.
        let cube = |x: f64| (x * x * x - 27.0, -(x * x * x - 27.0) / (3.0 * x * x));
        assert!((stepped(cube, (0.0, 10.0), 0.1, 1e-6) - 3.0).abs() < 1e-12);
        // Of atan they fly apart from 3 on.
        let arc = |x: f64| (x.atan(), -x.atan() * (1.0 + x * x));
        assert!(stepped(arc, (-5.0, 40.0), 30.0, 1e-6).abs() < 1e-12);
        // No step is known: halving alone.
        let blind = |x: f64| (x - 2.0, f64::NAN);
        assert!((stepped(blind, (0.0, 9.0), 0.0, 1e-9) - 2.0).abs() < 1e-8);
    }

    #[test]
    fn halves_a_condition_either_way_round() {
        let (fails, holds) = bisect(|x| x > 0.3, 0.0, 1.0, 0.0);
        assert!(fails <= 0.3 && holds > 0.3 && holds - fails < 1e-15);
        let mut tried = 0;
        let count = |x: f64| {
            tried += 1;
            x < 0.3
        };
        let (fails, holds) = bisect(count, 1.0, 0.0, 1.0 / 1024.0);
        assert!(fails >= 0.3 && holds < 0.3 && fails - holds <= 1.0 / 1024.0);
        assert_eq!(tried, 10);
    }
}
