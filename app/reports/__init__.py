"""Printable reports and exports."""
