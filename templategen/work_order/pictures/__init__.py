"""Plan to pictures: one module for what is seen together, each drawn from the plan's own numbers."""
