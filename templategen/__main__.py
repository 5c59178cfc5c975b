"""``python -m templategen``."""

from .cli import main

main()
