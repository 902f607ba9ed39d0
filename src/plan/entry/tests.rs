//! Texts as people type them, and numbers as fields show them.

use super::*;

// How people write numbers, units and clock times: common practice, no
// source. The foot is 0.3048 m and 77 °F is 25 °C by definition (NIST SP 811,
// from memory).
#[track_caller]
fn check(text: &str, unit: Unit, value: f64) {
    let entry = read(text, unit, Show::METRIC).unwrap_or_else(|error| panic!("{text}: {error:?}"));
    assert!((entry.value - value).abs() < 1e-9, "{text}: {entry:?}");
}

#[test]
fn numbers_as_typed() {
    for (text, value) in [
        ("1,5", 1.5),
        ("1 000", 1000.0),
        ("1\u{a0}000,5", 1000.5),
        ("1'000", 1000.0),
        ("1,000.5", 1000.5),
        ("1.000,5", 1000.5),
        ("1,000", 1000.0),
        ("1.000", 1.0),
        ("0,125", 0.125),
        (".5", 0.5),
        ("5.", 5.0),
        ("+7", 7.0),
        (" 12 ", 12.0),
        ("12,80", 12.8),
        ("1,234,567", 1_234_567.0),
    ] {
        check(text, Unit::Watt, value);
    }
    check("\u{2212}5", Unit::Celsius, -5.0);
}

#[test]
fn units_after_the_number() {
    check("12v", Unit::Volt, 12.0);
    check("1.2 kW", Unit::Watt, 1200.0);
    check("500 mA", Unit::Amp, 0.5);
    check("100Ah", Unit::AmpHour, 100.0);
    check("80 %", Unit::Percent, 80.0);
    check("90 min", Unit::Hour, 1.5);
    check("2 h", Unit::Hour, 2.0);
    check("9h30", Unit::Hour, 9.5);
    check("9 h 30 min", Unit::Hour, 9.5);
    check("9:30", Unit::Hour, 9.5);
    check("10 ft", Unit::Meter, 3.048);
    check("10'", Unit::Meter, 3.048);
    check("77 °F", Unit::Celsius, 25.0);
    check("16mm²", Unit::SquareMillimeter, 16.0);
    check("6 AWG", Unit::SquareMillimeter, 13.302);
    check("awg 6", Unit::SquareMillimeter, 13.302);
    check("2/0", Unit::SquareMillimeter, 67.431);
    check("6", Unit::SquareMillimeter, 6.0);
    assert_eq!(
        show(67.431, Unit::SquareMillimeter, Show::METRIC),
        "2/0 AWG"
    );
    assert!(read("5 AWG", Unit::SquareMillimeter, Show::METRIC).is_err());
    assert!(read("6 AWG", Unit::Meter, Show::METRIC).is_err());
    check("0.01 ohm", Unit::Milliohm, 10.0);
    check("5 mΩ", Unit::Milliohm, 5.0);
    assert_eq!(
        read("1280 Wh", Unit::AmpHour, Show::METRIC).map(|entry| entry.given),
        Ok(Unit::WattHour)
    );
    let product = read("2 × 100 Ah", Unit::AmpHour, Show::METRIC).unwrap();
    assert_eq!(
        (product.value, product.times, product.each),
        (200.0, Some(2), Some(100.0))
    );
}

