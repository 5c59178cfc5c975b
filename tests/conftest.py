"""What holds for every test."""

from __future__ import annotations

from hypothesis import HealthCheck, settings

# How long a test takes is no fault of what it tries, least of all on a machine that does something else as well.
settings.register_profile("suite", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("suite")
