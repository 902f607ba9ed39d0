//! The reader's page: a plan with a few of its numbers left to whoever opens it.
//!
//! A plan with a [`Reader`] is a publication: most of it is the author's, one to
//! four numbers are the reader's own. What hangs on these numbers goes with them
//! ([`Plan::follow`]): another bank has no measurement of the author's, and a
//! cut-off of a 24 V unit says nothing at 48 V.

use super::{
    Bank, Feed, Figure, Path, Plan,
    part::choice,
    path::{BankField as B, ModeField as M},
};
use crate::{physics::battery::nominal::system_v, plan::finding::Finding};
use serde::{Deserialize, Deserializer, Serialize, de::Error};

/// Numbers left open at the most: more is no page for one hand.
pub const MOST_OPEN: usize = 4;

choice! {
    /// The language of the reader's page.
    Language {
        English = "en",
        German = "de",
        Spanish = "es",
    }
    /// The looks of the reader's page.
    Theme {
        Light = "light",
        Dark = "dark",
    }
    /// The units of the reader's page.
    Units {
        Metric = "metric",
        /// Feet, degrees Fahrenheit.
        Us = "us",
    }
}

/// What the author gives the reader's page. All of it may be left out.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
pub struct Reader {
    #[serde(skip_serializing_if = "String::is_empty")]
    pub title: String,
    /// A line or two from the author.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// Addresses of numbers left to the reader. Left out: charge and voltage of
    /// the first bank, and how far down it goes.
    #[serde(
        skip_serializing_if = "Vec::is_empty",
        deserialize_with = "no_more_than_most"
    )]
    #[cfg_attr(feature = "schema", schemars(length(max = 4)))]
    pub open: Vec<Path>,
    /// Absent: the plan's own.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub units: Option<Units>,
    /// Absent: as the reader's device has it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub theme: Option<Theme>,
    /// Absent: the reader's browser's, if the page knows it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub language: Option<Language>,
}

/// Addresses of numbers. That the plan has them is not asked here: one that it
/// has not is passed over.
fn no_more_than_most<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<Path>, D::Error> {
    let open = Vec::deserialize(from)?;
    if open.len() > MOST_OPEN {
        return Err(D::Error::invalid_length(
            open.len(),
            &"four addresses at the most",
        ));
    }
    Ok(open)
}

/// What is left open if the author says nothing.
const USUAL: [Path; 3] = [
    Path::Bank(0, B::BatteryRatedAh),
    Path::Bank(0, B::BatteryNominalV),
    Path::Bank(0, B::DepthPercent),
];

/// The numbers of a bank that a reader may be left, in the order offered.
const OF_BANK: [B; 8] = [
    B::BatteryRatedAh,
    B::BatteryNominalV,
    B::DepthPercent,
    B::SeriesCount,
    B::ParallelCount,
    B::HealthPercent,
    B::StartChargePercent,
    B::CutoffV,
];

impl Language {
    /// Its name in itself, as people look for it.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
            Self::Spanish => "Español",
        }
    }

    /// As standards name it.
    #[must_use]
    pub fn tag(self) -> &'static str {
        super::part::Choice::key(self)
    }

    /// The language that a browser's own tag asks for: `de-AT` is German.
    /// English where there is no table for it.
    #[must_use]
    pub fn of_tag(tag: &str) -> Self {
        let first = tag.split(['-', '_']).next().unwrap_or_default();
        let known = |one: &&Self| super::part::Choice::key(**one).eq_ignore_ascii_case(first);
        let mut all = <Self as super::part::Choice>::ALL.iter();
        all.find(known).copied().unwrap_or(Self::English)
    }
}

impl Plan {
    /// Everything that an author may leave open in this plan: what the first question
    /// is answered from, and a reader can know. All are numbers but the chemistry.
    #[must_use]
    pub fn may_open(&self) -> Vec<Path> {
        let mut all = Vec::new();
        for bank in 0..self.banks.len() {
            all.extend(OF_BANK.map(|field| Path::Bank(bank, field)));
            all.push(Path::Chemistry(bank));
        }
        for (at, unit) in self.units.iter().enumerate() {
            for mode in 0..unit.modes.len() {
                all.extend(self.draw_path(at, mode));
                all.push(Path::Mode(at, mode, M::DutyPercent));
            }
        }
        all.extend((0..self.loads.len()).map(Path::Load));
        all.push(Path::Night(super::path::NightField::StartClockMin));
        all
    }