// The foot and the pound are exact (NIST SP 811, appendix B.8, from memory); 1 cfm
// is 1.699 m3/h, 1 mph 0.44704 m/s, a US gallon 3.785 L, a U-value of 1
// Btu/(h ft2 F) 5.678 W/(m2 K), 1 Btu/F 1.899 kJ/K, by the same tables.
#[test]
fn a_bare_number_is_in_the_units_shown() {
    for (unit, value, near) in [
        (Unit::Meter, 0.3048, 1e-12),
        (Unit::SquareMeter, 0.092_903_04, 1e-12),
        (Unit::CubicMeter, 0.028_316_85, 1e-8),
        (Unit::CubicMeterPerHour, 1.699_011, 1e-6),
        (Unit::MeterPerSecond, 0.447_04, 1e-9),
        (Unit::FaceVelocity, 0.005_08, 1e-9),
        (Unit::Kelvin, 5.0 / 9.0, 1e-12),
        (Unit::Kilogram, 0.453_592_37, 1e-9),
        (Unit::Liter, 3.785_412, 1e-6),
        (Unit::LiterPerKilowattHour, 3.785_412, 1e-6),
        (Unit::WattPerSquareMeterKelvin, 5.678_263, 1e-6),
        (Unit::KilojoulePerKelvin, 1.899_101, 1e-6),
    ] {
        let us = read("1", unit, Show::US).unwrap();
        assert!((us.value - value).abs() < near, "{unit:?} {}", us.value);
        assert_eq!(
            read("1", unit, Show::METRIC).unwrap().value,
            1.0,
            "{unit:?}"
        );
        assert_eq!(show(us.value, unit, Show::US), "1", "{unit:?}");
    }
    assert_eq!(read("77", Unit::Celsius, Show::US).unwrap().value, 25.0);
    // Exactly, so that the end of a range is in it.
    for (f, c) in [
        ("-40", -40.0),
        ("-58", -50.0),
        ("140", 60.0),
        ("302", 150.0),
    ] {
        assert_eq!(read(f, Unit::Celsius, Show::US).unwrap().value, c);
    }
    for unit in [Unit::Watt, Unit::Amp, Unit::Volt, Unit::Percent, Unit::Hour] {
        assert_eq!(read("7", unit, Show::US).unwrap().value, 7.0);
    }
}

#[test]
fn a_unit_that_is_typed_counts_whatever_is_shown() {
    for units in [Show::METRIC, Show::US] {
        let value = |text, unit| read(text, unit, units).unwrap().value;
        let near = |a: f64, b: f64| assert!((a - b).abs() < 1e-3, "{a} is not {b}");
        near(value("240 cfm", Unit::CubicMeterPerHour), 407.763);
        near(value("240cfm", Unit::CubicMeterPerHour), 407.763);
        near(value("400 m3/h", Unit::CubicMeterPerHour), 400.0);
        near(value("500 fpm", Unit::FaceVelocity), 2.54);
        near(value("2.5 m/s", Unit::FaceVelocity), 2.5);
        near(value("10 mph", Unit::MeterPerSecond), 4.4704);
        near(value("4 °F", Unit::Kelvin), 2.2222);
        near(value("2 K", Unit::Kelvin), 2.0);
        near(value("20 lb", Unit::Kilogram), 9.0718);
        near(value("45amps", Unit::Amp), 45.0);
        near(value("5 gal", Unit::Liter), 18.927);
    }
}

#[test]
fn from_and_to_are_a_middle_and_half_the_way() {
    let spread = |text, unit| {
        let read = read_spread(text, unit, Show::METRIC).unwrap();
        (read.entry.value, read.half)
    };
    for text in [
        "230-250",
        "230 - 250",
        "230\u{2013}250 W",
        "230 to 250",
        "0.23-0.25 kW",
    ] {
        let (value, half) = spread(text, Unit::Watt);
        assert!((value - 240.0).abs() < 1e-9, "{text}");
        assert!((half.unwrap() - 10.0).abs() < 1e-9, "{text}");
    }
    assert_eq!(spread("-5 - -1", Unit::Celsius), (-3.0, Some(2.0)));
    assert_eq!(spread("-5-1", Unit::Celsius), (-2.0, Some(3.0)));
    assert_eq!(spread("-5", Unit::Celsius), (-5.0, None));
    assert_eq!(spread("240", Unit::Watt), (240.0, None));
    // A range in °F is one in °C.
    let warm = read_spread("95-104", Unit::Celsius, Show::US).unwrap();
    assert!((warm.entry.value - 37.5).abs() < 1e-9);
    assert!((warm.half.unwrap() - 2.5).abs() < 1e-9);
    for text in [
        "230-",
        "-",
        "250-230",
        "230-230",
        "230-250 V",
        "1-2-3",
        "2 to x",
    ] {
        assert!(
            read_spread(text, Unit::Watt, Show::METRIC).is_err(),
            "{text}"
        );
    }
    let clock = read_spread("21-22", Unit::ClockMinute, Show::METRIC);
    assert!(clock.is_err());
}

