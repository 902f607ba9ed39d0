//! Where a number stands in a plan: `banks[0].battery_rated_ah`.
//!
//! One address for the form, the findings, the spread and the search: each of
//! them reads and writes plan numbers through [`Plan::number`] and
//! [`Plan::set_number`] and needs to know nothing else of a field.

use super::{
    cabin::CabinField,
    claims::{AirField, ClaimField, PriceField},
    cooling::CoolingField,
    day::{CheckInField, DayField, ModeRowField},
    fields::fields,
    part::Choice,
    supply::{ArrayField, ChargerField, SupplyField},
    wiring::{Circuit, InstallationField, WiringField},
};
use crate::range::{self, Range};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::{fmt, str::FromStr};

#[cfg(doc)]
use super::Plan;

fields! {
    /// The numbers of a bank.
    BankField {
        BatteryNominalV = "battery_nominal_v", BATTERY_NOMINAL_V;
        BatteryRatedAh = "battery_rated_ah", BATTERY_RATED_AH;
        RatedHoursH = "rated_hours_h", RATED_HOURS_H;
        SeriesCount = "series_count", SERIES_COUNT;
        ParallelCount = "parallel_count", PARALLEL_COUNT;
        HealthPercent = "health_percent", HEALTH_PERCENT;
        StartChargePercent = "start_charge_percent", START_CHARGE_PERCENT;
        DepthPercent = "depth_percent", DEPTH_PERCENT;
        CutoffV = "cutoff_v", CUTOFF_V;
        BatteryCurrentLimitA = "battery_current_limit_a", CURRENT_LIMIT_A;
        BatteryResistanceMohm = "battery_resistance_mohm", BATTERY_RESISTANCE_MOHM;
        PeukertExponent = "peukert_exponent", PEUKERT_EXPONENT;
        ParasiticW = "parasitic_w", PARASITIC_W;
        MeasuredAh = "measured.measured_ah", MEASURED_AH;
        MeasuredWh = "measured.measured_wh", MEASURED_WH;
        MeasuredLoadW = "measured.load_w", MEASURED_LOAD_W;
    }
}

fields! {
    /// The numbers of a cooling unit and what feeds it.
    UnitField {
        SupplyV = "supply_v", SUPPLY_V;
        CutoffV = "cutoff_v", CUTOFF_V;
        CableLengthM = "cable.length_m", CABLE_LENGTH_M;
        CableAreaMm2 = "cable.area_mm2", CABLE_AREA_MM2;
        CableTemperatureC = "cable.temperature_c", CABLE_TEMPERATURE_C;
        ConnectionsMohm = "cable.connections_mohm", CONNECTIONS_MOHM;
        OutputV = "feed.output_v", CONVERTER_OUTPUT_V;
        EfficiencyPercent = "feed.efficiency_percent", EFFICIENCY_PERCENT;
        IdleW = "feed.idle_w", IDLE_W;
        LimitA = "feed.limit_a", CURRENT_LIMIT_A;
        NoLoadW = "feed.no_load_w", IDLE_W;
        ProportionalLossPercent = "feed.proportional_loss_percent", PROPORTIONAL_LOSS_PERCENT;
        SquareLossPercentPerKw = "feed.square_loss_percent_per_kw", SQUARE_LOSS_PERCENT_PER_KW;
        LimitW = "feed.limit_w", LIMIT_W;
        InverterCutoffV = "feed.cutoff_v", CUTOFF_V;
    }
}

fields! {
    /// The numbers of a mode.
    ModeField {
        PowerW = "power_w", DRAW_W;
        CurrentA = "current_a", DRAW_A;
        MeasuredAtV = "measured_at_v", SUPPLY_V;
        DutyPercent = "duty_percent", DUTY_PERCENT;
        StandbyW = "standby_w", STANDBY_W;
        CoolingW = "cooling_w", COOLING_W;
    }
}

fields! {
    /// The numbers of the night.
    NightField {
        StartClockMin = "start_clock_min", START_CLOCK_MIN;
        WantedH = "wanted_h", WANTED_H;
        AgeingPercent = "ageing_percent", AGEING_PERCENT;
        MarginPercent = "margin_percent", MARGIN_PERCENT;
    }
}

