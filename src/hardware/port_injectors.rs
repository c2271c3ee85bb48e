//! Injectors in the intake ports, with their dead times.

use crate::message::keys::hardware_problems;
use crate::message::keys::workings;
use thiserror::Error;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::electric_potential::volt;
use uom::si::mass_rate::gram_per_second;
use uom::si::time::millisecond;

use crate::quantity::{Band, ElectricPotential, MassRate, Time};
use crate::workings::{Arithmetic, Expression, literal, number};

use super::fuel_part::FuelSystemPart;
use super::nozzle::RatedFlow;
use super::operating_point::OperatingPoint;
use super::part_of::PartOf;
use super::part_workings::PartWorkings;
use super::regulator::Regulator;
use super::requirement::Requirement;
use super::sources::CYCLE;
use super::table::{OutsideTable, locate, out_of_order};

/// Why values do not make a table of dead times.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum DeadTimeError {
    /// There are no values.
    Empty,
    /// The voltages do not rise.
    NotAscending {
        /// A voltage, in V.
        before: f64,
        /// The one after it, in V.
        after: f64,
    },
    /// A dead time is none.
    Time {
        /// The time given, in ms.
        given: f64,
    },
}

/// Dead times of an injector over voltage, at one pressure: how much of the
/// commanded time passes before it flows, less what it flows while it closes.
///
/// Read with straight lines between measured values and never beyond them: the
/// curve steepens as the voltage falls.
#[derive(Clone, Debug, PartialEq)]
pub struct DeadTimes(Vec<(ElectricPotential, Time)>);

impl DeadTimes {
    /// A table from pairs of voltage and dead time, voltages rising.
    ///
    /// # Errors
    /// When there are none, the voltages do not rise, or a time is below zero.
    pub fn new(pairs: Vec<(ElectricPotential, Time)>) -> Result<Self, DeadTimeError> {
        if pairs.is_empty() {
            return Err(DeadTimeError::Empty);
        }
        let voltages = pairs.iter().map(|(voltage, _)| voltage.get::<volt>());
        if let Some((before, after)) = out_of_order(voltages) {
            return Err(DeadTimeError::NotAscending { before, after });
        }
        for (_, time) in &pairs {
            let given = time.get::<millisecond>();
            if !(given >= 0.0 && given.is_finite()) {
                return Err(DeadTimeError::Time { given });
            }
        }
        Ok(Self(pairs))
    }

    /// The dead time at a voltage.
    ///
    /// # Errors
    /// When the voltage is outside the table.
    pub fn at(&self, voltage: ElectricPotential) -> Result<Time, OutsideTable> {
        let step = |row: &(ElectricPotential, Time)| row.0.get::<volt>();
        let given = voltage.get::<volt>();
        locate(&self.0, given, step)
            .map(|(below, above, part)| {
                let (low, high) = (self.0[below].1, self.0[above].1);
                low + (high - low) * part
            })
            .ok_or_else(|| OutsideTable {
                what: hardware_problems::DEAD_TIMES,
                unit: "V",
                given,
                low: self.0.first().map_or(f64::NAN, step),
                high: self.0.last().map_or(f64::NAN, step),
            })
    }
}

/// Injectors in the ports of a four-stroke engine, each opening once a cycle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PortInjectors {
    /// How many.
    pub count: u32,
    /// What one passes when open.
    pub rated: RatedFlow,
    /// How the rail's pressure is held.
    pub regulator: Regulator,
    /// Dead time at the voltage and pressure they run at.
    pub dead_time: Time,
    /// The largest commanded duty, 0 to 1.
    pub limit: f64,
}

impl PortInjectors {
    /// What all of them pass when held open, `n m`.
    pub fn static_flow(&self, at: &OperatingPoint<'_>) -> MassRate {
        let difference = self.regulator.difference(at.manifold);
        self.rated.mass_flow(difference, at.fuel.density) * f64::from(self.count)
    }

    /// Share of the cycle for which they must flow, `m_f / (n m)`: above 1 it cannot
    /// be done, infinite when nothing flows.
    pub fn effective_duty(&self, flow: MassRate, at: &OperatingPoint<'_>) -> f64 {
        if flow <= MassRate::default() {
            return 0.0;
        }
        let difference = self.regulator.difference(at.manifold);
        let open = self.rated.mass_flow(difference, at.fuel.density);
        self.effective(flow.get::<gram_per_second>(), open.get::<gram_per_second>())
    }

    /// Share of the cycle for which they are commanded, the effective duty and the
    /// dead time: `D = m_f / (n m) + t_dead / T`.
    pub fn duty(&self, flow: MassRate, at: &OperatingPoint<'_>) -> f64 {
        self.effective_duty(flow, at) + self.dead_share(at)
    }

    /// The fuel that they give at a commanded duty; zero when dead time takes all.
    pub fn capacity(&self, duty: f64, at: &OperatingPoint<'_>) -> MassRate {
        self.static_flow(at) * self.open_share(duty, at)
    }