    /// The numbers left to the reader: the author's choice as far as this plan
    /// has them, else the usual three. Never more than [`MOST_OPEN`].
    #[must_use]
    pub fn open_fields(&self) -> Vec<Path> {
        let may = self.may_open();
        let chosen = self.reader.as_ref().map_or(&[][..], |reader| &reader.open);
        let mut open: Vec<Path> = Vec::with_capacity(MOST_OPEN);
        for path in chosen {
            let path = self.kept_at(*path);
            if may.contains(&path) && !open.contains(&path) && open.len() < MOST_OPEN {
                open.push(path);
            }
        }
        if open.is_empty() {
            open.extend(USUAL.iter().filter(|path| may.contains(path)));
        }
        open
    }

    /// The same plan with nothing fixed for a reader: what 'open in full' opens.
    #[must_use]
    pub fn in_full(&self) -> Self {
        Self {
            reader: None,
            ..self.clone()
        }
    }

    /// The plan as an author publishes it: units as chosen, and a bank whose
    /// charge or voltage is left open as one battery, so that a reader with a 24 V
    /// bank types 24 and need not know how the author's was put together.
    #[must_use]
    pub fn published(&self) -> Self {
        let mut plan = self.clone();
        if let Some(units) = self.reader.as_ref().and_then(|reader| reader.units) {
            plan.show.us_units = units == Units::Us;
        }
        let open = self.open_fields();
        for (at, bank) in plan.banks.iter_mut().enumerate() {
            let is_open = |field| open.contains(&Path::Bank(at, field));
            let counts = is_open(B::SeriesCount) || is_open(B::ParallelCount);
            if !counts && (is_open(B::BatteryRatedAh) || is_open(B::BatteryNominalV)) {
                *bank = bank.as_one_battery();
            }
        }
        plan
    }

    /// Lets go with the reader's numbers what hangs on them. `author` is the plan
    /// as it was published.
    ///
    /// Of another voltage: cut-offs, the supply that a unit wants, and an own
    /// open-circuit table, in proportion. Of another bank: measurements go;
    /// resistance and current limit, where stated, are those of so many more or
    /// fewer cells side by side. Of another chemistry: all that was stated of the
    /// author's cells goes, and the usual of those cells counts. What the reader has
    /// open stays as typed.
    pub fn follow(&mut self, author: &Self) {
        let open = author.open_fields();
        for (at, theirs) in author.banks.iter().enumerate() {
            if let Some(bank) = self.banks.get_mut(at) {
                bank.follow(theirs, |field| open.contains(&Path::Bank(at, field)));
            }
        }
        let ratio = match (self.banks.first(), author.banks.first()) {
            (Some(now), Some(then)) => now.volts_over(then),
            _ => 1.0,
        };
        for (unit, theirs) in self.units.iter_mut().zip(&author.units) {
            unit.supply_v = theirs.supply_v.map(|volts| volts * ratio);
            unit.cutoff_v = times(theirs.cutoff_v, ratio);
            if let (Feed::Inverter { cutoff_v, .. }, Feed::Inverter { cutoff_v: then, .. }) =
                (&mut unit.feed, theirs.feed)
            {
                *cutoff_v = times(then, ratio);
            }
        }
    }

    /// Whether a finding is one of the first question, which the reader's page
    /// answers.
    #[must_use]
    pub fn is_of_the_night(finding: &Finding) -> bool {
        matches!(
            finding.field,
            None | Some(
                Path::Banks
                    | Path::Bank(..)
                    | Path::OpenCircuit(_)
                    | Path::Units
                    | Path::Unit(..)
                    | Path::Modes(_)
                    | Path::Mode(..)
                    | Path::Loads
                    | Path::Load(_)
            )
        )
    }

    /// Whether the reader's bank has another voltage than the author's, so that
    /// cut-offs went with it.
    #[must_use]
    pub fn is_other_voltage(&self, author: &Self) -> bool {
        let mut both = self.banks.iter().zip(&author.banks);
        both.any(|(own, theirs)| own.volts_over(theirs) != 1.0)
    }

    /// Whether the author's measurement went because the reader's bank is another.
    #[must_use]
    pub fn lost_measurement(&self, author: &Self) -> bool {
        let nothing = super::Measured::default();
        let mut both = self.banks.iter().zip(&author.banks);
        both.any(|(own, theirs)| own.measured == nothing && theirs.measured != nothing)
    }
}

/// A figure times a ratio; at 1 it is the same to the last bit.
fn times(figure: Option<Figure>, ratio: f64) -> Option<Figure> {
    figure.map(|figure| figure.with(figure.value * ratio))
}

