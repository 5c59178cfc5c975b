"""Sheets to bytes: PDF, SVG, JSON, text. No word of curtains here."""
