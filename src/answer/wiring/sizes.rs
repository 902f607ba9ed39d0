//! Conductor sizes and what each does, as numbers for the answer.

use crate::{
    physics::wiring::{self, Awg, Choice, Chosen, FuseAdvice, Rule, Size, System, Trial},
    quantity::{in_amps, in_celsius, in_square_millimeters, in_volts},
};
use serde::{Deserialize, Serialize};

/// Which of the two size systems.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum SizeSystem {
    /// American wire gauge.
    Awg,
    /// Nominal square millimetres.
    Metric,
}

/// A conductor size.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SizeName {
    /// Gauge or metric.
    pub system: SizeSystem,
    /// The gauge as it is written, `6` or `2/0`; nothing for a metric size.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub gauge: String,
    /// Of copper (gauge) or nominal (metric).
    pub area_mm2: f64,
}

impl SizeName {
    pub(super) fn of(size: Size) -> Self {
        let (system, gauge) = match size {
            Size::Awg(gauge) => (SizeSystem::Awg, gauge_name(gauge)),
            Size::Metric(_) => (SizeSystem::Metric, String::new()),
        };
        let area_mm2 = in_square_millimeters(size.area());
        Self {
            system,
            gauge,
            // A gauge's area is a formula's: four digits are what is known of it.
            area_mm2: (area_mm2 * 1000.0).round() / 1000.0,
        }
    }
}

fn gauge_name(gauge: Awg) -> String {
    match gauge.number() {
        number @ 1.. => number.to_string(),
        number => format!("{}/0", 1 - number),
    }
}

/// A rule that a conductor must pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum RuleName {
    /// It may carry the current for hours.
    Ampacity,
    /// A fuse of 125 % of the current exists that it may be fused at.
    FuseFit,
    /// What it drops, hot, is within what is allowed.
    Drop,
    /// It is not thinner than the law's thinnest.
    MechanicalMinimum,
}

impl RuleName {
    /// In the order in which one is named where several ask for the same size.
    pub const ALL: [Self; 4] = [
        Self::Ampacity,
        Self::FuseFit,
        Self::Drop,
        Self::MechanicalMinimum,
    ];

    pub(super) const fn of(rule: Rule) -> Self {
        match rule {
            Rule::Ampacity => Self::Ampacity,
            Rule::FuseFit => Self::FuseFit,
            Rule::Drop => Self::Drop,
            Rule::MechanicalMinimum => Self::MechanicalMinimum,
        }
    }
}

/// How the current that a conductor may carry came about.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct AmpacityFigures {
    /// The gauge whose row was read.
    pub row: SizeName,
    /// The column that governs: the cooler of insulation and lugs.
    pub column_c: f64,
    /// The value printed there.
    pub table_a: f64,
    /// What the heat around it leaves of that, 0 to 100.
    pub heat_percent: f64,
    /// What other conductors beside it leave.
    pub bundle_percent: f64,
    /// What shutting it in leaves.
    pub enclosure_percent: f64,
    /// The value in the table times all three.
    pub allowed_a: f64,
}

/// What a size does with the current of its circuit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SizeFigures {
    /// Which size.
    pub size: SizeName,
    /// At the source's lowest volts; nothing where no current carries the power.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loaded: Option<LoadedFigures>,
    /// Nothing for a size thinner than the table.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ampacity: Option<AmpacityFigures>,
    /// The fuse for it, if one fits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fuse_a: Option<f64>,
    /// The rules that it fails.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub fails: Vec<RuleName>,
}

/// Current, drops and temperature of a conductor.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LoadedFigures {
    /// At the source's lowest volts, less what this conductor drops hot.
    pub current_a: f64,
    /// Volts dropped there and back, with the copper at 20 °C.
    pub cold_v: f64,
    /// The same of the source's volts.
    pub cold_percent: f64,
    /// Volts dropped with the copper as warm as it gets: the one held to the limit.
    pub hot_v: f64,
    /// The same of the source's volts.
    pub hot_percent: f64,
    /// How warm that is.
    pub conductor_c: f64,
}

