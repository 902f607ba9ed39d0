//! Hot places for people with no network.
//!
//! Ours and invented: types of country with rounded, plausible figures for a
//! hot day, not records of a town. Good enough to start from; a forecast or a
//! file is better. Names for people to read live in `text`.

use serde::{Deserialize, Serialize};

/// A type of hot country.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Climate {
    /// High plain round a salt lake, 38 north.
    SaltLakePlain,
    /// Low stony desert, 33 north.
    LowDesert,
    /// High plateau, dry, cool nights, 36 north.
    HighPlateau,
    /// Warm gulf coast, moist, 29 north.
    GulfCoast,
    /// Humid forest inland, 34 north.
    HumidForest,
    /// Dry inland valley, 37 north.
    InlandValley,
    /// Southern river plain of a mild sea, 38 north.
    SouthernRiverPlain,
    /// Shore of a mild inland sea, 36 north.
    MildSeaShore,
    /// River plain of the north in a heat wave, 50 north.
    NorthernHeatWave,
    /// Dusty steppe before the rains, 27 north.
    DustySteppe,
    /// Red inland plain, 24 south.
    RedInlandPlain,
    /// Tropical coast between rains, 17 south.
    TropicalCoast,
}

/// Rounded figures of a type of country on a hot day of its summer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Typical {
    /// Stable name for documents and links.
    pub key: &'static str,
    /// Latitude, degrees, north positive.
    pub latitude_deg: f64,
    /// Longitude, degrees, east positive: chosen so that noon by the sun falls
    /// near noon by the clock.
    pub longitude_deg: f64,
    /// Altitude, metres.
    pub altitude_m: f64,
    /// Standard time less universal time, hours.
    pub utc_offset_h: f64,
    /// Month of the hot day.
    pub month: u8,
    /// The hot day's high, degrees Celsius.
    pub high_c: f64,
    /// Its low.
    pub low_c: f64,
    /// Its dew point.
    pub dew_point_c: f64,
    /// Linke turbidity.
    pub linke_turbidity: f64,
}

impl Climate {
    /// All of them: the north, then the south, roughly from dry to moist.
    pub const ALL: [Self; 12] = [
        Self::LowDesert,
        Self::SaltLakePlain,
        Self::HighPlateau,
        Self::InlandValley,
        Self::SouthernRiverPlain,
        Self::DustySteppe,
        Self::MildSeaShore,
        Self::NorthernHeatWave,
        Self::HumidForest,
        Self::GulfCoast,
        Self::RedInlandPlain,
        Self::TropicalCoast,
    ];

    /// Its figures. All invented and rounded; see the module.
    #[must_use]
    #[rustfmt::skip] // a table reads best as a table
    pub fn typical(self) -> Typical {
        //                         key                     lat    long  alt    utc  mon high  low   dew  haze
        match self {
            Self::LowDesert          => row("low-desert",            33.0, -113.0,   350.0, -7.0, 7, 43.0, 29.0, 10.0, 3.5),
            Self::SaltLakePlain      => row("salt-lake-plain",       38.0, -113.0, 1_300.0, -7.0, 7, 36.0, 22.0,  8.0, 3.0),
            Self::HighPlateau        => row("high-plateau",          36.0, -106.0, 2_000.0, -7.0, 7, 33.0, 15.0,  8.0, 2.8),
            Self::InlandValley       => row("inland-valley",         37.0, -120.0,   100.0, -8.0, 7, 40.0, 21.0, 12.0, 4.0),
            Self::SouthernRiverPlain => row("southern-river-plain",  38.0,   -5.0,   100.0,  0.0, 7, 40.0, 22.0, 13.0, 3.8),
            Self::DustySteppe        => row("dusty-steppe",          27.0,   75.0,   300.0,  5.0, 5, 43.0, 30.0, 15.0, 6.0),
            Self::MildSeaShore       => row("mild-sea-shore",        36.0,   28.0,    20.0,  2.0, 8, 34.0, 25.0, 21.0, 4.2),
            Self::NorthernHeatWave   => row("northern-heat-wave",    50.0,   10.0,   150.0,  1.0, 7, 35.0, 19.0, 15.0, 3.8),
            Self::HumidForest        => row("humid-forest",          34.0,  -85.0,   250.0, -6.0, 7, 35.0, 23.0, 22.0, 4.5),
            Self::GulfCoast          => row("gulf-coast",            29.0,  -91.0,     5.0, -6.0, 8, 35.0, 26.0, 25.0, 4.5),
            Self::RedInlandPlain     => row("red-inland-plain",     -24.0,  134.0,   550.0,  9.0, 1, 40.0, 24.0,  9.0, 3.3),
            Self::TropicalCoast      => row("tropical-coast",       -17.0,  146.0,    10.0, 10.0, 1, 33.0, 25.0, 24.0, 4.5),
        }
    }
}

/// One row of the table above, in the order of its heading.
#[expect(clippy::too_many_arguments, reason = "one column each")]
const fn row(
    key: &'static str,
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_m: f64,
    utc_offset_h: f64,
    month: u8,
    high_c: f64,
    low_c: f64,
    dew_point_c: f64,
    linke_turbidity: f64,
) -> Typical {
    Typical {
        key,
        latitude_deg,
        longitude_deg,
        altitude_m,
        utc_offset_h,
        month,
        high_c,
        low_c,
        dew_point_c,
        linke_turbidity,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        physics::weather::{clear_sky::Sky, day::DayProfile, site::Site},
        quantity::celsius,
    };

    #[test]
    fn every_place_is_fit_for_use() {
        for climate in Climate::ALL {
            let typical = climate.typical();
            let at = (typical.latitude_deg, typical.longitude_deg);
            let site = Site::new(at.0, at.1, typical.altitude_m);
            let (high, low) = (celsius(typical.high_c), celsius(typical.low_c));
            let day = DayProfile::new(high, low, Some(celsius(typical.dew_point_c)));
            assert!(site.is_ok() && day.is_ok(), "{climate:?}");
            let sky = Sky::new(typical.linke_turbidity, 0.0);
            assert!(sky.is_ok(), "{climate:?}");
            assert!(typical.dew_point_c < typical.low_c, "{climate:?}");
            let written = serde_json::to_value(climate).unwrap();
            assert_eq!(written, typical.key, "documents have the same key");
            // Noon by the sun within an hour of noon by the clock.
            let clock_lag = typical.longitude_deg / 15.0 - typical.utc_offset_h;
            assert!(clock_lag.abs() < 1.0, "{climate:?}");
        }
    }
}
