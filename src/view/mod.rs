//! Pictures: series to geometry to SVG. `chart` and `diagram` know no plan; `drawing`
//! says which curves, paths and flows of an answer stand in them.

pub mod chart;
pub mod diagram;
pub mod drawing;
