//! Physical quantities, and the only home of unit conversions.
//!
//! The types are [`uom`]'s, which cost nothing at run time: a volt cannot be
//! added to an ampere, and a product of both is a power. Rooms pass these types
//! to each other. Inside a hot loop a room may work on bare `f64` whose names
//! end in the unit (`ocv_v`, `loop_ohm`).
//!
//! Formatting is not done here (see `wording`): `uom`'s own weighs 7 kB in the
//! page and knows no locale.

pub use uom::si::f64::{
    Area, ElectricCharge, ElectricCurrent, ElectricPotential, ElectricalResistance, Energy, Length,
    Power, TemperatureInterval, ThermodynamicTemperature, Time,
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
