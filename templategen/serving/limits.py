"""How much the page's server takes on. All of it is our choice: far above any job, and little enough to end soon."""

MOST_TEXT = 2**20
"""Characters of a spec; a file of one is at most 1 MiB."""
MOST_TYPED = 4_000
"""Characters of one value; what is said after hanging may be this long."""
MOST_IN_LIST = 400
"""Values of one list; a spec has at most 200 floor marks, and says so itself."""
MOST_FIELDS = 400
"""Fields of a window; a spec has about a hundred."""
MOST_WINDOWS = 100
"""A job has at most 50, and says so itself."""
MOST_NAME = 100
"""Characters of a field's path, or of a file's name."""
MOST_PAGES = 5_000
LEAST_PIXELS, MOST_PIXELS = 64, 2_400
"""Across the picture of a sheet."""

MOST_BODY = 5 * 2**19
"""Bytes of a request's body: 2.5 MiB, a whole spec and a form of it."""
MOST_DRAINED = 16 * 2**20
"""Bytes that are read of a body that is too large, so that its sender gets to read why it is refused."""
BODY_SECONDS = 10.0
"""For a whole body to come in."""
HEAD_SECONDS = 10.0
"""For a request's line and headers to come in."""
MOST_HEAD = 32 * 2**10
"""Bytes of a request's line and headers; a browser sends under 2 KiB."""
MOST_CONNECTIONS = 100
"""At once; a browser opens six."""
IDLE_SECONDS = 30
"""A connection without a request is kept so long."""
MOST_FAULTS = 100
"""Faults told of one body."""

PLAN_SECONDS, KIT_SECONDS = 10.0, 60.0
"""For one piece of work, from when a worker has it; a plan takes some hundredths, a kit a second or two."""
PLANS_WAITING, KITS_WAITING = 64, 8
"""Pieces of work that wait for a worker; those beyond are told to come again."""
RETRY_SECONDS = 1
MOST_PLANNERS = 4
START_SECONDS = 60.0
"""For a worker to start."""
MEMORY = 3 * 2**30
"""Bytes of address space of a worker."""
STOP_SECONDS = 1
"""Work that is not done so long after Ctrl-C is given up."""
