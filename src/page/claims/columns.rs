//! How the columns of a file are read: guesses with their reasons, to correct.

use super::file::{Bench, Stage};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::log::{Column, Given, Options, Role, Unit},
    page::{
        field::Choice,
        kit::{Fold, Press, anew},
    },
    text::claims as say,
};
use leptos::prelude::*;

const ROLES: [Role; 10] = [
    Role::Time,
    Role::Date,
    Role::Volts,
    Role::Amps,
    Role::Watts,
    Role::AmpHours,
    Role::WattHours,
    Role::Temperature,
    Role::Outdoors,
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
#[component]
pub fn Columns() -> impl IntoView {
    let bench = Bench::here();
    // Whether it was refused, where there are columns to speak for.
    let shown = move || {
        let count = bench.columns.with(Vec::len);
        let refused = bench.stage.with(|stage| match stage {
            Stage::Open => Some(false),
            Stage::Refused(_) => Some(true),
            Stage::Nothing | Stage::Reading { .. } => None,
        });
        refused
            .filter(|_| count > 0)
            .map(|refused| (refused, count))
    };
    let inside = |shown: Option<(bool, usize)>| match shown {
        None => ().into_any(),
        Some((true, _)) => view! {
            <h4>{say(m::LogColumns)}</h4>
            <Rows />
        }
        .into_any(),
        Some((false, _)) => view! {
            <Fold title=|| say(m::LogColumns)>
                <Rows />
            </Fold>
        }
        .into_any(),
    };
    view! { <div>{anew(shown, inside)}</div> }
}

/// A row for each column; what is chosen counts when the file is read again.
#[component]
fn Rows() -> impl IntoView {
    let bench = Bench::here();
    let guessed = bench.columns.get_untracked();
    let chosen = RwSignal::new(guessed.clone());
    let rows = (0..guessed.len()).map(|at| view! { <ColumnRow chosen=chosen at=at /> });
    let rows = rows.collect_view();
    let again = move || {
        let columns = chosen.with_untracked(|columns| spoken_for(columns, &guessed));
        bench.read(Options {
            columns,
            ..Options::default()
        });
    };
    view! {
        <div class="columns">{rows}</div>
        <Press words=say(m::LogReadAgain) press=again />
    }
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

#[component]
fn ColumnRow(chosen: RwSignal<Vec<Column>>, at: usize) -> impl IntoView {
    let column = move || chosen.with(|columns| columns[at].clone());
    let role = move || {
        let role = column().role;
        ROLES.iter().position(|&one| one == role).unwrap_or(0)
    };
    let set_role = move |place: usize| {
        let role = ROLES.get(place).copied().unwrap_or(Role::Ignored);
        chosen.update(|columns| {
            columns[at].role = role;
            if !columns[at].unit.fits(role) {
                columns[at].unit = units_of(role).first().copied().unwrap_or(Unit::None);
            }
        });
    };
    let units = move || {
        let units = units_of(column().role).into_iter();
        units
            .map(|unit| say::unit_name(formatter(), unit).to_owned())
            .collect()
    };
    let unit = move || {
        let column = column();
        let mut units = units_of(column.role).into_iter();
        units.position(|unit| unit == column.unit).unwrap_or(0)
    };
    let set_unit = move |place: usize| {
        chosen.update(|columns| {
            if let Some(&unit) = units_of(columns[at].role).get(place) {
                columns[at].unit = unit;
            }
        });
    };
    let head = chosen.with_untracked(|columns| {
        let column = &columns[at];
        say::column_title(
            formatter(),
            at,
            &column.heading,
            say::why_words(formatter(), column.why),
        )
    });
    view! {
        <div class="column">
            <p>{head}</p>
            <div class="grid">
                <Choice
                    id=format!("column-{at}")
                    label=say(m::LogReadAs)
                    names=|| ROLES.map(|role| say::role_name(formatter(), role).to_owned()).to_vec()
                    chosen=role
                    choose=set_role
                />
                <Choice
                    id=format!("column-unit-{at}")
                    label=say(m::LogInUnit)
                    names=units
                    chosen=unit
                    choose=set_unit
                />
            </div>
        </div>
    }
}
