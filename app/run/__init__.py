"""The live session as a pure state machine: no clock, no screen, no disk."""
