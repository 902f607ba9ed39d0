//! Conductor sizes: American gauge 18 to 4/0 and metric 0.75 to 120 mm2.
//!
//! The two systems do not meet: between 33.6 mm2 (gauge 2) and 35 mm2 lies a
//! gap that matters. [`Awg::at_least`] and [`Metric::at_least`] give for any
//! area the next size *up* in each; [`Size::table_gauge`] the next gauge
//! *down*, because a rating may only be read off for copper that is there.

use super::limits::{Input, Refusal};
use crate::quantity::{Area, Length, in_square_millimeters, meters, square_millimeters};
use std::f64::consts::FRAC_PI_4;

/// A size of the American wire gauge, of those the ampacity table knows.
///
/// Not an automotive or aircraft gauge: those bear the same numbers on other,
/// mostly smaller, areas (an aircraft "14" has 3831 circular mils where ASTM
/// B258 has 4107: FAA AC 43.13-1B, table 11-9).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Awg(u8);

/// Gauge numbers in growing order of copper; 1/0 is 0, 4/0 is -3.
const GAUGES: [i8; 15] = [18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3];

impl Awg {
    /// How many gauges there are in the table.
    pub const COUNT: usize = GAUGES.len();

    /// The gauge of that number (1/0 is 0, 2/0 is -1, 4/0 is -3), if the
    /// ampacity table has it.
    ///
    /// ```
    /// use till_morning::physics::wiring::Awg;
    /// assert_eq!(Awg::new(-1).unwrap().number(), -1); // 2/0
    /// assert_eq!(Awg::new(5), None); // real, but not in the table
    /// ```
    #[must_use]
    pub fn new(number: i8) -> Option<Self> {
        let place = GAUGES.iter().position(|&gauge| gauge == number)?;
        u8::try_from(place).ok().map(Self)
    }

    /// All gauges, thinnest first.
    pub fn all() -> impl DoubleEndedIterator<Item = Self> {
        (0..GAUGES.len() as u8).map(Self)
    }

    /// The gauge number; 1/0 is 0, 4/0 is -3.
    #[must_use]
    pub fn number(self) -> i8 {
        GAUGES[self.place()]
    }

    /// Row of the tables that are kept in this order, thinnest 0.
    pub(super) fn place(self) -> usize {
        usize::from(self.0)
    }

    /// Diameter of the solid round conductor: d = 0.127 mm * 92^((36 - n)/39)
    /// (ASTM B258, clause on the gauge's law).
    #[must_use]
    pub fn diameter(self) -> Length {
        let steps = 36.0 - f64::from(self.number());
        meters(0.127e-3 * 92f64.powf(steps / 39.0))
    }

    /// Area of copper: that of the solid round conductor.
    #[must_use]
    pub fn area(self) -> Area {
        self.diameter() * self.diameter() * FRAC_PI_4
    }

    /// The thinnest gauge with at least that much copper; `None` past 4/0.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] for an area outside 0.05 to 1000 mm2.
    pub fn at_least(area: Area) -> Result<Option<Self>, Refusal> {
        Input::Area.check(in_square_millimeters(area))?;
        Ok(Self::all().find(|gauge| gauge.area() >= area))
    }
}

/// A metric size by its nominal area (IEC 60228, clause 5: nominal sizes).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Metric(u8);

/// Nominal areas in mm2, growing.
const NOMINAL_MM2: [f64; 14] = [
    0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0,
];

impl Metric {
    /// The size of exactly that nominal area, if it is one.
    #[must_use]
    pub fn new(nominal: Area) -> Option<Self> {
        let mm2 = in_square_millimeters(nominal);
        Self::all().find(|size| (size.nominal_mm2() - mm2).abs() < 1e-9)
    }

    /// All metric sizes, thinnest first.
    pub fn all() -> impl DoubleEndedIterator<Item = Self> {
        (0..NOMINAL_MM2.len() as u8).map(Self)
    }

    fn nominal_mm2(self) -> f64 {
        NOMINAL_MM2[usize::from(self.0)]
    }

    /// The nominal area. Real strands may hold less copper: the standard
    /// binds the resistance, see [`Build`](super::Build).
    #[must_use]
    pub fn area(self) -> Area {
        square_millimeters(self.nominal_mm2())
    }

