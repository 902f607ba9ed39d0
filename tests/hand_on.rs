//! What is handed on says all that was measured: report and tables.
//!
//! The figures of a claim are common practice, no source; how many digits an
//! uncertainty has is JCGM 100:2008, 7.2.6.

use till_morning::text::Formatter;
use till_morning::text::m;
use till_morning::{
    answer::{Answer, claims::claims, night},
    plan::{
        AirReading, Claim, Figure, Mode, Plan, Price,
        claims::{AirBasis, Claimed, MeterClass},
    },
    share::{
        report,
        table::{Cell, Table},
        tables::tables,
    },
};

/// A bank of 320 Ah by its label and 335.5 Ah by the bench, no meter named; its
/// energy by a meter's sheet; the cooling off the air side; what it cost.
fn measured() -> Plan {
    let of = |value| Some(Figure::measured(value));
    let mut plan = Plan::demo();
    plan.banks[0].battery_rated_ah = Figure::measured(335.5);
    plan.claims = vec![
        Claim {
            claimed_ah: Some(320.0),
            measured_ah: of(335.5),
            ..Claim::of(Claimed::Charge)
        },
        Claim {
            claimed_wh: Some(4096.0),
            measured_wh: of(4319.0),
            meter: Some(MeterClass::Sheet),
            of_reading_percent: Some(1.0),
            ..Claim::of(Claimed::Energy)
        },
        Claim {
            claimed_cooling_w: Some(2000.0),
            ..Claim::of(Claimed::Cooling)
        },
    ];
    plan.air = AirReading {
        altitude_m: Some(0.0),
        inlet_c: of(26.7),
        inlet_humidity_percent: of(50.0),
        outlet_c: of(10.0),
        outlet_humidity_percent: of(95.0),
        airflow_m3_h: of(150.0),
        basis: Some(AirBasis::AtInlet),
        power_w: of(420.0),
        ..AirReading::default()
    };
    plan.price = Price {
        price_number: Some(699.0),
        ..Price::default()
    };
    plan
}

/// The night and the claims: all that is looked at here.
fn answer(plan: &Plan) -> Answer {
    let mut answer = night(plan);
    answer.claims = claims(plan, &answer.runs);
    answer
}

fn paper(plan: &Plan) -> String {
    let answer = answer(plan);
    report::article(Formatter::ENGLISH, plan, &answer, None).replace('\u{202f}', " ")
}

fn table(plan: &Plan, title: &str) -> Table {
    let all = tables(Formatter::ENGLISH, plan, &answer(plan), &[]);
    let found = all.into_iter().find(|table| table.title == title);
    found.unwrap_or_else(|| panic!("no table: {title}"))
}

#[test]
fn the_report_has_the_claims_whole() {
    let paper = paper(&measured());
    let claims = &paper[paper.find("Does it do what it claims?").unwrap()..];
    let claims = &claims[..claims.find("<h2>The plan").unwrap()];
    assert!(!claims.contains("<td></td>"), "an empty cell: {claims}");
    for part in [
        "335.5 Ah, uncertainty unknown",
        "so that its accuracy can be worked out",
        // 1 % of the reading over root three, times two, to two digits.
        "4319 Wh ±50 Wh",
        "105.4 %",
        "beats it",
    ] {
        assert!(claims.contains(part), "{part}: {claims}");
    }
}

#[test]
fn the_report_has_the_air_side_with_its_uncertainty_and_the_price() {
    let plan = measured();
    let paper = paper(&plan);
    let air = answer(&plan).claims.air.expect("cooling");
    let watts = format!("{:.0} W", air.cooling_w);
    let after = paper.split("Total cooling:").nth(1).expect("the air side");
    assert!(after.contains(&watts) && after.contains('±'), "{after}");
    assert!(after.contains("airflow 150 m³/h"), "{after}");
    // 699 for 4319 Wh are 0.162 for each, by hand.
    assert!(paper.contains("0.162 per measured Wh"), "{paper}");
}

#[test]
fn a_stated_number_is_printed_as_it_was_stated() {
    let plan = measured();
    let paper = paper(&plan);
    assert!(paper.contains("335.5 Ah"));
    assert!(!paper.contains("336 Ah"), "{paper}");
    let markdown =
        table(&plan, Formatter::ENGLISH.say(m::HandOnTablePlan)).markdown(Formatter::ENGLISH);
    assert!(markdown.contains("| 335.5 | Ah |"), "{markdown}");
}

#[test]
fn the_tables_say_which_claim_and_why_nothing_is_known() {
    let plan = measured();
    let claims = table(&plan, Formatter::ENGLISH.say(m::HandOnTableClaims));
    let row = &claims.rows[0];
    assert_eq!(row[0], Cell::from("Claim 1"));
    assert_eq!(
        (&row[2], &row[4]),
        (&Cell::Stated(320.0), &Cell::Stated(335.5))
    );
    for row in &claims.rows {
        let why = matches!(row.last(), Some(Cell::Text(_)));
        assert_eq!(why, row[5] == Cell::Empty, "{row:?}");
    }
    let air = table(&plan, Formatter::ENGLISH.say(m::HandOnTableAir));
    assert!(matches!(air.rows[0][3], Cell::Number(watts) if watts > 0.0));
    let price = table(&plan, Formatter::ENGLISH.say(m::HandOnTablePrice));
    assert!(matches!(price.rows[1][1], Cell::Number(per) if (per - 0.1618).abs() < 1e-4));
}

/// A draw no unit has still has its row, and a name that would run in a country
/// of semicolons does not.
#[test]
fn a_plan_that_goes_wrong_still_has_its_tables() {
    let mut plan = Plan::demo();
    plan.units[0].modes[0].name = "x;=1+1;".into();
    plan.units[0].modes[1] = Mode::of_power("Hold", Figure::label(1e308));
    let all = tables(Formatter::ENGLISH, &plan, &answer(&plan), &[]);
    let csv: String = all.iter().map(Table::csv).collect();
    assert!(csv.contains("\"x;'=1+1;\""), "{csv}");
    assert!(csv.contains(",1e308,W,"), "{csv}");
    // In feet and °F too, where a conversion leaves the finite numbers.
    plan.show.us_units = true;
    plan.units[0].cable.temperature_c = 1e308;
    assert!(!paper(&plan).is_empty());
}
