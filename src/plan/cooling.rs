//! What a unit gives for what it draws.

use super::{
    Draw, Figure, Plan, Unit,
    part::{choice, part},
};

choice! {
    /// How a unit keeps the set point.
    Control {
        /// On and off about it.
        Thermostat = "thermostat",
        /// Follows the load down to a floor.
        Modulating = "modulating",
    }
}

choice! {
    /// Whose published map a unit follows away from its rating.
    UnitCurves {
        /// A single-speed window unit.
        WindowUnit = "window_unit",
        /// A single-speed split or central unit.
        SingleSpeed = "single_speed",
        /// A two-stage unit; its strongest mode is the high stage.
        TwoStage = "two_stage",
    }
}

part! {
    /// A settled run of the unit itself: a row of its map.
    MapRow, MapField, default by MapRow {
        /// Air into the condenser.
        outdoor_c: MaybeNumber = OutdoorC, OUTDOOR_C, Nothing, NoSpread;
        /// Wet bulb of the air into the coil.
        entering_wet_bulb_c: MaybeNumber = EnteringWetBulbC, WET_BULB_C, Nothing, NoSpread;
        /// Electrical power then.
        draw_w: MaybeNumber = DrawW, DRAW_W, Nothing, NoSpread;
        /// Total cooling then.
        cooling_w: MaybeNumber = CoolingW, COOLING_W, Nothing, NoSpread;
    } with {}
}

/// Fewest and most rows of a map.
pub const MAP_ROWS: (usize, usize) = (2, 20);

impl MapRow {
    /// Whether all four are there.
    #[must_use]
    pub fn is_whole(&self) -> bool {
        let numbers = [
            self.outdoor_c,
            self.entering_wet_bulb_c,
            self.draw_w,
            self.cooling_w,
        ];
        numbers.iter().all(Option::is_some)
    }
}

part! {
    /// A unit's cooling at its rating, and how it is told to run.
    UnitCooling, CoolingField, default by Unit {
        /// Total cooling in its strongest mode.
        // No spread: the mode's own cooling is spread, and that of the unit is in it.
        cooling_w: MaybeFigure = CoolingW, COOLING_W,
            Of(|unit, _| Some(unit.usual_cooling_w())), NoSpread;
        /// Watts of cooling for each watt, where the cooling is not stated.
        cop: MaybeFigure = Cop, COP, Guess(USUAL_COP), NoSpread;
        /// Air outdoors at that rating.
        rated_outdoor_c: MaybeNumber = RatedOutdoorC, OUTDOOR_C, Exact(35.0), NoSpread;
        /// Wet bulb of the air into the coil at that rating.
        rated_wet_bulb_c: MaybeNumber = RatedWetBulbC, WET_BULB_C, Exact(19.4), NoSpread;
        /// Least cooling over full cooling, of a modulating unit.
        floor_percent: MaybeFigure = FloorPercent, FLOOR_PERCENT,
            Guess(30.0), Share(10.0, 5.0, 30.0);
        /// Air through the coil in its strongest mode.
        airflow_m3_h: MaybeFigure = AirflowM3H, AIRFLOW_M3_H,
            Of(|unit, _| Some(unit.usual_airflow_m3_h())), Share(15.0, 8.0, 25.0);
        /// Sensible share of the cooling at the rating.
        sensible_percent: MaybeFigure = SensiblePercent, SENSIBLE_PERCENT,
            Guess(75.0), Share(5.0, 3.0, 8.0);
        /// How much hotter than the weather the air is that the condenser breathes.
        intake_rise_k: MaybeFigure = IntakeRiseK, INTAKE_RISE_K, Guess(3.0), Units(1.0, 0.5, 2.0);
        /// Minutes of full cooling that a start costs while it draws already; none is
        /// taken of a unit that follows the load.
        start_loss_min: MaybeFigure = StartLossMin, START_LOSS_MIN,
            Of(|unit, _| unit.usual_start_loss_min()), Share(25.0, 15.0, 60.0);
    } with {
        control: Option<Control>,
        /// Absent: a window unit's.
        curves: Option<UnitCurves>,
        /// Two to twenty settled runs of the unit: how draw and cooling change with
        /// the air. The published map keeps what these do not say. A row that lacks a
        /// number is left out.
        unit_map: Vec<MapRow>,
    }
}

/// Watts of cooling a watt where nothing is stated: 10 Btu/Wh, a plain window
/// unit (common practice, no source).
const USUAL_COP: f64 = 2.93;
/// Airflow by the cooling, m³/h a watt: 400 ft³/min a ton (common practice, no
/// source).
const USUAL_M3_H_PER_W: f64 = 0.193;

/// Cooling lost at a start, in minutes of full cooling: in its first minutes a unit
/// gave 44, 81, 93 and 99 % of what it gave when settled, at nearly full draw (a
/// two-stage unit in NIST's chambers, doi 10.18434/mds2-3058).
const USUAL_START_LOSS_MIN: f64 = 0.8;

impl Unit {
    /// Watts of the strongest mode while on.
    #[must_use]
    pub fn strongest_w(&self) -> f64 {
        self.modes
            .iter()
            .map(|mode| mode.draw.nominal_w())
            .fold(0.0, f64::max)
    }

    /// By the watts it draws, where nobody says what it gives.
    fn usual_cooling_w(&self) -> Figure {
        let cop = self.cooling.cop.map_or(USUAL_COP, |cop| cop.value);
        Figure::guess(self.strongest_w() * cop)
    }

    fn usual_start_loss_min(&self) -> Option<Figure> {
        let is_cycling = self.cooling.control != Some(Control::Modulating);
        is_cycling.then(|| Figure::guess(USUAL_START_LOSS_MIN))
    }

    fn cooling_w(&self) -> f64 {
        self.cooling
            .cooling_w
            .unwrap_or(self.usual_cooling_w())
            .value
    }

    fn usual_airflow_m3_h(&self) -> Figure {
        Figure::guess(self.cooling_w() * USUAL_M3_H_PER_W)
    }
}

impl Plan {
    /// Cooling of a mode where it is not stated: the strongest mode's, in
    /// proportion to the watts.
    pub(super) fn assumed_mode_cooling(&self, unit: usize, mode: usize) -> Option<Figure> {
        let unit = self.units.get(unit)?;
        let mode_w = unit.modes.get(mode)?.draw.nominal_w();
        let strongest_w = unit.strongest_w();
        Some(Figure::guess(if strongest_w > 0.0 {
            unit.cooling_w() * mode_w / strongest_w
        } else {
            0.0
        }))
    }
}

impl Draw {
    /// Watts while on, amps taken at the voltage they were measured at.
    #[must_use]
    pub fn nominal_w(&self) -> f64 {
        match *self {
            Self::Power { power_w } => power_w.value,
            Self::Current {
                current_a,
                measured_at_v,
            } => current_a.value * measured_at_v,
        }
    }
}