#[test]
fn a_voltage_said_with_amps_is_told_apart() {
    assert_eq!(split_volts("45 A"), Ok(("45 A", None)));
    for text in ["45 A at 24 V", "45 A @ 24 V", "45 A@24", "45 A AT 24"] {
        let (amps, volts) = split_volts(text).unwrap();
        assert_eq!((amps.trim(), volts), ("45 A", Some(24.0)), "{text}");
    }
    assert!(split_volts("45 A at night").is_err());
}

#[test]
fn clock_times() {
    for text in [
        "21:30", "9:30 pm", "9.30pm", "2130", "21.30", "21h30", "9:30PM",
    ] {
        check(text, Unit::ClockMinute, 1290.0);
    }
    check("9 pm", Unit::ClockMinute, 1260.0);
    check("12 am", Unit::ClockMinute, 0.0);
    check("7", Unit::ClockMinute, 420.0);
    check("730", Unit::ClockMinute, 450.0);
}

#[test]
fn what_is_no_number() {
    for text in [
        "plenty", "1.2.3", "1,2,3", "--5", "1e9", "12 V 3", "25:00", "x", "2x", "x2", "1 00",
    ] {
        assert!(read(text, Unit::Watt, Show::METRIC).is_err(), "{text}");
    }
    assert_eq!(
        read("12 V", Unit::Watt, Show::METRIC),
        Err(EntryError::OtherUnit { given: Unit::Volt })
    );
    assert_eq!(read(" ", Unit::Watt, Show::METRIC), Err(EntryError::Empty));
    assert!(read("25:00", Unit::ClockMinute, Show::METRIC).is_err());
}

#[test]
fn fixed_writes_as_the_standard_library_does() {
    for value in [
        0.0,
        0.05,
        1.005,
        -2.5,
        12.345_678,
        99.999,
        1e9,
        123_456_789.123,
        -0.0001,
    ] {
        for decimals in 0..6 {
            let ours: f64 = fixed(value, decimals).parse().unwrap();
            let theirs: f64 = format!("{value:.decimals$}").parse().unwrap();
            // A tie may be rounded the other way; nothing else may differ.
            assert!(
                (ours - theirs).abs() < 1.01 * 10f64.powi(-(decimals as i32)),
                "{value} {decimals}"
            );
            assert!(
                (ours - value).abs() <= 0.500_001 * 10f64.powi(-(decimals as i32)),
                "{value} {decimals}"
            );
        }
    }
    assert_eq!(fixed(-0.4, 0), "0");
    assert_eq!(fixed(2.5, 2), "2.50");
    assert_eq!(fixed(f64::NAN, 1), "0.0");
    assert_eq!(fixed(-9_007_199_254_740_994.0, 2), "-9007199254740994");
    assert_eq!(fixed(1e300, 2).parse(), Ok(1e300));
    assert_eq!(fixed(f64::NEG_INFINITY, 2), "-∞");
}

#[test]
fn what_is_shown_reads_back() {
    for value in [
        0.0,
        0.001,
        0.1 + 0.2,
        12.8,
        49.7,
        335.5,
        1e4,
        123_456.75,
        1e-5,
    ] {
        let text = show(value, Unit::Watt, Show::METRIC);
        check(&text, Unit::Watt, (value * 1e9).round() / 1e9);
    }
    assert_eq!(show(1260.0, Unit::ClockMinute, Show::METRIC), "21:00");
    assert_eq!(show(2.5, Unit::Meter, Show::US), "8.202");
    assert_eq!(show(40.0, Unit::Celsius, Show::US), "104");
    let feet = read("8.202", Unit::Meter, Show::US).unwrap();
    assert!((feet.value - 2.5).abs() < 1e-4);
}
