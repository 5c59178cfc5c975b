"""The page's server: from a socket to the plain functions that answer, and nothing kept in between."""