/// The address of one number, or of one list, in a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Path {
    Banks,
    Bank(usize, BankField),
    /// What a bank's cells are made of: no number, and a reader may be left it.
    Chemistry(usize),
    /// The own open-circuit table of a bank.
    OpenCircuit(usize),
    Units,
    Unit(usize, UnitField),
    Modes(usize),
    Mode(usize, usize, ModeField),
    Loads,
    /// The watts of another load.
    Load(usize),
    Night(NightField),
    Day(DayField),
    /// The hours imported from a weather file.
    Imported,
    Cabin(CabinField),
    /// What a unit gives.
    Cooling(usize, CoolingField),
    Supply(SupplyField),
    Arrays,
    Array(usize, ArrayField),
    Chargers,
    Charger(usize, ChargerField),
    ModePlan,
    ModeRow(usize, ModeRowField),
    CheckIns,
    CheckIn(usize, CheckInField),
    Claims,
    Claim(usize, ClaimField),
    /// The cooler read from its air side.
    Air(AirField),
    Price(PriceField),
    Wiring(WiringField),
    /// How a circuit of the wiring lies.
    Installation(Circuit, InstallationField),
}

impl Path {
    /// The values that this number may take; none for a list.
    #[must_use]
    pub const fn range(self) -> Option<Range> {
        match self {
            Self::Bank(_, field) => Some(field.range()),
            Self::Unit(_, field) => Some(field.range()),
            Self::Mode(_, _, field) => Some(field.range()),
            Self::Load(_) => Some(range::LOAD_W),
            Self::Night(field) => Some(field.range()),
            Self::Day(field) => Some(field.range()),
            Self::Cabin(field) => Some(field.range()),
            Self::Cooling(_, field) => Some(field.range()),
            Self::Supply(field) => Some(field.range()),
            Self::Array(_, field) => Some(field.range()),
            Self::Charger(_, field) => Some(field.range()),
            Self::ModeRow(_, field) => Some(field.range()),
            Self::CheckIn(_, field) => Some(field.range()),
            Self::Claim(_, field) => Some(field.range()),
            Self::Air(field) => Some(field.range()),
            Self::Price(field) => Some(field.range()),
            Self::Wiring(field) => Some(field.range()),
            Self::Installation(_, field) => Some(field.range()),
            Self::Banks
            | Self::Chemistry(_)
            | Self::OpenCircuit(_)
            | Self::Units
            | Self::Modes(_)
            | Self::Loads
            | Self::Imported
            | Self::Arrays
            | Self::Chargers
            | Self::ModePlan
            | Self::CheckIns
            | Self::Claims => None,
        }
    }
}

impl Path {
    /// Whether a unit or a count is often typed with the number: a field with a
    /// keyboard of digits alone would shut it out.
    #[must_use]
    pub const fn invites_letters(self) -> bool {
        match self {
            Self::Bank(_, BankField::BatteryRatedAh)
            | Self::Mode(_, _, ModeField::PowerW | ModeField::CurrentA)
            | Self::Load(_) => true,
            _ => match self.range() {
                Some(range) => matches!(
                    range.unit,
                    range::Unit::CubicMeterPerHour | range::Unit::SquareMillimeter
                ),
                None => false,
            },
        }
    }
}

