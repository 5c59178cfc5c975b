"""Plan to document: the work in its order, said and drawn."""
