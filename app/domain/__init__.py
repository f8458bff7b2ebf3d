"""What a plan, a phase and a rep are: frozen values and pure functions, standard library only."""
