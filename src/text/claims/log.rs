//! What a file says, and why one was refused.

use crate::text::Formatter;
use crate::{
    answer::log::{End, LogReport, Means, NoteField, NoteFigures, StretchFigures},
    physics::bench::{
        import::{Fault, Refusal, Role, Unit, Why},
        run_end::Cause,
        totals::Sampling,
    },
    plan::Show,
};

/// What a column is read as.
#[must_use]
pub fn role_name(_f: Formatter, role: Role) -> &'static str {
    match role {
        Role::Time => "time",
        Role::Date => "date",
        Role::Volts => "volts",
        Role::Amps => "amps",
        Role::Watts => "watts",
        Role::AmpHours => "Ah counter",
        Role::WattHours => "Wh counter",
        Role::Temperature => "temperature",
        Role::Ignored => "not read",
    }
}

/// The unit of a column.
#[must_use]
pub fn unit_name(_f: Formatter, unit: Unit) -> &'static str {
    match unit {
        Unit::Plain => "as it stands",
        Unit::Milli => "thousandths (m)",
        Unit::Kilo => "thousands (k)",
        Unit::Milliseconds => "milliseconds",
        Unit::Seconds => "seconds",
        Unit::Minutes => "minutes",
        Unit::Hours => "hours",
        Unit::Days => "days",
        Unit::HoursMinutes => "h:mm",
        Unit::MinutesSeconds => "m:ss",
        Unit::Clock => "clock time",
        Unit::Calendar => "date and time",
        Unit::EpochSeconds => "seconds since 1970",
        Unit::EpochMilliseconds => "milliseconds since 1970",
        Unit::Celsius => "°C",
        Unit::Fahrenheit => "°F",
        Unit::None => "—",
    }
}

/// Why a column is read so.
#[must_use]
pub fn why_words(_f: Formatter, why: Why) -> &'static str {
    match why {
        Why::Given => "as you said",
        Why::UnitInHeading => "the heading names the unit",
        Why::NameOnly => "the heading names no unit: please look",
        Why::Cells => "by its cells",
        Why::NothingFits => "nothing fits",
    }
}

/// A refusal that names line and column, and what to do.
#[must_use]
pub fn fault_sentence(f: Formatter, refusal: &Refusal) -> String {
    let what = match refusal.fault {
        Fault::TooManyBytes { most } => {
            return format!(
                "The file is larger than {} MB, the most that is read.",
                f.plain(most as f64 / 1e6)
            );
        }
        Fault::TooManyRows { most } => {
            format!("more than {} rows; cut the file", f.plain(most as f64))
        }
        Fault::TooManyCells { most } => format!(
            "more cells than the {most} columns; often a decimal comma in a file parted by commas"
        ),
        Fault::NoTable => "no two rows of numbers below each other were found".into(),
        Fault::NoTimeColumn => "no column of times was found; say below which it is".into(),
        Fault::NoFlowColumn => "neither amps nor watts were found; say below which they are".into(),
        Fault::BadColumnChoice => "this column cannot be that".into(),
        Fault::NotANumber => "this cell is no number".into(),
        Fault::WrongUnit => "this number carries the unit of another quantity".into(),
        Fault::OutOfRange { least, most } => format!(
            "this number is past what the column can hold, {} to {}",
            f.plain(least),
            f.plain(most)
        ),
        Fault::NotATime => "this cell is no time of the form seen so far".into(),
        Fault::MixedZones => "some times carry a zone and others none".into(),
        Fault::OpenQuote => "a quotation mark is not closed".into(),
        Fault::TimeOverlaps => {
            "time goes back over what was logged already; split the two runs".into()
        }
        Fault::TooFewRows => "fewer than two rows with a time and a reading".into(),
    };
    format!(
        "Line {}, column {}: {what}. Nothing was taken from the file.",
        refusal.line, refusal.column
    )
}

/// How the run ended.
#[must_use]
pub fn end_sentence(f: Formatter, end: &End) -> String {
    let cause = match end.cause {
        Cause::FloorOrUnknown => "the log ends under load, or the load faded: why, it does not say",
        Cause::BatteryCutOff => "the battery’s own electronics opened, by the look of it",
        Cause::UnitCutOff => "the unit or inverter cut off, by the look of it",
        Cause::StoppedByHand => "somebody stopped it, by the look of it",
    };
    let last = match (end.last_v, end.last_a) {
        (Some(v), Some(a)) => format!(
            ", last at {} and {}",
            f.with_unit(v, "V"),
            f.with_unit(a, "A")
        ),
        _ => String::new(),
    };
    format!("It ran {}{last}; {cause}.", f.duration_fine(end.ran_h))
}

