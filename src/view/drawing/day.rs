//! The three charts of the hot day, one above another on one clock: temperatures,
//! charge, and power in and out.

use super::{Drawing, Event, Text, Titles};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::day::{BandPoint, DayAnswer, DayEvent, DayPoint, Happening},
    plan::Plan,
    quantity::{celsius, in_fahrenheit},
    study::spread::Band,
    text::day as say,
    view::chart::{
        frame::{XKind, YRange},
        series::{Sample, Series, Spread},
        stack::stacked,
    },
};

/// One of the charts of the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayChart {
    Temperatures,
    Charge,
    Power,
}

/// Letters that the numbers beside every one of them, and the longest of their
/// labels, have room for: so their clocks stand one above another.
const LEAST_CHARS: (usize, usize) = (4, 9);
/// Up to this span every change of mode is marked; beyond, only what goes wrong.
const MODES_MARKED_H: f64 = 36.0;

impl DayChart {
    pub const ALL: [Self; 3] = [Self::Temperatures, Self::Charge, Self::Power];

    /// The words around it, in the plan's units and on its clock.
    #[must_use]
    pub fn titles(self, f: Formatter, plan: &Plan, span_h: f64) -> Titles {
        let calendar = say::Calendar::of(plan);
        let x_text = if span_h > 24.0 {
            Text::DayClock(calendar)
        } else {
            Text::Clock {
                start_min: calendar.start_min(),
            }
        };
        let us_units = f.units.us_units;
        let (title, y_label, y_text) = match self {
            Self::Temperatures if us_units => (
                f.say(m::DayTemperatures),
                f.say(m::DayAxisFahrenheit),
                Text::FahrenheitAsIs,
            ),
            Self::Temperatures => (
                f.say(m::DayTemperatures),
                f.say(m::DayAxisCelsius),
                Text::Celsius,
            ),
            Self::Charge => (f.say(m::DayCharge), f.say(m::DayAxisCharge), Text::Percent),
            Self::Power => (f.say(m::DayPower), f.say(m::DayAxisPower), Text::Watts),
        };
        Titles {
            title,
            x_label: f.say(m::AxisClock),
            y_label,
            x_text,
            y_text,
        }
    }

    /// The drawing of a day's answer, with its bands where they were drawn.
    #[must_use]
    pub fn draw(self, f: Formatter, plan: &Plan, day: &DayAnswer) -> Drawing {
        self.draw_from(f, plan, day, &[])
    }

    /// The same, and how it goes on from a reading in the night: points of a trace.
    #[must_use]
    pub fn draw_from(
        self,
        f: Formatter,
        plan: &Plan,
        day: &DayAnswer,
        onward: &[DayPoint],
    ) -> Drawing {
        let (mut names, mut series, y_range, takeaway) = match self {
            Self::Temperatures => temperatures(f, day),
            Self::Charge => charge(f, plan, day),
            Self::Power => power(f, day),
        };
        if !onward.is_empty() && self != Self::Power {
            names.push(f.say(m::DayFromReading).to_owned());
            series.push(self.reading_curve(f, day, onward));
        }
        Drawing {
            takeaway,
            series: labelled(series, &names),
            names,
            x_kind: XKind::Clock {
                start_min: f64::from(day.start_clock_min),
            },
            y_range,
            stacked: self == Self::Power,
            shades: dark(day),
            marks: self.marks(f, plan, day),
            is_low: true,
            calendar: (day.span_h > 24.0).then(|| say::Calendar::of(plan)),
            least_chars: LEAST_CHARS,
        }
    }

    /// Only where the day itself has points: the charts are read at the same stops.
    fn reading_curve(self, f: Formatter, day: &DayAnswer, onward: &[DayPoint]) -> Series {
        let shown = of_units(f);
        let mut ahead = onward.iter().peekable();
        let samples = day.trace.iter().filter_map(|point| {
            while ahead
                .next_if(|next| next.hours_h < point.hours_h - 1e-9)
                .is_some()
            {}
            let next = ahead
                .peek()
                .filter(|next| next.hours_h <= point.hours_h + 1e-9)?;
            let y = match self {
                Self::Charge => next.charge_percent,
                _ => shown(next.cabin_c),
            };
            Some(Sample {
                x: point.hours_h,
                y: Some(y),
            })
        });
        Series {
            samples: samples.collect(),
            ..Series::default()
        }
    }

