//! The wiring room against tables and worked examples published by others.
//!
//! One file a subject; the source stands beside each check.

#[path = "../support/vectors.rs"]
mod vectors;

mod ampacity;
mod choice;
mod copper;
mod drop;
mod network;
mod protection;
mod ventilation;

use till_morning::physics::wiring::{Awg, Size};
use till_morning::quantity::{Area, Length, feet, inches, square_inches};
use vectors::{near, near_share};

fn gauge(number: i8) -> Awg {
    Awg::new(number).expect("gauge of the table")
}

fn awg(number: i8) -> Size {
    Size::Awg(gauge(number))
}

/// An area in circular mils: that of a circle a thousandth of an inch across.
fn circular_mils(count: f64) -> Area {
    square_inches(count * std::f64::consts::FRAC_PI_4 * 1e-6)
}

fn in_circular_mils(area: Area) -> f64 {
    let one = circular_mils(1.0);
    (area / one).value
}

fn kilofeet(count: f64) -> Length {
    feet(1000.0 * count)
}

#[test]
fn a_circular_mil_is_what_it_says() {
    let wire = inches(0.032);
    let area = wire * wire * std::f64::consts::FRAC_PI_4;
    near(in_circular_mils(area), 1024.0, 1e-9);
}
