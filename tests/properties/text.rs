//! Plans and addresses as text.

use super::{any_plan::any_plan, close, sane_plan::sane_plan};
use proptest::{prelude::*, sample::select};
use serde_json::Value;
use till_morning::{
    answer::night as answer,
    plan::{
        Figure, Plan,
        cabin::CabinField,
        cooling::CoolingField,
        day::{CheckInField, DayField, ModeRowField},
        open::{plan_from_json, plan_to_json},
        path::{BankField, ModeField, NightField, Path, UnitField},
        supply::{ArrayField, ChargerField, SupplyField},
    },
};

fn any_path() -> impl Strategy<Value = Path> {
    let index = any::<usize>;
    prop_oneof![
        select(vec![Path::Banks, Path::Units, Path::Loads]),
        index().prop_map(Path::OpenCircuit),
        index().prop_map(Path::Modes),
        index().prop_map(Path::Load),
        (index(), select(BankField::ALL)).prop_map(|(bank, field)| Path::Bank(bank, field)),
        (index(), select(UnitField::ALL)).prop_map(|(unit, field)| Path::Unit(unit, field)),
        (index(), index(), select(ModeField::ALL))
            .prop_map(|(unit, mode, field)| Path::Mode(unit, mode, field)),
        select(NightField::ALL).prop_map(Path::Night),
        select(vec![
            Path::Imported,
            Path::Arrays,
            Path::Chargers,
            Path::ModePlan,
            Path::CheckIns
        ]),
        select(DayField::ALL).prop_map(Path::Day),
        select(CabinField::ALL).prop_map(Path::Cabin),
        select(SupplyField::ALL).prop_map(Path::Supply),
        (index(), select(CoolingField::ALL)).prop_map(|(at, field)| Path::Cooling(at, field)),
        (index(), select(ArrayField::ALL)).prop_map(|(at, field)| Path::Array(at, field)),
        (index(), select(ChargerField::ALL)).prop_map(|(at, field)| Path::Charger(at, field)),
        (index(), select(ModeRowField::ALL)).prop_map(|(at, field)| Path::ModeRow(at, field)),
        (index(), select(CheckInField::ALL)).prop_map(|(at, field)| Path::CheckIn(at, field)),
    ]
}

/// Text near an address.
fn almost_a_path() -> impl Strategy<Value = String> {
    (
        any_path(),
        any::<prop::sample::Index>(),
        any::<char>(),
        0..3,
    )
        .prop_map(|(path, at, with, how)| {
            let mut text: Vec<char> = path.to_string().chars().collect();
            let at = at.index(text.len());
            match how {
                0 => text[at] = with,
                1 => text.insert(at, with),
                _ => drop(text.remove(at)),
            }
            text.into_iter().collect()
        })
}

/// The plan with each number as a person types it: twelve digits at the most.
fn typed(plan: &Plan) -> Plan {
    let short = |number: f64| format!("{number:.11e}").parse().unwrap();
    let mut plan = plan.clone();
    for path in plan.paths() {
        if let Some(figure) = plan.stated(path) {
            let spread_percent = figure.spread_percent.map(short);
            let value = short(figure.value);
            plan.set_figure(
                path,
                Figure {
                    value,
                    spread_percent,
                    ..figure
                },
            );
        }
    }
    let rows = plan
        .banks
        .iter_mut()
        .flat_map(|bank| &mut bank.battery_open_circuit);
    for row in rows {
        row.charge_percent = short(row.charge_percent);
        row.open_circuit_v = short(row.open_circuit_v);
    }
    plan
}

/// Alike, and each number to its last binary digits.
fn alike(a: &Value, b: &Value) -> bool {
    match (a, b) {
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64().unwrap(), b.as_f64().unwrap());
            close(a, b, 2.0 * f64::EPSILON)
        }
        (Value::Array(a), Value::Array(b)) => {
            a.len() == b.len() && a.iter().zip(b).all(|(a, b)| alike(a, b))
        }
        (Value::Object(a), Value::Object(b)) => {
            a.len() == b.len()
                && a.iter()
                    .all(|(key, a)| b.get(key).is_some_and(|b| alike(a, b)))
        }
        _ => a == b,
    }
}

fn written_and_read(plan: &Plan) -> Result<(), TestCaseError> {
    let plan = typed(plan);
    let text = plan_to_json(&plan);
    let read = plan_from_json(&text);
    prop_assert_eq!(read.as_ref(), Ok(&plan), "{}", text);
    Ok(())
}

proptest! {
    #[test]
    fn a_plan_written_and_read_is_the_same(plan in sane_plan()) {
        written_and_read(&plan)?;
    }

    /// Also one with the ends of its ranges and any text in its names.
    #[test]
    fn an_odd_plan_written_and_read_is_the_same(plan in any_plan(false)) {
        written_and_read(&plan)?;
    }

    /// Numbers that were computed have up to seventeen digits. Reading all of
    /// them to the last bit would cost the page 8 kB (a feature of the JSON
    /// library), so such a number may come back one or two bits off.
    #[test]
    fn a_computed_plan_written_and_read_is_alike(plan in any_plan(false)) {
        let read = plan_from_json(&plan_to_json(&plan)).unwrap();
        let json = |plan| serde_json::to_value(plan).unwrap();
        prop_assert!(alike(&json(&plan), &json(&read)), "{plan:?} {read:?}");
    }

    /// Whatever is in a plan, the text it makes is answered or refused.
    #[test]
    fn a_wild_plan_is_written_and_is_read_or_refused(plan in any_plan(true)) {
        let _ = plan_from_json(&plan_to_json(&plan));
    }

    #[test]
    fn any_bytes_are_read_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let _ = plan_from_json(&String::from_utf8_lossy(&bytes));
    }

    /// A good file with a bite taken out, or something put in.
    #[test]
    fn a_damaged_file_is_read_or_refused(
        plan in sane_plan(),
        from in any::<prop::sample::Index>(),
        to in any::<prop::sample::Index>(),
        with in "[\\[\\]{}\",:0-9eE.nul-]{0,12}",
    ) {
        let mut text: Vec<char> = plan_to_json(&plan).chars().collect();
        let (from, to) = (from.index(text.len()), to.index(text.len()));
        text.splice(from.min(to)..from.max(to), with.chars());
        if let Ok(plan) = plan_from_json(&text.into_iter().collect::<String>()) {
            let _ = answer(&plan);
        }
    }

    /// Deep nesting ends in a refusal, not in the stack.
    #[test]
    fn deep_nesting_is_refused(depth in 1usize..60_000, open in select(vec!["[", "{\"banks\":"])) {
        prop_assert!(plan_from_json(&open.repeat(depth)).is_err());
        let text = format!("{{\"version\":1,\"banks\":{}", open.repeat(depth));
        prop_assert!(plan_from_json(&text).is_err());
    }

    #[test]
    fn an_address_written_and_read_is_the_same(path in any_path()) {
        prop_assert_eq!(path.to_string().parse(), Ok(path));
    }

    /// Text that reads as an address is the text that the address writes.
    #[test]
    fn an_address_is_written_one_way(text in prop_oneof![almost_a_path(), any::<String>()]) {
        if let Ok(path) = text.parse::<Path>() {
            prop_assert_eq!(path.to_string(), text);
        }
    }
}
