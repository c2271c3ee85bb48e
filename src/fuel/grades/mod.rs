//! Pump fuels.
/// t
#[derive(Debug)]
pub struct Grade;
