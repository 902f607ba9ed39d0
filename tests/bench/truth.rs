//! An invented run and its totals worked out on their own.

use super::random::SplitMix64;
use till_morning::physics::bench::totals::Totals;
use till_morning::quantity::{in_amp_hours, in_watt_hours};

/// A row of truth: seconds, volts, amperes.
pub type Row = (f64, f64, f64);

/// An invented run: a steady step down the modes, a row each 10 s.
pub fn truth(rows: usize) -> Vec<Row> {
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
pub fn by_hand(rows: &[Row], gap_s: f64) -> (f64, f64) {
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

pub fn net(t: &Totals) -> (f64, f64) {
    let ah = t.charge.map(|q| in_amp_hours(q.net));
    let wh = t.energy.map(|e| in_watt_hours(e.net));
    (ah.unwrap_or(0.0), wh.unwrap_or(0.0))
}

#[track_caller]
pub fn same(got: (f64, f64), want: (f64, f64), relative: f64) {
    let near = |a: f64, b: f64| (a - b).abs() <= relative * b.abs().max(1e-9);
    assert!(
        near(got.0, want.0) && near(got.1, want.1),
        "got {got:?}, want {want:?}"
    );
}

pub fn pick<T: Copy>(random: &mut SplitMix64, of: &[T]) -> T {
    of[(random.next_bits() % of.len() as u64) as usize]
}

pub fn chance(random: &mut SplitMix64, share: f64) -> bool {
    random.next_share() < share
}

pub fn plain(rows: &[Row]) -> String {
    let line = |r: &Row| format!("{},{:.4},{:.4}\n", r.0, r.1, r.2);
    "t_s,bank_v,draw_a\n".to_owned() + &rows.iter().map(line).collect::<String>()
}
