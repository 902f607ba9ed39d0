//! From an address to the place in the plan.

use super::{
    Draw, Feed, Figure, Plan,
    path::{LoadField, ModeField as M, Path, UnitField as U},
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

/// What can be the place of a number.
pub(super) trait Holds {
    fn place(&self) -> Place<'_>;
    fn place_mut(&mut self) -> PlaceMut<'_>;
}

macro_rules! holds {
    ($($of:ty: $kind:ident;)+) => { $(
        impl Holds for $of {
            fn place(&self) -> Place<'_> {
                Place::$kind(self)
            }
            fn place_mut(&mut self) -> PlaceMut<'_> {
                PlaceMut::$kind(self)
            }
        }
    )+ };
}
holds! {
    Figure: Figure;
    Option<Figure>: MaybeFigure;
    f64: Number;
    Option<f64>: MaybeNumber;
    u32: Count;
    Option<u32>: MaybeCount;
}

/// Which numbers a feed or a draw has hangs on its kind, so that these are found by
/// hand: once, for reading and for writing.
macro_rules! by_kind {
    ($place:ident, $method:ident, $($mutable:tt)?) => {
        impl Feed {
            pub(super) fn $method(&$($mutable)? self, field: U) -> Option<$place<'_>> {
                Some(match (field, self) {
                    (U::OutputV, Self::DcDc { output_v: at, .. }) => at.$method(),
                    (U::EfficiencyPercent, Self::DcDc { efficiency_percent: at, .. })
                    | (U::IdleW, Self::DcDc { idle_w: at, .. })
                    | (U::NoLoadW, Self::Inverter { no_load_w: at, .. })
                    | (
                        U::ProportionalLossPercent,
                        Self::Inverter { proportional_loss_percent: at, .. },
                    )
                    | (
                        U::SquareLossPercentPerKw,
                        Self::Inverter { square_loss_percent_per_kw: at, .. },
                    ) => at.$method(),
                    (U::LimitA, Self::DcDc { limit_a: at, .. })
                    | (U::LimitW, Self::Inverter { limit_w: at, .. })
                    | (U::InverterCutoffV, Self::Inverter { cutoff_v: at, .. }) => at.$method(),
                    _ => return None,
                })
            }
        }

        impl Draw {
            pub(super) fn $method(&$($mutable)? self, field: M) -> Option<$place<'_>> {
                Some(match (field, self) {
                    (M::PowerW, Self::Power { power_w: at })
                    | (M::CurrentA, Self::Current { current_a: at, .. }) => at.$method(),
                    (M::MeasuredAtV, Self::Current { measured_at_v: at, .. }) => at.$method(),
                    _ => return None,
                })
            }
        }
    };
}
by_kind! { Place, place, }
by_kind! { PlaceMut, place_mut, mut }

