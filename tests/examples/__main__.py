"""Makes the examples under out_examples/ again: ``python -m tests.examples``."""

from __future__ import annotations

from .making import EXAMPLES, NAMES, as_png, make_example


def main() -> None:
    for name in NAMES:
        for old in (EXAMPLES / name).glob("page-*.png"):
            old.unlink()
        pdf, pages = make_example(name)
        for file, content in [("kit.pdf", pdf), *((file, as_png(page)) for file, page in pages.items())]:
            (EXAMPLES / name / file).write_bytes(content)
            print(f"{name}/{file}: {len(content):,} bytes")


if __name__ == "__main__":
    main()
