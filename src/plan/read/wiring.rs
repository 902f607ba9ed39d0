//! The fourth question's parts, from JSON.

use super::parts::choice;
use super::{Wrong, number, object, wrong};
use crate::plan::{
    Path, Plan,
    part::Choice,
    wiring::{LaidField, Leg, WiringField},
};
use serde_json::Value;

pub(super) fn wiring(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "wiring")? {
        let here = format!("wiring.{key}");
        if let Some(leg) = Leg::of_key(key) {
            laid(plan, leg, value, &here)?;
            continue;
        }
        let wiring = &mut plan.wiring;
        match key.as_str() {
            "place" => wiring.place = choice(value, &here)?,
            "take_off" => wiring.take_off = choice(value, &here)?,
            "fuse_kind" => wiring.fuse_kind = choice(value, &here)?,
            "mixed_blocks" => wiring.mixed_blocks = yes_or_no(value, &here)?,
            key => number(
                plan,
                WiringField::of_key(key).map(Path::Wiring),
                value,
                &here,
            )?,
        }
    }
    Ok(())
}

fn laid(plan: &mut Plan, leg: Leg, value: &Value, here: &str) -> Result<(), Wrong> {
    for (key, value) in object(value, here)? {
        let here = format!("{here}.{key}");
        let laid = plan.wiring.laid_mut(leg);
        match key.as_str() {
            "strands" => laid.strands = choice(value, &here)?,
            "engine_space" => laid.engine_space = yes_or_no(value, &here)?,
            "enclosed" => laid.enclosed = yes_or_no(value, &here)?,
            key => {
                let path = LaidField::of_key(key).map(|field| Path::Laid(leg, field));
                number(plan, path, value, &here)?;
            }
        }
    }
    Ok(())
}

fn yes_or_no(value: &Value, here: &str) -> Result<bool, Wrong> {
    value
        .as_bool()
        .map_or_else(|| wrong(here, "true or false"), Ok)
}
