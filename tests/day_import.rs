//! Weather files into a plan: whole days, the right hours, nothing lost.
//!
//! The excerpts are the US Department of Energy's, public domain; what they hold
//! is held against pvlib's reading of them (tests/data/weather_files.md).

use std::{collections::HashMap, fs};
use till_morning::{
    answer::day::{
        day,
        import::{Fault, MOST_BYTES, Refusal, Stamp, Stretch, read},
    },
    plan::{Plan, day::SunParts},
};

fn data(name: &str) -> Vec<u8> {
    fs::read(format!("{}/tests/data/{name}", env!("CARGO_MANIFEST_DIR"))).unwrap()
}

/// A column of the same day as pvlib 0.16.1 reads it.
fn by_pvlib(station: &str, mm_dd: &str, column: &str) -> Vec<f64> {
    let text = String::from_utf8(data("weather_hot_days.csv")).unwrap();
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let rows = reader.deserialize::<HashMap<String, String>>();
    rows.map(Result::unwrap)
        .filter(|row| row["station"] == station && row["mm_dd"] == mm_dd)
        .map(|row| row[column].parse().unwrap())
        .collect()
}

#[track_caller]
fn check_day(file: &str, (station, mm_dd): (&str, &str), latitude_deg: f64) {
    let file = read(&data(file), Stamp::EndOfHour).unwrap();
    let (plan, taken) = file.taken_into(&Plan::demo(), Stretch::Hottest);
    let imported = &plan.day.imported;
    // Irradiance is by the hour that it is the mean of: the same, hour by hour.
    assert_eq!(imported.global_w_m2, by_pvlib(station, mm_dd, "ghi"));
    assert_eq!(imported.direct_w_m2, by_pvlib(station, mm_dd, "dni"));
    assert_eq!(imported.diffuse_w_m2, by_pvlib(station, mm_dd, "dhi"));
    assert_eq!(taken.sun_parts, SunParts::File);
    // Temperatures are at the end of the hour in the file, in its middle here.
    let at_end = by_pvlib(station, mm_dd, "t_dry_c");
    for hour in 1..24 {
        let middle = 0.5 * (at_end[hour - 1] + at_end[hour]);
        let off = (imported.outdoor_c[hour] - middle).abs();
        assert!(off < 0.06, "{hour}: {off}");
    }
    // Within what stands at the ends of the hours, and close to it.
    let extreme = |pick: fn(f64, f64) -> f64| at_end.iter().copied().reduce(pick).unwrap();
    let (low, high) = (extreme(f64::min), extreme(f64::max));
    assert!((low..low + 0.6).contains(&taken.low_c), "{}", taken.low_c);
    assert!(
        (high - 0.6..=high).contains(&taken.high_c),
        "{}",
        taken.high_c
    );
    assert_eq!(plan.day.latitude_deg, Some(latitude_deg));
    assert_eq!(plan.day.utc_offset_min, Some(-300.0));
    assert_eq!(plan.errors(), []);
    assert!(day(&plan).is_some());
}

#[test]
fn miami_in_june_1970() {
    check_day("miami_28_june_1970.tm2", ("miami", "06-28"), 25.8);
}

#[test]
fn greensboro_in_july_1981() {
    check_day("greensboro_10_july_1981.csv", ("greensboro", "07-10"), 36.1);
}

/// Three days, each warmer than the last by 4 K, that begin at an hour.
fn table(first_hour: usize, stamp_add_h: f64) -> String {
    let mut text = String::from("hour,temperature,irradiance\n");
    for hour in first_hour..first_hour + 72 {
        let (day, of_day) = (hour / 24, hour % 24);
        text += &format!(
            "{},{},{}\n",
            of_day as f64 + stamp_add_h,
            20 + 4 * day,
            10 * of_day
        );
    }
    text
}

#[test]
fn the_hottest_days_are_taken_and_as_many_as_the_plan_wants() {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    let file = read(table(0, 0.0).as_bytes(), Stamp::StartOfHour).unwrap();
    let (next, taken) = file.taken_into(&plan, Stretch::Hottest);
    // The evening of the first day and the whole of the second: two days.
    assert_eq!((taken.days, next.day.imported.outdoor_c.len()), (2, 48));
    assert_eq!(next.day.imported.outdoor_c[5], 24.0);
    assert_eq!(next.day.imported.global_w_m2[7], 70.0);
    // The table has the total sun alone.
    assert_eq!(taken.sun_parts, SunParts::Estimated);
    assert!(next.day.imported.direct_w_m2.is_empty());
    // A table has no place and no date: the plan's stay.
    assert_eq!(next.day.latitude_deg, plan.day.latitude_deg);
    assert_eq!(next.day.month, plan.day.month);
}

#[test]
fn a_table_stamped_in_the_middle_is_shared_between_clock_hours() {
    let file = read(table(0, 0.0).as_bytes(), Stamp::MiddleOfHour).unwrap();
    let (next, _) = file.taken_into(&Plan::demo(), Stretch::Hottest);
    // From 10 to 11 o'clock: half of what is about 10 and half of what is about 11.
    assert_eq!(next.day.imported.global_w_m2[10], 105.0);
}

#[test]
fn a_file_that_begins_within_a_day_goes_round() {
    let file = read(table(6, 0.0).as_bytes(), Stamp::StartOfHour).unwrap();
    let (next, _) = file.taken_into(&Plan::demo(), Stretch::Hottest);
    for (hour, global) in next.day.imported.global_w_m2.iter().enumerate() {
        assert_eq!(*global, (10 * (hour % 24)) as f64);
    }
}

/// A line of 4 MiB of commas once made a cell of each, in 224 MB.
#[test]
fn a_line_of_nothing_but_commas_is_refused_before_it_is_cut() {
    for mark in [",", ";", "\t"] {
        for (before, line) in [("", 1), ("hour,temperature,irradiance\n", 2)] {
            let text = format!("{before}{}", mark.repeat(MOST_BYTES - before.len()));
            let Err(Refusal::File(error)) = read(text.as_bytes(), Stamp::EndOfHour) else {
                panic!("taken");
            };
            assert_eq!(error.fault, Fault::TooManyColumns);
            assert_eq!((error.line, error.column), (Some(line), Some(257)));
        }
    }
    // A quote left open ends with its line, and gathers no cells from the next.
    let quoted = "hour,temperature,irradiance\n".to_owned() + &",,,\"\n".repeat(100_000);
    assert!(read(quoted.as_bytes(), Stamp::EndOfHour).is_err());
}

#[test]
fn bad_files_change_nothing_and_say_where() {
    let few = "hour,temperature,irradiance\n12,35,900\n13,36,880\n";
    assert_eq!(
        read(few.as_bytes(), Stamp::StartOfHour),
        Err(Refusal::TooShort { hours: 2 })
    );
    let text = table(0, 0.0).replace("7,20,70\n", "7,hot,70\n");
    let Err(Refusal::File(error)) = read(text.as_bytes(), Stamp::StartOfHour) else {
        panic!("taken");
    };
    assert_eq!((error.line, error.column), (Some(9), Some(2)));
    assert!(matches!(error.fault, Fault::NotANumber(_)));
}
