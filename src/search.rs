//! Bracketed root search, capped, with a typed answer when there is none.

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
        let c = if halve {
            0.5 * (a + b)
        } else {
            (a * fb - b * fa) / (fb - fa)
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
}
