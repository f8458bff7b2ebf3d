"""The squad looked back on: who needs a look first, and how the last weeks went."""