impl Plan {
    fn place(&self, path: Path) -> Option<Place<'_>> {
        match path {
            Path::Bank(bank, field) => self.banks.get(bank)?.place(field),
            Path::Unit(unit, field) => self.units.get(unit)?.place(field),
            Path::Mode(unit, mode, field) => self.units.get(unit)?.modes.get(mode)?.place(field),
            Path::Load(load) => self.loads.get(load)?.place(LoadField::PowerW),
            Path::Night(field) => self.night.place(field),
            Path::Day(field) => self.day.place(field),
            Path::Cabin(field) => self.cabin.place(field),
            Path::Cooling(unit, field) => self.units.get(unit)?.cooling.place(field),
            Path::Supply(field) => self.supply.place(field),
            Path::Array(at, field) => self.supply.arrays.get(at)?.place(field),
            Path::Charger(at, field) => self.supply.chargers.get(at)?.place(field),
            Path::ModeRow(at, field) => self.mode_plan.get(at)?.place(field),
            Path::CheckIn(at, field) => self.check_ins.get(at)?.place(field),
            Path::MapRow(unit, row, field) => {
                let unit = self.units.get(unit)?;
                unit.cooling.unit_map.get(row)?.place(field)
            }
            Path::Claim(at, field) => self.claims.get(at)?.place(field),
            Path::Air(field) => self.air.place(field),
            Path::Price(field) => self.price.place(field),
            Path::Wiring(field) => self.wiring.place(field),
            Path::Installation(circuit, field) => self.wiring.installation(circuit).place(field),
            Path::Banks
            | Path::Chemistry(_)
            | Path::OpenCircuit(_)
            | Path::UnitMap(_)
            | Path::Units
            | Path::Modes(_)
            | Path::Loads
            | Path::Imported
            | Path::Arrays
            | Path::Chargers
            | Path::ModePlan
            | Path::CheckIns
            | Path::Claims => None,
        }
    }

    fn place_mut(&mut self, path: Path) -> Option<PlaceMut<'_>> {
        match path {
            Path::Bank(bank, field) => self.banks.get_mut(bank)?.place_mut(field),
            Path::Unit(unit, field) => self.units.get_mut(unit)?.place_mut(field),
            Path::Mode(unit, mode, field) => self
                .units
                .get_mut(unit)?
                .modes
                .get_mut(mode)?
                .place_mut(field),
            Path::Load(load) => self.loads.get_mut(load)?.place_mut(LoadField::PowerW),
            Path::Night(field) => self.night.place_mut(field),
            Path::Day(field) => self.day.place_mut(field),
            Path::Cabin(field) => self.cabin.place_mut(field),
            Path::Cooling(unit, field) => self.units.get_mut(unit)?.cooling.place_mut(field),
            Path::Supply(field) => self.supply.place_mut(field),
            Path::Array(at, field) => self.supply.arrays.get_mut(at)?.place_mut(field),
            Path::Charger(at, field) => self.supply.chargers.get_mut(at)?.place_mut(field),
            Path::ModeRow(at, field) => self.mode_plan.get_mut(at)?.place_mut(field),
            Path::CheckIn(at, field) => self.check_ins.get_mut(at)?.place_mut(field),
            Path::MapRow(unit, row, field) => {
                let unit = self.units.get_mut(unit)?;
                unit.cooling.unit_map.get_mut(row)?.place_mut(field)
            }
            Path::Claim(at, field) => self.claims.get_mut(at)?.place_mut(field),
            Path::Air(field) => self.air.place_mut(field),
            Path::Price(field) => self.price.place_mut(field),
            Path::Wiring(field) => self.wiring.place_mut(field),
            Path::Installation(circuit, field) => {
                self.wiring.installation_mut(circuit).place_mut(field)
            }
            Path::Banks
            | Path::Chemistry(_)
            | Path::OpenCircuit(_)
            | Path::UnitMap(_)
            | Path::Units
            | Path::Modes(_)
            | Path::Loads
            | Path::Imported
            | Path::Arrays
            | Path::Chargers
            | Path::ModePlan
            | Path::CheckIns
            | Path::Claims => None,
        }
    }

    /// What is stated at `path`: nothing if it is left to its default, or if
    /// the plan has no such place. Choices and counts read as exact figures.
    #[must_use]
    pub fn stated(&self, path: Path) -> Option<Figure> {
        match self.place(path)? {
            Place::Figure(figure) => figure.if_said(),
            Place::MaybeFigure(figure) => figure.and_then(Figure::if_said),
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
        match self.place(path) {
            Some(Place::MaybeFigure(_) | Place::MaybeNumber(_) | Place::MaybeCount(_)) => true,
            // What must be there has a usual figure to stand in for it, or has not.
            Some(Place::Figure(_)) => self.assumed(path).is_some(),
            _ => false,
        }
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
        let usual = self.assumed(path);
        match (self.place_mut(path), usual) {
            (Some(PlaceMut::MaybeFigure(place)), _) => *place = None,
            (Some(PlaceMut::MaybeNumber(place)), _) => *place = None,
            (Some(PlaceMut::MaybeCount(place)), _) => *place = None,
            (Some(PlaceMut::Figure(place)), Some(usual)) => *place = Figure::assumed(usual.value),
            _ => return false,
        }
        true
    }
}