    /// The thinnest metric size with at least that nominal area; `None` past
    /// 120 mm2.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] for an area outside 0.05 to 1000 mm2.
    pub fn at_least(area: Area) -> Result<Option<Self>, Refusal> {
        let mm2 = Input::Area.check(in_square_millimeters(area))?;
        Ok(Self::all().find(|size| size.nominal_mm2() >= mm2 - 1e-9))
    }
}

/// A conductor size in either system.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Size {
    /// By American wire gauge.
    Awg(Awg),
    /// By nominal metric area.
    Metric(Metric),
}

/// Which of the two size systems.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum System {
    /// American wire gauge.
    Awg,
    /// Nominal metric areas.
    Metric,
}

impl System {
    /// Every size of the system, thinnest first.
    #[must_use]
    pub fn sizes(self) -> Vec<Size> {
        match self {
            Self::Awg => Awg::all().map(Size::Awg).collect(),
            Self::Metric => Metric::all().map(Size::Metric).collect(),
        }
    }
}

impl Size {
    /// The size that a stated area is: a gauge within 0.3 % of its copper, a
    /// metric size by its nominal area, and between two sizes the thinner one of
    /// either system. The thinnest there is for anything less.
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] for an area outside 0.05 to 1000 mm2.
    pub fn of_stated(area: Area) -> Result<Self, Refusal> {
        let mm2 = Input::Area.check(in_square_millimeters(area))?;
        let gauges = Awg::all().map(Self::Awg);
        let sizes = gauges.chain(Metric::all().map(Self::Metric));
        // Gauges are written to a tenth of a mm2 at times: 13.3 is gauge 6.
        let fits = |size: &Self| in_square_millimeters(size.area()) <= mm2 * 1.003;
        let thickest = sizes.filter(fits).max_by(|a, b| {
            let (a, b) = (a.area(), b.area());
            in_square_millimeters(a).total_cmp(&in_square_millimeters(b))
        });
        Ok(thickest.unwrap_or(Self::Metric(Metric(0))))
    }

    /// Area of copper (gauge) or nominal area (metric).
    #[must_use]
    pub fn area(self) -> Area {
        match self {
            Self::Awg(gauge) => gauge.area(),
            Self::Metric(size) => size.area(),
        }
    }

    /// The system this size belongs to.
    #[must_use]
    pub fn system(self) -> System {
        match self {
            Self::Awg(_) => System::Awg,
            Self::Metric(_) => System::Metric,
        }
    }

    /// The gauge whose rating may be used for this size: itself, or for a
    /// metric size the thickest gauge that holds no more copper than it.
    /// `None` for 0.75 mm2, which holds less than gauge 18.
    ///
    /// A metric conductor is allowed some resistance above its nominal area's:
    /// at worst (35 mm2, IEC 60228 class 5) 8 % above the gauge it is mapped
    /// to. That is why mapping never goes to the *nearest* size.
    #[must_use]
    pub fn table_gauge(self) -> Option<Awg> {
        match self {
            Self::Awg(gauge) => Some(gauge),
            Self::Metric(size) => Awg::all().rev().find(|gauge| gauge.area() <= size.area()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_systems_grow() {
        for system in [System::Awg, System::Metric] {
            let sizes = system.sizes();
            assert!(sizes.is_sorted_by(|a, b| a.area() < b.area()));
            assert!(sizes.iter().all(|size| size.system() == system));
        }
    }

    #[test]
    fn a_metric_size_maps_down_and_never_up() {
        for size in System::Metric.sizes() {
            match size.table_gauge() {
                Some(gauge) => assert!(gauge.area() <= size.area()),
                None => assert!(size.area() < square_millimeters(0.8)),
            }
        }
    }

    #[test]
    fn next_size_up_is_found_in_each_system_or_there_is_none() {
        let area = square_millimeters(33.7);
        assert_eq!(Awg::at_least(area), Ok(Awg::new(1)));
        assert_eq!(
            Metric::at_least(area),
            Ok(Metric::new(square_millimeters(35.0)))
        );
        assert_eq!(Awg::at_least(square_millimeters(200.0)), Ok(None));
        assert!(Metric::at_least(square_millimeters(f64::NAN)).is_err());
    }
}
