//! The hot day: where, when and how hot; and what happened so far.

use super::{
    Figure, Plan,
    part::{Choice, part},
};
pub use crate::physics::weather::place::Climate;
use crate::{physics::weather::place::Typical, range};
use serde::{Deserialize, Serialize};

part! {
    /// Place, date and weather of the first day. All of it may be left out: then
    /// it is the climate's, and the climate is the first of [`Day::climate_taken`].
    Day, DayField, default by Day {
        /// Days that the answer covers, from the night's start on.
        days_count: MaybeCount = DaysCount, DAYS_COUNT, Exact(1.0), NoSpread;
        year: MaybeCount = Year, YEAR, Exact(USUAL_YEAR), NoSpread;
        month: MaybeCount = Month, MONTH,
            Of(|day, _| Some(Figure::exact(f64::from(day.typical().month)))), NoSpread;
        day_of_month: MaybeCount = DayOfMonth, DAY_OF_MONTH, Exact(15.0), NoSpread;
        /// The clock that the night's times are on, less universal time.
        utc_offset_min: MaybeNumber = UtcOffsetMin, UTC_OFFSET_MIN,
            Of(|day, _| Some(Figure::exact(60.0 * day.typical().utc_offset_h))), NoSpread;
        /// North positive.
        latitude_deg: MaybeNumber = LatitudeDeg, LATITUDE_DEG,
            Of(|day, _| Some(Figure::exact(day.typical().latitude_deg))), NoSpread;
        /// East positive.
        longitude_deg: MaybeNumber = LongitudeDeg, LONGITUDE_DEG,
            Of(|day, _| Some(Figure::exact(day.typical().longitude_deg))), NoSpread;
        altitude_m: MaybeNumber = AltitudeM, ALTITUDE_M,
            Of(|day, _| Some(Figure::exact(day.typical().altitude_m))), NoSpread;
        high_c: MaybeFigure = HighC, OUTDOOR_C,
            Of(|day, _| Some(Figure::guess(day.high_and_low_c()[0]))), Units(2.0, 0.5, 3.0);
        low_c: MaybeFigure = LowC, OUTDOOR_C,
            Of(|day, _| Some(Figure::guess(day.high_and_low_c()[1]))), Units(2.0, 0.5, 3.0);
        /// Constant through the day. Absent: from the humidity, or the climate's.
        dew_point_c: MaybeFigure = DewPointC, DEW_POINT_C,
            Of(|day, _| Some(Figure::guess(day.usual_dew_point_c()))), Units(2.0, 1.0, 4.0);
        /// Relative humidity at the day's high, where no dew point is stated.
        humidity_percent: MaybeFigure = HumidityPercent, HUMIDITY_PERCENT,
            Nothing, Units(8.0, 4.0, 12.0);
        /// Share of the sky under cloud.
        cloud_percent: MaybeFigure = CloudPercent, SHARE_PERCENT,
            Guess(0.0), Units(25.0, 15.0, 30.0);
        /// How many clean dry atmospheres would dim the sun as much.
        linke_turbidity: MaybeFigure = LinkeTurbidity, LINKE_TURBIDITY,
            Of(|day, _| Some(Figure::guess(day.typical().linke_turbidity))), Share(20.0, 10.0, 30.0);
        wind_m_s: MaybeFigure = WindMS, WIND_M_S, Guess(1.0), Share(40.0, 20.0, 60.0);
        /// Light that the ground throws back.
        ground_albedo_percent: MaybeNumber = GroundAlbedoPercent, SHARE_PERCENT,
            Exact(USUAL_ALBEDO_PERCENT), NoSpread;
        /// Runs that the sampled band is made of; 0 for none.
        samples_count: MaybeCount = SamplesCount, SAMPLES_COUNT, Exact(100.0), NoSpread;
        /// Which row of chances the samples are drawn by.
        seed_number: MaybeCount = SeedNumber, SEED_NUMBER, Exact(1.0), NoSpread;
    } with {
        /// A built-in type of country that fills what is left out.
        climate: Option<Climate>,
        /// Hours from a weather file, from midnight of the date on.
        imported: Imported,
    }
}

/// Hours of a weather file, a number each; empty if there is none.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
pub struct Imported {
    /// Air temperature in the middle of each hour.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub outdoor_c: Vec<f64>,
    /// Mean global irradiance over each hour.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub global_w_m2: Vec<f64>,
    /// Dew point in the middle of each hour, if the file has it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub dew_point_c: Vec<f64>,
    /// Mean direct irradiance over each hour, facing the sun, if the file has it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub direct_w_m2: Vec<f64>,
    /// Mean diffuse irradiance over each hour, on level ground, if the file has it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub diffuse_w_m2: Vec<f64>,
}

/// Where direct and diffuse sun of imported hours come from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum SunParts {
    /// Both are the file's own.
    File,
    /// One is the file's own; the other is what is left of the total.
    OneOfFile,
    /// The file has the total alone: they are estimated from it.
    Estimated,
}

impl Imported {
    /// Where direct and diffuse sun come from; nothing without imported hours.
    #[must_use]
    pub fn sun_parts(&self) -> Option<SunParts> {
        let there = |values: &[f64]| !values.is_empty();
        there(&self.global_w_m2).then_some(
            match (there(&self.direct_w_m2), there(&self.diffuse_w_m2)) {
                (true, true) => SunParts::File,
                (false, false) => SunParts::Estimated,
                _ => SunParts::OneOfFile,
            },
        )
    }
}

impl Choice for Climate {
    const ALL: &[Self] = &Self::ALL;
    fn key(self) -> &'static str {
        self.typical().key
    }
}

