//! What feeds the bank: panels and chargers; and where the bank stands.
//!
//! Its defaults are common practice, no source.

use super::{
    Figure,
    part::{choice, part},
};

choice! {
    /// How panels sit.
    Mounting {
        /// Glued or screwed flat, the back shut off.
        FlatOnRoof = "flat_on_roof",
        /// On circuits or a rack with air behind.
        StoodOff = "stood_off",
    }
    /// How the charge controller works.
    ControllerKind {
        /// Holds the panels at their best voltage.
        Tracking = "tracking",
        /// Ties the panels to the bank.
        Direct = "direct",
    }
    /// What a charger is fed by.
    ChargerKind {
        Shore = "shore",
        Engine = "engine",
        Generator = "generator",
    }
    /// Where the bank stands, and so how warm it is.
    BankPlace {
        Cabin = "cabin",
        /// Under a seat or floor: between cabin and outdoors.
        Locker = "locker",
        Outside = "outside",
    }
}

part! {
    /// Panels that lie alike. All on one controller.
    #[derive(Copy)]
    Array, ArrayField, default by Array {
        /// By the label, all panels together.
        rated_w: MaybeFigure = RatedW, ARRAY_W, Guess(100.0), Share(5.0, 3.0, 10.0);
        /// From lying flat.
        tilt_deg: MaybeNumber = TiltDeg, TILT_DEG, Exact(0.0), NoSpread;
        /// Where they face, clockwise from north.
        azimuth_deg: MaybeNumber = AzimuthDeg, AZIMUTH_DEG, Exact(0.0), NoSpread;
        /// Share of the day's output lost to racks, trees and vents.
        shading_percent: MaybeFigure = ShadingPercent, SHARE_PERCENT,
            Guess(5.0), Units(5.0, 3.0, 6.0);
        panels_series_count: MaybeCount = PanelsSeriesCount, PANELS_COUNT, Exact(1.0), NoSpread;
        panels_parallel_count: MaybeCount = PanelsParallelCount, PANELS_COUNT, Exact(1.0), NoSpread;
        /// One panel at its most power, by its sheet.
        panel_best_v: MaybeFigure = PanelBestV, PANEL_V,
            Of(|array, _| Some(beside(array.panel_open_v, BEST_V, OPEN_V))), NoSpread;
        panel_open_v: MaybeFigure = PanelOpenV, PANEL_V,
            Of(|array, _| Some(beside(array.panel_best_v, OPEN_V, BEST_V))), NoSpread;
        panel_short_a: MaybeFigure = PanelShortA, PANEL_A, Nothing, NoSpread;
    } with {
        mounting: Option<Mounting>,
    }
}

part! {
    /// A charger: constant current, then constant voltage.
    #[derive(Copy)]
    Charger, ChargerField, default by Charger {
        most_a: MaybeFigure = MostA, CHARGER_A, Guess(20.0), Share(5.0, 2.0, 15.0);
        /// Of what it takes, what reaches the bank.
        efficiency_percent: MaybeFigure = EfficiencyPercent, EFFICIENCY_PERCENT,
            Guess(90.0), Share(3.0, 1.0, 5.0);
        /// Volts that it holds at the end; absent: by the chemistry.
        hold_v: MaybeNumber = HoldV, CUTOFF_V, Nothing, NoSpread;
        /// When it is on, every day; absent: all day (shore), never (others).
        from_clock_min: MaybeCount = FromClockMin, CLOCK_MIN, Nothing, NoSpread;
        until_clock_min: MaybeCount = UntilClockMin, CLOCK_MIN, Nothing, NoSpread;
        /// Most watts that shore, engine or generator give it; absent: enough.
        source_w: MaybeFigure = SourceW, LIMIT_W, Nothing, Share(5.0, 2.0, 15.0);
        /// Fuel at hand for it.
        fuel_l: MaybeFigure = FuelL, FUEL_L, Nothing, Share(3.0, 2.0, 10.0);
        fuel_l_per_kwh: MaybeFigure = FuelLPerKwh, FUEL_L_PER_KWH,
            Of(|charger, _| charger.usual_fuel()), Share(15.0, 5.0, 30.0);
    } with {
        kind: Option<ChargerKind>,
    }
}

