"""The command: a port, a word, a warning, an end."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
import threading
import webbrowser
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from time import perf_counter, sleep

import psutil
import pytest

from templategen.errors import Refusal
from templategen.serving.places import Place
from templategen.serving.running import (
    NEXT_PORTS,
    PORT,
    PortTaken,
    _open_browser,
    _stoppable,
    listening,
    read_port,
    warning,
)

from .asking import ROOT, SPEC, WITHIN, Connection, Server, question, request


def command(*arguments: str) -> tuple[int, str, str]:
    """The command where it ends by itself: exit status, stdout, stderr."""
    line = [sys.executable, "-m", "templategen", "serve", "--no-browser", *arguments]
    done = subprocess.run(line, cwd=ROOT, capture_output=True, text=True, timeout=WITHIN)
    return done.returncode, done.stdout, done.stderr


@contextmanager
def taken(count: int = 1) -> Iterator[int]:
    """``count`` ports in a row that other programs listen at; the first of them, after which one more is free."""
    for first in range(23_000, 60_000, 200):
        with ExitStack() as opened:
            try:
                for port in range(first, first + count + 1):
                    held = opened.enter_context(socket.socket())
                    held.bind(("127.0.0.1", port))
                    held.listen()
            except OSError:
                continue
            held.close()
            yield first
            return
    raise AssertionError("no such ports are free")


def descendants(server: Server) -> list[psutil.Process]:
    return psutil.Process(server.process.pid).children(recursive=True)


def test_it_says_where_it_is_when_it_is_there_and_no_more() -> None:
    server = Server("--port", "0")
    with Connection(server.port) as connection:
        answer = connection.ask(request(server.port))
        assert answer is not None and answer.status == 200 and b"<!doctype html>" in answer.body
    assert server.stop() == 0
    assert server.said == f"The page is at http://127.0.0.1:{server.port}/ – stop it with Ctrl-C.\n"


def test_the_usual_place() -> None:
    assert PORT == 8630
    status, said, _ = command("--help")
    assert status == 0 and "8630" in said and "127.0.0.1" in said


def test_a_taken_port_is_one_line() -> None:
    with taken() as port:
        advice = "name another with --port, or say --next-port to take the next free one"
        assert command("--port", str(port)) == (1, "", f"port {port} is taken by another program; {advice}\n")


def test_the_next_port_is_taken_where_that_is_asked_for() -> None:
    with taken(3) as port:
        server = Server("--port", str(port), "--next-port")
        assert server.port == port + 3
        assert server.stop() == 0


def test_a_free_port_is_taken_even_where_the_next_would_do() -> None:
    with taken() as port:
        opened = listening("127.0.0.1", port + 1, next_port=True)
        assert opened.getsockname()[1] == port + 1
        opened.close()


def test_a_hundred_taken_ports_are_enough() -> None:
    with taken(NEXT_PORTS + 1) as port, pytest.raises(PortTaken, match=f"ports {port} to {port + NEXT_PORTS} are all"):
        listening("127.0.0.1", port, next_port=True)


def test_two_servers_never_have_one_port() -> None:
    first = listening("127.0.0.1", 0)
    with pytest.raises(PortTaken):
        listening("127.0.0.1", first.getsockname()[1])
    first.close()


def test_a_port_can_be_had_again_at_once() -> None:
    server = Server("--port", "0")
    with Connection(server.port) as connection:
        connection.ask(request(server.port))
        assert server.stop() == 0
    again = Server("--port", str(server.port))
    assert again.port == server.port and again.stop() == 0


@pytest.mark.parametrize("port", ["-1", "65536", "http", "", "80.5", "1e3", "８６３０", "9" * 30])
def test_a_port_that_is_none(port: str) -> None:
    with pytest.raises(Refusal) as refused:
        read_port(port)
    (fault,) = refused.value.faults
    assert fault.field == "--port" and fault.read == repr(port) and "from 1 to 65535" in fault.right


@pytest.mark.parametrize("port", ["0", "1", "8630", "65535"])
def test_a_port_that_is_one(port: str) -> None:
    assert read_port(port) == int(port)


@pytest.mark.parametrize("address", ["192.0.2.1", "300.1.1.1", "no such name.invalid", "x" * 300, "", "\x00"])
def test_an_address_that_is_none_of_this_machine(address: str) -> None:
    """192.0.2.0/24 is nobody's (RFC 5737), and so is .invalid (RFC 6761)."""
    if not address:  # which the system takes for all of them
        assert command("--port", "0", "--address", "") == (2, "", _no_address(""))
        return
    with pytest.raises(Refusal) as refused:
        listening(address, 0)
    (fault,) = refused.value.faults
    assert fault.field == "--address" and "no such address" in fault.right


def _no_address(address: str) -> str:
    right = "this machine has no such address; write one that it has, or leave it out for 127.0.0.1"
    return f"--address: read {address!r} – {right}\n"


def test_what_is_wrong_ends_with_two_and_in_the_house_s_words() -> None:
    said = "--port: read '70000' – a port is a whole number from 1 to 65535, or 0 for any that is free\n"
    assert command("--port", "70000") == (2, "", said)
    assert command("--port", "0", "--address", "192.0.2.1") == (2, "", _no_address("192.0.2.1"))


def test_who_can_reach_it_is_said_before_where_it_is() -> None:
    server = Server("--port", "0", "--address", "0.0.0.0")
    with Connection(server.port) as connection:
        for host, status in ((f"192.168.1.20:{server.port}", 200), (f"rebound.example:{server.port}", 421)):
            answer = connection.ask(request(server.port, host=host))
            assert answer is not None and answer.status == status
    assert server.stop() == 0
    warned, where = server.said.splitlines()
    assert warned.startswith("warning: the page has no password: anybody on any network") and "unencrypted" in warned
    assert where.startswith(f"The page is at http://127.0.0.1:{server.port}/")


