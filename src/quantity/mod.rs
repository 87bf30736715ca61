//! Numbers with meaning.
