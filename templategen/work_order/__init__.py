"""The work order: what is done, step by step, to make what was planned, in words and boxes to tick."""
