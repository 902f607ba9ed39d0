//! EPW: a `LOCATION` line, seven more of heading, then 35 columns.
//!
//! Source: EnergyPlus *Auxiliary Programs*, "EPW data dictionary": the order of
//! the columns, and the values from which on a field counts as missing.

use super::cell::{self, Line};
use super::error::{Field, FileError};
use super::{FilePlace, Format, Parsed, RawHour, Stamp, push};

/// Lines before the first hour.
const HEADING_LINES: usize = 8;

/// Whether a first line is that of an EPW file.
pub(super) fn begins(first: &str) -> bool {
    let name = first.split(',').next().unwrap_or_default();
    name.trim().eq_ignore_ascii_case("LOCATION")
}

/// Takes an EPW file apart.
pub(super) fn parse(text: &str) -> Result<Parsed, FileError> {
    let first = text.lines().next().unwrap_or_default();
    let place = Some(place(&Line::cut(1, first))?);
    let mut hours = Vec::new();
    for (line, text) in (1..).zip(text.lines()).skip(HEADING_LINES) {
        if !text.trim().is_empty() {
            push(&mut hours, hour(&Line::cut(line, text))?)?;
        }
    }
    Ok(Parsed {
        format: Format::Epw,
        place,
        stamp: Stamp::EndOfHour,
        hours,
    })
}

/// Columns 7 to 10 of the first line.
fn place(line: &Line) -> Result<FilePlace, FileError> {
    let number = |column, field| line.cell(column, field)?.number(1.0);
    Ok(FilePlace {
        latitude_deg: number(7, Field::Latitude)?,
        longitude_deg: number(8, Field::Longitude)?,
        utc_offset_h: number(9, Field::UtcOffset)?,
        altitude_m: number(10, Field::Altitude)?,
    })
}

/// One hour's line.
fn hour(line: &Line) -> Result<RawHour, FileError> {
    let reading = |column, field, missing_from: f64| {
        line.cell(column, field)?
            .reading(1.0, |value| value >= missing_from)
    };
    let date_cell = |column| line.cell(column, Field::Date);
    Ok(RawHour {
        line: line.number,
        date: Some(cell::date(date_cell(1)?, date_cell(2)?, date_cell(3)?)?),
        stamp_h: line.cell(4, Field::Hour)?.number(1.0)?,
        temperature_c: reading(7, Field::Temperature, 99.9)?,
        dew_point_c: reading(8, Field::DewPoint, 99.9)?,
        ghi_w_m2: reading(14, Field::Global, 9_999.0)?,
        dni_w_m2: reading(15, Field::Beam, 9_999.0)?,
        dhi_w_m2: reading(16, Field::Diffuse, 9_999.0)?,
        wind_m_s: reading(22, Field::Wind, 999.0)?,
    })
}
