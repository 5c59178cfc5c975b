"""How much a request may ask for. All of it is our choice: far above any job, and little enough to end soon."""

MOST_BODY = 5 * 2**19
"""Bytes of a request, 2.5 MiB: a spec of 1 MiB, written as JSON, and a form."""
MOST_DRAINED = 4 * MOST_BODY
"""Bytes that are still taken in, and thrown away, so that whoever sends too much reads why it is refused."""
SECONDS_TO_SEND = 15.0
"""For a body to arrive."""
MOST_TEXT = 4_000
"""Characters in one field of a form."""
MOST_LIST = 400
"""Lengths in one field; a spec takes 200, and says so itself."""
MOST_FIELDS = 400
"""Fields of a form, or of one window; a spec has about a hundred."""
MOST_WINDOWS = 200
"""Windows in a form; a job takes 50, and says so itself."""
WIDEST = 2_400
"""Pixels that a picture of a sheet may be wide."""
SECONDS_OF_PLANNING = 10.0
SECONDS_OF_MAKING = 60.0
"""For a kit; one of 44 m of paper takes three."""
MOST_WAITING = 200
"""Requests that wait for a worker; more are told to come back."""
MEMORY = 3 * 2**30
"""Bytes of address space for each worker."""
COME_BACK = 2
"""Seconds until who was sent away may ask again."""
