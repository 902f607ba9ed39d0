//! One cell of a file: text with a place, read as a number.

use super::error::{Fault, Field, FileError};
use crate::physics::weather::date::Date;

/// One line of separated text.
pub(super) struct Line<'a> {
    pub number: usize,
    cells: Vec<&'a str>,
}

impl<'a> Line<'a> {
    /// A line cut at its commas; for formats that never quote.
    pub fn cut(number: usize, text: &'a str) -> Self {
        let cells = text.split(',').map(str::trim).collect();
        Self { number, cells }
    }

    pub fn from_cells(number: usize, cells: Vec<&'a str>) -> Self {
        Self { number, cells }
    }

    /// The cell of a column, counted from 1.
    pub fn cell(&self, column: usize, field: Field) -> Result<Cell<'a>, FileError> {
        let text = column.checked_sub(1).and_then(|at| self.cells.get(at));
        let fault = FileError::at(self.number, Some(column), Fault::Missing(field));
        Ok(Cell {
            line: self.number,
            column,
            field,
            text: text.ok_or(fault)?,
        })
    }
}

/// The text of one field, and where it stands.
#[derive(Clone, Copy)]
pub(super) struct Cell<'a> {
    pub line: usize,
    pub column: usize,
    pub field: Field,
    pub text: &'a str,
}

impl Cell<'_> {
    /// An error at this cell.
    pub fn fault(&self, fault: Fault) -> FileError {
        FileError::at(self.line, Some(self.column), fault)
    }

    /// A number of any size; blank is not one.
    pub fn raw(&self) -> Result<f64, FileError> {
        let number: Result<f64, _> = self.text.trim().parse();
        number.map_err(|_| self.fault(Fault::NotANumber(self.field)))
    }

    /// A number in the field's range, of which the text holds `1/scale`.
    pub fn number(&self, scale: f64) -> Result<f64, FileError> {
        self.checked(self.raw()? * scale)
    }

    /// A number already scaled, in the field's range.
    pub fn checked(&self, number: f64) -> Result<f64, FileError> {
        let (least, most) = self.field.range();
        if !(least..=most).contains(&number) {
            return Err(self.fault(Fault::OutOfRange(self.field)));
        }
        Ok(match self.field {
            Field::Global | Field::Beam | Field::Diffuse => number.max(0.0),
            _ => number,
        })
    }

    /// As [`Self::number`], `None` for a blank and for the marks of a missing
    /// value, given in the file's own units.
    pub fn reading(
        &self,
        scale: f64,
        is_missing: impl Fn(f64) -> bool,
    ) -> Result<Option<f64>, FileError> {
        if self.text.trim().is_empty() || is_missing(self.raw()?) {
            return Ok(None);
        }
        self.number(scale).map(Some)
    }
}

/// A date from year, month and day cells.
pub(super) fn date(year: Cell, month: Cell, day: Cell) -> Result<Date, FileError> {
    let whole = |cell: Cell| -> Result<i32, FileError> {
        let number: Result<i32, _> = cell.text.trim().parse();
        number.map_err(|_| cell.fault(Fault::NotANumber(Field::Date)))
    };
    let (y, m, d) = (whole(year)?, whole(month)?, whole(day)?);
    let small = |number: i32| u8::try_from(number).unwrap_or(0);
    Date::new(y, small(m), small(d)).map_err(|_| day.fault(Fault::NoSuchDate))
}
