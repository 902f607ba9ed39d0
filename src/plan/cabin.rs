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
    Cabin, CabinField {
        inside_length_m: MaybeFigure = InsideLengthM, INSIDE_LENGTH_M;
        /// Share of the sun that trees or awnings keep off.
        shade_percent: MaybeFigure = ShadePercent, SHARE_PERCENT;
        people_count: MaybeCount = PeopleCount, PEOPLE_COUNT;
        animals_count: MaybeCount = AnimalsCount, PEOPLE_COUNT;
        /// Each of them.
        animal_kg: MaybeFigure = AnimalKg, ANIMAL_KG;
        /// When people and animals go out, every day; absent: never.
        away_from_clock_min: MaybeCount = AwayFromClockMin, CLOCK_MIN;
        /// When they are back.
        away_until_clock_min: MaybeCount = AwayUntilClockMin, CLOCK_MIN;
        air_changes_per_h: MaybeFigure = AirChangesPerH, AIR_CHANGES_PER_H;
        /// With doors and roof light open: while no mode is planned.
        aired_changes_per_h: MaybeFigure = AiredChangesPerH, AIR_CHANGES_PER_H;
        set_point_c: MaybeNumber = SetPointC, SET_POINT_C;
        /// Whole width about the set point.
        dead_band_k: MaybeNumber = DeadBandK, DEAD_BAND_K;
        /// Cabin air at the start; absent: as a day without cooling leaves it.
        start_c: MaybeFigure = StartC, INDOOR_C;
        /// Heat of everything electric inside but the unit; absent: all loads.
        gains_w: MaybeFigure = GainsW, LOAD_W;
        floor_m2: MaybeFigure = FloorM2, AREA_M2;
        volume_m3: MaybeFigure = VolumeM3, VOLUME_M3;
        roof_m2: MaybeFigure = RoofM2, AREA_M2;
        walls_m2: MaybeFigure = WallsM2, AREA_M2;
        wall_glass_m2: MaybeFigure = WallGlassM2, AREA_M2;
        roof_glass_m2: MaybeFigure = RoofGlassM2, AREA_M2;
        /// Share of the walls that the sun can reach.
        lit_walls_percent: MaybeFigure = LitWallsPercent, SHARE_PERCENT;
        shell_w_m2_k: MaybeFigure = ShellWM2K, SHELL_W_M2_K;
        glass_w_m2_k: MaybeFigure = GlassWM2K, GLASS_W_M2_K;
        /// Share of the sun that glass and covers let in.
        glass_gain_percent: MaybeFigure = GlassGainPercent, SHARE_PERCENT;
        /// Share of the sun that the outside takes up.
        absorptance_percent: MaybeFigure = AbsorptancePercent, SHARE_PERCENT;
        air_capacity_kj_k: MaybeFigure = AirCapacityKjK, CAPACITY_KJ_K;
        shell_capacity_kj_k: MaybeFigure = ShellCapacityKjK, CAPACITY_KJ_K;
        /// Water in lining and bedding, in multiples of the air's own.
        moisture_buffer: MaybeFigure = MoistureBuffer, MOISTURE_BUFFER;
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

/// Air changes with doors and roof light open on a still day (a guess).
const USUAL_AIRED_PER_H: f64 = 15.0;

impl Cabin {
    /// The choices as the cabin room reads them, the sizes stated or assumed.
    #[must_use]
    pub fn body(&self) -> cabin::Body {
        let number = |field, stated: Option<Figure>| {
            let assumed = || self.assumed_plain(field).unwrap_or(0.0);
            stated.map_or_else(assumed, |figure| figure.value)
        };
        cabin::Body {
            kind: match self.kind.unwrap_or(BodyKind::Van) {
                BodyKind::Van => cabin::BodyKind::Van,
                BodyKind::Trailer => cabin::BodyKind::Trailer,
                BodyKind::TentCabin => cabin::BodyKind::TentCabin,
                BodyKind::Boat => cabin::BodyKind::Boat,
                BodyKind::SmallCabin => cabin::BodyKind::SmallCabin,
            },
            inside_length: meters(number(CabinField::InsideLengthM, self.inside_length_m)),
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
            shade: number(CabinField::ShadePercent, self.shade_percent) / 100.0,
        }
    }

    /// Defaults that need no other answer.
    fn assumed_plain(&self, field: CabinField) -> Option<f64> {
        use CabinField as C;
        Some(match field {
            C::InsideLengthM => USUAL_LENGTH_M,
            C::ShadePercent => 0.0,
            C::PeopleCount => 2.0,
            C::AnimalsCount => 0.0,
            C::AnimalKg => 15.0,
            C::AiredChangesPerH => USUAL_AIRED_PER_H,
            C::SetPointC => 25.0,
            C::DeadBandK => 1.0,
            _ => return None,
        })
    }

    /// The default of one of the cabin's numbers; derived ones follow from the
    /// answers (see [`cabin::Body::figures`]).
    #[must_use]
    pub fn assumed(&self, field: CabinField) -> Option<Figure> {
        use CabinField as C;
        if let Some(value) = self.assumed_plain(field) {
            return Some(match field {
                C::PeopleCount | C::AnimalsCount | C::SetPointC | C::DeadBandK => {
                    Figure::exact(value)
                }
                _ => Figure::guess(value),
            });
        }
        let derived = self.body().figures().ok()?;
        derived_value(&derived, field).map(Figure::guess)
    }
}

/// A derived figure in the unit of its key.
fn derived_value(of: &Figures, field: CabinField) -> Option<f64> {
    use CabinField as C;
    Some(match field {
        C::AirChangesPerH => of.air_changes_per_hour,
        C::FloorM2 => in_square_meters(of.floor),
        C::VolumeM3 => in_cubic_meters(of.volume),
        C::RoofM2 => in_square_meters(of.roof),
        C::WallsM2 => in_square_meters(of.walls),
        C::WallGlassM2 => in_square_meters(of.wall_glass),
        C::RoofGlassM2 => in_square_meters(of.roof_glass),
        C::LitWallsPercent => 100.0 * of.lit_walls,
        C::ShellWM2K => in_watts_per_square_meter_kelvin(of.shell_coefficient),
        C::GlassWM2K => in_watts_per_square_meter_kelvin(of.glass_coefficient),
        C::GlassGainPercent => 100.0 * of.glass_gain,
        C::AbsorptancePercent => 100.0 * of.absorptance,
        C::AirCapacityKjK => in_joules_per_kelvin(of.air_capacity) / 1000.0,
        C::ShellCapacityKjK => in_joules_per_kelvin(of.shell_capacity) / 1000.0,
        C::MoistureBuffer => of.moisture_buffer,
        _ => return None,
    })
}
