//! Least squares with a few unknowns, of which something is known beforehand.
//!
//! Minimises the sum of the squares of (datum - model) / its standard deviation
//! and of (unknown - where it was) / its own, by Gauss-Newton steps on central
//! differences. What is known beforehand keeps the normal equations regular, so
//! an unknown that the data say nothing of stays where it was, with the standard
//! deviation it had: that is how one sees that they say nothing.
//!
//! Source: nonlinear least squares with prior information, e.g. Draper & Smith,
//! *Applied Regression Analysis*, 3rd ed. (1998), chapters 5 and 24, from memory.

use crate::linear::solve;

/// An unknown, as known before or after.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Known {
    /// Where it is likeliest, in whatever unit.
    pub value: f64,
    /// One standard deviation, above 0.
    pub sd: f64,
}

/// A fit on its way: a step at a time.
#[derive(Clone, Debug, PartialEq)]
pub struct Least {
    before: Vec<Known>,
    data: Vec<Known>,
    /// Half of the central difference, for each unknown.
    nudges: Vec<f64>,
    at: Vec<f64>,
    /// The normal matrix where it was last looked.
    normal: Vec<Vec<f64>>,
}

/// Times a step that makes things worse is halved.
const MOST_HALVINGS: u32 = 6;

impl Least {
    /// Starts from what is known of the unknowns.
    ///
    /// - `before`: the unknowns
    /// - `nudges`: as many half-widths of the differences that slopes are taken by, in their
    ///   units: wide enough to smooth what jumps in the model
    /// - `data`: the readings; the model gives a value for each, in their order
    #[must_use]
    pub fn new(before: Vec<Known>, nudges: Vec<f64>, data: Vec<Known>) -> Self {
        let at = before.iter().map(|known| known.value).collect();
        Self {
            before,
            data,
            nudges,
            at,
            normal: Vec::new(),
        }
    }

    /// One step; returns by how much of their standard deviations the unknowns
    /// moved at the most. Nothing where the model has no answer.
    pub fn step(&mut self, mut model: impl FnMut(&[f64]) -> Option<Vec<f64>>) -> Option<f64> {
        let here = model(&self.at)?;
        let slopes = self.slopes(&mut model)?;
        let (normal, pull) = self.equations(&here, &slopes);
        let whole = solve(&normal, &pull)?;
        self.normal = normal;
        let cost = self.cost(&self.at, &here);
        let mut share = 1.0;
        for _ in 0..MOST_HALVINGS {
            let there: Vec<f64> = self
                .at
                .iter()
                .zip(&whole)
                .map(|(at, step)| at + share * step)
                .collect();
            if model(&there).is_some_and(|values| self.cost(&there, &values) <= cost) {
                self.at = there;
                let moved = whole.iter().zip(&self.before);
                return Some(
                    moved
                        .map(|(step, known)| share * (step / known.sd).abs())
                        .fold(0.0, f64::max),
                );
            }
            share *= 0.5;
        }
        // No way down from here: this is the place.
        Some(0.0)
    }

    /// The unknowns with their standard deviations; as before until a step was made.
    #[must_use]
    pub fn after(&self) -> Vec<Known> {
        let count = self.before.len();
        (0..count)
            .map(|place| {
                let unit: Vec<f64> = (0..count).map(|at| f64::from(at == place)).collect();
                // The diagonal of the inverse.
                let variance = solve(&self.normal, &unit).map(|column| column[place]);
                Known {
                    value: self.at[place],
                    sd: variance.map_or(self.before[place].sd, |it| it.max(0.0).sqrt()),
                }
            })
            .collect()
    }

    /// Where it stands.
    #[must_use]
    pub fn at(&self) -> &[f64] {
        &self.at
    }

