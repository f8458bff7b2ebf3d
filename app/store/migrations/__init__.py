"""The steps that lead from an empty file to today's schema."""
