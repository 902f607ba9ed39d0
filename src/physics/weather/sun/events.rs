//! Sunrise, transit, sunset and twilight: located, not stepped.

use super::position;
use crate::physics::weather::date::Moment;
use crate::{physics::weather::site::Site, search::root};

/// A height of the sun that marks an event.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Horizon {
    /// The sun's upper edge on a level horizon.
    SunEdge,
    /// The end of civil twilight, when lamps are lit.
    CivilTwilight,
}

impl Horizon {
    /// True elevation of the sun's centre at the event, degrees.
    ///
    /// Source: Meeus, *Astronomical Algorithms*, chapter 15: 34 arc minutes of
    /// refraction and 16 of radius make -0.8333; civil twilight ends at -6.
    #[must_use]
    pub fn elevation_deg(self) -> f64 {
        match self {
            Self::SunEdge => -50.0 / 60.0,
            Self::CivilTwilight => -6.0,
        }
    }
}

/// What the sun does between two lower transits (midnights by the sundial).
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Daylight {
    /// The common case.
    RisesAndSets {
        /// The sun comes above the horizon.
        rise: Moment,
        /// The sun is due south or north, at its highest.
        transit: Moment,
        /// The sun goes below.
        set: Moment,
    },
    /// Polar day: it never goes below.
    UpAllDay {
        /// The sun at its highest.
        transit: Moment,
    },
    /// Polar night: it never comes above.
    DownAllDay {
        /// The sun at its least low.
        transit: Moment,
    },
}

/// The day's events around the transit nearest to a moment; give local noon.
///
/// Good to a few seconds in low latitudes for a level horizon and standard
/// air; refraction at the horizon alone varies by half a minute and more. On
/// the one or two days a year at the rim of polar day when the sun crosses on
/// one side only, the other side reads as the sundial's midnight.
#[must_use]
pub fn daylight(site: &Site, near_noon: Moment, horizon: Horizon) -> Daylight {
    let transit = nearest_transit(site, near_noon);
    let line_deg = horizon.elevation_deg();
    let height = |at: Moment| position(site, at).elevation_deg - line_deg;
    if height(transit) < 0.0 {
        return Daylight::DownAllDay { transit };
    }
    let (before, after) = (transit.shifted(-12.0), transit.shifted(12.0));
    let (dark_before, dark_after) = (height(before) < 0.0, height(after) < 0.0);
    if !dark_before && !dark_after {
        return Daylight::UpAllDay { transit };
    }
    Daylight::RisesAndSets {
        rise: if dark_before {
            crossing(before, transit, height)
        } else {
            before
        },
        transit,
        set: if dark_after {
            crossing(after, transit, height)
        } else {
            after
        },
    }
}

/// The transit nearest to a moment: the hour angle is driven to zero.
fn nearest_transit(site: &Site, near: Moment) -> Moment {
    // The hour angle gains 15 degrees an hour but for the sundial's drift of
    // 30 s a day, so each pass leaves a 3,000th of the error.
    (0..3).fold(near, |at, _| {
        at.shifted(-position(site, at).hour_angle_deg / 15.0)
    })
}

/// Where the height passes zero between a dark and a light moment, in either
/// order.
fn crossing(dark: Moment, light: Moment, height: impl Fn(Moment) -> f64) -> Moment {
    let apart_h = light.hours_since(dark);
    dark.shifted(apart_h * root(|share| height(dark.shifted(apart_h * share)), 0.0, 1.0))
}
