//! What became of a weather file.

use crate::text::Formatter;
use crate::{
    answer::day::import::{Fault, Field, Format, Refusal, Taken},
    plan::Plan,
    text::findings::sun_parts_sentence,
};

/// A quantity of a weather file.
fn file_field(_f: Formatter, field: Field) -> &'static str {
    match field {
        Field::Latitude => "latitude",
        Field::Longitude => "longitude",
        Field::Altitude => "altitude",
        Field::UtcOffset => "clock against UTC",
        Field::Date => "date",
        Field::Hour => "hour",
        Field::Temperature => "temperature",
        Field::DewPoint => "dew point",
        Field::Wind => "wind",
        Field::Global => "irradiance on level ground",
        Field::Beam => "irradiance facing the sun",
        Field::Diffuse => "irradiance from the sky",
    }
}

/// Why a weather file is not taken, by line and column.
#[must_use]
pub fn weather_fault(f: Formatter, refusal: &Refusal) -> String {
    let error = match refusal {
        Refusal::TooShort { hours } => {
            return format!(
                "The file has {hours} hours, and a whole day of 24 is needed. Nothing was changed."
            );
        }
        Refusal::File(error) => error,
    };
    let place = match (error.line, error.column) {
        (Some(line), Some(column)) => format!("Line {line}, column {column}: "),
        (Some(line), None) => format!("Line {line}: "),
        _ => String::new(),
    };
    let fault = match error.fault {
        Fault::TooLarge => "the file is larger than the 4 MB that are read".into(),
        Fault::TooManyColumns => "the line has more columns than any weather table".into(),
        Fault::TooManyHours => "the file has more hours than a year".into(),
        Fault::UnknownFormat => "this is no EPW, TMY2 or TMY3 file, and no table with the headings hour, temperature and irradiance".into(),
        Fault::NoHours => "the file has no hours".into(),
        Fault::Missing(field) => format!("{} is missing", file_field(f, field)),
        Fault::NotANumber(field) => format!("{} is not a number", file_field(f, field)),
        Fault::OutOfRange(field) => {
            let (least, most) = field.range();
            format!(
                "{} is out of range: from {} to {} is read",
                file_field(f, field),
                f.fixed(least, 0),
                f.fixed(most, 0)
            )
        }
        Fault::NoSuchDate => "there is no such date".into(),
        Fault::NotTheNextHour => "this is not the hour after the one before".into(),
        Fault::LongGap(field) => format!(
            "more than three hours of {} are missing from here on",
            file_field(f, field)
        ),
    };
    format!("{place}{fault}. Nothing was changed.")
}

/// What was taken of a weather file.
#[must_use]
pub fn weather_taken(f: Formatter, _plan: &Plan, taken: &Taken) -> String {
    let format = match taken.format {
        Format::Tmy2 => "TMY2",
        Format::Tmy3 => "TMY3",
        Format::Epw => "EPW",
        Format::Plain => "A table",
    };
    let from = match taken.date {
        Some((_, month, day)) => format!(" from {day} {} on", month_name(f, month)),
        None => String::new(),
    };
    let days = if taken.days == 1 {
        "one day".into()
    } else {
        format!("{} days", taken.days)
    };
    let mut text = format!(
        "{format}, {} hours: {days}{from} are taken, {} to {}.",
        f.fixed(taken.file_hours as f64, 0),
        f.temperature(taken.low_c),
        f.temperature(taken.high_c)
    );
    if taken.is_other_date {
        text += " The date above is not in the file, so these are its hottest.";
    }
    if taken.has_place {
        text += " Its place and clock are taken too.";
    }
    text += " ";
    text += sun_parts_sentence(f, taken.sun_parts);
    if taken.filled > 0 {
        text += &format!(
            " {} missing values are filled by straight lines.",
            f.fixed(taken.filled as f64, 0)
        );
    }
    text + " Undo brings back what was there."
}

fn month_name(_f: Formatter, month: u8) -> &'static str {
    match month {
        1 => "January",
        2 => "February",
        3 => "March",
        4 => "April",
        5 => "May",
        6 => "June",
        7 => "July",
        8 => "August",
        9 => "September",
        10 => "October",
        11 => "November",
        _ => "December",
    }
}
