"""The only place that opens a sound device: one port, three ways to fill it, and the choice among them."""
