//! A real two-stage unit away from its rating, settled.
//!
//! Measured in environmental chambers at NIST (the files say more). The engine's
//! two-stage curves come from the runs of one place, Atlanta; these are those of
//! another, Tucson. Rated from its own runs at 31 to 33 °C outdoors (28 to 30 for the
//! high stage, which has one run there), then foretold elsewhere: medians over 2 K.

use super::vectors::{Row, near, near_share, number, rows};
use till_morning::{
    physics::air::{Coil, CurveSet, Humidity, MoistAir, OwnMap, SettledRun, Unit},
    quantity::{
        celsius, in_celsius, in_kilograms_per_second, in_watts, kilograms_per_second, pascals,
        watts,
    },
};

const FILE: &str = "nist_unit_settled_tucson.csv";
/// Standard air of the source, kg/m³, and a cubic foot a minute, m³/s.
const KG_S_PER_SCFM: f64 = 1.2014 * 4.719_474e-4;

fn of_stage(stage: &str) -> Vec<Row> {
    let mut all = rows(FILE);
    all.retain(|row| row["stage"] == stage);
    all
}

fn median(mut numbers: Vec<f64>) -> f64 {
    numbers.sort_unstable_by(f64::total_cmp);
    numbers[numbers.len() / 2]
}

fn median_of(rows: &[&Row], key: &str) -> f64 {
    median(rows.iter().map(|row| number(row, key)).collect())
}

/// The runs with outdoor air from one temperature up to another.
fn between(rows: &[Row], from_c: f64, to_c: f64) -> Vec<&Row> {
    let inside = |row: &&Row| (from_c..to_c).contains(&number(row, "t_out_c"));
    rows.iter().filter(inside).collect()
}

/// Bins of 2 K that have three runs or more, by their lower edge.
fn bins(rows: &[Row]) -> Vec<(f64, Vec<&Row>)> {
    (8..20)
        .map(|at| f64::from(at) * 2.0)
        .map(|from_c| (from_c, between(rows, from_c, from_c + 2.0)))
        .filter(|(_, runs)| runs.len() >= 3)
        .collect()
}

fn rated(curves: CurveSet, runs: &[&Row]) -> Unit {
    Unit {
        curves,
        capacity: watts(median_of(runs, "q_total_w")),
        power: watts(median_of(runs, "p_w")),
        rated_wet_bulb: celsius(median_of(runs, "twb_room_c")),
        rated_outdoor: celsius(median_of(runs, "t_out_c")),
    }
}

/// Medians foretold in a bin: watts drawn and of cooling.
fn foretold(unit: &Unit, runs: &[&Row]) -> (f64, f64) {
    let at = |row: &&Row| {
        let wet_bulb = celsius(number(row, "twb_room_c"));
        let there = unit.at(wet_bulb, celsius(number(row, "t_out_c"))).unwrap();
        (in_watts(there.power), in_watts(there.capacity))
    };
    let both: Vec<_> = runs.iter().map(at).collect();
    let of = |which: fn(&(f64, f64)) -> f64| median(both.iter().map(which).collect());
    (of(|it| it.0), of(|it| it.1))
}

/// Draw and cooling of the low stage within 6 % from 24 °C up and 8 % below: by the
/// two-stage curves 2.5 and 4 %. The window unit's ask 12 % too much at 18 to 20 °C and
/// 6 % at 24, as a compressor has a least lift.
///
/// The low stage has two levels of draw in the source, a fifth apart, with the same
/// cooling within 3 %, the same flow and the same air: whole runs are at the one or the
/// other, on the same day, whatever stage came before and however long they last. No
/// column tells which: 134 of 595 runs are at the lower. It cannot be explained from
/// what was published; medians follow the higher.
#[test]
fn low_stage_away_from_its_rating() {
    let runs = of_stage("1");
    let unit = rated(CurveSet::TwoStageLow, &between(&runs, 31.0, 33.0));
    let by_window = Unit {
        curves: CurveSet::WindowUnit,
        ..unit
    };
    let bins = bins(&runs);
    assert_eq!(bins.len(), 10);
    for (from_c, runs) in bins {
        let (power_w, capacity_w) = foretold(&unit, &runs);
        let (window_w, _) = foretold(&by_window, &runs);
        let (measured_w, cooled_w) = (median_of(&runs, "p_w"), median_of(&runs, "q_total_w"));
        println!(
            "{from_c} °C: {power_w:.0} W, measured {measured_w:.0} (window unit {window_w:.0}); \
             cooling {capacity_w:.0} W, measured {cooled_w:.0}"
        );
        let share = if from_c >= 24.0 { 0.06 } else { 0.08 };
        near_share(power_w, measured_w, share);
        near_share(capacity_w, cooled_w, share);
    }
}

