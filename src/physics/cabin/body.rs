//! From a handful of answers to the figures of a cabin.
//!
//! Every figure comes back in [`Figures`], to be looked at and replaced. Which
//! of them are measured sizes or standard values and which are our guesses is
//! said beside each.

use super::error::{CabinError, CabinInput, within};
use crate::quantity::{
    Area, HeatCapacity, HeatTransfer, Length, Volume, cubic_meters, in_meters, joules_per_kelvin,
    square_meters, watts_per_square_meter_kelvin,
};

use super::figures::Figures;

/// Inside lengths accepted, m.
pub const LENGTH_M: (f64, f64) = (1.0, 20.0);

/// What kind of body.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BodyKind {
    /// Panel van, cab curtained off.
    Van,
    /// Caravan or travel trailer.
    Trailer,
    /// Canvas on a frame.
    TentCabin,
    /// Saloon of a boat; half its walls lie below deck out of the sun.
    Boat,
    /// Timber cabin.
    SmallCabin,
}

/// How well the shell is insulated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Insulation {
    /// Sheet metal, thin plastic or canvas: the two air films only.
    Bare,
    /// Some foam with the ribs left bare, as most home conversions.
    Partial,
    /// ATP "normally insulated".
    Normal,
    /// ATP "heavily insulated".
    Heavy,
    /// A value known better.
    Known(HeatTransfer),
}

/// Colour of the outside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Colour {
    /// White and its like.
    Light,
    /// Silver, beige, mid tones.
    Medium,
    /// Black, dark blue, dark green.
    Dark,
}

/// What the windows are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Glazing {
    /// One pane.
    Single,
    /// Two panes, glass or acrylic.
    Double,
}

/// What hangs before or behind them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Covers {
    /// Nothing.
    None,
    /// Curtains inside.
    Curtains,
    /// Reflective mats inside.
    InsideMats,
    /// Covers outside, which stop the sun before it is in.
    OutsideCovers,
}

/// The answers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Body {
    /// What kind of body.
    pub kind: BodyKind,
    /// Length of the living space inside: 1 to 20 m.
    pub inside_length: Length,
    /// How well it is insulated.
    pub insulation: Insulation,
    /// Colour outside.
    pub colour: Colour,
    /// What the windows are.
    pub glazing: Glazing,
    /// What covers them.
    pub covers: Covers,
    /// Share of the sun that trees or awnings keep off, 0 to 1.
    pub shade: f64,
}

/// What a kind of body is taken to be. Common practice, no source, except
/// where said.
struct Habit {
    width_m: f64,
    height_m: f64,
    /// Windows, m², and roof lights, m².
    glass_m2: f64,
    roof_glass_m2: f64,
    /// Share of the walls the sun can reach.
    lit_walls: f64,
    /// Heat the shell takes up, J/K a square metre of floor. Very light 80 000
    /// and light 110 000: ISO 13790:2008, table 12, from memory; tent: a guess.
    shell_j_m2_k: f64,
    air_changes_per_hour: f64,
}

impl BodyKind {
    fn habit(self) -> Habit {
        let habit = |width_m, height_m, glass_m2, roof_glass_m2| Habit {
            width_m,
            height_m,
            glass_m2,
            roof_glass_m2,
            lit_walls: 1.0,
            shell_j_m2_k: 80_000.0,
            air_changes_per_hour: 0.7,
        };
        match self {
            Self::Van => habit(1.75, 1.85, 1.2, 0.3),
            Self::Trailer => habit(2.1, 1.95, 2.0, 0.4),
            Self::TentCabin => Habit {
                shell_j_m2_k: 20_000.0,
                air_changes_per_hour: 3.0,
                ..habit(3.0, 2.1, 0.0, 0.0)
            },
            Self::Boat => Habit {
                lit_walls: 0.5,
                air_changes_per_hour: 1.0,
                ..habit(2.4, 1.85, 1.2, 0.4)
            },
            Self::SmallCabin => Habit {
                shell_j_m2_k: 110_000.0,
                ..habit(3.2, 2.4, 2.5, 0.0)
            },
        }
    }
}

