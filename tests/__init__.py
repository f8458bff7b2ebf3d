"""The tests: what must hold, said in sentences."""
