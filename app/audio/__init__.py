"""Turns cues into samples, and samples into sound."""
