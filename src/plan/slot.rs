//! The one table from an address to the place in the plan.

use super::{
    Bank, Draw, Feed, Figure, Mode, Night, Plan, Unit,
    path::{BankField as B, ModeField as M, NightField as N, Path, UnitField as U},
};

/// A place that holds a number, as it is stored.
pub(super) enum Place<'a> {
    Figure(&'a Figure),
    MaybeFigure(&'a Option<Figure>),
    Number(&'a f64),
    MaybeNumber(&'a Option<f64>),
    Count(&'a u32),
    MaybeCount(&'a Option<u32>),
}

/// The same, to write to.
pub(super) enum PlaceMut<'a> {
    Figure(&'a mut Figure),
    MaybeFigure(&'a mut Option<Figure>),
    Number(&'a mut f64),
    MaybeNumber(&'a mut Option<f64>),
    Count(&'a mut u32),
    MaybeCount(&'a mut Option<u32>),
}

// Each table serves reading and writing: `$at` is `&` or `&mut`.

macro_rules! bank_place {
    ($place:ident, $bank:expr, $field:expr, $($at:tt)+) => {
        match $field {
            B::BatteryNominalV => $place::Number($($at)+ $bank.battery_nominal_v),
            B::BatteryRatedAh => $place::Figure($($at)+ $bank.battery_rated_ah),
            B::RatedHoursH => $place::MaybeNumber($($at)+ $bank.rated_hours_h),
            B::SeriesCount => $place::Count($($at)+ $bank.series_count),
            B::ParallelCount => $place::Count($($at)+ $bank.parallel_count),
            B::HealthPercent => $place::MaybeFigure($($at)+ $bank.health_percent),
            B::StartChargePercent => $place::MaybeFigure($($at)+ $bank.start_charge_percent),
            B::DepthPercent => $place::MaybeNumber($($at)+ $bank.depth_percent),
            B::CutoffV => $place::MaybeFigure($($at)+ $bank.cutoff_v),
            B::BatteryCurrentLimitA => $place::MaybeFigure($($at)+ $bank.battery_current_limit_a),
            B::BatteryResistanceMohm => $place::MaybeFigure($($at)+ $bank.battery_resistance_mohm),
            B::PeukertExponent => $place::MaybeFigure($($at)+ $bank.peukert_exponent),
            B::ParasiticW => $place::MaybeFigure($($at)+ $bank.parasitic_w),
            B::MeasuredAh => $place::MaybeFigure($($at)+ $bank.measured.measured_ah),
            B::MeasuredWh => $place::MaybeFigure($($at)+ $bank.measured.measured_wh),
            B::MeasuredLoadW => $place::MaybeFigure($($at)+ $bank.measured.load_w),
        }
    };
}

macro_rules! unit_place {
    ($place:ident, $unit:expr, $field:expr, $($at:tt)+) => {
        match ($field, $($at)+ $unit.feed) {
            (U::SupplyV, _) => $place::MaybeNumber($($at)+ $unit.supply_v),
            (U::CutoffV, _) => $place::MaybeFigure($($at)+ $unit.cutoff_v),
            (U::CableLengthM, _) => $place::Number($($at)+ $unit.cable.length_m),
            (U::CableAreaMm2, _) => $place::MaybeNumber($($at)+ $unit.cable.area_mm2),
            (U::CableTemperatureC, _) => $place::Number($($at)+ $unit.cable.temperature_c),
            (U::ConnectionsMohm, _) => $place::Number($($at)+ $unit.cable.connections_mohm),
            (U::OutputV, Feed::DcDc { output_v, .. }) => $place::Number(output_v),
            (U::EfficiencyPercent, Feed::DcDc { efficiency_percent, .. }) => $place::Figure(efficiency_percent),
            (U::IdleW, Feed::DcDc { idle_w, .. }) => $place::Figure(idle_w),
            (U::LimitA, Feed::DcDc { limit_a, .. }) => $place::MaybeFigure(limit_a),
            (U::NoLoadW, Feed::Inverter { no_load_w, .. }) => $place::Figure(no_load_w),
            (U::ProportionalLossPercent, Feed::Inverter { proportional_loss_percent, .. }) => {
                $place::Figure(proportional_loss_percent)
            }
            (U::SquareLossPercentPerKw, Feed::Inverter { square_loss_percent_per_kw, .. }) => {
                $place::Figure(square_loss_percent_per_kw)
            }
            (U::LimitW, Feed::Inverter { limit_w, .. }) => $place::MaybeFigure(limit_w),
            (U::InverterCutoffV, Feed::Inverter { cutoff_v, .. }) => $place::MaybeFigure(cutoff_v),
            _ => return None,
        }
    };
}

macro_rules! mode_place {
    ($place:ident, $mode:expr, $field:expr, $($at:tt)+) => {
        match ($field, $($at)+ $mode.draw) {
            (M::PowerW, Draw::Power { power_w }) => $place::Figure(power_w),
            (M::CurrentA, Draw::Current { current_a, .. }) => $place::Figure(current_a),
            (M::MeasuredAtV, Draw::Current { measured_at_v, .. }) => $place::Number(measured_at_v),
            (M::DutyPercent, _) => $place::MaybeFigure($($at)+ $mode.duty_percent),
            (M::StandbyW, _) => $place::MaybeFigure($($at)+ $mode.standby_w),
            (M::CoolingW, _) => $place::MaybeFigure($($at)+ $mode.cooling_w),
            _ => return None,
        }
    };
}

macro_rules! night_place {
    ($place:ident, $night:expr, $field:expr, $($at:tt)+) => {
        match $field {
            N::StartClockMin => $place::Count($($at)+ $night.start_clock_min),
            N::WantedH => $place::Number($($at)+ $night.wanted_h),
            N::AgeingPercent => $place::Number($($at)+ $night.ageing_percent),
            N::MarginPercent => $place::Number($($at)+ $night.margin_percent),
        }
    };
}

/// The places of one that has others among its own.
macro_rules! places {
    ($($name:ident, $field:ident, $table:ident;)+) => { $(
        impl $name {
            fn place(&self, field: $field) -> Option<Place<'_>> {
                Some($table!(Place, self, field, &))
            }
            pub(super) fn place_mut(&mut self, field: $field) -> Option<PlaceMut<'_>> {
                Some($table!(PlaceMut, self, field, &mut))
            }
        }
    )+ };
}
places! {
    Bank, B, bank_place;
    Unit, U, unit_place;
    Mode, M, mode_place;
    Night, N, night_place;
}

impl Plan {
    fn place(&self, path: Path) -> Option<Place<'_>> {
        Some(match path {
            Path::Bank(bank, field) => return self.banks.get(bank)?.place(field),
            Path::Unit(unit, field) => return self.units.get(unit)?.place(field),
            Path::Mode(unit, mode, field) => {
                return self.units.get(unit)?.modes.get(mode)?.place(field);
            }
            Path::Load(load) => Place::Figure(&self.loads.get(load)?.power_w),
            Path::Night(field) => return self.night.place(field),
            Path::Day(field) => self.day.place(field),
            Path::Cabin(field) => self.cabin.place(field),
            Path::Cooling(unit, field) => self.units.get(unit)?.cooling.place(field),
            Path::Supply(field) => self.supply.place(field),
            Path::Array(at, field) => self.supply.arrays.get(at)?.place(field),
            Path::Charger(at, field) => self.supply.chargers.get(at)?.place(field),
            Path::ModeRow(at, field) => self.mode_plan.get(at)?.place(field),
            Path::CheckIn(at, field) => self.check_ins.get(at)?.place(field),
            Path::Claim(at, field) => self.claims.get(at)?.place(field),
            Path::Air(field) => self.air.place(field),
            Path::Price(field) => self.price.place(field),
            Path::Wiring(field) => self.wiring.place(field),
            Path::Installation(circuit, field) => self.wiring.installation(circuit).place(field),
            _ => return None,
        })
    }

    fn place_mut(&mut self, path: Path) -> Option<PlaceMut<'_>> {
        Some(match path {
            Path::Bank(bank, field) => return self.banks.get_mut(bank)?.place_mut(field),
            Path::Unit(unit, field) => return self.units.get_mut(unit)?.place_mut(field),
            Path::Mode(unit, mode, field) => {
                return self
                    .units
                    .get_mut(unit)?
                    .modes
                    .get_mut(mode)?
                    .place_mut(field);
            }
            Path::Load(load) => PlaceMut::Figure(&mut self.loads.get_mut(load)?.power_w),
            Path::Night(field) => return self.night.place_mut(field),
            Path::Day(field) => self.day.place_mut(field),
            Path::Cabin(field) => self.cabin.place_mut(field),
            Path::Cooling(unit, field) => self.units.get_mut(unit)?.cooling.place_mut(field),
            Path::Supply(field) => self.supply.place_mut(field),
            Path::Array(at, field) => self.supply.arrays.get_mut(at)?.place_mut(field),
            Path::Charger(at, field) => self.supply.chargers.get_mut(at)?.place_mut(field),
            Path::ModeRow(at, field) => self.mode_plan.get_mut(at)?.place_mut(field),
            Path::CheckIn(at, field) => self.check_ins.get_mut(at)?.place_mut(field),
            Path::Claim(at, field) => self.claims.get_mut(at)?.place_mut(field),
            Path::Air(field) => self.air.place_mut(field),
            Path::Price(field) => self.price.place_mut(field),
            Path::Wiring(field) => self.wiring.place_mut(field),
            Path::Installation(circuit, field) => {
                self.wiring.installation_mut(circuit).place_mut(field)
            }
            _ => return None,
        })
    }

    /// What is stated at `path`: nothing if it is left to its default, or if
    /// the plan has no such place. Choices and counts read as exact figures.
    #[must_use]
    pub fn stated(&self, path: Path) -> Option<Figure> {
        match self.place(path)? {
            Place::Figure(figure) => Some(*figure),
            Place::MaybeFigure(figure) => *figure,
            Place::Number(number) => Some(Figure::label(*number)),
            Place::MaybeNumber(number) => number.map(Figure::label),
            Place::Count(count) => Some(Figure::label(f64::from(*count))),
            Place::MaybeCount(count) => count.map(|count| Figure::label(f64::from(count))),
        }
    }

    /// The number at `path`, stated or assumed.
    #[must_use]
    pub fn number(&self, path: Path) -> Option<f64> {
        self.figure(path).map(|figure| figure.value)
    }

    /// Whether `path` carries an origin and a spread (and is no choice or count).
    #[must_use]
    pub fn has_origin(&self, path: Path) -> bool {
        matches!(
            self.place(path),
            Some(Place::Figure(_) | Place::MaybeFigure(_))
        )
    }

    /// Whether the number at `path` may be left out.
    #[must_use]
    pub fn is_optional(&self, path: Path) -> bool {
        matches!(
            self.place(path),
            Some(Place::MaybeFigure(_) | Place::MaybeNumber(_) | Place::MaybeCount(_))
        )
    }

    /// Writes a number, keeping origin and spread. Returns whether there was
    /// such a place. Counts are rounded; the range is not looked at here.
    pub fn set_number(&mut self, path: Path, value: f64) -> bool {
        match self.place_mut(path) {
            Some(PlaceMut::Figure(figure)) => figure.value = value,
            Some(PlaceMut::MaybeFigure(figure)) => {
                *figure = Some(figure.unwrap_or(Figure::label(value)).with(value));
            }
            Some(PlaceMut::Number(number)) => *number = value,
            Some(PlaceMut::MaybeNumber(number)) => *number = Some(value),
            // The cast saturates, and takes NaN to 0.
            Some(PlaceMut::Count(count)) => *count = value.round() as u32,
            Some(PlaceMut::MaybeCount(count)) => *count = Some(value.round() as u32),
            None => return false,
        }
        true
    }

    /// Writes a figure with its origin and spread where the place has them.
    pub fn set_figure(&mut self, path: Path, figure: Figure) -> bool {
        match self.place_mut(path) {
            Some(PlaceMut::Figure(place)) => *place = figure,
            Some(PlaceMut::MaybeFigure(place)) => *place = Some(figure),
            _ => return self.set_number(path, figure.value),
        }
        true
    }

    /// Leaves an optional number to its default. Returns whether it could be.
    pub fn clear(&mut self, path: Path) -> bool {
        match self.place_mut(path) {
            Some(PlaceMut::MaybeFigure(place)) => *place = None,
            Some(PlaceMut::MaybeNumber(place)) => *place = None,
            Some(PlaceMut::MaybeCount(place)) => *place = None,
            _ => return false,
        }
        true
    }
}
