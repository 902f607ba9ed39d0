//! One run written as many loggers and spreadsheets would.

use super::random::SplitMix64;
use super::truth::{Row, by_hand, chance, net, pick, same, truth};
use till_morning::physics::bench::import::{Options, read_all};
use till_morning::physics::bench::totals::totals;
use till_morning::quantity::in_hours;

/// How one file is dressed.
struct Dress {
    separator: char,
    comma: bool,
    quoted: bool,
    volts: (&'static str, f64),
    amps: (&'static str, f64),
    time: usize,
    line_end: &'static str,
}

fn dress(random: &mut SplitMix64) -> Dress {
    let separator = pick(random, &[',', ';', '\t']);
    Dress {
        separator,
        // Decimal commas between commas only where cells are quoted.
        comma: chance(random, 0.4),
        quoted: chance(random, 0.3),
        volts: pick(
            random,
            &[
                ("V", 1.0),
                ("Bank voltage (V)", 1.0),
                ("volts", 1.0),
                ("Spannung [mV]", 1e3),
                ("bank_mv", 1e3),
                ("Tension / V", 1.0),
            ],
        ),
        amps: pick(
            random,
            &[
                ("A", 1.0),
                ("Load current (mA)", 1e3),
                ("amps", 1.0),
                ("Strom [A]", 1.0),
                ("I/A", -1.0),
                ("Current, milliamps", -1e3),
            ],
        ),
        time: (random.next_bits() % 9) as usize,
        line_end: pick(random, &["\n", "\r\n"]),
    }
}

const TIMES: [&str; 9] = [
    "elapsed (s)",
    "Elapsed time [min]",
    "Time (h)",
    "time (ms)",
    "Elapsed",
    "When",
    "Timestamp",
    "epoch",
    "clock",
];

/// The time cell in one of the forms; runs start at 21:30 and pass midnight.
fn time_cell(form: usize, t: f64) -> String {
    let whole = t as u64;
    let (h, m, s) = (whole / 3600, whole / 60 % 60, whole % 60);
    let late = whole + 21 * 3600 + 1800;
    let clock = format!(
        "{:02}:{:02}:{:02}",
        late / 3600 % 24,
        late / 60 % 60,
        late % 60
    );
    let day = 3 + late / 86_400;
    match form {
        0 => format!("{t}"),
        1 => format!("{:.9}", t / 60.0),
        2 => format!("{:.9}", t / 3600.0),
        3 => format!("{}", t * 1e3),
        4 => format!("{h}:{m:02}:{s:02}"),
        5 => format!("2025-07-{day:02}T{clock}Z"),
        6 => format!("{day:02}.07.2025 {clock}"),
        7 => format!("{}", 1_751_500_000 + whole),
        _ => clock,
    }
}

fn number_cell(dress: &Dress, x: f64) -> String {
    let text = format!("{x:.4}");
    if dress.comma {
        text.replace('.', ",")
    } else {
        text
    }
}

fn write(dress: &Dress, rows: &[Row], random: &mut SplitMix64) -> String {
    let quote = dress.quoted || (dress.comma && dress.separator == ',');
    let join = |cells: &[String]| -> String {
        let wrap = |c: &String| if quote { format!("\"{c}\"") } else { c.clone() };
        let cells: Vec<String> = cells.iter().map(wrap).collect();
        cells.join(&dress.separator.to_string()) + dress.line_end
    };
    let mut out = String::new();
    for _ in 0..random.next_bits() % 4 {
        out += pick(
            random,
            &[
                "A log of an invented van",
                "interval: 10",
                "",
                "kept at the lake",
            ],
        );
        out += dress.line_end;
    }
    let noted = chance(random, 0.5);
    let mut head = vec![
        TIMES[dress.time].to_owned(),
        dress.volts.0.into(),
        dress.amps.0.into(),
    ];
    if noted {
        head.push("Remark".into());
    }
    out += &join(&head);
    for &(t, v, a) in rows {
        let mut time = time_cell(dress.time, t);
        if dress.comma && dress.time < 4 {
            time = time.replace('.', ",");
        }
        let mut cells = vec![
            time,
            number_cell(dress, v * dress.volts.1),
            number_cell(dress, a * dress.amps.1),
        ];
        if noted {
            cells.push(if chance(random, 0.1) {
                "calm".into()
            } else {
                String::new()
            });
        }
        out += &join(&cells);
        if chance(random, 0.02) {
            out += dress.line_end;
        }
    }
    out
}

fn encode(random: &mut SplitMix64, text: &str) -> Vec<u8> {
    match random.next_bits() % 4 {
        0 => [&[0xEF, 0xBB, 0xBF], text.as_bytes()].concat(),
        1 => [
            vec![0xFF, 0xFE],
            text.encode_utf16().flat_map(u16::to_le_bytes).collect(),
        ]
        .concat(),
        2 => [
            vec![0xFE, 0xFF],
            text.encode_utf16().flat_map(u16::to_be_bytes).collect(),
        ]
        .concat(),
        _ => text.as_bytes().to_vec(),
    }
}

/// Repeats a row, swaps neighbours or turns the order round: what a file may
/// suffer without losing anything. Clock times alone cannot be turned round.
fn shuffle(random: &mut SplitMix64, rows: &mut Vec<Row>, may_turn: bool) {
    if chance(random, 0.3) {
        let at = (random.next_bits() % rows.len() as u64) as usize;
        rows.insert(at, rows[at]);
    }
    if chance(random, 0.3) {
        let at = 1 + (random.next_bits() % (rows.len() as u64 - 2)) as usize;
        rows.swap(at, at - 1);
    } else if may_turn && chance(random, 0.2) {
        rows.reverse();
    }
}

// 400 dresses of one run: every one must give the same charge and energy.
#[test]
fn the_dress_of_a_file_does_not_change_its_total() {
    let mut random = SplitMix64::new(2_025);
    for round in 0..400 {
        let rows = truth(60 + round % 40 * 10);
        let want = by_hand(&rows, f64::INFINITY);
        let dress = dress(&mut random);
        let mut written = rows.clone();
        shuffle(&mut random, &mut written, dress.time != 8);
        let text = write(&dress, &written, &mut random);
        let bytes = encode(&mut random, &text);
        let read = read_all(&bytes, Options::default());
        let (log, layout) =
            read.unwrap_or_else(|e| panic!("round {round}: {e:?}\n{}", &text[..300]));
        assert_eq!(
            log.samples.len(),
            rows.len(),
            "round {round}: {:?}\n{}",
            layout,
            &text[..300]
        );
        assert_eq!(
            log.notes.amps_turned,
            dress.amps.1 < 0.0,
            "{layout:?}\n{}\n{:?}",
            &text[..300],
            log.notes
        );
        let t = totals(&log);
        assert!(t.gaps.is_empty());
        same(net(&t), want, 1e-6);
        assert!((in_hours(t.span) * 3600.0 - rows[rows.len() - 1].0).abs() < 1e-3);
    }
}
