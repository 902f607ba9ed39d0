//! The bench under every shape of file and figure: a table or a typed line and
//! column, never a panic, never a wrong total.

use proptest::prelude::*;
use till_morning::bench::claim::{
    Better, Claim, RangeVerdict, Verdict, decisive, decisive_range, judge, judge_range,
};
use till_morning::bench::import::{
    Fault, Importer, MOST_BYTES, MOST_ROWS, Options, Progress, Refusal, Role, Unit, read_all,
};
use till_morning::bench::instrument::{Instrument, Kind};
use till_morning::bench::log::{Log, Notes, Sample, Sense};
use till_morning::bench::measured::{Measured, Part, Shrinks, Source, mean_draw};
use till_morning::bench::sample::SplitMix64;
use till_morning::bench::stretches::{Fineness, stretches};
use till_morning::bench::totals::{Totals, totals, totals_in};
use till_morning::quantity::{
    ElectricCharge, Energy, Time, in_amp_hours, in_hours, in_minutes, in_watt_hours, in_watts,
    minutes,
};

/// A row of truth: seconds, volts, amperes.
type Row = (f64, f64, f64);

/// An invented run: a steady step down the modes, a row each 10 s.
fn truth(rows: usize) -> Vec<Row> {
    (0..rows)
        .map(|k| {
            let share = k as f64 / rows as f64;
            let amps = if share < 0.4 { 24.0 } else { 9.5 } + 0.25 * ((k % 7) as f64 - 3.0);
            let volts = 13.4 - 0.7 * share - 0.01 * amps;
            (
                10.0 * k as f64,
                (volts * 1e4).round() / 1e4,
                (amps * 1e4).round() / 1e4,
            )
        })
        .collect()
}

/// Charge and energy by the trapezoid, written out here on its own: the
/// definition, for rows no further apart than `gap_s`.
fn by_hand(rows: &[Row], gap_s: f64) -> (f64, f64) {
    rows.windows(2)
        .filter(|w| w[1].0 - w[0].0 <= gap_s)
        .map(|w| {
            let hours = (w[1].0 - w[0].0) / 3600.0;
            let watts = |r: Row| r.1 * r.2;
            (
                0.5 * hours * (w[0].2 + w[1].2),
                0.5 * hours * (watts(w[0]) + watts(w[1])),
            )
        })
        .fold((0.0, 0.0), |s, x| (s.0 + x.0, s.1 + x.1))
}

fn net(t: &Totals) -> (f64, f64) {
    let ah = t.charge.map(|q| in_amp_hours(q.net));
    let wh = t.energy.map(|e| in_watt_hours(e.net));
    (ah.unwrap_or(0.0), wh.unwrap_or(0.0))
}

#[track_caller]
fn same(got: (f64, f64), want: (f64, f64), relative: f64) {
    let near = |a: f64, b: f64| (a - b).abs() <= relative * b.abs().max(1e-9);
    assert!(
        near(got.0, want.0) && near(got.1, want.1),
        "got {got:?}, want {want:?}"
    );
}

fn pick<T: Copy>(random: &mut SplitMix64, of: &[T]) -> T {
    of[(random.next_bits() % of.len() as u64) as usize]
}

fn chance(random: &mut SplitMix64, share: f64) -> bool {
    random.next_share() < share
}

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

fn plain(rows: &[Row]) -> String {
    let line = |r: &Row| format!("{},{:.4},{:.4}\n", r.0, r.1, r.2);
    "t_s,bank_v,draw_a\n".to_owned() + &rows.iter().map(line).collect::<String>()
}

