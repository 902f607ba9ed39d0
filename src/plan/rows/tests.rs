//! Every kind of row taken out before, at and behind what refers to it.
//!
//! What must hold is said by names and texts, not by counting places again: each
//! row has a name of its own, and each field a text that tells whose it is.

use crate::{
    plan::{
        Bank, CheckIn, Claim, Figure, Load, Mode, ModeRow, Path, Plan, Reader, Unit,
        claims::Claimed,
        cooling::{MapField, MapRow},
        draft::Draft,
        path::ModeField,
        supply::{Array, Charger},
    },
    text,
};

const ROWS: usize = 3;

fn three<T>(make: impl FnMut(usize) -> T) -> Vec<T> {
    (0..ROWS).map(make).collect()
}

/// Three of everything, each row to be told by a number of its own.
fn full() -> Plan {
    let mut plan = Plan::demo();
    let bank = plan.banks.remove(0);
    plan.banks = three(|at| Bank {
        name: format!("bank {at}"),
        ..bank.clone()
    });
    plan.units = three(|unit| Unit {
        name: format!("unit {unit}"),
        ..Unit::of(three(|mode| {
            Mode::of_power(&format!("mode {unit}{mode}"), Figure::label(300.0))
        }))
    });
    plan.loads = three(|at| Load {
        name: format!("load {at}"),
        power_w: Figure::label(10.0),
    });
    plan.supply.arrays = three(|_| Array::default());
    plan.supply.chargers = three(|_| Charger::default());
    plan.check_ins = three(|_| CheckIn::default());
    plan.mode_plan = Vec::new();
    for unit in 0..ROWS {
        for mode in [Some(0), Some(1), Some(2), None] {
            plan.mode_plan.push(ModeRow {
                from_clock_min: Some(60),
                unit,
                mode,
            });
        }
    }
    plan.claims = Vec::new();
    for (at, about) in [Claimed::Charge, Claimed::Energy, Claimed::Draw]
        .into_iter()
        .enumerate()
    {
        plan.claims.extend(three(|bank| Claim {
            name: format!("claim {at} of bank {bank}"),
            bank,
            ..Claim::of(about)
        }));
    }
    plan
}

/// Every list there is, with a row of it taken out.
fn all_removals() -> Vec<(Path, usize)> {
    let lists = [
        Path::Banks,
        Path::Units,
        Path::Modes(0),
        Path::Modes(1),
        Path::Modes(2),
        Path::Loads,
        Path::Arrays,
        Path::Chargers,
        Path::ModePlan,
        Path::CheckIns,
        Path::Claims,
    ];
    lists
        .into_iter()
        .flat_map(|list| (0..ROWS).map(move |row| (list, row)))
        .collect()
}

fn mode_name(plan: &Plan, unit: usize, mode: usize) -> Option<String> {
    Some(plan.mode(unit, mode)?.name.clone())
}

#[test]
fn the_asked_mode_follows_its_row() {
    for (list, row) in all_removals() {
        for (unit, mode) in [(0, 0), (0, 2), (1, 1), (2, 0), (2, 2)] {
            let mut plan = full();
            (plan.night.asked_unit, plan.night.asked_mode) = (unit, mode);
            let before = mode_name(&plan, unit, mode);
            plan.remove_row(list, row);
            let asked = mode_name(&plan, plan.night.asked_unit, plan.night.asked_mode);
            let still_there = plan.units.iter().any(|unit| {
                unit.modes
                    .iter()
                    .any(|one| Some(&one.name) == before.as_ref())
            });
            if still_there {
                assert_eq!(asked, before, "{list} {row}");
            } else {
                // Its unit's first, or the very first: there must be one asked for.
                let unit = if list == Path::Units { 0 } else { unit };
                assert_eq!(plan.night.asked_unit, unit, "{list} {row}");
                assert_eq!(plan.night.asked_mode, 0, "{list} {row}");
                assert!(asked.is_some());
            }
        }
    }
}

