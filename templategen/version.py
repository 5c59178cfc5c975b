"""The program's version, which a kit's fingerprint holds too."""

__version__ = "0.5.0"
