//! Physical quantities, and the only home of unit conversions.
//!
//! The types are [`uom`]'s, which cost nothing at run time: a volt cannot be
//! added to an ampere, and a product of both is a power. Rooms pass these types
//! to each other. Inside a hot loop a room may work on bare `f64` whose names
//! end in the unit (`ocv_v`, `loop_ohm`).
//!
//! Formatting is not done here (see `text`): `uom`'s own weighs 7 kB in the
//! page and knows no locale.

pub use uom::si::f64::{
    Area, ElectricCharge, ElectricCurrent, ElectricPotential, ElectricalResistance, Energy, Length,
    Power, TemperatureInterval, ThermodynamicTemperature, Time,
};
// Heat and air.
pub use uom::si::f64::{
    AvailableEnergy as SpecificEnergy, HeatCapacity, HeatFluxDensity, HeatTransfer, Mass, MassRate,
    Pressure, SpecificVolume, ThermalConductance, Velocity, Volume, VolumeRate,
};

use uom::si::{
    area::{square_inch, square_meter, square_millimeter},
    electric_charge::ampere_hour,
    electric_current::ampere,
    electric_potential::volt,
    electrical_resistance::ohm,
    energy::watt_hour,
    length::{foot, inch, meter},
    power::watt,
    temperature_interval,
    thermodynamic_temperature::{degree_celsius, degree_fahrenheit, kelvin},
    time::{hour, minute, second},
};

/// A constructor from a number and a reader back to it, for one unit.
macro_rules! unit {
    ($quantity:ident, $unit:path, $make:ident, $read:ident, $what:literal) => {
        #[doc = concat!("A quantity of so many ", $what, ".")]
        #[must_use]
        pub fn $make(number: f64) -> $quantity {
            $quantity::new::<$unit>(number)
        }
        #[doc = concat!("The number of ", $what, ".")]
        #[must_use]
        pub fn $read(quantity: $quantity) -> f64 {
            quantity.get::<$unit>()
        }
    };
}

unit!(ElectricPotential, volt, volts, in_volts, "volts");
unit!(ElectricCurrent, ampere, amps, in_amps, "amperes");
unit!(ElectricalResistance, ohm, ohms, in_ohms, "ohms");
unit!(
    ElectricCharge,
    ampere_hour,
    amp_hours,
    in_amp_hours,
    "ampere-hours"
);
unit!(Energy, watt_hour, watt_hours, in_watt_hours, "watt-hours");
unit!(Power, watt, watts, in_watts, "watts");
unit!(Time, hour, hours, in_hours, "hours");
unit!(Time, minute, minutes, in_minutes, "minutes");
unit!(Time, second, seconds, in_seconds, "seconds");
unit!(Length, meter, meters, in_meters, "metres");
unit!(Length, foot, feet, in_feet, "feet");
unit!(Length, inch, inches, in_inches, "inches");
unit!(
    Area,
    square_meter,
    square_meters,
    in_square_meters,
    "square metres"
);
unit!(
    Area,
    square_millimeter,
    square_millimeters,
    in_square_millimeters,
    "square millimetres"
);
unit!(
    Area,
    square_inch,
    square_inches,
    in_square_inches,
    "square inches"
);
unit!(
    ThermodynamicTemperature,
    degree_celsius,
    celsius,
    in_celsius,
    "degrees Celsius"
);
unit!(
    ThermodynamicTemperature,
    degree_fahrenheit,
    fahrenheit,
    in_fahrenheit,
    "degrees Fahrenheit"
);
unit!(
    ThermodynamicTemperature,
    kelvin,
    kelvins,
    in_kelvins,
    "kelvins"
);
unit!(
    TemperatureInterval,
    temperature_interval::kelvin,
    kelvin_steps,
    in_kelvin_steps,
    "kelvins of difference"
);

