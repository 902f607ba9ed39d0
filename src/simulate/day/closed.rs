//! A closed cabin that nothing cools, through the days of a plan.

use super::{
    inputs::Inputs,
    scene::Scene,
    state::{Keep, settled, stepper},
};
use crate::plan::Plan;

/// How warm and how cold it gets while nobody opens a door and nothing cools.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Closed {
    /// The cabin's air at the warmest end of a step.
    pub warmest_c: f64,
    /// The bank where it stands, at the end of its coldest step.
    pub coldest_bank_c: f64,
}

/// Follows the closed cabin of a plan through all its days, people coming and going as
/// planned; nothing where its days cannot be run.
///
/// In coarse steps, from the plan's own start temperature or else from that outdoors.
#[must_use]
pub fn closed(plan: &Plan) -> Option<Closed> {
    let scene = Scene::coarse(plan)?;
    let inputs = Inputs::new(&scene, plan)?;
    let rows = &inputs.air;
    let first = rows.first()?;
    let stepper = stepper(&inputs, Keep::Closed, inputs.timeline.step_h, true)?;
    let start_c = inputs.start_c.unwrap_or(first.outdoor_c);
    let mut cabin = settled(start_c, first.outdoor_ratio);
    let mut found = Closed {
        warmest_c: f64::NEG_INFINITY,
        coldest_bank_c: f64::INFINITY,
    };
    for (step, pair) in rows.windows(2).enumerate() {
        let slots = &inputs.timeline.slots;
        let slot = slots.iter().find(|slot| slot.step == step)?;
        let people = inputs.people(slot, cabin.air_c);
        let drive = |at: usize| pair[at].drive(people, inputs.gains_w);
        let next = stepper.step(&cabin, &drive(0), &drive(1), None).ok()?;
        cabin = next.state;
        let bank_c = inputs.bank_temperature_c(cabin.air_c, pair[1].outdoor_c);
        found.warmest_c = found.warmest_c.max(cabin.air_c);
        found.coldest_bank_c = found.coldest_bank_c.min(bank_c);
    }
    Some(found).filter(|found| found.warmest_c.is_finite())
}
