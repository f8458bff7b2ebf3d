"""The doors: one small module a command."""
