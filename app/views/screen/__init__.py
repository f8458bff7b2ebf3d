"""How a person is led by eye: colours, letters, motion and language, chosen and seen at once."""
