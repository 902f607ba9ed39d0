//! The log of the demonstration.

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
