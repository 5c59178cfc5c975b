"""The measure of speed: a bare reportlab script that writes the same lines and strings.

    python bare.py MARKS.json FONT_FOLDER OUT.pdf

It knows nothing of curtains: it reads pages of ready coordinates, in points, and
draws them with reportlab's plainest calls.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas


def write(marks: dict[str, Any], fonts: Path, out: str) -> None:
    """Draws ``marks`` and saves them as ``out``."""
    for name in ("Lato-Regular", "Lato-Bold"):
        if name not in pdfmetrics.getRegisteredFontNames():
            pdfmetrics.registerFont(TTFont(name, str(fonts / f"{name}.ttf")))
    canvas = Canvas(out, pagesize=marks["size"], pageCompression=1, invariant=1, pdfVersion=(1, 7))
    for page in marks["pages"]:
        for width, dashes, lines in page["lines"]:
            canvas.setLineWidth(width)
            canvas.setDash(dashes)
            for x1, y1, x2, y2 in lines:
                canvas.line(x1, y1, x2, y2)
        for x, y, radius in page["rings"]:
            canvas.circle(x, y, radius)
        for font, size, turn, x, y, text in page["texts"]:
            canvas.setFont(font, size)
            if turn:
                canvas.saveState()
                canvas.translate(x, y)
                canvas.rotate(turn)
                canvas.drawString(0, 0, text)
                canvas.restoreState()
            else:
                canvas.drawString(x, y, text)
        canvas.showPage()
    canvas.save()


if __name__ == "__main__":
    write(json.loads(Path(sys.argv[1]).read_text()), Path(sys.argv[2]), sys.argv[3])
