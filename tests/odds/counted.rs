//! Counting: cover of bands, and odds told beside what came true.

/// Shares of truths that two bands must hold: asked of them beforehand.
const EIGHTY: (f64, f64) = (0.77, 0.83);
const NINETY_FIVE: (f64, f64) = (0.93, 0.97);
/// Cases behind a share: its binomial standard error is then 0.9 % of 80 and 0.5 % of
/// 95 %.
pub const LEAST_CASES: u32 = 2000;
/// Binomial standard errors that a tenth of the odds may be off. Sixty tenths are
/// looked at; by chance one of them is further off in one of 36 rows of chances.
const ERRORS: f64 = 3.5;

/// What lay in a band, and on which side of it.
#[derive(Clone, Copy, Default)]
pub struct Cover {
    cases: u32,
    below: u32,
    above: u32,
}

impl Cover {
    pub fn count(&mut self, (low, high): (f64, f64), truth: f64) {
        self.cases += 1;
        // The days' curves are kept in single precision.
        let rounding = 1e-5 * (1.0 + truth.abs());
        self.below += u32::from(truth < low - rounding);
        self.above += u32::from(truth > high + rounding);
    }

    fn share(self, count: u32) -> f64 {
        f64::from(count) / f64::from(self.cases)
    }

    #[track_caller]
    fn holds(self, what: &str, (least, most): (f64, f64)) {
        let inside = self.share(self.cases - self.below - self.above);
        let (below, above) = (self.share(self.below), self.share(self.above));
        let cases = self.cases;
        println!("{what}: {inside:.4} inside, {below:.4} below, {above:.4} above, of {cases}");
        assert!(self.cases >= LEAST_CASES, "{what}: {cases} cases");
        assert!((least..=most).contains(&inside), "{what}: {inside} inside");
    }

    #[track_caller]
    pub fn holds_eighty(self, what: &str) {
        self.holds(&format!("{what}, 80 %"), EIGHTY);
    }

    #[track_caller]
    pub fn holds_ninety_five(self, what: &str) {
        self.holds(&format!("{what}, 95 %"), NINETY_FIVE);
    }
}

/// Odds told and truths that came of them, in one tenth.
#[derive(Clone, Copy, Default)]
struct Tenth {
    plans: f64,
    drawn: f64,
    truths: f64,
    came_true: f64,
    /// Odds told, times truths.
    told: f64,
}

/// Odds told by tenths, each beside how often it came true.
#[derive(Clone, Copy, Default)]
pub struct Reliability {
    tenths: [Tenth; 10],
}

impl Reliability {
    /// A plan's odds from so many drawn days, and what came true.
    pub fn count(&mut self, told_percent: f64, drawn: u32, truths: &[bool]) {
        let tenth = &mut self.tenths[((told_percent / 10.0) as usize).min(9)];
        let count = truths.len() as f64;
        tenth.plans += 1.0;
        tenth.drawn += f64::from(drawn);
        tenth.truths += count;
        tenth.came_true += truths.iter().filter(|&&came| came).count() as f64;
        tenth.told += 0.01 * told_percent * count;
    }

    /// Each tenth is true within its standard error: that of the truths, which are
    /// drawn, and that of the odds, which are counted over drawn days themselves.
    #[track_caller]
    pub fn holds(&self, what: &str) {
        let mut off = Vec::new();
        for tenth in self.tenths.iter().filter(|tenth| tenth.truths > 0.0) {
            let (told, came) = (tenth.told / tenth.truths, tenth.came_true / tenth.truths);
            // Odds of nought from some drawn days are not quite nought (Laplace).
            let odds = (told * tenth.drawn + 1.0) / (tenth.drawn + 2.0);
            let error = (odds * (1.0 - odds) * (1.0 / tenth.truths + 1.0 / tenth.drawn)).sqrt();
            let errors = (came - told) / error;
            println!(
                "{what}: told {told:.3}, came true {came:.3} ({errors:+.1} standard errors), \
                 {} plans, {} truths",
                tenth.plans, tenth.truths
            );
            if errors.abs() > ERRORS {
                off.push((told, came));
            }
        }
        assert!(off.is_empty(), "{what}: {off:?}");
    }

    /// Tenths with anything in them.
    pub fn tenths(&self) -> usize {
        let filled = self.tenths.iter().filter(|tenth| tenth.truths > 0.0);
        filled.count()
    }
}