/// What the gaps may hold.
#[must_use]
pub fn gap_sentence(f: Formatter, report: &LogReport) -> String {
    let hours: f64 = report.gaps_h.iter().map(|(from, to)| to - from).sum();
    format!(
        "Gaps: {}, {} in all. Nothing is made up for them; they may add {} to {}, {} to {}.",
        report.gaps_h.len(),
        f.duration_fine(hours),
        f.fixed(report.gap_ah.0, 1),
        f.with_unit(report.gap_ah.1, "Ah"),
        f.fixed(report.gap_wh.0, 0),
        f.with_unit(report.gap_wh.1, "Wh"),
    )
}

/// Whether the rows follow the load; empty where they do.
#[must_use]
pub fn sampling_sentence(f: Formatter, sampling: Sampling) -> String {
    match sampling {
        Sampling::Resolved => String::new(),
        Sampling::PulsesNotResolved { scatter } => format!(
            "Logged too seldom: leaving out every other row moves the total by {}. No accuracy is claimed.",
            f.percent(100.0 * scatter)
        ),
        Sampling::CountersDisagree { share } => format!(
            "The logger’s own counters differ from the rows by {}: pulses fell between them. No accuracy is claimed.",
            f.percent(100.0 * share)
        ),
        Sampling::TooFewRows => "Too few rows to tell whether they follow the load.".into(),
    }
}

/// What taking the offset off did.
#[must_use]
pub fn offset_sentence(f: Formatter, offset_ah: f64) -> String {
    format!(
        "Taken off: it feigned {}\u{202f}Ah over the log.",
        f.fixed(offset_ah, 2)
    )
}

/// From when to when a stretch is, from the log's start.
#[must_use]
pub fn stretch_title(f: Formatter, from_h: f64, to_h: f64) -> String {
    format!("{} to {}", f.clock(60.0 * from_h), f.clock(60.0 * to_h))
}

/// How far a file is read.
#[must_use]
pub fn reading_text(f: Formatter, share: f64) -> String {
    format!("Reading the log: {} done.", f.percent(100.0 * share))
}

/// A column's place, heading and why it is read so.
#[must_use]
pub fn column_title(_f: Formatter, at: usize, heading: &str, why: &str) -> String {
    if heading.is_empty() {
        format!("Column {}: {why}", at + 1)
    } else {
        format!("Column {}, “{heading}”: {why}", at + 1)
    }
}

/// Mean, least and most.
#[must_use]
pub fn means_text(f: Formatter, (mean, least, most): Means, unit: &str) -> String {
    format!(
        "{} on average, {} to {}",
        f.with_unit(mean, unit),
        f.plain(least),
        f.with_unit(most, unit)
    )
}

/// A total with its expanded uncertainty, both to the same decimal.
#[must_use]
pub fn total_text(f: Formatter, (value, expanded): (f64, Option<f64>), unit: &str) -> String {
    let decimals = usize::from(value.abs() < 1000.0);
    let text = f.fixed(value, decimals);
    match expanded {
        Some(u) if u < 0.1 => format!("{text} ±{}", f.with_unit(u, unit)),
        Some(u) => format!("{text} ±{}\u{202f}{unit}", f.fixed(u, decimals)),
        None => format!("{text}\u{202f}{unit}, no accuracy claimed"),
    }
}

/// How long the log is.
#[must_use]
pub fn lasted_text(f: Formatter, report: &LogReport) -> String {
    if report.gaps_h.is_empty() {
        f.duration_fine(report.span_h)
    } else {
        format!(
            "{}, {} without the gaps",
            f.duration_fine(report.span_h),
            f.duration_fine(report.covered_h)
        )
    }
}

/// One stretch in a line: when, how long, its draw.
#[must_use]
pub fn stretch_text(f: Formatter, at: usize, figure: &StretchFigures) -> String {
    format!(
        "{}. {}, {}: {}",
        at + 1,
        stretch_title(f, figure.from_h, figure.to_h),
        f.duration_fine(figure.to_h - figure.from_h),
        total_text(f, (figure.draw, figure.expanded), draw_unit(figure)),
    )
}

fn draw_unit(figure: &StretchFigures) -> &'static str {
    if figure.is_amps { "A" } else { "W" }
}

