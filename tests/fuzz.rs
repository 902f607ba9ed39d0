//! What comes from outside, damaged at random: each reader refuses or reads, and never
//! panics; and what it read it writes and reads again.
//!
//! Samples that the readers take are cut, doubled, spliced and changed. A few thousand
//! cases of each here; `FUZZ_CASES=10000000 cargo test --release --test fuzz` for the long
//! run, whose rates it prints. What a run finds proptest
//! tries again on this machine; it becomes a test of its own.

use proptest::{prelude::*, sample::Index, test_runner::TestRunner};
use std::{fs, time::Instant};
use till_morning::{
    answer::day::import,
    physics::bench::import::{Options, headings, read_all},
    plan::{
        Plan, Show,
        entry::{read, read_spread},
        open::{plan_from_json, plan_to_json},
    },
    range::Unit,
    share::{link_from_plan, plan_from_link},
};

fn cases() -> u32 {
    let wanted = std::env::var("FUZZ_CASES").ok();
    wanted.and_then(|text| text.parse().ok()).unwrap_or(4_000)
}

/// One thing done to a sample.
#[derive(Clone, Debug)]
enum Edit {
    Set(Index, u8),
    Insert(Index, u8),
    Cut(Index, u8),
    Double(Index, u8),
    /// The rest comes from another sample.
    Splice(Index, Index),
    /// What readers stumble over.
    Token(Index, &'static str),
}

const TOKENS: [&str; 24] = [
    "NaN",
    "-1",
    "1e999",
    "-0",
    "0x10",
    "9999999999999999999",
    "\u{feff}",
    "\r\n\r\n",
    "\"",
    "\"\"",
    ",,,,",
    ";",
    "\t",
    "null",
    "[[[[",
    "{}",
    "\u{202f}",
    "−",
    "1,2,3",
    "24:00",
    "31.02.2026",
    "\0",
    "é",
    "%",
];

fn edit() -> impl Strategy<Value = Edit> {
    let at = any::<Index>;
    prop_oneof![
        (at(), any::<u8>()).prop_map(|(at, byte)| Edit::Set(at, byte)),
        (at(), any::<u8>()).prop_map(|(at, byte)| Edit::Insert(at, byte)),
        (at(), any::<u8>()).prop_map(|(at, count)| Edit::Cut(at, count)),
        (at(), any::<u8>()).prop_map(|(at, count)| Edit::Double(at, count)),
        (at(), at()).prop_map(|(at, other)| Edit::Splice(at, other)),
        (at(), prop::sample::select(&TOKENS[..])).prop_map(|(at, token)| Edit::Token(at, token)),
    ]
}

fn apply(bytes: &mut Vec<u8>, edit: &Edit, samples: &[Vec<u8>]) {
    let place = |at: &Index, bytes: &[u8]| at.index(bytes.len() + 1);
    match edit {
        Edit::Set(at, byte) if !bytes.is_empty() => {
            let at = at.index(bytes.len());
            bytes[at] = *byte;
        }
        Edit::Set(..) => {}
        Edit::Insert(at, byte) => bytes.insert(place(at, bytes), *byte),
        Edit::Cut(at, count) => {
            let from = place(at, bytes);
            let to = (from + usize::from(*count)).min(bytes.len());
            bytes.drain(from..to);
        }
        Edit::Double(at, count) => {
            let from = place(at, bytes);
            let to = (from + usize::from(*count)).min(bytes.len());
            let part = bytes[from..to].to_vec();
            bytes.splice(to..to, part);
        }
        Edit::Splice(at, other) => {
            let other = &samples[other.index(samples.len())];
            let from = place(at, bytes);
            bytes.truncate(from);
            bytes.extend_from_slice(&other[from.min(other.len())..]);
        }
        Edit::Token(at, token) => {
            let at = place(at, bytes);
            bytes.splice(at..at, token.bytes());
        }
    }
}

/// Runs `check` on damaged samples, and prints how many a second.
fn fuzz(name: &str, samples: &[Vec<u8>], check: impl Fn(&[u8])) {
    let mut runner = TestRunner::new(ProptestConfig {
        cases: cases(),
        source_file: Some(file!()),
        ..ProptestConfig::default()
    });
    let damaged = (any::<Index>(), prop::collection::vec(edit(), 0..6));
    let begun = Instant::now();
    let done = runner.run(&damaged, |(which, edits)| {
        let mut bytes = samples[which.index(samples.len())].clone();
        for edit in &edits {
            apply(&mut bytes, edit, samples);
        }
        check(&bytes);
        Ok(())
    });
    let rate = f64::from(cases()) / begun.elapsed().as_secs_f64();
    println!("{name}: {} cases, {rate:.0} a second", cases());
    if let Err(error) = done {
        panic!("{name}: {error}");
    }
}

/// Files of a folder of the tests, by how their names end.
fn files(folder: &str, end: &str) -> Vec<Vec<u8>> {
    let folder = format!("{}/tests/{folder}", env!("CARGO_MANIFEST_DIR"));
    let mut paths: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.to_str().is_some_and(|path| path.ends_with(end)))
        .collect();
    paths.sort();
    assert!(!paths.is_empty(), "{end}");
    paths.iter().map(|path| fs::read(path).unwrap()).collect()
}