// Heat and air.
unit!(
    Pressure,
    uom::si::pressure::pascal,
    pascals,
    in_pascals,
    "pascals"
);
unit!(
    MassRate,
    uom::si::mass_rate::kilogram_per_second,
    kilograms_per_second,
    in_kilograms_per_second,
    "kilograms a second"
);
unit!(
    MassRate,
    uom::si::mass_rate::kilogram_per_hour,
    kilograms_per_hour,
    in_kilograms_per_hour,
    "kilograms an hour"
);
unit!(
    Mass,
    uom::si::mass::kilogram,
    kilograms,
    in_kilograms,
    "kilograms"
);
unit!(
    VolumeRate,
    uom::si::volume_rate::cubic_meter_per_second,
    cubic_meters_per_second,
    in_cubic_meters_per_second,
    "cubic metres a second"
);
unit!(
    VolumeRate,
    uom::si::volume_rate::cubic_meter_per_hour,
    cubic_meters_per_hour,
    in_cubic_meters_per_hour,
    "cubic metres an hour"
);
unit!(
    Volume,
    uom::si::volume::cubic_meter,
    cubic_meters,
    in_cubic_meters,
    "cubic metres"
);
unit!(
    Velocity,
    uom::si::velocity::meter_per_second,
    meters_per_second,
    in_meters_per_second,
    "metres a second"
);
unit!(
    Velocity,
    uom::si::velocity::foot_per_minute,
    feet_per_minute,
    in_feet_per_minute,
    "feet a minute"
);
unit!(
    SpecificVolume,
    uom::si::specific_volume::cubic_meter_per_kilogram,
    cubic_meters_per_kilogram,
    in_cubic_meters_per_kilogram,
    "cubic metres a kilogram"
);
unit!(
    SpecificEnergy,
    uom::si::available_energy::joule_per_kilogram,
    joules_per_kilogram,
    in_joules_per_kilogram,
    "joules a kilogram"
);
unit!(
    ThermalConductance,
    uom::si::thermal_conductance::watt_per_kelvin,
    watts_per_kelvin,
    in_watts_per_kelvin,
    "watts a kelvin"
);
unit!(
    HeatCapacity,
    uom::si::heat_capacity::joule_per_kelvin,
    joules_per_kelvin,
    in_joules_per_kelvin,
    "joules a kelvin"
);
unit!(
    HeatTransfer,
    uom::si::heat_transfer::watt_per_square_meter_kelvin,
    watts_per_square_meter_kelvin,
    in_watts_per_square_meter_kelvin,
    "watts a square metre and kelvin"
);
unit!(
    HeatFluxDensity,
    uom::si::heat_flux_density::watt_per_square_meter,
    watts_per_square_meter,
    in_watts_per_square_meter,
    "watts a square metre"
);

unit!(
    Velocity,
    uom::si::velocity::mile_per_hour,
    miles_per_hour,
    in_miles_per_hour,
    "miles an hour"
);

/// One pound (avoirdupois) in kilograms, exact by definition. `uom` rounds it.
const POUND_KG: f64 = 0.453_592_37;
/// One US gallon in litres, exact by definition: 231 cubic inches.
pub const GALLON_L: f64 = 3.785_411_784;
/// One Btu (International Table) in joules, exact by definition.
const BTU_J: f64 = 1_055.055_852_62;
/// One cubic foot a minute in cubic metres a second, exact: 0.3048^3 / 60.
/// `uom` rounds its own to seven digits.
const CFM_M3_S: f64 = 0.028_316_846_592 / 60.0;

/// A mass of so many pounds.
#[must_use]
pub fn pounds(number: f64) -> Mass {
    kilograms(number * POUND_KG)
}

/// A power of so many Btu (International Table) an hour.
#[must_use]
pub fn btu_per_hour(number: f64) -> Power {
    watts(number * BTU_J / 3_600.0)
}

/// The number of Btu (International Table) an hour.
#[must_use]
pub fn in_btu_per_hour(power: Power) -> f64 {
    in_watts(power) * 3_600.0 / BTU_J
}

/// A flow of so many cubic feet a minute.
#[must_use]
pub fn cubic_feet_per_minute(number: f64) -> VolumeRate {
    cubic_meters_per_second(number * CFM_M3_S)
}

/// The number of cubic feet a minute.
#[must_use]
pub fn in_cubic_feet_per_minute(flow: VolumeRate) -> f64 {
    in_cubic_meters_per_second(flow) / CFM_M3_S
}
