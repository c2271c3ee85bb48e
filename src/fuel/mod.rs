//! Fuel chemistry.