impl fmt::Display for Path {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Banks => to.write_str("banks"),
            Self::Bank(bank, field) => write!(to, "banks[{bank}].{}", field.key()),
            Self::Chemistry(bank) => write!(to, "banks[{bank}].chemistry"),
            Self::OpenCircuit(bank) => write!(to, "banks[{bank}].battery_open_circuit"),
            Self::Units => to.write_str("units"),
            Self::Unit(unit, field) => write!(to, "units[{unit}].{}", field.key()),
            Self::Modes(unit) => write!(to, "units[{unit}].modes"),
            Self::Mode(unit, mode, field) => {
                write!(to, "units[{unit}].modes[{mode}].{}", field.key())
            }
            Self::Loads => to.write_str("loads"),
            Self::Load(load) => write!(to, "loads[{load}].power_w"),
            Self::Night(field) => write!(to, "night.{}", field.key()),
            Self::Day(field) => write!(to, "day.{}", field.key()),
            Self::Imported => to.write_str("day.imported"),
            Self::Cabin(field) => write!(to, "cabin.{}", field.key()),
            Self::Cooling(unit, field) => write!(to, "units[{unit}].cooling.{}", field.key()),
            Self::Supply(field) => write!(to, "supply.{}", field.key()),
            Self::Arrays => to.write_str("supply.arrays"),
            Self::Array(at, field) => write!(to, "supply.arrays[{at}].{}", field.key()),
            Self::Chargers => to.write_str("supply.chargers"),
            Self::Charger(at, field) => write!(to, "supply.chargers[{at}].{}", field.key()),
            Self::ModePlan => to.write_str("mode_plan"),
            Self::ModeRow(at, field) => write!(to, "mode_plan[{at}].{}", field.key()),
            Self::CheckIns => to.write_str("check_ins"),
            Self::Claims => to.write_str("claims"),
            Self::Claim(at, field) => write!(to, "claims[{at}].{}", field.key()),
            Self::Air(field) => write!(to, "air.{}", field.key()),
            Self::Price(field) => write!(to, "price.{}", field.key()),
            Self::Wiring(field) => write!(to, "wiring.{}", field.key()),
            Self::Installation(circuit, field) => {
                write!(to, "wiring.{}.{}", circuit.key(), field.key())
            }
            Self::CheckIn(at, field) => write!(to, "check_ins[{at}].{}", field.key()),
        }
    }
}

/// The text is no address in a plan of this version.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoSuchPath;

impl fmt::Display for NoSuchPath {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.write_str("no such field in a plan")
    }
}

impl FromStr for Path {
    type Err = NoSuchPath;

    fn from_str(text: &str) -> Result<Self, NoSuchPath> {
        parse(text).ok_or(NoSuchPath)
    }
}

fn parse(text: &str) -> Option<Path> {
    match text {
        "banks" => return Some(Path::Banks),
        "units" => return Some(Path::Units),
        "loads" => return Some(Path::Loads),
        "day.imported" => return Some(Path::Imported),
        "supply.arrays" => return Some(Path::Arrays),
        "supply.chargers" => return Some(Path::Chargers),
        "mode_plan" => return Some(Path::ModePlan),
        "check_ins" => return Some(Path::CheckIns),
        "claims" => return Some(Path::Claims),
        _ => {}
    }
    if let Some(key) = text.strip_prefix("night.") {
        return NightField::of_key(key).map(Path::Night);
    }
    if let Some(key) = text.strip_prefix("day.") {
        return DayField::of_key(key).map(Path::Day);
    }
    if let Some(rest) = text.strip_prefix("claims[") {
        let (at, key) = index(rest)?;
        return ClaimField::of_key(key).map(|field| Path::Claim(at, field));
    }
    if let Some(key) = text.strip_prefix("air.") {
        return AirField::of_key(key).map(Path::Air);
    }
    if let Some(key) = text.strip_prefix("price.") {
        return PriceField::of_key(key).map(Path::Price);
    }
    if let Some(key) = text.strip_prefix("wiring.") {
        return match key.split_once('.') {
            None => WiringField::of_key(key).map(Path::Wiring),
            Some((circuit, key)) => Some(Path::Installation(
                Circuit::of_key(circuit)?,
                InstallationField::of_key(key)?,
            )),
        };
    }
    if let Some(key) = text.strip_prefix("cabin.") {
        return CabinField::of_key(key).map(Path::Cabin);
    }
    if let Some(rest) = text.strip_prefix("supply.arrays[") {
        let (at, key) = index(rest)?;
        return ArrayField::of_key(key).map(|field| Path::Array(at, field));
    }
    if let Some(rest) = text.strip_prefix("supply.chargers[") {
        let (at, key) = index(rest)?;
        return ChargerField::of_key(key).map(|field| Path::Charger(at, field));
    }
    if let Some(key) = text.strip_prefix("supply.") {
        return SupplyField::of_key(key).map(Path::Supply);
    }
    if let Some(rest) = text.strip_prefix("mode_plan[") {
        let (at, key) = index(rest)?;
        return ModeRowField::of_key(key).map(|field| Path::ModeRow(at, field));
    }
    if let Some(rest) = text.strip_prefix("check_ins[") {
        let (at, key) = index(rest)?;
        return CheckInField::of_key(key).map(|field| Path::CheckIn(at, field));
    }
    if let Some(rest) = text.strip_prefix("banks[") {
        let (bank, key) = index(rest)?;
        return match key {
            "chemistry" => Some(Path::Chemistry(bank)),
            "battery_open_circuit" => Some(Path::OpenCircuit(bank)),
            _ => BankField::of_key(key).map(|field| Path::Bank(bank, field)),
        };
    }
    if let Some(rest) = text.strip_prefix("loads[") {
        let (load, key) = index(rest)?;
        return (key == "power_w").then_some(Path::Load(load));
    }
    let (unit, key) = index(text.strip_prefix("units[")?)?;
    if key == "modes" {
        return Some(Path::Modes(unit));
    }
    if let Some(key) = key.strip_prefix("cooling.") {
        return CoolingField::of_key(key).map(|field| Path::Cooling(unit, field));
    }
    if let Some(rest) = key.strip_prefix("modes[") {
        let (mode, key) = index(rest)?;
        return ModeField::of_key(key).map(|field| Path::Mode(unit, mode, field));
    }
    UnitField::of_key(key).map(|field| Path::Unit(unit, field))
}

