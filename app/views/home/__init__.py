"""The first page: who trains, which plan, what is still owed, and one key to begin."""
