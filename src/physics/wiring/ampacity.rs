//! How much current a conductor may carry for hours.
//!
//! The table is that of US law for boats, 33 CFR 183.425 table 5, whole; it is
//! used for vehicles and cabins too because it states its ambient (30 C) and
//! covers all sizes and insulations. Every reduction here is of ours or of a
//! code's; none raises a value. Local codes may ask for less: they govern.

use super::limits::{Input, Refusal};
use super::size::{Awg, Size};
use super::surroundings::{Column, Surroundings};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, ThermodynamicTemperature, amps, in_celsius, in_volts, volts,
};

/// 33 CFR 183.425 table 5: allowable amperage of conductors, ambient 30 C, no
/// more than two conductors bundled. Rows as [`Awg::all`], columns as
/// [`Column::ALL`]. US federal law, public domain.
const TABLE_5: [[f64; 7]; Awg::COUNT] = [
    [10.0, 10.0, 15.0, 20.0, 20.0, 25.0, 25.0],        // 18
    [15.0, 15.0, 20.0, 25.0, 25.0, 30.0, 35.0],        // 16
    [20.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0],        // 14
    [25.0, 25.0, 35.0, 40.0, 45.0, 50.0, 55.0],        // 12
    [40.0, 40.0, 50.0, 55.0, 60.0, 70.0, 70.0],        // 10
    [55.0, 65.0, 70.0, 70.0, 80.0, 90.0, 100.0],       // 8
    [80.0, 95.0, 100.0, 100.0, 120.0, 125.0, 135.0],   // 6
    [105.0, 125.0, 130.0, 135.0, 160.0, 170.0, 180.0], // 4
    [120.0, 145.0, 150.0, 155.0, 180.0, 195.0, 210.0], // 3
    [140.0, 170.0, 175.0, 180.0, 210.0, 225.0, 240.0], // 2
    [165.0, 195.0, 210.0, 210.0, 245.0, 265.0, 280.0], // 1
    [195.0, 230.0, 245.0, 245.0, 285.0, 305.0, 325.0], // 1/0
    [225.0, 265.0, 285.0, 285.0, 330.0, 355.0, 370.0], // 2/0
    [260.0, 310.0, 330.0, 330.0, 385.0, 410.0, 430.0], // 3/0
    [300.0, 360.0, 385.0, 385.0, 445.0, 475.0, 510.0], // 4/0
];

/// Air the table is made for, C (33 CFR 183.425).
const TABLE_AMBIENT_C: f64 = 30.0;

/// Share of the table left in warmer air: sqrt((T - Ta) / (T - 30)) for a
/// rating T, 0 from Ta = T up; never above 1, so cool air earns nothing.
///
/// NFPA 70 section 310.15(B), the equation under its table of ambient
/// corrections (from memory; the 60, 75 and 90 C columns of that table agree).
/// Note 1 of 33 CFR 183.425 table 5 is the same law at 50 C, rounded.
///
/// # Errors
/// [`Refusal::OutOfRange`] for an ambient outside -60 to 120 C.
pub fn heat_factor(column: Column, ambient: ThermodynamicTemperature) -> Result<f64, Refusal> {
    let ambient_c = Input::Ambient.check(in_celsius(ambient))?;
    let rating_c = column.rating_c();
    let left = (rating_c - ambient_c) / (rating_c - TABLE_AMBIENT_C);
    Ok(left.clamp(0.0, 1.0).sqrt())
}

/// Share of the table left in a bundle: note 2 of 33 CFR 183.425 table 5 (3
/// conductors 0.70; 4 to 6, 0.60; 7 to 24, 0.50; 25 and more, 0.40).
///
/// The law asks it only from 50 V up (183.435(b)). It is taken at every
/// voltage here: the heat is the same, and a cooling unit runs for hours.
///
/// # Errors
/// [`Refusal::OutOfRange`] for none, or for more than 1000.
pub fn bundle_factor(conductors: u32) -> Result<f64, Refusal> {
    Input::BundledConductors.check(f64::from(conductors))?;
    Ok(match conductors {
        0..=2 => 1.0,
        3 => 0.70,
        4..=6 => 0.60,
        7..=24 => 0.50,
        _ => 0.40,
    })
}

/// The value of table 5 as printed, before any reduction.
#[must_use]
pub fn table_5(gauge: Awg, column: Column) -> ElectricCurrent {
    amps(TABLE_5[gauge.place()][column as usize])
}

/// Share of table 5, made for open runs, left inside a wall or conduit.
///
/// The least ratio of NFPA 70 table 310.16 (raceway or cable) to table 5 over
/// gauges 14 to 4/0 at 60, 75 and 90 C, rounded down (from memory): thick
/// conductors lose most. Taken for all, so thin ones are rated too low.
const ENCLOSED_SHARE: f64 = 0.63;

