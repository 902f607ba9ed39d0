//! Water in the cabin air: the third state.
//!
//! `mass x dW/dt = air change x (W_out - W) + people - coil x (W - W_surface)`,
//! the last only while the air is wetter than the coil's surface. The coil is
//! averaged over the step by the share of it the unit ran; with that the
//! balance is linear and solved exactly.

use super::books::WaterBook;
use super::curve::Curve;
use super::error::{CabinError, CabinInput, within};
use super::exact::{Mode, Phi};
use crate::quantity::{Mass, MassRate, in_kilograms, in_kilograms_per_second};

/// Heat to evaporate water near room temperature, J/kg (ASHRAE Handbook of
/// Fundamentals 2017, ch. 1, table 3: 2 442 kJ/kg at 25 °C).
pub const EVAPORATION_J_KG: f64 = 2_442_000.0;
/// Masses of air accepted, kg, with what buffers it.
const AIR_KG: (f64, f64) = (0.1, 1e6);
/// Humidity ratios accepted.
pub(super) const RATIO: (f64, f64) = (0.0, 0.2);
/// Crossings of the coil's surface followed within one step.
const PIECES: usize = 4;

/// The air that holds the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistStore {
    /// Dry air inside, times what lining, bedding and clothes buffer.
    pub dry_air: Mass,
    /// Air that comes and goes, as in [`super::Stores`].
    pub air_change: MassRate,
}

/// A coil that sheds water while the unit runs on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WetCoil {
    /// Air that touches the coil, kg/s: the unit's flow less what bypasses.
    pub contact_kg_s: f64,
    /// Humidity ratio of air saturated at the coil's surface.
    pub surface_ratio: f64,
}

impl WetCoil {
    /// A coil known only by its latent watts at the humidity of now.
    ///
    /// Taken in proportion to the water in the air, so it never dries air
    /// below nothing. `None` for no latent watts or bone-dry air.
    #[must_use]
    pub fn of_latent(latent_w: f64, humidity_ratio: f64) -> Option<Self> {
        let wet = latent_w > 0.0 && humidity_ratio > 1e-6;
        wet.then(|| Self {
            contact_kg_s: latent_w / EVAPORATION_J_KG / humidity_ratio,
            surface_ratio: 0.0,
        })
    }

    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn check(&self) -> Result<(), CabinError> {
        within(CabinInput::AirChange, self.contact_kg_s, (0.0, 50.0))?;
        within(CabinInput::HumidityRatio, self.surface_ratio, RATIO)?;
        Ok(())
    }
}

/// What pushes the water over a step.
#[derive(Debug, Clone, Copy)]
pub(super) struct WaterDrive {
    /// Outdoor humidity ratio at the start and at the end.
    pub outdoor: [f64; 2],
    /// Water from people, kg/s, likewise.
    pub people_kg_s: [f64; 2],
    /// The coil, its contact flow already times the share it ran.
    pub coil: Option<WetCoil>,
}

/// The store in plain numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Moisture {
    mass_kg: f64,
    change_kg_s: f64,
}

impl MoistStore {
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn checked(&self) -> Result<Moisture, CabinError> {
        Ok(Moisture {
            mass_kg: within(CabinInput::DryAir, in_kilograms(self.dry_air), AIR_KG)?,
            change_kg_s: within(
                CabinInput::AirChange,
                in_kilograms_per_second(self.air_change),
                (0.0, 50.0),
            )?,
        })
    }
}

impl Moisture {
    /// Humidity ratio after `step_s`, and where the water went.
    pub(super) fn advance(&self, ratio: f64, step_s: f64, drive: &WaterDrive) -> (f64, WaterBook) {
        let mut book = WaterBook::default();
        let (mut now, mut at_s) = (ratio, 0.0);
        let mut wet = drive.coil.is_some_and(|coil| now > coil.surface_ratio);
        for piece in 0..PIECES {
            let mode = self.mode(now, at_s, step_s, drive, wet);
            let left_s = step_s - at_s;
            let phi = Phi::at(mode.lambda * left_s);
            // The last piece is run out as it began: by then both sides of the
            // surface are within rounding of one another.
            let event = match drive.coil {
                Some(coil) if piece + 1 < PIECES => {
                    crossing(&mode, coil.surface_ratio, wet, left_s, &phi)
                }
                _ => None,
            };
            let run_s = event.unwrap_or(left_s);
            let phi = event.map_or(phi, |t| Phi::at(mode.lambda * t));
            self.enter(&mut book, &mode, drive, (at_s, run_s, step_s), &phi, wet);
            now = mode.after(run_s, &phi);
            at_s += run_s;
            if event.is_none() {
                break;
            }
            wet = !wet;
        }
        let end = now.max(0.0);
        book.stored_kg = self.mass_kg * (end - ratio);
        (end, book)
    }

    /// The balance from `at_s` on, with or without the coil.
    fn mode(&self, now: f64, at_s: f64, step_s: f64, drive: &WaterDrive, wet: bool) -> Mode {
        let coil = drive.coil.filter(|_| wet);
        let coil_kg_s = coil.map_or(0.0, |c| c.contact_kg_s);
        let surface = coil.map_or(0.0, |c| c.surface_ratio);
        let source = |i: usize| self.change_kg_s * drive.outdoor[i] + drive.people_kg_s[i];
        let rise = (source(1) - source(0)) / step_s;
        Mode {
            y: now,
            lambda: -(self.change_kg_s + coil_kg_s) / self.mass_kg,
            u: (source(0) + rise * at_s + coil_kg_s * surface) / self.mass_kg,
            v: rise / self.mass_kg,
        }
    }

    /// Enters one piece in the book; `times` are its start, length and the step.
    fn enter(
        &self,
        book: &mut WaterBook,
        mode: &Mode,
        drive: &WaterDrive,
        times: (f64, f64, f64),
        phi: &Phi,
        wet: bool,
    ) {
        let (at_s, run_s, step_s) = times;
        let middle = (at_s + 0.5 * run_s) / step_s;
        let mean = |ends: [f64; 2]| ends[0] + (ends[1] - ends[0]) * middle;
        let inside = mode.integral(run_s, phi);
        book.air_change_kg += self.change_kg_s * (mean(drive.outdoor) * run_s - inside);
        book.people_kg += mean(drive.people_kg_s) * run_s;
        if let Some(coil) = drive.coil.filter(|_| wet) {
            book.condensed_kg += coil.contact_kg_s * (inside - coil.surface_ratio * run_s);
        }
    }
}

/// When the air comes to the coil's surface humidity: down to it while wet, up
/// through it while dry.
fn crossing(mode: &Mode, surface: f64, wet: bool, left_s: f64, phi: &Phi) -> Option<f64> {
    let sign = if wet { -1.0 } else { 1.0 };
    let curve = Curve {
        modes: [*mode, Mode::default()],
        weight: [sign, 0.0],
        base: -sign * surface,
        slope: 0.0,
    };
    curve
        .first_rise(left_s, &[*phi, Phi::at(0.0)])
        .filter(|t| *t > 0.0 && *t < left_s)
}
