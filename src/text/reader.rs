//! What the reader's page says otherwise than the author's: names of fields, with the
//! reader's eyes. All else is the same in both.

use super::{Formatter, field_label, full_mode_name, m};
use crate::{
    plan::{Bank, Path, Plan, path::BankField as B},
    range::Range,
};

/// A field's name: a bank of one battery is a bank.
#[must_use]
pub fn label(f: Formatter, plan: &Plan, path: Path) -> String {
    let field = field_label(f, path);
    match path {
        Path::Bank(at, B::BatteryRatedAh) if is_alone(plan, at) => f.say(m::ReaderCapacity).into(),
        Path::Bank(at, B::BatteryNominalV) if is_alone(plan, at) => f.say(m::ReaderVoltage).into(),
        Path::Mode(unit, mode, _) => f.say(m::ReaderOf {
            name: full_mode_name(f, plan, unit, mode),
            field,
        }),
        Path::Load(at) => match plan.loads.get(at).map_or("", |load| load.name.trim()) {
            "" => field.into(),
            name => f.say(m::ReaderOf { name, field }),
        },
        _ => field.into(),
    }
}

/// Whether a bank is one battery, and nobody is asked how many.
fn is_alone(plan: &Plan, at: usize) -> bool {
    let counts = |bank: &Bank| (bank.series_count, bank.parallel_count);
    let is_one = plan
        .banks
        .get(at)
        .is_some_and(|bank| counts(bank) == (1, 1));
    let open = plan.open_fields();
    is_one
        && ![B::SeriesCount, B::ParallelCount]
            .iter()
            .any(|&field| open.contains(&Path::Bank(at, field)))
}

/// Why a text is not taken, from the field's name and the values it takes.
#[must_use]
pub fn trouble(f: Formatter, label: &str, wanted: Range) -> String {
    f.say(m::ReaderTrouble {
        label,
        accepted: f.number_accepted(wanted),
    })
}
