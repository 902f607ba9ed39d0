//! What can be wrong with a weather file, and where.

/// A quantity in a weather file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Field {
    /// Latitude, degrees.
    Latitude,
    /// Longitude, degrees.
    Longitude,
    /// Altitude, metres.
    Altitude,
    /// The clock less universal time, hours.
    UtcOffset,
    /// A date.
    Date,
    /// Hour of the day.
    Hour,
    /// Dry-bulb temperature, degrees Celsius.
    Temperature,
    /// Dew point, degrees Celsius.
    DewPoint,
    /// Wind speed, m/s.
    Wind,
    /// Global horizontal irradiance, W/m2.
    Global,
    /// Beam irradiance facing the sun, W/m2.
    Beam,
    /// Diffuse horizontal irradiance, W/m2.
    Diffuse,
}

impl Field {
    /// Accepted range, in the field's unit.
    ///
    /// Irradiance may read a little below zero, as meters do at night; it is
    /// then taken as zero.
    #[must_use]
    pub fn range(self) -> (f64, f64) {
        match self {
            Self::Latitude => (-90.0, 90.0),
            Self::Longitude => (-180.0, 180.0),
            Self::Altitude => (-450.0, 6_000.0),
            Self::UtcOffset => (-12.0, 14.0),
            Self::Date => (1.0, 31.0),
            Self::Hour => (0.0, 24.0),
            Self::Temperature => (-60.0, 60.0),
            Self::DewPoint => (-80.0, 40.0),
            Self::Wind => (0.0, 80.0),
            Self::Global | Self::Beam | Self::Diffuse => (-20.0, 1_600.0),
        }
    }
}

/// What is wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// More bytes than are read.
    TooLarge,
    /// More columns on a line than are read.
    TooManyColumns,
    /// More hours than are read.
    TooManyHours,
    /// None of the formats.
    UnknownFormat,
    /// No hours at all.
    NoHours,
    /// A column is not there, on this line or in the heading.
    Missing(Field),
    /// Not a number (or not a time).
    NotANumber(Field),
    /// A number out of the field's range, see [`Field::range`].
    OutOfRange(Field),
    /// A date that does not exist, or a year not of 1900 to 2100.
    NoSuchDate,
    /// Not the hour after the one before.
    NotTheNextHour,
    /// More hours missing in a row than are filled.
    LongGap(Field),
}

/// A fault and where it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FileError {
    /// Line of the file, from 1; `None` for faults of the whole.
    pub line: Option<usize>,
    /// Column, from 1: the field's number in separated text, the character's in
    /// the fixed columns of TMY2.
    pub column: Option<usize>,
    /// The fault.
    pub fault: Fault,
}

impl FileError {
    pub(super) fn whole(fault: Fault) -> Self {
        Self {
            line: None,
            column: None,
            fault,
        }
    }

    pub(super) fn at(line: usize, column: Option<usize>, fault: Fault) -> Self {
        Self {
            line: Some(line),
            column,
            fault,
        }
    }
}