/// A conductor's rating and how it came about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ampacity {
    /// The gauge whose row was read; for a metric size the next one down.
    pub gauge: Awg,
    /// The column that governs.
    pub column: Column,
    /// The value printed there.
    pub table: ElectricCurrent,
    /// Share left by the heat of the air.
    pub heat_factor: f64,
    /// Share left by the bundle.
    pub bundle_factor: f64,
    /// Share left by a wall or conduit around it.
    pub enclosure_factor: f64,
    /// What the conductor may carry: the product of these.
    pub allowed: ElectricCurrent,
}

/// Rating of a conductor in its surroundings: table 5 in the column that
/// governs, times the reductions for heat, bundle and enclosure. In an engine space the
/// lower of note 1 and of the heat at 50 C (or hotter, if it is) counts.
///
/// # Errors
/// [`Refusal::SmallerThanTable`] for 0.75 mm2; [`Refusal::OutOfRange`] naming
/// the input.
pub fn ampacity(size: Size, surroundings: &Surroundings) -> Result<Ampacity, Refusal> {
    let column = surroundings.column();
    let mut heat_factor = heat_factor(column, surroundings.reckoned_ambient()?)?;
    if surroundings.engine_space {
        heat_factor = heat_factor.min(column.engine_space_factor());
    }
    let bundle_factor = bundle_factor(surroundings.bundled)?;
    let enclosure_factor = if surroundings.enclosed {
        ENCLOSED_SHARE
    } else {
        1.0
    };
    let gauge = size.table_gauge().ok_or(Refusal::SmallerThanTable(size))?;
    let table = table_5(gauge, column);
    Ok(Ampacity {
        gauge,
        column,
        table,
        heat_factor,
        bundle_factor,
        enclosure_factor,
        allowed: table * heat_factor * bundle_factor * enclosure_factor,
    })
}

/// Where the table's scope ends.
///
/// Sections 183.425 and 183.455 of 33 CFR speak of circuits of less than 50 V;
/// above lie other rules (183.435) and, on land, the full electrical code. The
/// voltage to compare is the one while charging: a bank sold as 48 V reaches
/// 54 to 58 V.
#[must_use]
pub fn scope_ends_at() -> ElectricPotential {
    volts(50.0)
}

/// Whether a system leaves that scope while it charges (from 50 V up).
///
/// # Errors
/// [`Refusal::OutOfRange`] for a voltage outside 1 to 1000 V.
pub fn beyond_scope(charge: ElectricPotential) -> Result<bool, Refusal> {
    Ok(Input::Volts.check(in_volts(charge))? >= in_volts(scope_ends_at()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::wiring::Metric;
    use crate::quantity::{celsius, in_amps, square_millimeters};

    fn indoors(insulation: Column, terminals: Column) -> Surroundings {
        Surroundings {
            ambient: celsius(30.0),
            engine_space: false,
            bundled: 2,
            enclosed: false,
            sheathed: false,
            insulation,
            terminals,
        }
    }

    #[test]
    fn table_grows_along_rows_and_columns() {
        for pair in TABLE_5.windows(2) {
            assert!((0..7).all(|column| pair[0][column] < pair[1][column]));
        }
        assert!(TABLE_5.iter().all(|row| row.is_sorted()));
    }

    #[test]
    fn the_cooler_of_insulation_and_terminal_governs_either_way_round() {
        let size = Size::Awg(Awg::new(6).unwrap());
        let rated = |a, b| ampacity(size, &indoors(a, b)).unwrap().allowed;
        assert_eq!(rated(Column::C105, Column::C75), amps(95.0));
        assert_eq!(rated(Column::C75, Column::C105), amps(95.0));
    }

    #[test]
    fn air_as_hot_as_the_rating_leaves_nothing() {
        let mut surroundings = indoors(Column::C60, Column::C75);
        surroundings.ambient = celsius(60.0);
        let size = Size::Awg(Awg::new(6).unwrap());
        assert!(in_amps(ampacity(size, &surroundings).unwrap().allowed) < 1e-5);
        surroundings.ambient = celsius(121.0);
        assert!(ampacity(size, &surroundings).is_err());
    }

    #[test]
    fn the_thinnest_metric_size_is_refused_by_name() {
        let size = Size::Metric(Metric::new(square_millimeters(0.75)).unwrap());
        assert_eq!(
            ampacity(size, &indoors(Column::C105, Column::C105)),
            Err(Refusal::SmallerThanTable(size))
        );
    }
}
