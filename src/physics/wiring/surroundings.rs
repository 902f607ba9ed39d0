//! Where a conductor lies: air, bundle, insulation, terminals; and the column of
//! the ampacity table they lead to.

use super::limits::{Input, Refusal};
use crate::quantity::{ThermodynamicTemperature, celsius, in_celsius};

/// Air in an engine space, C: what note 1 of 33 CFR 183.425 table 5 is for.
const ENGINE_SPACE_C: f64 = 50.0;

/// A column of the table: what temperature the insulation, or the terminal,
/// is made to bear.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Column {
    /// 60 C (140 F).
    C60,
    /// 75 C (167 F).
    C75,
    /// 80 C (176 F).
    C80,
    /// 90 C (194 F).
    C90,
    /// 105 C (221 F).
    C105,
    /// 125 C (257 F).
    C125,
    /// 200 C (392 F).
    C200,
}

impl Column {
    /// All columns, coolest first.
    pub const ALL: [Self; 7] = [
        Self::C60,
        Self::C75,
        Self::C80,
        Self::C90,
        Self::C105,
        Self::C125,
        Self::C200,
    ];

    pub(super) const fn rating_c(self) -> f64 {
        match self {
            Self::C60 => 60.0,
            Self::C75 => 75.0,
            Self::C80 => 80.0,
            Self::C90 => 90.0,
            Self::C105 => 105.0,
            Self::C125 => 125.0,
            Self::C200 => 200.0,
        }
    }

    /// The temperature the column stands for.
    #[must_use]
    pub fn rating(self) -> ThermodynamicTemperature {
        celsius(self.rating_c())
    }

    /// The hottest column not above a rating: 70 C insulation is read in the
    /// 60 C column.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] below 60 C (no column covers it) or above 500.
    pub fn for_rating(rating: ThermodynamicTemperature) -> Result<Self, Refusal> {
        // The nudge undoes the rounding of the passage through kelvins.
        let rating_c = in_celsius(rating) + 1e-9;
        Input::TemperatureRating.check(rating_c)?;
        let fits = |column: &Self| column.rating_c() <= rating_c;
        Ok(Self::ALL.into_iter().rev().find(fits).unwrap_or(Self::C60))
    }

    /// Note 1 of table 5: share of the value left in an engine space (50 C).
    #[must_use]
    pub const fn engine_space_factor(self) -> f64 {
        match self {
            Self::C60 => 0.58,
            Self::C75 => 0.75,
            Self::C80 => 0.78,
            Self::C90 => 0.82,
            Self::C105 => 0.85,
            Self::C125 => 0.89,
            Self::C200 => 1.00,
        }
    }
}

/// Where a conductor lies and what it ends on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surroundings {
    /// Air around it at its hottest, -60 to 120 C. A dark roof space in the
    /// sun is hotter than the day.
    pub ambient: ThermodynamicTemperature,
    /// It passes an engine space.
    pub engine_space: bool,
    /// Conductors carrying current in the same bundle, duct or cable, this
    /// circuit's own two counted: 1 to 1000.
    pub bundled: u32,
    /// It runs inside a wall, conduit or duct, where heat leaves slowly.
    pub enclosed: bool,
    /// It lies in a sheath with others, so gauge 18 is thick enough.
    pub sheathed: bool,
    /// Rating of its insulation.
    pub insulation: Column,
    /// Rating of the coolest terminal, fuse holder or device it ends on.
    pub terminals: Column,
}

impl Surroundings {
    /// The column that governs: the cooler of insulation and terminals. A hot
    /// conductor on a cool terminal burns the terminal (the thought of NFPA 70
    /// section 110.14(C), taken here without its allowance to derate from the
    /// hotter column).
    #[must_use]
    pub fn column(&self) -> Column {
        self.insulation.min(self.terminals)
    }

    fn ambient_c(&self) -> Result<f64, Refusal> {
        let ambient_c = Input::Ambient.check(in_celsius(self.ambient))?;
        Ok(if self.engine_space {
            ambient_c.max(ENGINE_SPACE_C)
        } else {
            ambient_c
        })
    }

    /// The air reckoned with: as given, and at least 50 C in an engine space.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] for an ambient outside -60 to 120 C.
    pub fn reckoned_ambient(&self) -> Result<ThermodynamicTemperature, Refusal> {
        self.ambient_c().map(celsius)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rating_between_columns_is_read_in_the_cooler_one() {
        let read = |rating_c| Column::for_rating(celsius(rating_c));
        assert_eq!(read(70.0), Ok(Column::C60));
        assert!(Column::ALL.iter().all(|c| read(c.rating_c()) == Ok(*c)));
        assert_eq!(read(260.0), Ok(Column::C200));
        assert!(read(59.0).is_err());
    }
}
