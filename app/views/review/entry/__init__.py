"""Entering tests from the review: what was typed, the form, and what is kept of it."""
