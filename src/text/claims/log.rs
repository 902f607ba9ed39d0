//! What a file says, and why one was refused.

use crate::{
    answer::log::{End, LogMeter, LogReport, Means, NoteField, NoteFigures, StretchFigures},
    physics::bench::{
        import::{Fault, Refusal, Role, Unit, Why},
        run_end::Cause,
        totals::Sampling,
    },
    plan::Show,
    range,
    text::{Formatter, m, number::with_sign},
};

/// What a column is read as.
#[must_use]
pub fn role_name(f: Formatter, role: Role) -> &'static str {
    match role {
        Role::Time => f.say(m::LogRoleTime),
        Role::Date => f.say(m::LogRoleDate),
        Role::Volts => f.say(m::LogRoleVolts),
        Role::Amps => f.say(m::LogRoleAmps),
        Role::Watts => f.say(m::LogRoleWatts),
        Role::AmpHours => f.say(m::LogRoleAmpHours),
        Role::WattHours => f.say(m::LogRoleWattHours),
        Role::Temperature => f.say(m::LogRoleTemperature),
        Role::Outdoors => f.say(m::LogRoleOutdoors),
        Role::Ignored => f.say(m::LogRoleIgnored),
    }
}

/// The unit of a column.
#[must_use]
pub fn unit_name(f: Formatter, unit: Unit) -> &'static str {
    match unit {
        Unit::Plain => f.say(m::LogUnitPlain),
        Unit::Milli => f.say(m::LogUnitMilli),
        Unit::Kilo => f.say(m::LogUnitKilo),
        Unit::Milliseconds => f.say(m::LogUnitMilliseconds),
        Unit::Seconds => f.say(m::LogUnitSeconds),
        Unit::Minutes => f.say(m::LogUnitMinutes),
        Unit::Hours => f.say(m::LogUnitHours),
        Unit::Days => f.say(m::LogUnitDays),
        Unit::HoursMinutes => f.say(m::LogUnitHoursMinutes),
        Unit::MinutesSeconds => f.say(m::LogUnitMinutesSeconds),
        Unit::Clock => f.say(m::LogUnitClock),
        Unit::Calendar => f.say(m::LogUnitCalendar),
        Unit::EpochSeconds => f.say(m::LogUnitEpochSeconds),
        Unit::EpochMilliseconds => f.say(m::LogUnitEpochMilliseconds),
        Unit::Celsius => "°C",
        Unit::Fahrenheit => "°F",
        Unit::None => "—",
    }
}

/// Why a column is read so.
#[must_use]
pub fn why_words(f: Formatter, why: Why) -> &'static str {
    match why {
        Why::Given => f.say(m::LogWhyGiven),
        Why::UnitInHeading => f.say(m::LogWhyHeading),
        Why::NameOnly => f.say(m::LogWhyNameOnly),
        Why::Cells => f.say(m::LogWhyCells),
        Why::NothingFits => f.say(m::LogWhyNothing),
    }
}

/// A refusal that names line and column, and what to do.
#[must_use]
pub fn fault_sentence(f: Formatter, refusal: &Refusal) -> String {
    if let Fault::TooManyBytes { most } = refusal.fault {
        let size = f.plain(most as f64 / 1e6);
        return f.say(m::LogFaultBytes { size });
    }
    f.say(m::LogRefused {
        line: refusal.line.to_string(),
        column: refusal.column.to_string(),
        fault: fault_text(f, refusal.fault),
    })
}

fn fault_text(f: Formatter, fault: Fault) -> String {
    match fault {
        Fault::TooManyBytes { .. } => String::new(),
        Fault::TooManyRows { most } => f.say(m::LogFaultRows {
            most: f.number(most as f64),
        }),
        Fault::TooManyCells { most } => f.say(m::LogFaultCells { columns: most }),
        Fault::OutOfRange { least, most } => f.say(m::LogFaultRange {
            low: f.plain(least),
            high: f.plain(most),
        }),
        Fault::NoTable => f.say(m::LogFaultNoTable).into(),
        Fault::NoTimeColumn => f.say(m::LogFaultNoTime).into(),
        Fault::NoFlowColumn => f.say(m::LogFaultNoFlow).into(),
        Fault::BadColumnChoice => f.say(m::LogFaultColumn).into(),
        Fault::NotANumber => f.say(m::LogFaultNumber).into(),
        Fault::WrongUnit => f.say(m::LogFaultUnit).into(),
        Fault::NotATime => f.say(m::LogFaultTime).into(),
        Fault::MixedZones => f.say(m::LogFaultZones).into(),
        Fault::OpenQuote => f.say(m::LogFaultQuote).into(),
        Fault::TimeOverlaps => f.say(m::LogFaultOverlap).into(),
        Fault::TooFewRows => f.say(m::LogFaultFew).into(),
    }
}

