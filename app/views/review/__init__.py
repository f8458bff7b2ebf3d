"""Review: what was done, as a list of runs and as charts."""
