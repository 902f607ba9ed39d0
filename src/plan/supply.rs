//! What feeds the bank: panels and chargers; and where the bank stands.

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
    Array, ArrayField {
        /// By the label, all panels together.
        rated_w: MaybeFigure = RatedW, ARRAY_W;
        /// From lying flat.
        tilt_deg: MaybeNumber = TiltDeg, TILT_DEG;
        /// Where they face, clockwise from north.
        azimuth_deg: MaybeNumber = AzimuthDeg, AZIMUTH_DEG;
        /// Share of the day's output lost to racks, trees and vents.
        shading_percent: MaybeFigure = ShadingPercent, SHARE_PERCENT;
        panels_series_count: MaybeCount = PanelsSeriesCount, PANELS_COUNT;
        panels_parallel_count: MaybeCount = PanelsParallelCount, PANELS_COUNT;
        /// One panel at its most power, by its sheet.
        panel_best_v: MaybeFigure = PanelBestV, PANEL_V;
        panel_open_v: MaybeFigure = PanelOpenV, PANEL_V;
        panel_short_a: MaybeFigure = PanelShortA, PANEL_A;
    } with {
        mounting: Option<Mounting>,
    }
}

part! {
    /// A charger: constant current, then constant voltage.
    #[derive(Copy)]
    Charger, ChargerField {
        most_a: MaybeFigure = MostA, CHARGER_A;
        /// Of what it takes, what reaches the bank.
        efficiency_percent: MaybeFigure = EfficiencyPercent, EFFICIENCY_PERCENT;
        /// Volts that it holds at the end; absent: by the chemistry.
        hold_v: MaybeNumber = HoldV, CUTOFF_V;
        /// When it is on, every day; absent: all day (shore), never (others).
        from_clock_min: MaybeCount = FromClockMin, CLOCK_MIN;
        until_clock_min: MaybeCount = UntilClockMin, CLOCK_MIN;
        /// Most watts that shore, engine or generator give it; absent: enough.
        source_w: MaybeFigure = SourceW, LIMIT_W;
        /// Fuel at hand for it.
        fuel_l: MaybeFigure = FuelL, FUEL_L;
        fuel_l_per_kwh: MaybeFigure = FuelLPerKwh, FUEL_L_PER_KWH;
    } with {
        kind: Option<ChargerKind>,
    }
}

part! {
    /// What feeds the bank. Left out: nothing does.
    Supply, SupplyField {
        /// Into the bank.
        controller_limit_a: MaybeFigure = ControllerLimitA, CHARGER_A;
        /// Most volts that the controller takes from the panels.
        controller_limit_v: MaybeFigure = ControllerLimitV, CONTROLLER_V;
        controller_efficiency_percent: MaybeFigure = ControllerEfficiencyPercent, EFFICIENCY_PERCENT;
        /// Change of power by the kelvin.
        panel_power_percent_per_k: MaybeFigure = PanelPowerPercentPerK, PERCENT_PER_K;
        /// Change of open-circuit volts by the kelvin.
        panel_volts_percent_per_k: MaybeFigure = PanelVoltsPercentPerK, PERCENT_PER_K;
        /// Lost to dust, cable, age and the label; shade and heat are not in it.
        array_loss_percent: MaybeFigure = ArrayLossPercent, SHARE_PERCENT;
        /// Bank temperature, where it is known better than by its place.
        bank_c: MaybeFigure = BankC, BANK_C;
        /// Charge to fill the bank up from; absent: what the night leaves.
        refill_from_percent: MaybeFigure = RefillFromPercent, CHARGE_PERCENT;
        /// Charge to fill it up to.
        refill_to_percent: MaybeNumber = RefillToPercent, START_CHARGE_PERCENT;
        /// Of a litre of fuel, and of a kilowatt-hour from shore, in any currency.
        fuel_price_per_l: MaybeNumber = FuelPricePerL, PRICE_NUMBER;
        shore_price_per_kwh: MaybeNumber = ShorePricePerKwh, PRICE_NUMBER;
    } with {
        arrays: Vec<Array>,
        chargers: Vec<Charger>,
        controller: Option<ControllerKind>,
        bank_place: Option<BankPlace>,
    }
}

impl Supply {
    /// The default of one of the supply's numbers. Loss by the solar room's
    /// usual shares; the rest common practice, no source.
    #[must_use]
    pub fn assumed(field: SupplyField) -> Option<Figure> {
        use SupplyField as S;
        Some(Figure::guess(match field {
            S::ControllerEfficiencyPercent => 96.0,
            S::PanelPowerPercentPerK => -0.38,
            S::PanelVoltsPercentPerK => -0.28,
            S::ArrayLossPercent => {
                let kept = crate::physics::solar::losses::Losses::USUAL.kept();
                100.0 * (1.0 - kept.unwrap_or(1.0))
            }
            // A choice and no guess: lithium and lead alike are filled to the top
            // where nothing hurries.
            S::RefillToPercent => return Some(Figure::exact(100.0)),
            S::ControllerLimitA
            | S::ControllerLimitV
            | S::BankC
            | S::RefillFromPercent
            | S::FuelPricePerL
            | S::ShorePricePerKwh => return None,
        }))
    }
}

impl Array {
    /// The default of one of the array's numbers: common practice, no source.
    #[must_use]
    pub fn assumed(&self, field: ArrayField) -> Option<Figure> {
        use ArrayField as A;
        // Of a panel for a 12 V bank; where one is stated, the other follows it.
        let (best_v, open_v) = (18.5, 22.5);
        let beside = |stated: Option<Figure>, usual: f64, by: f64| {
            let value = stated.map_or(usual, |figure| usual / by * figure.value);
            let range = crate::range::PANEL_V;
            Figure::guess(value.max(range.min).min(range.max))
        };
        Some(match field {
            A::RatedW => Figure::guess(100.0),
            A::TiltDeg | A::AzimuthDeg => Figure::exact(0.0),
            A::ShadingPercent => Figure::guess(5.0),
            A::PanelsSeriesCount | A::PanelsParallelCount => Figure::exact(1.0),
            A::PanelBestV => beside(self.panel_open_v, best_v, open_v),
            A::PanelOpenV => beside(self.panel_best_v, open_v, best_v),
            A::PanelShortA => return None,
        })
    }
}

impl Charger {
    /// What it is fed by, as stated or assumed.
    #[must_use]
    pub fn kind_taken(&self) -> ChargerKind {
        self.kind.unwrap_or(ChargerKind::Shore)
    }

    /// The default of one of the charger's numbers: common practice, no source.
    #[must_use]
    pub fn assumed(&self, field: ChargerField) -> Option<Figure> {
        use ChargerField as C;
        let generator = self.kind == Some(ChargerKind::Generator);
        Some(match field {
            C::MostA => Figure::guess(20.0),
            C::EfficiencyPercent => Figure::guess(90.0),
            C::FuelLPerKwh if generator => Figure::guess(0.6),
            _ => return None,
        })
    }
}