/// Splits `3].rest` into the number and the rest.
fn index(text: &str) -> Option<(usize, &str)> {
    let (number, rest) = text.split_once(']')?;
    let rest = rest.strip_prefix('.')?;
    // Written one way only, so that text and address answer each other.
    let plain = number == "0" || !number.starts_with(['0', '+']);
    plain
        .then(|| number.parse().ok())?
        .map(|number| (number, rest))
}

impl Serialize for Path {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Path {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let text = String::deserialize(from)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Path {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Path".into()
    }
    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        String::json_schema(generator)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, path: Path) {
        assert_eq!(path.to_string(), text);
        assert_eq!(text.parse(), Ok(path));
    }

    #[test]
    fn text_and_address_answer_each_other() {
        check(
            "banks[0].battery_rated_ah",
            Path::Bank(0, BankField::BatteryRatedAh),
        );
        check(
            "banks[1].measured.measured_wh",
            Path::Bank(1, BankField::MeasuredWh),
        );
        check(
            "units[0].feed.cutoff_v",
            Path::Unit(0, UnitField::InverterCutoffV),
        );
        check(
            "units[2].modes[13].power_w",
            Path::Mode(2, 13, ModeField::PowerW),
        );
        check("units[0].modes", Path::Modes(0));
        check("banks[1].chemistry", Path::Chemistry(1));
        check("day.high_c", Path::Day(DayField::HighC));
        check("units[1].cooling.cop", Path::Cooling(1, CoolingField::Cop));
        check(
            "supply.arrays[1].tilt_deg",
            Path::Array(1, ArrayField::TiltDeg),
        );
        check("loads[4].power_w", Path::Load(4));
        check(
            "wiring.panel_mm2",
            Path::Wiring(crate::plan::wiring::WiringField::PanelMm2),
        );
        check(
            "wiring.charger.fuse_a",
            Path::Installation(
                crate::plan::wiring::Circuit::Charger,
                crate::plan::wiring::InstallationField::FuseA,
            ),
        );
        check("night.wanted_h", Path::Night(NightField::WantedH));
    }

    #[test]
    fn other_text_is_no_address() {
        for text in [
            "",
            "banks[",
            "banks[-1].name",
            "banks[01].battery_rated_ah",
            "units[0].modes[0]",
            "night",
        ] {
            assert_eq!(text.parse::<Path>(), Err(NoSuchPath), "{text}");
        }
    }
}
