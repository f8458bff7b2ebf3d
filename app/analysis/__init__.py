"""Numbers drawn from what was done: pure functions over records."""
