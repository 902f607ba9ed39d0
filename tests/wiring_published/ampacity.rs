use super::{awg, gauge, near};
use till_morning::physics::wiring::{
    Column, Metric, Size, Surroundings, ampacity, beyond_scope, bundle_factor, heat_factor, table_5,
};
use till_morning::quantity::{amps, celsius, in_amps, square_millimeters, volts};

fn in_free_air(column: Column) -> Surroundings {
    Surroundings {
        ambient: celsius(30.0),
        engine_space: false,
        bundled: 2,
        sheathed: false,
        enclosed: false,
        insulation: column,
        terminals: column,
    }
}

/// 33 CFR 183.425 table 5, retyped by columns from other prints than the one
/// the engine's table was typed from by rows: the 105 C column from a cable
/// list to UL 1426, the others from an unofficial copy of the CFR.
#[test]
fn table_5_by_columns() {
    let numbers = [18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3];
    let columns: [(Column, [i32; 15]); 7] = [
        (
            Column::C60,
            [
                10, 15, 20, 25, 40, 55, 80, 105, 120, 140, 165, 195, 225, 260, 300,
            ],
        ),
        (
            Column::C75,
            [
                10, 15, 20, 25, 40, 65, 95, 125, 145, 170, 195, 230, 265, 310, 360,
            ],
        ),
        (
            Column::C80,
            [
                15, 20, 25, 35, 50, 70, 100, 130, 150, 175, 210, 245, 285, 330, 385,
            ],
        ),
        (
            Column::C90,
            [
                20, 25, 30, 40, 55, 70, 100, 135, 155, 180, 210, 245, 285, 330, 385,
            ],
        ),
        (
            Column::C105,
            [
                20, 25, 35, 45, 60, 80, 120, 160, 180, 210, 245, 285, 330, 385, 445,
            ],
        ),
        (
            Column::C125,
            [
                25, 30, 40, 50, 70, 90, 125, 170, 195, 225, 265, 305, 355, 410, 475,
            ],
        ),
        (
            Column::C200,
            [
                25, 35, 45, 55, 70, 100, 135, 180, 210, 240, 280, 325, 370, 430, 510,
            ],
        ),
    ];
    for (column, values) in columns {
        for (number, value) in numbers.into_iter().zip(values) {
            assert_eq!(
                table_5(gauge(number), column),
                amps(f64::from(value)),
                "gauge {number}, {column:?}"
            );
        }
    }
}

/// Values in engine spaces, 105 C wire, as reprinted by makers of boat cable
/// from the table and note 1, whole amperes (some cut off, some rounded).
#[test]
fn engine_space_values() {
    let reprint = [
        17, 21, 30, 38, 51, 68, 102, 136, 153, 178, 208, 242, 280, 327, 378,
    ];
    let numbers = [18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3];
    let surroundings = Surroundings {
        engine_space: true,
        ..in_free_air(Column::C105)
    };
    for (number, value) in numbers.into_iter().zip(reprint) {
        let rated = ampacity(awg(number), &surroundings).unwrap();
        near(in_amps(rated.allowed), f64::from(value), 0.5 + 1e-9);
    }
}

/// Note 1 of table 5 (50 C): 0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00.
///
/// The square-root law, rounded to two figures, makes all but three of them:
/// 0.775 at 80 C, where the note prints 0.78; 0.856 at 105 C, where it prints
/// 0.85 (and the Canadian code 0.86); and 0.939 at 200 C, where it grants 1.00.
/// The engine takes the lower each time.
#[test]
fn note_1_and_the_square_root_law() {
    let note = [0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00];
    for (column, printed) in Column::ALL.into_iter().zip(note) {
        near(column.engine_space_factor(), printed, 0.0);
        let law = heat_factor(column, celsius(50.0)).unwrap();
        match column {
            Column::C80 => near(law, 0.775, 5e-4),
            Column::C105 => near(law, 0.856, 5e-4),
            Column::C200 => near(law, 0.939, 5e-4),
            _ => near(law, printed, 5e-3),
        }
        let surroundings = Surroundings {
            engine_space: true,
            ..in_free_air(column)
        };
        let factor = ampacity(awg(6), &surroundings).unwrap().heat_factor;
        assert!(factor <= printed && factor <= law);
    }
}