// A cell that is no number is named by its line and column, wherever it is.
#[test]
fn a_spoilt_cell_is_named() {
    let mut random = SplitMix64::new(7);
    let rows = truth(600);
    for junk in [
        "x7", "12..8", "1e999", "#", "12.8.1", "--3", "0x1F", "12;8", "five", "9 V A", "1-2",
    ] {
        for _ in 0..12 {
            let line = 2 + (random.next_bits() % 600) as usize;
            let column = (random.next_bits() % 3) as usize;
            let text: Vec<String> = plain(&rows)
                .lines()
                .enumerate()
                .map(|(k, text)| {
                    let mut cells: Vec<&str> = text.split(',').collect();
                    if k + 1 == line {
                        cells[column] = junk;
                    }
                    cells.join(",")
                })
                .collect();
            let got = read_all(text.join("\n").as_bytes(), Options::default());
            let refusal = got.map(|_| ()).expect_err(junk);
            assert_eq!(
                (refusal.line, refusal.column),
                (line, column + 1),
                "{junk}: {refusal:?}"
            );
        }
    }
}

// Rows and cells that are lost: a single one is bridged by a straight line;
// more leave a gap, nothing is put into it, and its bound holds the truth.
#[test]
fn lost_rows_are_bounded() {
    let mut random = SplitMix64::new(11);
    let rows = truth(900);
    let whole = by_hand(&rows, f64::INFINITY);
    for _ in 0..200 {
        let from = 10 + (random.next_bits() % 800) as usize;
        let lost = 1 + (random.next_bits() % 60) as usize;
        let mut left = rows.clone();
        left.drain(from..from + lost);
        let (log, _) = read_all(plain(&left).as_bytes(), Options::default()).unwrap();
        let t = totals(&log);
        assert_eq!(t.gaps.len(), usize::from(lost > 1));
        same(net(&t), by_hand(&left, 25.0), 1e-9);
        let (q, e) = (t.charge.unwrap(), t.energy.unwrap());
        let holds = |got: f64, (low, high): (f64, f64), want: f64| {
            got + low <= want + 1e-9 && want <= got + high + 1e-9
        };
        if lost > 1 {
            let ah = |x: (ElectricCharge, ElectricCharge)| (in_amp_hours(x.0), in_amp_hours(x.1));
            let wh = |x: (Energy, Energy)| (in_watt_hours(x.0), in_watt_hours(x.1));
            assert!(holds(net(&t).0, ah(q.in_gaps), whole.0));
            assert!(holds(net(&t).1, wh(e.in_gaps), whole.1));
        }
    }
}

// An emptied cell is a missing reading, not a nought.
#[test]
fn an_empty_cell_is_missing() {
    let rows = truth(300);
    for word in ["", "-", "n/a", "NaN", "null"] {
        let text = plain(&rows).replacen(
            &format!("{},{:.4},{:.4}", 500, rows[50].1, rows[50].2),
            &format!("500,{:.4},{word}", rows[50].1),
            1,
        );
        let (log, _) = read_all(text.as_bytes(), Options::default()).unwrap();
        assert_eq!((log.samples.len(), log.notes.missing_cells), (300, 1));
        let mut left = rows.clone();
        left.remove(50);
        same(net(&totals(&log)), by_hand(&left, f64::INFINITY), 1e-9);
    }
}

/// Rows of a text that follows the plain form to the letter, else `None`.
fn strict(text: &str) -> Option<Vec<Row>> {
    let mut lines = text.lines();
    (lines.next()? == "t_s,bank_v,draw_a").then_some(())?;
    let mut rows: Vec<Row> = Vec::new();
    for line in lines {
        let cells: Vec<&str> = line.split(',').collect();
        let digits = |c: &&str| {
            let body = c.strip_prefix('-').unwrap_or(c);
            body.bytes().all(|b| b.is_ascii_digit() || b == b'.')
                && body.bytes().any(|b| b.is_ascii_digit())
        };
        if cells.len() != 3 || !cells.iter().all(digits) {
            return None;
        }
        let x: Vec<f64> = cells
            .iter()
            .map(|c| c.parse().ok())
            .collect::<Option<_>>()?;
        rows.push((x[0], x[1], x[2]));
    }
    rows.windows(2).all(|w| w[0].0 < w[1].0).then_some(rows)
}

