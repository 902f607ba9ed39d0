//! Airflow as people measure it, brought to a mass flow of dry air.
//!
//! The basis matters: the same 150 m³/h counted at a cold outlet is 2 to 13 %
//! more air than counted at a warm inlet.

use super::error::{AirError, AirInput, within};
use super::moist::MoistAir;
use crate::quantity::{
    Area, Velocity, VolumeRate, in_cubic_meters_per_second, in_meters_per_second, in_square_meters,
    meters_per_second,
};

/// Density of standard air, 0.075 lb/ft³ in kg/m³ of dry air: what "standard"
/// volume flows are counted at (ASHRAE Handbook of Fundamentals, ch. 18, the
/// basis of the 1.08 and 4.5 of the trade).
pub const STANDARD_DENSITY_KG_M3: f64 = 0.075 * 0.453_592_37 / 0.028_316_846_592;
/// Volume flows accepted, m³/s (up to 36 000 m³/h).
const FLOW_M3_S: (f64, f64) = (1e-6, 10.0);
/// Velocities accepted at one point, m/s.
const VELOCITY_M_S: (f64, f64) = (0.0, 50.0);
/// Free areas accepted, m².
const AREA_M2: (f64, f64) = (1e-5, 10.0);

/// Which side of the cooler.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// Where room air goes in.
    Inlet,
    /// Where cooled air comes out.
    Outlet,
}

/// Which air a volume flow counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FlowBasis {
    /// Real volume at one face.
    Actual(Face),
    /// Volume the same mass would have at 0.075 lb/ft³.
    Standard,
}

/// Airflow as measured.
#[derive(Debug, Clone, PartialEq)]
pub enum Airflow {
    /// A volume flow and the air it counts.
    Volume {
        /// The flow.
        rate: VolumeRate,
        /// What it counts.
        basis: FlowBasis,
    },
    /// Vane readings over a grille, averaged, times its free area.
    Vane {
        /// One reading a traverse point, equal areas each.
        points: Vec<Velocity>,
        /// Open area of the grille, not its outside size.
        free_area: Area,
        /// Where the grille is.
        at: Face,
    },
}

/// What a traverse says about itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Traverse {
    /// Mean of the points.
    pub mean: Velocity,
    /// Standard deviation of the mean (s/√n); `None` for a single point, which
    /// says nothing of its own spread.
    pub spread_of_mean: Option<Velocity>,
    /// How many points.
    pub points: usize,
}

impl Traverse {
    /// Mean and spread of velocity readings, each 0 to 50 m/s.
    ///
    /// # Errors
    /// [`AirError::NoReadings`] for none; [`AirError::OutOfRange`] or
    /// [`AirError::NotANumber`] for the first reading that is no good.
    ///
    /// Source: arithmetic mean over equal areas, and GUM (JCGM 100:2008) 4.2.3
    /// for the spread.
    pub fn of(points: &[Velocity]) -> Result<Self, AirError> {
        let (low, high) = VELOCITY_M_S;
        if points.is_empty() {
            return Err(AirError::NoReadings);
        }
        let mut sum_m_s = 0.0;
        for &point in points {
            sum_m_s += within(AirInput::Velocity, in_meters_per_second(point), low, high)?;
        }
        let n = points.len() as f64;
        let mean_m_s = sum_m_s / n;
        let square_sum: f64 = points
            .iter()
            .map(|&point| (in_meters_per_second(point) - mean_m_s).powi(2))
            .sum();
        let spread_of_mean = (points.len() > 1)
            .then(|| meters_per_second((square_sum / (n - 1.0) / n).max(0.0).sqrt()));
        Ok(Self {
            mean: meters_per_second(mean_m_s),
            spread_of_mean,
            points: points.len(),
        })
    }
}

impl Airflow {
    /// Mass flow of dry air, kg/s, given the air at both faces.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`], [`AirError::NotANumber`],
    /// [`AirError::NoReadings`]; a vane that reads no flow at all is out of range.
    pub(super) fn dry_air_kg_s(
        &self,
        inlet: &MoistAir,
        outlet: &MoistAir,
    ) -> Result<f64, AirError> {
        let (m3_s, basis) = self.volume_m3_s()?;
        Ok(match basis {
            FlowBasis::Actual(Face::Inlet) => m3_s / inlet.volume_m3_kg(),
            FlowBasis::Actual(Face::Outlet) => m3_s / outlet.volume_m3_kg(),
            FlowBasis::Standard => m3_s * STANDARD_DENSITY_KG_M3,
        })
    }

    /// The traverse behind the flow, if there was one.
    ///
    /// # Errors
    /// As [`Traverse::of`].
    pub fn traverse(&self) -> Result<Option<Traverse>, AirError> {
        match self {
            Self::Volume { .. } => Ok(None),
            Self::Vane { points, .. } => Traverse::of(points).map(Some),
        }
    }

    /// Volume flow, m³/s, and what it counts.
    fn volume_m3_s(&self) -> Result<(f64, FlowBasis), AirError> {
        let (m3_s, basis) = match self {
            Self::Volume { rate, basis } => (in_cubic_meters_per_second(*rate), *basis),
            Self::Vane {
                points,
                free_area,
                at,
            } => {
                let m2 = within(
                    AirInput::FreeArea,
                    in_square_meters(*free_area),
                    AREA_M2.0,
                    AREA_M2.1,
                )?;
                let mean_m_s = in_meters_per_second(Traverse::of(points)?.mean);
                (m2 * mean_m_s, FlowBasis::Actual(*at))
            }
        };
        let m3_s = within(AirInput::VolumeFlow, m3_s, FLOW_M3_S.0, FLOW_M3_S.1)?;
        Ok((m3_s, basis))
    }
}
