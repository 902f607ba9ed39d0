//! Heat and water from people and animals.

use super::error::{CabinError, CabinInput, within};
use super::moisture::EVAPORATION_J_KG;
use crate::quantity::{
    Mass, MassRate, Power, ThermodynamicTemperature, in_celsius, in_kilograms,
    kilograms_per_second, watts,
};

/// Masses of animals accepted, kg.
const ANIMAL_KG: (f64, f64) = (0.1, 120.0);

/// Who is in the cabin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Occupant {
    /// A person at something: the mean of the men, women and children who usually
    /// do it, as the handbook's columns of sensible and latent heat have it.
    Person {
        /// What they do.
        doing: Activity,
    },
    /// A warm-blooded animal of this mass.
    Animal {
        /// Its mass: 0.1 to 120 kg.
        mass: Mass,
    },
}

/// What a person does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Activity {
    /// Asleep: 0.7 of the heat of sitting still (0.7 and 1.0 met in ASHRAE 55,
    /// table 5.2.1.2, from memory), shared as when sitting.
    Asleep,
    /// Sitting still.
    Seated,
    /// Sitting, very light work: reading, writing.
    SeatedLightWork,
    /// Office work: typing, filing, now and then up.
    OfficeWork,
    /// Standing, light work, walking slowly: cooking.
    OnTheirFeet,
}

/// Heat and water given off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gains {
    /// Sensible heat.
    pub sensible: Power,
    /// Latent heat.
    pub latent: Power,
    /// The water that carries the latent heat.
    pub water: MassRate,
}

impl Activity {
    /// Sensible and latent watts of a person at 24 °C.
    ///
    /// The two columns add to the one that the table calls adjusted: 95 W at a
    /// matinee, where an adult man alone gives 115 W, a woman 0.85 and a child
    /// 0.75 of that (from memory).
    ///
    /// Source: ASHRAE Handbook of Fundamentals (2013, SI), ch. 18, table 1:
    /// seated at a matinee 65/30, seated with very light work 70/45, office
    /// work 75/55, standing or walking slowly 75/55.
    fn at_24_c_w(self) -> (f64, f64) {
        match self {
            Self::Asleep => (0.7 * 65.0, 0.7 * 30.0),
            Self::Seated => (65.0, 30.0),
            Self::SeatedLightWork => (70.0, 45.0),
            Self::OfficeWork | Self::OnTheirFeet => (75.0, 55.0),
        }
    }
}

impl Occupant {
    /// Sensible and latent watts at 24 °C.
    fn at_24_c_w(&self) -> Result<(f64, f64), CabinError> {
        match self {
            Self::Person { doing } => Ok(doing.at_24_c_w()),
            Self::Animal { mass } => {
                let kg = within(CabinInput::AnimalMass, in_kilograms(*mass), ANIMAL_KG)?;
                // 2.5 times the resting 3.5 kg^0.75 W, two thirds sensible:
                // ASHRAE Handbook of Fundamentals (2017), ch. 10, from memory.
                let total_w = 2.5 * 3.5 * kg.powf(0.75);
                Ok((0.67 * total_w, 0.33 * total_w))
            }
        }
    }
}

/// Gains of everyone aboard at an air temperature.
///
/// The total stays; its sensible part falls by a fifth from 24 to 27 °C, as
/// the table's note has it, and here goes on falling at that rate (nothing is
/// left at 39 °C, a little above skin), which is ours.
///
/// Range: air -100 to 150 °C.
///
/// # Errors
/// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
///
/// Source: ASHRAE Handbook of Fundamentals (2013, SI), ch. 18, table 1, note 1.
pub fn gains(aboard: &[Occupant], air: ThermodynamicTemperature) -> Result<Gains, CabinError> {
    let air_c = within(
        CabinInput::Temperature,
        in_celsius(air),
        super::state::RANGE_C,
    )?;
    let dry_share = (1.0 - 0.2 * (air_c - 24.0).max(0.0) / 3.0).max(0.0);
    let (mut sensible_w, mut latent_w) = (0.0, 0.0);
    for occupant in aboard {
        let (dry_w, wet_w) = occupant.at_24_c_w()?;
        sensible_w += dry_w * dry_share;
        latent_w += wet_w + dry_w * (1.0 - dry_share);
    }
    Ok(Gains {
        sensible: watts(sensible_w),
        latent: watts(latent_w),
        water: kilograms_per_second(latent_w / EVAPORATION_J_KG),
    })
}
