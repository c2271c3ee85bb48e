//! The engine, its curves and its parts, as they were typed.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::hardware_field::HardwareField;
use crate::power::AirCorrection;
use crate::quantity::notation::{Entry, Units};

/// Texts by the field that they stand in. A field that nobody filled in is not
/// there.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Fields(BTreeMap<HardwareField, Entry>);

impl Fields {
    /// The text of a field, if somebody typed one.
    pub fn get(&self, slot: HardwareField) -> Option<&Entry> {
        self.0.get(&slot)
    }

    /// The text of a field; an empty one where nobody typed one.
    pub fn at(&self, slot: HardwareField) -> &Entry {
        static BLANK: Entry = Entry { text: String::new(), typed_in: Units::METRIC };
        self.get(slot).unwrap_or(&BLANK)
    }

    /// The text of a field, to be changed; a field that was blank begins empty.
    pub fn entry(&mut self, slot: HardwareField) -> &mut Entry {
        self.0.entry(slot).or_default()
    }

    /// Whether there is nothing in it.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Whether nothing that is in it says anything.
    pub fn all_blank(&self) -> bool {
        self.0.values().all(Entry::is_blank)
    }
}

impl<const N: usize> From<[(HardwareField, &str); N]> for Fields {
    /// Texts typed in metric units.
    fn from(texts: [(HardwareField, &str); N]) -> Self {
        Self(texts.into_iter().map(|(slot, text)| (slot, Entry::metric(text))).collect())
    }
}

/// Where a curve was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MeasuredAt {
    /// At the crank.
    #[default]
    Crank,
    /// At the driven wheels.
    Wheel,
}

/// Which columns of a table hold what, where the table itself does not say it.
/// Columns count from 1.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct ColumnForm {
    /// The column of engine speed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub speed: Option<u32>,
    /// The column of torque or power.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub value: Option<u32>,
    /// What that column holds, and in which unit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub unit: Option<ValueUnit>,
}

/// What a column of a curve's table holds: torque or power, by its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ValueUnit {
    /// Torque in newton metres.
    NewtonMetres,
    /// Torque in pound-feet.
    PoundFeet,
    /// Power in kilowatts.
    Kilowatts,
    /// Power in horsepower of 550 ft lbf/s.
    Horsepower,
    /// Power in metric horsepower of 75 kgf m/s.
    MetricHorsepower,
}

/// A power curve as it was typed, pasted or imported.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct CurveForm {
    /// Tells it apart; never used again.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// The table: engine speed against torque or power.
    pub table: Entry,
    /// Which columns hold what.
    pub columns: ColumnForm,
    /// Where it was measured.
    pub place: MeasuredAt,
    /// The calibration that was selected.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub calibration: Option<u32>,
    /// The blend that was in the tank.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub blend: String,
    /// The correction that the figures already carry.
    pub given: AirCorrection,
    /// The correction to show beside the figures as measured.
    pub correction: AirCorrection,
    /// The air in which it was measured.
    #[serde(skip_serializing_if = "Fields::is_empty")]
    pub air: Fields,
}

/// What sort of part a form describes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PartKind {
    /// A set of equal port injectors.
    PortInjectors,
    /// The direct injectors.
    DirectInjectors,
    /// A high-pressure pump, or several equal ones.
    PlungerPump,
    /// Pumps in the tank or before the rail, several equal ones or one.
    SupplyPump,
    /// The line from there, its regulator and its losses.
    SupplyLine,
    /// Nozzles for injection fluid.
    FluidNozzle,
    /// Power that somebody holds safe.
    PowerLimit,
    /// Torque that somebody holds safe.
    TorqueLimit,
    /// Air that the compressor is rated for.
    AirLimit,
}

/// What can be ticked of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// It is left out of the computation.
    SetAside,
    /// Its rating is by mass rather than by volume; of injection fluid, its strength.
    ByMass,
    /// The rail's pressure is fixed rather than following the manifold.
    FixedRail,
    /// Pumps work one behind the other rather than side by side.
    InSeries,
}

/// A part of the fuel system, or a limit that somebody set, as it was typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PartForm {
    /// Tells it apart; never used again.
    pub id: u32,
    /// What it is.
    pub kind: PartKind,
    /// Its name.
    #[serde(default)]
    pub name: String,
    /// What was ticked of it.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub marks: BTreeSet<Mark>,
    /// Its fields.
    #[serde(default)]
    pub fields: Fields,
}

impl PartForm {
    /// A part of which nothing was typed yet.
    pub fn new(id: u32, kind: PartKind) -> Self {
        Self { id, kind, name: String::new(), marks: BTreeSet::new(), fields: Fields::default() }
    }

    /// Whether this was ticked.
    pub fn is(&self, mark: Mark) -> bool {
        self.marks.contains(&mark)
    }

    /// Ticks this, or not.
    pub fn mark(&mut self, mark: Mark, on: bool) {
        if on {
            self.marks.insert(mark);
        } else {
            self.marks.remove(&mark);
        }
    }
}

/// Which blend the fuel system is judged for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BlendForm {
    /// What the log says is in the tank.
    #[default]
    Tank,
    /// The share that was typed.
    Typed,
}

/// The hardware: everything of the car that is about power and fuel flow.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct HardwareForm {
    /// The curves.
    pub curves: Vec<CurveForm>,
    /// The curve that the fuel system has to serve; the first where there is none
    /// of this number.
    pub target: u32,
    /// The curve to compare with.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub compared_with: Option<u32>,
    /// The engine and what is asked of it.
    pub engine: Fields,
    /// Which blend is judged.
    pub blend: BlendForm,
    /// The parts, and the limits that people set.
    pub parts: Vec<PartForm>,
    /// Injection fluid to be mixed.
    pub mix: Fields,
    /// Whether its strengths and its amount are by mass.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub mix_by_mass: bool,
}

/// A part of a power curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CurvePart {
    /// Its name.
    Name,
    /// Its table.
    Table,
    /// The column of engine speed.
    SpeedColumn,
    /// The column of torque or power.
    ValueColumn,
    /// The blend that was in the tank.
    Blend,
    /// The air in which it was measured.
    Air(HardwareField),
}
