"""Pacewright leads prescribed movement rep by rep and records what was done."""

__version__ = "0.1.0"