part! {
    /// What feeds the bank. Left out: nothing does.
    Supply, SupplyField, default by Supply {
        /// Into the bank.
        controller_limit_a: MaybeFigure = ControllerLimitA, CHARGER_A, Nothing, NoSpread;
        /// Most volts that the controller takes from the panels.
        controller_limit_v: MaybeFigure = ControllerLimitV, CONTROLLER_V, Nothing, NoSpread;
        controller_efficiency_percent: MaybeFigure = ControllerEfficiencyPercent, EFFICIENCY_PERCENT,
            Guess(96.0), Share(2.0, 1.0, 3.0);
        /// Change of power by the kelvin.
        panel_power_percent_per_k: MaybeFigure = PanelPowerPercentPerK, PERCENT_PER_K,
            Guess(-0.38), Share(5.0, 3.0, 15.0);
        /// Change of open-circuit volts by the kelvin.
        panel_volts_percent_per_k: MaybeFigure = PanelVoltsPercentPerK, PERCENT_PER_K,
            Guess(-0.28), Share(5.0, 3.0, 15.0);
        /// Lost to dust, cable, age and the label; shade and heat are not in it.
        array_loss_percent: MaybeFigure = ArrayLossPercent, SHARE_PERCENT,
            Of(|_, _| Some(usual_array_loss())), Share(20.0, 15.0, 40.0);
        /// Bank temperature, where it is known better than by its place.
        bank_c: MaybeFigure = BankC, BANK_C, Nothing, Units(2.0, 1.0, 4.0);
        /// Charge to fill the bank up from; absent: what the night leaves.
        refill_from_percent: MaybeFigure = RefillFromPercent, CHARGE_PERCENT,
            Nothing, Units(3.0, 3.0, 10.0);
        /// Charge to fill it up to.
        // A choice and no guess: lithium and lead alike are filled to the top where nothing hurries.
        refill_to_percent: MaybeNumber = RefillToPercent, START_CHARGE_PERCENT,
            Exact(100.0), NoSpread;
        /// Of a litre of fuel, and of a kilowatt-hour from shore, in any currency.
        fuel_price_per_l: MaybeNumber = FuelPricePerL, PRICE_NUMBER, Nothing, NoSpread;
        shore_price_per_kwh: MaybeNumber = ShorePricePerKwh, PRICE_NUMBER, Nothing, NoSpread;
    } with {
        arrays: Vec<Array>,
        chargers: Vec<Charger>,
        controller: Option<ControllerKind>,
        bank_place: Option<BankPlace>,
    }
}

/// What the solar room's usual shares leave.
fn usual_array_loss() -> Figure {
    let kept = crate::physics::solar::losses::Losses::USUAL.kept();
    Figure::guess(100.0 * (1.0 - kept.unwrap_or(1.0)))
}

/// Of a panel for a 12 V bank, at its most power and open.
const BEST_V: f64 = 18.5;
const OPEN_V: f64 = 22.5;

/// A panel's volts; where the others are stated, these follow them.
fn beside(stated: Option<Figure>, usual: f64, by: f64) -> Figure {
    let value = stated.map_or(usual, |figure| usual / by * figure.value);
    let range = crate::range::PANEL_V;
    Figure::guess(value.max(range.min).min(range.max))
}

impl Charger {
    /// What it is fed by, as stated or assumed.
    #[must_use]
    pub fn kind_taken(&self) -> ChargerKind {
        self.kind.unwrap_or(ChargerKind::Shore)
    }

    fn usual_fuel(&self) -> Option<Figure> {
        (self.kind == Some(ChargerKind::Generator)).then_some(Figure::guess(0.6))
    }
}
