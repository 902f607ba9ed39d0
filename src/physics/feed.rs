//! What stands between the bank and a cooling unit: converters, and the power they take for the
//! power they give.

/// A DC-DC converter: a fixed idle draw, and the output over its efficiency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DcDc {
    /// Output over input, 0 to 1, idle draw apart.
    pub efficiency: f64,
    pub idle_w: f64,
}

impl DcDc {
    /// Watts taken in for watts given out.
    #[must_use]
    pub fn input_w(&self, output_w: f64) -> f64 {
        self.idle_w + output_w / self.efficiency
    }
}

/// An inverter, by the usual quadratic: `P_in = P_0 + (1 + a) P + b P²`.
///
/// No-load loss (electronics), proportional loss (voltage across the switches)
/// and square loss (resistance). The form is that of Schmidt & Sauer 1996 for
/// photovoltaic inverters (from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inverter {
    pub no_load_w: f64,
    /// Share of the output.
    pub proportional: f64,
    /// Share of the output for each kilowatt of output.
    pub square_per_kw: f64,
}

impl Inverter {
    /// Watts taken in for watts given out.
    #[must_use]
    pub fn input_w(&self, output_w: f64) -> f64 {
        let square = self.square_per_kw * output_w / 1000.0;
        self.no_load_w + output_w * (1.0 + self.proportional + square)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_idle_converter_takes_its_idle_draw() {
        let dc_dc = DcDc {
            efficiency: 0.9,
            idle_w: 3.0,
        };
        assert_eq!(dc_dc.input_w(0.0), 3.0);
        assert!((dc_dc.input_w(90.0) - 103.0).abs() < 1e-12);
        let inverter = Inverter {
            no_load_w: 8.0,
            proportional: 0.05,
            square_per_kw: 0.02,
        };
        assert_eq!(inverter.input_w(0.0), 8.0);
        assert!((inverter.input_w(1000.0) - (8.0 + 1000.0 + 50.0 + 20.0)).abs() < 1e-9);
    }
}
