//! Every accepted range, once: the engine's check, the form and the docs read it.
//!
//! A range is what the engine can honestly answer, not what is common. It is
//! wide enough for a lantern battery and for a bank in a house.

use serde::{Deserialize, Serialize};

/// What a number counts. `text` turns it into the sign after the number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    Volt,
    Amp,
    AmpHour,
    Watt,
    WattHour,
    Milliohm,
    Percent,
    /// Per cent of the output lost for each kilowatt of output.
    PercentPerKilowatt,
    Hour,
    /// Minutes after midnight, shown as a clock time.
    ClockMinute,
    Meter,
    /// Of a conductor; typed and shown as a gauge where one has that area.
    SquareMillimeter,
    Celsius,
    /// A difference of temperatures.
    Kelvin,
    Kilogram,
    Degree,
    Minute,
    Millisecond,
    SquareMeter,
    CubicMeter,
    CubicMeterPerHour,
    /// Of wind.
    MeterPerSecond,
    /// Of the air at a grille or coil, in metres a second.
    FaceVelocity,
    PerHour,
    PercentPerKelvin,
    WattPerSquareMeter,
    WattPerSquareMeterKelvin,
    KilojoulePerKelvin,
    Liter,
    LiterPerKilowattHour,
    /// How many of a thing.
    Count,
    /// A bare number, such as an exponent.
    Number,
}

/// The closed interval of accepted values of one field.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    pub min: f64,
    pub max: f64,
    pub unit: Unit,
}

impl Range {
    const fn new(min: f64, max: f64, unit: Unit) -> Self {
        Self { min, max, unit }
    }

    /// Whether `value` may be used. NaN and infinities never may.
    ///
    /// ```
    /// use till_morning::range;
    /// assert!(range::DEPTH_PERCENT.accepts(80.0));
    /// assert!(!range::DEPTH_PERCENT.accepts(180.0));
    /// assert!(!range::DEPTH_PERCENT.accepts(f64::NAN));
    /// ```
    #[must_use]
    pub fn accepts(&self, value: f64) -> bool {
        let whole = !matches!(self.unit, Unit::Count | Unit::ClockMinute) || value.fract() == 0.0;
        value >= self.min && value <= self.max && whole
    }
}

