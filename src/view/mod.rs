//! Pictures: series to geometry to SVG. `chart` knows no plan; `drawing` says which curves
//! of an answer stand in it.

pub mod chart;
pub mod drawing;
