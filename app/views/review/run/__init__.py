"""One run looked back on: each bout and rep, what was planned against what was done."""
