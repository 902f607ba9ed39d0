//! How the columns of a file are read: guesses with their reasons, to correct.

use super::file::{Bench, Stage};
use crate::{
    answer::log::{Column, Given, Options, Role, Unit},
    page::{
        dom::{El, button, h, named_fold},
        field::choice,
        reactive::*,
    },
    wording::claims::{self as say, words},
};

const ROLES: [Role; 9] = [
    Role::Time,
    Role::Date,
    Role::Volts,
    Role::Amps,
    Role::Watts,
    Role::AmpHours,
    Role::WattHours,
    Role::Temperature,
    Role::Ignored,
];
const UNITS: [Unit; 17] = [
    Unit::Plain,
    Unit::Milli,
    Unit::Kilo,
    Unit::Seconds,
    Unit::Milliseconds,
    Unit::Minutes,
    Unit::Hours,
    Unit::Days,
    Unit::HoursMinutes,
    Unit::MinutesSeconds,
    Unit::Clock,
    Unit::Calendar,
    Unit::EpochSeconds,
    Unit::EpochMilliseconds,
    Unit::Celsius,
    Unit::Fahrenheit,
    Unit::None,
];

/// The units that a role can be in, in a fixed order.
fn units_of(role: Role) -> Vec<Unit> {
    UNITS.into_iter().filter(|unit| unit.fits(role)).collect()
}

/// The columns, once a file has any; open by itself where it was refused.
pub fn columns(bench: Bench) -> El {
    let shown = move || {
        let refused = matches!(bench.stage.get(), Stage::Refused(_));
        let open = bench.stage.get() == Stage::Open;
        let count = bench.columns.with(Vec::len);
        if open || refused {
            format!("{count} {refused}")
        } else {
            String::new()
        }
    };
    h("div", "").live_children(shown, move || {
        let columns = bench.columns.get_untracked();
        if columns.is_empty()
            || matches!(
                bench.stage.get_untracked(),
                Stage::Reading { .. } | Stage::Nothing
            )
        {
            return Vec::new();
        }
        let refused = matches!(bench.stage.get_untracked(), Stage::Refused(_));
        if refused {
            let mut all = vec![h("h4", "").text(words::COLUMNS)];
            all.extend(rows(bench));
            all
        } else {
            vec![named_fold("fold", words::COLUMNS, move || rows(bench))]
        }
    })
}

/// A row for each column; what is chosen counts when the file is read again.
fn rows(bench: Bench) -> Vec<El> {
    let guessed = bench.columns.get_untracked();
    let chosen = RwSignal::new(guessed.clone());
    let count = chosen.with_untracked(Vec::len);
    let rows = (0..count).map(|at| row(chosen, at));
    let again = button("", words::READ_AGAIN, move || {
        let given = chosen.with_untracked(|columns| spoken_for(columns, &guessed));
        bench.read(Options {
            columns: given,
            ..Options::default()
        });
    });
    vec![h("div", "columns").children(rows), again]
}

/// What was left unread by guess and by choice stays open: another column may
/// now make it plain.
fn spoken_for(columns: &[Column], guessed: &[Column]) -> Vec<Given> {
    let given = |(column, c): (usize, &Column)| Given {
        column,
        role: c.role,
        unit: c.unit,
    };
    let open = |at: usize| columns[at].role == Role::Ignored && guessed[at].role == Role::Ignored;
    let all = columns.iter().enumerate();
    all.filter(|(at, _)| !open(*at)).map(given).collect()
}

fn row(chosen: RwSignal<Vec<Column>>, at: usize) -> El {
    let column = move || chosen.with(|columns| columns[at].clone());
    let roles = choice(
        &format!("column-{at}"),
        words::READ_AS,
        || ROLES.map(|role| say::role_name(role).to_owned()).to_vec(),
        move || {
            ROLES
                .iter()
                .position(|&role| role == column().role)
                .unwrap_or(0)
        },
        move |place| {
            let role = ROLES.get(place).copied().unwrap_or(Role::Ignored);
            chosen.update(|columns| {
                columns[at].role = role;
                if !columns[at].unit.fits(role) {
                    columns[at].unit = units_of(role).first().copied().unwrap_or(Unit::None);
                }
            });
        },
    );
    let units = choice(
        &format!("column-unit-{at}"),
        words::IN_UNIT,
        move || {
            let units = units_of(column().role);
            units
                .iter()
                .map(|&unit| say::unit_name(unit).to_owned())
                .collect()
        },
        move || {
            let column = column();
            let units = units_of(column.role);
            units
                .iter()
                .position(|&unit| unit == column.unit)
                .unwrap_or(0)
        },
        move |place| {
            chosen.update(|columns| {
                if let Some(&unit) = units_of(columns[at].role).get(place) {
                    columns[at].unit = unit;
                }
            });
        },
    );
    let head = chosen.with_untracked(|columns| {
        say::column_title(at, &columns[at].heading, say::why_words(columns[at].why))
    });
    h("div", "column")
        .child(h("p", "").text(&head))
        .child(h("div", "grid").child(roles).child(units))
}
