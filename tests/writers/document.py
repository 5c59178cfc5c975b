"""A document with every kind of block in it, and with titles that somebody might have typed to do harm."""

from __future__ import annotations

from templategen.document.blocks import (
    MOST_BOXES,
    Blanks,
    Block,
    Figure,
    Finding,
    Findings,
    Gate,
    Heading,
    Lines,
    NumberRow,
    Numbers,
    Paragraph,
    Pictures,
    Points,
    Remark,
    Step,
)
from templategen.document.view import Arrow, Circle, Hatch, Label, Rise, Span, Stroke, Symbol, View, Within
from templategen.drawing import LineType, Text, rectangle

PANEL = View(
    "The panel flat, wrong side up",
    "The panel lies flat, wrong side up, 54 in wide. A cut line runs across it 9 in above its old bottom edge. "
    "What is below the line is cut off.",
    (
        Stroke(LineType.CUT, ((0, 0), (1372, 0), (1372, 2438), (0, 2438), (0, 0))),
        Stroke(LineType.FOLD, ((0, 2360), (1372, 2360))),
        Stroke(LineType.STITCH, ((0, 229), (1372, 229))),
        Hatch(((0, 0), (1372, 0), (1372, 229), (0, 229))),
        Symbol("scissors", (0, 229)),
        Arrow(((686, 2100), (686, 1800))),
        Circle(LineType.MARK, (686, 1200), 60),
    ),
    (
        Span("54 in", 0, 1372, 0),
        Rise("9 in, a hair under", 0, 229, 0),
        Label("casing", (1300, 2400)),
        Label("old bottom edge", (1300, 0)),
        Within("offcut", (0, 0), (1372, 229)),
    ),
    to_scale=True,
)
HEM = View(
    "The new hem, seen from its end",
    "The raw edge is turned under 5/8 in, then the hem is folded up 4 in; one row of stitching holds both folds.",
    (
        Stroke(LineType.CUT, ((0, 0), (0, 4), (102, 4), (102, 8), (86, 8))),
        Stroke(LineType.CUT, ((0, 0), (220, 0))),
        Symbol("needle", (90, 8), 90),
    ),
    (Span("4 in", 0, 102, 0), Label("turn-under 5/8 in", (92, 8)), Label("right side down", (200, 0))),
)

EVERY_KIND: tuple[Block, ...] = (
    Heading("Work order", first=True),
    Paragraph("Reading room, east window: 4 panels, each 54 in wide."),
    Pictures((PANEL, HEM)),
    Remark("Warning", "The rod is 3/4 in thick, and the loops just pass it."),
    Heading("Get ready"),
    Points(("a steel rule", "pins, a thread of another colour", "the cut gauge, cut out and glued to card")),
    Heading("Stop and check before you cut"),
    Blanks((NumberRow("Width of the panel", "54 in"), NumberRow("Up to the cut line", "9 in")), 4, "panel"),
    Blanks((NumberRow("Length of the rod", "60 in"),)),
    Heading("The order of work"),
    Step(1, "Measure both bars on every sheet.", title="Prove the sheets"),
    Step(
        2, "Lay the panel flat and cut on the cut line.", 4, "panel", "Cut", PANEL, ("cut gauge", "spacing strip 2")
    ),
    Gate("All panels to this point before the next step."),
    Step(3, "Press a turn-under of 5/8 in, then a hem 4 in deep.", 2, "panel", "Hem", HEM, ("hem gauge card",)),
    Remark("Heat", "Dry iron."),
    Step(4, "Cut loops.", MOST_BOXES + 64, "loop"),
    Step(5, "Sweep the floor.", 0),
    Heading("Part 2: west window", first=True),
    Heading("The order of work"),
    Step(3, "Hang the panel.", 2, "panel", "Hang"),
    Numbers(
        (
            NumberRow("cut line", "9 in, a hair under (228 mm)", "finish line 13 5/8 in − hem 4 in − turn-under"),
            NumberRow("loops", "9"),
        ),
        "From the floor to the cut",
    ),
    Findings(
        ("bar", "what it means", "what to do"),
        (Finding(("97.3 mm", "3 57/64 in"), "Letter fitted on A4", "The tray holds A4."),),
    ),
    Figure(20, (*rectangle(LineType.THIN, 0, 0, 60, -18), Text(2, -9, "page 5", 8)), "Page 5: pieces 1 to 3."),
    Lines(4, "Notes"),
)

HOSTILE = (
    "</title><script>alert(1)</script>",
    "<img src=x onerror=alert(1)> & <b>bold",
    "\" onmouseover=\"alert(1)\" ' x='",
    "&lt;b&gt; &#60; &amp;amp;",
    "]]> --> <!-- <![CDATA[ </style> </svg>",
    "\N{RIGHT-TO-LEFT OVERRIDE}wodniw tsaE\N{LEFT-TO-RIGHT ISOLATE}",
    "https://library.invalid/x.js javascript:alert(1)",
)
