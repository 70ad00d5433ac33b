"""The counts of a cleaning report that say what was left out: with those kept they add up to the rows read."""

LEFT_OUT = (
    "unreadable",
    "negative",
    "duplicates_equal",
    "duplicates_averaged",
    "stopped",
    "start_up",
    "warm_up",
    "gaps",
    "spikes",
    "without_covariates",
)