    /// Root of the mean square of (datum - model) / its standard deviation, of a model's values
    /// in the order of the data: about 1 or less where the model agrees.
    #[must_use]
    pub fn misfit(&self, values: &[f64]) -> f64 {
        let squares: f64 = misses(&self.data, values).map(|miss| miss * miss).sum();
        (squares / self.data.len().max(1) as f64).sqrt()
    }

    /// Change of each datum by each unknown.
    fn slopes(&self, model: &mut impl FnMut(&[f64]) -> Option<Vec<f64>>) -> Option<Vec<Vec<f64>>> {
        (0..self.at.len())
            .map(|place| {
                let mut values = |sign: f64| {
                    let mut moved = self.at.clone();
                    moved[place] += sign * self.nudges[place];
                    model(&moved)
                };
                let (up, down) = (values(1.0)?, values(-1.0)?);
                let width = 2.0 * self.nudges[place];
                Some(up.iter().zip(&down).map(|(u, d)| (u - d) / width).collect())
            })
            .collect()
    }

    /// The normal equations at where it stands.
    fn equations(&self, here: &[f64], slopes: &[Vec<f64>]) -> (Vec<Vec<f64>>, Vec<f64>) {
        let count = self.at.len();
        let weighed = |a: &[f64], b: &[f64]| -> f64 {
            let products = a.iter().zip(b).zip(&self.data);
            products
                .map(|((a, b), datum)| a * b / (datum.sd * datum.sd))
                .sum()
        };
        let open: Vec<f64> = self
            .data
            .iter()
            .zip(here)
            .map(|(d, h)| d.value - h)
            .collect();
        let mut normal = vec![vec![0.0; count]; count];
        let mut pull = vec![0.0; count];
        for row in 0..count {
            for column in 0..count {
                normal[row][column] = weighed(&slopes[row], &slopes[column]);
            }
            let known = self.before[row];
            let weight = 1.0 / (known.sd * known.sd);
            normal[row][row] += weight;
            pull[row] = weighed(&slopes[row], &open) + weight * (known.value - self.at[row]);
        }
        (normal, pull)
    }

    /// The sum that is minimised.
    fn cost(&self, at: &[f64], values: &[f64]) -> f64 {
        misses(&self.data, values)
            .chain(misses(&self.before, at))
            .map(|miss| miss * miss)
            .sum()
    }
}

/// In standard deviations.
fn misses<'a>(data: &'a [Known], values: &'a [f64]) -> impl Iterator<Item = f64> + 'a {
    data.iter()
        .zip(values)
        .map(|(datum, value)| (datum.value - value) / datum.sd)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_data_do_not_tell_stays_as_it_was() {
        let known = |value, sd| Known { value, sd };
        let data = vec![known(6.0, 0.1), known(6.2, 0.1)];
        // The product alone is seen, and the third unknown not at all.
        let before = vec![known(2.0, 0.5), known(2.0, 0.5), known(7.0, 1.0)];
        let mut least = Least::new(before, vec![0.01; 3], data);
        let model = |at: &[f64]| Some(vec![at[0] * at[1]; 2]);
        for _ in 0..20 {
            least.step(model).unwrap();
        }
        let after = least.after();
        assert!((after[0].value * after[1].value - 6.1).abs() < 0.01);
        assert!((after[0].value - after[1].value).abs() < 1e-6);
        assert!(after[0].sd > 0.3 && after[0].sd < 0.5, "{after:?}");
        assert!((after[2].value - 7.0).abs() < 1e-9 && (after[2].sd - 1.0).abs() < 1e-9);
        assert!(least.misfit(&model(least.at()).unwrap()) < 1.5);
    }

    #[test]
    fn a_model_without_an_answer_gives_none() {
        let one = Known {
            value: 1.0,
            sd: 1.0,
        };
        let mut least = Least::new(vec![one], vec![0.1], vec![one]);
        assert_eq!(least.step(|_| None), None);
        assert_eq!(least.step(|_| Some(vec![f64::NAN])), None);
        assert_eq!(least.after(), [one]);
    }
}
