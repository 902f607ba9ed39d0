//! The weather: where the sun stands, how strongly it shines, how warm the air is.
//!
//! Three sources, from none to much: a built-in [`place`], a high and a low put
//! through a [`day`] profile under a [`clear_sky`], or an hourly [`mod@file`].
//!
//! Angles and irradiances are bare `f64` here, with the unit in the name
//! (`elevation_deg`, `ghi_w_m2`): they are the columns of tables read millions
//! of times, and never mix with the electrical quantities. Temperatures that
//! leave the room are `uom` types.
//!
//! The room knows no moist air: it carries the dew point, and nothing more.

pub mod clear_sky;
pub mod date;
pub mod day;
pub mod file;
pub mod place;
pub mod site;
pub mod sun;

/// An input of this room, to name it in an [`OutOfRange`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Input {
    /// A calendar year.
    Year,
    /// A calendar month.
    Month,
    /// A day of the month.
    DayOfMonth,
    /// Hours from midnight, or hours added to a moment.
    Hours,
    /// Latitude, degrees.
    Latitude,
    /// Longitude, degrees.
    Longitude,
    /// Altitude, metres.
    Altitude,
    /// Standard time less universal time, hours.
    UtcOffset,
    /// Linke turbidity.
    Turbidity,
    /// Share of the sky under cloud.
    CloudShare,
    /// The day's highest air temperature, degrees Celsius.
    HighTemperature,
    /// The day's lowest air temperature, degrees Celsius.
    LowTemperature,
    /// Outdoor dew point, degrees Celsius.
    DewPoint,
}

/// An input outside its accepted range, or not a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfRange {
    /// Which input.
    pub input: Input,
    /// The least accepted value, in the input's unit.
    pub least: f64,
    /// The greatest accepted value.
    pub most: f64,
}

/// `value` if it lies in `least..=most`; not-a-number never does.
pub(crate) fn within(input: Input, value: f64, least: f64, most: f64) -> Result<f64, OutOfRange> {
    if (least..=most).contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange { input, least, most })
    }
}