impl Bank {
    /// The same bank as one battery: its nominal volts, all its charge, and its
    /// resistance, stated or assumed, because that is not of one battery's size alone.
    #[must_use]
    pub fn as_one_battery(&self) -> Self {
        let (series, parallel) = (f64::from(self.series_count), f64::from(self.parallel_count));
        if (self.series_count, self.parallel_count) == (1, 1) {
            return self.clone();
        }
        let mut battery = self.clone();
        battery.battery_nominal_v = Some(self.nominal_v());
        battery.battery_rated_ah.value *= parallel;
        battery.battery_current_limit_a = times(self.battery_current_limit_a, parallel);
        let resistance = self.battery_resistance_mohm;
        let resistance = resistance.or_else(|| Some(self.usual_resistance_mohm()));
        battery.battery_resistance_mohm = times(resistance, series / parallel);
        for row in &mut battery.battery_open_circuit {
            row.open_circuit_v *= series;
        }
        (battery.series_count, battery.parallel_count) = (1, 1);
        battery
    }

    /// Nominal volts as a share of another's. Of other cells in a system of the same
    /// name they are the same: a 24 V unit runs on 25.6 V of lithium and on 24 V of
    /// lead.
    fn volts_over(&self, other: &Self) -> f64 {
        let ratio = self.nominal_v() / other.nominal_v();
        let is_same = self.chemistry != other.chemistry && self.system_v() == other.system_v();
        if is_same && self.system_v().is_some() || !ratio.is_finite() {
            1.0
        } else {
            ratio
        }
    }

    fn system_v(&self) -> Option<f64> {
        let cells = self.reading().cells.checked_mul(self.series_count)?;
        system_v(self.chemistry, cells)
    }

    /// What was stated of the author's cells goes; the usual of these counts. A
    /// battery of a named system keeps the name: 25.6 V of lithium is 24 V of lead.
    fn follow_other_cells(&mut self, author: &Self, is_open: impl Fn(B) -> bool) {
        if self.battery_nominal_v == author.battery_nominal_v
            && let Some(volts) = system_v(author.chemistry, author.reading().cells)
        {
            self.battery_nominal_v = Some(volts);
        }
        if !is_open(B::CutoffV) {
            self.cutoff_v = None;
        }
        if !is_open(B::DepthPercent) {
            self.depth_percent = None;
        }
        self.measured = super::Measured::default();
        self.rated_hours_h = None;
        self.peukert_exponent = None;
        self.battery_current_limit_a = None;
        self.battery_resistance_mohm = None;
        self.polarisation_percent = None;
        self.parasitic_w = None;
        self.battery_open_circuit.clear();
    }

    /// See [`Plan::follow`].
    fn follow(&mut self, author: &Self, is_open: impl Fn(B) -> bool) {
        if self.chemistry != author.chemistry {
            return self.follow_other_cells(author, is_open);
        }
        if !is_open(B::BatteryNominalV) {
            self.battery_nominal_v = author.battery_nominal_v;
        }
        if !is_open(B::DepthPercent) {
            self.depth_percent = author.depth_percent;
        }
        self.rated_hours_h = author.rated_hours_h;
        self.peukert_exponent = author.peukert_exponent;
        self.parasitic_w = author.parasitic_w;
        let kind = |bank: &Self| {
            let counts = (bank.series_count, bank.parallel_count);
            (bank.battery_rated_ah.value, bank.reading().volts, counts)
        };
        let volts = |bank: &Self| bank.reading().volts;
        let battery = volts(self) / volts(author);
        let charge = self.battery_rated_ah.value / author.battery_rated_ah.value;
        let whole = self.nominal_v() / author.nominal_v();
        if ![battery, charge, whole]
            .iter()
            .all(|ratio| ratio.is_finite())
        {
            return;
        }
        self.measured = if kind(self) == kind(author) {
            author.measured
        } else {
            super::Measured::default()
        };
        if !is_open(B::CutoffV) {
            self.cutoff_v = times(author.cutoff_v, whole);
        }
        self.battery_current_limit_a = times(author.battery_current_limit_a, charge);
        self.battery_resistance_mohm = times(author.battery_resistance_mohm, battery / charge);
        self.polarisation_percent = author.polarisation_percent;
        self.battery_open_circuit
            .clone_from(&author.battery_open_circuit);
        for row in &mut self.battery_open_circuit {
            row.open_circuit_v *= battery;
        }
    }
}

#[cfg(test)]
mod tests;
