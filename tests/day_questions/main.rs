//! What the hot day is asked beside its trace.

mod changes;
