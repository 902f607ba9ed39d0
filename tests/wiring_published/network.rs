use super::near;
use till_morning::physics::wiring::{
    Battery, Demand, Row, Sharing, TakeOff, design_current, solid,
};
use till_morning::quantity::{
    amps, celsius, in_amps, in_ohms, in_volts, meters, ohms, square_millimeters, volts, watts,
};

/// Operating points computed by ngspice 39.3; the file says how.
const SPICE: &str = include_str!("../data/dc_network_spice.csv");

/// Records of one case: what was solved, and the numbers found, NaN where none.
fn cases(case: &str) -> Vec<(String, Vec<f64>)> {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(SPICE.as_bytes());
    let all = reader.records().map(Result::unwrap);
    all.filter(|record| &record[0] == case)
        .map(|record| {
            let number = |text: &str| text.parse().unwrap_or(f64::NAN);
            (
                record[1].to_string(),
                record.iter().skip(2).map(number).collect(),
            )
        })
        .collect()
}

/// The number after `key=` in a description.
fn value(text: &str, key: &str) -> f64 {
    let mut words = text.split([' ', '(', ',']);
    let word = words.find_map(|word| word.strip_prefix(key)?.strip_prefix('='));
    let digits = word
        .expect(key)
        .trim_end_matches(|c: char| c.is_alphabetic() || c == ')');
    let digits = digits.trim_end_matches("mm2").trim_end_matches('m');
    digits.parse().expect(key)
}

fn battery(open_circuit_v: f64, resistance_ohm: f64) -> Battery {
    Battery {
        open_circuit: volts(open_circuit_v),
        resistance: ohms(resistance_ohm),
    }
}

fn direct(power_w: f64) -> Demand {
    Demand::Power {
        power: watts(power_w),
        efficiency: 1.0,
    }
}

/// The sharing when a row of batteries on bus bars feeds a constant power.
fn feeding(batteries: Vec<Battery>, power_w: f64) -> Sharing {
    let row = Row {
        batteries,
        link: ohms(0.0),
        take_off: TakeOff::BusBar,
    };
    let bank = row.share(amps(0.0)).unwrap();
    let total = design_current(direct(power_w), bank.open_circuit, bank.resistance).unwrap();
    row.share(total).unwrap()
}

/// One source, one cable, constant power: currents and both voltages.
#[test]
fn spice_single_source() {
    let cases = cases("single");
    assert_eq!(cases.len(), 6);
    for (text, found) in cases {
        let (source_v, source_ohm) = (value(&text, "E"), value(&text, "Rb"));
        let area = square_millimeters(value(&text, "A"));
        let (length, warm) = (meters(2.0 * value(&text, "L")), celsius(value(&text, "T")));
        let cable = solid(area, length, warm).unwrap();
        near(in_ohms(cable), value(&text, "Rcable"), 1e-9);
        let path = cable + ohms(source_ohm);
        let current = design_current(direct(value(&text, "P")), volts(source_v), path).unwrap();
        near(in_amps(current), found[2], 1e-5);
        near(
            in_volts(volts(source_v) - current * ohms(source_ohm)),
            found[0],
            1e-6,
        );
        near(in_volts(volts(source_v) - current * path), found[1], 1e-6);
    }
}

/// Three unequal batteries on one bus, down to one being charged by the others.
#[test]
fn spice_three_in_parallel() {
    let cases = cases("parallel3");
    assert_eq!(cases.len(), 3);
    for (text, found) in cases {
        let battery = |k: u32| {
            battery(
                value(&text, &format!("E{k}")),
                value(&text, &format!("R{k}")),
            )
        };
        let sharing = feeding((1..=3).map(battery).collect(), value(&text, "P"));
        near(in_volts(sharing.terminal), found[0], 1e-6);
        for (current, published) in sharing.currents.iter().zip(&found[3..6]) {
            near(in_amps(*current), *published, 1e-5);
        }
    }
}

/// Two strings of two: string currents and the middle of the first string.
#[test]
fn spice_two_strings_of_two() {
    let cases = cases("2s2p");
    let (text, found) = &cases[0];
    let numbers = "string1: 13.2/.005+13.2/.005, string2: 13.2/.015+13.1/.006, P=1500";
    assert_eq!(text, numbers);
    let first = [battery(13.2, 0.005), battery(13.2, 0.005)];
    let second = [battery(13.2, 0.015), battery(13.1, 0.006)];
    let strings = [first, second].map(|string| Battery::in_series(&string).unwrap());
    let sharing = feeding(strings.to_vec(), 1500.0);
    near(in_volts(sharing.terminal), found[0], 1e-6);
    near(in_amps(sharing.currents[0]), found[3], 1e-5);
    near(in_amps(sharing.currents[1]), found[4], 1e-5);
    let middle = first[0].open_circuit - sharing.currents[0] * first[0].resistance;
    near(in_volts(middle), found[5], 1e-6);
}

fn four(link_ohm: f64, take_off: TakeOff) -> Row {
    Row {
        batteries: vec![battery(12.8, 0.02); 4],
        link: ohms(link_ohm),
        take_off,
    }
}

/// A widely reprinted worked example of four batteries of 0.02 ohm joined by
/// links of 0.0015 ohm under 100 A (a marine consultant's, measured and
/// computed; from memory): from one end 35.9, 26.2, 20.4 and 17.8 A; across
/// the corners 26.7, 23.2, 23.2 and 26.7 A.
///
/// As printed they sum to 100.3 A at one end, so each is up to 0.15 A high, and
/// to 99.8 A across.
#[test]
fn four_batteries_by_take_off() {
    let shares = |take_off| four(0.0015, take_off).share(amps(100.0)).unwrap();
    let rows = [
        (TakeOff::SameEnd, [35.9, 26.2, 20.4, 17.8], 0.15),
        (TakeOff::Diagonal, [26.7, 23.2, 23.2, 26.7], 0.06),
    ];
    for (take_off, printed, tolerance) in rows {
        for (current, printed_a) in shares(take_off).currents.iter().zip(printed) {
            near(in_amps(*current), printed_a, tolerance);
        }
    }
    for current in shares(TakeOff::BusBar).currents {
        near(in_amps(current), 25.0, 1e-9);
    }
}

/// Two wires' law for a ladder: power put in equals power turned to heat
/// (Tellegen's theorem), reckoned here from the currents alone.
#[test]
fn what_the_batteries_give_is_what_arrives_and_what_heats() {
    for take_off in [TakeOff::SameEnd, TakeOff::Diagonal] {
        let (row, total_a) = (four(0.0015, take_off), 80.0);
        let sharing = row.share(amps(total_a)).unwrap();
        let currents: Vec<f64> = sharing.currents.iter().map(|i| in_amps(*i)).collect();
        let inside: f64 = currents.iter().map(|i| i * i * 0.02).sum();
        let mut links = 0.0;
        for cut in 1..4 {
            let beyond: f64 = currents[cut..].iter().sum();
            let negative = match take_off {
                TakeOff::Diagonal => total_a - beyond,
                _ => beyond,
            };
            links += 0.0015 * (beyond * beyond + negative * negative);
        }
        let given = 12.8 * total_a;
        let arrives = in_volts(sharing.terminal) * total_a;
        near(given - arrives, inside + links, 1e-9);
    }
}
