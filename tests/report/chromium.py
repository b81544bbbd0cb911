"""Chromium without a window, told what to do through its debugging pipe: a page is opened, used, seen and printed.

The pipe is a pair of files (3 to read, 4 to write) with a zero byte after each message of JSON, so nothing but Chromium
itself is needed.
"""

from __future__ import annotations

import base64
import fcntl
import json
import os
import subprocess
from pathlib import Path
from typing import Any


def _high(number: int) -> int:
    """The same file under a number that is in nobody's way."""
    high = fcntl.fcntl(number, fcntl.F_DUPFD_CLOEXEC, 10)
    os.close(number)
    return high


class Chromium:
    """One browser with one page; what its policy blocked and what went wrong in it is kept in ``complaints``."""

    def __init__(self, program: str, profile: Path) -> None:
        to_browser, self._out = os.pipe()
        self._in, from_browser = os.pipe()
        root = ("--no-sandbox",) if os.geteuid() == 0 else ()    # as root it has no sandbox
        quiet = ("--disable-background-networking", "--disable-extensions", "--disable-component-update", "--no-first-run")
        command = [program, "--headless=new", "--disable-gpu", "--disable-dev-shm-usage", "--hide-scrollbars", *quiet, *root,
                   f"--user-data-dir={profile}", "--remote-debugging-pipe", "about:blank"]
        # The shell puts the pipe's ends where Chromium looks for them.
        to_browser, from_browser = _high(to_browser), _high(from_browser)
        shell = ["bash", "-c", f'exec "$@" 3<&{to_browser} 4>&{from_browser}', "bash", *command]
        self._process = subprocess.Popen(shell, pass_fds=(to_browser, from_browser), stdout=subprocess.DEVNULL,
                                         stderr=subprocess.DEVNULL, stdin=subprocess.DEVNULL)
        os.close(to_browser)
        os.close(from_browser)
        self._buffer, self._number, self._session = b"", 0, ""
        self.complaints: list[str] = []
        self._events: list[dict[str, Any]] = []
        pages = [each for each in self.ask("Target.getTargets")["targetInfos"] if each["type"] == "page"]
        self._session = self.ask("Target.attachToTarget", targetId=pages[0]["targetId"], flatten=True)["sessionId"]
        for domain in ("Page", "Runtime", "Log"):
            self.ask(f"{domain}.enable")

    def ask(self, method: str, **parameters: Any) -> Any:
        """Chromium's answer.  AssertionError where it says that something is wrong."""
        number = self._tell(method, parameters)
        while True:
            answer = self._next()
            if answer.get("id") == number:
                assert "error" not in answer, f"{method}: {answer['error']}"
                return answer["result"]

    def _tell(self, method: str, parameters: dict[str, Any]) -> int:
        """Sends a message; its number."""
        self._number += 1
        message: dict[str, Any] = {"id": self._number, "method": method, "params": parameters}
        if self._session:
            message["sessionId"] = self._session
        os.write(self._out, json.dumps(message).encode("utf-8") + b"\0")
        return self._number

    def _next(self) -> dict[str, Any]:
        while b"\0" not in self._buffer:
            read = os.read(self._in, 1 << 20)
            assert read, "Chromium ended"
            self._buffer += read
        text, self._buffer = self._buffer.split(b"\0", 1)
        message: dict[str, Any] = json.loads(text)
        if "method" in message:
            self._events.append(message)
            self._hear(message)
        return message

    def _hear(self, event: dict[str, Any]) -> None:
        if event["method"] == "Log.entryAdded":
            self.complaints.append(event["params"]["entry"]["text"])
        elif event["method"] == "Runtime.exceptionThrown":
            self.complaints.append(str(event["params"]["exceptionDetails"]))
        elif event["method"] == "Page.javascriptDialogOpening":
            self._tell("Page.handleJavaScriptDialog", {"accept": True})    # its answer is passed over

    def open(self, address: str) -> None:
        """Loads a page and waits until it is there."""
        self._events.clear()
        self.ask("Page.navigate", url=address)
        while not any(event["method"] == "Page.loadEventFired" for event in self._events):
            self._next()

    def size(self, width: int, height: int, scale: float = 1.0) -> None:
        """The window in CSS pixels; ``scale`` is how many pixels of a picture one has."""
        self.ask("Emulation.setDeviceMetricsOverride", width=width, height=height, deviceScaleFactor=scale, mobile=width < 800)

    def run(self, expression: str) -> Any:
        """The value of a JavaScript expression in the page."""
        answer = self.ask("Runtime.evaluate", expression=expression, returnByValue=True, awaitPromise=True)
        assert "exceptionDetails" not in answer, answer["exceptionDetails"]
        return answer["result"].get("value")

    def press(self, key: str, code: int, text: str = "") -> None:
        """A key, down and up."""
        for kind in ("keyDown", "keyUp"):
            self.ask("Input.dispatchKeyEvent", type=kind, key=key, code=key, windowsVirtualKeyCode=code,
                     text=text if kind == "keyDown" else "")

    def picture(self, path: Path) -> None:
        """What the window shows, as PNG."""
        path.write_bytes(base64.b64decode(self.ask("Page.captureScreenshot", format="png")["data"]))

    def print_to(self, path: Path) -> None:
        """The page as PDF, on the paper that it names."""
        made = self.ask("Page.printToPDF", preferCSSPageSize=True, printBackground=True)
        path.write_bytes(base64.b64decode(made["data"]))

    def close(self) -> None:
        """Ends the browser."""
        try:
            self._session = ""
            self.ask("Browser.close")
        finally:
            os.close(self._out)
            os.close(self._in)
            try:
                self._process.wait(10)
            except subprocess.TimeoutExpired:
                self._process.kill()
                self._process.wait()