/// The first lines of a long table.
fn head(bytes: &[u8], lines: usize) -> Vec<u8> {
    let ends = bytes.iter().enumerate().filter(|(_, byte)| **byte == b'\n');
    let end = ends.map(|(at, _)| at + 1).nth(lines - 1);
    bytes[..end.unwrap_or(bytes.len())].to_vec()
}

fn text(bytes: &[u8]) -> std::borrow::Cow<'_, str> {
    String::from_utf8_lossy(bytes)
}

#[test]
fn links() {
    fuzz("link", &files("links", ".link"), |bytes| {
        let link = text(bytes);
        if let Ok(plan) = plan_from_link(link.trim()) {
            let again = link_from_plan(&plan).map(|link| plan_from_link(&link));
            assert!(again.is_err() || again == Ok(Ok(plan)));
        }
    });
}

#[test]
fn plan_files() {
    let mut samples = files("links", ".json");
    samples.push(plan_to_json(&Plan::demo()).into_bytes());
    fuzz("plan file", &samples, |bytes| {
        if let Ok(plan) = plan_from_json(&text(bytes)) {
            let _ = plan.errors();
            assert_eq!(plan_from_json(&plan_to_json(&plan)), Ok(plan));
        }
    });
}

#[test]
fn logs() {
    let mut samples: Vec<_> = files("data", "_dynamic_1s.csv");
    samples.extend(files("data", "_missed_s2.csv"));
    let mut samples: Vec<_> = samples.iter().map(|bytes| head(bytes, 40)).collect();
    samples.push(b"elapsed min;bank V;draw A\n0;13,1;20,5\n1;13,0;20,4\n2;13,0;20,4\n".to_vec());
    samples.push(b"date,time,V,A\n2026-07-01,21:00,13.2,4\n2026-07-01,21:05,13.1,4\n".to_vec());
    fuzz("log", &samples, |bytes| {
        let _ = headings(bytes, &Options::default());
        if let Ok((log, _)) = read_all(bytes, Options::default()) {
            let _ = till_morning::answer::log::found(&log, 10.0);
        }
    });
}

#[test]
fn weather_files() {
    let mut samples = files("data", "10_july_1981.csv");
    samples.extend(files("data", ".tm2"));
    fuzz("weather file", &samples, |bytes| {
        for stamp in [
            import::Stamp::EndOfHour,
            import::Stamp::StartOfHour,
            import::Stamp::MiddleOfHour,
        ] {
            if let Ok(file) = import::read(bytes, stamp) {
                let (plan, _) = file.taken_into(&Plan::demo(), import::Stretch::Hottest);
                assert!(
                    !plan
                        .errors()
                        .iter()
                        .any(|one| one.severity == till_morning::plan::finding::Severity::Error),
                    "what is taken over is in range"
                );
            }
        }
    });
}

#[test]
fn entries() {
    const UNITS: [Unit; 10] = [
        Unit::Volt,
        Unit::AmpHour,
        Unit::Watt,
        Unit::Hour,
        Unit::ClockMinute,
        Unit::Celsius,
        Unit::Kelvin,
        Unit::Meter,
        Unit::SquareMillimeter,
        Unit::Count,
    ];
    let samples = [
        "2x100Ah",
        "1,5 kW",
        "9 h 30",
        "9:30 pm",
        "6 AWG",
        "2/0",
        "1.234,5",
        "230-250 W",
        "45 A at 12 V",
        "12 000",
        "-40 °F",
        "16 mm2",
        "+5",
        "100 cfm",
        "3'",
        "1e3",
        "½",
    ]
    .map(|text| text.as_bytes().to_vec());
    fuzz("entry", &samples, |bytes| {
        let entry = text(bytes);
        for unit in UNITS {
            for units in [Show::METRIC, Show::US] {
                if let Ok(one) = read(&entry, unit, units) {
                    assert!(one.value.is_finite());
                }
                if let Ok(one) = read_spread(&entry, unit, units) {
                    assert!(one.entry.value.is_finite() && one.half.is_none_or(f64::is_finite));
                }
            }
        }
    });
}
