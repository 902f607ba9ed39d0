//! The cabin: a handful of questions, and every figure derived from them to be
//! replaced.

use super::{
    Figure,
    part::{choice, part},
};
use crate::{
    physics::cabin::{self, Figures},
    quantity::{
        in_cubic_meters, in_joules_per_kelvin, in_square_meters, in_watts_per_square_meter_kelvin,
        meters,
    },
};

choice! {
    /// What kind of body.
    BodyKind {
        Van = "van",
        Trailer = "trailer",
        TentCabin = "tent_cabin",
        Boat = "boat",
        SmallCabin = "small_cabin",
    }
    /// How well the shell is insulated.
    Insulation {
        Bare = "bare",
        Partial = "partial",
        Normal = "normal",
        Heavy = "heavy",
    }
    /// Colour of the outside.
    Colour {
        Light = "light",
        Medium = "medium",
        Dark = "dark",
    }
    /// What the windows are.
    Glazing {
        Single = "single",
        Double = "double",
    }
    /// What hangs before or behind them.
    Covers {
        None = "none",
        Curtains = "curtains",
        InsideMats = "inside_mats",
        OutsideCovers = "outside_covers",
    }
}

part! {
    /// The cabin. What is left out is a van of the usual kind.
    #[derive(Copy)]
    Cabin, CabinField, default by Cabin {
        inside_length_m: MaybeFigure = InsideLengthM, INSIDE_LENGTH_M,
            Guess(USUAL_LENGTH_M), NoSpread;
        /// Share of the sun that trees or awnings keep off.
        shade_percent: MaybeFigure = ShadePercent, SHARE_PERCENT,
            Guess(USUAL_SHADE_PERCENT), Units(10.0, 5.0, 10.0);
        people_count: MaybeCount = PeopleCount, PEOPLE_COUNT, Exact(2.0), NoSpread;
        animals_count: MaybeCount = AnimalsCount, PEOPLE_COUNT, Exact(0.0), NoSpread;
        /// Each of them.
        animal_kg: MaybeFigure = AnimalKg, ANIMAL_KG, Guess(15.0), Share(5.0, 2.0, 20.0);
        /// When people and animals go out, every day; absent: never.
        away_from_clock_min: MaybeCount = AwayFromClockMin, CLOCK_MIN, Nothing, NoSpread;
        /// When they are back.
        away_until_clock_min: MaybeCount = AwayUntilClockMin, CLOCK_MIN, Nothing, NoSpread;
        air_changes_per_h: MaybeFigure = AirChangesPerH, AIR_CHANGES_PER_H,
            Of(|cabin, _| cabin.derived(|of| of.air_changes_per_hour)), Share(30.0, 15.0, 50.0);
        /// With doors and roof light open: while no mode is planned.
        aired_changes_per_h: MaybeFigure = AiredChangesPerH, AIR_CHANGES_PER_H,
            Guess(USUAL_AIRED_PER_H), Share(30.0, 15.0, 50.0);
        set_point_c: MaybeNumber = SetPointC, SET_POINT_C, Exact(25.0), NoSpread;
        /// Whole width about the set point.
        dead_band_k: MaybeNumber = DeadBandK, DEAD_BAND_K, Exact(1.0), NoSpread;
        /// Cabin air at the start; absent: as a day without cooling leaves it.
        start_c: MaybeFigure = StartC, INDOOR_C, Nothing, Units(2.0, 1.0, 4.0);
        /// Heat of everything electric inside but the unit; absent: all loads.
        gains_w: MaybeFigure = GainsW, LOAD_W,
            Of(|_, plan| Some(Figure::guess(plan.loads_w()))), Share(15.0, 5.0, 25.0);
        floor_m2: MaybeFigure = FloorM2, AREA_M2,
            Of(|cabin, _| cabin.derived(|of| in_square_meters(of.floor))), Share(3.0, 2.0, 8.0);
        volume_m3: MaybeFigure = VolumeM3, VOLUME_M3,
            Of(|cabin, _| cabin.derived(|of| in_cubic_meters(of.volume))), Share(3.0, 2.0, 8.0);
        roof_m2: MaybeFigure = RoofM2, AREA_M2,
            Of(|cabin, _| cabin.derived(|of| in_square_meters(of.roof))), Share(3.0, 2.0, 8.0);
        walls_m2: MaybeFigure = WallsM2, AREA_M2,
            Of(|cabin, _| cabin.derived(|of| in_square_meters(of.walls))), Share(3.0, 2.0, 8.0);
        wall_glass_m2: MaybeFigure = WallGlassM2, AREA_M2,
            Of(|cabin, _| cabin.derived(|of| in_square_meters(of.wall_glass))), Share(3.0, 2.0, 25.0);
        roof_glass_m2: MaybeFigure = RoofGlassM2, AREA_M2,
            Of(|cabin, _| cabin.derived(|of| in_square_meters(of.roof_glass))), Share(3.0, 2.0, 25.0);
        /// Share of the walls that the sun can reach.
        lit_walls_percent: MaybeFigure = LitWallsPercent, SHARE_PERCENT,
            Of(|cabin, _| cabin.derived(|of| 100.0 * of.lit_walls)), Share(10.0, 5.0, 15.0);
        shell_w_m2_k: MaybeFigure = ShellWM2K, SHELL_W_M2_K,
            Of(|cabin, _| cabin.derived(|of| in_watts_per_square_meter_kelvin(of.shell_coefficient))), Share(15.0, 8.0, 30.0);
        glass_w_m2_k: MaybeFigure = GlassWM2K, GLASS_W_M2_K,
            Of(|cabin, _| cabin.derived(|of| in_watts_per_square_meter_kelvin(of.glass_coefficient))), Share(10.0, 8.0, 20.0);
        /// Share of the sun that glass and covers let in.
        glass_gain_percent: MaybeFigure = GlassGainPercent, SHARE_PERCENT,
            Of(|cabin, _| cabin.derived(|of| 100.0 * of.glass_gain)), Share(10.0, 8.0, 30.0);
        /// Share of the sun that the outside takes up.
        absorptance_percent: MaybeFigure = AbsorptancePercent, SHARE_PERCENT,
            Of(|cabin, _| cabin.derived(|of| 100.0 * of.absorptance)), Share(10.0, 5.0, 20.0);
        air_capacity_kj_k: MaybeFigure = AirCapacityKjK, CAPACITY_KJ_K,
            Of(|cabin, _| cabin.derived(|of| in_joules_per_kelvin(of.air_capacity) / 1000.0)), Share(20.0, 10.0, 40.0);
        shell_capacity_kj_k: MaybeFigure = ShellCapacityKjK, CAPACITY_KJ_K,
            Of(|cabin, _| cabin.derived(|of| in_joules_per_kelvin(of.shell_capacity) / 1000.0)), Share(20.0, 10.0, 40.0);
        /// Water in lining and bedding, in multiples of the air's own.
        moisture_buffer: MaybeFigure = MoistureBuffer, MOISTURE_BUFFER,
            Of(|cabin, _| cabin.derived(|of| of.moisture_buffer)), Share(30.0, 20.0, 60.0);
    } with {
        kind: Option<BodyKind>,
        insulation: Option<Insulation>,
        colour: Option<Colour>,
        glazing: Option<Glazing>,
        covers: Option<Covers>,
    }
}

