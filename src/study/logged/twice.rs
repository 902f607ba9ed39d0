//! A fit made twice: the second time by what the first one missed.
//!
//! What a model misses of a night is no noise: it drifts. Readings that miss together
//! say less than as many that miss apart. So after the first pass the spread of each
//! series' readings is widened by its misses and by how alike neighbours are: by
//! `rms² (1 + r) / (1 - r)`, `r` the correlation of neighbours, where that is above 1
//! (the variance of a mean of readings that follow one another so: Bayley and
//! Hammersley, *The "effective" number of independent observations in an
//! autocorrelated time series*, 1946, from memory).

use crate::study::spread::least::{Known, Least};

/// Steps of each pass, at the most.
const MOST_STEPS: u32 = 10;
/// The unknowns stand when they move by less than this, in standard deviations.
const STANDS: f64 = 0.02;
/// Neighbours are never taken to be more alike than that.
const MOST_ALIKE: f64 = 0.95;

/// A fit on its way.
#[derive(Clone, Debug)]
pub(super) struct Twice {
    before: Vec<Known>,
    nudges: Vec<f64>,
    /// Series of readings, one after another.
    data: Vec<Vec<Known>>,
    least: Least,
    steps: u32,
    is_second: bool,
    /// Both passes are made, or the model had no answer.
    pub is_done: bool,
    /// Root mean square of the misses over the spreads first assumed.
    pub misfit: f64,
}

impl Twice {
    /// - `before`: the unknowns, as known beforehand
    /// - `nudges`: as many half-widths of differences
    /// - `data`: series of readings; the model gives them one after another, joined
    pub(super) fn new(before: Vec<Known>, nudges: Vec<f64>, data: Vec<Vec<Known>>) -> Self {
        Self {
            least: Least::new(before.clone(), nudges.clone(), data.concat()),
            before,
            nudges,
            data,
            steps: 0,
            is_second: false,
            is_done: false,
            misfit: 0.0,
        }
    }

    /// One step; whether it is done. `model` answers for every reading, in their order.
    pub(super) fn step(&mut self, mut model: impl FnMut(&[f64]) -> Option<Vec<f64>>) -> bool {
        if self.is_done {
            return true;
        }
        let moved = self.least.step(&mut model);
        self.steps += 1;
        let stands = moved.is_none_or(|moved| moved < STANDS) || self.steps >= MOST_STEPS;
        if stands && self.is_second {
            self.is_done = true;
        } else if stands {
            self.widen(model(self.least.at()));
        }
        self.is_done
    }

    /// The second pass with what the first one missed.
    fn widen(&mut self, values: Option<Vec<f64>>) {
        let Some(values) = values else {
            self.is_done = true;
            return;
        };
        self.misfit = self.least.misfit(&values);
        let mut rest = &values[..];
        for series in &mut self.data {
            let (own, after) = rest.split_at(series.len().min(rest.len()));
            rest = after;
            let misses: Vec<f64> = series
                .iter()
                .zip(own)
                .map(|(datum, value)| (datum.value - value) / datum.sd)
                .collect();
            let wider = widened(&misses);
            for datum in series {
                datum.sd *= wider;
            }
        }
        self.least = Least::new(self.before.clone(), self.nudges.clone(), self.data.concat());
        (self.steps, self.is_second) = (0, true);
    }

    /// The unknowns where they stand.
    pub(super) fn at(&self) -> &[f64] {
        self.least.at()
    }

    /// The same with their standard errors.
    pub(super) fn after(&self) -> Vec<Known> {
        self.least.after()
    }
}

/// By how much the spreads are to be widened for such misses (in standard deviations, in
/// the order of time), 1 or more; 1 for fewer than eight.
fn widened(misses: &[f64]) -> f64 {
    let count = misses.len() as f64;
    if misses.len() < 8 {
        return 1.0;
    }
    let square = misses.iter().map(|miss| miss * miss).sum::<f64>() / count;
    let product = misses.windows(2).map(|pair| pair[0] * pair[1]).sum::<f64>() / (count - 1.0);
    let alike = (product / square.max(1e-12)).min(MOST_ALIKE);
    // Below twice its own scatter it is none.
    let alike = if alike > 2.0 / count.sqrt() {
        alike
    } else {
        0.0
    };
    let wider = (square * (1.0 + alike) / (1.0 - alike)).max(1.0).sqrt();
    if wider.is_finite() { wider } else { 1.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_that_drift_say_less() {
        let apart: Vec<f64> = (0..100)
            .map(|at| if at % 2 == 0 { 0.9 } else { -0.9 })
            .collect();
        assert_eq!(widened(&apart), 1.0);
        let drift: Vec<f64> = (0..100)
            .map(|at| (f64::from(at) / 16.0).sin() * 1.4)
            .collect();
        assert!(widened(&drift) > 4.0, "{}", widened(&drift));
        assert_eq!(widened(&[9.0; 3]), 1.0);
    }
}
