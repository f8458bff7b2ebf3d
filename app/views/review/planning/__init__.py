"""Planned sessions in the review: which plan on which day for whom."""
