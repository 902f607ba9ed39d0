//! Days drawn at random, the same every time: odds, and bands for the curves.
//!
//! Every number of the plan that has a spread is drawn from a normal
//! distribution about its value (half-width at two standard deviations), kept
//! inside its accepted range, all of them independent; then the day is run. The
//! chances hang on seed, run and address alone, so that typing moves the band
//! and never shakes it. What it leaves out: that forecasts err all one way in a
//! week, and that two guesses about one van go together.
//!
//! ```
//! use till_morning::{plan::Plan, study::spread::Sampler};
//! let mut plan = Plan::demo();
//! plan.day.days_count = Some(1);
//! let mut sampler = Sampler::new(&plan).unwrap();
//! while sampler.step(4) < 20 {} // in slices, as a page does it
//! let sampled = sampler.finish().unwrap();
//! assert_eq!(sampled.odds.samples_count, 20);
//! assert!(sampled.odds.lasting_percent <= 100.0);
//! ```

use super::{Band, BandPoint, Draws, Odds};
use crate::{
    plan::Plan,
    simulate::day::can_be_run,
    simulate::day::{DayPoint, Happening, How, Inputs, Scene, Sink, run},
};

/// What is kept of each drawn day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnDay {
    /// Until the bank is empty, or the whole span.
    pub hours_h: f64,
    /// Warmest cabin until the wanted hour, as in [`Odds::warmest_c`].
    pub warmest_c: f64,
    /// Whether the bank is not empty before the wanted hour.
    pub lasts: bool,
    /// Whether it is not empty in the whole span.
    pub is_never_empty: bool,
    /// Whether, besides, the set point is held.
    pub holds: bool,
}

/// Curves that have bands.
const CURVES: usize = 5;

/// Draws days, so many at a time.
#[derive(Clone, Debug)]
pub struct Sampler {
    scene: Scene,
    draws: Draws,
    runs: u32,
    kept: Vec<DrawnDay>,
    /// Hours between the points of a band.
    apart_h: f64,
    /// Place by place of the band, the curves of every run one after the other.
    curves: Vec<[Vec<f32>; CURVES]>,
}

/// What the drawn days say.
#[derive(Clone, Debug, PartialEq)]
pub struct Sampled {
    /// Counted over the days.
    pub odds: Odds,
    /// In the order of time, every 20 minutes of one day or every hour of more.
    pub bands: Vec<BandPoint>,
}

/// Points of a band: every 20 minutes of a day, every hour of more.
const SHORT_SPAN_H: f64 = 24.0;

impl Sampler {
    /// Ready to draw days of a plan; nothing where it cannot be run.
    #[must_use]
    pub fn new(plan: &Plan) -> Option<Self> {
        if !can_be_run(plan) {
            return None;
        }
        let scene = Scene::coarse(plan)?;
        let apart_h = if scene.span_h <= SHORT_SPAN_H {
            1.0 / 3.0
        } else {
            1.0
        };
        let places = (scene.span_h / apart_h).round() as usize + 1;
        Some(Self {
            draws: Draws::new(plan),
            runs: 0,
            kept: Vec::new(),
            apart_h,
            curves: vec![Default::default(); places],
            scene,
        })
    }

    /// How long the drawn days last, all together.
    #[must_use]
    pub fn span_h(&self) -> f64 {
        self.scene.span_h
    }

    /// Hours from the start to the wanted hour.
    #[must_use]
    pub fn wanted_h(&self) -> f64 {
        self.scene.wanted_h
    }

    /// Draws `count` more days. Returns how many there are now.
    ///
    /// One that cannot be run counts here and is left out of the odds.
    pub fn step(&mut self, count: u32) -> u32 {
        for _ in 0..count {
            self.draw();
        }
        self.runs
    }

    /// One day more; one that cannot be run leaves nothing but its number.
    fn draw(&mut self) {
        let run_number = self.runs;
        self.runs += 1;
        let plan = self.drawn_plan(run_number);
        let how = How {
            is_quick: true,
            ..How::default()
        };
        let mut tape = Tape {
            apart_h: self.apart_h,
            curves: &mut self.curves,
        };
        let outcome = Inputs::new(&self.scene, &plan)
            .and_then(|inputs| run(&self.scene, &inputs, &how, &mut tape));
        let Some(outcome) = outcome else {
            return;
        };
        let wanted_h = self.scene.wanted_h;
        self.kept.push(DrawnDay {
            hours_h: outcome.hours(self.scene.span_h),
            warmest_c: outcome.warmest_c,
            lasts: outcome.lasts_to(wanted_h),
            is_never_empty: outcome.empty.is_none(),
            holds: outcome.holds_to(wanted_h),
        });
    }