/// NFPA 70 table of ambient corrections to a base of 30 C, as reprinted: the
/// value of each five-degree band is that of its upper end. 60, 75, 90 C.
#[test]
fn nec_ambient_corrections() {
    let rows = [
        (35.0, [0.91, 0.94, 0.96]),
        (40.0, [0.82, 0.88, 0.91]),
        (45.0, [0.71, 0.82, 0.87]),
        (50.0, [0.58, 0.75, 0.82]),
        (55.0, [0.41, 0.67, 0.76]),
    ];
    for (ambient_c, printed) in rows {
        for (column, value) in [Column::C60, Column::C75, Column::C90]
            .into_iter()
            .zip(printed)
        {
            let factor = heat_factor(column, celsius(ambient_c)).unwrap();
            near(factor, value, 5e-3 + 1e-9);
        }
    }
    // The table goes above 1 in cool air (1.08 for 60 C at 25 C); not here.
    near(heat_factor(Column::C60, celsius(25.0)).unwrap(), 1.0, 0.0);
    near(heat_factor(Column::C60, celsius(60.0)).unwrap(), 0.0, 1e-6);
}

/// Note 2 of table 5 (33 CFR 183.435(b)), as printed with the Coast Guard's
/// compliance guideline; and values from a cable list to UL 1426, 105 C, three
/// conductors of 6 (84 A), five of 2 (126 A), ten of 4/0 (222.5 A), and three
/// of 10 in an engine space (35.7 A).
#[test]
fn bundles() {
    let printed = [
        (1, 1.0),
        (2, 1.0),
        (3, 0.70),
        (4, 0.60),
        (6, 0.60),
        (7, 0.50),
        (24, 0.50),
    ];
    for (conductors, factor) in printed.into_iter().chain([(25, 0.40), (300, 0.40)]) {
        near(bundle_factor(conductors).unwrap(), factor, 0.0);
    }
    let rows = [
        (3, 6, false, 84.0),
        (5, 2, false, 126.0),
        (10, -3, false, 222.5),
        (3, 10, true, 35.7),
    ];
    for (bundled, number, engine_space, value) in rows {
        let surroundings = Surroundings {
            bundled,
            engine_space,
            ..in_free_air(Column::C105)
        };
        let rated = ampacity(awg(number), &surroundings).unwrap();
        near(in_amps(rated.allowed), value, 1e-9);
    }
}

/// NFPA 70 table 310.16 (from memory), raceway or cable: 6 at 75 C 65 A, 4/0 at
/// 75 C 230, 3/0 at 60 C 165, 2 at 90 C 130, 12 at 75 C 25. Enclosed, the engine
/// grants no more than that; table 5, for open runs, grants as much or more.
#[test]
fn inside_a_wall() {
    let rows = [
        (6, Column::C75, 65.0),
        (-3, Column::C75, 230.0),
        (-2, Column::C60, 165.0),
        (2, Column::C90, 130.0),
        (12, Column::C75, 25.0),
    ];
    for (number, column, code_a) in rows {
        let enclosed = Surroundings {
            enclosed: true,
            ..in_free_air(column)
        };
        let rated = ampacity(awg(number), &enclosed).unwrap();
        assert!(in_amps(rated.allowed) <= code_a, "{number}");
        assert!(in_amps(rated.table) >= code_a);
    }
}

/// A metric size is read in the row of the gauge it holds: 16 mm2 as 6 (13.3
/// mm2), 25 as 4 (21.2), 50 as 1 (42.4), by ASTM B258 areas.
#[test]
fn metric_sizes_are_read_one_gauge_down() {
    for (mm2, number, table_a) in [(16.0, 6, 95.0), (25.0, 4, 125.0), (50.0, 1, 195.0)] {
        let size = Size::Metric(Metric::new(square_millimeters(mm2)).unwrap());
        let rated = ampacity(size, &in_free_air(Column::C75)).unwrap();
        assert_eq!(rated.gauge, gauge(number));
        near(in_amps(rated.table), table_a, 0.0);
    }
}

/// 33 CFR 183.425 and 183.455(c)(1): circuits of *less than* 50 V. Sixteen LFP
/// cells charge at 3.65 V each (common practice, no source): 58.4 V; eight
/// stay at 29.2 V.
#[test]
fn scope_ends_at_fifty_volts() {
    assert_eq!(beyond_scope(volts(16.0 * 3.65)), Ok(true));
    assert_eq!(beyond_scope(volts(50.0)), Ok(true));
    assert_eq!(beyond_scope(volts(8.0 * 3.65)), Ok(false));
    assert!(beyond_scope(volts(f64::NAN)).is_err());
}
