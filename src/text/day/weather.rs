//! What became of a weather file.

use super::{moments::month_name, utc_offset};
use crate::text::{Formatter, m};
use crate::{
    answer::day::import::{Fault, Field, Format, Refusal, Taken},
    plan::{Path, Plan, day::DayField},
    text::findings::sun_parts_sentence,
};

/// A quantity of a weather file.
fn file_field(f: Formatter, field: Field) -> &'static str {
    match field {
        Field::Latitude => f.say(m::DayFileLatitude),
        Field::Longitude => f.say(m::DayFileLongitude),
        Field::Altitude => f.say(m::DayFileAltitude),
        Field::UtcOffset => f.say(m::DayFileUtcOffset),
        Field::Date => f.say(m::DayFileDate),
        Field::Hour => f.say(m::DayFileHour),
        Field::Temperature => f.say(m::DayFileTemperature),
        Field::DewPoint => f.say(m::DayFileDewPoint),
        Field::Wind => f.say(m::DayFileWind),
        Field::Global => f.say(m::DayFileGlobal),
        Field::Beam => f.say(m::DayFileBeam),
        Field::Diffuse => f.say(m::DayFileDiffuse),
    }
}

/// Why a weather file is not taken, by line and column.
#[must_use]
pub fn weather_fault(f: Formatter, refusal: &Refusal) -> String {
    let error = match refusal {
        Refusal::TooShort { hours } => {
            return f.say(m::DayFileTooShort { hours: *hours });
        }
        Refusal::File(error) => error,
    };
    let place = |number: usize| f.number(number as f64);
    let fault = fault(f, error.fault);
    match (error.line, error.column) {
        (Some(line), Some(column)) => f.say(m::DayFileFaultAtColumn {
            line: place(line),
            column: place(column),
            fault,
        }),
        (Some(line), None) => f.say(m::DayFileFaultAtLine {
            line: place(line),
            fault,
        }),
        _ => f.say(m::DayFileFault { fault }),
    }
}

fn fault(f: Formatter, fault: Fault) -> String {
    let name = |field| file_field(f, field);
    let fixed = match fault {
        Fault::TooLarge => f.say(m::DayFileTooLarge),
        Fault::TooManyColumns => f.say(m::DayFileTooManyColumns),
        Fault::TooManyHours => f.say(m::DayFileTooManyHours),
        Fault::UnknownFormat => f.say(m::DayFileUnknownFormat),
        Fault::NoHours => f.say(m::DayFileNoHours),
        Fault::NoSuchDate => f.say(m::DayFileNoSuchDate),
        Fault::NotTheNextHour => f.say(m::DayFileNotNextHour),
        Fault::Missing(field) => {
            return f.say(m::DayFileMissing { field: name(field) });
        }
        Fault::NotANumber(field) => {
            return f.say(m::DayFileNotANumber { field: name(field) });
        }
        Fault::LongGap(field) => {
            return f.say(m::DayFileLongGap { field: name(field) });
        }
        Fault::OutOfRange(field) => {
            let (least, most) = field.range();
            return f.say(m::DayFileOutOfRange {
                field: name(field),
                least: f.fixed(least, 0),
                most: f.fixed(most, 0),
            });
        }
    };
    fixed.into()
}

/// What was taken of a weather file, into this plan.
#[must_use]
pub fn weather_taken(f: Formatter, plan: &Plan, taken: &Taken) -> String {
    let format = match taken.format {
        Format::Tmy2 => "TMY2",
        Format::Tmy3 => "TMY3",
        Format::Epw => "EPW",
        Format::Plain => f.say(m::DayFileTable),
    };
    let file = f.say(m::DayFileRead {
        format,
        hours: taken.file_hours,
    });
    let (low, high) = (f.temperature(taken.low_c), f.temperature(taken.high_c));
    let taken_days = match taken.date {
        Some((_, month, day)) => f.say(m::DayFileTakenFrom {
            days: taken.days,
            day: f.number(f64::from(day)),
            month: month_name(f, month),
            low,
            high,
        }),
        None => f.say(m::DayFileTaken {
            days: taken.days,
            low,
            high,
        }),
    };
    let mut said = vec![file, taken_days];
    if taken.is_other_date {
        said.push(f.say(m::DayFileOtherDate).into());
    }
    if taken.has_place {
        let minutes = plan.number(Path::Day(DayField::UtcOffsetMin));
        said.push(f.say(m::DayFilePlace {
            utc: utc_offset(minutes.unwrap_or(0.0)),
        }));
    }
    said.push(sun_parts_sentence(f, taken.sun_parts).into());
    if taken.filled > 0 {
        said.push(f.say(m::DayFileFilled {
            count: taken.filled,
        }));
    }
    said.push(f.say(m::DayFileUndo).into());
    said.join(" ")
}
