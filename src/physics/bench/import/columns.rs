//! Which column is what: guesses with their reasons, and the caller's say.

use super::head::{Head, is_time_like};
use super::heading::{self, Guess, Why};
use super::number::{NumberStyle, Reading};
use super::refusal::{Fault, Refusal};
use super::stamp::{self, DateOrder};
use super::unit::{Role, Unit, spelled};

/// A column as it is read.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// Its heading, empty where there is none.
    pub heading: String,
    /// What it is read as.
    pub role: Role,
    /// The unit or the form of its times.
    pub unit: Unit,
    /// Why.
    pub why: Why,
    /// What else the heading fits, where a better column took that role.
    pub also_fits: Option<(Role, Unit)>,
}

/// A caller's say on one column, counted from zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Given {
    /// The column, from zero.
    pub column: usize,
    /// What it is.
    pub role: Role,
    /// Its unit.
    pub unit: Unit,
}

/// Guesses every column, the caller's choices first.
///
/// One column per role; the better heading wins, then the one further left.
/// Counters of charge and energy may be many.
///
/// # Errors
///
/// - [`Fault::BadColumnChoice`] for a choice outside the table or a unit that
///   does not fit its role.
/// - [`Fault::NoTimeColumn`], [`Fault::NoFlowColumn`] when the table lacks them.
pub fn guess(
    head: &Head,
    style: NumberStyle,
    order: DateOrder,
    given: &[Given],
) -> Result<Vec<Column>, Refusal> {
    let line = head.heading_line.unwrap_or(head.data_line);
    let mut columns: Vec<Column> = (0..head.width).map(|at| blank(head, at)).collect();
    for choice in given {
        let column = columns.get_mut(choice.column);
        let column = column.filter(|_| choice.unit.fits(choice.role));
        let column = column.ok_or(Refusal::at(
            line,
            choice.column.saturating_add(1),
            Fault::BadColumnChoice,
        ))?;
        (column.role, column.unit, column.why) = (choice.role, choice.unit, Why::Given);
    }
    let guesses: Vec<Option<(Guess, Why)>> = (0..head.width)
        .map(|at| guess_one(head, at, style, order))
        .collect();
    settle(&mut columns, &guesses);
    settle_time(&mut columns, head, style, order);
    let has = |role| columns.iter().any(|c| c.role == role);
    if !has(Role::Time) {
        return Err(Refusal::at(line, 1, Fault::NoTimeColumn));
    }
    if !has(Role::Amps) && !has(Role::Watts) {
        return Err(Refusal::at(line, 1, Fault::NoFlowColumn));
    }
    Ok(columns)
}

/// A column nobody has spoken for yet.
fn blank(head: &Head, at: usize) -> Column {
    Column {
        heading: head.headings.get(at).cloned().unwrap_or_default(),
        role: Role::Ignored,
        unit: Unit::None,
        why: Why::NothingFits,
        also_fits: None,
    }
}

/// The cells of one column among the rows looked at.
pub fn probe_cells(head: &Head, at: usize) -> impl Iterator<Item = &str> {
    head.probe
        .iter()
        .filter_map(move |row| row.cells.get(at))
        .map(String::as_str)
        .filter(|cell| !cell.is_empty())
}

/// What the heading says of a column, or else its cells: a unit behind the
/// numbers, or a form that only times have. Bare numbers under a heading that
/// says nothing stay unread; to guess them would be to invent.
fn guess_one(head: &Head, at: usize, style: NumberStyle, order: DateOrder) -> Option<(Guess, Why)> {
    let from_heading = head.headings.get(at).and_then(|h| heading::read(h));
    if let Some(guess) = from_heading {
        let why = match guess.unit {
            Some(_) => Why::UnitInHeading,
            None => Why::NameOnly,
        };
        return Some((guess, why));
    }
    let first = probe_cells(head, at).find(|cell| style.read(cell) != Reading::Missing)?;
    let of = |role, unit| {
        Some((
            Guess {
                role,
                unit,
                weight: 0,
            },
            Why::Cells,
        ))
    };
    if stamp::date(first, order).is_some() {
        return of(Role::Date, None);
    }
    if is_time_like(first) {
        return of(Role::Time, None);
    }
    match style.read(first) {
        Reading::Number(_, unit) => spelled(unit).and_then(|(role, unit)| of(role, Some(unit))),
        _ => None,
    }
}

/// Hands each role to the best column that no caller has spoken for.
fn settle(columns: &mut [Column], guesses: &[Option<(Guess, Why)>]) {
    let taken: Vec<Role> = columns
        .iter()
        .filter(|c| c.why == Why::Given)
        .map(|c| c.role)
        .collect();
    for at in 0..columns.len() {
        let Some((guess, why)) = guesses[at].filter(|_| columns[at].why != Why::Given) else {
            continue;
        };
        let many = matches!(guess.role, Role::AmpHours | Role::WattHours);
        let beaten = guesses.iter().enumerate().any(|(other, rival)| {
            rival.is_some_and(|(rival, _)| {
                rival.role == guess.role
                    && other != at
                    && columns[other].why != Why::Given
                    && (rival.weight, other < at) > (guess.weight, false)
            })
        });
        let unit = guess.unit.unwrap_or(plain(guess.role));
        if many || !(beaten || taken.contains(&guess.role)) {
            (columns[at].role, columns[at].unit, columns[at].why) = (guess.role, unit, why);
        } else {
            columns[at].also_fits = Some((guess.role, unit));
        }
    }
}

