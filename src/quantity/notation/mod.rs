//! Text to quantity and back.
