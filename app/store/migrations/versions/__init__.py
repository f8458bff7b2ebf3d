"""One module a step. A step has tables of its own and knows nothing of today's models."""
