//! What a measured watt-hour costs.

use crate::quantity::{Energy, in_watt_hours};

/// Prices in the currency of the price paid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cost {
    /// Per watt-hour measured.
    pub per_wh: f64,
    /// Per watt-hour that the depth of discharge leaves.
    pub per_usable_wh: f64,
    /// Kilowatt-hours over the cycle life.
    pub lifetime_kwh: f64,
    /// Per kilowatt-hour of these.
    pub per_lifetime_kwh: f64,
}

/// How a battery is used up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Life {
    /// Share of the capacity that is used, above 0 to 1.
    pub depth: f64,
    /// Cycles to the end, above 0 to 100,000.
    pub cycles: f64,
    /// Share of the capacity left by then, from 0 to 1; it falls evenly.
    pub left: f64,
}

/// The cost of a battery of this price and measured energy.
///
/// `None` for a price that is negative or not finite, for no energy, or for a
/// life outside its ranges.
///
/// ```
/// use till_morning::physics::bench::money::{Life, cost};
/// use till_morning::quantity::watt_hours;
/// let life = Life { depth: 0.8, cycles: 3000.0, left: 0.8 };
/// let cost = cost(699.0, watt_hours(4319.0), &life).unwrap();
/// assert_eq!(format!("{:.2}", cost.per_wh), "0.16");
/// ```
#[must_use]
pub fn cost(price: f64, measured: Energy, life: &Life) -> Option<Cost> {
    let wh = in_watt_hours(measured);
    let sound = price.is_finite()
        && price >= 0.0
        && wh > 0.0
        && wh.is_finite()
        && life.depth > 0.0
        && life.depth <= 1.0
        && life.cycles > 0.0
        && life.cycles <= 1e5
        && (0.0..=1.0).contains(&life.left);
    let usable_wh = wh * life.depth;
    let lifetime_kwh = usable_wh * life.cycles * 0.5 * (1.0 + life.left) / 1000.0;
    let cost = Cost {
        per_wh: price / wh,
        per_usable_wh: price / usable_wh,
        lifetime_kwh,
        per_lifetime_kwh: price / lifetime_kwh,
    };
    (sound && cost.per_lifetime_kwh.is_finite() && cost.per_usable_wh.is_finite()).then_some(cost)
}
