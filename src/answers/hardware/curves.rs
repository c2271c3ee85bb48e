//! Power curves, from the texts.

use super::engine::SetLimit;
use super::texts::{HardwareReader, Texts};
use crate::answers::hardware::curve_table::{ColumnChoice, CurveTable, ValueIs};
use crate::answers::problem::CurveTableError;
use crate::document::{
    ColumnForm, CurveForm, CurvePart, Field, HardwareField, HardwareForm, MeasuredAt, ValueUnit,
};
use crate::message::keys::hardware_problems;
use crate::power::{
    AirCorrection, AmbientAir, Crossing, CurvePoint, DrivelineLoss, PowerCurve, is_in_usual_range,
};
use crate::quantity::notation::Entry;
use crate::quantity::notation::quantities::{AIR_PRESSURE, POWER, TEMPERATURE, TORQUE};
use crate::quantity::notation::{Units, parse_share};
use crate::quantity::{Band, CrankPower, Share, WheelPower};

/// The correction of a curve for the air in which it was measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corrected {
    /// The rule.
    pub rule: AirCorrection,
    /// What the figures as measured are multiplied by.
    pub factor: f64,
    /// The air.
    pub air: AmbientAir,
}

impl Corrected {
    /// Whether the factor is within the range for which such rules are meant.
    pub fn is_usual(&self) -> bool {
        is_in_usual_range(self.factor)
    }
}

/// A curve as it was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct CurveRead {
    /// Its form.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// Where it was measured.
    pub place: MeasuredAt,
    /// The calibration that was selected.
    pub calibration: Option<u32>,
    /// The blend that was in the tank.
    pub blend: Option<Share>,
    /// The table, for a preview.
    pub table: CurveTable,
    /// The curve at the crank, as measured and as expected; nothing where the table,
    /// the loss or the air does not yet say enough.
    pub at_crank: Option<PowerCurve>,
    /// The loss between crank and wheels.
    pub loss: Option<DrivelineLoss>,
    /// The correction that was chosen, to be shown beside the figures as measured.
    pub corrected: Option<Corrected>,
    /// The correction that the figures carried and that was taken off.
    pub taken_off: Option<Corrected>,
    /// The limits that it crosses, each with its form.
    pub crossings: Vec<(u32, Crossing)>,
}

impl CurveRead {
    /// The power at the crank behind an expected one: exact where it was measured
    /// there, a band where only the wheels were measured.
    pub fn crank(&self, expected: CrankPower) -> Band<CrankPower> {
        match (self.place, self.loss) {
            (MeasuredAt::Wheel, Some(loss)) => loss.crank(measured_at_wheel(expected, loss)),
            _ => Band::exact(expected),
        }
    }

    /// The power at the wheels that belongs to a crank power.
    pub fn wheel(&self, crank: CrankPower) -> Option<Band<WheelPower>> {
        let loss = self.loss?;
        Some(match self.place {
            MeasuredAt::Crank => loss.wheel(crank),
            MeasuredAt::Wheel => Band::exact(measured_at_wheel(crank, loss)),
        })
    }
}

/// The wheel power from which an expected crank power was worked out.
fn measured_at_wheel(expected: CrankPower, loss: DrivelineLoss) -> WheelPower {
    WheelPower::new(expected.get() * (1.0 - loss.share_of_crank().expected()))
}

/// The unit that was chosen for a column of values.
fn chosen_unit(unit: ValueUnit, units: Units) -> Option<ValueIs> {
    let torque = |symbol| TORQUE.named(symbol, units).map(ValueIs::Torque);
    let power = |symbol| POWER.named(symbol, units).map(ValueIs::Power);
    match unit {
        ValueUnit::NewtonMetres => torque("n m"),
        ValueUnit::PoundFeet => torque("lb ft"),
        ValueUnit::Kilowatts => power("kw"),
        ValueUnit::Horsepower => power("hp"),
        ValueUnit::MetricHorsepower => power("ps"),
    }
}

/// A table by the columns that were chosen.
pub(super) fn table(
    text: &str,
    columns: ColumnForm,
    units: Units,
) -> Result<CurveTable, CurveTableError> {
    let place = |column: Option<u32>| {
        column.and_then(|it| usize::try_from(it).ok()).and_then(|it| it.checked_sub(1))
    };
    let choice = ColumnChoice {
        speed: place(columns.speed),
        value: place(columns.value),
        boost: None,
        value_is: columns.unit.and_then(|unit| chosen_unit(unit, units)),
    };
    CurveTable::read(text, &choice, units)
}

impl CurveForm {
    /// The table as it is understood, for a preview.
    ///
    /// # Errors
    /// When the text is no table, or a column was chosen that is not there.
    pub fn understood(&self) -> Result<CurveTable, CurveTableError> {
        table(&self.table.text, self.columns, self.table.typed_in)
    }