/// Year taken where none is stated: the sun hardly cares.
const USUAL_YEAR: f64 = 2026.0;
/// Light thrown back by soil and grass (common practice, no source).
const USUAL_ALBEDO_PERCENT: f64 = 20.0;

impl Day {
    /// The climate that fills what is left out.
    #[must_use]
    pub fn climate_taken(&self) -> Climate {
        self.climate.unwrap_or(Climate::SaltLakePlain)
    }

    /// A place, to the hundredth of a degree and the metre: no weather is finer.
    /// What is out of range is left as it is.
    pub fn set_place(&mut self, latitude_deg: f64, longitude_deg: f64, altitude_m: Option<f64>) {
        let hundredth = |value: f64| (100.0 * value).round() / 100.0;
        let (latitude, longitude) = (hundredth(latitude_deg), hundredth(longitude_deg));
        if range::LATITUDE_DEG.accepts(latitude) && range::LONGITUDE_DEG.accepts(longitude) {
            self.latitude_deg = Some(latitude);
            self.longitude_deg = Some(longitude);
            self.altitude_m = altitude_m
                .map(f64::round)
                .filter(|&altitude| range::ALTITUDE_M.accepts(altitude));
        }
    }

    /// A date of the first evening; what is out of range is left as it is.
    pub fn set_date(&mut self, year: u32, month: u32, day_of_month: u32) {
        let set = |slot: &mut Option<u32>, range: range::Range, value: u32| {
            if range.accepts(f64::from(value)) {
                *slot = Some(value);
            }
        };
        set(&mut self.year, range::YEAR, year);
        set(&mut self.month, range::MONTH, month);
        set(&mut self.day_of_month, range::DAY_OF_MONTH, day_of_month);
    }

    /// The clock, by the minutes that it is behind universal time, as devices
    /// count it.
    pub fn set_clock_behind_utc(&mut self, minutes: f64) {
        // Not -0.
        let ahead = if minutes == 0.0 { 0.0 } else { -minutes };
        if range::UTC_OFFSET_MIN.accepts(ahead) {
            self.utc_offset_min = Some(ahead);
        }
    }

    fn typical(&self) -> Typical {
        self.climate_taken().typical()
    }

    /// One stated, the other follows at the climate's distance.
    fn high_and_low_c(&self) -> [f64; 2] {
        let typical = self.typical();
        let apart_k = typical.high_c - typical.low_c;
        let high = self.high_c.map(|high| high.value);
        let low = self.low_c.map(|low| low.value);
        let both = match (high, low) {
            (Some(high), None) => [high, high - apart_k],
            (None, Some(low)) => [low + apart_k, low],
            _ => [typical.high_c, typical.low_c],
        };
        both.map(|value| {
            if range::OUTDOOR_C.accepts(value) {
                value
            } else {
                typical.high_c
            }
        })
    }

    /// The climate's, and never above the night's low.
    fn usual_dew_point_c(&self) -> f64 {
        let low_c = self.low_c.map_or(self.high_and_low_c()[1], |low| low.value);
        self.typical().dew_point_c.min(low_c)
    }
}

part! {
    /// What a look at monitor and thermometer said in the night.
    #[derive(Copy)]
    CheckIn, CheckInField, default by CheckIn {
        clock_min: MaybeCount = ClockMin, CLOCK_MIN, Nothing, NoSpread;
        /// Whole days after the first start: 0 in the first night.
        day_count: MaybeCount = DayCount, CHECK_IN_DAY, Exact(0.0), NoSpread;
        charge_percent: MaybeFigure = ChargePercent, CHARGE_PERCENT, Nothing, Units(3.0, 3.0, 10.0);
        cabin_c: MaybeFigure = CabinC, INDOOR_C, Nothing, Units(1.0, 1.0, 3.0);
    } with {}
}

part! {
    /// From this clock time on, every day: a mode, or everything off.
    #[derive(Copy)]
    ModeRow, ModeRowField, default by ModeRow {
        from_clock_min: MaybeCount = FromClockMin, CLOCK_MIN,
            Of(|_, plan| Some(Figure::exact(f64::from(plan.night.start_clock_min)))), NoSpread;
    } with {
        unit: usize,
        /// The unit's mode; absent: the unit is off.
        mode: Option<usize>,
    }
}

impl Plan {
    /// The mode plan that is taken, as rows to be edited.
    #[must_use]
    pub fn mode_rows_stated(&self) -> Vec<ModeRow> {
        let rows = self.mode_rows().into_iter();
        rows.map(|(from_min, unit, mode)| ModeRow {
            from_clock_min: Some(from_min),
            unit,
            mode,
        })
        .collect()
    }

    /// The mode plan as it stands, or the asked mode for the hours wanted.
    ///
    /// Rows by clock time, in the order of the clock; at least one.
    #[must_use]
    pub fn mode_rows(&self) -> Vec<(u32, usize, Option<usize>)> {
        let night = &self.night;
        let start = night.start_clock_min % (24 * 60);
        let mut rows: Vec<_> = self
            .mode_plan
            .iter()
            .map(|row| (row.from_clock_min.unwrap_or(start), row.unit, row.mode))
            .collect();
        if rows.is_empty() {
            rows.push((start, night.asked_unit, Some(night.asked_mode)));
            // The cast saturates; a night of a day or more never ends.
            let minutes = (night.wanted_h * 60.0).round() as u32;
            if minutes < 24 * 60 {
                rows.push(((start + minutes) % (24 * 60), night.asked_unit, None));
            }
        }
        rows.sort_by_key(|row| row.0);
        rows
    }
}