    /// Share of the cycle for which they flow at a commanded duty.
    fn open_share(&self, duty: f64, at: &OperatingPoint<'_>) -> f64 {
        (duty - self.dead_share(at)).max(0.0)
    }

    fn dead_share(&self, at: &OperatingPoint<'_>) -> f64 {
        self.dead(at)
    }

    /// Share of the cycle for which they must flow, from the flow of all and that of one
    /// held open: `m_f / (n q)`.
    fn effective<A: Arithmetic>(&self, flow: A, open: A) -> A {
        flow / (A::number("n", f64::from(self.count)) * open)
    }

    /// Dead time as a share of the cycle, which takes `120,000 / N` milliseconds.
    fn dead<A: Arithmetic>(&self, at: &OperatingPoint<'_>) -> A {
        A::number("t_d", self.dead_time.get::<millisecond>())
            * A::number("N", at.speed.get::<revolution_per_minute>())
            / A::literal(120_000.0)
    }
}

/// One of the sets of port injectors of an engine. All sets are open for equally long,
/// so they share the fuel of the ports by their static flow.
#[derive(Clone, Copy, Debug)]
pub(super) struct PortSet<'a> {
    /// All sets.
    pub(super) sets: &'a [PortInjectors],
    /// The place of this one among them.
    pub(super) place: usize,
}

impl PortSet<'_> {
    fn own(&self) -> &PortInjectors {
        &self.sets[self.place]
    }

    /// What all sets pass when held open.
    fn static_flow(&self, at: &OperatingPoint<'_>) -> MassRate {
        self.sets.iter().map(|set| set.static_flow(at)).sum()
    }

    /// The share of the ports' fuel that this set passes.
    fn share(&self, at: &OperatingPoint<'_>) -> f64 {
        (self.own().static_flow(at) / self.static_flow(at)).into()
    }
}

impl FuelSystemPart for PortSet<'_> {
    fn id(&self) -> PartOf {
        PartOf::Port(self.place)
    }

    fn limit(&self) -> f64 {
        self.own().limit
    }

    fn capacity(&self, used: f64, at: &OperatingPoint<'_>) -> Result<Band<MassRate>, OutsideTable> {
        // When this set is at the limit, the others pass as much as that time lets them.
        Ok(Band::exact(self.static_flow(at) * self.own().open_share(used, at)))
    }

    fn used(&self, flow: MassRate, at: &OperatingPoint<'_>) -> Result<Band<f64>, OutsideTable> {
        Ok(Band::exact(self.own().duty(flow * self.share(at), at)))
    }

    fn enough(&self, larger: f64, _: MassRate, _: &OperatingPoint<'_>) -> Requirement {
        Requirement::PortFlow(self.own().rated.scaled(larger))
    }

    fn derive(
        &self,
        workings: &mut PartWorkings<'_>,
        flow: Expression,
        share: f64,
    ) -> Option<Expression> {
        let own = self.own();
        let flow = flow * number("s", self.share(workings.at) * share);
        let difference = own.regulator.difference(workings.at.manifold);
        let open = own.rated.derive(workings, difference);
        let dead = own.dead::<Expression>(workings.at);
        let effective = own.effective(flow, open);
        let duty = effective.clone() + dead.clone();
        workings.add(workings::DUTY_COMMANDED, "D", &duty, (4, ""), &[CYCLE]);
        Some((number("L", own.limit) - dead) / effective - literal(1.0))
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn table(pairs: &[(f64, f64)]) -> Result<DeadTimes, DeadTimeError> {
        let pair = |&(volts, milliseconds)| {
            (ElectricPotential::new::<volt>(volts), Time::new::<millisecond>(milliseconds))
        };
        DeadTimes::new(pairs.iter().map(pair).collect())
    }

    #[test]
    fn dead_times_lie_on_straight_lines_inside_the_table() {
        let times = table(&[(10.0, 1.8), (12.0, 1.2), (14.0, 0.9)]).unwrap();
        let at = |volts| times.at(ElectricPotential::new::<volt>(volts));
        assert!((at(13.0).unwrap().get::<millisecond>() - 1.05).abs() < 1e-12);
        assert!((at(10.0).unwrap().get::<millisecond>() - 1.8).abs() < 1e-12);
        let error = at(9.0).unwrap_err();
        assert_eq!((error.given, error.low, error.high), (9.0, 10.0, 14.0));
    }

    #[test]
    fn a_table_that_makes_no_sense_is_refused() {
        assert_eq!(table(&[]), Err(DeadTimeError::Empty));
        assert_eq!(
            table(&[(12.0, 1.2), (10.0, 1.8)]),
            Err(DeadTimeError::NotAscending { before: 12.0, after: 10.0 })
        );
        assert!(matches!(table(&[(12.0, -1.2)]), Err(DeadTimeError::Time { .. })));
    }
}
