"""The record of what was done, in SQLite. The only place that knows SQL."""
