//! A unit's own settled runs, laid over a published map.
//!
//! What the runs give over what the map gives, in logarithms, is a plane over outdoor
//! air and entering wet bulb, fitted by least squares. Where the runs say nothing of a
//! direction (all at one wet bulb, say) the map keeps it: its slopes are known
//! beforehand to so much a kelvin.

use super::unit::CurveSet;
use crate::{linear::solve, quantity::celsius};

/// A settled run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SettledRun {
    pub outdoor_c: f64,
    pub wet_bulb_c: f64,
    pub draw_w: f64,
    pub cooling_w: f64,
}

/// A map that passes by a unit's own runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OwnMap {
    base: CurveSet,
    /// Middle of the runs, and how far they reach.
    middle: [f64; 2],
    low: [f64; 2],
    high: [f64; 2],
    /// Logarithms over the base's: level, by the kelvin outdoors and of wet bulb.
    draw: [f64; 3],
    cooling: [f64; 3],
}

/// What a run is worth, as a share, and what a published slope is, by the kelvin.
const RUN_SD: f64 = 0.02;
const SLOPE_SD: f64 = 0.02;
/// Beyond the runs the planes go on so far, K.
const BEYOND_K: f64 = 5.0;

impl OwnMap {
    /// Of two runs or more in the ranges of a plan; nothing where they make no map.
    #[must_use]
    pub fn fitted(base: CurveSet, runs: &[SettledRun]) -> Option<Self> {
        if runs.len() < 2 {
            return None;
        }
        let count = runs.len() as f64;
        let place = |run: &SettledRun| [run.outdoor_c, run.wet_bulb_c];
        let middle = [0, 1].map(|at| runs.iter().map(|run| place(run)[at]).sum::<f64>() / count);
        let edge = |of: fn(f64, f64) -> f64| {
            [0, 1].map(|at| {
                runs.iter()
                    .map(|run| place(run)[at])
                    .reduce(of)
                    .unwrap_or(0.0)
            })
        };
        let over = |watts: fn(&SettledRun) -> f64, is_draw: bool| {
            let rows = runs.iter().map(|run| {
                let (draw, cooling) = of_base(base, run.outdoor_c, run.wet_bulb_c)?;
                let miss = (watts(run) / if is_draw { draw } else { cooling }).ln();
                let at = place(run);
                Some(([1.0, at[0] - middle[0], at[1] - middle[1]], miss))
            });
            plane_through(&rows.collect::<Option<Vec<_>>>()?)
        };
        Some(Self {
            base,
            middle,
            low: edge(f64::min),
            high: edge(f64::max),
            draw: over(|run| run.draw_w, true)?,
            cooling: over(|run| run.cooling_w, false)?,
        })
    }

    /// Watts drawn and of cooling; outside the runs no further than a few kelvin.
    #[must_use]
    pub fn at(&self, outdoor_c: f64, wet_bulb_c: f64) -> Option<(f64, f64)> {
        let (draw, cooling) = of_base(self.base, outdoor_c, wet_bulb_c)?;
        let asked = [outdoor_c, wet_bulb_c];
        let off = [0, 1].map(|at| {
            let (low, high) = (self.low[at] - BEYOND_K, self.high[at] + BEYOND_K);
            asked[at].max(low).min(high) - self.middle[at]
        });
        let times = |plane: [f64; 3]| (plane[0] + plane[1] * off[0] + plane[2] * off[1]).exp();
        Some((draw * times(self.draw), cooling * times(self.cooling)))
    }
}

/// Draw and cooling of the published map over those at its rating.
fn of_base(base: CurveSet, outdoor_c: f64, wet_bulb_c: f64) -> Option<(f64, f64)> {
    let ratios = base.at(celsius(wet_bulb_c), celsius(outdoor_c)).ok()?;
    let draw = ratios.capacity * ratios.energy_input;
    (draw > 0.0 && ratios.capacity > 0.0).then_some((draw, ratios.capacity))
}

/// The plane nearest to rows of (1, x, y) and a value.
fn plane_through(rows: &[([f64; 3], f64)]) -> Option<[f64; 3]> {
    let weight = 1.0 / (RUN_SD * RUN_SD);
    let mut normal = vec![vec![0.0; 3]; 3];
    let mut right = vec![0.0; 3];
    for (at, row) in normal.iter_mut().enumerate().skip(1) {
        row[at] += 1.0 / (SLOPE_SD * SLOPE_SD);
    }
    for (row, value) in rows {
        for a in 0..3 {
            right[a] += weight * row[a] * value;
            for b in 0..3 {
                normal[a][b] += weight * row[a] * row[b];
            }
        }
    }
    let found = solve(&normal, &right)?;
    Some([found[0], found[1], found[2]])
}

#[cfg(test)]
mod tests {
    use super::*;

    const RUN: SettledRun = SettledRun {
        outdoor_c: 25.0,
        wet_bulb_c: 18.0,
        draw_w: 400.0,
        cooling_w: 1500.0,
    };

    #[test]
    fn it_passes_by_its_runs() {
        let runs = [
            RUN,
            SettledRun {
                outdoor_c: 35.0,
                draw_w: 520.0,
                cooling_w: 1350.0,
                ..RUN
            },
        ];
        let map = OwnMap::fitted(CurveSet::WindowUnit, &runs).unwrap();
        for run in runs {
            let (draw_w, cooling_w) = map.at(run.outdoor_c, run.wet_bulb_c).unwrap();
            assert!((draw_w / run.draw_w - 1.0).abs() < 0.005, "{draw_w}");
            assert!(
                (cooling_w / run.cooling_w - 1.0).abs() < 0.005,
                "{cooling_w}"
            );
        }
    }

    #[test]
    fn what_the_runs_do_not_say_is_the_published_map() {
        let twice = SettledRun {
            draw_w: 800.0,
            cooling_w: 3000.0,
            ..RUN
        };
        let map = OwnMap::fitted(CurveSet::WindowUnit, &[twice, twice]).unwrap();
        let ratio = |wet_bulb_c: f64| {
            let (draw, _) = of_base(CurveSet::WindowUnit, 25.0, wet_bulb_c).unwrap();
            map.at(25.0, wet_bulb_c).unwrap().0 / draw
        };
        assert!((ratio(16.0) / ratio(20.0) - 1.0).abs() < 1e-9);
        assert_eq!(OwnMap::fitted(CurveSet::WindowUnit, &[RUN]), None);
    }
}