    /// The events that belong to this chart.
    fn marks(self, f: Formatter, plan: &Plan, day: &DayAnswer) -> Vec<Event> {
        let is_here = |event: &&DayEvent| match event.what {
            Happening::ModeChanged { .. } => {
                self == Self::Temperatures && day.span_h <= MODES_MARKED_H
            }
            Happening::SetPointLost | Happening::SetPointRegained => self == Self::Temperatures,
            Happening::Empty { .. } | Happening::BackOn => self == Self::Charge,
            Happening::Full => self == Self::Charge && day.span_h <= MODES_MARKED_H,
            Happening::UnitStopped { .. }
            | Happening::ChargingRefused { .. }
            | Happening::ChargingResumed
            | Happening::FuelGone { .. } => self == Self::Power,
        };
        day.events
            .iter()
            .filter(is_here)
            .map(|event| Event {
                x: event.hours_h,
                text: say::event_label(f, plan, event),
            })
            .collect()
    }
}

type Curves = (Vec<String>, Vec<Series>, YRange, String);

fn temperatures(f: Formatter, day: &DayAnswer) -> Curves {
    let shown = of_units(f);
    let band = |of: fn(&BandPoint) -> Band| {
        spread(day, move |point| {
            let Band { low, high, .. } = of(point);
            (shown(low), shown(high))
        })
    };
    let cabin = Series {
        spread: band(|point| point.cabin_c),
        ..curve(day, |point| Some(shown(point.cabin_c)))
    };
    let outdoor = Series {
        spread: band(|point| point.outdoor_c),
        ..curve(day, |point| Some(shown(point.outdoor_c)))
    };
    // Only while a mode is on: at other times nobody asks for it.
    let set_point = curve(day, |point| {
        point.mode.is_some().then(|| shown(day.set_point_c))
    });
    let names = [
        f.say(m::DayCabin),
        f.say(m::DayOutdoors),
        f.say(m::DaySetPoint),
    ];
    (
        names.map(str::to_owned).to_vec(),
        vec![cabin, outdoor, set_point],
        YRange::Data,
        say::temperature_takeaway(f, day),
    )
}

/// A temperature in the units shown.
fn of_units(f: Formatter) -> impl Fn(f64) -> f64 + Copy + use<> {
    let us_units = f.units.us_units;
    move |value_c| {
        if us_units {
            in_fahrenheit(celsius(value_c))
        } else {
            value_c
        }
    }
}

fn charge(f: Formatter, plan: &Plan, day: &DayAnswer) -> Curves {
    let series = Series {
        spread: spread(day, |point| {
            (point.charge_percent.low, point.charge_percent.high)
        }),
        ..curve(day, |point| Some(point.charge_percent))
    };
    (
        vec![f.say(m::DayChargeShort).to_owned()],
        vec![series],
        YRange::Fixed(0.0, 100.0),
        say::charge_takeaway(f, plan, day),
    )
}

/// What comes in stands above the line, what goes out hangs below it.
fn power(f: Formatter, day: &DayAnswer) -> Curves {
    let any = |of: fn(&DayPoint) -> f64| day.trace.iter().any(|point| of(point) != 0.0);
    let layer = |is_there: bool, of: fn(&DayPoint) -> f64| {
        if is_there {
            curve(day, |point| Some(of(point)))
        } else {
            Series::default()
        }
    };
    let layers = [
        layer(true, |point| -point.loads_w),
        layer(any(|point| point.solar_w), |point| point.solar_w),
        layer(any(|point| point.charger_w), |point| point.charger_w),
        layer(true, |point| -point.unit_w),
    ];
    let names = [
        f.say(m::DayLoadsOut),
        f.say(m::DaySunIn),
        f.say(m::DayChargerIn),
        f.say(m::DayUnitOut),
    ];
    (
        names.map(str::to_owned).to_vec(),
        stacked(&layers),
        YRange::WithZero,
        say::power_takeaway(f, day),
    )
}

fn curve(day: &DayAnswer, of: impl Fn(&DayPoint) -> Option<f64>) -> Series {
    let samples = day.trace.iter().map(|point| Sample {
        x: point.hours_h,
        y: of(point),
    });
    Series {
        samples: samples.collect(),
        ..Series::default()
    }
}

fn spread(day: &DayAnswer, of: impl Fn(&BandPoint) -> (f64, f64)) -> Vec<Spread> {
    let points = day.bands.iter().map(|point| Spread {
        x: point.hours_h,
        low_high: Some(of(point)),
    });
    points.collect()
}