// 600 files with bytes changed, cut out or put in: read or refused by line and
// column; and where what is left is still plain to the letter, the total is
// that of what is left.
#[test]
fn broken_files_are_read_rightly_or_refused() {
    let mut random = SplitMix64::new(99);
    let good = plain(&truth(120)).into_bytes();
    let (mut read, mut refused, mut held) = (0, 0, 0);
    for round in 0..600 {
        let mut bytes = good.clone();
        for _ in 0..1 + random.next_bits() % 4 {
            let at = (random.next_bits() % bytes.len() as u64) as usize;
            let any = (random.next_bits() & 0xFF) as u8;
            let tame = pick(&mut random, b"0123456789.,;-\n\t\"xVA :/");
            match round % 5 {
                0 => bytes[at] = any,
                1 => bytes[at] = tame,
                2 => bytes.insert(at, tame),
                3 => drop(
                    bytes.drain(at..(at + 1 + usize::from(any) / 4).min(good.len() / 2).max(at)),
                ),
                _ => bytes.truncate(at.max(60)),
            }
        }
        match read_all(&bytes, Options::default()) {
            Err(Refusal { line, column, .. }) => {
                let lines = String::from_utf8_lossy(&bytes).lines().count();
                assert!(
                    line >= 1 && line <= lines.max(1) && (1..=5).contains(&column),
                    "{line} {column}"
                );
                refused += 1;
            }
            Ok((log, layout)) => {
                let t = totals(&log);
                assert!(net(&t).0.is_finite() && net(&t).1.is_finite());
                read += 1;
                let text = String::from_utf8_lossy(&bytes);
                let far = |rows: &[Row]| rows.iter().any(|r| r.2 < 0.0);
                if let Some(rows) = strict(&text).filter(|rows| !far(rows)) {
                    let gap = till_morning::bench::series::Series::new(
                        rows.iter().map(|r| r.0).collect(),
                        rows.iter().map(|r| r.0).collect(),
                        None,
                    );
                    let want = gap.pieces().map(|p| by_hand(&rows[p], f64::INFINITY));
                    let want = want.fold((0.0, 0.0), |s, x| (s.0 + x.0, s.1 + x.1));
                    same(net(&t), want, 1e-9);
                    assert_eq!(layout.columns[2].role, Role::Amps);
                    held += 1;
                }
            }
        }
    }
    assert!(
        read > 100 && refused > 100 && held > 50,
        "{read} {refused} {held}"
    );
}

#[test]
fn a_clock_that_starts_anew_is_refused() {
    let rows = truth(200);
    let body = |rows: &[Row]| plain(rows).split_once('\n').unwrap().1.to_owned();
    // Another run with the same clock: sorting would weave them into one.
    let other: Vec<Row> = rows.iter().map(|r| (r.0, r.1 - 0.2, r.2 + 1.0)).collect();
    let woven = plain(&rows) + &body(&other);
    let got = read_all(woven.as_bytes(), Options::default()).map(|_| ());
    assert_eq!(
        got,
        Err(Refusal {
            line: 202,
            column: 1,
            fault: Fault::TimeOverlaps
        })
    );
    // The logger wrote its heading again, even with the very same readings.
    let again = plain(&rows) + &plain(&rows);
    let got = read_all(again.as_bytes(), Options::default()).map(|_| ());
    assert_eq!(
        got,
        Err(Refusal {
            line: 203,
            column: 1,
            fault: Fault::TimeOverlaps
        })
    );
    // A block sent late is no second run.
    let late = plain(&[&rows[..50], &rows[80..120], &rows[50..80], &rows[120..]].concat());
    let log = read_all(late.as_bytes(), Options::default()).unwrap().0;
    same(net(&totals(&log)), by_hand(&rows, f64::INFINITY), 1e-9);
}

#[test]
fn slices_give_what_one_gulp_gives() {
    let text = plain(&truth(2_500));
    let whole = read_all(text.as_bytes(), Options::default()).unwrap().0;
    for slice in [1, 7, 999] {
        let mut importer = Importer::new(text.as_bytes(), Options::default()).unwrap();
        let mut last = 0.0;
        while let Progress::More { share, rows } = importer.step(slice).unwrap() {
            assert!(share >= last && share <= 1.0 && rows <= 2_500);
            last = share;
        }
        assert_eq!(importer.finish().unwrap(), whole);
    }
}