/// The unit that is assumed where a heading names only the quantity. The reason
/// given is then [`Why::NameOnly`], for the page to ask about.
fn plain(role: Role) -> Unit {
    match role {
        Role::Temperature | Role::Outdoors => Unit::Celsius,
        Role::Time => Unit::Seconds,
        Role::Date | Role::Ignored => Unit::None,
        _ => Unit::Plain,
    }
}

/// Gives the time column its form, and drops a date column that is not needed
/// or makes it the time when it holds both.
fn settle_time(columns: &mut [Column], head: &Head, style: NumberStyle, order: DateOrder) {
    let find = |columns: &[Column], role| columns.iter().position(|c| c.role == role);
    if let Some(at) = find(columns, Role::Date) {
        let both = probe_cells(head, at).any(|cell| stamp::moment(cell, order).is_some());
        let days = probe_cells(head, at).any(|cell| stamp::date(cell, order).is_some());
        if both || !days {
            columns[at].role = Role::Ignored;
        }
        if both && find(columns, Role::Time).is_none() {
            columns[at].role = Role::Time;
        }
    }
    let Some(at) = find(columns, Role::Time) else {
        return;
    };
    if columns[at].why != Why::Given {
        let named = (columns[at].why == Why::UnitInHeading).then_some(columns[at].unit);
        let cells: Vec<&str> = probe_cells(head, at).collect();
        let (unit, sure) = time_form(&columns[at].heading, named, &cells, style, order);
        columns[at].unit = unit;
        if sure && columns[at].why != Why::UnitInHeading {
            columns[at].why = Why::Cells;
        }
    }
    // A day beside elapsed time or a full stamp says nothing new.
    if columns[at].unit != Unit::Clock {
        for column in columns
            .iter_mut()
            .filter(|c| c.role == Role::Date && c.why != Why::Given)
        {
            (column.role, column.unit) = (Role::Ignored, Unit::None);
        }
    }
}

/// The form of the time cells, and whether the cells settle it.
fn time_form(
    heading: &str,
    named: Option<Unit>,
    cells: &[&str],
    style: NumberStyle,
    order: DateOrder,
) -> (Unit, bool) {
    if cells
        .iter()
        .any(|cell| stamp::moment(cell, order).is_some())
    {
        return (Unit::Calendar, true);
    }
    let clocks: Vec<stamp::Clock> = cells.iter().filter_map(|cell| stamp::clock(cell)).collect();
    if !clocks.is_empty() {
        return (clock_form(heading, named, cells, &clocks), true);
    }
    let first = cells.iter().find_map(|cell| match style.read(cell) {
        Reading::Number(number, _) => Some(number),
        _ => None,
    });
    match first {
        // Seconds since 1970 passed 1e9 in 2001; nothing elapsed is as long.
        Some(number) if (1e9..1e11).contains(&number) => (Unit::EpochSeconds, true),
        Some(number) if (1e12..1e14).contains(&number) => (Unit::EpochMilliseconds, true),
        _ => (named.unwrap_or(Unit::Seconds), false),
    }
}

/// Clock or elapsed, and whether two parts are hours or minutes.
fn clock_form(heading: &str, named: Option<Unit>, cells: &[&str], clocks: &[stamp::Clock]) -> Unit {
    let lower = heading.to_lowercase();
    let short = clocks.iter().any(|c| c.third.is_none());
    let long = clocks.iter().any(|c| c.third.is_some());
    // 59:59 followed by 1:00:00 can only be minutes and seconds.
    if (short && long) || lower.contains("mm:ss") && !lower.contains(":mm:ss") {
        return Unit::MinutesSeconds;
    }
    let half_day = |cell: &&str| cell.to_lowercase().ends_with('m') || cell.ends_with("m.");
    let says_elapsed = ["elapsed", "duration", "run time", "runtime", "since"]
        .iter()
        .any(|word| lower.contains(word));
    let elapsed_unit = matches!(named, Some(unit) if unit.fits(Role::Time));
    if clocks.iter().any(|c| c.first >= 24.0)
        || (says_elapsed || elapsed_unit) && !cells.iter().any(half_day)
    {
        return Unit::HoursMinutes;
    }
    Unit::Clock
}

/// The order of day and month in the date cells of the rows looked at.
///
/// Only one order reads every cell, or else the one that makes the log
/// shorter is taken: a log of 5 to 6 March is likelier than one of May to June.
#[must_use]
pub fn date_order(head: &Head) -> DateOrder {
    let day = |cell: &str, order| {
        let day = cell.split(['T', ' ', ',']).next().unwrap_or(cell);
        stamp::date(day, order)
    };
    let column = (0..head.width).find(|&at| {
        probe_cells(head, at).next().is_some_and(|cell| {
            day(cell, DateOrder::DayFirst).is_some() || day(cell, DateOrder::MonthFirst).is_some()
        })
    });
    let Some(at) = column else {
        return DateOrder::DayFirst;
    };
    let span = |order| -> Option<f64> {
        let days: Option<Vec<f64>> = probe_cells(head, at).map(|cell| day(cell, order)).collect();
        let days = days?;
        let (low, high) = days
            .iter()
            .fold((f64::MAX, f64::MIN), |(l, h), &d| (l.min(d), h.max(d)));
        Some(high - low)
    };
    match (span(DateOrder::DayFirst), span(DateOrder::MonthFirst)) {
        (Some(a), Some(b)) if b < a => DateOrder::MonthFirst,
        (None, Some(_)) => DateOrder::MonthFirst,
        _ => DateOrder::DayFirst,
    }
}
