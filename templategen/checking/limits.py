"""How much a check takes on. All of it is our choice: far above any kit, and little enough to end soon."""

MOST_BYTES = 256 * 2**20
"""A kit is under 1 MiB; twenty sheets as pictures of 600 points to the inch are under 100."""
MOST_PAGES = 2_000
"""Twenty strips for the widest panel with the most loops come to 1,932 on letter paper."""
MOST_OBJECTS = 100_000
"""Things drawn on one page; a sheet of a kit has a few hundred."""
MOST_STROKES = 400_000
MOST_LETTERS = 200_000
DEEPEST = 24
"""Forms inside forms; a print queue nests two or three."""
MOST_PAIRS = 1_000_000
"""Of lines on one page that are held against each other; where there are more, the page is looked at as a picture."""
MOST_POINTS = 12_000_000
"""In the picture of one page: letter paper at 300 points to the inch is 8.4 million."""
SECONDS_OF_DRAWING = 25.0
"""For pages that are pictures, all together; about 0.2 s each."""
SECONDS = 60.0
"""For the whole check, in its own process."""
MEMORY = 3 * 2**30
"""Bytes of address space for the process that reads the file."""