#[test]
fn size_is_capped_and_named() {
    let large = vec![b'1'; MOST_BYTES + 1];
    let got = read_all(&large, Options::default()).map(|_| ());
    assert_eq!(
        got,
        Err(Refusal {
            line: 1,
            column: 1,
            fault: Fault::TooManyBytes { most: MOST_BYTES }
        })
    );
    let rows: String = (0..=MOST_ROWS).map(|k| format!("{k},12,5\n")).collect();
    let got = read_all(
        ("s,V,A\n".to_owned() + &rows).as_bytes(),
        Options::default(),
    )
    .map(|_| ());
    let line = MOST_ROWS + 2;
    assert_eq!(
        got,
        Err(Refusal {
            line,
            column: 1,
            fault: Fault::TooManyRows { most: MOST_ROWS }
        })
    );
    for (text, fault) in [
        ("", Fault::NoTable),
        ("words only\nand more\n", Fault::NoTable),
        ("n,V\n1,12\n2,12\n", Fault::NoTimeColumn),
        ("s,V\n1,12\n2,12\n", Fault::NoFlowColumn),
        ("s,A\n5,1\n5,1\n", Fault::TooFewRows),
    ] {
        assert_eq!(
            read_all(text.as_bytes(), Options::default())
                .unwrap_err()
                .fault,
            fault,
            "{text}"
        );
    }
    // A decimal comma among commas is more cells than columns, not a reading.
    let got = read_all(b"s,V,A\n0,12,8,5,1\n1,12,8,5,1\n", Options::default()).unwrap_err();
    assert_eq!(
        got,
        Refusal {
            line: 2,
            column: 4,
            fault: Fault::TooManyCells { most: 3 }
        }
    );
}

