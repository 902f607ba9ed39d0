//! TMY3: a line on the station, a line of column names, then the hours.
//!
//! Source: Wilcox and Marion, *Users Manual for TMY3 Data Sets*,
//! NREL/TP-581-43156 (2008), tables 1-1 and 1-2.

use super::cell::{self, Cell, Line};
use super::error::{Fault, Field, FileError};
use super::{FilePlace, Format, Parsed, RawHour, Stamp, push};

/// The mark of a missing value, -9900, and anything below.
const MISSING_UP_TO: f64 = -9_900.0;

/// Whether a second line is the column names of a TMY3 file.
pub(super) fn begins(second: &str) -> bool {
    second.starts_with("Date (MM/DD/YYYY),")
}

/// Takes a TMY3 file apart.
pub(super) fn parse(text: &str) -> Result<Parsed, FileError> {
    let mut lines = (1..).zip(text.lines());
    let (_, first) = lines.next().unwrap_or_default();
    let (_, names) = lines.next().unwrap_or_default();
    let place = Some(place(first)?);
    let columns = Columns::from_names(names)?;
    let mut hours = Vec::new();
    for (line, text) in lines {
        if !text.trim().is_empty() {
            push(&mut hours, hour(&Line::cut(line, text), &columns)?)?;
        }
    }
    Ok(Parsed {
        format: Format::Tmy3,
        place,
        stamp: Stamp::EndOfHour,
        hours,
    })
}

/// The station's line, counted from its end: only the name, which may be in
/// quotes and hold commas, stands before.
fn place(first: &str) -> Result<FilePlace, FileError> {
    let line = Line::cut(1, first);
    let columns = first.split(',').count();
    let number = |from_end: usize, field| {
        let column = (columns + 1).saturating_sub(from_end);
        line.cell(column, field)?.number(1.0)
    };
    Ok(FilePlace {
        utc_offset_h: number(4, Field::UtcOffset)?,
        latitude_deg: number(3, Field::Latitude)?,
        longitude_deg: number(2, Field::Longitude)?,
        altitude_m: number(1, Field::Altitude)?,
    })
}

/// Where the used columns stand, counted from 1.
struct Columns {
    ghi: usize,
    dni: usize,
    dhi: usize,
    temperature: usize,
    dew_point: usize,
    wind: usize,
}

impl Columns {
    fn from_names(names: &str) -> Result<Self, FileError> {
        let find = |name, field| {
            let at = names.split(',').position(|it| it.trim() == name);
            at.map(|at| at + 1)
                .ok_or_else(|| FileError::at(2, None, Fault::Missing(field)))
        };
        Ok(Self {
            ghi: find("GHI (W/m^2)", Field::Global)?,
            dni: find("DNI (W/m^2)", Field::Beam)?,
            dhi: find("DHI (W/m^2)", Field::Diffuse)?,
            temperature: find("Dry-bulb (C)", Field::Temperature)?,
            dew_point: find("Dew-point (C)", Field::DewPoint)?,
            wind: find("Wspd (m/s)", Field::Wind)?,
        })
    }
}

/// One hour's line.
fn hour(line: &Line, columns: &Columns) -> Result<RawHour, FileError> {
    let reading = |column, field| {
        line.cell(column, field)?
            .reading(1.0, |value| value <= MISSING_UP_TO)
    };
    let date_cell = line.cell(1, Field::Date)?;
    let mut parts = date_cell.text.split('/');
    let mut part = || Cell {
        text: parts.next().unwrap_or_default(),
        ..date_cell
    };
    let (month, day, year) = (part(), part(), part());
    Ok(RawHour {
        line: line.number,
        date: Some(cell::date(year, month, day)?),
        stamp_h: clock(line.cell(2, Field::Hour)?)?,
        temperature_c: reading(columns.temperature, Field::Temperature)?,
        dew_point_c: reading(columns.dew_point, Field::DewPoint)?,
        wind_m_s: reading(columns.wind, Field::Wind)?,
        ghi_w_m2: reading(columns.ghi, Field::Global)?,
        dni_w_m2: reading(columns.dni, Field::Beam)?,
        dhi_w_m2: reading(columns.dhi, Field::Diffuse)?,
    })
}

/// Hours from `HH:MM`.
pub(super) fn clock(cell: Cell) -> Result<f64, FileError> {
    let fault = || cell.fault(Fault::NotANumber(Field::Hour));
    let (hours, minutes) = cell.text.trim().split_once(':').ok_or_else(fault)?;
    let whole = |text: &str| text.parse::<u8>().map(f64::from).map_err(|_| fault());
    let minutes = whole(minutes)?;
    if minutes >= 60.0 {
        return Err(fault());
    }
    cell.checked(whole(hours)? + minutes / 60.0)
}
