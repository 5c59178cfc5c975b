"""Headings, a module each: what is measured of one that is made, and of one that a panel came with."""
