"""How a person is led by ear: chosen, tried, and set against the picture."""
