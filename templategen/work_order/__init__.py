"""The work order: what is needed for the work, and the record that is kept of it."""
