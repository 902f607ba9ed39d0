//! TMY2: one heading line, then fixed columns.
//!
//! Source: Marion and Urban, *User's Manual for TMY2s*, NREL 1995, tables 3-1
//! and 3-2: columns counted from 1, temperatures and wind in tenths.

use super::cell::{self, Cell};
use super::error::{Fault, Field, FileError};
use super::{FilePlace, Format, Parsed, RawHour, Stamp, push};

/// Whether a first line is that of a TMY2 file: a station number of five
/// digits after one blank, and no separators.
pub(super) fn begins(first: &str) -> bool {
    let bytes = first.as_bytes();
    bytes.len() >= 59
        && bytes[0] == b' '
        && bytes[1..6].iter().all(u8::is_ascii_digit)
        && !first.contains([',', ';', '\t'])
}

/// Takes a TMY2 file apart.
pub(super) fn parse(text: &str) -> Result<Parsed, FileError> {
    let first = text.lines().next().unwrap_or_default();
    let place = Some(place(Columns {
        line: 1,
        text: first,
    })?);
    let mut hours = Vec::new();
    for (line, text) in (1..).zip(text.lines()).skip(1) {
        // Old copies end in a control character.
        if !text.trim().trim_matches(char::is_control).is_empty() {
            push(&mut hours, hour(Columns { line, text })?)?;
        }
    }
    Ok(Parsed {
        format: Format::Tmy2,
        place,
        stamp: Stamp::EndOfHour,
        hours,
    })
}

/// A line of fixed columns.
#[derive(Clone, Copy)]
struct Columns<'a> {
    line: usize,
    text: &'a str,
}

impl<'a> Columns<'a> {
    /// The cell of columns `from..=to`, counted from 1.
    fn cell(self, from: usize, to: usize, field: Field) -> Result<Cell<'a>, FileError> {
        let text = self.text.get(from - 1..to);
        let fault = FileError::at(self.line, Some(from), Fault::Missing(field));
        Ok(Cell {
            line: self.line,
            column: from,
            field,
            text: text.ok_or(fault)?,
        })
    }

    /// Degrees and minutes behind a letter, signed by it.
    fn angle(self, letter: usize, field: Field, negative: &str) -> Result<f64, FileError> {
        let wide = usize::from(field == Field::Longitude);
        let degrees = self.cell(letter + 2, letter + 3 + wide, field)?.raw()?;
        let minutes = self
            .cell(letter + 5 + wide, letter + 6 + wide, field)?
            .raw()?;
        let letter = self.cell(letter, letter, field)?;
        let size = degrees + minutes / 60.0;
        letter.checked(if letter.text == negative { -size } else { size })
    }
}

/// The heading line. Table 3-1.
fn place(line: Columns) -> Result<FilePlace, FileError> {
    Ok(FilePlace {
        utc_offset_h: line.cell(34, 36, Field::UtcOffset)?.number(1.0)?,
        latitude_deg: line.angle(38, Field::Latitude, "S")?,
        longitude_deg: line.angle(46, Field::Longitude, "W")?,
        altitude_m: line.cell(56, 59, Field::Altitude)?.number(1.0)?,
    })
}

/// One hour's line. Table 3-2; nines all through mark a missing value.
fn hour(line: Columns) -> Result<RawHour, FileError> {
    let reading = |from, to, field, scale, missing: f64| {
        line.cell(from, to, field)?
            .reading(scale, |value| value >= missing)
    };
    let date_cell = |from, to| line.cell(from, to, Field::Date);
    let short_year = date_cell(2, 3)?;
    let year_text = format!("19{}", short_year.text.trim());
    let year = Cell {
        text: &year_text,
        ..short_year
    };
    Ok(RawHour {
        line: line.line,
        date: Some(cell::date(year, date_cell(4, 5)?, date_cell(6, 7)?)?),
        stamp_h: line.cell(8, 9, Field::Hour)?.number(1.0)?,
        ghi_w_m2: reading(18, 21, Field::Global, 1.0, 9_999.0)?,
        dni_w_m2: reading(24, 27, Field::Beam, 1.0, 9_999.0)?,
        dhi_w_m2: reading(30, 33, Field::Diffuse, 1.0, 9_999.0)?,
        temperature_c: reading(68, 71, Field::Temperature, 0.1, 9_999.0)?,
        dew_point_c: reading(74, 77, Field::DewPoint, 0.1, 9_999.0)?,
        wind_m_s: reading(96, 98, Field::Wind, 0.1, 999.0)?,
    })
}
