//! Forms of files that are easy to misread.

use super::*;

#[track_caller]
fn read(text: &str) -> (Log, Layout) {
    read_all(text.as_bytes(), Options::default()).unwrap_or_else(|e| panic!("{e:?}\n{text}"))
}

#[track_caller]
fn check_times(text: &str, unit: Unit, want_s: &[f64]) {
    let (log, layout) = read(text);
    let time = layout
        .columns
        .iter()
        .find(|c| c.role == Role::Time)
        .unwrap();
    assert_eq!(time.unit, unit, "{text}");
    let first = log.samples[0].time_s;
    let got: Vec<f64> = log.samples.iter().map(|s| s.time_s - first).collect();
    assert_eq!(got, want_s, "{text}");
}

#[test]
fn times_of_every_form() {
    check_times(
        "Elapsed,A\n0:00,1\n0:30,1\n25:00,1\n",
        Unit::HoursMinutes,
        &[0., 1800., 90_000.],
    );
    check_times(
        "run,A\n59:58,1\n59:59,1\n1:00:00,1\n",
        Unit::MinutesSeconds,
        &[0., 1., 2.],
    );
    check_times(
        "time (mm:ss),A\n0:01,1\n0:02,1\n",
        Unit::MinutesSeconds,
        &[0., 1.],
    );
    check_times(
        "clock,A\n23:59:00,1\n00:01:00,1\n",
        Unit::Clock,
        &[0., 120.],
    );
    check_times(
        "clock,A\n11:59 PM,1\n12:01 AM,1\n",
        Unit::Clock,
        &[0., 120.],
    );
    check_times(
        "epoch,A\n1751500000000,1\n1751500001500,1\n",
        Unit::EpochMilliseconds,
        &[0., 1.5],
    );
    check_times("t [h];A\n0;1\n0,5;1\n", Unit::Hours, &[0., 1800.]);
    check_times(
        "Date,Clock,A\n31/12/2024,23:59:30,1\n01/01/2025,00:00:00,1\n",
        Unit::Clock,
        &[0., 30.],
    );
    // 5 to 6 March, not 3 May to 3 June.
    check_times(
        "When,A\n3/5/2025 0:00,1\n3/6/2025 0:00,1\n",
        Unit::Calendar,
        &[0., 86_400.],
    );
    check_times(
        "When,A\n5/3/2025 0:00,1\n6/3/2025 0:00,1\n",
        Unit::Calendar,
        &[0., 86_400.],
    );
}

#[test]
fn headings_over_two_lines_and_cut_by_commas() {
    let (log, layout) =
        read("Run of a van\n\nclock,bank,draw\n(s),(mV),(A)\n0,12800,5\n1,12800,5\n");
    assert_eq!(layout.columns[1].heading, "bank (mV)");
    assert_eq!(log.samples[0].volts, Some(12.8));
    let (_, layout) = read("Time, s,Current, mA\n0,500\n1,500\n");
    assert_eq!(layout.columns.len(), 2);
    assert_eq!(
        (layout.columns[1].role, layout.columns[1].unit),
        (Role::Amps, Unit::Milli)
    );
    let (_, layout) = read(
        "epoch,volts,Current, milliamps,Remark\n1751500000,13,-23250.0,\n1751500010,13,-23500.0,\n",
    );
    assert_eq!(layout.columns[0].role, Role::Time);
    let (_, layout) = read("\"Voltage\n(V)\",\"Current\n(A)\",\"t\n(s)\"\n12,5,0\n12,5,1\n");
    assert_eq!(layout.columns[0].role, Role::Volts);
}

#[test]
fn the_better_of_two_columns_is_taken_and_the_other_named() {
    let (log, layout) = read("s,PV V,Bank V,PV A,Bank A\n0,40,13,3,9\n1,40,13,3,9\n");
    let s = log.samples[0];
    assert_eq!((s.volts, s.amps), (Some(13.0), Some(9.0)));
    assert_eq!(
        layout.columns[1].also_fits,
        Some((Role::Volts, Unit::Plain))
    );
    let given = |column, role| Given {
        column,
        role,
        unit: Unit::Plain,
    };
    let options = Options {
        columns: vec![given(1, Role::Volts), given(3, Role::Amps)],
        ..Options::default()
    };
    let text = "s,PV V,Bank V,PV A,Bank A\n0,40,13,3,9\n1,40,13,3,9\n";
    let (log, layout) = read_all(text.as_bytes(), options).unwrap();
    let s = log.samples[0];
    assert_eq!((s.volts, s.amps), (Some(40.0), Some(3.0)));
    assert_eq!(layout.columns[1].why, Why::Given);
}

#[test]
fn a_choice_that_cannot_be_is_refused() {
    for (column, role, unit) in [
        (9, Role::Amps, Unit::Plain),
        (1, Role::Amps, Unit::Hours),
        (usize::MAX, Role::Amps, Unit::Plain),
    ] {
        let options = Options {
            columns: vec![Given { column, role, unit }],
            ..Options::default()
        };
        let got = read_all(b"s,A\n0,1\n1,1\n", options).unwrap_err();
        assert_eq!(got.fault, Fault::BadColumnChoice);
    }
}

#[test]
fn units_in_cells_and_foreign_ones() {
    let (log, _) = read("s;A;W\n0;950 mA;1,2 kW\n1;1,2 A;800 W\n");
    assert_eq!(
        (log.samples[0].amps, log.samples[1].amps),
        (Some(0.95), Some(1.2))
    );
    assert_eq!(log.samples[0].watts, Some(1200.0));
    let got = read_all(b"s,A\n0,1 V\n1,1 A\n", Options::default()).unwrap_err();
    assert_eq!(got, Refusal::at(2, 2, Fault::WrongUnit));
    let got = read_all(b"s,A\n0,1\n1,20000\n", Options::default()).unwrap_err();
    assert!(matches!(
        got,
        Refusal {
            line: 3,
            column: 2,
            fault: Fault::OutOfRange { .. }
        }
    ));
}

#[test]
fn remarks_zones_quotes_and_cut_ends() {
    let (log, _) = read("s,A,Note\n0,1,\n,,door open\n1,1,\n-,-,end of run\n");
    assert_eq!((log.samples.len(), log.notes.remark_lines), (2, 2));
    let got = read_all(
        b"When,A\n2025-07-01T00:00:00Z,1\n2025-07-01T00:01:00Z,1\n2025-07-01T00:02:00,1\n",
        Options::default(),
    );
    assert_eq!(got.unwrap_err(), Refusal::at(4, 1, Fault::MixedZones));
    let got = read_all(b"s,A\n0,1\n1,1\n2,\"1\n3,1\n4,1\"\n", Options::default());
    assert_eq!(got.unwrap_err(), Refusal::at(4, 2, Fault::OpenQuote));
    let (log, _) = read("s,V,A\n0,12.8,1\n1,12.8,1\n2,12.8,1\n3,12");
    assert!(log.notes.cut_short);
    assert_eq!(log.samples.len(), 3);
}

#[test]
fn a_clock_without_seconds_averages_rows_of_one_minute() {
    let (log, _) = read("clock,A\n10:00,4\n10:00,6\n10:01,4\n10:01,6\n10:02,5\n");
    assert_eq!(log.notes.same_time_rows, 2);
    assert_eq!(
        log.samples.iter().map(|s| s.amps).collect::<Vec<_>>(),
        [Some(5.0); 3]
    );
}
