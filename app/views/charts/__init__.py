"""Charts: what they are made of, how they are drawn, and how they are read as a table or kept as a picture."""
