//! Why a file was not read, and where.

/// A file, or a row of it, that was refused.
///
/// Lines and columns count from one, as an editor and a spreadsheet show them.
/// A fault of the whole file points at line 1, column 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Refusal {
    /// Line of the text, from one.
    pub line: usize,
    /// Cell within that line, from one.
    pub column: usize,
    /// What is wrong there.
    pub fault: Fault,
}

/// What is wrong with a file or a cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fault {
    /// The file is larger than `most` bytes.
    TooManyBytes {
        /// The most that is read.
        most: usize,
    },
    /// There are more than `most` rows of data.
    TooManyRows {
        /// The most that is read.
        most: usize,
    },
    /// A row holds more cells than the heading has columns. Often a decimal
    /// comma in a file that is also separated by commas.
    TooManyCells {
        /// The number of columns.
        most: usize,
    },
    /// No separator gives two rows of numbers below each other.
    NoTable,
    /// No column could be told to be the time; name it by hand.
    NoTimeColumn,
    /// Neither amperes nor watts were found; name the column by hand.
    NoFlowColumn,
    /// A column named by hand lies outside the table, or its unit does not
    /// belong to its role.
    BadColumnChoice,
    /// A cell of a used column holds something other than a number.
    NotANumber,
    /// A number with the unit of another quantity written behind it.
    WrongUnit,
    /// A number past what the column can hold.
    OutOfRange {
        /// The least accepted, in the base unit.
        least: f64,
        /// The most accepted, in the base unit.
        most: f64,
    },
    /// A cell of the time column that is not a time of the form seen so far.
    NotATime,
    /// Some times carry a zone and others none.
    MixedZones,
    /// A quotation mark that is not closed on its line.
    OpenQuote,
    /// Time goes back and covers the same span twice: the clock was reset or
    /// the log started anew. The two runs must be read apart.
    TimeOverlaps,
    /// Fewer than two rows with a time and a reading.
    TooFewRows,
}

impl Refusal {
    /// A fault in one cell.
    #[must_use]
    pub fn at(line: usize, column: usize, fault: Fault) -> Self {
        Self {
            line,
            column,
            fault,
        }
    }

    /// A fault of the whole file.
    #[must_use]
    pub fn whole(fault: Fault) -> Self {
        Self::at(1, 1, fault)
    }
}
