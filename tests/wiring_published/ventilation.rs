use super::near;
use till_morning::physics::wiring::{Gassing, ventilation};
use till_morning::quantity::{amp_hours, hours, in_meters, in_square_millimeters, square_meters};

/// EN 50272-3 / IEC 62485-3: Q = 0.05 n Igas C/100 m3/h, A = 28 Q cm2. Six
/// cells, 200 Ah: vented on a held voltage 1.2 m3/h and 33.6 cm2; sealed 0.6
/// and 16.8. With a final current 6 and 1.5 A per 100 Ah: 3.6 and 0.9 m3/h.
#[test]
fn six_cells_of_200_ah() {
    let rows = [
        (Gassing::VentedHeldVoltage, 1.2, 33.6),
        (Gassing::SealedHeldVoltage, 0.6, 16.8),
        (Gassing::VentedFinalCurrent, 3.6, 100.8),
        (Gassing::SealedFinalCurrent, 0.9, 25.2),
    ];
    for (gassing, air_m3_h, opening_cm2) in rows {
        let needed = ventilation(6, amp_hours(200.0), gassing).unwrap();
        near(
            in_meters(needed.air * hours(1.0) / square_meters(1.0)),
            air_m3_h,
            1e-12,
        );
        near(
            in_square_millimeters(needed.opening) / 100.0,
            opening_cm2,
            1e-9,
        );
    }
}

/// Why the constant is 0.05: v q s n I C, with dilution v = 24, q = 0.42 litre
/// of hydrogen per Ah, safety s = 5 (EN 50272-3): 0.0504.
#[test]
fn the_constant_is_its_factors_rounded() {
    let needed = ventilation(1, amp_hours(100.0), Gassing::SealedHeldVoltage).unwrap();
    let air_m3_h = in_meters(needed.air * hours(1.0) / square_meters(1.0));
    near(air_m3_h, 24.0 * 0.42e-3 * 5.0, 5e-4);
}
