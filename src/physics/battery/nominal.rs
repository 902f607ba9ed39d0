//! What "12 V" means: the nominal reading of a battery.
//!
//! "12 V 100 Ah" is 1200 Wh by the words and 1280 Wh by four LFP cells of
//! 3.2 V. The reading taken is part of the answer.

use super::Chemistry;

/// Names of systems, in volts as they are said.
const SYSTEMS: [f64; 4] = [12.0, 24.0, 36.0, 48.0];

/// What a bank of so many cells in series is called: 12, 24, 36 or 48; nothing for
/// a count that is not usual.
///
/// ```
/// use till_morning::physics::battery::{Chemistry, nominal::system_v};
/// assert_eq!(system_v(Chemistry::Lfp, 8), Some(24.0));
/// assert_eq!(system_v(Chemistry::Agm, 12), Some(24.0));
/// assert_eq!(system_v(Chemistry::Lfp, 12), Some(36.0));
/// assert_eq!(system_v(Chemistry::Lfp, 5), None);
/// ```
#[must_use]
pub fn system_v(chemistry: Chemistry, cells: u32) -> Option<f64> {
    let usual = chemistry.data().system_cells;
    let index = usual.iter().position(|&count| count == cells)?;
    SYSTEMS.get(index).copied()
}

/// A battery's nominal volts as taken, and the cells in series that make them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    pub volts: f64,
    pub cells: u32,
}

impl Reading {
    /// Reads `stated_v` by the chemistry.
    ///
    /// 12, 24, 36 and 48 are names of systems, read as the count of cells
    /// usual for them (common practice, no source). Any other number is a
    /// nominal voltage: the nearest whole count of cells, and the number stays.
    ///
    /// ```
    /// use till_morning::physics::battery::{Chemistry, nominal::Reading};
    /// assert_eq!(Reading::of(Chemistry::Lfp, 12.0), Reading { volts: 12.8, cells: 4 });
    /// assert_eq!(Reading::of(Chemistry::Agm, 12.0), Reading { volts: 12.0, cells: 6 });
    /// ```
    #[must_use]
    pub fn of(chemistry: Chemistry, stated_v: f64) -> Self {
        let kind = chemistry.data();
        let system = SYSTEMS.iter().position(|&v| v == stated_v);
        if let Some(index) = system {
            let cells = kind.system_cells[index];
            return Self {
                volts: kind.cell_nominal_v * f64::from(cells),
                cells,
            };
        }
        // At least one cell, also for a value that the range will refuse.
        let cells = (stated_v / kind.cell_nominal_v).round().clamp(1.0, 1000.0);
        Self {
            volts: stated_v,
            cells: cells as u32,
        }
    }

    /// Whether the reading differs from the number as said.
    #[must_use]
    pub fn differs_from(&self, stated_v: f64) -> bool {
        (self.volts - stated_v).abs() > 1e-9
    }
}
