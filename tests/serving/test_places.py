"""By which names a place may be called."""

from __future__ import annotations

import pytest

from templategen.serving.places import Place

HOME = Place("127.0.0.1", 8630)
OWN = ["127.0.0.1:8630", "localhost:8630", "LocalHost:8630", "[::1]:8630", "[0:0:0:0:0:0:0:1]:8630"]
FOREIGN = [
    "", "127.0.0.1", "localhost", "127.0.0.1:80", "127.0.0.1:8631", "127.0.0.1:86300", "127.0.0.1:08630x",
    "rebound.example:8630", "127.0.0.1.rebound.example:8630", "localhost.rebound.example:8630", "localhost.:8630",
    "127.0.0.1:8630@rebound.example", "user@127.0.0.1:8630", "127.0.0.1:8630/", " 127.0.0.1:8630", "127.1:8630",
    "2130706433:8630", "0x7f.1:8630", "::1:8630", "[::1:8630", "[rebound.example]:8630", "0.0.0.0:8630",
    "192.168.1.20:8630", "127.0.0.1:", "127.0.0.1:-1", "[::ffff:127.0.0.1%25lo]:8630", "127.0.0.1:8630, localhost:8630",
    "127.0.0.1:\u0668\u0666\u0663\u0660", "x" * 10_000,
]  # fmt: skip


@pytest.mark.parametrize("host", OWN)
def test_names_of_its_own(host: str) -> None:
    assert HOME.answers_to(host)


@pytest.mark.parametrize("host", FOREIGN)
def test_names_of_others(host: str) -> None:
    assert not HOME.answers_to(host)


@pytest.mark.parametrize("address", ["192.168.1.20", "fd00::20", "readingroom.local"])
def test_the_address_that_was_asked_for(address: str) -> None:
    place, host = Place(address, 8630), f"[{address}]" if ":" in address else address
    assert place.answers_to(f"{host.upper()}:8630") and place.answers_to("localhost:8630")
    assert not place.answers_to(f"{host}:8631") and not place.answers_to("192.168.1.21:8630")
    assert not place.loopback and place.url == f"http://{host}:8630/"


@pytest.mark.parametrize(("everywhere", "url"), [("0.0.0.0", "http://127.0.0.1:8630/"), ("::", "http://[::1]:8630/")])
def test_at_every_address_any_number_will_do_and_never_a_name(everywhere: str, url: str) -> None:
    place = Place(everywhere, 8630)
    assert all(map(place.answers_to, [*OWN, "192.168.1.21:8630", "[fe80::1]:8630"]))
    assert not any(map(place.answers_to, ["rebound.example:8630", "192.168.1.21", "192.168.1.21:80"]))
    assert place.url == url and not place.loopback


@pytest.mark.parametrize("address", ["127.0.0.1", "127.8.8.8", "::1", "localhost"])
def test_loopback(address: str) -> None:
    assert Place(address, 8630).loopback


def test_the_usual_port_need_not_be_said() -> None:
    assert Place("127.0.0.1", 80).answers_to("localhost") and not HOME.answers_to("localhost")
