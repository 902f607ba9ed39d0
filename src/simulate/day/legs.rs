//! A day walked leg by leg, each from where another ended: for searches over mode
//! plans, which share their beginnings.

use super::{
    inputs::Inputs,
    record::{DayPoint, Sink},
    run::{LEAST_H, Walk, start_cabin},
    scene::Scene,
    state::{SimState, Steppers},
    timeline::Slot,
};

/// What is worked out once for all legs of a day.
#[derive(Clone, Debug)]
pub struct Legs {
    scene: Scene,
    inputs: Inputs,
    steppers: Steppers,
}

/// Where a leg ended.
///
/// Of one [`Legs`] only: another's would be read by another bank and cabin.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    standing: SimState,
    /// Hours from the start.
    pub at_h: f64,
}

/// What a leg came to.
#[derive(Clone, Debug, PartialEq)]
pub struct Leg {
    /// Its end, to go on from.
    pub mark: Mark,
    /// The warmest step of it, means of the cabin's air, and the air at its end.
    pub warmest_c: f64,
    /// When the bank was empty, hours from the day's start, if it was emptied on this leg.
    pub empty_h: Option<f64>,
}

impl Legs {
    /// A day with its modes; nothing where the cabin is beyond answering.
    #[must_use]
    pub fn new(scene: &Scene, inputs: Inputs) -> Option<Self> {
        Some(Self {
            steppers: Steppers::new(&inputs)?,
            scene: scene.clone(),
            inputs,
        })
    }

    /// The day's start; nothing where the cabin is beyond answering.
    #[must_use]
    pub fn start(&self) -> Option<Mark> {
        let cabin = start_cabin(&self.inputs)?;
        Some(Mark {
            standing: SimState::new(&self.inputs, cabin, self.inputs.start_held),
            at_h: 0.0,
        })
    }

    /// Goes on to an hour with one mode on all the way, in the place of those planned: `rig` is
    /// its place among the inputs' modes, or none, with doors and roof light open.
    ///
    /// `to_h` is in hours from the day's start, up to the scene's end. Quick
    /// ([`super::How::is_quick`]), as searches compare many.
    #[must_use]
    pub fn go(&self, from: &Mark, to_h: f64, rig: Option<usize>) -> Leg {
        let mut warmest = Warmest(super::record::COLDEST_C);
        let mut walk = Walk::from(
            &self.scene,
            &self.inputs,
            true,
            &self.steppers,
            from.standing.clone(),
            &mut warmest,
        );
        let slots = &self.inputs.timeline.slots;
        let first = slots.partition_point(|slot| slot.to_h <= from.at_h + LEAST_H);
        for slot in slots[first..].iter().take_while(|slot| slot.from_h < to_h) {
            let (from_h, until_h) = (slot.from_h.max(from.at_h), slot.to_h.min(to_h));
            if until_h - from_h > LEAST_H {
                walk.slot(&Slot { rig, ..*slot }, from_h, until_h);
            }
        }
        let empty_h = walk.books.empty.map(|empty| empty.0);
        let standing = walk.standing;
        Leg {
            warmest_c: warmest.0.max(standing.cabin.air_c),
            mark: Mark {
                standing,
                at_h: to_h,
            },
            empty_h,
        }
    }
}

impl Mark {
    /// Share of what the bank holds, 0 to 1.
    #[must_use]
    pub fn share(&self, legs: &Legs) -> f64 {
        legs.inputs.bank.store.soc(self.standing.held)
    }
    /// Whether the unit, or everything, is off until charge has come in.
    #[must_use]
    pub fn is_stopped(&self) -> bool {
        self.standing.unit_off.is_some() || self.standing.all_off.is_some()
    }
    /// Temperatures of air and shell, Celsius.
    #[must_use]
    pub fn cabin_c(&self) -> (f64, f64) {
        (self.standing.cabin.air_c, self.standing.cabin.shell_c)
    }
    /// Water in the cabin's air, kg/kg.
    #[must_use]
    pub fn humidity_ratio(&self) -> f64 {
        self.standing.cabin.humidity_ratio
    }
}

/// Keeps the warmest mean.
struct Warmest(f64);

impl Sink for Warmest {
    fn point(&mut self, point: &DayPoint) {
        self.0 = self.0.max(point.cabin_c);
    }
}
