//! A point on the ground.

use super::{Input, OutOfRange, within};

/// A point on the ground, its fields checked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_m: f64,
}

impl Site {
    /// A site.
    ///
    /// - `latitude_deg`: -90 to 90, north positive
    /// - `longitude_deg`: -180 to 180, east positive
    /// - `altitude_m`: -450 to 6,000 metres above the sea
    ///
    /// # Errors
    /// The first field out of its range.
    ///
    /// # Examples
    /// ```
    /// use till_morning::physics::weather::site::Site;
    /// assert!(Site::new(40.7, -112.2, 1_280.0).is_ok()); // beside a salt lake
    /// assert!(Site::new(-112.2, 40.7, 1_280.0).is_err()); // the two swapped
    /// ```
    pub fn new(latitude_deg: f64, longitude_deg: f64, altitude_m: f64) -> Result<Self, OutOfRange> {
        Ok(Self {
            latitude_deg: within(Input::Latitude, latitude_deg, -90.0, 90.0)?,
            longitude_deg: within(Input::Longitude, longitude_deg, -180.0, 180.0)?,
            altitude_m: within(Input::Altitude, altitude_m, -450.0, 6_000.0)?,
        })
    }

    /// Latitude, degrees, north positive.
    #[must_use]
    pub fn latitude_deg(&self) -> f64 {
        self.latitude_deg
    }

    /// Longitude, degrees, east positive.
    #[must_use]
    pub fn longitude_deg(&self) -> f64 {
        self.longitude_deg
    }

    /// Altitude above the sea, metres.
    #[must_use]
    pub fn altitude_m(&self) -> f64 {
        self.altitude_m
    }

    /// Mean air pressure at the site's altitude, pascals.
    ///
    /// Source: U.S. Standard Atmosphere 1976, troposphere, in the closed form
    /// of the WMO instruments guide (WMO-No. 8): `p^0.1902632` is linear in height.
    #[must_use]
    pub fn pressure_pa(&self) -> f64 {
        100.0 * ((44_331.514 - self.altitude_m) / 11_880.516).powf(1.0 / 0.190_263_2)
    }
}
