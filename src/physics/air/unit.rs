//! What a cooling unit gives and draws away from its rating.
//!
//! Published curves of laboratory tests, by the wet bulb entering the coil and
//! the dry bulb outdoors. Outside their range the nearest edge is used and
//! said so: a quadratic leaves the truth fast.
//!
//! The same reports print curves by airflow. That of the window unit's energy
//! is not normalised (it gives 1.155 at full flow), so flow curves are left out
//! of both sets; airflow below the rated one shows up in the measured capacity.

use super::error::{AirError, AirInput, within};
use crate::quantity::{Power, ThermodynamicTemperature, celsius, in_celsius, in_watts, watts};

/// Coefficients of 1, x, x², y, y², xy.
type Surface = [f64; 6];

/// A named set of curves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CurveSet {
    /// Window unit of 10.7 EER, single speed. Winkler, Booten, Christensen and
    /// Tomerlin, "Laboratory Performance Testing of Residential Window Air
    /// Conditioners", NREL/TP-5500-57617 (2013). x and y in Celsius.
    WindowUnit,
    /// Central single-speed unit. Cutler, Winkler, Kruis, Christensen and
    /// Brandemuehl, "Improved Modeling of Residential Air Conditioners and Heat
    /// Pumps for Energy Calculations", NREL/TP-5500-56354 (2013). x and y in
    /// Fahrenheit.
    SingleSpeedCentral,
    /// Low stage of a two-stage air-source unit: 300 settled runs in environmental
    /// chambers at NIST (doi 10.18434/mds2-3058; MIT), those of the place Atlanta,
    /// outdoors 20 to 38 °C, entering wet bulb 15.7 to 19.5 °C. Least absolute
    /// deviations on both. A compressor has a least lift: its draw falls less in cool
    /// air than the curves of 2013 say. x and y in Celsius.
    TwoStageLow,
    /// Its high stage: 41 settled runs, likewise.
    TwoStageHigh,
}

/// What a curve set holds.
struct Curves {
    capacity: Surface,
    /// Power for each unit of capacity, or the power itself.
    energy_input: Surface,
    is_draw: bool,
    /// Part-load factor at no load; it rises to 1 at full load.
    part_load_floor: f64,
    fahrenheit: bool,
}

/// Entering wet bulbs used as they are, Celsius: 55 to 75 °F. The reports'
/// own limits were not to hand; this is the span such units are tested over.
pub const WET_BULB_C: (f64, f64) = (12.8, 23.9);
/// Outdoor dry bulbs used as they are, Celsius: 65 to 120 °F, likewise.
pub const OUTDOOR_C: (f64, f64) = (18.3, 48.9);
/// Temperatures accepted at all, Celsius.
const ACCEPTED_C: (f64, f64) = (-40.0, 70.0);

/// A plane through 1 at the reports' rating, by the kelvin outdoors and of wet bulb.
const fn plane(per_outdoor_k: f64, per_wet_bulb_k: f64) -> Surface {
    let middle = 1.0 - 35.0 * per_outdoor_k - 19.4 * per_wet_bulb_k;
    [middle, per_wet_bulb_k, 0.0, per_outdoor_k, 0.0, 0.0]
}

impl CurveSet {
    fn curves(self) -> Curves {
        match self {
            Self::WindowUnit => Curves {
                capacity: [0.6405, 0.01568, 0.0004531, 0.001615, -0.0001825, 0.00006614],
                energy_input: [2.287, -0.1732, 0.004745, 0.01662, 0.000484, -0.001306],
                is_draw: false,
                part_load_floor: 0.78,
                fahrenheit: false,
            },
            Self::SingleSpeedCentral => Curves {
                capacity: [
                    3.670270705,
                    -0.098652414,
                    0.000955906,
                    0.006552414,
                    -0.0000156,
                    -0.000131877,
                ],
                energy_input: [
                    -3.302695861,
                    0.137871531,
                    -0.001056996,
                    -0.012573945,
                    0.000214638,
                    -0.000145054,
                ],
                is_draw: false,
                part_load_floor: 0.80,
                fahrenheit: true,
            },
            // Straight about 35 °C outdoors and 19.4 °C wet bulb, 1 there.
            Self::TwoStageLow => Curves {
                capacity: plane(-0.013_59, 0.002_77),
                energy_input: plane(0.019_21, 0.001_13),
                is_draw: true,
                part_load_floor: 0.80,
                fahrenheit: false,
            },
            Self::TwoStageHigh => Curves {
                capacity: plane(-0.013_02, 0.009_47),
                energy_input: plane(0.015_14, -0.006_82),
                is_draw: true,
                part_load_floor: 0.80,
                fahrenheit: false,
            },
        }
    }

