"""Making the report of an athlete, or their sheet, from the review."""