impl SizeFigures {
    pub(super) fn of(trial: &Trial) -> Self {
        let fails = Rule::ALL.into_iter().filter(|rule| !trial.passes(*rule));
        Self {
            size: SizeName::of(trial.size),
            loaded: trial.loaded.map(|loaded| LoadedFigures {
                current_a: in_amps(loaded.current),
                cold_v: in_volts(loaded.cold.volts),
                cold_percent: 100.0 * loaded.cold.share,
                hot_v: in_volts(loaded.hot.volts),
                hot_percent: 100.0 * loaded.hot.share,
                conductor_c: in_celsius(loaded.conductor),
            }),
            ampacity: trial.ampacity.as_ref().map(ampacity),
            fuse_a: match trial.fuse {
                Some(FuseAdvice::Use(rating)) => Some(in_amps(rating.current)),
                _ => None,
            },
            fails: fails.map(RuleName::of).collect(),
        }
    }
}

fn ampacity(ampacity: &wiring::Ampacity) -> AmpacityFigures {
    AmpacityFigures {
        row: SizeName::of(Size::Awg(ampacity.gauge)),
        column_c: in_celsius(ampacity.column.rating()).round(),
        table_a: in_amps(ampacity.table),
        heat_percent: 100.0 * ampacity.heat_factor,
        bundle_percent: 100.0 * ampacity.bundle_factor,
        enclosure_percent: 100.0 * ampacity.enclosure_factor,
        allowed_a: in_amps(ampacity.allowed),
    }
}

/// The smallest size of a system that passes all, and what each rule asks.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Needed {
    /// Which of the two.
    pub system: SizeSystem,
    /// Nothing where none passes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub smallest: Option<SizeFigures>,
    /// The rule that forbade the next thinner one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub decided_by: Option<RuleName>,
    /// The smallest by each rule alone, in the order of [`RuleName::ALL`].
    pub by_rule: Vec<RuleNeeds>,
}

/// The smallest size by one rule alone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RuleNeeds {
    /// Which rule.
    pub rule: RuleName,
    /// Absent where no size of the system passes it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub size: Option<SizeName>,
}

/// Both systems, gauges first.
pub(super) fn needed(choice: &Choice) -> Vec<Needed> {
    let both = [(System::Awg, choice.awg), (System::Metric, choice.metric)];
    both.map(|(system, chosen)| of_system(choice, system, chosen))
        .to_vec()
}

/// By one rule alone the smallest is the one after the last that fails it: a rule that
/// passes a thin size and fails a thicker one has not passed the thin one.
fn of_system(choice: &Choice, system: System, chosen: Option<Chosen>) -> Needed {
    let trials = || {
        let all = choice.trials.iter();
        all.filter(move |trial| trial.size.system() == system)
    };
    let smallest_by = |rule: Rule| {
        let all: Vec<&Trial> = trials().collect();
        let last_failing = all.iter().rposition(|trial| !trial.passes(rule));
        let first = all.get(last_failing.map_or(0, |at| at + 1))?;
        Some(SizeName::of(first.size))
    };
    let figures = |chosen: Chosen| {
        let trial = trials().find(|trial| trial.size == chosen.size)?;
        Some(SizeFigures::of(trial))
    };
    Needed {
        system: match system {
            System::Awg => SizeSystem::Awg,
            System::Metric => SizeSystem::Metric,
        },
        smallest: chosen.and_then(figures),
        decided_by: chosen.map(|chosen| RuleName::of(chosen.decided_by)),
        by_rule: Rule::ALL
            .into_iter()
            .map(|rule| RuleNeeds {
                rule: RuleName::of(rule),
                size: smallest_by(rule),
            })
            .collect(),
    }
}
