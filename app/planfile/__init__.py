"""Reads, checks and writes plan files and rosters."""
