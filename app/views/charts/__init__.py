"""Charts: what they are made of, how they are drawn, read as a table, and kept as a picture."""
