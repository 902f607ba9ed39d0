//! Heat into a cabin as the day takes it up: sun on the roof, people asleep.

use super::{
    days::{exact, flat_bank, inputs, load_alone},
    near, near_share,
};
use till_morning::{
    answer::day::day,
    physics::cabin::{Drive, gains},
    plan::{Figure, Plan},
    quantity::{celsius, in_watts},
};

fn still() -> Plan {
    let mut plan = load_alone(flat_bank(12.0, 1000.0), Figure::exact(1.0));
    let cabin = &mut plan.cabin;
    (cabin.floor_m2, cabin.walls_m2, cabin.roof_m2) = (exact(0.0), exact(0.0), exact(0.0));
    (cabin.wall_glass_m2, cabin.roof_glass_m2) = (exact(0.0), exact(0.0));
    cabin.shade_percent = exact(0.0);
    cabin.gains_w = exact(0.0);
    (cabin.people_count, cabin.animals_count) = (Some(0), Some(0));
    (cabin.air_changes_per_h, cabin.aired_changes_per_h) = (exact(0.0), exact(0.0));
    plan
}

/// ASHRAE Handbook of Fundamentals, ch. 18, sol-air temperature, I-P: 95 °F and
/// 300 Btu/(h ft²) on a dark roof, for which it has 0.30 (h ft² °F)/Btu, are
/// 95 + 0.30 x 300 - 20/3.0 = 178.3 °F (it rounds the sky's 20/3.0 to 7), so that a
/// roof lets in U A (178.3 - 95) °F where it is 95 °F inside. The film of 3.0
/// Btu/(h ft² °F) is in both terms.
#[test]
fn sun_on_a_roof_comes_in_as_by_the_sol_air_temperature() {
    let mut plan = still();
    let cabin = &mut plan.cabin;
    cabin.roof_m2 = exact(10.0);
    cabin.shell_w_m2_k = exact(1.0);
    // 0.30 times 3.0.
    cabin.absorptance_percent = exact(90.0);
    // 1 Btu/(h ft²) is 3.154591 W/m²; all of it from the whole sky, so that the
    // hour of the day is of no account.
    let sun_w_m2 = 300.0 * 3.154_591;
    let imported = &mut plan.day.imported;
    imported.outdoor_c = vec![35.0; 48];
    (imported.global_w_m2, imported.diffuse_w_m2) = (vec![sun_w_m2; 48], vec![sun_w_m2; 48]);
    imported.direct_w_m2 = vec![0.0; 48];
    imported.dew_point_c = vec![0.0; 48];
    let inputs = inputs(&plan);
    let drive = Drive {
        outdoor_c: 35.0,
        sun_shell_w: inputs.air[6 * 12].sun_shell_w,
        ..Drive::default()
    };
    let load_w = in_watts(inputs.stores.steady_load(&drive, celsius(35.0)).unwrap());
    let warmer_k = (0.30 * 300.0 - 20.0 / 3.0) / 1.8;
    near_share(load_w, 1.0 * 10.0 * warmer_k, 2e-3);
}

/// ASHRAE Standard 55, table 5.2.1.2: sleeping 0.7 met, seated and quiet 1.0 met
/// (from memory), and the Handbook of Fundamentals (2013), ch. 18, table 1: seated at
/// a matinee, nothing done, 65 W sensible and 30 latent. So a sleeper gives off
/// 66.5 W, two of them 45.5 sensible each in air of 24 °C, and who sits awake (very
/// light work) 115 W.
#[test]
fn a_sleeper_gives_off_less_than_one_who_sits() {
    let mut plan = still();
    plan.cabin.people_count = Some(2);
    let inputs = inputs(&plan);
    let at_24 = |aboard: &[_]| {
        let of = gains(aboard, celsius(24.0)).unwrap();
        (in_watts(of.sensible), in_watts(of.latent))
    };
    let (sensible_w, latent_w) = at_24(&inputs.asleep);
    near(sensible_w, 2.0 * 0.7 * 65.0, 1e-9);
    near(latent_w, 2.0 * 0.7 * 30.0, 1e-9);
    let (sensible_w, latent_w) = at_24(&inputs.awake);
    near(sensible_w + latent_w, 2.0 * 115.0, 1e-9);
    // By area: 0.7 met of 58.2 W/m² on 1.8 m² of skin, an adult's (ASHRAE 55, from
    // memory), are 73 W; the table's mean person is a tenth smaller.
    near_share(0.7 * 95.0, 0.7 * 58.2 * 1.8, 0.1);

    // The whole day in a cabin so cool that the sensible share stays the table's.
    plan.cabin.floor_m2 = exact(20.0);
    plan.cabin.start_c = exact(10.0);
    super::days::dark_hours(&mut plan, 10.0);
    let people_wh = day(&plan).unwrap().heat.people_wh;
    let (awake_wh, asleep_wh) = (24.0 * 140.0, 24.0 * 91.0);
    assert!(asleep_wh < people_wh && people_wh < awake_wh, "{people_wh}");
    // Hours asleep out of that: eight, to what nights are in the plan.
    let asleep_h = (awake_wh - people_wh) / (140.0 - 91.0);
    assert!((6.0..=10.0).contains(&asleep_h), "{asleep_h}");
}
