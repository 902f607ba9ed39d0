//! What the first answer rests on before everything is said.

use super::{Formatter, m};
use crate::{
    answer::RunAnswer,
    plan::{
        Draw, Path, Plan,
        path::{BankField as B, ModeField as M},
    },
};

/// What nobody has said yet of the three numbers that any answer needs, by name.
fn unsaid(f: Formatter, plan: &Plan) -> Vec<&'static str> {
    let (unit, mode) = (plan.night.asked_unit, plan.night.asked_mode);
    let draw = match plan.mode(unit, mode).map(|mode| mode.draw) {
        Some(Draw::Current { .. }) => M::CurrentA,
        _ => M::PowerW,
    };
    let needed = [
        (Path::Bank(0, B::BatteryRatedAh), f.say(m::StartCapacity)),
        (Path::Bank(0, B::BatteryNominalV), f.say(m::StartVoltage)),
        (Path::Mode(unit, mode, draw), f.say(m::StartDraw)),
    ];
    let missing = needed
        .into_iter()
        .filter(|(path, _)| plan.stated(*path).is_none());
    missing.map(|(_, name)| name).collect()
}

/// That usual figures stand in, and for what; nothing where all is said.
#[must_use]
pub fn rests_on(f: Formatter, plan: &Plan) -> String {
    let unsaid = unsaid(f, plan);
    if unsaid.is_empty() {
        return String::new();
    }
    f.say(m::StartRestsOn {
        what: f.all_of(&unsaid),
    })
}

/// The question in place of a refusal: a run that only a usual figure keeps from
/// starting is asked about, not refused.
#[must_use]
pub fn asks(f: Formatter, plan: &Plan, run: &RunAnswer) -> Option<String> {
    let first = unsaid(f, plan).into_iter().next()?;
    (run.hours_h.likely <= 0.0).then(|| f.say(m::StartAsks { what: first }))
}
