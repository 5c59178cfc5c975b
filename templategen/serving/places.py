"""Where the page is served, and by which names a request may call it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from ipaddress import IPv4Address, IPv6Address, ip_address

_HOST = re.compile(r"(\[[0-9A-Fa-f:.]{2,45}\]|[^\s:\[\]@/?#]{1,255})(?::([0-9]{1,5}))?")
_OWN = ("localhost", "127.0.0.1", "::1")


@dataclass(frozen=True, slots=True)
class Place:
    """An address and a port that the page is served at."""

    address: str
    """As it was asked for: an IP address, or the name of one."""
    port: int

    @property
    def loopback(self) -> bool:
        """Whether this machine alone can reach it."""
        literal = _literal(self.address)
        return self.address.lower() == "localhost" if literal is None else literal.is_loopback

    @property
    def url(self) -> str:
        """What a person on this machine types."""
        literal = _literal(self.address)
        if literal is None or not literal.is_unspecified:
            name = self.address if literal is None or literal.version == 4 else f"[{literal}]"
        else:
            name = "127.0.0.1" if literal.version == 4 else "[::1]"
        return f"http://{name}:{self.port}/"

    def answers_to(self, host: str) -> bool:
        """Whether a request may name ``host``.

        A name that somebody else's name server has pointed at this machine is not among them, so no page of theirs
        can read this one (DNS rebinding). Where the page is served at every address of the machine, any address in
        numbers will do: a name server has no say in those.
        """
        parts = _HOST.fullmatch(host)
        if parts is None or int(parts[2] or 80) != self.port:
            return False
        name = parts[1].strip("[]").lower()
        literal, asked = _literal(name), _literal(self.address)
        if literal is None:
            return name in (_OWN[0], self.address.lower())
        return str(literal) in _OWN or literal == asked or (asked is not None and asked.is_unspecified)


def _literal(text: str) -> IPv4Address | IPv6Address | None:
    try:
        return ip_address(text)
    except ValueError:
        return None