impl Insulation {
    /// Heat transfer coefficient of the shell, air to air.
    ///
    /// Source: ATP (UN ECE/TRANS, Annex 1): normally insulated at most 0.70,
    /// heavily at most 0.40 W/(m² K). Bare: the surface resistances 0.13 and
    /// 0.04 m² K/W of ISO 6946 (from memory) alone. Partial: a guess, the
    /// metal ribs bridge 20 to 30 mm of foam.
    #[must_use]
    pub fn coefficient(self) -> HeatTransfer {
        match self {
            Self::Bare => watts_per_square_meter_kelvin(1.0 / 0.17),
            Self::Partial => watts_per_square_meter_kelvin(2.0),
            Self::Normal => watts_per_square_meter_kelvin(0.70),
            Self::Heavy => watts_per_square_meter_kelvin(0.40),
            Self::Known(known) => known,
        }
    }
}

impl Colour {
    /// Share of the sun absorbed.
    ///
    /// Source: ASHRAE Handbook of Fundamentals, sol-air temperature: absorptance
    /// over film 0.15 for light and 0.30 h ft² °F/Btu for dark surfaces, with
    /// its film of 3.0, so 0.45 and 0.90; medium lies between.
    #[must_use]
    pub fn absorptance(self) -> f64 {
        match self {
            Self::Light => 0.45,
            Self::Medium => 0.675,
            Self::Dark => 0.90,
        }
    }
}

impl Glazing {
    /// Heat transfer coefficient, W/(m² K), and share of the sun let in. Usual
    /// values of plain panes (common practice, no source).
    fn values(self) -> (f64, f64) {
        match self {
            Self::Single => (5.8, 0.82),
            Self::Double => (2.8, 0.72),
        }
    }
}

impl Covers {
    /// What they leave of conduction and of the sun let in: guesses.
    fn leaves(self) -> (f64, f64) {
        match self {
            Self::None => (1.0, 1.0),
            Self::Curtains => (0.9, 0.65),
            Self::InsideMats => (0.7, 0.40),
            Self::OutsideCovers => (0.7, 0.12),
        }
    }
}

impl Body {
    /// The figures of this body.
    ///
    /// Range: inside length 1 to 20 m, shade 0 to 1; a known coefficient is
    /// checked with the figures.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub fn figures(&self) -> Result<Figures, CabinError> {
        let length_m = within(CabinInput::Length, in_meters(self.inside_length), LENGTH_M)?;
        let shade = within(CabinInput::Share, self.shade, (0.0, 1.0))?;
        let habit = self.kind.habit();
        let sizes = Sizes::of(length_m, &habit);
        let (glass_u, glass_gain) = self.glazing.values();
        let (left_u, left_gain) = self.covers.leaves();
        Ok(Figures {
            floor: sizes.floor,
            volume: sizes.volume,
            roof: sizes.roof,
            walls: sizes.walls,
            wall_glass: sizes.wall_glass,
            roof_glass: sizes.roof_glass,
            lit_walls: habit.lit_walls,
            shell_coefficient: self.insulation.coefficient(),
            glass_coefficient: watts_per_square_meter_kelvin(glass_u * left_u),
            glass_gain: glass_gain * left_gain,
            absorptance: self.colour.absorptance(),
            shade,
            air_capacity: sizes.capacity(10_000.0),
            shell_capacity: sizes.capacity(habit.shell_j_m2_k),
            air_changes_per_hour: habit.air_changes_per_hour,
            air_density_kg_m3: 1.2,
            moisture_buffer: 5.0,
        })
    }
}

/// A plain box.
struct Sizes {
    floor: Area,
    volume: Volume,
    roof: Area,
    walls: Area,
    wall_glass: Area,
    roof_glass: Area,
    floor_m2: f64,
}

impl Sizes {
    fn of(length_m: f64, habit: &Habit) -> Self {
        let floor_m2 = length_m * habit.width_m;
        let walls_m2 = 2.0 * (length_m + habit.width_m) * habit.height_m;
        // A small body has no room for more glass than this.
        let wall_glass_m2 = habit.glass_m2.min(0.3 * walls_m2);
        let roof_glass_m2 = habit.roof_glass_m2.min(0.3 * floor_m2);
        Self {
            floor: square_meters(floor_m2),
            volume: cubic_meters(floor_m2 * habit.height_m),
            roof: square_meters(floor_m2 - roof_glass_m2),
            walls: square_meters(walls_m2 - wall_glass_m2),
            wall_glass: square_meters(wall_glass_m2),
            roof_glass: square_meters(roof_glass_m2),
            floor_m2,
        }
    }

    fn capacity(&self, j_m2_k: f64) -> HeatCapacity {
        joules_per_kelvin(self.floor_m2 * j_m2_k)
    }
}
