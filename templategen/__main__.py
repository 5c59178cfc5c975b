"""``python -m templategen``."""

from .cli import start

start()