def test_warnings() -> None:
    assert warning(Place("127.0.0.1", 8630)) == warning(Place("localhost", 8630)) == warning(Place("::1", 8630)) == ""
    assert "anybody at a machine that can reach 192.168.1.20, port 8630" in warning(Place("192.168.1.20", 8630))
    assert "any network" in warning(Place("::", 8630))


def test_at_the_other_loopback() -> None:
    server = Server("--port", "0", "--address", "::1")
    assert server.url == f"http://[::1]:{server.port}/"
    with socket.create_connection(("::1", server.port), timeout=WITHIN) as opened:
        opened.sendall(request(server.port, host=f"[::1]:{server.port}"))
        assert opened.recv(12) == b"HTTP/1.1 200"
    assert server.stop() == 0 and server.said.count("\n") == 1


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_it_stops_at_once_and_cleanly_whatever_is_under_way(number: int) -> None:
    server = Server("--port", "0")
    workers = descendants(server)
    with ExitStack() as opened:
        idle, half, silent, busy = (opened.enter_context(Connection(server.port)) for _ in range(4))
        assert idle.ask(request(server.port))
        half.send(request(server.port, "POST", "/api/plan", b"{}")[:-1])
        silent.send(b"GET / HT")
        wide = SPEC.replace('width = "54 in"', 'width = "100 ft"').replace('length = "60 in"', 'length = "100 ft"')
        busy.send(question(server.port, "/api/sheets", {"spec": wide, "despite_stops": True}))
        sleep(0.5)
        workers += descendants(server)
        begun = perf_counter()
        server.process.send_signal(number)
        assert server.process.wait(WITHIN) == 0
        assert perf_counter() - begun < 3
    assert len(workers) >= 2 and not psutil.wait_procs(workers, 1)[1]
    assert server.stop() == 0 and server.said.count("\n") == 1


def test_ctrl_c_in_a_terminal_reaches_every_process_and_is_as_quiet() -> None:
    """A terminal sends it to the whole group of processes."""
    line = [sys.executable, "-m", "templategen", "serve", "--no-browser", "--port", "0"]
    started = subprocess.Popen(
        line, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, start_new_session=True
    )
    assert started.stdout is not None and started.stdout.readline()
    os.killpg(started.pid, signal.SIGINT)
    assert started.wait(WITHIN) == 0
    assert started.stdout.read() == ""
    started.stdout.close()


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_before_there_is_anything_to_stop_the_command_just_ends(number: signal.Signals) -> None:
    before = signal.getsignal(number)
    with pytest.raises(SystemExit) as ended, _stoppable():
        signal.raise_signal(number)
    assert ended.value.code == 0 and signal.getsignal(number) is before


def test_a_browser_is_opened_unless_that_is_refused(tmp_path: Path) -> None:
    """With a browser of our own, which writes down what it is to open."""
    browser = tmp_path / "browser"
    browser.write_text(f'#!/bin/sh\necho "$1" > {tmp_path}/opened\n')
    browser.chmod(0o755)
    for arguments, opened in ((["--no-browser"], False), ([], True)):
        line = [sys.executable, "-m", "templategen", "serve", "--port", "0", *arguments]
        environment = os.environ | {"BROWSER": f"{browser} %s &"}
        with subprocess.Popen(line, cwd=ROOT, stdout=subprocess.PIPE, text=True, env=environment) as started:
            assert started.stdout is not None
            url = started.stdout.readline().split()[4]
            for _ in range(50 if opened else 10):
                sleep(0.1)
                if (tmp_path / "opened").exists():
                    break
            started.terminate()
            assert started.wait(WITHIN) == 0
        assert (tmp_path / "opened").exists() == opened
    assert (tmp_path / "opened").read_text().strip() == url


def test_a_browser_in_the_terminal_is_left_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    calls: list[str] = []
    plain = webbrowser.GenericBrowser("links")
    monkeypatch.setattr(plain, "open", calls.append, raising=False)
    monkeypatch.setattr(webbrowser, "get", lambda: plain)
    _open_browser("http://127.0.0.1:8630/")
    assert calls == []

    def none() -> None:
        raise webbrowser.Error("no browser")

    monkeypatch.setattr(webbrowser, "get", none)
    _open_browser("http://127.0.0.1:8630/")


def test_many_who_connect_and_say_nothing_do_not_keep_others_out() -> None:
    """More than may be connected at once; those who came too late are told so, and when the others go all is well."""
    server = Server("--port", "0")
    with ExitStack() as opened:
        silent = [opened.enter_context(Connection(server.port)) for _ in range(130)]
        late = silent[-1].answer()
        assert late is not None and late.status == 429 and late.headers["retry-after"] == "1"
        assert "content-security-policy" in late.headers and late.json["faults"]
    sleep(0.2)
    with Connection(server.port) as connection:
        answer = connection.ask(request(server.port))
        assert answer is not None and answer.status == 200
    assert server.stop() == 0


def test_many_ask_at_once(server: Server) -> None:
    """Each gets an answer: the plan, or that it should come again."""
    statuses: list[int] = []

    def ask() -> None:
        with Connection(server.port) as connection:
            answer = connection.ask(question(server.port, "/api/plan", {"spec": SPEC}))
            statuses.append(answer.status if answer else 0)

    threads = [threading.Thread(target=ask) for _ in range(90)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(statuses) == 90 and set(statuses) <= {200, 429} and statuses.count(200) >= 60
