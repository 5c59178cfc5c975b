"""A printed-to-be file held against what its sheets say: will this kit still print true?"""

from .apart import check
from .findings import Finding, Verdict
from .telling import tell_verdict, verdict_record

__all__ = ["Finding", "Verdict", "check", "tell_verdict", "verdict_record"]
