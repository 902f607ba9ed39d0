//! A plain table, for weather from a service or one's own log.
//!
//! The first line names the columns, in any order and separated by commas,
//! semicolons or tabs (with the last two, a comma may be the decimal mark):
//!
//! - `hour`, needed: hour of the day as `13`, `13.5` or `13:30`
//! - `temperature` or `temperature_c`, or `temperature_f`, needed
//! - `irradiance` or `ghi`, needed: global on the horizontal, W/m2
//! - `dni`, `dhi`: beam and diffuse, W/m2
//! - `dew_point` or `dew_point_c`, or `dew_point_f`
//! - `wind`: m/s
//!
//! Names may end in a unit in brackets, and other columns are passed over. One
//! line an hour; after the last hour of a day the next day begins. A blank, a
//! number of -999 or less, or 9,999 or more, marks a missing value.

use super::cell::{Cell, Line};
use super::error::{Fault, Field, FileError};
use super::tmy3::clock;
use super::{Format, Parsed, RawHour, Stamp, push};
use crate::quantity::{fahrenheit, in_celsius};

/// Takes a plain table apart.
pub(super) fn parse(text: &str, stamp: Stamp) -> Result<Parsed, FileError> {
    let heading = text.lines().next().unwrap_or_default();
    let separator = separator(heading);
    let mut reader = csv::ReaderBuilder::new();
    reader
        .has_headers(false)
        .flexible(true)
        .delimiter(separator)
        .buffer_capacity(256)
        .trim(csv::Trim::All);
    let mut columns = None;
    let mut hours = Vec::new();
    let mut record = csv::StringRecord::new();
    for (line, text) in (1..).zip(text.lines()) {
        // A line at a time: a quote left open ends with its line, and takes in no
        // more cells. Text is known to be UTF-8 and lines may differ in length, so
        // that the reader has nothing left to object to.
        let mut reader = reader.from_reader(text.as_bytes());
        if !reader.read_record(&mut record).unwrap_or(false) {
            continue;
        }
        match &columns {
            None => columns = Some(Columns::from_names(&record, line)?),
            Some(columns) if record.iter().any(|cell| !cell.is_empty()) => {
                let decimal_comma = separator != b',';
                let texts: Vec<_> = record
                    .iter()
                    .map(|text| {
                        if decimal_comma {
                            text.replace(',', ".")
                        } else {
                            text.into()
                        }
                    })
                    .collect();
                let line = Line::from_cells(line, texts.iter().map(String::as_str).collect());
                push(&mut hours, hour(&line, columns)?)?;
            }
            Some(_) => {}
        }
    }
    Ok(Parsed {
        format: Format::Plain,
        place: None,
        stamp,
        hours,
    })
}

/// The first of semicolon, tab and comma that the heading holds.
fn separator(heading: &str) -> u8 {
    let bytes = heading.as_bytes();
    [b';', b'\t']
        .into_iter()
        .find(|mark| bytes.contains(mark))
        .unwrap_or(b',')
}

/// Where the columns stand, counted from 1.
struct Columns {
    hour: usize,
    temperature: Thermometer,
    ghi: usize,
    dni: Option<usize>,
    dhi: Option<usize>,
    dew_point: Option<Thermometer>,
    wind: Option<usize>,
}

/// A column of temperatures.
#[derive(Clone, Copy)]
enum Thermometer {
    Celsius(usize),
    Fahrenheit(usize),
}

impl Columns {
    fn from_names(names: &csv::StringRecord, line: usize) -> Result<Self, FileError> {
        let names: Vec<_> = names.iter().map(bare_name).collect();
        let find = |wanted: &[&str]| {
            let at = names.iter().position(|name| wanted.contains(&&**name));
            at.map(|at| at + 1)
        };
        let thermometer = |celsius: &[&str], fahrenheit: &str| {
            find(celsius)
                .map(Thermometer::Celsius)
                .or(find(&[fahrenheit]).map(Thermometer::Fahrenheit))
        };
        let hour = find(&["hour"]);
        let temperature = thermometer(&["temperature", "temperature_c"], "temperature_f");
        let ghi = find(&["irradiance", "ghi"]);
        if hour.is_none() && temperature.is_none() && ghi.is_none() {
            return Err(FileError::whole(Fault::UnknownFormat));
        }
        let missing = |field| FileError::at(line, None, Fault::Missing(field));
        Ok(Self {
            hour: hour.ok_or_else(|| missing(Field::Hour))?,
            temperature: temperature.ok_or_else(|| missing(Field::Temperature))?,
            ghi: ghi.ok_or_else(|| missing(Field::Global))?,
            dni: find(&["dni"]),
            dhi: find(&["dhi"]),
            dew_point: thermometer(&["dew_point", "dew_point_c"], "dew_point_f"),
            wind: find(&["wind"]),
        })
    }
}

/// A column's name in lower case, without a unit in brackets.
fn bare_name(name: &str) -> String {
    let bare = name.split(['(', '[']).next().unwrap_or_default();
    bare.trim().to_ascii_lowercase().replace([' ', '-'], "_")
}

/// One hour's line.
fn hour(line: &Line, columns: &Columns) -> Result<RawHour, FileError> {
    let reading = |column, field| line.cell(column, field)?.reading(1.0, is_missing);
    let maybe = |column: Option<usize>, field| column.map_or(Ok(None), |it| reading(it, field));
    let maybe_warm =
        |it: Option<Thermometer>, field| it.map_or(Ok(None), |it| warmth(line, it, field));
    Ok(RawHour {
        line: line.number,
        date: None,
        stamp_h: stamp(line.cell(columns.hour, Field::Hour)?)?,
        temperature_c: warmth(line, columns.temperature, Field::Temperature)?,
        dew_point_c: maybe_warm(columns.dew_point, Field::DewPoint)?,
        wind_m_s: maybe(columns.wind, Field::Wind)?,
        ghi_w_m2: reading(columns.ghi, Field::Global)?,
        dni_w_m2: maybe(columns.dni, Field::Beam)?,
        dhi_w_m2: maybe(columns.dhi, Field::Diffuse)?,
    })
}

fn is_missing(value: f64) -> bool {
    value <= -999.0 || value >= 9_999.0
}

/// A temperature in degrees Celsius from a column of either unit.
fn warmth(line: &Line, column: Thermometer, field: Field) -> Result<Option<f64>, FileError> {
    match column {
        Thermometer::Celsius(column) => line.cell(column, field)?.reading(1.0, is_missing),
        Thermometer::Fahrenheit(column) => {
            let cell = line.cell(column, field)?;
            if cell.text.is_empty() || is_missing(cell.raw()?) {
                return Ok(None);
            }
            cell.checked(in_celsius(fahrenheit(cell.raw()?))).map(Some)
        }
    }
}

/// Hour of the day as a number or a clock time.
fn stamp(cell: Cell) -> Result<f64, FileError> {
    if cell.text.contains(':') {
        clock(cell)
    } else {
        cell.number(1.0)
    }
}