/// How the run ended.
#[must_use]
pub fn end_sentence(f: Formatter, end: &End) -> String {
    let cause = match end.cause {
        Cause::FloorOrUnknown => f.say(m::LogEndUnknown),
        Cause::BatteryCutOff => f.say(m::LogEndBms),
        Cause::UnitCutOff => f.say(m::LogEndUnit),
        Cause::StoppedByHand => f.say(m::LogEndHand),
    };
    let duration = f.duration_fine(end.ran_h);
    match (end.last_v, end.last_a) {
        (Some(v), Some(a)) => f.say(m::LogRanLast {
            duration,
            volts: f.with_unit(v, "V"),
            amps: f.with_unit(a, "A"),
            cause,
        }),
        _ => f.say(m::LogRan { duration, cause }),
    }
}

/// What the gaps may hold.
#[must_use]
pub fn gap_sentence(f: Formatter, report: &LogReport) -> String {
    let hours: f64 = report.gaps_h.iter().map(|(from, to)| to - from).sum();
    f.say(m::LogGaps {
        count: f.number(report.gaps_h.len() as f64),
        duration: f.duration_fine(hours),
        ah_low: f.fixed(report.gap_ah.0, 1),
        ah_high: f.with_unit(report.gap_ah.1, "Ah"),
        wh_low: f.fixed(report.gap_wh.0, 0),
        wh_high: f.with_unit(report.gap_wh.1, "Wh"),
    })
}

/// Whether the rows follow the load; empty where they do.
#[must_use]
pub fn sampling_sentence(f: Formatter, sampling: Sampling) -> String {
    match sampling {
        Sampling::Resolved => String::new(),
        Sampling::PulsesNotResolved { scatter } => f.say(m::LogSamplingPulses {
            share: f.percent(100.0 * scatter),
        }),
        Sampling::CountersDisagree { share } => f.say(m::LogSamplingCounters {
            share: f.percent(100.0 * share),
        }),
        Sampling::TooFewRows => f.say(m::LogSamplingFew).into(),
    }
}

/// A meter that a log's current may come from.
#[must_use]
pub fn log_meter_name(f: Formatter, meter: LogMeter) -> String {
    if meter.is_clamp {
        f.say(m::LogMeterClamp).into()
    } else {
        let current = f.with_unit(meter.shunt_a, "A");
        f.say(m::LogMeterShunt { current })
    }
}

/// What a small offset does to a total, by an example.
#[must_use]
pub fn offset_hint(f: Formatter) -> String {
    let (amps, hours) = (0.1, 12.0);
    f.say(m::LogOffsetHint {
        current: f.with_unit(amps, "A"),
        duration: f.duration(hours),
        charge: f.with_unit(amps * hours, "Ah"),
    })
}

/// Why a text is not taken as an offset.
#[must_use]
pub fn offset_bad(f: Formatter) -> String {
    let accepted = f.accepted(range::OFFSET_A);
    f.say(m::LogOffsetBad { accepted })
}

/// What taking the offset off did.
#[must_use]
pub fn offset_sentence(f: Formatter, offset_ah: f64) -> String {
    let charge = with_sign(f.fixed(offset_ah, 2), "Ah");
    f.say(m::LogOffsetTaken { charge })
}

/// How far a file is read.
#[must_use]
pub fn reading_text(f: Formatter, share: f64) -> String {
    let share = f.percent(100.0 * share);
    f.say(m::LogReading { share })
}

/// A column's place, heading and why it is read so.
#[must_use]
pub fn column_title(f: Formatter, at: usize, heading: &str, why: &str) -> String {
    let number = place(at);
    if heading.is_empty() {
        f.say(m::LogColumn { number, why })
    } else {
        f.say(m::LogColumnHeaded {
            number,
            heading,
            why,
        })
    }
}

/// Mean, least and most.
#[must_use]
pub fn means_text(f: Formatter, (mean, least, most): Means, unit: &str) -> String {
    f.say(m::LogMeans {
        mean: f.with_unit(mean, unit),
        low: f.plain(least),
        high: f.with_unit(most, unit),
    })
}

/// A total with its expanded uncertainty, both to the same decimal.
#[must_use]
pub fn total_text(f: Formatter, (value, expanded): (f64, Option<f64>), unit: &str) -> String {
    let decimals = usize::from(value.abs() < 1000.0);
    let text = f.fixed(value, decimals);
    match expanded {
        Some(u) if u < 0.1 => format!("{text} ±{}", f.with_unit(u, unit)),
        Some(u) => format!("{text} ±{}", with_sign(f.fixed(u, decimals), unit)),
        None => f.say(m::ClaimsUncertaintyUnknown {
            figure: with_sign(text, unit),
        }),
    }
}

