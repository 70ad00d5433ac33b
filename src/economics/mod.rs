//! Economics: what a line costs a year, what a change saves, and when it has paid for itself.
//!
//! Takes quantities and prices (oil used, hours, power, chain life); gives nine yearly cost items, savings item by item,
//! payback with a status in words, net present value, rate of return and life-cycle cost. Safety is not given a price.
//! Knows nothing of chains or oil: the numbers come from the rooms before it.
//!
//! Money is any currency. Quantities and the prices that multiply them only need the same unit (m³ and money per m³, s
//! and money per s, J and money per J). What happens a year, a life or a horizon is in years, rates are per year.

mod annuity; // loan instalment, balance, duration
mod compare; // now against proposed
mod irr; // internal rate of return with all its roots
mod items; // the nine yearly items
mod lifecycle; // life-cycle cost; replacements booked in their year
mod payback; // payback as an outcome with an optional number
mod present_value; // present value factors, NPV, NPV curve
mod result; // what a result says of money
mod survey;
mod yearly; // quantities × prices → items // what a survey says of it

pub use annuity::{capital_recovery, future_value, payment, periods};
pub use compare::{Comparison, Replacements, Terms, compare};
pub use irr::{Irr, IrrStatus, irr, irr_roots, modified_irr};
pub use items::Items;
pub use lifecycle::{life_cycle_cost, replacement_flows, saving_flows};
pub use payback::{CALENDAR_DAYS, Payback, discounted_payback_years, payback_days, payback_years};
pub use present_value::{escalating_present_value, npv, npv_curve, single_present_value, uniform_present_value};
pub use result::*;
pub use survey::*;
pub use yearly::{Piece, Prices, Quantities, chain_replacement_cost, wearing_pieces, yearly};