#[test]
fn the_mode_plan_follows_its_modes() {
    for (list, row) in all_removals() {
        let mut plan = full();
        let named = |plan: &Plan| -> Vec<Option<String>> {
            let rows = plan.mode_plan.iter();
            rows.filter_map(|row| row.mode.map(|mode| mode_name(plan, row.unit, mode)))
                .collect()
        };
        let off = |plan: &Plan| {
            plan.mode_plan
                .iter()
                .filter(|row| row.mode.is_none())
                .count()
        };
        let (before, off_before) = (named(&plan), off(&plan));
        plan.remove_row(list, row);
        let left: Vec<_> = plan
            .units
            .iter()
            .flat_map(|unit| unit.modes.iter().map(|mode| Some(mode.name.clone())))
            .collect();
        if list == Path::ModePlan {
            assert_eq!(plan.mode_plan.len(), 4 * ROWS - 1);
            continue;
        }
        let wanted: Vec<_> = before
            .into_iter()
            .filter(|name| left.contains(name))
            .collect();
        assert_eq!(named(&plan), wanted, "{list} {row}");
        assert_eq!(off(&plan), off_before, "switching off stays");
        assert!(plan.mode_plan.iter().all(|row| row.unit < plan.units.len()));
        assert!(plan.errors().is_empty(), "{:?}", plan.errors());
    }
}

#[test]
fn a_mode_plan_of_nothing_but_off_goes() {
    let mut plan = Plan::demo();
    plan.mode_plan = plan.mode_rows_stated();
    assert_eq!(plan.mode_plan.len(), 2);
    plan.remove_row(Path::Modes(0), plan.night.asked_mode);
    assert!(plan.mode_plan.is_empty());
    // One that never switched anything on stays as it was meant.
    let mut plan = Plan::demo();
    plan.mode_plan = vec![ModeRow::default()];
    plan.remove_row(Path::Modes(0), 0);
    assert_eq!(plan.mode_plan.len(), 1);
}

#[test]
fn claims_follow_their_bank() {
    for row in 0..ROWS {
        let mut plan = full();
        plan.remove_row(Path::Banks, row);
        for claim in &plan.claims {
            let bank = &plan.banks[claim.bank].name;
            let is_draw = claim.about == Some(Claimed::Draw);
            assert!(
                claim.name.ends_with(&format!("of {bank}")) || is_draw && claim.bank == 0,
                "{} is now of {bank}",
                claim.name
            );
        }
        let names: Vec<_> = plan.claims.iter().map(|claim| &claim.name).collect();
        // Two claims about what that bank holds went; the draw was not of it.
        assert_eq!(names.len(), 3 * ROWS - 2, "{names:?}");
    }
}

#[test]
fn open_fields_follow_their_rows() {
    let whose = |plan: &Plan, path: Path| match path {
        Path::Bank(at, _) | Path::Chemistry(at) => plan.banks[at].name.clone(),
        Path::Mode(unit, mode, _) => plan.units[unit].modes[mode].name.clone(),
        Path::Load(at) => plan.loads[at].name.clone(),
        _ => String::new(),
    };
    for (list, row) in all_removals() {
        for path in full().may_open() {
            let mut plan = full();
            plan.reader = Some(Reader {
                open: vec![path],
                ..Reader::default()
            });
            let before = whose(&plan, path);
            plan.remove_row(list, row);
            let open = plan.reader.clone().unwrap().open;
            let after: Vec<_> = open.iter().map(|&path| whose(&plan, path)).collect();
            let all = format!("{plan:?}");
            if all.contains(&format!("name: {before:?}")) || before.is_empty() {
                assert_eq!(after, [before], "{list} {row} {path}");
            } else {
                assert!(after.is_empty(), "{list} {row} {path}");
            }
        }
    }
}

/// A text that no field takes, so that it stays where it is.
fn mark(row: &str, path: Path) -> String {
    format!(
        "{row}: {}",
        text::field_label(text::Formatter::ENGLISH, path)
    )
}

