"""Makes the examples under out_examples/ again: ``python -m tests.examples``."""

from __future__ import annotations

from .making import EXAMPLES, NAMES, make_example


def main() -> None:
    for name in NAMES:
        for old in (EXAMPLES / name).glob("page-*.png"):
            old.unlink()
        for file, content in make_example(name).items():
            (EXAMPLES / name / file).write_bytes(content)
            print(f"{name}/{file}: {len(content):,} bytes")


if __name__ == "__main__":
    main()
