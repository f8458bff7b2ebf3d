"""The group session: the gym screen for the room and the console for its coach."""
