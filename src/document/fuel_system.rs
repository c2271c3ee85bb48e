//! Curves, parts and calibrations of a car: added, found, removed.

use super::car::{CalibrationForm, Car};
use super::file::CarFile;
use super::hardware::{CurveForm, HardwareForm, PartForm, PartKind};

impl HardwareForm {
    /// The curve to serve: the one that was chosen, or else the first.
    pub fn target_curve(&self) -> Option<&CurveForm> {
        let chosen = self.curves.iter().find(|it| it.id == self.target);
        chosen.or(self.curves.first())
    }

    /// The curve with this number.
    pub fn curve(&self, id: u32) -> Option<&CurveForm> {
        self.curves.iter().find(|it| it.id == id)
    }

    /// The same, to be changed.
    pub fn curve_mut(&mut self, id: u32) -> Option<&mut CurveForm> {
        self.curves.iter_mut().find(|it| it.id == id)
    }

    /// The part, or limit, with this number.
    pub fn part(&self, id: u32) -> Option<&PartForm> {
        self.parts.iter().find(|it| it.id == id)
    }

    /// The same, to be changed.
    pub fn part_mut(&mut self, id: u32) -> Option<&mut PartForm> {
        self.parts.iter_mut().find(|it| it.id == id)
    }

    fn count(&self, kind: PartKind) -> usize {
        self.parts.iter().filter(|it| it.kind == kind).count()
    }
}

impl Car {
    /// The calibration with this number.
    pub fn calibration(&self, id: u32) -> Option<&CalibrationForm> {
        self.calibrations.iter().find(|it| it.id == id)
    }

    /// The same, to be changed.
    pub fn calibration_mut(&mut self, id: u32) -> Option<&mut CalibrationForm> {
        self.calibrations.iter_mut().find(|it| it.id == id)
    }
}

impl CarFile {
    /// Adds a curve, named by how many there are then. The first one is the one to serve.
    pub fn add_curve(&mut self, name: impl FnOnce(usize) -> String) {
        let id = self.next_id();
        let name = name(self.hardware.curves.len() + 1);
        self.hardware.curves.push(CurveForm { id, name, ..CurveForm::default() });
    }

    /// Adds a part, or a limit, named by its kind and how many of that there are then. The
    /// first pump brings the line that it feeds.
    pub fn add_part(&mut self, kind: PartKind, name: impl Fn(PartKind, usize) -> String) {
        let wants_line =
            kind == PartKind::SupplyPump && self.hardware.count(PartKind::SupplyLine) == 0;
        let kinds = [Some(kind), wants_line.then_some(PartKind::SupplyLine)];
        for kind in kinds.into_iter().flatten() {
            let id = self.next_id();
            let name = name(kind, self.hardware.count(kind) + 1);
            self.hardware.parts.push(PartForm { name, ..PartForm::new(id, kind) });
        }
    }

    /// Adds a calibration, named by how many there are then.
    pub fn add_calibration(&mut self, name: impl FnOnce(usize) -> String) {
        let id = self.next_id();
        let name = name(self.car.calibrations.len() + 1);
        self.car.calibrations.push(CalibrationForm { id, name, ..CalibrationForm::default() });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Id;

    fn name(kind: PartKind, count: usize) -> String {
        format!("{kind:?} {count}")
    }

    #[test]
    fn the_first_pump_brings_the_line_that_it_feeds() {
        let mut car = CarFile::new(Id::new("car").unwrap());
        car.add_part(PartKind::SupplyPump, name);
        car.add_part(PartKind::SupplyPump, name);
        let kinds: Vec<PartKind> = car.hardware.parts.iter().map(|it| it.kind).collect();
        assert_eq!(kinds, [PartKind::SupplyPump, PartKind::SupplyLine, PartKind::SupplyPump]);
        assert_eq!(car.hardware.parts[2].name, "SupplyPump 2");
    }

    #[test]
    fn the_first_curve_is_served_until_another_is_chosen() {
        let mut car = CarFile::new(Id::new("car").unwrap());
        assert!(car.hardware.target_curve().is_none());
        car.add_curve(|count| format!("Curve {count}"));
        car.add_curve(|count| format!("Curve {count}"));
        assert_eq!(car.hardware.target_curve().unwrap().name, "Curve 1");
        car.hardware.target = car.hardware.curves[1].id;
        assert_eq!(car.hardware.target_curve().unwrap().name, "Curve 2");
    }
}
