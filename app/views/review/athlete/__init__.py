"""One athlete looked back on: figures, charts, calendar, notes and runs of a stretch of time."""