/// The high stage: 6 % but for the cooling of the three runs below 24 °C, 13 % more than
/// measured there. Their u(q) is 6 to 12 %, and one of them stands 14 % below the other
/// two.
#[test]
fn high_stage_away_from_its_rating() {
    let runs = of_stage("2");
    let unit = rated(CurveSet::TwoStageHigh, &between(&runs, 28.0, 30.0));
    for (from_c, runs) in bins(&runs) {
        let (power_w, capacity_w) = foretold(&unit, &runs);
        let (measured_w, cooled_w) = (median_of(&runs, "p_w"), median_of(&runs, "q_total_w"));
        println!(
            "{from_c} °C: {power_w:.0} W, measured {measured_w:.0}; \
             cooling {capacity_w:.0} W, measured {cooled_w:.0}"
        );
        near_share(power_w, measured_w, 0.06);
        if from_c >= 24.0 {
            near_share(capacity_w, cooled_w, 0.06);
        }
    }
}

/// Three medians as the owner's own table over the window unit's curves: the other bins
/// come out within 6 %.
#[test]
fn an_own_table_of_three_rows() {
    let runs = of_stage("1");
    let row = |from_c: f64| {
        let runs = between(&runs, from_c, from_c + 2.0);
        SettledRun {
            outdoor_c: median_of(&runs, "t_out_c"),
            wet_bulb_c: median_of(&runs, "twb_room_c"),
            draw_w: median_of(&runs, "p_w"),
            cooling_w: median_of(&runs, "q_total_w"),
        }
    };
    let table = [row(22.0), row(28.0), row(36.0)];
    let map = OwnMap::fitted(CurveSet::WindowUnit, &table).unwrap();
    for (from_c, runs) in bins(&runs) {
        let (out_c, wet_c) = (median_of(&runs, "t_out_c"), median_of(&runs, "twb_room_c"));
        let (draw_w, cooling_w) = map.at(out_c, wet_c).unwrap();
        println!("{from_c} °C: {draw_w:.0} W, cooling {cooling_w:.0} W");
        near_share(draw_w, median_of(&runs, "p_w"), 0.06);
        near_share(cooling_w, median_of(&runs, "q_total_w"), 0.06);
    }
}

/// Sensible share within 0.05 and supply dew point within 1 K, from a coil that shows
/// the rated share on the rated air, and the measured total and flow elsewhere.
#[test]
fn moisture_of_the_low_stage() {
    let runs = of_stage("1");
    let entering = |row: &Row| {
        MoistAir::new(
            pascals(1000.0 * number(row, "p_kpa")),
            celsius(number(row, "t_room_c")),
            Humidity::WetBulb(celsius(number(row, "twb_room_c"))),
        )
        .unwrap()
    };
    let flow_kg_s = |row: &Row| number(row, "flow_scfm") * KG_S_PER_SCFM;
    let at_rating = between(&runs, 31.0, 33.0);
    let bypass = median(
        at_rating
            .iter()
            .filter_map(|row| {
                let total = watts(number(row, "q_total_w"));
                let share = number(row, "q_sensible_w") / number(row, "q_total_w");
                let flow = kilograms_per_second(flow_kg_s(row));
                Coil::from_rating(&entering(row), total, share, flow).ok()
            })
            .map(|coil| coil.bypass())
            .collect(),
    );
    for (from_c, runs) in bins(&runs) {
        let worked: Vec<_> = runs
            .iter()
            .map(|row| {
                let air = entering(row);
                let coil = Coil::new(kilograms_per_second(flow_kg_s(row)), bypass).unwrap();
                let work = coil.work(&air, watts(number(row, "q_total_w"))).unwrap();
                let (sensible, latent) = (in_watts(work.sensible), in_watts(work.latent));
                let shed = in_kilograms_per_second(work.condensate) / flow_kg_s(row);
                let left = MoistAir::new(
                    air.pressure(),
                    celsius(20.0),
                    Humidity::Ratio(air.humidity_ratio() - shed),
                );
                let dew_point_c = in_celsius(left.unwrap().dew_point().unwrap());
                (sensible / (sensible + latent), dew_point_c)
            })
            .collect();
        let share = median(worked.iter().map(|it| it.0).collect());
        let dew_c = median(worked.iter().map(|it| it.1).collect());
        let shares = runs
            .iter()
            .map(|row| number(row, "q_sensible_w") / number(row, "q_total_w"));
        let (measured, measured_c) = (median(shares.collect()), median_of(&runs, "td_supply_c"));
        println!(
            "{from_c} °C: sensible {share:.3}, measured {measured:.3}; \
             dew point {dew_c:.2} °C, measured {measured_c:.2}"
        );
        near(share, measured, 0.05);
        near(dew_c, measured_c, 1.0);
    }
}