    /// Takes in another table, and from it where it was measured, if it says so.
    pub fn take_table(&mut self, text: Entry) {
        self.table = text;
        self.columns = ColumnForm::default();
        if let Some(place) = self.understood().ok().and_then(|table| table.measured_at()) {
            self.place = place;
        }
    }
}

impl HardwareReader<'_> {
    pub(super) fn curves(
        &mut self,
        hardware: &HardwareForm,
        loss: Option<DrivelineLoss>,
        limits: &[(u32, SetLimit)],
    ) -> Vec<CurveRead> {
        let curves = hardware.curves.iter();
        curves.filter_map(|form| self.curve(form, loss, limits)).collect()
    }

    fn curve(
        &mut self,
        form: &CurveForm,
        loss: Option<DrivelineLoss>,
        limits: &[(u32, SetLimit)],
    ) -> Option<CurveRead> {
        let field = |part| Field::Curve(form.id, part);
        let blend = self.reader.optional(field(CurvePart::Blend), &form.blend, parse_share);
        let (taken_off, corrected) = self.corrections(form)?;
        if form.table.is_blank() {
            self.reader
                .report(field(CurvePart::Table), hardware_problems::GIVE_CURVE_ENGINE_SPEED_TORQUE);
            return None;
        }
        let read = table(&form.table.text, form.columns, form.table.typed_in);
        let table = self.reader.take(field(CurvePart::Table), read)?;
        if table.speed.is_none() {
            self.reader.report(
                field(CurvePart::SpeedColumn),
                hardware_problems::NO_COLUMN_SAYS_ENGINE_SPEED,
            );
        } else if table.value.is_none() {
            self.reader.report(
                field(CurvePart::ValueColumn),
                hardware_problems::TABLE_DOES_NOT_SAY_WHETHER,
            );
        } else if table.rows.is_empty()
            && let Some(bad) = table.bad.first()
        {
            self.reader.report(field(CurvePart::Table), bad.clone());
        }
        let wheel_to_crank = match (form.place, loss) {
            (MeasuredAt::Crank, _) => Some(1.0),
            (MeasuredAt::Wheel, loss) => {
                loss.map(|it| 1.0 / (1.0 - it.share_of_crank().expected()))
            }
        };
        let carried = taken_off.map_or(1.0, |it| it.factor);
        let at_crank = wheel_to_crank.filter(|_| !table.rows.is_empty()).and_then(|factor| {
            let points = table.rows.iter().map(|row| CurvePoint {
                speed: row.speed,
                torque: row.value.torque(row.speed) * factor / carried,
                boost: row.boost,
            });
            self.reader.take(field(CurvePart::Table), PowerCurve::new(points.collect()))
        });
        let crossings = at_crank.as_ref().map_or_else(Vec::new, |curve| {
            let crossed = |(id, limit): &(u32, SetLimit)| match limit {
                SetLimit::Curve(limit) => limit.crossed_by(curve).map(|it| (*id, it)),
                SetLimit::Air(_) => None,
            };
            limits.iter().filter_map(crossed).collect()
        });
        Some(CurveRead {
            id: form.id,
            name: form.name.clone(),
            place: form.place,
            calibration: form.calibration,
            blend: blend.flatten(),
            table,
            at_crank,
            loss,
            corrected,
            taken_off,
            crossings,
        })
    }

    /// The corrections for the air: that which the figures carry, and that which is
    /// to be shown. Nothing where one is asked for and the air is not known.
    fn corrections(&mut self, form: &CurveForm) -> Option<(Option<Corrected>, Option<Corrected>)> {
        let place = |slot| Field::Curve(form.id, CurvePart::Air(slot));
        let texts = Texts { fields: &form.air, field: &place };
        let temperature = self.quantity(&texts, HardwareField::AirTemperature, &TEMPERATURE);
        let pressure = self.quantity(&texts, HardwareField::AirPressure, &AIR_PRESSURE);
        let humidity = self.fraction(&texts, HardwareField::Humidity, 0.0..=1.0);
        if form.given == AirCorrection::None && form.correction == AirCorrection::None {
            return Some((None, None));
        }
        let temperature = self.needed(
            &texts,
            HardwareField::AirTemperature,
            temperature,
            hardware_problems::GIVE_TEMPERATURE_AIR_ENGINE_DREW,
        );
        let pressure = self.needed(
            &texts,
            HardwareField::AirPressure,
            pressure,
            hardware_problems::GIVE_PRESSURE_AIR_AROUND_BAROMETER,
        );
        let humidity = self.needed(
            &texts,
            HardwareField::Humidity,
            humidity,
            hardware_problems::GIVE_RELATIVE_HUMIDITY_50_SAY,
        );
        let air = AmbientAir::new(temperature?, pressure?, humidity?);
        let air = self.reader.take(place(HardwareField::AirTemperature), air)?;
        let by = |rule: AirCorrection| {
            (rule != AirCorrection::None).then(|| Corrected {
                rule,
                factor: rule.factor(&air),
                air,
            })
        };
        Some((by(form.given), by(form.correction)))
    }
}
