//! What is worked out once for a plan, however often it is run.

use super::sky::{COARSE_STEPS_PER_HOUR, STEPS_PER_HOUR, SolarTable, Where};
use crate::{
    physics::weather::{
        date::{Date, Moment},
        site::Site,
        sun::events::{Daylight, Horizon, daylight},
    },
    plan::{Plan, day::DayField as D, path::Path},
};

/// Place, date and the sun over the days.
///
/// It hangs on nothing else of a plan, so that one scene serves every plan that differs in
/// other figures.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    pub(super) heavens: SolarTable,
    /// The plan's high when the scene was made; imported hours shift with it.
    pub(super) high_c: f64,
    site: Site,
    date: Date,
    utc_offset_h: f64,
    start_h: f64,
    /// Length of all its days, h: 24 to 168, in whole days.
    pub span_h: f64,
    /// Hours from the start to the wanted hour, 0 to the span.
    pub wanted_h: f64,
}

impl Scene {
    /// The scene of a plan; nothing where date or place are out of range.
    ///
    /// A day of the month that the month has not is taken as its last.
    /// As many days as the plan asks for, or as its wanted hours take, up to seven.
    #[must_use]
    pub fn new(plan: &Plan) -> Option<Self> {
        Self::at_pace(plan, STEPS_PER_HOUR)
    }

    /// The same in steps twice as long: for drawn days and searches.
    #[must_use]
    pub fn coarse(plan: &Plan) -> Option<Self> {
        Self::at_pace(plan, COARSE_STEPS_PER_HOUR)
    }

    /// The one maker: place, date and clock are taken from the plan here and nowhere else.
    fn at_pace(plan: &Plan, steps_per_hour: usize) -> Option<Self> {
        let number = |field| plan.number(Path::Day(field));
        let site = Site::new(
            number(D::LatitudeDeg)?,
            number(D::LongitudeDeg)?,
            number(D::AltitudeM)?,
        )
        .ok()?;
        let date = date(number(D::Year)?, number(D::Month)?, number(D::DayOfMonth)?)?;
        let utc_offset_h = number(D::UtcOffsetMin)? / 60.0;
        // As many as are asked for, and as the wanted hours take.
        let wanted_days = (plan.night.wanted_h / 24.0).ceil();
        let days = number(D::DaysCount)?
            .max(wanted_days)
            .clamp(1.0, 7.0)
            .round();
        let start_h = f64::from(plan.night.start_clock_min % (24 * 60)) / 60.0;
        let span_h = 24.0 * days;
        let imported = &plan.day.imported;
        let heavens = SolarTable::new(&Where {
            site,
            date,
            utc_offset_h,
            start_h,
            span_h,
            steps_per_hour,
            imported: (!imported.outdoor_c.is_empty()).then_some(imported),
        })?;
        Some(Self {
            heavens,
            high_c: number(D::HighC)?.max(number(D::LowC)?),
            site,
            date,
            utc_offset_h,
            start_h,
            span_h,
            wanted_h: plan.night.wanted_h.clamp(0.0, span_h),
        })
    }

    /// Of the air at the place, Pa, by its altitude.
    #[must_use]
    pub fn pressure_pa(&self) -> f64 {
        self.heavens.pressure_pa()
    }

    /// The day of the month taken: the month's last for a day that it has not.
    #[must_use]
    pub fn day_of_month(&self) -> u32 {
        u32::from(self.date.parts().2)
    }

    /// Sunrise and sunset of each day that the span touches, hours from the start.
    ///
    /// Cut to the span. A day on which the sun never sets counts from midnight to midnight of
    /// the sun; one on which it never rises has none.
    #[must_use]
    pub fn sun_up(&self) -> Vec<(f64, f64)> {
        let Ok(midnight) = Moment::from_local(self.date, 0.0, self.utc_offset_h) else {
            return Vec::new();
        };
        let mut spans = Vec::new();
        for day in 0..=(self.span_h / 24.0) as u32 + 1 {
            let Ok(noon) = midnight.plus_hours(24.0 * f64::from(day) + 12.0) else {
                continue;
            };
            let hours = |moment: Moment| moment.hours_since(midnight) - self.start_h;
            let (rise_h, set_h) = match daylight(&self.site, noon, Horizon::SunEdge) {
                Daylight::RisesAndSets { rise, set, .. } => (hours(rise), hours(set)),
                Daylight::UpAllDay { transit } => (hours(transit) - 12.0, hours(transit) + 12.0),
                Daylight::DownAllDay { .. } => continue,
            };
            if set_h > 0.0 && rise_h < self.span_h {
                spans.push((rise_h.max(0.0), set_h.min(self.span_h)));
            }
        }
        spans
    }
}

/// Of whole numbers in range, as the plan was checked; casts saturate.
fn date(year: f64, month: f64, day: f64) -> Option<Date> {
    Date::or_last_of_month(year as i32, month as u8, day as u8)
}
