//! The logs of the demonstration.

use crate::plan::entry::fixed;

/// An invented log of the demonstration's scenario, and it says so: ten minutes
/// at rest with a meter that shows a tenth of an ampere too much, then Plunge,
/// Hold and Hush until the battery's own electronics open; six minutes missing.
#[must_use]
pub fn invented() -> String {
    let mut text = String::from(
        "Invented for the demonstration: no such van, bank or cooler was measured\nelapsed min,bank V,draw A\n",
    );
    let (mut wh, mut noise) = (0.0_f64, 1_u32);
    for step in 0..2400_u32 {
        let minute = f64::from(step) * 0.5;
        noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let wobble = f64::from(noise >> 16) / 65_536.0 - 0.5;
        let watts = match minute {
            m if m < 10.0 => 0.0,
            m if m < 55.0 => 690.0,
            m if m < 415.0 => 430.0,
            _ => 265.0,
        } * (1.0 + 0.02 * wobble);
        let left = 1.0 - wh / 5290.0;
        let knee = 3.2 * (1.0 - left).powi(24);
        let resting_v = 26.1 + 0.5 * left - knee;
        let open = resting_v < 23.6;
        let volts = if open {
            25.4
        } else {
            resting_v - 0.0008 * watts
        };
        let draw = if open { 0.0 } else { watts / volts };
        wh += if open { 0.0 } else { watts / 120.0 };
        if !(600.0..606.0).contains(&minute) {
            let (volts, draw) = (fixed(volts, 2), fixed(draw + 0.1, 2));
            let minute = fixed(minute, 1);
            text.push_str(&format!("{minute},{volts},{draw}\n"));
        }
        if open && wh > 0.0 && noise % 16 == 0 {
            break;
        }
    }
    text
}

/// An invented night in the demonstration's van, and it says so: from 20:39 to 05:30,
/// volts, amps and two thermometers by the minute, the unit switched on after an hour.
/// Reckoned by a few lines of its own, and not by this program's cabin, unit and bank.
#[must_use]
pub fn invented_night() -> String {
    let mut text = String::from(
        "Invented for the demonstration: no such night was measured\nclock,bank V,draw A,cabin °C,outdoor °C\n",
    );
    let mut van = InventedVan {
        air_c: 30.5,
        shell_c: 31.5,
        on_min: 0,
        wh: 0.0,
        noise: 7,
    };
    for minute in 0..532_u32 {
        let outdoor_c = 22.5 + 8.5 * (-f64::from(minute) / 260.0).exp();
        let (volts, amps) = van.pass_a_minute(outdoor_c, minute >= 60);
        let clock = (20 * 60 + 39 + minute) % (24 * 60);
        let (hour, past) = (clock / 60, clock % 60);
        let cells = [
            fixed(volts + 0.02 * van.wobble(), 2),
            fixed(amps, 2),
            fixed(van.air_c + 0.3 * van.wobble(), 1),
            fixed(outdoor_c + 0.3 * van.wobble(), 1),
        ];
        text.push_str(&format!("{hour:02}:{past:02},{}\n", cells.join(",")));
    }
    text
}

/// A cabin of air and shell, a thermostat and a bank, a minute at a time.
struct InventedVan {
    air_c: f64,
    shell_c: f64,
    /// Minutes since the unit started; 0: it is off.
    on_min: u32,
    wh: f64,
    noise: u32,
}

impl InventedVan {
    /// From -0.5 to 0.5.
    fn wobble(&mut self) -> f64 {
        self.noise = self
            .noise
            .wrapping_mul(1_664_525)
            .wrapping_add(1_013_904_223);
        f64::from(self.noise >> 16) / 65_536.0 - 0.5
    }

    /// Volts and amps of the minute.
    fn pass_a_minute(&mut self, outdoor_c: f64, may_run: bool) -> (f64, f64) {
        let is_on = may_run && self.air_c > if self.on_min > 0 { 24.6 } else { 25.4 };
        self.on_min = if is_on { self.on_min + 1 } else { 0 };
        let warmer_k = outdoor_c - 33.0;
        let unit_w = if is_on {
            450.0 * (1.0 + 0.015 * warmer_k) * (1.0 + 0.02 * self.wobble())
        } else {
            0.0
        };
        // A unit cools less in the first minutes of a run.
        let settled = [0.0, 0.45, 0.8, 0.95];
        let settled = settled.get(self.on_min as usize).copied().unwrap_or(1.0);
        let cooling_w = 2.6 * unit_w * settled * (1.0 - 0.015 * warmer_k);
        let into_air_w =
            36.0 * (outdoor_c - self.air_c) + 190.0 * (self.shell_c - self.air_c) + 210.0;
        let into_shell_w = 62.0 * (outdoor_c - self.shell_c) + 190.0 * (self.air_c - self.shell_c);
        self.air_c += 60.0 * (into_air_w - cooling_w) / 130_000.0;
        self.shell_c += 60.0 * into_shell_w / 420_000.0;
        let watts = unit_w + 40.0;
        self.wh += watts / 60.0;
        let left = 1.0 - self.wh / 5290.0;
        let volts = 26.1 + 0.5 * left - 3.2 * (1.0 - left).powi(24) - 0.0008 * watts;
        (volts, watts / volts)
    }
}
