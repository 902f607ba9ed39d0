//! Bands of several numbers at once, for answers that take a day's run each.

use super::{Band, Share, half_width};
use crate::plan::{Path, Plan};

/// First-order bands, as [`band`](super::band) makes them, of several numbers
/// that one run gives together: hours, per cent or what else; each with every
/// input's part in it, largest first.
///
/// `numbers` must answer as many for every plan, all of them finite and 0 or
/// above. Spreads that are no share (temperatures, cloud) move as well. At every
/// input's own value `numbers` is taken to be `likely`, so a coarser run may be
/// compared with itself only: it is asked once more for that.
#[must_use]
pub fn bands(
    plan: &Plan,
    paths: &[Path],
    likely: &[f64],
    numbers: impl Fn(&Plan) -> Vec<f64>,
) -> Vec<(Band, Vec<Share>)> {
    let middle = numbers(plan);
    let mut parts: Vec<Vec<Share>> = vec![Vec::new(); likely.len()];
    let mut moved = plan.clone();
    for &path in paths {
        let Some(figure) = plan.figure(path) else {
            continue;
        };
        let spread = half_width(path, figure);
        let (Some(range), true) = (path.range(), spread > 0.0) else {
            continue;
        };
        let stated = plan.stated(path);
        let mut at = |value: f64| {
            moved.set_figure(path, figure.with(value.max(range.min).min(range.max)));
            let found = numbers(&moved);
            match stated {
                Some(stated) => moved.set_figure(path, stated),
                None => moved.clear(path),
            };
            found
        };
        let (down, up) = (at(figure.value - spread), at(figure.value + spread));
        for (which, part) in parts.iter_mut().enumerate() {
            let change = |found: &[f64]| found[which] - middle[which];
            part.extend(share(path, change(&down), change(&up)));
        }
    }
    let of = |(&likely, shares): (&f64, Vec<Share>)| summed(likely, shares);
    likely.iter().zip(parts).map(of).collect()
}

/// One input's part, if it is more than rounding.
fn share(field: Path, down: f64, up: f64) -> Option<Share> {
    let (lost_h, gained_h) = ((-down.min(up)).max(0.0), down.max(up).max(0.0));
    (lost_h.max(gained_h) > 1e-9).then_some(Share {
        field,
        lost_h,
        gained_h,
        share_percent: 0.0,
    })
}

/// The parts of one number put together to its band.
fn summed(likely: f64, mut shares: Vec<Share>) -> (Band, Vec<Share>) {
    let root = |of: fn(&Share) -> f64| {
        let squares = shares.iter().map(|share| of(share).powi(2));
        squares.sum::<f64>().sqrt()
    };
    let (lost, gained) = (root(|share| share.lost_h), root(|share| share.gained_h));
    let width = |share: &Share| (share.lost_h + share.gained_h).powi(2);
    let whole: f64 = shares.iter().map(width).sum();
    for share in &mut shares {
        share.share_percent = 100.0 * width(share) / whole;
    }
    shares.sort_unstable_by(|a, b| b.share_percent.total_cmp(&a.share_percent));
    let band = Band {
        low: (likely - lost).max(0.0),
        likely,
        high: likely + gained,
    };
    (band, shares)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        plan::{day::DayField, path::BankField},
        study::spread::band,
    };

    #[test]
    fn one_of_several_is_as_it_would_be_alone() {
        let plan = Plan::demo();
        let paths = [
            Path::Bank(0, BankField::BatteryRatedAh),
            Path::Bank(0, BankField::BatteryResistanceMohm),
        ];
        let wh = |plan: &Plan| {
            let number = |field| plan.number(Path::Bank(0, field)).unwrap();
            number(BankField::BatteryRatedAh)
                * (26.0 - number(BankField::BatteryResistanceMohm) / 9.0)
        };
        let alone = band(&plan, &paths, wh);
        let several = bands(&plan, &paths, &[1.0, wh(&plan)], |plan| vec![1.0, wh(plan)]);
        assert_eq!(several[1].1.len(), 2);
        assert!((several[1].0.low - alone.0.low).abs() < 1e-9);
        assert!((several[1].0.high - alone.0.high).abs() < 1e-9);
        assert_eq!((several[0].0.low, several[0].1.len()), (1.0, 0));
    }

    #[test]
    fn temperatures_move_by_their_degrees() {
        let plan = Plan::demo();
        let path = [Path::Day(DayField::HighC)];
        let high = |plan: &Plan| vec![plan.number(path[0]).unwrap()];
        let (band, _) = bands(&plan, &path, &[36.0], high)[0].clone();
        assert_eq!((band.low, band.high), (34.0, 38.0));
    }
}
