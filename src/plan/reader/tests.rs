//! What follows from a reader's own numbers.

use super::*;
use crate::{answer::night, physics::battery::Chemistry};

const AH: Path = Path::Bank(0, B::BatteryRatedAh);
const V: Path = Path::Bank(0, B::BatteryNominalV);

fn published() -> Plan {
    let mut plan = Plan::demo();
    plan.reader = Some(Reader::default());
    plan.published()
}

fn hours(plan: &Plan) -> Vec<f64> {
    let runs = night(plan).runs;
    runs.iter().map(|run| run.hours_h.likely).collect()
}

#[track_caller]
fn alike(a: &[f64], b: &[f64], within: f64) {
    assert_eq!(a.len(), b.len());
    for (a, b) in a.iter().zip(b) {
        assert!((a / b - 1.0).abs() < within, "{a} {b}");
    }
}

/// Ohm's law and the balance of charge know no batteries: n in parallel are one
/// of n times the charge and a share of the resistance.
#[test]
fn a_bank_of_batteries_is_one_battery_that_runs_as_long() {
    let mut plan = Plan::demo();
    for (volts, series, stated) in [(25.6, 1, false), (12.8, 2, false), (12.8, 2, true)] {
        let bank = &mut plan.banks[0];
        (bank.battery_nominal_v, bank.series_count) = (Some(volts), series);
        bank.battery_resistance_mohm = stated.then_some(Figure::label(4.0));
        bank.battery_current_limit_a = stated.then_some(Figure::label(60.0));
        let mut one = plan.clone();
        one.banks[0] = plan.banks[0].as_one_battery();
        assert_eq!(one.banks[0].battery_rated_ah.value, 210.0);
        assert_eq!(one.banks[0].battery_nominal_v, Some(25.6));
        alike(&hours(&plan), &hours(&one), 1e-9);
    }
}

#[test]
fn the_same_bank_leaves_the_authors_plan_as_it_is() {
    let author = published();
    let mut own = author.clone();
    own.set_number(AH, 100.0);
    own.follow(&author);
    own.set_number(AH, 210.0);
    own.follow(&author);
    assert_eq!(own, author);
}

/// A unit made for 12 V on a 12 V bank of as many Wh, its cable as much
/// thicker as the square of the current: the same shape of run.
#[test]
fn another_voltage_takes_its_cut_offs_along() {
    let author = published();
    let mut own = author.clone();
    own.set_number(V, 12.8);
    own.set_number(AH, 420.0);
    own.units[0].cable.area_mm2 = own.units[0].cable.area_mm2.map(|mm2| 4.0 * mm2);
    own.follow(&author);
    assert!(own.is_other_voltage(&author));
    assert_eq!(own.units[0].supply_v, Some(12.0));
    assert_eq!(own.units[0].cutoff_v.map(|figure| figure.value), Some(10.5));
    alike(&hours(&own), &hours(&author), 1e-6);
}

#[test]
fn another_bank_is_not_the_measured_one() {
    let mut author = published();
    author.banks[0].measured.measured_ah = Some(Figure::measured(150.0));
    let mut own = author.clone();
    own.set_number(AH, 105.0);
    own.follow(&author);
    assert_eq!(own.banks[0].measured, super::super::Measured::default());
    assert!(own.lost_measurement(&author));
    assert!(!author.lost_measurement(&author));
    assert!(hours(&own)[1] < hours(&author)[1]);
}

#[test]
fn open_fields_are_of_this_plan_and_four_at_most() {
    let mut plan = Plan::demo();
    assert_eq!(plan.open_fields(), USUAL);
    let depth = |bank| Path::Bank(bank, B::DepthPercent);
    plan.reader = Some(Reader {
        open: vec![depth(3), depth(0), depth(0), Path::Banks],
        ..Reader::default()
    });
    assert_eq!(plan.open_fields(), [depth(0)]);
    // A draw stays open when it is said in amps.
    let draw = |field| Path::Mode(0, 1, field);
    plan.reader.as_mut().unwrap().open = vec![draw(M::PowerW)];
    plan.units[0].modes[1].draw = plan.units[0].modes[1].draw.switched(25.6);
    assert_eq!(plan.open_fields(), [draw(M::CurrentA)]);
    let all = plan.may_open();
    plan.reader.as_mut().unwrap().open = all.clone();
    assert_eq!(plan.open_fields(), all[..MOST_OPEN]);
    let is_choice = |path: &&Path| matches!(path, Path::Chemistry(_));
    assert_eq!(all.iter().filter(is_choice).count(), 1);
    assert!(
        all.iter()
            .all(|path| path.range().is_some() || is_choice(&path))
    );
}

// 24 V is eight LFP cells or twelve of lead; half is as deep as lead is usually
// taken; a 24 V unit's cut-off is the same on both (common practice, no source).
#[test]
fn another_chemistry_takes_the_usual_of_its_cells() {
    let mut author = published();
    author.banks[0].measured.measured_ah = Some(Figure::measured(200.0));
    author.banks[0].cutoff_v = Some(Figure::label(22.0));
    author.banks[0].parasitic_w = Some(Figure::measured(1.0));
    author.reader = Some(Reader {
        open: vec![AH, Path::Chemistry(0)],
        ..Reader::default()
    });
    assert_eq!(author.open_fields(), [AH, Path::Chemistry(0)]);
    let mut own = author.clone();
    own.banks[0].chemistry = Chemistry::Agm;
    own.follow(&author);
    let bank = &own.banks[0];
    assert_eq!((bank.nominal_v(), bank.reading().cells), (24.0, 12));
    assert_eq!(bank.cutoff_v, None);
    let depth = own.number(Path::Bank(0, B::DepthPercent));
    assert_eq!(depth, Some(bank.chemistry.data().usual_depth_percent));
    assert!(own.lost_measurement(&author));
    // The unit is a 24 V unit on either.
    assert!(!own.is_other_voltage(&author));
    assert_eq!(own.units, author.units);
    assert!(own.errors().is_empty(), "{:?}", own.errors());
    assert!(hours(&own)[1] < hours(&author)[1]);
    // The way back is the same choice.
    own.banks[0].chemistry = Chemistry::Lfp;
    own.follow(&author);
    assert_eq!(own, author);
    assert!(!own.lost_measurement(&author));
}

#[test]
fn a_browsers_tag_names_a_table_or_english() {
    assert_eq!(Language::of_tag("de-AT"), Language::German);
    assert_eq!(Language::of_tag("DE"), Language::German);
    assert_eq!(Language::of_tag("en-GB"), Language::English);
    for tag in ["", "fr", "den", "-", "d"] {
        assert_eq!(Language::of_tag(tag), Language::English, "{tag}");
    }
}

#[test]
fn what_is_written_is_read_again() {
    let full = Reader {
        title: "How long on yours?".into(),
        note: "Ours ran until seven.".into(),
        open: vec![
            Path::Night(crate::plan::path::NightField::StartClockMin),
            Path::Load(0),
        ],
        units: Some(Units::Us),
        theme: Some(Theme::Dark),
        language: Some(Language::German),
    };
    for one in [Reader::default(), full] {
        let json = serde_json::to_value(&one).unwrap();
        assert_eq!(serde_json::from_value::<Reader>(json).unwrap(), one);
    }
}
