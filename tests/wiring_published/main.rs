//! The wiring room against tables and worked examples published by others.
//!
//! One file a subject; the source stands beside each check.

mod ampacity;
mod choice;
mod copper;
mod drop;
mod network;
mod protection;
mod ventilation;

use till_morning::physics::wiring::{Awg, Size};
use till_morning::quantity::{Area, Length, feet, inches, square_inches};

/// Within an absolute tolerance, naming both numbers if not.
#[track_caller]
fn near(found: f64, published: f64, tolerance: f64) {
    assert!(
        (found - published).abs() <= tolerance,
        "found {found}, published {published}, tolerance {tolerance}"
    );
}

/// Within a tolerance relative to the published number.
#[track_caller]
fn near_share(found: f64, published: f64, share: f64) {
    near(found, published, published.abs() * share);
}

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
