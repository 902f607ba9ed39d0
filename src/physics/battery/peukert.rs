//! Lead-acid capacity against current, in the rated-hour form.
//!
//! `t = H (C / (I H))^k`: a bank rated `C` over `H` hours lasts `H` at `C / H`
//! and less than in proportion above. The other form in use, `t = C' / I^k`,
//! takes the capacity at one ampere; the two must never be mixed (14.5 h
//! against 20 h for 100 Ah at 5 A with k = 1.2).
//!
//! Peukert's exponent is not constant across rates: from a published rate table
//! 1.17 between 5 and 20 h, 1.07 between 20 and 100 h. Below the rated current
//! no more than the rated Ah is promised.

/// Capacity as a share of the rated one, at `current` times the rated current.
///
/// One at or below the rated current; falling as `ratio^(1-k)` above it.
#[must_use]
pub fn share_of_rated(current_ratio: f64, exponent: f64) -> f64 {
    if current_ratio <= 1.0 || exponent <= 1.0 {
        1.0
    } else {
        current_ratio.powf(1.0 - exponent)
    }
}