/// A day of 28 August in Tucson by the minute, the stage given: electric energy within
/// 3 % (found 1.9 % too much). Each stage is rated from the day's own settled minutes, the low
/// one at 31 to 33 °C outdoors, the high one at any; off-time as measured.
#[test]
fn energy_of_a_day_given_its_stages() {
    let day = rows("nist_unit_tucson_28aug_1min.csv");
    assert_eq!(day.len(), 1440);
    let drawn_w = |row: &Row| number(row, "p_indoor_w") + number(row, "p_outdoor_w");
    let wet_bulb_c = |row: &Row| {
        let room = MoistAir::new(
            pascals(1000.0 * number(row, "p_kpa")),
            celsius(number(row, "t_room_c")),
            Humidity::DewPoint(celsius(number(row, "td_room_c"))),
        );
        in_celsius(room.unwrap().wet_bulb())
    };
    // Settled: the ninth minute of a run and later.
    let settled = |stage: &str, from_c: f64, to_c: f64| -> Vec<&Row> {
        let is_stage = |at: usize| day[at]["stage"] == stage;
        let is_settled = |(at, row): &(usize, &Row)| {
            let is_near = (from_c..to_c).contains(&number(row, "t_out_c"));
            is_near && (at - 8..=*at).all(is_stage)
        };
        let minutes = day.iter().enumerate().skip(8).filter(is_settled);
        minutes.map(|(_, row)| row).collect()
    };
    let unit_of = |curves, runs: Vec<&Row>| Unit {
        curves,
        capacity: watts(1000.0),
        power: watts(median(runs.iter().map(|row| drawn_w(row)).collect())),
        rated_wet_bulb: celsius(median(runs.iter().map(|row| wet_bulb_c(row)).collect())),
        rated_outdoor: celsius(median_of(&runs, "t_out_c")),
    };
    let low = unit_of(CurveSet::TwoStageLow, settled("1", 31.0, 33.0));
    let high = unit_of(CurveSet::TwoStageHigh, settled("2", 0.0, 60.0));
    let off: Vec<f64> = day
        .iter()
        .filter(|row| row["stage"] == "0")
        .map(drawn_w)
        .collect();
    let off_w = off.iter().sum::<f64>() / off.len() as f64;
    let foretold_w = |row: &Row| {
        let unit = match &*row["stage"] {
            "1" => &low,
            "2" => &high,
            _ => return off_w,
        };
        let outdoor = celsius(number(row, "t_out_c"));
        in_watts(unit.at(celsius(wet_bulb_c(row)), outdoor).unwrap().power)
    };
    let wh = |of: &dyn Fn(&Row) -> f64| day.iter().map(of).sum::<f64>() / 60.0;
    let (found_wh, measured_wh) = (wh(&foretold_w), wh(&drawn_w));
    println!("{found_wh:.0} Wh, measured {measured_wh:.0}");
    near_share(found_wh, measured_wh, 0.03);
}