/// What else is known of it: extremes, volts, amps and totals.
#[must_use]
pub fn stretch_detail(f: Formatter, figure: &StretchFigures) -> String {
    let unit = draw_unit(figure);
    let mut all = vec![format!(
        "{} to {}",
        f.fixed(figure.least, 1),
        format_args!("{}\u{202f}{unit}", f.fixed(figure.most, 1))
    )];
    all.extend(figure.volts.map(|v| means_text(f, v, "V")));
    let amps = figure.amps.filter(|_| !figure.is_amps);
    all.extend(amps.map(|a| f.with_unit(a, "A")));
    let mut totals = Vec::new();
    totals.extend(figure.ah.map(|ah| format!("{}\u{202f}Ah", f.fixed(ah, 1))));
    totals.extend(figure.wh.map(|wh| format!("{}\u{202f}Wh", f.fixed(wh, 0))));
    if !totals.is_empty() {
        all.push(format!("in all {}", totals.join(" and ")));
    }
    format!("{}.", all.join("; "))
}

/// A place in a list, counted as people do.
#[must_use]
pub fn place(at: usize) -> String {
    format!("{}", at + 1)
}

/// The shortest stretch looked for.
#[must_use]
pub fn shortest_name(f: Formatter, minutes: f64) -> String {
    f.duration_fine(minutes / 60.0)
}

/// What a button does that leaves a stretch out.
#[must_use]
pub fn leave_out(_f: Formatter, at: usize) -> String {
    format!("Leave out, stretch {}", at + 1)
}

/// What a button does that cuts a stretch in two.
#[must_use]
pub fn cut_in_two(_f: Formatter, at: usize) -> String {
    format!("Cut in two, stretch {}", at + 1)
}

/// What a button does that makes a stretch a mode's draw.
#[must_use]
pub fn make_mode(_f: Formatter, at: usize, mode: &str) -> String {
    format!("Make stretch {} the draw of {mode}", at + 1)
}

/// The same of a note.
#[must_use]
pub fn make_noted(_f: Formatter, mode: &str) -> String {
    format!("Make it the draw of {mode}")
}

/// Which edge of which stretch.
#[must_use]
pub fn edge_label(_f: Formatter, at: usize, is_end: bool) -> String {
    let which = if is_end { "End" } else { "Start" };
    format!("{which} of stretch {}", at + 1)
}

/// A moment of the log, from its start.
#[must_use]
pub fn moment_of(f: Formatter, hours: f64) -> String {
    format!("{} from the log’s start", f.duration_fine(hours))
}

/// The same in whole minutes.
#[must_use]
pub fn minutes_of(hours: f64) -> String {
    format!("{}", (60.0 * hours).round() as i64)
}

/// Hours of so many seconds.
#[must_use]
pub fn hours_of_seconds(seconds: f64) -> f64 {
    crate::quantity::in_hours(crate::quantity::seconds(seconds))
}

/// How far a key moves an edge, in hours.
#[must_use]
pub fn edge_step_h(key: &str) -> Option<f64> {
    let minutes = match key {
        "ArrowLeft" | "ArrowDown" => -1.0,
        "ArrowRight" | "ArrowUp" => 1.0,
        "PageDown" => -10.0,
        "PageUp" => 10.0,
        "Home" => -1e9,
        "End" => 1e9,
        _ => return None,
    };
    Some(minutes / 60.0)
}

/// Amps at rest as typed, within their range; nothing typed is none.
#[must_use]
pub fn offset_of(text: &str, range: crate::range::Range) -> Option<f64> {
    if text.trim().is_empty() {
        return Some(0.0);
    }
    let entry = crate::plan::entry::read(text, range.unit, Show::METRIC);
    entry.ok().map(|e| e.value).filter(|a| range.accepts(*a))
}

/// What a field of a note is called.
#[must_use]
pub fn note_label(_f: Formatter, field: NoteField) -> &'static str {
    match field {
        NoteField::StartV => "Volts at the start",
        NoteField::EndV => "Volts at the end",
        NoteField::StartA => "Amps at the start",
        NoteField::EndA => "Amps at the end",
        NoteField::AverageW => "Average draw, if read",
        NoteField::Minutes => "It ran for",
    }
}

/// Its unit.
#[must_use]
pub fn note_unit(f: Formatter, field: NoteField) -> &'static str {
    f.sign(field.range().unit)
}

/// What is wrong with it.
#[must_use]
pub fn note_trouble(f: Formatter, field: NoteField) -> String {
    let range = field.range();
    format!(
        "{}: give from {} to {}.",
        note_label(f, field),
        f.plain(range.min),
        f.with_unit(range.max, note_unit(f, field))
    )
}

/// What a note makes.
#[must_use]
pub fn noted_sentence(f: Formatter, figures: &NoteFigures) -> String {
    let mut text = format!("That is {}", total_text(f, figures.watts, "W"));
    for (total, unit) in [(figures.ah, "Ah"), (figures.wh, "Wh")] {
        if let Some(total) = total {
            text.push_str(", ");
            text.push_str(&total_text(f, total, unit));
        }
    }
    text.push('.');
    text
}