/// Which row a field is of, told by what stands in the plan.
fn row_of(plan: &Plan, path: Path) -> String {
    let by = |number: Option<u32>| format!("{number:?}");
    match path {
        Path::Bank(at, _) | Path::OpenCircuit(at) => plan.banks[at].name.clone(),
        Path::Unit(at, _) | Path::Cooling(at, _) | Path::Modes(at) | Path::UnitMap(at) => {
            plan.units[at].name.clone()
        }
        Path::Mode(unit, mode, _) => plan.units[unit].modes[mode].name.clone(),
        Path::MapRow(unit, row, _) => {
            let unit = &plan.units[unit];
            format!("{} {:?}", unit.name, unit.cooling.unit_map[row].draw_w)
        }
        Path::Load(at) => plan.loads[at].name.clone(),
        Path::Claim(at, _) => plan.claims[at].name.clone(),
        Path::Array(at, _) => by(plan.supply.arrays[at].panels_series_count),
        Path::Charger(at, _) => by(plan.supply.chargers[at].from_clock_min),
        Path::CheckIn(at, _) => by(plan.check_ins[at].clock_min),
        Path::ModeRow(at, _) => by(plan.mode_plan[at].from_clock_min),
        _ => "the plan".into(),
    }
}

#[test]
fn texts_follow_their_rows_in_every_list() {
    let mut plan = full();
    for at in 0..ROWS {
        let number = Some(at as u32);
        plan.supply.arrays[at].panels_series_count = number.map(|n| n + 1);
        plan.supply.chargers[at].from_clock_min = number;
        plan.check_ins[at].clock_min = number;
    }
    for (at, row) in plan.mode_plan.iter_mut().enumerate() {
        row.from_clock_min = Some(at as u32);
    }
    let mut typed = Draft::of(plan.clone());
    for path in plan.paths() {
        typed.type_text(path, &mark(&row_of(&plan, path), path));
    }
    assert_eq!(typed.plan, plan, "no such text is taken");
    for (list, row) in all_removals() {
        let mut draft = typed.clone();
        draft.remove(list, row);
        let left = draft.plan.paths();
        assert!(left.len() < plan.paths().len(), "{list}");
        for path in left {
            let wanted = mark(&row_of(&draft.plan, path), path);
            assert_eq!(draft.text(path), wanted, "{path} after {list} {row}");
        }
        let fields = |draft: &Draft| draft.troubled().len();
        assert_eq!(fields(&draft), draft.plan.paths().len(), "{list} {row}");
    }
}

#[test]
fn what_is_not_there_takes_nothing_along() {
    let mut plan = full();
    for (list, row) in [
        (Path::Banks, ROWS),
        (Path::Modes(ROWS), 0),
        (Path::Load(0), 0),
    ] {
        assert!(plan.remove_row(list, row).is_empty());
    }
    assert_eq!(plan, full());
    let path = Path::Mode(0, 1, ModeField::PowerW);
    assert_eq!(path.without_row((Path::Modes(1), 0)), Some(path));
}

#[test]
fn rows_of_a_map_move_up_with_it_and_with_their_unit() {
    let row = |unit, row| Path::MapRow(unit, row, MapField::DrawW);
    let one = (Path::UnitMap(1), 2);
    assert_eq!(row(1, 1).without_row(one), Some(row(1, 1)));
    assert_eq!(row(1, 2).without_row(one), None);
    assert_eq!(row(1, 3).without_row(one), Some(row(1, 2)));
    assert_eq!(row(0, 3).without_row(one), Some(row(0, 3)));
    assert_eq!(row(1, 3).without_row((Path::Units, 0)), Some(row(0, 3)));
    let mut plan = Plan::demo();
    plan.units[0].cooling.unit_map = vec![MapRow::default(); 3];
    assert_eq!(plan.remove_row(Path::UnitMap(0), 1).len(), 1);
    assert_eq!(plan.units[0].cooling.unit_map.len(), 2);
}