#[test]
fn watts_stand_alone_or_beside_volts() {
    let alone = read_all(
        b"min;W\n0;600\n30;600\n60;600\n90;600\n120;600\n",
        Options::default(),
    );
    let t = totals(&alone.unwrap().0);
    assert_eq!(
        (t.charge, in_watt_hours(t.energy.unwrap().net)),
        (None, 1200.0)
    );
    let both = read_all(
        b"min;W;V\n0;600;24\n30;600;24\n60;600;24\n",
        Options::default(),
    )
    .unwrap();
    let t = totals(&both.0);
    assert_eq!(in_amp_hours(t.charge.unwrap().net), 25.0);
    // Unsigned watts beside signed amperes take their sign.
    let signed = b"min;W;V;A\n0;100;10;10\n30;100;10;10\n31;50;10;-5\n61;50;10;-5\n";
    let (log, layout) = read_all(signed, Options::default()).unwrap();
    assert!(log.notes.watts_signed_by_amps);
    assert_eq!(log.notes.volt_amps_per_watt, Some(1.0));
    assert_eq!(log.samples[3].watts, Some(-50.0));
    assert_eq!(layout.columns[1].unit, Unit::Plain);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn any_bytes_are_read_or_refused(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        if let Ok((log, _)) = read_all(&bytes, Options::default()) {
            let t = net(&totals(&log));
            prop_assert!(t.0.is_finite() && t.1.is_finite());
        }
    }

    #[test]
    fn any_table_like_text_is_read_or_refused(
        text in "([tsVAWmh(), ;:./-]{1,12}[,;\t]){2,4}\n(([0-9,.:\"/ eE+-]{0,9}[,;\t]){1,5}\n){2,20}"
    ) {
        if let Ok((log, _)) = read_all(text.as_bytes(), Options::default()) {
            let t = net(&totals(&log));
            prop_assert!(t.0.is_finite() && t.1.is_finite());
            for stretch in stretches(&log, &Fineness::default()) {
                prop_assert!(stretch.deviation.is_finite());
            }
            prop_assert!(till_morning::bench::run_end::run_end(&log, None).is_none_or(|e| in_hours(e.ran) >= 0.0));
        }
    }

    #[test]
    fn verdicts_follow_the_interval(
        y in -1e4..1e4f64, u in 0.0..1e3f64, c in -1e4..1e4f64, band in proptest::option::of(0.0..500.0f64)
    ) {
        let measured = Measured::known(y, u);
        let expanded = measured.expanded().unwrap();
        prop_assert_eq!(expanded, 2.0 * u);
        let slack = band.unwrap_or(0.0);
        for better in [Better::Higher, Better::Lower, Better::Neither] {
            let verdict = judge(&measured, &Claim { value: c, tolerance: band, better }).verdict;
            let (low, high) = (y - expanded, y + expanded);
            match verdict {
                Verdict::BearsItOut => prop_assert!(band.is_some() && low >= c - slack && high <= c + slack),
                Verdict::BeatsIt if better == Better::Higher => prop_assert!(low > c),
                Verdict::BeatsIt => prop_assert!(better == Better::Lower && high < c),
                Verdict::FallsShort if better == Better::Higher => prop_assert!(high < c - slack),
                Verdict::FallsShort if better == Better::Lower => prop_assert!(low > c + slack),
                Verdict::FallsShort => prop_assert!(high < c - slack || low > c + slack),
                Verdict::TooCloseToCall => prop_assert!(u > 0.0 || y == c || band.is_some()),
            }
            // Mirrored, the better way turned: the same verdict.
            let turned = match better {
                Better::Higher => Better::Lower,
                Better::Lower => Better::Higher,
                Better::Neither => Better::Neither,
            };
            let mirror = Claim { value: -c, tolerance: band, better: turned };
            prop_assert_eq!(judge(&Measured::known(-y, u), &mirror).verdict, verdict);
        }
        let range = judge_range(&measured, (c, c + slack)).verdict;
        let want = match () {
            () if y + expanded < c => RangeVerdict::OutsideBelow,
            () if y - expanded > c + slack => RangeVerdict::OutsideAbove,
            () if y - expanded >= c && y + expanded <= c + slack => RangeVerdict::Inside,
            () => RangeVerdict::TooCloseToCall,
        };
        prop_assert_eq!(range, want);
    }

    // What is said to decide a verdict does decide it.
    #[test]
    fn the_remedy_decides(
        y in 100.0..200.0f64, c in 100.0..200.0f64, meter in 0.1..40.0f64, scatter in 0.0..20.0f64,
        timing in 0.0..20.0f64
    ) {
        let part = |source, standard, shrinks| Part { source, standard, shrinks, freedom: None };
        let measured = |meter: f64, longer: f64| Measured {
            value: y,
            parts: vec![
                part(Source::Meter, meter, Shrinks::Never),
                part(Source::Scatter, scatter / longer.sqrt(), Shrinks::WithRootOfTime),
                part(Source::Timing, timing / longer, Shrinks::WithTime),
            ],
            unseen: (0.0, 0.0),
            resolved: true,
            lasted: Some(minutes(30.0)),
        };
        let claim = Claim { value: c, tolerance: None, better: Better::Lower };
        let now = measured(meter, 1.0);
        let Some(remedy) = decisive(&now, &claim) else {
            prop_assert!(judge(&now, &claim).verdict != Verdict::TooCloseToCall || y == c);
            return Ok(());
        };
        if let Some(longer) = remedy.minutes {
            prop_assert!(longer >= 30.0);
            let then = judge(&measured(meter, longer / 30.0), &claim).verdict;
            prop_assert!(then != Verdict::TooCloseToCall);
        }
        if let Some(limit) = remedy.meter_limit {
            let then = judge(&measured(limit / 3f64.sqrt(), 1.0), &claim).verdict;
            prop_assert!(then != Verdict::TooCloseToCall);
        }
    }
}

