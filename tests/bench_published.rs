//! The bench against logs, standards and libraries that nobody here wrote.

#[path = "bench/logs.rs"]
mod logs;
#[path = "bench/table.rs"]
mod table;
#[path = "bench/trade.rs"]
mod trade;
#[path = "bench/uncertainty.rs"]
mod uncertainty;
#[path = "support/vectors.rs"]
mod vectors;
