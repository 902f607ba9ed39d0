//! Files that lost something, or never were logs.

use super::random::SplitMix64;
use super::truth::{Row, by_hand, net, pick, plain, same, truth};
use proptest::prelude::*;
use till_morning::physics::bench::import::{
    Fault, Importer, MOST_BYTES, MOST_ROWS, Options, Progress, Refusal, Role, Unit, read_all,
};
use till_morning::physics::bench::run_end::run_end;
use till_morning::physics::bench::stretches::{Fineness, spans};
use till_morning::physics::bench::totals::totals;
use till_morning::quantity::{ElectricCharge, Energy, in_amp_hours, in_hours, in_watt_hours};

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

// An emptied cell is a missing reading, not a zero.
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
                    let gap = till_morning::physics::bench::series::Series::new(
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
            for (from, to, mean) in spans(&log, &Fineness::default()) {
                prop_assert!(from <= to && mean.is_finite());
            }
            prop_assert!(run_end(&log, None).is_none_or(|e| in_hours(e.ran) >= 0.0));
        }
    }
}