#[test]
fn what_is_not_finite_is_never_judged() {
    for bad in [f64::NAN, f64::INFINITY, -f64::INFINITY] {
        let claim = Claim {
            value: 100.0,
            tolerance: None,
            better: Better::Higher,
        };
        for measured in [Measured::known(bad, 1.0), Measured::known(1.0, bad)] {
            let judged = judge(&measured, &claim);
            assert_eq!(
                (judged.verdict, judged.interval),
                (Verdict::TooCloseToCall, None)
            );
            assert_eq!(decisive(&measured, &claim), None);
            assert_eq!(decisive_range(&measured, (1.0, 2.0)), None);
        }
        let claim = Claim {
            value: bad,
            ..claim
        };
        assert_eq!(
            judge(&Measured::known(1.0, 0.1), &claim).verdict,
            Verdict::TooCloseToCall
        );
    }
}

fn log_of(rows: &[Row]) -> Log {
    let sample = |&(time_s, v, a): &Row| Sample {
        time_s,
        volts: Some(v),
        amps: Some(a),
        ..Sample::default()
    };
    let samples = rows.iter().map(sample).collect();
    Log::new(samples, None::<Time>, Sense::Positive, Notes::default()).unwrap()
}

#[test]
fn steady_stretches_are_the_modes_that_were_run() {
    // 40 min at 24 A, 60 min at 9.5 A, as written in `truth`.
    let rows = truth(600);
    let log = log_of(&rows);
    for most_points in [10, 100, 4000] {
        let found = stretches(
            &log,
            &Fineness {
                most_points,
                ..Fineness::default()
            },
        );
        assert_eq!(found.len(), 2, "{most_points}: {found:?}");
        assert_eq!(
            (found[0].samples.clone(), found[1].samples.clone()),
            (0..240, 240..600)
        );
        assert!((in_watts(found[0].watts.unwrap()) - 24.0 * 13.0).abs() < 5.0);
        assert!((in_minutes(found[1].lasts()) - 3590.0 / 60.0).abs() < 1e-9);
        // Three quarters of an ampere either way in seven steps: sd 0.5 A, 13 V.
        assert!(
            (found[1].deviation - 0.5 * 12.8).abs() < 0.3,
            "{}",
            found[1].deviation
        );
        let draw = mean_draw(
            &log,
            found[1].samples.clone(),
            &Instrument::of_reading(0.01),
        )
        .unwrap();
        assert!((draw.value - in_watts(found[1].watts.unwrap())).abs() < 1e-9);
        assert!(draw.expanded().unwrap() > 2.0 * 0.01 * draw.value / 3f64.sqrt());
    }
    // Strict enough, it is all one.
    let blunt = Fineness {
        least_change: 1.0,
        ..Fineness::default()
    };
    assert_eq!(stretches(&log, &blunt).len(), 1);
}

#[test]
fn totals_add_over_parts_and_turn_with_the_sign() {
    let rows = truth(500);
    let log = log_of(&rows);
    let whole = net(&totals(&log));
    // Parts that share their border row.
    let (a, b) = (
        net(&totals_in(&log, 0..201)),
        net(&totals_in(&log, 200..500)),
    );
    same((a.0 + b.0, a.1 + b.1), whole, 1e-12);
    let turned: Vec<Row> = rows.iter().map(|r| (r.0 + 1e9, r.1, -r.2)).collect();
    let t = totals(&log_of(&turned));
    same(net(&t), (-whole.0, -whole.1), 1e-9);
    assert_eq!(in_amp_hours(t.charge.unwrap().drawn), 0.0);
    assert_eq!(net(&totals_in(&log, 900..901)), (0.0, 0.0));
}

#[test]
fn every_kind_of_meter_has_limits() {
    for kind in Kind::ALL {
        let meter = kind.usual(100.0);
        assert!(
            meter.limit(50.0) > 0.0 && meter.limit(50.0) < 10.0,
            "{kind:?}"
        );
        assert!(meter.limit(-50.0) == meter.limit(50.0));
    }
}