/// How long the log is.
#[must_use]
pub fn lasted_text(f: Formatter, report: &LogReport) -> String {
    let span = f.duration_fine(report.span_h);
    if report.gaps_h.is_empty() {
        return span;
    }
    f.say(m::LogWithoutGaps {
        span,
        covered: f.duration_fine(report.covered_h),
    })
}

/// One stretch in a line: when from the log's start, how long, its draw.
#[must_use]
pub fn stretch_text(f: Formatter, at: usize, figure: &StretchFigures) -> String {
    f.say(m::LogStretch {
        number: place(at),
        start: f.duration_fine(figure.from_h),
        end: f.duration_fine(figure.to_h),
        duration: f.duration_fine(figure.to_h - figure.from_h),
        draw: total_text(f, (figure.draw, figure.expanded), draw_unit(figure)),
    })
}

fn draw_unit(figure: &StretchFigures) -> &'static str {
    if figure.is_amps { "A" } else { "W" }
}

/// What else is known of it: extremes, volts, amps and totals.
#[must_use]
pub fn stretch_detail(f: Formatter, figure: &StretchFigures) -> String {
    let mut parts = vec![f.say(m::ClaimsRange {
        low: f.fixed(figure.least, 1),
        high: with_sign(f.fixed(figure.most, 1), draw_unit(figure)),
    })];
    parts.extend(figure.volts.map(|v| means_text(f, v, "V")));
    let amps = figure.amps.filter(|_| !figure.is_amps);
    parts.extend(amps.map(|amps| {
        let current = f.with_unit(amps, "A");
        f.say(m::LogDetailAmps { current })
    }));
    let mut totals = Vec::new();
    totals.extend(figure.ah.map(|ah| with_sign(f.fixed(ah, 1), "Ah")));
    totals.extend(figure.wh.map(|wh| with_sign(f.fixed(wh, 0), "Wh")));
    if !totals.is_empty() {
        let totals = f.all_of(&totals);
        parts.push(f.say(m::LogDetailTotals { totals }));
    }
    let parts = parts.join("; ");
    f.say(m::LogDetail { parts })
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
pub fn leave_out(f: Formatter, at: usize) -> String {
    f.say(m::LogLeaveOutWhich { number: place(at) })
}

/// What a button does that splits a stretch in two.
#[must_use]
pub fn split_in_two(f: Formatter, at: usize) -> String {
    f.say(m::LogSplitWhich { number: place(at) })
}

/// What a button does that makes a stretch a mode's draw.
#[must_use]
pub fn make_mode(f: Formatter, at: usize, mode: &str) -> String {
    f.say(m::LogMakeMode {
        number: place(at),
        mode,
    })
}

/// The same of a note.
#[must_use]
pub fn make_noted(f: Formatter, mode: &str) -> String {
    f.say(m::LogMakeNoted { mode })
}

/// Which edge of which stretch.
#[must_use]
pub fn edge_label(f: Formatter, at: usize, is_end: bool) -> String {
    let number = place(at);
    if is_end {
        f.say(m::LogEdgeEnd { number })
    } else {
        f.say(m::LogEdgeStart { number })
    }
}

/// A moment of the log, from its start.
#[must_use]
pub fn moment_of(f: Formatter, hours: f64) -> String {
    let duration = f.duration_fine(hours);
    f.say(m::LogMoment { duration })
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
pub fn offset_of(text: &str) -> Option<f64> {
    let range = range::OFFSET_A;
    if text.trim().is_empty() {
        return Some(0.0);
    }
    let entry = crate::plan::entry::read(text, range.unit, Show::METRIC);
    entry.ok().map(|e| e.value).filter(|a| range.accepts(*a))
}

/// What a field of a note is called.
#[must_use]
pub fn note_label(f: Formatter, field: NoteField) -> &'static str {
    match field {
        NoteField::StartV => f.say(m::LogNoteStartVolts),
        NoteField::EndV => f.say(m::LogNoteEndVolts),
        NoteField::StartA => f.say(m::LogNoteStartAmps),
        NoteField::EndA => f.say(m::LogNoteEndAmps),
        NoteField::AverageW => f.say(m::LogNoteAverage),
        NoteField::Minutes => f.say(m::LogNoteMinutes),
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
    f.say(m::LogNoteBad {
        field: note_label(f, field),
        accepted: f.accepted(field.range()),
    })
}

/// What a note makes.
#[must_use]
pub fn noted_sentence(f: Formatter, figures: &NoteFigures) -> String {
    let mut all = vec![total_text(f, figures.watts, "W")];
    all.extend(figures.ah.map(|ah| total_text(f, ah, "Ah")));
    all.extend(figures.wh.map(|wh| total_text(f, wh, "Wh")));
    let figures = all.join("; ");
    f.say(m::LogNoted { figures })
}