macro_rules! ranges {
    ($($(#[$doc:meta])* $name:ident = $min:literal ..= $max:literal, $unit:ident;)+) => {
        $($(#[$doc])* pub const $name: Range = Range::new($min, $max, Unit::$unit);)+
    };
}

ranges! {
    /// Nominal volts of one battery, as printed or as commonly said.
    BATTERY_NOMINAL_V = 1.0..=1000.0, Volt;
    BATTERY_RATED_AH = 0.1..=10_000.0, AmpHour;
    /// The hours over which the rated Ah was counted.
    RATED_HOURS_H = 0.1..=240.0, Hour;
    SERIES_COUNT = 1.0..=40.0, Count;
    PARALLEL_COUNT = 1.0..=40.0, Count;
    /// Share of the rated capacity that is left.
    HEALTH_PERCENT = 10.0..=130.0, Percent;
    START_CHARGE_PERCENT = 1.0..=100.0, Percent;
    DEPTH_PERCENT = 1.0..=100.0, Percent;
    CUTOFF_V = 0.0..=1000.0, Volt;
    CURRENT_LIMIT_A = 0.1..=10_000.0, Amp;
    BATTERY_RESISTANCE_MOHM = 0.0..=10_000.0, Milliohm;
    POLARISATION_PERCENT = 0.0..=400.0, Percent;
    PEUKERT_EXPONENT = 1.0..=1.6, Number;
    PARASITIC_W = 0.0..=500.0, Watt;
    MEASURED_AH = 0.1..=100_000.0, AmpHour;
    MEASURED_WH = 1.0..=1_000_000.0, WattHour;
    MEASURED_LOAD_W = 0.1..=100_000.0, Watt;
    SUPPLY_V = 1.0..=1000.0, Volt;
    CABLE_LENGTH_M = 0.0..=200.0, Meter;
    CABLE_AREA_MM2 = 0.2..=500.0, SquareMillimeter;
    CABLE_TEMPERATURE_C = -40.0..=150.0, Celsius;
    /// Fuses, switches and lugs in the unit's own path.
    CONNECTIONS_MOHM = 0.0..=1000.0, Milliohm;
    CONVERTER_OUTPUT_V = 1.0..=1000.0, Volt;
    EFFICIENCY_PERCENT = 30.0..=100.0, Percent;
    IDLE_W = 0.0..=500.0, Watt;
    LIMIT_W = 1.0..=100_000.0, Watt;
    PROPORTIONAL_LOSS_PERCENT = 0.0..=50.0, Percent;
    SQUARE_LOSS_PERCENT_PER_KW = 0.0..=50.0, PercentPerKilowatt;
    DRAW_W = 0.1..=50_000.0, Watt;
    DRAW_A = 0.01..=5000.0, Amp;
    DUTY_PERCENT = 1.0..=100.0, Percent;
    STANDBY_W = 0.0..=5000.0, Watt;
    LOAD_W = 0.0..=50_000.0, Watt;
    START_CLOCK_MIN = 0.0..=1439.0, ClockMinute;
    WANTED_H = 0.1..=2000.0, Hour;
    /// Share of its capacity that the bank is to have left when it is replaced.
    AGEING_PERCENT = 40.0..=100.0, Percent;
    MARGIN_PERCENT = 0.0..=100.0, Percent;
    // The hot day.
    DAYS_COUNT = 1.0..=7.0, Count;
    YEAR = 1901.0..=2099.0, Count;
    MONTH = 1.0..=12.0, Count;
    DAY_OF_MONTH = 1.0..=31.0, Count;
    UTC_OFFSET_MIN = -720.0..=840.0, Minute;
    LATITUDE_DEG = -90.0..=90.0, Degree;
    LONGITUDE_DEG = -180.0..=180.0, Degree;
    ALTITUDE_M = -450.0..=6000.0, Meter;
    OUTDOOR_C = -50.0..=60.0, Celsius;
    DEW_POINT_C = -60.0..=35.0, Celsius;
    HUMIDITY_PERCENT = 1.0..=100.0, Percent;
    SHARE_PERCENT = 0.0..=100.0, Percent;
    LINKE_TURBIDITY = 1.0..=10.0, Number;
    WIND_M_S = 0.0..=40.0, MeterPerSecond;
    SAMPLES_COUNT = 0.0..=2000.0, Count;
    SEED_NUMBER = 0.0..=4_294_967_295.0, Count;
    GLOBAL_W_M2 = 0.0..=1500.0, WattPerSquareMeter;
    CLOCK_MIN = 0.0..=1439.0, ClockMinute;
    CHECK_IN_DAY = 0.0..=6.0, Count;
    CHARGE_PERCENT = 0.0..=100.0, Percent;
    INDOOR_C = -30.0..=80.0, Celsius;
    // The cabin.
    INSIDE_LENGTH_M = 1.0..=20.0, Meter;
    PEOPLE_COUNT = 0.0..=20.0, Count;
    ANIMAL_KG = 0.1..=120.0, Kilogram;
    AIR_CHANGES_PER_H = 0.0..=200.0, PerHour;
    SET_POINT_C = 10.0..=45.0, Celsius;
    DEAD_BAND_K = 0.1..=10.0, Kelvin;
    AREA_M2 = 0.0..=300.0, SquareMeter;
    VOLUME_M3 = 0.5..=1000.0, CubicMeter;
    SHELL_W_M2_K = 0.05..=7.0, WattPerSquareMeterKelvin;
    GLASS_W_M2_K = 0.1..=10.0, WattPerSquareMeterKelvin;
    CAPACITY_KJ_K = 5.0..=100_000.0, KilojoulePerKelvin;
    MOISTURE_BUFFER = 1.0..=100.0, Number;
    // What a unit gives.
    COOLING_W = 10.0..=50_000.0, Watt;
    COP = 0.3..=10.0, Number;
    WET_BULB_C = 5.0..=35.0, Celsius;
    FLOOR_PERCENT = 0.0..=99.0, Percent;
    AIRFLOW_M3_H = 5.0..=20_000.0, CubicMeterPerHour;
    SENSIBLE_PERCENT = 30.0..=100.0, Percent;
    INTAKE_RISE_K = 0.0..=20.0, Kelvin;
    START_LOSS_MIN = 0.0..=10.0, Minute;
    // What feeds the bank.
    ARRAY_W = 0.0..=20_000.0, Watt;
    TILT_DEG = 0.0..=90.0, Degree;
    AZIMUTH_DEG = 0.0..=360.0, Degree;
    PANELS_COUNT = 1.0..=40.0, Count;
    PANEL_V = 1.0..=200.0, Volt;
    PANEL_A = 0.01..=50.0, Amp;
    CHARGER_A = 0.1..=1000.0, Amp;
    CONTROLLER_V = 5.0..=1000.0, Volt;
    PERCENT_PER_K = -1.0..=0.0, PercentPerKelvin;
    BANK_C = -30.0..=60.0, Celsius;
    FUEL_L = 0.0..=1000.0, Liter;
    FUEL_L_PER_KWH = 0.1..=5.0, LiterPerKilowattHour;
    // The wiring.
    /// What insulation and lugs are made to bear.
    RATING_C = 60.0..=500.0, Celsius;
    CABLE_AIR_C = -60.0..=120.0, Celsius;
    BUNDLED_COUNT = 1.0..=1000.0, Count;
    ALLOWED_DROP_PERCENT = 0.5..=50.0, Percent;
    FUSE_A = 0.1..=6000.0, Amp;
    FUSE_ALONG_M = 0.0..=200.0, Meter;
    START_MS = 0.1..=60_000.0, Millisecond;
    FAULT_A = 10.0..=1_000_000.0, Amp;
    LINK_MOHM = 0.0..=1000.0, Milliohm;
    COLDEST_C = -60.0..=40.0, Celsius;
    // Claims and what was measured.
    CLAIM_AH = 0.01..=100_000.0, AmpHour;
    CLAIM_WH = 0.1..=1_000_000.0, WattHour;
    CLAIM_W = 0.1..=100_000.0, Watt;
    CLAIM_C = -40.0..=90.0, Celsius;
    /// Btu of cooling for each watt-hour.
    EER = 0.1..=60.0, Number;
    LIMIT_PERCENT = 0.0..=50.0, Percent;
    METER_NUMBER = 0.0..=1_000_000.0, Number;
    MEASURED_MIN = 0.1..=100_000.0, Minute;
    GRILLE_M2 = 0.0001..=10.0, SquareMeter;
    VANE_M_S = 0.0..=50.0, FaceVelocity;
    OFFSET_A = -50.0..=50.0, Amp;
    PRICE_NUMBER = 0.0..=10_000_000.0, Number;
    CYCLES_NUMBER = 1.0..=100_000.0, Number;
    /// Half-width of a stated spread, as a share of the value.
    SPREAD_PERCENT = 0.0..=90.0, Percent;
}
