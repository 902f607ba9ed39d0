//! Whether a file's irradiance fits the sun it is stamped with.
//!
//! Global is beam times the sine of the sun's height, plus diffuse. With the sun
//! of the wrong half-hour the sum fails by tens of watts, morning and afternoon
//! in opposite directions: the surest sign of a clock misread.

use till_morning::physics::weather::OutOfRange;
use till_morning::physics::weather::date::Date;
use till_morning::physics::weather::file::HourlyWeather;
use till_morning::physics::weather::site::Site;
use till_morning::physics::weather::sun::position;

/// Hours with the mid-hour sun lower than this are left out: the sun may have
/// risen or set within them.
const LOWEST_SUN_DEG: f64 = 10.0;

/// Slips tried by [`likeliest_slip_h`], hours, the likeliest first.
const SLIPS_H: [f64; 5] = [0.0, 0.5, -0.5, 1.0, -1.0];

/// How well the three parts fit, W/m2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Closure {
    /// Mean size of the misfit.
    pub mean_w_m2: f64,
    /// The largest.
    pub worst_w_m2: f64,
}

/// How well global fits beam and diffuse if the file's clock were put on by a
/// slip; `None` where the file lacks one of the three or holds no daylight.
///
/// - `first_date`, `utc_offset_h`: as in [`HourlyWeather::hour_start`]
/// - `slip_h`: 0 takes the file at its word
///
/// # Errors
/// Offset out of range.
pub fn closure(
    weather: &HourlyWeather,
    site: &Site,
    first_date: Date,
    utc_offset_h: f64,
    slip_h: f64,
) -> Result<Option<Closure>, OutOfRange> {
    let (mut sum, mut worst, mut count) = (0.0, 0.0_f64, 0_u32);
    for (index, hour) in weather.hours().iter().enumerate() {
        let parts = hour.irradiance;
        let (Some(dni_w_m2), Some(dhi_w_m2)) = (parts.dni_w_m2, parts.dhi_w_m2) else {
            return Ok(None);
        };
        let start = weather.hour_start(index, first_date, utc_offset_h)?;
        let elevation_deg = position(site, start.plus_hours(0.5 + slip_h)?).elevation_deg;
        if elevation_deg < LOWEST_SUN_DEG {
            continue;
        }
        let upright = elevation_deg.to_radians().sin();
        let misfit = (parts.ghi_w_m2 - dni_w_m2 * upright - dhi_w_m2).abs();
        sum += misfit;
        worst = worst.max(misfit);
        count += 1;
    }
    Ok((count > 0).then(|| Closure {
        mean_w_m2: sum / f64::from(count),
        worst_w_m2: worst,
    }))
}

/// The slip of the clock, of 0, half an hour and an hour either way, at which
/// the file fits best; `None` as in [`closure`].
///
/// # Errors
/// Offset out of range.
pub fn likeliest_slip_h(
    weather: &HourlyWeather,
    site: &Site,
    first_date: Date,
    utc_offset_h: f64,
) -> Result<Option<f64>, OutOfRange> {
    let mut best: Option<(f64, f64)> = None;
    for slip_h in SLIPS_H {
        let fit = closure(weather, site, first_date, utc_offset_h, slip_h)?;
        let misfit = fit.map(|it| it.mean_w_m2);
        if let Some(misfit) = misfit
            && best.is_none_or(|(_, least)| misfit < least)
        {
            best = Some((slip_h, misfit));
        }
    }
    Ok(best.map(|(slip_h, _)| slip_h))
}