/// Length of the living space of a panel van of some 6 m, its cab curtained off.
const USUAL_LENGTH_M: f64 = 3.6;

/// Nothing known of keeps the sun off.
const USUAL_SHADE_PERCENT: f64 = 0.0;

/// Air changes with doors and roof light open on a still day (a guess).
const USUAL_AIRED_PER_H: f64 = 15.0;

impl Cabin {
    /// The choices as the cabin room reads them, the sizes stated or assumed.
    #[must_use]
    pub fn body(&self) -> cabin::Body {
        let number = |stated: Option<Figure>, usual: f64| stated.map_or(usual, |of| of.value);
        cabin::Body {
            kind: match self.kind.unwrap_or(BodyKind::Van) {
                BodyKind::Van => cabin::BodyKind::Van,
                BodyKind::Trailer => cabin::BodyKind::Trailer,
                BodyKind::TentCabin => cabin::BodyKind::TentCabin,
                BodyKind::Boat => cabin::BodyKind::Boat,
                BodyKind::SmallCabin => cabin::BodyKind::SmallCabin,
            },
            inside_length: meters(number(self.inside_length_m, USUAL_LENGTH_M)),
            insulation: match self.insulation.unwrap_or(Insulation::Partial) {
                Insulation::Bare => cabin::Insulation::Bare,
                Insulation::Partial => cabin::Insulation::Partial,
                Insulation::Normal => cabin::Insulation::Normal,
                Insulation::Heavy => cabin::Insulation::Heavy,
            },
            colour: match self.colour.unwrap_or(Colour::Light) {
                Colour::Light => cabin::Colour::Light,
                Colour::Medium => cabin::Colour::Medium,
                Colour::Dark => cabin::Colour::Dark,
            },
            glazing: match self.glazing.unwrap_or(Glazing::Double) {
                Glazing::Single => cabin::Glazing::Single,
                Glazing::Double => cabin::Glazing::Double,
            },
            covers: match self.covers.unwrap_or(Covers::InsideMats) {
                Covers::None => cabin::Covers::None,
                Covers::Curtains => cabin::Covers::Curtains,
                Covers::InsideMats => cabin::Covers::InsideMats,
                Covers::OutsideCovers => cabin::Covers::OutsideCovers,
            },
            shade: number(self.shade_percent, USUAL_SHADE_PERCENT) / 100.0,
        }
    }

    /// A default that follows from the answers (see [`cabin::Body::figures`]).
    fn derived(&self, value: fn(&Figures) -> f64) -> Option<Figure> {
        let figures = self.body().figures().ok()?;
        Some(Figure::guess(value(&figures)))
    }
}
