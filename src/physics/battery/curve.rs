//! Open-circuit voltage against charge, piecewise linear.

/// Open-circuit volts against charge (0 to 1), rising with charge.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Charge at the knots, rising strictly.
    charge: Vec<f64>,
    volts: Vec<f64>,
}

/// The first row of a table that makes it no curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BadRow(pub usize);

impl Curve {
    /// A curve from rows of (charge 0 to 1, volts).
    ///
    /// # Errors
    /// The first row that is not finite, not above the one before in charge,
    /// lower in volts, or outside 0 to 1; a table of fewer than two rows
    /// answers with its length. A charge beyond the ends takes the end's volts.
    pub fn new(rows: &[(f64, f64)]) -> Result<Self, BadRow> {
        if rows.len() < 2 {
            return Err(BadRow(rows.len()));
        }
        for (row, &(charge, volts)) in rows.iter().enumerate() {
            let inside = (0.0..=1.0).contains(&charge) && volts > 0.0 && volts < 1e5;
            let rises = row == 0 || (charge > rows[row - 1].0 && volts >= rows[row - 1].1);
            if !inside || !rises {
                return Err(BadRow(row));
            }
        }
        Ok(Self {
            charge: rows.iter().map(|row| row.0).collect(),
            volts: rows.iter().map(|row| row.1).collect(),
        })
    }

    /// Open-circuit volts at a charge.
    #[must_use]
    pub fn at(&self, charge: f64) -> f64 {
        let last = self.charge.len() - 1;
        // The piece whose upper knot is the first at or above `charge`.
        let upper = self
            .charge
            .partition_point(|&knot| knot < charge)
            .clamp(1, last);
        let (c0, c1) = (self.charge[upper - 1], self.charge[upper]);
        let share = ((charge - c0) / (c1 - c0)).clamp(0.0, 1.0);
        self.volts[upper - 1] + share * (self.volts[upper] - self.volts[upper - 1])
    }

    /// The mean between two charges, exactly (trapezoids between knots).
    #[must_use]
    pub fn mean_between(&self, low: f64, high: f64) -> f64 {
        if high <= low {
            return self.at(low);
        }
        let inner = self
            .charge
            .iter()
            .copied()
            .filter(|&knot| knot > low && knot < high);
        let mut before = (low, self.at(low));
        let mut area = 0.0;
        for knot in inner.chain([high]) {
            let here = (knot, self.at(knot));
            area += (here.0 - before.0) * (here.1 + before.1) / 2.0;
            before = here;
        }
        area / (high - low)
    }

    /// Knots strictly between two charges, from high to low.
    pub fn knots_down(&self, high: f64, low: f64) -> impl Iterator<Item = f64> + '_ {
        self.charge
            .iter()
            .rev()
            .copied()
            .filter(move |&knot| knot < high && knot > low)
    }

    /// The same shape with every voltage times `factor` plus `offset`.
    #[must_use]
    pub fn scaled(&self, factor: f64, offset: f64) -> Self {
        Self {
            charge: self.charge.clone(),
            volts: self
                .volts
                .iter()
                .map(|volts| (volts * factor + offset).max(0.0))
                .collect(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_between_and_beyond_its_knots() {
        let curve = Curve::new(&[(0.0, 10.0), (0.5, 12.0), (1.0, 13.0)]).unwrap();
        assert_eq!(curve.at(0.25), 11.0);
        assert_eq!(curve.at(0.75), 12.5);
        assert_eq!((curve.at(-1.0), curve.at(2.0)), (10.0, 13.0));
        assert!(curve.at(f64::NAN).is_nan());
        assert_eq!(curve.mean_between(0.0, 1.0), 11.75);
    }

    #[test]
    fn names_the_bad_row() {
        assert_eq!(Curve::new(&[(0.0, 10.0)]), Err(BadRow(1)));
        assert_eq!(Curve::new(&[(0.0, 10.0), (0.0, 11.0)]), Err(BadRow(1)));
        assert_eq!(Curve::new(&[(0.0, 10.0), (0.5, 9.0)]), Err(BadRow(1)));
        assert_eq!(Curve::new(&[(0.0, f64::NAN), (0.5, 9.0)]), Err(BadRow(0)));
    }
}
