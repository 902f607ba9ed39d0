//! Import of hourly weather files.
//!
//! Three open formats and plain text are told apart by their first lines:
//!
//! | format | described in |
//! |---|---|
//! | TMY2 | Marion and Urban, *User's Manual for TMY2s*, NREL 1995 |
//! | TMY3 | Wilcox and Marion, *Users Manual for TMY3 Data Sets*, NREL/TP-581-43156 |
//! | EPW | EnergyPlus *Auxiliary Programs*, EPW data dictionary |
//! | plain | [`plain`]: a headed table with hour, temperature and irradiance |
//!
//! In the first three an hour's irradiance is the mean over the hour that *ends*
//! at the stamp, and the temperature is that *at* the stamp; so the sun that
//! goes with an irradiance is half an hour earlier. Plain text must say which
//! (see [`Stamp`]).

mod cell;
mod epw;
mod error;
pub mod plain;
mod series;
mod tmy2;
mod tmy3;

pub use error::{Fault, Field, FileError};
pub use series::{HourMean, HourlyWeather, WeatherHour};

use super::date::Date;

/// Largest file read, bytes; a year in the widest of the formats takes 1.8 MB.
pub const MOST_BYTES: usize = 4 << 20;

/// Most hours read: a leap year.
pub const MOST_HOURS: usize = 8_784;

/// Most cells of a line read; the widest of the formats has 71.
pub const MOST_COLUMNS: usize = 256;

/// Longest gap filled by a straight line, hours.
pub const LONGEST_GAP: usize = 3;

/// Which kind of file was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// TMY2.
    Tmy2,
    /// TMY3.
    Tmy3,
    /// EPW.
    Epw,
    /// A headed table.
    Plain,
}

/// What a plain table's hour stands for: where in its hour of irradiance the
/// stamp, and with it the temperature, lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stamp {
    /// Irradiance is the mean of the hour up to the stamp.
    EndOfHour,
    /// Irradiance is read at the stamp, or the mean of the hour around it.
    MiddleOfHour,
    /// Irradiance is the mean of the hour after the stamp.
    StartOfHour,
}

impl Stamp {
    /// Hours from the hour's start to the stamp.
    fn lag_h(self) -> f64 {
        match self {
            Self::EndOfHour => 1.0,
            Self::MiddleOfHour => 0.5,
            Self::StartOfHour => 0.0,
        }
    }
}

/// Where a file says it was taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FilePlace {
    /// Latitude, degrees, north positive.
    pub latitude_deg: f64,
    /// Longitude, degrees, east positive.
    pub longitude_deg: f64,
    /// Altitude, metres.
    pub altitude_m: f64,
    /// The file's clock less universal time, hours.
    pub utc_offset_h: f64,
}

/// One hour as it stands in a file; `None` where the file marks it missing.
struct RawHour {
    line: usize,
    /// As stamped; `None` in plain text.
    date: Option<Date>,
    /// Hours of the stamp after midnight, 0 to 24.
    stamp_h: f64,
    temperature_c: Option<f64>,
    dew_point_c: Option<f64>,
    wind_m_s: Option<f64>,
    ghi_w_m2: Option<f64>,
    dni_w_m2: Option<f64>,
    dhi_w_m2: Option<f64>,
}

/// A file taken apart, not yet checked as a series.
struct Parsed {
    format: Format,
    place: Option<FilePlace>,
    stamp: Stamp,
    hours: Vec<RawHour>,
}

/// Reads an hourly file of any of the formats.
///
/// - `bytes`: at most 4 MiB, 256 columns and 8,784 hours, in any encoding that keeps ASCII
/// - `plain_stamp`: what the hours mean if it proves to be a plain table
///
/// Gaps of up to three hours are filled by a straight line and counted; a series
/// that the file lacks or marks missing throughout is an error for temperature
/// and global irradiance, and `None` for the others.
///
/// # Errors
/// The first fault, with its line and column where it has one.
///
/// # Examples
/// ```
/// use till_morning::physics::weather::file::{Stamp, read};
/// let table = "hour,temperature,irradiance\n12,35.0,900\n13,36.0,880\n";
/// let weather = read(table.as_bytes(), Stamp::MiddleOfHour).unwrap();
/// assert_eq!(weather.hours().len(), 2);
///
/// let table = "hour,temperature,irradiance\n12,hot,900\n";
/// let fault = read(table.as_bytes(), Stamp::MiddleOfHour).unwrap_err();
/// assert_eq!((fault.line, fault.column), (Some(2), Some(2)));
/// ```
pub fn read(bytes: &[u8], plain_stamp: Stamp) -> Result<HourlyWeather, FileError> {
    if bytes.len() > MOST_BYTES {
        return Err(FileError::whole(Fault::TooLarge));
    }
    let text = String::from_utf8_lossy(bytes);
    let text = text.trim_start_matches('\u{feff}');
    narrow(text)?;
    let mut lines = text.lines();
    let first = lines.next().unwrap_or_default();
    let second = lines.next().unwrap_or_default();
    let parsed = if epw::begins(first) {
        epw::parse(text)
    } else if tmy3::begins(second) {
        tmy3::parse(text)
    } else if tmy2::begins(first) {
        tmy2::parse(text)
    } else {
        plain::parse(text, plain_stamp)
    }?;
    series::assemble(parsed)
}

/// Refuses a line of more cells than any table has, before cells are made of it:
/// a line of nothing but commas would take fifty times its length.
fn narrow(text: &str) -> Result<(), FileError> {
    for (number, line) in (1..).zip(text.lines()) {
        let marks = line.bytes().filter(|byte| b",;\t".contains(byte));
        if marks.count() >= MOST_COLUMNS {
            let column = Some(MOST_COLUMNS + 1);
            return Err(FileError::at(number, column, Fault::TooManyColumns));
        }
    }
    Ok(())
}

/// Adds an hour unless the file already holds the most.
fn push(hours: &mut Vec<RawHour>, hour: RawHour) -> Result<(), FileError> {
    if hours.len() >= MOST_HOURS {
        return Err(FileError::at(hour.line, None, Fault::TooManyHours));
    }
    hours.push(hour);
    Ok(())
}
