"""Choosing the reference side of an athlete, which left and right are measured by."""