    /// Capacity and energy-input ratio relative to the reports' own rating
    /// (19.4 °C entering wet bulb, 35 °C outdoors), as printed: at the rating
    /// itself they miss 1 by up to 1 %.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`] below -40 or above 70 °C, or [`AirError::NotANumber`].
    pub fn at(
        self,
        entering_wet_bulb: ThermodynamicTemperature,
        outdoor: ThermodynamicTemperature,
    ) -> Result<Ratios, AirError> {
        let (low, high) = ACCEPTED_C;
        let wet_c = within(AirInput::WetBulb, in_celsius(entering_wet_bulb), low, high)?;
        let out_c = within(AirInput::Outdoor, in_celsius(outdoor), low, high)?;
        let x_c = wet_c.clamp(WET_BULB_C.0, WET_BULB_C.1);
        let y_c = out_c.clamp(OUTDOOR_C.0, OUTDOOR_C.1);
        let curves = self.curves();
        let own = |t_c: f64| {
            if curves.fahrenheit {
                t_c * 1.8 + 32.0
            } else {
                t_c
            }
        };
        let value = |s: &Surface| {
            let (x, y) = (own(x_c), own(y_c));
            s[0] + x * (s[1] + x * s[2]) + y * (s[3] + y * s[4]) + s[5] * x * y
        };
        let capacity = value(&curves.capacity);
        let input = value(&curves.energy_input);
        Ok(Ratios {
            capacity,
            energy_input: if curves.is_draw {
                input / capacity
            } else {
                input
            },
            wet_bulb_taken: (x_c != wet_c).then(|| celsius(x_c)),
            outdoor_taken: (y_c != out_c).then(|| celsius(y_c)),
        })
    }

    /// Efficiency while cycling over efficiency when running on: from
    /// 0.78 (0.80 for the central unit) at no load to 1 at full load.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`] or [`AirError::NotANumber`] unless `load` is 0 to 1.
    pub fn part_load_factor(self, load: f64) -> Result<f64, AirError> {
        let load = within(AirInput::PartLoad, load, 0.0, 1.0)?;
        let floor = self.curves().part_load_floor;
        Ok(floor + (1.0 - floor) * load)
    }
}

/// Capacity and energy input over their values at the reports' rating.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ratios {
    /// Capacity over rated capacity.
    pub capacity: f64,
    /// Power for each unit of capacity, over its rated value.
    pub energy_input: f64,
    /// The wet bulb used instead, where the one given lies outside the curves.
    pub wet_bulb_taken: Option<ThermodynamicTemperature>,
    /// The outdoor temperature used instead, likewise.
    pub outdoor_taken: Option<ThermodynamicTemperature>,
}

/// A unit: what its label or a measurement says, where, and which curves it follows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// Whose curves.
    pub curves: CurveSet,
    /// Total capacity there.
    pub capacity: Power,
    /// Electrical power there.
    pub power: Power,
    /// Wet bulb entering the coil when it was rated or measured.
    pub rated_wet_bulb: ThermodynamicTemperature,
    /// Air into the condenser then.
    pub rated_outdoor: ThermodynamicTemperature,
}

/// What a unit does at one condition.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Performance {
    /// Total capacity, running on.
    pub capacity: Power,
    /// Electrical power, running on.
    pub power: Power,
    /// The wet bulb used instead, where the one given lies outside the curves.
    pub wet_bulb_taken: Option<ThermodynamicTemperature>,
    /// The outdoor temperature used instead, likewise.
    pub outdoor_taken: Option<ThermodynamicTemperature>,
}

impl Unit {
    /// Capacity and power at an entering wet bulb and an outdoor temperature.
    ///
    /// Give the air the condenser really breathes: a roof is hotter than the
    /// weather. The curves are scaled so that the unit's own point comes back
    /// exactly. For variable speed they are a stand-in: widen the spread.
    ///
    /// # Errors
    /// [`AirError::OutOfRange`] or [`AirError::NotANumber`] for a temperature,
    /// the capacity (0 to 100 kW) or the power (0.1 W to 50 kW).
    ///
    /// ```
    /// use till_morning::physics::air::{CurveSet, Unit};
    /// use till_morning::quantity::{celsius, in_watts, watts};
    ///
    /// let unit = Unit {
    ///     curves: CurveSet::WindowUnit,
    ///     capacity: watts(1_500.0),
    ///     power: watts(480.0),
    ///     rated_wet_bulb: celsius(19.4),
    ///     rated_outdoor: celsius(35.0),
    /// };
    /// // Hotter outdoors: less cooling for more power.
    /// let hot = unit.at(celsius(19.4), celsius(45.0))?;
    /// assert!(in_watts(hot.capacity) < 1_500.0 && in_watts(hot.power) > 480.0);
    ///
    /// // Past the edge of the curves the edge is used, and said so.
    /// assert!(unit.at(celsius(19.4), celsius(60.0))?.outdoor_taken.is_some());
    /// # Ok::<(), till_morning::physics::air::AirError>(())
    /// ```
    pub fn at(
        &self,
        entering_wet_bulb: ThermodynamicTemperature,
        outdoor: ThermodynamicTemperature,
    ) -> Result<Performance, AirError> {
        let capacity_w = within(AirInput::Capacity, in_watts(self.capacity), 0.0, 100_000.0)?;
        let power_w = within(
            AirInput::ElectricalPower,
            in_watts(self.power),
            0.1,
            50_000.0,
        )?;
        let rated = self.curves.at(self.rated_wet_bulb, self.rated_outdoor)?;
        let here = self.curves.at(entering_wet_bulb, outdoor)?;
        let capacity = here.capacity / rated.capacity;
        let power = capacity * here.energy_input / rated.energy_input;
        Ok(Performance {
            capacity: watts(capacity_w * capacity),
            power: watts(power_w * power),
            wet_bulb_taken: here.wet_bulb_taken,
            outdoor_taken: here.outdoor_taken,
        })
    }
}