    /// The plan of one drawn day, by its number from 0 on.
    #[must_use]
    pub fn drawn_plan(&self, run_number: u32) -> Plan {
        self.draws.plan(run_number)
    }

    /// What each of the days drawn so far came to, in their order.
    #[must_use]
    pub fn days(&self) -> &[DrawnDay] {
        &self.kept
    }

    /// Odds and bands of the days drawn so far; nothing if there are none.
    #[must_use]
    pub fn finish(&self) -> Option<Sampled> {
        let count = self.kept.len();
        if count == 0 {
            return None;
        }
        let share = |is: fn(&DrawnDay) -> bool| {
            100.0 * self.kept.iter().filter(|kept| is(kept)).count() as f64 / count as f64
        };
        let band = |of: fn(&DrawnDay) -> f64| {
            let mut values: Vec<f64> = self.kept.iter().map(of).collect();
            band_of(&mut values)
        };
        Some(Sampled {
            odds: Odds {
                samples_count: count as u32,
                lasting_percent: share(|kept| kept.lasts),
                holding_percent: share(|kept| kept.holds),
                never_empty_percent: share(|kept| kept.is_never_empty),
                hours_h: band(|kept| kept.hours_h),
                warmest_c: band(|kept| kept.warmest_c),
            },
            bands: self.bands(),
        })
    }

    fn bands(&self) -> Vec<BandPoint> {
        self.curves
            .iter()
            .enumerate()
            .filter(|(_, curves)| !curves[0].is_empty())
            .map(|(place, curves)| {
                let band = |curve: &Vec<f32>| {
                    let mut values: Vec<f64> =
                        curve.iter().map(|&value| f64::from(value)).collect();
                    band_of(&mut values)
                };
                BandPoint {
                    hours_h: place as f64 * self.apart_h,
                    charge_percent: band(&curves[0]),
                    cabin_c: band(&curves[1]),
                    outdoor_c: band(&curves[2]),
                    solar_w: band(&curves[3]),
                    unit_w: band(&curves[4]),
                }
            })
            .collect()
    }
}

/// 2.5, 50 and 97.5 % of some values; they are put in another order. All 0 of none.
///
/// A share p of n values lies at the rank p (n + 1), between two by a straight line:
/// one more value, drawn as they were, is then below it with the chance p (Hyndman &
/// Fan, *The American Statistician* 50(4), 1996, definition 6). Taken among the n
/// alone, the ends of a hundred days held a night that was none of them in 94.1 %.
pub fn band_of(values: &mut [f64]) -> Band {
    let mut at = |share: f64| {
        let rank = (share * (values.len() + 1) as f64 - 1.0).max(0.0);
        let last = values.len().checked_sub(1)?;
        let (lower, part) = (rank as usize, rank.fract());
        let mut value = |at: usize| {
            *values
                .select_nth_unstable_by(at.min(last), f64::total_cmp)
                .1
        };
        let (from, to) = (value(lower), value(lower + 1));
        Some(from + part * (to - from))
    };
    let mut of = |share: f64| at(share).unwrap_or(0.0);
    Band {
        low: of(0.025),
        likely: of(0.5),
        high: of(0.975),
    }
}

/// Keeps a run's curves at the places of the band.
struct Tape<'a> {
    apart_h: f64,
    curves: &'a mut [[Vec<f32>; CURVES]],
}

impl Sink for Tape<'_> {
    fn point(&mut self, point: &DayPoint) {
        let place = point.hours_h / self.apart_h;
        let near = place.round();
        if (place - near).abs() > 1e-6 {
            return;
        }
        // Narrow on purpose: a thousand runs of a week are kept.
        if let Some(curves) = self.curves.get_mut(near as usize) {
            curves[0].push(point.charge_percent as f32);
            curves[1].push(point.cabin_c as f32);
            curves[2].push(point.outdoor_c as f32);
            curves[3].push(point.solar_w as f32);
            curves[4].push(point.unit_w as f32);
        }
    }
    fn event(&mut self, _hours_h: f64, _what: Happening) {}
}
