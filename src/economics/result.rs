//! What a result says of money.

use crate::noun;
use crate::quantity::{Class, Word};

const BALANCE: &str = "sum of yearly items";

macro_rules! cost_noun { ($declare:ident) => { $declare! {
    /// Cost of a year, item by item. Safety is not put into money.
    Cost / CostSi, "cost" {
        currency as currency: Word [WORD] "currency of these amounts" {}
        oil as oil: f64 [MONEY_PER_YEAR] "oil" { formula: "{supply.applied_l_per_year} × {oil.price_per_l}", source: BALANCE, class: Class::Derived }
        application_labour as application_labour: f64 [MONEY_PER_YEAR] "work of oiling, refills and checks" { formula: "{costs.applications_per_year} × {costs.hours_per_application} × {costs.labour_rate_per_h}", source: BALANCE, class: Class::Derived }
        energy as energy: f64 [MONEY_PER_YEAR] "electrical energy" { formula: "{drive.energy_kwh_per_year} × {costs.energy_price_per_kwh}", source: BALANCE, class: Class::Derived }
        cleaning as cleaning: f64 [MONEY_PER_YEAR] "cleaning" { formula: "{costs.cleanings_per_year} × ({costs.cleaning_h} × {costs.labour_rate_per_h} + {costs.cleaning_material})", source: BALANCE, class: Class::Derived }
        downtime as downtime: f64 [MONEY_PER_YEAR] "standstill" { formula: "({costs.breakdowns_per_year} × {costs.breakdown_h} + {costs.planned_stop_h}) × {costs.downtime_cost_per_h}", source: BALANCE, class: Class::Derived }
        chain as chain: f64 [MONEY_PER_YEAR] "new chain" { formula: "(length × strands × {costs.chain_price_per_m} + {costs.fit_h} × {costs.labour_rate_per_h} + {costs.fit_downtime_h} × {costs.downtime_cost_per_h}) / {wear.service_life_years}", source: "age replacement", class: Class::Derived }
        sprockets as sprockets: f64 [MONEY_PER_YEAR] "new sprockets" { formula: "{costs.sprocket_set_price} / ({costs.chains_per_sprocket} × {wear.service_life_years})", source: "age replacement", class: Class::Derived }
        waste as waste: f64 [MONEY_PER_YEAR] "disposal of oil" { formula: "({supply.applied_l_per_year} − {supply.in_joints_l_per_year}) × {costs.waste_price_per_l}", source: BALANCE, class: Class::Derived }
        upkeep as upkeep: f64 [MONEY_PER_YEAR] "upkeep of the oiling equipment" { formula: "{costs.upkeep_per_year}", source: BALANCE, class: Class::Derived }
        total_per_year as total: f64 [MONEY_A_YEAR] "all items" { formula: "{cost.oil} + {cost.application_labour} + {cost.energy} + {cost.cleaning} + {cost.downtime} + {cost.chain} + {cost.sprockets} + {cost.waste} + {cost.upkeep}", source: BALANCE, class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use cost_noun;
cost_noun!(noun);