/// Series with room for their names; what has no samples has no label.
fn labelled(series: Vec<Series>, names: &[String]) -> Vec<Series> {
    series
        .into_iter()
        .zip(names)
        .map(|(series, name)| Series {
            label_chars: if series.samples.is_empty() {
                0
            } else {
                name.chars().count()
            },
            ..series
        })
        .collect()
}

/// The stretches between sunset and sunrise.
fn dark(day: &DayAnswer) -> Vec<(f64, f64)> {
    let mut from_h = 0.0;
    let mut dark = Vec::new();
    for sun in &day.sun {
        if sun.rise_h > from_h {
            dark.push((from_h, sun.rise_h));
        }
        from_h = sun.set_h;
    }
    if from_h < day.span_h {
        dark.push((from_h, day.span_h));
    }
    dark
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        answer::day::{SunUp, day, day_with_odds},
        view::drawing::lay_out,
    };

    fn one_day() -> Plan {
        let mut plan = Plan::demo();
        plan.day.days_count = Some(1);
        plan.day.samples_count = Some(20);
        plan
    }

    #[test]
    fn the_three_share_their_clock() {
        let plan = one_day();
        let day = day_with_odds(&plan).unwrap();
        for width in [358.0, 720.0] {
            let plots = DayChart::ALL
                .map(|chart| lay_out(&chart.draw(Formatter::ENGLISH, &plan, &day), width).plot);
            assert!(
                plots
                    .iter()
                    .all(|plot| (plot.left, plot.right) == (plots[0].left, plots[0].right))
            );
        }
    }

    #[test]
    fn bands_surround_cabin_outdoors_and_charge() {
        let plan = one_day();
        let day = day_with_odds(&plan).unwrap();
        let drawing = DayChart::Temperatures.draw(Formatter::ENGLISH, &plan, &day);
        assert!(!drawing.series[0].spread.is_empty() && !drawing.series[1].spread.is_empty());
        assert!(
            !DayChart::Charge
                .draw(Formatter::ENGLISH, &plan, &day)
                .series[0]
                .spread
                .is_empty()
        );
    }

    #[test]
    fn the_set_point_is_there_while_a_mode_is_on() {
        let plan = one_day();
        let day = day(&plan).unwrap();
        let drawing = DayChart::Temperatures.draw(Formatter::ENGLISH, &plan, &day);
        let at = |hours: f64| {
            let samples = &drawing.series[2].samples;
            samples.iter().find(|s| s.x >= hours).unwrap().y
        };
        assert_eq!((at(5.0), at(15.0)), (Some(25.0), None));
    }

    #[test]
    fn what_goes_out_hangs_below() {
        let plan = one_day();
        let day = day(&plan).unwrap();
        let drawing = DayChart::Power.draw(Formatter::ENGLISH, &plan, &day);
        let lowest = |at: usize| {
            let ys = drawing.series[at].samples.iter().filter_map(|s| s.y);
            ys.fold(0.0, f64::min)
        };
        assert_eq!(lowest(1), 0.0);
        // Loads of 38 W and half a watt of the bank's own, and the unit on top.
        assert_eq!(lowest(0), -38.5);
        assert!(lowest(3) < -100.0);
        // No charger in the plan: no layer and no label for it.
        assert!(drawing.series[2].samples.is_empty() && drawing.series[2].label_chars == 0);
    }

    #[test]
    fn dark_is_where_the_sun_is_not() {
        let mut day = day(&one_day()).unwrap();
        day.sun = vec![SunUp {
            rise_h: 8.0,
            set_h: 22.5,
        }];
        assert_eq!(dark(&day), [(0.0, 8.0), (22.5, 24.0)]);
        day.sun.clear();
        assert_eq!(dark(&day), [(0.0, 24.0)]);
    }

    #[test]
    fn fahrenheit_is_on_the_axis_too() {
        let mut plan = one_day();
        plan.show.us_units = true;
        let day = day(&plan).unwrap();
        let drawing = DayChart::Temperatures.draw(
            Formatter::new(Formatter::ENGLISH.locale, plan.show),
            &plan,
            &day,
        );
        // 36 degrees Celsius are 96.8 Fahrenheit.
        let ys = drawing.series[1].samples.iter().filter_map(|s| s.y);
        let high = ys.fold(0.0, f64::max);
        assert!((high - 96.8).abs() < 0.1, "{high}");
    }
}
