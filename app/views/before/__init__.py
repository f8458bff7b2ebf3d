"""What stands before a run: questions about the day, what needs care, where it hurts."""
